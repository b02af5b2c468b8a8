"""The search over the whole rack for the best way to rout a slot or the outline.

The maker's own choice comes before everything, then plans that run on the
template which the maker has chosen. Then fewest flips, fewest bits, fewest
passes. Among equals: the very follower of the template, no rounded corners,
least wood left to pare, a cutter that does not fill the slot, a template on top
where it is seen, the stiffer cutter.

Levels: one bit; two bits from one side where one bit alone would have to be
turned over; two bits and a flip, and three bits, only where nothing else gets
through. Last, a slim bit for the corners is offered beside the best plan.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from msgspec import Struct

from geometry.cancellation import Ask, go_on
from geometry.errors import GeometryError
from geometry.layout import Headstock, Route, Slot
from geometry.layout.names import OUTLINE
from geometry.layout.pin_pairs import outline_pins, template_pins
from geometry.routing.alone import Alone, Judge, alone, bushes_for, enters, fits, held
from geometry.routing.corners import with_corner_bit
from geometry.routing.depth import Job, reach_of
from geometry.routing.fit import narrowest
from geometry.routing.follower import Follower, follower
from geometry.routing.mouths import mouths
from geometry.routing.nut_end import lean_out, nut_end
from geometry.routing.pairs import one_side, two_sides
from geometry.routing.passes import Guided, Pass, same_offset
from geometry.routing.plan import RoutPlan, SlotPlan, Verdict
from geometry.routing.reached import Reached, outline_reached, slot_reached
from geometry.routing.refusal import Refusal
from geometry.routing.threes import three_bits
from geometry.routing.waste import Waste, drill_waste, drilled, widest
from geometry.routing.words import in_turn, with_bush
from geometry.routing.would import would
from geometry.saying import say
from geometry.tolerance import TOUCH

MOST_PLANS = 6
"""Plans kept, best first."""


def plan_slot(slot: Slot, layout: Headstock, like: RoutPlan | None = None, ask: Ask = go_on) -> SlotPlan:
    """How to rout a slot with the layout's rack, template thickness and margins.

    With `like`, plans that can share that plan's template come first among those with equal flips. `ask` is asked
    between bits. GeometryError when the slot crosses itself.
    """
    waste = drill_waste(slot, layout.blank, layout.rack)
    return _plan(slot_job(slot, layout, widest(slot)), layout, partial(slot_reached, slot), waste, like, ask)


def slot_job(slot: Slot, layout: Headstock, wide: float) -> Job:
    """What has to be routed of a slot that is `wide` mm where it is widest, its waste drilled out."""
    thick, (light, entry) = layout.blank.thickness, drilled(slot, layout.blank, layout.rack)
    return Job(of=slot.id, depth=slot.floor(thick), thickness=thick, template=layout.template.thickness,
               contact=layout.margins.template_contact, light=light, entry=entry,
               hard=layout.blank.hard_wood, router=layout.rack.router, width=narrowest(slot), widest=wide)


def no_plan(of: str, layout: Headstock, why: str) -> SlotPlan:
    """What stands in the place of a plan for a slot or outline whose shape has no inside."""
    thick = layout.blank.thickness
    job = Job(of=of, depth=thick, thickness=thick, template=layout.template.thickness, contact=layout.margins.template_contact,
              light=False, entry=0.0, hard=layout.blank.hard_wood, router=layout.rack.router)
    return SlotPlan(job, (), (), (), None, broken=why)


def plan_outline(layout: Headstock, like: RoutPlan | None = None, ask: Ask = go_on) -> SlotPlan:
    """How to rout the outline, band-sawn to within 2 mm before; `like` and `ask` as for plan_slot.

    GeometryError when it crosses itself or has no edges.
    """
    thick, end = layout.blank.thickness, nut_end(layout.outline, layout.nut)
    job = Job(of=OUTLINE, depth=thick, thickness=thick, template=layout.template.thickness,
              contact=layout.margins.template_contact, light=True, entry=float("inf"), hard=layout.blank.hard_wood,
              router=layout.rack.router, nut_end=end is not None, neck=layout.blank.behind > 0,
              lean=0.0 if end is None else lean_out(end))
    return _plan(job, layout, partial(outline_reached, layout), None, like, ask)


def _pins(layout: Headstock, of: str) -> int:
    """How many pins the template can use; all of them where the outline has no inside, which keeps the slots from no plan."""
    try:
        return len(outline_pins(layout) if of == OUTLINE else template_pins(layout))
    except GeometryError:
        return len(layout.pins)


def _plan(job: Job, layout: Headstock, judge: Judge, waste: Waste | Refusal | None,
          like: RoutPlan | None, ask: Ask) -> SlotPlan:
    make = partial(RoutPlan, job, waste=waste if isinstance(waste, Waste) else None, pins=_pins(layout, job.of), mouths=mouths(layout, job.of))
    route = next((route for route in layout.routes if route.of == job.of), None)
    wanted = None if route is None else tuple((tool.bit, tool.bush) for tool in route.tools)
    order = order_of(layout, wanted, like)
    found: list[RoutPlan] = []
    verdicts: list[Verdict] = []
    for number, bit in enumerate(layout.rack.bits, 1):
        ask(partial(_at_bit, job.of, number, len(layout.rack.bits)))
        answers = [alone(bit, bush, job, judge) for bush in bushes_for(bit, layout.rack)]
        plans = [make(a.passes, a.reached) for a in answers if isinstance(a, Alone)]
        found += plans
        if plans:
            verdicts.append(Verdict(bit.id, min(plans, key=order), ""))
        else:
            nearest = max((a for a in answers if isinstance(a, Refusal)), key=lambda a: a.stage)
            verdicts.append(Verdict(bit.id, None, nearest.reason))
    singles = tuple(found)
    if all(plan.flips for plan in found):
        found += _best_of_pairs(job, layout, judge, make, bool(found), ask)
    found.sort(key=order)
    kept = _one_each(found)
    kept = tuple(sorted((*kept, *_corners(kept, singles, wanted)), key=order))
    chosen = bool(kept) and kept[0].tools == wanted
    lost = "" if route is None or chosen else _lost(route, verdicts)
    return SlotPlan(job, kept, tuple(verdicts), () if kept else would(job, layout, judge), waste, chosen, lost)


def _printed(layout: Headstock) -> float | None:
    """Offset of the template that the maker has chosen, mm; None when no usable follower is chosen."""
    try:
        chosen = follower(layout)
    except GeometryError:
        return None
    return None if chosen is None else chosen.offset


def _corners(kept: tuple[RoutPlan, ...], singles: tuple[RoutPlan, ...],
             wanted: tuple[tuple[str, str | None], ...] | None) -> list[RoutPlan]:
    """The best plan with a bit for its corners, and the one that the maker has chosen."""
    made = []
    for number, plan in enumerate(kept):
        if number == 0 or (wanted and plan.tools == wanted[:-1]):
            more = with_corner_bit(plan, singles)
            if more is not None:
                made.append(more)
    return made


def _lost(route: Route, verdicts: list[Verdict]) -> str:
    """Why the maker's choice is not among the plans."""
    names = in_turn([with_bush(tool.bit, tool.bush) for tool in route.tools])
    reason = ""
    if len(route.tools) == 1:
        reason = next((" " + one.reason for one in verdicts if one.bit == route.tools[0].bit and one.reason), "")
    return say("Your choice, {names}, no longer does it, so the best other plan is shown.{reason}",
               names=names, reason=reason)


