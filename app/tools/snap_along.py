"""Snapping along an edge: midway between neighbours, the same step again, opposite the other side, the grid."""

from __future__ import annotations

from collections.abc import Collection
from itertools import pairwise

from msgspec import Struct

from app.tools import guides
from app.tools.options import Options
from app.tools.snap import POINT_REACH, TIDY, grid_words
from geometry.drawing import Drawing
from geometry.edits.edge_places import along_of
from geometry.edits.moving import plan_point
from geometry.edits.tuners import along_edge
from geometry.layout import OTHER, Headstock, Side
from geometry.layout.edges import edge
from geometry.saying import say


class Along(Struct, frozen=True):
    """Where a place along an edge ended up (mm from the nut line), in words, with guides."""

    along: float
    words: str = ""
    marks: Drawing = ()


class _Stop(Struct, frozen=True):
    along: float
    words: str
    midway: bool = False


class AlongSnapper:
    """Places along both edges that a side tuner can snap to, gathered once for a whole drag.

    `ignore` names the tuners that move along.
    """

    def __init__(self, layout: Headstock, options: Options, ignore: Collection[str] = ()) -> None:
        self._layout = layout
        self._options = options
        side_tuners: dict[Side, list[tuple[float, str]]] = {"bass": [], "treble": []}
        face_tuners: dict[Side, list[tuple[float, str]]] = {"bass": [], "treble": []}
        for tuner in layout.tuners:
            if tuner.id in ignore:
                continue
            if layout.pattern(tuner.pattern).mount == "side":
                side, along = along_edge(layout, tuner.id)
                side_tuners[side].append((along, tuner.id))
            else:
                p = plan_point(layout, tuner.id)
                near: Side = "treble" if p[0] >= 0 else "bass"
                at = along_edge(layout, tuner.id)
                face_tuners[near].append((at[1] if at else along_of(layout.outline, near, p), tuner.id))
        self._stops: dict[Side, list[_Stop]] = {}
        for side in ("bass", "treble"):
            other = OTHER[side]
            stops = [_Stop(along, say("opposite {id}", id=id)) for along, id in side_tuners[other]]
            stops += [_Stop(along, say("beside {id}", id=id)) for along, id in face_tuners[side]]
            for group in (side_tuners[side], face_tuners[side]):
                row = sorted(group)
                for (a, one), (b, two) in pairwise(row):
                    stops.append(_Stop((a + b) / 2, say("midway between {a} and {b}", a=one, b=two), midway=True))
                    if group is side_tuners[side]:
                        stops += [_Stop(2 * b - a, say("same step as from {a} to {b}", a=one, b=two)),
                                  _Stop(2 * a - b, say("same step as from {a} to {b}", a=two, b=one))]
            # Midway comes first where two stops lie together.
            self._stops[side] = sorted(stops, key=lambda stop: not stop.midway)

    def snap(self, side: Side, along: float, mm_per_pixel: float, off: bool = False) -> Along:
        """The place that a side tuner at `along` snaps to; with `off` only rounded to 0.01 mm."""
        longest = edge(self._layout.outline, side).length
        if off or not self._options.snapping:
            return Along(min(round(along, TIDY), longest))
        near = [stop for stop in self._stops[side] if abs(stop.along - along) <= POINT_REACH * mm_per_pixel
                and 0 <= stop.along <= longest]
        if near:
            stop = min(near, key=lambda stop: abs(stop.along - along))
            seat = edge(self._layout.outline, side).seat(stop.along)
            arm = 12.0 * mm_per_pixel
            ends = [(seat.point[0] + seat.normal[0] * k, seat.point[1] + seat.normal[1] * k) for k in (-arm, arm)]
            return Along(stop.along, stop.words, guides.line(*ends))
        if self._options.grid:
            step = self._options.grid
            return Along(min(round(round(along / step) * step, 6), longest), grid_words(self._options))
        return Along(min(round(along, TIDY), longest))
