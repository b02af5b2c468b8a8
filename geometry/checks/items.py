"""Everything with drillings, put in its place: tuners, single holes, locating pins."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate, chain
from typing import Literal

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks.drills import Drills
from geometry.checks.snags import Counts, count
from geometry.errors import GeometryError
from geometry.layout.blank import Blank
from geometry.layout.hardware import Pattern
from geometry.layout.outline import Loop
from geometry.layout.slots import Pin, SingleHole
from geometry.layout.tuners import Row, Tuner
from geometry.solids.cylinders import Cylinders
from geometry.solids.drilling import Drilling, Hole, pin_hole, single_hole, tuner_holes, wider_by
from geometry.solids.frames import Frame, frame_of
from geometry.solids.nearby import NOTHING, Box, Rows, rows_of
from geometry.strings.past_posts import Rod
from geometry.vectors import Vec2, Vec3

RANKS = {"screw": 1, "pin": 1, "locating": 2}
"""Of bores and drillings by their role, 0 for all others; a pilot has 1 whatever its role. See Item.ranks."""
_WHAT = {Tuner: "tuner", SingleHole: "hole", Pin: "pin"}


class Item(Struct, frozen=True, eq=False):
    """One feature with drillings, in the frame of the head (mm)."""

    id: str
    what: Literal["tuner", "hole", "pin"]
    holes: tuple[Hole, ...]
    """as asked for"""
    drillings: tuple[Drilling, ...]
    """as wide as the rack's drills make them"""
    hole_of: tuple[int, ...]
    """index of the hole of each drilling"""
    solids: Cylinders
    box: Box
    """about all drillings"""
    boxes: Rows
    """about each, its drill's point too"""
    ahead: tuple[float, ...]
    """how far the drill's point of each runs ahead of the full diameter into the wood, mm; 0 where it comes through, or was drilled before"""
    upright: tuple[int, ...]
    """indices of the drillings square to the face"""
    ranks: tuple[int, ...]
    """of each drilling: 0 a bore, 1 a screw or pin hole, 2 a locating pin; the higher of two ranks sets their margin"""
    held: bool
    counts: Counts
    """what has to be drilled of it"""
    mount: Literal["face", "side"] | None
    """of a tuner"""
    asked: float | None = None
    """how deep a single hole is asked to be, None for through"""
    trouble: str | None = None
    tuner: Tuner | None = None
    pattern: Pattern | None = None
    frame: Frame | None = None
    button: Rod | None = None
    """the space that a tuner's button sweeps"""
    button_box: Box = NOTHING
    """about it"""
    plate: tuple[Vec3, ...] = ()
    """corners of the plate where it lands, in order round it"""
    ground: tuple[Loop, Blank] | None = None
    """a tuner's outline and blank"""
    post: Drilling | None = None
    """the widest post bore of a tuner"""

Seed = tuple[Tuner | SingleHole | Pin, Pattern | None, Row | None]
"""A feature with its pattern and its row, where it has them."""


def items_of(seeds: Sequence[Seed], outline: Loop, blank: Blank, known: Kinds) -> list[Item]:
    """Features in their place in a head, drilled with a rack's drills; where the outline has no place for a tuner, an item without drillings that says why."""
    placed = [_placed(*seed, outline, blank) for seed in seeds]
    asked = [tuple([drilling for hole in found for drilling in hole.drillings]) for _, found, _ in placed]
    kinds = list(map(known.of, seeds, placed, asked))
    drillings = [_widened(own, kind.wider) for own, kind in zip(asked, kinds, strict=True)]
    buttons = [_button(seed[1], frame, blank.thickness) for seed, (frame, _, _) in zip(seeds, placed, strict=True) if frame is not None]
    # What is told in arrays is told for all at once and handed out in slices: first all drillings, then all buttons.
    solids = Cylinders.made([(d.start, d.direction, d.depth, d.radius) for own in drillings for d in own] + buttons)
    low, high = solids.boxes()
    ahead = [*chain.from_iterable([kind.ahead for kind in kinds]), *([0.0] * len(buttons))]
    tips = solids.start + solids.axis * (solids.length + np.array(ahead))[:, None]
    low, high = np.minimum(low, tips), np.maximum(high, tips)
    boxes = rows_of(low, high)
    items, at, button_at, many = [], 0, 0, len(solids) - len(buttons)
    for seed, own, kind, (frame, found, trouble), box in zip(
            seeds, drillings, kinds, placed, _about(low[:many], high[:many], [len(own) for own in drillings]), strict=True):
        here, (feature, pattern, _), rest = slice(at, at + len(own)), seed, ()
        at = here.stop
        if pattern is not None:
            rest = trouble, feature, pattern
        if frame is not None:
            rest = (*rest, frame, buttons[button_at], boxes[many + button_at], _plate(pattern, frame, blank.thickness),
                    (outline, blank), None if kind.post is None else own[kind.post])
            button_at += 1
        items.append(Item(
            feature.id, _WHAT[type(feature)], found, own, kind.hole_of, solids.pick(here), box, boxes[here], kind.ahead, kind.upright, kind.ranks,
            pattern is not None and feature.held, kind.counts, None if frame is None else frame.mount,
            feature.depth if isinstance(feature, SingleHole) else None, *rest))
    return items


