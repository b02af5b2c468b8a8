"""A sign as an icon for a button or a menu, in the colours in use and in every size that a screen may ask for."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF, QRect, QSize, Qt
from PySide6.QtGui import QIcon, QIconEngine, QPainter, QPixmap

from app.look.icons.shapes import SHAPES
from app.look.icons.sketch import Sketch
from app.look.theme import theme


@lru_cache(maxsize=600)
def paint(name: str, size: int, ink: str, tone: str, mark: str) -> QPixmap:
    """One sign in a square of `size` pixels on nothing; not to be painted on. KeyError for a name without one."""
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    SHAPES[name](Sketch(painter, size, ink, tone, mark))
    painter.end()
    return pixmap


class SignEngine(QIconEngine):
    """Paints a sign in the very size that is asked for, when it is asked for: most are never seen in most sizes."""

    def __init__(self, name: str, in_menu: bool) -> None:
        super().__init__()
        self._name, self._in_menu = name, in_menu

    def colours(self, mode: QIcon.Mode, state: QIcon.State) -> tuple[str, str, str]:
        """Ink, tone and mark of the sign in a state of its button or of its entry in a menu."""
        t = theme()
        if mode == QIcon.Mode.Disabled:
            return t.dim, t.card, t.dim
        reversed_ = mode != QIcon.Mode.Normal if self._in_menu else state == QIcon.State.On
        return (t.accent_ink, t.dim, t.accent_ink) if reversed_ else (t.ink, t.wood, t.bore)

    def pixmap(self, size: QSize, mode: QIcon.Mode, state: QIcon.State) -> QPixmap:
        return paint(self._name, max(1, min(size.width(), size.height())), *self.colours(mode, state))

    def paint(self, painter: QPainter, rect: QRect, mode: QIcon.Mode, state: QIcon.State) -> None:
        ratio = painter.device().devicePixelRatioF()
        made = QPixmap(self.pixmap(rect.size() * ratio, mode, state))
        made.setDevicePixelRatio(ratio)
        side = made.deviceIndependentSize()
        painter.drawPixmap(QPointF(rect.center().x() + 0.5 - side.width() / 2, rect.center().y() + 0.5 - side.height() / 2), made)

    def clone(self) -> QIconEngine:
        """Asked for when a copy of the icon is changed. Qt takes the clone for its own, but Python would let go of it."""
        made = SignEngine(self._name, self._in_menu)
        _clones.append(made)
        return made


_clones: list[SignEngine] = []


@lru_cache(maxsize=200)
def button_icon(name: str) -> QIcon:
    """For a button: dark on light, light on dark while it is pressed down, dim while it cannot be pressed."""
    return QIcon(SignEngine(name, in_menu=False))


@lru_cache(maxsize=200)
def menu_icon(name: str) -> QIcon:
    """For a menu, in which the entry pointed at stands on the dark bar of a choice."""
    return QIcon(SignEngine(name, in_menu=True))
