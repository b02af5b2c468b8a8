"""A box of choices whose list is as wide as its longest word."""

from __future__ import annotations

from PySide6.QtWidgets import QComboBox

from app.look.sizes import px

MARGIN = 24
"""Pixels at 100 % of a row of the list beside its words."""


class Choice(QComboBox):
    """In a narrow column the box may shorten what is chosen, but in its list every word is read whole."""

    def showPopup(self) -> None:
        """Open the list, no narrower than its rows."""
        rows = self.view()
        rows.setMinimumWidth(rows.sizeHintForColumn(0) + px(MARGIN))
        super().showPopup()
