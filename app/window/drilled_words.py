"""What a step to and fro in the history does to holes that the real piece has already."""

from __future__ import annotations

from geometry.checks.words import few
from geometry.layout import Headstock, drilled
from geometry.saying import say
from geometry.solids import holes

MOST_NAMED = 3
"""Things that are named in the foot: it is as wide as its words."""


def drawn_otherwise(before: Headstock, after: Headstock) -> str:
    """What to say behind the name of a step: which features are drilled by the job book, and have another hole or none in the plan
    after it. Nothing for none. A hole set anew may have the name of one that another step brings back."""
    ids = drilled(after)
    if not ids or before is after:
        return ""
    was, now = _bored(before, ids), _bored(after, ids)
    names = sorted(id for id in ids if was.get(id) != now.get(id))
    return " " + say("(drilled already in the real piece, and drawn otherwise now: {names})", names=few(names, MOST_NAMED)) if names else ""


def _bored(layout: Headstock, ids: frozenset[str]) -> dict[str, list[tuple]]:
    """Where the drillings of these features go, to the millionth of a mm, and how wide and deep they are."""
    found: dict[str, list[tuple]] = {}
    for hole in holes(layout):
        if hole.of in ids:
            found.setdefault(hole.of, []).extend(
                tuple(round(value, 6) for value in (*d.start, *d.direction, d.diameter, d.depth)) for d in hole.drillings)
    return found
