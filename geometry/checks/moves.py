"""Where a feature could go instead: the least plan shift that clears it, tried on the real cylinders."""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Callable

import numpy as np
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks.items import Item, plan, tuner_item
from geometry.checks.words import toward, up
from geometry.layout.edges import Seat, edge
from geometry.layout.tuners import EdgePlace, FreePlace
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import clear
from geometry.vectors import Vec2

_FARTHEST_SLIDE, _FARTHEST_SHIFT = 30.0, 15.0
"""mm: a cure that asks for more than this is no cure"""
_COARSE, _FINE = 1.0, 0.1
_MORE = (0.0, 0.1, 0.2, 0.4, 0.8)
"""mm to go beyond a first estimate before a move is given up"""

Cure = tuple[str, tuple[str, Vec2] | None]
"""A sentence, and the move that it asks for when one does."""


def slid_point(seat: Seat, by: float) -> Vec2:
    """Where a seat comes to when it slides `by` mm towards the tip, on the circle that hugs the edge there."""
    phi = seat.curvature * by
    if abs(phi) < 1e-9:
        return v.along(seat.point, seat.tangent, by)
    out = v.along(seat.point, seat.tangent, math.sin(phi) / seat.curvature)
    return v.along(out, seat.normal, -(1 - math.cos(phi)) / seat.curvature)


def slid(item: Item, solids: Cylinders, amounts: np.ndarray) -> Cylinders:
    """Some cylinders of a side tuner for each of several slides, slide after slide."""
    seat = item.frame.seat
    phi = -seat.curvature * amounts
    cos, sin = np.cos(phi)[:, None], np.sin(phi)[:, None]
    to = np.array([slid_point(seat, float(by)) for by in amounts])
    arm = solids.start[None, :, :2] - np.array(seat.point)
    axis = solids.axis[None, :, :2]
    count, many = len(amounts), len(solids)
    starts = np.empty((count, many, 3))
    axes = np.empty((count, many, 3))
    for out, vector, shift in ((starts, arm, to), (axes, axis, np.zeros((count, 2)))):
        out[..., 0] = vector[..., 0] * cos - vector[..., 1] * sin + shift[:, :1]
        out[..., 1] = vector[..., 0] * sin + vector[..., 1] * cos + shift[:, 1:]
    starts[..., 2], axes[..., 2] = solids.start[:, 2], solids.axis[:, 2]
    return Cylinders(starts.reshape(-1, 3), axes.reshape(-1, 3), np.tile(solids.length, count),
                     np.tile(solids.radius, count))


def shifted(solids: Cylinders, shifts: np.ndarray) -> Cylinders:
    """Some cylinders for each of several plan shifts (k, 2), shift after shift."""
    count, many = len(shifts), len(solids)
    by = np.repeat(np.column_stack([shifts, np.zeros(count)]), many, axis=0)
    return Cylinders.joined([solids] * count).moved(by)


def clears(places: Cylinders, other: Cylinders, needed: np.ndarray) -> np.ndarray:
    """For each place of n cylinders: whether all of them stay needed (n, n other) mm from the others."""
    many, others = needed.shape
    count = len(places) // many
    left = np.repeat(np.arange(count * many), others)
    right = np.tile(np.arange(others), count * many)
    good = clear(places.pick(left), other.pick(right), np.tile(needed.reshape(-1), count))
    return good.reshape(count, many * others).all(axis=1)


def way_clear(item: Item, own: Callable[[Item], Cylinders], other: Cylinders, needed: np.ndarray,
              push: Vec2, lacking: float) -> Cure | None:
    """The least move of an item that takes its cylinders clear of others, or None.

    A side tuner slides along its edge; everything else may go anywhere, tried
    along `push` and along both axes. `own` takes the cylinders from an item,
    `needed` is (n own, n other) in mm; `lacking` is what the nearest two of them lack, which no shorter move can give.
    """
    farthest = _FARTHEST_SLIDE if item.mount == "side" else _FARTHEST_SHIFT
    if item.held or lacking > farthest:
        return None

    def ok(there: Item) -> bool:
        return bool(clears(own(there), other, needed).all())

    here = own(item)
    if item.mount == "side":
        ways = np.array([1.0, -1.0])
        found = _least(lambda chosen, amounts: clears(
            slid(item, here, (ways[chosen][:, None] * amounts).reshape(-1)), other, needed), 2, lacking, farthest)
        return None if found is None else slide(item, float(ways[found[0]]) * found[1], ok)
    plane = np.array([v.unit(push), (1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)])
    found = _least(lambda chosen, amounts: clears(
        shifted(here, (plane[chosen][:, None, :] * amounts[:, None]).reshape(-1, 2)), other, needed), 5, lacking,
                   farthest)
    return None if found is None else shift(item, v.scale(tuple(plane[found[0]].tolist()), found[1]), ok)


