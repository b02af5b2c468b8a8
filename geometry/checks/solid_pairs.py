"""Everything that is two cylinders too near each other: drillings, buttons, posts, strings past posts.

Each family says which of its pairs may be near and what it makes of the gaps;
all pairs that are new are measured together, which takes little longer than one family's.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from geometry.checks import buttons, hole_pairs, posts, string_posts
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps

FAMILIES = (hole_pairs, buttons, posts, string_posts)
"""Modules with `pairs(scene)`, what is known of their pairs and which are new, and `asked(rows)`, their Asked for (one, two, margins),
None where nothing has to be measured."""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of all pairs of solids; only pairs of which a feature changed are measured again."""
    margins = scene.layout.margins
    known = [family.pairs(scene) for family in FAMILIES]
    wanted = []
    for family, pairs in zip(FAMILIES, known, strict=True):
        ask = family.asked([(pairs.items[i], pairs.items[k], margins) for i, k in pairs.new]) if pairs.new else None
        if ask is None:
            pairs.keep([()] * len(pairs.new))
        else:
            wanted.append((pairs, ask))
    if wanted:
        found = gaps(Cylinders.joined([ask.a for _, ask in wanted]), Cylinders.joined([ask.b for _, ask in wanted]),
                     np.concatenate([ask.wish for _, ask in wanted]))
        # What is not exact is farther apart than was asked about, and nothing is said of it.
        near, at = bool(found.exact.any()), 0
        for pairs, ask in wanted:
            pairs.keep(ask.told(found.part(slice(at, at + len(ask.wish)))) if near else [()] * len(pairs.new))
            at += len(ask.wish)
    for pairs in known:
        yield from pairs.flat
