"""Where the edge of a side and the walls of its slot must stand, so that its strings run free to their posts.

Each string comes straight from the nut and goes down to its post. As long as
it is above the face it may pass over anything; from there on the slot has to
hold it. Half widths are tried one by one, with every taper that a drill still
enters without skating, and the one is taken at which the strings bend least
at the nut and the slot is not too wide.

Along y from the nut line; across, outwards positive, from the line where the
strings of the two sides part. Lengths in mm.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec import Struct

from geometry.beginning.needs import SLOT_BEFORE, SLOT_OUTER, SideNeeds
from geometry.layout import Nut, String
from geometry.layout.shop import Margins

AIR = Margins().string_air + 0.15
"""Beside a string: its margin, and what belly and tilt of the edge take."""
SPARE = 0.4
"""Kept between a slot and the line that it must not cross."""
PLAIN = 20.0
"""A slot no wider than this keeps straight walls; where strings want more it opens towards the nut."""
RAMP, HALF_SLOT = 13.0, 7.0
"""From where the first string comes down to the face to the middle of the slot's round nut end, so that its ramp stays
short; and half of what a slot is wide."""
_STEP, _STRIDE, _STEPS, _TAPERS = 0.5, 2.5, 13, 7
_GENTLE, _MOST = 5.0, 9.0
"""degrees: up to the first a side angle costs little, beyond the second the layout is only taken for want of another"""
_OPENS = 3.0
"""What a slot costs whose walls are not parallel, in degrees of bend"""


class Lane(Struct, frozen=True):
    """Half widths of the edge where its run begins and ends, how far in from it the inner wall stands at the nut end and
    at the tip end of the slot, and how far before its first bore the slot's nut end has its middle."""

    begin: float
    end: float
    inner_nut: float
    inner_tip: float
    before: float

    @property
    def straight(self) -> bool:
        """Whether the slot's walls are parallel."""
        return self.inner_nut == self.inner_tip

    @property
    def inner(self) -> float:
        """The farthest that the slot reaches in from the edge."""
        return max(self.inner_nut, self.inner_tip)


class Strung(Struct, frozen=True):
    """A string of a side: where it lies at the nut, its radius (that of the thickest, so that like sides come out alike), the
    level of its post and the offset in from the edge at which it winds, and the level at which it comes down to the face."""

    at: float
    radius: float
    along: float
    wound: float
    dives: bool
    sinks: float


class Bounds(Struct, frozen=True):
    """What an edge with a slot keeps to: where its run begins, and how long it is; the least of both half widths, and the most,
    beyond which the ramp would run out at the flare; how far from the parting line the slot must stay, None where no line
    bounds it; and the steepest taper."""

    start: float
    run: float
    least: float
    most: float
    keep: float | None
    steepest: float


class _Edge(Struct, frozen=True):
    """A straight edge: the half width where its run begins, and how much less of it there is each mm on."""

    start: float
    width: float
    taper: float

    def at(self, y: float) -> float:
        """Its half width at a level."""
        return self.width - self.taper * (y - self.start)


def strung(needs: SideNeeds, nut: Nut, thickness: float, strings: Sequence[String], places: Sequence[float], part: float,
           first: float) -> tuple[Strung, ...]:
    """The strings of a side from its edge to the middle; `first` is the level of the first post. One that dives winds over its
    post in the middle of the wood."""
    sign = 1.0 if needs.side == "treble" else -1.0
    outer = range(len(strings) - 1, -1, -1) if needs.side == "treble" else range(len(strings))
    thickest = max(string.diameter for string in strings) / 2
    low = thickness / 2 - thickest - needs.post.post.diameter / 2
    made = []
    for i, kind in zip(outer, needs.kinds, strict=False):
        through = kind == "side"
        wound = needs.post.post.string_hole if through else needs.inset + 3.0
        along = first + len(made) * needs.pitch
        made.append(Strung(sign * (places[i] - part), thickest, along, wound, through,
                           along * max(0.0, nut.height - AIR - thickest) / (nut.height + low)))
    return tuple(made)


