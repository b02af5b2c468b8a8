"""The panel on the right as the window knows it: what stands in it is made when it is first needed."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QSize, Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.look.descendants import tell
from app.look.sizes import keep, sizes
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.panels.side_inside import SideInside
    from app.panels.snags.chance_words import Chances

WIDTH = 420
"""Width of the panel at 100 %, pixels."""


class SidePanel(QWidget):
    """An empty ground of the panel's size, and all that the window says to it and hears from it.

    Rows, section and lists are `inside`. To load and make them takes a tenth of a start, and a drag of the drawing needs
    none of them: whoever asks for `inside` has them made, and what the panel was told before is told to them then.
    """

    edited = Signal(str, object)
    refused = Signal(str)
    snag_chosen = Signal(object)
    cure_wanted = Signal(object)
    """the Snag whose move is to be made"""
    cure_pointed = Signal(object)
    """the Snag whose button is pointed at, or None"""
    chance_chosen = Signal(object)
    hold_asked = Signal()
    """what must be held is to be shown"""
    change_wanted = Signal(int)
    """the number of the step to go to"""
    changes_shown = Signal(bool)
    """the list of changes came to the front, or went"""

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._unit = unit
        self._with_snags = True
        self._chances: Chances | None = None
        self._divided: QByteArray | None = None
        self._rooms: list[QWidget] = []
        self._inside: SideInside | None = None
        self.fill: Callable[[], None] | None = None
        """fills what stands in the panel for whoever asks for it before it was filled; None when nobody need do so"""
        self._whole = QVBoxLayout(self)
        self._whole.setContentsMargins(0, 0, 0, 0)
        keep(self, panel_width=WIDTH - 80)

    @property
    def made(self) -> bool:
        """Whether there is anything in the panel yet."""
        return self._inside is not None

    @property
    def inside(self) -> SideInside:
        """What stands in the panel; made and filled if need be, on show with the panel."""
        if self._inside is None:
            self.make()
            self._inside.show()
        if self.fill is not None:
            fill, self.fill = self.fill, None
            fill()
        return self._inside

    def make(self) -> None:
        """Make what stands in the panel and keep it hidden, to be filled before it is shown."""
        from app.panels.side_inside import SideInside  # here: most of what a panel needs is loaded with it

        inside = self._inside = SideInside(self._unit)
        inside.hide()
        self._whole.addWidget(inside)  # made without a parent: it is styled once
        if self._divided is not None:
            inside.restoreState(self._divided)
        inside.show_snags(self._with_snags)
        for panel in self._rooms:
            inside.add_room(panel)
        if self._chances is not None:
            inside.show_chances(self._chances)
        for heard, told in ((inside.edited, self.edited), (inside.refused, self.refused), (inside.chosen, self.snag_chosen),
                            (inside.snags.cure_wanted, self.cure_wanted), (inside.snags.cure_pointed, self.cure_pointed),
                            (inside.chances.chosen, self.chance_chosen), (inside.chances.asked, self.hold_asked),
                            (inside.changes.wanted, self.change_wanted), (inside.changes_shown, self.changes_shown)):
            heard.connect(told)

    def sizeHint(self) -> QSize:
        return QSize(sizes().soft(WIDTH), 800)

    def divide(self, state: QByteArray) -> None:
        """Divide the panel as it was when `state` was taken."""
        self._divided = state
        if self._inside is not None:
            self._inside.restoreState(state)

    def add_room(self, panel: QWidget) -> None:
        """Take in the panel of a stage, to be shown later."""
        self._rooms.append(panel)
        if self._inside is not None:
            self._inside.add_room(panel)

    def show_snags(self, shown: bool) -> None:
        """Keep the list of snags below, or give its room away."""
        self._with_snags = shown
        if self._inside is not None:
            self._inside.show_snags(shown)

    @property
    def shows_changes(self) -> bool:
        """Whether the list of changes is on show: it stays so on every stage."""
        return self._inside is not None and self._inside.shows_changes

    def show_chances(self, chances: Chances) -> None:
        """Show how likely the whole comes out, and where it may not."""
        self._chances = chances
        if self._inside is not None:
            self._inside.show_chances(chances)

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit."""
        self._unit = unit
        for part in self._rooms if self._inside is None else (self._inside,):
            tell(part, "set_unit", unit)
