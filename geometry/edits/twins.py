"""Symmetric editing: what is done to one side of a loop is done to its mirror image about the centreline."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.loops import Nodes, set_handle, shifted
from geometry.errors import GeometryError
from geometry.saying import say

NEAR = 1e-3
"""A node within this many mm of the mirrored place is the twin."""


def stays() -> GeometryError:
    """What to raise where a value was given that would move aside what stays on the centreline."""
    return GeometryError(say("What stands on the centreline stays there while both sides are edited alike: switch Mirrored off to "
                             "move it aside."))


def twin_of(nodes: Nodes, index: int) -> int | None:
    """The node at the mirrored place, the node itself on the centreline, None when there is none."""
    target = v.mirrored(nodes[index].at)
    if v.distance(target, nodes[index].at) <= NEAR:
        return index
    best, found = NEAR, None
    for i, node in enumerate(nodes):
        apart = v.distance(node.at, target)
        if apart <= best:
            best, found = apart, i
    return found


def twin_edge(nodes: Nodes, index: int) -> int | None:
    """The edge between the twins of an edge's two nodes, None when they are not neighbours."""
    n = len(nodes)
    start, end = twin_of(nodes, (index + 1) % n), twin_of(nodes, index)
    return start if start is not None and end == (start + 1) % n else None


def echo_edge(before: Nodes, nodes: Nodes, index: int) -> None:
    """Give the twin of an edge the same kind and the mirrored shape; in the list itself."""
    twin = twin_edge(before, index)
    if twin is None:
        return
    edge = nodes[index]
    handles = None if edge.handles is None else (v.mirrored(edge.handles[1]), v.mirrored(edge.handles[0]))
    if twin == index and handles is not None:
        handles = (edge.handles[0], v.mirrored(edge.handles[0]))
    nodes[twin] = replace(nodes[twin], bulge=edge.bulge, handles=handles)


def echo_nodes(before: Nodes, nodes: Nodes, lead: Iterable[int],
               lead_handles: Iterable[tuple[int, int]] = ()) -> Nodes:
    """The nodes after everything that moved has been repeated on the mirrored side.

    `before` and `nodes` are the loop before and after the move. What belongs to
    the `lead` nodes and handles wins where both sides changed. A node on the
    centreline stays on it.
    """
    n = len(nodes)
    out = list(nodes)
    lead = list(lead)
    written: set[int] = set()
    for i in [*lead, *(i for i in range(n) if nodes[i].at != before[i].at)]:
        twin = twin_of(before, i)
        if twin is None or i in written:
            continue
        if twin == i:
            out = shifted(out, i, (-out[i].at[0], 0.0))
        else:
            out[twin] = replace(out[twin], at=v.mirrored(out[i].at))
        written |= {i, twin}
    changed = [(k, which) for k in range(n) if out[k].handles is not None and out[k].handles != before[k].handles
               for which in (0, 1)]
    first = [*lead_handles, *((i, 0) for i in lead), *(((i - 1) % n, 1) for i in lead)]
    done: set[tuple[int, int]] = set()
    for k, which in [*(h for h in first if h in changed), *changed]:
        twin = twin_edge(before, k)
        other = (twin, 1 - which)
        if twin is None or (k, which) in done or out[twin].handles is None:
            continue
        set_handle(out, *other, v.mirrored(out[k].handles[which]))
        done |= {(k, which), other}
    return out
