"""A maker's session without a window, by chance, beside a plain account of it: both must always agree.

The account knows no history: it keeps the first layout and the list of edits that stand, and does them over again.
"""

from __future__ import annotations

import json
import random
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QEvent

from app.document import Document
from app.document.history import MOST_STEPS
from app.document.journal import Journal
from app.formats import headstock
from geometry.book import (
    add_remark,
    drop_timer,
    put_price,
    put_reading,
    remove_price,
    remove_remark,
    set_minutes,
    start,
    tick_off,
)
from geometry.checks import check
from geometry.errors import GeometryError
from geometry.layout import Book, Headstock, Made, Price, Reading, Remark, Shaped, Task
from geometry.solids import holes
from geometry.solids.in_wood import bored
from geometry.solids.pins_along import pins_along
from tests.endurance.edits import EDITS

Step = tuple[str, float]
"""Which edit, and the seed of its chance."""


class Session:
    """What a maker does with one document; every method is one thing done. AssertionError where the two disagree."""

    def __init__(self, layout: Headstock, folder: Path) -> None:
        self._folder = folder
        self.document = Document(layout)
        self._journal = Journal(folder / "journal")
        self._file = folder / "head.headstock.json"
        self._start(layout)

    def _start(self, layout: Headstock) -> None:
        self._base = layout
        self._line: list[Step] = []
        self._at = 0
        self._entries = account(layout.book)
        self._back: list[dict[str, list]] = []

    # ---- what a maker does ------------------------------------------------
    def edit(self, name: str, seed: float) -> bool:
        """One edit as a step; False when it was refused or changed nothing."""
        before = self.document.layout
        try:
            after = EDITS[name](before, random.Random(seed))
        except GeometryError as error:
            assert str(error).strip() and "\n" not in str(error).strip(), error
            return False
        self.document.apply(name, after)
        if drawing(self.document.layout) == drawing(before):
            return False
        del self._line[self._at:]
        self._line.append((name, seed))
        self._at += 1
        return True

    def tried(self, name: str, seed: float) -> None:
        """An edit shown on the way, and put back."""
        before = self.document.layout
        try:
            self.document.preview(EDITS[name](before, random.Random(seed)))
        except GeometryError:
            return
        self.document.preview(None)
        assert self.document.shown is self.document.layout is before

    def undo(self) -> None:
        done = self.document.undo()
        assert (done is None) == (self._at == self._first)
        self._at -= done is not None

    def redo(self) -> None:
        done = self.document.redo()
        assert (done is None) == (self._at == len(self._line))
        self._at += done is not None

    def go(self, part: float) -> None:
        """To any step of the history."""
        number = round(part * len(self.document.history.names))
        self.document.go(number)
        self._at = self._first + number

    def write(self, text: str) -> None:
        """A note into the job book."""
        self._record("remarks", lambda had: [*had, text], lambda book: add_remark(book, Remark(piece=book.piece, text=text)))

    def strike(self, part: float) -> None:
        """A note out of the job book."""
        self._strike("remarks", part, remove_remark)

    def pay(self, part: str, cents: int) -> None:
        """A price into the job book."""
        price = Price(piece=self.document.book.piece, part=part, each=Decimal(cents) / 100)
        self._record("prices", lambda had: [*had, (part, price.each)], lambda book: put_price(book, None, price))

    def unpay(self, part: float) -> None:
        """A price out of the job book."""
        self._strike("prices", part, remove_price)

    def clock(self, now: float) -> None:
        """The timer started for the first slot, or stopped without counting it."""
        slots = self.document.layout.slots
        if self.document.book.clock is not None:
            self._record("clock", lambda had: [None], drop_timer)
        elif slots:
            task = Task(operation=f"rout {slots[0].id}", features=(slots[0].id,))
            self._record("clock", lambda had: [now], lambda book: start(book, book.piece, task, now))

    def turn(self) -> None:
        """The other piece on the bench."""
        other = "real" if self.document.book.piece == "practice" else "practice"
        self._record("piece", lambda had: [other], lambda book: replace(book, piece=other))

    def read(self, value: float) -> None:
        """A reading of a hole of the first tuner; none without tuners."""
        if self.document.layout.tuners:
            drilling = f"{self.document.layout.tuners[0].id}.1"
            reading = Reading(piece="real", drilling=drilling, what="depth", value=value)
            self._record(None, None, lambda book: put_reading(book, reading))

    def time(self, minutes: float) -> None:
        """Minutes for what is done to the first slot; none without slots."""
        if self.document.layout.slots:
            id = self.document.layout.slots[0].id
            task = Task(operation=f"rout {id}", features=(id,))
            self._record(None, None, lambda book: set_minutes(book, "real", task, minutes))

    def drill(self) -> None:
        """The first hole of the first tuner ticked off on the real piece as it is drawn; again where it moved since."""
        found = next((hole.drillings[0] for hole in holes(self.document.layout)), None)
        if found is not None:
            task = Task(operation=f"bore {found.id}", title="Drill it", features=(found.of,))
            self._tick(task, Made(hole=bored(found)))

    def rout(self) -> None:
        """The first slot ticked off on the real piece as it is drawn; again where it was reshaped since."""
        found = next(iter(self.document.layout.to_rout), None)
        if found is not None:
            task = Task(operation=f"rout {found.id} 1", title="Rout it", features=(found.id,))
            self._tick(task, Made(cut=Shaped(shape=found.shape, ends=found.depth, floor=found.depth is not None)))

    def _tick(self, task: Task, made: Made) -> None:
        self._record(None, None, lambda book: replace(tick_off(replace(book, piece="real"), task, 3, made), piece=book.piece))

    def _strike(self, field: str, part: float, remove: Callable[[Book, int], Book]) -> None:
        had = self._entries[field]
        if had:
            at = min(int(part * len(had)), len(had) - 1)
            self._record(field, lambda had: had[:at] + had[at + 1:], lambda book: remove(book, at))

    def _record(self, field: str | None, then: Callable[[list], list] | None, change: Callable[[Book], Book]) -> None:
        """One entry, into the book and into the account; without a field it goes by the names of features, which the account leaves out."""
        before = self.document.book
        self.document.record("An entry", change)
        if self.document.book != before:
            self._back.append(dict(self._entries))
            if field is not None:
                self._entries[field] = then(self._entries[field])

    def take_back(self) -> None:
        done = self.document.take_back()
        assert (done is None) == (not self._back)
        if done is not None:
            self._entries = self._back.pop()

    def save(self) -> None:
        """Save; read, saved again elsewhere, saved again here: always the same bytes."""
        self.document.save(self._file)
        assert not self.document.unsaved and not self.document.changed_elsewhere
        data = self._file.read_bytes()
        read = headstock.read(self._file)
        assert read == self.document.layout
        other = self._folder / "other.headstock.json"
        headstock.write(read, other)
        assert other.read_bytes() == data
        headstock.write(headstock.read(other), self._file)
        assert self._file.read_bytes() == data

    def open(self) -> None:
        """Open the file that was saved last: another history."""
        if self._file.exists():
            layout, seen = headstock.read_marked(self._file)
            self.document.replace(layout, self._file, seen)
            self._start(layout)

    def crash(self) -> None:
        """The program dies after the journal's delay, and its work is opened again."""
        self._journal.note(self.document.layout, self.document.path, self.document.seen)
        self._journal.write()
        assert not self._journal.trouble
        record = json.loads(self._journal.file.read_bytes())
        found = headstock.decode(record["layout"].encode())
        assert found == self.document.layout
        self.document.recover(found, self.document.path, record["seen"])
        assert self.document.unsaved
        self._start(found)

    # ---- what must hold ---------------------------------------------------
    @property
    def _first(self) -> int:
        """The oldest step that can be gone back to."""
        return max(0, len(self._line) - len(self.document.history.names))

    def agree(self) -> None:
        """What holds after everything that is done, as far as it is quick to see."""
        history = self.document.history
        assert history.names == [name for name, _ in self._line[self._first:]]
        assert history.at == self._at - self._first and len(history.past) <= MOST_STEPS
        for layout in (self.document.layout, history.layouts[0], history.layouts[-1]):
            assert account(layout.book) == self._entries, "the book is the same at every step"
        held = {one.task.features[0] for one in self.document.book.times if one.task.features}
        for time in self.document.book.times:
            assert time.task.operation == f"rout {time.task.features[0]}", "a time and its feature are named alike"
        assert len(held) == len(self.document.book.times), "one time of one operation"
        ticked = [one.task.operation for one in self.document.book.done]
        assert len(set(ticked)) == len(ticked) and all(
            one.task.operation.startswith(f"bore {one.task.features[0]}." if one.hole else f"rout {one.task.features[0]} ") for one in self.document.book.done)

    def replayed(self) -> None:
        """The edits that stand, done over again from the first layout as a file holds it, give the layout on show."""
        layout = headstock.decode(headstock.encode(self._base))
        for name, seed in self._line[:self._at]:
            layout = pins_along(layout, EDITS[name](layout, random.Random(seed)))
        assert drawing(layout) == drawing(self.document.layout)
        assert headstock.encode(drawing(layout)) == headstock.encode(drawing(self.document.layout))
        assert self.document.result.snags == check(self.document.layout).snags

    def end(self) -> None:
        """Look at everything once more and leave nothing behind."""
        self.agree()
        self.replayed()
        self.save()
        self._journal.end()
        self.document.deleteLater()
        # No event loop runs here: without this every document, with all that it has checked, would stay until the last.
        QCoreApplication.sendPostedEvents(self.document, QEvent.Type.DeferredDelete)


