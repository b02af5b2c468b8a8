"""Edits of the edges of an outline or a drawn slot: add and remove nodes, change kind, type exact sizes.

`ref` is "outline" or the id of a drawn slot. Edge `index` leaves node `index`.
With `mirrored` the twin on the other side of the centreline is edited too.
"""

from __future__ import annotations

import math
from typing import Literal

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Segment
from geometry.curves.undivided import as_cubic, one_from
from geometry.edits.loops import (
    Nodes,
    checked_index,
    edge_of,
    realign,
    with_edge,
)
from geometry.edits.nodes import move_node
from geometry.edits.parts import loop_at, with_loop
from geometry.edits.twins import echo_edge, twin_edge
from geometry.errors import GeometryError
from geometry.layout import Headstock, Loop, Node, loop_path
from geometry.lengths import at_least, mm
from geometry.saying import say
from geometry.tolerance import TOUCH

EdgeKind = Literal["straight", "arc", "curve"]

FIRST_BULGE = 0.2
"""A straight edge that becomes an arc bellies out by a tenth of its length."""

LEAST_AREA = 1e-3
"""A loop with less area in mm2 is no loop."""


def add_node(layout: Headstock, ref: str, index: int, t: float, mirrored: bool = False) -> Headstock:
    """A new node on edge `index` at parameter t (between 0 and 1); the shape does not change at all.

    GeometryError when t lies within 1e-6 mm of an end of the edge.
    """
    nodes = list(loop_at(layout, ref).nodes)
    checked_index(nodes, index)
    twin = twin_edge(nodes, index) if mirrored else None
    if twin is None or (twin == index and abs(t - 0.5) < 1e-6):
        return with_loop(layout, ref, _split(nodes, index, 0.5 if twin is not None else t))
    if twin == index:
        low, high = min(t, 1 - t), max(t, 1 - t)
        return with_loop(layout, ref, _split(_split(nodes, index, high), index, low / high))
    for edge, at in sorted(((index, t), (twin, 1 - t)), reverse=True):
        nodes = _split(nodes, edge, at)
    return with_loop(layout, ref, nodes)


def remove_node(layout: Headstock, ref: str, index: int) -> Headstock:
    """The loop without a node; its two edges become one.

    Straight edges give a straight edge, two pieces of one arc the whole arc,
    anything else one curve that leaves and arrives as before (so a node that
    add_node put on a curve goes without a trace). GeometryError when the loop
    would have no area left.
    """
    nodes = list(loop_at(layout, ref).nodes)
    checked_index(nodes, index)
    return with_loop(layout, ref, _with_area(joined_edges(nodes, index)))


def without_pair(nodes: Nodes, index: int, twin: int | None) -> Nodes:
    """The nodes without one of them and its twin on the other side, as remove_node takes each; a curve that then runs across the
    centreline is its own mirror image. GeometryError as remove_node.
    """
    n = len(nodes)
    for one in sorted({index, index if twin is None else twin}, reverse=True):
        nodes = joined_edges(nodes, one)
    if twin is not None and (index - twin) % n in (1, n - 1):
        across = (min(index, twin) - 1 if abs(index - twin) == 1 else -1) % len(nodes)
        handles = nodes[across].handles
        if handles is not None:
            one = v.middle(handles[0], v.mirrored(handles[1]))
            nodes[across] = replace(nodes[across], handles=(one, v.mirrored(one)))
    return _with_area(nodes)


def set_edge(layout: Headstock, ref: str, index: int, kind: EdgeKind, mirrored: bool = False) -> Headstock:
    """Make an edge straight, an arc or a curve, as near to its shape as that kind can be.

    A straight edge that becomes an arc bellies out a little; a curve becomes
    the arc through its ends and its middle. Smooth neighbours turn along.
    """
    nodes = list(loop_at(layout, ref).nodes)
    segment = _edge(nodes, index)
    if kind == "straight":
        new: Segment = Line(segment.start, segment.end)
    elif kind == "curve":
        new = as_cubic(segment)
    elif kind == "arc":
        new = segment if isinstance(segment, Arc) else _arc_like(nodes, segment)
    else:
        raise GeometryError(say("An edge is straight, an arc or a curve, not {kind}.", kind=kind))
    return _reshaped(layout, ref, nodes, index, new, mirrored)


def set_bulge(layout: Headstock, ref: str, index: int, bulge: float, mirrored: bool = False) -> Headstock:
    """Make an edge the arc of that bulge (tan of a quarter of its sweep; 0 straight, 1 half a circle).

    A positive bulge turns counter-clockwise, which bellies out of a
    counter-clockwise outline.
    """
    nodes = list(loop_at(layout, ref).nodes)
    segment = _edge(nodes, index)
    chord = v.distance(segment.start, segment.end)
    if chord <= TOUCH:
        raise GeometryError(say("The edge begins and ends on one point, so it makes no arc."))
    new = Line(segment.start, segment.end) if abs(bulge) <= 1e-9 else Arc.bulging(segment.start, segment.end, bulge)
    return _reshaped(layout, ref, nodes, index, new, mirrored)


