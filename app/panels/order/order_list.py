"""The list of steps: pick one, drag it to another place, or move it with Alt and the arrow keys."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import (
    QEvent,
    QItemSelectionModel,
    QModelIndex,
    QPoint,
    QRect,
    QRectF,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QApplication, QListView, QWidget

from app.look.theme import theme
from app.panels.forms.card_list import ROW, CardList, RowModel
from app.panels.order.order_card import OrderCard, box_of
from app.panels.order.order_rows import Row, SetUpRow, StepRow
from geometry.saying import say

EDGE = 26
"""Nearer than this to the upper or lower end of the list a drag scrolls it, pixels."""


class OrderModel(RowModel):
    """Rows of set-ups, which cannot be chosen, and of steps."""

    def flags(self, index: QModelIndex) -> Qt.ItemFlag:
        if index.isValid() and isinstance(self.rows[index.row()], SetUpRow):
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    def words(self, row: Row) -> str:
        if isinstance(row, SetUpRow):
            return row.words
        wrong = f", {say('wrong here')}: {row.text}" if row.text else ""
        mark = {"done": f", {say('done')}", "begun": f", {say('begun')}"}.get(row.mark, "")
        return f"{row.number}. {row.title}, {row.minutes}{mark}{wrong}"

    def tip(self, row: Row) -> str:
        return row.words if isinstance(row, SetUpRow) else row.text


class OrderList(CardList):
    """The list itself. It moves nothing: it says what is to be moved where."""

    chosen = Signal(str)
    """id of the step picked"""
    hovering = Signal(str, int)
    """a step is held over this place (of the order without it)"""
    dropped = Signal(str, int)
    let_go = Signal()
    """a drag was given up"""
    ticked = Signal(str)
    """the box of a step was pressed, or Space on it"""
    stepped = Signal(str, int)
    """Alt and an arrow key: a step is to go some places on, or back"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lay(OrderModel(self), OrderCard(self), say("Running order"))
        self._pressed: tuple[QPoint, str] | None = None
        self._held = ""
        self._to = -1
        self._span = (0, -1)
        self._pointer = QPoint()
        self._roll = QTimer(self, interval=30, timeout=self._scroll_on)
        self.selectionModel().currentChanged.connect(self._current)

    # ---- what is shown ---------------------------------------------------
    @property
    def steps(self) -> list[StepRow]:
        """The steps in their order."""
        return [row for row in self._model.rows if isinstance(row, StepRow)]

    @property
    def dragging(self) -> bool:
        """Whether a step is in the hand."""
        return bool(self._held)

    def show_rows(self, rows: list[Row], current: str) -> None:
        """Replace the list; `current` stays picked, and the list where it was scrolled to. Where `current` is still the same step
        of the order it stays where it is on the screen, whatever is told of those above it: the hand may be on its box. What is
        in the hand is put back: it was taken from another order."""
        self.give_up()
        bar = self.verticalScrollBar()
        at = bar.value()
        place, box = self._place(current), self.row_box(current)
        anchored = place is not None and self.viewport().rect().intersects(box)
        self.selectionModel().currentChanged.disconnect(self._current)
        self._model.reset(rows)
        self.selectionModel().currentChanged.connect(self._current)
        if self._pressed is not None and not self._index(self._pressed[1]).isValid():
            self._pressed = None
        self.pick(current)
        bar.setValue(at)
        if anchored and place == self._place(current):
            bar.setValue(bar.value() + self.row_box(current).top() - box.top())  # a list grown shorter may not have been taken as far as `at`
        self._into_view()

    def pick(self, id: str) -> None:
        """Mark a step as the one picked, and bring it into view."""
        index = self._index(id)
        if index.isValid() and index != self.currentIndex():
            self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        self._into_view()

    def show_drag(self, span: tuple[int, int], wrong: Mapping[str, tuple[str, str]]) -> None:
        """Where the step in the hand may go, and which steps would come out wrong where it is now."""
        self._span = span
        self._card.would = wrong
        self.viewport().update()

    def row_box(self, id: str) -> QRect:
        """Where a step is on the screen, in pixels of the list."""
        return self.visualRect(self._index(id))

    # ---- dragging ----------------------------------------------------------
    def mousePressEvent(self, event) -> None:
        super().mousePressEvent(event)
        index = self.indexAt(event.position().toPoint())
        row = index.data(ROW)
        if event.button() != Qt.MouseButton.LeftButton or not isinstance(row, StepRow):
            return
        if box_of(QRectF(self.visualRect(index))).adjusted(-4, -4, 4, 4).contains(event.position()):
            self.ticked.emit(row.id)
        else:
            self._pressed = (event.position().toPoint(), row.id)

    def mouseMoveEvent(self, event) -> None:
        if self._pressed is None:
            return
        self._pointer = event.position().toPoint()
        start, id = self._pressed
        if not self._held:
            if (self._pointer - start).manhattanLength() < QApplication.startDragDistance():
                return
            self._held = self._card.held = id
            self._roll.start()
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
        self._hover()

    def mouseReleaseEvent(self, event) -> None:
        if not self._held:
            self._pressed = None
            super().mouseReleaseEvent(event)
            return
        if event.button() != Qt.MouseButton.LeftButton:
            return
        id, to = self._held, self._to
        self._lay_down()
        self.dropped.emit(id, to)

    def hideEvent(self, event) -> None:
        """A step is not dropped where nobody sees it."""
        super().hideEvent(event)
        self.give_up()

    def give_up(self) -> None:
        """Put back what is in the hand."""
        if self._held:
            self._lay_down()
            self.let_go.emit()

    def _hover(self) -> None:
        others = [row for row in self.steps if row.id != self._held]
        to = sum(self.row_box(row.id).center().y() < self._pointer.y() for row in others)
        if to != self._to:
            self._to = to
            self.hovering.emit(self._held, to)
        self.viewport().update()

    def _lay_down(self) -> None:
        self._roll.stop()
        self._pressed = None
        self._held = self._card.held = ""
        self._to = -1
        self._span = (0, -1)
        self._card.would = None
        self.viewport().unsetCursor()
        self.viewport().update()

    def _scroll_on(self) -> None:
        y, bar = self._pointer.y(), self.verticalScrollBar()
        by = -10 if y < EDGE else 10 if y > self.viewport().height() - EDGE else 0
        if by:
            bar.setValue(bar.value() + by)
            self._hover()

    # ---- keys and paint ------------------------------------------------------
    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and event.key() == Qt.Key.Key_Escape and self._held:
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event) -> None:
        row = self.currentIndex().data(ROW)
        by = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(event.key())
        if event.key() == Qt.Key.Key_Escape and self._held:
            self.give_up()
        elif event.key() == Qt.Key.Key_Space and isinstance(row, StepRow) and not self._held:
            self.ticked.emit(row.id)
        elif by is not None and event.modifiers() & Qt.KeyboardModifier.AltModifier and isinstance(row, StepRow):
            self.stepped.emit(row.id, by)
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def paintEvent(self, event) -> None:
        super().paintEvent(event)
        if not self._held:
            return
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width = self.viewport().width()
        first, last = self._span
        if first <= last:
            painter.setPen(QPen(QColor(theme().focus), 4))
            painter.drawLine(4, self._gap(first) - 5, 4, self._gap(last) + 5)
        right = first <= self._to <= last
        painter.setPen(QPen(QColor(theme().focus if right else theme().spoils), 3,
                            Qt.PenStyle.SolidLine if right else Qt.PenStyle.DashLine))
        y = self._gap(self._to)
        painter.drawLine(8, y, width - 6, y)

    def _gap(self, to: int) -> int:
        """Height of the gap before the step at this place of the order without the one in the hand, pixels."""
        others = [row for row in self.steps if row.id != self._held]
        if not others:
            return 0
        if to >= len(others):
            return self.row_box(others[-1].id).bottom()
        return self.row_box(others[max(to, 0)].id).top()

    # ---- inside ----------------------------------------------------------------
    def _place(self, id: str) -> int | None:
        return next((i for i, row in enumerate(self.steps) if row.id == id), None)

    def _index(self, id: str) -> QModelIndex:
        for i, row in enumerate(self._model.rows):
            if isinstance(row, StepRow) and row.id == id:
                return self._model.index(i)
        return QModelIndex()

    def _into_view(self) -> None:
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex(), QListView.ScrollHint.EnsureVisible)

    def _current(self, index: QModelIndex) -> None:
        row = index.data(ROW)
        if isinstance(row, StepRow):
            self.chosen.emit(row.id)
