"""Tuners, where they sit, and the rows that space them."""

from typing import Annotated, Literal

from msgspec import Meta

from geometry.layout.blank import Side
from geometry.layout.parts import Amount, Coord, Degrees, Id, Part, Point, Size, ToolId


class FreePlace(Part, kw_only=True, tag="free", tag_field="kind"):
    """A face tuner at a point (mm).

    `turn` is where its button points, degrees counter-clockwise from +x;
    None points it squarely at the nearest edge.
    """

    at: Point
    turn: Degrees | None = None


class EdgePlace(Part, kw_only=True, tag="edge", tag_field="kind"):
    """A side tuner on an edge of the outline.

    `along` is the arc length in mm from the nut line along that edge. `depth`
    is the axis below the face in mm; None puts it at half the thickness.
    """

    side: Side
    along: Coord
    depth: Size | None = None


class RowPlace(Part, kw_only=True, tag="row", tag_field="kind"):
    """A tuner in a row: number `index` from the row's start, 0 first."""

    row: Id
    index: Annotated[int, Meta(ge=0, le=200)]


Place = FreePlace | EdgePlace | RowPlace


class StraightRun(Part, kw_only=True, tag="straight", tag_field="kind"):
    """A row on a straight line: where it starts and where it heads (degrees from +x).

    `turn` is where the buttons of all its members point, degrees counter-clockwise
    from +x, as of tuners that share a plate; None points each squarely at its
    nearest edge.
    """

    start: Point
    heading: Degrees
    turn: Degrees | None = None


class EdgeRun(Part, kw_only=True, tag="edge", tag_field="kind"):
    """A row that follows an edge of the outline.

    `first` is the arc length in mm of its first member; `inset` is how far the
    members stand inside the edge (0 for side tuners).
    """

    side: Side
    first: Coord
    inset: Amount = 0.0


class Row(Part, kw_only=True):
    """Even spacing (mm, along the line or along the edge) for the tuners that name this row."""

    id: Id
    run: StraightRun | EdgeRun
    spacing: Size


class Flat(Part, kw_only=True):
    """Where the edge is cut flat under a side tuner's plate, square to its bore (mm).

    `size` is the length of a flat or the diameter of a round spot, both about the
    post; `depth` is below the edge at the post.
    """

    shape: Literal["flat", "spot"] = "flat"
    size: Size
    depth: Size


class Tuner(Part, kw_only=True):
    """One tuner of the head.

    `string` names the string that winds on it; `winds` says on which side of
    the post that string runs: the bass or the treble side for a face mount,
    for a side mount `bass` is over the post (towards the face) and `treble`
    under it. `held` asks every proposal to leave the tuner and its string as they are. `flat`
    is cut into the edge for a side mount.
    """

    id: Id
    pattern: ToolId
    place: Place
    string: Id | None = None
    winds: Literal["bass", "treble"] = "treble"
    held: bool = False
    flat: Flat | None = None
