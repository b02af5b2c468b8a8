"""Signs of what is drawn: outlines, rows, sections, pictures."""

from __future__ import annotations

from app.look.icons.sketch import Point, Sketch

HEAD: tuple[tuple[Point, Point, Point], ...] = (
    ((6, 12), (4, 12), (4, 9)), ((4, 7), (3, 6), (3, 3.5)), ((4, 1.5), (6, 1.5), (8, 1.5)),
    ((10, 1.5), (12, 1.5), (13, 3.5)), ((13, 6), (12, 7), (12, 9)), ((12, 12), (10, 12), (10, 14)))
"""A headstock from the bass end of the nut over the tip to the treble end; it starts at (6, 14)."""


def head(s: Sketch) -> None:
    """The whole outline with its nut line."""
    s.curve((6, 14), *HEAD, fill="tone", closed=True)


def head_with_nodes(s: Sketch) -> None:
    """An outline being drawn."""
    head(s)
    for at in ((6, 14), (3, 3.5), (13, 3.5), (10, 14)):
        s.disc(at, 1.4, "mark")


def dividers(s: Sketch) -> None:
    """A pair of dividers: what a distance is taken with."""
    s.ring((8, 3), 1.5, fill="tone")
    s.line((7, 5), (3, 14))
    s.line((9, 5), (13, 14))
    s.arc((8, 3), 7, 242, 56, colour="mark")


def section(s: Sketch) -> None:
    """The line of a cut with the arrows that say which way it is looked at."""
    s.line((2, 11), (14, 11), dash=True, colour="mark")
    s.line((3, 10), (3, 4), colour="mark")
    s.line((13, 10), (13, 4), colour="mark")
    s.arrow((3, 3), 90, 2.6)
    s.arrow((13, 3), 90, 2.6)
    s.line((6, 14), (10, 14))
    s.line((6, 7), (10, 7))


def rounded_corner(s: Sketch) -> None:
    """A sharp corner and the round one in its place."""
    s.line((3, 14), (3, 3), (14, 3), dash=True)
    s.curve((3, 14), ((3, 7.5), (7.5, 3), (14, 3)), colour="mark")


def two_halves(s: Sketch) -> None:
    """One side and its mirror about the centreline."""
    s.line((8, 1), (8, 15), dash=True)
    s.curve((6, 14), ((6, 11), (2, 11), (2, 7)), ((2, 4), (4, 2), (6, 2)))
    s.curve((10, 14), ((10, 11), (14, 11), (14, 7)), ((14, 4), (12, 2), (10, 2)), colour="mark")


def row_on_a_line(s: Sketch) -> None:
    """Three bores in a straight row."""
    s.line((2, 14), (14, 2), dash=True)
    for at in ((3.5, 12.5), (8, 8), (12.5, 3.5)):
        s.ring(at, 1.8, colour="mark", fill="tone")


def row_along_the_edge(s: Sketch) -> None:
    """Three bores beside a curved edge."""
    s.curve((13, 14.5), ((15, 10), (13, 3), (8, 1.5)))
    for at in ((9.5, 13), (9, 8), (5.5, 4)):
        s.ring(at, 1.8, colour="mark", fill="tone")


def drawing_in(s: Sketch) -> None:
    """A drawing that comes in onto the paper."""
    s.line((8, 2), (14, 2), (14, 14), (2, 14), (2, 8))
    s.line((2, 2), (8, 8), colour="mark")
    s.arrow((9, 9), -45, 4)


def _frame(s: Sketch) -> None:
    s.box(1.5, 2.5, 14.5, 13.5, 0.8)


def picture_moved(s: Sketch) -> None:
    """A picture with the cross of arrows that moves it."""
    _frame(s)
    s.line((8, 5), (8, 11), colour="mark")
    s.line((5, 8), (11, 8), colour="mark")


def picture_traced(s: Sketch) -> None:
    """An outline found in a picture."""
    _frame(s)
    s.curve((7, 11.5), ((7, 10), (5, 10), (5, 8)), ((4.5, 6), (4.5, 5), (8, 4.5)), ((11.5, 5), (11.5, 6), (11, 8)),
            ((11, 10), (9, 10), (9, 11.5)),
            colour="mark", fill="tone")


def solid(s: Sketch) -> None:
    """A block of wood in space."""
    s.line((2, 6), (8, 2.5), (14, 6), (8, 9.5), closed=True, fill="tone")
    s.line((2, 6), (2, 10), (8, 13.5), (14, 10), (14, 6))
    s.line((8, 9.5), (8, 13.5), colour="mark")


def whole(s: Sketch) -> None:
    """A head between four corners."""
    for x, y, dx, dy in ((2, 2, 3, 3), (14, 2, -3, 3), (2, 14, 3, -3), (14, 14, -3, -3)):
        s.line((x + dx, y), (x, y), (x, y + dy))
    s.box(6, 5, 10, 11, 1.5, colour="mark", fill="tone")


def strings(s: Sketch) -> None:
    """Strings that leave the nut."""
    s.line((2, 13), (14, 13))
    for x, top, to in ((4, 3, 4), (8, 6, 8), (12, 3, 12)):
        s.line((x, 12), (to, top + 2), colour="mark")
        s.ring((to, top), 1.3)
