"""From a few numbers to a whole layout that is sound."""

from __future__ import annotations

import math
from itertools import combinations

from msgspec.structs import replace

from geometry import vectors as v
from geometry.beginning.given_names import in_language
from geometry.beginning.instruments import INSTRUMENTS, strung
from geometry.beginning.needs import (
    SLOT_AFTER,
    SLOT_OUTER,
    SideNeeds,
    needs,
    spread,
)
from geometry.beginning.numbers import FIELDS, Numbers, Refused
from geometry.beginning.pins import centred_pins, pins_in_bores
from geometry.beginning.shape import Shape, shape
from geometry.checks.snags import SPOILS
from geometry.edits.copying import mirror_layout
from geometry.edits.rows import make_row, square_row
from geometry.edits.sound_ramp import ramps_tried
from geometry.errors import GeometryError
from geometry.layout import (
    OTHER,
    Blank,
    DrawnSlot,
    EdgeRun,
    Headstock,
    Loop,
    Node,
    Nut,
    Row,
    RowPlace,
    Slot,
    StraightSlot,
    Template,
    Tuner,
    loop_path,
    slot_path,
    validate,
)
from geometry.layout.blank import Side
from geometry.layout.generic import PATTERNS, RACK
from geometry.layout.shop import Margins
from geometry.lengths import at_least, at_most, mm
from geometry.saying import say
from geometry.solids.frames import frames
from geometry.solids.walls import Wall
from geometry.strings.ramps import dives
from geometry.strings.rubs import rubbing, rubs_between
from geometry.strings.runs import runs
from geometry.vectors import Vec2

BEHIND = 20.0
"""Wood shown behind the nut line, mm."""
ROUNDING = 6.5
"""Of the corners of a slot that opens towards the nut, mm: the generic bit goes round them."""
_TRIES = 5
ON_A_PLATE = 4
"""Tuners to a side that share a plate on instruments with four courses (common practice, no source)."""
DUST = 0.002
"""More than rounding takes from a blank, mm."""


def begin(numbers: Numbers) -> Headstock:
    """A layout with the asked rows of tuners, paired with strings, slots for those through the side, and two pins for
    the template of those slots: where there is none, for the outline's in bores to come, so that no plug is left in the face.

    Refused (a GeometryError) names the number that cannot work and what it
    would have to be; several wrong numbers are named one after the other.
    """
    numbers.counted()
    kind = INSTRUMENTS[numbers.instrument]
    nut = Nut(width=numbers.nut_width, spread=round(spread(numbers), 3), pair=kind.pair, height=kind.height, pitch=numbers.angle,
              scale_length=numbers.scale, slant=numbers.slant)
    rows: dict[Side, SideNeeds] = {side: needs(numbers, side) for side in ("bass", "treble")}
    inwards: dict[Side, float] = {}
    lower: dict[Side, float] = {}
    apart = higher = 0.0
    for _ in range(_TRIES):
        layout = _laid_out(numbers, rows, nut, inwards, lower, apart, higher)
        lacking, web, crown = _lacking(layout), _web_lacks(layout), _crown_lacks(layout)
        near = [side for side in _with_strings_near(layout) if not rows[side].has_slot and lower.get(side, 0.0) < 1.0]
        if not lacking and not web and not crown and not near:
            break
        for side in near:
            lower[side] = min(1.0, lower.get(side, 0.0) + 0.5)
        apart += web
        higher += crown
        for side, lacks in lacking.items():
            inwards[side] = inwards.get(side, 0.0) + lacks + 0.1
    layout = _led_apart(layout)
    if kind.plates:
        layout = _on_plates(layout, numbers)
    made = validate(replace(layout, pins=centred_pins(layout) if layout.to_rout else pins_in_bores(layout)))
    return in_language(mirror_layout(made) if numbers.left_handed else made)


def _on_plates(layout: Headstock, numbers: Numbers) -> Headstock:
    """With each row of as many tuners as share a plate on a straight line, square to it, at the very pitch of the plate and about the
    middle of where it stood: along a curved edge they would bow, fan out, and stand nearer each other than the holes of a plate."""
    for side in ("bass", "treble"):
        if numbers.mount(side) == "face" and numbers.count(side) == ON_A_PLATE:
            layout = make_row(layout, (tuner.id for tuner in layout.tuners if tuner.id.startswith(side)), "straight")
            row = layout.rows[-1]
            heading = round(row.run.heading, 2)
            x, y = v.along(row.run.start, v.turned((1.0, 0.0), math.radians(heading)), (ON_A_PLATE - 1) / 2 * (row.spacing - numbers.pitch))
            run = replace(row.run, start=(round(x, 3), round(y, 3)), heading=heading)
            layout = square_row(replace(layout, rows=(*layout.rows[:-1], replace(row, run=run, spacing=numbers.pitch))), row.id)
    return layout


