"""Holding several nodes of one loop."""

from __future__ import annotations

from app.tools.hit import Target
from app.tools.pointer import Done
from geometry.layout import Headstock
from geometry.vectors import Vec2


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
