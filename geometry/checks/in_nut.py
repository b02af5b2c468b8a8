"""Strings in the nut: whether it is as wide as they lie apart, and how near they lie to each other there."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, NUT, TIGHT, Snag, short
from geometry.checks.string_runs import places_of
from geometry.checks.words import clearance, into, tenths
from geometry.layout.shop import Margins
from geometry.layout.strings import Nut, String
from geometry.saying import count, say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of the first and the last string beyond the ends of the nut, and one of the nearest two strings in it."""
    layout, memo = scene.layout, scene.memo
    return memo.of(_told, layout.nut, memo.of(places_of, layout.nut, layout.strings), layout.margins)


def _told(nut: Nut, places: dict[str, tuple[String, Vec2]], margins: Margins) -> tuple[Snag, ...]:
    along = sorted(places.values(), key=lambda one: one[1])
    return (*_beyond(nut, along), *_close(along, margins.string_air))


def _beyond(nut: Nut, along: list[tuple[String, Vec2]]) -> Iterable[Snag]:
    for sign, (string, at) in ((-1.0, along[0]), (1.0, along[-1])) if along else ():
        measured = nut.width / 2 - sign * at[0] - string.diameter / 2
        if short(measured, 0.0):
            yield Snag("string-off-nut", TIGHT, (NUT,), (*at, 0.0), measured, 0.0,
                       say("String {string} lies {measured} mm beyond the end of the nut.", string=string.id, measured=into(measured)),
                       say("Make the nut {by} mm wider, or set the strings closer together in it.", by=tenths(-2 * measured)))


def _close(along: list[tuple[String, Vec2]], needed: float) -> Iterable[Snag]:
    """Square to the centreline, as the strings run."""
    gaps = [(b[0] - a[0] - (one.diameter + two.diameter) / 2, k, one, two, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2))
            for k, ((one, a), (two, b)) in enumerate(pairwise(along))]
    near = [gap for gap in gaps if short(gap[0], needed)]
    if not near:
        return
    measured, _, one, two, where = min(near)
    text = clearance(measured, needed, "Strings {one} and {two} lie {measured} mm into each other in the nut",
                     "Strings {one} and {two} lie {a} mm from each other in the nut; {b} mm wanted", one=one.id, two=two.id)
    if len(near) > 1:
        text += count(len(near) - 1, "; {n} other pair lies too near as well", "; {n} other pairs lie too near as well")
    yield Snag("strings-in-nut", TIGHT if measured < -TOUCH else NOTE, (NUT,), (*where, 0.0), measured, needed, f"{text}.",
               say("Spread the strings farther in the nut, or set those of a course farther apart."))
