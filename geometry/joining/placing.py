"""An outline from anywhere laid into the headstock's frame: nut line on y = 0, centreline on x = 0, tip to +y."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.curves import MIRROR, Line, Matrix, Path, Segment, shift, turn
from geometry.errors import GeometryError
from geometry.lengths import mm
from geometry.saying import say
from geometry.vectors import Vec2

STRAIGHT = 0.2
"""Most that a nut edge may bow or step (mm)."""

SAME_WAY = math.radians(1.0)
"""Turn up to which two pieces in a row are one straight edge."""

NUT_WIDTH = (26.0, 75.0)
"""Widths in mm that a nut edge is expected to have, from mandolins on (common practice, no source)."""

USUAL_NUT = (34.0, 57.0)
"""Widths in mm of most nuts, from ukuleles to basses of six strings (common practice, no source): they break ties."""

ASKEW = (0.5, 30.0)
"""Degrees by which a nut edge may be off square to be offered as a slanted one, as for fanned frets (common practice, no source)."""

LEAST_HOLLOW = 0.002
"""Part of the outline's area below which a hollow beside an edge tells little"""

NEARLY = 0.5
"""Of how well the edge taken does, from which another is told"""

SHORTEST_NUT = 15.0
"""Straight edges shorter than this (mm) are no nut edge (common practice, no source)."""


class Placing(Struct, frozen=True):
    """A proposal: how to lay the outline, and on what grounds."""

    matrix: Matrix
    """from the drawing to the headstock's frame: a turn, a shift and, when mirrored, a mirror"""
    sentence: str
    """what was taken for the nut line and the centreline, for the maker to confirm"""
    nut_width: float | None
    """width in mm of the edge taken for the nut line, square to the centreline; None when there is no such edge"""
    slant: float = 0.0
    """degrees by which the nut line is slanted, with the sign of `Nut.slant`"""
    askew: float = 0.0
    """degrees by which it would be, were the drawing taken as it stands; 0 where that is square or nothing within ASKEW"""


class Edge(Struct, frozen=True):
    """A straight run of the outline, travelled counter-clockwise, so that the wood lies to its left."""

    start: Vec2
    end: Vec2

    @property
    def width(self) -> float:
        return v.distance(self.start, self.end)


def place(outline: Path, turn_quarter: int = 0, mirrored: bool = False, slanted: bool = False,
          nut: tuple[Vec2, Vec2] | None = None, up: Vec2 | None = None) -> Placing:
    """A placing of a closed outline (mm).

    The nut end is the edge between the ends of `nut` (mm), where that is known: they are passed counter-clockwise about the
    outline. Else it is the straight edge at an end of the outline that is as wide
    as a nut, best halves the outline, and has it hollow beside it, as heads are where they run into a neck; one at the other end that does
    nearly as well is told. `turn_quarter` turns the proposal by
    that many quarter turns counter-clockwise, so that another end becomes the
    nut's; `mirrored` swaps bass and treble. With `slanted` the nut edge is not made level where it is askew: the drawing
    stays upright, and the edge is a slanted nut; upright is where `up` points to the tip, a unit vector along the neck where that is known. Raises GeometryError for an open path.
    """
    if not outline.closed:
        raise GeometryError(say("An open path cannot be placed: close the outline first."))
    path = outline.counter_clockwise()
    edges = _end_edges(path)
    scores = {} if nut is not None else _scores(edges, path)
    best = Edge(*nut) if nut is not None else max(edges, key=lambda edge: scores[edge], default=None)
    upright = _snapped(-_heading(best)) if best is not None else _snapped(_long_way(path))
    askew = _askew(upright, up) if best is not None and turn_quarter % 4 == 0 else 0.0
    slanted = slanted and askew != 0
    angle = _snapped(upright + askew if slanted else upright + turn_quarter % 4 * math.pi / 2)
    turned = path.mapped(turn(angle))
    edge = best if best is not None and turn_quarter % 4 == 0 else _lowest_edge(edges, turned, turn(angle))
    x0, y0, x1, _ = turned.box
    if edge is not None:
        a, b = turn(angle)(edge.start), turn(angle)(edge.end)
        x, y, width = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2, edge.width
        ground = (say("The straight edge of {width} at one end was taken for a nut slanted by {slant:.1f} degrees and its middle for "
                      "the centreline{turned}.",
                      width=mm(width), slant=abs(math.degrees(askew)), turned=_turned(angle, mirrored)) if slanted else
                  say("The straight edge of {width} at one end was taken for the nut line and its middle for "
                      "the centreline{turned}.",
                      width=mm(width), turned=_turned(angle, mirrored)))
        width *= math.cos(askew) if slanted else 1.0
        rival = _rival(scores) if turn_quarter % 4 == 0 else None
        if rival is not None:
            ground = say("{ground} The straight edge of {width} at the other end would do as well: turn the drawing where that is the nut line.",
                         ground=ground, width=mm(rival.width))
    else:
        x, y, width = (x0 + x1) / 2, y0, None
        ground = say("No straight edge at the end could be the nut line: the lowest point and the middle of the "
                     "outline were taken{turned}.",
                     turned=_turned(angle, mirrored))
    matrix = shift(-x, -y).after(turn(angle))
    if mirrored:
        matrix = MIRROR.after(matrix)
    # Upright, the edge is turned counter-clockwise by `askew`: its treble end lies nearer the tip, and a nut's slant is negative.
    off = math.degrees(askew if mirrored else -askew)
    return Placing(matrix, ground, width, off if slanted else 0.0, off)


