"""Everything that is two cylinders too near each other: drillings, buttons, strings past posts.

Each family says which of its pairs may be near and what it makes of the gaps;
all pairs that are new are measured together, which takes little longer than one family's.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from geometry.checks import buttons, hole_pairs, string_posts
from geometry.checks.scene import Scene
from geometry.checks.snags import Snag
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps

FAMILIES = (hole_pairs, buttons, string_posts)
"""Modules with `pairs(scene)`, rows of which both ends stay the same objects while nothing moves, and `asked(rows)`, their Asked."""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of all pairs of solids; only pairs of which a feature changed are measured again."""
    rows = [(family.asked, family.pairs(scene)) for family in FAMILIES]
    new = [(asked, missing) for asked, missing in ((asked, scene.memo.missing(asked, some)) for asked, some in rows)
           if missing]
    asks = [asked(missing) for asked, missing in new]
    if asks:
        found = gaps(Cylinders.joined([ask.a for ask in asks]), Cylinders.joined([ask.b for ask in asks]),
                     np.concatenate([ask.wish for ask in asks]))
        at = 0
        for (asked, missing), ask in zip(new, asks, strict=True):
            scene.memo.keep(asked, missing, ask.told(found.part(slice(at, at + len(ask.wish)))))
            at += len(ask.wish)
    for asked, some in rows:
        for result in scene.memo.many(asked, some):
            yield from result
