"""Invented drillings that cut into slots, ramps and beyond outlines, and how a solid kernel proved the least ways out.

The cases follow from random.Random(seed).random() alone, whose stream Python guarantees. `solid_kernel_overlaps.txt` was
written by running this file (`python -m tests.outside.overlap_cases`) in an environment with the package `cadquery-ocp`
8.0.1.1 (Open CASCADE) besides the program's own: one line a case, with its number among the draws, the depth and the direction that the program found,
the volume still shared (mm3) after a shift by PAST mm more than that depth along it, and how many of OTHERS directions all
round, those nearest to it included, free the drilling with a shift SHY mm short of it: none may.
Slots, ramps and drillings from the face go on far above the face in the kernel, through slots and outlines far below the
back as well; the outside of an outline is a block less its prism. Volumes by BRepAlgoAPI_Common and BRepGProp, distances by
BRepExtrema_DistShapeShape. `solid_kernel_ramps.txt` holds the distances of the first BESIDE draws of each kind of ramp.
The kernel is no dependency of the tests.
"""

import math
import random
from itertools import islice
from pathlib import Path

from geometry.layout import DrawnSlot, Loop, Node, Ramp, Slot, StraightSlot, loop_path, slot_path
from geometry.solids.drilling import Drilling
from geometry.solids.ramp_gap import from_ramp
from geometry.solids.ramps import ramp_cut
from geometry.solids.walls import Wall
from geometry.solids.ways_out import from_slot, level_from_outside, upright_from_outside

VALUES = Path(__file__).parent / "solid_kernel_overlaps.txt"
APART = Path(__file__).parent / "solid_kernel_ramps.txt"
KINDS = ("level, through slot", "level, blind slot", "upright, blind slot", "level, drawn slot", "level, ramp", "upright, ramp",
         "level, outline", "upright, outline")
EACH = 30
BESIDE = 120
"""Draws of each kind of ramp whose plain distance was recorded, 0 where they share wood."""
THICK, FAR = 16.0, 60.0
PAST, SHY, OTHERS = 0.005, 0.005, 200


def drilling(start, axis, length, radius):
    """A drilling of that shape."""
    surface = "face" if axis[2] > 0.5 else "back" if axis[2] < -0.5 else "treble edge"
    return Drilling("d", "d", "d", "post", "bore", 2 * radius, start, axis, length, False, surface, "brad", None, length)


def draws(kind):
    """(drilling, slot or outline corners) of a kind, without end; not all share wood with what they stand beside."""
    stream = random.Random(90_000 + KINDS.index(kind)).random
    while True:
        yield _case(kind, lambda low, high: low + (high - low) * stream())


def cases():
    """(kind, drilling, slot or outline corners) of every recorded line."""
    recorded = [int(line.split()[0]) for line in VALUES.read_text().splitlines()]
    made = []
    for i, kind in enumerate(KINDS):
        mine = recorded[i * EACH:(i + 1) * EACH]
        drawn = list(islice(draws(kind), mine[-1] + 1))
        made += [(kind, *drawn[k]) for k in mine]
    return made


def beside_ramps():
    """(kind, drilling, slot) of the draws whose distance to a ramp was recorded."""
    return [(kind, *case) for kind in KINDS if kind.endswith("ramp") for case in islice(draws(kind), BESIDE)]


def _overlapping():
    """(number of the draw, kind, drilling, shape, way out) of the first EACH of every kind that share wood."""
    for kind in KINDS:
        found = ((n, kind, *case, way(kind, *case)) for n, case in enumerate(draws(kind)))
        yield from islice((one for one in found if one[-1] is not None and one[-1].depth > 0.02), EACH)


def way(kind, drilled, shape):
    """The program's answer."""
    if kind.endswith("outline"):
        outline = outline_wall(shape)
        if kind.startswith("level"):
            return level_from_outside(drilled, Wall(outline.path, 0.0005).points)
        return upright_from_outside(drilled.start[:2], drilled.radius, outline)
    if kind.endswith("ramp"):
        return from_ramp(drilled, ramp_cut(shape))
    return from_slot(drilled, shape, Wall(slot_path(shape)))


