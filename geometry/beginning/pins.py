"""Two locating pins of a layout that begins: on the centreline in wood that stays clear of everything, or in bores to come."""

from __future__ import annotations

import math

import shapely
from msgspec.structs import replace
from shapely.geometry import LineString, Point

from geometry.layout import Headstock, Pin
from geometry.sequence.pin_places import places
from geometry.sequence.pins import GRID, LEAST_APART, NoPins, propose_pins
from geometry.solids.pins_along import in_bores

DIAMETER = 6.0
NAMES = ("nut pin", "tip pin")
SPARE = 0.7
"""mm beyond the margins, so that a mark that strays a little still keeps them"""


def centred_pins(layout: Headstock) -> tuple[Pin, ...]:
    """A pin near the nut and one near the tip, as far apart as the centreline allows; none when they find no room.

    On the centreline the template may turn over. Places are even numbers of
    half a millimetre where the wood allows, SPARE farther than the margin from all else where there is room for that.
    """
    return _centred(layout, SPARE) or _centred(layout, 0.0)


def pins_in_bores(layout: Headstock) -> tuple[Pin, ...]:
    """Two pins in bores to come, as they are proposed; none when no two bores are fit for it. No plug stays in the face for these."""
    found = propose_pins(layout)
    if isinstance(found, NoPins):
        return ()
    pins = tuple([replace(pin, id=id) for pin, id in zip(found, NAMES, strict=True)])
    return pins if in_bores(replace(layout, pins=pins)).keys() == set(NAMES) else ()


def _centred(layout: Headstock, spare: float) -> tuple[Pin, ...]:
    _, wood = places(layout, DIAMETER / 2 + spare)
    free = wood & LineString([(0.0, 0.0), (0.0, layout.blank.tip)])
    levels = sorted(y for _, y in shapely.get_coordinates(free).tolist())
    if not levels or levels[-1] - levels[0] < LEAST_APART + 2 * GRID:
        return ()
    low = _even(math.ceil(levels[0] / GRID) * GRID, levels[0], wood)
    high = _even(math.floor(levels[-1] / GRID) * GRID, levels[-1], wood)
    return tuple([Pin(id=id, at=(0.0, y), diameter=DIAMETER) for id, y in zip(NAMES, (low, high), strict=True)])


def _even(even: float, exact: float, wood) -> float:
    return even if wood.intersects(Point(0.0, even)) else round(exact, 6)
