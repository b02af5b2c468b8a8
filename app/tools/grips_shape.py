"""What nodes, handles and edges of an outline or drawn slot do when they are dragged."""

from __future__ import annotations

import math

from app.tools import guides, typed, words
from app.tools.grips import Grip
from app.tools.hit import Target
from app.tools.options import Options
from app.tools.pointer import Pointer, Shown
from app.tools.snap import LINE_REACH, Snapper, constrained, tidy
from geometry import vectors as v
from geometry.curves import Arc
from geometry.drawing import Drawing
from geometry.edits.loops import edge_of, opposite
from geometry.edits.nodes import bend_edge, move_handle, move_node, move_nodes
from geometry.edits.parts import loop_at
from geometry.edits.shape import set_edge_length, set_radius
from geometry.edits.twins import twin_of
from geometry.errors import GeometryError
from geometry.layout import Headstock, Node
from geometry.saying import say
from geometry.units import format_angle
from geometry.vectors import Vec2


class NodeGrip:
    """A node: it goes where the pointer goes, its handles with it. Shift keeps it level or in line."""

    def __init__(self, layout: Headstock, options: Options, target: Target) -> None:
        self._layout, self._options = layout, options
        self._ref, self._index = target.id, target.part
        self._now: Vec2 | None = None
        self.name = say("Move {target}", target=target.name)
        self.origin = target.at
        nodes = list(loop_at(layout, self._ref).nodes)
        self._all = options.nodes if self._index in options.nodes and len(options.nodes) > 1 else ()
        if self._all:
            self.name = say("Move {n} nodes", n=len(self._all))
        moving = {self._index, *self._all}
        if options.mirrored:
            moving |= {twin for i in tuple(moving) if (twin := twin_of(nodes, i)) is not None}
        self._snapper = Snapper(layout, options, shape=True, skip={(self._ref, i) for i in moving})

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        to, axis = constrained(self.origin, to, pointer.shift)
        snap = self._snapper.point(to, pointer.mm_per_pixel, pointer.alt, axis)
        layout = self._at(snap.point)
        nodes = list(loop_at(layout, self._ref).nodes)
        at = self._now = nodes[self._index].at
        return Shown(layout, (*snap.marks, *_neighbours(nodes, self._index, self._options, pointer.mm_per_pixel)),
                     words.place(at, self._options.unit, layout.nut), snap.words, (self._ref,), self._index, self._all,
                     takes=words.place_takes(at, layout.nut))

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        """A place, or a length (and angle) from the node before."""
        nodes = loop_at(self._layout, self._ref).nodes
        before = nodes[(self._index - 1) % len(nodes)].at
        to = typed.placed(text, self._options.unit, before, self._now or pointer)
        made = self._at(to)
        typed.across(to[0], loop_at(made, self._ref).nodes[self._index].at[0])
        return made

    def _at(self, to: Vec2) -> Headstock:
        if self._all:
            by = v.sub(to, self.origin)
            return move_nodes(self._layout, self._ref, (self._index, *self._all), by, self._options.mirrored)
        return move_node(self._layout, self._ref, self._index, to, self._options.mirrored)


class HandleGrip:
    """A handle of a curve. It catches level, upright, and in line with the edge on the other side of its node."""

    def __init__(self, layout: Headstock, options: Options, target: Target) -> None:
        self._layout, self._options = layout, options
        self._ref, (self._edge, self._which) = target.id, target.part
        self.name = say("Bend the outline") if target.id == "outline" else say("Bend {slot}", slot=target.id)
        self.origin = target.at
        nodes = list(loop_at(layout, self._ref).nodes)
        self._index = (self._edge + self._which) % len(nodes)
        self._now: Vec2 | None = None
        self._node = nodes[self._index].at
        self._ways = [((1.0, 0.0), say("level with its node")), ((0.0, 1.0), say("upright over its node"))]
        other, _ = opposite(nodes, self._edge, self._which)
        beside = edge_of(nodes, other)
        if beside is not None and not nodes[self._index].smooth:
            self._ways.append((beside.tangent(0.0 if self._which else 1.0), say("in line with the edge beside it")))

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        snapped, marks = "", ()
        if pointer.shift:
            to = self._along(v.unit(v.sub(self.origin, self._node)), to)
            snapped = say("direction of the handle")
        elif self._options.snapping and not pointer.alt:
            near = [(abs(v.cross(way, v.sub(to, self._node))), way, name) for way, name in self._ways]
            off, way, name = min(near)
            if off <= LINE_REACH * pointer.mm_per_pixel:
                to, snapped = self._along(way, to), name
                marks = guides.line(self._node, to)
        layout = self._at(tidy(to))
        nodes = loop_at(layout, self._ref).nodes
        at = self._now = nodes[self._edge].handles[self._which]
        return Shown(layout, marks, words.step(nodes[self._index].at, at, self._options.unit), snapped,
                     (self._ref,), self._index, takes=words.STEP)

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        """A place, or a length and an angle from the node."""
        return self._at(typed.placed(text, self._options.unit, self._node, self._now or pointer))

    def _along(self, way: Vec2, to: Vec2) -> Vec2:
        return v.along(self._node, way, v.dot(v.sub(to, self._node), way))

    def _at(self, to: Vec2) -> Headstock:
        return move_handle(self._layout, self._ref, self._edge, self._which, to, self._options.mirrored)


