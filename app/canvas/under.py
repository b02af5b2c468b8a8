"""What lies lowest, painted with the paper: blank, wood and slots are in the picture that the view keeps of its paper."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsPathItem, QGraphicsRectItem, QGraphicsScene, QStyleOptionGraphicsItem

LOWER = 2.5
"""Levels below this are painted with the paper: large shapes under all hardware, which change seldom and take long."""


class Under:
    """Hides the lowest items of the scene and paints them with the paper, in their order, as long as they stay as they are.

    What changes while something is dragged comes out, and with it whatever lies
    over it; it goes back when the drag is over. So a frame of a drag copies the
    paper instead of filling every large shape under what has moved.
    """

    def __init__(self, scene: QGraphicsScene) -> None:
        self._scene = scene
        self._areas: dict[QGraphicsPathItem, QRectF] = {}
        self._out: set[QGraphicsPathItem] = set()
        self._first = QGraphicsRectItem()
        """Nothing to see: see `_repaper`"""
        scene.addItem(self._first)

    @property
    def items(self) -> tuple[QGraphicsPathItem, ...]:
        """What is painted with the paper now, the lowest first."""
        return tuple(self._areas)

    def lay(self, lines: Iterable[QGraphicsPathItem], changed: set[QGraphicsPathItem], moving: bool,
            top: float = LOWER) -> None:
        """Take in those of the scene's lines that are below the level `top`; call it whenever any may have changed.

        `changed` are those that look otherwise than at the last call, are new or gone. With `moving` they will change
        again: they come out.
        """
        if moving and changed <= self._out:
            return
        self._out = self._out | changed if moving else set()
        lowest = min((item.zValue() for item in self._out), default=top)
        low = sorted((item for item in lines if item.zValue() < min(top, lowest)), key=QGraphicsPathItem.zValue)
        before, self._areas = self._areas, {item: item.sceneBoundingRect() for item in low}
        for item in changed | before.keys() ^ self._areas.keys():
            for area in (before.get(item), self._areas.get(item)):
                if area is not None:
                    self._repaper(area)
        for item in before.keys() - self._areas.keys():
            item.show()
        for item in low:
            item.hide()

    def _repaper(self, area: QRectF) -> None:
        """Paint the paper of an area (mm) anew in the next frame.

        A changed item goes first: the scene works off changed items and changed paper in the order in which it hears of
        them, and paints at once. Where the paper came first, whatever moves in the same step over that paper was painted
        at its new place, and nobody knew any more that its old place had to be cleared.
        """
        self._first.update()
        self._scene.invalidate(area, QGraphicsScene.SceneLayer.BackgroundLayer)

    def paint(self, painter: QPainter) -> None:
        """Paint them, over the paper."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)  # the paper may come plain, for a picture of it
        option = QStyleOptionGraphicsItem()
        for item in self._areas:
            item.paint(painter, option, None)