def _lacking(layout: Headstock) -> dict[Side, float]:
    """How much air the strings of each side lack beside the walls of their slot, where they lack any."""
    found: dict[Side, float] = {}
    for slot in layout.slots:
        air = min((one.beside().air for one in dives(layout, slot)), default=math.inf)
        if air < layout.margins.string_air:
            found["bass" if slot.id.startswith("bass") else "treble"] = layout.margins.string_air - air
    return found


def _with_strings_near(layout: Headstock) -> set[Side]:
    """The sides on which strings come too near each other on their way to their posts."""
    found: set[Side] = set()
    for side in ("bass", "treble"):
        own = [run for run in runs(layout) if run.tuner.startswith(side)]
        if any(near for near, _ in rubs_between(list(combinations(own, 2)), layout.margins.string_air)):
            found.add(side)
    return found


def _led_apart(layout: Headstock) -> Headstock:
    """With posts wound the other way, one after the other, where strings run into each other and fewer strings rub then."""
    placed = frames(layout)
    while True:
        own = runs(layout, placed)
        pairs = list(combinations(own, 2))
        into = {run.tuner for pair, (_, into) in zip(pairs, rubs_between(pairs, layout.margins.string_air), strict=True) if into for run in pair}
        if not into:
            return layout
        others = [replace(layout, tuners=tuple(replace(t, winds=OTHER[t.winds]) if t.id == id else t for t in layout.tuners)) for id in sorted(into)]
        fewest, best = min(((rubbing(other, placed, runs(other, placed)), other) for other in others), key=lambda found: found[0])
        if fewest >= rubbing(layout, placed, own):
            return layout
        layout = best


def _web_lacks(layout: Headstock) -> float:
    """How much wider than it is the web between two slots has to be."""
    if len(layout.slots) < 2:
        return 0.0
    one, two = (Wall(slot_path(slot)) for slot in layout.slots)
    return max(0.0, layout.margins.web - one.to(two)[0])


def _crown_lacks(layout: Headstock) -> float:
    """How much higher than it is the crown has to be for the rail beyond the tip ends of the slots."""
    if not layout.slots:
        return 0.0
    outline, lacks = Wall(loop_path(layout.outline)), 0.0
    for slot in layout.slots:
        path = slot_path(slot)
        rail, here, _ = Wall(path).to(outline)
        if here[1] > path.box[3] - ROUNDING and rail < layout.margins.rail:
            lacks = max(lacks, layout.margins.rail - rail + DUST)
    return lacks


def _laid_out(numbers: Numbers, rows: dict[Side, SideNeeds], nut: Nut, inwards: dict[Side, float], lower: dict[Side, float],
              apart: float, higher: float) -> Headstock:
    """The layout without its pins. `lower`: how far the row of a side lies from the middle of its edge (0) to the nut (1)."""
    strings = strung(numbers)
    made = shape(numbers, rows["bass"], rows["treble"], nut, strings, inwards, apart, higher)
    blank = _blank(numbers, made, rows)
    rails, tuners, slots = [], [], []
    for row in rows.values():
        found = _row(row, made, max(r.run for r in rows.values()), numbers, lower.get(row.side, 0.0))
        rails += found[0]
        tuners += found[1]
        slots += _slot(row, made, found[2])
    layout = Headstock(
        name=say("From numbers"), about=say("Begun from a few numbers; every part of it can be changed."),
        blank=blank, outline=made.loop,
        nut=nut, strings=strings,
        slots=tuple(slots), patterns=PATTERNS, rows=tuple(rails), tuners=tuple(tuners), rack=RACK,
        template=Template(bit=RACK.bits[3].id))
    return replace(layout, slots=tuple(_ramped(layout, slot) for slot in layout.slots))


def _ramped(layout: Headstock, slot: Slot) -> Slot:
    """The slot with the ramp that its strings want, sound or at least not spoiling the work; without one where no ramp
    does it: the checks then say what would."""
    some = slot
    for ramp, snags in ramps_tried(layout, slot):
        if not snags:
            return replace(slot, ramp=ramp)
        if some is slot and all(snag.grade != SPOILS for snag in snags):
            some = replace(slot, ramp=ramp)
    return some


