"""What the window says of chances: a line for the whole headstock, and the lines of one clearance's card."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from geometry.accuracy.words import cause_words, chance_words, success_words
from geometry.checks import KINDS, CheckResult
from geometry.units import LengthUnit, format_length

if TYPE_CHECKING:
    from geometry.accuracy import Clearance, Simulation

MODEL = ("A model with your own figures for the shop, set in the Blank stage: it knows nothing of slips, knots "
         "or a slipping vice.")


@dataclass(frozen=True)
class Chances:
    """What is known of the layout on show: its simulation (None before the first), how far the next one is, an error.

    `fresh` tells whether the simulation is of the very layout on show; `spoiled` counts the snags that spoil the work
    as drawn.
    """

    simulation: Simulation | None = None
    fresh: bool = False
    progress: float | None = None
    trouble: str = ""
    spoiled: int = 0


def whole_words(chances: Chances) -> tuple[str, str]:
    """(a line, a longer tip) on whether the whole headstock comes out."""
    found = chances.simulation
    if chances.trouble:
        return _tr("Chances: {}").format(chances.trouble), ""
    if found is None:
        return _tr("Comes out sound: being worked out…"), MODEL
    within = success_words(found.within, found.trials)
    tip = _tr("Of {:,} headstocks built in your shop's accuracy. Sound: no wood is broken through that costs the "
              "piece: {}. Every margin kept: {}. {}").format(
        found.trials, success_words(found.sound, found.trials), within, MODEL)
    if chances.spoiled:
        line = _tr("Not sound as drawn: {} that spoil the work").format(_snags(chances.spoiled))
    else:
        line = _tr("Comes out sound: {}").format(_short(success_words(found.sound, found.trials)))
    return line + " · " + _tr("every margin kept: {}").format(_short(within)), tip


def card_words(clearance: Clearance, trials: int, unit: LengthUnit) -> tuple[str, str, str]:
    """(title, between which, the chances and their cause) of one clearance."""
    kind = KINDS.get(clearance.kind)
    title = clearance.kind if kind is None else kind.title
    needed = format_length(clearance.needed, unit, mark=True)
    lines = []
    if clearance.spoils:
        lines.append(_tr("Spoils the work: {}.").format(chance_words(clearance.spoiled, trials)))
    elif clearance.spoiled > 0:
        lines.append(_tr("Leaves a mark that does not cost the piece: {}.").format(
            chance_words(clearance.spoiled, trials)))
    if clearance.needed > 0:
        lines.append(_tr("Under its margin of {}: {}.").format(needed, chance_words(clearance.short, trials)))
    lines.append(cause_words(clearance))
    return title, " – ".join(clearance.between), "\n".join(lines)


def _snags(count: int) -> str:
    return _tr("one snag") if count == 1 else _tr("{} snags").format(count)


def _short(words: str) -> str:
    return words.partition(" (")[0]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Chances", text)
