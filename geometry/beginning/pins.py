"""Two locating pins on the centreline of a layout that begins, in wood that stays clear of everything."""

from __future__ import annotations

import math

import shapely
from shapely.geometry import LineString, Point

from geometry.layout import Headstock, Pin
from geometry.sequence.pin_places import places
from geometry.sequence.pins import GRID, LEAST_APART

DIAMETER = 6.0
SPARE = 0.7
"""mm beyond the margins, so that a mark that strays a little still keeps them"""


def centred_pins(layout: Headstock) -> tuple[Pin, ...]:
    """A pin near the nut and one near the tip, as far apart as the centreline allows; none when they find no room.

    On the centreline the template may turn over. Places are even numbers of
    half a millimetre where the wood allows, SPARE farther than the margin from all else where there is room for that.
    """
    return _centred(layout, SPARE) or _centred(layout, 0.0)


def _centred(layout: Headstock, spare: float) -> tuple[Pin, ...]:
    _, wood = places(layout, DIAMETER / 2 + spare)
    free = wood & LineString([(0.0, 0.0), (0.0, layout.blank.tip)])
    levels = sorted(y for _, y in shapely.get_coordinates(free).tolist())
    if not levels or levels[-1] - levels[0] < LEAST_APART + 2 * GRID:
        return ()
    low = _even(math.ceil(levels[0] / GRID) * GRID, levels[0], wood)
    high = _even(math.floor(levels[-1] / GRID) * GRID, levels[-1], wood)
    return (Pin(id="nut pin", at=(0.0, low), diameter=DIAMETER), Pin(id="tip pin", at=(0.0, high), diameter=DIAMETER))


def _even(even: float, exact: float, wood) -> float:
    return even if wood.intersects(Point(0.0, even)) else round(exact, 6)
