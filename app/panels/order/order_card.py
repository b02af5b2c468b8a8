"""How a row of the running order is painted: the set-up as a badge, a step with its number, sign and minutes."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from app.look.signs import paint_sign
from app.look.sizes import px, sizes
from app.look.theme import theme
from app.panels.order.order_rows import Row, SetUpRow, StepRow

SET_UP, STEP = 34, 25
"""Heights of rows at 100 %, pixels."""
NUMBER = 62
"""Where titles begin at 100 %, pixels."""
BOX = 11
"""Side of the box to tick at 100 %, pixels."""
WRAPPED = int(Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap)
SIGNS = {"loud": "spoils the work", "unwise": "tight"}


def box_of(row: QRectF) -> QRectF:
    """Where the box to tick is in the row of a step."""
    side = px(BOX)
    return QRectF(row.left() + px(16), row.top() + (px(STEP) - side) / 2, side, side)


class OrderCard(QStyledItemDelegate):
    """Paints rows. `would` holds what would come out wrong while a step is in the hand, else None."""

    held = ""
    would: Mapping[str, tuple[str, str]] | None = None

    def sizeHint(self, option: QStyleOptionViewItem, index) -> QSize:
        row: Row = index.data(Qt.ItemDataRole.UserRole)
        width = self.parent().viewport().width()
        if isinstance(row, SetUpRow):
            below = self._below(option.font, row, width)
            return QSize(width, px(SET_UP) if below.isEmpty() else round(below.bottom()) + 7)
        tall = self._head(option.font, row, width)
        if row.text:
            tall += self._text_box(option.font, row, width).height() + 6
        return QSize(width, round(tall))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index) -> None:
        row: Row = index.data(Qt.ItemDataRole.UserRole)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(option.font)
        if isinstance(row, SetUpRow):
            self._set_up(painter, QRectF(option.rect), row, option.font)
        else:
            self._step(painter, option, row)
        painter.restore()

    def _set_up(self, painter: QPainter, area: QRectF, row: SetUpRow, font: QFont) -> None:
        badge = area.adjusted(8, 8, -6, -2)
        painter.setPen(QPen(QColor(theme().line), 1))
        painter.setBrush(QColor(theme().card))
        painter.drawRoundedRect(badge.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        bold = QFont(font)
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(QColor(theme().ink))
        words = QRectF(badge.left() + 9, badge.top(), badge.width() - 17, px(SET_UP) - 10)
        painter.drawText(words, int(Qt.AlignmentFlag.AlignVCenter), row.machine)
        painter.setFont(font)
        painter.setPen(QColor(theme().dim))
        below = self._below(font, row, area.width())
        if below.isEmpty():
            left = QFontMetricsF(bold).horizontalAdvance(row.machine) + 10
            painter.drawText(words.adjusted(left, 0, 0, 0), int(Qt.AlignmentFlag.AlignVCenter), row.rest)
        else:
            painter.drawText(below.translated(area.topLeft()), int(Qt.TextFlag.TextWordWrap), row.rest)

    def _below(self, font: QFont, row: SetUpRow, width: float) -> QRectF:
        """Room under the machine for the rest of a set-up, in a row at 0, 0; none where both stand in one line."""
        bold, inner = QFont(font), width - 31
        bold.setBold(True)
        metrics = QFontMetricsF(font)
        if QFontMetricsF(bold).horizontalAdvance(row.machine) + 10 + metrics.horizontalAdvance(row.rest) <= inner:
            return QRectF()
        room = QRectF(17, px(SET_UP) - 4, inner, 2000)
        tall = metrics.boundingRect(room, int(Qt.TextFlag.TextWordWrap), row.rest).height()
        return QRectF(room.left(), room.top(), inner, tall)

    def _step(self, painter: QPainter, option: QStyleOptionViewItem, row: StepRow) -> None:
        t, area, begin, tall = theme(), QRectF(option.rect), px(NUMBER), px(STEP)
        head = self._head(option.font, row, area.width())
        grade = row.grade if self.would is None else self.would.get(row.id, ("", ""))[0]
        colour = QColor(t.spoils if grade == "loud" else t.tight)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        ink, dim = QColor(t.ink), QColor(t.dim)
        body = area.adjusted(8, 1, -6, -1)
        if row.id == self.held:
            painter.setPen(QPen(QColor(t.focus), 1.5, Qt.PenStyle.DashLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(body, 5, 5)
        elif chosen:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(t.accent))
            painter.drawRoundedRect(body, 5, 5)
            ink = dim = QColor(t.accent_ink)
        line = QRectF(area.left(), area.top(), area.width(), tall)
        if grade:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawRect(QRectF(area.left() + 9, area.top() + 2, 4, area.height() - 4))
            if chosen and row.id != self.held:
                painter.setBrush(QColor(t.card))
                painter.drawEllipse(QPointF(area.left() + begin - 1, line.center().y()), px(8), px(8))
            paint_sign(painter, QPointF(area.left() + begin - 1, line.center().y()), SIGNS[grade], 5.5 * sizes().factor, colour)
        painter.setPen(dim)
        painter.drawText(QRectF(line.left() + 14, line.top(), begin - px(11) - 14, tall),
                         int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight), str(row.number))
        self._box(painter, box_of(area), row.mark, ink if chosen and row.id != self.held else QColor(t.dim))
        painter.drawText(line.adjusted(0, 0, -14, 0), int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight),
                         row.minutes)
        painter.setPen(ink)
        title = self._title(option.font, row, area.width(), bool(grade)).translated(area.topLeft())
        title.setHeight(head)
        words = row.title
        if head == tall:  # a sign that comes while a step is in the hand takes room from the title, not from the row
            words = QFontMetricsF(option.font).elidedText(words, Qt.TextElideMode.ElideRight, title.width())
        painter.drawText(title, WRAPPED, words)
        if row.text:
            painter.setPen(ink if chosen and row.id != self.held else colour if self.would is None else dim)
            box = self._text_box(option.font, row, area.width())
            painter.drawText(box.translated(area.left(), area.top() + head - 1), int(Qt.TextFlag.TextWordWrap), row.text)

    def _box(self, painter: QPainter, box: QRectF, mark: str, colour: QColor) -> None:
        """A box with a tick in it, or a stroke where the work is begun."""
        painter.save()
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(colour, 1.2))
        painter.drawRoundedRect(box, 2, 2)
        painter.setPen(QPen(colour, 2.0 * sizes().factor))
        turns = {"done": ((0.2, 0.55), (0.42, 0.8), (0.85, 0.2)), "begun": ((0.2, 0.8), (0.8, 0.2))}.get(mark, ())
        if turns:
            painter.drawPolyline([QPointF(box.left() + x * box.width(), box.top() + y * box.height()) for x, y in turns])
        painter.restore()

    def _title(self, font: QFont, row: StepRow, width: float, signed: bool) -> QRectF:
        """Room for the title of a step in a row at 0, 0, as tall as its words; a sign before it takes some of it."""
        metrics = QFontMetricsF(font)
        left = px(NUMBER) + (px(10) if signed else -px(5))
        inner = width - left - 22 - metrics.horizontalAdvance(row.minutes)
        return QRectF(left, 0, inner, metrics.boundingRect(QRectF(0, 0, inner, 2000), WRAPPED, row.title).height())

    def _head(self, font: QFont, row: StepRow, width: float) -> float:
        """Height of the row of a step without what is wrong: of as many lines as the title takes."""
        return px(STEP) + self._title(font, row, width, bool(row.grade)).height() - QFontMetricsF(font).height()

    def _text_box(self, font: QFont, row: StepRow, width: float) -> QRectF:
        """Room for what is wrong, under the title."""
        left = px(NUMBER + 10)
        inner = max(80.0, width - left - 16)
        return QFontMetricsF(font).boundingRect(QRectF(left, 0, inner, 2000), int(Qt.TextFlag.TextWordWrap),
                                                row.text)
