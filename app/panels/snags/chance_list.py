"""The list of chances: how each clearance near its margin is spread, how often it goes wrong, and why."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QAbstractListModel, QModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.look.painting import paint_picture
from app.look.signs import sign_path
from app.look.sizes import lettered, px
from app.look.theme import theme
from app.panels.forms.card_list import CardList
from app.panels.forms.in_hand import go_along
from app.panels.snags.chance_words import card_words
from geometry.drawing.chances import spread_picture
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from geometry.accuracy import Clearance, Simulation

PAD, GAP, FRAME = 10, 8, 2
"""Pixels inside a card, between cards, and of a card's frame on both sides together."""
PICTURE = (100.0, 22.0)
"""Size of the histogram in mm of its display list."""
TALL = 62
"""Height of the histogram on the card at 100 %, pixels."""
FIGURES = 11
"""Letters in it."""
CLEARANCE = Qt.ItemDataRole.UserRole
MOST = 60
"""Cards at most; the worst come first."""


class ChanceModel(QAbstractListModel):
    """The clearances of one simulation."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.unit: LengthUnit = "mm"
        self.trials = 0
        self.clearances: tuple[Clearance, ...] = ()

    def rowCount(self, parent: QModelIndex | None = None) -> int:
        return len(self.clearances)

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        clearance = self.clearances[index.row()]
        if role == CLEARANCE:
            return clearance
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return ". ".join(card_words(clearance, self.trials, self.unit)).replace("\n", " ")
        return None

    def show(self, simulation: Simulation | None, unit: LengthUnit) -> None:
        """Replace the list."""
        self.beginResetModel()
        self.unit = unit
        self.trials = 0 if simulation is None else simulation.trials
        self.clearances = () if simulation is None else simulation.clearances[:MOST]
        self.endResetModel()


class ChanceCard(QStyledItemDelegate):
    """Paints a clearance as a card: title, between which, histogram, words."""

    def __init__(self, parent: QListView) -> None:
        super().__init__(parent)

    def _lines(self, option: QStyleOptionViewItem, index: QModelIndex, width: int) -> list[tuple[QRectF, str, str]]:
        model: ChanceModel = index.model()
        beside, tall = PAD + px(22), px(TALL)
        inner = max(60, width - beside - PAD - 2)
        title, between, words = card_words(index.data(CLEARANCE), model.trials, model.unit)
        y, out = PAD, []
        for kind, text in (("title", title), ("between", between), ("picture", ""), ("words", words)):
            left = PAD if kind == "picture" else beside
            if kind == "picture":
                out.append((QRectF(left, y + 4, width - 2 * PAD, tall), kind, text))
                y += tall + 10
                continue
            font = QFont(option.font)
            font.setBold(kind == "title")
            box = QFontMetrics(font).boundingRect(0, 0, inner, 1000, int(Qt.TextFlag.TextWordWrap), text)
            out.append((QRectF(left, y, inner, box.height()), kind, text))
            y += box.height() + 2
        return out

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        width = self.parent().viewport().width()
        lines = self._lines(option, index, width - FRAME)
        return QSize(width, int(lines[-1][0].bottom()) + PAD + GAP)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        clearance: Clearance = index.data(CLEARANCE)
        t = theme()
        grade = "spoils the work" if clearance.spoils and clearance.spoiled > 0 else "tight"
        colour = t.spoils if grade == "spoils the work" else t.tight
        area = QRectF(option.rect).adjusted(FRAME / 2, 1, -FRAME / 2, -GAP + 1)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(colour if chosen else t.line), 2 if chosen else 1))
        painter.setBrush(QColor(t.card))
        painter.drawRoundedRect(area.adjusted(0.5, 0.5, -0.5, -0.5), 8, 8)
        painter.translate(area.left(), area.top())
        lines = self._lines(option, index, int(area.width()))
        painter.save()
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        painter.translate(PAD + px(7), lines[0][0].top() + QFontMetrics(option.font).height() / 2)
        painter.drawPath(sign_path(grade, px(6)))
        painter.restore()
        for box, kind, text in lines:
            font = QFont(option.font)
            if kind == "picture":
                font = lettered(font, FIGURES)
                paint_picture(painter, spread_picture(clearance, *PICTURE, unit=index.model().unit), PICTURE, box, t,
                              font)
                continue
            font.setBold(kind == "title")
            painter.setFont(font)
            painter.setPen(QColor(t.dim if kind == "between" else t.ink))
            painter.drawText(box, int(Qt.TextFlag.TextWordWrap), text)
        painter.restore()


class ChanceList(CardList):
    """The list itself."""

    chosen = Signal(object)
    """the Clearance that was clicked or reached with the keyboard"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lay(ChanceModel(self), ChanceCard(self), say("Chances"))

    def show_simulation(self, simulation: Simulation | None, unit: LengthUnit) -> None:
        """Replace the chances shown; the one in hand stays so while it is there."""
        held = self.currentIndex().data(CLEARANCE)
        self._model.show(simulation, unit)
        go_along(self, held, self._model.clearances)

    def _go(self, index: QModelIndex) -> None:
        self.chosen.emit(index.data(CLEARANCE))
