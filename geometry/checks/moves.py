"""Where a feature could go instead: the least plan shift that clears it, tried on the real cylinders."""

from __future__ import annotations

import math

import numpy as np

from geometry import vectors as v
from geometry.checks.items import Item, plan
from geometry.checks.words import toward, up
from geometry.layout.edges import Seat
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import clear
from geometry.vectors import Vec2

_FARTHEST = 15.0
"""mm: a cure that asks for more than this is no cure"""
_COARSE, _FINE = 0.5, 0.1


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


def way_clear(item: Item, own: Cylinders, other: Cylinders, needed: np.ndarray,
              push: Vec2) -> tuple[str, Vec2] | None:
    """(sentence, plan shift in mm) of the least move of an item that takes its cylinders clear of others, or None.

    A side tuner slides along its edge; everything else may go anywhere, tried
    along `push` and along both axes. `needed` is (n own, n other) in mm. The
    shift is rounded up to tenths of a millimetre and then tried again.
    """
    if item.held:
        return None
    if item.mount == "side":
        seat = item.frame.seat
        signs = np.array([1.0, -1.0])
        by = _least(lambda amounts: clears(slid(item, own, (signs[:, None] * amounts).reshape(-1)), other,
                                           needed).reshape(2, -1))
        if by is None:
            return None
        way, amount = by
        to = slid_point(seat, float(signs[way]) * amount)
        return f"Slide {item.id} {amount:.1f} mm to the {'tip' if way == 0 else 'nut'}.", v.sub(to, seat.point)
    ways = np.array([v.unit(push), (1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)])
    by = _least(lambda amounts: clears(
        shifted(own, (ways[:, None, :] * amounts[:, None]).reshape(-1, 2)), other, needed).reshape(5, -1))
    if by is None:
        return None
    way, amount = by
    for more in (0.0, 0.1, 0.2, 0.4):
        shift = rounded_out((float(ways[way][0] * (amount + more)), float(ways[way][1] * (amount + more))))
        if clears(shifted(own, np.array([shift])), other, needed).all():
            return f"Move {item.id} {toward(shift)}.", shift
    return None


def rounded_out(shift: Vec2) -> Vec2:
    """The shift with both parts rounded away from zero to tenths of a millimetre; what is under 0.02 mm goes."""
    return tuple(0.0 if abs(c) < 0.02 else math.copysign(up(abs(c)), c) for c in shift)


def middle(item: Item) -> Vec2:
    """Where an item sits in plan."""
    return plan(item.frame.origin) if item.frame is not None else plan(item.drillings[0].start)


def _least(good) -> tuple[int, float] | None:
    """(way, amount) of the smallest amount that is good in any way; coarse steps first, then tenths."""
    coarse = np.arange(1, round(_FARTHEST / _COARSE) + 1) * _COARSE
    table = good(coarse)
    found = np.where(table.any(axis=1), coarse[np.argmax(table, axis=1)], np.inf)
    way = int(np.argmin(found))
    if not np.isfinite(found[way]):
        return None
    fine = found[way] - np.arange(round(_COARSE / _FINE) - 1, -1, -1) * _FINE
    return way, float(fine[int(np.argmax(good(fine)[way]))])
