"""Strings that pass the posts of other tuners, measured in space between their real cylinders."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import numpy as np

from geometry import vectors as v
from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag, grade, short
from geometry.checks.string_runs import scene_runs
from geometry.checks.words import both, mm
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.strings.runs import Run


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every string with every post but its own."""
    rows = [(run, item, scene.layout.margins) for run, own in scene_runs(scene) for item in scene.items
            if item.frame is not None and item is not own]
    yield from (snag for snag in scene.memo.many(_near, rows) if snag is not None)


def string_solid(run: Run) -> Cylinders:
    """A string from the nut to where it touches its post, as one cylinder."""
    length = math.dist(run.start, run.end)
    way = tuple((b - a) / length for a, b in zip(run.start, run.end, strict=True))
    return Cylinders.made([(run.start, way, length, run.diameter / 2)])


def post_solid(item: Item) -> Cylinders:
    """A tuner's post: above the face for a face mount, from the seat inwards for a side mount."""
    post = item.pattern.post
    way = (0.0, 0.0, -1.0) if item.mount == "face" else item.frame.w
    return Cylinders.made([(item.frame.origin, way, post.length, post.diameter / 2)])


def _near(rows: Sequence[tuple[Run, Item, Margins]]) -> list[Snag | None]:
    solids: dict[int, Cylinders] = {}
    for run, item, _ in rows:
        if id(run) not in solids:
            solids[id(run)] = string_solid(run)
        if id(item) not in solids:
            solids[id(item)] = post_solid(item)
    needed = np.array([margins.string_air for _, _, margins in rows])
    found = gaps(Cylinders.joined([solids[id(run)] for run, _, _ in rows]),
                 Cylinders.joined([solids[id(item)] for _, item, _ in rows]), needed)
    return [_snag(run, item, gap, on, there, margins.string_air) if short(gap, margins.string_air) else None
            for (run, item, margins), gap, on, there in zip(rows, found.distance.tolist(), found.on_a, found.on_b,
                                                            strict=True)]


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
