"""The page of chances beside the snags: the list, what it is not, and the way to what must be held."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QProgressBar, QPushButton, QVBoxLayout, QWidget

from app.look.filled import filled, keep_room
from app.look.flow import Flow
from app.look.paragraph import paragraph, restyle
from app.panels.snags.chance_list import ChanceList
from app.panels.snags.chance_words import MODEL, Chances, whole_words
from geometry.saying import say
from geometry.units import LengthUnit


class ChanceLine(QWidget):
    """One line on the whole headstock, with a thin bar while it is worked out."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = paragraph(self, textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse)
        self._bar = QProgressBar(self, minimum=0, maximum=100, textVisible=False, accessibleName=say("Chances being worked out"))
        self._bar.setFixedHeight(5)
        filled(QVBoxLayout(self), self._words, keep_room(self._bar), margins=(0, 0, 12, 0), gap=3)
        self.show_chances(Chances())

    @property
    def text(self) -> str:
        """What the line says."""
        return self._words.text()

    def show_chances(self, chances: Chances) -> None:
        """Say how likely the whole comes out; dim while that is of an older layout."""
        line, tip = whole_words(chances)
        self._words.setText(line)
        if self._words.toolTip() != tip:
            self._words.setToolTip(tip)
        restyle(self._words, "" if chances.fresh else "dim")
        self._bar.setVisible(chances.progress is not None)
        self._bar.setValue(round(100 * (chances.progress or 0.0)))


class ChancePage(QWidget):
    """The list of chances with a word before and a button after."""

    chosen = Signal(object)
    asked = Signal()
    """`What must I hold?` was pressed"""

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._unit = unit
        self._chances = Chances()
        self.list = ChanceList(self)
        self.list.chosen.connect(self.chosen)
        self._none = paragraph(self, say("No clearance came under its margin in any trial."))
        about = QLabel(say("A model, with the shop's figures of the Blank stage"), self, objectName="dim", toolTip=MODEL)
        self.ask = QPushButton(say("What must I hold?"), self,
                               toolTip=say("Which accuracy is needed where, and what moving a tuner would gain."))
        self.ask.clicked.connect(self.asked)
        foot = filled(Flow(margins=(0, 0, 12, 0)), self.ask, about)
        filled(QVBoxLayout(self), self._none, (self.list, 1), foot, margins=(0, 0, 0, 0), gap=6)
        self.show_chances(self._chances)

    def show_chances(self, chances: Chances) -> None:
        """Show the chances of the layout; the list is left alone when its simulation is the same."""
        if chances.simulation is not self._chances.simulation:
            self.list.show_simulation(chances.simulation, self._unit)
        self._chances = chances
        self._none.setVisible(chances.simulation is not None and not chances.simulation.clearances)

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit."""
        self._unit = unit
        self.list.show_simulation(self._chances.simulation, unit)
