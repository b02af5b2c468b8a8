"""The Job book stage: what each step took, what each part cost, and what to do differently."""

from __future__ import annotations

import time
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, TypeVar

from msgspec.structs import replace
from PySide6.QtCore import QTimer

from app.formats.book_csv import book_bytes
from app.panels.book.book_panel import BookPanel
from app.panels.book.book_rows import hour_cells, keys_of, note_cells, notes_of, price_cells, prices_of, sum_facts
from app.panels.book.book_view import BookView
from app.panels.forms.entry_table import NEW, EntryTable
from app.panels.order.order_rows import minutes_words
from app.sheets.needs import wares
from app.sheets.work import Work
from app.threads.background import raised
from app.window import ask
from app.window.background.disk import saved_where_asked
from app.window.history_buttons import FOUND
from app.window.rooms.order_room import plan_steps
from app.window.rooms.planning import PlanningRoom, PlanWords, asked_for
from app.window.rooms.reading_desk import ReadingDesk
from geometry.book import (
    Line,
    add_remark,
    begin_anew,
    corrected,
    done_steps,
    drop_timer,
    factors_of,
    lines,
    made_by,
    not_so_deep,
    open_again,
    otherwise,
    put_price,
    put_remark,
    read_amount,
    read_minutes,
    remove_price,
    remove_remark,
    running,
    set_minutes,
    start,
    stop,
    tasks,
    tick_off,
    ticked,
)
from geometry.checks.in_wood import called_now
from geometry.errors import GeometryError, quoted
from geometry.layout import NOTHING, Book, Clock, Made, Piece, Price, Remark, Task
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

Kept = TypeVar("Kept", Price, Remark)

STEP = 0
HOUR_PIECE: dict[int, Piece] = {3: "practice", 4: "real"}


WORDS = PlanWords(
    first=say("The planned times are being worked out."),
    anew=say("The planned times on show are older than the last change: they are being worked out anew."),
    stopped=say("Stopped: there are no planned times of this layout yet."),
    older=say("Stopped: the planned times on show are older than the last change."),
    done=say("The planned times on show are of this layout."))


