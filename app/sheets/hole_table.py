"""Every drilling as a row: the same numbers in the CSV and on paper."""

from __future__ import annotations

import math

from msgspec import Struct

from app.formats.csv_out import Cell
from app.sheets.lengths import deep, in_column, length, tenths
from geometry.layout import Headstock
from geometry.saying import say
from geometry.solids import Drilling, frames, once_plugged
from geometry.solids.side import tilt_of
from geometry.terms import term
from geometry.tilt_words import tilt_words


class Row(Struct, frozen=True):
    """One drilling and the tilt (rad) of the table for it."""

    drilling: Drilling
    tilt: float


def rows(layout: Headstock) -> list[Row]:
    """All drillings in the order of the holes, without old ones that are plugged first; tilt is 0 for bores square to the face."""
    placed = frames(layout)
    return [Row(d, 0.0 if d.upright else tilt_of(placed[d.of])) for hole in once_plugged(layout) for d in hole.drillings]


CSV_HEAD = (
    say("id", about="column"), say("of", about="column"), say("operation", about="column"), say("diameter_mm", about="column"), say("surface", about="column"), say("drill", about="column"), say("start_x_mm", about="column"), say("start_y_mm", about="column"), say("start_z_mm", about="column"),
    say("direction_x", about="column"), say("direction_y", about="column"), say("direction_z", about="column"), say("mark_x_mm", about="column"), say("mark_y_mm", about="column"), say("mark_z_mm", about="column"), say("tilt_degrees", about="column"),
    say("depth_mm", about="column"), say("stop_mm", about="column"), say("through", about="column"),
    say("reamed_to_mm", about="column"), say("taper_one_to", about="column"),
)
"""Start: on the finished surface. Mark and stop: on the square blank, where the drill goes in."""


def csv_rows(layout: Headstock) -> list[tuple[Cell, ...]]:
    """The table for a spreadsheet; a bore whose axis misses the square edge has no mark and no stop."""
    out: list[tuple[Cell, ...]] = []
    for row in rows(layout):
        d = row.drilling
        mark = d.mark or (None, None, None)
        out.append((d.id, d.of, term(d.operation), d.diameter, term(d.surface), term(d.drill), *d.start, *d.direction, *mark,
                    math.degrees(row.tilt), d.depth, None if d.mark is None or d.there else d.stop,
                    say("yes") if d.through else say("no"), d.reamed or None, d.taper if d.reamed else None))
    return out


PAPER_HEAD = (say("hole"), say("operation"), say("dia."), say("from"), "x", "y", "z", say("tilt"), say("depth"), say("stop"))
"""Columns on paper; x, y, z are of the mark, stop is from the mark."""
LEFT_COLUMNS = (0, 1, 3)
"""Columns of words; the others begin with numbers, set to the right."""


def paper_rows(layout: Headstock) -> list[tuple[str, ...]]:
    """The table for the page, lengths in the unit of the sheets, tilt as degrees and the end that is raised."""
    out, found = [], rows(layout)
    for row, diameter in zip(found, in_column([row.drilling.diameter for row in found]), strict=True):
        d = row.drilling
        x, y, z = (tenths(n) for n in (d.mark or d.start))
        tilt = "-" if d.upright else tilt_words(row.tilt)
        stop = say("no edge") if d.mark is None else "-" if d.there else say("through") if d.through else deep(d.stop)
        what = term(d.operation)
        if d.reamed:
            what = say("{operation}, reamed 1:{taper:g} to {reamed}", operation=what, taper=d.taper, reamed=length(d.reamed))
        out.append((d.id, what, diameter, term(d.surface), x, y, z, tilt,
                    say("through") if d.through else deep(d.depth), stop))
    return out