def slide(item: Item, amount: float, ok: Callable[[Item], bool]) -> Cure | None:
    """A slide of a side tuner (mm, positive to the tip), a little farther if need be, that was found to do."""
    for more in _MORE:
        by = math.copysign(up(abs(amount)) + more, amount)
        there = slid_item(item, by)
        if there is not None and ok(there):
            to = v.sub(there.frame.seat.point, item.frame.seat.point)
            return f"Slide {item.id} {abs(by):.1f} mm to the {'tip' if by > 0 else 'nut'}.", (item.id, to)
    return None


def shift(item: Item, by: Vec2, ok: Callable[[Item], bool]) -> Cure | None:
    """A plan shift in mm of anything but a side tuner, a little farther if need be, that was found to do."""
    size = v.norm(by)
    for more in _MORE:
        there = rounded_out(v.scale(v.unit(by), size + more))
        if ok(shifted_item(item, there)):
            return f"Move {item.id} {toward(there)}.", (item.id, there)
    return None


def slid_item(item: Item, by: float) -> Item | None:
    """A side tuner after a slide along its edge, mm towards the tip; None past the ends of the edge."""
    seat, (outline, blank) = item.frame.seat, item.ground
    along = seat.along + by
    if not 0 <= along <= edge(outline, item.frame.side).length:
        return None
    depth = item.tuner.place.depth if isinstance(item.tuner.place, EdgePlace) else None
    place = EdgePlace(side=item.frame.side, along=along, depth=depth)
    return tuner_item(replace(item.tuner, place=place), item.pattern, None, outline, blank)


def shifted_item(item: Item, by: Vec2) -> Item:
    """Anything but a side tuner after a plan shift in mm. A member of a row leaves it and keeps its turn."""
    if item.tuner is None:
        solids = item.solids.moved(np.array([*by, 0.0]))
        moved = tuple(dataclasses.replace(d, start=(d.start[0] + by[0], d.start[1] + by[1], d.start[2]))
                      for d in item.drillings)
        return dataclasses.replace(item, solids=solids, drillings=moved)
    outline, blank = item.ground
    place = item.tuner.place
    if isinstance(place, FreePlace):
        place = replace(place, at=v.add(place.at, by))
    else:
        turn = math.degrees(math.atan2(item.frame.u[1], item.frame.u[0]))
        place = FreePlace(at=v.add(plan(item.frame.origin), by), turn=turn)
    return tuner_item(replace(item.tuner, place=place), item.pattern, None, outline, blank)


def rounded_out(shift: Vec2) -> Vec2:
    """The shift with both parts rounded away from zero to tenths of a millimetre; what is under 0.02 mm goes."""
    return tuple(0.0 if abs(c) < 0.02 else math.copysign(up(abs(c)), c) for c in shift)


def middle(item: Item) -> Vec2:
    """Where an item sits in plan."""
    return plan(item.frame.origin) if item.frame is not None else plan(item.drillings[0].start)


def _least(good: Callable[[np.ndarray, np.ndarray], np.ndarray], ways: int,
           lacking: float, farthest: float) -> tuple[int, float] | None:
    """(way, amount in mm) of the smallest amount that is good in any of several ways; coarse steps first, then tenths.

    `good` tells for indices of ways and for amounts whether they do, way after way.
    """
    least = max(0.0, math.floor(0.9 * lacking))
    coarse = least + np.arange(1, math.ceil((farthest - least) / _COARSE) + 1) * _COARSE
    table = good(np.arange(ways), coarse).reshape(ways, -1)
    found = np.where(table.any(axis=1), coarse[np.argmax(table, axis=1)], np.inf)
    way = int(np.argmin(found))
    if not np.isfinite(found[way]):
        return None
    fine = found[way] - np.arange(round(_COARSE / _FINE) - 1, -1, -1) * _FINE
    return way, float(fine[int(np.argmax(good(np.array([way]), fine)))])
