"""A card of the list of snags: what it says and how it is painted."""

from __future__ import annotations

import math

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen, QStaticText, QTransform
from PySide6.QtWidgets import QListView, QStyledItemDelegate, QStyleOptionViewItem

from app.look.sizes import px
from app.look.theme import theme
from app.panels.forms.card_list import FRAME, GAP, PAD, ROW, begin_card, card_area
from app.panels.snags.snag_chance import TALL, SnagChance, paint_chance
from app.panels.snags.snag_words import title
from geometry.checks import Snag
from geometry.cures import curable
from geometry.saying import say
from geometry.units import LengthUnit

BUTTON = 26
"""Height of a card's button in pixels at 100 %."""
CHANCE = ROW + 1
REMEMBERED = 200
"""Cards whose lines are remembered, and words that are; heights are of so many, or of twice as many as the list has."""
AT_ONCE = 200
"""Cards that are measured in one layout of the list, each a third of a millisecond. What lies beyond is taken to be as high as
those are on the average, until it is measured in turns."""


def cure_line(snag: Snag, unit: LengthUnit) -> str:
    """What stands on a card for the cure: while none has been tried yet, that one is looked for."""
    if snag.cured is None and curable(snag):
        return say("Looking for a move that cures it …")
    return snag.cure_in(unit)


