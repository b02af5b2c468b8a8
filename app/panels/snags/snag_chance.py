"""The chance that stands on a snag's card: what the shop's own errors make of its clearance, while that is known."""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec import Struct
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen

from app.look.painting import paint_picture
from app.look.sizes import lettered
from app.look.theme import theme
from app.panels.snags.chance_words import Chances, card_words
from geometry.accuracy.told import is_simulated
from geometry.checks import Snag
from geometry.drawing.chances import spread_picture
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from geometry.accuracy import Clearance

PICTURE = (100.0, 20.0)
"""Size of the histogram in mm of its display list."""
TALL = 56
"""Height of the histogram on the card at 100 %, pixels."""
FIGURES = 11
"""Letters in it."""


class SnagChance(Struct, frozen=True):
    """What is known of the chance of one snag: `clearance` is None while it is being worked out."""

    clearance: Clearance | None
    trials: int

    def words(self, unit: LengthUnit) -> str:
        """What stands below the picture, and what a screen reader says."""
        if self.clearance is None:
            return say("Chance: being worked out…")
        return card_words(self.clearance, self.trials, unit)[2]


def chance_of(snag: Snag, chances: Chances) -> SnagChance | None:
    """The chance of a snag of the layout on show; None for a snag that no error of the shop changes.

    What is known of an older layout is never told.
    """
    if not is_simulated(snag) or chances.trouble:
        return None
    if not chances.fresh or chances.simulation is None:
        return SnagChance(None, 0)
    found = chances.simulation.of(snag)
    return None if found is None else SnagChance(found, chances.simulation.trials)


def paint_chance(painter: QPainter, chance: SnagChance, box: QRectF, font: QFont, unit: LengthUnit) -> None:
    """The histogram in its box, or an empty one while it is being worked out."""
    if chance.clearance is None:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(theme().line), 1, Qt.PenStyle.DashLine))
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4)
        return
    small = lettered(font, FIGURES)
    small.setBold(False)
    paint_picture(painter, spread_picture(chance.clearance, *PICTURE, unit=unit), PICTURE, box, theme(), small)
