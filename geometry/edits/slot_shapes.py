"""The shape of a slot from the closed line that a drawing has for it."""

from __future__ import annotations

import math

import numpy as np

from geometry import vectors as v
from geometry.curves import Line, Path, turn
from geometry.layout import DrawnSlot, Loop, StraightSlot, loop_of
from geometry.tolerance import JOIN


def slot_shape(path: Path, tidy: Loop | None = None) -> StraightSlot | DrawnSlot:
    """A straight slot where the line runs nowhere farther than JOIN from one, else a drawn one of `tidy` or the line itself.

    Other programs write the round ends as half circles, quarter circles or cubics near them, and walls in several pieces. Width and
    ends are those of the walls and of the farthest points along them, so that they are the numbers that were drawn.
    """
    return _straight(path) or DrawnSlot(loop=tidy or loop_of(path))


def _straight(path: Path) -> StraightSlot | None:
    """The straight slot that a closed path runs along, if there is one."""
    lines = sorted((s for s in path if isinstance(s, Line)), key=lambda line: -line.length())
    if len(lines) < 2 or lines[0].length() == 0:
        return None
    along = v.unit(v.sub(lines[0].end, lines[0].start))
    angle = math.atan2(along[1], along[0])
    laid = path.mapped(turn(-angle))
    walls = [turn(-angle)(line.start)[1] for line in lines]
    x0, _, x1, _ = laid.box
    width = max(abs(y - walls[0]) for y in walls)
    middle, half = (walls[0] + max(walls, key=lambda y: abs(y - walls[0]))) / 2, width / 2
    if width <= JOIN or x1 - x0 - width <= JOIN:
        return None
    straight = width * (x1 - x0 - width) + math.pi * half**2
    points = laid.flatten(JOIN / 10)
    aside = np.maximum(np.maximum(x0 + half - points[:, 0], points[:, 0] - (x1 - half)), 0.0)
    stray = np.abs(np.hypot(aside, points[:, 1] - middle) - half).max()
    if stray > JOIN or abs(abs(path.area) - straight) > JOIN * path.length:
        return None
    ends = (v.clean(turn(angle)((x, middle))) for x in (x0 + half, x1 - half))
    low, high = sorted(ends, key=lambda c: (c[1], c[0]))
    return StraightSlot(nut_end=low, tip_end=high, width=round(width, 9))
