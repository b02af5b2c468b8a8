"""Chances on the canvas: a broken ring at each of the worst places, larger for likelier trouble, its number beside."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from app.canvas.snag_marks import LEFT, SIGN, SPOTS
from app.look.signs import paint_sign
from app.look.sizes import px, sizes
from app.look.theme import theme
from geometry.saying import say
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from geometry.accuracy import Clearance, Simulation

MOST = 16
"""Places marked at most, the worst first."""
SELDOM = 1e-3
"""A margin that is missed less often than this is not marked; what is ever spoiled always is."""
SAME_PLACE = 1.5
"""mm: of clearances nearer to each other than this the worse one is marked."""
SMALL, LARGE = 6.0, 14.0
"""Radii of the ring in pixels at 100 %, for the rarest and for the surest trouble."""
RAREST = 1e-4
FAR_SPOTS = (*SPOTS, (34.0, -72.0), (-34.0, -72.0), (34.0, 72.0), (-34.0, 72.0), (90.0, -34.0), (-90.0, -34.0),
             (90.0, 34.0), (-90.0, 34.0))


def worst_places(simulation: Simulation) -> list[tuple[Vec2, str, float, str]]:
    """(place in mm, grade, chance, words) of the worst clearances, each place once."""
    found: list[tuple[Vec2, str, float, str]] = []
    for clearance in simulation.clearances:
        if len(found) == MOST:
            break
        at = clearance.where[:2]
        if clearance.short < SELDOM and not (clearance.spoils and clearance.spoiled):
            continue
        if any(math.dist(at, other) < SAME_PLACE for other, *_ in found):
            continue
        found.append((at, *_told(clearance, simulation.trials)))
    return found


def _told(clearance: Clearance, trials: int) -> tuple[str, float, str]:
    from geometry.accuracy.words import short_chance_words  # here: no chance is told at a start

    if clearance.spoils and clearance.spoiled > 0:
        return "spoils the work", clearance.spoiled, say("spoiled {chance}", chance=short_chance_words(clearance.spoiled, trials))
    return "tight", clearance.short, say("thin {chance}", chance=short_chance_words(clearance.short, trials))


class ChanceItem(QGraphicsItem):
    """One place: a broken ring, a leader and a small card. Keeps its size on the screen."""

    def __init__(self, font: QFont) -> None:
        super().__init__()
        self.font = font
        self._shown: tuple = ("tight", "", 6.0, "#000000", "#ffffff", QRectF())
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setZValue(38)

    def show_place(self, at: Vec2, shown: tuple) -> None:
        """Stand at a place and show (grade, words, radius, colour, card colour, box of the card)."""
        if shown != self._shown:
            self.prepareGeometryChange()
            self._shown = shown
            self.update()
        self.setPos(*at)

    @property
    def words(self) -> str:
        """What the card says, "" when there was no room for it."""
        return "" if self._shown[5].isEmpty() else self._shown[1]

    def boundingRect(self) -> QRectF:
        reach = px(LARGE)
        return self._shown[5].united(QRectF(-reach, -reach, 2 * reach, 2 * reach)).adjusted(-3, -3, 3, 3)

    def paint(self, painter: QPainter, option, widget=None) -> None:
        grade, words, radius, ink, paper, box = self._shown
        colour, card, k = QColor(ink), QColor(paper), sizes().factor
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(colour, 2.2)
        pen.setDashPattern([2.2, 1.4])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(QPointF(0, 0), radius, radius)
        if box.isEmpty():
            return
        across, along = (box.left() if box.left() > 0 else box.right()), box.center().y()
        painter.setPen(QPen(colour, 1.2))
        painter.drawLine(QPointF(across, along) * (radius / math.hypot(across, along)), QPointF(across, along))
        card.setAlphaF(0.94)
        painter.setBrush(card)
        painter.drawRoundedRect(box, 5, 5)
        paint_sign(painter, QPointF(box.left() + 12 * k, along), grade, SIGN * k, colour)
        painter.setPen(colour)
        painter.setFont(self.font)
        painter.drawText(box.adjusted(LEFT * k, 0, -5 * k, 0), Qt.AlignmentFlag.AlignVCenter, words)


class ChanceLayer:
    """Owns the items; lays their cards where they cover neither each other nor the snags' cards."""

    def __init__(self, scene: QGraphicsScene, font: QFont) -> None:
        self._scene, self._font = scene, font
        self._items: list[ChanceItem] = []
        self._places: list[tuple[Vec2, str, float, str]] = []
        self._scale = 3.0
        self._taken: list[QRectF] = []

    @property
    def on_show(self) -> bool:
        """Whether any place is marked."""
        return bool(self._places)

    @property
    def words(self) -> list[str]:
        """What the cards say, the worst first; "" where there was no room for one."""
        return [item.words for item in self._items]

    def show(self, simulation: Simulation | None) -> None:
        """Mark the worst places of a simulation; None marks none."""
        self._places = [] if simulation is None else worst_places(simulation)
        self._lay()

    def set_font(self, font: QFont) -> None:
        """Write the cards in another font; rings and signs grow with the letters."""
        if font == self._font:
            return
        self._font = font
        for item in self._items:
            item.prepareGeometryChange()
            item.font = font
            item.update()
        self._lay()

    def keep_clear_of(self, taken: list[QRectF]) -> None:
        """Pixels of the zoomed drawing, y down, that snags and their cards take."""
        if taken != self._taken:
            self._taken = taken
            self._lay()

    def look(self, pixels_per_mm: float, taken: list[QRectF]) -> None:
        """Lay the cards anew for another zoom, clear of what snags and their cards take there."""
        if (pixels_per_mm, taken) != (self._scale, self._taken):
            self._scale, self._taken = pixels_per_mm, taken
            self._lay()

    def follow_theme(self) -> None:
        """Repaint in another set of colours."""
        self._lay()

    def _lay(self) -> None:
        while len(self._items) > len(self._places):
            self._scene.removeItem(self._items.pop())
        while len(self._items) < len(self._places):
            item = ChanceItem(self._font)
            self._scene.addItem(item)
            self._items.append(item)
        metrics = QFontMetricsF(self._font)
        height, k = metrics.height() + 6, sizes().factor
        reach = LARGE * k
        spots = [QPointF(at[0] * self._scale, -at[1] * self._scale) for at, *_ in self._places]
        taken = self._taken + [QRectF(p.x() - reach, p.y() - reach, 2 * reach, 2 * reach) for p in spots]
        for item, spot, (at, grade, chance, words) in zip(self._items, spots, self._places, strict=True):
            width, found = metrics.horizontalAdvance(words) + 28 * k, QRectF()
            for x, y in ((a * k, b * k) for a, b in FAR_SPOTS):
                box = QRectF(x if x > 0 else x - width, y - height / 2, width, height)
                there = box.translated(spot)
                if not any(there.intersects(other) for other in taken):
                    taken.append(there)
                    found = box
                    break
            colour = theme().spoils if grade == "spoils the work" else theme().tight
            item.show_place(at, (grade, words, _radius(chance) * k, colour, theme().panel, found))


def _radius(chance: float) -> float:
    share = 1 - math.log(min(1.0, max(chance, RAREST))) / math.log(RAREST)
    return SMALL + (LARGE - SMALL) * share
