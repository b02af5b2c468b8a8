"""From a few numbers to a whole layout that is sound."""

from __future__ import annotations

import math
from dataclasses import replace as replaced

from msgspec.structs import replace

from geometry import vectors as v
from geometry.beginning.needs import (
    LEAD,
    LEAST_PITCH,
    PAIR,
    SLOT_AFTER,
    SLOT_BEFORE,
    SLOT_INNER,
    SLOT_OUTER,
    THROUGH_SIDE,
    SideNeeds,
    needs,
    spread,
)
from geometry.beginning.numbers import FIELDS, Numbers, Refused
from geometry.beginning.pins import centred_pins
from geometry.beginning.shape import Shape, shape
from geometry.errors import GeometryError
from geometry.layout import (
    Blank,
    EdgeRun,
    Headstock,
    Nut,
    Row,
    RowPlace,
    Slot,
    StraightSlot,
    String,
    Template,
    Tuner,
    loop_path,
    validate,
)
from geometry.layout.generic import PATTERNS, RACK
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.strings.ramps import freeing_ramp

BEHIND = 20.0
"""Wood shown behind the nut line, mm."""
DUST = 0.002
"""More than rounding takes from a blank, mm."""
THICKEST, THINNEST = 1.2, 0.25
"""Diameters of the first and the last string, mm (invented; the maker types his own)."""


def begin(numbers: Numbers) -> Headstock:
    """A layout with the asked rows of tuners, paired with strings, slots for those through the side, and two pins.

    Refused (a GeometryError) names the number that cannot work and what it
    would have to be; several wrong numbers are named one after the other.
    """
    numbers.counted()
    between = spread(numbers)
    rows = {side: needs(numbers, side) for side in ("bass", "treble")}
    made = shape(numbers, rows["bass"], rows["treble"], between)
    blank = _blank(numbers, made)
    runs, tuners, slots = [], [], []
    for row in rows.values():
        found = _row(row, made, max(r.run for r in rows.values()), numbers)
        runs += found[0]
        tuners += found[1]
        slots += _slot(row, made, found[2])
    layout = Headstock(
        name=say("From numbers"), about=say("Begun from a few numbers; every part of it can be changed."),
        blank=blank, outline=made.loop,
        nut=Nut(width=numbers.nut_width, spread=round(between, 3), pair=PAIR), strings=_strings(numbers),
        slots=tuple(slots), patterns=PATTERNS, rows=tuple(runs), tuners=tuple(tuners), rack=RACK,
        template=Template(bit=RACK.bits[3].id))
    layout = replace(layout, slots=tuple(_ramped(layout, slot) for slot in layout.slots))
    return validate(replace(layout, pins=centred_pins(layout)))


def _ramped(layout: Headstock, slot: Slot) -> Slot:
    """The slot with the ramp that its strings want; without one where no ramp does it: the checks then say what would."""
    try:
        return replace(slot, ramp=freeing_ramp(layout, slot.id))
    except GeometryError:
        return slot


def _blank(numbers: Numbers, made: Shape) -> Blank:
    edge = Margins().blank_edge
    x0, _, x1, y1 = loop_path(made.loop).box
    length = _up(y1 + edge + DUST)
    if numbers.length < length:
        raise Refused("length", length, _too_short(numbers, length))
    width = _up(x1 - x0 + 2 * edge + 2 * DUST)
    if numbers.width < width:
        raise Refused("width", width, say("This head is {head:.1f} mm wide, so a blank {width:g} mm wide is too narrow: "
                                          "make it {wide:g} mm wide, or glue ears on to that width.",
                                          head=x1 - x0, width=numbers.width, wide=width))
    spare = (numbers.width - (x1 - x0)) / 2
    return Blank(bass=round(spare - x0, 3), treble=round(spare + x1, 3), tip=numbers.length, behind=BEHIND,
                 thickness=numbers.thickness)


