"""The outline that a layout begins with: a flare from the nut, two nearly straight edges, a low crown.

Seven nodes. Each edge leads along the line on which the strings run straight
to their posts, as far as the wood that hardware needs allows.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from msgspec import Struct

from geometry import vectors as v
from geometry.beginning.lanes import Bounds, Lane, lane, strung
from geometry.beginning.needs import SideNeeds
from geometry.beginning.numbers import Numbers
from geometry.curves import Cubic
from geometry.layout import Loop, Node, Nut, String
from geometry.layout.blank import Side
from geometry.layout.generic import LARGE
from geometry.strings.nut import nut_places
from geometry.vectors import Vec2

FLARES = 38.0
"""An edge may begin its run no more than this wider than the nut, mm: a ramp begins where the head is still narrow."""
START = 34.0
"""The run of an edge begins no farther than this from the nut, mm."""

BELLY = {True: 0.6, False: 1.2}
"""How far an edge bellies out over its run, mm: less where bores go through the side, so that plates lie flat."""
STEEPEST = {True: 0.115, False: 0.32}
"""Steepest slope of an edge against the centreline. Through the side it decides the tilt of the bores, and a drill
skates from about 8 degrees (0.14)."""
TAPER = {True: 0.1, False: 0.12}
"""Steepest taper of an edge of a head with tuners on both sides, with and without bores through that side."""
NEIGHBOUR = 9.0
"""Wood left between the innermost hardware and an edge without tuners."""
POST = 3.0
"""A string runs beside its post, not through it."""


class Shape(Struct, frozen=True):
    """The outline and where the rows of tuners begin."""

    loop: Loop
    flare: dict[Side, float]
    """length of the flare of each edge, from the nut line to the straight run, mm"""
    run: dict[Side, tuple[Vec2, Vec2]]
    """ends of the straight run of each edge, from the nut on"""
    lanes: dict[Side, Lane]
    """the slot of each side that has one"""


def shape(numbers: Numbers, bass: SideNeeds, treble: SideNeeds, nut: Nut, strings: Sequence[String],
          inwards: Mapping[Side, float], apart: float = 0.0, higher: float = 0.0) -> Shape:
    """The outline for these rows (mm). It does not look at the blank.

    `inwards`: how much farther in than by itself the inner wall of a side's slot is to stand. `apart`: how much
    farther from the line between the sides. `higher`: how much farther up the crown is to reach.
    """
    run = max(bass.run, treble.run)
    start = START
    for _ in range(2):
        widths, lanes = _widths(numbers, bass, treble, nut, strings, run, start, inwards, apart)
        half = numbers.nut_width / 2
        most = max(max(widths[side][0] for side in ("bass", "treble")) - half, 0.0)
        before, start = start, min(max(14.0 + 0.9 * most, 18.0), START)
        if before == start:
            break
    sides = {}
    for needs in (bass, treble):
        sign = 1.0 if needs.side == "treble" else -1.0
        a, b = widths[needs.side]
        sides[needs.side] = _side(nut.at(sign * half), start, a, b, run, needs.has_slot, sign)
    crown = min(max(0.42 * (widths["bass"][1] + widths["treble"][1]) / 2, 18.0), 26.0)
    top = (round((sides["bass"].s1[0] + sides["treble"].s1[0]) / 2, 3), round(start + run + crown + higher, 3))
    treble_tip = _crown(sides["treble"], top)
    bass_tip = _crown(sides["bass"], top)
    t, b = sides["treble"], sides["bass"]
    nodes = (
        Node(at=t.s0.p0, handles=(t.s0.c0, t.s0.c1)),
        Node(at=t.s0.p1, handles=(t.edge.c0, t.edge.c1), smooth=True),
        Node(at=t.edge.p1, handles=(treble_tip.c0, treble_tip.c1), smooth=True),
        Node(at=top, handles=(bass_tip.c1, bass_tip.c0), smooth=True),
        Node(at=b.edge.p1, handles=(b.edge.c1, b.edge.c0), smooth=True),
        Node(at=b.s0.p1, handles=(b.s0.c1, b.s0.c0), smooth=True),
        Node(at=b.s0.p0),
    )
    return Shape(Loop(nodes=nodes), {side: made.s0.length() for side, made in sides.items()},
                 {side: (made.edge.p0, made.edge.p1) for side, made in sides.items()}, lanes)


class _Edge(Struct, frozen=True):
    """Flare and run of one edge, from the nut to the crown."""

    s0: Cubic
    edge: Cubic

    @property
    def s1(self) -> Vec2:
        return self.edge.p1


def _widths(numbers: Numbers, bass: SideNeeds, treble: SideNeeds, nut: Nut, strings: Sequence[String], run: float,
            start: float, inwards: Mapping[Side, float], apart: float) -> tuple[dict[Side, tuple[float, float]], dict[Side, Lane]]:
    """(half widths of each edge where its run begins and ends, from the centreline, outwards positive; lanes of slots)."""
    half = numbers.nut_width / 2
    places = nut_places(nut, strings)
    found: dict[Side, tuple[float, float]] = {}
    lanes: dict[Side, Lane] = {}
    slotted = bass.has_slot or treble.has_slot
    both = bool(bass.count and treble.count)
    # The wood between the sides stands where their strings part, so that these run straight on to posts in slots.
    part = (places[numbers.bass - 1] + places[numbers.bass]) / 2 if both and slotted else 0.0
    for needs in (bass, treble):
        if not needs.count:
            continue
        shift = part if needs.side == "treble" else -part
        steepest = (TAPER if both else STEEPEST)[needs.has_slot]
        if needs.has_slot:
            # The shorter row begins half of what it is shorter behind the longer one.
            lines = strung(needs, nut, numbers.thickness, strings, places, part, start + (run - needs.run) / 2 + needs.lead)
            keep = needs.keep + apart if both else None
            bounds = Bounds(start, run, max(needs.slot_inner + (keep or 0.0), half - shift + 2.0), half - shift + FLARES, keep, steepest)
            made = lane(needs, lines, bounds, inwards.get(needs.side, 0.0))
            lanes[needs.side] = made
            found[needs.side] = (made.begin + shift, made.end + shift)
            continue
        ideal = _pull(numbers, needs, nut.spread)
        least = max(needs.inner + needs.keep + shift, half + 2.0) if both else half + 1.0
        begin = max(ideal[0], least)
        found[needs.side] = (begin, max(ideal[1], least if both else -math.inf, begin - steepest * run))
    if not both:
        one, other = (bass, treble) if bass.count else (treble, bass)
        begin, end = found[one.side]
        made = lanes.get(one.side)
        inner = (one.inner, one.inner) if made is None else (made.inner_nut, made.inner_tip)
        found[other.side] = (max(half + 3.0, inner[0] + NEIGHBOUR - begin), max(inner[1] + NEIGHBOUR - end, half - 4.0))
    return found, lanes


def _pull(numbers: Numbers, needs: SideNeeds, spread: float) -> tuple[float, float]:
    """Half widths at which the first and the last string of a side run straight to their posts."""
    step = spread / (numbers.strings - 1)
    first, last = spread / 2, spread / 2 - (needs.count - 1) * step
    slope = (first - last) / max((needs.count - 1) * needs.pitch, 1.0)
    lead = (needs.run - (needs.count - 1) * needs.pitch) / 2
    out = needs.pull + (POST if needs.face != LARGE else 2 * POST)
    return first + out + slope * lead, last + out - slope * lead


def _side(foot: Vec2, start: float, a: float, b: float, run: float, slotted: bool, sign: float) -> _Edge:
    foot = _round(foot)
    s0, s1 = (round(sign * a, 3), round(start, 3)), (round(sign * b, 3), round(start + run, 3))
    way = v.unit(v.sub(s1, s0))
    size = v.distance(s0, s1)
    lean = 4 * BELLY[slotted] / size * -sign
    up, down = v.turned(way, lean), v.turned(way, -lean)
    edge = Cubic(s0, _round(v.along(s0, up, size / 3)), _round(v.along(s1, down, -size / 3)), s1)
    flare = Cubic(foot, _round((foot[0], foot[1] + 0.42 * (start - foot[1]))), _round(v.along(s0, up, -0.5 * (start - foot[1]))), s0)
    return _Edge(flare, edge)


def _crown(edge: _Edge, top: Vec2) -> Cubic:
    """From the end of an edge to the crown, where both sides meet level."""
    end = edge.s1
    rise, across = top[1] - end[1], end[0] - top[0]
    return Cubic(end, _round(v.along(end, edge.edge.tangent(1.0), 0.62 * rise)),
                 _round((top[0] + 0.62 * across, top[1])), top)


def _round(p: Vec2) -> Vec2:
    return (round(p[0], 3), round(p[1], 3))
