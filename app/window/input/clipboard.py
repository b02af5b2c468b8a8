"""Cut, copy and paste of tuners, slots, pins and holes, between windows too."""

from __future__ import annotations

from typing import TYPE_CHECKING

import msgspec
from PySide6.QtCore import QMimeData, QObject
from PySide6.QtGui import QGuiApplication

from geometry import edits
from geometry.errors import GeometryError
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.window.frame import Frame
    from geometry.edits.clipping import Clip

KIND = "application/x-pegwright-features"
LARGEST_BYTES = 5_000_000


class Clipboard(QObject):
    """Puts what a window holds on the clipboard of the desk, and takes it from there."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window

    def copy(self) -> Clip:
        """Copy what is held. GeometryError when nothing of it can be copied."""
        from geometry.edits.clipping import clip  # here and below: nothing of it is needed before something is copied

        document = self._window.document
        made = clip(document.layout, document.held)
        data = QMimeData()
        data.setData(KIND, msgspec.json.encode(made))
        data.setText(", ".join(made.ids))
        QGuiApplication.clipboard().setMimeData(data)
        self._window.say(count(len(made.ids), "{n} thing copied: Ctrl+V hangs it at the pointer.",
                               "{n} things copied: Ctrl+V hangs them at the pointer."))
        return made

    def cut(self) -> None:
        """Copy what is held and remove it; what cannot be copied stays."""
        document, ids = self._window.document, self.copy().ids
        name = say("Cut {name}", name=ids[0]) if len(ids) == 1 else say("Cut {n} things", n=len(ids))
        document.apply(name, edits.remove_features(document.layout, ids))
        document.hold(())

    def paste(self) -> None:
        """Hang a copy at the pointer. GeometryError when the clipboard holds nothing of a headstock."""
        from app.tools.paste import paste_down

        window, held = self._window, _held()
        if window.stage not in ("slots", "tuners", "strings", "blank", "outline"):
            window.set_stage("slots" if held.slots else "tuners")
        window.set_tool("hold")
        window.hand.begin(paste_down(window.document.layout, held, window.chooser.options))
        window.canvas.view.setFocus()


def _held() -> Clip:
    data = QGuiApplication.clipboard().mimeData()
    if data is None or not data.hasFormat(KIND):
        raise GeometryError(_nothing())
    return read_clip(bytes(data.data(KIND)))


def read_clip(data: bytes) -> Clip:
    """What was copied, from the bytes on the clipboard. GeometryError when they are none of a headstock's things."""
    from geometry.edits.clipping import Clip

    try:
        made = msgspec.json.decode(data[:LARGEST_BYTES], type=Clip)
    except (msgspec.DecodeError, UnicodeDecodeError, RecursionError):
        made = None
    if not made:
        raise GeometryError(_nothing())
    return made


def _nothing() -> str:
    return say("There is nothing to paste: copy tuners, slots, pins or holes first.")
