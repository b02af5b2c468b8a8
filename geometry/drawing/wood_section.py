"""A section through the piece as it is at a step of the running order, to scale.

x runs along the section line from where it enters the blank, y is up: the face
is y = 0, the back y = -thickness. Millimetres.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.curves import Path
from geometry.curves.polygons import grown, polygon
from geometry.drawing.layers import layers_in_section, wood_in_section
from geometry.drawing.marks import Area, Drawing, Label, Mark
from geometry.drawing.ramp_section import flat_sections, ramp_sections
from geometry.drawing.section_cut import SectionLine, Span, edge_distance
from geometry.drawing.shapes import chain, rectangle
from geometry.drawing.slot_marks import slot_style
from geometry.drawing.wood_state import SAWN_INSIDE, cut_by_hand, face_area
from geometry.layout import Headstock, Slot, loop_path, slot_path
from geometry.lengths import from_line
from geometry.saying import say
from geometry.sequence.operation import Operation
from geometry.sequence.state import SlotState, WoodState
from geometry.solids.drilling import Drilling
from geometry.solids.frames import frame
from geometry.solids.ramps import RampCut, ramp_cut
from geometry.solids.slot_area import slot_area
from geometry.strings.square_line import square_line
from geometry.units import LengthUnit, format_close

LETTER = 1.9
"""Capital height of the words, mm."""
STEPS = 32
"""Chords along each half of a bore that the section cuts at an angle."""


def section_for(layout: Headstock, op: Operation | None = None) -> SectionLine:
    """Where to look at an operation: along a side bore, else straight across through the middle of what it cuts."""
    blank = layout.blank
    if op is not None and op.drillings and not op.drillings[0].upright:
        d = op.drillings[0]
        return SectionLine((d.mark or d.start)[:2], d.direction[:2])
    if op is not None and op.kind == "glue scarf":
        return SectionLine((0.0, -blank.behind), (0.0, 1.0))
    y = sum(loop_path(layout.outline).box[1::2]) / 2
    if op is not None and op.drillings:
        y = op.drillings[0].start[1]
    elif op is not None and op.features:
        slot = next((s for s in layout.slots if s.id == op.features[0]), None)
        ear = next((e for e in layout.ears if e.id == op.features[0]), None)
        if slot is not None and op.kind == "ramp" and (cut := ramp_cut(slot)) is not None:
            return _along_ramp(layout, cut)
        tuner = next((t for t in layout.tuners if t.id == op.features[0]), None)
        if tuner is not None and op.kind == "flat":
            seat = frame(layout, tuner)
            out = v.scale(seat.w[:2], -1.0)
            reach = max(edge_distance(blank, seat.origin[:2], out), 0.0)
            return SectionLine(v.along(seat.origin[:2], out, reach), seat.w[:2])
        if slot is not None:
            y = sum(slot_path(slot).box[1::2]) / 2
        elif ear is not None:
            y = (ear.start + ear.end) / 2
    return SectionLine((-blank.bass, y), (1.0, 0.0))


def _along_ramp(layout: Headstock, cut: RampCut) -> SectionLine:
    """From the border of the blank towards the tip, along the middle of a ramp."""
    back = v.scale(cut.axis, -1.0)
    reach = max(edge_distance(layout.blank, cut.start, back), 0.0)
    return SectionLine(v.along(cut.start, back, reach), cut.axis)


def wood_section(layout: Headstock, state: WoodState, line: SectionLine, unit: LengthUnit = "mm") -> Drawing:
    """The cut through the piece at a state. GeometryError when the outline has no inside; empty where there is no wood."""
    thick = layout.blank.thickness
    face = face_area(layout, state)
    spans = line.spans(face)
    if not spans:
        return ()
    marks: list[Mark] = [Area(across(*one), "waste", "blank") for one in wood_in_section(layout, line, spans, state.veneers)]
    if state.outline == "routed" or "face" in state.papers:
        inside = line.spans(polygon(loop_path(layout.outline)) & face)
        marks += [Area(across(*one), "wood", "outline") for one in wood_in_section(layout, line, inside, state.veneers)]
    marks += layers_in_section(layout, line, spans, state.veneers)
    ramps = cut_by_hand(state, "ramp")
    for slot, own in zip(layout.slots, state.slots, strict=True):
        if slot.id in ramps:
            marks += [Area(shape, "slot", slot.id) for shape in ramp_sections(slot, line, thick)]
        marks += [Area(shape, slot_style(slot), slot.id) for low, high, top, bottom in cut_spans(slot_cuts(slot, own, thick), line)
                  for shape in cut_in_section(layout, line, (low, high), top, bottom, state.veneers)]
    for d in state.to_be_seen:
        marks += [Area(cut, d.style, d.of) for cut in bore_cuts(d, line, spans)]
    if state.outline != "square":
        marks += [Area(shape, "waste", of) for of, shape in flat_sections(layout, line, cut_by_hand(state, "flat"))]
    if line.direction == (1.0, 0.0):
        along = line.origin[1]
        words = say("across, {place}", place=from_line(along, format_close(abs(along), unit, mark=True), square_line(layout.nut)))
    elif line.direction == (0.0, 1.0) and line.origin[0] == 0.0:
        words = say("along the centreline")
    else:
        bored = any(d.direction[:2] == line.direction for d in state.drillings)
        words = say("along the bore") if bored else say("along the slot")
    marks.append(Label(words, (spans[0][0], 2.0), LETTER, "note"))
    return tuple(marks)


def across(span: Span, top: float, bottom: float) -> Path:
    """A span of a section from one depth below the face to another (mm), as it is drawn: depths downwards."""
    return rectangle(span[0], -bottom, span[1], -top)


def slot_cuts(slot: Slot, own: SlotState, thick: float) -> list[tuple[BaseGeometry, float, float]]:
    """(area in plan, from, to below the face) of what is cut of a slot at a state, mm."""
    area = slot_area(slot)
    if area is None:
        return []
    cut: list[tuple[BaseGeometry, float, float]] = [(area, c.start, c.end) for c in own.routed]
    if own.sawn and not own.open:
        cut.append((grown(area, -SAWN_INSIDE), 0.0, thick))
    if own.waste_holes is not None and not own.open:
        row = own.waste_holes
        cut += [(shapely.Point(c).buffer(row.diameter / 2), 0.0, min(row.depth, thick)) for c in row.centres]
    return cut


def cut_spans(cuts: list[tuple[BaseGeometry, float, float]], line: SectionLine) -> list[tuple[float, float, float, float]]:
    """(from, to along the section line, from, to below the face) where it crosses what is cut, mm."""
    return [(*span, top, bottom) for part, top, bottom in cuts for span in line.spans(part)]


def cut_in_section(layout: Headstock, line: SectionLine, span: Span, top: float, bottom: float,
                   glued: Sequence[str] = ("face", "back")) -> list[Path]:
    """What is cut along a span of a section from one depth below the face to another (mm), as far as there is wood: behind the nut
    line, where no veneer lies, and before the veneers that are not `glued` yet there is only the core."""
    return [across(part, max(top, face), min(bottom, back)) for part, face, back in wood_in_section(layout, line, [span], glued)
            if max(top, face) < min(bottom, back)]


def bore_cuts(d: Drilling, line: SectionLine, spans: list[Span]) -> list[Path]:
    """What the section plane cuts out of a bore in the wood `spans`."""
    if not d.upright:
        return level_cuts(d, line, spans)
    cut = _upright_cut(d, line)
    return [] if cut is None else [cut]


def _upright_cut(d: Drilling, line: SectionLine) -> Path | None:
    """What the section plane cuts out of an upright bore; None when it misses it."""
    span = line.chord(d)
    if span is None:
        return None
    low, high = sorted((d.start[2], d.end[2]))
    return across(span, low, high)


def level_cuts(d: Drilling, line: SectionLine, spans: list[Span]) -> list[Path]:
    """What the section plane cuts out of a bore from the side; nothing when it misses it.

    The bore was drilled from its mark on the square edge and is shown in what is there of that wood, the `spans`. A line
    along the axis gives a rectangle, one across it an ellipse.
    """
    start, length = (d.start, d.depth) if d.mark is None else (d.mark, d.stop)
    axis = d.direction[:2]
    turn = v.cross(axis, line.direction)
    off = v.cross(axis, v.sub(line.origin, start[:2]))
    lead, along = v.dot(axis, line.direction), v.dot(axis, v.sub(line.origin, start[:2]))
    inside = _between(turn, off, -d.radius, d.radius)
    reach = _between(lead, along, 0.0, length)
    if inside is None or reach is None:
        return []
    found = []
    for first, last in spans:
        low, high = max(inside[0], reach[0], first), min(inside[1], reach[1], last)
        if high - low <= 1e-3:
            continue
        s = (low + high) / 2 - (high - low) / 2 * np.cos(np.linspace(0.0, math.pi, STEPS + 1))
        half = np.sqrt(np.maximum(0.0, d.radius ** 2 - (off + turn * s) ** 2))
        z = start[2]
        upper = [(float(x), float(-z + h)) for x, h in zip(s, half, strict=True)]
        lower = [(float(x), float(-z - h)) for x, h in zip(s, half, strict=True) if h > 1e-9]
        found.append(chain([*upper, *reversed(lower)], closed=True))
    return found


def _between(slope: float, at: float, low: float, high: float) -> Span | None:
    """Where low <= at + slope * s <= high; None nowhere."""
    if abs(slope) < 1e-12:
        return (-math.inf, math.inf) if low <= at <= high else None
    ends = sorted(((low - at) / slope, (high - at) / slope))
    return ends[0], ends[1]
