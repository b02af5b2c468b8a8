"""The hand on the canvas: starts the gesture of the tool in hand and passes the pointer on to it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.tools import Done, Gesture, Pointer, Running, Shown
from geometry.errors import GeometryError

STARTS = "0123456789.,;-+/\"' °"
"""Characters that a typed value may begin with; letters only go on with one, alone they are keys of the tool."""

Start = Callable[[Pointer], Gesture | None]


class Hand(QObject):
    """Runs one gesture at a time. One gesture is one step of the history; Esc puts everything back."""

    shown = Signal(object)
    """the Shown of the running gesture, or None when it ended"""
    refused = Signal(str)
    typed = Signal(str)
    """what has been typed for the running gesture so far"""
    finished = Signal(object)
    """the Done of the gesture, or None when it came to nothing"""

    def __init__(self, document: Document, start: Start, parent: QObject) -> None:
        super().__init__(parent)
        self._document = document
        self._start = start
        self._running: Running | None = None
        self._last: Pointer | None = None
        self._typed = ""

    def key(self, key: str, text: str) -> bool:
        """Take a key for the running gesture: digits gather to a typed value, Enter sends it. False when not wanted."""
        if self._running is None or self._last is None:
            return False
        if key == "enter":
            typed, self._typed = self._typed, ""
            self.point(replace(self._last, kind="key", key="enter", typed=typed))
        elif key == "backspace" and self._typed:
            self._typed = self._typed[:-1]
        elif text and (text in STARTS or self._typed and text.isalpha()):
            self._typed += text
        elif key == "backspace" or text.isalpha():
            self.point(replace(self._last, kind="key", key=key or text.lower()))
            return True
        else:
            return False
        self.typed.emit(self._typed)
        return True

    @property
    def busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._running is not None

    def point(self, pointer: Pointer) -> None:
        """Take one pointer event."""
        self._last = pointer
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
            self.finished.emit(None)
            self.refused.emit(str(error))

    def begin(self, gesture: Gesture) -> None:
        """Start a gesture that no pointer started: what an action proposes."""
        self.cancel()
        self._last = Pointer((0.0, 0.0), "key")
        self._running = Running(gesture, self._document.layout)
        self._take(self._running.shown)

    def cancel(self) -> bool:
        """Put everything back as it was before the gesture; False when none was under way."""
        if self._running is None:
            return False
        self._running.cancel()
        self._end()
        self._document.preview(None)
        self.finished.emit(None)
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
            self.finished.emit(answer)
        else:
            self._document.preview(None)
            self.finished.emit(None)

    def _end(self) -> None:
        self._running = None
        self._typed = ""
        self.shown.emit(None)
