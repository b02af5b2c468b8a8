"""What tools take and what a drawn head is made of, as areas in plan and as points in space; nothing of the program is used."""

import math

import numpy as np
import pyclipper
import shapely

from tests.outside.from_file import Bored, FromFile, slot_points

UNIT = 1e5
"""Whole numbers of the clipper to a mm."""
COARSE = 30
"""Every so-manieth point of the outline is one of a polygon: a hundred an edge."""
BEYOND = 40.0
"""How far a tool stands out of the wood, mm."""


def offset(paths: list, by: float) -> list:
    """Polygons (clipper's whole numbers) grown by so many mm with round corners."""
    if not by:
        return paths
    made = pyclipper.PyclipperOffset(2.0, 0.001 * UNIT)
    made.AddPaths(paths, pyclipper.JT_ROUND, pyclipper.ET_CLOSEDPOLYGON)
    return made.Execute(by * UNIT)


def whole(points: np.ndarray) -> list:
    return [np.rint(points * UNIT).astype(np.int64).tolist()]


def area(paths: list) -> shapely.Geometry:
    """What a clipper's polygons enclose, mm."""
    rings = [(shapely.Polygon(np.array(path) / UNIT).buffer(0), pyclipper.Orientation(path)) for path in paths]
    outer = shapely.union_all([ring for ring, fills in rings if fills])
    return outer - shapely.union_all([ring for ring, fills in rings if not fills])


def in_rod(points: np.ndarray, start: np.ndarray, way: np.ndarray, low: float, high: float, radius: float) -> np.ndarray:
    """Which points lie in a cylinder from `low` to `high` along a unit vector."""
    along = points @ way - start @ way
    near = np.flatnonzero((along >= low) & (along <= high))
    apart = points[near] - start
    found = np.zeros(len(points), bool)
    found[near] = (apart ** 2).sum(axis=1) - along[near] ** 2 <= radius ** 2
    return found


def before_nut(head: FromFile, points: np.ndarray, by: float) -> np.ndarray:
    """Which points lie more than `by` mm before the nut line, slanted or not."""
    turn = math.radians(head.file.get("nut", {}).get("slant", 0.0))
    return points[:, 0] * math.sin(turn) + points[:, 1] * math.cos(turn) > by


def nut_end(shape: dict, length: float) -> tuple[np.ndarray, np.ndarray, float, float]:
    """(where a ramp of that length begins, its way, how far it goes on into the slot, width of the slot)."""
    if shape["kind"] == "drawn":
        points = slot_points(shape)
        (x0, y0), (x1, y1) = points.min(axis=0), points.max(axis=0)
        inside = shapely.Polygon(points)

        def across(far: float) -> np.ndarray:
            return np.array(shapely.intersection(inside, shapely.LineString(((x0 - 1, y0 + far), (x1 + 1, y0 + far)))).bounds)[[0, 2]]
        look = min(x1 - x0, y1 - y0)
        width = max(np.ptp(across(look * k / 24)) for k in range(1, 24))
        room = min(width, y1 - y0) / 2
        return np.array((across(room).mean(), y0 - length)), np.array((0.0, 1.0)), room, width
    middle = np.array(shape["nut_end"], float)
    way = np.array(shape["tip_end"], float) - middle
    way = way / np.hypot(*way)
    return middle - way * (shape["width"] / 2 + length), way, shape["width"] / 2, shape["width"]


def in_flat(points: np.ndarray, seat: np.ndarray, ahead: np.ndarray, out: np.ndarray, size: float, long: bool, slack: float = 0.0) -> np.ndarray:
    """Which points a flat (`long`) or a round spot takes: outwards from its bottom, as far as an edge can belly."""
    away = points - seat
    outwards = (away @ out > -slack) & (away @ out < 3.0)
    along = abs(away @ ahead)
    return outwards & ((along < size / 2 + slack) if long else (np.hypot(along, away[:, 2]) < size / 2 + slack))


def in_cone(points: np.ndarray, start: np.ndarray, way: np.ndarray, depth: float, wide: float, taper: float, slack: float = 0.0) -> np.ndarray:
    """Which points a reamer takes that makes a hole `wide` at its start and 1 mm narrower each `taper` mm."""
    along = (points - start) @ way
    across = np.sqrt(np.maximum(((points - start) ** 2).sum(axis=1) - along ** 2, 0.0))
    return (along > -slack - 1) & (along < depth + slack) & (across < (wide - along / taper) / 2 + slack)


def wanted(head: FromFile, points: np.ndarray, slack: float) -> np.ndarray:
    """Which points are wood in the finished head when everything that is cut is larger by `slack` (mm, or smaller), pin holes left out."""
    def within(polygon: shapely.Geometry) -> np.ndarray:
        shapely.prepare(polygon)
        return shapely.contains_xy(polygon, points[:, 0], points[:, 1])

    z = points[:, 2]
    wood = within(shapely.Polygon(head.outline[::COARSE]).buffer(-slack)) & (z > 0) & (z < head.thick)
    for slot in head.file["slots"]:
        floor = head.thick + 1 if slot.get("depth") is None else slot["depth"] + slack
        wood &= ~(within(shapely.Polygon(slot_points(slot["shape"])).buffer(slack)) & (z < floor))
        if slot.get("ramp"):
            wood &= ~_ramp(slot, points, slack)
    plugged = {hole["id"] for hole in head.file.get("holes", ()) if hole.get("plugged")}
    for one in head.holes:
        if one.role != "locating" and one.of not in plugged:
            wood &= ~_bored(one, points, slack)
        if one.reamed:
            wood &= ~in_cone(points, one.start, one.way, one.depth, one.reamed, one.taper, slack)
    for seat, ahead, out, flat in head.flats():
        wood &= ~in_flat(points, seat, ahead, out, flat["size"], flat["shape"] == "flat", slack)
    return wood


def _bored(one: Bored, points: np.ndarray, slack: float) -> np.ndarray:
    """An edge rises beside the mouth of a bore into it by no more than it is wide."""
    return in_rod(points, one.start, one.way, -2 * one.radius if one.side else -1.0, one.depth + slack + (1 if one.through else 0), one.radius + slack)


def _ramp(slot: dict, points: np.ndarray, slack: float) -> np.ndarray:
    ramp = slot["ramp"]
    start, way, room, width = nut_end(slot["shape"], ramp["length"])
    along, across = (points[:, :2] - start) @ way, abs((points[:, :2] - start) @ np.array((-way[1], way[0])))
    half = (ramp.get("width") or width) / 2
    return ((along > -slack) & (along < ramp["length"] + room + slack) & (across < half + slack)
            & (points[:, 2] < along * ramp["depth"] / ramp["length"] + slack))
