"""The strip of the Router stage: the head or the rack, and what is shown on the face."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QToolButton, QWidget

from app.look.flow import Flow
from geometry.saying import say

SHOWS = (
    ("left", say("Wood left"), say("Wood that the cutter cannot reach, hatched, with its depth: to be pared by hand."), True),
    ("waste", say("Holes"), say("Where the waste is drilled out first."), True),
    ("template", say("Template"), say("The edge that the follower rubs on."), True),
    ("tightest", say("Width"), say("Where each slot is narrowest."), False),
    ("grain", say("Grain"), say("Dashed heavy: the router runs against the grain or across it. Arrows: the way to feed."), False),
)
"""(group, word, help, on at first)"""


class RouterStrip(QWidget):
    """Buttons that stay down."""

    changed = Signal()
    rack_wanted = Signal(bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = Flow(self, (2, 0, 0, 0), 4)
        self.rack = self._button(row, say("Rack"), say("Your bits, bushes, drills and machines, in place of the head."))
        self.rack.toggled.connect(self._rack)
        row.add_gap(4)
        self.buttons: dict[str, QToolButton] = {}
        for key, word, about, on in SHOWS:
            button = self._button(row, word, about)
            button.setAccessibleName(say("Show: {what}", what=word))
            button.setChecked(on)
            button.toggled.connect(self.changed)
            self.buttons[key] = button

    @property
    def shown(self) -> set[str]:
        """The groups that are wanted."""
        return {key for key, button in self.buttons.items() if button.isChecked()}

    def _button(self, row: Flow, word: str, about: str) -> QToolButton:
        button = QToolButton(self, text=word, toolTip=about, checkable=True, objectName="small")
        row.addWidget(button)
        return button

    def _rack(self, on: bool) -> None:
        for button in self.buttons.values():
            button.setVisible(not on)
        self.rack_wanted.emit(on)
