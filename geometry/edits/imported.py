"""From loops of a drawing to a layout: outline, slots and holes in the frame of the head."""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Arc, Matrix, Path
from geometry.curves.polygons import crosses_itself
from geometry.edits.parts import checked
from geometry.edits.slot_shapes import slot_shape
from geometry.errors import GeometryError
from geometry.layout import (
    Blank,
    Headstock,
    Loop,
    SingleHole,
    Slot,
    Template,
    feature_ids,
    loop_of,
    validate,
)
from geometry.layout.generic import PATTERNS, RACK
from geometry.lengths import mm
from geometry.lengths import place as place_words
from geometry.saying import say

WASTE = 5.0
"""Least wood left around an imported outline, mm (common practice, no source)."""

Role = tuple[Path, str]
"""A closed path and what it is: outline, slot, hole or other."""


def layout_from(loops: Sequence[Role], place: Matrix, name: str, nut_width: float | None = None) -> Headstock:
    """A new layout around the outline among these loops, mapped by `place`; the blank is made to fit.

    `nut_width` (mm) is the edge that was taken for the nut, as joining.placing tells it: the nut takes it, and its
    strings keep their distance from its ends.

    GeometryError when no loop is the outline, when several are, or when it crosses itself.
    """
    outline = _outline(loops, place)
    x0, y0, x1, y1 = outline.box
    half = math.ceil(max(abs(x0), abs(x1), 1.0) + WASTE)
    blank = Blank(bass=half, treble=half, tip=math.ceil(max(y1, 1.0) + WASTE),
                  behind=math.ceil(max(-y0, 0.0)) + 20.0, thickness=16.0)
    made = Headstock(name=name, about=say("From an imported drawing."), blank=blank, outline=_tidy(loop_of(outline)),
                     patterns=PATTERNS, rack=RACK, template=Template(bit=RACK.bits[3].id))
    if nut_width is not None:
        spread = max(nut_width - (made.nut.width - made.nut.spread), nut_width / 2)
        made = replace(made, nut=replace(made.nut, width=round(nut_width, 3), spread=round(spread, 3)))
    return _with_openings(made, loops, place)


def with_shape(layout: Headstock, loops: Sequence[Role], place: Matrix, openings: bool) -> Headstock:
    """The layout with another outline; with `openings` the slots and single holes are replaced too."""
    made = replace(layout, outline=_tidy(loop_of(_outline(loops, place))))
    return _with_openings(replace(made, slots=(), holes=()) if openings else made, loops if openings else (), place)


def _tidy(loop: Loop) -> Loop:
    """The loop with the dust of turned coordinates rounded away (1e-9 mm)."""
    def clean(at: tuple[float, float]) -> tuple[float, float]:
        return (round(at[0], 9) + 0.0, round(at[1], 9) + 0.0)
    return Loop(nodes=tuple(replace(node, at=clean(node.at), bulge=round(node.bulge, 12),
                                    handles=node.handles and (clean(node.handles[0]), clean(node.handles[1])))
                            for node in loop.nodes))


def _outline(loops: Sequence[Role], place: Matrix) -> Path:
    outlines = [path for path, role in loops if role == "outline"]
    if len(outlines) != 1:
        raise GeometryError(say("Choose one loop as the outline.") if outlines else
                            say("No closed loop is the outline: the drawing has none, or its ends do not meet."))
    outline = outlines[0].mapped(place).counter_clockwise()
    x0, y0, x1, y1 = outline.box
    if max(x1 - x0, y1 - y0) > 4000:
        raise GeometryError(say("The outline measures {width} x {height}, far more than a headstock: give the "
                                "right unit.",
                                width=mm(x1 - x0), height=mm(y1 - y0)))
    at = crosses_itself(outline)
    if at is not None:
        raise GeometryError(say("The outline crosses itself near {place}: mend the drawing first.",
                                place=place_words(at)))
    return outline


def _with_openings(layout: Headstock, loops: Sequence[Role], place: Matrix) -> Headstock:
    taken = set(feature_ids(layout))

    def fresh(word: str) -> str:
        number = 1
        while f"{word} {number}" in taken:
            number += 1
        taken.add(f"{word} {number}")
        return f"{word} {number}"

    slots, holes = list(layout.slots), list(layout.holes)
    for path, role in loops:
        if role == "slot":
            laid = path.mapped(place).counter_clockwise()
            slots.append(Slot(id=fresh("slot"), shape=slot_shape(laid, _tidy(loop_of(laid)))))
        elif role == "hole":
            centre, diameter = _round(path.mapped(place))
            holes.append(SingleHole(id=fresh("hole"), at=(round(centre[0], 9), round(centre[1], 9)),
                                    diameter=round(diameter, 9)))
    # What is farther away than a file may say could be saved, and never be read again.
    checked(layout.outline, say("The outline"))
    return validate(replace(layout, slots=tuple(checked(one, one.id) for one in slots), holes=tuple(checked(one, one.id) for one in holes)))


def _round(path: Path) -> tuple[tuple[float, float], float]:
    """Centre and diameter of a round loop, exact for arcs about one centre."""
    arcs = [s for s in path if isinstance(s, Arc)]
    if len(arcs) == len(path.segments) and all(v.distance(a.centre, arcs[0].centre) < 1e-6 for a in arcs):
        return arcs[0].centre, 2 * arcs[0].radius
    x0, y0, x1, y1 = path.box
    return ((x0 + x1) / 2, (y0 + y1) / 2), 2 * math.sqrt(abs(path.area) / math.pi)
