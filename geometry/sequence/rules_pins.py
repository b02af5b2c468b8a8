"""Rules about locating pins: there before the template needs them, there until it is done with them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from geometry import vectors as v
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.drill_ops import SAME_AXIS
from geometry.sequence.operation import Operation
from geometry.sequence.rules_marking import guided, of_kind
from geometry.sequence.shadows import outline_pins, pin_circle, slot_pins
from geometry.solids.slot_area import slot_area
from geometry.terms import term


def pins_before_template(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """The pins bring the template back to its place: drilled before anything that it guides.

    A pin in the waste serves nothing that is cut with a template of the head's shape.
    """
    slots, outline = slot_pins(layout), outline_pins(layout)
    for pin in of_kind(ops, "pin hole"):
        for op in [*guided(ops), *of_kind(ops, "cut outline")]:
            if pin.features[0] not in (slots if op.kind == "rout" else outline):
                continue
            yield Before(pin.id, op.id,
                         say("Without {feature} nothing holds the template in its place.", feature=pin.features[0]),
                         say("the place of the template"), "unsafe", "then")


def pins_before_their_bores(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A bore that swallows a pin hole waits for the router; one that its point must centre comes first."""
    pins = {pin.id: pin for pin in layout.pins}
    for pin_op in of_kind(ops, "pin hole"):
        pin = pins[pin_op.features[0]]
        for op in of_kind(ops, "counterbore", "bore"):
            d = op.drillings[0]
            apart = v.distance(d.start[:2], pin.at)
            if apart >= d.radius + pin.diameter / 2:
                continue
            if apart <= SAME_AXIS and not d.through:
                if len(pin_op.drillings) > 1 and d.diameter > pin_op.drillings[0].diameter:
                    continue  # of a bore that is wider than the pin's own wide_before_narrow tells
                yield Before(op.id, pin_op.id,
                             say("Over the open hole of {pin} the point of the {bit} finds no wood.",
                                 pin=pin.id, bit=op.setup.bit),
                             say("the centre of the {operation}", operation=term(d.operation)), "unsafe",
                             "first")
                continue
            if apart + pin.diameter / 2 <= d.radius:
                yield Before(pin_op.id, op.id,
                             say("Inside the wider bore there is no wood left for {pin}.", pin=pin.id),
                             say("the hole of {pin}", pin=pin.id), "impossible", "first")
            for rout in guided(ops):
                yield Before(rout.id, op.id,
                             say("The bore takes {pin} away, and the template no longer finds its place.", pin=pin.id),
                             say("the hole of {pin}", pin=pin.id), "unsafe", "first")


def pin_in_a_slot(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A slot that holds a pin is emptied after everything else that the template guides."""
    for slot in layout.to_rout:
        area = slot_area(slot)
        if area is None:
            continue
        for pin in layout.pins:
            if not area.intersects(pin_circle(pin)):
                continue
            own = [op for op in of_kind(ops, "waste holes", "saw", "rout") if op.features[0] == slot.id]
            for op in guided(ops):
                if op in own:
                    continue
                for last in own:
                    yield Before(op.id, last.id,
                                 say("Emptying {slot} takes {pin} away, and the template no longer finds its place.",
                                     slot=slot.id, pin=pin.id),
                                 say("the hole of {pin}", pin=pin.id), "unsafe", "first")


def pin_in_the_waste(layout: Headstock, ops: Sequence[Operation]) -> Iterator[Before]:
    """A pin outside the outline goes with the waste: the slots are routed before that."""
    outline = outline_pins(layout)
    for pin in layout.pins:
        if pin.id in outline or pin.id not in slot_pins(layout):
            continue
        for rout in of_kind(guided(ops), "rout"):
            for op in of_kind(ops, "cut outline"):
                yield Before(rout.id, op.id,
                             say("{pin} goes with the waste, and the template no longer finds its place on the slots.",
                                 pin=pin.id),
                             say("the hole of {pin}", pin=pin.id), "unsafe", "first")
