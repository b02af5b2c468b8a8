"""How a drawing that is larger than the paper is laid on several pages, and the marks that join them again."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from string import ascii_uppercase

import numpy as np
from msgspec import Struct

from app.formats.errors import FormatError
from app.formats.mark_shapes import mark_box
from app.formats.paper import paper_size
from geometry.drawing import Area, Cross, Drawing, Label, Mark, Stroke
from geometry.drawing.heights import LEAST
from geometry.drawing.room import Room
from geometry.drawing.shapes import chain, straight
from geometry.lengths import mm
from geometry.saying import say
from geometry.vectors import Box

OVERLAP = 12.0
"""Overlap of neighbouring pages, mm."""
MOST_TILES = 60
"""More pages than this for one drawing is a mistake in the blank or the paper, not a job for tape."""
CUT = 1.0
"""Length of the short strokes of a cut line, mm; three times as much is left white between them."""
ARM = 5.0
"""Half size of a joining mark, mm; it lies whole inside every overlap."""
LONG = 60.0
"""A line that reaches farther across a seam (mm) is parted wherever that runs: an outline, a slot, a fold."""
STRETCH = (0.125, 0.09, 0.16, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45)
"""Where on a stretch between crossing seams a joining mark may stand, as a part of it from either end; the first where all are free."""

Span = tuple[float, float]
"""From where to where something reaches along x or y, mm."""


class Tile(Struct, frozen=True):
    """One page's window on the drawing (mm in drawing coordinates). Row 1 is the nut end, column 1 the left."""

    row: int
    column: int
    window: Box


class Tiling(Struct, frozen=True):
    """All windows of one drawing on one paper, row by row from the lower left."""

    paper: str
    lying: bool
    rows: int
    columns: int
    tiles: tuple[Tile, ...]
    seams_x: tuple[float, ...]
    """x of the line along which neighbouring columns are cut and joined, mm"""
    seams_y: tuple[float, ...]


def tile(box: Box, paper: str, frame: Box, name: str = "", drawing: Drawing = ()) -> Tiling:
    """The fewest windows that cover the box with 12 mm of overlap, on upright or lying paper.

    `frame` is what each page needs left, below, right and above its window (mm). Upright wins a tie. Seams part no words, no holes and
    none of the lines that run along them of the `drawing` where the windows leave a choice.
    FormatError with the size when it would take more than 60 pages.
    """
    best = min((_grid(box, paper, lying, frame) for lying in (False, True)), key=lambda grid: grid.count)
    if best.count > MOST_TILES:
        raise FormatError(say("The {name} is {width} x {height} and would take {rows} pages of {paper}: bring "
                              "in what lies far outside the head, or choose a larger paper.",
                              name=name or say("drawing"), width=mm(box[2] - box[0]), height=mm(box[3] - box[1]), rows=best.count,
                              paper=paper))
    across, along = _to_keep_whole(drawing if best.count > 1 else ())
    lefts = _starts(box[0], box[2], best.width, best.columns, across)
    bottoms = _starts(box[1], box[3], best.height, best.rows, along)
    return Tiling(paper, best.lying, best.rows, best.columns, _windows(best, lefts, bottoms), _seams(lefts), _seams(bottoms))


class _Grid(Struct, frozen=True):
    """How many windows of a size (mm) it takes on a paper that lies or stands."""

    lying: bool
    width: float
    height: float
    columns: int
    rows: int

    @property
    def count(self) -> int:
        return self.rows * self.columns


def _grid(box: Box, paper: str, lying: bool, frame: Box) -> _Grid:
    page = paper_size(paper, lying)
    width, height = page[0] - frame[0] - frame[2], page[1] - frame[1] - frame[3]
    return _Grid(lying, width, height, _count(box[2] - box[0], width), _count(box[3] - box[1], height))


def _count(size: float, window: float) -> int:
    return 1 if size <= window + 1e-9 else math.ceil((size - OVERLAP) / (window - OVERLAP) - 1e-9)


def _to_keep_whole(drawing: Drawing) -> list[list[Span]]:
    """What no seam should part: along x and along y."""
    boxes = [(mark_box(mark), isinstance(mark, Stroke | Area)) for mark in drawing]
    return [[(box[axis], box[axis + 2]) for box, line in boxes if not line or box[axis + 2] - box[axis] < LONG] for axis in (0, 1)]


