"""Sections laid across a head by hand, point by point: what is drawn there, and whether the file has wood, waste or a hole there.

Holes, outline and slots are worked out anew from the file alone (tests/outside/from_file.py); of what is drawn, the last counts.
"""

import json
import random
from pathlib import Path

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from app.formats.headstock import encode, read
from geometry.curves.polygons import polygon
from geometry.drawing.line_section import line_section
from geometry.drawing.marks import Area
from tests.outside.from_file import Bored, FromFile, slot_points

SAMPLES = ("six-in-line", "twelve-string-mixed")
LINES, POINTS = 6, 30
CLOSE = 0.06
"""mm: points nearer to a wall than chords and flat ends may stray are not asked"""


class Head:
    """A head as the file has it, slots without ramps; a side bore goes on to the square edge, a pilot begins at its seat."""

    def __init__(self, file: dict) -> None:
        self.found = FromFile(file)
        self.outline = shapely.Polygon(self.found.outline[::10])
        self.slots = [(shapely.Polygon(slot_points(slot["shape"])).simplify(0.001), min(slot.get("depth") or self.found.thick, self.found.thick))
                      for slot in file["slots"]]

    def at(self, p: np.ndarray, z: float) -> str | None:
        """wood, waste or gone; None too near to tell."""
        spot, gone = shapely.Point(p), False
        if spot.distance(self.outline.exterior) < CLOSE:
            return None
        for area, depth in self.slots:
            if spot.distance(area.exterior) < CLOSE or area.contains(spot) and abs(z - depth) < CLOSE:
                return None
            gone |= area.contains(spot) and z < depth
        for bored in self.found.holes:
            inside = self._inside(bored, np.array((*p, z)))
            if abs(inside) < CLOSE:
                return None
            gone |= inside > 0
        return "gone" if gone else "wood" if self.outline.contains(spot) else "waste"

    def begins(self, bored: Bored) -> float:
        """Where the axis of a bore from the side meets the square edge, mm from its seat: 0 or less."""
        return ((self.found.blank["treble"] if bored.side == "treble" else -self.found.blank["bass"]) - bored.start[0]) / bored.way[0]

    def _inside(self, bored: Bored, p: np.ndarray) -> float:
        """How far a point lies inside a bore, mm; negative outside it."""
        along = (p - bored.start) @ bored.way
        begins = self.begins(bored) if bored.side and bored.role not in ("screw", "pin") else 0.0
        return min(bored.radius - float(np.linalg.norm(p - bored.start - along * bored.way)), along - begins, bored.depth - along)


@pytest.mark.parametrize("name", SAMPLES)
def test_a_section_shows_wood_where_there_is_wood(name):
    layout = read(Path(f"samples/{name}.headstock.json"))
    layout = replace(layout, slots=tuple(replace(slot, ramp=None) for slot in layout.slots),
                     tuners=tuple(replace(tuner, flat=None) for tuner in layout.tuners),
                     blank=replace(layout.blank, face_veneer=0.0, back_veneer=0.0, scarf=None))
    head, chance, blank, seen = Head(json.loads(encode(layout))), random.Random(len(name)), layout.blank, []
    lines = [(*(np.array((chance.uniform(-blank.bass, blank.treble), chance.uniform(1.0, blank.tip))) for _ in range(2)), blank.thickness / 2)
             for _ in range(LINES)]
    lines += [(bored.start[:2] + head.begins(bored) * bored.way[:2], bored.start[:2] + 30.0 * bored.way[:2], bored.start[2])
              for bored in head.found.holes if bored.side == "treble"][:LINES]
    for a, b, level in lines:
        drawn = [(mark.style, polygon(mark.outer)) for mark in line_section(layout, tuple(a.tolist()), tuple(b.tolist())) if isinstance(mark, Area)]
        for _ in range(POINTS):
            s, z = chance.uniform(0.0, float(np.hypot(*(b - a)))), chance.choice((level, chance.uniform(CLOSE, blank.thickness - CLOSE)))
            there = head.at(a + (b - a) * s / np.hypot(*(b - a)), z)
            if there is not None:
                last = [style for style, area in drawn if area.contains(shapely.Point(s, -z))][-1]
                assert (last if last in ("wood", "waste") else "gone") == there, (a, b, s, z)
                seen.append(there)
    assert {"wood", "waste", "gone"} == set(seen) and len(seen) > 0.8 * LINES * POINTS
