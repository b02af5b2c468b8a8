"""Holding: press on a thing to hold it, drag it to move it, pull a band round several, double-click an edge."""

from __future__ import annotations

from msgspec.structs import replace

from app.tools import guides
from app.tools.grips import Grip, ManyGrip, PointGrip, SideGrip, SlotEndGrip
from app.tools.hit import Target, drillings, hit
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Pointer, Shown
from geometry import vectors as v
from geometry.drawing.tuner_plan import folded
from geometry.edits.moving import plan_point
from geometry.edits.nodes import node_at, set_smooth
from geometry.edits.parts import loop_at
from geometry.edits.shape import add_node
from geometry.errors import GeometryError
from geometry.layout import Headstock, StraightSlot, feature_ids
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.vectors import Vec2

DEAD = 3.0
"""A press that moves less than this many pixels is a click."""

HELD_FIRST = ("edge", "nut end", "outer string", "ear", "blank edge")
"""Long or hidden things that only move when they are held already, so that nothing is pulled by accident."""


def hold(layout: Headstock, held: tuple[str, ...] = (), options: Options | None = None) -> Gesture:
    """One press of the holding tool, from press to release.

    A click holds what is under it (Ctrl adds or lets go, Shift adds); a drag
    moves it, or everything that is held with it; a drag from bare wood holds
    what lies in the band. A double click on an edge of the held outline or
    drawn slot adds a node, on a node makes it smooth or a corner. Shift keeps
    one axis, Alt switches snapping off. A value typed during the drag ends it.
    """
    options = options or Options()
    pointer = yield Shown(layout, held=held)
    if pointer.kind == "double":
        done = _doubled(layout, pointer, held, options)
        if done is not None:
            return done
        pointer = replace(pointer, kind="press")  # the second of two quick presses, with which a drag may begin
    if pointer.kind != "press":
        return None
    target = _under(layout, pointer, held, options)
    if target is None:
        return (yield from _band(layout, pointer, held, options))
    if pointer.ctrl and target.kind != "node":
        return Done(layout, held=_toggled(held, target.id))
    return (yield from _dragged(layout, pointer, target, held, options))


def _under(layout: Headstock, pointer: Pointer, held: tuple[str, ...], options: Options) -> Target | None:
    return hit(layout, pointer.at, pointer.mm_per_pixel, held, options.shape, options.pins)


def _dragged(layout: Headstock, press: Pointer, target: Target, held: tuple[str, ...], options: Options) -> Gesture:
    chosen = held if target.id in held else (target.id,)
    node = target.part if target.kind == "node" else None
    may_move = target.kind not in HELD_FIRST or target.id in held or (target.kind == "edge" and options.shape)
    if not may_move:
        return (yield from _clicked_or_band(layout, press, target, held, options))
    several = options.nodes if held == (target.id,) else ()
    last = Shown(layout, readout=target.name, held=chosen, node=node, nodes=several if node in several else ())
    grip: Grip | None = None
    pointer = press
    while True:
        pointer = yield last
        if pointer.kind == "release":
            break
        typed = pointer.kind == "key" and pointer.typed
        if grip is None and (typed or _far(press, pointer)):
            grip = _grip(layout, options, target, chosen)
        if grip is None:
            continue
        try:
            if typed:
                new = grip.typed(pointer.typed, v.add(grip.origin, v.sub(pointer.at, press.at)))
                return _ended(layout, new, grip.name, last)
            if pointer.kind == "move":
                last = grip.move(v.add(grip.origin, v.sub(pointer.at, press.at)), pointer)
                if len(chosen) > 1:
                    last = replace(last, held=chosen)
        except GeometryError as error:
            last = last.refusing(str(error)) if typed else replace(last, readout=str(error), snapped="", marks=(), refused=False)
    if grip is None and node is not None and (press.shift or press.ctrl):
        return more_nodes(layout, target, several)
    if grip is None:
        picked = (*(one for one in held if one != target.id), target.id) if pointer.shift else (target.id,)
        return Done(layout, held=picked, node=node)
    return _ended(layout, last.layout, grip.name, last)


def _ended(before: Headstock, after: Headstock, name: str, last: Shown) -> Done:
    """The end of a drag; one that changed nothing leaves the very layout that it began with."""
    if after == before:
        return Done(before, held=last.held, node=last.node, nodes=last.nodes)
    return Done(after, name, last.held, last.node, last.nodes)


def _grip(layout: Headstock, options: Options, target: Target, chosen: tuple[str, ...]) -> Grip:
    known = set(feature_ids(layout))
    features = tuple(id for id in chosen if id in known)
    if target.kind in ("node", "handle", "edge"):
        from app.tools.grips_shape import shape_grip  # here and below: a start need not wait for it

        return shape_grip(layout, options, target)
    if target.kind in ("nut end", "outer string", "ear", "blank edge"):
        from app.tools.grips_blank import SizeGrip

        return SizeGrip(layout, options, target)
    if len(features) > 1 or target.kind == "slot":
        return ManyGrip(layout, options, features, target.id)
    if target.kind == "slot end":
        return SlotEndGrip(layout, options, target)
    if target.kind == "mark":
        return SideGrip(layout, options, target.id, True, target.at)
    if target.kind == "tuner" and layout.pattern(layout.tuner(target.id).pattern).mount == "side":
        return SideGrip(layout, options, target.id, False, target.at)
    return PointGrip(layout, options, target.id)