def _starts(low: float, high: float, window: float, count: int, whole: list[Span]) -> tuple[float, ...]:
    """Where so many windows begin: one in the middle, more from the low end on, each as full as it can be without a seam through one
    of the spans that should stay `whole`."""
    if count == 1:
        return ((low + high - window) / 2,)
    step = window - OVERLAP
    starts = [low]
    for left in range(count - 1, 0, -1):
        starts.append(_start(max(high - OVERLAP - left * step, starts[-1] + OVERLAP), starts[-1] + step, whole))
    return tuple(starts)


def _start(least: float, most: float, whole: list[Span]) -> float:
    """Of the starts of a window between the two the highest whose cut parts the fewest spans, and whose overlap holds the fewest."""
    places = most - np.arange(int(most - least) + 1.0)
    low, high = np.array(whole or [(math.inf, -math.inf)]).T
    seams = places[:, None] + OVERLAP / 2
    parted, near = (((low < seams + reach) & (high > seams - reach)).sum(axis=1) for reach in (CUT, OVERLAP / 2))
    return float(places[np.lexsort((near, parted))[0]])


def _seams(starts: tuple[float, ...]) -> tuple[float, ...]:
    return tuple(start + OVERLAP / 2 for start in starts[1:])


def _windows(grid: _Grid, lefts: tuple[float, ...], bottoms: tuple[float, ...]) -> tuple[Tile, ...]:
    """Each as large as its page, or as far as it overlaps the next."""
    tops = [*(y + OVERLAP for y in bottoms[1:]), bottoms[-1] + grid.height]
    rights = [*(x + OVERLAP for x in lefts[1:]), lefts[-1] + grid.width]
    return tuple(Tile(r + 1, c + 1, (x, y, right, top))
                 for r, (y, top) in enumerate(zip(bottoms, tops, strict=True)) for c, (x, right) in enumerate(zip(lefts, rights, strict=True)))


def joining_marks(tiling: Tiling, drawing: Drawing = ()) -> Drawing:
    """What is printed on both neighbours of each seam, in drawing coordinates.

    A row of short strokes to cut along, and lozenges with a cross and a letter that must come to lie on each other; they stand
    where they cover no words and holes of the `drawing`, as far as there is such a place.
    """
    if len(tiling.tiles) == 1:
        return ()
    marks: list[Mark] = []
    letters = _letters()
    room = Room(drawing)
    low_x, low_y = tiling.tiles[0].window[:2]
    high_x, high_y = tiling.tiles[-1].window[2:]
    for x in tiling.seams_x:
        marks += [Stroke(straight((x, y), (x, y + CUT)), "tile") for y in _steps(low_y, high_y)]
        marks += _lozenges([[(x, y) for y in places] for places in _along(low_y, high_y, tiling.seams_y)], room, letters)
    for y in tiling.seams_y:
        marks += [Stroke(straight((x, y), (x + CUT, y)), "tile") for x in _steps(low_x, high_x)]
        marks += _lozenges([[(x, y) for x in places] for places in _along(low_x, high_x, tiling.seams_x)], room, letters)
    return tuple(marks)


def _steps(low: float, high: float) -> list[float]:
    return [low + i * 4 * CUT for i in range(int((high - low) / (4 * CUT)))]


def _along(low: float, high: float, seams: tuple[float, ...]) -> list[list[float]]:
    """For two marks on every stretch between the crossing seams where each may stand, the best place first."""
    ends = [low, *seams, high]
    return [[a + (b - a) * (part if first else 1 - part) for part in STRETCH]
            for a, b in zip(ends, ends[1:], strict=False) for first in (True, False)]


def _lozenges(places: Iterable[list[tuple[float, float]]], room: Room, letters: Iterator[str]) -> list[Mark]:
    marks: list[Mark] = []
    for choices in places:
        letter = next(letters)
        lozenges = [_lozenge(x, y, letter) for x, y in choices]
        marks += room.put(lozenges) or lozenges[0]
    return marks


def _lozenge(x: float, y: float, letter: str) -> list[Mark]:
    path = chain(((x + ARM, y), (x, y + ARM), (x - ARM, y), (x, y - ARM)), closed=True)
    return [Stroke(path, "tile"), Cross((x, y), ARM, "cross"), Label(letter, (x + 0.6, y + 0.6), LEAST, "tile")]


def _letters() -> Iterator[str]:
    """A, B, ... Z, A1, B1, ..."""
    round_ = 0
    while True:
        for letter in ascii_uppercase:
            yield letter if round_ == 0 else f"{letter}{round_}"
        round_ += 1
