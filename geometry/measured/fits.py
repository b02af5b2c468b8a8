"""What still fits: hardware whose plate joins several holes, by where the holes came to lie.

Two holes take a part when their distance is off by no more than the play that both leave together; with three and
more this must hold for each two. A post has half of what its bore is wider than it, and none in a reamed bore, whose
taper holds it; a screw is moved in its plate by up to 0.3 mm (common practice, no source); any other bore leaves
nothing known and is not judged.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import combinations

from msgspec import Struct

from geometry.layout import Headstock
from geometry.measured.readings import Off, apart, centre_distance, drillings
from geometry.solids import Drilling

SCREW_PLAY = 0.3


class Joined(Struct, frozen=True):
    """Two holes of one tuner: their distance as built against the plan, and the play between (mm)."""

    of: str
    one: str
    other: str
    off: float
    play: float

    @property
    def fits(self) -> bool:
        """Whether the part goes on."""
        return abs(self.off) <= self.play + 1e-9


def joined(layout: Headstock, found: Sequence[Off]) -> tuple[Joined, ...]:
    """Each two joined holes of which both places, or their distance, were measured."""
    known = drillings(layout)
    wide = {off.reading.drilling: off.reading.value for off in found if off.reading.what == "diameter" and not off.doubtful}
    moved: dict[str, dict[str, float]] = {}
    distances: dict[frozenset[str], float] = {}
    for off in found:
        one = off.reading
        d = known.get(one.drilling)
        if d is None or off.doubtful:
            continue
        if one.what in ("x", "y") and d.upright:
            moved.setdefault(d.id, {})[one.what] = off.moved
        elif one.what == "distance" and one.other in known:
            other = known[one.other]
            middles = centre_distance(one.value, one.how, wide.get(d.id, d.finished), wide.get(other.id, other.finished))
            distances[frozenset((d.id, other.id))] = middles - apart(d, other)
    made = []
    for tuner in layout.tuners:
        own = [d for d in known.values() if d.of == tuner.id and d.role in ("post", "screw")]
        post = layout.pattern(tuner.pattern).post.diameter
        for a, b in combinations(own, 2):
            off = distances.get(frozenset((a.id, b.id)))
            if off is None and len(moved.get(a.id, ())) == len(moved.get(b.id, ())) == 2:
                off = math.dist(_built(a, moved[a.id]), _built(b, moved[b.id])) - apart(a, b)
            if off is not None and a.hole != b.hole:
                made.append(Joined(tuner.id, a.id, b.id, off, _play(a, wide, post) + _play(b, wide, post)))
    return tuple(made)


def _built(d: Drilling, moved: dict[str, float]) -> tuple[float, float]:
    return d.start[0] + moved["x"], d.start[1] + moved["y"]


def _play(d: Drilling, wide: dict[str, float], post: float) -> float:
    if d.role == "screw":
        return SCREW_PLAY
    return 0.0 if d.reamed else max(0.0, (wide.get(d.id, d.finished) - post) / 2)