def _clicked_or_band(layout: Headstock, press: Pointer, target: Target, held: tuple[str, ...],
                     options: Options) -> Gesture:
    pointer = yield Shown(layout, readout=target.name, held=held, takes=None)
    while pointer.kind not in ("release", "press"):
        if pointer.kind == "move" and _far(press, pointer):
            return (yield from _band(layout, press, held, options, pointer))
        pointer = yield Shown(layout, readout=target.name, held=held, takes=None)
    return Done(layout, held=(*(one for one in held if one != target.id), target.id) if pointer.shift
                else (target.id,))


def _band(layout: Headstock, press: Pointer, held: tuple[str, ...], options: Options,
          pointer: Pointer | None = None) -> Gesture:
    corner, pulled, adds = press.at, pointer is not None, press.shift or press.ctrl
    inside: tuple[str, ...] = ()
    while True:
        if pointer is not None and pointer.kind == "move" and (pulled or _far(press, pointer)):
            corner, pulled = pointer.at, True
            inside = _inside(layout, press.at, corner)
        kept = (*held, *(id for id in inside if id not in held)) if adds else inside
        marks = guides.band(press.at, corner) if pulled else ()
        pointer = yield Shown(layout, marks, say("{n} held", n=len(kept)) if inside else "", held=kept if pulled else held, takes=None)
        if pointer.kind in ("release", "press"):
            nodes = nodes_between(layout, press.at, corner) if pulled and options.shape else ()
            if nodes:
                return Done(layout, held=(OUTLINE,), node=nodes[0], nodes=nodes)
            return Done(layout, held=kept if pulled or not adds else held)


def _inside(layout: Headstock, a: Vec2, b: Vec2) -> tuple[str, ...]:
    """Features that lie in a band: whole straight slots, others by their own point or a mark on a folded edge."""
    x0, x1 = sorted((a[0], b[0]))
    y0, y1 = sorted((a[1], b[1]))

    def holds(p: Vec2) -> bool:
        return x0 <= p[0] <= x1 and y0 <= p[1] <= y1

    found = []
    for slot in layout.slots:
        if isinstance(slot.shape, StraightSlot):
            inside = holds(slot.shape.nut_end) and holds(slot.shape.tip_end)
        else:
            inside = all(holds(node.at) for node in slot.shape.loop.nodes)
        if inside:
            found.append(slot.id)
    marks = {d.of: folded(layout.blank, "treble" if d.surface.startswith("treble") else "bass", *d.mark[1:])
             for d in drillings(layout) if d.role == "post" and not d.upright and d.mark is not None}
    for one in (*layout.tuners, *layout.pins, *layout.holes):
        try:
            if holds(plan_point(layout, one.id)) or (one.id in marks and holds(marks[one.id])):
                found.append(one.id)
        except GeometryError:
            continue  # a tuner without a place lies in no band; the checks name it
    return tuple(found)


def _doubled(layout: Headstock, pointer: Pointer, held: tuple[str, ...], options: Options) -> Done | None:
    """What a double click does to an edge or a node; None on anything else."""
    target = _under(layout, pointer, held, options)
    if target is None:
        return None
    if target.kind == "edge" and (target.id in held or options.shape):
        index, t = target.part
        made = add_node(layout, target.id, index, t, options.mirrored)
        name = (say("Add a node to the outline") if target.id == OUTLINE else
                say("Add a node to {slot}", slot=target.id))
        return Done(made, name, (target.id,), node_at(made, target.id, target.at))
    if target.kind == "node":
        smooth = not loop_at(layout, target.id).nodes[target.part].smooth
        made = set_smooth(layout, target.id, target.part, smooth, options.mirrored)
        name = (say("Make {node} smooth", node=target.name) if smooth else
                say("Make {node} a corner", node=target.name))
        return Done(made, name, (target.id,), target.part)
    return None


def _toggled(held: tuple[str, ...], id: str) -> tuple[str, ...]:
    return tuple(one for one in held if one != id) if id in held else (*held, id)


def _far(press: Pointer, pointer: Pointer) -> bool:
    return v.distance(press.at, pointer.at) > DEAD * pointer.mm_per_pixel


def more_nodes(layout: Headstock, target: Target, nodes: tuple[int, ...]) -> Done:
    """The node of a target held beside those in hand, or let go when it was one of them."""
    part = target.part
    kept = tuple(one for one in nodes if one != part) if part in nodes else (*nodes, part)
    return Done(layout, held=(target.id,), node=kept[-1] if kept else None, nodes=kept if len(kept) > 1 else ())


def nodes_between(layout: Headstock, a: Vec2, b: Vec2) -> tuple[int, ...]:
    """Nodes of the outline in the frame between two corners."""
    x0, x1 = sorted((a[0], b[0]))
    y0, y1 = sorted((a[1], b[1]))
    return tuple(i for i, node in enumerate(layout.outline.nodes)
                 if x0 <= node.at[0] <= x1 and y0 <= node.at[1] <= y1)
