"""The paper on the bench: zoom, pan, and the pointer in millimetres."""

from __future__ import annotations

import math

from msgspec.structs import replace
from PySide6.QtCore import QEvent, QLineF, QPoint, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QTransform
from PySide6.QtWidgets import QFrame, QGraphicsScene, QGraphicsView, QWidget

from app.look.ground import cover
from app.tools.pointer import Pointer
from geometry.saying import say

SMALLEST, LARGEST, FARTHEST = 0.4, 120.0, 0.01
"""Pixels per mm between which the view zooms; farther away, but not beyond the last, to show a whole layout that is huge."""


SHIFT, CTRL, ALT = (key.value for key in (Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier,
                                          Qt.KeyboardModifier.AltModifier))
"""As numbers: each event of the mouse is asked for all three, and Python's flags take ten times as long."""
ARROWS = {Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1)}
"""Where each leads on the drawing: x to the treble side, y to the tip."""
AROUND = 60
"""Pixels left free at most around what is fitted into the window, both sides together."""
EDGE = 4
"""Pixels between the words beside what is fitted and the border of the window."""
PAN = 60
"""Pixels that Ctrl and an arrow key move the paper under the window."""


Words = dict[float, tuple[float, float]]
"""How far words that keep their size reach from their places (mm) towards less and towards more, pixels."""


def _scale(low: float, high: float, words: Words, room: int) -> float:
    """Pixels to the mm at which a stretch (mm) and the words at it fit into some pixels; not less than half of what it has without them."""
    ends = {low: (0.0, 0.0), high: (0.0, 0.0)} | words
    most = min((room - 2 * EDGE - ends[one][0] - ends[two][1]) / (two - one) for one in ends for two in ends if one < two)
    return min((room - min(AROUND, room / 8)) / (high - low), max(most, room / 2 / (high - low)))


def _middle(low: float, high: float, words: Words, room: int, scale: float) -> float:
    """The place (mm) in the middle of the window: that of the stretch, or as near as keeps the words in."""
    half = room / 2 - EDGE
    least = max((at + (more - half) / scale for at, (_, more) in words.items()), default=-math.inf)
    most = min((at - (less - half) / scale for at, (less, _) in words.items()), default=math.inf)
    return min(max((low + high) / 2, least), most)


