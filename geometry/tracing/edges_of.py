"""The edge of a shape in a grey picture, to a fraction of a point."""

from __future__ import annotations

import contourpy
import numpy as np
import shapely

from geometry.errors import GeometryError
from geometry.saying import say
from geometry.vectors import Vec2

LEAST_POINTS = 12
"""Loops of fewer points are specks."""


def threshold(grey: np.ndarray) -> float:
    """The grey level that parts a picture best into dark and light (Otsu 1979: greatest variance between the two).

    Half way between the means of both parts, so that a blurred edge keeps its
    place. A picture of one grey gives that grey.
    """
    counts = np.bincount(np.clip(np.asarray(grey), 0, 255).astype(np.uint8).ravel(), minlength=256).astype(float)
    levels = np.arange(256)
    below, above = np.cumsum(counts), counts.sum() - np.cumsum(counts)
    mass = np.cumsum(counts * levels)
    with np.errstate(divide="ignore", invalid="ignore"):
        dark, light = mass / below, (mass[-1] - mass) / above
        between = np.where((below > 0) & (above > 0), below * above * (dark - light) ** 2, -1.0)
    best = int(between.argmax())
    if between[best] <= 0:
        return float(levels[counts.argmax()])
    return float((dark[best] + light[best]) / 2)


def softened(grey: np.ndarray, times: int = 1) -> np.ndarray:
    """The picture with grain taken off: each point mixed with its neighbours (1 2 1), `times` over."""
    out = np.asarray(grey, dtype=np.float32)
    for _ in range(times):
        for axis in (0, 1):
            pad = np.pad(out, [(1, 1) if a == axis else (0, 0) for a in (0, 1)], mode="edge")
            take = (slice(None),) * axis
            out = (pad[(*take, slice(None, -2))] + 2 * pad[(*take, slice(1, -1))] + pad[(*take, slice(2, None))]) / 4
    return out


def loops(grey: np.ndarray, level: float) -> list[np.ndarray]:
    """Closed lines where the picture crosses a grey level, (n, 2) in picture coordinates, first point repeated.

    Lines that run out of the picture are no loops.
    """
    if min(grey.shape) < 2:
        return []
    height, width = grey.shape
    made = contourpy.contour_generator(np.arange(width) + 0.5, np.arange(height) + 0.5, grey, name="serial")
    return [line for line in made.lines(level) if len(line) >= LEAST_POINTS and np.array_equal(line[0], line[-1])]


def edge_about(grey: np.ndarray, level: float, at: Vec2) -> np.ndarray:
    """The largest loop round a point of the picture. GeometryError with what to do when there is none."""
    point = shapely.Point(at)
    best, most = None, 0.0
    for line in loops(softened(grey), level):
        x0, y0 = line.min(axis=0)
        x1, y1 = line.max(axis=0)
        if not (x0 < at[0] < x1 and y0 < at[1] < y1) or (x1 - x0) * (y1 - y0) <= most:
            continue
        ring = shapely.Polygon(line)
        if ring.area > most and shapely.contains(ring, point):
            best, most = line, ring.area
    if best is None:
        raise GeometryError(say("No closed edge runs round this place: press inside the head, and see that all of it "
                                "is in the picture and differs from what is behind it; or shift the level of grey."))
    return best
