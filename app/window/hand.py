"""The hand on the canvas: starts the gesture of the tool in hand and passes the pointer on to it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.tools import Done, Gesture, Pointer, Running, Shown
from geometry.errors import GeometryError

Start = Callable[[Pointer], Gesture | None]


class Hand(QObject):
    """Runs one gesture at a time. One gesture is one step of the history; Esc puts everything back."""

    shown = Signal(object)
    """the Shown of the running gesture, or None when it ended"""
    refused = Signal(str)
    finished = Signal(str)
    """name of the step that was made, or "" when the gesture came to nothing"""

    def __init__(self, document: Document, start: Start, parent: QObject) -> None:
        super().__init__(parent)
        self._document = document
        self._start = start
        self._running: Running | None = None

    @property
    def busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._running is not None

    def point(self, pointer: Pointer) -> None:
        """Take one pointer event."""
        try:
            if self._running is None:
                gesture = self._start(pointer)
                if gesture is None:
                    return
                self._running = Running(gesture, self._document.layout)
            self._take(self._running.send(pointer))
        except GeometryError as error:
            self._end()
            self._document.preview(None)
            self.refused.emit(str(error))
            self.finished.emit("")

    def cancel(self) -> bool:
        """Put everything back as it was before the gesture; False when none was under way."""
        if self._running is None:
            return False
        self._running.cancel()
        self._end()
        self._document.preview(None)
        self.finished.emit("")
        return True

    def _take(self, answer: Shown | Done | None) -> None:
        if isinstance(answer, Shown):
            if answer.held:
                self._document.hold(answer.held)
            self._document.preview(answer.layout)
            self.shown.emit(answer)
            return
        self._end()
        if isinstance(answer, Done):
            self._document.apply(answer.name, answer.layout)
            self._document.hold(answer.held)
            self.finished.emit(answer.name)
        else:
            self._document.preview(None)
            self.finished.emit("")

    def _end(self) -> None:
        self._running = None
        self.shown.emit(None)
