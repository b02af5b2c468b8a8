"""The stages of the work along the top."""

from __future__ import annotations

from msgspec import Struct
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QLabel, QPushButton, QWidget

from app.look.flow import Flow
from app.look.plain import plain
from app.look.sizes import px
from geometry.saying import say

NAME = 230
"""Room for the name of the layout at 100 %, pixels; the rest is in its tip."""


class Stage(Struct, frozen=True):
    """One stage: its word, its key with Alt, and a sentence on what is done there."""

    key: str
    word: str
    about: str


STAGES = (
    Stage("blank", say("Blank"), say("The wood, its ears, and the margins wanted.")),
    Stage("outline", say("Outline"), say("Draw the shape or import it.")),
    Stage("slots", say("Slots"), say("Openings for tuners through the side.")),
    Stage("tuners", say("Tuners"), say("Place hardware; every hole follows from it.")),
    Stage("strings", say("Strings"), say("The nut and where the strings leave it.")),
    Stage("router", say("Router"), say("What follows the template, and what fits.")),
    Stage("order", say("Order"), say("Step after step, and the piece at each of them.")),
    Stage("sheets", say("Sheets"), say("Papers at full size, to print and glue on.")),
    Stage("book", say("Job book"), say("Hours, money and notes, and what the next job will take.")),
)


class StageBar(QWidget):
    """Name of the layout on the left, stages in the middle, unit and history on the right."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("bar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._name, self._named = QLabel(self), ("", False)
        self._name.setObjectName("name")
        self._name.setTextFormat(Qt.TextFormat.PlainText)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        row = Flow(self, (18, 8, 14, 8), 4)
        row.addWidget(self._name)
        row.add_gap()
        self._buttons: dict[str, QPushButton] = {}
        for number, stage in enumerate(STAGES, 1):
            button = QPushButton(stage.word, self)
            button.setObjectName("stage")
            button.setCheckable(True)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # the mouse leaves the keyboard to what the stage shows
            button.setToolTip(say("{what} (Alt+{number})", what=stage.about, number=number))
            button.setProperty("stage", stage.key)
            button.clicked.connect(self._clicked)
            self._group.addButton(button)
            self._buttons[stage.key] = button
            row.addWidget(button)
        row.add_gap()

    def set_name(self, name: str, unsaved: bool) -> None:
        """Show the layout's name, with a dot while it has unsaved changes."""
        self._named = name, unsaved
        self._name.ensurePolished()
        short = self._name.fontMetrics().elidedText(name, Qt.TextElideMode.ElideRight, px(NAME))
        self._name.setMinimumWidth(self._name.fontMetrics().horizontalAdvance(f"{short} •"))  # the dot moves nothing
        self._name.setText(f"{short} •" if unsaved else short)
        self._name.setToolTip(plain(say("{name} (not saved)", name=name) if unsaved else name))

    def follow_sizes(self) -> None:
        """Shorten the name anew for letters of another size."""
        self.set_name(*self._named)

    def set_stage(self, key: str) -> None:
        """Mark a stage as the one on show."""
        self._buttons[key].setChecked(True)

    def _clicked(self) -> None:
        self.chosen.emit(self.sender().property("stage"))
