"""Upright walls in plan: an exact curve prepared for many questions of distance and side.

Quick answers come from chords that lie within FLAT mm of the curve; they are
used to leave far things alone. Whatever comes near a margin is measured again
on the exact curve, so no clearance is overstated by flattening.
"""

from __future__ import annotations

from functools import cached_property
from operator import itemgetter

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import LineString, Polygon

from geometry import vectors as v
from geometry.curves import Line, Path
from geometry.curves.many import tangents
from geometry.curves.polygons import crosses_itself
from geometry.solids.closest import ray_hit, settle, settle_point
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

_MOST_RAYS = 512
_STRIDE = 8


class Foot(Struct, frozen=True):
    """The point of a wall nearest to a query point."""

    point: Vec2
    distance: float
    """mm, never negative"""
    tangent: Vec2
    """unit, along the wall's own direction"""
    segment: int
    t: float


class Wall(Struct, frozen=True, eq=False, dict=True, weakref=True):
    """A path in plan, open or closed (mm)."""

    path: Path
    sagitta: float = FLAT

    @cached_property
    def _flat(self) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
        flat = [piece.flatten(self.sagitta) for piece in self.path.segments]
        out = np.array([self.path.start, *(at for one in flat for at in one[1:])], dtype=float)
        # Next to nothing is nothing: the polygon library divides by what is left of it.
        out[np.abs(out) < 1e-12] = 0.0
        if self.path.closed:
            out[-1] = out[0]
        counts = np.array([len(one) - 1 for one in flat])
        segment = np.repeat(np.arange(len(counts)), counts)
        number = np.arange(len(segment)) - np.repeat(np.cumsum(counts) - counts, counts)
        return out, segment, number / counts[segment], (number + 1) / counts[segment]

    @property
    def points(self) -> np.ndarray:
        """(n, 2) points of the chords in mm; a closed wall repeats its first point."""
        return self._flat[0]

    def pieces(self, most: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """The chords in even pieces no longer than `most` mm: (n, 2) where each begins, and the unit directions of the exact wall where
        it begins and where it ends."""
        points, segment, t0, t1 = self._flat
        ahead = np.diff(points, axis=0)
        counts = np.maximum(np.ceil(np.hypot(ahead[:, 0], ahead[:, 1]) / most), 1).astype(int)
        of = np.repeat(np.arange(len(counts)), counts)
        share = (np.arange(len(of)) - np.repeat(np.cumsum(counts) - counts, counts)) / counts[of]
        part = np.stack((share, share + 1 / counts[of]))
        ways = tangents(self.path.segments, np.tile(segment[of], 2), (t0[of] + (t1 - t0)[of] * part).ravel())
        return points[of] + ahead[of] * share[:, None], ways[:len(of)], ways[len(of):]

    @cached_property
    def line(self) -> LineString:
        """The chords, prepared where they have any length."""
        made = LineString(self.points)
        if made.length > 0:
            shapely.prepare(made)
        return made

    @cached_property
    def crossing(self) -> Vec2 | None:
        """A point where the wall crosses or touches itself, or None."""
        return crosses_itself(self.path, self.sagitta)

    @cached_property
    def area(self) -> Polygon:
        """The inside; where the wall crosses itself, what its windings enclose."""
        made = Polygon(self.points)
        if not made.is_valid:
            # By lines it would take minutes for some hundred crossings, and leave out what a wall winds about twice.
            made = shapely.make_valid(made, method="structure")
        shapely.prepare(made)
        return made

    # ---- quick, within the sagitta -----------------------------------------
    def about(self, points: np.ndarray) -> np.ndarray:
        """Signed distance (n,) of points (n, 2), positive inside, within the sagitta of the truth; mm."""
        spots = shapely.points(points)
        far = shapely.distance(self.line, spots)
        return np.where(shapely.intersects(self.area, spots), far, -far)

    def outermost(self, points: np.ndarray) -> tuple[float, int]:
        """(signed distance in mm as about, number) of the one of some points (n, 2) in a row that lies farthest outside."""
        # From one to another the distance changes by no more than they are apart: most are told by every eighth.
        some = np.arange(0, len(points), _STRIDE)
        known = self.about(points[some])
        own = np.arange(len(points)) // _STRIDE
        apart = points - points[some][own]
        maybe = np.flatnonzero(known[own] - np.hypot(apart[:, 0], apart[:, 1]) <= known.min() + TOUCH)
        depths = self.about(points[maybe])
        k = int(np.argmin(depths))
        return float(depths[k]), int(maybe[k])

    def deepest(self, points: np.ndarray) -> tuple[float, int | None]:
        """(how deep the deepest of some points (n, 2) lies inside, mm, as about; its number); (0, None) where none lies inside."""
        x0, y0, x1, y1 = self.path.box
        x, y = points[:, 0], points[:, 1]
        maybe = np.flatnonzero((x >= x0) & (x <= x1) & (y >= y0) & (y <= y1))
        if not maybe.size:
            return 0.0, None
        depths = self.about(points[maybe])
        k = int(np.argmax(depths))
        return (float(depths[k]), int(maybe[k])) if depths[k] > 0 else (0.0, None)

    def stretches(self, start: Vec2, way: Vec2) -> list[tuple[float, float]]:
        """Where the ray from `start` along the unit vector `way` runs inside the closed wall: (enters, leaves) in mm.

        In order of distance; `enters` is 0 when the start lies inside. Exact where the ray crosses the wall.
        """
        known = self._rays.get((start, way))
        if known is None:
            if len(self._rays) >= _MOST_RAYS:
                self._rays.clear()
            known = self._rays[start, way] = self._stretches(start, way)
        return known

    def _stretches(self, start: Vec2, way: Vec2) -> list[tuple[float, float]]:
        flat, segment, t0, t1 = self._flat
        x, y = self._columns
        aside = x * way[1] - y * way[0] - (start[0] * way[1] - start[1] * way[0])
        above = aside > 0
        hits = []
        for k in (above[1:] != above[:-1]).nonzero()[0].tolist():
            (px, py), (qx, qy) = flat[k:k + 2].tolist()
            here, there = aside[k:k + 2].tolist()
            share = here / (here - there)
            rough = (px + (qx - px) * share - start[0]) * way[0] + (py + (qy - py) * share - start[1]) * way[1]
            a, b = t0.item(k), t1.item(k)
            hits.append(ray_hit(self.path.segments[segment[k]], a + (b - a) * share, start, way, rough))
        hits.sort()
        return [(max(0.0, a), b) for a, b in zip(hits[::2], hits[1::2], strict=True) if b > 0]

    @cached_property
    def _rays(self) -> dict[tuple[Vec2, Vec2], list[tuple[float, float]]]:
        """Rays already looked along: several checks ask for the same bore's axis."""
        return {}

    @cached_property
    def _feet(self) -> dict[Vec2, Foot]:
        """Feet already found: one check asks for the same bore's several times over."""
        return {}

    @cached_property
    def _columns(self) -> tuple[np.ndarray, np.ndarray]:
        """x and y of the points, each in one piece of memory."""
        return np.ascontiguousarray(self.points[:, 0]), np.ascontiguousarray(self.points[:, 1])

    # ---- exact -----------------------------------------------------------
    def foot(self, p: Vec2) -> Foot:
        """The nearest point of the exact wall."""
        known = self._feet.get(p)
        if known is None:
            if len(self._feet) >= _MOST_RAYS:
                self._feet.clear()
            known = self._feet[p] = self._foot(p)
        return known

    def _foot(self, p: Vec2) -> Foot:
        best = None
        for i, t in self._valleys(p):
            found = settle_point(self.path, i, t, p)
            if best is None or found[0] < best[0]:
                best = found
        distance, point, i, t = best
        return Foot(point, distance, self.path.segments[i].tangent(t), i, t)

    def inside(self, p: Vec2) -> float:
        """Exact distance from p to the wall in mm, positive inside the closed wall and negative outside."""
        foot = self.foot(p)
        if foot.distance <= TOUCH / 10:
            return 0.0
        return foot.distance if self.holds(p, foot) else -foot.distance

    def holds(self, p: Vec2, foot: Foot) -> bool:
        """Whether the closed wall holds p; `foot` is p's nearest point."""
        if foot.distance > 4 * self.sagitta or not 0 < foot.t < 1:
            return bool(shapely.intersects_xy(self.area, *p))
        side = v.cross(foot.tangent, v.sub(p, foot.point))
        return side >= 0 if self.path.area >= 0 else side <= 0

    def to(self, other: Wall) -> tuple[float, Vec2, Vec2]:
        """(distance in mm, point here, point there) between two exact walls; 0 where their chords meet."""
        if shapely.is_prepared(other.line):
            here, there = shapely.shortest_line(self.line, other.line).coords[:]
        else:  # a prepared line that is asked for the place nearest to one without length ends the program
            there, here = shapely.shortest_line(other.line, self.line).coords[:]
        if here == there:
            return 0.0, here, there
        best = self._settled(here, other, there)
        # Where the chords lie a little farther apart the curves may be nearer: each strays from its chords by a sagitta.
        places = valleys(self, other, best[0] + self.sagitta + other.sagitta)
        for here, there in places if len(places) > 1 else ():
            best = min(best, self._settled(here, other, there), key=itemgetter(0))
        return best

    def _settled(self, here: Vec2, other: Wall, there: Vec2) -> tuple[float, Vec2, Vec2]:
        """As `to`, from a point on the chords of each."""
        i, s = self._place(here)
        k, t = other._place(there)
        return settle(self.path, i, s, other.path, k, t)

    @cached_property
    def chords(self) -> np.ndarray:
        """Each chord by itself."""
        return shapely.linestrings(np.stack((self.points[:-1], self.points[1:]), axis=1))

    @cached_property
    def chord_tree(self) -> shapely.STRtree:
        """The chords in a tree, by their numbers."""
        return shapely.STRtree(self.chords)

    def segment_of(self, chord: int) -> int:
        """Index of the path's segment that a chord stands for; chord i runs from points[i] to points[i + 1]."""
        return int(self._flat[1][chord])

    def _valleys(self, p: Vec2) -> list[tuple[int, float]]:
        """Places (segment, t) on the chords that may be nearest to p on the exact curve: at most one a segment."""
        _, segment, t0, t1 = self._flat
        share, far = self._to_chords(p)
        near = np.flatnonzero(far <= far.min() + 2 * self.sagitta)
        best: dict[int, tuple[float, float]] = {}
        for k in near.tolist():
            i = int(segment[k])
            if i not in best or far[k] < best[i][0]:
                best[i] = (float(far[k]), float(t0[k] + (t1[k] - t0[k]) * share[k]))
        return [(i, t) for i, (_, t) in best.items()]

    def _to_chords(self, p: Vec2) -> tuple[np.ndarray, np.ndarray]:
        """(share of each chord at which it comes nearest to p, distance there in mm)."""
        x, y, dx, dy, per = self._chords
        wx, wy = p[0] - x, p[1] - y
        share = np.minimum(np.maximum((wx * dx + wy * dy) * per, 0.0), 1.0)
        return share, np.hypot(wx - dx * share, wy - dy * share)

    @cached_property
    def _chords(self) -> tuple[np.ndarray, ...]:
        """x, y of each chord's start, dx, dy to its end, and one over its squared length (0 for none)."""
        x, y = self._columns
        dx, dy = np.diff(x), np.diff(y)
        squared = dx * dx + dy * dy
        return x[:-1], y[:-1], dx, dy, np.where(squared > 0, 1 / np.maximum(squared, 1e-300), 0.0)

    def _place(self, q: Vec2) -> tuple[int, float]:
        """(segment, t) of a point that lies on a chord."""
        _, segment, t0, t1 = self._flat
        share, far = self._to_chords(q)
        k = int(np.argmin(far))
        return int(segment[k]), float(t0[k] + (t1[k] - t0[k]) * share[k])


def valleys(one: Wall, two: Wall, within: float) -> list[tuple[Vec2, Vec2]]:
    """(point on the chords of one, point on those of the other) wherever these come nearest to each other, and nearer than `within` mm."""
    (few, flip), many = ((one, False), two) if len(one.points) <= len(two.points) else ((two, True), one)
    i, k = many.chord_tree.query(few.chords, predicate="dwithin", distance=within)
    far = shapely.distance(few.chords[i], many.chords[k])
    seen: set[tuple[int, int]] = set()
    found = []
    for at in np.argsort(far, kind="stable").tolist():
        a, b = int(i[at]), int(k[at])
        # A pair of chords next to one that is nearer lies on the slope of its valley.
        if not seen.intersection(_beside(a, b, len(few.chords), len(many.chords))):
            found.append(tuple(shapely.shortest_line(few.chords[a], many.chords[b]).coords))
        seen.add((a, b))
    return [(q, p) if flip else (p, q) for p, q in found]


def _beside(a: int, b: int, few: int, many: int) -> list[tuple[int, int]]:
    """A pair of chords and those next to it, by their numbers: round a closed wall."""
    return [((a + x) % few, (b + y) % many) for x in (-1, 0, 1) for y in (-1, 0, 1)]


def oblong(start: Vec2, direction: Vec2, length: float, half: float) -> Path:
    """The rectangle in plan of a level cylinder: `length` along a unit direction, `half` to either side; mm."""
    return ring(oblong_corners(start, direction, length, half))


def oblong_corners(start: Vec2, direction: Vec2, length: float, half: float) -> tuple[Vec2, ...]:
    """The corners of the same, in order round it."""
    out = v.left(direction)
    end = v.along(start, direction, length)
    return v.along(start, out, -half), v.along(end, out, -half), v.along(end, out, half), v.along(start, out, half)


def ring(corners: tuple[Vec2, ...]) -> Path:
    """The closed path of straight lines through some corners."""
    return Path(tuple(Line(p, q) for p, q in zip(corners, corners[1:] + corners[:1], strict=True)), closed=True)
