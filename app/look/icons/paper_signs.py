"""Signs of paper, of the drawer that keeps it, and of going back."""

from __future__ import annotations

from app.look.icons.sketch import Sketch


def _bar(s: Sketch, y: float, left: float, right: float, colour: str = "mark") -> None:
    s.line((left, y), (right, y), colour=colour)
    s.line((left, y - 1.5), (left, y + 1.5), colour=colour)
    s.line((right, y - 1.5), (right, y + 1.5), colour=colour)


def printed(s: Sketch) -> None:
    """A paper with the bar that is measured before it is trusted."""
    s.box(3, 1.5, 13, 14.5, 0.5, fill="tone")
    s.line((6, 5), (10, 5))
    _bar(s, 11, 5, 11)


def two_bars(s: Sketch) -> None:
    """A bar as it should be, and as the printer made it."""
    _bar(s, 5, 2, 12, "ink")
    _bar(s, 11, 2, 14)


def written(s: Sketch) -> None:
    """Sheets that are put down in a folder."""
    s.line((5, 3), (5, 1.5), (14, 1.5), (14, 10), (12, 10))
    s.box(2, 5, 10, 14.5, 0.5, fill="tone")
    s.line((6, 7), (6, 11), colour="mark")
    s.arrow((6, 12), -90, 2.8)


def undo(s: Sketch) -> None:
    """A turn to the left."""
    s.line((4, 6), (10, 6))
    s.arc((10, 9.5), 3.5, -90, 180)
    s.line((10, 13), (6, 13))
    s.arrow((2.5, 6), 180, 4)


def redo(s: Sketch) -> None:
    """A turn to the right."""
    s.line((12, 6), (6, 6))
    s.arc((6, 9.5), 3.5, 90, 180)
    s.line((6, 13), (10, 13))
    s.arrow((13.5, 6), 0, 4)


def changes(s: Sketch) -> None:
    """Steps on a line, one of them the present one."""
    s.line((4, 2), (4, 14))
    s.disc((4, 3), 1.5)
    s.disc((4, 13), 1.5)
    s.disc((4, 8), 2.4, "mark")
    for y, right in ((3, 13), (8, 14), (13, 11)):
        s.line((8, y), (right, y), colour="mark" if y == 8 else "ink")


def _paper(s: Sketch) -> None:
    s.line((3, 1.5), (10, 1.5), (13, 4.5), (13, 14.5), (3, 14.5), closed=True, fill="tone")


def new(s: Sketch) -> None:
    """An empty paper with the cross of a centre."""
    _paper(s)
    s.line((8, 6), (8, 12), colour="mark")
    s.line((5, 9), (11, 9), colour="mark")


def drawer(s: Sketch) -> None:
    """A drawer for plans, pulled out."""
    s.box(1.5, 2, 14.5, 8, 0.6)
    s.line((4, 5), (12, 5))
    s.box(2.5, 8, 13.5, 14, 0.6, fill="tone")
    s.line((6, 11), (10, 11), colour="mark")


def into_drawer(s: Sketch) -> None:
    """Something laid into a drawer."""
    s.line((1.5, 8), (1.5, 14), (14.5, 14), (14.5, 8))
    s.line((4, 11), (12, 11))
    s.line((8, 1.5), (8, 6.5), colour="mark")
    s.arrow((8, 7.5), -90, 3.6)


def more(s: Sketch) -> None:
    """Words that go on further down."""
    s.line((1.5, 3), (14.5, 3))
    s.line((1.5, 7), (9, 7))
    s.line((8, 10), (11.5, 14), (15, 10), colour="mark")


def two_windows(s: Sketch) -> None:
    """A window beside another."""
    s.line((5, 4), (5, 1.5), (14.5, 1.5), (14.5, 10.5), (12, 10.5))
    s.box(1.5, 5, 11, 14.5, 0.6, fill="tone")
    s.line((2, 8), (11, 8), colour="mark")


def pinned_note(s: Sketch) -> None:
    """A slip of paper under a pin."""
    s.box(3, 4, 13, 14.5, 0.5, fill="tone")
    s.line((5.5, 9), (10.5, 9))
    s.line((5.5, 12), (8.5, 12))
    s.disc((8, 3.5), 2.2, "mark")


def book(s: Sketch) -> None:
    """An open book of words."""
    s.line((8, 4), (8, 14))
    s.curve((8, 4), ((6, 2), (4, 2), (1.5, 2.5)))
    s.line((1.5, 2.5), (1.5, 12.5))
    s.curve((1.5, 12.5), ((4, 12), (6, 12), (8, 14)))
    s.curve((8, 4), ((10, 2), (12, 2), (14.5, 2.5)))
    s.line((14.5, 2.5), (14.5, 12.5))
    s.curve((14.5, 12.5), ((12, 12), (10, 12), (8, 14)))
    s.line((10.5, 6), (12, 6), colour="mark")
    s.line((10.5, 9), (12, 9), colour="mark")
