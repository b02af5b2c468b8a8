"""What must be held, in words: how fine each source, where, and what a proposed move gains."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from geometry.accuracy import TITLES, Aim, Need, Proposal, Requirements, place_words, rise_words, success_words
from geometry.accuracy.told import is_simulated
from geometry.checks.snags import SPOILS, Snag
from geometry.checks.words import first
from geometry.saying import count, number, say
from geometry.units import LACK, MM_PER_INCH, LengthUnit, format_close, format_length
from geometry.vectors import norm

AIMS: tuple[tuple[Aim, str], ...] = (("sound", say("comes out sound")), ("within", say("keeps every margin")))
MANY = 4
"""Places named at most; then it says how many more there are."""


def aim_words(aim: Aim) -> str:
    """What is asked of the headstock: `comes out sound`."""
    return dict(AIMS)[aim]


def amount(need: Need, value: float, unit: LengthUnit) -> str:
    """`±0.15 mm`, `±0.5 mm in 50 mm`, `±0.25°`, `±0.1 %`: a half-width, never told wider than it may be."""
    if need.unit == "mm":
        return f"±{_half_width(value, unit)}"
    if need.unit == "mm per 50 mm":
        return say("±{far} in {length}", far=_half_width(value, unit),
                   length=format_length(50.0, "mm" if unit == "mm" else "in", mark=True))
    return f"±{number(value, 'g')}°" if need.unit == "degrees" else f"±{number(value, 'g')} %"


def _half_width(mm: float, unit: LengthUnit) -> str:
    """The mm as they are: hundredths already. In inches ten-thousandths, a hundredth of a mm being about four of them."""
    if unit == "mm":
        return format_length(mm, mark=True)
    return format_length(math.floor((mm + LACK) / MM_PER_INCH * 10_000) / 10_000 * MM_PER_INCH, "in", 4, mark=True)


def places(where: Sequence[str]) -> str:
    """The features named, or the first few and how many more."""
    where = [place_words(one) for one in where]
    if len(where) <= MANY:
        return ", ".join(where)
    return say("{names} and {n} more", names=", ".join(where[:MANY - 1]), n=len(where) - MANY + 1)


def need_row(need: Need, unit: LengthUnit) -> tuple[str, str, str, str]:
    """(what, as now, needed, where) for a table."""
    return first(TITLES[need.source]), amount(need, need.now, unit), amount(need, need.wanted, unit), \
        places(need.where)


def answer_words(found: Requirements, trials: int, unit: LengthUnit) -> str:
    """The answer in one or two sentences; what is to be held stands in the table."""
    now = success_words(found.now, trials)
    what = aim_words(found.aim)
    if not found.possible:
        pairs = "; ".join(" – ".join(pair) for pair in found.blocked[:3])
        return say("Now the chance that it {aim} is {now}. Even ten times finer work does not reach {wanted}: {what} has to "
                   "change.",
                   aim=what, now=now, wanted=wanted_words(found.wanted), what=pairs or say("the layout"))
    if not found.needs:
        said = say("Nothing has to be finer: as you work now, the chance that it {aim} is {now}.", aim=what, now=now)
        if found.spare > 1:
            said += " " + say("Everything could be {times:g} times rougher.", times=found.spare)
        return said
    said = say("Now the chance that it {aim} is {now}. Hold what follows, all of it and only there, and it is {then}.",
               aim=what, now=now, then=success_words(found.reached, trials))
    if found.alone:
        ways = [f"{TITLES[n.source]} {amount(n, n.wanted, unit)}" for n in found.alone]
        said += " " + say("One alone would do as well: {ways}.", ways=say(", or ").join(ways))
    return said


def left_out_words(snags: Iterable[Snag]) -> str:
    """That the layout has what spoils the work and no chance tells of, as accuracy does not cure it; empty without any."""
    spoiling = sum(snag.grade == SPOILS and not is_simulated(snag) for snag in snags)
    return count(spoiling, "As drawn one snag spoils the work however finely you work: what follows leaves it out.",
                 "As drawn {n} snags spoil the work however finely you work: what follows leaves them out.") if spoiling else ""


def wanted_words(chance: float) -> str:
    """`99 in 100`, `995 in 1,000`."""
    whole = 100 if abs(chance * 100 - round(chance * 100)) < 1e-9 else 1000
    return say("{n:,} in {whole:,}", n=round(chance * whole), whole=whole)


def proposal_words(found: Proposal, trials: int, unit: LengthUnit) -> str:
    """What moving would gain, and by how much it moves what."""
    if not found.moves:
        return say("No move of a tuner that you left free helps.")
    far = format_close(max(norm(by) for _, by in found.moves), unit, mark=True)
    given = {"far": far, "aim": aim_words(found.aim),
             "gain": rise_words(found.before.chance, found.after.chance, trials)}
    if len(found.moves) == 1:
        return say("Moving {tuner} by {far} brings the chance that it {aim} {gain}. It is shown dashed on the drawing.",
                   tuner=found.moves[0][0], **given)
    return say("Moving {n} tuners by up to {far} brings the chance that it {aim} {gain}. It is shown dashed on the drawing.",
               n=len(found.moves), **given)