def _best_of_pairs(job: Job, layout: Headstock, judge: Judge, make, flips: bool, ask: Ask) -> Iterator[RoutPlan]:
    """Plans with two bits, from the face alone; turned over only where one bit turned over does not do it (`flips`)."""
    able: list[Guided] = []
    tips: list[Follower] = []
    for bit in layout.rack.bits:
        for bush in bushes_for(bit, layout.rack):
            follower = held(bit, bush, job)
            if isinstance(follower, Refusal) or enters(follower, job) is not None:
                continue
            if bit.bearing == "tip":
                tips.append(follower)
                continue
            reach = reach_of(follower, job)
            if not isinstance(reach, Refusal):
                able.append(Guided(follower, reach))
    trials = list(one_side(able, job))
    if not trials and not flips:
        trials = list(two_sides(able, tips, job)) or list(three_bits(able, tips, job))
    trials.sort(key=lambda passes: (len(passes), [p.bit for p in passes]))
    good = 0
    for number, passes in enumerate(trials, 1):
        ask(partial(_at_pair, job.of, number, len(trials)))
        reached = _both(passes, job, judge)
        if reached is not None:
            good += 1
            yield make(passes, reached)
            if good >= 4 * MOST_PLANS:
                return


def _at_bit(of: str, number: int, bits: int) -> str:
    return (say("Router plan of the outline: bit {number} of {bits}", number=number, bits=bits) if of == OUTLINE else
            say("Router plan of {slot}: bit {number} of {bits}", slot=of, number=number, bits=bits))


