"""Edits of several nodes of one loop at once."""

from __future__ import annotations

from collections.abc import Iterable

from geometry.edits.loops import checked_index
from geometry.edits.nodes import move_node
from geometry.edits.parts import loop_at, with_loop
from geometry.edits.shape import without_pair
from geometry.edits.twins import twin_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say


def remove_nodes(layout: Headstock, ref: str, indices: Iterable[int], mirrored: bool = False) -> Headstock:
    """The loop without these nodes, one by one as remove_node takes them; mirrored: each with its twin, so that both sides become
    alike."""
    nodes = list(loop_at(layout, ref).nodes)
    left = {checked_index(nodes, index) for index in indices}
    while left:
        index = max(left)
        twin = twin_of(nodes, index) if mirrored else None
        nodes = without_pair(nodes, index, twin)
        gone = {index} if twin is None else {index, twin}
        left = {one - sum(other < one for other in gone) for one in left - gone}
    return with_loop(layout, ref, nodes)


def align_nodes(layout: Headstock, ref: str, indices: Iterable[int], axis: str, mirrored: bool = False) -> Headstock:
    """Nodes brought to the x ("x") or y ("y") of the first of them, mm."""
    if axis not in ("x", "y"):
        raise GeometryError(say("Nodes are brought into line along x or y."))
    indices = list(dict.fromkeys(indices))
    nodes = list(loop_at(layout, ref).nodes)
    for index in indices:
        checked_index(nodes, index)
    first = nodes[indices[0]].at if indices else (0.0, 0.0)
    for index in indices[1:]:
        at = loop_at(layout, ref).nodes[index].at
        layout = move_node(layout, ref, index, (first[0], at[1]) if axis == "x" else (at[0], first[1]), mirrored)
    return layout
