"""The stages of the work along the top."""

from __future__ import annotations

from msgspec import Struct
from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QPushButton, QWidget

from app.look.elided import Elided
from app.look.flow import Flow
from app.look.plain import plain
from app.look.sizes import px
from geometry.saying import say

NAME = 230
"""Room for the name of the layout at 100 %, pixels, where the stages leave it no more; the rest is in its tip."""
LETTERS = 14
"""The least that is read of it before a stage goes to the next row."""
APART = 16
"""Pixels that a long name leaves free before the stages."""
UNSAVED = " •"


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


class _Name(Elided):
    """The layout's name, with a dot while it has unsaved changes: the dot moves nothing."""

    unsaved = False

    def sizeHint(self) -> QSize:
        hint = super().sizeHint()
        return QSize(min(hint.width(), px(NAME)) + self._dot(), hint.height())

    @property
    def shown(self) -> str:
        room = self.contentsRect().width() - self._dot()
        return self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room) + (UNSAVED if self.unsaved else "")

    def _dot(self) -> int:
        return self.fontMetrics().horizontalAdvance(UNSAVED)


class StageBar(QWidget):
    """Name of the layout on the left, stages in the middle, unit and history on the right."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="bar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._name = _Name(self, least=LETTERS)
        self._name.setObjectName("name")
        self._group = QButtonGroup(self, exclusive=True)
        row = Flow(self, (18, 8, 14, 8), 4)
        row.addWidget(self._name, gives_way=True)
        row.add_gap(keeps=APART)
        self._buttons: dict[str, QPushButton] = {}
        for number, stage in enumerate(STAGES, 1):
            button = QPushButton(stage.word, self, objectName="stage", checkable=True, clicked=self._clicked,
                                 toolTip=say("{what} (Alt+{number})", what=stage.about, number=number),
                                 focusPolicy=Qt.FocusPolicy.TabFocus)  # the mouse leaves the keyboard to what the stage shows
            button.setProperty("stage", stage.key)
            self._group.addButton(button)
            self._buttons[stage.key] = button
            row.addWidget(button)
        row.add_gap()

    def set_name(self, name: str, unsaved: bool) -> None:
        """Show the layout's name, with a dot while it has unsaved changes."""
        self._name.unsaved = unsaved
        self._name.setText(name)
        about = say("{name} (not saved)", name=name) if unsaved else name
        self._name.setToolTip(plain(about))
        self._name.setAccessibleName(about)
        self._name.update()

    def set_stage(self, key: str) -> None:
        """Mark a stage as the one on show."""
        self._buttons[key].setChecked(True)

    def _clicked(self) -> None:
        self.chosen.emit(self.sender().property("stage"))
