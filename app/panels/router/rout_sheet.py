"""What the Router stage tells of one slot or of the outline: every sentence and number, ready to be shown."""

from __future__ import annotations

from functools import partial

from msgspec import Struct
from msgspec.structs import replace

from geometry.cancellation import Ask, go_on
from geometry.drawing import Drawing, Label
from geometry.drawing.router_picture import pass_picture
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import area, at_most, exact, mm
from geometry.routing import RoutPlan, SlotPlan
from geometry.routing.board import BoardNote, board_notes
from geometry.routing.fit import tightest
from geometry.routing.follower import follower
from geometry.routing.passes import same_offset
from geometry.routing.refusal import Refusal
from geometry.routing.speeds import FEED, speed_table
from geometry.routing.together import RoutingPlan
from geometry.routing.words import in_turn, passes, rim, with_bush
from geometry.saying import count, say

ALWAYS = (
    say("Unplug the router before a bit is changed, tighten the collet, keep both hands on the router, wear eye and "
        "ear protection, collect the dust. The manual of the machine, the rules where you work and qualified instruction "
        "come first."),
)
"""Said with every plan (after published guidance for hand-held routers)."""

Fact = tuple[str, str, bool]
"""(label, words, whether it is a warning)"""


class RoutSheet(Struct, frozen=True, kw_only=True):
    """One slot or the outline; what has a default is of its plan, where there is one."""

    of: str
    title: str
    able: bool
    headline: str
    choices: tuple[tuple[tuple[tuple[str, str | None], ...], str], ...]
    """(tools, words) of each plan, the one shown first"""
    chosen: bool
    lost_choice: str
    template: str = ""
    """what the template that is exported has to do with this plan; "" when there is nothing to say"""
    agrees: bool = True
    """whether the exported template is the one of this plan"""
    tool: tuple[str, str | None] | None = None
    """the bit and bush that the template of this plan is made for"""
    steps: tuple[str, ...] = ()
    pictures: tuple[Drawing, ...] = ()
    passes: tuple[str, ...] = ()
    facts: tuple[Fact, ...]
    would: tuple[str, ...]
    rejected: tuple[tuple[str, str], ...]
    """(bit, reason)"""
    cautions: tuple[str, ...]
    speeds: tuple[tuple[str, tuple[tuple[float, str, bool], ...]], ...] = ()
    """(bit, rows of turns a minute, rim speed in words, allowed)"""


def rout_sheets(layout: Headstock, routing: RoutingPlan, ask: Ask = go_on) -> tuple[RoutSheet, ...]:
    """A sheet for each slot in its order, then for the outline.

    Call it within the same `speaking` as the plan was made in. `ask` is asked before each.
    """
    sheets = []
    for number, plan in enumerate(routing.all, 1):
        ask(partial(_at_sheet, number, len(routing.all)))
        sheets.append(_sheet(layout, plan))
    return tuple(sheets)


def _at_sheet(number: int, plans: int) -> str:
    return say("Writing the plans down: {number} of {plans}", number=number, plans=plans)


def template_notes(layout: Headstock, routing: RoutingPlan, ask: Ask = go_on) -> tuple[BoardNote, ...]:
    """What is wrong with the template board, or worth knowing: of the chosen follower, else of the first plan.

    None for a follower that cannot be, and where the outline has no inside: the sheets of the plans say so. A slot
    without an inside is left out. `ask` as for board_notes.
    """
    if routing.outline.broken:
        return ()
    broken = {plan.of for plan in routing.slots if plan.broken}
    layout = replace(layout, slots=tuple(slot for slot in layout.slots if slot.id not in broken)) if broken else layout
    try:
        guide = follower(layout)
    except GeometryError:
        return ()
    if guide is None:
        best = next((plan.best for plan in routing.all if plan.best is not None), None)
        if best is None:
            return ()
        guide = best.passes[0].follower
    return board_notes(layout, guide, ask)


