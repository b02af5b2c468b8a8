"""A slot's wall and its ramp in small pieces, prepared once for all the strings that dive into the slot."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_wall, remembered_by_size
from geometry.curves import Arc, Line
from geometry.solids.ramps import NutEnd, RampCut, beside_round
from geometry.solids.walls import Wall
from geometry.strings.near_curve import Pieces, Stretch
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

_ROUND = 0.05
"""Sine of the angle to the slot's axis above which a wall in the slot's nut end belongs to that end's rounding."""

ACROSS = math.sqrt(0.5)
"""Sine of the angle between a string and a wall above which the wall is an end for it, not a side."""


class CutUp(Struct, frozen=True, eq=False):
    """A wall in pieces, with the middle and the direction of each: the same for every string."""

    pieces: Pieces
    middles: np.ndarray
    tangents: np.ndarray


@remembered_by_size(256, of_wall)
def cut_up(wall: Wall) -> CutUp:
    """The pieces of a wall: a sixteenth of a half turn of an arc, a sixteenth of a cubic, a line whole."""
    found: list[Stretch] = []
    for segment in wall.path.segments:
        pieces = max(4, math.ceil(abs(segment.sweep) / (math.pi / 16))) if isinstance(segment, Arc) else 16
        found += Stretch(segment, 0.0, 1.0).cut(pieces)
    middles = [(s.segment, (s.t0 + s.t1) / 2) for s in found]
    return CutUp(Pieces(found), np.array([segment.point(t) for segment, t in middles]),
                 np.array([segment.tangent(t) for segment, t in middles]))


@remembered_by_size(256, of_wall)
def rounding(wall: Wall, end: NutEnd) -> np.ndarray:
    """Which pieces of a wall belong to the rounding of its nut end, as a mask."""
    wall = cut_up(wall)
    return np.array([of_rounding(end, tuple(p), tuple(t)) for p, t in zip(wall.middles.tolist(), wall.tangents.tolist(),
                                                                          strict=True)], dtype=bool)


def of_rounding(end: NutEnd, p: Vec2, tangent: Vec2) -> bool:
    """Whether a piece of wall at p belongs to the rounding of a nut end."""
    return v.dot(v.sub(p, end.at), end.axis) <= end.room + 1e-6 and abs(v.cross(tangent, end.axis)) > _ROUND


class Sides(Struct, frozen=True, eq=False):
    """What the pieces of a wall are to one string, by their numbers. What ends the slot before the string's post is nothing to it."""

    pieces: Pieces
    ends: np.ndarray
    """which end the slot behind the post"""
    askew: np.ndarray
    """of these, which do not lie across the string's way"""
    beside: np.ndarray
    """which run along with it"""


def sides_of(wall: Wall, end: NutEnd, ways: Sequence[Vec2], posts: Sequence[Vec2]) -> list[Sides]:
    """Of each string the sides of a wall: from its unit direction and where it touches its post. All strings are told at once."""
    pieces = cut_up(wall)
    (x, y), (post_x, post_y) = (np.array(of).T[:, :, None] for of in (ways, posts))
    across = np.abs(pieces.tangents[:, 0] * y - pieces.tangents[:, 1] * x)
    ending = rounding(wall, end) | (across >= ACROSS - 1e-12)
    ends = ending & ((pieces.middles[:, 0] - post_x) * x + (pieces.middles[:, 1] - post_y) * y < 0)
    return [Sides(pieces.pieces, *[mask.nonzero()[0] for mask in masks]) for masks in zip(ends, ends & (across < ACROSS), ~ending, strict=True)]


class Rim(Struct, frozen=True, eq=False):
    """Pieces of a wall and how they lie to a ramp."""

    pieces: Pieces
    of: np.ndarray
    """the numbers of the wall's pieces that they are, or are parts of"""
    under: np.ndarray
    """which lie on the ramp, as a mask"""
    tops: list[float]
    """how deep the wood begins at the shallower end of each, mm below the face"""


