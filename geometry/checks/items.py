"""Everything with drillings, put in its place: tuners, single holes, locating pins."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

import numpy as np

from geometry import vectors as v
from geometry.errors import GeometryError
from geometry.layout.blank import Blank
from geometry.layout.hardware import Pattern
from geometry.layout.headstock import Headstock
from geometry.layout.outline import Loop
from geometry.layout.slots import Pin, SingleHole
from geometry.layout.tuners import Row, Tuner
from geometry.solids.cylinders import Cylinders
from geometry.solids.drilling import Drilling, Hole, holes
from geometry.solids.frames import Frame, frames
from geometry.vectors import Vec2, Vec3


_RANKS = {"screw": 1, "pin": 1, "locating": 2}


@dataclass(frozen=True, slots=True, eq=False)
class Item:
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
    plate: tuple[Vec3, ...] = ()
    """corners of the plate where it lands, in order round it"""
    ground: tuple[Loop, Blank] | None = None
    """a tuner's outline and blank"""

    @property
    def mount(self) -> str | None:
        """face or side for a tuner, else None."""
        return None if self.frame is None else self.frame.mount

    def post(self) -> Drilling | None:
        """The widest post bore of a tuner, or None."""
        return max((d for d in self.drillings if d.role == "post"), key=lambda d: d.diameter, default=None)


def tuner_item(tuner: Tuner, pattern: Pattern, row: Row | None, outline: Loop, blank: Blank) -> Item:
    """A tuner in place; where the outline has no place for it, an item without drillings that says why."""
    alone = Headstock(name="", blank=blank, outline=outline, patterns=(pattern,),
                      rows=() if row is None else (row,), tuners=(tuner,))
    try:
        placed = frames(alone)
        frame, made = placed[tuner.id], holes(alone, placed)
    except GeometryError as error:
        return _item(tuner.id, "tuner", (), tuner.held, trouble=str(error), tuner=tuner, pattern=pattern)
    return _item(tuner.id, "tuner", made, tuner.held, tuner=tuner, pattern=pattern, frame=frame,
                 ground=(outline, blank), button=_button(pattern, frame, blank.thickness),
                 plate=_plate(pattern, frame, blank.thickness))


def hole_item(single: SingleHole, outline: Loop, blank: Blank) -> Item:
    """A single hole in place."""
    return _item(single.id, "hole", holes(Headstock(name="", blank=blank, outline=outline, holes=(single,))), False)


def pin_item(pin: Pin, outline: Loop, blank: Blank) -> Item:
    """A locating pin in place."""
    return _item(pin.id, "pin", holes(Headstock(name="", blank=blank, outline=outline, pins=(pin,))), False)


def _item(id: str, what: str, made: tuple[Hole, ...], held: bool, **rest) -> Item:
    drillings = tuple(drilling for hole in made for drilling in hole.drillings)
    solids = Cylinders.of(drillings)
    low, high = _box(drillings)
    hole_of = tuple(i for i, hole in enumerate(made) for _ in hole.drillings)
    upright = np.array([i for i, d in enumerate(drillings) if d.upright], dtype=int)
    ranks = tuple(_RANKS.get(d.role, 0) for d in drillings)
    return Item(id, what, made, drillings, hole_of, solids, low, high, upright, ranks, held, **rest)


def _box(drillings: tuple[Drilling, ...]) -> tuple[np.ndarray, np.ndarray]:
    """Corners of the upright box about some drillings; for none a box that holds nothing."""
    low, high = [math.inf] * 3, [-math.inf] * 3
    for drilling in drillings:
        for axis, (a, b, d) in enumerate(zip(drilling.start, drilling.end, drilling.direction, strict=True)):
            reach = drilling.radius * math.sqrt(max(0.0, 1 - d * d))
            low[axis], high[axis] = min(low[axis], min(a, b) - reach), max(high[axis], max(a, b) + reach)
    return np.array(low), np.array(high)


def _button(pattern: Pattern, frame: Frame, thickness: float) -> Cylinders:
    """The space that the turning button sweeps: a cylinder about its shaft.

    Its diameter is the button's larger cross measure (mm). Face mount: the
    shaft runs out along u, `stand` behind the back. Side mount: it runs down
    along v, `stand` outside the seat.
    """
    button = pattern.button
    near = max(0.0, button.reach - button.length)
    radius = max(button.width, button.thickness) / 2
    if frame.mount == "face":
        return Cylinders.made([(frame.at(near, 0.0, thickness + button.stand), frame.u, button.reach - near, radius)])
    return Cylinders.made([(frame.at(0.0, near, -button.stand), frame.v, button.reach - near, radius)])


def _plate(pattern: Pattern, frame: Frame, thickness: float) -> tuple[Vec3, ...]:
    seat = pattern.seat
    half = seat.across / 2
    level = thickness if frame.mount == "face" else 0.0
    return tuple(frame.at(u, v, level) for u, v in (
        (seat.before, -half), (seat.before, half), (-seat.behind, half), (-seat.behind, -half)))


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
