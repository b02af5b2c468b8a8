"""All signs of the program on one sheet, large and small, as buttons show them: to be looked at."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QFont, QPainter, QPixmap

from app.look.icons import SHAPES
from app.look.icons.icon import paint
from app.look.theme import Theme

COLUMNS, WIDTH, HEIGHT = 6, 230, 112
LARGE, SMALL = 80, (16, 20, 24, 32)


def icon_sheet(theme: Theme) -> QPixmap:
    """Each sign at 80 pixels and at those of buttons; below them pressed down, and dim."""
    rows = -(-len(SHAPES) // COLUMNS)
    sheet = QPixmap(COLUMNS * WIDTH, rows * HEIGHT)
    sheet.fill(QColor(theme.panel))
    painter = QPainter(sheet)
    painter.setFont(QFont("sans-serif", 8))
    plain = (theme.ink, theme.wood, theme.bore)
    for i, name in enumerate(SHAPES):
        x, y = i % COLUMNS * WIDTH + 10, i // COLUMNS * HEIGHT + 6
        painter.drawPixmap(x, y, paint(name, LARGE, *plain))
        right = x + LARGE + 10
        for size in SMALL:
            painter.drawPixmap(right, y + 4, paint(name, size, *plain))
            right += size + 5
        painter.fillRect(QRectF(x + 90, y + 44, 34, 30), QColor(theme.accent))
        painter.drawPixmap(x + 98, y + 50, paint(name, 18, theme.accent_ink, theme.dim, theme.accent_ink))
        painter.drawPixmap(x + 136, y + 50, paint(name, 18, theme.dim, theme.card, theme.dim))
        painter.setPen(QColor(theme.ink))
        painter.drawText(x, y + 98, name)
    painter.end()
    return sheet
