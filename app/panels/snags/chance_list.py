"""The list of chances: how each clearance near its margin is spread, how often it goes wrong, and why."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter
from PySide6.QtWidgets import QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.look.painting import paint_picture
from app.look.sizes import lettered, px
from app.look.theme import theme
from app.panels.forms.card_list import FRAME, GAP, PAD, ROW, CardList, RowModel, begin_card, card_area
from app.panels.forms.in_hand import go_along
from app.panels.snags.chance_words import card_words
from geometry.drawing.chances import spread_picture
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from geometry.accuracy import Clearance, Simulation

PICTURE = (100.0, 22.0)
"""Size of the histogram in mm of its display list."""
TALL = 62
"""Height of the histogram on the card at 100 %, pixels."""
FIGURES = 11
"""Letters in it."""
MOST = 60
"""Cards at most; the worst come first."""


class ChanceModel(RowModel):
    """The clearances of one simulation."""

    unit: LengthUnit = "mm"
    trials = 0

    def words(self, clearance: Clearance) -> str:
        return ". ".join(card_words(clearance, self.trials, self.unit)).replace("\n", " ")

    def show_simulation(self, simulation: Simulation | None, unit: LengthUnit) -> None:
        """Replace the list."""
        self.unit, self.trials = unit, 0 if simulation is None else simulation.trials
        self.reset(() if simulation is None else simulation.clearances[:MOST])


class ChanceCard(QStyledItemDelegate):
    """Paints a clearance as a card: title, between which, histogram, words."""

    def _lines(self, option: QStyleOptionViewItem, index: QModelIndex, width: int) -> list[tuple[QRectF, str, str]]:
        model: ChanceModel = index.model()
        beside, tall = PAD + px(22), px(TALL)
        inner = max(60, width - beside - PAD - 2)
        title, between, words = card_words(index.data(ROW), model.trials, model.unit)
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
        clearance: Clearance = index.data(ROW)
        t = theme()
        grade = "spoils the work" if clearance.spoils and clearance.spoiled > 0 else "tight"
        begin_card(painter, option, grade, t.of_grade(grade), self.parent().devicePixelRatioF())
        for box, kind, text in self._lines(option, index, int(card_area(option).width())):
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
        held = self.currentIndex().data(ROW)
        self._model.show_simulation(simulation, unit)
        go_along(self, held, self._model.rows)

    def _go(self, index: QModelIndex) -> None:
        self.chosen.emit(index.data(ROW))
