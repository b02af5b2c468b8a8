"""Holes as they are drilled, held against the holes that a layout asks for."""

from __future__ import annotations

from geometry import vectors as v
from geometry.layout.book import Bored
from geometry.solids.drilling import Drilling
from geometry.tolerance import SAME_HOLE
from geometry.vectors import Vec3

FARTHEST = 5000.0
"""What the layout's file takes of a coordinate, mm: more could not be opened again."""
DECIMALS = 6
"""Of a millimetre, in what is written down."""


def bored(drilling: Drilling) -> Bored | None:
    """What the wood has when this is drilled; None for a hole so far out that no file can hold it. Screws and pins begin at the
    seat, where they are drilled by hand; from the square edge they are on the same line."""
    small = drilling.pilot or drilling.role == "pin"
    at, end = drilling.mark if drilling.mark is not None and not small else drilling.start, drilling.end
    if max(map(abs, (*at, *end))) > FARTHEST:
        return None
    return Bored(at=_rounded(at), end=_rounded(end), diameter=drilling.diameter, through=drilling.through)


def on_axis(was: Bored, now: Bored) -> bool:
    """Whether two holes lie on one line and are drilled the same way, to within SAME_HOLE; of two that come through it does not
    matter from where."""
    way, length = _way(was), v.distance3(was.at, was.end)
    turned = _along(way, was.at, now.end) <= _along(way, was.at, now.at)
    if length <= SAME_HOLE or turned and not (was.through and now.through):
        return v.distance3(was.at, now.at) <= SAME_HOLE and v.distance3(was.end, now.end) <= SAME_HOLE
    return all(v.distance3(point, v.along3(was.at, way, _along(way, was.at, point))) <= SAME_HOLE for point in (now.at, now.end))


def deeper(was: Bored, now: Bored) -> float:
    """mm by which a hole on the axis of another goes deeper into the wood; below 0 less deep; 0 for two that come through."""
    return 0.0 if was.through and now.through else _along(_way(was), was.end, now.end)


def same_hole(was: Bored, now: Bored) -> bool:
    """Whether what is drilled is what is asked for: place, direction, width and depth, to within SAME_HOLE. How deep a hole
    is that comes through hangs on the wood alone, and where the drill goes in on how wide the blank still is."""
    return (on_axis(was, now) and was.through == now.through and abs(deeper(was, now)) <= SAME_HOLE
            and abs(now.diameter - was.diameter) <= SAME_HOLE)


def _way(hole: Bored) -> Vec3:
    """Unit vector into the wood; zero for a hole without depth."""
    length = v.distance3(hole.at, hole.end)
    return tuple((e - a) / length for a, e in zip(hole.at, hole.end, strict=True)) if length else (0.0, 0.0, 0.0)


def _along(way: Vec3, start: Vec3, point: Vec3) -> float:
    """How far a point lies from another along a unit vector, mm."""
    return sum((p - s) * w for p, s, w in zip(point, start, way, strict=True))


def _rounded(point: Vec3) -> Vec3:
    x, y, z = (round(float(value), DECIMALS) + 0.0 for value in point)
    return x, y, z
