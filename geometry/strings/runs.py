"""The run of each string in space, from the nut to where it first touches its post.

The tangent from a point to a circle: with the centre at distance d and the
radius r, it leaves the line to the centre by asin(r / d) and is sqrt(d^2 - r^2) long.
A line touches a round post where its projection along the post's axis touches
the circle: on the face for a post through the face, on the upright plane
square to the axis for a post through the side.
"""

from __future__ import annotations

import math

from msgspec import Struct

from geometry import vectors as v
from geometry.layout.hardware import Post
from geometry.layout.headstock import Headstock
from geometry.layout.strings import String
from geometry.layout.tuners import Tuner
from geometry.solids.frames import Frame, frames
from geometry.strings.nut import nut_places
from geometry.vectors import Vec2, Vec3


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

    @property
    def length(self) -> float:
        """In plan, mm."""
        return v.distance(self.nut, self.post)

    @property
    def start(self) -> Vec3:
        """At the nut, in space."""
        return (*self.nut, -self.nut_height)

    @property
    def end(self) -> Vec3:
        """At the post, in space."""
        return (*self.post, -self.height)


def runs(layout: Headstock, placed: dict[str, Frame] | None = None) -> tuple[Run, ...]:
    """The runs of all strings that a tuner names, in the order of the tuners.

    A string whose post stands on its own place at the nut has no run and is left out.
    GeometryError when the outline has no edges.
    """
    places = dict(zip((s.id for s in layout.strings), nut_places(layout.nut, layout.strings), strict=True))
    strings = {s.id: s for s in layout.strings}
    placed = frames(layout) if placed is None else placed
    found = []
    for tuner in layout.tuners:
        if tuner.string in places and tuner.id in placed:
            run = run_to(tuner, placed[tuner.id], layout.pattern(tuner.pattern).post, strings[tuner.string],
                         layout.nut.at(places[tuner.string]), layout.nut.height)
            if run is not None:
                found.append(run)
    return tuple(found)


def run_to(tuner: Tuner, frame: Frame, post: Post, string: String, nut: Vec2, nut_height: float) -> Run | None:
    """The run that a string has from a point of the nut to a tuner; None when it has none.

    `nut_height` (mm) is the string above the face at the nut.
    """
    radius = (post.diameter + string.diameter) / 2
    if frame.mount == "face":
        touch = tangent_point(nut, frame.origin[:2], radius, tuner.winds == "treble")
        height = post.comes_off(frame.wood)
    else:
        touch, height = _on_side_post(nut, nut_height, frame, post.string_hole, radius, tuner.winds == "bass")
    if touch is None or v.distance(nut, touch) == 0:
        return None
    way = v.sub(touch, nut)
    return Run(string.id, tuner.id, nut, touch, math.atan2(way[0], way[1]), height, nut_height, string.diameter)


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


def break_angle(run: Run, pitch: float, nut_height: float) -> float:
    """Angle in rad by which the string bends down over the nut.

    `pitch` (rad) is the head's angle, `nut_height` (mm) the string above the
    face at the nut: pitch + atan((nut height - winding height) / run). A run without length gives pitch.
    """
    return pitch + (math.atan((nut_height - run.height) / run.length) if run.length > 0 else 0.0)


def _on_side_post(nut: Vec2, up: float, frame: Frame, hole: float, radius: float,
                  over: bool) -> tuple[Vec2 | None, float]:
    """(where a string touches a post through the side at its string hole, height there in mm)."""
    axis = frame.at(0.0, 0.0, hole)
    away = frame.u[0] * (nut[0] - axis[0]) + frame.u[1] * (nut[1] - axis[1])
    touch = tangent_point((away, up + axis[2]), (0.0, 0.0), radius, over == (away > 0))
    if touch is None:
        return None, 0.0
    return frame.at(touch[0], 0.0, hole)[:2], touch[1] - axis[2]
