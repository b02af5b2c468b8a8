"""A list whose rows are painted in the maker's colours, and walked through with the keyboard as with the mouse."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import takewhile

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPixmap
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from app.look.plates import painted_plate
from app.look.signs import paint_sign
from app.look.sizes import px
from app.look.theme import theme

ROW = Qt.ItemDataRole.UserRole
"""What a row is of."""
PAD, GAP, FRAME = 10, 8, 2
"""Pixels inside a card, between cards, and of a card's frame on both sides together."""
_WALK = frozenset({Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown})


class RowModel(QAbstractListModel):
    """Rows of a list: what each is of, and what is told of it."""

    rows: Sequence = ()

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        row = self.rows[index.row()]
        if role == ROW:
            return row
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self.words(row)
        return self.tip(row) or None if role == Qt.ItemDataRole.ToolTipRole else None

    def words(self, row: object) -> str:
        """What a row says, to whoever hears it too."""
        raise NotImplementedError

    def tip(self, row: object) -> str:
        """What is told of a row on which the mouse rests."""
        return ""

    def reset(self, rows: Sequence) -> None:
        """Another list: nothing stays chosen."""
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def show(self, rows: Sequence) -> None:
        """Other rows in the same list: those that stay keep their place on the screen, and only those that differ are told of."""
        old, new = tuple(self.rows), tuple(rows)
        more = len(new) - len(old)
        # Rows come and go before those that stay at the end: of snags the notes, in most steps of a drag.
        at = min(len(old), len(new)) - (_common_end(old, new) if more else 0)
        if more < 0:
            self.beginRemoveRows(QModelIndex(), at, at - more - 1)
            self.rows = old[:at] + old[at - more:]
            self.endRemoveRows()
        elif more > 0:
            self.beginInsertRows(QModelIndex(), at, at + more - 1)
            self.rows = old[:at] + new[at:at + more] + old[at:]
            self.endInsertRows()
        before, self.rows = self.rows, new
        for i, (one, two) in enumerate(zip(before, new, strict=True)):
            if one != two:
                self.dataChanged.emit(self.index(i), self.index(i))


def _common_end(one: tuple, two: tuple) -> int:
    """How many rows at the end of both are the same."""
    return sum(1 for _ in takewhile(lambda pair: pair[0] == pair[1], zip(reversed(one), reversed(two), strict=False)))


class CardList(QListView):
    """Base of the lists. A row that is clicked, activated or walked to with a key is gone to: `_go`."""

    def lay(self, model: RowModel, card: QStyledItemDelegate, name: str) -> None:
        """Take the rows, what paints them, and what the list is called."""
        self._model, self._card = model, card
        self.setModel(model)
        self.setItemDelegate(card)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setAccessibleName(name)
        self.clicked.connect(self._go)
        self.activated.connect(self._go)

    def resizeEvent(self, event) -> None:
        """Rows are as high as their words wrap: another width lays them anew at once, the toolkit does so for another height alone."""
        super().resizeEvent(event)
        if event.size().width() == event.oldSize().width():
            return
        if self.state() == QListView.State.NoState:
            self.doItemsLayout()
        else:
            self.scheduleDelayedItemsLayout()  # its bar came while rows are laid

    def keyPressEvent(self, event) -> None:
        super().keyPressEvent(event)
        if event.key() in _WALK and self.currentIndex().isValid():
            self._go(self.currentIndex())

    def _go(self, index: QModelIndex) -> None:
        """Show what a row is about."""


# ---- cards ------------------------------------------------------------------
def card_area(option: QStyleOptionViewItem) -> QRectF:
    """The card inside its row."""
    return QRectF(option.rect).adjusted(FRAME / 2, 1, -FRAME / 2, -GAP + 1)


def begin_card(painter: QPainter, option: QStyleOptionViewItem, grade: str, colour: str, grain: float) -> None:
    """Paint a card without its words, the sign of a grade beside the first of them, and go on from its corner; `restore` ends it."""
    area, chosen = card_area(option), bool(option.state & QStyle.StateFlag.State_Selected)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.drawPixmap(area.topLeft(), _body(area.width(), area.height(), grain, theme().card, colour if chosen else theme().line,
                                             2 if chosen else 1))
    painter.translate(area.topLeft())
    paint_sign(painter, QPointF(PAD + px(7), PAD + QFontMetrics(option.font).height() / 2), grade, px(6), colour)


@lru_cache(maxsize=8)
def _body(width: float, height: float, grain: float, fill: str, frame: str, thick: int) -> QPixmap:
    """Few, for each is as large as a card."""
    return painted_plate(width, height, 8, grain, fill, 1.0, frame, thick)
