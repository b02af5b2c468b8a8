"""Snags on the canvas: a ring at the place, a sign for the grade, the numbers beside it."""

from __future__ import annotations

import math
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPixmap
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from app.canvas.free_room import Box, FreeRoom
from app.look.plates import about_middle, plate
from app.look.signs import paint_sign
from app.look.sizes import px, sizes
from app.look.theme import theme
from geometry.checks import Snag
from geometry.vectors import Vec2

SPOTS = ((22.0, -20.0), (-22.0, -20.0), (22.0, 20.0), (-22.0, 20.0), (26.0, -46.0), (-26.0, -46.0), (26.0, 46.0),
         (-26.0, 46.0), (60.0, 0.0), (-60.0, 0.0))
"""Where a card may stand: its near side across from the ring's middle and its own middle along, in pixels at 100 %."""
MESH = 200.0
"""About two lengths of a card, in pixels at 100 %."""
MOST_SOUGHT = 300
"""Snags for which room for a card is sought, the worst first: no window has room for more."""
RING, REACH, SIGN, LEFT = 10.0, 13.0, 4.5, 21.0
"""Radius of a ring, half-width of its picture and of a sign, and where the words of a card begin, in pixels at 100 %."""
BADGE = 6.5
"""Radius of the plate under the sign of a note, in pixels at 100 %."""


@lru_cache(maxsize=16)
def _pen(colour: str, chosen: bool) -> QPen:
    """What rings, leaders and words of a grade are drawn with; a chosen ring is thicker."""
    return QPen(QColor(colour), 2.4 if chosen else 1.6)


@lru_cache(maxsize=32)
def _ring(k: float, grain: float, colour: str, chosen: bool, grade: str, plate_colour: str) -> QPixmap:
    """The picture of a ring about its middle, in points, with the sign of the grade at its side; "" leaves that out.

    A note has its sign on a plate, so that it is not taken for a hole, and a ring round it only when it is chosen.

    To stroke a ring takes ten times as long as to copy its picture, and in a drag every ring is another in each frame.
    """
    made, painter = about_middle(math.ceil(REACH * k), grain)
    painter.setPen(_pen(colour, chosen))
    if grade == "note":
        note_badge(painter, k, colour, plate_colour, chosen)
        painter.end()
        return made
    painter.drawEllipse(QPointF(0, 0), RING * k, RING * k)
    if grade:
        paint_sign(painter, QPointF(8 * k, -8 * k), grade, 4 * k, colour)
    painter.end()
    return made


