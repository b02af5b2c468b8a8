"""Glue lines of veneers and of a scarf joint, where they can be seen on the blank."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.drawing.marks import Stroke
from geometry.drawing.shapes import straight
from geometry.drawing.tuner_plan import folded
from geometry.layout import Blank, Nut, Side
from geometry.solids.scarf import scarf_of

_SIDES: tuple[Side, Side] = ("bass", "treble")


def glue_lines(blank: Blank, nut: Nut, glued: Sequence[str] = ("face", "back")) -> tuple[Stroke, ...]:
    """In the opened-out view: on both edges those of the veneers that are `glued` and of the joint, and where the joint crosses
    the face."""
    low, high = -blank.behind, blank.tip
    inner = [bottom if surface == "face" else top for surface, top, bottom in blank.veneers if surface in glued]
    lines = [straight(folded(blank, side, veneer_start(blank, nut, side), z), folded(blank, side, high, z)) for side in _SIDES for z in inner]
    joint = scarf_of(blank, nut)
    for side in _SIDES if joint is not None else ():
        x = blank.edge_x(side)
        ends = [(y, joint.level((x, y))) for y in (max(low, joint.y(x, True)), min(high, joint.y(x, False)))]
        if ends[0][0] < ends[1][0]:
            lines.append(straight(*(folded(blank, side, y, z) for y, z in ends)))
    return (*(Stroke(path, "glue line", "blank") for path in lines), *joint_line(blank, nut, False, -blank.bass, blank.treble))


def veneer_start(blank: Blank, nut: Nut, side: Side) -> float:
    """y (mm) on a square edge from where on veneers lie: they end at the nut line, for what goes on behind it is the neck."""
    return min(max(nut.at(blank.edge_x(side))[1], -blank.behind), blank.tip)


def joint_line(blank: Blank, nut: Nut, back: bool, x0: float, x1: float) -> tuple[Stroke, ...]:
    """Where a scarf joint comes out on the face, or on the back seen from behind, from x0 to x1 of the drawing (mm); nothing where it
    does so behind the nut line or past the tip."""
    joint = scarf_of(blank, nut)
    if joint is None or not 0.0 <= (joint.back if back else joint.face) <= blank.tip:
        return ()
    ends = [(x, joint.y(-x if back else x, back)) for x in (x0, x1)]
    return (Stroke(straight(*ends), "glue line", "blank"),)
