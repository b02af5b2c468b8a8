"""Opening, saving and leaving, with nothing lost on the way."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QSettings

from app.document import Document
from app.formats import headstock
from app.formats.errors import FormatError, Unconfirmed
from app.formats.headstock import SUFFIX
from app.formats.reading import real
from app.formats.saving import before, other_names, sweep
from app.window import ask, kept
from app.window.demo import home_of, in_language
from app.window.input.typed_text import take_typed
from geometry.layout import Headstock
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.window.frame import Frame

MOST_RECENT = 10


class Others(Protocol):
    """The windows of the program, as far as files need them."""

    def holding(self, path: Path) -> Frame | None:
        """The window in which this file is open."""

    def open(self, path: Path) -> Frame | None:
        """Open a file in a window of its own. None when it cannot be read, which the maker is told."""

    def front(self, window: Frame) -> None:
        """Bring a window before the others."""


class Files:
    """The file side of one window."""

    def __init__(self, document: Document, window: Frame, settings: QSettings, others: Others) -> None:
        self._document = document
        self._window = window
        self._settings = settings
        self._others = others

    # ---- questions ------------------------------------------------------
    def may_leave(self) -> bool:
        """Whether the layout on show may go: saved, or given up on purpose. What is being typed belongs to it."""
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
        read = self._read(path)
        if read is None or not self.may_leave():
            return False
        if self._is_open_from(path):  # what was read may have been saved over a moment ago
            read = self._read(path)
        if read is not None:
            self.take(read[0], path, read[1])
        return read is not None

    def _read(self, path: Path) -> tuple[Headstock, bytes] | None:
        """A layout and the bytes of its file; None, and said, when it cannot be read."""
        try:
            return headstock.read_marked(path)
        except FormatError as error:
            ask.warn(self._window, say("This file was not opened"), str(error))
            return None

    def take(self, layout: Headstock, path: Path, seen: bytes | None) -> None:
        """Show a layout that was read from a file: a sample as a copy, which is saved elsewhere."""
        home = home_of(path)
        self._document.replace(in_language(path, layout), home, seen if home is not None else None)
        self.opened(path)

    def opened(self, path: Path) -> None:
        """The layout on show was read from here: remember it, or say that it is the copy of a sample."""
        if home_of(path) is not None:
            self.remember(path)
        else:
            self._window.say(say("A copy of the sample is open; the sample stays. Saving asks for a place."))

    def open_beside(self) -> None:
        """Ask for a layout and open it in a window of its own."""
        path = ask.open_file(self._window, say("Open a layout in a window of its own"), self._folder(), ask.LAYOUTS)
        if path is not None:
            self._others.open(path)

    def recent(self) -> list[Path]:
        """Layouts opened or saved lately, the last one first; whether they are still there is not asked."""
        self._settings.sync()
        return [Path(name) for name in kept.words(self._settings, "recent")]

    def remember(self, path: Path) -> None:
        """Put a layout at the head of those opened lately."""
        path = Path(real(path))
        names = [str(path), *(str(p) for p in self.recent() if p != path)][:MOST_RECENT]
        if names != kept.words(self._settings, "recent"):  # see `kept.note`
            self._settings.setValue("recent", names)

    def forget_recent(self) -> None:
        """Clear the list of layouts opened lately; the layouts stay where they are."""
        self._settings.setValue("recent", [])

    def open_before(self) -> None:
        """Bring back, as a step that can be undone, what the file held before it was saved last."""
        path = self._document.path
        if path is None or not os.path.exists(before(path)):
            ask.tell(self._window, say("The version before"), say("There is no version before this one: "
                                                                              "it is kept from the second saving on."))
            return
        try:
            layout = headstock.read(before(path))
        except FormatError as error:
            ask.warn(self._window, say("The version before was not opened"), str(error))
            return
        self._document.apply(say("Open the version before"), layout)

    # ---- writing --------------------------------------------------------
    def save(self) -> bool:
        """Save where the layout came from, or ask. False when it was not saved."""
        return self.save_as() if self._document.path is None else self._write(self._document.path)

    def save_as(self) -> bool:
        """Ask for a place and save there."""
        from app.formats.file_names import stem_of  # here: a start saves nothing

        suggestion = self._document.path or Path(self._folder()) / f"{stem_of(self._document.layout.name, 'layout')}{SUFFIX}"
        path = ask.save_file(self._window, say("Save the layout"), str(suggestion), ask.LAYOUTS)
        if path is None:
            return False
        if not path.name.endswith(SUFFIX):
            path = path.with_name(path.name.removesuffix(".json") + SUFFIX)
            # The system asked about the name without its ending.
            if os.path.exists(path) and not ask.write_over(self._window, path.name):
                return False
        other = self._others.holding(path)
        if other is not None and other is not self._window:
            ask.warn(self._window, say("Not saved there"), say(
                "{name} is open in another window. Close it there first, or save this one under another name.",
                name=path.name))
            return False
        return self._write(path)

    def _write(self, path: Path) -> bool:
        if self._is_open_from(path) and self._document.changed_elsewhere:
            answer = ask.changed_elsewhere(self._window, path.name)
            if answer == "theirs":
                self._take_theirs(path)
            if answer != "mine":
                return answer == "elsewhere" and self.save_as()
        shared = other_names(path)
        try:
            kept = self._document.save(path)
        except FormatError as error:
            answer = ask.not_saved(self._window, str(error), not isinstance(error, Unconfirmed))
            return answer == "again" and self._write(path) or answer == "elsewhere" and self.save_as()
        if not kept:
            ask.tell(self._window, say("Saved"), say("The layout is saved; the version before it could "
                                                                 "not be kept beside it."))
        sweep(path.parent)
        self.remember(path)
        self._window.say(count(shared, "Saved: {name}. {n} other name of this file keeps the version before.",
                               "Saved: {name}. {n} other names of this file keep the version before.", name=path.name)
                         if shared else say("Saved: {name}", name=path.name))
        return True

    def _take_theirs(self, path: Path) -> None:
        """Show what the other program wrote, as a step: one undo brings the maker's own work back."""
        read = self._read(path)
        if read is not None:
            self._document.take(say("Take the file as it is now"), *read)

    def _is_open_from(self, path: Path) -> bool:
        mine = self._document.path
        return mine is not None and real(mine) == real(path)

    # ---- inside ---------------------------------------------------------
    def _folder(self) -> str:
        if self._document.path is not None:
            return str(self._document.path.parent)
        return str(next((p.parent for p in self.recent() if os.path.isdir(p.parent)), Path.home()))

    def _is_elsewhere(self, path: Path) -> bool:
        """Whether another window holds the file; that one is brought to the front then."""
        other = self._others.holding(path)
        if other is None or other is self._window:
            return False
        self._others.front(other)
        other.say(say("{name} is open in this window already.", name=path.name))
        return True