def _askew(upright: float, up: Vec2 | None) -> float:
    """The turn in rad from level to a nut edge in the drawing as it stands, to the nearest quarter turn or with `up` upwards; 0 outside ASKEW."""
    level = round(upright / (math.pi / 2)) * math.pi / 2 if up is None else math.pi / 2 - math.atan2(up[1], up[0])
    off = math.remainder(level - upright, 2 * math.pi)
    return off if ASKEW[0] <= abs(math.degrees(off)) <= ASKEW[1] else 0.0


def _turned(angle: float, mirrored: bool) -> str:
    degrees = 180 - (180 - math.degrees(angle)) % 360  # half a turn is 180, not -180
    turned = say("; the drawing was turned by {degrees:.1f} degrees", degrees=degrees) if abs(degrees) >= 0.05 else ""
    return turned + (say(", and mirrored") if mirrored else "")


def _heading(edge: Edge) -> float:
    return math.atan2(edge.end[1] - edge.start[1], edge.end[0] - edge.start[0])


def _snapped(angle: float) -> float:
    """The angle, on the nearest quarter turn when it is within 1e-4 rad of it."""
    quarter = round(angle / (math.pi / 2)) * math.pi / 2
    return quarter if abs(angle - quarter) < 1e-4 else angle


def _long_way(path: Path) -> float:
    """The turn that stands a lying outline upright: a quarter, or none."""
    x0, y0, x1, y1 = path.box
    return math.pi / 2 if x1 - x0 > 1.1 * (y1 - y0) else 0.0


@lru_cache(maxsize=4)  # whoever turns a drawing asks for the same outline each time
def _end_edges(path: Path) -> tuple[Edge, ...]:
    """Straight edges long enough for a nut with the whole outline on one side of each."""
    points = path.flatten(0.05)
    found = []
    for edge in straight_runs(path.segments):
        if edge.width < SHORTEST_NUT:
            continue
        d = v.unit(v.sub(edge.end, edge.start))
        off = (points[:, 1] - edge.start[1]) * d[0] - (points[:, 0] - edge.start[0]) * d[1]
        if off.min() >= -2 * STRAIGHT:
            found.append(edge)
    return tuple(found)


def straight_runs(segments: Sequence[Segment], bow: float = STRAIGHT) -> list[Edge]:
    """Neighbouring pieces that go straight on but for `bow` mm, joined; the closing point may lie inside a run."""
    pieces = [s for s in segments if s.length() > 1e-6]
    runs: list[_Run | None] = []
    for segment in pieces:
        if not _is_straight(segment):
            runs.append(None)
        elif not (runs and runs[-1] is not None and runs[-1].takes(segment)):
            runs.append(_Run(segment, bow))
    if len(runs) > 1 and runs[0] is not None and runs[-1] is not None and runs[-1].takes(runs[0].first):
        return [Edge(runs[-1].start, runs[0].end), *(run.edge for run in runs[1:-1] if run is not None)]
    return [run.edge for run in runs if run is not None]


