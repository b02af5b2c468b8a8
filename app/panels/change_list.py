"""The list of changes: what was done to this layout, step by step, and going back to any of them."""

from __future__ import annotations

from msgspec import Struct
from PySide6.QtCore import QItemSelectionModel, QModelIndex, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.look.plain import plain
from app.look.theme import theme
from app.panels.forms.card_list import ROW, CardList, RowModel
from geometry.saying import say

HEIGHT = 26
"""Of a row, in pixels, at the usual size of text; larger text makes it taller."""
LINE = 18
"""Where the line of steps runs, in pixels from the left."""


class ChangeRow(Struct, frozen=True):
    """One step. `when` is past, present or undone."""

    number: int
    words: str
    when: str
    saved: bool


class ChangeModel(RowModel):
    """The steps, the beginning first."""

    def words(self, row: ChangeRow) -> str:
        when = {"present": say("shown now"), "undone": say("undone")}.get(row.when, "")
        return ", ".join(filter(None, (row.words, when, say("as saved") if row.saved else "")))

    def tip(self, row: ChangeRow) -> str:
        return plain(row.words)


class ChangePaint(QStyledItemDelegate):
    """A row: its sign on the line of steps, its words, and whether the file holds it.

    A filled disc is what is shown, a ring what came before, a small ring on a broken line what was undone.
    """

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        return QSize(80, max(HEIGHT, QFontMetrics(option.font).height() + 9))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        row: ChangeRow = index.data(ROW)
        t, area = theme(), QRectF(option.rect)
        undone, present = row.when == "undone", row.when == "present"
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if present or option.state & QStyle.StateFlag.State_MouseOver:
            painter.setPen(QPen(QColor(t.line), 1))
            painter.setBrush(QColor(t.card))
            painter.drawRoundedRect(area.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        self._sign(painter, index, area, undone, present)
        font = option.font
        font.setBold(present)
        painter.setFont(font)
        metrics = QFontMetrics(font)
        painter.setPen(QColor(t.dim if undone else t.ink))
        said = say("saved") if row.saved else ""
        right = area.right() - 10 - (metrics.horizontalAdvance(said) + 10 if said else 0)
        box = QRectF(area.left() + LINE + 16, area.top(), max(0.0, right - area.left() - LINE - 16), area.height())
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(box, int(middle), metrics.elidedText(row.words, Qt.TextElideMode.ElideRight, int(box.width())))
        if said:
            painter.setPen(QColor(t.note))
            painter.drawText(area.adjusted(0, 0, -10, 0), int(middle | Qt.AlignmentFlag.AlignRight), said)
        painter.restore()

    def _sign(self, painter: QPainter, index: QModelIndex, area: QRectF, undone: bool, present: bool) -> None:
        t = theme()
        last = index.row() + 1 == index.model().rowCount()
        x, y = area.left() + LINE, area.center().y()
        size = 6.0 if present else 3.5 if undone else 4.5
        painter.setPen(QPen(QColor(t.dim), 1.5, Qt.PenStyle.DotLine if undone else Qt.PenStyle.SolidLine))
        if index.row():
            painter.drawLine(QPointF(x, area.top()), QPointF(x, y - size))
        if not last:
            painter.setPen(QPen(QColor(t.dim), 1.5, Qt.PenStyle.DotLine if undone or present else Qt.PenStyle.SolidLine))
            painter.drawLine(QPointF(x, y + size), QPointF(x, area.bottom()))
        painter.setPen(QPen(QColor(t.focus if present else t.dim), 1.5))
        painter.setBrush(QColor(t.focus) if present else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(QPointF(x, y), size, size)


class ChangeList(CardList):
    """The list itself. A press or an arrow key asks to go to a step; the list follows, it changes nothing by itself."""

    wanted = Signal(int)
    """number of the step to go to"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lay(ChangeModel(self), ChangePaint(self), say("Changes to this layout"))
        self.setMouseTracking(True)
        self.setViewportMargins(4, 4, 4, 4)
        self.setAccessibleDescription(say("The arrow keys go back to a step or forward to one; Home is the beginning."))

    @property
    def rows(self) -> tuple[ChangeRow, ...]:
        """What is listed."""
        return self._model.rows

    def show_rows(self, rows: tuple[ChangeRow, ...]) -> None:
        """Replace the list, and keep what is shown now in view."""
        self._model.show(rows)
        for row in rows:
            if row.when == "present":
                index = self._model.index(row.number)
                self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.NoUpdate)
                self.scrollTo(index, QListView.ScrollHint.EnsureVisible)

    def keyPressEvent(self, event) -> None:
        super().keyPressEvent(event)
        if event.key() == Qt.Key.Key_Space:
            self._go(self.currentIndex())

    def _go(self, index: QModelIndex) -> None:
        if index.isValid():
            self.wanted.emit(index.row())
