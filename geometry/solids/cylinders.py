"""Many flat-ended cylinders at once, as arrays: what a drill leaves in the wood."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain

import numpy as np
from msgspec import Struct

from geometry.solids.drilling import Drilling
from geometry.vectors import Vec3


class Cylinders(Struct, frozen=True, eq=False):
    """n solid cylinders: `start` (n, 3) in mm, unit `axis` (n, 3), `length` (n,) and `radius` (n,) in mm."""

    start: np.ndarray
    axis: np.ndarray
    length: np.ndarray
    radius: np.ndarray

    @classmethod
    def of(cls, drillings: Sequence[Drilling]) -> Cylinders:
        """The cylinders of some drillings, in their order."""
        return cls.made([(d.start, d.direction, d.depth, d.radius) for d in drillings])

    @classmethod
    def made(cls, rows: Sequence[tuple[Vec3, Vec3, float, float]]) -> Cylinders:
        """Cylinders from (start, unit axis, length, radius)."""
        numbers = chain.from_iterable([(*start, *axis, length, radius) for start, axis, length, radius in rows])
        flat = np.fromiter(numbers, float, 8 * len(rows)).reshape(-1, 8)
        return cls(flat[:, :3], flat[:, 3:6], flat[:, 6], flat[:, 7])

    @classmethod
    def joined(cls, many: Sequence[Cylinders]) -> Cylinders:
        """All cylinders of several groups, group after group."""
        if len(many) == 1:
            return many[0]
        return cls(np.concatenate([m.start for m in many]), np.concatenate([m.axis for m in many]),
                   np.concatenate([m.length for m in many]), np.concatenate([m.radius for m in many]))

    def __len__(self) -> int:
        return len(self.length)

    def pick(self, index: np.ndarray | slice) -> Cylinders:
        """The cylinders at an index array, mask or slice."""
        return Cylinders(self.start[index], self.axis[index], self.length[index], self.radius[index])

    def moved(self, by: np.ndarray) -> Cylinders:
        """Every cylinder shifted by its row of `by` (n, 3) or by one vector (3,), mm."""
        return Cylinders(self.start + by, self.axis, self.length, self.radius)

    def boxes(self) -> tuple[np.ndarray, np.ndarray]:
        """(lowest, highest) corners (n, 3) of the exact upright boxes about the cylinders."""
        start = self.start
        end = start + self.axis * self.length[:, None]
        reach = self.radius[:, None] * np.sqrt(np.maximum(0.0, 1 - self.axis * self.axis))
        return np.minimum(start, end) - reach, np.maximum(start, end) + reach

    def repeated(self, times: int) -> Cylinders:
        """The solids, all of them so many times over."""
        return self.pick(np.tile(np.arange(len(self)), times))

    def support(self, n: np.ndarray) -> np.ndarray:
        """Largest n . p over each cylinder, for unit directions n (n, 3); mm."""
        along = dots(n, self.axis)
        aside = n - along[:, None] * self.axis
        return dots(n, self.start) + np.maximum(0.0, self.length * along) + self.radius * norms(aside)

    def nearest(self, p: np.ndarray) -> np.ndarray:
        """The point (n, 3) of each cylinder nearest to its point p (n, 3); p itself when inside."""
        w = p - self.start
        along = dots(w, self.axis)
        aside = w - along[:, None] * self.axis
        size = norms(aside)
        keep = np.minimum(1.0, self.radius / np.maximum(size, 1e-300))
        return (self.start + self.axis * np.minimum(np.maximum(along, 0.0), self.length)[:, None]
                + aside * keep[:, None])


def dots(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """Row by row scalar product of (n, 3) arrays."""
    return np.vecdot(a, b)


def norms(a: np.ndarray) -> np.ndarray:
    """Row by row length of an (n, 3) array."""
    return np.sqrt(np.vecdot(a, a))


def crosses(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """Row by row vector product of (n, 3) arrays."""
    out = np.empty_like(a)
    out[:, 0] = a[:, 1] * b[:, 2] - a[:, 2] * b[:, 1]
    out[:, 1] = a[:, 2] * b[:, 0] - a[:, 0] * b[:, 2]
    out[:, 2] = a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]
    return out


def square_to(n: np.ndarray) -> np.ndarray:
    """A unit vector square to each row of n."""
    steep = np.abs(n[:, 2]) >= 0.7
    # n x (0, 0, 1), or n x (1, 0, 0) where n is nearly upright.
    e = np.zeros_like(n)
    e[:, 0] = np.where(steep, 0.0, n[:, 1])
    e[:, 1] = np.where(steep, n[:, 2], -n[:, 0])
    e[:, 2] = np.where(steep, -n[:, 1], 0.0)
    return e / norms(e)[:, None]
