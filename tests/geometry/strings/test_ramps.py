"""The ramp that is proposed for strings, against every shorter and every shallower one in tenths of a millimetre."""

import math
import random

import pytest
from msgspec.structs import replace

from geometry.errors import GeometryError
from geometry.layout import Margins, Nut, Ramp, Slot, StraightSlot, slot_path
from geometry.solids.ramps import ramp_cut
from geometry.solids.walls import Wall
from geometry.strings.dive import dives_into, first_lacking
from geometry.strings.ramps import ramp_for
from geometry.strings.runs import Run
from geometry.tolerance import TOUCH

THICK = 18.0
NUT = Nut()
AIR = Margins().string_air


def dives(slot, runs):
    return tuple(one for one in dives_into(runs, slot, Wall(slot_path(slot))) if one is not None)


def string(name, nut, post, up, low, thick):
    """A string from x = `nut`, `up` mm above the face, to a post at a point, where it lies `low` mm below the face."""
    return Run(name, name, (nut, 0.0), post, 0.0, -low, up, thick)


def frees(slot, found, length, depth):
    cut = ramp_cut(replace(slot, ramp=Ramp(length=length, depth=depth)))
    return first_lacking([one.with_ramp(cut) for one in found], AIR - TOUCH) is None


def anything_frees(slot, found, length, most):
    return any(frees(slot, found, length, tenths / 10) for tenths in range(1, math.ceil(10 * most) + 1))


def heads(seed):
    """Slots with one to three strings that want a ramp."""
    rng = random.Random(seed)
    while True:
        width, x, y, turn = rng.choice((12.0, 14.0, 16.0, 18.0)), rng.uniform(-8, 8), rng.uniform(14, 30), math.radians(rng.uniform(-6, 6))
        start, end = (x, y + width / 2), (x + 90 * math.tan(turn), y + width / 2 + 90)
        slot, runs = Slot(id="s", shape=StraightSlot(nut_end=start, tip_end=end, width=width)), []
        for number in range(rng.choice((1, 2, 3))):
            share = rng.uniform(0.1, 0.95)
            post = (start[0] + (end[0] - start[0]) * share + rng.uniform(-0.35, 0.35) * width, start[1] + (end[1] - start[1]) * share)
            runs.append(string(str(number), x + rng.uniform(-0.6, 0.6) * width, post, rng.uniform(0.5, 3), rng.uniform(2, 8), rng.uniform(0.25, 1.4)))
        found = dives(slot, runs)
        try:
            ramp = ramp_for(slot, found, NUT, THICK, Margins()) if found else None
        except GeometryError:
            continue
        if ramp is not None:
            yield slot, found, ramp


SHORTEST = 3.0
"""mm that a ramp is long at least (common practice, no source)"""


@pytest.mark.parametrize("seed", [2, 5])
def test_no_shorter_ramp_frees_the_strings_and_at_its_length_hardly_a_shallower_one(seed):
    for (slot, found, ramp), _ in zip(heads(seed), range(30), strict=False):
        assert frees(slot, found, ramp.length, ramp.depth)
        shorter = round(ramp.length - 0.1, 1)
        assert shorter < SHORTEST or not anything_frees(slot, found, shorter, ramp.depth + 2)
        assert not anything_frees(slot, found, ramp.length, ramp.depth - 0.2)


def test_a_string_that_runs_into_the_wall_beside_it_makes_the_ramp_of_the_others_no_longer():
    """It comes down to the face far before the nut end, but not over it: a ramp does nothing for it."""
    slot = Slot(id="s", shape=StraightSlot(nut_end=(0.0, 28.0), tip_end=(0.0, 120.0), width=16.0))
    over = string("over", 0.0, (0.0, 70.0), 2.5, 4.0, 0.5)
    beside = string("beside", 10.0, (7.0, 90.0), 1.0, 3.0, 0.5)
    both = dives(slot, [over, beside])
    assert [one.over_an_end for one in both] == [True, False]
    assert ramp_for(slot, both, NUT, THICK, Margins()) == ramp_for(slot, both[:1], NUT, THICK, Margins())


def test_a_ramp_goes_less_deep_than_its_blind_slot():
    slot = Slot(id="s", shape=StraightSlot(nut_end=(0.0, 28.0), tip_end=(0.0, 120.0), width=16.0))
    found = dives(slot, [string("over", 0.0, (0.0, 70.0), 2.0, 6.0, 0.5)])
    free = ramp_for(slot, found, NUT, THICK, Margins())
    deep = free.depth
    assert deep > 0.5
    for depth, enough in ((deep + 0.05, True), (deep, False), (deep - 0.3, False)):
        blind = replace(slot, depth=depth)
        if enough:
            assert ramp_for(blind, found, NUT, THICK, Margins()) == free
        else:
            with pytest.raises(GeometryError, match="as deep as the slot"):
                ramp_for(blind, found, NUT, THICK, Margins())