def note_badge(painter: QPainter, k: float, colour: str, plate_colour: str, chosen: bool) -> None:
    """The sign of a note on its plate about the painter's origin, with a ring round it when it is chosen."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(plate_colour))
    painter.drawEllipse(QPointF(0, 0), BADGE * k, BADGE * k)
    paint_sign(painter, QPointF(), "note", SIGN * k, colour)
    if chosen:
        painter.setPen(_pen(colour, True))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(QPointF(0, 0), RING * k, RING * k)


@lru_cache(maxsize=128)
def _card(width: int, height: int, k: float, grain: float, grade: str, colour: str, paper: str) -> QPixmap:
    """The picture of a card without its words, in points: the plate and the sign of the grade."""
    made = QPixmap(plate(width, height, 5, grain, paper, 0.94, colour))
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint_sign(painter, QPointF(12 * k, height / 2), grade, SIGN * k, colour)
    painter.end()
    return made


class SnagItem(QGraphicsItem):
    """One snag: ring, leader and a small card with measured and needed. Keeps its size on the screen."""

    def __init__(self, font: QFont) -> None:
        super().__init__()
        self._text = ""
        self._grade = "tight"
        self._colours = ("#000000", "#ffffff")
        self._box = QRectF()
        self.set_font(font)
        self.chosen = False
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setZValue(40)

    def set_font(self, font: QFont) -> None:
        """Write in another font from the next painting on."""
        metrics = QFontMetricsF(font)
        self.font, self._drop = font, (metrics.ascent() - metrics.descent()) / 2
        self._bounds = self._reach()

    def show_snag(self, grade: str, text: str, at: Vec2, colour: str, card: str, box: QRectF, chosen: bool) -> None:
        """Set what the item shows; nothing is repainted when nothing changed. An empty box shows the ring alone."""
        wanted = (grade, text, (colour, card), box)
        if wanted != (self._grade, self._text, self._colours, self._box):
            self.prepareGeometryChange()  # paints it anew, too
            self._grade, self._text, self._colours, self._box = wanted
            self._bounds = self._reach()
        self.choose(chosen)
        if self.pos() != QPointF(*at):
            self.setPos(*at)

    def choose(self, chosen: bool) -> None:
        """Draw the ring thicker, or as others are."""
        if chosen != self.chosen:
            self.chosen = chosen
            self.update()

    def boundingRect(self) -> QRectF:
        return self._bounds

    def _reach(self) -> QRectF:
        reach = math.ceil(REACH * sizes().factor)
        return self._box.united(QRectF(-reach, -reach, 2 * reach, 2 * reach)).adjusted(-2, -2, 2, 2)

    def paint(self, painter: QPainter, option, widget=None) -> None:
        k, (left, top, width, height) = sizes().factor, self._box.getRect()
        grain, colour = 1.0 if widget is None else widget.devicePixelRatioF(), self._colours[0]
        alone = not width
        reach = math.ceil(REACH * k)
        painter.drawPixmap(QPointF(-reach, -reach), _ring(k, grain, colour, self.chosen, self._grade if alone else "",
                                                             self._colours[1]))
        if alone:
            return
        across, middle = left if left > 0 else left + width, top + height / 2
        share = RING * k / math.hypot(across, middle)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(_pen(colour, self.chosen))
        painter.drawLine(QPointF(across * share, middle * share), QPointF(across, middle))
        painter.drawPixmap(QPointF(left, top),
                           _card(math.ceil(width), math.ceil(height), k, grain, self._grade, *self._colours))
        painter.setFont(self.font)
        painter.drawText(QPointF(left + LEFT * k, middle + self._drop), self._text)

    def shape(self) -> QPainterPath:
        made = QPainterPath()
        made.addEllipse(QPointF(0, 0), px(RING + 2), px(RING + 2))
        made.addRect(self._box)
        return made


class _Letters(dict):
    """Widths of the letters of a font, pixels, each measured once. Words of figures are as wide as their letters: to
    measure a whole line takes five times as long as to add them up, and in a drag all words are others in each frame."""

    def __init__(self, font: QFont) -> None:
        self.metrics = QFontMetricsF(font)

    def __missing__(self, letter: str) -> float:
        self[letter] = width = self.metrics.horizontalAdvance(letter)
        return width


class SnagLayer:
    """Owns the snag items. A note has its sign and no card: there is nothing wrong at its place."""

    def __init__(self, scene: QGraphicsScene, font: QFont) -> None:
        self._scene = scene
        self._font = font
        self._items: list[SnagItem] = []
        self._shown: list[tuple[Snag, str]] = []
        self._words: list[Box] = []
        self._chosen: Snag | None = None
        self._scale = 3.0
        self._laid: tuple[object, list[QRectF]] = (None, [])
        self.covered: list[Box] = []
        """as `taken`, of rings and cards each by itself and without what is painted round them"""
        self._letters = _Letters(font)

    def show(self, snags: list[tuple[Snag, str]], words: list[Box] | None = None) -> None:
        """Show these snags, each with the short text of its numbers; without a text it gets no card. Cards leave `words` of the
        drawing free where they can, pixels of the zoomed drawing, y down; None for those of before."""
        words = self._words if words is None else words
        if snags != self._shown or words != self._words:  # those of one layout are mostly those of the next
            self._shown, self._words = snags, words
            self._show()

    def _show(self) -> None:
        while len(self._items) > len(self._shown):
            self._scene.removeItem(self._items.pop())
        while len(self._items) < len(self._shown):
            item = SnagItem(self._font)
            self._scene.addItem(item)
            self._items.append(item)
        boxes = self._lay()
        for item, (snag, text), box in zip(self._items, self._shown, boxes, strict=True):
            colour = theme().of_grade(snag.grade)
            item.show_snag(snag.grade, text, (snag.where[0], snag.where[1]), colour, theme().panel, box,
                           self._chosen is not None and same_place(snag, self._chosen))

    def set_font(self, font: QFont) -> None:
        """Write the cards in another font; rings and signs grow with the letters."""
        if font == self._font:
            return
        self._font = font
        self._letters = _Letters(font)
        for item in self._items:
            item.prepareGeometryChange()
            item.set_font(font)
            item.update()
        self._show()

    @property
    def taken(self) -> list[QRectF]:
        """Pixels of the zoomed drawing, y down, that rings and cards take."""
        return [item.boundingRect().translated(item.x() * self._scale, -item.y() * self._scale)
                for item in self._items]

    def look(self, pixels_per_mm: float, words: list[Box]) -> None:
        """Lay the cards anew for another zoom, at which the drawing's words cover other pixels."""
        if pixels_per_mm != self._scale or words != self._words:
            self._scale, self._words = pixels_per_mm, words
            self._show()

    def _lay(self) -> list[QRectF]:
        """A card beside each ring, worst first, where it covers no other card or ring, and no words of the drawing if it can;
        else the ring goes without.

        Laid cards are kept: the same snags are shown again with whatever else changes.
        """
        k = sizes().factor
        asked = (self._scale, QFont(self._font), k, self._words, [(snag.where[:2], text) for snag, text in self._shown])
        if asked != self._laid[0]:
            self._laid = asked, self._lay_anew(k)
        return self._laid[1]

    def _lay_anew(self, k: float) -> list[QRectF]:
        height, reach = self._letters.metrics.height() + 6, RING * k
        spots = [(x * k, y * k) for x, y in SPOTS]
        letters = self._letters
        places = [(s.where[0] * self._scale, -s.where[1] * self._scale) for s, _ in self._shown]
        room, unwritten = FreeRoom(MESH * k), FreeRoom(MESH * k)
        self.covered = [(x - reach, x + reach, y - reach, y + reach) for x, y in places]
        for box in self.covered:
            room.take(box)
        for box in self._words:
            unwritten.take(box)
        out = []
        for number, (place, (_, text)) in enumerate(zip(places, self._shown, strict=True)):
            found = QRectF()
            if number >= MOST_SOUGHT or not text:
                out.append(found)
                continue
            width = sum(letters[letter] for letter in text) + 28 * k
            over = None
            for x, y in spots:
                x = x if x > 0 else x - width
                left, top = place[0] + x, place[1] + y - height / 2
                box = (left, left + width, top, top + height)
                if room.has(box):
                    over = over or (box, x, y)
                    if unwritten.has(box):
                        over = box, x, y
                        break
            if over is not None:
                box, x, y = over
                room.take(box)
                self.covered.append(box)
                found = QRectF(x, y - height / 2, width, height)
            out.append(found)
        return out

    def choose(self, snag: Snag | None) -> None:
        """Draw one snag's ring thicker."""
        self._chosen = snag
        for item, (shown, _) in zip(self._items, self._shown, strict=True):
            item.choose(snag is not None and same_place(shown, snag))

    def follow_theme(self) -> None:
        """Repaint in another set of colours."""
        self._show()


def same_place(one: Snag, two: Snag) -> bool:
    """Whether two snags are about the same kind of thing between the same features."""
    return one.kind == two.kind and one.between == two.between