def account(book: Book) -> dict[str, list]:
    """What of a book goes by no name of a feature."""
    return {"remarks": [one.text for one in book.remarks], "prices": [(one.part, one.each) for one in book.prices],
            "clock": [None if book.clock is None else book.clock.since], "piece": [book.piece]}


def drawing(layout: Headstock) -> Headstock:
    """The layout without its job book."""
    return replace(layout, book=Book())


def by_chance(session: Session, chance: random.Random, count: int) -> None:
    """Things done by chance; what there is agrees after each."""
    names = list(EDITS)
    ways: list[tuple[float, Callable[[], object]]] = [
        (0.55, lambda: session.edit(chance.choice(names), chance.random())),
        (0.60, lambda: session.tried(chance.choice(names), chance.random())),
        (0.72, session.undo), (0.80, session.redo), (0.84, lambda: session.go(chance.random())),
        (0.88, lambda: session.write(f"note {chance.randrange(99)}")), (0.90, lambda: session.strike(chance.random())),
        (0.907, lambda: session.time(float(chance.randrange(60)))), (0.911, session.drill), (0.914, session.rout), (0.917, lambda: session.pay("wood", chance.randrange(9999))),
        (0.92, lambda: session.unpay(chance.random())), (0.925, lambda: session.clock(1.7e9 + chance.randrange(999))), (0.928, session.turn),
        (0.932, lambda: session.read(chance.uniform(0, 20))), (0.955, session.take_back), (0.975, session.save), (0.985, session.open),
        (1.01, session.crash)]
    for _ in range(count):
        what = chance.random()
        next(way for most, way in ways if what < most)()
        session.agree()
