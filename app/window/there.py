"""Which files are not there, asked beside the window: a network drive that has gone lets whoever asks wait for a minute."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from app.window.background.errand import Errand, raised


class There(QObject):
    """Looks for one list of files at a time, in the end for the last that was asked for."""

    told = Signal(object)
    """those of the last list that are not there, a frozenset of paths"""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._wanted: tuple[Path, ...] = ()
        self._asked: tuple[Path, ...] = ()
        self.errand = Errand(self)
        self.errand.answered.connect(self._answered)
        self.errand.failed.connect(raised)
        self.errand.ended.connect(self._ended)

    def look(self, files: Iterable[Path]) -> None:
        """Look whether these are there; `told` brings what came of it."""
        self._wanted = tuple(files)
        if self._wanted and self.errand.free:
            self._asked = self._wanted
            self.errand.start(partial(_missing, self._asked))

    def end(self) -> None:
        """The window goes."""
        self.errand.leave()

    def _answered(self, missing: frozenset[Path]) -> None:
        if self._asked == self._wanted:
            self.told.emit(missing)

    def _ended(self) -> None:
        if self._asked != self._wanted:
            self.look(self._wanted)


def _missing(files: Iterable[Path]) -> frozenset[Path]:
    """In the thread."""
    return frozenset(file for file in files if not os.path.exists(file))
