"""Whether a loop is its own mirror image."""

from geometry import vectors as v
from geometry.edits.twins import NEAR, twin_edge, twin_of
from geometry.layout import Loop


def is_symmetric(loop: Loop, within: float = NEAR) -> bool:
    """Whether every node and edge of a loop has its mirror image among the others (mm)."""
    nodes = list(loop.nodes)
    for i, node in enumerate(nodes):
        twin, edge = twin_of(nodes, i), twin_edge(nodes, i)
        if twin is None or edge is None:
            return False
        other = nodes[edge]
        if (node.handles is None) != (other.handles is None) or abs(node.bulge - other.bulge) > 1e-6:
            return False
        if node.handles is not None and max(v.distance(node.handles[0], v.mirrored(other.handles[1])),
                                            v.distance(node.handles[1], v.mirrored(other.handles[0]))) > within:
            return False
    return True
