"""What the mouse would take hold of: the shape of its pointer tells that there is something, and where it rests a tip tells what."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPoint, QRect, Qt, QTimer
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QToolTip

from app.look.plain import plain
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from app.window.frame import Frame

PACE_MS = 60
"""From a step of the mouse to a look at what lies under it: one takes a tenth of a millisecond, about four with an outline of
four thousand nodes in hand."""
RESTS_MS = 700
"""How long the mouse rests before it is told what it is on, as for any tip."""
STAYS = 5
"""Pixels that the mouse may move while the tip stays."""


class UnderHand(QObject):
    """Looks only while the holding tool waits: any other tool tells itself what it caught."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._w = window
        self._name = ""
        self._pace = QTimer(self, singleShot=True, interval=PACE_MS, timeout=self._look)
        self._rest = QTimer(self, singleShot=True, interval=RESTS_MS, timeout=self._tell)
        window.canvas.view.hovered.connect(self._moved)

    def _moved(self, at: Vec2 | None) -> None:
        self._rest.stop()
        if at is None:
            self._pace.stop()
        elif self._waits and not self._pace.isActive():
            self._pace.start()

    @property
    def _waits(self) -> bool:
        return self._w.tools.tool == "hold" and not self._w.hand.busy and self._w.keyboard.pen is None

    def _look(self) -> None:
        view = self._w.canvas.view
        if view.under_pointer is None or not self._waits:
            return
        from app.tools.hit import hit  # loaded as soon as the drawing is there

        document, options = self._w.document, self._w.chooser.options
        target = hit(document.layout, view.under_pointer, 1 / view.pixels_per_mm, document.held, options.shape, options.pins)
        self._name = "" if target is None else target.name
        view.set_tool_shape(Qt.CursorShape.ArrowCursor if target is None else Qt.CursorShape.PointingHandCursor)
        self._rest.start()

    def _tell(self) -> None:
        port = self._w.canvas.view.viewport()
        if self._name and self._waits and self._w.isActiveWindow():
            at = QCursor.pos()
            around = QRect(port.mapFromGlobal(at) - QPoint(STAYS, STAYS), port.mapFromGlobal(at) + QPoint(STAYS, STAYS))
            QToolTip.showText(at, plain(self._name), port, around)
