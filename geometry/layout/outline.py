"""A closed line of nodes, as the file keeps it, and the exact path that it stands for."""

import math
from typing import Annotated

from msgspec import Meta

from geometry.by_size import of_loop, remembered_by_size
from geometry.curves import Arc, Cubic, Line, Path, Segment
from geometry.errors import GeometryError
from geometry.layout.parts import Part, Point
from geometry.saying import say

MOST_CROSSINGS = 100
"""Times that a loop may cross itself: a slip of the hand does so once or twice, and what many crossings enclose takes minutes to find."""
_FEW_NODES = 12
"""nodes with which a loop cannot cross itself so often that it matters"""
MOST_SHARP = 3000
"""Sharp corners of a slot: nobody saws a hundred, and where each cutter gets between more teeth than these takes seconds to find."""
LONGEST = 100_000.0
"""mm from node to node that a loop may run: round a head it is a metre or two. Teeth as deep as the head is wide, thousands of them,
take seconds to look at."""
_SHARP = math.radians(30)
"""turn of a sharp corner"""
_CROSSES = 0.1
"""mm: how far chords stray that only tell how often a loop crosses itself"""


class Node(Part, kw_only=True, omit_defaults=True):
    """A corner of a loop and the edge that leaves it towards the next node.

    The edge is straight unless `bulge` (tan of a quarter of the arc's sweep,
    counter-clockwise positive) makes it an arc or `handles` make it a cubic.
    `smooth` keeps the handles on both sides in one line while they are dragged.
    """

    at: Point
    bulge: Annotated[float, Meta(ge=-1000, le=1000)] = 0.0
    handles: tuple[Point, Point] | None = None
    smooth: bool = False


class Loop(Part, kw_only=True):
    """A closed loop of at least two nodes."""

    nodes: Annotated[tuple[Node, ...], Meta(min_length=2, max_length=20000)]


@remembered_by_size(256, of_loop)
def loop_path(loop: Loop) -> Path:
    """The exact closed path through a loop's nodes, in their order.

    Edges without length are left out; GeometryError when nothing is left.
    """
    segments: list[Segment] = []
    nodes = loop.nodes
    for node, following in zip(nodes, nodes[1:] + nodes[:1], strict=True):
        a, b = node.at, following.at
        if node.handles is not None:
            if not a == b == node.handles[0] == node.handles[1]:
                segments.append(Cubic(a, node.handles[0], node.handles[1], b))
        elif a != b:
            segments.append(Arc.bulging(a, b, node.bulge) if abs(node.bulge) > 1e-9 else Line(a, b))
    if not segments:
        raise GeometryError(say("The loop has no length: all its nodes lie on one point."))
    return Path(tuple(segments), closed=True)


def hold_to_a_length(loop: Loop) -> None:
    """GeometryError for a loop whose nodes are more than LONGEST apart, all together."""
    places = [node.at for node in loop.nodes]
    length = sum(map(math.dist, places, places[1:] + places[:1]))
    if length > LONGEST:
        raise GeometryError(say("The line runs to and fro over {length:,.0f} m, and no more than {most:.0f} m are taken: draw it anew.",
                                length=math.ceil(length / 1000), most=LONGEST / 1000))


def hold_to_few_crossings(loop: Loop) -> None:
    """GeometryError with a place for a loop that crosses itself more than MOST_CROSSINGS times."""
    place = _tangle(loop) if len(loop.nodes) > _FEW_NODES else None
    if place is not None:
        raise GeometryError(say("The line crosses itself more than {most} times, for the first time at {x:.1f} across, {y:.1f} along: "
                                "draw it anew.", most=MOST_CROSSINGS, x=place[0], y=place[1]))


def hold_to_few_corners(loop: Loop) -> None:
    """GeometryError with a place for the wall of a slot that has more than MOST_SHARP sharp corners."""
    place = _teeth(loop) if len(loop.nodes) > MOST_SHARP else None
    if place is not None:
        raise GeometryError(say("The slot has more than {most} sharp corners, the first of them at {x:.1f} across, {y:.1f} along: "
                                "draw it with fewer.", most=MOST_SHARP, x=place[0], y=place[1]))


@remembered_by_size(256, of_loop)
def _teeth(loop: Loop) -> Point | None:
    path = loop_path(loop)
    sharp = path.corners(_SHARP)
    return path.segments[sharp[0][0]].point(0.0) if len(sharp) > MOST_SHARP else None


@remembered_by_size(256, of_loop)
def _tangle(loop: Loop) -> Point | None:
    from geometry.curves.polygons import (
        tangled,  # here, for the layout's own shape needs no polygon library: its schema is told without
    )
    return tangled(loop_path(loop), MOST_CROSSINGS, _CROSSES)


def loop_of(path: Path) -> Loop:
    """The loop that keeps a closed path. Arcs longer than a half circle are kept in two pieces."""
    if not path.closed:
        raise GeometryError(say("Only a closed path can become a loop."))
    nodes: list[Node] = []
    for segment in path:
        if isinstance(segment, Cubic):
            nodes.append(Node(at=segment.p0, handles=(segment.c0, segment.c1)))
        elif isinstance(segment, Arc):
            pieces = segment.split(0.5) if abs(segment.sweep) > 3.2 else (segment,)
            nodes += [Node(at=piece.p0, bulge=piece.bulge) for piece in pieces]
        else:
            nodes.append(Node(at=segment.p0))
    if len(nodes) < 2:
        one, two = path.segments[0].split(0.5)
        return loop_of(Path((one, two), closed=True))
    return Loop(nodes=tuple(nodes))