def _too_short(numbers: Numbers, length: float) -> str:
    n = max(numbers.bass, numbers.treble)
    given = {"n": n, "pitch": numbers.pitch, "long": length, "length": numbers.length}
    least = max(LEAST_PITCH[numbers.mount(side)] for side in ("bass", "treble") if numbers.count(side))
    nearer = math.floor((numbers.pitch - (length - numbers.length + 1) / max(n - 1, 1)) * 2) / 2
    if nearer < least:
        return say("{n} tuners in a row, {pitch:g} mm apart, take a blank {long:g} mm long from the nut line; this one is "
                   "{length:g} mm.", **given)
    return say("{n} tuners in a row, {pitch:g} mm apart, take a blank {long:g} mm long from the nut line; this one is "
               "{length:g} mm: make it longer, or set them {nearer:g} mm apart.", nearer=nearer, **given)


def _row(row: SideNeeds, made: Shape, run: float, numbers: Numbers) -> tuple[list[Row], list[Tuner], list[float]]:
    """(rows, tuners, arc lengths of the tuners through the side) of one side."""
    side = row.side
    first = made.flare[side] + LEAD + (run - row.run) / 2
    step = row.pitch * (2 if row.mount == "mixed" else 1)
    runs: dict[str, Row] = {}
    tuners: list[Tuner] = []
    bores: list[float] = []
    for i, kind in enumerate(row.kinds):
        along = first + i * row.pitch
        name = f"{side} {kind}" if row.mount == "mixed" else side
        if name not in runs:
            inset = row.inset if kind == "face" else 0.0
            runs[name] = Row(id=f"{name} row", spacing=step, run=EdgeRun(side=side, first=round(along, 3), inset=inset))
        index = i // 2 if row.mount == "mixed" else i
        string = i + 1 if side == "bass" else numbers.strings - i
        winds = "bass" if kind == "side" or side == "treble" else "treble"
        tuners.append(Tuner(id=f"{name} {index + 1}", pattern=row.face if kind == "face" else THROUGH_SIDE,
                            place=RowPlace(row=f"{name} row", index=index), string=str(string), winds=winds))
        if kind == "side":
            bores.append(along)
    return list(runs.values()), tuners, bores


def _slot(row: SideNeeds, made: Shape, bores: list[float]) -> list[Slot]:
    """The slot across which the posts of a side's tuners lie, parallel to the run of its edge."""
    if not bores:
        return []
    start, end = made.run[row.side]
    way = v.unit(v.sub(end, start))
    into = v.left(way) if row.side == "treble" else v.right(way)
    middle = (SLOT_OUTER + SLOT_INNER) / 2
    flare = made.flare[row.side]
    low, high = bores[0] - flare - SLOT_BEFORE, bores[-1] - flare + SLOT_AFTER
    ends = [v.along(v.along(start, way, at), into, middle) for at in (low, high)]
    nut_end, tip_end = ((round(x, 3), round(y, 3)) for x, y in ends)
    return [Slot(id=f"{row.side} slot", shape=StraightSlot(nut_end=nut_end, tip_end=tip_end,
                                                           width=round(SLOT_INNER - SLOT_OUTER, 3)))]


def _strings(numbers: Numbers) -> tuple[String, ...]:
    count = numbers.strings
    return tuple(String(id=str(i + 1), diameter=round(THICKEST * (THINNEST / THICKEST) ** (i / (count - 1)), 2),
                        course=i // 2 + 1 if numbers.courses else i + 1) for i in range(count))


def _up(value: float) -> float:
    """Up to the next half millimetre."""
    return math.ceil(value * 2 - 1e-9) / 2


def mended(numbers: Numbers) -> tuple[Numbers, Headstock, tuple[str, ...]]:
    """(numbers that work, their layout, what was refused on the way): each refused number takes the value named.

    GeometryError when a number is refused for which no value would do.
    """
    said: list[str] = []
    while len(said) <= len(FIELDS):
        try:
            return numbers, begin(numbers), tuple(said)
        except Refused as refused:
            said.append(str(refused))
            numbers = replaced(numbers, **{refused.field: refused.value})
    raise GeometryError(said[-1])
