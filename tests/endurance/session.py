"""A maker's session without a window, by chance, beside a plain account of it: both must always agree.

The account knows no history: it keeps the first layout and the list of edits that stand, and does them over again.
"""

from __future__ import annotations

import json
import random
from collections.abc import Callable
from pathlib import Path

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QEvent

from app.document import Document
from app.document.history import MOST_STEPS
from app.document.journal import Journal
from app.formats import headstock
from geometry.book import add_remark, remove_remark, set_minutes
from geometry.checks import check
from geometry.errors import GeometryError
from geometry.layout import Book, Headstock, Remark, Task
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
        self._entries: list[str] = [one.text for one in layout.book.remarks]
        self._back: list[list[str]] = []

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
        self._back.append(list(self._entries))
        self._entries.append(text)
        self.document.record("A note", lambda book: add_remark(book, Remark(piece=book.piece, text=text)))

    def strike(self, part: float) -> None:
        """A note out of the job book."""
        if not self._entries:
            return
        at = min(int(part * len(self._entries)), len(self._entries) - 1)
        self._back.append(list(self._entries))
        del self._entries[at]
        self.document.record("Strike a note", lambda book: remove_remark(book, at))

    def time(self, minutes: float) -> None:
        """Minutes for what is done to the first slot; none without slots."""
        if self.document.layout.slots:
            id = self.document.layout.slots[0].id
            self._back.append(list(self._entries))
            task = Task(operation=f"rout {id}", features=(id,))
            before = self.document.book
            self.document.record("Minutes", lambda book: set_minutes(book, "real", task, minutes))
            if self.document.book == before:
                self._back.pop()

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
        assert [one.text for one in self.document.book.remarks] == self._entries
        for layout in (history.layouts[0], history.layouts[-1]):
            assert [one.text for one in layout.book.remarks] == self._entries, "the book is the same at every step"
        for time in self.document.book.times:
            assert time.task.operation == f"rout {time.task.features[0]}", "a time and its feature are named alike"

    def replayed(self) -> None:
        """The edits that stand, done over again from the first layout as a file holds it, give the layout on show."""
        layout = headstock.decode(headstock.encode(self._base))
        for name, seed in self._line[:self._at]:
            layout = EDITS[name](layout, random.Random(seed))
        assert drawing(layout) == drawing(self.document.layout)
        assert headstock.encode(drawing(layout)) == headstock.encode(drawing(self.document.layout))
        assert self.document.result.snags == check(self.document.layout).snags

    def end(self) -> None:
        """Look at everything once more and leave nothing behind."""
        self.agree()
        self.replayed()
        self.save()
        self._journal.clear()
        self.document.deleteLater()
        # No event loop runs here: without this every document, with all that it has checked, would stay until the last.
        QCoreApplication.sendPostedEvents(self.document, QEvent.Type.DeferredDelete)


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
        (0.92, lambda: session.time(float(chance.randrange(60)))), (0.95, session.take_back), (0.97, session.save),
        (0.98, session.open), (1.01, session.crash)]
    for _ in range(count):
        what = chance.random()
        next(way for most, way in ways if what < most)()
        session.agree()