def outline_wall(corners):
    """The wall of a loop of arcs."""
    return Wall(loop_path(loop(corners)).counter_clockwise())


def loop(corners):
    """A loop of arcs through corners (x, y, bulge)."""
    return Loop(nodes=tuple(Node(at=c[:2], bulge=c[2]) for c in corners))


def _case(kind, between):
    turn = between(0, 2 * math.pi)
    across = (math.cos(turn), math.sin(turn), 0.0)
    radius = between(0.8, 5)
    if kind.endswith("outline"):
        corners = tuple((between(25, 40) * math.cos(k * math.pi / 3), between(25, 40) * math.sin(k * math.pi / 3),
                         between(-0.25, 0.25)) for k in range(6))
        if kind.startswith("level"):
            return drilling((between(-10, 10), between(-10, 10), 8.0), across, between(15, 34), radius), corners
        out = between(18, 38)
        return drilling((out * across[0], out * across[1], 0.0), (0.0, 0.0, 1.0), THICK, radius), corners
    if kind.endswith("drawn slot"):
        # Two arms about a tongue of wood.
        w, arm = between(8, 12), between(15, 30)
        corners = ((0.0, 0.0, 0.0), (2.4 * w, 0.0, between(0, 0.3)), (2.4 * w, arm, 0.0), (1.4 * w, arm, 0.0), (1.4 * w, w, 0.0),
                   (w, w, 0.0), (w, arm, 0.0), (0.0, arm, 0.0))
        start = (between(-20, 40), between(-20, 40), 8.0)
        return drilling(start, across, between(8, 30), radius), Slot(id="s", shape=DrawnSlot(loop=loop(corners)))
    length, width = between(5, 60), between(6, 16)
    run = between(0, 2 * math.pi)
    nut = (between(-10, 10), between(-10, 10))
    tip = (nut[0] + length * math.cos(run), nut[1] + length * math.sin(run))
    deep = None if "through" in kind or "ramp" in kind else between(3, 13)
    ramp = Ramp(length=between(8, 30), depth=between(3, 10)) if "ramp" in kind else None
    slot = Slot(id="s", shape=StraightSlot(nut_end=nut, tip_end=tip, width=width), depth=deep, ramp=ramp)
    if kind.startswith("level"):
        spot = (between(-30, 30), between(-30, 30), between(4, 12))
        return drilling(spot, across, between(4, 34), radius), slot
    from_back = between(0, 1) < 0.7
    start = (between(-20, 20), between(-20, 20), THICK if from_back else 0.0)
    return drilling(start, (0.0, 0.0, -1.0 if from_back else 1.0), between(5, 15), radius), slot


def directions(about):
    """Unit directions: some in plan, some all round, some within 20 degrees of one."""
    rnd = random.Random(91_000).random
    third = OTHERS // 3
    made = [(math.cos(k * 2 * math.pi / third), math.sin(k * 2 * math.pi / third), 0.0) for k in range(third)]
    for k in range(2 * third):
        height, turn = 2 * rnd() - 1, 2 * math.pi * rnd()
        flat = math.sqrt(1 - height * height)
        n = (flat * math.cos(turn), flat * math.sin(turn), height)
        if k % 2:
            n = tuple(a + 0.35 * rnd() * c for a, c in zip(about, n))
            size = math.hypot(*n)
            n = tuple(c / size for c in n)
        made.append(n)
    return made


