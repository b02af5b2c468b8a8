"""The first of a slot's plans alone, as a check asks for it while the slot is drawn: most of the rack is not looked at in plan."""

from __future__ import annotations

import math
from functools import partial
from itertools import groupby

from msgspec.structs import replace

from geometry.layout import Headstock, Slot
from geometry.layout.slots import slot_path
from geometry.routing.alone import Alone, alone, bushes_for, enters, fits
from geometry.routing.fit import narrowest
from geometry.routing.passes import Pass
from geometry.routing.plan import RoutPlan
from geometry.routing.reached import MOST_PATCHES, Reached, slot_reached
from geometry.routing.refusal import Refusal
from geometry.routing.search import order_of, plan_slot, slot_job
from geometry.routing.waste import widest

_SURE = 0.05
"""mm: by so much less than where it is narrowest no slot seems wide where it is widest"""
_BENDS = 3
"""places at most in which one segment of a wall is too tight for a cutter"""
_ANYWHERE = Reached(True, (), ())


def first_of_slot(slot: Slot, layout: Headstock) -> tuple[Pass, ...] | None:
    """The passes of plan_slot's first plan, None when it has none; GeometryError when the slot crosses itself.

    Bits are looked at in plan in the order of what is known of them without, up to the first that does. All plans are made only
    where the maker has chosen one, where two bits may do better, and of a wall with so many corners that it may be refused.
    """
    of_its_own = any(route.of == slot.id for route in layout.routes)
    plan = None if of_its_own or _BENDS * len(slot_path(slot).segments) > MOST_PATCHES else _alone(slot, layout)
    if plan is None:
        plan = plan_slot(slot, layout).best
    return None if plan is None else plan.passes


def _alone(slot: Slot, layout: Headstock) -> RoutPlan | None:
    """The first plan where it is one of a single bit."""
    job = slot_job(slot, layout, math.inf)
    order, tried = order_of(layout, None, None), partial(_tried, slot)
    able = [RoutPlan(job, one.passes, one.reached, None) for bit in layout.rack.bits for bush in bushes_for(bit, layout.rack)
            if isinstance(one := alone(bit, bush, job, _anywhere), Alone)]
    able.sort(key=order.before)
    equals = (filter(None, map(tried, one)) for _, one in groupby(able, order.before))
    first = next(filter(None, (min(doing, key=order, default=None) for doing in equals)), None)
    if first is None or not first.flips or any(tried(plan) for plan in able if not plan.flips):
        return first
    return None


def _tried(slot: Slot, plan: RoutPlan) -> RoutPlan | None:
    """A plan with what its bit reaches in plan; None where the bit does not come in, or not everywhere."""
    follower = plan.passes[0].follower
    # By the least that the slot may be wide where it is widest: how wide it is takes long to tell.
    if enters(follower, replace(plan.job, widest=narrowest(slot) - _SURE)) and enters(follower, replace(plan.job, widest=widest(slot))):
        return None
    reached = fits(follower, plan.job, partial(slot_reached, slot))
    return None if isinstance(reached, Refusal) else replace(plan, reached=reached)


def _anywhere(cutter: float, offset: float) -> Reached:
    """Of a bit that is not looked at in plan."""
    return _ANYWHERE
