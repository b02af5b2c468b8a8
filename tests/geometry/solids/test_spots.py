"""Spots that were set down, found among thousands."""

import math
import random

import pytest

from geometry.layout import Spot
from geometry.solids import spots
from geometry.solids.spots import all_there, by_place
from geometry.tolerance import PRICKED

SURFACES = ("face", "back", "bass edge", "treble edge")


def test_a_spot_is_there_where_one_on_its_surface_is_no_farther_than_nobody_pricks_more_truly():
    """Against all pairs, on both sides of the borders of the squares in which spots are kept."""
    chance = random.Random(5)
    had = [Spot(surface=chance.choice(SURFACES), at=(chance.uniform(-1.0, 1.0), chance.uniform(-1.0, 1.0))) for _ in range(60)]
    places, found = by_place(had), []
    for _ in range(2000):
        spot = Spot(surface=chance.choice(SURFACES), at=(chance.uniform(-1.2, 1.2), chance.uniform(-1.2, 1.2)))
        found.append(all_there([spot], places))
        assert found[-1] == any(one.surface == spot.surface and math.dist(one.at, spot.at) <= PRICKED for one in had)
    assert {True, False} == set(found)


def test_an_outline_of_thousands_of_corners_costs_no_more_than_each_of_them(monkeypatch: pytest.MonkeyPatch):
    asked, dist = [], math.dist
    monkeypatch.setattr(spots.math, "dist", lambda *ends: asked.append(ends) or dist(*ends))
    line = [Spot(surface="face", at=(0.3 * i, 1.0)) for i in range(2000)]
    assert all_there(line, by_place(line)) and len(asked) == len(line)
