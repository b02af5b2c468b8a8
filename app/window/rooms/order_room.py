"""The Order stage: steps to drag, the piece at each of them, and what an order of one's own would spoil."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QRectF

from app.panels.order.order_panel import OrderPanel
from app.panels.order.order_rows import order_rows, worst
from app.panels.order.rate_rows import loud_words, tally
from app.panels.order.step_words import step_words
from app.sheets.work import Work, plan_work
from app.threads.background import raised
from app.window.rooms.order_centre import OrderCentre
from app.window.rooms.planning import PlanningRoom, PlanWords, asked_for
from geometry.book import made_by, open_again, task_of, tick_off, ticked
from geometry.cancellation import Ask, go_on
from geometry.checks.in_wood import called_now
from geometry.checks.words import first
from geometry.drawing.step_views import StepViews, step_views
from geometry.errors import GeometryError
from geometry.layout import Headstock, Piece
from geometry.lengths import speaking
from geometry.saying import count, say
from geometry.sequence import Wishes, legal_span, moved
from geometry.sequence.neck_hangs import neck_words
from geometry.terms import term
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


WORDS = PlanWords(
    first=say("The running order is being worked out."),
    anew=say("The steps on show are older than the last change: they are being worked out anew."),
    stopped=say("Stopped: there is no running order of this layout yet."),
    older=say("Stopped: the steps on show are older than the last change. Do not work by them."),
    done=say("The steps on show are of this layout."))


class OrderRoom(PlanningRoom):
    """Keeps order and pictures in step with the layout while the stage is on show."""

    key = "order"
    with_snags = False

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.panel = OrderPanel(window.unit)
        self.centre = OrderCentre()
        self.strip = self.centre.title
        self.work: Work | None = None
        self.at = ""
        self._opened = window.document.opened
        """of which layout that step is: others have steps of the same name"""
        self._base: Work | None = None
        self.plan_over(self.centre, WORDS, self.centre.parts)
        steps = self.panel.list
        steps.chosen.connect(self.go_to)
        steps.hovering.connect(self._hovering)
        steps.dropped.connect(self._move)
        steps.let_go.connect(self._say)
        steps.stepped.connect(self._stepped)
        steps.ticked.connect(self._ticked)
        self.panel.edited.connect(window.document.apply)
        self.panel.refused.connect(window.foot.refuse)
        self.panel.best_wanted.connect(self.back_to_best)
        self.panel.pieces.picked.connect(self._piece)
        self.centre.at_wanted.connect(self._turned)

    # ---- the stage ----------------------------------------------------------
    def refresh(self) -> None:
        """Show the order as the layout keeps it; plan anew, beside the window, when anything else changed."""
        layout = self.window.document.layout
        self.panel.pieces.show_piece(layout.book.piece)
        self.panel.show_rates(layout)  # at once: what is typed while a plan is on its way is typed into this layout
        wanted = asked_for(layout, self.window.unit)
        if self.planning.see_to(wanted, partial(plan_steps, *wanted)):
            self._show(self._base.with_order(layout))
        elif self.work is None and self.errand.busy:
            self.panel.show_head(say("Working out the order…"), "", "")

    def leave(self) -> None:
        self.centre.stop()
        self.panel.list.give_up()

    def end(self) -> None:
        self.centre.stop()
        super().end()

    # ---- answers --------------------------------------------------------------
    def _answered(self, work: Work) -> None:
        self._base = work

    def _failed(self, error: Exception) -> None:
        self.panel.list.give_up()
        self.work = self._base = None
        raised(error, but=GeometryError)
        self.panel.show_order([], "", False)
        self.panel.show_head("", "", say("There is no order yet: {error}", error=error))
        self.panel.show_hours(None)
        self.centre.show_count(0, 0)
        self.centre.picture.show_drawing((), QRectF(), "")
        self.centre.page.show_step(None, ())

    # ---- what is shown ----------------------------------------------------------
    def _show(self, work: Work) -> None:
        self.panel.list.give_up()  # a step in the hand may not be there any more
        self.work = work
        ids = list(work.order.steps)
        if self.at not in ids or self._opened != self.window.document.opened:
            self.at, self._opened = next(iter(work.open or ids), ""), self.window.document.opened
        rows = order_rows(work.steps, work.number, work.problems, work.estimate, self.window.unit, work.done, work.begun, work.blocked, work.goes_on)
        self.panel.show_order(rows, self.at, bool(work.layout.order), work.best is None)
        called = {op.id: op.called for op in work.ops}
        loud = loud_words(work.cannot, [called[id] for id in work.order.stuck])
        self.panel.show_head("\n".join((tally(work.counts), self._left(work))), self._changes(work), loud)
        self.panel.show_hours(work.counts, work.found_hours)
        self._say()
        self._show_step()

    def _left(self, work: Work) -> str:
        """How much is done and how much is left: told from the start, or the list would give way to it under the hand that sets the first tick."""
        steps = len(work.order.steps)
        return say("{done} of {steps} done, about {hours:.1f} hours left", done=steps - len(work.open), steps=steps, hours=work.hours_left)

    def _changes(self, work: Work) -> str:
        changes, best = work.order.changes.total, work.best
        if work.order.proven:
            return say("{changes} changes of machine, bit, table or side: no order needs fewer", changes=changes)
        if best is None or best.changes.total == changes and not work.problems:
            return say("{changes} changes of machine, bit, table or side; none can do with fewer than {bound}",
                       changes=changes, bound=work.order.bound)
        return say("{changes} changes of machine, bit, table or side; the best order has {total}",
                   changes=changes, total=best.changes.total)

    def _say(self) -> None:
        """What is wrong with the order, under the list."""
        misplaced, _ = self.work.misplaced
        if misplaced:
            self.panel.say(count(misplaced,
                                 "This step is spoiled or unsafe where it stands. Drag it, or go back to the best order.",
                                 "{n} steps are spoiled or unsafe where they stand. Drag them, or go back to the best order."),
                           warn=True)
        elif early := self.work.too_early:
            self.panel.say(early, warn=True)
        elif self.work.problems:
            self.panel.say(say("No step is spoiled by where it stands; what is unwise in the order is marked."))
        else:
            self.panel.say(say("Drag a step to move it, or press Alt+Up and Alt+Down. Press its box, or Space, when it is done."))

    def _show_step(self) -> None:
        work = self.work
        if not self.at:
            self.centre.show_count(0, 0)
            return
        at = work.order.steps.index(self.at)
        by_id = {op.id: op for op in work.ops}
        op = by_id[self.at]
        views: StepViews = step_views(work.layout, work.worked, work.as_worked(work.order.steps).index(self.at), work.ops, self.window.unit)
        why = work.blocked(op)
        neck = neck_words(work.layout, op.setup, self.window.unit)
        go_on = work.goes_on(op)
        op = replace(op, cautions=tuple(filter(None, (go_on and why, *work.cautions(op), neck))), blocked="" if go_on else why)
        words = step_words(op, by_id, work.heeded, work.broken, work.done, work.number, work.estimate[op.id], views.state,
                           self.window.unit)
        self.centre.show_count(at, len(work.steps), f"{work.number[self.at]}  {op.title}")
        x0, y0, x1, y1 = views.box
        self.centre.picture.show_drawing(views.plan, QRectF(x0, y0, x1 - x0, y1 - y0), " ".join((words.do, *words.state)))
        self.centre.page.show_step(words, views.section)

    # ---- the hand -----------------------------------------------------------------
    def go_to(self, id: str) -> None:
        """Show a step."""
        if self.work is not None and id in self.work.number and id != self.at:
            self.at = id
            self.panel.list.pick(id)
            self._show_step()

    def _turned(self, at: int) -> None:
        if self.work is not None and self.work.order.steps:
            self.go_to(self.work.order.steps[min(max(at, 0), len(self.work.order.steps) - 1)])

    def _hovering(self, id: str, to: int) -> None:
        work = self.work
        order = moved(work.order.steps, id, to)
        span = legal_span(work.order.steps, id, work.heeded)
        problems = work.wrong_in(order)
        self.panel.list.show_drag(span, worst(problems))
        known = {(p.op, p.text) for p in work.problems}
        new = [p for p in problems if (p.op, p.text) not in known and p.grade != "left out"]
        if not new:
            self.panel.say(say("It may stand here."))
        else:
            more = " " + say("And {n} more.", n=len(new) - 1) if len(new) > 1 else ""
            self.panel.say(f"{first(term(new[0].grade))}: {new[0].text}{more}", warn=new[0].loud)

    def _stepped(self, id: str, by: int) -> None:
        steps = self.work.order.steps
        to = steps.index(id) + by
        if 0 <= to < len(steps):
            self._move(id, to)

    def _ticked(self, id: str) -> None:
        """Done, or not done after all: written into the job book of the piece on the bench."""
        work = self.work
        op = next(op for op in work.ops if op.id == id)
        if id in work.done and id not in ticked(called_now(work.layout, work.layout.book.piece)):
            self.window.say(say("{title} needs no tick: the steps that are ticked off have taken all of its wood.", title=op.called))
            return
        if id in work.done:
            self.window.document.record(say("{title} is not done", title=op.called), lambda book: open_again(book, id))
        else:
            self.window.document.record(say("{title} is done", title=op.called),
                                        lambda book: tick_off(book, task_of(op), work.number[id], made_by(work.layout, op)))
        self.window.say(self._standing())

    def _piece(self, piece: Piece) -> None:
        """Of which piece the boxes are."""
        self.window.document.record(say("The piece on the bench"), lambda book: replace(book, piece=piece))

    def _standing(self) -> str:
        """How many steps are done of which piece, for the boxes of the other piece are others."""
        steps = self.work.order.steps
        done = sum(id in self.work.done for id in steps)
        return (say("{done} of {steps} steps are done on the practice piece", done=done, steps=len(steps))
                if self.work.layout.book.piece == "practice" else
                say("{done} of {steps} steps are done on the real piece", done=done, steps=len(steps)))

    def _move(self, id: str, to: int) -> None:
        work = self.work
        if id in work.done:
            self.window.say(say("{title} is done and keeps its number.", title=next(op.called for op in work.ops if op.id == id)))
            self._say()
            return
        order = moved(work.order.steps, id, to)
        if order == work.order.steps:
            self._say()
            return
        self.at = id
        called = next(op.called for op in work.ops if op.id == id)
        own = () if order == (work.best or work.order).steps else order
        self.window.document.apply(say("Move {title} in the order", title=called),
                                   replace(self.window.document.layout, order=own))

    def back_to_best(self) -> None:
        """Let go of the maker's own order."""
        if self.window.document.layout.order:
            self.window.document.apply(say("Back to the best order"),
                                       replace(self.window.document.layout, order=()))


def plan_steps(layout: Headstock, unit: LengthUnit, ask: Ask = go_on) -> Work:
    """Plan it, with sentences in that unit; pure, so that it runs beside the window. `ask` is asked between its parts."""
    with speaking(unit):
        return plan_work(layout, Wishes(unit=unit), ask)
