"""A hard shadow beside a head, which is darker than what it falls on and was followed as if it were wood."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import Polygon

from geometry.tracing.colours import GRAIN, LEAST
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.rim import along, seen_at
from geometry.vectors import Vec2

WITHIN = 1.0, 1.8, 2.6
"""mm within the edge that was followed where colours are looked at: first those of the shadow"""
WIDER = 5.0
"""mm within it where some of a shadow still is: a chamfer or a round along the edge of dark wood shines no farther in (common practice, no source)"""
BEYOND = 3.0
"""mm beyond it where what the shadow falls on is looked at"""
DIMMED = (0.15, 0.85)
"""Part of the light that is left in a shadow"""
HUE = 0.12
"""How far that part differs from one colour to another at the most: light is hardly coloured by what stands in it"""
EVEN = 3.0 * GRAIN
"""Levels by which a hard shadow strays from its middle colour"""
UNLIKE = 6.0 * GRAIN
"""Levels by which one of its colours differs from the wood, than which it is paler: what is darker than pale wood is its binding"""
SHARE = (0.05, 0.6)
"""Part of the edge along which there is a shadow: no other falls on all sides, while a binding does"""


def shadow_beside(colours: np.ndarray, place: PlaneMap, edge: Polygon, ahead: Vec2, wood: np.ndarray) -> np.ndarray | None:
    """(n, 3) colours of a shadow within the edge of a head (mm, in the layout's frame) in a (height, width, 3) picture; None where
    there is none.

    `wood`: (n, 3) colours of the head; `ahead`: the unit vector square to the nut line, which goes through (0, 0), towards the tip.
    """
    base, behind = seen_at(colours, place, along(edge, BEYOND, ahead))
    if min(len(base), len(wood)) < LEAST:
        return None
    about = shapely.STRtree(shapely.points(base))

    def dimmed(within: float) -> tuple[np.ndarray, np.ndarray]:
        """The colours so many mm within the edge, and which of them are those of such a shadow."""
        points, there = seen_at(colours, place, along(edge, -within, ahead))
        left = there / np.maximum(behind[about.nearest(shapely.points(points))], 1.0)
        mean, off = left.mean(axis=1), there - np.median(wood, axis=0)
        return there, (mean > DIMMED[0]) & (mean < DIMMED[1]) & (np.ptp(left, axis=1) <= HUE) & \
            (np.abs(off).max(axis=1) > UNLIKE) & (off.mean(axis=1) > 0)
    found = [dimmed(within) for within in WITHIN]
    there, dark = found[0]
    if dark.sum() < LEAST or any(shadow.mean() > SHARE[1] for _, shadow in found if len(shadow)) or dimmed(WIDER)[1].sum() < LEAST:
        return None
    dark &= np.abs(there - np.median(there[dark], axis=0)).max(axis=1) <= EVEN
    return there[dark] if dark.sum() >= LEAST and dark.mean() >= SHARE[0] else None
