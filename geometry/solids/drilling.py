"""Every hole and every drilling of a layout, derived and never drawn by hand."""

from __future__ import annotations

import math
from collections.abc import Iterable

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.by_size import remembered_by_size
from geometry.layout.blank import Blank, Side
from geometry.layout.hardware import Bore
from geometry.layout.headstock import Headstock
from geometry.layout.shop import Drill
from geometry.layout.slots import Pin, SingleHole
from geometry.solids.frames import Frame, frames
from geometry.terms import HOLE_THERE
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2, Vec3

OPERATIONS = {"post": "post bore", "counterbore": "counterbore", "clearance": "clearance bore",
              "screw": "screw pilot", "pin": "pin hole"}
"""What each kind of bore is called at the drill press."""
THERE = HOLE_THERE
"""What a hole is called that is in the blank already: nothing drills it."""


class Drilling(Struct, frozen=True):
    """One trip of a drill into the wood, a flat-ended cylinder in the finished piece (mm).

    `start` lies on the finished surface (for a side bore: on the seat plane),
    `direction` is a unit vector into the wood, `depth` is from `start` to the
    full diameter's end. `mark` is where the drill goes in while the blank still
    has square edges, None when the axis never meets the square edge; `stop` is
    the depth from that mark.
    """

    id: str
    hole: str
    of: str
    role: str
    operation: str
    diameter: float
    start: Vec3
    direction: Vec3
    depth: float
    through: bool
    surface: str
    """face, back, bass edge or treble edge"""
    drill: str
    mark: Vec3 | None
    stop: float
    wider: float = 0.0
    """mm by which it gets wider than `diameter` where what is cut matters, see as_cut"""
    reamed: float = 0.0
    """how wide it is opened by hand afterwards at `start`, mm; 0: not at all"""
    taper: float = 0.0
    """mm over which what is reamed narrows by 1 mm"""
    plugged: bool = False
    """whether it is filled with wood before anything else is done"""

    @property
    def radius(self) -> float:
        """Half of its width, mm, and TOUCH at least: half of the smallest number is nothing, and cones are told by their radius."""
        return max((self.diameter + self.wider) / 2, TOUCH)

    @property
    def finished(self) -> float:
        """The diameter at `start` of the finished hole, mm."""
        return max(self.diameter, self.reamed)

    @property
    def narrow(self) -> float:
        """The diameter that a reamer leaves at the far end, mm; less than `diameter` where it does not come to cut there."""
        return self.reamed - self.depth / self.taper if self.reamed else self.diameter

    @property
    def there(self) -> bool:
        """Whether it is in the blank already, so that nothing has to drill it."""
        return self.operation == THERE

    @property
    def pilot(self) -> bool:
        """Whether it is for a wood screw: a tuner's, or a retainer's."""
        return self.operation == OPERATIONS["screw"]

    @property
    def waste_too(self) -> bool:
        """Whether it may lie in the waste as well: a locating pin, and a hole that is there already."""
        return self.role == "locating" or self.there

    @property
    def style(self) -> str:
        """The style of its marks in drawings."""
        return "side bore" if self.role == "post" and not self.upright else self.operation

    @property
    def end(self) -> Vec3:
        """Middle of the far end, mm."""
        return v.along3(self.start, self.direction, self.depth)

    @property
    def upright(self) -> bool:
        """Whether the axis is square to the face."""
        return abs(self.direction[2]) > 0.5


class Hole(Struct, frozen=True):
    """Drillings on one axis that make one hole, widest first."""

    id: str
    of: str
    drillings: tuple[Drilling, ...]


def holes(layout: Headstock) -> tuple[Hole, ...]:
    """All holes: of each tuner in the order of its pattern, then single holes, then pins.

    Those of the layout asked for last are remembered: whoever draws or lists one layout asks some fifty times.
    """
    global _last
    known, found = _last
    if known is not layout:
        found = _holes(layout, frames(layout))
        _last = layout, found
    return found


