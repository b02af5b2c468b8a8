"""Which piece is on the bench: the practice piece on scrap, or the real one."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.panels.forms.tabs import Tabs
from geometry.layout import PIECES, Piece
from geometry.saying import say


class Pieces(Tabs):
    """Sends the piece that is chosen."""

    picked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__((say("Practice piece"), say("Real piece")), parent, accessibleName=say("The piece on the bench"),
                         toolTip=say("Ticks, hours and readings are of the piece chosen here. No proposal moves what is done on the "
                                     "real piece, and a snag says what is drawn otherwise; the practice piece binds nothing."))
        self.chosen.connect(self._chosen)

    def show_piece(self, piece: Piece) -> None:
        """Show which piece it is; nothing is sent."""
        self.button(PIECES.index(piece)).setChecked(True)

    def _chosen(self, number: int) -> None:
        self.picked.emit(PIECES[number])
