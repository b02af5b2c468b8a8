"""The middle line of a drawn slot: points as far from one wall as from another.

Found as the edges of the Voronoi diagram of points along the wall that stay
inside: they join the centres of the circles about the triangles between such
points. A slot has no island, so its middle lines form a tree.
"""

from __future__ import annotations

import heapq
import math

import numpy as np
import shapely

from geometry.by_size import of_slot, remembered_by_size
from geometry.curves.polygons import polygon
from geometry.layout import Slot, slot_path
from geometry.routing.narrow_places import middles, shared_sides
from geometry.vectors import Vec2

SPACING = 0.8
"""Distance of the points on the wall, mm, while there are no more than MOST of them."""
MOST = 360

Branch = tuple[Vec2, ...]


@remembered_by_size(64, of_slot)
def middle_lines(slot: Slot, least: float) -> tuple[Branch, ...]:
    """Branches of the middle line where the wall is at least `least` mm away: the longest first, then its side branches.

    Each side branch begins on an earlier one. Empty when there is no such place.
    GeometryError when the slot crosses itself.
    """
    graph = _graph(slot, least)
    branches: list[Branch] = []
    start = max(_groups(graph), key=len, default=())
    if not start:
        return ()
    far = _far(graph, [start[0]])[0]
    end, came = _far(graph, [far])
    trunk = _way(came, end)
    branches.append(trunk)
    known = set(trunk)
    while True:
        end, came = _far(graph, known)
        way = _way(came, end)
        if len(way) < 2 or _length(way) < least:
            return tuple(branches)
        branches.append(way)
        known.update(way)


def _graph(slot: Slot, least: float) -> dict[Vec2, dict[Vec2, float]]:
    path = slot_path(slot)
    area = polygon(path)
    ring = area.exterior
    shapely.prepare(area)
    shapely.prepare(ring)
    triangles = _triangles(ring, min(MOST, max(48, int(path.length / SPACING))))
    centres = middles(triangles)
    good = _clear(area, ring, centres) >= least
    _, number = np.unique(triangles[..., 0] + 1j * triangles[..., 1], return_inverse=True)
    # Where two triangles share a side an edge of the diagram leads from the centre of the one to that of the other.
    first, second, _ = shared_sides(number.reshape(-1, 3))
    nodes = list(map(tuple, np.round(centres, 6).tolist()))
    graph: dict[Vec2, dict[Vec2, float]] = {}
    for i, k in zip(first.tolist(), second.tolist(), strict=True):
        a, b = nodes[i], nodes[k]
        if good[i] and good[k] and a != b:
            graph.setdefault(a, {})[b] = graph.setdefault(b, {})[a] = math.dist(a, b)
    return graph


def _triangles(ring: shapely.LinearRing, count: int) -> np.ndarray:
    """(n, 3, 2) corners of the triangles within so many points along a ring, in whose circumscribed circles none is that can be seen.

    The library's other triangles, of points without their ring, lose their way among points that lie evenly on straight walls.
    """
    spots = shapely.line_interpolate_point(ring, np.arange(count) * ring.length / count)
    within = shapely.make_valid(shapely.polygons(shapely.get_coordinates(spots)))
    return shapely.get_coordinates(shapely.constrained_delaunay_triangles(within)).reshape(-1, 4, 2)[:, :3]


def _clear(area, ring, points: np.ndarray) -> np.ndarray:
    """Distance to the wall for points inside, negative outside."""
    far = np.full(len(points), -1.0)
    within = shapely.contains_xy(area, points)
    far[within] = shapely.distance(ring, shapely.points(points[within]))
    return far


def _groups(graph: dict[Vec2, dict[Vec2, float]]) -> list[list[Vec2]]:
    left, groups = set(graph), []
    while left:
        stack, group = [min(left)], []
        while stack:
            node = stack.pop()
            if node in left:
                left.discard(node)
                group.append(node)
                stack += graph[node]
        groups.append(group)
    return groups


def _far(graph: dict[Vec2, dict[Vec2, float]], sources) -> tuple[Vec2, dict[Vec2, Vec2 | None]]:
    """The node farthest along the lines from any source, and from which neighbour each node was reached."""
    done: dict[Vec2, Vec2 | None] = {}
    heap = [(0.0, node, None) for node in sources]
    heapq.heapify(heap)
    last = heap[0][1]
    while heap:
        length, node, before = heapq.heappop(heap)
        if node in done:
            continue
        done[node] = before
        last = node
        for near, far in graph[node].items():
            if near not in done:
                heapq.heappush(heap, (length + far, near, node))
    return last, done


def _way(came: dict[Vec2, Vec2 | None], end: Vec2) -> Branch:
    way: list[Vec2] = [end]
    while came[way[-1]] is not None:
        way.append(came[way[-1]])
    return tuple(reversed(way))


def _length(way: Branch) -> float:
    points = np.array(way)
    return float(np.hypot(*np.diff(points, axis=0).T).sum())
