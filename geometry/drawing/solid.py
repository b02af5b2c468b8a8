"""The head as a body in space, ready to be looked at from any side: walls, faces and bores.

Everything is in mm in the frame of the head: +x treble, +y tip, +z into the wood.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_same, of_slot, remembered_by_size, remembered_of_each
from geometry.curves import Path
from geometry.curves.polygons import parts, polygon
from geometry.drawing.same import Same
from geometry.drawing.shapes import ring_path
from geometry.errors import GeometryError
from geometry.layout import Blank, Headstock, Loop, Nut, Slot, Tuner, loop_path, slot_path
from geometry.solids import frames, once_plugged
from geometry.solids.frames import Frame
from geometry.solids.ramps import ramp_cut
from geometry.solids.scarf import scarf_of
from geometry.strings.past_posts import post_length
from geometry.tolerance import TOUCH

SAGITTA = 0.05
"""How far a chord of a wall may stray from the curve, mm: under a pixel up to 20 pixels a mm."""
CORNER = math.radians(12)
"""A wall that turns more than this from chord to chord has an edge there."""

FAR = 1.0e4
"""Wider than any head, mm."""
SPOT = 32
"""Chords round a spot-faced seat."""


class Ring(Struct, frozen=True, eq=False):
    """An upright wall round the outline (`inward` False) or round an opening (`inward` True).

    `points` (n, 2) go round counter-clockwise, the first not repeated; the wall
    stands from z = `top` to z = `bottom`. `normals` (n, 2) point out of the wood,
    one a chord. `corners` are the indices of points with an edge.
    """

    owner: str
    points: np.ndarray
    normals: np.ndarray
    corners: tuple[int, ...]
    top: float
    bottom: float


class Round(Struct, frozen=True, eq=False):
    """A cylinder: a bore, a post or a string's stretch. `start`, `end` (3,) in mm."""

    owner: str
    style: str
    start: np.ndarray
    end: np.ndarray
    radius: float


class Solid(Struct, frozen=True, eq=False):
    """What there is to be seen of a layout in space."""

    outline: Ring | None
    openings: tuple[Ring, ...]
    rounds: tuple[Round, ...]
    plates: tuple[tuple[str, np.ndarray], ...]
    """(owner, four corners (4, 3)) of seats"""
    axes: tuple[tuple[str, np.ndarray], ...]
    """(owner, two ends (2, 3)) of side bores in the waste, from the seat to the mark on the square edge"""
    box: tuple[np.ndarray, np.ndarray]
    """lowest and highest corner of the square blank"""
    slopes: tuple[tuple[str, np.ndarray], ...] = ()
    """(slot, rim (n, 3) of a ramp's floor, each point as deep as the floor is there)"""
    flats: tuple[tuple[str, np.ndarray], ...] = ()
    """(tuner, rim (n, 3) of the bottom of its flat)"""
    seams: tuple[np.ndarray, ...] = ()
    """glue lines (n, 3) of veneers and of a scarf joint on the outline's wall"""


def solid(layout: Headstock) -> Solid:
    """The body of a layout. What makes no shape yet is left out: the checks say why."""
    thick = layout.blank.thickness
    outline = _outline(Same(layout.outline), thick)
    openings = (*(ring for slot in layout.to_rout if (ring := _opening(slot, thick)) is not None),
                *(ring for slot in layout.slots if slot.there for ring in _pocket(Same(layout.outline), slot, thick)))
    rounds, plates, axes, flats = [], [], [], []
    try:
        placed = frames(layout)
        drilled = once_plugged(layout)
    except GeometryError:
        placed, drilled = {}, ()
    for hole in drilled:
        for d in hole.drillings:
            rounds.append(Round(d.of, d.style, np.array(d.start), np.array(d.end), d.radius))
            if not d.upright and d.mark is not None and v.distance3(d.mark, d.start) > 0.5:
                axes.append((d.of, np.array([d.start, d.mark])))
    for tuner in layout.tuners if placed else ():
        frame, pattern = placed[tuner.id], layout.pattern(tuner.pattern)
        seat, post = pattern.seat, pattern.post
        level = 0.0 if frame.mount == "side" else thick
        corners = ((-seat.before, -seat.across / 2), (seat.behind, -seat.across / 2),
                   (seat.behind, seat.across / 2), (-seat.before, seat.across / 2))
        plates.append((tuner.id, np.array([frame.at(-a, b, level) for a, b in corners])))
        if tuner.flat is not None and frame.mount == "side":
            flats.append((tuner.id, _flat(frame, tuner, thick)))
        ends = (0.0, post_length(frame, post) * (1 if frame.mount == "side" else -1))
        rounds.append(Round(tuner.id, "post", *(np.array(frame.at(0.0, 0.0, w)) for w in ends), post.diameter / 2))
    b = layout.blank
    box = (np.array([-b.bass, -b.behind, 0.0]), np.array([b.treble, b.tip, thick]))
    slopes = tuple(slope for slot in layout.slots for slope in _slopes(slot, thick))
    return Solid(outline, openings, tuple(rounds), tuple(plates), tuple(axes), box, slopes, tuple(flats), () if outline is None else _seams(outline, b, layout.nut))


