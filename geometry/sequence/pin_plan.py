"""Two locating pins for what is planned: where they go, why there, and where else they might stand."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct
from msgspec.structs import replace
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.cancellation import Ask, go_on
from geometry.layout import Headstock, Pin
from geometry.layout.names import OUTLINE, feature_names
from geometry.routing import plan_routing
from geometry.saying import say
from geometry.sequence.pin_places import AXIS, later_holes, places
from geometry.sequence.pins import NoPins, propose_pins
from geometry.sequence.plans import Routing, routings
from geometry.units import LengthUnit, format_close, usual_pin


class PinPlan(Struct, frozen=True):
    """A proposal; `free` are the centres of all legal pins of that size, in the waste and in wood that stays."""

    pins: tuple[Pin, Pin]
    turns_over: bool
    words: str
    free: tuple[BaseGeometry, BaseGeometry]


def plan_pins(layout: Headstock, unit: LengthUnit = "mm", ask: Ask = go_on) -> PinPlan | NoPins:
    """Where two pins go, mirrored about the centreline if the template has to turn over.

    They are as wide as the layout's first pin, else of the usual width in the unit. `ask` is asked between parts of the routing
    plan. GeometryError when the outline has no inside.
    """
    size = layout.pins[0].diameter if layout.pins else usual_pin(unit)
    flip = turns_over(routings(layout, plan_routing(layout, ask)))
    ask()
    found = propose_pins(layout, flip, size)
    if isinstance(found, NoPins):
        return found
    found = _named(layout, found)
    return PinPlan(found, flip, _words(layout, found, flip, unit), _free(layout, size))


def turns_over(plans: Mapping[str, Routing]) -> bool:
    """Whether a slot is routed along the template from the back."""
    return any(trip.side == "back" and trip.template for of, plan in plans.items() if of != OUTLINE for trip in plan.trips)


def _free(layout: Headstock, size: float) -> tuple[BaseGeometry, BaseGeometry]:
    waste, wood = places(layout, size / 2)
    return (waste if layout.template.board == "blank" and layout.to_rout else waste.intersection(wood)), wood


def _named(layout: Headstock, pins: tuple[Pin, Pin]) -> tuple[Pin, Pin]:
    """The pins under their names: one that the layout has at that very place and size keeps its own, as it may be drilled already."""
    names = feature_names(replace(layout, pins=()))
    kept = [next((one.id for one in layout.pins if one.at == pin.at and one.diameter == pin.diameter), None) for pin in pins]
    names.taken |= {name for name in kept if name is not None}
    first, second = (replace(pin, id=name or names.alike(pin.id)) for pin, name in zip(pins, kept, strict=True))
    return first, second


def _words(layout: Headstock, pins: tuple[Pin, Pin], flip: bool, unit: LengthUnit) -> str:
    apart = format_close(v.distance(pins[0].at, pins[1].at), unit, mark=True)
    later = {hole.at for hole in later_holes(layout)}
    used = sum(pin.at in later for pin in pins)
    bores = ("", say(", one in a bore to come"), say(", in two bores to come"))[used]
    middle = all(abs(pin.at[0]) <= AXIS for pin in pins)
    if flip:
        why = say("on the centreline") if middle else say("mirrored")
        return say("{apart} apart{bores}, {why}: the template turns over on them", apart=apart, bores=bores, why=why)
    why = say("on the centreline") if middle else say("so that no plug stays in the head") if used == 2 and not layout.to_rout else (
        say("as far apart as the wood allows"))
    return say("{apart} apart{bores}, {why}", apart=apart, bores=bores, why=why)
