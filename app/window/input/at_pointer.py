"""What the card at the pointer says while a gesture runs, and the same in the foot of the window."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from app.canvas.tag import Tag
from app.tools import Shown
from app.window.input.hand import Entries
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


class AtPointer(QObject):
    """Follows the hand of a window."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self._shown: Shown | None = None

    def show(self, shown: Shown | None) -> None:
        """Say what a gesture shows; None puts the card away."""
        self._shown = shown
        self._lay()

    def type(self, entries: Entries) -> None:
        """Say what is being typed."""
        self._lay()
        told = " · ".join(f"{label} {text}".strip() for label, text, _ in entries if text)
        self._window.say(say("Typed: {told} – Enter takes it", told=told) if told else "")

    def _lay(self) -> None:
        shown, tag = self._shown, self._window.canvas.tag
        if shown is None or self._idle(shown):
            tag.show_at(None, Tag())
            return
        lines = tuple(re.split(r", (?=\S)", shown.readout)) if shown.readout and _numbers(shown) else \
            ((shown.readout,) if shown.readout else ())
        tag.show_at(self._window.hand.at, Tag(lines, shown.snapped, self._window.hand.entries))

    def _idle(self, shown: Shown) -> bool:
        """Whether something is only taken hold of: its name at the pointer would flash at every press."""
        return (self._window.tools.tool == "hold" and shown.layout is self._window.document.layout
                and not shown.marks and not shown.snapped and not shown.takes)


def _numbers(shown: Shown) -> bool:
    """Whether the readout is a list of dimensions, one to a line, and no sentence."""
    return not shown.readout.endswith(".")