def _at_pair(of: str, number: int, trials: int) -> str:
    return (say("Router plan of the outline: pair of bits {number} of at most {trials}", number=number, trials=trials) if of == OUTLINE else
            say("Router plan of {slot}: pair of bits {number} of at most {trials}", slot=of, number=number, trials=trials))


def _both(passes: tuple[Pass, ...], job: Job, judge: Judge) -> Reached | None:
    """What several bits leave: the corners of the widest that no slimmer one comes into. None when one of them does not get everywhere."""
    judged = {p.bit: fits(p.follower, job, judge) for p in passes}
    if any(isinstance(one, Refusal) for one in judged.values()):
        return None
    left = max((judged[p.bit] for k, p in enumerate(passes) if not any(_into_corners(q, p) for q in passes[k + 1:])),
               key=lambda one: one.left_area).left
    return Reached(True, left, max(judged.values(), key=lambda one: one.lost_depth).lost)


def _into_corners(one: Pass, wider: Pass) -> bool:
    """Whether a pass takes what an earlier one with a wider cutter has left in the corners: its edges reach from where they end up to
    the surface, and nothing but the template guides it."""
    bit = one.follower.bit
    return (one.side == wider.side and bit.cutter < wider.follower.bit.cutter and one.rubs_on == "template"
            and one.ends - bit.cutting_length <= TOUCH and one.ends >= wider.ends - TOUCH)


class Order(Struct, frozen=True):
    """Which of two plans comes first: called with a plan, it gives what to sort by."""

    wanted: tuple[tuple[str, str | None], ...] | None
    """(bit, bush) that the maker has chosen for this slot; None for none"""
    printed: float | None
    """offset in mm of the template that the maker has chosen; None for none"""
    chosen: tuple[str | None, str | None]
    """(bit, bush) of that template"""
    like: RoutPlan | None

    def __call__(self, plan: RoutPlan) -> tuple:
        """By everything."""
        first = plan.passes[0]
        cutters = [one.follower.bit.cutter for one in plan.passes]
        fills = plan.job.width is not None and max(cutters) > plan.job.width - 1.0 + TOUCH
        return (*self.before(plan), round(plan.reached.lost_depth, 2), round(plan.reached.left_area, 1), fills,
                first.rubs_on == "template below", -min(cutters), abs(plan.offset), first.bit, first.bush or "")

    def before(self, plan: RoutPlan) -> tuple:
        """By what goes before anything that the plan has to be looked at in plan for."""
        first = plan.passes[0]
        other = self.like is not None and not same_template(plan, self.like)
        return (self.wanted is not None and plan.tools != self.wanted,
                self.printed is not None and not same_offset(plan.offset, self.printed),
                plan.flips, other, len(plan.bits), len(plan.passes), (first.bit, first.bush) != self.chosen)


def order_of(layout: Headstock, wanted: tuple[tuple[str, str | None], ...] | None, like: RoutPlan | None) -> Order:
    """The order of plans for a slot or the outline of a layout; `like` as for plan_slot."""
    return Order(wanted, _printed(layout), (layout.template.bit, layout.template.bush), like)


def _one_each(plans: list[RoutPlan]) -> tuple[RoutPlan, ...]:
    """The best plan of each set of bits, the first few."""
    kept: dict[frozenset[str], RoutPlan] = {}
    for plan in plans:
        kept.setdefault(frozenset(plan.bits), plan)
    return tuple(kept.values())[:MOST_PLANS]


def same_template(one: RoutPlan, other: RoutPlan) -> bool:
    """Whether two plans can share one template board: equal offsets, and both on top or both below."""
    below = [plan.passes[0].rubs_on == "template below" for plan in (one, other)]
    return same_offset(one.offset, other.offset) and below[0] == below[1]
