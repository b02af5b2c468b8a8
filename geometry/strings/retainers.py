"""What retainers on the face do to a string between the nut and its post.

Under them a string is the lowest line that may be drawn from the nut to the post: seen from the side it
bends up at each that it presses on. Seen on the face it runs straight on.
"""

from __future__ import annotations

from collections.abc import Iterable

from msgspec import Struct

from geometry import vectors as v
from geometry.layout.slots import SingleHole
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

BAR = 5.0
"""How broad the bar of a retainer is along the strings, mm (common practice, no source)."""


class Held(Struct, frozen=True):
    """A string under a retainer: how far from the nut as seen on the face, and how high above it (mm)."""

    hole: str
    far: float
    height: float


def passes(nut: Vec2, post: Vec2, level: float) -> tuple[float, float] | None:
    """(x, how far from the nut as seen on the face) of a string where it comes to a level y, mm; None where that is not between nut and post."""
    rise = post[1] - nut[1]
    share = (level - nut[1]) / rise if abs(rise) > TOUCH else -1.0
    return (nut[0] + share * (post[0] - nut[0]), share * v.distance(nut, post)) if 0 < share < 1 else None


def over(nut: Vec2, post: Vec2, carriers: Iterable[SingleHole]) -> list[Held]:
    """The retainers under which a string passes, however high; `carriers` are the holes that carry one."""
    found = []
    for hole in carriers:
        at = passes(nut, post, hole.at[1])
        if at is not None and abs(at[0] - hole.at[0]) <= hole.retainer.width / 2 + TOUCH:
            found.append(Held(hole.id, at[1], hole.retainer.height))
    return found


def pressed(up: float, length: float, height: float, retainers: Iterable[Held]) -> tuple[Held, ...]:
    """Which retainers a string presses on, from the nut on: it begins `up` above the face and ends `length` mm on at `height`, mm.

    The corners of the lower hull of nut, retainers and post.
    """
    corners: list[Held] = [Held("", 0.0, up)]
    for one in (*sorted(retainers, key=lambda one: (one.far, one.height, one.hole)), Held("", length, height)):
        while len(corners) > 1 and not _rises(corners[-2], corners[-1], one):
            corners.pop()
        corners.append(one)
    return tuple(corners[1:-1])


def _rises(a: Held, b: Held, c: Held) -> bool:
    """Whether a line over three places bends up at the second."""
    return (b.far - a.far) * (c.height - a.height) - (b.height - a.height) * (c.far - a.far) > 0
