"""The list of snags: what, measured, needed, cure; a click goes there, its button carries the cure out."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QCoreApplication, QModelIndex, QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.look.signs import sign_path
from app.look.theme import Theme
from geometry.checks import KINDS, Snag
from geometry.cures import curable
from geometry.units import LengthUnit, format_length

PAD, GAP, FRAME = 10, 8, 2
"""Pixels inside a card, between cards, and of a card's frame on both sides together."""
BUTTON = 26
"""Height of a card's button in pixels."""
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


def cure_line(snag: Snag, unit: LengthUnit) -> str:
    """What stands on a card for the cure: while none has been tried yet, that one is looked for."""
    if snag.cured is None and curable(snag):
        return QCoreApplication.translate("SnagList", "Looking for a move that cures it …")
    return snag.cure_in(unit)


class SnagModel(QAbstractListModel):
    """Snags as a list; only rows that differ are announced as changed."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._snags: tuple[Snag, ...] = ()
        self.unit: LengthUnit = "mm"

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        return len(self._snags)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        snag = self._snags[index.row()]
        if role == SNAG:
            return snag
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return f"{snag.grade}: {title(snag)}. {snag.text_in(self.unit)} {cure_line(snag, self.unit)}"
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
        self.unit: LengthUnit = "mm"
        self.pointed: QModelIndex | None = None
        """the card whose button is pointed at"""

    def button(self, option: QStyleOptionViewItem, snag: Snag, area: QRectF) -> QRectF | None:
        """Where the button of a card lies that fills `area`; None on a card without a move."""
        if snag.move is None:
            return None
        width = QFontMetrics(option.font).horizontalAdvance(self.word()) + 24
        return QRectF(area.left() + 2 * PAD + 12, area.bottom() - PAD - BUTTON, width, BUTTON)

    def word(self) -> str:
        """What the button says."""
        return self.tr("Do this")

    def _lines(self, option: QStyleOptionViewItem, snag: Snag, width: int) -> list[tuple[QRectF, str, str]]:
        inner = max(60, width - 3 * PAD - 14)
        plain = QFontMetrics(option.font)
        flags = int(Qt.TextFlag.TextWordWrap)
        y, out = PAD, []
        for kind, text in (("title", title(snag)), ("text", snag.text_in(self.unit)), ("cure", cure_line(snag, self.unit))):
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
        below = 0 if index.data(SNAG).move is None else BUTTON + 6
        return QSize(width, int(lines[-1][0].bottom()) + below + PAD + GAP)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        snag: Snag = index.data(SNAG)
        t = self.theme
        colour = {"spoils the work": t.spoils, "tight": t.tight}.get(snag.grade, t.note)
        area = card_area(option)
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
        button = self.button(option, snag, area.translated(-area.topLeft()))
        if button is not None:
            font = option.font
            font.setBold(False)
            painter.setFont(font)
            full = self.pointed is not None and self.pointed == index
            painter.setPen(QPen(QColor(t.accent), 1))
            painter.setBrush(QColor(t.accent if full else t.panel))
            painter.drawRoundedRect(button.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
            painter.setPen(QColor(t.accent_ink if full else t.ink))
            painter.drawText(button, int(Qt.AlignmentFlag.AlignCenter), self.word())
        painter.restore()


def card_area(option: QStyleOptionViewItem) -> QRectF:
    """The card inside its row."""
    return QRectF(option.rect).adjusted(FRAME / 2, 1, -FRAME / 2, -GAP + 1)


class SnagList(QListView):
    """The list itself. The button of a card, or Ctrl+Enter on it, asks for its cure."""

    chosen = Signal(object)
    """the Snag that was clicked or reached with the keyboard"""
    cure_wanted = Signal(object)
    """the Snag whose move is to be made"""
    cure_pointed = Signal(object)
    """the Snag whose button is pointed at, or None"""

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
        self.setAccessibleDescription(self.tr("Ctrl+Enter makes the move that cures the snag in hand"))
        self.setMouseTracking(True)
        self.clicked.connect(self._go)
        self.activated.connect(self._go)

    def show_snags(self, snags: tuple[Snag, ...]) -> None:
        """Replace the snags shown."""
        self._model.show(snags)

    def set_theme(self, theme: Theme) -> None:
        """Repaint in another set of colours."""
        self._card.theme = theme
        self.viewport().update()

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit."""
        self._model.unit = self._card.unit = unit
        self.scheduleDelayedItemsLayout()
        self.viewport().update()

    def button_of(self, index: QModelIndex) -> QRectF | None:
        """Where the button of a card lies in the view; None without one."""
        option = QStyleOptionViewItem()
        self.initViewItemOption(option)
        option.rect = self.visualRect(index)
        return self._card.button(option, index.data(SNAG), card_area(option)) if index.isValid() else None

    def _on_button(self, at: QPoint) -> QModelIndex | None:
        index = self.indexAt(at)
        button = self.button_of(index)
        return index if button is not None and button.contains(QPointF(at)) else None

    def _point(self, index: QModelIndex | None) -> None:
        if index != self._card.pointed:
            self._card.pointed = index
            self.viewport().setCursor(Qt.CursorShape.ArrowCursor if index is None else Qt.CursorShape.PointingHandCursor)
            self.viewport().update()
            self.cure_pointed.emit(None if index is None else index.data(SNAG))

    def mouseMoveEvent(self, event) -> None:
        super().mouseMoveEvent(event)
        self._point(self._on_button(event.position().toPoint()))

    def leaveEvent(self, event) -> None:
        super().leaveEvent(event)
        self._point(None)

    def mousePressEvent(self, event) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self._on_button(event.position().toPoint()) is not None:
            event.accept()
            return
        super().mousePressEvent(event)

    def mouseReleaseEvent(self, event) -> None:
        index = self._on_button(event.position().toPoint()) if event.button() == Qt.MouseButton.LeftButton else None
        if index is None:
            super().mouseReleaseEvent(event)
            return
        event.accept()
        snag = index.data(SNAG)
        self._point(None)
        self.cure_wanted.emit(snag)

    def _go(self, index: QModelIndex) -> None:
        self.chosen.emit(index.data(SNAG))

    def keyPressEvent(self, event) -> None:
        if (event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
                and event.modifiers() & Qt.KeyboardModifier.ControlModifier):
            index = self.currentIndex()
            if index.isValid() and index.data(SNAG).move is not None:
                self.cure_wanted.emit(index.data(SNAG))
            return
        super().keyPressEvent(event)
        if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End):
            index = self.currentIndex()
            if index.isValid():
                self.chosen.emit(index.data(SNAG))
