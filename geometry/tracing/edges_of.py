"""The edge of a shape in a grey picture, to a fraction of a point."""

from __future__ import annotations

import math

import contourpy
import numpy as np
import shapely

from geometry.errors import GeometryError
from geometry.saying import say
from geometry.vectors import Vec2

LEAST_POINTS = 12
"""Loops of fewer points are specks."""
HOLE = 0.03
"""Part of the largest loop below which a loop inside it is a hole and no head."""
NEAR = 7
"""Points to either side by which the shade of a place is judged."""


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


def edge_about(grey: np.ndarray, level: float, at: Vec2, widest: float = math.inf) -> np.ndarray:
    """The largest loop round a point of the picture whose inner side is as dark, or as light, as that point.

    So a head on a sheet is followed and not the sheet; nor is one that is drawn on it in lines, since a loop that is `widest` points across
    or more, the narrow way, is no head. Where only a small one is
    of that kind (the point lies in a hole of the head) the largest of all is taken.
    GeometryError with what to do when there is none.
    """
    soft = softened(grey)
    point, dark = shapely.Point(at), _shade(soft, at) < level
    around: list[tuple[float, bool, np.ndarray]] = []
    wide = False
    for line in loops(soft, level):
        x0, y0 = line.min(axis=0)
        x1, y1 = line.max(axis=0)
        if not (x0 < at[0] < x1 and y0 < at[1] < y1):
            continue
        ring = shapely.Polygon(line)
        if shapely.contains(ring, point):
            if _across(ring) < widest:
                around.append((ring.area, dark_inside(line) == dark, line))
            else:
                wide = True
    around.sort(key=lambda one: -one[0])
    if wide and not around:
        raise GeometryError(say("The edges round this place are farther apart than those of any head: press inside the head, or shift the level "
                                "of grey; or the picture is laid larger than it is, so lay it anew."))
    if not around:
        raise GeometryError(say("No closed edge runs round this place: press inside the head, and see that all of it "
                                "is in the picture and differs from what is behind it; or shift the level of grey."))
    meant = next((line for area, alike, line in around if alike and area > HOLE * around[0][0]), None)
    return around[0][2] if meant is None else meant


def _across(ring: shapely.Polygon) -> float:
    """How many points a loop measures across the narrow way, however it lies."""
    corners = shapely.get_coordinates(shapely.oriented_envelope(ring))
    return float(np.hypot(*np.diff(corners[:3], axis=0).T).min()) if len(corners) > 2 else 0.0


def _shade(grey: np.ndarray, at: Vec2) -> float:
    """The middle grey about a point: a streak of the wood or a speck does not count."""
    x, y = (int(c) for c in at)
    about = grey[max(0, y - NEAR):y + NEAR + 1, max(0, x - NEAR):x + NEAR + 1]
    return float(np.median(about)) if about.size else 0.0


def dark_inside(line: np.ndarray) -> bool:
    """Whether a loop of `loops` goes round something darker: the tracer keeps the lighter side to one hand."""
    x, y = line[:, 0], line[:, 1]
    return float((x[:-1] * y[1:] - x[1:] * y[:-1]).sum()) < 0
