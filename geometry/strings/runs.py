"""The run of each string in space, from the nut to where it first touches its post.

The tangent from a point to a circle: with the centre at distance d and the
radius r, it leaves the line to the centre by asin(r / d) and is sqrt(d^2 - r^2) long.
A line touches a round post where its projection along the post's axis touches
the circle: on the face for a post through the face, on the upright plane
square to the axis for a post through the side. Retainers hold a string down on its way.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.layout.hardware import Post
from geometry.layout.headstock import Headstock
from geometry.layout.slots import SingleHole
from geometry.layout.strings import Nut, String
from geometry.layout.tuners import Tuner
from geometry.solids.frames import Frame, frames
from geometry.strings.nut import nut_places
from geometry.strings.retainers import Held, over, pressed
from geometry.vectors import Vec2, Vec3

TOLERABLE = 10.0
"""degrees aside at the nut: up to 6 is good, up to 10 tolerable (common practice, no source)"""
_TOLERABLE = math.radians(TOLERABLE + 1e-9)
_TRIES = 20
_SAME = 1e-12
"""mm: where a string touches its post is told no closer."""


class Run(Struct, frozen=True):
    """The middle of one string from the nut to its post (mm, rad)."""

    string: str
    tuner: str
    nut: Vec2
    post: Vec2
    """where it first touches the post, in plan"""
    side_angle: float
    """from straight on, positive towards the treble side"""
    height: float
    """of the string above the face where it touches the post, negative below it"""
    nut_height: float = 0.0
    """of the string above the face at the nut"""
    diameter: float = 0.0
    under: tuple[Held, ...] = ()
    """the retainers that it presses on, from the nut on"""
    course: int = 0
    """of its string, 0 for one by itself"""

    @property
    def length(self) -> float:
        """In plan, mm."""
        return v.distance(self.nut, self.post)

    @property
    def wide(self) -> bool:
        """Whether it bends aside at the nut by more than is tolerable."""
        return abs(self.side_angle) > _TOLERABLE

    @property
    def start(self) -> Vec3:
        """At the nut, in space."""
        return (*self.nut, -self.nut_height)

    @property
    def end(self) -> Vec3:
        """At the post, in space."""
        return (*self.post, -self.height)

    @property
    def corners(self) -> tuple[tuple[float, float], ...]:
        """(how far from the nut as seen on the face, height above it) of nut, retainers and post, mm: straight on between them."""
        return ((0.0, self.nut_height), *((one.far, one.height) for one in self.under), (self.length, self.height))

    @property
    def legs(self) -> tuple[Run, ...]:
        """Its straight pieces from the nut on, each as a run."""
        if not self.under:
            return (self,)
        way = v.unit(v.sub(self.post, self.nut))
        places = [(v.along(self.nut, way, far), height) for far, height in self.corners[:-1]] + [(self.post, self.height)]
        return tuple(replace(self, nut=a, post=b, height=high, nut_height=up, under=())
                     for (a, up), (b, high) in zip(places, places[1:], strict=False))

    @property
    def last_leg(self) -> Run:
        """The string as if it came straight from the nut as it does from its last retainer: nowhere higher than it is."""
        if not self.under:
            return self
        (far, up), (end, high) = self.corners[-2:]
        return replace(self, nut_height=up - far * (high - up) / (end - far), under=())

    def level(self, far: float) -> float:
        """How high above the face it passes at a distance from the nut as seen on the face, mm."""
        (a, up), (b, high) = next(((one, two) for one, two in zip(self.corners, self.corners[1:], strict=False) if far <= two[0]),
                                  self.corners[-2:])
        return up + (high - up) * (far - a) / (b - a)


def runs(layout: Headstock, placed: dict[str, Frame] | None = None) -> tuple[Run, ...]:
    """The runs of all strings that a tuner names, in the order of the tuners.

    A string whose post stands on its own place at the nut has no run and is left out.
    GeometryError when the outline has no edges.
    """
    places = dict(zip((s.id for s in layout.strings), nut_places(layout.nut, layout.strings), strict=True))
    strings = {s.id: s for s in layout.strings}
    placed = frames(layout) if placed is None else placed
    retainers = carriers(layout)
    found = []
    for tuner in layout.tuners:
        if tuner.string in places and tuner.id in placed:
            run = run_to(tuner, placed[tuner.id], layout.pattern(tuner.pattern).post, strings[tuner.string],
                         layout.nut.at(places[tuner.string]), layout.nut.height, retainers)
            if run is not None:
                found.append(run)
    return tuple(found)


def carriers(layout: Headstock) -> tuple[SingleHole, ...]:
    """The holes that carry a string retainer; one that is not open at the face carries none."""
    return tuple([hole for hole in layout.holes if hole.retainer is not None and hole.opens(layout.blank.thickness)])


def run_to(tuner: Tuner, frame: Frame, post: Post, string: String, nut: Vec2, nut_height: float,
           retainers: Sequence[SingleHole] = ()) -> Run | None:
    """The run that a string has from a point of the nut to a tuner, under the retainers on its way; None when it has none.

    `nut_height` (mm) is the string above the face at the nut.
    """
    radius = (post.diameter + string.diameter) / 2

    def made(touch: Vec2 | None, height: float) -> Run | None:
        if touch is None or v.distance(nut, touch) == 0:
            return None
        way = v.sub(touch, nut)
        run = Run(string.id, tuner.id, nut, touch, math.atan2(way[0], way[1]), height, nut_height, string.diameter, course=string.course)
        if retainers and (held := pressed(nut_height, run.length, height, over(nut, touch, retainers))):
            return replace(run, under=held)
        return run
    if frame.mount == "face":
        return made(tangent_point(nut, frame.origin[:2], radius, tuner.winds == "treble"), post.comes_off(frame.wood))
    # Where it touches depends on the last retainer that it presses on, and where it passes that on where it touches.
    start, up, run = nut, nut_height, None
    for _ in range(_TRIES):
        before, run = run, made(*_on_side_post(start, up, frame, post.string_hole, radius, tuner.winds == "bass"))
        if run is None or not run.under and (start, up) == (nut, nut_height) or before is not None and v.distance(run.post, before.post) <= _SAME:
            break
        last = run.legs[-1]
        start, up = last.nut, last.nut_height
    return run


def tangent_point(start: Vec2, centre: Vec2, radius: float, to_treble: bool) -> Vec2 | None:
    """Where a string from `start` first touches a round post, passing it on its treble or its bass side.

    The side is the one seen from the start, looking along the string. None when the start lies inside the post.
    """
    to = v.sub(centre, start)
    far = v.norm(to)
    if far <= radius or far == 0:
        return None
    lean = math.asin(radius / far)
    reach = math.sqrt(far * far - radius * radius)
    return v.along(start, v.turned(v.unit(to), -lean if to_treble else lean), reach)


def cross(one: Run, two: Run) -> bool:
    """Whether two runs cross on the face; touching ends do not count."""
    a, b, c, d = one.nut, one.post, two.nut, two.post
    way, other = v.sub(b, a), v.sub(d, c)
    return (v.cross(way, v.sub(c, a)) * v.cross(way, v.sub(d, a)) < 0
            and v.cross(other, v.sub(a, c)) * v.cross(other, v.sub(b, c)) < 0)


def cross_on_the_face(one: Run, two: Run) -> bool:
    """Whether two strings cross above the face: told even with air between them. Down in a slot strings pass each other."""
    return one.height > 0 and two.height > 0 and cross(one, two)


def break_angle(run: Run, nut: Nut) -> float:
    """Angle in rad by which the string bends down over the nut, out of the plane in which it comes along the neck.

    It leaves the face by phi = atan((nut height - winding height) / run), towards the first retainer that it presses on instead of the
    post; a run without length leaves it by 0. The face leans back by the pitch about the nut line. Of the direction that has
    cos(phi) cos(a) square to the nut line on the face, a from there, and sin(phi) into the wood, the part down from the neck is
    sin(angle) = cos(phi) cos(a) sin(pitch) + sin(phi) cos(pitch). Straight on over a square nut that is pitch + phi.
    """
    (_, up), (far, height) = run.corners[:2]
    size, lean = _leaning(run, nut)
    return math.asin(max(-1.0, min(1.0, size * math.sin(lean + (math.atan((up - height) / far) if far > 0 else 0.0)))))


def fall_for(down: float, run: Run, nut: Nut) -> float:
    """The angle to the face, rad, at which a string has to leave the nut in order to bend down over it by `down` (rad, less than upright)."""
    size, lean = _leaning(run, nut)
    return math.asin(min(1.0, math.sin(down) / size)) - lean


def _leaning(run: Run, nut: Nut) -> tuple[float, float]:
    """(size, lean in rad) of which size * sin(lean + phi) is the sine of the break angle."""
    pitch, aside = math.radians(nut.pitch), run.side_angle - math.radians(nut.slant)
    along, across = math.cos(aside) * math.sin(pitch), math.cos(pitch)
    return math.hypot(along, across), math.atan2(along, across)


def _on_side_post(nut: Vec2, up: float, frame: Frame, hole: float, radius: float,
                  over: bool) -> tuple[Vec2 | None, float]:
    """(where a string touches a post through the side at its string hole, height there in mm)."""
    axis = frame.at(0.0, 0.0, hole)
    away = frame.u[0] * (nut[0] - axis[0]) + frame.u[1] * (nut[1] - axis[1])
    touch = tangent_point((away, up + axis[2]), (0.0, 0.0), radius, over == (away > 0))
    if touch is None:
        return None, 0.0
    return frame.at(touch[0], 0.0, hole)[:2], touch[1] - axis[2]
