"""Everything that is planned for a layout, worked out once for all bench pages."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property

from msgspec import Struct
from msgspec.structs import replace

from app.sheets.compensation import Compensation, compensation
from app.sheets.plan_letters import plan_letters
from geometry.book import begun_steps, corrected, done_steps, not_so_deep, otherwise
from geometry.cancellation import Ask, go_on
from geometry.checks.in_wood import called_now, in_wood
from geometry.checks.said import read
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.names import OUTLINE
from geometry.lengths import speaking, spoken
from geometry.routing import RoutingPlan, SlotPlan, plan_routing
from geometry.saying import count, say
from geometry.sequence import (
    BY_NOW,
    Before,
    Counts,
    Operation,
    Order,
    Problem,
    Rates,
    Routing,
    Taken,
    Wishes,
    best_order,
    counts,
    estimate,
    in_own_order,
    judge,
    numbered,
    operations,
    precedence,
    runs,
)
from geometry.sequence.shape_ops import marking_words
from geometry.units import LengthUnit

SAME_OFFSET = 0.01
"""Offsets that differ by less (mm) share one template."""


class Work(Struct, frozen=True, dict=True):
    """The router plans and the running order that the sheets tell of.

    `order` may be the best one or the maker's own; its steps are ids of `ops`.
    """

    layout: Headstock
    template: Compensation
    """of the template that is printed"""
    routing: RoutingPlan | None
    """None when the layout gives no router plan: `trouble` says why"""
    ops: tuple[Operation, ...]
    before: tuple[Before, ...]
    order: Order
    rates: Rates
    trouble: str = ""
    unit: LengthUnit = "mm"
    """of its sentences"""
    best: Order | None = None
    """the best order computed, when `order` is another: the maker's own, or one in which what is done keeps its number"""
    number: Mapping[str, int] = {}
    """of the step of each operation, 1 first. What is done keeps its own, and none has that of what is done and planned no more, nor that
    of a template that need not be made."""

    @cached_property
    def letters(self) -> str:
        """Of the plan: see plan_letters."""
        return plan_letters(self.layout, self.order.steps, self.plans)

    @property
    def plan_words(self) -> str:
        """What each page and card says of the plan that it is of."""
        return say("plan {letters}", letters=self.letters)

    @cached_property
    def plans(self) -> tuple[SlotPlan, ...]:
        """Slots in their order, then the outline."""
        return () if self.routing is None else self.routing.all

    @cached_property
    def steps(self) -> tuple[Operation, ...]:
        """The operations in the order of the work."""
        return self._of(self.order.steps)

    @cached_property
    def worked(self) -> tuple[Operation, ...]:
        """The operations as they come in time: what is done, wherever it stands in the order, and then the rest."""
        return self._of(self.as_worked(self.order.steps))

    def _of(self, ids: Sequence[str]) -> tuple[Operation, ...]:
        by_id = {op.id: op for op in self.ops}
        return tuple([by_id[id] for id in ids])

    @cached_property
    def set_ups(self) -> list[list[Operation]]:
        """The steps cut into stretches that are done in one set-up."""
        return runs(self.steps)

    @cached_property
    def counts(self) -> Counts:
        """Holes, set-ups, tilts, hours."""
        return counts(self.order.steps, self.ops, self.rates)

    @cached_property
    def estimate(self) -> Mapping[str, Taken]:
        """Minutes of each step by its id."""
        return estimate(self.order.steps, self.ops, self.rates)

    @cached_property
    def done(self) -> Mapping[str, int]:
        """Operations that are done on the piece on the bench as the layout has them, each with the number that its step keeps."""
        return _numbers(self.layout, self.ops)

    @cached_property
    def sawn(self) -> bool:
        """Whether the piece on the bench had its outline before its papers: no square edge is left to fold them round."""
        kinds = {op.id: op.kind for op in self.ops if op.id in self.done}
        ticks = [kinds.get(one.task.operation) for one in called_now(self.layout, self.layout.book.piece).done if one.piece == self.layout.book.piece]
        return next((kind != "mark" for kind in ticks if kind in ("mark", "cut outline", "rout outline")), False)

    @cached_property
    def guides(self) -> bool:
        """Whether the template has anything to guide on the piece on the bench, or is made already."""
        used = [op.id for op in self.ops if op.template or op.kind == "cut outline"]
        return any(id not in self.done for id in used) or any(op.id in self.done or op.id in self.begun for op in self.ops if op.kind == "template")

    @property
    def no_template(self) -> bool:
        """Whether none has to be made: nothing is left that it guides, and no pin is drilled through it."""
        return not self.guides and not self.layout.pins

    @cached_property
    def open(self) -> tuple[str, ...]:
        """Operations that are left to do on the piece on the bench, in the order of the work."""
        return tuple(id for id in self.order.steps if id not in self.done)

    def ahead(self, id: str) -> bool:
        """Whether tools are got ready for an operation: it is not done, or all is."""
        return id not in self.done or not self.open

    @cached_property
    def hours_left(self) -> float:
        """Hours of these, set-ups with them."""
        return sum(taken.total for taken in estimate(self.open, self.ops, self.rates).values()) / 60

    @cached_property
    def otherwise(self) -> Mapping[str, str]:
        """Operations that are ticked off and make something else now than was made, each with a sentence that tells both."""
        ids = {op.id for op in self.ops}
        return {id: read(text, self.unit) for id, text in (otherwise(self.layout) | self._not_so_deep).items() if id in ids}

    @cached_property
    def _not_so_deep(self) -> Mapping[str, str]:
        return not_so_deep(self.layout, self.ops)

    @cached_property
    def to_go_on(self) -> frozenset[str]:
        """Those of `otherwise` that only have to be gone on with: nothing is drilled or cut too far."""
        return in_wood(self.layout, self.layout.book.piece).to_go_on | self._not_so_deep.keys()

    @cached_property
    def _in_the_wood(self) -> frozenset[str]:
        """What nothing harms any more: it is done, or made otherwise for good."""
        return frozenset(self.done.keys() | self.otherwise.keys() - self.to_go_on)

    @cached_property
    def begun(self) -> frozenset[str]:
        """Operations that were worked at on the piece on the bench and are not done."""
        return begun_steps(called_now(self.layout, self.layout.book.piece))

    def mark(self, *ids: str) -> str:
        """"done" when all these operations are, "begun" when one of them or one alone is, else ""."""
        if ids and all(id in self.done for id in ids):
            return "done"
        return "begun" if any(id in self.done or id in self.begun for id in ids) else ""

    def blocked(self, op: Operation) -> str:
        """Why an operation cannot be done as it is planned, or what there is of it already; empty when it can, or is done."""
        if op.id in self.done:
            return ""
        if op.kind == "pin hole" and len(op.drillings) == 1 and not self.guides:
            return say("The outline is cut, and no slot is left that the template guides: take {pin} out of the drawing.", pin=op.features[0])
        return op.blocked if op.blocked and op.id in self.to_go_on else self.otherwise.get(op.id, op.blocked)

    def goes_on(self, op: Operation) -> bool:
        """Whether `blocked` tells no more of an operation than what there is of it, and it only has to be gone on with."""
        return op.id in self.to_go_on and not op.blocked

    @cached_property
    def cannot(self) -> tuple[str, ...]:
        """All that cannot be done, in sentences, but for what is done already."""
        done = {op.cannot for op in self.ops if op.id in self._in_the_wood}
        spoilt = dict.fromkeys(text for id, text in self.otherwise.items() if id not in self.to_go_on)
        return (*spoilt, *(text for text in self.order.blocked if text not in done))

    def cautions(self, op: Operation) -> tuple[str, ...]:
        """What to mind at a step, and what is harder at it now, for what is done would better have come later."""
        return (*op.cautions, *dict.fromkeys(edge.reason for edge in self._harder if edge.harmed == op.id))

    def harm(self, problem: Problem) -> str:
        """What is wrong with a step, and whether its place in the order or what is done makes it so."""
        words = (BY_NOW if self.too_late(problem) else
                 {"impossible": say("Impossible in this order"), "unsafe": say("Unsafe in this order"), "unwise": say("Unwise in this order")})
        return f"{words.get(problem.grade, say('Wrong'))}: {problem.text}"

    def harms(self, op: Operation) -> list[str]:
        """What is wrong with a step, each in a sentence that names it."""
        return [self.harm(problem) for problem in self.problems if problem.op == op.id]

    def to_mind(self, op: Operation) -> list[str]:
        """All that there is to heed at a step: what is wrong with it, its cautions, and why it cannot be done as it is planned."""
        return [*self.harms(op), *filter(None, (*self.cautions(op), self.blocked(op)))]

    @cached_property
    def _harder(self) -> tuple[Before, ...]:
        """What of `heeded` is broken by what is done, for no order to mend, and spoils nothing."""
        return tuple([edge for edge in self.heeded if not edge.hard and edge.then in self.done and edge.harmed not in self._in_the_wood])

    @cached_property
    def _to_keep(self) -> tuple[Before, ...]:
        """What of `heeded` an order can keep still, or is spoiled where it does not."""
        return tuple([edge for edge in self.heeded if edge not in self._harder])

    @cached_property
    def problems(self) -> tuple[Problem, ...]:
        """What goes wrong in this order; what no order can have is told in `order` itself."""
        return self.wrong_in(self.order.steps)

    def wrong_in(self, steps: Sequence[str]) -> tuple[Problem, ...]:
        """What goes wrong with the steps in this order. What is done comes before all that is not, wherever it stands, and
        nothing harms it any more."""
        ops = [op for op in self.ops if not (op.kind == "template" and self.no_template)]
        return tuple(p for p in judge(self.as_worked(steps), ops, self._to_keep)
                     if p.op not in self.order.stuck and p.op not in self._in_the_wood)

    def as_worked(self, steps: Sequence[str]) -> tuple[str, ...]:
        """The steps as they come in time: those that are done, then those that are not."""
        return tuple(sorted(steps, key=lambda id: id not in self.done))

    def too_late(self, problem: Problem) -> bool:
        """Whether a step is spoiled by what is done: no other place in the order mends that."""
        return problem.loud and not self.done.keys().isdisjoint(problem.others)

    @cached_property
    def misplaced(self) -> tuple[int, int]:
        """(how many steps are impossible or unsafe where they stand, how many because of what is done: no other place mends that)."""
        loud = [p for p in self.problems if p.loud]
        late = {p.op for p in loud if self.too_late(p)}
        return len({p.op for p in loud} - late), len(late)

    @property
    def too_early(self) -> str:
        """That what is done spoils steps; empty where it spoils none."""
        late = self.misplaced[1]
        return count(late, "What is done came too early for one step: no other place in the order mends that.",
                     "What is done came too early for {n} steps: no other place in the order mends that.") if late else ""

    @cached_property
    def heeded(self) -> tuple[Before, ...]:
        """What must come before what, without what no order can have."""
        return tuple(edge for edge in self.before if edge not in self.order.given_up)

    @cached_property
    def broken(self) -> tuple[Before, ...]:
        """What of that this order breaks."""
        place = {id: i for i, id in enumerate(self.as_worked(self.order.steps))}
        return tuple(edge for edge in self._to_keep if edge.harmed not in self._in_the_wood
                     and edge.first in place and edge.then in place and place[edge.first] > place[edge.then])

    @cached_property
    def found_hours(self) -> float | None:
        """Hours by what the job book holds; None when nothing was timed."""
        if not self.layout.book.times:
            return None
        return counts(self.order.steps, self.ops, corrected(self.layout.book).rates(self.rates)).hours.total

    def with_order(self, layout: Headstock) -> Work:
        """The same work for a layout that differs in its running order, rates and job book alone. What is done keeps its number."""
        best = self.best or self.order
        order = in_own_order(layout.order, best, self.ops, self.before)
        number = _numbered(layout, order.steps, self.ops)
        if tuple(number) != order.steps:
            order = in_own_order(tuple(number), best, self.ops, self.before)
        now = replace(self, layout=layout, order=order, rates=layout.rates, best=None if order is best else best, number=number)
        if now.no_template:
            number = {op.id: number[op.id] for op in now.steps if op.kind != "template"}
            now = replace(now, order=replace(order, steps=tuple(number)), best=best, number=number)
        with speaking(self.unit):
            words = marking_words(layout, now.sawn)
        if all(op.words == words for op in self.ops if op.kind == "mark"):
            return now
        return replace(now, ops=tuple([replace(op, words=words) if op.kind == "mark" else op for op in self.ops]))


