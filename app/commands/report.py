"""What `check` says about a layout: as data for other programs and as lines for the maker."""

from collections.abc import Iterator

from msgspec import to_builtins

from geometry.checks.snags import GRADES, NOTE, SPOILS, TIGHT, CheckResult, Snag
from geometry.cures import curable
from geometry.saying import count, say
from geometry.solids import Drilling
from geometry.terms import term

LOCATING = "locating"
DIGITS = 6
"""Decimals of a number in the report: a millionth of a millimetre, the tolerance of the checks."""


def check_report(result: CheckResult) -> dict:
    """The result in builtin types, lengths in mm (a snag measured in something else carries its `unit`).

    `holes` has one entry for each trip of a drill (a counterbore and its bore
    are two, with the same `hole`), `pins` the same for the locating pins, and
    `there` for holes that are in the blank already; the counts leave both out.
    """
    drillings = [drilling for hole in result.holes for drilling in hole.drillings]
    return {
        "snags": [_snag(snag) for snag in result.snags],
        "holes": [_drilling(drilling) for drilling in drillings if drilling.role != LOCATING and not drilling.there],
        "pins": [_drilling(drilling) for drilling in drillings if drilling.role == LOCATING],
        "there": [_drilling(drilling) for drilling in drillings if drilling.there],
        "counts": {
            "holes": result.counts.holes,
            "counterbores": result.counts.counterbores,
            "drilling": result.counts.drilling,
            "pins": result.counts.pins,
        },
    }


def check_lines(name: str, result: CheckResult) -> Iterator[str]:
    """The result as lines of text: the counts, how many snags of each grade, then each snag, worst first."""
    counts = result.counts
    yield name
    kinds = (
        count(counts.holes, "{n} hole", "{n} holes"),
        count(counts.counterbores, "{n} counterbore", "{n} counterbores"),
        count(counts.drilling, "{n} drilling", "{n} drillings"),
        count(counts.pins, "{n} locating pin", "{n} locating pins"),
    )
    yield ", ".join(kinds) + "."
    yield summary(result)
    unsought = sum(snag.cured is None and curable(snag) for snag in result.snags)
    if unsought:
        yield count(unsought, "For {n} of them no move was sought that cures it: mend the others first, then check again.",
                    "For {n} of them no moves were sought that cure them: mend the others first, then check again.")
    width = max(len(term(grade)) for grade in GRADES)
    for snag in result.snags:
        x, y, z = snag.where
        yield ""
        yield f"{term(snag.grade).ljust(width)}  {snag.text}"
        if snag.cure:
            yield f"{' ' * width}  " + say("Cure: {cure}", cure=snag.cure)
        yield f"{' ' * width}  " + say("Look at x {x:.1f}, y {y:.1f}, z {z:.1f} mm.", x=x, y=y, z=z)


def summary(result: CheckResult) -> str:
    """How many snags of each grade, in one sentence."""
    if not result.snags:
        return say("No snags.")
    found = {grade: sum(snag.grade == grade for snag in result.snags) for grade in GRADES}
    spoiling = count(found[SPOILS], "{n} spoils the work", "{n} spoil the work")
    notes = count(found[NOTE], "{n} note", "{n} notes")
    return say("{spoiling}, {tight} tight, {notes}.", spoiling=spoiling, tight=found[TIGHT], notes=notes)


def _snag(snag: Snag) -> dict:
    return {
        "kind": snag.kind,
        "grade": snag.grade,
        "between": list(snag.between),
        "where": _numbers(snag.where),
        "measured": _number(snag.measured),
        "needed": _number(snag.needed),
        "unit": snag.unit,
        "text": snag.text,
        "cure": snag.cure,
        "move": None if snag.move is None else {"what": type(snag.move).__name__.lower(), **to_builtins(snag.move)},
    }


def _drilling(drilling: Drilling) -> dict:
    return {
        "id": drilling.id,
        "hole": drilling.hole,
        "of": drilling.of,
        "operation": drilling.operation,
        "diameter": _number(drilling.diameter),
        "start": _numbers(drilling.start),
        "direction": [float(part) for part in drilling.direction],
        "depth": _number(drilling.depth),
    }


def _number(value: float | None) -> float | None:
    return None if value is None else round(float(value), DIGITS) + 0.0


def _numbers(values: tuple[float, ...]) -> list[float | None]:
    return [_number(value) for value in values]
