"""The open layout: what is shown, what is held, what has been saved."""

from __future__ import annotations

import os
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QObject, Signal

from app.document.book_record import BookRecord
from app.document.history import History
from app.formats import headstock
from app.formats.errors import FormatError, Unconfirmed
from app.formats.reading import Known, unasked
from app.formats.saving import fingerprint
from geometry.checks import CheckResult, LiveCheck
from geometry.layout import Book, Headstock, feature_ids
from geometry.layout.names import RESERVED
from geometry.solids.pins_along import pins_along

if TYPE_CHECKING:
    from app.document.writing import Written


class Document(QObject):
    """One layout with its history. Edits come in as whole layouts, changes go out as signals.

    While a gesture runs, `preview` shows a layout without making it a step.
    The job book is written by `record` alone and no undo of a step takes it back.
    """

    shown_changed = Signal()
    """the layout on show changed: a step, an undo or a preview"""
    held_changed = Signal()
    history_changed = Signal()
    book_changed = Signal()
    """something was written into the job book or taken back there"""
    file_changed = Signal()

    def __init__(self, layout: Headstock, path: Path | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._history = History(layout)
        self._preview: Headstock | None = None
        self._saved: Headstock | None = layout
        self._held: tuple[str, ...] = ()
        self._record = BookRecord()
        self._live = LiveCheck()
        self._result = self._live.check(layout)
        self.path = path
        self._known: Known | None = None
        self._seen: str | bytes | None = None
        self._tried: tuple[str, ...] = ()
        """fingerprints of what could not be written to the file at `path`, as far as was known: it may yet have landed there"""
        self._going: Known | None = None
        """the file that it is being written to"""
        self.opened = 0
        """how many layouts took the place of the one before: what belongs to one of them alone is told by it"""

    # ---- what there is --------------------------------------------------
    @property
    def layout(self) -> Headstock:
        """The layout of record, without any preview."""
        return self._history.current

    @property
    def shown(self) -> Headstock:
        """The layout on show: the preview while a gesture runs."""
        return self._history.current if self._preview is None else self._preview

    @property
    def result(self) -> CheckResult:
        """Snags, holes and counts of the layout on show."""
        return self._result

    @property
    def held(self) -> tuple[str, ...]:
        """Ids of the features held, in the order they were picked up."""
        return self._held

    @property
    def unsaved(self) -> bool:
        """Whether the layout differs from what was opened or saved last."""
        return self._history.current != self._saved

    @property
    def seen(self) -> str | None:
        """Fingerprint of the file at `path` when it was read or written last, or None when that is not known. It may be given
        the bytes themselves: the fingerprint is made of them when it is first asked for."""
        if isinstance(self._seen, bytes):
            self._seen = fingerprint(self._seen)
        return self._seen

    @seen.setter
    def seen(self, seen: str | bytes | None) -> None:
        self._seen = seen

    @property
    def known(self) -> Known | None:
        """What is known of the file at `path` from when the disk was asked last; no more than its name when it was not."""
        if self.path is None:
            return None
        if self._known is None or self._known.name != os.path.abspath(self.path):
            self._known = unasked(self.path)
        return self._known

    @known.setter
    def known(self, known: Known | None) -> None:
        self._known = known

    @property
    def changed_elsewhere(self) -> bool:
        """Whether something else has written the file since it was read or saved here."""
        from app.document.writing import changed  # here, as in `save`: a start writes nothing

        return self.path is not None and changed(self.path, self.seen, self._tried)

    def holds(self, file: Known) -> bool:
        """Whether this file is open here, or is being written from here, as far as is known of it without asking the disk."""
        return (any(own is not None and own.same(file) for own in (self.known, self._going))
                or self._going is not None and self._going.may_become(file))

    @property
    def history(self) -> History:
        return self._history

    # ---- changes --------------------------------------------------------
    def apply(self, name: str, layout: Headstock, whole: bool = False) -> None:
        """Make a layout the next step of the history; ends any preview. Pins go with their bores, but in a `whole` one, which is no edit
        of that on record but another file's."""
        if not whole:
            layout = pins_along(self._history.current, layout)
        layout = self._record.kept(layout, self._history.current)
        result = self._live.check(layout)
        self._preview = None
        changed = self._history.push(name, layout)
        self._refresh(result)
        if changed:
            self.history_changed.emit()

    def preview(self, layout: Headstock | None) -> None:
        """Show a layout without a step; None goes back to the layout of record."""
        if layout is not None:
            layout = pins_along(self.layout, layout)
        if layout is self._history.current:
            layout = None
        if layout is self._preview:
            return
        result = self._live.check(self.layout if layout is None else layout)
        self._preview = layout
        self._refresh(result)

    def undo(self) -> str | None:
        """Step back; the name of the step undone, if any."""
        return self._step(self._history.undo)

    def redo(self) -> str | None:
        """Step forward; the name of the step redone, if any."""
        return self._step(self._history.redo)

    def go(self, number: int) -> bool:
        """Undo or redo until step `number` of the history is the present one; False when it is already."""
        return bool(self._step(lambda: self._history.go(number) or None))

    @property
    def saved_steps(self) -> list[int]:
        """Numbers of the steps whose drawing is the one in the file; the job book, which is no step, may differ.

        Empty without a file.
        """
        saved = self._saved
        if saved is None or self.path is None:
            return []
        found = []
        for number, layout in enumerate(self._history.layouts):
            if layout is saved or (layout if layout.book is saved.book else replace(layout, book=saved.book)) == saved:
                found.append(number)
        return found

    # ---- the job book -----------------------------------------------------
    @property
    def book(self) -> Book:
        """The job book of record."""
        return self._history.current.book

    def record(self, name: str, change: Callable[[Book], Book]) -> None:
        """Write into the job book, in every layout of the history. `change` is given it with all that is made under the names of now.
        GeometryError of `change` leaves all as it was."""
        from geometry.checks.in_wood import called_now  # here: a start goes without it

        before, history = self.book, self._history
        named = called_now(history.current, before.piece)
        after = change(named)
        if after != named:
            self._put(self._record.written(name, before, after, history.layouts, history.at))

    def take_back(self) -> str | None:
        """Take back what was written into the job book last; its name, or None when nothing was since the layout was opened."""
        found = self._record.taken_back(self._history.layouts, self.book)
        if found is None:
            return None
        name, layouts = found
        self._put(layouts)
        return name

    def _put(self, layouts: list[Headstock]) -> None:
        """Layouts that differ in their books from those of the history, in their place. What is drilled may be a snag."""
        current = layouts[self._history.at]
        preview = None if self._preview is None else replace(self._preview, book=current.book)
        result = self._live.check(current if preview is None else preview)
        self._history.put(layouts)
        self._preview = preview
        self.book_changed.emit()
        if result.snags != self._result.snags:
            self._refresh(result)

    def hold(self, ids: tuple[str, ...]) -> None:
        """Hold these features and no others; ids that the layout does not have are left out."""
        known = {*feature_ids(self.shown), *RESERVED}
        ids = tuple(dict.fromkeys(id for id in ids if id in known))
        if ids != self._held:
            self._held = ids
            self.held_changed.emit()

    def replace(self, layout: Headstock, path: Path | None, seen: str | bytes | None = None, known: Known | None = None) -> None:
        """Start over with another layout: a new history, nothing held, nothing unsaved."""
        result = self._live.check(layout)
        self.opened += 1
        self._history = History(layout)
        self._record = BookRecord()
        self._saved = layout
        self._preview = None
        self.path, self.known, self.seen, self._tried = path, known, seen, ()
        self.hold(())
        self._refresh(result)
        self.history_changed.emit()
        self.file_changed.emit()

    def recover(self, layout: Headstock, path: Path | None, seen: str | None = None, known: Known | None = None) -> None:
        """Start over with work that was never saved: it counts as unsaved until it is."""
        self.replace(layout, path, seen, known)
        self._saved = None
        self.file_changed.emit()

    def save(self, path: Path, over: bool = True, doing: Callable[[Callable[[], Written]], Written] = lambda work: work(),
             known: Known | None = None) -> Written:
        """Write the layout of record by `doing`, which may do the work in a thread; what came of it. `known` is what the disk knows
        of the name, where it was asked.

        FormatError when it cannot be written; the layout stays as it is, and unsaved. So it does when it is written
        Unconfirmed, but then what the open file holds is known to be from here. Without `over` ChangedElsewhere when another
        program has written the open file meanwhile: what could not be written from here and landed there yet is none of another's.
        """
        from app.document.writing import written

        layout = self.layout
        mine = None if over or self.path is None else self.known
        self._going = known or unasked(path)
        try:
            done = doing(partial(written, layout, path, mine, self.seen, self._tried))
        except FormatError as error:
            if self.path is not None and unasked(path).same(self.known):
                self._tried = (*self._tried, fingerprint(headstock.encode(layout)))
                if isinstance(error, Unconfirmed):
                    self.seen = self._tried[-1]
                    self.file_changed.emit()
            raise
        finally:
            self._going = None
        self._saved = layout
        self.path, self.known, self.seen, self._tried = path, done.known, done.seen, ()
        self.file_changed.emit()
        return done

    def take(self, name: str, layout: Headstock, seen: str | bytes, known: Known | None = None) -> None:
        """Make what the file holds now the next step of the history: nothing is unsaved, and one undo is mine again."""
        self._saved, self.seen, self.known, self._tried = layout, seen, known, ()
        self.apply(name, layout, whole=True)
        self.file_changed.emit()

    # ---- inside ---------------------------------------------------------
    def _step(self, move) -> str | None:
        self._preview, before = None, self._history.at
        name = move()
        if name is not None:
            try:
                result = self._live.check(self.shown)
            except BaseException:
                self._history.go(before)
                raise
            self._refresh(result)
            self.history_changed.emit()
        return name

    def _refresh(self, result: CheckResult) -> None:
        self._result = result
        self.shown_changed.emit()
        if self._held:
            self.hold(self._held)
