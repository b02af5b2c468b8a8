"""Words that find room between the lines of a drawing."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry import LineString, Point, Polygon

from geometry.curves import Path
from geometry.drawing.marks import Area, Cross, Disc, Label, Mark, Stroke
from geometry.drawing.slot_marks import SLOT_STYLES
from geometry.vectors import Box, Vec2

CLEAR, TOUCHING, COARSE = 0.6, 0.15, 0.05
"""mm: from words to what is near, what is as good as on it, and how far a flattened line may stray for that."""
BELOW = "side bore"
"""Style of what lies below the face: words may cross it where there is no better place, as they may a line."""
LETTER_WIDTH = 0.78
"""Width of a letter in capital heights."""

HANGING, HANGS = 0.3, frozenset("gjpqy")
"""How far these letters hang below the line that the others stand on, in capital heights."""


def words_width(words: str, letter: float) -> float:
    """About how wide words are in letters of that capital height, mm."""
    return LETTER_WIDTH * letter * len(words)


class Room:
    """What of a paper is taken: its lines, what is cut through, and the words set so far."""

    def __init__(self, marks: Iterable[Mark]) -> None:
        self._lines, self._whole = _Taken(), _Taken()
        for mark in marks:
            self._take(mark)

    def put(self, choices: Sequence[Sequence[Mark]]) -> list[Mark]:
        """The first of the choices that stays clear of all that is taken, else of those that cross the fewest lines the first that
        comes near the least; it is taken from then on. Nothing where each would lie on other words, a hole or a mark."""
        best: tuple[tuple[int, int], Sequence[Mark]] = ((10 ** 6, 0), ())
        for choice in choices:
            crossed = near = 0
            for mark in choice:
                covered = _Covered(mark)
                to_whole, to_lines = self._whole.near(covered), self._lines.near(covered)
                crossed += int((to_lines < TOUCHING).sum())
                near += len(to_lines) + len(to_whole)
                if (to_whole < TOUCHING).any() or (crossed, near) >= best[0]:
                    break
            else:
                best = (crossed, near), choice
                if not near:
                    break
        for mark in best[1]:
            self._take(mark)
        return list(best[1])

    def _take(self, mark: Mark) -> None:
        crossed = mark.style == BELOW if isinstance(mark, Area) else isinstance(mark, Stroke) and not _is_slot(mark)
        (self._lines if crossed else self._whole).add(_Covered(mark))


class _Covered:
    """What a mark covers: the box about it, and its shapes once they are asked for."""

    def __init__(self, mark: Mark) -> None:
        self._mark = mark
        self.box = _box(mark)

    @cached_property
    def shapes(self) -> list[shapely.Geometry]:
        return _shapes(self._mark)


class _Taken:
    """What is covered, found by the boxes: of hundreds a few are near, and most never are."""

    def __init__(self) -> None:
        self._covered: list[_Covered] = []
        self._boxes = np.empty((64, 4))

    def add(self, covered: _Covered) -> None:
        if len(self._covered) == len(self._boxes):
            self._boxes = np.concatenate((self._boxes, np.empty_like(self._boxes)))
        self._boxes[len(self._covered)] = covered.box
        self._covered.append(covered)

    def near(self, covered: _Covered) -> np.ndarray:
        """Distances (mm) of the shapes that are nearer than CLEAR."""
        x0, y0, x1, y1 = covered.box
        b = self._boxes[:len(self._covered)]
        met = np.flatnonzero((b[:, 0] < x1 + CLEAR) & (b[:, 2] > x0 - CLEAR) & (b[:, 1] < y1 + CLEAR) & (b[:, 3] > y0 - CLEAR))
        far = np.array([one.distance(shape) for i in met for one in self._covered[i].shapes for shape in covered.shapes])
        return far[far < CLEAR]


def beside(lines: Sequence[str], at: Vec2, reach: float, letter: float, pitch: float, style: str, owner: str) -> list[list[Label]]:
    """Where lines of words may stand that name a hole at `at` which reaches so far (mm): under it to one side of its middle, right or left
    of it, over it, at last up or down along it. `pitch` is from one line to the next."""
    (x, y), n = at, len(lines)
    stack = y - letter / 2 + pitch * (n - 1) / 2
    under, over = y - reach - letter - 0.2, y + reach + 0.4 + pitch * (n - 1)
    found = [[Label(text, (x + turn * (away if level == stack else 0.8), level - pitch * i), letter, style, owner, anchor=anchor)
              for i, text in enumerate(lines)]
             for level, away in ((under, 0.8), (stack, reach + 0.8), (over, 0.8)) for turn, anchor in ((1, "left"), (-1, "right"))]
    for first in (x + 0.8 + letter, x - 0.8 - pitch * (n - 1)):  # the letters' tops point to -x
        for level, anchor in ((y - reach - 0.2, "right"), (y + reach + 0.2, "left")):
            found.append([Label(text, (first + pitch * i, level), letter, style, owner, math.pi / 2, anchor) for i, text in enumerate(lines)])
    return found


def _box(mark: Mark) -> Box:
    """(min x, min y, max x, max y) in mm about what a mark covers."""
    match mark:
        case Stroke(path=path) | Area(outer=path):
            return path.box
        case Disc(centre=(x, y), radius=reach) | Cross(centre=(x, y), arm=reach):
            return x - reach, y - reach, x + reach, y + reach
        case Label():
            return _reach(mark)
    raise TypeError(f"not a mark: {mark!r}")


def _shapes(mark: Mark) -> list[shapely.Geometry]:
    """What a mark covers: its lines, the words themselves, and the whole of what is bored or cut."""
    match mark:
        case Stroke(path=path):
            return [_whole(path) if _is_slot(mark) else LineString(path.flatten(COARSE))]
        case Area(outer=outer):
            return [_whole(outer)]
        case Disc(centre=centre, radius=radius):
            return [Point(centre).buffer(radius)]
        case Cross(centre=(x, y), arm=arm):
            return [LineString([(x - arm, y), (x + arm, y)]), LineString([(x, y - arm), (x, y + arm)])]
        case Label():
            return [shapely.box(*_reach(mark))]
    raise TypeError(f"not a mark: {mark!r}")


def _is_slot(mark: Stroke) -> bool:
    return mark.path.closed and mark.style in SLOT_STYLES


def _whole(path: Path) -> Polygon:
    return Polygon(path.flatten(COARSE))


def _reach(label: Label) -> Box:
    """(min x, min y, max x, max y) in mm of words, level or turned a quarter."""
    wide = words_width(label.text, label.height)
    start = {"left": 0.0, "middle": -wide / 2, "right": -wide}[label.anchor]
    low = HANGING * label.height if HANGS.intersection(label.text) else 0.0
    x, y = label.at
    if label.angle:
        return x - label.height, y + start, x + low, y + start + wide
    return x + start, y - low, x + start + wide, y + label.height
