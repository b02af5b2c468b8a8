"""The words of the readings page: rows to fill, and what the readings say."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from msgspec import Struct
from msgspec.structs import replace

from geometry.layout import Accuracy, Headstock, Piece, Reading
from geometry.measured import Fit, Found, Joined, Off, at_square_edge, drillings, planned_value
from geometry.saying import count, number, say
from geometry.solids import Drilling
from geometry.terms import term
from geometry.units import LengthUnit, format_angle, format_length


class Way(Struct, frozen=True):
    """One way of measuring: its words, and what it becomes in a reading."""

    words: str
    what: str
    how: str = ""


WAYS = (
    Way(say("x from the centreline"), "x", "centreline"), Way(say("x from the bass edge of the blank"), "x", "bass edge"),
    Way(say("x from the treble edge of the blank"), "x", "treble edge"), Way(say("y from the nut line"), "y"),
    Way(say("diameter"), "diameter"), Way(say("depth"), "depth"), Way(say("bores from the side: below the face"), "below face"),
    Way(say("bores from the side: tilt"), "tilt"),
    Way(say("bores from the side, at the square edge: y from the nut line"), "y", "square edge"),
    Way(say("bores from the side, from the square edge: depth"), "depth", "square edge"),
    Way(say("between two holes: the wood left, outside jaws"), "distance", "over the wood"),
    Way(say("between two holes: far walls, inside jaws"), "distance", "over the walls"),
    Way(say("between two holes: over pins that fill them"), "distance", "over pins"),
)


def length_words(mm: float, unit: LengthUnit, sign: bool = False, mark: bool = False) -> str:
    """A reading for the eye, in mm with its unit when marked; decimal inches where the window shows fractions, which are too
    coarse here."""
    text = format_length(abs(mm) if sign else mm, "mm" if unit == "mm" else "in", mark=mark or unit != "mm").replace("-", "−")
    return text if not sign or text in ("0", '0"') else ("+" if mm > 0 else "−") + text


def degree_words(degrees: float, sign: bool = False) -> str:
    """An angle of a reading to a tenth, with a sign where it is a difference; never `-0.0`."""
    text = format_angle(math.radians(abs(degrees) if sign else degrees))
    return text if not sign or text == format_angle(0.0) else ("+" if degrees > 0 else "−") + text


def asked(layout: Headstock, way: Way) -> list[Reading]:
    """A reading to take for each hole that has such a measure, its planned value filled in; value 0."""
    known = drillings(layout)
    if way.what == "distance":
        pairs = [(a, b.id) for a, b in pairwise(known.values()) if a.of == b.of and a.hole != b.hole and a.upright and b.upright]
    else:
        pairs = [(d, None) for d in known.values() if _has(d, way)]
    empty = [Reading(piece="practice", drilling=d.id, what=way.what, how=way.how, other=other, value=0.0) for d, other in pairs]
    return [replace(one, planned=planned_value(layout, one, known)) for one in empty]


def not_asked(wanted: Sequence[Reading], taken: Sequence[Reading], piece: Piece, way: Way) -> list[Reading]:
    """Readings of a measure that were taken on a piece and are asked for no more: their hole is gone, or has no such measure now."""
    known = {key_of(one) for one in wanted}
    return [one for one in taken if one.piece == piece and (one.what, one.how) == (way.what, way.how) and key_of(one) not in known]


def _has(d: Drilling, way: Way) -> bool:
    what = way.what
    if way.how == "square edge":
        return at_square_edge(d, what)
    if what == "x":
        return d.upright
    if what in ("below face", "tilt"):
        return not d.upright
    return what != "depth" or not d.through


def key_of(reading: Reading) -> tuple[str, str, str, str | None]:
    """What a reading is of, whichever piece."""
    return reading.drilling, reading.what, reading.how, reading.other


def reading_cells(layout: Headstock, wanted: Sequence[Reading], taken: Sequence[Reading], piece: Piece, unit: LengthUnit) -> list[tuple[str, ...]]:
    """Hole, planned, measured, off; a doubtful reading is marked with words. A reading that was taken stands beside the plan
    it was taken for, even when the layout has changed since, and the hole is gone."""
    by_key = {key_of(one): one for one in taken if one.piece == piece}
    known = drillings(layout)
    made = []
    for one in wanted:
        degrees = one.what == "tilt"
        found = by_key.get(key_of(one))
        aim = one.planned if found is None or found.planned is None else found.planned
        planned = "" if aim is None else degree_words(aim) if degrees else length_words(aim, unit, mark=True)
        there = all(id in known for id in (one.drilling, one.other) if id is not None)
        name = (say("{one} to {other}", one=one.drilling, other=one.other) if one.other is not None else
                f"{one.drilling}  {term(known[one.drilling].operation)}" if there else one.drilling)
        if not there:
            name = f"{name}  {say('old')}"
        if found is None:
            made.append((name, planned, "", ""))
            continue
        shown = degree_words(found.value) if degrees else length_words(found.value, unit)
        if aim is None:
            made.append((name, planned, shown, ""))
            continue
        off = Off(found, aim)
        by = degree_words(off.by, True) if degrees else length_words(off.by, unit, True)
        made.append((name, planned, shown, say("{by} a slip?", by=by) if off.doubtful else by))
    return made


TITLES = {"mark": say("Marking"), "stop": say("Depth stop"), "tilt_degrees": say("Table tilt")}


def shop_sentences(found: Sequence[Found], now: Accuracy, unit: LengthUnit) -> list[str]:
    """What the readings say of each source, against what the layout holds."""
    made = []
    for one in found:
        def words(value: float, field: str = one.field) -> str:
            return f"{number(value, '.2f')}°" if field == "tilt_degrees" else length_words(value, unit, mark=True)
        line = say("{title}: plus or minus {half_width} (95 times in 100 the truth lies from {low} to {high}), from "
                   "{readings}; the layout holds {held}.",
                   title=TITLES[one.field], half_width=words(one.half_width), low=words(2 * one.low),
                   high=words(2 * one.high), readings=count(one.count, "{n} reading", "{n} readings"), held=words(getattr(now, one.field)))
        if not one.enough:
            line += " " + say("Too few to go by.")
        made.append(line)
        if one.field == "stop" and one.enough and abs(one.mean) > one.half_width / one.count**0.5:
            by = words(abs(one.mean))
            made.append(say("Holes come out {by} too deep on average: set the stop anew.", by=by) if one.mean > 0 else
                        say("Holes come out {by} too shallow on average: set the stop anew.", by=by))
    return made


def printer_sentence(fit: Fit | None) -> str:
    """Whether the printer's stretch explains the places, and what to do."""
    if fit is None or fit.chance is None:
        return say("Measure x and y of five holes or more, far from each other: then a printer that stretches shows.")
    if not fit.real:
        return say("No stretch of the printer shows ({odds} that chance alone does as much).", odds=_odds(fit.chance))
    across, along = (100 * (1 + one) for one in fit.stretch)
    return say("The printer's stretch explains the places ({odds} that chance alone does as much): what should be 100 "
               "mm came out as {across:.2f} mm across the head and {along:.2f} mm along it. Measure the two bars of a "
               "printed page: if they say the same, correct the printer.",
               odds=_odds(fit.chance), across=across, along=along)


