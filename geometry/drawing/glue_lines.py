"""Glue lines of veneers and of a scarf joint, where they can be seen on the blank."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.drawing.marks import Stroke
from geometry.drawing.shapes import straight
from geometry.drawing.tuner_plan import folded
from geometry.layout import Blank, Side
from geometry.solids.scarf import scarf_of

_SIDES: tuple[Side, Side] = ("bass", "treble")


def glue_lines(blank: Blank, pitch: float, glued: Sequence[str] = ("face", "back")) -> tuple[Stroke, ...]:
    """In the opened-out view of a head at that pitch (degrees): on both edges those of the veneers that are `glued` and of the
    joint, and where the joint crosses the face."""
    low, high = -blank.behind, blank.tip
    inner = [bottom if surface == "face" else top for surface, top, bottom in blank.veneers if surface in glued]
    lines = [straight(folded(blank, side, low, z), folded(blank, side, high, z)) for side in _SIDES for z in inner]
    joint = scarf_of(blank, pitch)
    if joint is not None:
        ends = [(y, joint.level(y)) for y in (max(low, joint.back), min(high, joint.face))]
        if ends[0][0] < ends[1][0]:
            lines += [straight(*(folded(blank, side, y, z) for y, z in ends)) for side in _SIDES]
    return (*(Stroke(path, "glue line", "blank") for path in lines), *joint_line(blank, pitch, False, -blank.bass, blank.treble))


def joint_line(blank: Blank, pitch: float, back: bool, x0: float, x1: float) -> tuple[Stroke, ...]:
    """Where a scarf joint comes out on the face, or the back, of the core, from x0 to x1 (mm); nothing behind the nut line or past the tip."""
    joint = scarf_of(blank, pitch)
    if joint is None:
        return ()
    y = joint.back if back else joint.face
    return (Stroke(straight((x0, y), (x1, y)), "glue line", "blank"),) if 0.0 <= y <= blank.tip else ()
