"""Drillings from the side against the outline beyond their own mouth: a thin wall beside them, or a breakout.

The outline about the place where the drill goes in is the bore's own mouth. It
reaches to either side until it stands a margin clear of the bore, or until it
has turned by 60 degrees and becomes a wall beside the bore.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.hole_walls import wanted_to_outline
from geometry.checks.items import Item, plan
from geometry.checks.kinds import outline_kind
from geometry.checks.moves import slide
from geometry.checks.scene import Scene
from geometry.checks.snags import OUTLINE, Snag, grade, short
from geometry.checks.words import both, first, mm, name, sort_of, up
from geometry.layout.shop import Margins
from geometry.solids.drilling import Drilling
from geometry.solids.walls import Wall, oblong
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

_MOUTH_TURN = math.cos(math.radians(60))
_CHORD = 1.0
"""mm: the outline is looked at in pieces no longer than this"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every drilling from the side with the outline."""
    ring = None
    for item in scene.items:
        if item.mount == "side":
            ring = ring or scene.memo.of(_ring, scene.outline)
            yield from scene.memo.of(_outline, item, scene.outline, ring, scene.layout.margins)


class _Ring:
    """The outline's chords, none longer than _CHORD, as an open list of corners with unit directions."""

    def __init__(self, outline: Wall) -> None:
        dense = shapely.segmentize(outline.line, _CHORD)
        self.points = shapely.get_coordinates(dense)[:-1]
        ahead = np.roll(self.points, -1, axis=0) - self.points
        self.size = np.hypot(ahead[:, 0], ahead[:, 1])
        self.unit = ahead / np.maximum(self.size, 1e-300)[:, None]


def _ring(outline: Wall) -> _Ring:
    return _Ring(outline)


def _outline(item: Item, outline: Wall, ring: _Ring, margins: Margins) -> tuple[Snag, ...]:
    found = []
    for drilling, measured, needed, where in _near(item, outline, ring, margins):
        called = first(name(drilling))
        a, b = both(measured, needed)
        text = (f"{called} breaks out of the outline by {mm(-measured)} mm." if measured < 0 else
                f"{called} comes within {a} mm of the outline beyond its own mouth; {b} mm wanted.")
        cure, move = _away(item, where, needed - measured, lambda there: not _near(there, outline, ring, margins))
        found.append(Snag(outline_kind(sort_of(drilling)), grade(measured), (item.id, OUTLINE),
                          (*where, drilling.start[2]), measured, needed, text, cure, move=move))
    return tuple(found)


def _near(item: Item, outline: Wall, ring: _Ring, margins: Margins) -> list[tuple[Drilling, float, float, Vec2]]:
    """(drilling, gap, wanted, place) of all drillings of an item that come too near the outline beyond their mouth."""
    into = np.array(plan(item.frame.w))
    across = np.array([into[1], -into[0]])
    aside, ahead, heading = ring.points @ across, ring.points @ into, ring.unit @ across
    found = []
    for drilling in item.drillings:
        needed = wanted_to_outline(drilling, margins)
        start = np.array(plan(drilling.start))
        u, w = aside - start @ across, ahead - start @ into
        rest = _beyond_mouth(drilling, ring, u, w, heading, needed)
        if rest is None:
            continue
        shape = Wall(oblong(plan(drilling.start), plan(drilling.direction), drilling.depth, drilling.radius))
        quick = float(shapely.distance(shape.area, rest))
        if quick - FLAT >= needed:
            continue
        measured, where = _gap(shape, outline, rest, quick)
        if not short(measured, needed):
            continue
        found.append((drilling, measured, needed, where))
    return found


