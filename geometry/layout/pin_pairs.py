"""Whether locating pins are their own mirror image about the centreline, and which one pin moved would make them so."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import Polygon

from geometry import vectors as v
from geometry.by_size import of_loop, remembered_by_size
from geometry.curves.polygons import polygon
from geometry.layout.headstock import Headstock
from geometry.layout.outline import Loop, loop_path
from geometry.layout.slots import Pin
from geometry.vectors import Vec2

SAME = 0.05
"""Pins that miss their mirror image by less bring a template back all the same, mm."""


def template_pins(layout: Headstock) -> tuple[Pin, ...]:
    """The pins that the template for the slots can use: all of them where its board is as large as the blank.

    Otherwise those that stand whole inside the outline. GeometryError when it has no inside.
    """
    return layout.pins if layout.template.board == "blank" else outline_pins(layout)


def outline_pins(layout: Headstock) -> tuple[Pin, ...]:
    """The pins that stand whole inside the outline: a template of the head's shape can use no others. GeometryError when it has no inside."""
    return standing_in(layout.pins, _inside(layout.outline)) if layout.pins else ()


@remembered_by_size(16, of_loop)
def _inside(outline: Loop) -> Polygon:
    return polygon(loop_path(outline))


def standing_in(pins: Sequence[Pin], wood: Polygon) -> tuple[Pin, ...]:
    """The pins that stand whole inside an area (mm)."""
    spots = shapely.points([pin.at for pin in pins])
    rooms = np.where(shapely.contains(wood, spots), shapely.distance(wood.boundary, spots), -1.0)
    return tuple(pin for pin, room in zip(pins, rooms.tolist(), strict=True) if room >= pin.diameter / 2)


def missed(pins: Sequence[Pin]) -> tuple[tuple[Pin, float], ...]:
    """(pin, distance in mm from its mirror image to the nearest pin of its size) for each that misses it; worst first.

    A pin misses its image by twice its distance from the centreline at most: it may be its own image.
    """
    found = []
    for pin in pins:
        alike = [other for other in pins if abs(pin.diameter - other.diameter) <= SAME]
        apart = min(v.distance(v.mirrored(pin.at), other.at) for other in alike)
        if apart > SAME:
            found.append((pin, apart))
    return tuple(sorted(found, key=lambda pair: (-pair[1], pair[0].id)))


def mirrored(pins: Sequence[Pin]) -> bool:
    """Whether the pins are their own mirror image about the centreline, so that a template turned over comes back."""
    return not missed(pins)


def mirroring_moves(pins: Sequence[Pin]) -> tuple[tuple[Pin, Vec2], ...]:
    """(pin, shift in mm) for each pin that, moved alone, makes all pins their own mirror image; the shortest first.

    It goes to the centreline, or to where another pin wants its image. Empty when they are mirrored, or one move is not enough.
    """
    found = []
    for pin in [] if mirrored(pins) else pins:
        rest = [other for other in pins if other is not pin]
        alone = [other for other, _ in missed(rest)]
        if not alone:
            found.append((pin, (-pin.at[0], 0.0)))
        elif len(alone) == 1 and abs(alone[0].diameter - pin.diameter) <= SAME:
            found.append((pin, v.sub(v.mirrored(alone[0].at), pin.at)))
    return tuple(sorted(found, key=lambda move: (v.norm(move[1]), move[0].id)))
