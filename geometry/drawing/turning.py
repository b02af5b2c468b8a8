"""The body of a head seen from any side, in parallel projection: patches from far to near.

The picture's plane is in mm, x to the right and y up. At yaw = tilt = 0 the face
is seen squarely, tip up, as in the opened-out view.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from msgspec import Struct

from geometry.drawing.solid import Ring, Round, Solid
from geometry.vectors import Vec2, Vec3

ROUND = 28
"""Chords round the end of a bore."""
TONES = 8
"""Steps of shade round a curved wall."""
LIGHT = np.array([-0.55, 0.45, -0.70])
"""Where the light comes from in the picture: left, above, before it."""

_CIRCLE = np.linspace(0.0, 2 * math.pi, ROUND, endpoint=False)


class View(Struct, frozen=True):
    """Where one looks from: the head turned about its own length by `yaw`, then its tip towards the eye by `tilt` (rad)."""

    yaw: float = 0.0
    tilt: float = 0.0

    @property
    def matrix(self) -> np.ndarray:
        """(3, 3) rotation: rows are the picture's right, up and depth (away from the eye) in the head's frame."""
        c, s = math.cos(self.yaw), math.sin(self.yaw)
        turned = np.array([[c, 0.0, s], [0.0, 1.0, 0.0], [-s, 0.0, c]])
        c, s = math.cos(self.tilt), math.sin(self.tilt)
        return np.array([[1.0, 0.0, 0.0], [0.0, c, -s], [0.0, s, c]]) @ turned


FACE = View()
BACK = View(math.pi, 0.0)
TREBLE_EDGE = View(math.pi / 2, 0.0)
BASS_EDGE = View(-math.pi / 2, 0.0)
TIP = View(math.pi, -math.pi / 2)


class Patch(Struct, frozen=True, eq=False):
    """Something to paint: points (n, 2) in the picture, closed unless it is a line.

    `tone` runs from 0 (in the light) to 1 (in shade). `openings` are rings left free.
    """

    points: np.ndarray
    style: str
    owner: str = ""
    tone: float = 0.0
    line: bool = False
    openings: tuple[np.ndarray, ...] = ()


def project(points: np.ndarray, view: View) -> np.ndarray:
    """(n, 3) picture coordinates of points (n, 3): right, up, depth in mm."""
    return points @ view.matrix.T


def spot(point: Vec3, view: View) -> Vec2:
    """Where a point of space is seen in the picture, mm."""
    x, y, _ = project(np.array([point]), view)[0]
    return (float(x), float(y))


def turned(body: Solid, view: View) -> list[Patch]:
    """Everything of the body, in the order in which it is painted.

    The wood is glass: what is inside it is painted after the far walls and
    before the near ones. Nothing is hidden, only paler.
    """
    matrix = view.matrix
    patches = [_box(body, matrix)]
    if body.outline is not None:
        patches += _wood(body, matrix)
    inside = [(_depth(r, matrix), _cylinder(r, matrix)) for r in body.rounds]
    inside += [(float((plate @ matrix[2]).mean()), Patch(plate @ matrix[:2].T, "seat", owner))
               for owner, plate in body.plates]
    inside += [(float((rim @ matrix[2]).mean()), Patch(np.vstack([rim, rim[:1]]) @ matrix[:2].T, "solid edge", owner, line=True))
               for owner, rim in body.flats]
    patches += [patch for _, patch in sorted(inside, key=lambda pair: -pair[0])]
    patches += [Patch(ends @ matrix[:2].T, "axis", owner, line=True) for owner, ends in body.axes]
    if body.outline is not None:
        patches += [Patch(seam @ matrix[:2].T, "solid far edge", "blank", line=True) for seam in body.seams]
        patches += _near(body, matrix)
    return patches


def _lifted(points: np.ndarray, z: float) -> np.ndarray:
    return np.column_stack([points, np.full(len(points), z)])


def _levels(ring: Ring, matrix: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The ring's upper and lower rim in the picture, (n, 2) each."""
    return _lifted(ring.points, ring.top) @ matrix[:2].T, _lifted(ring.points, ring.bottom) @ matrix[:2].T


