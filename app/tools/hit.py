"""What lies under the pointer in the opened-out view."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from functools import lru_cache
from typing import Literal

from msgspec import Struct

from geometry import edits  # for what is loaded when it is first used: a start hits nothing
from geometry import vectors as v
from geometry.by_size import of_loop, remembered_by_size
from geometry.drawing.glue_lines import joint_line
from geometry.drawing.tuner_plan import folded
from geometry.edits.loops import edge_of
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Headstock, Loop, Side, StraightSlot, loop_path, slot_path
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids import Drilling, holes
from geometry.terms import term
from geometry.vectors import Vec2

REACH = 6.0
"""How far from a thing, in pixels, it can still be taken hold of."""

Kind = Literal["node", "handle", "edge", "slot end", "slot", "tuner", "mark", "pin", "hole", "nut end", "outer string", "ear",
               "blank edge"]
Part = int | str | tuple[int, int] | tuple[int, float] | None


class Target(Struct, frozen=True):
    """A thing that can be taken hold of.

    `id` is a feature's id, or outline, nut or blank. `part` says which part:
    the node's index; (edge, 0 or 1) of a handle; (edge, parameter) of an edge;
    "nut" or "tip" of a slot end; "bass" or "treble" of a nut end or an outer string; "bass",
    "treble", "tip", "behind" or "thickness" of a blank edge, or "scarf", the line of its joint on the face. A mark is a side
    tuner taken by its entry mark on a folded edge. `at` is its own point in mm.
    """

    kind: Kind
    id: str
    part: Part
    at: Vec2

    @property
    def name(self) -> str:
        """What to call it in a readout."""
        if self.kind == "node":
            return say("node {number} of the {of}", number=self.part + 1, of=term(self.id))
        if self.kind == "handle":
            return say("handle of the {of}", of=term(self.id))
        if self.kind == "slot end":
            return end_of_slot(self.part, self.id)
        if self.kind in ("outer string", "nut end", "blank edge"):
            return _PARTS[self.kind, self.part]
        return say("the outline") if self.id == OUTLINE else self.id


_PARTS = {
    ("outer string", "bass"): say("outer string on the bass side"), ("outer string", "treble"): say("outer string on the treble side"),
    ("nut end", "bass"): say("bass end of the nut"), ("nut end", "treble"): say("treble end of the nut"),
    ("blank edge", "bass"): say("bass edge of the blank"), ("blank edge", "treble"): say("treble edge of the blank"),
    ("blank edge", "tip"): say("far end of the blank"), ("blank edge", "behind"): say("end of the blank behind the nut line"),
    ("blank edge", "thickness"): say("thickness of the blank"), ("blank edge", "scarf"): say("line of the scarf joint"),
}


def end_of_slot(end: str, slot: str) -> str:
    """What to call an end of a straight slot, "nut" or "tip"."""
    return say("{end} of {slot}", end=term(f"{end} end"), slot=slot)


def hit(layout: Headstock, at: Vec2, mm_per_pixel: float, held: Collection[str] = (),
        shape: bool = False, pins: bool = False) -> Target | None:
    """The thing under a point of the view, None for bare wood or paper.

    Nodes and handles are met only on the loop that is held, or on the outline
    when `shape` is set. Small things come before large ones: nodes, handles,
    tuners and pins, slot ends, nut ends, outer strings, edges of a held loop,
    side bores, slots, the outline, glue lines, the blank; on a folded edge marks,
    then the blank. Of two things of one kind the nearer is met; with `pins` a pin before the tuner in whose bore it stands.
    """
    reach = REACH * mm_per_pixel
    for found in _groups(layout, at, reach, held, shape):
        near = [(distance, target) for distance, target in found if distance <= reach]
        if near:
            return min(near, key=lambda pair: (not (pins and pair[1].kind == "pin" and pair[0] <= 0), pair[0]))[1]
    return None


def edge_near(loop: Loop, ref: str, at: Vec2) -> tuple[float, Target]:
    """(distance in mm, edge) of a loop nearest to a point."""
    near = loop_path(loop).nearest(at)
    return near.distance, Target("edge", ref, (_edge_indices(loop)[near.segment], near.t), near.point)


def strip_at(layout: Headstock, at: Vec2) -> Side | None:
    """The square edge on whose folded strip a point lies (beyond it too), None on the face."""
    if at[0] > layout.blank.treble:
        return "treble"
    return "bass" if at[0] < -layout.blank.bass else None


def depth_at(layout: Headstock, side: Side, at: Vec2) -> float:
    """How far below the face a point of a folded strip lies, mm."""
    return at[0] - layout.blank.treble if side == "treble" else -layout.blank.bass - at[0]


@lru_cache(maxsize=8)
def drillings(layout: Headstock) -> tuple[Drilling, ...]:
    """All drillings, none while the outline gives the tuners no place to be."""
    try:
        return tuple(d for hole in holes(layout) for d in hole.drillings)
    except GeometryError:
        return ()


Found = Iterator[tuple[float, Target]]
"""Targets with their distance from the point, mm; not above zero inside."""


def _groups(layout: Headstock, at: Vec2, reach: float, held: Collection[str], shape: bool) -> Iterator[Found]:
    loops = [(ref, loop) for ref, loop in _loops(layout) if ref in held or (shape and ref == OUTLINE)]
    yield _nodes(loops, at)
    yield _handles(loops, at)
    if strip_at(layout, at):
        yield _marks(layout, at)
    else:
        yield _upright(layout, at, reach)
        yield _slot_ends(layout, at)
        yield _nut_ends(layout, at)
        yield _outer_strings(layout, at)
        yield (edge_near(loop, ref, at) for ref, loop in loops)
        yield _side_bores(layout, at, reach)
        yield _slots(layout, at, reach)
        if all(ref != OUTLINE for ref, _ in loops):
            yield iter([edge_near(layout.outline, OUTLINE, at)])
        yield _glue_lines(layout, at)
    yield _blank(layout, at)


def _loops(layout: Headstock) -> list[tuple[str, Loop]]:
    return [(OUTLINE, layout.outline),
            *((slot.id, slot.shape.loop) for slot in layout.slots if isinstance(slot.shape, DrawnSlot))]


def _nodes(loops: list[tuple[str, Loop]], at: Vec2) -> Found:
    for ref, loop in loops:
        for i, node in enumerate(loop.nodes):
            yield v.distance(node.at, at), Target("node", ref, i, node.at)


def _handles(loops: list[tuple[str, Loop]], at: Vec2) -> Found:
    for ref, loop in loops:
        for i, node in enumerate(loop.nodes):
            for which, place in enumerate(node.handles or ()):
                yield v.distance(place, at), Target("handle", ref, (i, which), place)


def _upright(layout: Headstock, at: Vec2, reach: float) -> Found:
    """Face tuners, pins and single holes within reach, by their widest drilling on the spot and by their screws."""
    pins, singles = {pin.id for pin in layout.pins}, {hole.id for hole in layout.holes}
    for d in drillings(layout):
        if d.upright and (distance := v.distance(d.start[:2], at) - d.radius) <= reach:
            kind = "pin" if d.of in pins else "hole" if d.of in singles else "tuner"
            yield distance, Target(kind, d.of, None, _origin(layout, d) if kind == "tuner" else d.start[:2])


def _origin(layout: Headstock, drilling: Drilling) -> Vec2:
    """Where the tuner of a drilling stands, mm: of a row along an outline of thousands of nodes that takes a while."""
    return edits.plan_point(layout, drilling.of)


def _side_bores(layout: Headstock, at: Vec2, reach: float) -> Found:
    for d in drillings(layout):
        if not d.upright:
            a = (d.mark or d.start)[:2]
            way, size = v.sub(d.end[:2], a), v.distance(a, d.end[:2])
            share = min(max(v.dot(v.sub(at, a), way) / size ** 2, 0.0), 1.0)
            distance = v.distance(v.along(a, way, share), at) - d.radius
            if distance <= reach:
                yield distance, Target("tuner", d.of, None, _origin(layout, d))


def _marks(layout: Headstock, at: Vec2) -> Found:
    main = {}
    for d in drillings(layout):
        if d.mark is not None and not d.upright:
            side: Side = "treble" if d.surface.startswith("treble") else "bass"
            place = folded(layout.blank, side, d.mark[1], d.mark[2])
            if d.role == "post":
                main[d.of] = place
            yield v.distance(place, at) - d.radius, Target("mark", d.of, None, main.get(d.of, place))


def _slot_ends(layout: Headstock, at: Vec2) -> Found:
    for slot in layout.slots:
        if isinstance(slot.shape, StraightSlot):
            for end, place in (("nut", slot.shape.nut_end), ("tip", slot.shape.tip_end)):
                # Taken by the centre of the round end, within half its radius.
                yield v.distance(place, at) - slot.shape.width / 4, Target("slot end", slot.id, end, place)


def _slots(layout: Headstock, at: Vec2, reach: float) -> Found:
    for slot in layout.slots:
        path = slot_path(slot)
        x0, y0, x1, y1 = path.box
        if x0 - reach <= at[0] <= x1 + reach and y0 - reach <= at[1] <= y1 + reach:
            inside = _winds(path.flatten(0.1), at)
            yield 0.0 if inside else path.nearest(at).distance, Target("slot", slot.id, None,
                                                                       edits.plan_point(layout, slot.id))


def _outer_strings(layout: Headstock, at: Vec2) -> Found:
    """Where the spread sets the first and the last string: one course alone stands about the centreline, whatever the spread."""
    if len({string.course for string in layout.strings}) > 1:
        for side, x in (("bass", -layout.nut.spread / 2), ("treble", layout.nut.spread / 2)):
            yield v.distance(layout.nut.at(x), at), Target("outer string", "nut", side, layout.nut.at(x))


def _nut_ends(layout: Headstock, at: Vec2) -> Found:
    for side, x in (("bass", -layout.nut.width / 2), ("treble", layout.nut.width / 2)):
        yield v.distance(layout.nut.at(x), at), Target("nut end", "nut", side, layout.nut.at(x))


def _glue_lines(layout: Headstock, at: Vec2) -> Found:
    """Those of ears, and where a scarf joint comes out on the face."""
    for stroke in joint_line(layout.blank, layout.nut, False, -layout.blank.bass, layout.blank.treble):
        near = stroke.path.nearest(at)
        yield near.distance, Target("blank edge", "blank", "scarf", near.point)
    for ear in layout.ears:
        x = layout.blank.glue_x(ear)
        low, high = sorted((ear.start, ear.end))
        place = (x, min(max(at[1], low), high))
        yield v.distance(place, at), Target("ear", ear.id, None, place)


def _blank(layout: Headstock, at: Vec2) -> Found:
    b = layout.blank
    upright = (("bass", -b.bass), ("treble", b.treble), ("thickness", -b.bass - b.thickness),
               ("thickness", b.treble + b.thickness))
    beside = min(max(at[1], -b.behind), b.tip)
    for part, x in upright:
        yield v.distance((x, beside), at), Target("blank edge", "blank", part, (x, beside))
    across = min(max(at[0], -b.bass - b.thickness), b.treble + b.thickness)
    for part, y in (("tip", b.tip), ("behind", -b.behind)):
        yield v.distance((across, y), at), Target("blank edge", "blank", part, (across, y))


def _winds(points, at: Vec2) -> bool:
    """Whether a closed chain of points goes round a point (even-odd rule)."""
    x, y = points[:, 0], points[:, 1]
    above = y > at[1]
    turns = above[1:] != above[:-1]
    with_crossing = x[:-1] + (at[1] - y[:-1]) * (x[1:] - x[:-1]) / ((y[1:] - y[:-1]) + (y[1:] == y[:-1]))
    return bool((turns & (with_crossing > at[0])).sum() % 2)


@remembered_by_size(64, of_loop)
def _edge_indices(loop: Loop) -> tuple[int, ...]:
    nodes = list(loop.nodes)
    return tuple(i for i in range(len(nodes)) if edge_of(nodes, i) is not None)
