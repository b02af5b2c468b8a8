"""Which files are not there, asked beside the window: a network drive that has gone lets whoever asks wait for a minute."""

from __future__ import annotations

import os
from collections.abc import Iterable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from app.threads.background import Background, raised

LATE_MS = 500
"""After so long without an answer the next file is asked for too: one on a drive that has gone keeps none of the others."""


class There(QObject):
    """Looks for one list of files at a time, in the end for the last that was asked for. Each is asked for in a thread of its own,
    when the one before has answered or is late."""

    told = Signal()
    """`missing` is another than before"""

    def __init__(self, parent: QObject, **more) -> None:
        super().__init__(parent, **more)
        self._wanted: tuple[Path, ...] = ()
        self._left: list[Path] = []
        """those of them that are yet to be asked for"""
        self._asked: dict[Path, Background] = {}
        """those that have not answered; some may be of an earlier list"""
        self.missing: frozenset[Path] = frozenset()
        """those of the list that were not there when they answered last"""
        self._late = QTimer(self, singleShot=True, interval=LATE_MS, timeout=self._next)

    def look(self, files: Iterable[Path]) -> None:
        """Look whether these are there. What is known of them from before is `missing` at once."""
        self._wanted = tuple(files)
        self._left = [file for file in dict.fromkeys(self._wanted) if file not in self._asked]
        self.missing &= frozenset(self._wanted)
        if not self._late.isActive():
            self._next()

    def end(self) -> None:
        """The window goes."""
        self._left = []
        self._late.stop()
        for thread in self._asked.values():
            thread.leave()
        self._asked = {}

    # ---- inside ---------------------------------------------------------
    def _next(self) -> None:
        if self._left:
            file = self._left.pop(0)
            thread = self._asked[file] = Background(partial(_looked, file), self)
            thread.answered.connect(self._answered)
            thread.failed.connect(raised)
            thread.start()
            self._late.start()

    def _answered(self, answer: tuple[Path, bool]) -> None:
        file, there = answer
        if self._asked.pop(file, None) is None:
            return  # on its way when the window went
        before = self.missing
        if file in self._wanted:
            self.missing = before - {file} if there else before | {file}
        if self.missing != before:
            self.told.emit()
        self._late.stop()
        self._next()


def _looked(file: Path) -> tuple[Path, bool]:
    """In the thread."""
    return file, os.path.exists(file)
