"""Opening, saving and leaving, with nothing lost on the way."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QWidget

from app.document import Document
from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.headstock import SUFFIX
from app.window import ask

MOST_RECENT = 10


class Files:
    """The file side of one window."""

    def __init__(self, document: Document, window: QWidget, settings: QSettings) -> None:
        self._document = document
        self._window = window
        self._settings = settings

    # ---- questions ------------------------------------------------------
    def may_leave(self) -> bool:
        """Whether the layout on show may go: saved, or given up on purpose."""
        if not self._document.unsaved:
            return True
        answer = ask.save_first(self._window, self._document.layout.name or self._window.tr("This layout"))
        return answer == "discard" or answer == "save" and self.save()

    # ---- reading --------------------------------------------------------
    def open(self, path: Path | None = None) -> bool:
        """Open a layout, asking for one when none is named. False when nothing was opened."""
        if path is None:
            path = ask.open_file(self._window, self._window.tr("Open a layout"), self._folder(), ask.LAYOUTS)
            if path is None:
                return False
        try:
            layout = headstock.read(path)
        except FormatError as error:
            ask.warn(self._window, self._window.tr("This file was not opened"), str(error))
            return False
        if not self.may_leave():
            return False
        self._document.replace(layout, path)
        self._remember(path)
        return True

    def recent(self) -> list[Path]:
        """Layouts opened or saved lately that are still there."""
        names = self._settings.value("recent", []) or []
        names = [names] if isinstance(names, str) else names
        return [Path(name) for name in names if Path(name).exists()]

    # ---- writing --------------------------------------------------------
    def save(self) -> bool:
        """Save where the layout came from, or ask. False when it was not saved."""
        return self.save_as() if self._document.path is None else self._write(self._document.path)

    def save_as(self) -> bool:
        """Ask for a place and save there."""
        stem = "".join(c if c.isalnum() or c in " -_" else " " for c in self._document.layout.name).strip() or "layout"
        suggestion = self._document.path or Path(self._folder()) / f"{stem.lower().replace(' ', '-')}{SUFFIX}"
        path = ask.save_file(self._window, self._window.tr("Save the layout"), str(suggestion), ask.LAYOUTS)
        if path is None:
            return False
        if not path.name.endswith(SUFFIX):
            path = path.with_name(path.name.removesuffix(".json") + SUFFIX)
        return self._write(path)

    def _write(self, path: Path) -> bool:
        try:
            self._document.save(path)
        except FormatError as error:
            ask.warn(self._window, self._window.tr("The layout was not saved"), str(error))
            return False
        self._remember(path)
        return True

    # ---- inside ---------------------------------------------------------
    def _folder(self) -> str:
        if self._document.path is not None:
            return str(self._document.path.parent)
        recent = self.recent()
        return str(recent[0].parent if recent else Path.home())

    def _remember(self, path: Path) -> None:
        path = path.resolve()
        names = [str(path), *(str(p) for p in self.recent() if p != path)]
        self._settings.setValue("recent", names[:MOST_RECENT])