def _sheet(layout: Headstock, plan: SlotPlan) -> RoutSheet:
    best = plan.best
    outline = plan.of == "outline"
    sheet = RoutSheet(
        of=plan.of, title=say("Outline") if outline else plan.of, able=best is not None,
        headline=plan.words if best is not None or plan.broken else
        say("No bit of the rack can rout the outline.") if outline else say("No bit of the rack can rout {slot}.", slot=plan.of),
        choices=tuple((one.tools, _choice(one)) for one in _offered(plan)), chosen=plan.chosen, lost_choice=plan.lost_choice,
        facts=() if plan.broken else _facts(layout, plan), would=plan.would,
        rejected=tuple((one.bit, one.reason) for one in plan.verdicts if one.plan is None),
        cautions=(FEED["outside" if outline else "inside"], *ALWAYS))
    if best is None:
        return sheet
    words, agrees = _template(layout, best)
    bits = {one.bit: one.follower.bit for one in best.passes}
    return replace(
        sheet, template=words, agrees=agrees, tool=(best.passes[0].bit, best.passes[0].bush), steps=best.steps,
        pictures=tuple(_picture(best, i) for i in range(len(best.passes))),
        passes=tuple(one.said(best.job.through, best.job.template) for one in best.passes), cautions=(*best.cautions, *ALWAYS),
        speeds=tuple((id, tuple((turns, rim(speed), allowed) for turns, speed, allowed in speed_table(bit, layout.rack.router)))
                     for id, bit in bits.items()))


def _picture(plan: RoutPlan, index: int) -> Drawing:
    """The section without the words below it: the panel says them in a sentence."""
    return tuple(mark for mark in pass_picture(plan, index) if not (isinstance(mark, Label) and mark.anchor == "middle"))


def _offered(plan: SlotPlan) -> tuple[RoutPlan, ...]:
    """The plans kept, best first, then what every other bit of the rack can do alone."""
    kept = {one.tools for one in plan.plans}
    others = [one.plan for one in plan.verdicts if one.plan is not None and one.plan.tools not in kept]
    return (*plan.plans, *others)


def _choice(plan: RoutPlan) -> str:
    names = in_turn([with_bush(bit, bush) for bit, bush in plan.tools])
    corner = say(", the last in the corners") if any(one.corners for one in plan.passes) else ""
    flips = say(", turned over") if plan.flips else ""
    left = say(", {depth} to pare", depth=mm(plan.reached.left_depth)) if plan.reached.left else ""
    return f"{names}{corner}: {passes(len(plan.passes))}{flips}{left}"


def _template(layout: Headstock, best: RoutPlan) -> tuple[str, bool]:
    try:
        guide = follower(layout)
    except GeometryError as error:
        return str(error), False
    if guide is None:
        return say("No bit is chosen for the template, so sheets and files carry no template lines."), False
    if same_offset(guide.offset, best.offset):
        return say("The template of sheets and files is made for {guide}: it is the one of this plan.",
                   guide=guide.name), True
    return say("The template of sheets and files is made for {guide}, with an offset of {offset}; this plan needs "
               "{needed}.",
               guide=guide.name, offset=exact(guide.offset), needed=exact(best.offset)), False


def _facts(layout: Headstock, plan: SlotPlan) -> tuple[Fact, ...]:
    job, best = plan.job, plan.best
    rows: list[Fact] = []
    if job.width is not None:
        rows.append((say("Narrowest: the largest cutter"), at_most(job.width), False))
        fitting = [bit for bit in layout.rack.bits if bit.cutter <= job.width + 1e-6]
        widest = max(fitting, key=lambda bit: bit.cutter, default=None)
        rows.append((say("Widest bit of the rack that passes"),
                     say("none") if widest is None else f"{widest.id}, {mm(widest.cutter)}", widest is None))
        slot = next(one for one in layout.slots if one.id == plan.of)
        corner = tightest(slot)
        if corner < job.width - 1e-6:
            rows.append((say("Corners"), say("sharp: every cutter leaves wood") if corner == 0 else
                         say("cutters over {corner} leave wood", corner=at_most(corner)), False))
    rows.append((say("Depth"), say("{depth}, through", depth=mm(job.depth)) if job.through else mm(job.depth), False))
    if best is not None:
        left = best.reached
        rows.append((say("Left to pare by hand"), say("nothing") if not left.left else
                     count(len(left.left), "{area} in {n} place, up to {depth} deep", "{area} in {n} places, up to {depth} deep",
                           area=area(left.left_area), depth=mm(left.left_depth)), False))
        if left.lost:
            rows.append((say("Corners of wood rounded"), say("up to {depth}", depth=mm(left.lost_depth)), True))
    if isinstance(plan.waste, Refusal):
        rows.append((say("Waste holes"), plan.waste.reason, False))
    return tuple(rows)
