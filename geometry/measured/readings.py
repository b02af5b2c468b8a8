"""Caliper readings of a finished piece held against the plan.

What each kind of reading means, in mm (tilt: degrees):

- `x`: to the middle of the hole, from the centreline (treble side positive), or from a square edge of the blank inwards;
- `y`: to the middle of the hole, from the nut line towards the tip; of a bore from the side on the finished outline, or
  where it goes into the `square edge` while that is there;
- `below face`: to the middle of a bore from the side;
- `diameter`, `depth`: of that drilling, the depth to the full diameter's end; of a bore from the side from the finished
  outline, or from the `square edge` while that is there;
- `tilt`: of a bore from the side in plan, against square to the blank's edge, positive when it leans to the tip on its way
  out, where its drilling card and the wrap paper say `tip raised`, negative for `nut raised`;
- `distance`: between two holes, middle to middle, or `over the wood` (between the near walls), `over the walls`
  (between the far walls, inside jaws) or `over pins` (outside jaws, pins that fill the holes).

A bore that is reamed is measured where it is wide.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping

from msgspec import Struct

from geometry.errors import GeometryError
from geometry.layout import Headstock, Piece, Reading
from geometry.saying import say
from geometry.solids import Drilling, holes

FARTHEST = 5.0
"""mm or degrees: a reading that is off by more is taken for a slip of the pen or the wrong hole."""


class Off(Struct, frozen=True):
    """One reading, what the plan says in the same terms, and how much larger the reading is."""

    reading: Reading
    planned: float

    @property
    def by(self) -> float:
        """mm (tilt: degrees), positive when the reading is larger."""
        return self.reading.value - self.planned

    @property
    def moved(self) -> float:
        """Of x and y, how far along that axis the hole lies from its place, mm: from the treble edge x is read the other way."""
        return -self.by if (self.reading.what, self.reading.how) == ("x", "treble edge") else self.by

    @property
    def doubtful(self) -> bool:
        """Whether it is rather a slip of the pen: such a reading says nothing about the shop."""
        return abs(self.by) > FARTHEST


def drillings(layout: Headstock) -> dict[str, Drilling]:
    """All drillings by id."""
    return {d.id: d for hole in holes(layout) for d in hole.drillings}


def centre_distance(value: float, how: str, one: float, other: float) -> float:
    """Distance of the middles in mm from a caliper reading on holes with these diameters (mm)."""
    walls = (one + other) / 2
    return value + {"over the wood": walls, "over the walls": -walls, "over pins": -walls}.get(how, 0.0)


def apart(one: Drilling, other: Drilling) -> float:
    """Distance of two holes by the plan, middle to middle as calipers take it, mm.

    Of two that are square to the face over the face, whichever side each is drilled from: a post bore comes from the
    face, the screws of its tuner from the back. Of others in space, between the places where they go in.
    """
    if one.upright and other.upright:
        return math.dist(one.start[:2], other.start[:2])
    return math.dist(one.start, other.start)


def at_square_edge(d: Drilling, what: str) -> bool:
    """Whether a drilling has this measure at the square edge. Pilots of screws have none: they are drilled through the plate
    once the outline is cut."""
    return d.mark is not None and not d.upright and d.role != "screw" and (what == "y" or what == "depth" and not d.through)


def planned_value(layout: Headstock, reading: Reading, known: Mapping[str, Drilling] | None = None) -> float:
    """What the plan says in the terms of a reading. GeometryError when there is no such hole or it has no such measure."""
    known = drillings(layout) if known is None else known
    d = _drilling(known, reading.drilling)
    if reading.what == "x":
        if not d.upright:
            raise GeometryError(say("{d} goes in from the side: measure y and how far below the face it lies.", d=d.id))
        return {"bass edge": d.start[0] + layout.blank.bass, "treble edge": layout.blank.treble - d.start[0]}.get(reading.how, d.start[0])
    if reading.how == "square edge" and not at_square_edge(d, reading.what):
        raise GeometryError(say("{d} is not drilled from the square edge.", d=d.id))
    if reading.what == "y":
        return d.mark[1] if reading.how == "square edge" else d.start[1]
    if reading.what == "depth" and reading.how == "square edge":
        return d.stop
    if reading.what in ("diameter", "depth"):
        return d.finished if reading.what == "diameter" else d.depth
    if reading.what == "distance":
        return _distance(d, _drilling(known, reading.other or ""), reading.how)
    if d.upright:
        raise GeometryError(say("{d} is square to the face: it has neither a tilt nor a depth below the face.", d=d.id))
    if reading.what == "below face":
        return d.start[2]
    return math.degrees(math.atan2(-d.direction[1], abs(d.direction[0])))


def with_side(reading: Reading, value: float) -> float:
    """What a caliper says (mm) of a reading with its planned value, with the sign of its side.

    A caliper knows no sign, and x from the centreline is below zero on the bass side: a value above zero of a hole that
    is planned so far on the bass side that it could only be a slip is meant there.
    """
    bass = (reading.what == "x" and reading.how == "centreline" and reading.planned is not None and reading.planned < -FARTHEST)
    return -value if bass and value > 0 else value


def offs(layout: Headstock, readings: Iterable[Reading], piece: Piece) -> tuple[Off, ...]:
    """Readings of one piece against the plan they were entered for, else against the layout as it is.

    A reading of a hole that is gone is held against what was planned then, and left out when that was not kept.
    """
    known, found = drillings(layout), []
    for reading in readings:
        if reading.piece != piece:
            continue
        if reading.planned is not None:
            found.append(Off(reading, reading.planned))
        elif reading.drilling in known and (reading.what != "distance" or reading.other in known):
            found.append(Off(reading, planned_value(layout, reading, known)))
    return tuple(found)


def _drilling(known: Mapping[str, Drilling], id: str) -> Drilling:
    if id not in known:
        raise GeometryError(say('There is no drilling called "{id}".', id=id))
    return known[id]


def _distance(one: Drilling, other: Drilling, how: str) -> float:
    if one.id == other.id:
        raise GeometryError(say("A distance is between two different holes."))
    walls = (one.finished + other.finished) / 2
    return apart(one, other) - {"over the wood": walls, "over the walls": -walls, "over pins": -walls}.get(how, 0.0)
