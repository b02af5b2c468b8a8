"""Rules about bores: before slots, before the outline, wide before narrow."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise, product

import shapely

from geometry import vectors as v
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.drill_ops import SAME_AXIS
from geometry.sequence.operation import Operation
from geometry.sequence.rules_marking import of_kind
from geometry.sequence.shadows import drilled, outline_area, outline_line
from geometry.solids.drilling import Drilling, holes
from geometry.solids.slot_area import slot_area
from geometry.terms import term

SLOT_WORK = ("waste holes", "saw", "rout")
UPRIGHT = ("pin hole", "counterbore", "bore")


def _sideways(ops: Sequence[Operation]) -> list[Operation]:
    """Operations drilled into a square edge at the drill press."""
    return of_kind(ops, "side counterbore", "side bore")


def side_bores_before_slots(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A side bore that runs into a slot is drilled while the slot is still full of wood."""
    slots = {slot.id: slot for slot in layout.to_rout}
    for bore in _sideways(ops):
        d = bore.drillings[0]
        way = drilled(d)
        for op in of_kind(ops, *SLOT_WORK):
            slot = slots[op.features[0]]
            area = slot_area(slot)
            if area is not None and slot.floor(layout.blank.thickness) > d.start[2] - d.radius and area.intersects(way):
                yield Before(bore.id, op.id,
                             say("The drill would break out into {slot}, open by then: no wood stands behind the "
                                 "wall, and past it the drill wanders.",
                                 slot=slot.id),
                             say("the wall of {slot}", slot=slot.id), "unsafe", "first")


def side_bores_before_outline(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Side bores need the square edge for vice, fence and mark."""
    for bore in _sideways(ops):
        for op in of_kind(ops, "cut outline", "rout outline"):
            yield Before(bore.id, op.id,
                         say("Once the outline is cut there is no square edge left: nothing for the vice to hold, and "
                             "the mark is gone with the waste."),
                         say("the square {edge}", edge=term(bore.setup.side)), "impossible", "first")


def wide_before_narrow(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """On one axis the wider bore first: its centre point needs wood."""
    made = {d.id: op for op in ops if op.kind != "final diameter" for d in op.drillings}
    for axis in _axes(layout):
        steps = sorted((d for d in axis if d.id in made), key=lambda d: -d.diameter)
        for wider, narrower in pairwise([list(same) for _, same in groupby(steps, key=lambda d: d.diameter)]):
            for wide, narrow in product(wider, narrower):
                op, after = made[wide.id], made[narrow.id]
                if op.id != after.id:
                    yield Before(op.id, after.id,
                                 say("Over an open bore the point of the {bit} finds no wood: it wanders and tears the "
                                     "rim.",
                                     bit=op.setup.bit),
                                 say("the centre of the {operation}", operation=term(wide.operation)), "unsafe",
                                 "first")


def _axes(layout: Headstock) -> list[list[Drilling]]:
    """The drillings on each axis, locating pins left out, which have a rule of their own: a single hole may stand on a tuner's bore."""
    axes: list[list[Drilling]] = []
    for hole in holes(layout):
        own = [d for d in hole.drillings if d.role != "locating"]
        there = None
        if own and own[0].role == "hole":
            at = own[0].start[:2]
            there = next((axis for axis in axes if axis[0].upright and v.distance(axis[0].start[:2], at) <= SAME_AXIS), None)
        if there is not None:
            there += own
        elif own:
            axes.append(own)
    return axes


def bores_beside_slots(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Bores close to a slot are drilled while the slot is full."""
    for bore in of_kind(ops, *UPRIGHT):
        widest = max(bore.drillings, key=lambda d: d.diameter)
        axis = shapely.Point(widest.start[:2])
        for slot in layout.to_rout:
            area = slot_area(slot)
            if area is None or area.distance(axis) - widest.radius > 2 * layout.margins.bore_slot:
                continue
            for op in of_kind(ops, *SLOT_WORK):
                if op.features[0] == slot.id:
                    yield Before(bore.id, op.id,
                                 say("Beside {slot}, open by then, the thin wall gives way to the drill.",
                                     slot=slot.id),
                                 say("the wood between {feature} and {slot}", feature=bore.features[0], slot=slot.id),
                                 "unwise", "first")


def bores_before_outline(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Bores in the head are drilled in the square blank: it lies against fence and clamps, and waste backs the wood beside them."""
    line, wood = outline_line(layout.outline), outline_area(layout.outline)
    for bore in of_kind(ops, *UPRIGHT):
        widest = max(bore.drillings, key=lambda d: d.diameter)
        if not wood.intersects(drilled(widest)):
            continue
        away = line.distance(shapely.Point(widest.start[:2])) - widest.radius
        near = away <= 2 * layout.margins.bore_outline
        reason = (say("With the waste gone nothing backs the wood between bore and edge, and it can split off.") if near else
                  say("The square blank lies against fence and clamps; the shape of the head gives them little to hold."))
        protects = (say("the wood between {feature} and the outline", feature=bore.features[0]) if near else
                    say("the place of {feature}", feature=bore.features[0]))
        for op in of_kind(ops, "cut outline", "rout outline"):
            yield Before(bore.id, op.id, reason, protects, "unwise", "first")


def pilots_after_posts(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Put the tuner in its bore and look before drilling for its screws."""
    posts = {d.of: op for op in of_kind(ops, "bore", "side bore", "pin hole") for d in op.drillings if d.role == "post"}
    for pilot in of_kind(ops, "pilot", "edge pilot"):
        post = posts.get(pilot.features[0])
        if post is None:
            continue
        tuner = pilot.features[0]
        if pilot.kind == "edge pilot":
            yield Before(post.id, pilot.id,
                         say("The plate of {tuner} is held in place by its post: without the bore it cannot be used "
                             "to drill through.",
                             tuner=tuner),
                         say("the place of the plate of {tuner}", tuner=tuner), "impossible", "then")
        else:
            yield Before(post.id, pilot.id,
                         say("With the post of {tuner} in its bore you can see whether its screws fall on the marks "
                             "before you drill them.",
                             tuner=tuner),
                         say("the fit of {tuner}", tuner=tuner), "unwise", "then")
