"""What the running order needs to know of the routing plan."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from msgspec import Struct

from geometry.layout import Headstock
from geometry.layout.names import OUTLINE
from geometry.routing import RoutingPlan, SlotPlan, Waste, plan_routing


class Trip(Struct, frozen=True):
    """One pass of the router; depths from the side that is up, mm."""

    side: Literal["face", "back"]
    bit: str
    bush: str | None
    begins: float
    ends: float
    template: bool = True
    """whether it rubs on a template, and not on the wall already cut"""
    corners: bool = False
    """only what a wider cutter has left in the corners is taken"""
    cutter: float | None = None
    """how wide its cutter is, mm"""
    mind: str = ""
    """what to mind where side bores open into the wall that it rubs on"""


class Routing(Struct, frozen=True):
    """How a slot or the outline is cut: waste holes first where there are any, then trip after trip."""

    trips: tuple[Trip, ...]
    waste: Waste | None = None
    blocked: str = ""
    """why no bit can do it, in one or two sentences; empty when the trips do it"""
    at_nut: str = ""
    """what to mind at the nut end of the template of the outline"""


def routings(layout: Headstock, plan: RoutingPlan | Mapping[str, Routing | SlotPlan] | None) -> dict[str, Routing]:
    """By slot id, and "outline". What `plan` does not hold comes from the routing planner.

    GeometryError when the outline or a slot has no inside.
    """
    wanted = [*(slot.id for slot in layout.to_rout), OUTLINE]
    if isinstance(plan, Mapping):
        given = {of: _routing_of(one) if isinstance(one, SlotPlan) else one for of, one in plan.items()}
        if set(wanted) <= set(given):
            return given
        return routings(layout, None) | given
    made = plan_routing(layout) if plan is None else plan
    return {one.of: _routing_of(one) for one in made.all}


def _routing_of(plan: SlotPlan) -> Routing:
    """The best plan for a slot or the outline, or why there is none."""
    waste = plan.waste if isinstance(plan.waste, Waste) else None
    if plan.best is None:
        return Routing((), waste, plan.words.strip())
    return Routing(tuple(Trip(p.side, p.bit, p.bush, p.begins, p.ends, p.rubs_on != "wall already cut", p.corners,
                              p.follower.bit.cutter, plan.best.mind(p))
                         for p in plan.best.passes), plan.best.waste, at_nut=plan.best.at_nut)
