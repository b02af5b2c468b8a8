"""How a row of the running order is painted: the set-up as a badge, a step with its number, sign and minutes."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.look.signs import sign_path
from app.look.sizes import px, sizes
from app.look.theme import Theme
from app.panels.order.order_rows import Row, SetUpRow, StepRow

SET_UP, STEP = 34, 25
"""Heights of rows at 100 %, pixels."""
NUMBER = 62
"""Where titles begin at 100 %, pixels."""
BOX = 11
"""Side of the box to tick at 100 %, pixels."""
SIGNS = {"loud": "spoils the work", "unwise": "tight"}


def box_of(row: QRectF) -> QRectF:
    """Where the box to tick is in the row of a step."""
    side = px(BOX)
    return QRectF(row.left() + px(16), row.top() + (px(STEP) - side) / 2, side, side)


class OrderCard(QStyledItemDelegate):
    """Paints rows. `would` holds what would come out wrong while a step is in the hand, else None."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.theme = theme
        self.held = ""
        self.would: Mapping[str, tuple[str, str]] | None = None

    def sizeHint(self, option: QStyleOptionViewItem, index) -> QSize:
        row: Row = index.data(Qt.ItemDataRole.UserRole)
        width = self.parent().viewport().width()
        if isinstance(row, SetUpRow):
            return QSize(width, px(SET_UP))
        if not row.text:
            return QSize(width, px(STEP))
        return QSize(width, px(STEP) + round(self._text_box(option.font, row, width).height()) + 6)

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
        painter.setPen(QPen(QColor(self.theme.line), 1))
        painter.setBrush(QColor(self.theme.card))
        painter.drawRoundedRect(badge.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        bold = QFont(font)
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(QColor(self.theme.ink))
        words = badge.adjusted(9, 0, -8, 0)
        painter.drawText(words, int(Qt.AlignmentFlag.AlignVCenter), row.machine)
        painter.setFont(font)
        painter.setPen(QColor(self.theme.dim))
        left = QFontMetricsF(bold).horizontalAdvance(row.machine) + 10
        rest = words.adjusted(left, 0, 0, 0)
        painter.drawText(rest, int(Qt.AlignmentFlag.AlignVCenter),
                         QFontMetricsF(font).elidedText(row.rest, Qt.TextElideMode.ElideRight, rest.width()))

    def _step(self, painter: QPainter, option: QStyleOptionViewItem, row: StepRow) -> None:
        t, area, begin, tall = self.theme, QRectF(option.rect), px(NUMBER), px(STEP)
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
                painter.setBrush(colour)
            painter.save()
            painter.translate(area.left() + begin - 1, line.center().y())
            painter.drawPath(sign_path(SIGNS[grade], 5.5 * sizes().factor))
            painter.restore()
        metrics = QFontMetricsF(option.font)
        painter.setPen(dim)
        painter.drawText(QRectF(line.left() + 14, line.top(), begin - px(11) - 14, tall),
                         int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight), str(row.number))
        self._box(painter, box_of(area), row.mark, ink if chosen and row.id != self.held else QColor(t.dim))
        painter.drawText(line.adjusted(0, 0, -14, 0), int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight),
                         row.minutes)
        painter.setPen(ink)
        left = begin + (px(10) if grade else -px(5))
        title = line.adjusted(left, 0, -22 - metrics.horizontalAdvance(row.minutes), 0)
        painter.drawText(title, int(Qt.AlignmentFlag.AlignVCenter),
                         metrics.elidedText(row.title, Qt.TextElideMode.ElideRight, title.width()))
        if row.text:
            painter.setPen(ink if chosen and row.id != self.held else colour if self.would is None else dim)
            box = self._text_box(option.font, row, area.width())
            painter.drawText(box.translated(area.left(), area.top() + tall - 1), int(Qt.TextFlag.TextWordWrap), row.text)

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

    def _text_box(self, font: QFont, row: StepRow, width: float) -> QRectF:
        """Room for what is wrong, under the title."""
        left = px(NUMBER + 10)
        inner = max(80.0, width - left - 16)
        return QFontMetricsF(font).boundingRect(QRectF(left, 0, inner, 2000), int(Qt.TextFlag.TextWordWrap),
                                                row.text)
