"""A part of a panel that is opened and shut by its heading."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QToolButton, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.plain import plain
from app.look.sizes import px

BESIDE = 34
"""Room for the triangle and the margins of the heading at 100 %, pixels."""


class Fold(QWidget):
    """A heading with a triangle, and what it hides."""

    def __init__(self, body: QWidget, opened: bool = False, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._button = QToolButton(self, objectName="fold", checkable=True,
                                   toolButtonStyle=Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self._button.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)  # a long heading widens no panel
        self._button.toggled.connect(self._toggled)
        self._body = body
        body.setParent(self)
        filled(QVBoxLayout(self), self._button, body, margins=(0, 0, 0, 0), gap=4)
        self._button.setChecked(opened)
        self._toggled(opened)

    def set_title(self, text: str) -> None:
        """Another heading."""
        self._button.setToolTip(plain(text))
        self._button.setAccessibleName(text)
        self._shorten()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._shorten()

    def _shorten(self) -> None:
        """Shorten the heading where there is no room for it; its tip has it whole."""
        self._button.ensurePolished()
        words = self._button.accessibleName()
        room = self.width() - px(BESIDE)
        shown = self._button.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, room)
        if shown != self._button.text():
            self._button.setText(shown)

    @property
    def opened(self) -> bool:
        return self._button.isChecked()

    def open(self) -> None:
        """Open it."""
        self._button.setChecked(True)

    def _toggled(self, on: bool) -> None:
        self._button.setArrowType(Qt.ArrowType.DownArrow if on else Qt.ArrowType.RightArrow)
        self._body.setVisible(on)
