"""The way out of a slot of very many corners: as long as with all of it, though no more of it is brought together than lies about it."""

import math
import random

import pytest
import shapely
from msgspec.structs import replace

from geometry.layout import slot_path
from geometry.solids import ways_out
from geometry.solids.walls import Wall
from geometry.solids.ways_out import from_slot
from tests.geometry.checks.heads import drawn
from tests.outside.overlap_cases import drilling


def teeth(chance, count):
    """A slot of so many corners, every other of them farther in by a random depth."""
    return drawn("s", *((10 * far * math.cos(turn), 40 * far * math.sin(turn)) for turn, far in (
        (2 * math.pi * i / count, 1.0 if i % 2 else chance.uniform(0.6, 0.98)) for i in range(count))))


def bores(chance):
    """(a drilling, how near to each other its two ways come in mm): a level one that runs into the slot, an upright one in it.

    About the upright one the slot is grown by arcs of 256 chords a quarter turn, which begin somewhere else in a part of it.
    """
    turn, y = chance.uniform(-0.5, 0.5), chance.uniform(-30, 30)
    yield drilling((20.0, y, 8.0), (-math.cos(turn), math.sin(turn), 0.0), chance.uniform(12, 16), chance.uniform(0.8, 2)), 1e-8
    yield drilling((chance.uniform(-9, 9), chance.uniform(-30, 30), 0.0), (0.0, 0.0, 1.0), 16.0, chance.uniform(0.8, 5)), 5e-5


@pytest.mark.parametrize("seed", [1, 3])
def test_the_way_out_is_as_long_as_with_all_of_the_slot(monkeypatch, seed):
    chance = random.Random(seed)
    slot = teeth(chance, 520)
    wall, together, real = Wall(slot_path(slot)), [], shapely.union_all
    monkeypatch.setattr(shapely, "union_all", lambda areas, **words: together.append(len(areas)) or real(areas, **words))
    for bore, near in bores(chance):
        together.clear()
        found, few = from_slot(bore, slot, wall), sum(together)
        with monkeypatch.context() as whole:
            whole.setattr(ways_out, "_MANY", 10**9)
            together.clear()
            every = from_slot(bore, slot, wall)
        assert found.depth == pytest.approx(every.depth, abs=near)
        assert found.way == pytest.approx(every.way, abs=1e-2)
        assert bore.upright or few < sum(together) / 2


def test_no_more_than_the_widest_strip_of_a_bore_asks_for_all_of_a_slot(monkeypatch):
    """The floor runs through a bore: what is left of it above the floor is narrower the farther it sinks."""
    shape, together, real = teeth(random.Random(2), 200), [], shapely.union_all
    slot = replace(shape, depth=7.0)
    bore = drilling((20.0, 40.5, 8.0), (-1.0, 0.0, 0.0), 36.0, 3.0)
    monkeypatch.setattr(shapely, "union_all", lambda areas, **words: together.append(
        sum(shapely.get_num_coordinates(area) for area in areas)) or real(areas, **words))
    out = from_slot(bore, slot, Wall(slot_path(slot)))
    assert len(together) > 10 and 0 < out.way[2] < 1, "led out aslant"
    assert sorted(together)[len(together) // 2] < max(together) / 10