def _numbers(layout: Headstock, ops: Sequence[Operation]) -> dict[str, int]:
    return {id: one.number for id, one in done_steps(layout, ops).items()}


def _numbered(layout: Headstock, steps: tuple[str, ...], ops: Sequence[Operation]) -> dict[str, int]:
    there, book = {op.id for op in ops}, layout.book
    kept = {id: number for id, number in _numbers(layout, ops).items() if id in there}
    last = max(kept.values(), default=0)
    gone = {one.number for one in book.done if one.piece == book.piece and one.task.operation not in there and one.number < last}
    return numbered(steps, kept, gone - set(kept.values()))


def plan_work(layout: Headstock, wishes: Wishes | None = None, ask: Ask = go_on) -> Work:
    """Router plans and the running order of a layout: the maker's own, or else the best.

    Its sentences are in the unit of `wishes`; without them in the unit of `geometry.lengths.speaking`.
    `ask` is asked between its parts (geometry.cancellation). GeometryError when the outline or a slot has no inside.
    """
    wishes = Wishes(unit=spoken()) if wishes is None else wishes
    with speaking(wishes.unit):
        return _plan_work(layout, wishes, ask)


def _plan_work(layout: Headstock, wishes: Wishes, ask: Ask) -> Work:
    template = compensation(layout)
    try:
        routing, trouble = plan_routing(layout, ask), ""
        ops = operations(layout, routing, wishes)
    except GeometryError as error:
        routing, trouble = None, str(error)
        none = Routing((), None, say("There is no router plan: {trouble}", trouble=trouble))
        ops = operations(layout, dict.fromkeys((*(slot.id for slot in layout.to_rout), OUTLINE), none), wishes)
    before = precedence(layout, ops, ask)
    best = best_order(ops, before, layout.rates, ask=ask)
    return Work(layout, template, routing, ops, before, best, layout.rates, trouble, wishes.unit).with_order(layout)
