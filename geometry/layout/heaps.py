"""Heaps: so many features on one place that to tell of every two of them would take minutes and gigabytes.

No head is like that. A file may be: what was copied over and over, or made to hurt.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from geometry import vectors as v
from geometry.errors import GeometryError
from geometry.layout.headstock import Headstock
from geometry.layout.slots import StraightSlot
from geometry.layout.tuners import EdgePlace, EdgeRun, FreePlace, Row
from geometry.saying import say

MOST_FEATURES = 3000
"""Tuners, slots, pins and holes of a layout together"""
MOST_MEETINGS = 5_000
"""Pairs of drillings within reach of each other: as many snags, each with its card and its ring, make a window slow to answer"""
_SLOT = 5
"""Drillings that a slot counts as, by the time that two of them take"""
_BODY = 5.0
"""mm about its post that a tuner certainly takes"""
_ALONG_EDGES = {"bass": -1e5, "treble": 1e5}
"""mm: where what stands along an edge is laid out, far from what stands on the face"""

_Spot = tuple[float, float, float, float, int, str]
"""x and y of its middle, half of its width and of its length (mm), the drillings it counts as, and its id"""


def hold_to_no_heap(layout: Headstock) -> None:
    """GeometryError naming a feature for a layout with more than MOST_FEATURES, or more than MOST_MEETINGS pairs of drillings
    that stand nearer to each other than the margins want, counted on the face by the room that each certainly takes."""
    count = len(layout.tuners) + len(layout.slots) + len(layout.pins) + len(layout.holes)
    if count > MOST_FEATURES:
        raise GeometryError(say("The layout has {count:,} tuners, slots, pins and holes, and no more than {most:,} are taken: take out what no "
                                "head needs.", count=count, most=MOST_FEATURES))
    drillings = {pattern.id: len(pattern.bores) for pattern in layout.patterns}
    whole = sum([drillings.get(tuner.pattern, 0) for tuner in layout.tuners]) + _SLOT * len(layout.slots) + len(layout.pins) + len(layout.holes)
    if whole * whole <= 2 * MOST_MEETINGS:
        return
    margins, meetings = layout.margins, 0
    wanted = max(margins.bore_bore, margins.screw_any, margins.pin_any)
    spots = sorted(_spots(layout, drillings), key=lambda spot: spot[1] - spot[3])
    near: list[_Spot] = []
    met = dict.fromkeys((spot[-1] for spot in spots), 0)
    for spot in spots:
        x, y, across, along, weight, id = spot
        near = [other for other in near if other[1] + other[3] + wanted > y - along]
        for other_x, _, other_across, _, other_weight, other in near:
            if abs(other_x - x) < across + other_across + wanted:
                meetings += weight * other_weight
                met[id] += weight * other_weight
                met[other] += weight * other_weight
        if meetings > MOST_MEETINGS:
            # Of several that meet as many the last is told: the first may be what was copied.
            raise GeometryError(say("So many tuners, slots, pins and holes are heaped up about {feature} that it would take minutes to tell "
                                    "which of them meet: take out what is there over and over, or lower the margins.",
                                    feature=max(reversed(met), key=met.__getitem__)))
        near.append(spot)


def _spots(layout: Headstock, drillings: dict[str, int]) -> Iterator[_Spot]:
    rows = {row.id: row for row in layout.rows}
    for tuner in layout.tuners:
        place, weight = tuner.place, drillings.get(tuner.pattern, 0)
        if isinstance(place, FreePlace):
            at = place.at
        elif isinstance(place, EdgePlace):
            at = _ALONG_EDGES[place.side], place.along
        elif place.row in rows:
            at = _in_row(rows[place.row], place.index)
        else:
            continue
        yield *at, _BODY, _BODY, weight, tuner.id
    for slot in layout.slots:
        shape = slot.shape
        points, half = (((shape.nut_end, shape.tip_end), shape.width / 2) if isinstance(shape, StraightSlot) else
                        ([node.at for node in shape.loop.nodes], 0.0))
        x0, y0, x1, y1 = min(x for x, _ in points), min(y for _, y in points), max(x for x, _ in points), max(y for _, y in points)
        yield (x0 + x1) / 2, (y0 + y1) / 2, (x1 - x0) / 2 + half, (y1 - y0) / 2 + half, _SLOT, slot.id
    for one in (*layout.pins, *layout.holes):
        yield *one.at, one.diameter / 2, one.diameter / 2, 1, one.id


def _in_row(row: Row, index: int) -> tuple[float, float]:
    """Where a member of a row stands; of one that follows an edge, along that."""
    run = row.run
    if isinstance(run, EdgeRun):
        return _ALONG_EDGES[run.side], run.first + index * row.spacing
    heading = math.radians(run.heading)
    return v.along(run.start, (math.cos(heading), math.sin(heading)), index * row.spacing)
