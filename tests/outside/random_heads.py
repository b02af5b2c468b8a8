"""Heads at random, with everything that a running order can have to do: ears, veneers, flats, pegs, pockets, blind and drawn slots."""

import random

from msgspec.structs import replace

from geometry.beginning.begin import mended
from geometry.beginning.instruments import INSTRUMENTS, usual
from geometry.beginning.numbers import MOUNTS
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Ear, Flat, Headstock, Loop, Node, SingleHole, Slot, StraightSlot, validate
from geometry.sequence import NoPins
from geometry.sequence.pin_plan import plan_pins


def numbers_at_random(chance: random.Random):
    """The numbers of a head to begin with."""
    given = usual(chance.choice(sorted(INSTRUMENTS)))
    bass, treble = chance.choice(((2, 2), (3, 3), (4, 3), (6, 0), (0, 6), (4, 4), (5, 5), (6, 6), (2, 4)))
    return replace(given, bass=bass, treble=treble, bass_mount=chance.choice(MOUNTS), treble_mount=chance.choice(MOUNTS),
                   pitch=chance.uniform(22.0, 44.0), thickness=chance.uniform(12.0, 19.0), courses=False,
                   slant=chance.choice((0.0, 0.0, 0.0, chance.uniform(-12.0, 12.0))), left_handed=chance.random() < 0.3)


def at_random(seed: int) -> Headstock:
    """A valid layout, its snags as they come."""
    chance = random.Random(seed)
    while True:
        try:
            _, layout, _ = mended(numbers_at_random(chance))
            break
        except GeometryError:
            continue
    for change in (_wood, _shaken, _ears, _flats, _holes, _slots, _tools, _pins):
        try:
            layout = validate(change(chance, layout))
        except GeometryError:
            continue
    return replace(layout, blank=replace(layout.blank, finish=chance.random() < 0.3))


def _wood(chance: random.Random, layout: Headstock) -> Headstock:
    blank = layout.blank
    return replace(layout, blank=replace(
        blank, bass=blank.bass + chance.choice((0.0, chance.uniform(0.0, 12.0))), treble=blank.treble + chance.choice((0.0, chance.uniform(0.0, 12.0))),
        behind=chance.choice((0.0, 20.0, 35.0)), face_veneer=chance.choice((0.0, 0.0, 0.7, 2.0)), back_veneer=chance.choice((0.0, 0.0, 0.6)),
        scarf=chance.choice((None, None, 60.0)), hard_wood=chance.random() < 0.3))


def _shaken(chance: random.Random, layout: Headstock) -> Headstock:
    """Some nodes of the upper outline moved a little."""
    if chance.random() < 0.5:
        return layout
    high = max(node.at[1] for node in layout.outline.nodes)
    nodes = [replace(node, at=(node.at[0] + chance.uniform(-2.0, 2.0), node.at[1] + chance.uniform(-2.0, 0.0))) if 15.0 < node.at[1] <= high else node
             for node in layout.outline.nodes]
    return replace(layout, outline=Loop(nodes=tuple(nodes)))


def _ears(chance: random.Random, layout: Headstock) -> Headstock:
    sides = chance.choice(((), (), ("bass",), ("bass", "treble")))
    return replace(layout, ears=tuple(Ear(id=f"{side} ear", side=side, width=chance.uniform(6.0, 25.0), start=chance.choice((-layout.blank.behind, 20.0)),
                                          end=layout.blank.tip) for side in sides))


def _flats(chance: random.Random, layout: Headstock) -> Headstock:
    tuners = []
    for tuner in layout.tuners:
        if layout.pattern(tuner.pattern).mount == "side" and chance.random() < 0.4:
            tuner = replace(tuner, flat=Flat(shape=chance.choice(("flat", "spot")), size=chance.uniform(12.0, 30.0), depth=chance.uniform(0.3, 1.5)))
        tuners.append(tuner)
    return replace(layout, tuners=tuple(tuners))


def _spot(chance: random.Random, layout: Headstock) -> tuple[float, float]:
    return chance.uniform(-30.0, 30.0), chance.uniform(10.0, layout.blank.tip - 10.0)


def _holes(chance: random.Random, layout: Headstock) -> Headstock:
    made = []
    for k in range(chance.choice((0, 0, 1, 3))):
        drill = chance.choice(layout.rack.drills)
        made.append(SingleHole(id=f"extra {k}", at=_spot(chance, layout), diameter=drill.diameter, depth=chance.choice((None, chance.uniform(3.0, 9.0))),
                               surface=chance.choice(("face", "back")), there=chance.random() < 0.3))
    return replace(layout, holes=tuple(made))


def _slots(chance: random.Random, layout: Headstock) -> Headstock:
    kind = chance.choice(("", "", "blind", "drawn", "pocket"))
    if not kind:
        return layout
    x, y = chance.uniform(-6.0, 6.0), chance.uniform(25.0, 90.0)
    if kind == "drawn":
        w, h = chance.uniform(9.0, 14.0), chance.uniform(15.0, 40.0)
        corners = ((x - w, y), (x + w, y + 2.0), (x + w / 2, y + h), (x - w, y + h))
        shape = DrawnSlot(loop=Loop(nodes=tuple(Node(at=corner, bulge=chance.choice((0.0, 0.0, 0.15))) for corner in corners)))
    else:
        shape = StraightSlot(nut_end=(x, y), tip_end=(x + chance.uniform(-5.0, 5.0), y + chance.uniform(5.0, 40.0)), width=chance.uniform(7.0, 16.0))
    there = kind == "pocket"
    depth = chance.choice((None, chance.uniform(3.0, 10.0))) if kind == "drawn" else chance.uniform(3.0, 10.0)
    return replace(layout, slots=(*layout.slots, Slot(id="extra slot", shape=shape, depth=depth, there=there)))


def _tools(chance: random.Random, layout: Headstock) -> Headstock:
    bits = [bit for bit in layout.rack.bits if chance.random() < 0.75] or list(layout.rack.bits)
    bushes = [bush for bush in layout.rack.bushes if chance.random() < 0.6]
    template = replace(layout.template, bit=bits[0].id, bush=None, thickness=chance.choice((6.0, 9.0, 12.0)), board=chance.choice(("outline", "blank")))
    return replace(layout, rack=replace(layout.rack, bits=tuple(bits), bushes=tuple(bushes)), template=template)


def _pins(chance: random.Random, layout: Headstock) -> Headstock:
    if chance.random() < 0.2:
        return replace(layout, pins=layout.pins[:chance.choice((0, 1))])
    found = plan_pins(replace(layout, pins=()))
    return layout if isinstance(found, NoPins) else replace(layout, pins=found.pins)