_last: tuple[Headstock | None, tuple[Hole, ...]] = (None, ())
"""The layout asked for last, which keeps its identity from being given to another, and its holes; swapped as one."""


def _holes(layout: Headstock, placed: dict[str, Frame]) -> tuple[Hole, ...]:
    return (*(hole for tuner in layout.tuners for hole in tuner_holes(placed[tuner.id], layout.pattern(tuner.pattern).bores, layout.blank)),
            *(single_hole(single, layout.blank) for single in layout.holes),
            *(pin_hole(pin, layout.blank) for pin in layout.pins))


def once_plugged(layout: Headstock) -> tuple[Hole, ...]:
    """As `holes`, without old ones that are plugged before anything else is done: those are wood."""
    return tuple(hole for hole in holes(layout) if not hole.drillings[0].plugged)


def to_drill(layout: Headstock) -> tuple[Hole, ...]:
    """As `holes`, without those that are in the blank already."""
    return tuple(hole for hole in holes(layout) if not hole.drillings[0].there)


def tuner_holes(frame: Frame, bores: tuple[Bore, ...], blank: Blank) -> tuple[Hole, ...]:
    """The holes that a tuner's pattern asks for where it sits."""
    found = []
    for number, group in enumerate(_by_axis(bores), 1):
        hole = f"{frame.tuner}.{number}"
        found.append(Hole(hole, frame.tuner, tuple([
            _tuner_drilling(blank, frame, bore, hole, step) for step, bore in enumerate(group, 1)])))
    return tuple(found)


def single_hole(single: SingleHole, blank: Blank) -> Hole:
    """A hole that belongs to no tuner; for the screw of a retainer it is a pilot."""
    pilot = single.retainer is not None
    operation = THERE if single.there else OPERATIONS["screw"] if pilot else "hole"
    made = _upright(blank, f"{single.id}.1", single.id, single.id, "hole", operation, single.diameter, single.at, single.surface, single.depth,
                    "twist" if pilot else "brad")
    return Hole(single.id, single.id, (replace(made, plugged=True) if single.plugged else made,))


def pin_hole(pin: Pin, blank: Blank) -> Hole:
    """The hole of a locating pin, through from the face."""
    return Hole(pin.id, pin.id, (_upright(blank, f"{pin.id}.1", pin.id, pin.id, "locating", "locating pin hole", pin.diameter,
                                          pin.at, "face", None, "brad"),))


@remembered_by_size(256, len)
def _by_axis(bores: tuple[Bore, ...]) -> list[list[Bore]]:
    """Bores by the axis that they share, widest first."""
    by_axis: dict[tuple[float, float], list[Bore]] = {}
    for bore in bores:
        by_axis.setdefault(bore.at, []).append(bore)
    return [sorted(group, key=lambda bore: -bore.diameter) for group in by_axis.values()]


SAME_SIZE = 0.05
"""mm by which a drill may differ from the diameter that is asked for"""
SLIGHT = 0.02
"""mm: so little wider or narrower than it is marked a drill cuts anyway (common practice, no source)"""

_PARALLEL = math.sin(math.radians(1))


def square_edge_reach(blank: Blank, side: Side, point: Vec3, outward: Vec3) -> float | None:
    """Distance in mm from a point outwards along an axis to the square edge of the blank.

    None when the axis runs along the edge or away from it (within 1 degree of parallel).
    """
    if abs(outward[0]) < _PARALLEL:
        return None
    reach = (blank.edge_x(side) - point[0]) / outward[0]
    return reach if (outward[0] > 0) == (side == "treble") else None


def point_length(drill: Drill) -> float:
    """How far a drill's point runs ahead of its full diameter, mm.

    Twist drill: (D / 2) / tan(point angle / 2), 118 degrees when not given.
    Brad point and Forstner: the rack's own spur, else 0.3 D and 2 mm
    (common practice, no source).
    """
    if drill.kind == "twist":
        return twist_point(drill.diameter, math.radians(drill.point_angle or 118.0))
    if drill.spur is not None:
        return drill.spur
    return 0.3 * drill.diameter if drill.kind == "brad" else 2.0


