"""The hand on the canvas: starts the gesture of the tool in hand and passes the pointer on to it."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace
from PySide6.QtCore import QObject, Signal

from app.document import Document
from app.tools import Done, Gesture, Pointer, Running, Shown
from app.tools.entering import Entering
from app.tools.pointer import Takes
from app.window.background.aside import hand_works
from geometry.errors import GeometryError
from geometry.lengths import speaking
from geometry.saying import say
from geometry.units import LengthUnit
from geometry.vectors import Vec2

STARTS = "0123456789.,;-+/\"'°"
"""Characters that a typed value may begin with; letters and the space only go on with one, alone they are keys."""

Entries = tuple[tuple[str, str, bool], ...]
"""(label, text, whether it is being typed into) of each value that can be typed."""

Start = Callable[[Pointer], Gesture | None]


class Hand(QObject):
    """Runs one gesture at a time. One gesture is one step of the history; Esc puts everything back."""

    shown = Signal(object)
    """the Shown of the running gesture, or None when it ended"""
    refused = Signal(str)
    typed = Signal(object)
    """what has been typed for the running gesture so far, as Entries"""
    finished = Signal(object)
    """the Done of the gesture, or None when it came to nothing"""

    def __init__(self, document: Document, start: Start, parent: QObject) -> None:
        super().__init__(parent)
        self._document = document
        self._start = start
        self.unit: LengthUnit = "mm"
        self._running: Running | None = None
        self._last: Pointer | None = None
        self._pointed = True
        self._entering = Entering()
        self._down = False
        """whether the mouse or the pen is down"""
        self._typed_down = False
        """whether what is being typed was begun while it was"""
        self._pulls = False
        """whether the gesture began with the press, so that letting go ends it"""
        document.history_changed.connect(self._overtaken)

    def key(self, key: str, text: str) -> bool:
        """Take a key for the running gesture: digits gather to a value, Tab leads to the next, Enter sends them; what is refused stays.

        False when the key is not wanted.
        """
        if self._running is None or self._last is None:
            return False
        if key == "enter":
            entering, self._entering = self._entering, Entering()
            self.point(replace(self._last, kind="key", key="enter", typed=entering.composed(self.takes)))
            if entering and self._running is not None and self._running.shown.refused:
                self._entering = entering  # to be mended
        elif key in ("tab", "tab back"):
            if not self._entering.next(self.takes, 1 if key == "tab" else -1):
                return False
        elif key == "backspace" and self._entering:
            self._entering.back()
        elif text and self._now is not None and self._now.takes is not None and (text in STARTS or self._entering and (text.isalpha() or text == " ")):
            self._typed_down = self._typed_down or self._down
            self._entering.add(text)
        elif key == "backspace" or text.isalpha():
            self.point(replace(self._last, kind="key", key=key or text.lower(), typed=""))
            return True
        else:
            return False
        self.typed.emit(self.entries)
        return True

    @property
    def takes(self) -> tuple[Takes, ...]:
        """The values that the running gesture can be given."""
        return () if self._now is None else self._now.takes or ()

    @property
    def _now(self) -> Shown | None:
        """What the running gesture shows."""
        return None if self._running is None else self._running.shown

    @property
    def entries(self) -> Entries:
        """What has been typed so far; nothing before the first key."""
        return self._entering.shown(self.takes) if self._entering else ()

    @property
    def at(self) -> Vec2 | None:
        """Where the pointer was last while the gesture ran, mm; None when none has come yet."""
        return self._last.at if self._last is not None and self._pointed and self._running is not None else None

    @property
    def busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._running is not None

    @property
    def begun(self) -> bool:
        """Whether there is something in hand to be put back: a press, a typed value or an action began it. A gesture that only
        follows the pointer has not begun."""
        return self._now is not None and (not self._now.follows or bool(self._entering))

    def point(self, pointer: Pointer) -> None:
        """Take one pointer event. To let go takes what was typed meanwhile, as Enter does; what is pulled goes back when that is
        refused, since it cannot follow a mouse that is up. In a gesture of several presses the next one is still being typed."""
        self._last = pointer
        self._down = pointer.kind in ("press", "double") or self._down and pointer.kind != "release"
        if pointer.kind == "release" and self._typed_down and not self._running.shown.back and self._entering.composed(self.takes):
            self._typed_down = False
            self.key("enter", "")
            if self._pulls and self._running is not None:
                why = self._running.shown.readout
                self.cancel()
                self.refused.emit(say("{why} What was in hand is put back.", why=why))
            return
        self._pointed = self._pointed or pointer.kind != "key"
        try:
            if self._running is None:
                gesture = self._start(pointer)
                if gesture is None:
                    return
                self._running = Running(gesture, self._document.layout)
                self._pulls = self._running.shown is not None and not self._running.shown.follows
            with speaking(self.unit):
                shown = self._running.send(pointer)
            self._take(shown)
        except GeometryError as error:
            self._end()
            self._document.preview(None)
            self.finished.emit(None)
            self.refused.emit(str(error))

    def begin(self, gesture: Gesture) -> None:
        """Start a gesture that no pointer started: what an action proposes."""
        self.cancel()
        self._last, self._pointed = Pointer((0.0, 0.0), "key"), False
        self._running = Running(gesture, self._document.layout)
        self._take(self._running.shown)

    def leave(self) -> None:
        """The pointer went away: what only followed it goes too."""
        if not self.begun:
            self.cancel()

    def take_back(self) -> bool:
        """Take back the last of several presses, before it what is being typed; False when the gesture has no such thing."""
        if self._now is None or not self._now.back:
            return False
        if self._entering:
            self._entering = Entering()
            self.typed.emit(self.entries)
        else:
            self.key("backspace", "")
        return True

    def cancel(self) -> bool:
        """Put everything back as it was before the gesture; False when none was under way."""
        if self._running is None:
            return False
        self._running.cancel()
        self._end()
        self._document.preview(None)
        self.finished.emit(None)
        return True

    def _overtaken(self) -> None:
        """A step was made while a gesture ran, by a field, an undo or an answer: to end the gesture, which began from the
        layout before, would take that step away without a word."""
        begun = self.begun
        if self.cancel() and begun:
            self.refused.emit(say("What was in hand is put back: the layout changed meanwhile."))

    def _take(self, answer: Shown | Done | None) -> None:
        if isinstance(answer, Shown):
            hand_works()
            if answer.held and answer.held != self._document.held:
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
        self._pointed, self._typed_down, self._pulls = True, False, False
        self._entering = Entering()
        self.shown.emit(None)
