"""Snapping a place on the face: what lies near, in words, with guides to show it."""

from __future__ import annotations

import math
from collections.abc import Collection, Sequence
from itertools import pairwise

from msgspec import Struct

from app.tools import guides
from app.tools.hit import Target, end_of_slot
from app.tools.options import Options
from app.tools.snap_edges import Spot, marked, met
from app.tools.words import length
from geometry import vectors as v
from geometry.drawing import Drawing
from geometry.edits.moving import plan_point
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Headstock, StraightSlot, loop_path, slot_path
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.strings.square_line import square_line
from geometry.terms import term
from geometry.vectors import Vec2

POINT_REACH = 8.0
"""Pixels within which a point catches."""
LINE_REACH = 5.0
"""Pixels within which a line or a level catches."""
TIDY = 2
"""Decimals of a mm that a pointed place keeps."""


class Snap(Struct, frozen=True):
    """Where a place ended up (mm), what it snapped to in words, and guides that show it."""

    point: Vec2
    words: str = ""
    marks: Drawing = ()


class _Level(Struct, frozen=True):
    value: float
    words: str
    of: Vec2 | None = None


class Snapper:
    """Everything in a layout that a place can snap to, gathered once for a whole drag.

    `ignore` names features, or the outline, that move along or are replaced and so attract nothing. With
    `shape` nodes attract and neighbours' midpoints do not: for drawing and for
    dragging nodes; `skip` are nodes (loop, index) that move along.
    """

    def __init__(self, layout: Headstock, options: Options, ignore: Collection[str] = (), shape: bool = False,
                 skip: Collection[tuple[str, int]] = ()) -> None:
        self._options = options
        self._spots: list[Spot] = [Spot((0.0, 0.0), say("nut line on the centreline"))]
        self._across: list[_Level] = [_Level(0.0, term("centreline"))]
        self._up: list[_Level] = [_Level(0.0, square_line(layout.nut))]
        self._walls = [(say("the outline"), loop_path(layout.outline))] if OUTLINE not in ignore and not (shape and skip) else []
        self._layout = layout
        self._features(layout, ignore, shape)
        if shape:
            self._nodes(layout, ignore, set(skip))

    def point(self, p: Vec2, mm_per_pixel: float, off: bool = False, axis: int | None = None,
              walls: bool = False, own: Sequence[tuple[str, Vec2]] = (), start: Vec2 | None = None) -> Snap:
        """The place that p snaps to.

        Points come first, then (with `walls`) the outline and slot walls, where
        a line from `start` meets them square or touches them above all, then
        levels of x and of y each by itself, then the grid. `axis` 0 or 1 leaves
        the other coordinate as it is, unrounded. `own` are named points of what is being drawn,
        to be level with. `off` switches everything off; the place is then only
        rounded to 0.01 mm.
        """
        if off or not self._options.snapping:
            return Snap(_tidied(p, axis))
        if axis is None:
            spot = self._nearest_spot(p, POINT_REACH * mm_per_pixel)
            if spot is not None:
                lines = tuple(mark for other in spot.of for mark in guides.line(other, spot.at))
                return Snap(spot.at, spot.words, (*lines, guides.cross(spot.at, mm_per_pixel)))
            if walls and start is not None:
                found = (met(start, p, path, name, POINT_REACH * mm_per_pixel) for name, path in self._walls)
                spot = min((one for one in found if one is not None), key=lambda one: v.distance(one.at, p), default=None)
                if spot is not None:
                    return Snap(spot.at, spot.words, (*guides.line(start, spot.at), guides.cross(spot.at, mm_per_pixel)))
            if walls:
                wall = self._on_wall(p, LINE_REACH * mm_per_pixel)
                if wall is not None:
                    return Snap(wall.at, wall.words, (guides.cross(wall.at, mm_per_pixel),))
        return self._levels(p, mm_per_pixel, axis, own)

    def _levels(self, p: Vec2, mm_per_pixel: float, axis: int | None, own: Sequence[tuple[str, Vec2]]) -> Snap:
        reach = LINE_REACH * mm_per_pixel
        out, words, caught = list(_tidied(p, axis)), [], []
        grid = False
        for k, levels in ((0, self._across), (1, self._up)):
            if axis is not None and k != axis:
                continue
            drawn = [_Level(q[k], level_words(name) if k else in_line_words(name), q) for name, q in own]
            near = min((level for level in (*levels, *drawn) if abs(level.value - p[k]) <= reach),
                       key=lambda level: abs(level.value - p[k]), default=None)
            if near is not None:
                out[k] = near.value
                words.append(near.words)
                caught.append(near)
            elif self._options.grid:
                out[k] = round(round(p[k] / self._options.grid) * self._options.grid, 6)
                grid = True
        at = (out[0], out[1])
        if grid and not words:
            words.append(grid_words(self._options))
        marks = tuple(mark for level in caught if level.of is not None for mark in guides.line(level.of, at))
        return Snap(at, (say("{one} and {two}", one=words[0], two=words[1]) if len(words) > 1 else "".join(words)), marks)

    def _nearest_spot(self, p: Vec2, reach: float) -> Spot | None:
        x, y = p
        near = [(v.distance(spot.at, p), i) for i, spot in enumerate(self._spots)
                if abs(spot.at[0] - x) <= reach and abs(spot.at[1] - y) <= reach]
        distance, i = min(near, default=(math.inf, 0))
        return self._spots[i] if distance <= reach else None

    def _on_wall(self, p: Vec2, reach: float) -> Spot | None:
        near = [(path.nearest(p), words) for words, path in self._walls]
        found = min(near, key=lambda pair: pair[0].distance, default=None)
        return None if found is None or found[0].distance > reach else Spot(found[0].point, say("on {edge}", edge=found[1]))

    # ---- gathering ------------------------------------------------------
    def _features(self, layout: Headstock, ignore: Collection[str], shape: bool) -> None:
        face = [(tuner.id, p) for tuner in layout.tuners if layout.pattern(tuner.pattern).mount == "face"
                and (p := standing(layout, tuner.id)) is not None]
        others = [(one.id, one.at) for one in (*layout.pins, *layout.holes)]
        for id, p in (*face, *others):
            if id in ignore:
                continue
            self._spots.append(Spot(p, say("axis of {id}", id=id)))
            self._level_with(id, p)
            if abs(p[0]) > 1e-6 and not shape:
                self._spots.append(Spot(v.mirrored(p), say("mirrors {what}", what=id), (p,)))
        if not shape:
            self._neighbours([one for one in face if one[0] not in ignore])
        for slot in layout.slots:
            if slot.id in ignore:
                continue
            self._walls.append((slot.id, slot_path(slot)))
            if isinstance(slot.shape, StraightSlot):
                self._spots.append(Spot(v.middle(slot.shape.nut_end, slot.shape.tip_end), say("middle of {slot}", slot=slot.id)))
                for end, p in (("nut", slot.shape.nut_end), ("tip", slot.shape.tip_end)):
                    name = end_of_slot(end, slot.id)
                    self._spots.append(Spot(p, name))
                    self._level_with(name, p)
                    if abs(p[0]) > 1e-6:
                        self._spots.append(Spot(v.mirrored(p), say("mirrors the {end} of {slot}",
                                                                   end=term(f"{end} end"), slot=slot.id), (p,)))

    def _neighbours(self, face: list[tuple[str, Vec2]]) -> None:
        """Half way between two neighbours of one side, and one step of theirs farther on."""
        for sign in (1, -1):
            row = sorted((one for one in face if one[1][0] * sign > 0), key=lambda one: one[1][1])
            for (a, p), (b, q) in pairwise(row):
                step = v.sub(q, p)
                self._spots.append(Spot(v.middle(p, q), say("midway between {a} and {b}", a=a, b=b), (p, q)))
                self._spots.append(Spot(v.add(q, step), say("same step as from {a} to {b}", a=a, b=b), (q,)))
                self._spots.append(Spot(v.sub(p, step), say("same step as from {a} to {b}", a=b, b=a), (p,)))

    def _nodes(self, layout: Headstock, ignore: Collection[str], skip: set[tuple[str, int]]) -> None:
        for end, x in (("bass", -layout.nut.width / 2), ("treble", layout.nut.width / 2)):
            self._spots.append(Spot(layout.nut.at(x), Target("nut end", "nut", end, layout.nut.at(x)).name))
        loops = [(OUTLINE, layout.outline), *((s.id, s.shape.loop) for s in layout.slots if isinstance(s.shape, DrawnSlot))]
        for ref, loop in loops:
            if ref in ignore:
                continue
            self._spots += marked(loop, ref, frozenset(i for other, i in skip if other == ref))
            for i, node in enumerate(loop.nodes):
                if (ref, i) in skip:
                    continue
                name = (say("node {number} of the outline", number=i + 1) if ref == OUTLINE else
                        say("node {number} of {slot}", number=i + 1, slot=ref))
                self._spots.append(Spot(node.at, name))
                self._level_with(name, node.at)
                if abs(node.at[0]) > 1e-6:
                    self._spots.append(Spot(v.mirrored(node.at), say("mirrors {what}", what=name), (node.at,)))

    def _level_with(self, name: str, p: Vec2) -> None:
        self._across.append(_Level(p[0], in_line_words(name), p))
        self._up.append(_Level(p[1], level_words(name), p))


