"""Whether tuners may share a plate: in a row, and all turned one way."""

from __future__ import annotations

from geometry import vectors as v
from geometry.edits.tuners import members
from geometry.layout import Headstock, RowPlace, Tuner
from geometry.solids.frames import frame
from geometry.tolerance import ONE_WAY


def may_share_a_plate(layout: Headstock, tuner: Tuner) -> bool:
    """Whether a tuner stands in a row of several whose buttons all point its way: none of them can be moved by itself where they are on one
    plate."""
    if not isinstance(tuner.place, RowPlace):
        return False
    one, *rest = [frame(layout, each) for each in members(layout, tuner.place.row)]
    way = (lambda each: each.w) if one.mount == "side" else (lambda each: each.u)
    return bool(rest) and all(v.distance(way(one)[:2], way(each)[:2]) <= ONE_WAY for each in rest)
