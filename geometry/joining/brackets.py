"""Dimensions that are drawn as three lines from one corner of an outline to another, as brackets are."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import Polygon

from geometry import vectors as v
from geometry.curves import Line, Segment
from geometry.joining.chains import Chain, link
from geometry.tolerance import FLAT

OFF = 0.01
"""mm a mm by which a line strays at the most from another one, or from what is square to that"""
SHORT = 50.0
"""mm from an outline to the line of its dimension at the most: what stands out farther may be a head (common practice, no source)"""
OVER = 0.25
"""Part of the box of such lines beyond which they lie over an outline, and not beside it"""
WIDEST = 110.0
"""mm between the sides of a neck or a tip (common practice, no source)"""


def brackets(segments: Sequence[Segment], nodes: np.ndarray, chains: Sequence[Chain]) -> list[Chain]:
    """Those of the chains that are three lines square to each other beside what is drawn end to end all round without them, or about it.

    Both ends lie on that. Where two of the lines run straight on from its sides, no farther apart than those of a neck or a tip, they are
    its sides. Of an oblong outline all but one side are three such lines too: nothing is end to end without both, and the longer are its own.
    `nodes`: (n, 2), the numbers of the ends of all segments; sources of chains are numbers of segments.
    """
    found = sorted((chain for chain in chains if not chain.path.closed and _is_bracket(chain)), key=_legs)
    shortest = {frozenset(_loose(chain, nodes)): chain for chain in reversed(found)}
    return _kept(found, segments, nodes, chains) or _kept(list(shortest.values()), segments, nodes, chains)


def _kept(found: list[Chain], segments: Sequence[Segment], nodes: np.ndarray, chains: Sequence[Chain]) -> list[Chain]:
    """Those of these brackets that are beside what is end to end without them."""
    while found:
        without = {i for chain in found for i in chain.sources}
        rest, _ = link([(i, segments[i]) for chain in chains for i in chain.sources if i not in without])
        rings = [ring for ring in rest if ring.path.closed]
        kept = [chain for chain in found if any(_beside(chain, ring, segments, nodes) for ring in rings)]
        if len(kept) == len(found):
            break
        found = kept
    return found


def _legs(chain: Chain) -> float:
    """How far a bracket reaches from where it begins and ends, mm: the shorter of both."""
    one, _, other = chain.path.segments
    return min(one.length(), other.length())


def _is_bracket(chain: Chain) -> bool:
    lines = chain.path.segments
    if len(lines) != 3 or not all(isinstance(line, Line) for line in lines):
        return False
    one, across, other = (line.tangent(0) for line in lines)
    return v.dot(one, other) < 0 and max(abs(v.cross(one, other)), abs(v.dot(one, across)), abs(v.dot(across, other))) <= OFF


def _beside(chain: Chain, ring: Chain, segments: Sequence[Segment], nodes: np.ndarray) -> bool:
    one, across, other = chain.path.segments
    ends = _loose(chain, nodes)
    if len(ends) != 2 or not ends <= set(nodes[list(ring.sources)].ravel().tolist()):
        return False
    inside = shapely.make_valid(Polygon(ring.path.flatten(FLAT)))
    if inside.contains(shapely.Point(across.point(0.5))):
        return False
    box = Polygon([one.p0, one.p1, other.p0, other.p1])
    if box.intersection(inside).area >= min(inside.area / 2, OVER * box.area):
        return True
    if _legs(chain) > SHORT:
        return False
    legs = v.scale(one.tangent(0), -1.0), other.tangent(0)
    return across.length() > WIDEST or not all(_runs_on(place, leg, ring) for place, leg in zip((one.p0, other.p1), legs, strict=True))


def _loose(chain: Chain, nodes: np.ndarray) -> set[int]:
    """The numbers of both ends of an open chain."""
    found, times = np.unique(nodes[list(chain.sources)], return_counts=True)
    return set(found[times == 1].tolist())


def _runs_on(place: tuple[float, float], leg: tuple[float, float], ring: Chain) -> bool:
    """Whether a piece of a ring goes on from a place in the direction in which a leg comes to it."""
    leaving = [s.tangent(0) if v.distance(s.start, place) <= FLAT else v.scale(s.tangent(1), -1.0)
               for s in ring.path.segments if min(v.distance(s.start, place), v.distance(s.end, place)) <= FLAT]
    return any(v.dot(leg, way) > 0 and abs(v.cross(leg, way)) <= OFF for way in leaving)
