"""Holes of the real piece that are drilled, by the job book, otherwise than the drawing has them now."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sized

from geometry.checks.items import Item
from geometry.checks.said import length, read
from geometry.checks.scene import Scene
from geometry.checks.snags import FACE, SPOILS, TIGHT, Snag
from geometry.checks.words import first, name
from geometry.layout.book import Bored, Done
from geometry.layout.drilled import drilling_of
from geometry.layout.headstock import Headstock
from geometry.saying import count, say
from geometry.solids.drilling import Drilling, Hole, holes
from geometry.solids.in_wood import bored, deeper, on_axis, same_hole
from geometry.tilt_words import tilt_words
from geometry.tolerance import SAME_HOLE

Ticks = dict[str, Done]
"""By drilling, the tick that tells what the real piece has of it."""


def snags(scene: Scene) -> Iterable[Snag]:
    """A snag for every feature of which a hole is in the wood and is another one in the drawing, or none."""
    ticks = scene.memo.of(_ticks, scene.layout.book.done)
    if not ticks:
        return
    yield from scene.memo.snags(_moved, scene.items, ticks)
    known = {drilling.id for item in scene.items for drilling in item.drillings}
    if not known.issuperset(ticks):
        yield from scene.memo.of(_gone, *[one for id, one in ticks.items() if id not in known])


def _ticks(done: tuple[Done, ...]) -> Ticks:
    drillings = ((drilling_of(one.task), one) for one in done if one.piece == "real" and one.hole is not None)
    return {id: one for id, one in drillings if id is not None}


def _moved(item: Item, ticks: Ticks) -> tuple[Snag, ...]:
    found = sorted(_strayed(item.holes, ticks), key=lambda one: can_go_on(*one[1:]))
    if not found:
        return ()
    drilling, was, now = found[0]
    more = can_go_on(was, now)
    return (Snag("drilled-otherwise", TIGHT if more else SPOILS, (item.id,), was.at, None, None, _with_others(told(name(drilling), was, now), found),
                 say("Drill it on to what the drawing says and tick its step again, or put the drawing back.") if more else
                 say("Put the drawing back; or plug the hole, drill it anew and tick its step again.")),)


def _gone(*done: Done) -> tuple[Snag, ...]:
    """Of each feature that has them, what is drilled and is no drilling of the layout."""
    found: dict[str, list[Done]] = {}
    for one in done:
        found.setdefault(one.task.features[0], []).append(one)
    return tuple([
        Snag("drilled-and-gone", SPOILS, (FACE,), ones[0].hole.at, None, None,
             _with_others(say("The drawing has no hole any more for “{title}”, which is drilled {was} (job book).",
                              title=ones[0].task.title or ones[0].task.operation, was=", ".join(_place(ones[0].hole))), ones),
             say("Take back what took it out of the drawing; or plug the hole and strike its tick out in the job book."))
        for ones in found.values()])


def _with_others(text: str, all_of_them: Sized) -> str:
    """The sentence about the first of some holes of a feature, and how many others there are."""
    more = len(all_of_them) - 1
    return text if not more else f"{text} {count(more, 'So it is with {n} more hole there.', 'So it is with {n} more holes there.')}"


def strays(layout: Headstock, id: str) -> bool:
    """Whether one of these snags is about a feature that the layout has."""
    ticks = _ticks(layout.book.done)
    return any(_strayed([hole for hole in holes(layout) if hole.of == id], ticks))


def _strayed(asked: Iterable[Hole], ticks: Ticks) -> Iterator[tuple[Drilling, Bored, Bored]]:
    """(drilling, as it is in the wood, as it is asked for) of the holes of which the two differ."""
    for drilling in (drilling for hole in asked for drilling in hole.drillings if drilling.id in ticks):
        was, now = ticks[drilling.id].hole, bored(drilling)
        if now is not None and not same_hole(was, now):
            yield drilling, was, now


def can_go_on(was: Bored, now: Bored) -> bool:
    """Whether drilling on at the same place makes one hole of the other: nothing of it is smaller."""
    return on_axis(was, now) and now.diameter >= was.diameter - SAME_HOLE and now.through >= was.through and deeper(was, now) >= -SAME_HOLE


def told(what: str, was: Bored, now: Bored) -> str:
    """What is drilled and what the drawing says now of `what` they differ in, in a sentence that keeps its lengths (see said.py)."""
    both = _aspects(was, now), _aspects(now, was)
    differ = [pair for pair in zip(*both, strict=True) if read(pair[0]) != read(pair[1])] or list(zip(*both, strict=True))
    return say("{what} is drilled {was} (job book); the drawing now says {now}.", what=first(what),
               was=", ".join(one for one, _ in differ), now=", ".join(other for _, other in differ))


def _aspects(hole: Bored, other: Bored) -> list[str]:
    """In words, where a hole is, how wide and how deep, as far as that may tell it from another one."""
    wide = say("{diameter} mm wide", diameter=length(hole.diameter, 2))
    if on_axis(hole, other):
        return [wide, _how_deep(hole, math.dist(hole.at, other.at) <= SAME_HOLE)]
    return [*_place(hole), wide] if _upright(hole) == _upright(other) else [", ".join(_place(hole)), wide]


def _how_deep(hole: Bored, as_depth: bool) -> str:
    """How deep it is, or where it ends: what tells two holes apart that begin at different surfaces."""
    if hole.through:
        return say("through")
    if as_depth:
        return say("{depth} mm deep", depth=length(_depth(hole), 2, down=True))
    return (say("to {z} mm below the face", z=length(hole.end[2], 2)) if _upright(hole) else
            say("to x {x} mm", x=length(hole.end[0], 2)))


def _place(hole: Bored) -> list[str]:
    """Where the drill goes in; of a bore from the side also how far below the face and with which tilt of the table."""
    x, y, z = hole.at
    if _upright(hole):
        return [say("from the face at x {x} mm, y {y} mm", x=length(x, 2), y=length(y, 2)) if hole.end[2] > z else
                say("from the back at x {x} mm, y {y} mm", x=length(x, 2), y=length(y, 2))]
    return [say("from the treble edge at y {y} mm", y=length(y, 2)) if x > hole.end[0] else say("from the bass edge at y {y} mm", y=length(y, 2)),
            say("{z} mm below the face", z=length(z, 2)), tilt_words(math.atan2(y - hole.end[1], math.hypot(hole.end[0] - x, hole.end[2] - z)))]


def _upright(hole: Bored) -> bool:
    """Whether it is square to the face, more or less; what has no depth is."""
    return 2 * abs(hole.end[2] - hole.at[2]) >= _depth(hole)


def _depth(hole: Bored) -> float:
    """From where the drill goes in to the end of its full diameter, mm."""
    return math.dist(hole.at, hole.end)
