"""Making the outline symmetric about the centreline from its treble half."""

from __future__ import annotations

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Arc, Line
from geometry.edits.loops import Nodes, edge_of, meets_smoothly, turned_back, with_edge
from geometry.edits.parts import with_loop
from geometry.edits.shape import joined_edges
from geometry.errors import GeometryError
from geometry.layout import Headstock, Node, loop_path
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.tolerance import TOUCH


def make_symmetric(layout: Headstock) -> Headstock:
    """The outline with its bass side replaced by the mirror image of its treble side.

    The half runs between the lowest and the highest place where the outline
    crosses the centreline. GeometryError when it does not cross it twice, or
    when the treble half strays over the centreline in between.
    """
    nodes = list(layout.outline.nodes)
    if loop_path(layout.outline).area < 0:
        nodes = turned_back(nodes)
    return with_loop(layout, OUTLINE, _doubled(_half(nodes)))


def mirrored_loop(half: Nodes) -> Nodes:
    """A whole loop from the nodes of a half on one side; every node keeps the edge that leaves it.

    The last node's own edge is left out. Ends on the centreline become one
    node; ends off it are joined to their mirror image by a straight edge.
    """
    first, last = half[0], half[-1]
    first_on, last_on = abs(first.at[0]) <= TOUCH, abs(last.at[0]) <= TOUCH
    outward: Nodes = list(half)
    if first_on:
        outward[0] = _on_centreline(first)
    outward[-1] = replace(last, bulge=0.0, handles=None)
    if last_on:
        outward[-1] = _on_centreline(outward[-1])
    back: Nodes = []
    for k in range(len(outward) - 1, -1, -1):
        node = outward[k]
        edge = outward[k - 1] if k else None
        handles = None
        if edge is not None and edge.handles is not None:
            handles = (v.mirrored(edge.handles[1]), v.mirrored(edge.handles[0]))
        back.append(Node(at=v.mirrored(node.at), bulge=edge.bulge if edge else 0.0, handles=handles, smooth=node.smooth))
    if last_on:
        outward[-1] = replace(back[0], at=outward[-1].at)
        back = back[1:]
    if first_on:
        back = back[:-1]
    whole = outward + back
    return [replace(node, smooth=meets_smoothly(whole, i)) if node.at[0] == 0 and node.smooth else node
            for i, node in enumerate(whole)]


def _on_centreline(node: Node) -> Node:
    return replace(node, at=(0.0, node.at[1]))


def _half(nodes: Nodes) -> Nodes:
    """Nodes of the treble half of a counter-clockwise loop, from its lowest to its highest crossing."""
    found: list[tuple[float, int]] = []
    k = 0
    while k < len(nodes):
        segment = edge_of(nodes, k)
        if abs(nodes[k].at[0]) <= TOUCH:
            found.append((nodes[k].at[1], k))
        inner = [] if segment is None else [
            t for t in segment.level(0, 0.0)
            if min(v.distance(segment.point(t), end) for end in (segment.start, segment.end)) > TOUCH]
        if inner:
            # Cut at the first crossing; what is left of the edge is looked at in the next turn.
            one, two = segment.split(inner[0])
            cut = with_edge(Node(at=(0.0, two.start[1]), smooth=not isinstance(segment, Line)), two)
            nodes = [*nodes[:k], with_edge(nodes[k], one), cut, *nodes[k + 1:]]
        k += 1
    n = len(nodes)
    marks = sorted(set(found))
    if len(marks) < 2 or marks[-1][0] - marks[0][0] <= TOUCH:
        raise GeometryError(say("The line must cross the centreline at two levels before one side can be mirrored."))
    low, high = marks[0][1], marks[-1][1]
    half = [nodes[(low + k) % n] for k in range((high - low) % n + 1)]
    if any(node.at[0] < -TOUCH for node in half):
        raise GeometryError(say("The treble half strays over the centreline, so it cannot be mirrored: move its nodes "
                                "to their own side first."))
    return half


def _doubled(half: Nodes) -> Nodes:
    """The mirrored loop without the nodes on the centreline that only split a straight edge or an arc."""
    nodes = mirrored_loop(half)
    for target in (half[0].at[1], half[-1].at[1]):
        for i, node in enumerate(nodes):
            if abs(node.at[0]) <= TOUCH and abs(node.at[1] - target) <= TOUCH and len(nodes) > 2:
                into, out = edge_of(nodes, i - 1), edge_of(nodes, i)
                if into is None or out is None or type(into) is not type(out):
                    break
                same_line = isinstance(into, Line) and v.dot(into.tangent(1.0), out.tangent(0.0)) > 1 - 1e-12
                same_arc = (isinstance(into, Arc) and abs(into.centre[0]) <= TOUCH
                            and abs(into.sweep + out.sweep) < 3.0)
                if same_line or same_arc:
                    nodes = joined_edges(nodes, i)
                break
    return nodes
