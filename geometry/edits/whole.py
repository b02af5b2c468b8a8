"""Edits of a whole outline or drawn slot: replace, move, map."""

from __future__ import annotations

from geometry.curves import Arc, Matrix, Path, shift
from geometry.edits.loops import with_smooth
from geometry.edits.parts import loop_at, point, with_loop
from geometry.errors import GeometryError
from geometry.layout import Headstock, Loop, Node, loop_of, loop_path
from geometry.saying import say
from geometry.vectors import Vec2


def replace_outline(layout: Headstock, outline: Path) -> Headstock:
    """The layout with another outline, from a closed path in mm; nodes without a corner become smooth."""
    return replace_loop(layout, "outline", outline)


def replace_loop(layout: Headstock, ref: str, path: Path) -> Headstock:
    """The outline or a drawn slot with another closed line; made counter-clockwise."""
    return with_loop(layout, ref, with_smooth(loop_of(path.counter_clockwise())).nodes)


def move_loop(layout: Headstock, ref: str, by: Vec2) -> Headstock:
    """The whole loop moved by a vector in mm."""
    return transform_loop(layout, ref, shift(*point(by)))


def transform_loop(layout: Headstock, ref: str, matrix: Matrix) -> Headstock:
    """The whole loop under an affine map that neither mirrors nor flattens it."""
    if not matrix.determinant > 0:
        raise GeometryError(say("This would flatten or mirror the line."))
    return with_loop(layout, ref, mapped_loop(loop_at(layout, ref), matrix).nodes)


def mapped_loop(loop: Loop, matrix: Matrix) -> Loop:
    """A loop under a map that does not mirror, nodes and smooth marks kept.

    Arcs keep their bulge to the last bit; where they would not stay round they become curves.
    """
    if matrix.similarity() is None and any(isinstance(segment, Arc) for segment in loop_path(loop)):
        return with_smooth(loop_of(loop_path(loop).mapped(matrix)))
    return Loop(nodes=tuple(
        Node(at=matrix(node.at), bulge=node.bulge, smooth=node.smooth,
             handles=None if node.handles is None else (matrix(node.handles[0]), matrix(node.handles[1])))
        for node in loop.nodes))
