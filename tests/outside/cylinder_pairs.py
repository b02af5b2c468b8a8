"""Two thousand invented pairs of flat-ended cylinders, and how the solid kernel's distances of them were made.

The pairs follow from random.Random(seed).random() alone, whose stream Python
guarantees. `solid_kernel_distances.txt` holds one distance a line, in mm. It was
written by running this file (`python tests/outside/cylinder_pairs.py`) in an
environment with the package `cadquery-ocp` 8.0.1.1 (Open CASCADE): each cylinder
by BRepPrimAPI_MakeCylinder, each distance by BRepExtrema_DistShapeShape. The kernel is no
dependency of the tests because it weighs 600 MB and takes a minute for this.
"""

import math
import random
from pathlib import Path

VALUES = Path(__file__).parent / "solid_kernel_distances.txt"
KINDS = ("skew", "square", "parallel", "coplanar", "end-on", "nested", "stepped", "crossing")
EACH = 260


def pairs():
    """(kind, one, two) for every pair; a cylinder is (start, unit axis, length, radius), mm."""
    stream = random.Random(20_000)
    return [(kind, *_pair(kind, stream.random)) for _ in range(EACH) for kind in KINDS]


def _pair(kind, rnd):
    def between(low, high):
        return low + (high - low) * rnd()

    def direction():
        height, turn = between(-1, 1), between(0, 2 * math.pi)
        flat = math.sqrt(1 - height * height)
        return (flat * math.cos(turn), flat * math.sin(turn), height)

    def cylinder(axis):
        start = (between(-14, 14), between(-14, 14), between(-14, 14))
        return start, axis, between(2, 34), between(0.7, 6)

    one = cylinder(direction())
    if kind == "skew":
        return one, cylinder(direction())
    if kind == "square":
        turn = between(0, 2 * math.pi)
        return cylinder((0.0, 0.0, 1.0)), cylinder((math.cos(turn), math.sin(turn), 0.0))
    if kind == "parallel":
        sign = 1 if rnd() < 0.5 else -1
        return one, cylinder(tuple(sign * c for c in one[1]))
    if kind == "coplanar":
        first, second = between(0, 6.283), between(0, 6.283)
        a = cylinder((math.cos(first), math.sin(first), 0.0))
        b = cylinder((math.cos(second), math.sin(second), 0.0))
        return a, ((b[0][0], b[0][1], a[0][2]), *b[1:])
    if kind == "end-on":
        beyond = one[2] + between(0.2, 8)
        tip = tuple(s + d * beyond for s, d in zip(one[0], one[1]))
        return one, (tip, direction(), between(2, 20), between(0.7, 6))
    if kind == "nested":
        inner = tuple(s + d * one[2] * 0.3 for s, d in zip(one[0], one[1]))
        return one, (inner, one[1], one[2] * 0.4, one[3] * 0.6)
    if kind == "stepped":
        shoulder = tuple(s + d * one[2] for s, d in zip(one[0], one[1]))
        gap = between(0, 3) if rnd() < 0.5 else 0.0
        foot = tuple(s + d * gap for s, d in zip(shoulder, one[1]))
        return one, (foot, one[1], between(2, 20), between(0.7, 6))
    middle = tuple(s + d * one[2] / 2 for s, d in zip(one[0], one[1]))
    other = direction()
    length = between(4, 30)
    return one, (tuple(m - o * length / 2 for m, o in zip(middle, other)), other, length, between(0.7, 6))


def _kernel_distance(one, two):
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder
    from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt

    shapes = [BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(*start), gp_Dir(*axis)), radius, length).Shape()
              for start, axis, length, radius in (one, two)]
    measured = BRepExtrema_DistShapeShape(*shapes)
    if not measured.IsDone():
        raise RuntimeError("the kernel found no distance")
    return measured.Value()


if __name__ == "__main__":
    VALUES.write_text("".join(f"{_kernel_distance(one, two):.7f}\n" for _, one, two in pairs()))