def set_radius(layout: Headstock, ref: str, index: int, radius: float, mirrored: bool = False) -> Headstock:
    """Make an edge an arc of that radius in mm between the same nodes.

    It keeps to the side it bellies to (out of the wood when it was straight)
    and stays longer than a half circle if it was. GeometryError when the
    radius is under half the distance of the nodes.
    """
    nodes = list(loop_at(layout, ref).nodes)
    segment = _edge(nodes, index)
    half = v.distance(segment.start, segment.end) / 2
    if half <= TOUCH:
        raise GeometryError(say("The edge begins and ends on one point, so it makes no arc."))
    if not math.isfinite(radius) or radius < half - TOUCH:
        raise GeometryError(say("The nodes are {apart} apart, so the radius must be {half} or more.",
                                apart=mm(2 * half), half=at_least(half)))
    sweep = 2 * math.asin(min(1.0, half / radius))
    old = segment if isinstance(segment, Arc) else _arc_like(nodes, segment)
    if abs(old.sweep) > math.pi + 1e-9:
        sweep = 2 * math.pi - sweep
    return set_bulge(layout, ref, index, math.copysign(math.tan(sweep / 4), old.sweep), mirrored)


def set_edge_length(layout: Headstock, ref: str, index: int, length: float, mirrored: bool = False) -> Headstock:
    """Make an edge that many mm long: its far node moves along the line between both nodes.

    Arcs keep their bulge; a curve grows evenly, handles and all. Mirrored, an edge across the centreline grows to both sides.
    """
    nodes = list(loop_at(layout, ref).nodes)
    segment = _edge(nodes, index)
    if not (math.isfinite(length) and length > TOUCH):
        raise GeometryError(say("An edge needs a length above zero."))
    if v.distance(segment.start, segment.end) <= TOUCH:
        raise GeometryError(say("The edge begins and ends on one point, so its length has no direction."))
    k = length / segment.length()
    after = (index + 1) % len(nodes)
    across = mirrored and twin_edge(nodes, index) == index
    fixed = v.middle(segment.start, segment.end) if across else segment.start
    grown = move_node(layout, ref, after, v.along(fixed, v.sub(segment.end, fixed), k), mirrored)
    if not isinstance(segment, Cubic):
        return grown
    scaled = Cubic(*(v.along(fixed, v.sub(p, fixed), k) for p in (segment.p0, segment.c0, segment.c1, segment.p1)))
    return _reshaped(grown, ref, list(loop_at(grown, ref).nodes), index, scaled, mirrored)


def joined_edges(nodes: Nodes, index: int) -> Nodes:
    """The nodes without one of them, its two edges made one as remove_node says; nothing else is checked."""
    if len(nodes) <= 2:
        raise GeometryError(say("A loop needs at least two nodes, so this one stays."))
    before = (index - 1) % len(nodes)
    into, out = edge_of(nodes, before), edge_of(nodes, index)
    node = nodes[before]
    if into is None or out is None:
        kept = into or out
        node = replace(node, bulge=0.0, handles=None) if kept is None else with_edge(node, kept)
    else:
        node = with_edge(node, one_from(into, out))
    out_nodes = list(nodes)
    out_nodes[before] = node
    del out_nodes[index]
    return out_nodes


def _edge(nodes: Nodes, index: int) -> Segment:
    segment = edge_of(nodes, checked_index(nodes, index))
    if segment is None:
        raise GeometryError(say("This edge has no length: remove one of its nodes."))
    return segment


def _reshaped(layout: Headstock, ref: str, before: Nodes, index: int, new: Segment, mirrored: bool) -> Headstock:
    nodes = list(before)
    nodes[index] = with_edge(nodes[index], new)
    touched = {index, (index + 1) % len(nodes)}
    if mirrored:
        echo_edge(before, nodes, index)
        twin = twin_edge(before, index)
        touched |= set() if twin is None else {twin, (twin + 1) % len(nodes)}
    for node in touched:
        realign(nodes, node)
    return with_loop(layout, ref, _with_area(nodes))


def _arc_like(nodes: Nodes, segment: Segment) -> Arc:
    """The arc nearest to a line or curve between the same ends."""
    if isinstance(segment, Cubic):
        try:
            return Arc.through(segment.start, segment.point(0.5), segment.end)
        except GeometryError:
            pass  # a curve whose middle lies on its chord is treated like a straight edge
    outward = math.copysign(FIRST_BULGE, loop_path(Loop(nodes=tuple(nodes))).area)
    return Arc.bulging(segment.start, segment.end, outward)


def _split(nodes: Nodes, index: int, t: float) -> Nodes:
    segment = _edge(nodes, index)
    if not 0 < t < 1:
        raise GeometryError(say("A new node lies between the ends of its edge."))
    one, two = segment.split(t)
    if min(one.length(), two.length()) <= TOUCH:
        raise GeometryError(say("There is a node at this place already."))
    new = with_edge(Node(at=two.start, smooth=not isinstance(segment, Line)), two)
    return [*nodes[:index], with_edge(nodes[index], one), new, *nodes[index + 1:]]


def _with_area(nodes: Nodes) -> Nodes:
    """The nodes themselves; GeometryError when the loop they make has no area."""
    if abs(loop_path(Loop(nodes=tuple(nodes))).area) < LEAST_AREA:
        raise GeometryError(say("This would leave a loop without area."))
    return nodes
