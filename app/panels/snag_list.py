"""The list of snags: what, measured, needed, cure; a click goes there, its button carries the cure out."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QItemSelection, QModelIndex, QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QAccessible, QColor, QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QAbstractItemView, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.help.snags import drawing_of
from app.look.signs import sign_path
from app.look.sizes import px
from app.look.theme import Theme
from app.panels.chance_words import Chances
from app.panels.row_keys import walks
from app.panels.snag_chance import TALL, SnagChance, chance_of, paint_chance
from app.panels.snag_words import title
from geometry.checks import KINDS, Snag
from geometry.cures import curable
from geometry.saying import say
from geometry.terms import term
from geometry.units import LengthUnit

PAD, GAP, FRAME = 10, 8, 2
"""Pixels inside a card, between cards, and of a card's frame on both sides together."""
BUTTON = 26
"""Height of a card's button in pixels at 100 %."""
SNAG = Qt.ItemDataRole.UserRole
CHANCE = Qt.ItemDataRole.UserRole + 1
REMEMBERED = 200
"""Cards whose lines are remembered."""


def cure_line(snag: Snag, unit: LengthUnit) -> str:
    """What stands on a card for the cure: while none has been tried yet, that one is looked for."""
    if snag.cured is None and curable(snag):
        return say("Looking for a move that cures it …")
    return snag.cure_in(unit)


