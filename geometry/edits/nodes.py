"""Edits of the nodes and handles of an outline or a drawn slot.

`ref` is "outline" or the id of a drawn slot, `index` counts its nodes from 0.
With `mirrored` the twin on the other side of the centreline follows, if there
is one. Every function returns a new layout or raises GeometryError.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Arc, Cubic
from geometry.curves.undivided import as_cubic
from geometry.edits.loops import (
    Nodes,
    checked_index,
    edge_of,
    follow_handle,
    handle,
    node_of_handle,
    rail_of,
    realign,
    set_handle,
    shifted,
    with_edge,
)
from geometry.edits.parts import loop_at, point, with_loop
from geometry.edits.twins import echo_edge, echo_nodes, twin_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2


def move_node(layout: Headstock, ref: str, index: int, to: Vec2, mirrored: bool = False) -> Headstock:
    """A node put at a point in mm, its handles with it. Arcs keep their bulge, smooth nodes stay smooth."""
    nodes = list(loop_at(layout, ref).nodes)
    checked_index(nodes, index)
    return with_loop(layout, ref, _moved(nodes, [index], v.sub(point(to), nodes[index].at), mirrored))


def move_nodes(layout: Headstock, ref: str, indices: Iterable[int], by: Vec2, mirrored: bool = False) -> Headstock:
    """Several nodes of one loop moved by the same vector in mm."""
    nodes = list(loop_at(layout, ref).nodes)
    wanted = [checked_index(nodes, index) for index in dict.fromkeys(indices)]
    return with_loop(layout, ref, _moved(nodes, wanted, point(by), mirrored))


def move_handle(layout: Headstock, ref: str, index: int, which: Literal[0, 1], to: Vec2,
                mirrored: bool = False) -> Headstock:
    """A handle of the curved edge `index` put at a point in mm: 0 the handle at its start, 1 at its end.

    At a smooth node the handle on the other side turns with it and keeps its
    length; where the other side is straight or an arc the handle slides along
    that edge's direction instead.
    """
    before = list(loop_at(layout, ref).nodes)
    checked_index(before, index)
    if before[index].handles is None:
        raise GeometryError(say("This edge is no curve, so it has no handles: make it a curve first."))
    to = point(to)
    nodes = list(before)
    at = node_of_handle(nodes, index, which)
    rail = rail_of(nodes, index, which)
    if mirrored and nodes[at].smooth and twin_of(before, at) == at:
        to = (to[0], nodes[at].at[1])
    elif rail is not None:
        to = v.along(nodes[at].at, rail, max(TOUCH, v.dot(v.sub(to, nodes[at].at), rail)))
    set_handle(nodes, index, which, to)
    follow_handle(nodes, index, which)
    if mirrored:
        nodes = echo_nodes(before, nodes, (), ((index, which),))
    return with_loop(layout, ref, nodes)


def set_smooth(layout: Headstock, ref: str, index: int, smooth: bool, mirrored: bool = False) -> Headstock:
    """Make a node smooth, or a corner again (the shape then stays as it is).

    Handles on both sides turn half way towards each other; a single handle
    turns into line with the straight edge or arc on the other side. A corner
    between two straight edges turns both into curves. GeometryError between
    two edges that cannot bend.
    """
    before = list(loop_at(layout, ref).nodes)
    checked_index(before, index)
    nodes = _smoothed(before, index, smooth)
    twin = twin_of(before, index) if mirrored else None
    if twin is not None and twin != index:
        nodes = _smoothed(nodes, twin, smooth)
    return with_loop(layout, ref, nodes)


def bend_edge(layout: Headstock, ref: str, index: int, t: float, to: Vec2, mirrored: bool = False) -> Headstock:
    """Pull an edge by its point at parameter t (0..1) to a point in mm, its kind unchanged.

    A straight edge moves whole, an arc goes through the point, a curve is bent
    by both handles (through the point, unless smooth neighbours bind a handle).
    """
    before = list(loop_at(layout, ref).nodes)
    checked_index(before, index)
    to, segment = point(to), edge_of(before, index)
    if segment is None:
        raise GeometryError(say("This edge has no length, so it cannot be bent: move its node instead."))
    nodes = list(before)
    after = (index + 1) % len(nodes)
    if isinstance(segment, Arc):
        nodes[index] = with_edge(nodes[index], _arc_through(segment, to))
        realign(nodes, index)
        realign(nodes, after)
    elif isinstance(segment, Cubic):
        _bend(nodes, index, segment, t, to)
    else:
        by = v.sub(to, segment.point(t))
        return with_loop(layout, ref, _moved(nodes, [index, after], by, mirrored))
    if mirrored:
        echo_edge(before, nodes, index)
        nodes = echo_nodes(before, nodes, (), ((index, 0), (index, 1)))
    return with_loop(layout, ref, nodes)


def node_at(layout: Headstock, ref: str, at: Vec2) -> int:
    """Index of the node nearest to a point in mm."""
    nodes = loop_at(layout, ref).nodes
    return min(range(len(nodes)), key=lambda i: v.distance(nodes[i].at, at))


def _moved(before: Nodes, indices: list[int], by: Vec2, mirrored: bool) -> Nodes:
    nodes = list(before)
    leaders = []
    for index in indices:
        if mirrored and twin_of(before, index) in leaders:
            continue
        leaders.append(index)
        nodes = shifted(nodes, index, by)
    if mirrored:
        nodes = echo_nodes(before, nodes, leaders)
    for index in {near % len(nodes) for i in range(len(nodes)) if nodes[i].at != before[i].at
                  for near in (i - 1, i, i + 1)}:
        realign(nodes, index)
    return nodes


def _arc_through(arc: Arc, to: Vec2) -> Arc:
    if min(v.distance(to, arc.p0), v.distance(to, arc.p1)) <= TOUCH:
        raise GeometryError(say("An arc cannot be pulled onto its own end: pull it farther out."))
    return Arc.through(arc.p0, to, arc.p1)


def _bend(nodes: Nodes, index: int, curve: Cubic, t: float, to: Vec2) -> None:
    """Least movement of both handles that carries the point at t to `to`; smooth nodes kept."""
    t = min(max(t, 0.15), 0.85)
    one, two = 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t * t
    pull = v.scale(v.sub(to, curve.point(t)), 1 / (one * one + two * two))
    for which, old, weight in ((0, curve.c0, one), (1, curve.c1, two)):
        at = nodes[node_of_handle(nodes, index, which)].at
        rail = rail_of(nodes, index, which)
        new = v.add(old, v.scale(pull, weight))
        if rail is not None:
            new = v.along(at, rail, max(TOUCH, v.dot(v.sub(new, at), rail)))
        set_handle(nodes, index, which, new)
        follow_handle(nodes, index, which)


def _smoothed(nodes: Nodes, index: int, smooth: bool) -> Nodes:
    nodes = list(nodes)
    nodes[index] = replace(nodes[index], smooth=smooth)
    if not smooth:
        return nodes
    before = (index - 1) % len(nodes)
    if nodes[before].handles is None and nodes[index].handles is None:
        into, out = edge_of(nodes, before), edge_of(nodes, index)
        if into is None or out is None:
            raise GeometryError(say("An edge at this node has no length, so the node cannot be smooth: remove it "
                                    "first."))
        if isinstance(into, Arc) and isinstance(out, Arc):
            a, b = into.tangent(1.0), out.tangent(0.0)
            if v.dot(a, b) < 1 - 1e-9:
                raise GeometryError(say("Both edges at this node are arcs, which cannot meet without a corner here: make one of them "
                                        "a curve first."))
            return nodes
        for edge, segment in ((before, into), (index, out)):
            if not isinstance(segment, Arc):
                nodes[edge] = with_edge(nodes[edge], as_cubic(segment))
    into, out = handle(nodes, before, 1), handle(nodes, index, 0)
    if into is not None and out is not None:
        at = nodes[index].at
        a, b = v.unit(v.sub(at, into)), v.unit(v.sub(out, at))
        if v.distance(at, into) <= TOUCH or v.distance(at, out) <= TOUCH:
            lead = (before, 1) if v.distance(at, out) <= TOUCH else (index, 0)
            follow_handle(nodes, *lead)
            return nodes
        along = v.add(a, b)
        along = v.unit(along) if v.norm(along) > 1e-9 else v.left(a)
        set_handle(nodes, before, 1, v.along(at, along, -v.distance(at, into)))
        set_handle(nodes, index, 0, v.along(at, along, v.distance(at, out)))
    else:
        realign(nodes, index)
    return nodes
