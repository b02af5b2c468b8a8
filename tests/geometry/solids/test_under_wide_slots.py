"""A level bore deep inside a wide blind slot: straight down is the way, and next to nothing has to be united to know that."""

import pytest
from msgspec.structs import replace

from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.layout import DrawnSlot, Slot
from geometry.solids import sums
from geometry.solids.ways_out import from_slot
from tests.property.layouts import DEMO


@pytest.fixture
def unions(monkeypatch) -> list[int]:
    """How many areas were united, each time."""
    counted: list[int] = []
    unite = sums.shapely.union_all
    monkeypatch.setattr(sums.shapely, "union_all", lambda areas, **more: counted.append(len(areas)) or unite(areas, **more))
    return counted


@pytest.mark.parametrize("depth", [7.0, 9.0, 12.0])
def test_a_slot_that_is_the_whole_outline_is_led_out_of_downwards(unions, depth):
    scene = scene_of(replace(DEMO, slots=(Slot(id="all of it", shape=DrawnSlot(loop=DEMO.outline), depth=depth),)), Memo())
    slot = scene.openings[0]
    bores = [d for item in scene.items if item.mount == "side" for d in item.drillings if d.role == "post"]
    for bore in bores:
        out = from_slot(bore, slot.slot, slot.wall)
        assert out.way == (0.0, 0.0, 1.0)
        assert out.depth == pytest.approx(depth - bore.start[2] + bore.radius, abs=1e-12)
    assert bores and len(unions) <= 20 * len(bores)  # of two turns, where 55 were asked for