def _beyond_mouth(drilling: Drilling, ring: _Ring, u: np.ndarray, w: np.ndarray, heading: np.ndarray,
                  needed: float) -> shapely.LineString | None:
    """The outline's chords without the bore's mouth, or None when nothing else comes near the bore.

    u, w: each corner of the ring beside and ahead of the drilling's start; heading: how far each chord runs across.
    """
    half = drilling.radius + needed + 4 * FLAT
    far = np.hypot(np.maximum(np.abs(u) - drilling.radius, 0.0), np.maximum(np.maximum(-w, w - drilling.depth), 0.0))
    count = len(u)
    mouth = int(np.argmin(np.hypot(u, w)))
    sign = 1.0 if heading[mouth] >= 0 else -1.0
    own_chord, own_point = heading * sign > _MOUTH_TURN, np.abs(u) < half
    near = (far < needed + _CHORD) & own_point
    seen = np.flatnonzero(near)
    if seen.size and seen[-1] - seen[0] + 1 == seen.size and seen[0] <= mouth <= seen[-1] and own_chord[seen].all():
        return None
    first_corner = last_corner = mouth
    steps = 0
    while steps < count and own_chord[last_corner] and own_point[last_corner]:
        last_corner, steps = (last_corner + 1) % count, steps + 1
    while steps < count and own_chord[first_corner - 1] and own_point[first_corner]:
        first_corner, steps = (first_corner - 1) % count, steps + 1
    if steps >= count:
        return None
    # Corners from last_corner round to first_corner are the rest. Beside the strip of half width `half` all is clear.
    rest = (last_corner + np.arange((first_corner - last_corner) % count + 1)) % count
    if not near[rest].any():
        return None
    chain = ring.points[rest]
    ends = []
    for inside, outside in ((last_corner - 1, last_corner), ((first_corner + 1) % count, first_corner)):
        ends.append(_cut(ring.points[inside], ring.points[outside], u[inside], u[outside], half))
    if ends[0] is not None:
        chain[0] = ends[0]
    if ends[1] is not None:
        chain[-1] = ends[1]
    return shapely.LineString(chain) if len(chain) > 1 else None


def _cut(inner: np.ndarray, outer: np.ndarray, a: float, b: float, half: float) -> np.ndarray | None:
    """Where the chord that leaves the mouth is `half` mm aside; None when it does not get so far."""
    level = math.copysign(half, b)
    return inner + (outer - inner) * ((level - a) / (b - a)) if abs(a) < half <= abs(b) else None


def _gap(shape: Wall, outline: Wall, rest: shapely.LineString, quick: float) -> tuple[float, Vec2]:
    """(gap in mm, place); negative by how far the bore sticks out of the wood."""
    if quick > 0:
        p, q = shapely.shortest_line(shape.line, rest).coords[:]
        foot = outline.foot(q)
        exact = shape.foot(foot.point)
        for _ in range(6):
            foot = outline.foot(exact.point)
            exact = shape.foot(foot.point)
        # On the exact outline the gap differs from that to its chords by no more than their sagitta.
        sure = abs(exact.distance - quick) <= 2 * FLAT
        return (exact.distance if sure else quick - FLAT), v.middle(p, q)
    ends = shape.points[1:3]
    out = -outline.about(ends)
    inner = shapely.get_coordinates(rest)
    deep = shape.about(inner)
    i, k = int(np.argmax(out)), int(np.argmax(deep))
    place, depth = (ends[i], out[i]) if out[i] >= deep[k] else (inner[k], deep[k])
    return -max(float(depth), 2 * TOUCH), (float(place[0]), float(place[1]))


def _away(item: Item, where: Vec2, lacking: float,
          ok: Callable[[Item], bool]) -> tuple[str, tuple[str, Vec2] | None]:
    """(cure, move): slide along the edge away from a place, or drill less deep when it lies ahead."""
    seat = item.frame.seat
    offset = v.sub(where, seat.point)
    ahead, along = -v.dot(offset, seat.normal), v.dot(offset, seat.tangent)
    if abs(along) < 0.5 * abs(ahead):
        return f"Drill it {up(lacking):.1f} mm less deep, or choose shorter hardware.", None
    if item.held:
        return f"{first(item.id)} is held: let it go, or reshape the outline.", None
    found = slide(item, math.copysign(lacking, -along), ok)
    return found or (f"No single slide of {item.id} clears it: reshape the outline, or choose other hardware.", None)