class SnagCard(QStyledItemDelegate):
    """Paints a snag as a card; the one in hand with its chance."""

    def __init__(self, parent: QListView) -> None:
        super().__init__(parent)
        self.unit: LengthUnit = "mm"
        self.pointed: QModelIndex | None = None
        """the card whose button is pointed at"""
        self.told: dict[int, int] = {}
        """the height of each row that the list was told last, when it laid its rows: pixels by row"""
        self._heights: dict[int, tuple[Snag, tuple, QFont, int]] = {}
        self._measured: list[int] = []
        """heights that were measured since the list is laid out"""
        self.guessed = False
        """whether the height of a row is a guess"""
        self._words: dict[tuple[str, str, int], QStaticText] = {}
        self._laid: dict[int, tuple[Snag, tuple, QFont, list[tuple[QRectF, str, str]], list[QStaticText | None]]] = {}

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
        snag = index.data(ROW)
        asked = (width, self.unit, px(100), self.chance(index))
        known = self._laid.get(id(snag))
        if known is not None and known[:2] == (snag, asked) and known[2] == option.font:
            return known[3]
        if len(self._laid) >= REMEMBERED:
            self._laid.clear()
        lines, words = self._lay(QStyleOptionViewItem(option), index, width)
        self._laid[id(snag)] = (snag, asked, QFont(option.font), lines, words)
        return lines

    def _lay(self, option: QStyleOptionViewItem, index: QModelIndex,
             width: int) -> tuple[list[tuple[QRectF, str, str]], list[QStaticText | None]]:
        """The lines, and of each that is words these as they are laid out: to measure and to paint them takes one layout."""
        snag, chance = index.data(ROW), self.chance(index)
        left = PAD + px(22)
        inner = max(60, width - left - PAD - 2)
        font = option.font
        y, out, words = PAD, [], []
        said = [("title", title(snag)), ("text", snag.text_in(self.unit)), ("cure", cure_line(snag, self.unit))]
        if snag.move is not None:
            said.append(("button", self.word()))
        if chance is not None:
            said += [("picture", ""), ("chance" if chance.clearance is not None else "awaited", chance.words(self.unit))]
        for kind, text in said:
            if not text and kind != "picture":
                continue
            laid = None
            if kind == "picture":
                out.append((QRectF(PAD, y + 4, width - 2 * PAD, px(TALL)), kind, text))
                y += px(TALL) + 10
            elif kind == "button":
                font.setBold(False)
                out.append((QRectF(left, y + 4, QFontMetrics(font).horizontalAdvance(text) + px(24), px(BUTTON)), kind, text))
                y += px(BUTTON) + 6
            else:
                font.setBold(kind == "title")
                laid = self._words_in(font, text, inner)
                height = math.ceil(laid.size().height())
                out.append((QRectF(left, y, inner, height), kind, text))
                y += height + 2
            words.append(laid)
        return out, words

    def _words_in(self, font: QFont, text: str, width: int) -> QStaticText:
        """Words laid out to a width; remembered, for titles and cures stay the same where a number changes."""
        asked = (font.key(), text, width)
        laid = self._words.get(asked)
        if laid is None:
            if len(self._words) >= REMEMBERED:
                self._words.clear()
            # A plain "\n" ends no line of a text laid out like that: the sentences of a chance ran into each other.
            laid = self._words[asked] = QStaticText(text.replace("\n", "\u2028"))
            laid.setTextFormat(Qt.TextFormat.PlainText)
            laid.setTextWidth(width)
            laid.prepare(QTransform(), font)
        return laid

    def begin(self) -> None:
        """The list is about to be laid out."""
        self._measured, self.guessed = [], False

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        known = self._known_height(option, index)
        if known is None and len(self._measured) >= AT_ONCE:
            self.guessed, known = True, round(sum(self._measured) / len(self._measured))
        elif known is None:
            known = self.height(option, index)
            self._measured.append(known)
        self.told[index.row()] = known
        return QSize(self.parent().viewport().width(), known)

    def height(self, option: QStyleOptionViewItem, index: QModelIndex) -> int:
        """How high a row wants to be, pixels."""
        known = self._known_height(option, index)
        if known is None:
            if len(self._heights) >= max(REMEMBERED, 2 * index.model().rowCount()):
                self._forget_gone(index.model())
            snag, asked = index.data(ROW), self._asked(index)
            known = int(self._lines(option, index, asked[0])[-1][0].bottom()) + PAD + GAP
            self._heights[id(snag)] = (snag, asked, QFont(option.font), known)
        return known

    def _forget_gone(self, model: QAbstractItemModel) -> None:
        """Remember the heights of what the list shows alone: each step of a drag brings other snags."""
        shown = [id(model.index(row, 0).data(ROW)) for row in range(model.rowCount())]
        self._heights = {one: self._heights[one] for one in shown if one in self._heights}

    def _known_height(self, option: QStyleOptionViewItem, index: QModelIndex) -> int | None:
        snag = index.data(ROW)
        known = self._heights.get(id(snag))
        return known[3] if known is not None and known[:2] == (snag, self._asked(index)) and known[2] == option.font else None

    def _asked(self, index: QModelIndex) -> tuple:
        """What the height of a card hangs on, but for its snag and the font."""
        return self.parent().viewport().width() - FRAME, self.unit, px(100), self.chance(index)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        snag: Snag = index.data(ROW)
        t = theme()
        colour = t.of_grade(snag.grade)
        begin_card(painter, option, snag.grade, colour, self.parent().devicePixelRatioF())
        lines = self._lines(option, index, int(card_area(option).width()))
        words = self._laid[id(snag)][4]
        for (box, kind, text), laid in zip(lines, words, strict=True):
            font = option.font
            if kind == "picture":
                paint_chance(painter, self.chance(index), box, font, self.unit)
                continue
            font.setBold(kind == "title")
            painter.setFont(font)
            if kind == "button":
                self._paint_button(painter, box, text, self.pointed is not None and self.pointed == index)
                continue
            painter.setPen(QColor({"text": t.dim, "cure": colour, "awaited": t.dim}.get(kind, t.ink)))
            painter.drawStaticText(box.topLeft(), laid)
        painter.restore()

    def _paint_button(self, painter: QPainter, box: QRectF, word: str, full: bool) -> None:
        t = theme()
        painter.setPen(QPen(QColor(t.accent), 1))
        painter.setBrush(QColor(t.accent if full else t.panel))
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        painter.setPen(QColor(t.accent_ink if full else t.ink))
        painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter), word)
