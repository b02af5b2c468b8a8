"""A picture to put marks on: it is zoomed and shoved, handles are dragged or moved by keys, lines lie over it as ghosts."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPixmap, QTransform
from PySide6.QtWidgets import QWidget

from app.look.painting import focus_ring
from app.look.theme import theme
from app.window.tracing.loupe import paint_loupe
from geometry.saying import say
from geometry.vectors import Vec2

STRAYS = 3.0
"""Pixels by which a hand with a mouse strays."""
GRASP = 14
"""Pixels about a handle in which a press takes it."""


class Handle(Struct, frozen=True):
    """A point of the picture that the maker sets."""

    key: str
    word: str
    at: Vec2
    group: str
    """handles of one group are joined by a line and shown together"""
    leftwards: bool = False
    """whether its word stands to its left"""


class PictureBoard(QWidget):
    """Shows a picture and handles in its own coordinates (x right, y down)."""

    moved = Signal(str, object)
    """(key, place) of a handle while it is dragged"""
    let_go = Signal(str, float)
    """(key, points of the picture that a hand strays by) when a handle is let go of; not with Alt"""
    pressed = Signal(object)
    """a place of the picture that was pressed beside every handle"""

    def __init__(self, picture: QPixmap, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture = picture
        self._handles: dict[str, Handle] = {}
        self._closed: frozenset[str] = frozenset()
        self._current = ""
        self._held = ""
        self._held_at: Vec2 = (0.0, 0.0)
        """where the mark in hand was when it was taken"""
        self._ghost = QPainterPath()
        self._ghost_nodes: list[QPointF] = []
        self._openings: list[tuple[QPainterPath, bool]] = []
        self._view: QTransform | None = None
        self._fitted = True
        """whether the picture is shown whole, however the board is resized"""
        self._panning: QPointF | None = None
        self._pan_button = Qt.MouseButton.NoButton
        self._pen: Vec2 = (picture.width() / 2, picture.height() / 2)
        self._space = False
        self.setMinimumSize(380, 420)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(say("Picture"))
        self.setToolTip(say("Wheel zooms, the middle button or Space moves the view. Arrow keys move a pen (Shift farther, Alt "
                            "finer), Enter presses where it stands."))

    def sizeHint(self) -> QSize:
        return QSize(620, 640)

    # ---- what to show ---------------------------------------------------
    def show_handles(self, handles: Sequence[Handle], closed: frozenset[str] = frozenset()) -> None:
        """Show these handles; groups in `closed` are joined to a ring."""
        self._handles = {handle.key: handle for handle in handles}
        self._closed = closed
        if self._current not in self._handles:
            self._current = next(iter(self._handles), "")
        if self._held not in self._handles:
            self._held = ""
        self.setToolTip(say("Wheel zooms, the middle button or Space moves the view. A mark that is let go of near a corner goes "
                            "onto it, with Alt it stays. Page up and down take the next mark, arrow keys move it "
                            "(Shift farther, Alt finer)."))
        self.update()

    def show_ghost(self, path: QPainterPath, nodes: Sequence[Vec2] = ()) -> None:
        """Lay a line over the picture, in its coordinates, with marks at its nodes."""
        self._ghost = path
        self._ghost_nodes = [QPointF(*node) for node in nodes]
        self.update()

    def show_openings(self, shapes: Sequence[tuple[QPainterPath, bool]]) -> None:
        """Lay closed lines over the picture, each ticked or not."""
        self._openings = list(shapes)
        self.update()

    def place(self, key: str, at: Vec2) -> None:
        """Put a handle somewhere else."""
        self._handles[key] = replace(self._handles[key], at=at)
        self._tell()
        self.moved.emit(key, at)
        self.update()

    def put_pen(self, at: Vec2) -> None:
        """Have the pen of the arrow keys stand at a place of the picture, where Enter presses."""
        self._pen = self._inside(at)
        self.update()

    def pixel(self, at: Vec2) -> QPointF:
        """Where a place of the picture is on the widget."""
        return self._transform().map(QPointF(*at))

    # ---- looking --------------------------------------------------------
    def _transform(self) -> QTransform:
        if self._view is None:
            size = self._picture.size()
            scale = min((self.width() - 24) / max(size.width(), 1), (self.height() - 24) / max(size.height(), 1))
            self._view = QTransform()
            self._view.translate(self.width() / 2, self.height() / 2)
            self._view.scale(scale, scale)
            self._view.translate(-size.width() / 2, -size.height() / 2)
            self._fitted = True
        return self._view

    def resizeEvent(self, event) -> None:
        if self._fitted:
            self._view = None
        super().resizeEvent(event)

    def wheelEvent(self, event) -> None:
        self._zoom(1.0015 ** event.angleDelta().y(), event.position())
        event.accept()

    def _zoom(self, factor: float, at: QPointF) -> None:
        view = self._transform()
        if 0.02 < view.m11() * factor < 40:
            zoom = QTransform()
            zoom.translate(at.x(), at.y())
            zoom.scale(factor, factor)
            zoom.translate(-at.x(), -at.y())
            self._view = view * zoom
            self._fitted = False
            self.update()

    # ---- painting -------------------------------------------------------
    def paintEvent(self, event) -> None:
        t = theme()
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(t.paper))
        view = self._transform()
        painter.save()
        painter.setTransform(view)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawPixmap(0, 0, self._picture)
        painter.restore()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ghost = view.map(self._ghost)
        _twice(painter, t.panel, t.template, 2.2, lambda: painter.drawPath(ghost))
        for shape, ticked in self._openings:
            line, colour = view.map(shape), QColor(t.bore)
            colour.setAlphaF(0.35 if ticked else 0.0)
            painter.fillPath(line, colour)
            _twice(painter, t.panel, t.bore, 2.4 if ticked else 1.2, lambda line=line: painter.drawPath(line))
        for node in self._ghost_nodes:
            at = view.map(node)
            painter.setPen(QPen(QColor(t.template), 1.4))
            painter.setBrush(QColor(t.panel))
            painter.drawRect(QRectF(at.x() - 3.5, at.y() - 3.5, 7, 7))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for group in dict.fromkeys(handle.group for handle in self._handles.values()):
            points = [self.pixel(h.at) for h in self._handles.values() if h.group == group]
            line = QPainterPath(points[0])
            for point in points[1:]:
                line.lineTo(point)
            if group in self._closed:
                line.closeSubpath()
            colour = t.bore if group in self._closed or group == "size" else t.spoils
            _twice(painter, t.panel, colour, 1.4, lambda line=line: painter.drawPath(line))
        for handle in self._handles.values():
            self._paint_handle(painter, handle)
        if self._held:
            paint_loupe(painter, self._picture, self._handles[self._held].at, self.pixel(self._handles[self._held].at),
                        QRectF(self.rect()), view.m11())
        if self.hasFocus():
            if not self._handles:
                self._paint_pen(painter)
            focus_ring(painter, self.rect(), t)

    def _paint_pen(self, painter: QPainter) -> None:
        """A cross where Enter would press."""
        at = self.pixel(self._pen)

        def draw() -> None:
            for x, y in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                painter.drawLine(QPointF(at.x() + 4 * x, at.y() + 4 * y), QPointF(at.x() + 16 * x, at.y() + 16 * y))

        _twice(painter, theme().panel, theme().ring, 2.0, draw)

    def _paint_handle(self, painter: QPainter, handle: Handle) -> None:
        t, at = theme(), self.pixel(handle.at)
        colour = t.spoils if handle.group == "nut" else t.bore
        held = handle.key == self._current and self.hasFocus()

        def draw() -> None:
            painter.drawEllipse(at, 8, 8)
            for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                painter.drawLine(QPointF(at.x() + dx * 3, at.y() + dy * 3), QPointF(at.x() + dx * 15, at.y() + dy * 15))

        _twice(painter, t.panel, colour, 2.6 if held else 1.5, draw)
        words = painter.fontMetrics().boundingRect(handle.word)
        box = QRectF(at.x() + 12, at.y() + 10, words.width() + 10, words.height() + 4)
        if box.right() > self.width() or handle.leftwards:
            box.moveRight(at.x() - 12)
        box.moveLeft(max(0.0, min(box.left(), self.width() - box.width())))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.panel))
        painter.drawRoundedRect(box, 4, 4)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QColor(t.ink))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, handle.word)

    # ---- the hand -------------------------------------------------------
    def _place(self, at: QPointF) -> Vec2:
        there = self._transform().inverted()[0].map(at)
        return self._inside((there.x(), there.y()))

    def _inside(self, at: Vec2) -> Vec2:
        """The place of the picture that is nearest to one."""
        return (min(max(at[0], 0.0), float(self._picture.width())), min(max(at[1], 0.0), float(self._picture.height())))

    def mousePressEvent(self, event) -> None:
        at, button = event.position(), event.button()
        if self._panning is not None or self._held:
            return  # another button in the middle of a drag
        if button == Qt.MouseButton.MiddleButton or (button == Qt.MouseButton.LeftButton and self._space):
            self._panning, self._pan_button = at, button
            return
        if button != Qt.MouseButton.LeftButton:
            return
        near = min(self._handles.values(), key=lambda h: (self.pixel(h.at) - at).manhattanLength(), default=None)
        if near is not None and (self.pixel(near.at) - at).manhattanLength() <= GRASP:
            self._held = self._current = near.key
            self._held_at = near.at
            self.update()
        else:
            self.pressed.emit(self._place(at))

    def mouseMoveEvent(self, event) -> None:
        if self._panning is not None:
            shift = event.position() - self._panning
            self._panning = event.position()
            self._view = self._transform() * QTransform.fromTranslate(shift.x(), shift.y())
            self._fitted = False
            self.update()
        elif self._held:
            self.place(self._held, self._place(event.position()))

    def mouseReleaseEvent(self, event) -> None:
        if self._panning is not None:
            if event.button() == self._pan_button:
                self._panning = None
            return
        if event.button() != Qt.MouseButton.LeftButton:
            return
        held, self._held = self._held, ""
        if held and not event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.let_go.emit(held, STRAYS / self._transform().m11())
        self.update()

    def keyPressEvent(self, event) -> None:
        keys = list(self._handles)
        steps = {Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, -1), Qt.Key.Key_Down: (0, 1)}
        if event.key() == Qt.Key.Key_Escape and self._held:
            held, self._held = self._held, ""
            self.place(held, self._held_at)
        elif event.key() == Qt.Key.Key_Space:
            self._space = True
        elif event.key() in (Qt.Key.Key_PageDown, Qt.Key.Key_PageUp) and keys:
            way = 1 if event.key() == Qt.Key.Key_PageDown else -1
            self._current = keys[(keys.index(self._current) + way) % len(keys)]
            self._tell()
            self.update()
        elif event.key() in (Qt.Key.Key_Plus, Qt.Key.Key_Equal, Qt.Key.Key_Minus):
            at = self._handles[self._current].at if self._current in self._handles else self._pen
            self._zoom(1 / 1.25 if event.key() == Qt.Key.Key_Minus else 1.25, self.pixel(at))
        elif event.key() in steps and not self._handles:
            size = 100.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else (
                1.0 if event.modifiers() & Qt.KeyboardModifier.AltModifier else 10.0)
            dx, dy = steps[event.key()]
            self._pen = self._inside((self._pen[0] + dx * size, self._pen[1] + dy * size))
            self._tell()
            self.update()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not self._handles:
            self.pressed.emit(self._pen)
        elif event.key() in steps and self._current in self._handles:
            size = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else (
                0.2 if event.modifiers() & Qt.KeyboardModifier.AltModifier else 1.0)
            at, (dx, dy) = self._handles[self._current].at, steps[event.key()]
            self.place(self._current, self._inside((at[0] + dx * size, at[1] + dy * size)))
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event) -> None:
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = False
        super().keyReleaseEvent(event)

    def focusOutEvent(self, event) -> None:
        """A Space that is let go of elsewhere shoves no longer."""
        self._space = False
        super().focusOutEvent(event)

    def _tell(self) -> None:
        """What a screen reader says: the mark in hand, or where the pen stands, in points of the picture."""
        handle = self._handles.get(self._current)
        x, y = handle.at if handle is not None else self._pen
        if handle is not None:
            words = say("{mark}: {x} points from the left, {y} from the top.", mark=handle.word, x=round(x), y=round(y))
        else:
            words = say("The pen: {x} points from the left, {y} from the top. Enter presses.", x=round(x), y=round(y))
        self.setAccessibleDescription(words)


def _twice(painter: QPainter, under: str, over: str, width: float, draw) -> None:
    """Draw in a colour with a lighter rim under it, so that it is seen on any picture."""
    rim = QColor(under)
    rim.setAlphaF(0.75)
    for colour, wide in ((rim, width + 2.4), (QColor(over), width)):
        painter.setPen(QPen(colour, wide))
        draw()
