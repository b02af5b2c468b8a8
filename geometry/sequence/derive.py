"""From a layout to its operations."""

from __future__ import annotations

from collections.abc import Mapping

from geometry.layout import Headstock
from geometry.routing import RoutingPlan, SlotPlan
from geometry.sequence.drill_ops import drill_operations
from geometry.sequence.glue_ops import glue_operations
from geometry.sequence.hand_ops import hand_operations
from geometry.sequence.operation import KINDS, Operation
from geometry.sequence.plans import Routing, routings
from geometry.sequence.shape_ops import finishing, outline_operations, preparing, slot_operations
from geometry.sequence.wishes import Wishes


def operations(layout: Headstock, slot_plans: RoutingPlan | Mapping[str, Routing | SlotPlan] | None = None,
               wishes: Wishes | None = None) -> tuple[Operation, ...]:
    """Everything that has to be done, each with an id of its own, in the order of habit (KINDS).

    `slot_plans` is the routing plan, or a mapping of slot ids and "outline" to
    routings; what it does not hold is planned here. The order returned is not yet a legal one: see
    precedence and best_order. GeometryError when the outline or a slot has no inside.
    """
    wishes = wishes or Wishes()
    plans = routings(layout, slot_plans)
    made = [*glue_operations(layout, wishes), *preparing(layout), *drill_operations(layout, wishes), *slot_operations(layout, plans, wishes),
            *outline_operations(layout, plans, wishes), *hand_operations(layout, wishes), *finishing(layout, wishes)]
    return tuple(sorted(made, key=lambda op: KINDS.index(op.kind)))
