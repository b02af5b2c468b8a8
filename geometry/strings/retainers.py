"""Strings that a retainer on the face holds down between the nut and a post through the face.

Under its retainers a string is the lowest line that may be drawn from the nut to
the post: over the nut it bends towards whichever of them, or the post, lies steepest below.
Seen on the face it runs straight on.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from msgspec import Struct

from geometry.layout.headstock import Headstock
from geometry.layout.slots import SingleHole
from geometry.strings.runs import Run, break_angle
from geometry.tolerance import TOUCH


class Held(Struct, frozen=True):
    """A string under a retainer: how far from the nut as seen on the face, and how high above it (mm)."""

    hole: str
    far: float
    height: float


def passes(run: Run, level: float) -> tuple[float, float, float] | None:
    """(x, how far from the nut, height above the face) of a string that runs straight to its post where it comes to a level y, mm.

    None where that is not between nut and post.
    """
    rise = run.post[1] - run.nut[1]
    share = (level - run.nut[1]) / rise if abs(rise) > TOUCH else -1.0
    if not 0 < share < 1:
        return None
    return (run.nut[0] + share * (run.post[0] - run.nut[0]), share * run.length,
            run.nut_height + share * (run.height - run.nut_height))


def held(run: Run, holes: Iterable[SingleHole]) -> Iterator[Held]:
    """Where retainers hold a string down: none hold one that winds below the face, or that passes lower than they reach."""
    for hole in holes:
        at = None if hole.retainer is None or run.height <= 0 else passes(run, hole.at[1])
        if at is not None and abs(at[0] - hole.at[0]) <= hole.retainer.width / 2 + TOUCH and hole.retainer.height < at[2]:
            yield Held(hole.id, at[1], hole.retainer.height)


def break_over_nut(layout: Headstock, run: Run) -> float:
    """Angle in rad by which a string bends down over the nut, retainers reckoned with."""
    pitch = math.radians(layout.nut.pitch)
    return max([break_angle(run, pitch, layout.nut.height),
                *(pitch + math.atan2(run.nut_height - one.height, one.far) for one in held(run, layout.holes))])
