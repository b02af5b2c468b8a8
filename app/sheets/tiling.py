"""How a drawing that is larger than the paper is laid on several pages, and the marks that join them again."""

from __future__ import annotations

import math
from string import ascii_uppercase

from msgspec import Struct

from app.formats.errors import FormatError
from app.formats.paper import paper_size
from geometry.drawing import Cross, Drawing, Label, Mark, Stroke
from geometry.drawing.heights import LEAST
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
    """x of the middle of every overlap of columns, mm"""
    seams_y: tuple[float, ...]


def tile(box: Box, paper: str, frame: Box, name: str = "") -> Tiling:
    """The fewest windows that cover the box with 12 mm of overlap, on upright or lying paper.

    `frame` is what each page needs left, below, right and above its window (mm). Upright wins a tie.
    FormatError with the size when it would take more than 60 pages.
    """
    choices = [_tile(box, paper, lying, frame) for lying in (False, True)]
    best = min(choices, key=lambda choice: choice.rows * choice.columns)
    if best.rows * best.columns > MOST_TILES:
        raise FormatError(say("The {name} is {width} x {height} and would take {rows} pages of {paper}: bring "
                              "in what lies far outside the head, or choose a larger paper.",
                              name=name or say("drawing"), width=mm(box[2] - box[0]), height=mm(box[3] - box[1]), rows=best.rows * best.columns,
                              paper=paper))
    return Tiling(best.paper, best.lying, best.rows, best.columns,
                  tuple(_windows(box, best)), best.seams_x, best.seams_y)


class _Grid(Struct, frozen=True):
    paper: str
    lying: bool
    columns: int
    rows: int
    width: float
    height: float
    lefts: tuple[float, ...]
    bottoms: tuple[float, ...]
    seams_x: tuple[float, ...]
    seams_y: tuple[float, ...]


def _tile(box: Box, paper: str, lying: bool, frame: Box) -> _Grid:
    page = paper_size(paper, lying)
    width, height = page[0] - frame[0] - frame[2], page[1] - frame[1] - frame[3]
    lefts, bottoms = _starts(box[0], box[2], width), _starts(box[1], box[3], height)
    return _Grid(paper, lying, len(lefts), len(bottoms), width, height, lefts, bottoms,
                 _seams(lefts, width), _seams(bottoms, height))


def _starts(low: float, high: float, window: float) -> tuple[float, ...]:
    """Where the windows begin: one in the middle when it fits, else from the low end on, so that the
    first page is as full as it can be and the seams keep away from the middle."""
    size = high - low
    if size <= window + 1e-9:
        return (low - (window - size) / 2,)
    count = math.ceil((size - OVERLAP) / (window - OVERLAP) - 1e-9)
    return tuple(low + i * (window - OVERLAP) for i in range(count))


def _seams(starts: tuple[float, ...], window: float) -> tuple[float, ...]:
    return tuple((start + before + window) / 2 for before, start in zip(starts, starts[1:], strict=False))


def _windows(box: Box, grid: _Grid) -> list[Tile]:
    return [Tile(r + 1, c + 1, (x, y, x + grid.width, y + grid.height))
            for r, y in enumerate(grid.bottoms) for c, x in enumerate(grid.lefts)]


def joining_marks(tiling: Tiling) -> Drawing:
    """What is printed on both neighbours of each seam, in drawing coordinates.

    A row of short strokes to cut along, and lozenges with a cross and a letter that must come to lie on each other.
    """
    marks: list[Mark] = []
    letters = _letters()
    low_x, low_y = tiling.tiles[0].window[:2]
    high_x, high_y = tiling.tiles[-1].window[2:]
    for x in tiling.seams_x:
        marks += [Stroke(straight((x, y), (x, y + CUT)), "tile") for y in _steps(low_y, high_y)]
        for y in _along(low_y, high_y, tiling.seams_y):
            marks += _lozenge(x, y, next(letters))
    for y in tiling.seams_y:
        marks += [Stroke(straight((x, y), (x + CUT, y)), "tile") for x in _steps(low_x, high_x)]
        for x in _along(low_x, high_x, tiling.seams_x):
            marks += _lozenge(x, y, next(letters))
    return tuple(marks)


def _steps(low: float, high: float) -> list[float]:
    return [low + i * 4 * CUT for i in range(int((high - low) / (4 * CUT)))]


def _along(low: float, high: float, seams: tuple[float, ...]) -> list[float]:
    """Two places on every stretch between the crossing seams, an eighth in from its ends."""
    ends = [low, *seams, high]
    return [a + (b - a) * part for a, b in zip(ends, ends[1:], strict=False) for part in (0.125, 0.875)]


def _lozenge(x: float, y: float, letter: str) -> list[Mark]:
    path = chain(((x + ARM, y), (x, y + ARM), (x - ARM, y), (x, y - ARM)), closed=True)
    return [Stroke(path, "tile"), Cross((x, y), ARM, "cross"), Label(letter, (x + 0.6, y + 0.6), LEAST, "tile")]


def _letters():
    """A, B, ... Z, A1, B1, ..."""
    round_ = 0
    while True:
        for letter in ascii_uppercase:
            yield letter if round_ == 0 else f"{letter}{round_}"
        round_ += 1
