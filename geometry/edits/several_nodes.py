"""Edits of several nodes of one loop at once."""

from __future__ import annotations

from collections.abc import Iterable

from geometry.edits.loops import checked_index
from geometry.edits.nodes import move_node
from geometry.edits.parts import loop_at
from geometry.edits.shape import remove_node
from geometry.edits.twins import twin_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say


def remove_nodes(layout: Headstock, ref: str, indices: Iterable[int], mirrored: bool = False) -> Headstock:
    """The loop without these nodes (remove_node, one by one); mirrored: without their twins too."""
    nodes = list(loop_at(layout, ref).nodes)
    gone = {checked_index(nodes, index) for index in indices}
    if mirrored:
        gone |= {twin for index in tuple(gone) if (twin := twin_of(nodes, index)) is not None}
    for index in sorted(gone, reverse=True):
        layout = remove_node(layout, ref, index)
    return layout


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
