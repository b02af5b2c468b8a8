"""Signs of what is in the wood or in the shop: bores, slots, pins, tuners, the clamp, the rack."""

from __future__ import annotations

from app.look.icons.sketch import Sketch


def clamp(s: Sketch) -> None:
    """A screw clamp: what holds work."""
    s.line((10, 2.5), (3, 2.5), (3, 11), (8, 11))
    s.line((10, 2.5), (10, 4.5))
    s.line((10, 7.5), (10, 14), colour="mark")
    s.line((8, 7.5), (12, 7.5), colour="mark")
    s.line((8, 14), (12, 14), colour="mark")
    s.line((8, 11), (12, 11))


def bore(s: Sketch) -> None:
    """A hole with its centre lines."""
    s.ring((8, 8), 4.5, fill="tone")
    s.line((8, 1.5), (8, 14.5), colour="mark")
    s.line((1.5, 8), (14.5, 8), colour="mark")


def slot(s: Sketch) -> None:
    """A slot with round ends in a rail of wood."""
    s.line((3, 1.5), (3, 14.5), dash=True)
    s.line((13, 1.5), (13, 14.5), dash=True)
    s.box(6, 2, 10, 14, 2.4, colour="mark", fill="tone")


def drawn_slot(s: Sketch) -> None:
    """A slot of any shape, with its nodes."""
    s.curve((4, 4), ((7, 1), (11, 2), (12, 5)), ((13, 8), (9, 8), (10, 11)), ((10, 14), (5, 14), (4, 11)),
            ((3, 8), (2, 6), (4, 4)), colour="mark", fill="tone", closed=True)
    for at in ((4, 4), (12, 5), (10, 11), (4, 11)):
        s.disc(at, 1.4)


def pin(s: Sketch) -> None:
    """A locating pin through a board."""
    s.line((1.5, 9), (5, 9))
    s.line((11, 9), (14.5, 9))
    s.line((1.5, 13), (5, 13))
    s.line((11, 13), (14.5, 13))
    s.box(6, 2, 10, 14, 1.0, colour="mark", fill="tone")


def two_pins(s: Sketch) -> None:
    """Two pins on the centreline."""
    s.line((8, 1), (8, 15), dash=True)
    s.ring((8, 4), 2, colour="mark", fill="tone")
    s.ring((8, 12), 2, colour="mark", fill="tone")


def tuner(s: Sketch) -> None:
    """A tuner seen on the face: post, shaft and button."""
    s.ring((5, 8), 3, fill="tone")
    s.disc((5, 8), 1)
    s.line((8.5, 8), (10.5, 8))
    s.box(11, 4.5, 14, 11.5, 1.2, colour="mark", fill="tone")


def winding(s: Sketch) -> None:
    """A string that passes a post on its other side."""
    s.ring((8, 6), 3, fill="tone")
    s.line((4, 14.5), (4, 6), dash=True)
    s.line((12, 14.5), (12, 6), colour="mark")
    s.arc((8, 6), 4, 0, 90, colour="mark")


def rack(s: Sketch) -> None:
    """Bits standing in a block."""
    s.box(1.5, 10, 14.5, 14, 0.6, fill="tone")
    s.line((4, 10), (4, 5))
    s.line((8, 10), (8, 2), colour="mark")
    s.line((12, 10), (12, 6.5))
    s.line((7, 2), (9, 2), colour="mark")
    s.line((3, 5), (5, 5))
    s.line((11, 6.5), (13, 6.5))
