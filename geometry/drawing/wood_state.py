"""The piece as it is at a step of the running order, in the opened-out view.

What is cut is drawn as cut, what is still to be drilled as its cross as long
as the paper that carries the mark is there, and square edges only while they exist.
"""

from __future__ import annotations

from typing import Literal

import shapely
from msgspec.structs import replace
from shapely.geometry import LineString, box
from shapely.geometry.base import BaseGeometry

from geometry.curves import circle
from geometry.curves.polygons import grown, parts, polygon
from geometry.drawing.glue_lines import glue_lines, joint_line
from geometry.drawing.marks import Area, Cross, Disc, Drawing, Mark, Stroke
from geometry.drawing.opened_out import SIDES, TITLE, strip_titles
from geometry.drawing.ramp_section import flat_plans
from geometry.drawing.shapes import nut_line, polygon_area, rectangle, ring_path, straight
from geometry.drawing.slot_marks import ramp_marks, slot_style
from geometry.drawing.tuner_plan import OVERRUN, folded, strip, waste_strip
from geometry.layout import Headstock, Side, Slot, loop_path, slot_path
from geometry.routing.depth import LIGHT
from geometry.sequence.drill_ops import SMALL
from geometry.sequence.glue_ops import PLUG
from geometry.sequence.state import SlotState, WoodState
from geometry.solids.drilling import Drilling
from geometry.solids.ears import bare
from geometry.solids.slot_area import slot_area

SAWN_OUTSIDE = LIGHT
"""How far outside the outline the saw stays, mm (common practice, no source)."""
SAWN_INSIDE = 1.5
"""How far inside a slot's wall the saw stays, mm (common practice, no source)."""


def wood_drawing(layout: Headstock, state: WoodState, stray: float = 0.0) -> Drawing:
    """The opened-out view at a state, in the order in which it is painted. GeometryError when the outline has no inside.

    `stray` (mm, never negative): how far the borders of wood that is partly cut away may run beside where they are, for a
    picture in which that cannot be seen; they are chords then, and fewer.
    """
    blank = layout.blank
    marks: list[Mark] = []
    if state.outline == "square":
        marks += _edges(layout, state)
    marks += _face(layout, state, stray)
    marks += [*_glued(layout, state), *_plugs(layout, state)]
    marks += [Stroke(straight((0.0, -blank.behind), (0.0, blank.tip)), "centreline", "blank")]
    if "face" in state.papers or state.outline != "square":
        marks.append(Stroke(nut_line(layout.nut), "nut line", "nut"))
    marks += [mark for d in state.to_be_seen if not d.upright for mark in side_bore(layout, d, state, d.style)]
    ramps = cut_by_hand(state, "ramp")
    for slot, own in zip(layout.slots, state.slots, strict=True):
        marks += ramp_marks(slot) if slot.id in ramps else ()
        marks += _slot(slot, own, "face" in state.papers, stray)
    if state.outline != "square":
        marks += [Stroke(straight(plan.segments[0].start, plan.segments[0].end), "flat", of)
                  for of, plan in flat_plans(layout, cut_by_hand(state, "flat"))]
    marks += [mark for d in state.to_be_seen if d.upright for mark in _upright(d)]
    marks += [mark for d in state.to_drill for mark in _still_marked(layout, d, state)]
    return tuple(marks)


def cut_by_hand(state: WoodState, kind: Literal["ramp", "flat"]) -> set[str]:
    """Slots whose ramps are filed, or tuners whose flats are cut, at a state."""
    return {id.removeprefix(f"{kind} ") for id in state.done if id.startswith(f"{kind} ")}


def face_area(layout: Headstock, state: WoodState) -> BaseGeometry:
    """The wood of the face in plan at a state, slots and bores not taken out, flats on the edge taken off (mm).

    The saw does not cross the neck: past the outline's lowest point nothing is shown once it is cut.
    """
    if state.outline == "square":
        blank = layout.blank
        return box(-blank.bass, -blank.behind, blank.treble, blank.tip) - shapely.union_all([_air(layout, side, state) for side in SIDES])
    head = polygon(loop_path(layout.outline))
    flats = _flats(layout, state)
    if state.outline == "routed":
        return head if flats is None else head - flats
    low, blank = head.bounds[1], layout.blank
    sawn = grown(head, SAWN_OUTSIDE) & box(-blank.bass, low, blank.treble, blank.tip)
    return sawn if flats is None else sawn - flats