class BookRoom(PlanningRoom):
    """Shows the book of record beside the plan of the layout; every entry goes through `Document.record`."""

    key = "book"
    with_snags = False

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.panel = BookPanel(window.unit)
        self.readings = ReadingDesk(window)
        self.view = self.centre = BookView(self.readings.page)
        self.strip = self.view.tabs
        self.work: Work | None = None
        self.rows: tuple[Line, ...] = ()
        self._base: Work | None = None
        self.plan_over(self.panel, WORDS)
        self._writes = False
        """whether the table is to be written as soon as the plan is there"""
        self._writing = QTimer(self, singleShot=True, timeout=self.write)
        view = self.view
        view.hours.entered.connect(self._minutes)
        view.hours.pressed_at.connect(self._timer)
        view.hours.struck.connect(self._strike_hour)
        view.money.entered.connect(self._price)
        view.money.struck.connect(self._strike_price)
        view.notes.entered.connect(self._note)
        view.notes.pressed_at.connect(self._seen_to)
        view.notes.struck.connect(self._strike_note)
        for table in (view.hours, view.money, view.notes):
            table.refused.connect(window.foot.refuse)
        view.wanted.connect(self._wanted)
        self.panel.wanted.connect(self._wanted)
        self.panel.pieces.picked.connect(self._piece)
        self.panel.currency_typed.connect(self._currency)

    # ---- the stage ----------------------------------------------------------
    @property
    def book(self) -> Book:
        """The job book of record, with all that is made under the names of now."""
        return called_now(self.window.document.layout, self.window.document.book.piece)

    def refresh(self) -> None:
        """Show the book at once; plan anew, beside the window, when anything but the order changed."""
        layout = self.window.document.layout
        wanted = asked_for(layout, self.window.unit)
        if self.planning.see_to(wanted, partial(plan_steps, *wanted)):
            self.work = self._base.with_order(layout)
        self._show()

    def leave(self) -> None:
        self._writes = False

    def end(self) -> None:
        self._writing.stop()
        super().end()

    def planned(self) -> tuple[Task, ...]:
        """The tasks of the plan on show; none as long as there is none."""
        return () if self.work is None else tasks(self.work.steps, self.work.counts.changes)

    def _answered(self, work: Work) -> None:
        self._base = work

    def _failed(self, error: Exception) -> None:
        self.work = self._base = None
        raised(error, but=GeometryError)
        self.window.say(say("There is no plan to hold the hours against: {error}", error=error))

    def _ended(self) -> None:
        super()._ended()
        if self._writes:
            self._writing.start(0)  # it asks where: not in the midst of an answer

    # ---- what is shown --------------------------------------------------------
    def _show(self) -> None:
        book, work, view, opened = self.book, self.work, self.view, self.window.document.opened
        factors = None if work is None else factors_of(work.rates, work.counts.changes)
        self.rows = lines(book, self.planned(), factors)
        layout = self.window.document.layout
        ops = () if work is None else work.ops
        done, away = done_steps(layout, ops), otherwise(layout) | not_so_deep(layout, ops)
        cells = hour_cells(self.rows, {} if work is None else work.number, book, done, away)
        view.hours.show_rows(cells, frozenset({len(cells) - 1}), [*(row.task.operation for row in self.rows), None], opened)
        cells = price_cells(book, book.piece)
        view.money.show_rows(cells, frozenset({len(cells) - 1}), [*keys_of(prices_of(book, book.piece)), NEW, None],
                             (opened, book.piece))
        view.notes.show_rows(note_cells(book, book.piece), keys=[*keys_of(notes_of(book, book.piece)), NEW], of=opened)
        self.readings.show()
        view.allow({"start": book.clock is None and bool(self.rows), "stop": book.clock is not None,
                    "drop": book.clock is not None})
        says = say("Working out the plan…") if work is None and self.errand.busy else self._correction()
        self.panel.show_book(book.piece, book.currency, sum_facts(self.rows, book, done, away), self._coming(), says)

    def _coming(self) -> list[tuple[str, str]]:
        if self.work is None:
            return []
        now = self.work.counts.hours.total
        found = [(say("By the minutes now set"), minutes_words(60 * now))]
        then = self.work.found_hours
        if then is not None:
            found.append((say("By what this job took"), minutes_words(60 * then)))
        return found

    def _correction(self) -> str:
        found = corrected(self.book)
        if not found.learned:
            return say("Nothing is timed yet: the first entry begins to correct the plan.")
        return say("All in all, work took {overall:.2f} times as long as planned; a step that was timed for long counts by "
                   "itself.",
                   overall=found.overall)

    # ---- entries ----------------------------------------------------------------
    def _record(self, name: str, change: Callable[[Book], Book]) -> bool:
        return self.window.foot.can(lambda: self.window.document.record(name, change))

    def _typed(self, table: EntryTable, row: int, column: int, text: str, name: str, change: Callable[[Book], Book]) -> None:
        table.put_down(row, column, text, lambda: self.window.document.record(name, change))

    def _minutes(self, row: int, column: int, text: str) -> None:
        piece = HOUR_PIECE[column]
        task = self._task(row)
        if task is None:
            self.window.say(say("This step has left the running order meanwhile: type the time at another one."))
            return
        self._typed(self.view.hours, row, column, text, say("Time of {title}", title=task.title),
                    lambda book: self._timed(book, piece, task, read_minutes(text)))

    def _timed(self, book: Book, piece: Piece, task: Task, minutes: float | None) -> Book:
        """The book with minutes as typed. Who types what a step of the piece on the bench took has done it; the timer says only that
        it is begun."""
        made = self._made(task)
        book = set_minutes(book, piece, task, minutes, made or NOTHING)
        if not minutes or made is None or piece != book.piece or task.operation in ticked(book):
            return book
        return tick_off(book, task, self.work.number[task.operation], made)

    def _made(self, task: Task) -> Made | None:
        """What a step of the plan on show leaves in the wood; None when it is none."""
        op = None if self.work is None else next((op for op in self.work.steps if op.id == task.operation), None)
        return op and made_by(self.work.layout, op)

    def _strike_hour(self, row: int) -> None:
        """Strike out the minutes on which the keyboard stands, or the tick of a step."""
        column, task = self.view.hours.currentIndex().column(), self._task(row)
        if task is not None and column in HOUR_PIECE:
            self._minutes(row, column, "")
        elif task is not None and column == STEP and task.operation in {*done_steps(self.window.document.layout), *ticked(self.book)}:
            self._record(say("{title} is not done", title=task.title), lambda book: open_again(book, task.operation))
        else:
            self.window.say(say("Stand on the minutes, or on the tick of a step, that are to be struck out."))

    def _task(self, row: int) -> Task | None:
        """The step that a row on show is of; None when it is there no longer, and for no row."""
        line = self._line(row)
        return line and line.task

    def _line(self, row: int) -> Line | None:
        key = self.view.hours.key(row)
        return next((line for line in self.rows if line.task.operation == key), None)

    def _price(self, row: int, column: int, text: str) -> None:
        at, price = _found(self.view.money, row, prices_of(self.book, self.book.piece)) or (
            None, Price(piece=self.book.piece, part=say("part")))
        self._typed(self.view.money, row, column, text, say("Cost"),
                    lambda book: put_price(book, at, _changed_price(price, column, text)))

    def _note(self, row: int, column: int, text: str) -> None:
        found = _found(self.view.notes, row, notes_of(self.book, self.book.piece))
        if found is not None:
            at, note = found
            self._typed(self.view.notes, row, column, text, say("Change a note"),
                        lambda book: put_remark(book, at, replace(note, text=text.strip())))
        else:
            self._typed(self.view.notes, row, column, text, say("A note"),
                        lambda book: add_remark(book, Remark(piece=book.piece, text=text.strip())))

    def _timer(self, row: int, _column: int) -> None:
        if self.book.clock is None:
            self._start(row)
        else:
            self._stop(self.book.clock, time.time())

    def _stop(self, clock: Clock, now: float) -> None:
        """Stop the timer and tell what it counted: it may have run all night, or the clock may have been set."""
        ran = running(self.book, now)
        if self._record(say("Stop the timer"), lambda book: stop(book, now)):
            self.window.say(say("The clock of this computer was set back while the timer ran: nothing is counted. Type the minutes.")
                            if now < clock.since else
                            say("{minutes} counted: {title}", minutes=minutes_words(ran), title=clock.task.title))

    def _start(self, row: int) -> None:
        task = self._task(row)
        if task is None:
            self.window.say(say("Stand on a step of the table first."))
            return
        if not self._line(row).current:
            self.window.say(say("{title} has left the running order: there is nothing to time.", title=say("“{title}”", title=task.title)))
            return
        self._record(say("Start the timer"), lambda book: start(book, book.piece, task, time.time(), self._made(task) or NOTHING))

    def _seen_to(self, row: int, _column: int) -> None:
        found = _found(self.view.notes, row, notes_of(self.book, self.book.piece))
        if found is not None:
            at, note = found
            self._record(say("Seen to"), lambda book: put_remark(book, at, replace(note, done=not note.done)))

    def _strike_price(self, row: int) -> None:
        self._strike(_found(self.view.money, row, prices_of(self.book, self.book.piece)), say("Strike a cost out"), remove_price)

    def _strike_note(self, row: int) -> None:
        self._strike(_found(self.view.notes, row, notes_of(self.book, self.book.piece)), say("Strike a note out"), remove_remark)

    def _strike(self, found: tuple[int, Kept] | None, name: str, remove: Callable[[Book, int], Book]) -> None:
        if found is None:
            self.window.say(say("Stand on a row that has something to strike out first."))
        else:
            self._record(name, lambda book: remove(book, found[0]))

    def _piece(self, piece: Piece) -> None:
        self._record(say("The piece on the bench"), lambda book: replace(book, piece=piece))

    def _currency(self, text: str) -> None:
        if len(text) > 12:
            self.panel.currency.refuse(say("A currency is a word of at most 12 letters."))
            self.window.say(say("A currency is a word of at most 12 letters."))
        else:
            self._record(say("Currency"), lambda book: replace(book, currency=text))

    # ---- buttons ------------------------------------------------------------------
    def _wanted(self, key: str) -> None:
        view = self.view
        {"start": lambda: self._start(view.hours.currentIndex().row()),
         "stop": lambda: self._timer(-1, 6),
         "drop": lambda: self._record(say("Stop the timer without counting"), drop_timer),
         "note step": self._note_step, "hardware": self._hardware,
         "remove price": lambda: self._strike_price(view.money.currentIndex().row()),
         "remove note": lambda: self._strike_note(view.notes.currentIndex().row()),
         "rates": self._rates, "anew": self._anew, "back": self._back, "csv": self.write}[key]()

    def _note_step(self) -> None:
        task = self._task(self.view.hours.currentIndex().row())
        if task is None:
            self.window.say(say("Stand on a step of the table first."))
            return

        def take(text: str) -> None:
            self.window.document.record(say("A note"), lambda book: add_remark(book, Remark(piece=book.piece, text=text.strip(), task=task)))
        ask.line(self.window, say("Note to a step"), say("Do differently: {what}", what=task.title), take)

    def _hardware(self) -> None:
        piece, listed = self.book.piece, {price.part for _, price in prices_of(self.book, self.book.piece)}
        new = [Price(piece=piece, part=ware.name, count=ware.count) for ware in wares(self.window.document.layout)
               if ware.name not in listed]

        def change(book: Book) -> Book:
            for price in new:
                book = put_price(book, None, price)
            return book
        self._record(say("List the hardware"), change)

    def _rates(self) -> None:
        layout = self.window.document.layout
        self.window.document.apply(FOUND, replace(layout, rates=corrected(self.book).rates(layout.rates)))

    def _anew(self) -> None:
        before = self.book
        name = say("Begin the practice piece anew") if before.piece == "practice" else say("Begin the real piece anew")
        if self._record(name, begin_anew):
            self.window.say(say("Nothing is written down of this piece: it is begun anew as it is.") if self.book == before else
                            say("The piece is begun anew. “Take the last entry back” brings its record back."))

    def _back(self) -> None:
        name = self.window.document.take_back()
        if name:
            self.window.say(say("Taken back: {name}", name=name))
        else:
            self.window.foot.refuse(say("Nothing was written since the layout was opened"))

    def write(self) -> None:
        """Ask where and write the book as a table; while the plan is on its way that is put off, for the table holds its times."""
        self._writes = self.errand.busy
        if self._writes:
            self.window.say(say("The job book is written as soon as the planned times are worked out."))
            return
        made = partial(book_bytes, self.book, self.planned() if self.planning.current else ())
        path = saved_where_asked(self.window, say("Write the job book"), f"{say('job-book')}.csv", ask.TABLES, (".csv",),
                                 say("The job book was not written"), lambda _: made())
        if path is not None:
            self.window.say(say("Written: {path}", path=path))


def _found(table: EntryTable, row: int, known: list[tuple[int, Kept]]) -> tuple[int, Kept] | None:
    """(place in the book, record) of what a row on show is of; None for the row of what is new."""
    return next((one for one, key in zip(known, keys_of(known), strict=True) if key == table.key(row)), None)


def _changed_price(price: Price, column: int, text: str) -> Price:
    """A price with one cell typed anew. GeometryError with a sentence for what cannot be read."""
    if column == 0:
        return replace(price, part=text.strip())
    if column == 1:
        if not text.strip().isdecimal():
            raise GeometryError(say('{text} is not a number of parts: write for example 12.', text=quoted(text)))
        return replace(price, count=int(text))
    return replace(price, each=read_amount(text))
