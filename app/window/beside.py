"""The drawing, and the head in space beside it when it is wanted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QWidget

from app.panels.forms.stack import Stack
from geometry.checks import Snag
from geometry.layout import Headstock

if TYPE_CHECKING:
    from app.canvas.solid_view import SolidView


class Beside(QSplitter):
    """Owns the stack of centres and the solid view, which is made when it is first wanted."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent, childrenCollapsible=False)
        self.paper = Stack(self)
        self.addWidget(self.paper)
        self.paper.currentChanged.connect(self._place)
        self.solid: SolidView | None = None
        self._wanted = False

    def show_solid(self, shown: bool) -> None:
        """Show the head in space, or put it away. Beside a centre that is not the canvas it stays away."""
        self._wanted = shown
        if shown and self.solid is None:
            from app.canvas.solid_view import SolidView
            self.solid = SolidView(self)
            self.addWidget(self.solid)
        self._place()

    def _place(self) -> None:
        if self.solid is not None:
            self.solid.setVisible(self._wanted and self.paper.currentIndex() == 0)

    def show_layout(self, layout: Headstock, snags: tuple[Snag, ...], held: tuple[str, ...]) -> None:
        """Keep the head in space as the drawing is, if it is on show."""
        if self.solid is not None and not self.solid.isHidden():
            self.solid.show_layout(layout, snags, held)
