"""Veneers and the scarf joint as layers in a section."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from geometry import vectors as v
from geometry.curves import Path
from geometry.drawing.marks import Area, Mark
from geometry.drawing.section_cut import SectionLine, Span
from geometry.drawing.shapes import chain, rectangle
from geometry.layout import Headstock
from geometry.solids.scarf import Scarf, scarf_of


def layers_in_section(layout: Headstock, line: SectionLine, spans: Iterable[Span], glued: Sequence[str] = ("face", "back")) -> list[Mark]:
    """What is glued on within spans of wood: veneers that are `glued`, and the neck's wood over a scarf joint."""
    blank, joint = layout.blank, scarf_of(layout.blank, layout.nut)
    marks: list[Mark] = []
    for a, b in spans:
        head = _in_head(layout, line, a, b)
        over = None if joint is None else _over(line, a, b, joint)
        marks += [] if over is None else [Area(over, "glued on", "blank")]
        marks += [Area(rectangle(head[0], -bottom, head[1], -top), "glued on", "blank")
                  for surface, top, bottom in blank.veneers if surface in glued and head[0] < head[1]]
    return marks


def wood_in_section(layout: Headstock, line: SectionLine, spans: Iterable[Span],
                    glued: Sequence[str] = ("face", "back")) -> list[tuple[Span, float, float]]:
    """Spans of wood parted at the nut line where veneers end, each with the depths (mm) of its face and its back: behind the line
    those of the core, before it with the veneers that are `glued`."""
    blank = layout.blank
    core = (blank.face_veneer, blank.thickness - blank.back_veneer)
    whole = (0.0 if "face" in glued else core[0], blank.thickness if "back" in glued else core[1])
    found: list[tuple[Span, float, float]] = []
    for a, b in spans:
        low, high = (a, b) if whole == core else _in_head(layout, line, a, b)
        found += [(span, *levels) for span, levels in (((a, low), core), ((low, high), whole), ((high, b), core)) if span[0] < span[1]]
    return found


def _in_head(layout: Headstock, line: SectionLine, a: float, b: float) -> Span:
    """The part of a span (mm along the section) that lies before the nut line; from b to b where none does."""
    at = {s: layout.nut.before(v.along(line.origin, line.direction, s)) for s in (a, b)}
    if at[a] >= 0 and at[b] >= 0:
        return a, b
    if at[a] <= 0 and at[b] <= 0:
        return b, b
    crossed = a + (b - a) * at[a] / (at[a] - at[b])
    return (crossed, b) if at[b] > 0 else (a, crossed)


def _over(line: SectionLine, a: float, b: float, joint: Scarf) -> Path | None:
    """The part of the core over the joint, from a to b along the section; None where there is nothing of it."""
    at = {s: joint.level(v.along(line.origin, line.direction, s)) for s in (a, b)}
    low, high = min(at.values()), max(at.values())
    if high <= joint.top:
        return None
    floor = [(s, min(level, joint.bottom)) for s, level in at.items() if level >= joint.top]
    floor += [(a + (b - a) * (level - at[a]) / (at[b] - at[a]), level) for level in (joint.top, joint.bottom) if low < level < high]
    ends = [(s, joint.top) for s in (b, a) if at[s] > joint.top]
    return chain([(s, -level) for s, level in (*sorted(floor), *ends)], closed=True)
