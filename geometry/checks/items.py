"""Everything with drillings, put in its place: tuners, single holes, locating pins."""

from __future__ import annotations

import math
from collections.abc import Sequence
from operator import attrgetter
from typing import Literal

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.errors import GeometryError
from geometry.layout.blank import Blank
from geometry.layout.hardware import Pattern
from geometry.layout.outline import Loop
from geometry.layout.slots import Pin, SingleHole
from geometry.layout.tuners import Row, Tuner
from geometry.solids.cylinders import Cylinders
from geometry.solids.drilling import Drilling, Hole, pin_hole, single_hole, tuner_holes
from geometry.solids.frames import Frame, frame_of
from geometry.solids.nearby import NOTHING
from geometry.vectors import Vec2, Vec3


_RANKS = {"screw": 1, "pin": 1, "locating": 2}
_WHAT = {Tuner: "tuner", SingleHole: "hole", Pin: "pin"}


class Item(Struct, frozen=True, eq=False):
    """One feature with drillings, in the frame of the head (mm)."""

    id: str
    what: Literal["tuner", "hole", "pin"]
    holes: tuple[Hole, ...]
    drillings: tuple[Drilling, ...]
    hole_of: tuple[int, ...]
    """index of the hole of each drilling"""
    solids: Cylinders
    low: np.ndarray
    """(3,) corner of the box about all drillings"""
    high: np.ndarray
    upright: np.ndarray
    """indices of the drillings square to the face"""
    ranks: tuple[int, ...]
    """of each drilling: 0 a bore, 1 a screw or pin hole, 2 a locating pin; the higher of two ranks sets their margin"""
    held: bool
    trouble: str | None = None
    tuner: Tuner | None = None
    pattern: Pattern | None = None
    frame: Frame | None = None
    button: Cylinders | None = None
    button_box: np.ndarray | tuple[Vec3, Vec3] = NOTHING
    """(2, 3) lowest and highest corner of the box about it"""
    plate: tuple[Vec3, ...] = ()
    """corners of the plate where it lands, in order round it"""
    ground: tuple[Loop, Blank] | None = None
    """a tuner's outline and blank"""
    asked: float | None = None
    """how deep a single hole is asked to be, None for through"""

    post: Drilling | None = None
    """the widest post bore of a tuner"""

    @property
    def mount(self) -> str | None:
        """face or side for a tuner, else None."""
        return None if self.frame is None else self.frame.mount


Seed = tuple[Tuner | SingleHole | Pin, Pattern | None, Row | None]
"""A feature with its pattern and its row, where it has them."""


def items_of(seeds: Sequence[Seed], outline: Loop, blank: Blank) -> list[Item]:
    """Features in their place in a head; where the outline has no place for a tuner, an item without drillings that says why."""
    made = [_made(*seed, outline, blank) for seed in seeds]
    drillings = [tuple([drilling for hole in holes_ for drilling in hole.drillings]) for holes_, _, _ in made]
    # What is told in arrays is told for all at once and handed out in slices.
    solids = Cylinders.of([drilling for own in drillings for drilling in own])
    buttons = Cylinders.made([button for _, button, _ in made if button is not None])
    button_boxes = np.stack(buttons.boxes(), axis=1)
    low, high = _boxes(solids, [len(own) for own in drillings])
    upright = np.abs(solids.axis[:, 2]) > 0.5
    items, at, button_at = [], 0, 0
    for i, ((feature, *_), own, (holes_, button, rest)) in enumerate(zip(seeds, drillings, made, strict=True)):
        here = slice(at, at + len(own))
        at = here.stop
        if button is not None:
            rest["button"], rest["button_box"] = buttons.part(slice(button_at, button_at + 1)), button_boxes[button_at]
            button_at += 1
        items.append(Item(
            feature.id, _WHAT[type(feature)], holes_, own, tuple([i for i, hole in enumerate(holes_) for _ in hole.drillings]),
            solids.part(here), low[i], high[i], upright[here].nonzero()[0], tuple([_RANKS.get(d.role, 0) for d in own]), **rest))
    return items