def lane(needs: SideNeeds, lines: Sequence[Strung], bounds: Bounds, inwards: float = 0.0) -> Lane:
    """The best lane of a side with tuners through the side; `inwards` moves the inner wall farther in than the strings seem to
    ask for."""
    diving = [one for one in lines if one.dives]
    bore, last = diving[0].along, diving[-1].along
    first = min(bore - SLOT_BEFORE, max(min(one.sinks for one in diving) + RAMP, bounds.start + HALF_SLOT))
    best: tuple[float, _Edge, Lane] | None = None

    def tried(taper: float, width: float) -> None:
        nonlocal best
        edge = _Edge(bounds.start, width, taper)
        inner_nut, inner_tip, lacks = _walls(diving, edge, first, last, needs.slot_inner, inwards)
        if bounds.keep is not None:
            lacks += max(0.0, *(bounds.keep - (edge.at(y) - inner)
                                for y, inner in ((first - HALF_SLOT, inner_nut), (last + HALF_SLOT, inner_tip))))
        made = Lane(width, width - taper * bounds.run, inner_nut, inner_tip, bore - first)
        cost = _cost(lines, edge, made, needs.slot_inner, lacks + 0.02 * max(0.0, width - bounds.most))
        if best is None or cost < best[0] - 1e-9:
            best = cost, edge, made
    for k in range(_TAPERS):
        taper = bounds.steepest * k / (_TAPERS - 1)
        for step in range(_STEPS):
            tried(taper, bounds.least + taper * bounds.run + step * _STRIDE)
    _, edge, _ = best
    for nearer in range(1, round(_STRIDE / _STEP)):
        tried(edge.taper, edge.width + nearer * _STEP)
        if edge.width - nearer * _STEP >= bounds.least + edge.taper * bounds.run:
            tried(edge.taper, edge.width - nearer * _STEP)
    return best[2]


def _cost(lines: Sequence[Strung], edge: _Edge, made: Lane, inner: float, lacks: float) -> float:
    """What a lane costs: wood in the way is the worst, then strings that bend far, then wide slots and heads."""
    worst = max(math.degrees(math.atan2(abs(edge.at(one.along) - one.wound - one.at), one.along)) for one in lines)
    bends = worst + 2 * max(0.0, worst - _GENTLE) + 20 * max(0.0, worst - _MOST)
    opens = 0.0 if made.straight else _OPENS
    return 1000 * lacks + bends + opens + 0.25 * max(0.0, made.inner - inner) + 0.15 * edge.width


def _walls(lines: Sequence[Strung], edge: _Edge, first: float, last: float, inner: float, inwards: float) -> tuple[float, float, float]:
    """Where the inner wall stands at both ends of the narrowest slot that holds every string from where it is down to its post,
    and the posts; and how far a string still comes through its outer wall, which stands where the rail begins."""
    outside = 0.0
    needed: list[tuple[float, float]] = [(y, inner) for y in (first, last)]
    for one in lines:
        post = edge.at(one.along) - one.wound
        begins = max(one.sinks, first - HALF_SLOT)
        if begins < one.along:
            inside = edge.at(begins) - (one.at + (post - one.at) * begins / one.along)
            needed.append((begins, inside + one.radius + AIR + inwards))
            outside = max(outside, SLOT_OUTER + one.radius + AIR - inside)
    most = max(inner for _, inner in needed)
    if most - SLOT_OUTER <= PLAIN:
        return round(most, 2), round(most, 2), outside
    return *_opening(needed, first, last), outside


def _opening(needed: Sequence[tuple[float, float]], first: float, last: float) -> tuple[float, float]:
    """The line beyond all (y, inner) that falls towards the tip and encloses the least: its values at two levels."""
    middle, hull = (first + last) / 2, []
    for y, d in sorted(needed):
        while len(hull) > 1 and (hull[-1][0] - hull[-2][0]) * (d - hull[-2][1]) >= (y - hull[-2][0]) * (hull[-1][1] - hull[-2][1]):
            hull.pop()
        hull.append((y, d))
    for (y0, d0), (y1, d1) in zip(hull, hull[1:], strict=False):
        if y0 <= middle <= y1 and d1 < d0:
            slope = (d1 - d0) / (y1 - y0)
            return round(d0 + slope * (first - y0), 2), round(d0 + slope * (last - y0), 2)
    most = max(d for _, d in needed)
    return round(most, 2), round(most, 2)