def _flats(layout: Headstock, state: WoodState) -> BaseGeometry | None:
    """What flats that run over the whole thickness take off in plan; a round spot leaves the face whole."""
    through = {t.id for t in layout.tuners if t.flat is not None and t.flat.shape == "flat"}
    found = [polygon(plan) for _, plan in flat_plans(layout, cut_by_hand(state, "flat") & through)]
    return shapely.union_all(found) if found else None


def opening(slot: Slot, own: SlotState) -> BaseGeometry | None:
    """What is cut right through of a slot at a state, in plan; None while nothing of it is."""
    area = slot_area(slot) if own.through else None
    if area is None:
        return None
    if own.open:
        return area
    found: list[BaseGeometry] = []
    if own.sawn:
        found.append(grown(area, -SAWN_INSIDE))
    if own.waste_holes is not None:
        found += [shapely.Point(c).buffer(own.waste_holes.diameter / 2) for c in own.waste_holes.centres]
    return shapely.union_all(found) if found else None


def _glued(layout: Headstock, state: WoodState) -> list[Mark]:
    """Glue lines of veneers and of a scarf joint as far as there is wood; of what is sawn only what comes out on the face."""
    square = state.outline == "square"
    blank = layout.blank
    lines = glue_lines(blank, layout.nut, state.veneers) if square else joint_line(blank, layout.nut, False, -blank.bass, blank.treble)
    if not lines:
        return []
    wood = face_area(layout, state)
    for side in SIDES if square else ():
        for low, high in _stretches(layout, side, state):
            (a, _), (b, _) = folded(blank, side, low, 0.0), folded(blank, side, high, blank.thickness)
            wood = wood | box(min(a, b), low, max(a, b), high)
    found: list[Mark] = []
    for line in lines:
        seen = LineString([line.path.start, line.path.end]) & wood
        found += [replace(line, path=straight(piece.coords[0], piece.coords[-1])) for piece in shapely.get_parts(seen) if piece.length > 0]
    return found


def _plugs(layout: Headstock, state: WoodState) -> list[Mark]:
    """The rims of the plugs in old holes, hidden where a hole is open at the back alone, until a veneer or paper comes over them: what is
    cut after that cuts them too."""
    if PLUG not in state.done or "mark" in state.done or "face" in state.veneers:
        return []
    return [Disc(hole.at, hole.diameter / 2, "glue line", hole.id, hidden=not hole.opens(layout.blank.thickness)) for hole in layout.holes if hole.plugged]


def _air(layout: Headstock, side: Side, state: WoodState) -> BaseGeometry:
    """What of the blank's width no ear fills on a side at a state, in plan: where an ear is not on yet, and where none will be."""
    blank = layout.blank
    own = [ear for ear in layout.ears if ear.side == side]
    edge = blank.edge_x(side)
    missing = [box(min(edge, glue), min(ear.start, ear.end), max(edge, glue), max(ear.start, ear.end))
               for ear in own if ear.id not in state.ears for glue in (blank.glue_x(ear),)]
    return shapely.union_all([bare(blank, own, side), *missing])


def _edges(layout: Headstock, state: WoodState) -> list[Mark]:
    """Both square edges folded flat; stretches where no ear is are left out."""
    blank = layout.blank
    marks: list[Mark] = []
    for side in SIDES:
        for low, high in _stretches(layout, side, state):
            a, b = folded(blank, side, low, 0.0), folded(blank, side, high, blank.thickness)
            marks.append(Area(rectangle(min(a[0], b[0]), low, max(a[0], b[0]), high), "blank", "blank"))
            marks.append(Stroke(straight(a, (a[0], high)), "fold", "blank"))
    marks += strip_titles(blank, TITLE)
    for ear in layout.ears:
        if ear.id in state.ears:
            glue = blank.glue_x(ear)
            marks.append(Stroke(straight((glue, ear.start), (glue, ear.end)), "glue line", ear.id))
    return marks


