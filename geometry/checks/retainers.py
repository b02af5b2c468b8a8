"""String retainers: whether each is screwed to the face, holds a string down, and has its screw beside the strings and its bar beside posts
and other bars."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import combinations

from geometry import vectors as v
from geometry.checks.items import Item
from geometry.checks.memo import together
from geometry.checks.scene import Scene
from geometry.checks.snags import FACE, NOTE, TIGHT, Snag, grade, short
from geometry.checks.words import clearance, into
from geometry.layout.shop import Margins
from geometry.layout.slots import SingleHole
from geometry.saying import say
from geometry.strings.retainers import BAR, over, pressed
from geometry.strings.rubs import screw_air
from geometry.strings.runs import Run, carriers
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every hole that carries a retainer."""
    if not any([hole.retainer is not None for hole in scene.layout.holes]):
        return
    open_ones = scene.memo.of(together, *carriers(scene.layout))
    strings = scene.memo.each(_under, scene.runs, open_ones, scene.layout.margins)
    held = {id for ids, _ in strings for id in ids}
    for hole in scene.layout.holes:
        if hole.retainer is not None and (hole not in open_ones or hole.id not in held):
            yield scene.memo.of(_idle if hole in open_ones else _no_hole, hole)
    for _, beside in strings:
        yield from beside
    yield from scene.memo.snags(_at_post, scene.items, open_ones, scene.layout.margins)
    yield from scene.memo.of(_over_each_other, open_ones)


def _under(own: tuple[Run, Item], retainers: tuple[SingleHole, ...], margins: Margins) -> tuple[tuple[str, ...], tuple[Snag, ...]]:
    """Which retainers hold a string down, each by itself, and its snags with their screws."""
    run, _ = own
    held = [one.hole for one in over(run.nut, run.post, retainers) if pressed(run.nut_height, run.length, run.height, (one,))]
    return tuple(held), tuple([snag for hole in retainers for snag in _beside(hole, run, margins.string_air)])


def _no_hole(hole: SingleHole) -> Snag:
    return Snag("retainer-no-hole", TIGHT, (hole.id, FACE), (*hole.at, 0.0), None, None,
                say("The retainer on {hole} is screwed to the face, where there is no hole: it is drilled from the back and does not come "
                    "through.", hole=hole.id),
                say("Drill it from the face."))


def _idle(hole: SingleHole) -> Snag:
    return Snag("retainer-idle", NOTE, (hole.id,), (*hole.at, 0.0), None, None,
                say("The retainer on {hole} holds no string down: none passes under it higher than it reaches.", hole=hole.id),
                say("Set it lower, make it wider, or move it over the strings."))


def _at_post(item: Item, retainers: tuple[SingleHole, ...], margins: Margins) -> tuple[Snag, ...]:
    """Snags of a post that comes out of the face with the bars of retainers."""
    if item.mount != "face" or item.pattern.post.above(item.pattern.post.length, item.frame.wood) <= TOUCH:
        return ()
    centre, found, needed = item.frame.origin[:2], [], margins.seat_gap
    for hole in retainers:
        near = tuple(min(max(c, at - half), at + half) for c, at, half in zip(centre, hole.at, _half(hole), strict=True))
        inside = min(half - abs(c - at) for c, at, half in zip(centre, hole.at, _half(hole), strict=True))
        measured = (-inside if inside > 0 else v.distance(centre, near)) - item.pattern.post.diameter / 2
        if not short(measured, needed):
            continue
        words = {"hole": hole.id, "item": item.id}
        text = clearance(measured, needed, "The retainer on {hole} runs {measured} mm into the post of {item}.",
                         "The retainer on {hole} lies {a} mm from the post of {item}; {b} mm wanted.", **words)
        found.append(Snag("retainer-bar", TIGHT if measured < 0 else NOTE, (hole.id, item.id), (*near, -hole.retainer.height), measured, needed,
                          text, say("Make the retainer narrower, or move its screw away from the post."),
                          push=None if inside > 0 else v.scale(v.unit(v.sub(near, centre)), needed - measured)))
    return tuple(found)


def _over_each_other(retainers: tuple[SingleHole, ...]) -> tuple[Snag, ...]:
    """Snags of bars that lie over each other. Two at one level that hold strings equally high are one bar on two screws."""
    found = []
    for one, two in combinations(retainers, 2):
        measured = max(abs(a - b) - (h + k) for a, b, h, k in zip(one.at, two.at, _half(one), _half(two), strict=True))
        alike = abs(one.at[1] - two.at[1]) <= TOUCH and abs(one.retainer.height - two.retainer.height) <= TOUCH
        if short(measured, 0.0) and not alike:
            found.append(Snag("retainer-bar", TIGHT, (one.id, two.id), (*v.middle(one.at, two.at), -one.retainer.height), measured, 0.0,
                              say("The retainers on {one} and {two} overlap by {measured} mm.", one=one.id, two=two.id,
                                  measured=into(measured)),
                              say("Set them apart, or both at one level and equally high: then they are one bar on two screws.")))
    return tuple(found)


def _half(hole: SingleHole) -> Vec2:
    """Half of the bar of a retainer, across the head and along it."""
    return hole.retainer.width / 2, BAR / 2


def _beside(hole: SingleHole, run: Run, needed: float) -> Iterable[Snag]:
    """The air between the screw and a string that passes it above the face."""
    told = screw_air(hole, run)
    if told is None or not short(told[0], needed):
        return
    measured, near, height = told
    words = {"string": run.string, "tuner": run.tuner, "hole": hole.id}
    text = clearance(measured, needed, "String {string} on its way to {tuner} runs {measured} mm into the screw of the retainer on {hole}.",
                     "String {string} on its way to {tuner} passes {a} mm from the screw of the retainer on {hole}; {b} mm wanted.",
                     **words)
    way = v.unit(v.sub(run.post, run.nut))
    aside = v.right(way) if v.cross(way, v.sub(hole.at, run.nut)) <= 0 else v.left(way)
    yield Snag("string-to-screw", grade(measured), (hole.id, run.tuner), (*near, -height), measured, needed, text,
               say("Set the screw between two strings, or beside all of them."), push=v.scale(aside, needed - measured))
