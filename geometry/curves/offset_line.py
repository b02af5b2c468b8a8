"""A closed line set off evenly, as few exact and near-exact pieces.

Lines and arcs stay exact. A cubic is offset piece by piece: each keeps the
directions of its ends and gets the speed of the true offset there,
|C'| (1 + k d) with curvature k (the ordinary offset curve of differential
geometry), then the speeds that lie nearest to it by least squares, and is
halved until it lies within CLOSE of the true offset.
Corners that open are joined by arcs, corners that close are cut where the
pieces cross (`unknot`). What comes out is measured against the line.
"""

from __future__ import annotations

import math

import shapely
from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves.arc import Arc
from geometry.curves.cubic import Cubic
from geometry.curves.line import Line
from geometry.curves.path import Path, Segment
from geometry.curves.polygons import crosses_itself
from geometry.curves.unknot import joined, unknotted
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

CLOSE = 0.01
"""mm that an offset curve may stray from the true offset: less than any hand follows, and few nodes to go on with."""
MOST = 5000.0
"""mm by which a line is offset at most: as large as a layout may be"""
DEEPEST = 7
"""Halvings after which a piece is taken as it is, or left out where the line turns too tightly."""
PLACES = tuple(k / 8 for k in range(1, 8))
"""Where on a piece its handles are fitted to the true offset."""
HELD = tuple(k / 24 for k in (*range(3, 24, 3), *(k for k in range(1, 24) if k % 3)))
"""Where on a piece it is held against the true offset, the eighths first: they tell most."""
BETWEEN = 0.98
"""Share of CLOSE within which it lies there, so that it stays within CLOSE between them"""
ROUNDS = 3
"""Times that the places are measured anew: each has moved along the line with the handles."""
ALIKE = 1e-9
"""Share below which the effects of both handles are told apart by rounding alone."""
SLACK = 0.02
"""mm that a set-off line may come nearer than asked, where a corner that nearly goes straight on is bridged."""

Chain = list[Segment]


def offset_line(path: Path, by: float, keep_level: float | None = None) -> Path:
    """A closed path offset by `by` mm, outwards when positive, made counter-clockwise.

    Straight edges that lie on y = `keep_level` stay there, and their
    neighbours are led to that level. GeometryError when the line is too narrow
    or turns too tightly for the distance.
    """
    if not math.isfinite(by) or abs(by) <= TOUCH:
        raise GeometryError(say("Type how far the copy lies from the line, above or below zero."))
    runs = _runs(path.counter_clockwise(), by, keep_level) if abs(by) <= MOST else None
    if not runs:
        raise GeometryError(say("The line turns more tightly than this distance: choose a smaller one."))
    chains = [run.pieces for run in runs]
    for i, run in enumerate(runs):
        k = (i + 1) % len(runs)
        following = runs[k]
        if run.stays and not following.stays:
            chains[k] = _turned(_led_to(_turned(chains[k]), keep_level))
        elif following.stays and not run.stays:
            chains[i] = _led_to(chains[i], keep_level)
        elif v.distance(chains[i][-1].end, chains[k][0].start) > 10 * TOUCH:
            turn = turn_at(chains[i][-1], chains[k][0])
            if turn * by > 0 and not following.after_gap:
                chains[i] = [*chains[i], corner(following.node, chains[i][-1].end, chains[k][0].start, by, turn)]
    for i, run in enumerate(runs):
        if run.stays:
            chains[i] = [Line(chains[i - 1][-1].end, chains[(i + 1) % len(chains)][0].start)]
    made = _whole(unknotted(_welded(joined(chains, by)), by))
    moved = [edge for edge in path.segments if keep_level is None or not _on(edge, keep_level)]
    if _nearest(made, moved) < abs(by) - SLACK:
        raise _too_narrow()
    return made


class _Run(Struct):
    """Offset pieces that go on smoothly, and what lies before them on the line."""

    pieces: Chain
    node: Vec2
    """where the line itself is at their start"""
    stays: bool = False
    after_gap: bool = False
    """whether a stretch before them turns too tightly to have an offset"""


def _runs(path: Path, by: float, level: float | None) -> list[_Run]:
    runs: list[_Run] = []
    gap, last = False, None
    for edge in path.segments:
        stays = level is not None and _on(edge, level)
        for node, piece in [(edge.start, edge)] if stays else _moved(edge, by, DEEPEST):
            if piece is None:
                gap, last = True, None
                continue
            goes_on = last is not None and not stays and v.distance(last.end, piece.start) <= 10 * TOUCH
            if goes_on:
                runs[-1].pieces.append(piece)
            else:
                runs.append(_Run([piece], node, stays, gap))
            gap, last = False, None if stays else piece
    if not runs:
        return []
    runs[0].after_gap = runs[0].after_gap or gap
    ends_meet = last is not None and not runs[0].stays and v.distance(last.end, runs[0].pieces[0].start) <= 10 * TOUCH
    if ends_meet and not runs[0].after_gap and len(runs) > 1:
        runs[0] = replace(runs[-1], pieces=runs[-1].pieces + runs[0].pieces)
        runs.pop()
    elif len(runs) == 1 and (runs[0].after_gap or not ends_meet):
        half = len(runs[0].pieces) // 2
        runs.append(_Run(runs[0].pieces[half:], runs[0].pieces[half].start))
        del runs[0].pieces[half:]
    return runs


def _turned(chain: Chain) -> Chain:
    return [one.reversed() for one in reversed(chain)]


def _too_narrow() -> GeometryError:
    return GeometryError(say("The line is too narrow or turns too tightly for this distance."))


def _whole(segments: Chain) -> Path:
    try:
        made = Path(tuple(_welded(segments)), closed=True)
    except GeometryError as error:
        raise _too_narrow() from error
    if made.area <= 0 or crosses_itself(made) is not None:
        raise _too_narrow()
    return made


