"""Opening, saving and leaving, with nothing lost on the way."""

from __future__ import annotations

import os
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QWidget

from app.document import Document
from app.formats import headstock
from app.formats.errors import FormatError, Unconfirmed
from app.formats.headstock import SUFFIX, Opened
from app.formats.reading import Known, known
from app.formats.saving import before
from app.window import ask, kept
from app.window.demo import in_language, is_sample
from app.window.input.typed_text import take_typed
from geometry.layout import Headstock
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.document.writing import Written
    from app.window.frame import Frame

MOST_RECENT = 10


class Others(Protocol):
    """The windows of the program, as far as files need them."""

    def holding(self, file: Path | Known) -> Frame | None:
        """The window in which this file is open."""

    def open(self, path: Path) -> Frame | None:
        """Open a file in a window of its own. None when it cannot be read, which the maker is told."""

    def front(self, window: Frame) -> None:
        """Bring a window before the others."""


class Files:
    """The file side of one window. No disk is asked in its thread (app/window/background/disk.py)."""

    def __init__(self, document: Document, window: Frame, settings: QSettings, others: Others) -> None:
        self._document = document
        self._window = window
        self._settings = settings
        self._others = others

    # ---- questions ------------------------------------------------------
    def may_leave(self) -> bool:
        """Whether the layout on show may go: saved, or given up on purpose. What is being typed belongs to it, what is in hand is
        put back."""
        self._window.hand.cancel()
        take_typed(self._window)
        if not self._document.unsaved:
            return True
        answer = ask.save_first(self._window, self._document.layout.name or say("This layout"))
        return answer == "discard" or answer == "save" and self.save()

    # ---- reading --------------------------------------------------------
    def open(self, path: Path | None = None) -> bool:
        """Open a layout, asking for one when none is named. False when nothing was opened."""
        if path is None:
            path = ask.open_file(self._window, say("Open a layout"), self._folder(), ask.LAYOUTS)
            if path is None:
                return False
        if self._is_elsewhere(path):
            return False
        read = opened_beside(self._window, path)
        if read is None or self._is_elsewhere(read.known) or not self.may_leave():
            return False
        if self._document.path is not None and read.known.same(self._document.known):  # it may have been saved a moment ago
            read = opened_beside(self._window, path)
        if read is None or self._is_elsewhere(read.known):
            return False
        self.take(path, read)
        return True

    def take(self, path: Path, read: Opened) -> None:
        """Show a layout that was read from a file: a sample as a copy, which is saved elsewhere."""
        home, seen = (None, None) if is_sample(read.known) else (path, read.seen)
        self._document.replace(in_language(read.known, read.layout), home, seen, read.known)
        self.opened(read.known)

    def opened(self, known: Known) -> None:
        """The layout on show was read from here: remember it, or say that it is the copy of a sample."""
        if is_sample(known):
            self._window.say(say("A copy of the sample is open; the sample stays. Saving asks for a place."))
        else:
            self.remember(known)

    def open_beside(self) -> None:
        """Ask for a layout and open it in a window of its own."""
        path = ask.open_file(self._window, say("Open a layout in a window of its own"), self._folder(), ask.LAYOUTS)
        if path is not None:
            self._others.open(path)

    def recent(self) -> list[Path]:
        """Layouts opened or saved lately, the last one first; whether they are still there is not asked."""
        self._settings.sync()
        return [Path(name) for name in kept.words(self._settings, "recent")]

    def remember(self, known: Known) -> None:
        """Put a layout at the head of those opened lately."""
        path = Path(known.real)
        names = [str(path), *(str(p) for p in self.recent() if p != path)][:MOST_RECENT]
        if names != kept.words(self._settings, "recent"):  # see `kept.note`
            self._settings.setValue("recent", names)

    def forget_recent(self) -> None:
        """Clear the list of layouts opened lately; the layouts stay where they are."""
        self._settings.setValue("recent", [])

    def open_before(self) -> None:
        """Bring back, as a step that can be undone, what the file held before it was saved last."""
        from app.window.background.disk import read_beside  # here and below: a start opens its layout by itself

        path = self._document.path
        try:
            layout = None if path is None else read_beside(self._window, path, partial(_read_before, path))
        except FileNotFoundError:
            path = None
        except FormatError as error:
            ask.warn(self._window, say("The version before was not opened"), str(error))
            return
        if path is None:
            ask.tell(self._window, say("The version before"), say("There is no version before this one: "
                                                                              "it is kept from the second saving on."))
        elif layout is not None:
            self._document.apply(say("Open the version before"), layout, whole=True)

    # ---- writing --------------------------------------------------------
    def save(self) -> bool:
        """Save where the layout came from, or ask. False when it was not saved."""
        return self.save_as() if self._document.path is None else self._write(self._document.path)

    def save_as(self) -> bool:
        """Ask for a place and save there."""
        from app.formats.file_names import stem_of  # here: a start saves nothing
        from app.window.background.disk import read_beside

        suggestion = self._document.path or Path(self._folder()) / f"{stem_of(self._document.layout.name, 'layout')}{SUFFIX}"
        path = ask.save_file(self._window, say("Save the layout"), str(suggestion), ask.LAYOUTS)
        if path is None:
            return False
        typed, path = path, _ending(path)
        found = read_beside(self._window, path, partial(_there, path))
        if found is None:
            return False
        there, known = found
        # The system asked about the name without its ending.
        if typed != path and there and not ask.write_over(self._window, path.name):
            return False
        other = self._others.holding(known)
        if other is not None and other is not self._window:
            ask.warn(self._window, say("Not saved there"), say(
                "{name} is open in another window. Close it there first, or save this one under another name.",
                name=path.name))
            return False
        return self._write(path, known=known)

    def _write(self, path: Path, over: bool = False, known: Known | None = None) -> bool:
        """`over`: also where another program has written what is open here. `known` as for `Document.save`."""
        from app.document.writing import ChangedElsewhere
        from app.window.background.disk import NotWaitedFor

        try:
            done = self._document.save(path, over, partial(self._beside, path), known)
        except ChangedElsewhere:
            answer = ask.changed_elsewhere(self._window, path.name)
            if answer == "theirs":
                self._take_theirs(path)
            return answer == "mine" and self._write(path, True, known) or answer == "elsewhere" and self.save_as()
        except FormatError as error:
            answer = ask.not_saved(self._window, str(error), not isinstance(error, Unconfirmed | NotWaitedFor))
            return answer == "again" and self._write(path, over, known) or answer == "elsewhere" and self.save_as()
        if not done.kept:
            ask.tell(self._window, say("Saved"), say("The layout is saved; the version before it could "
                                                                 "not be kept beside it."))
        self.remember(done.known)
        self._window.say(count(done.others, "Saved: {name}. {n} other name of this file keeps the version before.",
                               "Saved: {name}. {n} other names of this file keep the version before.", name=path.name)
                         if done.others else say("Saved: {name}", name=path.name))
        return True

    def _beside(self, path: Path, work: Callable[..., Written]) -> Written:
        from app.window.background.disk import written_beside

        return written_beside(self._window, path, lambda go_on: work(go_on=go_on))

    def _take_theirs(self, path: Path) -> None:
        """Show what the other program wrote, as a step: one undo brings the maker's own work back."""
        read = opened_beside(self._window, path)
        if read is not None:
            self._document.take(say("Take the file as it is now"), read.layout, read.seen, read.known)

    # ---- inside ---------------------------------------------------------
    def _folder(self) -> str:
        path = self._document.path or next(iter(self.recent()), None)
        return str(path.parent if path is not None else Path.home())

    def _is_elsewhere(self, file: Path | Known) -> bool:
        """Whether another window holds the file; that one is brought to the front then."""
        other = self._others.holding(file)
        if other is None or other is self._window:
            return False
        self._others.front(other)
        other.say(say("{name} is open in this window already.", name=Path(file.name if isinstance(file, Known) else file).name))
        return True


def opened_beside(window: QWidget | None, path: Path) -> Opened | None:
    """A layout and what is known of its file; None, and said, when it cannot be read, and when the maker does not wait for it."""
    from app.window.background.disk import read_beside

    try:
        return read_beside(window, path, partial(headstock.opened, path))
    except FormatError as error:
        ask.warn(window, say("This file was not opened"), str(error))
        return None


def _ending(path: Path) -> Path:
    """The name with the ending of layouts, in whatever capitals it was typed."""
    name = path.name.lower()
    if name.endswith(SUFFIX):
        return path
    return path.with_name((path.name[:-len(".json")] if name.endswith(".json") else path.name) + SUFFIX)


def _there(path: Path) -> tuple[bool, Known]:
    """In the thread."""
    return os.path.exists(path), known(path)


def _read_before(path: Path) -> Headstock:
    """In the thread. FileNotFoundError when there is none."""
    if not os.path.exists(before(path)):
        raise FileNotFoundError
    return headstock.read(before(path))