@remembered_by_size(256, of_wall)
def rims(wall: Wall, ramp: RampCut) -> tuple[Rim, ...]:
    """The pieces of a wall that lie beside a ramp or between its sides, then the parts of those that lead across, cut at the sides."""
    pieces = cut_up(wall).pieces
    (across, along), (other, behind) = (_about(points, ramp) for points in (pieces.p, pieces.q))
    astride = (_beside(across, ramp) != _beside(other, ramp)) & (np.minimum(along, behind) <= ramp.reach)
    found = [_rim(pieces.pick((~astride).nonzero()[0]), (~astride).nonzero()[0], ramp)]
    cut = astride.nonzero()[0]
    if cut.size:
        parts = [_cut_at_sides(pieces.stretches[i], ramp) for i in cut.tolist()]
        found.append(_rim(Pieces([part for each in parts for part in each]), np.repeat(cut, [len(each) for each in parts]), ramp))
    return tuple(found)


def _rim(pieces: Pieces, of: np.ndarray, ramp: RampCut) -> Rim:
    under = np.ones(len(pieces), dtype=bool)
    for points in (pieces.p, pieces.q):
        across, along = _about(points, ramp)
        under &= (_beside(across, ramp) == 0) & (along >= 0) & (along <= ramp.reach + 1e-9)
    tops = np.minimum(*(ramp.levels(points) for points in (pieces.p, pieces.q)))
    return Rim(pieces, of, under, np.where(under, tops, 0.0).tolist())


def _about(points: np.ndarray, ramp: RampCut) -> tuple[np.ndarray, np.ndarray]:
    """(how far points lie to the right of a ramp's middle line, how far along it from its start), mm."""
    from_start = points - np.array(ramp.start)
    return crossed(from_start, ramp.axis), from_start @ np.array(ramp.axis)


def _beside(across: np.ndarray, ramp: RampCut) -> np.ndarray:
    """Where points lie to a ramp: 1 beyond its right side, -1 beyond its left one, 0 between them."""
    return np.where(np.abs(across) > ramp.half + 1e-9, np.sign(across), 0.0)


def _cut_at_sides(stretch: Stretch, ramp: RampCut) -> list[Stretch]:
    """A stretch that leads across one side of a ramp, or across both, in parts."""
    segment = stretch.segment
    places = [stretch.t0, stretch.t1]
    for side in (1.0, -1.0):
        def beyond(t: float, side: float = side) -> bool:
            return side * v.cross(v.sub(segment.point(t), ramp.start), ramp.axis) > ramp.half

        low, high = stretch.t0, stretch.t1
        outside = beyond(low)
        if beyond(high) != outside:
            for _ in range(50):
                middle = (low + high) / 2
                low, high = (middle, high) if beyond(middle) == outside else (low, middle)
            places.append(low)
    places.sort()
    return [Stretch(segment, a, b) for a, b in zip(places, places[1:], strict=False)]


@remembered_by_size(256, of_wall)
def ramp_lines(wall: Wall, ramp: RampCut, rounded: float | None) -> Pieces:
    """The line where a ramp leaves the face, then its left and its right side, in plan.

    Beside the rounded end of the slot a side goes on past the nut end, as far as there is wood: `rounded` is the radius of
    the end of a straight slot (mm), None for a drawn one, of which it may be told up to 4 FLAT too long.
    """
    corners = [(ramp.corner(0.0, 1.0), ramp.corner(0.0, -1.0)), *((ramp.corner(0.0, s), ramp.corner(_side_ends(wall, ramp, rounded, s), s))
                                                                  for s in (1.0, -1.0))]
    return Pieces([Stretch(Line(*ends), 0.0, 1.0) for ends in corners])


def _side_ends(wall: Wall, ramp: RampCut, rounded: float | None, side: float) -> float:
    """How far from its start the wood beside a ramp goes on that side, mm."""
    if rounded is not None:
        return beside_round(ramp, rounded)
    # As wide as the slot, the side only touches its wall: asked a hair inside it, the ray comes in.
    inside = v.along(ramp.corner(0.0, side), v.left(ramp.axis), -side * TOUCH)
    return min([ramp.reach, *(enters + 4 * FLAT for enters, _ in wall.stretches(inside, ramp.axis)[:1])])


def crossed(many: np.ndarray, one: Vec2) -> np.ndarray:
    """Cross products of many vectors (n, 2) with one."""
    return many[:, 0] * one[1] - many[:, 1] * one[0]