class _Run:
    """Pieces that go straight on: each the same way as the one before, and all their ends within `bow` of the line from
    the first to the last.

    An end allows a wedge of headings, seen from the start of the run; where a line leads that all ends allow is known from
    the wedge that they have in common. So a piece is judged once, however many a straight edge was cut into.
    """

    def __init__(self, first: Segment, bow: float) -> None:
        self._bow = bow
        self.first, self.start = first, first.start
        self._last = v.sub(first.end, first.start)
        self._along = v.unit(self._last)
        self._wedge = -math.pi, math.pi
        """radians from `_along`, counter-clockwise"""
        self._add(first)

    @property
    def edge(self) -> Edge:
        return Edge(self.start, self.end)

    def takes(self, piece: Segment) -> bool:
        """Add a piece if it goes on with the run; whether it does."""
        step = v.sub(piece.end, piece.start)
        if abs(v.turn(self._last, step)) > SAME_WAY:
            return False
        whole = v.sub(piece.end, self.start)
        if v.norm(whole) < 1e-9 or not self._wedge[0] <= self._heading(whole) <= self._wedge[1]:
            return False
        self._last = step
        self._add(piece)
        return True

    def _add(self, piece: Segment) -> None:
        self.end = piece.end
        out = v.sub(self.end, self.start)
        far = v.norm(out)
        if far > self._bow:
            at, half = self._heading(out), math.asin(self._bow / far)
            self._wedge = max(self._wedge[0], at - half), min(self._wedge[1], at + half)

    def _heading(self, out: Vec2) -> float:
        return v.turn(self._along, out)


def _is_straight(segment: Segment) -> bool:
    chord = v.distance(segment.start, segment.end)
    if chord < 1e-9:
        return False
    if isinstance(segment, Line):
        return True
    d = v.unit(v.sub(segment.end, segment.start))
    return all(abs(v.cross(d, v.sub(segment.point(t), segment.start))) <= STRAIGHT for t in (0.25, 0.5, 0.75))


@lru_cache(maxsize=4)
def _scores(edges: tuple[Edge, ...], path: Path) -> dict[Edge, float]:
    """How well each edge makes a nut: by its width, by how far the outline reaches beyond it, by how it halves it, by the hollows beside it."""
    area = shapely.make_valid(Polygon(path.flatten(0.05)), method="structure")
    pockets = shapely.get_parts(area.convex_hull.difference(area)) if len(edges) > 1 else []
    hollows = [sum(float(pocket.area) for pocket in pockets if min(map(pocket.distance, map(shapely.Point, (edge.start, edge.end)))) <= STRAIGHT)
               + LEAST_HOLLOW * area.area for edge in edges]
    return {edge: _score(edge, area, hollow / sum(hollows)) for edge, hollow in zip(edges, hollows, strict=True)}


def _score(edge: Edge, area: BaseGeometry, hollow: float) -> float:
    """That of one edge beside which there is such a part of all hollows."""
    fits = 1.0 if USUAL_NUT[0] <= edge.width <= USUAL_NUT[1] else 0.9 if NUT_WIDTH[0] <= edge.width <= NUT_WIDTH[1] else 0.4
    level = turn(-_heading(edge))
    upright = shapely.transform(area, lambda at: at @ np.array([(level.a, level.b), (level.c, level.d)]))
    x0, y0, x1, y1 = upright.bounds
    reach = min(1.0, (y1 - y0) / max(x1 - x0, 1e-9))
    middle = level(v.middle(edge.start, edge.end))[0]
    other = shapely.transform(upright, lambda at: at * (-1.0, 1.0) + (2 * middle, 0.0))
    alike = upright.intersection(other).area / max(upright.union(other).area, 1e-12)
    # Of two edges that do equally well, the nut's is that from which most of the wood is farther away: heads widen towards the tip.
    beyond = abs(upright.centroid.y - level(edge.start)[1]) / max(y1 - y0, 1e-9)
    return fits * reach * (0.3 + alike) * (0.5 + hollow) * (0.9 + 0.2 * beyond)


def _rival(scores: dict[Edge, float]) -> Edge | None:
    """The best edge at the other end from the one that is best of all, where it is NEARLY as good."""
    best = max(scores, key=scores.__getitem__, default=None)
    across = [edge for edge in scores if math.cos(_heading(edge) - _heading(best)) < -0.5 and scores[edge] >= NEARLY * scores[best]]
    return max(across, key=scores.__getitem__, default=None)


def _lowest_edge(edges: Sequence[Edge], turned: Path, turning: Matrix) -> Edge | None:
    """The widest of the edges that is level at the lowest end of the outline once that is turned, as it lies before."""
    y0 = turned.box[1]
    level = [e for e in edges if abs(turning(e.start)[1] - y0) <= STRAIGHT and abs(turning(e.end)[1] - y0) <= STRAIGHT]
    return max(level, key=lambda edge: edge.width, default=None)
