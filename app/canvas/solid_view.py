"""The head in space, beside the canvas: turned with the mouse or the arrow keys."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QSize, Qt, QTimer
from PySide6.QtGui import QColor, QPainter, QPen, QTransform
from PySide6.QtWidgets import QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.canvas.canvas import feature_states
from app.canvas.snag_marks import RING, note_badge
from app.canvas.solid_paint import paint
from app.look.filled import filled
from app.look.flow import Flow
from app.look.painting import focus_ring
from app.look.signs import paint_sign
from app.look.sizes import keep, sizes
from app.look.theme import theme
from geometry.checks import Snag
from geometry.drawing.solid import Solid, solid
from geometry.drawing.turning import BACK, BASS_EDGE, FACE, TIP, TREBLE_EDGE, View, spot, turned
from geometry.layout import Headstock
from geometry.saying import say

BEGIN = View(math.radians(-32), math.radians(-24))
TURN = math.radians(0.45)
"""Turn a pixel of dragging, rad."""
KEY_TURN = math.radians(5)
REST_MS = 40
"""The view follows a drag on the canvas once the hand rests this long, so that it costs the drag nothing."""


class SolidView(QWidget):
    """Shows a layout in space and changes nothing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        sides = QWidget(self, objectName="tools")
        sides.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = Flow(sides, (8, 6, 8, 6), 3)
        self.turntable = Turntable(self)
        self._views = {}
        for word, view in ((say("Face"), FACE), (say("Back"), BACK), (say("Bass"), BASS_EDGE),
                           (say("Treble"), TREBLE_EDGE), (say("Tip"), TIP), (say("Aslant"), BEGIN)):
            button = QPushButton(word, sides, objectName="small", toolTip=say("Look at the head from this side."), clicked=self._chosen)
            self._views[button] = view
            row.addWidget(button)
        filled(QVBoxLayout(self), sides, (self.turntable, 1), margins=(0, 0, 0, 0), gap=0)
        keep(self, panel_width=300)

    def show_layout(self, layout: Headstock, snags: tuple[Snag, ...], held: tuple[str, ...]) -> None:
        """Show a layout with its snags and what is held."""
        self.turntable.show_layout(layout, snags, feature_states(list(snags), held))

    def _chosen(self) -> None:
        self.turntable.look(self._views[self.sender()])


class Turntable(QWidget):
    """The picture itself."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._layout: Headstock | None = None
        self._snags: tuple[Snag, ...] = ()
        self._states: dict[str, str] = {}
        self._body: Solid | None = None
        self._of: Headstock | None = None
        self._zoom = 1.0
        self._from: QPointF | None = None
        self.view = BEGIN
        self._rest = QTimer(self, singleShot=True, interval=REST_MS, timeout=self.update)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setAccessibleName(say("The head in space"))
        self.setToolTip(say("Drag to turn, roll the wheel to come closer. Arrow keys turn, + and - come closer or "
                            "step back."))

    def sizeHint(self) -> QSize:
        return QSize(420, 500)

    def show_layout(self, layout: Headstock, snags: tuple[Snag, ...], states: dict[str, str]) -> None:
        """Show a layout as soon as the hand rests."""
        self._layout, self._snags, self._states = layout, snags, states
        if self.isVisible():
            self._rest.start()

    def look(self, view: View) -> None:
        """Look from another side."""
        self.view = view
        self.update()

    # ---- the picture ----------------------------------------------------
    def paintEvent(self, event) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme().paper))
        if self._layout is None:
            return
        if self._of is not self._layout:
            self._body, self._of = solid(self._layout), self._layout
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        move = self._move()
        for patch in turned(self._body, self.view):
            paint(painter, patch, move, theme(), self._states.get(patch.owner, ""))
        for snag in self._snags:
            if snag.has_place:
                self._ring(painter, snag, move)
        if self.hasFocus():
            focus_ring(painter, self.rect(), theme())

    def _ring(self, painter: QPainter, snag: Snag, move: QTransform) -> None:
        where = snag.where if len(snag.where) == 3 else (*snag.where, 0.0)
        at = move.map(QPointF(*spot(where, self.view)))
        colour = QColor(theme().of_grade(snag.grade))
        painter.setPen(QPen(colour, 1.8))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        k = sizes().factor
        if snag.grade == "note":
            painter.save()
            painter.translate(at)
            note_badge(painter, k, theme().note, theme().panel, False)
            painter.restore()
            return
        painter.drawEllipse(at, RING * k, RING * k)
        paint_sign(painter, at + QPointF(8, -8) * k, snag.grade, 4 * k, colour)

    def _move(self) -> QTransform:
        """From the picture's mm to pixels: the middle of the blank in the middle of the widget."""
        low, high = self._body.box
        size = high - low
        reach = float((size @ size) ** 0.5)
        scale = self._zoom * min(self.width() / (0.72 * reach), self.height() / (0.98 * reach))
        middle = spot(tuple((low + high) / 2), self.view)
        move = QTransform()
        move.translate(self.width() / 2, self.height() / 2)
        move.scale(scale, -scale)
        move.translate(-middle[0], -middle[1])
        return move

    # ---- the hand -------------------------------------------------------
    def mousePressEvent(self, event) -> None:
        self._from = event.position()
        self.setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event) -> None:
        if self._from is None:
            return
        by = event.position() - self._from
        self._from = event.position()
        self._turn(-by.x() * TURN, -by.y() * TURN)

    def mouseReleaseEvent(self, event) -> None:
        self._from = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)

    def wheelEvent(self, event) -> None:
        self._closer(1.0015 ** event.angleDelta().y())

    def keyPressEvent(self, event) -> None:
        turns = {Qt.Key.Key_Left: (KEY_TURN, 0.0), Qt.Key.Key_Right: (-KEY_TURN, 0.0),
                 Qt.Key.Key_Up: (0.0, KEY_TURN), Qt.Key.Key_Down: (0.0, -KEY_TURN)}
        if event.key() in turns:
            self._turn(*turns[event.key()])
        elif event.key() in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self._closer(1.15)
        elif event.key() == Qt.Key.Key_Minus:
            self._closer(1 / 1.15)
        else:
            super().keyPressEvent(event)

    def _turn(self, yaw: float, tilt: float) -> None:
        limit = math.pi / 2
        self.look(View(math.remainder(self.view.yaw + yaw, 2 * math.pi),
                       min(limit, max(-limit, self.view.tilt + tilt))))

    def _closer(self, factor: float) -> None:
        self._zoom = min(12.0, max(0.5, self._zoom * factor))
        self.update()