def _facing(ring: Ring, matrix: np.ndarray) -> np.ndarray:
    """Per chord: how squarely its wall faces the eye, 1 to -1."""
    return -(ring.normals @ matrix[2, :2])


def _tones(ring: Ring, matrix: np.ndarray) -> np.ndarray:
    normals = ring.normals @ matrix[:, :2].T
    bright = normals @ (LIGHT / np.linalg.norm(LIGHT))
    return np.clip(np.round((0.5 - 0.5 * bright) * TONES), 0, TONES) / TONES


def _normal(floor: np.ndarray) -> np.ndarray:
    """Out of the wood, square to a ramp's floor."""
    across = np.linalg.svd(floor - floor.mean(axis=0))[2][2]
    return across if across[2] < 0 else -across


def _tone(normal: np.ndarray, matrix: np.ndarray) -> float:
    bright = float(matrix @ normal @ (LIGHT / np.linalg.norm(LIGHT)))
    return float(np.clip(round((0.5 - 0.5 * bright) * TONES), 0, TONES)) / TONES


def _walls(ring: Ring, matrix: np.ndarray, style: str) -> list[Patch]:
    """The part of a wall that faces the eye, in strips of equal shade."""
    facing = _facing(ring, matrix)
    wanted = facing > 1e-9
    if not wanted.any():
        return []
    tones = _tones(ring, matrix)
    upper, lower = _levels(ring, matrix)
    count = len(upper)
    key = np.where(wanted, tones, -1.0)
    breaks = np.flatnonzero(key != np.roll(key, 1))
    first = int(breaks[0]) if len(breaks) else 0
    starts = [int(b) for b in breaks] or [0]
    made = []
    for number, start in enumerate(starts):
        if key[start] < 0:
            continue
        end = starts[number + 1] if number + 1 < len(starts) else first + count
        index = np.arange(start, end + 1) % count
        made.append(Patch(np.concatenate([upper[index], lower[index][::-1]]), style, ring.owner, float(key[start])))
    return made


def _wood(body: Solid, matrix: np.ndarray) -> list[Patch]:
    """The far side of the wood and what is cut into it."""
    ring = body.outline
    upper, lower = _levels(ring, matrix)
    face_near = matrix[2, 2] > 0
    near, far = (upper, lower) if face_near else (lower, upper)
    made = [Patch(near, "solid wood", "outline", 0.5), Patch(far, "solid wood", "outline", 0.5)]
    made += [Patch(p.points, "solid wood", "outline", 0.5) for p in _walls(ring, matrix, "solid wood")]
    for opening in body.openings:
        top, bottom = _levels(opening, matrix)
        if len(top) > 2 and opening.bottom >= ring.bottom and abs(matrix[2, 2]) > 1e-6:  # of a slot without width two points are left
            seen = shapely.intersection(shapely.polygons(top).buffer(0), shapely.polygons(bottom).buffer(0))
            made += [Patch(shapely.get_coordinates(part.exterior), "solid sky", opening.owner)
                     for part in shapely.get_parts(seen) if part.geom_type == "Polygon" and part.area > 1e-6]
        made += _walls(opening, matrix, "solid slot wall")
    made += [Patch(floor @ matrix[:2].T, "solid slope", owner, _tone(_normal(floor), matrix))
             for owner, floor in body.slopes]
    made.append(Patch(np.vstack([far, far[:1]]), "solid far edge", "outline", line=True))
    return made


