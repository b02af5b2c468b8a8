"""The section that the maker lays across the head by hand: everything that one upright plane cuts.

x runs along the line from its first end, y is up: the face is y = 0, the back
y = -thickness. Millimetres.
"""

from __future__ import annotations

from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks.words import is_small
from geometry.curves import Path
from geometry.curves.polygons import polygon
from geometry.drawing.layers import layers_in_section, wood_in_section
from geometry.drawing.marks import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.ramp_section import flat_sections, ramp_sections
from geometry.drawing.section_cut import SectionLine, Span, wood_area
from geometry.drawing.sections import LETTER, LETTER_WIDTH
from geometry.drawing.shapes import rectangle, straight
from geometry.drawing.slot_marks import slot_style
from geometry.drawing.wood_section import across, cut_in_section, level_cuts
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.solids import Drilling, Hole, once_plugged
from geometry.solids.slot_area import slot_area
from geometry.units import LengthUnit, format_close
from geometry.vectors import Vec2

LEAST = 1.0
"""A line shorter than this shows nothing, mm."""


def line_section(layout: Headstock, a: Vec2, b: Vec2, unit: LengthUnit = "mm") -> Drawing:
    """The cut along the line from a to b (mm, plan), with the lengths of wood, slots and holes along it.

    Empty for a line shorter than 1 mm, and where it meets no blank.
    """
    if v.distance(a, b) < LEAST:
        return ()
    line, end = SectionLine(a, v.unit(v.sub(b, a))), v.distance(a, b)
    blank = layout.blank
    box = polygon(rectangle(-blank.bass, -blank.behind, blank.treble, blank.tip))
    thick = blank.thickness
    spans = _kept(line.spans(box), end)
    if not spans:
        return ()
    marks: list[Mark] = [Area(across(*one), "waste", "blank") for one in wood_in_section(layout, line, spans)]
    area = wood_area(layout)
    wood = [] if area is None else _kept(line.spans(area), end)
    marks += [Area(across(*one), "wood", "outline") for one in wood_in_section(layout, line, wood)]
    marks += layers_in_section(layout, line, spans)
    cut: list[Span] = []
    opened: list[Span] = []
    for slot in layout.slots:
        inside = slot_area(slot)
        if inside is not None:
            marks += [Area(shape, slot_style(slot), slot.id) for shape in ramp_sections(slot, line, thick, 0.0, end)]
        for span in () if inside is None else _kept(line.spans(inside), end):
            marks += [Area(shape, slot_style(slot), slot.id) for shape in cut_in_section(layout, line, span, 0.0, slot.floor(thick))]
            cut.append(span)
    marks += [Area(clipped, "waste", of) for of, clipped in _flats(layout, line, end)]
    for hole in _holes(layout):
        for d in hole.drillings:
            marks += [Area(shape, d.style, d.of)
                      for shape in (_upright(d, line, end) if d.upright else level_cuts(_as_drilled(d), line, spans))]
        opened += _opened(hole, line, wood)
    # A hole in what a slot takes away parts no wood there.
    ends = sorted({x for span in (*wood, *cut) for x in span} | {x for span in opened for x in span if not any(a < x < b for a, b in cut)})
    return (*marks, *_lengths(ends, thick, unit))


def _holes(layout: Headstock) -> tuple[Hole, ...]:
    try:
        return once_plugged(layout)
    except GeometryError:
        return ()


def _as_drilled(d: Drilling) -> Drilling:
    """A drilling from the side; pilots are drilled through the plate when the waste is off, and begin at their seat."""
    return replace(d, mark=None) if is_small(d) else d


def _opened(hole: Hole, line: SectionLine, wood: list[Span]) -> list[Span]:
    """What a hole square to the face takes out of the stretches of wood, where it is widest."""
    chords = [chord for d in hole.drillings if d.upright and (chord := line.chord(d)) is not None]
    if not chords:
        return []
    a, b = min(low for low, _ in chords), max(high for _, high in chords)
    return [(max(a, low), min(b, high)) for low, high in wood if min(b, high) - max(a, low) > 1e-3]


def _flats(layout: Headstock, line: SectionLine, end: float) -> list[tuple[str, Path]]:
    try:
        found = flat_sections(layout, line)
    except GeometryError:
        return []
    return [(of, rectangle(a, y0, b, y1)) for of, (low, y0, high, y1) in ((of, shape.box) for of, shape in found)
            for a, b in _kept([(low, high)], end)]


def _kept(spans: list[Span], end: float) -> list[Span]:
    return [(max(a, 0.0), min(b, end)) for a, b in spans if min(b, end) - max(a, 0.0) > 1e-3]


def _upright(d: Drilling, line: SectionLine, end: float) -> list[Path]:
    chord = line.chord(d)
    low, high = sorted((d.start[2], d.end[2]))
    return [across(span, low, high) for span in (_kept([chord], end) if chord is not None else [])]


def _lengths(ends: list[float], thick: float, unit: LengthUnit) -> list[Mark]:
    """Below the section: how long each stretch is, from wall to wall, a hole at its widest; words that would touch go a row lower."""
    marks: list[Mark] = []
    taken = [-1e9, -1e9, -1e9]
    for a, b in zip(ends, ends[1:], strict=False):
        text = format_close(b - a, unit, mark=unit != "mm")
        half, middle = len(text) * LETTER * LETTER_WIDTH / 2, (a + b) / 2
        row = next((i for i, last in enumerate(taken) if middle - half > last + 1.5), len(taken) - 1)
        taken[row] = middle + half
        base = -thick - 3.4 - LETTER - row * LETTER * 1.8
        marks += [Stroke(straight((x, -thick - 0.6), (x, -thick - 3.0)), "dimension") for x in (a, b)]
        marks.append(Stroke(straight((a, -thick - 1.8), (b, -thick - 1.8)), "dimension"))
        marks.append(Label(text, (middle, base), LETTER, "dimension", anchor="middle"))
    return marks
