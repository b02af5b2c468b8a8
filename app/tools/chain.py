"""The line being drawn: its points, its exact edges, and the loop that they close to."""

from __future__ import annotations

import math

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import MIRROR, Arc, Cubic, Line, Path, Segment
from geometry.errors import GeometryError
from geometry.lengths import at_least, mm
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

CORNERED = 1e-9
"""A turn under this many radians makes a straight edge of a tangent arc."""


class Chain(Struct, frozen=True):
    """Edges end to end from a first point (mm). `pulled` is the handle that the next curve leaves by."""

    first: Vec2
    edges: tuple[Segment, ...] = ()
    pulled: Vec2 | None = None

    @property
    def last(self) -> Vec2:
        """Where the next edge starts."""
        return self.edges[-1].end if self.edges else self.first

    @property
    def points(self) -> list[Vec2]:
        """All points in their order."""
        return [self.first, *(edge.end for edge in self.edges)]

    def with_edge(self, edge: Segment, pulled: Vec2 | None = None) -> Chain:
        """One edge farther."""
        return replace(self, edges=(*self.edges, edge), pulled=pulled)

    def shortened(self) -> Chain | None:
        """Without the last edge; None when there is only the first point."""
        return replace(self, edges=self.edges[:-1], pulled=None) if self.edges else None

    # ---- edges ----------------------------------------------------------
    def straight(self, to: Vec2) -> Segment:
        """A straight edge; GeometryError when it has no length."""
        if v.distance(self.last, to) <= TOUCH:
            raise GeometryError(say("An edge needs two different ends."))
        return Line(self.last, to)

    def curve(self, to: Vec2, into: Vec2 | None = None) -> Segment:
        """A curve that leaves by the pulled handle and arrives by `into`; handles not given lie on the chord."""
        if v.distance(self.last, to) <= TOUCH:
            raise GeometryError(say("An edge needs two different ends."))
        chord = v.sub(to, self.last)
        return Cubic(self.last, self.pulled or v.along(self.last, chord, 1 / 3), into or v.along(to, chord, -1 / 3), to)

    def tangent_arc(self, to: Vec2) -> Segment:
        """The arc that goes on without a corner; straight when the point lies dead ahead."""
        straight = self.straight(to)
        turn = v.turn(self.heading, straight.tangent(0))
        if abs(turn) < CORNERED:
            return straight
        if abs(turn) > math.pi - 1e-3:
            raise GeometryError(say("The point lies straight behind, so no arc goes on to it: choose another edge."))
        return Arc.bulging(self.last, to, math.tan(turn / 2))

    def arc_of_radius(self, to: Vec2, radius: float, left: bool) -> Segment:
        """The shorter arc of that radius to a point, bulging to the left or right of the way there."""
        half = v.distance(self.straight(to).p0, to) / 2
        if radius < half - TOUCH:
            raise GeometryError(say("The ends are {apart} apart, so the radius must be {half} or more.",
                                    apart=mm(2 * half), half=at_least(half)))
        sweep = 2 * math.asin(min(1.0, half / radius))
        return Arc.bulging(self.last, to, math.tan(sweep / 4) * (-1 if left else 1))

    def turning(self, radius: float, toward: Vec2) -> Segment:
        """An arc of that radius that goes on without a corner, to the side of a point and as far round as it."""
        side = 1.0 if v.cross(self.heading, v.sub(toward, self.last)) >= 0 else -1.0
        centre = v.along(self.last, v.left(self.heading), side * radius)
        spoke = v.sub(toward, centre)
        if v.norm(spoke) <= TOUCH:
            raise GeometryError(say("Point to where the arc should end, away from its centre."))
        return self.tangent_arc(v.along(centre, v.unit(spoke), radius))

    @property
    def heading(self) -> Vec2:
        """Unit direction in which the chain goes on: the pulled handle, the last edge, or towards the tip."""
        if self.pulled is not None and v.distance(self.pulled, self.last) > TOUCH:
            return v.unit(v.sub(self.pulled, self.last))
        return self.edges[-1].tangent(1.0) if self.edges else (0.0, 1.0)

    # ---- closing --------------------------------------------------------
    def closed(self) -> Path:
        """The loop, closed by a straight edge where its ends are apart. GeometryError when it has no area."""
        edges = list(self.edges)
        if edges and v.distance(self.last, self.first) > TOUCH:
            edges.append(Line(self.last, self.first))
        return _with_area(edges)

    def mirrored(self) -> Path:
        """The loop of the chain and its mirror image; ends off the centreline are joined straight across."""
        if not self.edges:
            raise GeometryError(say("Draw at least one edge before closing."))
        edges = list(self.edges)
        back = Path(tuple(edges)).mapped(MIRROR).reversed()
        if abs(self.last[0]) > TOUCH:
            edges.append(Line(self.last, back.start))
        edges += back.segments
        if abs(self.first[0]) > TOUCH:
            edges.append(Line(back.end, self.first))
        return _with_area(edges)


def _with_area(edges: list[Segment]) -> Path:
    if not edges:
        raise GeometryError(say("Draw at least one edge before closing."))
    path = Path(tuple(edges), closed=True)
    if abs(path.area) < 1e-3:
        raise GeometryError(say("The line has no area inside yet: draw on before closing it."))
    return path