def _stretches(layout: Headstock, side: Side, state: WoodState) -> list[tuple[float, float]]:
    """(from, to) along y where a square edge is there."""
    free = [(-layout.blank.behind, layout.blank.tip)]
    for gap in parts(_air(layout, side, state)):
        _, low, _, high = gap.bounds
        free = [piece for a, b in free for piece in ((a, min(b, low)), (max(a, high), b)) if piece[1] > piece[0]]
    return free


def _face(layout: Headstock, state: WoodState, stray: float) -> list[Mark]:
    """Waste, and the head in it as far as its line is known; right through openings are openings."""
    openings = [hole for slot, own in zip(layout.slots, state.slots, strict=True)
                if (hole := opening(slot, own)) is not None]
    gone = shapely.union_all(openings)
    walls = tuple(slot_path(slot) for slot, own in zip(layout.slots, state.slots, strict=True)
                  if own.open and own.through)
    flats = None if state.outline == "square" else _flats(layout, state)
    partly = len(openings) > len(walls) or flats is not None
    path = loop_path(layout.outline)
    marks: list[Mark] = []
    if state.outline != "routed":
        marks += _areas(face_area(layout, state) - gone, "waste", "blank", stray)
    if state.outline == "routed" or "face" in state.papers:
        if partly:
            marks += _areas(polygon(path) - gone if flats is None else polygon(path) - gone - flats, "wood", "outline", stray)
        else:
            marks.append(Area(path, "wood", "outline", walls))
        marks += [Stroke(path, "outline", "outline")] if flats is None else [
            Stroke(ring_path(part.exterior), "outline", "outline") for part in parts(polygon(path) - flats)]
    return marks


def _areas(area: BaseGeometry, style: str, owner: str, stray: float) -> list[Mark]:
    if stray > 0:
        area = shapely.simplify(area, stray, preserve_topology=False)  # what is left out is not seen
    return [polygon_area(part, style, owner) for part in parts(area)]


def _slot(slot: Slot, own: SlotState, marked: bool, stray: float) -> list[Mark]:
    """A slot as far as it is cut; its line while the paper shows it."""
    path = slot_path(slot)
    if own.routed:
        return [Area(path, slot_style(slot), slot.id)]
    marks: list[Mark] = [Stroke(path, "slot", slot.id)] if marked else []
    if own.sawn:
        marks += _areas(grown(polygon(path), -SAWN_INSIDE), "slot", slot.id, stray)
    if own.waste_holes is not None:
        row = own.waste_holes
        marks += [Area(circle(c, row.diameter / 2), "slot", slot.id) for c in row.centres]
    return marks


def _upright(d: Drilling) -> list[Mark]:
    return [Disc(d.start[:2], d.radius, d.operation, d.of, hidden=d.surface == "back" and not d.through)]


def side_bore(layout: Headstock, d: Drilling, state: WoodState, style: str) -> list[Mark]:
    """A bore from the side in plan; while its square edge is there, through the waste too, with its mouth on that edge."""
    side = _side_of(d)
    marks: list[Mark] = [Area(strip(d), style, d.of)]
    if side in state.square_edges and d.mark is not None:
        marks.append(Area(waste_strip(layout.blank, side, d), style, d.of))
        marks.append(Disc(folded(layout.blank, side, d.mark[1], d.mark[2]), d.radius, style, d.of))
    return marks


def _side_of(d: Drilling) -> Side:
    return "treble" if d.surface == "treble edge" else "bass"


def _still_marked(layout: Headstock, d: Drilling, state: WoodState) -> list[Mark]:
    """The cross of a drilling to come, where its paper can still be read; marks on the back are not seen. What is drilled through
    the plate of a side tuner has none."""
    if d.surface == "face" and "face" in state.papers:
        return [Cross(d.start[:2], d.radius + OVERRUN, "cross", d.of)]
    if d.surface in state.papers and d.mark is not None and not d.upright and d.role not in SMALL:
        return [Cross(folded(layout.blank, _side_of(d), d.mark[1], d.mark[2]), d.radius + OVERRUN, "cross", d.of)]
    return []
