"""How a row of what is found is painted: its words, and its keys in a column of their own."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QSize, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from app.look.sizes import px
from app.look.style import LEAD, PAD
from app.look.theme import theme

KEYS = Qt.ItemDataRole.UserRole + 1
"""The keys of a row; nothing where it has none."""


class KeyedRow(QStyledItemDelegate):
    """Keys end where the row does, on the line of the words; below them where that line has no room for both."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        super().initStyleOption(option, index)
        option.displayAlignment = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        size = super().sizeHint(option, index)
        if index.data(KEYS) and not self._beside(option, index):
            size.setHeight(size.height() + option.fontMetrics.lineSpacing())
        return size

    def _beside(self, option: QStyleOptionViewItem, index: QModelIndex) -> bool:
        """Whether words and keys stand on one line."""
        words = option.fontMetrics.horizontalAdvance(index.data() + index.data(KEYS))
        return words + 3 * px(PAD) <= option.widget.viewport().width() - 2 * option.widget.spacing()

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        super().paint(painter, option, index)
        if keys := index.data(KEYS):
            painter.setPen(QColor(theme().accent_ink if option.state & QStyle.StateFlag.State_Selected else theme().dim))
            painter.setFont(option.font)
            line = Qt.AlignmentFlag.AlignTop if self._beside(option, index) else Qt.AlignmentFlag.AlignBottom
            painter.drawText(option.rect.adjusted(0, px(LEAD), -px(PAD), -px(LEAD)), Qt.AlignmentFlag.AlignRight | line, keys)
