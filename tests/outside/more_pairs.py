"""Invented level bores beside curved outlines, strings over ramps and bores that overlap, and how a solid kernel measured them.

The cases follow from random.Random(seed).random() alone, whose stream Python guarantees. `solid_kernel_more.txt` was
written by running this file (`python -m tests.outside.more_pairs`) in an environment with the package `cadquery-ocp`
8.0.1.1 (Open CASCADE) besides the program's own: one line a case. Level bores: the distance in mm of the cylinder to the
prism of the outline's wire of arcs. Strings: the distance of the cylinder to a block less the slot's prism and the ramp's
wedge. Overlaps: the depth and direction that the program found, the distance after a shift by PAST mm more than that depth
along it, and the greatest distance after a shift SHY mm short of it in any of OTHERS other directions. Distances by
BRepExtrema_DistShapeShape. The kernel is no dependency of the tests.
"""

import math
import random
from pathlib import Path

VALUES = Path(__file__).parent / "solid_kernel_more.txt"
BORES, STRINGS, OVERLAPS = 150, 120, 60
THICK, WIDTH, NUT_Y, TIP_Y = 16.0, 12.0, 40.0, 140.0
PAST, SHY, OTHERS = 0.1, 0.01, 40


def _between(rnd, low, high):
    return low + (high - low) * rnd()


def bores():
    """((start, axis, length, radius), outline corners with bulges) of level bores inside and outside the outline."""
    rnd = random.Random(50_000).random
    made = []
    for _ in range(BORES):
        corners = tuple((_between(rnd, 25, 40) * math.cos(k * math.pi / 3), _between(rnd, 25, 40) * math.sin(k * math.pi / 3),
                         _between(rnd, -0.3, 0.3)) for k in range(6))
        way = _between(rnd, 0, 2 * math.pi)
        out = _between(rnd, 0, 12) if rnd() < 0.5 else _between(rnd, 46, 60)
        turn = _between(rnd, 0, 2 * math.pi)
        start = (out * math.cos(turn), out * math.sin(turn), _between(rnd, 5, 11))
        made.append(((start, (math.cos(way), math.sin(way), 0.0), _between(rnd, 3, 14), _between(rnd, 0.6, 4)), corners))
    return made


def strings():
    """(nut x, nut height, post (x, y), depth of the string at the post, diameter, ramp length, ramp depth); mm.

    The slot runs along y about x = 0, its nut end at NUT_Y - WIDTH / 2.
    """
    rnd = random.Random(60_000).random
    return [(_between(rnd, -3, 3), _between(rnd, 1, 4), (_between(rnd, -2, 2), _between(rnd, 80, 120)), _between(rnd, 3, 9),
             _between(rnd, 0.25, 1.3), _between(rnd, 6, 25), _between(rnd, 2, 6)) for _ in range(STRINGS)]


def overlaps():
    """Pairs of cylinders (start, axis, length, radius) that share wood: skew, square to each other, or nested."""
    rnd = random.Random(70_000).random
    made = []
    for i in range(OVERLAPS):
        def axis():
            height, turn = _between(rnd, -1, 1), _between(rnd, 0, 2 * math.pi)
            flat = math.sqrt(1 - height * height)
            return (flat * math.cos(turn), flat * math.sin(turn), height)
        way = _between(rnd, 0, 2 * math.pi)
        one = ((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), _between(rnd, 8, 20), _between(rnd, 2, 6))
        other = (math.cos(way), math.sin(way), 0.0) if i % 2 else axis()
        length, radius = _between(rnd, 6, 25), _between(rnd, 0.7, 4)
        inside = (_between(rnd, -1.5, 1.5), _between(rnd, -1.5, 1.5), _between(rnd, 1, one[2] - 1))
        share = _between(rnd, 0.1, 0.9)
        start = tuple(p - share * length * a for p, a in zip(inside, other))
        made.append((one, (start, other, length, radius)))
    return made


