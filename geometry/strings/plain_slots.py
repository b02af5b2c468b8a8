"""Strings over a straight slot without a ramp: that one surely has its air is told from two places on it.

Inside such a slot the nearest wall is as far away in plan as the middle line leaves of half the
width, and that room is concave along a straight string: between two places it is no less than straight
between their rooms. So it grows at least evenly from nothing at the slot's edge to what it is where the string
comes down to the face, and from there to the post it is no less than at either. Over the rim the
string is also above it, by a height that goes down evenly.
"""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.layout.slots import StraightSlot
from geometry.strings.runs import Run
from geometry.vectors import Vec2, Vec3


def surely_clear(run: Run, edge: Vec3, enters: float, slot: StraightSlot, wanted: float) -> bool:
    """Whether a string has `wanted` mm of air or more over the nut end of a slot and beside it. False says nothing.

    `edge`: its middle where it crosses the slot's edge, `enters` mm in plan from the nut.
    """
    far, slope = run.length - enters, (run.nut_height - run.height) / run.length
    if edge[2] >= 0 or far <= 0 or slope <= 0:
        return False
    down = min(run.nut_height / slope - enters, far)
    if down <= 0:
        return False
    needed, start, axis = wanted + run.diameter / 2, slot.nut_end, v.unit(v.sub(slot.tip_end, slot.nut_end))
    length = v.distance(slot.nut_end, slot.tip_end)

    def room(p: Vec2) -> float:
        to = v.sub(p, start)
        return slot.width / 2 - v.distance(to, v.scale(axis, min(max(v.dot(to, axis), 0.0), length)))

    there = room(v.along(edge[:2], v.scale(v.sub(run.post, edge[:2]), 1 / far), down))
    if min(there, room(run.post)) < needed:
        return False
    # The least of the height and the room together, which are -z - slope s and grows s at s mm from the edge.
    grows = there / down
    return -edge[2] * grows / math.hypot(slope, grows) >= needed