def _boxes(solids: Cylinders, many: Sequence[int]) -> tuple[np.ndarray, np.ndarray]:
    """Corners (n, 3) of the boxes about each group of cylinders that follow each other; lowest above highest for an empty group."""
    low, high = solids.boxes()
    ends = np.cumsum([0, *many])[:-1]
    if all(many):
        return np.minimum.reduceat(low, ends), np.maximum.reduceat(high, ends)
    out = np.full((len(many), 3), math.inf), np.full((len(many), 3), -math.inf)
    some = np.flatnonzero(many)
    if some.size:
        out[0][some], out[1][some] = np.minimum.reduceat(low, ends[some]), np.maximum.reduceat(high, ends[some])
    return out


def _made(feature: Tuner | SingleHole | Pin, pattern: Pattern | None, row: Row | None, outline: Loop,
          blank: Blank) -> tuple[tuple[Hole, ...], tuple[Vec3, Vec3, float, float] | None, dict[str, object]]:
    """(holes, the button's cylinder, what else there is to say) of a feature."""
    if isinstance(feature, SingleHole):
        return (single_hole(feature, blank),), None, {"held": False, "asked": feature.depth}
    if isinstance(feature, Pin):
        return (pin_hole(feature, blank),), None, {"held": False}
    rest = {"held": feature.held, "tuner": feature, "pattern": pattern}
    try:
        frame = frame_of(feature, pattern, row, outline, blank)
    except GeometryError as error:
        return (), None, {**rest, "trouble": str(error)}
    found = tuner_holes(frame, pattern.bores, blank)
    posts = [drilling for hole in found for drilling in hole.drillings if drilling.role == "post"]
    return found, _button(pattern, frame, blank.thickness), {
        **rest, "frame": frame, "ground": (outline, blank), "plate": _plate(pattern, frame, blank.thickness),
        "post": max(posts, key=attrgetter("diameter"), default=None)}


def _button(pattern: Pattern, frame: Frame, thickness: float) -> tuple[Vec3, Vec3, float, float]:
    """The space that the turning button sweeps: a cylinder about its shaft, as (start, axis, length, radius).

    Its diameter is the button's larger cross measure (mm). Face mount: the
    shaft runs out along u, `stand` behind the back. Side mount: it runs down
    along v, `stand` outside the seat.
    """
    button = pattern.button
    near = max(0.0, button.reach - button.length)
    radius = max(button.width, button.thickness) / 2
    if frame.mount == "face":
        return frame.at(near, 0.0, thickness + button.stand), frame.u, button.reach - near, radius
    return frame.at(0.0, near, -button.stand), frame.v, button.reach - near, radius


def _plate(pattern: Pattern, frame: Frame, thickness: float) -> tuple[Vec3, ...]:
    seat = pattern.seat
    half = seat.across / 2
    level = thickness if frame.mount == "face" else 0.0
    before, behind = seat.before, -seat.behind
    return (frame.at(before, -half, level), frame.at(before, half, level), frame.at(behind, half, level),
            frame.at(behind, -half, level))


def plan(point: Vec3) -> Vec2:
    """A point of space seen on the face."""
    return point[0], point[1]


def apart(one: Item, two: Item, way: np.ndarray, lacking: float) -> Vec2:
    """The plan shift of `one`, `lacking` mm long, along `way` (3,), or away from the middle of the other when that is upright."""
    flat = (float(way[0]), float(way[1]))
    if v.norm(flat) < 1e-6:
        flat = v.sub(middle(one), middle(two))
    return v.scale(v.unit(flat), lacking)


def middle(item: Item) -> Vec2:
    """Where an item sits in plan."""
    return plan(item.frame.origin) if item.frame is not None else plan(item.drillings[0].start)
