"""Strings and posts as cylinders, and which strings pass the posts of other tuners too near."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

import numpy as np

from geometry.layout.hardware import Post
from geometry.solids.cylinders import Cylinders, norms
from geometry.solids.distance import clear
from geometry.solids.frames import Frame
from geometry.strings.runs import Run
from geometry.tolerance import TOUCH
from geometry.vectors import Vec3

Rod = tuple[Vec3, Vec3, float, float]
"""A cylinder: start, unit axis, length and radius, mm."""


def string_solids(runs: Sequence[Run]) -> Cylinders:
    """Straight strings, or the legs of others, as cylinders."""
    rows = np.array([(*run.start, *run.end, run.diameter / 2) for run in runs])
    start = rows[:, :3]
    way = rows[:, 3:6] - start
    length = norms(way)
    return Cylinders(start, way / length[:, None], length, rows[:, 6])


def post_solids(posts: Sequence[tuple[Frame, Post]]) -> Cylinders:
    """Tuners' posts: above the face for a face mount, from the seat inwards for a side mount."""
    return Cylinders.made([post_rod(frame, post) for frame, post in posts])


def post_rod(frame: Frame, post: Post) -> Rod:
    """One of post_solids."""
    return frame.origin, post_way(frame), post_length(frame, post), post.diameter / 2


def string_rod(run: Run) -> Rod:
    """One of string_solids."""
    way = [b - a for a, b in zip(run.start, run.end, strict=True)]
    length = math.hypot(*way)
    return run.start, (way[0] / length, way[1] / length, way[2] / length), length, run.diameter / 2


def post_length(frame: Frame, post: Post) -> float:
    """How long a post is from the place of its tuner on, mm; next to nothing where it does not come out of the face."""
    return post.length if frame.mount == "side" else max(post.above(post.length, frame.wood), TOUCH)


def post_way(frame: Frame) -> Vec3:
    """The unit direction in which a post leaves the place of its tuner."""
    return (0.0, 0.0, -1.0) if frame.mount == "face" else frame.w


def too_near(runs: Sequence[Run], posts: Mapping[str, tuple[Frame, Post]], air: float) -> list[tuple[bool, bool]]:
    """Of each string, whether it has less than `air` mm to the post of any other tuner, and whether it runs into one."""
    others = [(i, leg, id) for i, run in enumerate(runs) for leg in run.legs for id in posts if id != run.tuner]
    found = np.zeros((len(runs), 2), dtype=bool)
    if others:
        whose = np.array([i for i, _, _ in others])
        strings, solids = string_solids([leg for _, leg, _ in others]), post_solids([posts[id] for *_, id in others])
        for k, needed in enumerate((air, 0.0)):
            found[whose[~clear(strings, solids, np.full(len(others), needed))], k] = True
    return [(bool(near), bool(into)) for near, into in found]
