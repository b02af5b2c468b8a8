"""The list of snags: what, measured, needed, cure; a click goes there, its button carries the cure out."""

from __future__ import annotations

from PySide6.QtCore import QItemSelection, QModelIndex, QPoint, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractItemView, QStyleOptionViewItem, QWidget

from app.help.snags import drawing_of
from app.look.turns import Steps, Turns
from app.panels.forms.card_list import ROW, CardList, RowModel, card_area
from app.panels.forms.in_hand import go_along
from app.panels.snags.chance_words import Chances
from app.panels.snags.snag_card import CHANCE, SnagCard, cure_line
from app.panels.snags.snag_chance import chance_of
from app.panels.snags.snag_words import title
from geometry.checks import KINDS, Snag
from geometry.saying import say
from geometry.terms import term
from geometry.units import LengthUnit


class SnagModel(RowModel):
    """Snags as a list, each with its chance while that is known."""

    unit: LengthUnit = "mm"

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._chances = Chances()

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role not in (CHANCE, Qt.ItemDataRole.AccessibleDescriptionRole):
            return super().data(index, role)
        chance = chance_of(self.rows[index.row()], self._chances)
        return chance if role == CHANCE or chance is None else chance.words(self.unit)

    def words(self, snag: Snag) -> str:
        return f"{term(snag.grade)}: {title(snag)}. {snag.text_in(self.unit)} {cure_line(snag, self.unit)}"

    def tip(self, snag: Snag) -> str:
        from app.help.tip import pictured

        return pictured(KINDS[snag.kind].why, drawing_of(snag.kind))

    def show_chances(self, chances: Chances) -> bool:
        """Take what is known of the chances; whether that changes what any card says."""
        told = (chances.simulation if chances.fresh else None, chances.fresh, chances.trouble)
        before = (self._chances.simulation if self._chances.fresh else None, self._chances.fresh, self._chances.trouble)
        self._chances = chances
        return told != before


class SnagList(CardList):
    """The list itself. The button of a card, or Ctrl+Enter on it, asks for its cure."""

    chosen = Signal(object)
    """the Snag that was clicked or reached with the keyboard"""
    cure_wanted = Signal(object)
    """the Snag whose move is to be made"""
    cure_pointed = Signal(object)
    """the Snag whose button is pointed at, or None"""
    grown = Signal(int)
    """the card in hand is so many pixels taller than the list"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._measuring = Turns(self)
        self._measuring.done.connect(self.scheduleDelayedItemsLayout)
        self.lay(SnagModel(self), SnagCard(self), say("Snags"))
        self.setAccessibleDescription(say("Ctrl+Enter makes the move that cures the snag in hand"))
        self.setMouseTracking(True)

    def doItemsLayout(self) -> None:
        """Cards far below are given their heights in turns of the event loop, and the list is laid out once more."""
        self._card.begin()
        super().doItemsLayout()
        if self._card.guessed:
            self._measuring.begin(self._measure())

    def _measure(self) -> Steps:
        option = QStyleOptionViewItem()
        self.initViewItemOption(option)
        row = 0
        while row < self._model.rowCount():
            self._card.height(option, self._model.index(row))
            row += 1
            yield

    def show_snags(self, snags: tuple[Snag, ...]) -> None:
        """Replace the snags shown; the one in hand stays so while it is there."""
        held = self.currentIndex().data(ROW)
        self._model.show(snags)
        go_along(self, held, snags)

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
            self.cure_pointed.emit(None if index is None else index.data(ROW))

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
        snag = index.data(ROW)
        self._point(None)
        self.cure_wanted.emit(snag)

    def _go(self, index: QModelIndex) -> None:
        self.chosen.emit(index.data(ROW))

    def keyPressEvent(self, event) -> None:
        if (event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
                and event.modifiers() & Qt.KeyboardModifier.ControlModifier):
            index = self.currentIndex()
            if not index.isValid() and self._model.rowCount():  # nothing in hand yet: show first what the next press cures
                self.setCurrentIndex(self._model.index(0))
                self._go(self.currentIndex())
            elif index.isValid() and index.data(ROW).move is not None:
                self.cure_wanted.emit(index.data(ROW))
            return
        super().keyPressEvent(event)