def _near(body: Solid, matrix: np.ndarray) -> list[Patch]:
    """The near side of the wood, thin as glass, and its edges."""
    ring = body.outline
    upper, lower = _levels(ring, matrix)
    face_near = matrix[2, 2] > 0
    made = _walls(ring, matrix, "solid wall")
    rims = [_levels(o, matrix)[0 if face_near else 1] for o in body.openings
            if face_near or o.bottom >= ring.bottom]
    rims += [_lifted(floor[:, :2], ring.top) @ matrix[:2].T for _, floor in body.slopes if face_near]
    if abs(matrix[2, 2]) > 1e-6:
        made.append(Patch(upper if face_near else lower, "solid face", "outline", openings=tuple(rims)))
    for owner, floor in body.slopes:
        made += [Patch(np.vstack([rim, rim[:1]]) @ matrix[:2].T, style, owner, line=True) for rim, style in
                 ((_lifted(floor[:, :2], ring.top), "solid edge" if face_near else "solid far edge"), (floor, "solid far edge"))]
    for opening in body.openings:
        top, bottom = _levels(opening, matrix)
        for rim, near in ((top, face_near), (bottom, not face_near)):
            made.append(Patch(np.vstack([rim, rim[:1]]), "solid edge" if near else "solid far edge", opening.owner,
                              line=True))
    made.append(Patch(np.vstack([(near := upper if face_near else lower), near[:1]]), "solid edge", "outline",
                      line=True))
    facing = _facing(ring, matrix) > 0
    rims_of_sight = set(np.flatnonzero(facing != np.roll(facing, 1)))
    visible = facing | np.roll(facing, 1)
    for i in sorted(rims_of_sight | {c for c in ring.corners if visible[c]}):
        made.append(Patch(np.array([upper[i], lower[i]]), "solid edge", "outline", line=True))
    far = lower if face_near else upper
    made += [Patch(far[run], "solid edge", "outline", line=True) for run in _runs(facing)]
    return made


def _runs(facing: np.ndarray) -> list[np.ndarray]:
    """Indices of points along each stretch of chords that faces the eye."""
    count = len(facing)
    if facing.all():
        return [np.arange(count + 1) % count]
    starts = np.flatnonzero(facing & ~np.roll(facing, 1))
    made = []
    for start in starts:
        end = int(start)
        while facing[end % count]:
            end += 1
        made.append(np.arange(int(start), end + 1) % count)
    return made


def _depth(r: Round, matrix: np.ndarray) -> float:
    return float(matrix[2] @ (r.start + r.end) / 2)


def _cylinder(r: Round, matrix: np.ndarray) -> Patch:
    """The outline of a cylinder in the picture: the hull of its two ends."""
    axis = r.end - r.start
    length = float(np.linalg.norm(axis))
    axis = axis / length if length > 1e-9 else np.array([0.0, 0.0, 1.0])
    aside = np.cross(axis, [1.0, 0.0, 0.0] if abs(axis[0]) < 0.7 else [0.0, 1.0, 0.0])
    aside /= np.linalg.norm(aside)
    other = np.cross(axis, aside)
    rim = r.radius * (np.cos(_CIRCLE)[:, None] * aside + np.sin(_CIRCLE)[:, None] * other)
    points = np.concatenate([r.start + rim, r.end + rim]) @ matrix[:2].T
    hull = shapely.convex_hull(shapely.multipoints(points))
    return Patch(shapely.get_coordinates(hull)[:-1], r.style, r.owner)


def _box(body: Solid, matrix: np.ndarray) -> Patch:
    """The square blank as the lines of a box, in one stroke there and back."""
    (x0, y0, z0), (x1, y1, z1) = body.box
    corners = {(i, j, k): np.array([(x0, x1)[i], (y0, y1)[j], (z0, z1)[k]]) @ matrix[:2].T
               for i in (0, 1) for j in (0, 1) for k in (0, 1)}
    walk = [(0, 0, 0), (1, 0, 0), (1, 1, 0), (0, 1, 0), (0, 0, 0), (0, 0, 1), (1, 0, 1), (1, 0, 0), (1, 0, 1),
            (1, 1, 1), (1, 1, 0), (1, 1, 1), (0, 1, 1), (0, 1, 0), (0, 1, 1), (0, 0, 1)]
    return Patch(np.array([corners[step] for step in walk]), "fold", "blank", line=True)
