"""What a proposal may turn: places of tuners and starts of rows that the maker does not hold.

Tuners and rows that lie mirrored about the centreline are turned together, so
that a symmetric head stays symmetric and opposite bores keep one table setting.
"""

from __future__ import annotations

import math
from typing import Literal

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks.in_wood import by_the_wood
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, EdgeRun, FreePlace, Headstock, Row, RowPlace, Tuner, staying, staying_rows
from geometry.solids.frames import Frame, frames
from geometry.vectors import Vec2

Way = Vec2 | Literal["edge", "inset"]
_TWIN = 0.01
"""mm within which two places count as mirrored"""
_ROW = "row:"
"""Before a row's id: rows and tuners may share names."""


class Knob(Struct, frozen=True):
    """One way of moving. `turns` holds (tuner or row id, way): a plan direction, along the edge, or into the wood."""

    features: frozenset[str]
    """tuners that it moves"""
    turns: tuple[tuple[str, Way], ...]

    def turned(self, layout: Headstock, by: float) -> Headstock:
        """The layout with everything on this knob moved by `by` mm."""
        ways = dict(self.turns)
        tuners = tuple(_moved(t, ways[t.id], by) if t.id in ways and not isinstance(t.place, RowPlace) else t
                       for t in layout.tuners)
        rows = tuple(_started(r, ways[_ROW + r.id], by) if _ROW + r.id in ways else r for r in layout.rows)
        return replace(layout, tuners=tuners, rows=rows)


def knobs(layout: Headstock) -> list[Knob]:
    """Every knob of a layout, in its own order; none for tuners that are held or drilled, and for rows with such a member."""
    try:
        placed = frames(layout)
    except GeometryError:
        return []
    layout = by_the_wood(layout)
    stays = staying(layout)
    singles = [t for t in layout.tuners if t.id not in stays and not isinstance(t.place, RowPlace)]
    found: list[Knob] = []
    done: set[str] = set()
    for tuner in singles:
        if tuner.id in done:
            continue
        twin = next((t for t in singles if t.id != tuner.id and t.id not in done and _mirrored(tuner, t, placed)), None)
        pair = [tuner] if twin is None else [tuner, twin]
        done |= {t.id for t in pair}
        both = frozenset(t.id for t in pair)
        if isinstance(tuner.place, EdgePlace):
            found.append(Knob(both, tuple((t.id, "edge") for t in pair)))
        else:
            found += [Knob(both, _both_ways([t.id for t in pair], way)) for way in ((0.0, 1.0), (1.0, 0.0))]
    return found + _row_knobs(layout, placed)


def _row_knobs(layout: Headstock, placed: dict[str, Frame]) -> list[Knob]:
    members = {row.id: [t for t in layout.tuners if isinstance(t.place, RowPlace) and t.place.row == row.id]
               for row in layout.rows}
    stays = staying_rows(layout)
    free = [row for row in layout.rows if members[row.id] and row.id not in stays]
    found: list[Knob] = []
    done: set[str] = set()
    for row in free:
        if row.id in done:
            continue
        twin = next((r for r in free if r.id != row.id and r.id not in done
                     and _mirrored_rows(row, r, members, placed)), None)
        pair = [row] if twin is None else [row, twin]
        done |= {r.id for r in pair}
        both = frozenset(t.id for r in pair for t in members[r.id])
        if isinstance(row.run, EdgeRun):
            ways = ("edge", "inset") if row.run.inset > 0 else ("edge",)
            found += [Knob(both, tuple((_ROW + r.id, way) for r in pair)) for way in ways]
        else:
            heading = math.radians(row.run.heading)
            along = (math.cos(heading), math.sin(heading))
            found += [Knob(both, _both_ways([_ROW + r.id for r in pair], way)) for way in (along, v.left(along))]
    return found


def _both_ways(ids: list[str], way: Vec2) -> tuple[tuple[str, Way], ...]:
    """The first of a pair moves that way, the second, its twin, the mirrored way."""
    return tuple((id, way if k == 0 else (-way[0], way[1])) for k, id in enumerate(ids))


def _mirrored_rows(one: Row, two: Row, members: dict[str, list[Tuner]], placed: dict[str, Frame]) -> bool:
    """Whether two rows of one kind have members that lie mirrored, index by index."""
    a, b = ({t.place.index: t for t in members[row.id]} for row in (one, two))
    return (isinstance(one.run, EdgeRun) == isinstance(two.run, EdgeRun) and a.keys() == b.keys()
            and all(_mirrored(a[i], b[i], placed) for i in a))


def _mirrored(one: Tuner, two: Tuner, placed: dict[str, Frame]) -> bool:
    a, b = placed[one.id].origin, placed[two.id].origin
    return (one.pattern == two.pattern and type(one.place) is type(two.place)
            and v.distance3((-a[0], a[1], a[2]), b) <= _TWIN)


def _moved(tuner: Tuner, way: Way, by: float) -> Tuner:
    place = tuner.place
    if isinstance(place, FreePlace):
        return replace(tuner, place=replace(place, at=_shifted(place.at, way, by)))
    return replace(tuner, place=replace(place, along=round(place.along + by, 4)))


def _started(row: Row, way: Way, by: float) -> Row:
    run = row.run
    if way == "edge":
        return replace(row, run=replace(run, first=round(run.first + by, 4)))
    if way == "inset":
        return replace(row, run=replace(run, inset=max(0.0, round(run.inset + by, 4))))
    return replace(row, run=replace(run, start=_shifted(run.start, way, by)))


def _shifted(at: Vec2, way: Vec2, by: float) -> Vec2:
    x, y = v.along(at, way, by)
    return round(x, 4), round(y, 4)
