"""Rules about slots and outline: waste first, router last, seats before their screws."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from geometry.layout import Headstock
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.operation import Operation
from geometry.sequence.rules_marking import of_kind


def waste_before_router(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The cutter takes a thin last cut, not the whole slot or the whole edge."""
    for holes in of_kind(ops, "waste holes"):
        slot = holes.features[0]
        for saw in _of_slot(ops, slot, "saw"):
            yield Before(holes.id, saw.id,
                         say("There is no hole to thread the blade through."), say("a way in for the blade"),
                         "impossible", "then")
        for rout in _of_slot(ops, slot, "rout"):
            yield Before(holes.id, rout.id,
                         say("The cutter would have to clear {slot} in full wood: it grabs, burns and bends.",
                             slot=slot),
                         say("the cutter and its line"), "unsafe", "then")
    for cut in of_kind(ops, "cut outline"):
        for rout in of_kind(ops, "rout outline"):
            yield Before(cut.id, rout.id,
                         say("The cutter would have to clear the whole waste outside the outline: it grabs, and tears "
                             "out where the grain climbs."),
                         say("the cutter and its line"), "unsafe", "then")


def passes_in_turn(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The passes of one plan build on each other."""
    for feature in [*(slot.id for slot in layout.to_rout), OUTLINE]:
        for one, two in pairwise(_of_slot(ops, feature, "rout", "rout outline")):
            yield Before(one.id, two.id,
                         say("The later cut follows the wall that the earlier one left."), say("the wall already cut"),
                         "unsafe", "then")


def saw_before_router(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The saw takes the core out before the router trims the wall."""
    for saw in of_kind(ops, "saw"):
        for rout in _of_slot(ops, saw.features[0], "rout"):
            yield Before(saw.id, rout.id,
                         say("The core between the waste holes comes loose under the cutter and is thrown."),
                         say("the cutter and its line"), "unsafe", "then")


def outline_after_slots(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The waste outside the outline stiffens the rails and carries the router's base and the clamps."""
    for outline, kinds in (("cut outline", ("waste holes", "saw", "rout")), ("rout outline", ("rout",))):
        for last in of_kind(ops, outline):
            for op in of_kind(ops, *kinds):
                yield Before(op.id, last.id,
                             say("With the waste gone the rails spring, and base and clamps have little to stand on."),
                             say("the rails beside {feature}", feature=op.features[0]), "unwise", "first")


def pilots_on_their_seat(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """Screws of a side tuner are drilled through its plate, on the finished edge."""
    for pilot in of_kind(ops, "edge pilot"):
        for op in of_kind(ops, "cut outline", "rout outline"):
            yield Before(op.id, pilot.id,
                         say("The plate of {feature} has no seat before the outline is finished.",
                             feature=pilot.features[0]),
                         say("the seat of {feature}", feature=pilot.features[0]), "impossible", "then")


def _of_slot(ops: Sequence[Operation], feature: str, *kinds: str) -> list[Operation]:
    return [op for op in of_kind(ops, *kinds) if op.features[0] == feature]
