"""Strings that pass the posts of other tuners, or each other, measured in space between their real cylinders.

Both are sought at once: what of all strings and posts comes near a string that changed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import partial

import numpy as np

from geometry import vectors as v
from geometry.checks.asked import Asked
from geometry.checks.items import Item, plan
from geometry.checks.memo import Pairs
from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, TIGHT, Snag, grade, short
from geometry.checks.words import clearance
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import Gaps
from geometry.solids.nearby import NOTHING, Box, Rows
from geometry.strings.past_posts import Rod, post_length, post_rod, post_way, string_rod, string_solids
from geometry.strings.rubs import air_between, surely_apart
from geometry.strings.runs import Run, cross, cross_on_the_face
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2, Vec3


def pairs(scene: Scene) -> Pairs:
    """Strings with the posts (but never their own) and the strings that they may come too near."""
    margins = scene.layout.margins
    found = scene.memo.pairs(_boxes, scene.memo.of(_things, scene.runs, scene.items), margins.string_air, margins)
    strings, things, air = len(found.items) - len(scene.items), found.items, margins.string_air
    found.new = [(i, k) for i, k in found.new if i < strings and i != k and not (
        surely_apart(things[i], things[k], air) if k < strings else
        things[i].tuner == things[k].id or _surely_past(things[i], things[k], air))]
    return found


def _surely_past(run: Run, item: Item, air: float) -> bool:
    """Whether a string has so much air (mm) beside an upright post as seen on the face, and so in space. False says nothing."""
    if item.mount != "face":
        return False
    centre = plan(item.frame.origin)
    return v.distance(centre, v.nearest_between(run.nut, run.post, centre)) - (run.diameter + item.pattern.post.diameter) / 2 >= air


def _things(strings: tuple[tuple[Run, Item], ...], items: tuple[Item, ...]) -> tuple[Run | Item, ...]:
    """Strings before posts."""
    return (*(run for run, _ in strings), *items)


def _boxes(things: Sequence[Run | Item]) -> Rows:
    """About each string and each post; boxes that hold nothing for what has no post."""
    return [_box(thing) for thing in things]


def _box(thing: Run | Item) -> Box:
    """(lowest, highest) corner, no farther out at the ends than beside them."""
    if isinstance(thing, Run):
        (x0, y0), (x1, y1), r = thing.nut, thing.post, thing.diameter / 2
        levels = [height for _, height in thing.corners]
        z0, z1 = -max(levels), -min(levels)
    elif thing.frame is None:
        return NOTHING
    else:
        (x0, y0, z0), way, post = thing.frame.origin, post_way(thing.frame), thing.pattern.post
        long, r = post_length(thing.frame, post), post.diameter / 2
        x1, y1, z1 = x0 + way[0] * long, y0 + way[1] * long, z0 + way[2] * long
    return (min(x0, x1) - r, min(y0, y1) - r, min(z0, z1) - r), (max(x0, x1) + r, max(y0, y1) + r, max(z0, z1) + r)


def asked(rows: Sequence[tuple[Run, Run | Item, Margins]]) -> Asked:
    """The gap between a string and a post or another string."""
    legs = [(row, leg, rod) for row, (run, thing, _) in enumerate(rows) for leg in run.legs for rod in _rods(thing)]
    of = np.array([row for row, _, _ in legs])
    wish = np.array([math.inf if _cross(run, thing) else _wanted(run, thing, margins) for run, thing, margins in rows])
    return Asked(string_solids([leg for _, leg, _ in legs]), Cylinders.made([rod for *_, rod in legs]), wish[of], partial(_told, rows, of))


def _cross(run: Run, thing: Run | Item) -> bool:
    return isinstance(thing, Run) and cross_on_the_face(run, thing)


def _wanted(run: Run, thing: Run | Item, margins: Margins) -> float:
    """The air that a string wants to a post or another string, mm."""
    return air_between(run, thing, margins.string_air) if isinstance(thing, Run) else margins.string_air


def _rods(thing: Run | Item) -> list[Rod]:
    return [string_rod(leg) for leg in thing.legs] if isinstance(thing, Run) else [post_rod(thing.frame, thing.pattern.post)]


def _told(rows: Sequence[tuple[Run, Run | Item, Margins]], of: np.ndarray, measured: Gaps) -> list[tuple[Snag, ...]]:
    """`of`: which row each gap belongs to; of several legs the nearest counts."""
    nearest: dict[int, int] = {}
    for i in np.argsort(measured.distance, kind="stable").tolist():
        nearest.setdefault(int(of[i]), i)
    told: list[tuple[Snag, ...]] = []
    for row, (run, thing, margins) in enumerate(rows):
        i, air = nearest[row], _wanted(run, thing, margins)
        gap = float(measured.distance[i])
        if short(gap, air) or _cross(run, thing):
            where = tuple(((measured.on_a[i] + measured.on_b[i]) / 2).tolist())
            told.append((_strings_snag(run, thing, gap, where, air) if isinstance(thing, Run) else
                         _snag(run, thing, gap, where, air),))
        else:
            told.append(())
    return told


def _snag(run: Run, item: Item, measured: float, where: Vec3, needed: float) -> Snag:
    text = clearance(measured, needed, "String {string} on its way to {tuner} runs {measured} mm into the post of {item}.",
                     "String {string} on its way to {tuner} passes {a} mm from the post of {item}; {b} mm wanted.",
                     string=run.string, tuner=run.tuner, item=item.id)
    side = item.mount == "side"
    cure = (say("Lead it over its own post, give it another post, or set one of the two axes deeper.") if side else
            say("Lead it past the other side of its own post, or give it another post."))
    aside = v.left(v.unit(v.sub(run.post, run.nut)))
    if v.dot(v.sub(item.frame.origin[:2], run.nut), aside) < 0:
        aside = v.scale(aside, -1.0)
    return Snag("string-to-post", grade(measured), (item.id, run.tuner), where, measured,
                needed, text, cure, push=None if side else v.scale(aside, needed - measured))


def _strings_snag(one: Run, two: Run, measured: float, where: Vec3, needed: float) -> Snag:
    """The snag of two strings with `measured` mm between them where `needed` are wanted.

    A note while they do not touch: where they lie to less than a millimetre depends on how they are wound. And no more than
    tight where they do: no wood is lost, and strings can be led otherwise when the head is done.
    """
    words = {"one": one.string, "two": two.string, "tuner": one.tuner, "other": two.tuner}
    advice = say("Let the two posts change strings, lead one string past the other side of its post, or have all posts "
                 "served anew under Strings.")
    if not short(measured, needed):
        return Snag("string-to-string", NOTE, (one.tuner, two.tuner), (*_crossing(one, two), where[2]), None, None,
                    say("Strings {one} and {two} cross on their way to {tuner} and {other}.", **words), advice)
    if cross(one, two):
        text = clearance(measured, needed,
                         "Strings {one} and {two} cross on their way to {tuner} and {other}, {measured} mm into each other.",
                         "Strings {one} and {two} cross on their way to {tuner} and {other} with {a} mm between them; {b} mm wanted.",
                         **words)
    else:
        text = clearance(measured, needed, "Strings {one} and {two} run {measured} mm into each other on their way to {tuner} and {other}.",
                         "Strings {one} and {two} come within {a} mm of each other on their way to {tuner} and {other}; {b} mm wanted.",
                         **words)
    return Snag("string-to-string", TIGHT if measured < -TOUCH else NOTE, (one.tuner, two.tuner), where, measured, needed, text, advice)


def _crossing(one: Run, two: Run) -> Vec2:
    """Where two strings that cross do so, as seen on the face."""
    way, other = v.sub(one.post, one.nut), v.sub(two.post, two.nut)
    return v.along(one.nut, way, v.cross(v.sub(two.nut, one.nut), other) / v.cross(way, other))