def _seams(ring: Ring, blank: Blank, nut: Nut) -> tuple[np.ndarray, ...]:
    """Round the head under each veneer; and where the wall crosses the joint, closed across face and back of the core."""
    around = np.vstack([ring.points, ring.points[:1]])
    levels = [bottom if surface == "face" else top for surface, top, bottom in blank.veneers]
    found = [np.column_stack([around, np.full(len(around), z)]) for z in levels]
    joint = scarf_of(blank, nut)
    if joint is not None:
        slanted = _cut_at(np.column_stack([around, [joint.level(point) for point in around.tolist()]]), (joint.top, joint.bottom))
        inside = (slanted[:, 2] >= joint.top - TOUCH) & (slanted[:, 2] <= joint.bottom + TOUCH)
        found += [slanted[run] for run in np.split(np.arange(len(slanted)), np.flatnonzero(np.diff(inside)) + 1) if inside[run[0]] and len(run) > 1]
        for back, z in ((False, joint.top), (True, joint.bottom)):
            line = shapely.LineString([(x, joint.y(x, back)) for x in (-FAR, FAR)])
            across = shapely.intersection(shapely.Polygon(ring.points).buffer(0), line)
            found += [np.column_stack([shapely.get_coordinates(part), np.full(2, z)]) for part in shapely.get_parts(across)
                      if part.geom_type == "LineString" and part.length > 0]
    return tuple(found)


def _cut_at(points: np.ndarray, levels: tuple[float, float]) -> np.ndarray:
    """A line in space (n, 3) with one point more wherever it passes one of the levels z between two of its own."""
    at, rise = np.arange(len(points)), np.diff(points[:, 2])
    steep = np.flatnonzero(rise)
    shares = [(level - points[steep, 2]) / rise[steep] for level in levels]
    more = np.unique(np.concatenate([at, *((steep + share)[(share > 0) & (share < 1)] for share in shares)]))
    return np.column_stack([np.interp(more, at, column) for column in points.T])


@remembered_by_size(16, of_same)
def _outline(loop: Same[Loop], thick: float) -> Ring | None:
    try:
        return _ring("outline", loop_path(loop.value), 0.0, thick, False)
    except GeometryError:
        return None


@remembered_by_size(64, of_slot)
def _opening(slot, thick: float) -> Ring | None:
    try:
        path = slot_path(slot)
    except GeometryError:
        return None
    return _ring(slot.id, path, 0.0, slot.floor(thick), True)


@remembered_of_each(12, of_same, each=64)
def _pocket(outline: Same[Loop], slot: Slot, thick: float) -> tuple[Ring, ...]:
    """What lies in the head of a pocket that is there: where it runs on into the neck or the waste the body ends."""
    try:
        inside = parts(polygon(slot_path(slot)) & polygon(loop_path(outline.value)))
    except GeometryError:
        return ()
    return tuple(_ring(slot.id, ring_path(part.exterior).counter_clockwise(), 0.0, slot.floor(thick), True) for part in inside)


@remembered_by_size(64, of_slot)
def _slopes(slot: Slot, thick: float) -> tuple[tuple[str, np.ndarray], ...]:
    """The floor of a slot's ramp where the slot has not swallowed it; nothing for a slot without one or without an inside."""
    try:
        cut = ramp_cut(slot)
        if cut is None:
            return ()
        floor = slot.floor(thick)
        left = parts(polygon(cut.path()) - polygon(slot_path(slot)))
    except GeometryError:
        return ()
    rims = (np.asarray(part.exterior.coords)[:-1] for part in left)
    return tuple((slot.id, np.array([(x, y, min(cut.level((x, y)), floor)) for x, y in rim])) for rim in rims)


def _flat(frame: Frame, tuner: Tuner, thick: float) -> np.ndarray:
    """The rim of a flat's bottom, kept within the wood: a box over the whole thickness, or a round spot."""
    half, level = tuner.flat.size / 2, frame.origin[2]
    if tuner.flat.shape == "flat":
        corners = ((-half, -level), (half, -level), (half, thick - level), (-half, thick - level))
    else:
        turn = np.linspace(0.0, 2 * math.pi, SPOT, endpoint=False)
        corners = tuple((half * math.cos(a), min(max(half * math.sin(a), -level), thick - level)) for a in turn)
    return np.array([frame.at(u, down, 0.0) for u, down in corners])


def _ring(owner: str, path: Path, top: float, bottom: float, inward: bool) -> Ring:
    points = path.counter_clockwise().flatten(SAGITTA)[:-1]
    keep = np.hypot(*(points - np.roll(points, 1, axis=0)).T) > 1e-6
    points = points[keep]
    chords = np.roll(points, -1, axis=0) - points
    normals = np.column_stack([chords[:, 1], -chords[:, 0]]) / np.hypot(*chords.T)[:, None]
    turn = (np.roll(normals, 1, axis=0) * normals).sum(axis=1)
    corners = tuple(int(i) for i in np.flatnonzero(turn < math.cos(CORNER)))
    return Ring(owner, points, -normals if inward else normals, corners, top, bottom)
