"""Strings that pass the posts of other tuners, measured in space between their real cylinders."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import numpy as np

from geometry import vectors as v
from geometry.checks.asked import Asked
from geometry.checks.items import Item
from geometry.checks.memo import Pairs
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag, grade, short
from geometry.checks.string_runs import scene_runs
from geometry.checks.words import both, mm
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders, norms
from geometry.solids.distance import Gaps
from geometry.solids.nearby import Boxes, boxes_of
from geometry.strings.runs import Run


def pairs(scene: Scene) -> Pairs:
    """Strings with the posts that they may come near, but never with their own."""
    margins = scene.layout.margins
    things = scene.memo.of(_things, scene_runs(scene), scene.items)
    found = scene.memo.pairs(_boxes, things, margins.string_air, margins)
    found.new = [(i, k) for i, k in found.new if isinstance(things[i], Run) and isinstance(things[k], Item)
                 and things[i].tuner != things[k].id]
    return found


def _things(strings: tuple[tuple[Run, Item], ...], items: tuple[Item, ...]) -> tuple[Run | Item, ...]:
    """Strings before posts."""
    return (*(run for run, _ in strings), *items)


def _boxes(things: Sequence[Run | Item]) -> Boxes:
    """About each string and each post; boxes that hold nothing for what has no post."""
    runs = [i for i, thing in enumerate(things) if isinstance(thing, Run)]
    posts = [i for i, thing in enumerate(things) if isinstance(thing, Item) and thing.frame is not None]
    solids = [made([things[i] for i in some]) for some, made in ((runs, string_solids), (posts, post_solids)) if some]
    return boxes_of(runs + posts, Cylinders.joined(solids) if solids else None, len(things))


def string_solids(runs: Sequence[Run]) -> Cylinders:
    """Strings from the nut to where they touch their posts, as cylinders."""
    rows = np.array([(*run.start, *run.end, run.diameter / 2) for run in runs])
    start = rows[:, :3]
    way = rows[:, 3:6] - start
    length = norms(way)
    return Cylinders(start, way / length[:, None], length, rows[:, 6])


def post_solids(items: Sequence[Item]) -> Cylinders:
    """Tuners' posts: above the face for a face mount, from the seat inwards for a side mount."""
    return Cylinders.made([(item.frame.origin, (0.0, 0.0, -1.0) if item.mount == "face" else item.frame.w,
                            item.pattern.post.length, item.pattern.post.diameter / 2) for item in items])


def asked(rows: Sequence[tuple[Run, Item, Margins]]) -> Asked:
    """The gap between a string and a post."""
    return Asked(string_solids([run for run, _, _ in rows]), post_solids([item for _, item, _ in rows]),
                 np.array([margins.string_air for _, _, margins in rows]), partial(_told, rows))


def _told(rows: Sequence[tuple[Run, Item, Margins]], measured: Gaps) -> list[tuple[Snag, ...]]:
    return [(_snag(run, item, gap, measured.on_a[i], measured.on_b[i], margins.string_air),)
            if short(gap, margins.string_air) else ()
            for i, ((run, item, margins), gap) in enumerate(zip(rows, measured.distance.tolist(), strict=True))]


def _snag(run: Run, item: Item, measured: float, on: np.ndarray, there: np.ndarray, needed: float) -> Snag:
    a, b = both(measured, needed)
    text = (say("String {string} on its way to {tuner} runs {measured} mm into the post of {item}.",
                string=run.string, tuner=run.tuner, measured=mm(-measured), item=item.id)
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
