"""Distances between the demo's drillings, against a solid-modelling kernel and a collision library where they are installed.

Neither is needed by the program or its tests. To compare, install `cadquery-ocp` and `python-fcl`
into an environment of your own beside the program's and run the benchmarks there.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from importlib.util import find_spec
from itertools import combinations

import numpy as np

from app.window.demo import demo
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.solids.drilling import holes
from tests.benchmarks.lines import Line, interleaved, part

NEAR = 5.0
"""mm beyond which nobody cares how far two drillings are apart"""
KERNEL, COLLISION = 300.0, 9.0
"""How many times as quick as the kernel on near pairs, and as one call a pair of the collision library, ours is wanted to be."""
NAME = "gaps of all {n} pairs of drillings"


def lines(rounds: int) -> Iterator[Line]:
    """Ours tells every pair within NEAR exactly and that the others are farther; the kernel is asked for the near pairs alone."""
    solids = Cylinders.of([drilling for hole in holes(demo()) for drilling in hole.drillings])
    left, right = np.triu_indices(len(solids), 1)
    a, b = solids.pick(left), solids.pick(right)
    name = NAME.format(n=len(left))
    (alone,) = interleaved(5 * rounds, lambda: gaps(a, b, NEAR))
    yield Line(name, alone)
    for words, needs, made, wanted in (("the kernel on the near ones", "OCP", kernel, KERNEL),
                                       ("a collision library, call by call", "fcl", collision, COLLISION)):
        if find_spec(needs) is None:
            yield Line(f"{name}, no {needs}", alone, note=f"{words}: {needs} is not installed")
            continue
        ours, theirs = interleaved(rounds, lambda: gaps(a, b, NEAR), made(solids))
        times = part(theirs, 0.5) / part(ours, 0.5)
        yield Line(f"{name}, beside {needs}", ours, None, words, theirs, round(1 / wanted, 4),
                   f"{times:.0f} times as quick, {wanted:g} wanted")


def kernel(solids: Cylinders) -> Callable[[], object]:
    """The kernel's least distance of each pair whose boxes come within NEAR of each other, with the solids built anew."""
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder
    from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt
    low, high = solids.boxes()
    near = [(i, k) for i, k in combinations(range(len(solids)), 2)
            if np.maximum(low[i] - high[k], low[k] - high[i]).max() <= NEAR]
    rows = list(zip(solids.start.tolist(), solids.axis.tolist(), solids.length.tolist(), solids.radius.tolist(), strict=True))

    def measured() -> list[float]:
        shapes = [BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(*start), gp_Dir(*axis)), radius, length).Shape()
                  for start, axis, length, radius in rows]
        return [BRepExtrema_DistShapeShape(shapes[i], shapes[k]).Value() for i, k in near]

    return measured


def collision(solids: Cylinders) -> Callable[[], object]:
    """The collision library's distance of every pair, one call each, with its solids built beforehand."""
    import fcl
    made = []
    for start, axis, length, radius in zip(solids.start, solids.axis, solids.length.tolist(), solids.radius.tolist(), strict=True):
        aside = np.cross(axis, (1.0, 0.0, 0.0) if abs(axis[0]) < 0.9 else (0.0, 1.0, 0.0))
        aside /= np.linalg.norm(aside)
        turn = np.column_stack([aside, np.cross(axis, aside), axis])
        made.append(fcl.CollisionObject(fcl.Cylinder(radius, length), fcl.Transform(turn, start + axis * (length / 2))))
    pairs = list(combinations(made, 2))

    def measured() -> list[float]:
        return [fcl.distance(one, two, fcl.DistanceRequest(), fcl.DistanceResult()) for one, two in pairs]

    return measured
