"""The run of each string in plan, from the nut to where it first touches its post.

The tangent from a point to a circle: with the centre at distance d and the
radius r, it leaves the line to the centre by asin(r / d) and is sqrt(d^2 - r^2) long.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from geometry import vectors as v
from geometry.layout.headstock import Headstock
from geometry.layout.tuners import Tuner
from geometry.solids.frames import Frame, frames
from geometry.strings.nut import nut_places
from geometry.vectors import Vec2


@dataclass(frozen=True, slots=True)
class Run:
    """One string from the nut to its post (mm, rad)."""

    string: str
    tuner: str
    nut: Vec2
    post: Vec2
    """where it first touches the post, in plan"""
    side_angle: float
    """from straight on, positive towards the treble side"""
    height: float
    """of the winding above the face, negative below it"""

    @property
    def length(self) -> float:
        """In plan, mm."""
        return v.distance(self.nut, self.post)


def runs(layout: Headstock, placed: dict[str, Frame] | None = None) -> tuple[Run, ...]:
    """The runs of all strings that a tuner names, in the order of the tuners.

    A string whose post stands on its own place at the nut has no run and is left out.
    GeometryError when the outline has no edges.
    """
    places = dict(zip((s.id for s in layout.strings), nut_places(layout.nut, layout.strings), strict=True))
    thick = {s.id: s.diameter for s in layout.strings}
    placed = frames(layout) if placed is None else placed
    found = []
    for tuner in layout.tuners:
        if tuner.string in places and tuner.id in placed:
            run = _run(layout, tuner, placed[tuner.id], (places[tuner.string], 0.0), thick[tuner.string])
            if run is not None:
                found.append(run)
    return tuple(found)


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


def break_angle(run: Run, pitch: float, nut_height: float) -> float:
    """Angle in rad by which the string bends down over the nut.

    `pitch` (rad) is the head's angle, `nut_height` (mm) the string above the
    face at the nut: pitch + atan((nut height - winding height) / run). A run without length gives pitch.
    """
    return pitch + (math.atan((nut_height - run.height) / run.length) if run.length > 0 else 0.0)


def _run(layout: Headstock, tuner: Tuner, frame: Frame, nut: Vec2, thick: float) -> Run | None:
    post = layout.pattern(tuner.pattern).post
    radius = (post.diameter + thick) / 2
    if frame.mount == "face":
        touch = tangent_point(nut, frame.origin[:2], radius, tuner.winds == "treble")
        height = post.string_hole
    else:
        x, y, z = frame.at(0.0, 0.0, post.string_hole)
        touch = (x, y)
        height = -z + (radius if tuner.winds == "bass" else -radius)
    if touch is None or v.distance(nut, touch) == 0:
        return None
    way = v.sub(touch, nut)
    return Run(tuner.string, tuner.id, nut, touch, math.atan2(way[0], way[1]), height)
