"""The piece at one step of the running order, as large as the window allows; keys and clicks go on and back."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget

from app.look.painting import Painting, focus_ring
from app.look.paths import fitted
from app.look.sizes import px
from app.look.theme import theme
from geometry.drawing import Drawing
from geometry.saying import say

BORDER = 22
"""White left round the picture, pixels."""
KEYS = {Qt.Key.Key_Right: 1, Qt.Key.Key_Down: 1, Qt.Key.Key_PageDown: 1, Qt.Key.Key_Space: 1,
        Qt.Key.Key_Left: -1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageUp: -1, Qt.Key.Key_Backspace: -1}
FAR = 1_000_000
NOTCH = 120
"""What the toolkit tells of one notch of a wheel: eighths of a degree."""


class StepPicture(QWidget):
    """Paints a display list to fit."""

    turned = Signal(int)
    """some steps on, or back"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._painting = Painting()
        self._box = QRectF()
        self._rolled = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(220, 200)
        self.setAccessibleName(say("The piece at this step"))

    def sizeHint(self) -> QSize:
        return QSize(520, 620)

    def show_drawing(self, drawing: Drawing, box: QRectF, words: str) -> None:
        """Show a display list, fitted so that `box` (mm) is seen; `words` are what is read out for it."""
        self._painting = Painting(drawing)
        self._box = box
        self.setAccessibleDescription(words)
        self.update()

    def paintEvent(self, event) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme().paper))
        if not self._box.isEmpty():
            border = px(BORDER)
            room = QRectF(self.rect()).adjusted(border, border + 6, -border, -border + 6)
            self._painting.paint(painter, fitted(self._box, room), theme(), self.width())
        if self.hasFocus():
            focus_ring(painter, self.rect(), theme())

    def keyPressEvent(self, event) -> None:
        step = {Qt.Key.Key_Home: -FAR, Qt.Key.Key_End: FAR}.get(event.key(), KEYS.get(event.key()))
        if step is None or event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            super().keyPressEvent(event)
            return
        self.turned.emit(step)
        event.accept()

    def wheelEvent(self, event) -> None:
        """A notch of the wheel is a step; fine wheels and pads tell of parts of one."""
        by = event.angleDelta().y()
        self._rolled = by if self._rolled * by < 0 else self._rolled + by
        notches = int(self._rolled / NOTCH)
        if notches:
            self._rolled -= notches * NOTCH
            self.turned.emit(-notches)
        event.accept()