def _record():
    from OCP.BRepAlgoAPI import BRepAlgoAPI_Common, BRepAlgoAPI_Cut
    from OCP.BRepBuilderAPI import (
        BRepBuilderAPI_MakeEdge,
        BRepBuilderAPI_MakeFace,
        BRepBuilderAPI_MakePolygon,
        BRepBuilderAPI_MakeWire,
        BRepBuilderAPI_Transform,
    )
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.BRepGProp import BRepGProp
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox, BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakePrism
    from OCP.GC import GC_MakeArcOfCircle
    from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec
    from OCP.GProp import GProp_GProps

    def face(corners, z):
        made = BRepBuilderAPI_MakeWire()
        for a, b in zip(corners, corners[1:] + corners[:1]):
            p, q = gp_Pnt(*a[:2], z), gp_Pnt(*b[:2], z)
            # The arc's middle lies bulge times half the chord to the right of the chord.
            mid = gp_Pnt((a[0] + b[0]) / 2 + a[2] * (b[1] - a[1]) / 2, (a[1] + b[1]) / 2 - a[2] * (b[0] - a[0]) / 2, z)
            made.Add(BRepBuilderAPI_MakeEdge(p, q).Edge() if abs(a[2]) < 1e-12 else
                     BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(p, mid, q).Value()).Edge())
        return BRepBuilderAPI_MakeFace(made.Wire()).Face()

    def prism(corners, low, high):
        return BRepPrimAPI_MakePrism(face(corners, low), gp_Vec(0, 0, high - low)).Shape()

    def straight(shape):
        size = math.dist(shape.nut_end, shape.tip_end)
        nut, tip, half = shape.nut_end, shape.tip_end, shape.width / 2
        out = ((tip[1] - nut[1]) / size * half, -(tip[0] - nut[0]) / size * half)
        return ((nut[0] + out[0], nut[1] + out[1], 0.0), (tip[0] + out[0], tip[1] + out[1], 1.0),
                (tip[0] - out[0], tip[1] - out[1], 0.0), (nut[0] - out[0], nut[1] - out[1], 1.0))

    def solid(kind, shape):
        if kind.endswith("outline"):
            block = BRepPrimAPI_MakeBox(gp_Pnt(-150, -150, -FAR), gp_Pnt(150, 150, FAR)).Shape()
            return BRepAlgoAPI_Cut(block, prism(shape, -FAR - 1, FAR + 1)).Shape()
        if kind.endswith("ramp"):
            cut = ramp_cut(shape)
            near, far = (*cut.corner(0.0, 1.0),), (*cut.corner(cut.reach, 1.0),)
            sides = BRepBuilderAPI_MakePolygon()
            for x, y, z in ((*near, -FAR), (*far, -FAR), (*far, cut.reach * cut.slope), (*near, 0.0)):
                sides.Add(gp_Pnt(x, y, z))
            sides.Close()
            other = cut.corner(0.0, -1.0)
            over = gp_Vec(other[0] - near[0], other[1] - near[1], 0)
            return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(sides.Wire()).Face(), over).Shape()
        corners = straight(shape.shape) if isinstance(shape.shape, StraightSlot) else [
            (*node.at, node.bulge) for node in shape.shape.loop.nodes]
        return prism(corners, -FAR, FAR if shape.depth is None else shape.depth)

    def cylinder(d):
        (x, y, z), length = d.start, d.depth
        if d.direction[2] > 0.5:
            z, length = -FAR, length + FAR
        return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(x, y, z), gp_Dir(*d.direction)), d.radius, length).Shape()

    def shifted(body, n, by):
        move = gp_Trsf()
        move.SetTranslation(gp_Vec(*(c * by for c in n)))
        return BRepBuilderAPI_Transform(body, move, True).Shape()

    def shared(a, b):
        props = GProp_GProps()
        BRepGProp.VolumeProperties_s(BRepAlgoAPI_Common(a, b).Shape(), props)
        return props.Mass()

    lines = []
    for number, kind, drilled, shape, found in _overlapping():
        body, other = cylinder(drilled), solid(kind, shape)
        left = shared(shifted(body, found.way, found.depth + PAST), other)
        freed = 0
        for n in directions(found.way):
            gap = BRepExtrema_DistShapeShape(shifted(body, n, found.depth - SHY), other)
            if gap.Value() > 1e-7 and shared(shifted(body, n, found.depth - SHY), other) < 1e-9:
                freed += 1
                print("freed", kind, drilled, shape, found, n, gap.Value(), flush=True)
        if left > 1e-9:
            print("left", kind, drilled, shape, found, left, flush=True)
        lines.append(f"{number} " + " ".join(f"{c:.6f}" for c in (found.depth, *found.way, left)) + f" {freed}")
    VALUES.write_text("\n".join(lines) + "\n")
    APART.write_text("".join(f"{BRepExtrema_DistShapeShape(cylinder(drilled), solid(kind, shape)).Value():.6f}\n"
                             for kind, drilled, shape in beside_ramps()))


if __name__ == "__main__":
    _record()
