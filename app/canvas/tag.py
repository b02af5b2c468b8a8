"""A card at the pointer: dimensions of what is in hand, what it snapped to, and what is being typed."""

from __future__ import annotations

from msgspec import Struct
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene, QGraphicsView

from app.look.sizes import px, sizes
from app.look.theme import Theme
from geometry.vectors import Vec2

WIDEST = 270.0
"""Pixels at 100 % after which a sentence is wrapped."""
OFF = 18.0
"""Pixels between the pointer and the card."""
PAD = 8.0


class Tag(Struct, frozen=True):
    """What the card says: dimensions line by line, what was snapped to, and the values being typed."""

    lines: tuple[str, ...] = ()
    snapped: str = ""
    entries: tuple[tuple[str, str, bool], ...] = ()
    """(label, text, whether it is being typed into)"""

    def __bool__(self) -> bool:
        return bool(self.lines or self.snapped or self.entries)


class PointerTag(QGraphicsItem):
    """The card. It stands below and right of the pointer, and changes sides near the border of the view."""

    def __init__(self, scene: QGraphicsScene, view: QGraphicsView, theme: Theme, font: QFont) -> None:
        super().__init__()
        self._view, self._theme = view, theme
        self.set_font(font)
        self._tag = Tag()
        self._box = QRectF()
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
            return
        if tag != self._tag or not self._rows:
            self._tag = tag
            self._rows = self._lay(tag)
            self.update()
        box = QRectF()
        for rect, _, _ in self._rows:
            box = box.united(rect)
        box = box.adjusted(0, 0, PAD, PAD - 1)
        box.setTopLeft(QPointF(0, 0))
        pixel, port = self._view.mapFromScene(QPointF(*at)), self._view.viewport().rect()
        x = OFF if pixel.x() + OFF + box.width() < port.width() else -OFF - box.width()
        y = OFF if pixel.y() + OFF + box.height() < port.height() else -OFF - box.height()
        box.moveTopLeft(QPointF(x, y))
        if box != self._box:
            self.prepareGeometryChange()
            self._box = box
        self.setPos(*at)
        self.show()

    def set_theme(self, theme: Theme) -> None:
        """Repaint in another set of colours."""
        self._theme = theme
        self.update()

    def set_font(self, font: QFont) -> None:
        """Write in another font from the next words on."""
        self._font, self._bold = QFont(font), QFont(font)
        self._bold.setBold(True)
        self._measures = QFontMetricsF(self._font), QFontMetricsF(self._bold)
        self._rows: list[tuple[QRectF, str, str]] = []

    # ---- inside ---------------------------------------------------------
    def _lay(self, tag: Tag) -> list[tuple[QRectF, str, str]]:
        """(box from the card's corner, role, text) of every row."""
        rows: list[tuple[QRectF, str, str]] = []
        y = PAD - 2

        def put(role: str, text: str, indent: float = 0.0) -> None:
            nonlocal y
            metrics = self._metrics(role)
            wide = QRectF(0, 0, px(WIDEST), 4000)
            size = metrics.boundingRect(wide, int(Qt.TextFlag.TextWordWrap), text)
            rows.append((QRectF(PAD + indent, y, size.width() + 4, size.height()), role, text))
            y += size.height() + 2

        for line in tag.lines:
            put("line", line)
        if tag.snapped:
            put("snapped", tag.snapped, px(14))
        for label, text, open_ in tag.entries:
            put("open" if open_ else "entry", f"{label}:  {text}".removeprefix(":  "), 6.0)
            if open_:
                y += 3
        return rows

    def _metrics(self, role: str) -> QFontMetricsF:
        """Measures of the letters that a row is written in."""
        return self._measures[0 if role == "snapped" else 1]

    def boundingRect(self) -> QRectF:
        return self._box.adjusted(-2, -2, 2, 2)

    def paint(self, painter: QPainter, option, widget=None) -> None:
        t = self._theme
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        panel = QColor(t.panel)
        panel.setAlphaF(0.95)
        painter.setBrush(panel)
        painter.setPen(QPen(QColor(t.dim), 1.0))
        painter.drawRoundedRect(self._box, 5, 5)
        painter.translate(self._box.topLeft())
        for box, role, text in self._rows:
            if role == "open":
                painter.setPen(QPen(QColor(t.focus), 1.4))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRoundedRect(box.adjusted(-5, -1, 8, 2), 3, 3)
                text += "|"
            if role == "snapped":
                self._sign(painter, QPointF(PAD + px(5), box.top() + self._measures[0].height() / 2))
            painter.setPen(QColor({"snapped": t.focus, "entry": t.dim}.get(role, t.ink)))
            painter.setFont(self._font if role == "snapped" else self._bold)
            metrics = self._metrics(role)
            if box.height() < 1.5 * metrics.height():  # one line: there is nothing to wrap
                painter.drawText(QPointF(box.left(), box.top() + metrics.ascent()), text)
            else:
                painter.drawText(box.adjusted(0, 0, 12, 0), int(Qt.TextFlag.TextWordWrap), text)

    def _sign(self, painter: QPainter, at: QPointF) -> None:
        """A prick of the scriber: a small cross in a ring, for what was caught."""
        painter.setPen(QPen(QColor(self._theme.focus), 1.3))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        k = sizes().factor
        painter.drawEllipse(at, 3.2 * k, 3.2 * k)
        painter.drawLine(QPointF(at.x() - 5 * k, at.y()), QPointF(at.x() + 5 * k, at.y()))
        painter.drawLine(QPointF(at.x(), at.y() - 5 * k), QPointF(at.x(), at.y() + 5 * k))