def grid_words(options: Options) -> str:
    """What is said of a place that only the grid has caught."""
    return say("grid {length}", length=length(options.grid, options.unit))


def level_words(name: str) -> str:
    """What is said of a place as far along as another."""
    return say("level with {name}", name=name)


def in_line_words(name: str) -> str:
    """What is said of a place as far across as another."""
    return say("in line with {name}", name=name)


def tidy(p: Vec2) -> Vec2:
    """A pointed place rounded to 0.01 mm."""
    return (round(p[0], TIDY), round(p[1], TIDY))


def _tidied(p: Vec2, axis: int | None) -> Vec2:
    """A pointed place rounded to 0.01 mm along the axes that are free."""
    tidied = tidy(p)
    return (tidied[0] if axis in (None, 0) else p[0], tidied[1] if axis in (None, 1) else p[1])


def constrained(start: Vec2, to: Vec2, shift: bool) -> tuple[Vec2, int | None]:
    """With Shift: `to` kept level or in line with `start`, whichever is nearer, and the axis (0 x, 1 y) left free."""
    if not shift:
        return to, None
    d = v.sub(to, start)
    return ((to[0], start[1]), 0) if abs(d[0]) >= abs(d[1]) else ((start[0], to[1]), 1)


def standing(layout: Headstock, id: str) -> Vec2 | None:
    """Where a face tuner stands; None where the outline has no edge for it, of which whoever asks a layout that is shown is told."""
    try:
        return plan_point(layout, id)
    except GeometryError:
        return None
