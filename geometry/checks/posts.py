"""Posts of side tuners beside or before each other: where their bores have ended they lie free in a slot.

Wood that lacks is told once: of posts that come no nearer to each other than their bores, which lack theirs, the bores tell it.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import numpy as np

from geometry.checks.asked import Asked
from geometry.checks.items import Item, apart
from geometry.checks.memo import Pairs
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag, grade, short
from geometry.checks.words import clearance
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import Gaps, gaps
from geometry.solids.nearby import Rows, rows_of
from geometry.strings.past_posts import post_solids
from geometry.tolerance import TOUCH


def pairs(scene: Scene) -> Pairs:
    """Side tuners whose posts come near each other."""
    margins = scene.layout.margins
    return scene.memo.pairs(_boxes, scene.sides, margins.post_wall, margins).of_two()


def _boxes(items: Sequence[Item]) -> Rows:
    """About each post."""
    return rows_of(*_solids(items).boxes()) if items else []


def _solids(items: Sequence[Item]) -> Cylinders:
    return post_solids([(item.frame, item.pattern.post) for item in items])


def asked(rows: Sequence[tuple[Item, Item, Margins]]) -> Asked:
    """The gap between two posts."""
    return Asked(_solids([one for one, _, _ in rows]), _solids([two for _, two, _ in rows]),
                 np.array([margins.post_wall for *_, margins in rows]), partial(_told, rows))


def _told(rows: Sequence[tuple[Item, Item, Margins]], measured: Gaps) -> list[tuple[Snag, ...]]:
    out: list[tuple[Snag, ...]] = [()] * len(rows)
    near = [i for i, (row, gap, exact) in enumerate(zip(rows, measured.distance.tolist(), measured.exact.tolist(), strict=True))
            if exact and short(gap, row[2].post_wall)]
    told = _by_bores([rows[i] for i in near], measured.distance[near])
    for i, by_bores in zip(near, told, strict=True):
        if not by_bores:
            out[i] = (_snag(*rows[i], float(measured.distance[i]), measured.on_a[i], measured.on_b[i]),)
    return out


def _by_bores(rows: Sequence[tuple[Item, Item, Margins]], measured: np.ndarray) -> list[bool]:
    """Of two posts each, so far apart (mm), whether the wood between their bores is less than is wanted, and no more than between the posts."""
    out = [False] * len(rows)
    bored = [i for i, (one, two, _) in enumerate(rows) if one.post is not None and two.post is not None]
    if bored:
        a, b = (Cylinders.made([(d.start, d.direction, d.depth, d.radius) for d in (rows[i][k].post for i in bored)]) for k in (0, 1))
        wanted = [rows[i][2].bore_bore for i in bored]
        for i, wood, wish in zip(bored, gaps(a, b, np.array(wanted)).distance.tolist(), wanted, strict=True):
            out[i] = short(wood, wish) and wood <= measured[i] + TOUCH
    return out


def _snag(one: Item, two: Item, margins: Margins, measured: float, on_a: np.ndarray, on_b: np.ndarray) -> Snag:
    needed = margins.post_wall
    text = clearance(measured, needed, "The posts of {one} and {two} run {measured} mm into each other.",
                     "The posts of {one} and {two} pass {a} mm apart; {b} mm wanted.", one=one.id, two=two.id)
    return Snag("post-to-post", grade(measured), (one.id, two.id), tuple(float(c) for c in (on_a + on_b) / 2), measured, needed, text,
                say("Choose hardware with shorter posts, or slide one of the two along its edge."),
                push=apart(one, two, on_a - on_b, needed - measured))
