"""What is cut by hand for strings and plates: ramps at the nut end of slots, flats under plates; and when."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.operation import BENCH, Operation
from geometry.sequence.wishes import Wishes
from geometry.solids.ramps import ramp_cut
from geometry.strings.square_line import square_line


def hand_operations(layout: Headstock, wishes: Wishes) -> list[Operation]:
    """One operation for each ramp and each flat."""
    show = wishes.told
    made = []
    for slot in layout.to_rout:
        cut = ramp_cut(slot)
        if cut is None:
            continue
        begins = cut.start[1]
        made.append(Operation(
            f"ramp {slot.id}", "ramp", say("Ramp {slot}", slot=slot.id),
            say("Face up: from {begins} above the {line} file a slope {half} wide down to {slot}, from nothing to "
                "{depth} deep over {length} ({angle:.1f} degrees).",
                begins=show(begins), line=square_line(layout.nut), half=show(2 * cut.half), slot=slot.id, depth=wishes.told_down(cut.depth, 2),
                length=show(cut.length, 2), angle=math.degrees(cut.angle)),
            BENCH, (slot.id,)))
    for tuner in layout.tuners:
        if tuner.flat is None or layout.pattern(tuner.pattern).mount != "side":
            continue
        what = (say("a flat {size} long", size=show(tuner.flat.size)) if tuner.flat.shape == "flat" else
                say("a round spot {size} wide", size=show(tuner.flat.size)))
        made.append(Operation(
            f"flat {tuner.id}", "flat", say("Flat for {tuner}", tuner=tuner.id),
            say("Square to the bore of {tuner} cut {what} into the edge about it, {depth} deep, and try the plate on "
                "it.",
                tuner=tuner.id, what=what, depth=wishes.told_down(tuner.flat.depth, 2)), BENCH, (tuner.id,)))
    return made


def ramp_into_an_open_slot(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A ramp runs out into its slot."""
    for ramp in (op for op in ops if op.kind == "ramp"):
        for op in ops:
            if op.kind in ("waste holes", "saw", "rout") and op.features[0] == ramp.features[0]:
                yield Before(op.id, ramp.id,
                             say("The ramp runs out into {feature}: with the slot still full the file has nowhere to "
                                 "go, and the template no flat face to lie on.",
                                 feature=ramp.features[0]),
                             say("the face beside {feature}", feature=ramp.features[0]), "unwise", "then")


def flat_on_the_finished_edge(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A flat is cut into the edge, and the plate's screws go in on it."""
    for flat in (op for op in ops if op.kind == "flat"):
        for op in ops:
            if op.kind in ("cut outline", "rout outline"):
                yield Before(op.id, flat.id,
                             say("There is no edge to cut the flat into yet."), say("the finished edge"),
                             "impossible", "then")
            elif op.kind in ("side bore", "side counterbore") and op.features[0] == flat.features[0]:
                yield Before(op.id, flat.id,
                             say("The bore shows where the flat goes and how it lies."), say("the bore"),
                             "unwise", "then")
            elif op.kind == "edge pilot" and op.features[0] == flat.features[0]:
                yield Before(flat.id, op.id,
                             say("The screws are drilled through the plate as it lies on its flat."),
                             say("the seat of {feature}", feature=flat.features[0]), "unsafe", "then")