def _nearest(made: Path, edges: Chain) -> float:
    """How near the made line comes to the edges that were moved, mm, within a hundredth."""
    lines = shapely.multilinestrings([shapely.LineString(edge.flatten(FLAT)) for edge in edges])
    return float(shapely.distance(shapely.points(made.flatten(FLAT)), lines).min())


def _welded(segments: Chain) -> Chain:
    """Neighbours that miss one another by rounding made to meet to the last bit."""
    out = []
    for before, one in zip([segments[-1], *segments], segments, strict=False):
        if one.start != before.end and v.distance(one.start, before.end) <= 10 * TOUCH:
            one = replace(one, p0=before.end)
        out.append(one)
    return out


def _on(edge: Segment, level: float) -> bool:
    return isinstance(edge, Line) and abs(edge.start[1] - level) <= TOUCH and abs(edge.end[1] - level) <= TOUCH


def _beside(edge: Segment, t: float, by: float) -> Vec2:
    return v.along(edge.point(t), v.right(edge.tangent(t)), by)


def parallel(edge: Line | Arc, by: float) -> Line | Arc | None:
    """A line or an arc shifted to its right by `by` mm (outwards on a counter-clockwise path); None where an arc shrinks away."""
    start, end = _beside(edge, 0.0, by), _beside(edge, 1.0, by)
    if isinstance(edge, Line):
        return Line(start, end)
    radius = edge.radius + (by if edge.sweep > 0 else -by)
    return Arc(edge.centre, radius, edge.a0, edge.sweep, start, end) if radius > TOUCH else None


def _moved(edge: Segment, by: float, depth: int) -> list[tuple[Vec2, Segment | None]]:
    """A segment shifted to its right by `by` mm (outwards on a counter-clockwise path): each piece with its start on
    the line itself, None where the line turns too tightly to have an offset."""
    if not isinstance(edge, Cubic):
        return [(edge.start, parallel(edge, by))]
    start, end = _beside(edge, 0.0, by), _beside(edge, 1.0, by)
    speeds = [1 + edge.curvature(t) * by for t in (0.0, 0.5, 1.0)]
    if depth == 0 and min(speeds) <= 0:
        return [(edge.start, None)]
    if min(speeds) > 0:
        made = Cubic(start, v.along(start, edge.tangent(0.0), v.distance(edge.p0, edge.c0) * speeds[0]),
                     v.along(end, edge.tangent(1.0), -v.distance(edge.c1, edge.p1) * speeds[2]), end)
        if depth == 0 or _is_close(edge, made, by) or _is_close(edge, made := _fitted(edge, made, by), by):
            return [(edge.start, made)]
    return [piece for half in edge.split(0.5) for piece in _moved(half, by, depth - 1)]


def _fitted(edge: Cubic, made: Cubic, by: float) -> Cubic:
    """`made` with the lengths of its two handles that bring it nearest to the true offset, by least squares over places on it.

    As it is where its handles run alike, so that many lengths do, or would turn round.
    """
    one, other = edge.tangent(0.0), v.scale(edge.tangent(1.0), -1.0)
    for _ in range(ROUNDS):
        c11 = c12 = c22 = off1 = off2 = 0.0
        for t in PLACES:
            place = made.point(t)
            at = edge.nearest(place)
            out = v.right(edge.tangent(at))
            missing = by - v.dot(v.sub(place, edge.point(at)), out)
            a, b = 3 * t * (1 - t) ** 2 * v.dot(one, out), 3 * t * t * (1 - t) * v.dot(other, out)
            c11, c12, c22, off1, off2 = c11 + a * a, c12 + a * b, c22 + b * b, off1 + a * missing, off2 + b * missing
        size = c11 * c22 - c12 * c12
        if size <= ALIKE * c11 * c22:
            return made
        first = v.distance(made.p0, made.c0) + (off1 * c22 - off2 * c12) / size
        last = v.distance(made.p1, made.c1) + (off2 * c11 - off1 * c12) / size
        if min(first, last) <= TOUCH:
            return made
        made = Cubic(made.p0, v.along(made.p0, one, first), v.along(made.p1, other, last), made.p1)
    return made


def _is_close(edge: Cubic, made: Cubic, by: float) -> bool:
    return all(abs(v.distance(edge.point(edge.nearest(place)), place) - abs(by)) <= BETWEEN * CLOSE for place in map(made.point, HELD))


def turn_at(a: Segment, b: Segment) -> float:
    """Change of direction from a segment to the next, rad, left positive."""
    return v.turn(a.tangent(1.0), b.tangent(0.0))


def corner(node: Vec2, start: Vec2, end: Vec2, by: float, turn: float) -> Arc:
    """The arc about a corner that opens when a line is offset by `by` mm, between the ends of its offset neighbours."""
    return Arc(node, abs(by), math.atan2(start[1] - node[1], start[0] - node[0]), turn, start, end)


def _led_to(chain: Chain, level: float) -> Chain:
    """A chain whose end is brought to y = level: cut there, or led on straight."""
    for n in range(len(chain) - 1, -1, -1):
        crossings = [t for t in chain[n].level(1, level) if t > 0]
        if crossings:
            piece = chain[n] if crossings[-1] == 1 else chain[n].split(crossings[-1])[0]
            return [*chain[:n], piece]
    end, way = chain[-1].end, chain[-1].tangent(1.0)
    reach = (level - end[1]) / way[1] if abs(way[1]) > 0.05 else -1.0
    if reach < 0:
        raise GeometryError(say("At the nut the line runs too flat to be offset."))
    return [*chain, Line(end, (end[0] + reach * way[0], level))]