class CanvasView(QGraphicsView):
    """A y-up view in mm. It reports the pointer and leaves to others what that means."""

    pointed = Signal(object)
    """a geometry-frame Pointer for press, move, release, double click and key"""
    hovered = Signal(object)
    """(x, y) in mm, or None when the pointer left"""
    looked = Signal()
    """zoom or pan changed"""
    focused = Signal()
    """the keyboard came or went"""
    nudged = Signal(float, float)
    """arrow keys: steps in x and y"""
    keys = None
    """called with a key event before anybody else; True when it was taken"""
    claims = None
    """called with a key event that may be a shortcut; True when the key is the drawing's now"""
    words = None
    """asked for the Words beside the drawing, and for those behind it"""
    key_filter = None
    """called with (key, text) before the view takes a key; True when somebody wanted it"""

    def __init__(self, scene: QGraphicsScene, parent: QWidget | None = None) -> None:
        super().__init__(scene, parent)
        # One of our own: when it is first asked for a widget that it made itself, the toolkit loads all kinds that there are.
        self.setViewport(QWidget())
        self.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.MinimalViewportUpdate)
        self.setCacheMode(QGraphicsView.CacheModeFlag.CacheBackground)
        self.setOptimizationFlag(QGraphicsView.OptimizationFlag.DontSavePainterState)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setMouseTracking(True)
        self.viewport().setMouseTracking(True)
        # The paper covers all of it: what lies behind need not be painted first.
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(say("Headstock, opened-out view"))
        self._scale, self._least = 3.0, SMALLEST
        self._panning: QPoint | None = None
        self._pan_button = Qt.MouseButton.NoButton
        self._space = False
        self._pressed: Pointer | None = None
        """where the thing in hand was last, from the press to the letting go"""
        self._over: QPoint | None = None
        self._tool_shape = Qt.CursorShape.ArrowCursor
        self._fitted: QRectF | None = None
        self.setTransform(QTransform.fromScale(self._scale, -self._scale))

    # ---- looking --------------------------------------------------------
    @property
    def pixels_per_mm(self) -> float:
        return self._scale

    def fit(self, area: QRectF) -> None:
        """Show a whole area (mm) with the words beside it; it stays fitted while the window is resized, until the next zoom or pan."""
        self._fitted = QRectF(area)
        room = self.viewport().size()
        if room.width() < 40 or room.height() < 40 or area.isEmpty():
            return
        across, along = ({}, {}) if self.words is None else self.words()
        sides = (area.left(), area.right(), across, room.width()), (area.top(), area.bottom(), along, room.height())
        whole = min(_scale(*side) for side in sides)
        self._least = min(SMALLEST, max(FARTHEST, whole))
        self._scale = min(LARGEST, max(self._least, whole))
        self.setTransform(QTransform.fromScale(self._scale, -self._scale))
        self.centerOn(*(_middle(*side, self._scale) for side in sides))
        self.looked.emit()

    def refit(self) -> None:
        """Fit what is fitted once more, with the words that stand beside it now. Not under a hand that drags: the drawing would move."""
        if self._fitted is not None:
            self.fit(self._fitted)

    def zoom(self, factor: float, at: QPoint | None = None) -> None:
        """Zoom about a viewport point (its middle without one)."""
        at = self.viewport().rect().center() if at is None else at
        before = self.mapToScene(at)
        self._scale = min(LARGEST, max(self._least, self._scale * factor))
        self.setTransform(QTransform.fromScale(self._scale, -self._scale))
        drift = self.mapFromScene(before) - at
        self._scroll(drift)
        self._fitted = None
        self.looked.emit()

    def look_at(self, x: float, y: float) -> None:
        """Bring a point (mm) to the middle, zooming in when the whole head is shown."""
        self._fitted = None
        if self._scale < 6:
            self._scale = 6.0
            self.setTransform(QTransform.fromScale(self._scale, -self._scale))
        self.centerOn(QPointF(x, y))
        self.looked.emit()

    @property
    def middle(self) -> tuple[float, float]:
        """The place in the middle of what is seen, mm."""
        at = self.mapToScene(self.viewport().rect().center())
        return (at.x(), at.y())

    @property
    def pressing(self) -> bool:
        """Whether the mouse has a thing in hand."""
        return self._pressed is not None

    @property
    def under_pointer(self) -> tuple[float, float] | None:
        """The place under the mouse, mm; None while it is elsewhere. It changes as the paper moves under a mouse at rest."""
        if self._over is None:
            return None
        at = self.viewportTransform().inverted()[0].map(QPointF(self._over))
        return (at.x(), at.y())

    def set_tool_shape(self, shape: Qt.CursorShape) -> None:
        """The shape of the mouse pointer while it neither moves the paper nor is about to."""
        self._tool_shape = shape
        self._shape_pointer()

    def _shape_pointer(self) -> None:
        self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor if self._panning is not None else
                                  Qt.CursorShape.OpenHandCursor if self._space else self._tool_shape)

    def shows(self, x: float, y: float) -> bool:
        """Whether a point (mm) lies in the window, well inside its border."""
        return self.viewport().rect().adjusted(30, 30, -30, -30).contains(self.mapFromScene(QPointF(x, y)))

    def pan(self, by: QPoint) -> None:
        """Move on over the drawing by some pixels."""
        self._scroll(by)
        self._fitted = None
        self.looked.emit()

    def _scroll(self, by: QPoint) -> None:
        horizontal, vertical = self.horizontalScrollBar(), self.verticalScrollBar()
        horizontal.setValue(horizontal.value() + by.x())
        vertical.setValue(vertical.value() + by.y())

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self.refit()
        if self._fitted is None:
            self.looked.emit()

    def wheelEvent(self, event) -> None:
        delta = event.angleDelta()
        pixel = event.pixelDelta()
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier or (not pixel.isNull() and not (
                event.modifiers() & Qt.KeyboardModifier.ControlModifier)):
            move = pixel if not pixel.isNull() else delta / 2
            self.pan(QPoint(-move.x() - (move.y() if pixel.isNull() else 0),
                            -move.y() if not pixel.isNull() else 0))
        elif delta.y():
            self.zoom(1.0015 ** delta.y(), event.position().toPoint())
        elif delta.x():
            self.pan(QPoint(-delta.x() // 2, 0))
        event.accept()

    # ---- the pointer ----------------------------------------------------
    def _pointer(self, event, kind: str) -> Pointer:
        at = self.viewportTransform().inverted()[0].map(QPointF(event.position()))
        keys = event.modifiers().value
        return Pointer(at=(at.x(), at.y()), kind=kind, shift=bool(keys & SHIFT), ctrl=bool(keys & CTRL), alt=bool(keys & ALT),
                       mm_per_pixel=1 / self._scale)

    def mousePressEvent(self, event) -> None:
        self._press(event, "press")

    def mouseDoubleClickEvent(self, event) -> None:
        # The second of two quick presses: a drag may begin with it as with any.
        self._press(event, "double")

    def _press(self, event, kind: str) -> None:
        if self._panning is None:
            if event.button() == Qt.MouseButton.MiddleButton or (
                    event.button() == Qt.MouseButton.LeftButton and self._space):
                self._panning, self._pan_button = event.position().toPoint(), event.button()
                self._shape_pointer()
            elif event.button() == Qt.MouseButton.LeftButton:
                self._pressed = self._pointer(event, kind)
                self.pointed.emit(self._pressed)
        event.accept()

    def mouseMoveEvent(self, event) -> None:
        now = event.position().toPoint()
        self._over = now
        self._missed(event.buttons())
        if self._panning is not None:
            by, self._panning = self._panning - now, now
            self.pan(by)
            self.hovered.emit(self.under_pointer)
            return
        pointer = self._pointer(event, "move")
        if self._pressed is not None:
            self._pressed = pointer
        self.pointed.emit(pointer)
        self.hovered.emit(pointer.at)

    def mouseReleaseEvent(self, event) -> None:
        if self._panning is not None and event.button() == self._pan_button:
            self._end_pan()
        elif event.button() == Qt.MouseButton.LeftButton and self._pressed is not None:
            self._pressed = None
            self.pointed.emit(self._pointer(event, "release"))
        event.accept()

    def _missed(self, down: Qt.MouseButton) -> None:
        """What was let go while another window had the mouse, such as a question that came up, was let go where it was last."""
        if self._panning is not None and not down & self._pan_button:
            self._end_pan()
        if self._pressed is not None and not down & Qt.MouseButton.LeftButton:
            last, self._pressed = self._pressed, None
            self.pointed.emit(replace(last, kind="release"))

    def _end_pan(self) -> None:
        self._panning = None
        self._shape_pointer()

    def leaveEvent(self, event: QEvent) -> None:
        self._over = None
        self.hovered.emit(None)
        super().leaveEvent(event)

    # ---- keys -----------------------------------------------------------
    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and self.claims is not None and self.claims(event):
            event.accept()
            return True
        return super().event(event)

    def focusInEvent(self, event) -> None:
        super().focusInEvent(event)
        self.focused.emit()

    def focusOutEvent(self, event) -> None:
        super().focusOutEvent(event)
        self._lift_space()  # its letting go will be told to whoever has the keyboard then
        self.focused.emit()

    def focusNextPrevChild(self, onwards: bool) -> bool:
        """Tab goes to the next value while one can be typed, else to the next widget."""
        if self.key_filter is not None and self.key_filter("tab" if onwards else "tab back", ""):
            return True
        return super().focusNextPrevChild(onwards)

    def keyPressEvent(self, event) -> None:
        if self.keys is not None and self.keys(event):
            event.accept()
            return
        names = {Qt.Key.Key_Return: "enter", Qt.Key.Key_Enter: "enter", Qt.Key.Key_Backspace: "backspace"}
        plain = not event.modifiers() & (Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier)
        if plain and self.key_filter is not None and self.key_filter(names.get(event.key(), ""), event.text()):
            event.accept()
            return
        if event.key() == Qt.Key.Key_Space:
            self._space = True
            self._shape_pointer()
        elif event.key() in ARROWS and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            x, y = ARROWS[event.key()]
            self.pan(QPoint(x * PAN, -y * PAN))
        elif event.key() in ARROWS:
            size = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else (
                0.1 if event.modifiers() & Qt.KeyboardModifier.AltModifier else 1.0)
            x, y = ARROWS[event.key()]
            self.nudged.emit(x * size, y * size)
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def keyReleaseEvent(self, event) -> None:
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._lift_space()
        super().keyReleaseEvent(event)

    def _lift_space(self) -> None:
        self._space = False
        self._shape_pointer()


class Grid:
    """Paints the paper and its grid behind the drawing, spacing chosen so that lines stay apart."""

    def __init__(self) -> None:
        self.visible = True
        self.step_mm = 10.0

    def paint(self, painter: QPainter, area: QRectF, scale: float, paper: QColor, line: QColor) -> None:
        """Fill `area` (mm) and rule it."""
        cover(painter, area, paper)
        if not self.visible:
            return
        step = self.step_mm
        while step * scale < 8:
            step *= 5 if step == self.step_mm else 2
        faint = QColor(line)
        faint.setAlphaF(0.45)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(faint)
        pen = painter.pen()
        pen.setCosmetic(True)
        painter.setPen(pen)
        left, top, right, bottom = area.left(), area.top(), area.right(), area.bottom()
        painter.drawLines([QLineF(i * step, top, i * step, bottom)
                           for i in range(math.floor(left / step), math.ceil(right / step) + 1)])
        painter.drawLines([QLineF(left, i * step, right, i * step)
                           for i in range(math.floor(top / step), math.ceil(bottom / step) + 1)])