def _odds(chance: float) -> str:
    """A chance in plain words."""
    if chance < 1e-4:
        return say("less than 1 in 10,000")
    return (say("about 1 in {n:,.0f}", n=1 / chance) if chance < 0.1 else
            say("about {n:.0f} in 100", n=100 * chance))


def fit_sentences(pairs: Sequence[Joined], unit: LengthUnit) -> list[str]:
    """Which joined holes take their part, and which do not."""
    if not pairs:
        return [say("Measure places or distances of holes that one part joins: then it shows whether the part goes on.")]
    wrong = [one for one in pairs if not one.fits]
    made = []
    for one in wrong:
        given = {"part": one.of, "one": one.one, "other": one.other, **_told_apart(abs(one.off), one.play, unit)}
        made.append(say("{part}: {one} and {other} are {by} too far apart, the play is {play}: the part does not go on as it "
                        "is.", **given) if one.off > 0 else
                    say("{part}: {one} and {other} are {by} too near, the play is {play}: the part does not go on as it is.",
                        **given))
    right = len(pairs) - len(wrong)
    return [*made, count(right, "{n} of {pairs} takes its part.", "{n} of {pairs} take their part.",
                         pairs=count(len(pairs), "{n} pair of joined holes", "{n} pairs of joined holes"))]


def _told_apart(by: float, play: float, unit: LengthUnit) -> dict[str, str]:
    """What is off and the play, with as many decimals as it takes to see that they differ."""
    exact: LengthUnit = "mm" if unit == "mm" else "in"
    usual = 2 if unit == "mm" else 3
    for decimals in (usual, usual + 1, usual + 2):
        told = {"by": format_length(by, exact, decimals, mark=True), "play": format_length(play, exact, decimals, mark=True)}
        if told["by"] != told["play"]:
            break
    return told


def what_words(reading: Reading) -> str:
    """What a reading is of, as the choice of measures has it: `bass 1.1.1 (diameter)`."""
    alike = [way for way in WAYS if way.what == reading.what]
    words = next((way for way in alike if way.how == reading.how), alike[0]).words
    hole = reading.drilling if reading.other is None else say("{one} to {other}", one=reading.drilling, other=reading.other)
    return f"{hole} ({words})"
