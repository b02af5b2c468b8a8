"""The piece seen from behind at a step of the running order, turned over about the centreline."""

from __future__ import annotations

import shapely

from geometry.curves import MIRROR
from geometry.curves.polygons import parts, polygon
from geometry.drawing.glue_lines import joint_line
from geometry.drawing.marks import Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.opened_out import ABOVE, TITLE
from geometry.drawing.shapes import polygon_area, straight
from geometry.drawing.slot_marks import slot_style
from geometry.drawing.tuner_plan import OVERRUN
from geometry.drawing.wood_state import face_area, opening
from geometry.layout import Headstock, loop_path, slot_path
from geometry.saying import say
from geometry.sequence.state import WoodState


def wood_back_drawing(layout: Headstock, state: WoodState) -> Drawing:
    """The back at a state, x to the bass side. Holes that do not come through to it are dashed.

    A slot routed from the back alone is shown once it is open. GeometryError when the outline has no inside.
    """
    blank = layout.blank
    gone = shapely.union_all([hole for slot, own in zip(layout.slots, state.slots, strict=True)
                              if (hole := opening(slot, own)) is not None])
    wood = face_area(layout, state) - gone
    head = polygon(loop_path(layout.outline))
    marks: list[Mark] = []
    if state.outline != "routed":
        marks += _mirrored(wood - head, "waste", "blank")
    known = state.outline == "routed" or "back" in state.papers
    marks += _mirrored(wood & head, "wood" if known else "waste", "outline")
    if known:
        marks.append(Stroke(loop_path(layout.outline).mapped(MIRROR), "outline", "outline"))
    marks += joint_line(blank, layout.nut, True, -blank.treble, blank.bass)
    marks.append(Stroke(straight((0.0, -blank.behind), (0.0, blank.tip)), "centreline", "blank"))
    for slot, own in zip(layout.slots, state.slots, strict=True):
        if not own.open and any(cut.end >= blank.thickness - 1e-6 for cut in own.routed):
            marks.append(Area(slot_path(slot).mapped(MIRROR), slot_style(slot), slot.id))
    marks += [Disc(MIRROR(d.start[:2]), d.radius, d.operation, d.of, hidden=d.surface != "back" and not d.through)
              for d in state.to_be_seen if d.upright]
    if "back" in state.papers:
        marks += [Cross(MIRROR(d.start[:2]), d.radius + OVERRUN, "cross", d.of) for d in state.to_drill
                  if d.upright and d.surface == "back"]
    marks.append(Label(say("back, tip up: the treble side is on the left"), (0.0, blank.tip + ABOVE), TITLE, "note", "blank",
                       anchor="middle"))
    return tuple(marks)


def _mirrored(area: shapely.Geometry, style: str, owner: str) -> list[Mark]:
    return [polygon_area(part, style, owner) for part in parts(shapely.transform(area, lambda xy: xy * (-1.0, 1.0)))]
