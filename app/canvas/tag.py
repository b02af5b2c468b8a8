"""A card at the pointer: dimensions of what is in hand, what it snapped to, and what is being typed."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from msgspec import Struct
from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from app.canvas.free_room import Box
from app.canvas.view import CanvasView
from app.look.plates import plate
from app.look.sizes import px, sizes
from app.look.theme import Theme, theme
from geometry.vectors import Vec2

WIDEST = 270.0
"""Pixels at 100 % after which a sentence is wrapped."""
PAD = 8.0
Seen = Callable[[], list[Box]]
"""Where on the zoomed drawing, in pixels from its origin, y down, something has to be seen."""


class Tag(Struct, frozen=True):
    """What the card says: dimensions line by line, what was snapped to, and the values being typed."""

    lines: tuple[str, ...] = ()
    snapped: str = ""
    entries: tuple[tuple[str, str, bool], ...] = ()
    """(label, text, whether it is being typed into)"""

    def __bool__(self) -> bool:
        return bool(self.lines or self.snapped or self.entries)


class _Row(Struct):
    """One row of the card, in pixels from the card's corner."""

    box: QRectF
    role: str
    text: str
    base: QPointF | None
    """where its one line of letters begins; None when it is wrapped"""


class PointerTag(QGraphicsItem):
    """The card. It stands below and right of the pointer, or where it covers nothing of what has to be seen (`card_place`)."""

    def __init__(self, scene: QGraphicsScene, view: CanvasView, font: QFont, seen: Seen) -> None:
        super().__init__()
        self._view, self._seen = view, seen
        self._stood: Vec2 | None = None
        """the card's corner from the pointer in the frame before, pixels; None while it is away"""
        self.set_font(font)
        self._tag = Tag()
        self._box = self._bounds = QRectF()
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.setZValue(60)
        self.hide()
        scene.addItem(self)

    @property
    def said(self) -> Tag:
        """What the card says; an empty Tag while it is away."""
        return self._tag if self.isVisible() else Tag()

    def show_at(self, at: Vec2 | None, tag: Tag) -> None:
        """Stand at a place (mm) with these words; away without a place or words."""
        if at is None or not tag:
            self.hide()
            self._stood = None
            return
        if tag != self._tag or not self._rows:
            self._tag = tag
            self._rows = self._lay(tag)
            self._size = QSizeF(max(row.box.right() for row in self._rows) + PAD, self._rows[-1].box.bottom() + PAD - 1)
            self.update()
        box = self._clear_box(at)
        if box != self._box:
            self.prepareGeometryChange()
            self._box, self._bounds = box, box.adjusted(-2, -2, 2, 2)
        self.setPos(*at)
        self.show()

    def set_font(self, font: QFont) -> None:
        """Write in another font from the next words on."""
        self._font, self._bold = QFont(font), QFont(font)
        self._bold.setBold(True)
        self._measures = QFontMetricsF(self._font), QFontMetricsF(self._bold)
        self._rows: list[_Row] = []
        self._size = QSizeF()

    # ---- inside ---------------------------------------------------------
    def _clear_box(self, at: Vec2) -> QRectF:
        """The card from the pointer, where it covers least."""
        from app.canvas.card_place import card_place  # a start has nothing in hand
        pointer, port, scale = self._view.mapFromScene(QPointF(*at)), self._view.viewport(), self._view.pixels_per_mm
        x, y = pointer.x(), pointer.y()
        across, down = x - at[0] * scale, y + at[1] * scale
        taken = [(left + across, right + across, top + down, bottom + down) for left, right, top, bottom in self._seen()]
        size = self._size.width(), self._size.height()
        self._stood = card_place(size, (x, y), (port.width(), port.height()), taken, self._stood)
        return QRectF(*self._stood, *size)

    def _lay(self, tag: Tag) -> list[_Row]:
        """Every row, from the card's corner."""
        rows: list[_Row] = []
        y = PAD - 2

        def put(role: str, text: str, indent: float = 0.0) -> None:
            nonlocal y
            metrics = self._measures[0 if role == "snapped" else 1]
            width, height = metrics.horizontalAdvance(text), metrics.height()
            base: QPointF | None = QPointF(PAD + indent, y + metrics.ascent())
            if width > px(WIDEST):
                size = metrics.boundingRect(QRectF(0, 0, px(WIDEST), 4000), int(Qt.TextFlag.TextWordWrap), text)
                width, height, base = size.width(), size.height(), base if size.height() < 1.5 * height else None
            rows.append(_Row(QRectF(PAD + indent, y, width + 4, height), role, text, base))
            y += height + 2

        for line in tag.lines:
            put("line", line)
        if tag.snapped:
            put("snapped", tag.snapped, px(14))
        for label, text, open_ in tag.entries:
            put("open" if open_ else "entry", f"{label}:  {text}".removeprefix(":  "), 6.0)
            if open_:
                y += 3
        return rows

    def boundingRect(self) -> QRectF:
        return self._bounds

    def paint(self, painter: QPainter, option, widget=None) -> None:
        t, box = theme(), self._box
        inks = _inks(t)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        grain = 1.0 if widget is None else widget.devicePixelRatioF()
        painter.drawPixmap(box.topLeft(), plate(box.width(), box.height(), 5, grain, t.panel, 0.95, t.dim))
        painter.translate(box.topLeft())
        for row in self._rows:
            role, text = row.role, row.text
            if role == "open":
                painter.setPen(QPen(inks["frame"], 1.4))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRoundedRect(row.box.adjusted(-5, -1, 8, 2), 3, 3)
                text += "|"
            elif role == "snapped":
                self._sign(painter, QPointF(PAD + px(5), row.box.top() + self._measures[0].height() / 2))
            painter.setPen(inks.get(role, inks["line"]))
            painter.setFont(self._font if role == "snapped" else self._bold)
            if row.base is not None:
                painter.drawText(row.base, text)
            else:
                painter.drawText(row.box.adjusted(0, 0, 12, 0), int(Qt.TextFlag.TextWordWrap), text)

    def _sign(self, painter: QPainter, at: QPointF) -> None:
        """A prick of the scriber: a small cross in a ring, for what was caught."""
        painter.setPen(QPen(QColor(theme().focus), 1.3))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(_prick(sizes().factor).translated(at))


@lru_cache(maxsize=4)
def _inks(t: Theme) -> dict[str, QColor]:
    """What the rows are written in, by their role; others as a line."""
    return {role: QColor(name) for role, name in (("line", t.ink), ("frame", t.focus), ("snapped", t.focus), ("entry", t.dim))}


@lru_cache(maxsize=4)
def _prick(k: float) -> QPainterPath:
    """The sign about the origin; to be painted, not to be changed."""
    made = QPainterPath()
    made.addEllipse(QPointF(0, 0), 3.2 * k, 3.2 * k)
    for x, y in ((5 * k, 0.0), (0.0, 5 * k)):
        made.moveTo(-x, -y)
        made.lineTo(x, y)
    return made
