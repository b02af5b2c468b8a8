"""A card of the front page: a small picture of a layout and its name. It is a button."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QPushButton, QWidget

from app.look.face_picture import FacePicture
from app.look.plain import plain
from app.look.sizes import px, sizes
from app.look.theme import theme

SIZE = QSize(172, 224)
WORDS = 42
"""The whole card, and the height of its name in two rows, at 100 %, pixels."""


class Card(QPushButton):
    """Shows its name at once and its picture as soon as somebody brings it."""

    def __init__(self, name: str, about: str, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="card")
        self._name = name
        self._picture: FacePicture | None = None
        self.follow_sizes()
        self.setAccessibleName(name)
        self.setAccessibleDescription(about)
        self.setToolTip(plain(about))
        self.setAutoDefault(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    @property
    def drawn(self) -> bool:
        """Whether the picture is there."""
        return self._picture is not None

    def show_picture(self, picture: FacePicture) -> None:
        """Show the picture."""
        self._picture = picture
        self.update()

    def set_name(self, name: str, about: str) -> None:
        """Show another name, and a sentence as its tip."""
        self._name = name
        self.setAccessibleName(name)
        self.setAccessibleDescription(about)
        self.setToolTip(plain(about))
        self.update()

    def follow_sizes(self) -> None:
        """As large as the letters ask for."""
        self.setFixedSize(sizes().soft(SIZE.width()), sizes().soft(SIZE.height()) + self._room() - WORDS)

    def _room(self) -> int:
        """Room for the name in two rows, pixels."""
        return px(WORDS)

    def paintEvent(self, event) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        area = QRectF(self.rect()).adjusted(10, 10, -10, -self._room() - 2)
        if self._picture is not None:
            self._picture.paint(painter, area, theme())
        painter.setPen(QColor(theme().ink))
        words = self.rect().adjusted(8, self.height() - self._room(), -8, -4)
        painter.drawText(words, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._name)