def twist_point(diameter: float, angle: float) -> float:
    """Point length in mm of a twist drill: (D / 2) / tan(angle / 2), angle in rad."""
    return diameter / 2 / math.tan(angle / 2)


def point_ahead(drill: Drill | None, drilling: Drilling) -> float:
    """How far the point of the drill for a drilling runs ahead, mm: 0.3 D when there is none (common practice, no source)."""
    return 0.3 * drilling.diameter if drill is None else point_length(drill)


def drill_among(drills: Iterable[Drill], drilling: Drilling) -> Drill | None:
    """Of some drills one of that diameter (to SAME_SIZE), to SLIGHT if there is one, and then of the wanted kind; None without any.

    What is pressed in is spoilt by a bore that is too wide, not by the kind of drill that made it.
    """
    fitting = (d for d in drills if abs(d.diameter - drilling.diameter) <= SAME_SIZE + TOUCH)
    return min(fitting, default=None, key=lambda d: (misfit(d, drilling) != 0, d.kind != drilling.drill, abs(d.diameter - drilling.diameter)))


def misfit(drill: Drill, drilling: Drilling) -> float:
    """How much wider than asked for a drill makes a drilling, mm, negative: narrower; 0 where that is no more than SLIGHT."""
    wider = drill.diameter - drilling.diameter
    return wider if abs(wider) > SLIGHT + TOUCH else 0.0


def wider_by(drill: Drill | None, drilling: Drilling) -> float:
    """mm by which a drilling gets wider than asked for with a drill and a reamer, 0 where it does not: one that is there is as wide as
    it is. One that is reamed counts all along as wide as at its wide end."""
    if drilling.there:
        return 0.0
    return max(0.0, drilling.reamed - drilling.diameter, 0.0 if drill is None else drill.diameter - drilling.diameter)


def as_cut(drilling: Drilling, drills: Iterable[Drill]) -> Drilling:
    """A drilling as wide as the drill of a rack makes it, and never narrower than asked for: how much wood is left beside it."""
    return replace(drilling, wider=wider_by(drill_among(drills, drilling), drilling))


def drill_for(layout: Headstock, drilling: Drilling) -> Drill | None:
    """The rack's drill for a drilling, as drill_among."""
    return drill_among(layout.rack.drills, drilling)


def _tuner_drilling(blank: Blank, frame: Frame, bore: Bore, hole: str, step: int) -> Drilling:
    made = _drilled(blank, frame, bore, hole, step)
    return made if bore.reamed is None else replace(made, reamed=bore.reamed, taper=bore.taper)


def _drilled(blank: Blank, frame: Frame, bore: Bore, hole: str, step: int) -> Drilling:
    id = f"{hole}.{step}"
    start = frame.at(*bore.at)
    if frame.mount == "face":
        return _upright(blank, id, hole, frame.tuner, bore.role, OPERATIONS[bore.role], bore.diameter, start,
                        bore.surface, bore.depth, bore.drill)
    outward = (-frame.w[0], -frame.w[1], 0.0)
    depth = bore.depth or 0.0
    reach = square_edge_reach(blank, frame.side, start, outward)
    mark = None if reach is None else v.along3(start, outward, reach)
    return Drilling(id, hole, frame.tuner, bore.role, OPERATIONS[bore.role], bore.diameter, start, frame.w, depth,
                    False, f"{frame.side} edge", bore.drill, mark, depth + (reach or 0.0))


def _upright(blank: Blank, id: str, hole: str, of: str, role: str, operation: str, diameter: float,
             at: Vec2 | Vec3, surface: str, depth: float | None, drill: str) -> Drilling:
    thick = blank.thickness
    down = surface == "face"
    start = (at[0], at[1], 0.0 if down else thick)
    through = depth is None or depth >= thick - TOUCH
    reach = thick if through else depth
    return Drilling(id, hole, of, role, operation, diameter, start, (0.0, 0.0, 1.0 if down else -1.0), reach,
                    through, surface, drill, start, reach)