def _blank(numbers: Numbers, made: Shape, rows: dict[Side, SideNeeds]) -> Blank:
    edge = Margins().blank_edge
    x0, _, x1, y1 = loop_path(made.loop).box
    length = _up(y1 + edge + DUST)
    if numbers.length < length:
        raise Refused("length", length, _too_short(numbers, length, rows))
    width = _up(x1 - x0 + 2 * edge + 2 * DUST)
    if numbers.width < width:
        raise Refused("width", width, say("This head is {head} wide, so a blank {width} wide is too narrow: make it "
                                          "{wide} wide, or glue ears on to that width.",
                                          head=mm(round(x1 - x0, 1)), width=mm(numbers.width),
                                          wide=at_least(width)))
    spare = (numbers.width - (x1 - x0)) / 2
    return Blank(bass=round(spare - x0, 3), treble=round(spare + x1, 3), tip=numbers.length, behind=BEHIND,
                 thickness=numbers.thickness)


def _too_short(numbers: Numbers, length: float, rows: dict[Side, SideNeeds]) -> str:
    n = max(numbers.bass, numbers.treble)
    given = {"n": n, "pitch": mm(numbers.pitch), "long": at_least(length), "length": mm(numbers.length)}
    least = max(row.least_pitch for row in rows.values() if row.count)
    nearer = math.floor((numbers.pitch - (length - numbers.length + 1) / max(n - 1, 1)) * 2) / 2
    if nearer < least:
        return say("{n} tuners in a row, {pitch} apart, take a blank {long} long from the nut line; this one is {length}.",
                   **given)
    return say("{n} tuners in a row, {pitch} apart, take a blank {long} long from the nut line; this one is {length}: make it "
               "longer, or set them {nearer} apart.", nearer=at_most(nearer), **given)


def _row(row: SideNeeds, made: Shape, run: float, numbers: Numbers, lower: float) -> tuple[list[Row], list[Tuner], list[float]]:
    """(rows, tuners, arc lengths of the tuners through the side) of one side."""
    side = row.side
    first = made.flare[side] + row.lead + (run - row.run) / 2 * (1 - lower)
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
        string = numbers.strings - i if side == "bass" else i + 1
        winds = "bass" if kind == "side" else OTHER[side]
        tuners.append(Tuner(id=f"{name} {index + 1}", pattern=row.face if kind == "face" else row.through,
                            place=RowPlace(row=runs[name].id, index=index), string=str(string), winds=winds))
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
    flare, lane = made.flare[row.side], made.lanes[row.side]
    low, high = bores[0] - flare - lane.before, bores[-1] - flare + SLOT_AFTER

    def at(along: float, inwards: float) -> Vec2:
        x, y = v.along(v.along(start, way, along), into, inwards)
        return round(x, 3), round(y, 3)
    if lane.straight:
        middle, width = (SLOT_OUTER + lane.inner) / 2, round(lane.inner - SLOT_OUTER, 3)
        return [Slot(id=f"{row.side} slot", shape=StraightSlot(nut_end=at(low, middle), tip_end=at(high, middle), width=width))]
    low, high = low - ROUNDING, high + ROUNDING
    grows = (lane.inner_nut - lane.inner_tip) / max(bores[-1] - bores[0] + lane.before, 1.0)
    inner_end = max(lane.inner_tip - grows * (high - bores[-1] + flare), SLOT_OUTER + 2.1 * ROUNDING)
    corners = [at(low, SLOT_OUTER), at(high, SLOT_OUTER), at(high, inner_end),
               at(low, lane.inner_nut + grows * ROUNDING)]
    return [Slot(id=f"{row.side} slot", shape=DrawnSlot(loop=rounded(corners if row.side == "treble" else corners[::-1])))]


def rounded(corners: list[Vec2]) -> Loop:
    """The loop through some corners that turn left, each rounded by ROUNDING."""
    nodes = []
    for i, p in enumerate(corners):
        before, after = v.unit(v.sub(corners[i - 1], p)), v.unit(v.sub(corners[(i + 1) % len(corners)], p))
        turn = math.pi - math.acos(max(-1.0, min(1.0, v.dot(before, after))))
        back = ROUNDING * math.tan(turn / 2)
        first, last = v.along(p, before, back), v.along(p, after, back)
        nodes += [Node(at=(round(first[0], 3), round(first[1], 3)), bulge=math.tan(turn / 4)),
                  Node(at=(round(last[0], 3), round(last[1], 3)))]
    return Loop(nodes=tuple(nodes))


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
            numbers = replace(numbers, **{refused.field: refused.value})
    raise GeometryError(said[-1])