class _Kind(Struct, frozen=True):
    """What the place of a feature has no part in; see Item."""

    hole_of: tuple[int, ...]
    ranks: tuple[int, ...]
    counts: Counts
    post: int | None
    """which drilling is the widest post bore"""
    ahead: tuple[float, ...]
    upright: tuple[int, ...]
    wider: tuple[float, ...]
    """of each drilling, see Drilling; empty where none is"""


def _widened(drillings: tuple[Drilling, ...], wider: tuple[float, ...]) -> tuple[Drilling, ...]:
    return tuple(map(lambda one, by: replace(one, wider=by), drillings, wider)) if wider else drillings


class Kinds:
    """The kinds of the features of one blank, drilled with a rack's drills."""

    def __init__(self, blank: Blank, drills: Drills) -> None:
        """A memo tells kinds of another blank by it: how deep is through is said there."""
        self._drills = drills
        self._found: dict[str, tuple[Pattern, _Kind]] = {}

    def of(self, seed: Seed, placed: tuple[Frame | None, tuple[Hole, ...], str | None], drillings: tuple[Drilling, ...]) -> _Kind:
        """The kind of a feature: tuners of one pattern that have a place have the same holes, wherever they are."""
        (_, pattern, _), (frame, holes, _) = seed, placed
        if frame is None:
            return _kind(holes, drillings, self._drills)
        known = self._found.get(pattern.id)
        if known is None or known[0] is not pattern:
            known = self._found[pattern.id] = pattern, _kind(holes, drillings, self._drills)
        return known[1]


def _kind(holes: tuple[Hole, ...], drillings: tuple[Drilling, ...], drills: Drills) -> _Kind:
    wider = tuple([wider_by(drills.find(d), d) for d in drillings])
    posts = [i for i, drilling in enumerate(drillings) if drilling.role == "post"]
    return _Kind(tuple([i for i, hole in enumerate(holes) for _ in hole.drillings]),
                 tuple([1 if drilling.pilot else RANKS.get(drilling.role, 0) for drilling in drillings]), count(holes),
                 max(posts, key=lambda i: drillings[i].diameter, default=None),
                 tuple([0.0 if d.through or d.there else drills.point(d) for d in drillings]),
                 tuple([i for i, drilling in enumerate(drillings) if drilling.upright]), wider if any(wider) else ())


def _about(low: np.ndarray, high: np.ndarray, many: Sequence[int]) -> Iterator[Box]:
    """The box about each group of boxes, of which the corners (n, 3) follow each other; one that holds nothing about none."""
    begins = [0, *accumulate(many)][:-1]
    some = [begin for begin, count in zip(begins, many, strict=True) if count]
    found = iter(rows_of(np.minimum.reduceat(low, some), np.maximum.reduceat(high, some)) if some else ())
    return (next(found) if count else NOTHING for count in many)


def _placed(feature: Tuner | SingleHole | Pin, pattern: Pattern | None, row: Row | None, outline: Loop,
            blank: Blank) -> tuple[Frame | None, tuple[Hole, ...], str | None]:
    """(a tuner's frame, the holes, why it has no place) of a feature."""
    if isinstance(feature, SingleHole):
        return None, (single_hole(feature, blank),), None
    if isinstance(feature, Pin):
        return None, (pin_hole(feature, blank),), None
    try:
        frame = frame_of(feature, pattern, row, outline, blank)
    except GeometryError as error:
        return None, (), str(error)
    return frame, tuner_holes(frame, pattern.bores, blank), None


def _button(pattern: Pattern, frame: Frame, thickness: float) -> Rod:
    """The space that the turning button sweeps: a cylinder about its shaft.

    Its diameter is the button's larger cross measure (mm). Face mount: the
    shaft runs out along u, `stand` behind the back; of a straight one it is the
    post. Side mount: it runs down along v, `stand` outside the seat.
    """
    button = pattern.button
    if frame.mount == "face" and button.straight:
        return (frame.at(0.0, 0.0, thickness + max(0.0, button.stand - button.thickness / 2)), frame.w, button.thickness,
                max(button.reach, button.length - button.reach, button.width / 2))
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
