"""The words of the readings page: rows to fill, and what the readings say."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from geometry.layout import Accuracy, Headstock, Piece, Reading
from geometry.measured import Fit, Found, Joined, Off, drillings, offs, planned_value
from geometry.solids import Drilling
from geometry.units import LengthUnit, format_length


@dataclass(frozen=True, slots=True)
class Way:
    """One way of measuring: its words, and what it becomes in a reading."""

    words: str
    what: str
    how: str = ""


WAYS = (
    Way("x from the centreline", "x", "centreline"), Way("x from the bass edge of the blank", "x", "bass edge"),
    Way("x from the treble edge of the blank", "x", "treble edge"), Way("y from the nut line", "y"),
    Way("diameter", "diameter"), Way("depth", "depth"), Way("bores from the side: below the face", "below face"),
    Way("bores from the side: tilt", "tilt"), Way("between two holes: the wood left, outside jaws", "distance", "over the wood"),
    Way("between two holes: far walls, inside jaws", "distance", "over the walls"),
    Way("between two holes: over pins that fill them", "distance", "over pins"),
)


def length_words(mm: float, unit: LengthUnit, sign: bool = False) -> str:
    """A reading for the eye; decimal inches where the window shows fractions, which are too coarse here."""
    text = format_length(abs(mm) if sign else mm, "mm" if unit == "mm" else "in")
    return text if not sign or float(text) == 0 else ("+" if mm > 0 else "−") + text


def asked(layout: Headstock, way: Way) -> list[Reading]:
    """A reading to take for each hole that has such a measure, its planned value filled in; value 0."""
    known = drillings(layout)
    if way.what == "distance":
        pairs = [(a, b.id) for a, b in pairwise(known.values()) if a.of == b.of and a.hole != b.hole and a.upright and b.upright]
    else:
        pairs = [(d, None) for d in known.values() if _has(d, way.what)]
    empty = [Reading(piece="practice", drilling=d.id, what=way.what, how=way.how, other=other, value=0.0) for d, other in pairs]
    return [Reading(piece=one.piece, drilling=one.drilling, what=one.what, how=one.how, other=one.other, value=0.0,
                    planned=planned_value(layout, one, known)) for one in empty]


def _has(d: Drilling, what: str) -> bool:
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
    it was taken for, even when the layout has changed since."""
    by_key = {key_of(one): one for one in taken if one.piece == piece}
    known = drillings(layout)
    made = []
    for one in wanted:
        degrees = one.what == "tilt"
        found = by_key.get(key_of(one))
        aim = one.planned if found is None or found.planned is None else found.planned
        planned = f"{aim:.1f}°" if degrees else length_words(aim, unit) + (" mm" if unit == "mm" else '"')
        name = f"{one.drilling}  {known[one.drilling].operation}" if one.other is None else f"{one.drilling} to {one.other}"
        if found is None:
            made.append((name, planned, "", ""))
            continue
        off = Off(found, aim)
        shown = f"{found.value:.1f}°" if degrees else length_words(found.value, unit)
        by = f"{off.by:+.1f}°".replace("-", "−") if degrees else length_words(off.by, unit, True)
        made.append((name, planned, shown, f"{by} a slip?" if off.doubtful else by))
    return made


TITLES = {"mark": "Marking", "stop": "Depth stop", "tilt_degrees": "Table tilt"}


def shop_sentences(found: Sequence[Found], now: Accuracy, unit: LengthUnit) -> list[str]:
    """What the readings say of each source, against what the layout holds."""
    made = []
    for one in found:
        def words(value: float, field: str = one.field) -> str:
            return f"{value:.2f}°" if field == "tilt_degrees" else length_words(value, unit)
        line = (f"{TITLES[one.field]}: plus or minus {words(one.half_width)} (95 times in 100 the truth lies from {words(2 * one.low)} to "
                f"{words(2 * one.high)}), from {one.count} readings; the layout holds {words(getattr(now, one.field))}.")
        if not one.enough:
            line += " Too few to go by."
        made.append(line)
        if one.field == "stop" and one.enough and abs(one.mean) > one.half_width / one.count**0.5:
            made.append(f"Holes come out {words(abs(one.mean))} too {'deep' if one.mean > 0 else 'shallow'} on average: set the stop anew.")
    return made


def printer_sentence(fit: Fit | None) -> str:
    """Whether the printer's stretch explains the places, and what to do."""
    if fit is None or fit.chance is None:
        return "Measure x and y of five holes or more, far from each other: then a printer that stretches shows."
    if not fit.real:
        return f"No stretch of the printer shows ({_odds(fit.chance)} that as much comes by accident)."
    across, along = (100 * (1 + one) for one in fit.stretch)
    return (f"The printer's stretch explains the places ({_odds(fit.chance)} that as much comes by accident): what should be 100 mm came out "
            f"as {across:.2f} mm across the head and {along:.2f} mm along it. Measure the two bars of a printed page: if they say the "
            "same, correct the printer.")


def _odds(chance: float) -> str:
    """A chance in plain words."""
    if chance < 1e-4:
        return "less than 1 in 10,000"
    return f"about 1 in {1 / chance:,.0f}" if chance < 0.1 else f"about {100 * chance:.0f} in 100"


def fit_sentences(pairs: Sequence[Joined], unit: LengthUnit) -> list[str]:
    """Which joined holes take their part, and which do not."""
    if not pairs:
        return ["Measure places or distances of holes that one part joins: then it shows whether the part goes on."]
    wrong = [one for one in pairs if not one.fits]
    made = [f"{one.of}: {one.one} and {one.other} are {length_words(abs(one.off), unit)} too {'far apart' if one.off > 0 else 'near'}, the play is "
            f"{length_words(one.play, unit)}: the part does not go on as it is." for one in wrong]
    right = len(pairs) - len(wrong)
    return [*made, f"{right} of {len(pairs)} pairs of joined holes take their part."]


def off_of(layout: Headstock, piece: Piece) -> tuple[Off, ...]:
    """All readings of a piece against the plan."""
    return offs(layout, layout.book.readings, piece)
