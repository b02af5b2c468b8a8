"""All slots and the outline together: one template board where that costs no flip."""

from __future__ import annotations

from msgspec import Struct

from geometry.cancellation import Ask, go_on
from geometry.curves.polygons import polygon
from geometry.errors import GeometryError
from geometry.layout import Headstock, Slot, loop_path, slot_path
from geometry.routing.plan import RoutPlan, SlotPlan
from geometry.routing.search import no_plan, plan_outline, plan_slot, same_template
from geometry.saying import say


class RoutingPlan(Struct, frozen=True):
    """Plans for every slot and the outline that go together."""

    slots: tuple[SlotPlan, ...]
    outline: SlotPlan

    @property
    def all(self) -> tuple[SlotPlan, ...]:
        """Slots in their order, then the outline."""
        return (*self.slots, self.outline)


def plan_routing(layout: Headstock, ask: Ask = go_on) -> RoutingPlan:
    """The best plan of everything: each on its own best, or all on the template of one of them where no more flips come of it.

    Plans that the maker has chosen stay; the others run on the template that he has chosen where they can.

    A slot or an outline that crosses itself has no plan and says so; the others are planned without it.
    `ask` is asked between bits.
    """
    own = _all(layout, None, ask)
    leaders: list[RoutPlan] = []
    for plan in own:
        if plan.best is not None and not any(same_template(plan.best, other) for other in leaders):
            leaders.append(plan.best)
    # On the template that all of them share already each would find its own best again.
    tried = [own, *(_all(layout, leader, ask) for leader in leaders if len(leaders) > 1)]
    least = _flips(own)
    best = min((plans for plans in tried if _flips(plans) <= least), key=lambda plans: (_boards(layout, plans), _work(plans)))
    return RoutingPlan(tuple(best[:-1]), best[-1])


def _all(layout: Headstock, like: RoutPlan | None, ask: Ask) -> list[SlotPlan]:
    return [*(_slot(slot, layout, like, ask) for slot in layout.to_rout), _outline(layout, like, ask)]


def _slot(slot: Slot, layout: Headstock, like: RoutPlan | None, ask: Ask) -> SlotPlan:
    try:
        polygon(slot_path(slot))
    except GeometryError:
        return no_plan(slot.id, layout, say("There is no plan for {slot}: its wall crosses itself or shuts nothing "
                                            "in. Move the nodes of {slot} until it does not.",
                                            slot=slot.id))
    try:
        return plan_slot(slot, layout, like, ask)
    except GeometryError as error:
        return no_plan(slot.id, layout, say("There is no plan for {slot}: {why}", slot=slot.id, why=error))


def _outline(layout: Headstock, like: RoutPlan | None, ask: Ask) -> SlotPlan:
    try:
        polygon(loop_path(layout.outline))
    except GeometryError:
        return no_plan("outline", layout, say("There is no plan for the outline: it crosses itself or shuts nothing in. "
                                              "Move its nodes until it does not."))
    try:
        return plan_outline(layout, like, ask)
    except GeometryError as error:
        return no_plan("outline", layout, say("There is no plan for the outline: {why}", why=error))


def _flips(plans: list[SlotPlan]) -> int:
    return sum(plan.best.flips for plan in plans if plan.best is not None)


def _work(plans: list[SlotPlan]) -> tuple[int, int]:
    done = [plan.best for plan in plans if plan.best is not None]
    return len({bit for plan in done for bit in plan.bits}), sum(len(plan.passes) for plan in done)


def _boards(layout: Headstock, plans: list[SlotPlan]) -> int:
    shared = plans if layout.template.board == "outline" else plans[:-1]
    kinds: list[RoutPlan] = []
    for plan in shared:
        if plan.best is not None and not any(same_template(plan.best, other) for other in kinds):
            kinds.append(plan.best)
    return len(kinds)