def directions():
    """Unit directions in which an overlap is tried besides the best one."""
    rnd = random.Random(80_000).random
    made = []
    for _ in range(OTHERS):
        height, turn = _between(rnd, -1, 1), _between(rnd, 0, 2 * math.pi)
        flat = math.sqrt(1 - height * height)
        made.append((flat * math.cos(turn), flat * math.sin(turn), height))
    return made


def _record():
    from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
    from OCP.BRepBuilderAPI import (
        BRepBuilderAPI_MakeEdge,
        BRepBuilderAPI_MakeFace,
        BRepBuilderAPI_MakePolygon,
        BRepBuilderAPI_MakeWire,
    )
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox, BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakePrism
    from OCP.GC import GC_MakeArcOfCircle
    from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Vec

    from geometry.solids.cylinders import Cylinders
    from geometry.solids.distance_depth import escapes

    def cylinder(start, axis, length, radius):
        return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(*start), gp_Dir(*axis)), radius, length).Shape()

    def distance(a, b):
        found = BRepExtrema_DistShapeShape(a, b)
        if not found.IsDone():
            raise RuntimeError("the kernel found no distance")
        return found.Value()

    def wire(corners):
        made = BRepBuilderAPI_MakeWire()
        for a, b in zip(corners, corners[1:] + corners[:1]):
            p, q = gp_Pnt(*a[:2], 0), gp_Pnt(*b[:2], 0)
            mid = gp_Pnt((a[0] + b[0]) / 2 + a[2] * (b[1] - a[1]) / 2, (a[1] + b[1]) / 2 - a[2] * (b[0] - a[0]) / 2, 0)
            made.Add(BRepBuilderAPI_MakeEdge(p, q).Edge() if abs(a[2]) < 1e-12 else
                     BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(p, mid, q).Value()).Edge())
        return made.Wire()

    lines = [f"{distance(cylinder(*one), BRepPrimAPI_MakePrism(wire(corners), gp_Vec(0, 0, THICK)).Shape()):.7f}"
             for one, corners in bores()]
    half = WIDTH / 2
    slot = BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(wire((
        (half, NUT_Y, 0.0), (half, TIP_Y, 1.0), (-half, TIP_Y, 0.0), (-half, NUT_Y, 1.0)))).Face(), gp_Vec(0, 0, THICK)).Shape()
    block = BRepAlgoAPI_Cut(BRepPrimAPI_MakeBox(gp_Pnt(-60, 1, 0), gp_Pnt(60, 180, THICK)).Shape(), slot).Shape()
    for x, up, post, deep, diameter, length, depth in strings():
        y, far = NUT_Y - half, NUT_Y
        sides = BRepBuilderAPI_MakePolygon(gp_Pnt(-half, y - length, 0), gp_Pnt(-half, far, 0),
                                           gp_Pnt(-half, far, depth * (length + half) / length), True)
        wedge = BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(sides.Wire()).Face(), gp_Vec(WIDTH, 0, 0)).Shape()
        wood = BRepAlgoAPI_Cut(block, wedge).Shape()
        run = (post[0] - x, post[1], deep + up)
        size = math.hypot(*run)
        string = cylinder((x, 0.0, -up), tuple(c / size for c in run), size, diameter / 2)
        lines.append(f"{distance(string, wood):.7f}")
    for one, two in overlaps():
        (depth,), (n,) = escapes(Cylinders.made([one]), Cylinders.made([two]))
        other = cylinder(*two)

        def shifted(way, by, one=one):
            return cylinder(tuple(s + by * w for s, w in zip(one[0], way)), *one[1:])
        past = distance(shifted(n, depth + PAST), other)
        most = max(distance(shifted(way, depth - SHY), other) for way in directions())
        lines.append(" ".join(f"{c:.6f}" for c in (depth, *n, past, most)))
    VALUES.write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    _record()
