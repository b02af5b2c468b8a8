"""What the window says of chances: a line for the whole headstock, and the lines of one clearance's card."""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec import Struct

from geometry import accuracy  # and not its names: the words are loaded when they are said
from geometry.checks import KINDS
from geometry.saying import say
from geometry.units import LengthUnit, format_close

if TYPE_CHECKING:
    from geometry.accuracy import Clearance, Simulation

MODEL = say("A model with the figures for the shop that stand in the Blank stage: it knows nothing of slips, knots or "
            "a slipping vice.")


class Chances(Struct, frozen=True):
    """What is known of the layout on show: its simulation (None before the first), how far the next one is, an error.

    `fresh` tells whether the simulation is of the very layout on show; `spoiled` counts the snags that spoil the work
    as drawn, `uncounted` the tight ones of a kind that is not simulated. `bare`: nothing is drawn that could go wrong.
    """

    simulation: Simulation | None = None
    fresh: bool = False
    progress: float | None = None
    trouble: str = ""
    spoiled: int = 0
    uncounted: int = 0
    bare: bool = False


def whole_words(chances: Chances) -> tuple[str, str]:
    """(a line, a longer tip) on whether the whole headstock comes out."""
    found = chances.simulation
    if chances.trouble:
        return say("Chances: {trouble}", trouble=chances.trouble), ""
    tip = MODEL if found is None else say(
        "Of {trials:,} headstocks built as true as your shop works. Sound: no wood is broken through that costs the "
        "piece: {sound}. Every margin kept: {within}. {model}",
        trials=found.trials, sound=accuracy.success_words(found.sound, found.trials),
        within=accuracy.success_words(found.within, found.trials), model=MODEL)
    if chances.spoiled:
        # A chance beside it would be the last layout's while one drags, or leave out what is not simulated.
        return say("Does not come out sound as drawn"), tip
    if chances.bare:
        return say("Comes out sound: told once a tuner, a hole or a slot is drawn"), MODEL
    if found is None or not (chances.fresh or found.sound):
        # The last layout's "hardly ever" would frighten beside one that has just been cured.
        return say("Comes out sound: being worked out…"), MODEL
    line = say("Comes out sound: {chance}", chance=accuracy.short_success_words(found.sound, found.trials))
    chance = accuracy.short_success_words(found.within, found.trials)
    within = (say("every other margin kept: {chance}", chance=chance) if chances.uncounted else
              say("every margin kept: {chance}", chance=chance))
    return f"{line} · {within}", tip


def card_words(clearance: Clearance, trials: int, unit: LengthUnit) -> tuple[str, str, str]:
    """(title, between which, the chances and their cause) of one clearance."""
    kind = KINDS.get(clearance.kind)
    title = clearance.kind if kind is None else kind.title
    needed = format_close(clearance.needed, unit, 2, mark=True)
    lines = []
    if clearance.spoils:
        lines.append(say("Spoils the work: {chance}.", chance=accuracy.chance_words(clearance.spoiled, trials)))
    elif clearance.spoiled > 0:
        lines.append(say("Leaves a mark that does not cost the piece: {chance}.",
                         chance=accuracy.chance_words(clearance.spoiled, trials)))
    if clearance.needed > 0:
        lines.append(say("Under its margin of {needed}: {chance}.", needed=needed,
                         chance=accuracy.chance_words(clearance.short, trials)))
    lines.append(accuracy.cause_words(clearance))
    if clearance.corner and clearance.spoiled > 0:
        lines.append(say("Below zero it tells how deep the deepest corner is in; the shortest way out may be another."))
    return title, " – ".join(clearance.between), "\n".join(lines)
