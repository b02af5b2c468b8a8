"""The list of snags: what, measured, needed, cure; a click goes there."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.look.signs import sign_path
from app.look.theme import Theme
from geometry.checks import KINDS, Snag
from geometry.units import LengthUnit, format_length

PAD, GAP, FRAME = 10, 8, 2
"""Pixels inside a card, between cards, and of a card's frame on both sides together."""
SNAG = Qt.ItemDataRole.UserRole


def title(snag: Snag) -> str:
    """The heading of a snag's kind."""
    return KINDS[snag.kind].title


def numbers(snag: Snag, unit: LengthUnit) -> str:
    """`1.4 of 3.0` in the unit on show, or "" when the snag has no two lengths."""
    if snag.measured is None or snag.needed is None or snag.unit != "mm":
        return ""
    if unit == "mm":
        return f"{round(snag.measured, 1) + 0.0:.1f} of {snag.needed:.1f}"
    return f"{format_length(snag.measured, unit)} of {format_length(snag.needed, unit)}"


class SnagModel(QAbstractListModel):
    """Snags as a list; only rows that differ are announced as changed."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._snags: tuple[Snag, ...] = ()

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        return len(self._snags)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        snag = self._snags[index.row()]
        if role == SNAG:
            return snag
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return f"{snag.grade}: {title(snag)}. {snag.text} {snag.cure}"
        if role == Qt.ItemDataRole.ToolTipRole:
            return KINDS[snag.kind].why
        return None

    def show(self, snags: tuple[Snag, ...]) -> None:
        """Replace the list."""
        old, new = self._snags, tuple(snags)
        if len(old) > len(new):
            self.beginRemoveRows(QModelIndex(), len(new), len(old) - 1)
            self._snags = old[:len(new)]
            self.endRemoveRows()
        elif len(new) > len(old):
            self.beginInsertRows(QModelIndex(), len(old), len(new) - 1)
            self._snags = old + new[len(old):]
            self.endInsertRows()
        before, self._snags = self._snags, new
        for i, (one, two) in enumerate(zip(before, new, strict=True)):
            if one != two:
                index = self.index(i)
                self.dataChanged.emit(index, index)


class SnagCard(QStyledItemDelegate):
    """Paints a snag as a card."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.theme = theme

    def _lines(self, option: QStyleOptionViewItem, snag: Snag, width: int) -> list[tuple[QRectF, str, str]]:
        inner = max(60, width - 3 * PAD - 14)
        plain = QFontMetrics(option.font)
        flags = int(Qt.TextFlag.TextWordWrap)
        y, out = PAD, []
        for kind, text in (("title", title(snag)), ("text", snag.text), ("cure", snag.cure)):
            if not text:
                continue
            font = option.font
            font.setBold(kind == "title")
            metrics = QFontMetrics(font) if kind == "title" else plain
            box = metrics.boundingRect(0, 0, inner, 1000, flags, text)
            out.append((QRectF(2 * PAD + 12, y, inner, box.height()), kind, text))
            y += box.height() + 2
        return out

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        view = self.parent()
        width = view.viewport().width()
        lines = self._lines(QStyleOptionViewItem(option), index.data(SNAG), width - FRAME)
        return QSize(width, int(lines[-1][0].bottom()) + PAD + GAP)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        snag: Snag = index.data(SNAG)
        t = self.theme
        colour = {"spoils the work": t.spoils, "tight": t.tight}.get(snag.grade, t.note)
        area = QRectF(option.rect).adjusted(FRAME / 2, 1, -FRAME / 2, -GAP + 1)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.setPen(QPen(QColor(colour if chosen else t.line), 2 if chosen else 1))
        painter.setBrush(QColor(t.card))
        painter.drawRoundedRect(area.adjusted(0.5, 0.5, -0.5, -0.5), 8, 8)
        painter.translate(area.left(), area.top())
        lines = self._lines(QStyleOptionViewItem(option), snag, int(area.width()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        painter.save()
        painter.translate(QPointF(PAD + 7, lines[0][0].center().y()))
        painter.drawPath(sign_path(snag.grade, 6))
        painter.restore()
        for box, kind, text in lines:
            font = option.font
            font.setBold(kind == "title")
            painter.setFont(font)
            painter.setPen(QColor({"title": t.ink, "text": t.dim, "cure": colour}[kind]))
            painter.drawText(box, int(Qt.TextFlag.TextWordWrap), text)
        painter.restore()


class SnagList(QListView):
    """The list itself."""

    chosen = Signal(object)
    """the Snag that was clicked or reached with the keyboard"""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model = SnagModel(self)
        self._card = SnagCard(theme, self)
        self.setModel(self._model)
        self.setItemDelegate(self._card)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setAccessibleName(self.tr("Snags"))
        self.clicked.connect(self._go)
        self.activated.connect(self._go)

    def show_snags(self, snags: tuple[Snag, ...]) -> None:
        """Replace the snags shown."""
        self._model.show(snags)

    def set_theme(self, theme: Theme) -> None:
        """Repaint in another set of colours."""
        self._card.theme = theme
        self.viewport().update()

    def _go(self, index: QModelIndex) -> None:
        self.chosen.emit(index.data(SNAG))

    def keyPressEvent(self, event) -> None:
        super().keyPressEvent(event)
        if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End):
            index = self.currentIndex()
            if index.isValid():
                self.chosen.emit(index.data(SNAG))
