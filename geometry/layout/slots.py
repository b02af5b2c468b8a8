"""Slots, pins and single holes."""

from functools import lru_cache
from typing import Literal

from msgspec.structs import replace

from geometry import vectors as v
from geometry.by_size import of_slot, remembered_by_size
from geometry.curves import Arc, Line, Path
from geometry.errors import GeometryError
from geometry.layout.outline import Loop, Node, loop_path
from geometry.layout.parts import Id, Part, Point, Size
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

_DECIMALS = 9
"""of coordinates at home, in mm: what moving a slot leaves of rounding is finer"""


class StraightSlot(Part, kw_only=True, tag="straight", tag_field="kind"):
    """A slot with straight walls and round ends.

    `nut_end` and `tip_end` are the centres of the round ends (mm), so the slot
    is longer than their distance by its width.
    """

    nut_end: Point
    tip_end: Point
    width: Size


class DrawnSlot(Part, kw_only=True, tag="drawn", tag_field="kind"):
    """A slot of any shape."""

    loop: Loop


class Ramp(Part, kw_only=True):
    """A slope cut into the face that leads the strings down into the nut end of a slot (mm).

    It begins at the face `length` before the slot's nut end and is `depth` deep
    there. Without a width it is as wide as the slot.
    """

    length: Size
    depth: Size
    width: Size | None = None


class Slot(Part, kw_only=True):
    """An opening in the head: through, or blind with a depth from the face (mm); as deep as the wood is thick, it is through.

    One that is `there` is a pocket that the blank has already, open or filled: the access of a truss rod, an inlay's bed, an old
    slot. Everything keeps clear of it, and nothing cuts it. It may run over the nut line and out of the outline. No post stands in
    it and no string goes down into it: an opening for those is a slot to rout, or has been one.
    """

    id: Id
    shape: StraightSlot | DrawnSlot
    depth: Size | None = None
    ramp: Ramp | None = None
    there: bool = False

    def through(self, thickness: float) -> bool:
        """Whether it goes through wood of that thickness (mm)."""
        return self.depth is None or self.depth >= thickness - TOUCH

    def floor(self, thickness: float) -> float:
        """How far below the face it ends in wood of that thickness, mm."""
        return thickness if self.depth is None else min(self.depth, thickness)


class Pin(Part, kw_only=True):
    """A locating pin through template and blank (mm)."""

    id: Id
    at: Point
    diameter: Size = 6.0


class Retainer(Part, kw_only=True):
    """A string retainer screwed to the face (mm): the strings that pass within half its width of the screw, square to the
    centreline, run no higher than `height` above the face there. A bar on two screws is two of them."""

    height: Size
    width: Size = 8.0


class SingleHole(Part, kw_only=True):
    """A hole that belongs to no tuner (mm). Without a depth it goes through. It may hold the screw of a string retainer.

    One that is `there` is in the blank already, open or plugged: everything keeps clear of it, and nothing drills it. One that is `plugged`
    besides is filled with wood before anything is marked or drilled, and is wood for all that comes after: it may be drilled anew.
    """

    id: Id
    at: Point
    diameter: Size
    depth: Size | None = None
    surface: Literal["face", "back"] = "face"
    there: bool = False
    plugged: bool = False
    retainer: Retainer | None = None

    def opens(self, thickness: float, surface: Literal["face", "back"] = "face") -> bool:
        """Whether it is open at the face, into which a retainer is screwed, or at the back, of wood of that thickness (mm)."""
        return self.surface == surface or self.through(thickness)

    def through(self, thickness: float) -> bool:
        """Whether it goes through wood of that thickness (mm)."""
        return self.depth is None or self.depth >= thickness - TOUCH


def slot_path(slot: Slot) -> Path:
    """The exact closed wall of a slot, counter-clockwise. GeometryError when it has no inside."""
    return shape_path(slot.shape)


def shape_path(shape: StraightSlot | DrawnSlot) -> Path:
    """The same of the shape alone."""
    if isinstance(shape, DrawnSlot):
        return loop_path(shape.loop).counter_clockwise()
    return straight_path(shape.nut_end, shape.tip_end, shape.width)


@lru_cache(maxsize=256)
def straight_path(a: Point, b: Point, width: float) -> Path:
    """The wall of a straight slot between two end centres; coinciding centres give a round hole."""
    radius = width / 2
    if not radius > 0:
        raise GeometryError(say("A slot needs a width above zero."))
    if v.distance(a, b) < 1e-9:
        up = (0.0, 1.0)
        b = a
    else:
        up = v.unit(v.sub(b, a))
    out = v.right(up)
    a_out, a_in = v.along(a, out, radius), v.along(a, out, -radius)
    b_out, b_in = v.along(b, out, radius), v.along(b, out, -radius)
    ends = Arc.bulging(b_out, b_in, 1.0), Arc.bulging(a_in, a_out, 1.0)
    if a == b:
        return Path(ends, closed=True)
    return Path((Line(a_out, b_out), ends[0], Line(b_in, a_in), ends[1]), closed=True)


@remembered_by_size(256, of_slot)
def at_home(slot: Slot) -> tuple[Slot, Vec2]:
    """(the slot with its beginning on the origin, one object for every place of it; where it begins, mm).

    What cutters and drills do in a slot hangs on its shape, not on its place: who asks for that of the slot at home
    asks once for a slot that is only moved.
    """
    shape = slot.shape
    if isinstance(shape, StraightSlot):
        begins = shape.nut_end
        return _one(replace(slot, shape=replace(shape, nut_end=(0.0, 0.0), tip_end=_from(begins, shape.tip_end)))), begins
    begins = shape.loop.nodes[0].at
    home = replace(slot, shape=DrawnSlot(loop=Loop(nodes=tuple([_node(node, begins) for node in shape.loop.nodes]))))
    try:
        slot_path(home)
    except GeometryError:  # too small for its coordinates to be rounded
        return slot, (0.0, 0.0)
    return _one(home), begins


@remembered_by_size(256, of_slot)
def _one(slot: Slot) -> Slot:
    return slot


def _node(node: Node, begins: Vec2) -> Node:
    handles = node.handles
    return replace(node, at=_from(begins, node.at),
                   handles=handles and (_from(begins, handles[0]), _from(begins, handles[1])))


def _from(begins: Vec2, p: Vec2) -> Vec2:
    x, y = v.sub(p, begins)
    return round(x, _DECIMALS), round(y, _DECIMALS)
