"""What a step to and fro in the history does to holes that the real piece has already."""

from __future__ import annotations

from app.document.history import History
from geometry.checks.in_wood import strays
from geometry.checks.words import few
from geometry.layout import Headstock, drilled
from geometry.saying import say
from geometry.solids import holes

MOST_NAMED = 3
"""Things that are named in the foot: it is as wide as its words."""


def drawn_otherwise(history: History, came_from: int) -> str:
    """What to say behind the name of the step that led here from layout number `came_from`: which features are drilled by the job
    book, and have another hole or none in the plan now. Nothing for none, nor for what the step puts back to where the book says
    that it was drilled. A hole set anew may have the name of one that another step brings back; one that was renamed is the same."""
    here = history.at
    ids = drilled(history.current)
    if not ids or here == came_from:
        return ""
    from app.document.carried import names_now  # here: most steps go back over no drilled hole

    first, last = sorted((here, came_from))
    layouts = history.layouts[first:last + 1]
    was, now = _bored(layouts[came_from - first]), _bored(history.current)
    called = {there: name for name, there in names_now(layouts, here - first, ids)[came_from - first].items()}
    written = {id for one in history.current.book.done if one.piece == "real" and one.hole is not None for id in one.task.features}
    names = sorted(id for id in ids if was.get(called.get(id, id)) != now.get(id)
                   and not (id in written and id in now and not strays(history.current, id)))
    return " " + say("(drilled already in the real piece, and drawn otherwise now: {names})", names=few(names, MOST_NAMED)) if names else ""


def _bored(layout: Headstock) -> dict[str, list[tuple]]:
    """Where the drillings of each feature go, to the millionth of a mm, and how wide and deep they are."""
    found: dict[str, list[tuple]] = {}
    for hole in holes(layout):
        found.setdefault(hole.of, []).extend(
            tuple(round(value, 6) for value in (*d.start, *d.direction, d.diameter, d.depth)) for d in hole.drillings)
    return found
