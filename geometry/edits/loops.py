"""Small steps on the nodes of a loop that the outline edits are made of.

Edge i leaves node i and ends at node i + 1 (the last one at node 0). All
functions take and return plain lists of nodes and check nothing.
"""

from __future__ import annotations

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Segment
from geometry.errors import GeometryError
from geometry.layout import Loop, Node
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

Nodes = list[Node]

SMOOTH_TURN = 1e-3
"""Two edges that meet with a turn under this many radians count as smooth when nobody said so."""


def checked_index(nodes: Nodes, index: int) -> int:
    """The index itself; GeometryError when the loop has no such node."""
    if not 0 <= index < len(nodes):
        raise GeometryError(say("The loop has {nodes} nodes, so there is no node {index}.",
                                nodes=len(nodes), index=index + 1))
    return index


def edge_of(nodes: Nodes, index: int) -> Segment | None:
    """The exact segment of an edge, None when it has no length."""
    node, following = nodes[index], nodes[(index + 1) % len(nodes)]
    if node.handles is not None:
        flat = node.at == following.at == node.handles[0] == node.handles[1]
        return None if flat else Cubic(node.at, *node.handles, following.at)
    if node.at == following.at:
        return None
    return Arc.bulging(node.at, following.at, node.bulge) if abs(node.bulge) > 1e-9 else Line(node.at, following.at)


def with_edge(node: Node, segment: Segment) -> Node:
    """The node with the kind and shape of the edge that leaves it taken from a segment."""
    if isinstance(segment, Cubic):
        return replace(node, bulge=0.0, handles=(segment.c0, segment.c1))
    return replace(node, bulge=segment.bulge if isinstance(segment, Arc) else 0.0, handles=None)


def shifted(nodes: Nodes, index: int, by: Vec2) -> Nodes:
    """The nodes with one of them moved, together with the handles that belong to it."""
    out = list(nodes)
    node = out[index]
    out[index] = replace(node, at=v.add(node.at, by))
    if node.handles is not None:
        out[index] = replace(out[index], handles=(v.add(node.handles[0], by), node.handles[1]))
    before = (index - 1) % len(out)
    if out[before].handles is not None:
        one, two = out[before].handles
        out[before] = replace(out[before], handles=(one, v.add(two, by)))
    return out


def handle(nodes: Nodes, edge: int, which: int) -> Vec2 | None:
    """A handle of an edge: 0 at its start, 1 at its end; None on straight edges and arcs."""
    handles = nodes[edge].handles
    return None if handles is None else handles[which]


def set_handle(nodes: Nodes, edge: int, which: int, to: Vec2) -> None:
    """Put a handle of a curved edge somewhere, in the list itself."""
    one, two = nodes[edge].handles
    nodes[edge] = replace(nodes[edge], handles=(to, two) if which == 0 else (one, to))


def node_of_handle(nodes: Nodes, edge: int, which: int) -> int:
    """The node that a handle belongs to."""
    return (edge + which) % len(nodes)


def opposite(nodes: Nodes, edge: int, which: int) -> tuple[int, int]:
    """(edge, which) of the handle on the other side of the same node, whether that edge is curved or not."""
    return ((edge - 1) % len(nodes), 1) if which == 0 else ((edge + 1) % len(nodes), 0)


def rail_of(nodes: Nodes, edge: int, which: int) -> Vec2 | None:
    """The direction a handle is bound to: its node is smooth and the other edge is straight or an arc.

    A unit vector from the node outwards along the handle; None when the handle is free.
    """
    at = node_of_handle(nodes, edge, which)
    other, _ = opposite(nodes, edge, which)
    if not nodes[at].smooth or nodes[other].handles is not None:
        return None
    segment = edge_of(nodes, other)
    if segment is None:
        return None
    return segment.tangent(1.0) if which == 0 else v.scale(segment.tangent(0.0), -1.0)


def follow_handle(nodes: Nodes, edge: int, which: int) -> None:
    """Turn the opposite handle of a smooth node into line with this one, its length kept; in the list itself."""
    at = node_of_handle(nodes, edge, which)
    other, other_which = opposite(nodes, edge, which)
    if not nodes[at].smooth or nodes[other].handles is None:
        return
    node, lead = nodes[at].at, nodes[edge].handles[which]
    if v.distance(lead, node) <= TOUCH:
        return
    reach = v.distance(nodes[other].handles[other_which], node)
    set_handle(nodes, other, other_which, v.along(node, v.unit(v.sub(node, lead)), reach))


def realign(nodes: Nodes, index: int) -> None:
    """Keep a smooth node smooth where a curve meets a straight edge or an arc; in the list itself."""
    index %= len(nodes)
    for edge, which in ((index, 0), ((index - 1) % len(nodes), 1)):
        rail = rail_of(nodes, edge, which)
        if rail is not None and nodes[edge].handles is not None:
            node = nodes[index].at
            reach = v.distance(nodes[edge].handles[which], node)
            set_handle(nodes, edge, which, v.along(node, rail, reach))


def turned_back(nodes: Nodes) -> Nodes:
    """The same loop walked the other way from the same first node; twice gives the same nodes."""
    n = len(nodes)
    out = []
    for k in range(n):
        node, edge = nodes[-k % n], nodes[(-k - 1) % n]
        handles = None if edge.handles is None else (edge.handles[1], edge.handles[0])
        out.append(Node(at=node.at, bulge=-edge.bulge, handles=handles, smooth=node.smooth))
    return out


def flipped(nodes: Nodes) -> Nodes:
    """The loop mirrored about the centreline and walked backwards, so that its direction stays; twice is the same."""
    return turned_back([Node(at=v.mirrored(node.at), bulge=-node.bulge, smooth=node.smooth,
                             handles=None if node.handles is None else
                             (v.mirrored(node.handles[0]), v.mirrored(node.handles[1]))) for node in nodes])


def meets_smoothly(nodes: Nodes, index: int) -> bool:
    """Whether a curve or an arc meets its neighbour at this node without a corner (to 1e-3 rad)."""
    into, out = edge_of(nodes, index - 1), edge_of(nodes, index)
    if into is None or out is None or (isinstance(into, Line) and isinstance(out, Line)):
        return False
    a, b = into.tangent(1.0), out.tangent(0.0)
    return abs(v.turn(a, b)) <= SMOOTH_TURN


def with_smooth(loop: Loop) -> Loop:
    """The loop with every node marked smooth that meets its neighbours without a corner; other marks stay."""
    nodes = list(loop.nodes)
    return Loop(nodes=tuple(replace(node, smooth=True) if not node.smooth and meets_smoothly(nodes, i) else node
                            for i, node in enumerate(nodes)))
