"""Invented drillings beside slots and curved outlines, and how the solid kernel's distances of them were made.

The pairs follow from random.Random(seed).random() alone, whose stream Python
guarantees. `solid_kernel_prisms.txt` holds one distance a line, in mm, written
by running this file (`python tests/outside/prism_pairs.py`) in an environment
with the package `cadquery-ocp` (Open CASCADE): a cylinder by
BRepPrimAPI_MakeCylinder, a slot as the prism of its face of two lines and two
half circles, an outline as the prism of its wire of arcs and lines, each
distance by BRepExtrema_DistShapeShape. The kernel is no dependency of the tests.
"""

import math
import random
from pathlib import Path

VALUES = Path(__file__).parent / "solid_kernel_prisms.txt"
KINDS = ("upright, through slot", "upright, blind slot", "level, through slot", "level, blind slot", "upright, outline")
EACH = 200
THICK = 16.0


def pairs():
    """(kind, cylinder, shape): (start, axis, length, radius) and (nut end, tip end, width, depth) or outline corners."""
    stream = random.Random(40_000)
    return [(kind, *_pair(kind, stream.random)) for _ in range(EACH) for kind in KINDS]


def _pair(kind, rnd):
    def between(low, high):
        return low + (high - low) * rnd()

    if kind == "upright, outline":
        radius = between(0.6, 6)
        corners = tuple((between(25, 40) * math.cos(k * math.pi / 3), between(25, 40) * math.sin(k * math.pi / 3),
                         between(-0.3, 0.3)) for k in range(6))
        return ((between(-20, 20), between(-20, 20), 0.0), (0.0, 0.0, 1.0), THICK, radius), corners
    turn, length, width = between(0, 2 * math.pi), between(5, 60), between(6, 16)
    nut = (between(-10, 10), between(-10, 10))
    tip = (nut[0] + length * math.cos(turn), nut[1] + length * math.sin(turn))
    depth = THICK if "through" in kind else between(2, 12)
    radius, x, y = between(0.6, 6), between(-30, 30), between(-30, 30)
    if kind.startswith("upright"):
        deep = between(2, THICK)
        return ((x, y, THICK), (0.0, 0.0, -1.0), deep, radius), (nut, tip, width, depth)
    way = between(0, 2 * math.pi)
    return ((x, y, between(5, 11)), (math.cos(way), math.sin(way), 0.0), between(4, 30), between(0.6, 4)), (
        nut, tip, width, depth)


def _kernel_distance(kind, cylinder, shape):
    from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge, BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakeWire
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakePrism
    from OCP.GC import GC_MakeArcOfCircle
    from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Vec

    def edge(a, b, bulge):
        p, q = gp_Pnt(*a, 0), gp_Pnt(*b, 0)
        if abs(bulge) < 1e-12:
            return BRepBuilderAPI_MakeEdge(p, q).Edge()
        # The arc's middle lies bulge times half the chord to the right of the chord.
        mid = ((a[0] + b[0]) / 2 + bulge * (b[1] - a[1]) / 2, (a[1] + b[1]) / 2 - bulge * (b[0] - a[0]) / 2)
        return BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(p, gp_Pnt(*mid, 0), q).Value()).Edge()

    if kind == "upright, outline":
        corners, depth = shape, THICK
    else:
        nut, tip, width, depth = shape
        size = math.dist(nut, tip)
        out = ((tip[1] - nut[1]) / size * width / 2, -(tip[0] - nut[0]) / size * width / 2)
        corners = ((nut[0] + out[0], nut[1] + out[1], 0.0), (tip[0] + out[0], tip[1] + out[1], 1.0),
                   (tip[0] - out[0], tip[1] - out[1], 0.0), (nut[0] - out[0], nut[1] - out[1], 1.0))
    wire = BRepBuilderAPI_MakeWire()
    for one, two in zip(corners, corners[1:] + corners[:1]):
        wire.Add(edge(one[:2], two[:2], one[2]))
    base = wire.Wire() if kind == "upright, outline" else BRepBuilderAPI_MakeFace(wire.Wire()).Face()
    prism = BRepPrimAPI_MakePrism(base, gp_Vec(0, 0, depth)).Shape()
    start, axis, length, radius = cylinder
    round_ = BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(*start), gp_Dir(*axis)), radius, length).Shape()
    measured = BRepExtrema_DistShapeShape(round_, prism)
    if not measured.IsDone():
        raise RuntimeError("the kernel found no distance")
    return measured.Value()


if __name__ == "__main__":
    VALUES.write_text("".join(f"{_kernel_distance(*pair):.7f}\n" for pair in pairs()))
