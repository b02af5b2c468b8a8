"""What a step to and fro in the history does to what the real piece has already."""

from __future__ import annotations

from app.document.history import History
from geometry.checks.in_wood import by_the_wood, in_wood
from geometry.checks.words import few
from geometry.layout import Headstock, cut, drilled
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids import holes
from geometry.terms import term

MOST_NAMED = 3
"""Things that are named in the foot: it is as wide as its words."""


def drawn_otherwise(history: History, came_from: int) -> str:
    """What to say behind the name of the step that led here from layout number `came_from`: which features are drilled or cut by the
    job book, and are otherwise or not at all in the plan now. Nothing for none, nor for what the step puts back to where the book says
    that it was made. A hole set anew may have the name of one that another step brings back; one that was renamed is the same."""
    here = history.at
    layout = by_the_wood(history.current)
    ids = drilled(layout) | cut(layout)
    if not ids or here == came_from:
        return ""
    from app.document.carried import names_now  # here: most steps go back over no drilled hole

    first, last = sorted((here, came_from))
    layouts = history.layouts[first:last + 1]
    was, now = _drawn(layouts[came_from - first]), _drawn(layout)
    called = {there: name for name, there in names_now(layouts, here - first, ids)[came_from - first].items()}
    wood = in_wood(layout, "real")
    written = {id for one in wood.ticks for id in one.task.features or (OUTLINE,)} - wood.strayed
    names = sorted(term(id) if id == OUTLINE else id for id in ids
                   if was.get(called.get(id, id)) != now.get(id) and not (id in written and id in now))
    return " " + say("(in the real piece already, and drawn otherwise now: {names})", names=few(names, MOST_NAMED)) if names else ""


def _drawn(layout: Headstock) -> dict[str, list[tuple]]:
    """Where the drillings of each feature go, to the millionth of a mm, and how wide and deep they are; the shapes of slots and outline."""
    found: dict[str, list[tuple]] = {slot.id: [(slot.shape, slot.depth, slot.ramp)] for slot in layout.slots} | {OUTLINE: [(layout.outline,)]}
    for hole in holes(layout):
        found.setdefault(hole.of, []).extend(
            tuple(round(value, 6) for value in (*d.start, *d.direction, d.diameter, d.depth)) for d in hole.drillings)
    return found
