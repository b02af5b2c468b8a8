"""What one step takes off the piece: in the opened-out view, from behind, and in a section."""

from __future__ import annotations

import shapely
from shapely.geometry import box
from shapely.geometry.base import BaseGeometry

from geometry.curves import MIRROR, Path
from geometry.curves.polygons import parts, polygon
from geometry.drawing.marks import Area, Disc, Drawing, Mark, Stroke
from geometry.drawing.opened_out import SIDES
from geometry.drawing.ramp_section import flat_plans, flat_sections, ramp_sections
from geometry.drawing.section_cut import SectionLine, Span
from geometry.drawing.shapes import polygon_area, rectangle, ring_path, straight
from geometry.drawing.tuner_plan import folded
from geometry.drawing.wood_section import bore_cuts, cut_spans, slot_cuts
from geometry.drawing.wood_state import face_area, side_bore
from geometry.layout import Headstock
from geometry.sequence.operation import Operation
from geometry.sequence.state import WoodState
from geometry.solids.drilling import Drilling
from geometry.solids.ramps import ramp_cut

STYLE = "removed"


def removed(layout: Headstock, op: Operation, before: WoodState, after: WoodState) -> Drawing:
    """Areas in the opened-out view that the step takes away; nothing for work that takes nothing off.

    Of a slot the wood that still stood in plan. GeometryError when the outline has no inside.
    """
    marks: list[Mark] = []
    for d in _drilled(op):
        if d.upright:
            marks.append(Disc(d.start[:2], d.radius, STYLE, d.of))
        else:
            marks += side_bore(layout, d, before, STYLE)
    marks += _areas(layout, op, before, after)
    marks += _ramp(layout, op, before)
    if before.outline == "square" != after.outline:
        for side in SIDES:
            a, b = (folded(layout.blank, side, y, z) for y, z in
                    ((-layout.blank.behind, 0.0), (layout.blank.tip, layout.blank.thickness)))
            marks.append(Area(rectangle(min(a[0], b[0]), a[1], max(a[0], b[0]), b[1]), STYLE, "blank"))
    return tuple(marks)


def removed_from_behind(layout: Headstock, op: Operation, before: WoodState, after: WoodState) -> Drawing:
    """The same seen from behind, the folded edges left out."""
    marks: list[Mark] = [Disc(MIRROR(d.start[:2]), d.radius, STYLE, d.of) for d in _drilled(op) if d.upright]
    marks += [Area(mark.outer.mapped(MIRROR), STYLE, mark.owner, tuple(o.mapped(MIRROR) for o in mark.openings))
              for mark in _areas(layout, op, before, after)]
    return tuple(marks)


def removed_in_section(layout: Headstock, op: Operation, before: WoodState, after: WoodState, line: SectionLine) -> Drawing:
    """Areas in the section (geometry.drawing.wood_section) that the step takes away."""
    thick = layout.blank.thickness
    face = face_area(layout, before)
    spans = line.spans(face)
    if not spans:
        return ()
    marks: list[Mark] = []
    for d in _drilled(op):
        marks += [Area(cut, STYLE, d.of) for cut in bore_cuts(d, line, spans)]
    for slot, own, then in zip(layout.slots, before.slots, after.slots, strict=True):
        if own != then:
            taken = _solid(cut_spans(slot_cuts(slot, then, thick), line)) - _solid(cut_spans(slot_cuts(slot, own, thick), line))
            marks += [Area(ring_path(part.exterior), STYLE, slot.id) for part in parts(taken)]
    if op.kind in ("ramp", "flat"):
        return (*marks, *_by_hand_in_section(layout, op, before, line, spans))
    for low, high in line.spans(face - face_area(layout, after)):
        marks.append(Area(rectangle(low, -thick, high, 0.0), STYLE, "outline"))
    return tuple(marks)


def section_mark(layout: Headstock, line: SectionLine) -> Drawing:
    """Where the section is taken, as a line across the opened-out view that runs a little over the wood."""
    spans = line.spans(polygon(_whole(layout)))
    if not spans:
        return ()
    low, high = spans[0][0] - 3.0, spans[-1][1] + 3.0
    (x, y), (dx, dy) = line.origin, line.direction
    return (Stroke(straight((x + low * dx, y + low * dy), (x + high * dx, y + high * dy)), "axis", "blank"),)


def _whole(layout: Headstock) -> Path:
    blank = layout.blank
    return rectangle(-blank.bass, -blank.behind, blank.treble, blank.tip)


def _drilled(op: Operation) -> tuple[Drilling, ...]:
    return () if op.kind == "final diameter" else op.drillings


def _areas(layout: Headstock, op: Operation, before: WoodState, after: WoodState) -> list[Area]:
    """What goes in plan: of slots, of the edge under a plate and of the outline."""
    found: list[Area] = []
    thick = layout.blank.thickness
    for slot, own, then in zip(layout.slots, before.slots, after.slots, strict=True):
        if own != then:
            cut = [area for area, _, _ in slot_cuts(slot, then, thick)]
            gone = [area for area, low, high in slot_cuts(slot, own, thick) if low <= 0.0 and high >= own.depth - 1e-6]
            taken = shapely.union_all(cut) - shapely.union_all(gone)
            found += _rings(taken, slot.id)
    face = face_area(layout, before)
    if op.kind == "flat":
        return found + [ring for of, plan in flat_plans(layout, set(op.features)) for ring in _rings(polygon(plan) & face, of)]
    return found + _rings(face - face_area(layout, after), "outline")


def _ramp(layout: Headstock, op: Operation, before: WoodState) -> list[Area]:
    """What a ramp takes of the face in plan, beside what its slot has taken already."""
    found: list[Area] = []
    for slot, own in zip(layout.slots, before.slots, strict=True):
        cut = ramp_cut(slot) if op.kind == "ramp" and slot.id in op.features else None
        if cut is not None:
            found += _rings(polygon(cut.path()) - shapely.union_all([area for area, low, _ in
                            slot_cuts(slot, own, layout.blank.thickness) if low <= 0.0]), slot.id)
    return found


def _by_hand_in_section(layout: Headstock, op: Operation, before: WoodState, line: SectionLine,
                        spans: list[Span]) -> list[Mark]:
    """What a ramp or a flat takes in the section, of the wood that still stands there."""
    thick = layout.blank.thickness
    if op.kind == "flat":
        wood = _solid([(*span, 0.0, thick) for span in spans])
        return [Area(ring_path(part.exterior), STYLE, of) for of, shape in flat_sections(layout, line, set(op.features))
                for part in parts(polygon(shape) & wood)]
    marks: list[Mark] = []
    for slot, own in zip(layout.slots, before.slots, strict=True):
        if slot.id in op.features:
            gone = _solid(cut_spans(slot_cuts(slot, own, thick), line))
            marks += [Area(ring_path(part.exterior), STYLE, slot.id) for shape in ramp_sections(slot, line, thick)
                      for part in parts(polygon(shape) - gone)]
    return marks


def _rings(area: BaseGeometry, owner: str) -> list[Area]:
    return [polygon_area(part, STYLE, owner) for part in parts(area)]


def _solid(cuts: list[tuple[float, float, float, float]]) -> BaseGeometry:
    return shapely.union_all([box(low, -bottom, high, -top) for low, high, top, bottom in cuts])