class EdgeGrip:
    """An edge: a straight one moves whole, an arc and a curve bend."""

    def __init__(self, layout: Headstock, options: Options, target: Target) -> None:
        self._layout, self._options = layout, options
        self._ref, (self._edge, self._t) = target.id, target.part
        self._segment = edge_of(list(loop_at(layout, self._ref).nodes), self._edge)
        self.name = (say("Bend an edge of the outline") if target.id == "outline" else
                     say("Bend an edge of {slot}", slot=target.id))
        self.origin = target.at
        self._snapper = Snapper(layout, options, shape=True, skip={
            (self._ref, self._edge), (self._ref, (self._edge + 1) % len(loop_at(layout, self._ref).nodes))})

    def move(self, to: Vec2, pointer: Pointer) -> Shown:
        to, axis = constrained(self.origin, to, pointer.shift)
        snap = self._snapper.point(to, pointer.mm_per_pixel, pointer.alt, axis)
        layout = bend_edge(self._layout, self._ref, self._edge, self._t, snap.point, self._options.mirrored)
        segment = edge_of(list(loop_at(layout, self._ref).nodes), self._edge)
        unit = self._options.unit
        readout = "" if segment is None else say("length {length}", length=words.length(segment.length(), unit))
        if isinstance(segment, Arc):
            readout = say("radius {radius}, {length}", radius=words.length(segment.radius, unit), length=readout)
        takes = (("radius", say("radius")),) if isinstance(self._segment, Arc) else (("length", say("length")),)
        return Shown(layout, snap.marks, readout, snap.words, (self._ref,), takes=takes)

    def typed(self, text: str, pointer: Vec2) -> Headstock:
        """A length for any edge, a radius for an arc."""
        number = typed.number(text, self._options.unit)
        values = {"radius" if isinstance(self._segment, Arc) else "length": number} if number is not None \
            else typed.named(text, self._options.unit)
        mirrored = self._options.mirrored
        if values.keys() == {"radius"}:
            return set_radius(self._layout, self._ref, self._edge, values["radius"], mirrored)
        if values.keys() == {"length"}:
            return set_edge_length(self._layout, self._ref, self._edge, values["length"], mirrored)
        raise GeometryError(say("Type the length of the edge, or the radius of an arc."))


def shape_grip(layout: Headstock, options: Options, target: Target) -> Grip:
    """The grip of a node, a handle or an edge."""
    made = {"node": NodeGrip, "handle": HandleGrip, "edge": EdgeGrip}[target.kind]
    return made(layout, options, target)


def _neighbours(nodes: list[Node], index: int, options: Options, mm_per_pixel: float) -> Drawing:
    """Dimensions of the two edges that meet at a node."""
    marks: Drawing = ()
    for edge in ((index - 1) % len(nodes), index):
        segment = edge_of(nodes, edge)
        if segment is not None and segment.length() > 20 * mm_per_pixel:
            text = words.length(segment.length(), options.unit)
            a, b = segment.start, segment.end
            turn = math.atan2(b[1] - a[1], b[0] - a[0])
            marks += guides.caption(segment.point(0.5), say("{length} at {angle}", length=text, angle=format_angle(turn))
                                    if not isinstance(segment, Arc) else
                                    say("{length}, radius {radius}", length=text,
                                        radius=words.length(segment.radius, options.unit)), mm_per_pixel)
    return marks
