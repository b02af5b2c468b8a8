"""What must come before what, and why: one small function for each rule, gathered in RULES."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.cancellation import Ask, go_on
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.before import Before, Rule
from geometry.sequence.glue_ops import plugs_before_all, scarf_before_all, veneers_before_marks_and_cuts, veneers_over_ears
from geometry.sequence.hand_ops import flat_on_the_finished_edge, ramp_into_an_open_slot
from geometry.sequence.operation import Operation
from geometry.sequence.rules_drilling import (
    bores_before_outline,
    bores_beside_slots,
    pilots_after_posts,
    side_bores_before_outline,
    side_bores_before_slots,
    wide_before_narrow,
)
from geometry.sequence.rules_marking import (
    clean_up_last,
    ears_before_marks,
    ears_before_what_crosses_them,
    finish_last,
    marks_before_cuts,
    reamed_last,
    template_first,
)
from geometry.sequence.rules_pins import pin_in_a_slot, pin_in_the_waste, pins_before_template, pins_before_their_bores
from geometry.sequence.rules_shaping import (
    outline_after_slots,
    passes_in_turn,
    pilots_on_their_seat,
    saw_before_router,
    waste_before_router,
)

RULES: tuple[Rule, ...] = (
    scarf_before_all, plugs_before_all, veneers_over_ears, veneers_before_marks_and_cuts, ears_before_marks, ears_before_what_crosses_them,
    template_first, marks_before_cuts,
    pins_before_template, pins_before_their_bores, pin_in_a_slot, pin_in_the_waste,
    side_bores_before_slots, side_bores_before_outline, wide_before_narrow, bores_beside_slots,
    bores_before_outline, pilots_after_posts,
    waste_before_router, passes_in_turn, saw_before_router, outline_after_slots, pilots_on_their_seat,
    ramp_into_an_open_slot, flat_on_the_finished_edge,
    clean_up_last, finish_last, reamed_last,
)


def _at() -> str:
    return say("What has to be done before what")


def precedence(layout: Headstock, ops: Sequence[Operation], ask: Ask = go_on) -> tuple[Before, ...]:
    """Every edge that the layout asks for, rule after rule; `ops` as operations(layout, ...) gives them.

    The same two operations may be joined by several edges, each with a reason of its own. `ask` is asked between rules.
    """
    edges: list[Before] = []
    for rule in RULES:
        ask(_at)
        edges += rule(layout, ops)
    return tuple(edges)