class SnagModel(QAbstractListModel):
    """Snags as a list; only rows that differ are announced as changed."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._snags: tuple[Snag, ...] = ()
        self.unit: LengthUnit = "mm"
        self._chances = Chances()

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        return len(self._snags)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        snag = self._snags[index.row()]
        if role == SNAG:
            return snag
        if role == CHANCE:
            return chance_of(snag, self._chances)
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return f"{term(snag.grade)}: {title(snag)}. {snag.text_in(self.unit)} {cure_line(snag, self.unit)}"
        if role == Qt.ItemDataRole.AccessibleDescriptionRole:
            chance = chance_of(snag, self._chances)
            return None if chance is None else chance.words(self.unit)
        if role == Qt.ItemDataRole.ToolTipRole:
            from app.help.tip import pictured
            return pictured(KINDS[snag.kind].why, drawing_of(snag.kind), self.parent().palette())
        return None

    def show_chances(self, chances: Chances) -> bool:
        """Take what is known of the chances; whether that changes what any card says."""
        told = (chances.simulation if chances.fresh else None, chances.fresh, chances.trouble)
        before = (self._chances.simulation if self._chances.fresh else None, self._chances.fresh, self._chances.trouble)
        self._chances = chances
        return told != before

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
    """Paints a snag as a card; the one in hand with its chance."""

    def __init__(self, theme: Theme, parent: QListView) -> None:
        super().__init__(parent)
        self.theme = theme
        self.unit: LengthUnit = "mm"
        self.pointed: QModelIndex | None = None
        """the card whose button is pointed at"""
        self.told: dict[int, int] = {}
        """the height of each row that the list was told last, when it laid its rows: pixels by row"""
        self._laid: dict[int, tuple[Snag, tuple, QFont, list[tuple[QRectF, str, str]]]] = {}

    def button(self, option: QStyleOptionViewItem, index: QModelIndex, area: QRectF) -> QRectF | None:
        """Where the button of a card lies that fills `area`; None on a card without a move."""
        lines = self._lines(option, index, int(area.width()))
        found = next((box for box, kind, _ in lines if kind == "button"), None)
        return None if found is None else found.translated(area.topLeft())

    def word(self) -> str:
        """What the button says."""
        return say("Do this")

    def chance(self, index: QModelIndex) -> SnagChance | None:
        """The chance to be shown on a card: on the one in hand alone."""
        chosen = self.parent().selectionModel()
        return index.data(CHANCE) if chosen.hasSelection() and chosen.isSelected(index) else None

    def _lines(self, option: QStyleOptionViewItem, index: QModelIndex, width: int) -> list[tuple[QRectF, str, str]]:
        """Boxes, kinds and texts of a card's lines. They are remembered: a drag changes one snag, and the list asks for all."""
        snag = index.data(SNAG)
        asked = (width, self.unit, px(100), self.chance(index))
        known = self._laid.get(id(snag))
        if known is not None and known[:2] == (snag, asked) and known[2] == option.font:
            return known[3]
        if len(self._laid) >= REMEMBERED:
            self._laid.clear()
        lines = self._lay(QStyleOptionViewItem(option), index, width)
        self._laid[id(snag)] = (snag, asked, QFont(option.font), lines)
        return lines

    def _lay(self, option: QStyleOptionViewItem, index: QModelIndex, width: int) -> list[tuple[QRectF, str, str]]:
        snag, chance = index.data(SNAG), self.chance(index)
        left = PAD + px(22)
        inner = max(60, width - left - PAD - 2)
        plain = QFontMetrics(option.font)
        flags = int(Qt.TextFlag.TextWordWrap)
        y, out = PAD, []
        said = [("title", title(snag)), ("text", snag.text_in(self.unit)), ("cure", cure_line(snag, self.unit))]
        if snag.move is not None:
            said.append(("button", self.word()))
        if chance is not None:
            said += [("picture", ""), ("chance" if chance.clearance is not None else "awaited", chance.words(self.unit))]
        for kind, text in said:
            if kind == "picture":
                out.append((QRectF(PAD, y + 4, width - 2 * PAD, px(TALL)), kind, text))
                y += px(TALL) + 10
                continue
            if kind == "button":
                out.append((QRectF(left, y + 4, plain.horizontalAdvance(text) + px(24), px(BUTTON)), kind, text))
                y += px(BUTTON) + 6
                continue
            if not text:
                continue
            font = option.font
            font.setBold(kind == "title")
            metrics = QFontMetrics(font) if kind == "title" else plain
            box = metrics.boundingRect(0, 0, inner, 1000, flags, text)
            out.append((QRectF(left, y, inner, box.height()), kind, text))
            y += box.height() + 2
        return out

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        height = self.told[index.row()] = self.height(option, index)
        return QSize(self.parent().viewport().width(), height)

    def height(self, option: QStyleOptionViewItem, index: QModelIndex) -> int:
        """How high a row wants to be, pixels."""
        lines = self._lines(option, index, self.parent().viewport().width() - FRAME)
        return int(lines[-1][0].bottom()) + PAD + GAP

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
        lines = self._lines(option, index, int(area.width()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        painter.save()
        painter.translate(QPointF(PAD + px(7), lines[0][0].top() + QFontMetrics(option.font).height() / 2))
        painter.drawPath(sign_path(snag.grade, px(6)))
        painter.restore()
        for box, kind, text in lines:
            font = option.font
            if kind == "picture":
                paint_chance(painter, self.chance(index), box, t, font, self.unit)
                continue
            font.setBold(kind == "title")
            painter.setFont(font)
            if kind == "button":
                self._paint_button(painter, box, text, self.pointed is not None and self.pointed == index)
                continue
            painter.setPen(QColor({"text": t.dim, "cure": colour, "awaited": t.dim}.get(kind, t.ink)))
            painter.drawText(box, int(Qt.TextFlag.TextWordWrap), text)
        painter.restore()

    def _paint_button(self, painter: QPainter, box: QRectF, word: str, full: bool) -> None:
        t = self.theme
        painter.setPen(QPen(QColor(t.accent), 1))
        painter.setBrush(QColor(t.accent if full else t.panel))
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        painter.setPen(QColor(t.accent_ink if full else t.ink))
        painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter), word)


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
    grown = Signal(int)
    """the card in hand is so many pixels taller than the list"""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model = SnagModel(self)
        self._card = SnagCard(theme, self)
        self.setModel(self._model)
        self.setItemDelegate(self._card)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setAccessibleName(say("Snags"))
        self.setAccessibleDescription(say("Ctrl+Enter makes the move that cures the snag in hand"))
        self.setMouseTracking(True)
        self.clicked.connect(self._go)
        self.activated.connect(self._go)

    def show_snags(self, snags: tuple[Snag, ...]) -> None:
        """Replace the snags shown."""
        self._model.show(snags)

    def show_chances(self, chances: Chances) -> None:
        """Tell the chance of the snag in hand, or that it is being worked out."""
        if self._model.show_chances(chances):
            self._lay_out()
            self.viewport().update()

    def selectionChanged(self, now: QItemSelection, before: QItemSelection) -> None:
        """The card in hand is taller: it shows its chance."""
        super().selectionChanged(now, before)
        self._lay_out()

    def _lay_out(self) -> None:
        """Give every card its height again, and let the one in hand be seen whole."""
        self.scheduleDelayedItemsLayout()
        chosen = self.selectionModel().selectedIndexes()
        if chosen and self.isVisible():
            self.executeDelayedItemsLayout()
            lacking = self.visualRect(chosen[0]).height() - self.viewport().height()
            if lacking > 0:
                self.grown.emit(lacking)
            self.scrollTo(chosen[0])

    def dataChanged(self, first: QModelIndex, last: QModelIndex, roles: list[int] | None = None) -> None:
        """A card that stays as high as it was is painted anew by itself: the list is laid out anew for others alone."""
        told, row = self._card.told, first.row()
        option = QStyleOptionViewItem()
        self.initViewItemOption(option)
        if first != last or self._card.height(option, first) != told.get(row):
            super().dataChanged(first, last, roles or [])
        elif QAccessible.isActive():
            QAbstractItemView.dataChanged(self, first, last, roles or [])
        else:  # not asked for its place: the list would ask for the heights of all cards above
            top = sum(told.get(above, 0) for above in range(row)) - self.verticalOffset()
            self.viewport().update(0, top, self.viewport().width(), told[row])

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
        return self._card.button(option, index, card_area(option)) if index.isValid() else None

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
        if walks(event):
            index = self.currentIndex()
            if index.isValid():
                self.chosen.emit(index.data(SNAG))
