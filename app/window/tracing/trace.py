"""Proposing an outline from the picture: pure, so that it is found and fitted beside the window."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from msgspec import Struct

from app.formats.drawing_in.likeliest import WIDEST
from app.formats.picture_in import colours_of, grey_of
from app.window.background.waiting import Progress
from geometry.curves import Path
from geometry.errors import GeometryError
from geometry.layout import Nut
from geometry.layout.picture import Picture
from geometry.tracing.colours import alike, parted
from geometry.tracing.edges_of import edge_about
from geometry.tracing.edges_of import threshold as threshold_of
from geometry.tracing.fit import fit
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.to_nut import to_nut
from geometry.vectors import Vec2

BESIDE = 3.0
"""mm beyond the ends of the nut up to which what lies behind its line is the neck: shoulders that hang lower stand farther out."""
AHEAD = (2.0, 8.0)
"""mm before the nut line where the wood of the head is looked at"""
RINGS = (2.0, 4.0, 6.0, 8.0, 10.0, 12.0)
"""mm about the place that was pressed at which the colour of the wood is taken: most lie beside a bore that is pressed on"""
BESIDE_HEAD = (2.0, 4.0, 6.0, 8.0)
"""mm beside the widest head where the colour of what lies behind it is taken"""
ALONG = (0, 160, 4)
"""mm before the nut line: from, to and step of these places"""
ROWS = 64
"""Rows of a picture that are looked at at a time."""


class Proposal(Struct, frozen=True, eq=False):
    """A smooth outline, how far it strays from the edge in the picture (mm), and the level of grey that parted it."""

    path: Path
    deviation: float
    level: float


def propose(picture: Picture, nut: Nut, at: Vec2, level: float | None, tolerance: float, progress: Progress | None) -> Proposal:
    """The outline about a point of the picture; a neck that goes on behind the nut, and perhaps out of the picture, is cut there.

    Grey level None takes the one that parts the picture best, or what is near the point. GeometryError or
    FormatError with a sentence when there is no such edge.
    """
    place = PlaneMap(picture.place)
    grey = _levels(picture.jpeg, place, nut, at)
    if progress is not None:
        progress.tell(0.02)
    widest = WIDEST / place.size_at(at)
    wanted = threshold_of(grey) if level is None else level
    try:
        edge = edge_about(_cut(grey, place, nut, wanted), wanted, at, widest)
    except GeometryError:
        if level is not None:
            raise
        # What parts a sheet from a dark table is no level for pale wood on that sheet.
        wanted = threshold_of(_near(grey, at, widest / 2))
        edge = edge_about(_cut(grey, place, nut, wanted), wanted, at, widest)
    made = fit(place.many(edge), tolerance, place.size_at(at),
               None if progress is None else lambda part: progress.tell(0.05 + 0.95 * part))
    path, moved = to_nut(made.path)
    return Proposal(path, made.deviation + moved, wanted)


def _levels(jpeg: bytes, place: PlaneMap, nut: Nut, at: Vec2) -> np.ndarray:
    """The greys of a picture, or the levels by which its colours part the head from what lies beside it where these do better."""
    colours = colours_of(jpeg)
    rows, columns = colours.shape[:2]
    x, y = place(at)
    wood = [(x + ring * math.cos(k), y + ring * math.sin(k)) for ring in RINGS for k in range(12)]
    beside = [(side * (WIDEST / 2 + far), nut.at(0.0)[1] + up) for side in (-1, 1) for far in BESIDE_HEAD for up in range(*ALONG)]

    def seen(places: Sequence[Vec2]) -> np.ndarray:
        there = place.inverse().many(np.array(places))
        u, v = there[((there >= 0) & (there < (columns, rows))).all(axis=1)].T.astype(int)
        return colours[v, u].astype(float)
    levels = parted(colours, alike(seen(wood)), seen(beside))
    return grey_of(jpeg) if levels is None else levels


def _cut(grey: np.ndarray, place: PlaneMap, nut: Nut, level: float) -> np.ndarray:
    """The picture with the neck behind the nut line as bright as what is not the head, or as it is where the picture does not reach the nut."""
    ahead = [place.inverse()((x, nut.at(x)[1] + y)) for x in np.linspace(-0.4, 0.4, 9) * nut.width for y in AHEAD]
    wood = [grey[int(y), int(x)] for x, y in ahead if 0 <= x < grey.shape[1] and 0 <= y < grey.shape[0]]
    if len(wood) < len(ahead):
        return grey
    other, point = (255.0 if np.median(wood) < level else 0.0), place.size_at(ahead[len(ahead) // 2])
    out = grey.astype(np.float32)
    m, x = place.matrix, np.arange(grey.shape[1], dtype=np.float32) + 0.5
    lines = np.array((m[0], nut.ahead @ m[:2], m[2]), dtype=np.float32)
    for top in range(0, grey.shape[0], ROWS):
        rows = out[top:top + ROWS]
        y = np.arange(top, top + len(rows), dtype=np.float32)[:, None] + 0.5
        across, before, far = (a * x + (b * y + c) for a, b, c in lines)
        share = np.where(np.abs(across / far) <= nut.width / 2 + BESIDE, np.clip(0.5 - before / far / point, 0.0, 1.0), 0.0)
        rows += share * (other - rows)
    return out


def _near(grey: np.ndarray, at: Vec2, far: float) -> np.ndarray:
    """What of a picture lies up to so many points from a point of it, to each side."""
    x, y = at
    return grey[max(0, int(y - far)):max(1, int(y + far)), max(0, int(x - far)):max(1, int(x + far))]


def over_picture(path: Path, picture: Picture) -> np.ndarray:
    """Points of a path (mm) in the picture."""
    return PlaneMap(picture.place).inverse().many(path.flatten(0.01))
