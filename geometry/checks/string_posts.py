"""Strings that pass the posts of other tuners, measured in space between their real cylinders."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import numpy as np

from geometry import vectors as v
from geometry.checks.asked import Asked
from geometry.checks.items import Item, plan
from geometry.checks.memo import Pairs
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag, grade, short
from geometry.checks.words import both, into
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.distance import Gaps
from geometry.solids.nearby import NOTHING, Box, Rows
from geometry.strings.past_posts import post_solids, post_way, string_solids
from geometry.strings.runs import Run


def pairs(scene: Scene) -> Pairs:
    """Strings with the posts that they may come too near, but never with their own."""
    margins = scene.layout.margins
    found = scene.memo.pairs(_boxes, scene.memo.of(_things, scene.runs, scene.items), margins.string_air, margins)
    strings, things = len(found.items) - len(scene.items), found.items
    found.new = [(i, k) for i, k in found.new if i < strings <= k and things[i].tuner != things[k].id
                 and not _surely_past(things[i], things[k], margins.string_air)]
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
        (x0, y0), (x1, y1), z0, z1, r = thing.nut, thing.post, -thing.nut_height, -thing.height, thing.diameter / 2
    elif thing.frame is None:
        return NOTHING
    else:
        (x0, y0, z0), way, post = thing.frame.origin, post_way(thing.frame), thing.pattern.post
        x1, y1, z1, r = x0 + way[0] * post.length, y0 + way[1] * post.length, z0 + way[2] * post.length, post.diameter / 2
    return (min(x0, x1) - r, min(y0, y1) - r, min(z0, z1) - r), (max(x0, x1) + r, max(y0, y1) + r, max(z0, z1) + r)


def asked(rows: Sequence[tuple[Run, Item, Margins]]) -> Asked:
    """The gap between a string and a post."""
    return Asked(string_solids([run for run, _, _ in rows]), post_solids([(item.frame, item.pattern.post) for _, item, _ in rows]),
                 np.array([margins.string_air for _, _, margins in rows]), partial(_told, rows))


def _told(rows: Sequence[tuple[Run, Item, Margins]], measured: Gaps) -> list[tuple[Snag, ...]]:
    return [(_snag(run, item, gap, measured.on_a[i], measured.on_b[i], margins.string_air),)
            if short(gap, margins.string_air) else ()
            for i, ((run, item, margins), gap) in enumerate(zip(rows, measured.distance.tolist(), strict=True))]


def _snag(run: Run, item: Item, measured: float, on: np.ndarray, there: np.ndarray, needed: float) -> Snag:
    a, b = both(measured, needed)
    text = (say("String {string} on its way to {tuner} runs {measured} mm into the post of {item}.",
                string=run.string, tuner=run.tuner, measured=into(measured), item=item.id)
            if measured < 0 else
            say("String {string} on its way to {tuner} passes {a} mm from the post of {item}; {b} mm wanted.",
                string=run.string, tuner=run.tuner, a=a, item=item.id, b=b))
    side = item.mount == "side"
    cure = (say("Lead it over its own post, give it another post, or set one of the two axes deeper.") if side else
            say("Lead it past the other side of its own post, or give it another post."))
    aside = v.left(v.unit(v.sub(run.post, run.nut)))
    if v.dot(v.sub(item.frame.origin[:2], run.nut), aside) < 0:
        aside = v.scale(aside, -1.0)
    return Snag("string-to-post", grade(measured), (item.id, run.tuner), tuple(((on + there) / 2).tolist()), measured,
                needed, text, cure, push=None if side else v.scale(aside, needed - measured))
