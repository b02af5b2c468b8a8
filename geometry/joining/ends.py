"""Which loose ends are one point, and which belong together."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from geometry.vectors import Vec2


class Groups:
    """Disjoint sets of the numbers 0..n-1 (union by size, path halving)."""

    def __init__(self, count: int) -> None:
        self._parent = list(range(count))
        self._size = [1] * count

    def find(self, i: int) -> int:
        """The number that stands for i's set."""
        while self._parent[i] != i:
            self._parent[i] = self._parent[self._parent[i]]
            i = self._parent[i]
        return i

    def merge(self, i: int, j: int) -> None:
        """Make one set of the sets of i and j."""
        i, j = self.find(i), self.find(j)
        if i == j:
            return
        if self._size[i] < self._size[j]:
            i, j = j, i
        self._parent[j] = i
        self._size[i] += self._size[j]

    def sets(self) -> list[list[int]]:
        """All sets, each in ascending order, ordered by their first member."""
        found: dict[int, list[int]] = {}
        for i in range(len(self._parent)):
            found.setdefault(self.find(i), []).append(i)
        return list(found.values())


def near_pairs(points: Sequence[Vec2], within: float) -> list[tuple[float, int, int]]:
    """(distance in mm, i, j) with i < j for all points at most `within` mm apart, nearest first.

    A search by distance, not a grid: near points on two sides of a cell border
    are not missed.
    """
    if len(points) < 2:
        return []
    at = shapely.points(np.array(points, dtype=float))
    i, j = shapely.STRtree(at).query(at, predicate="dwithin", distance=within)
    i, j = i[i < j], j[i < j]
    apart = shapely.distance(at[i], at[j])
    return sorted(zip(apart.tolist(), i.tolist(), j.tolist(), strict=True))


def same_point(points: Sequence[Vec2], within: float) -> list[int]:
    """For each point the number of its node: points chained by steps of at most `within` mm share one.

    Nodes are numbered from 0 in order of first appearance.
    """
    groups = Groups(len(points))
    first: dict[Vec2, int] = {}
    distinct: list[int] = []
    for i, p in enumerate(points):
        if p in first:
            groups.merge(first[p], i)
        else:
            first[p] = i
            distinct.append(i)
    for _, a, b in near_pairs([points[i] for i in distinct], within):
        groups.merge(distinct[a], distinct[b])
    numbers: dict[int, int] = {}
    return [numbers.setdefault(groups.find(i), len(numbers)) for i in range(len(points))]
