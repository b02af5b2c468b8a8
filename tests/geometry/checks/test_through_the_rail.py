"""A side bore has to let all of its post through the rail, whichever way the slot's wall runs."""

import math
import random

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from geometry.accuracy.bench import bench_of
from geometry.accuracy.spec import Reach
from geometry.checks import check
from geometry.edits import set_field
from geometry.layout import DrawnSlot, Slot, StraightSlot
from geometry.layout.slots import Ramp, slot_path
from tests.geometry.checks.heads import SIDE, bore, head, loop, pattern, side, slot


def _head(opening, depth, width=6.0):
    of = pattern("of", "side", bore(diameter=width + 0.2, surface="seat", depth=depth), post=(width, 40.0, 38.0))
    return head(tuners=(side("a", 100.0, of),), patterns=(of,), slots=(opening,))


def _not_reached(layout):
    return [snag for snag in check(layout).snags if snag.kind == "slot-not-reached"]


def test_where_the_wall_leans_one_flank_comes_last():
    """The wall of a slot that leans by 3 in 4 lies 3 * 3 / 4 deeper at a flank than on the axis, which meets it 12.5 from the seat."""
    opening = Slot(id="slot", shape=StraightSlot(nut_end=(-10.0, 60.0), tip_end=(50.0, 140.0), width=12.0))
    snag, = _not_reached(_head(opening, 13.0))
    assert snag.needed == pytest.approx(12.5 + 2.25) and snag.measured == 13.0 and "1.8 mm deeper" in snag.text + snag.cure
    assert _not_reached(_head(opening, 14.75)) == []
    assert "ends 0.50 mm before slot" in _not_reached(_head(opening, 12.0))[0].text


@pytest.mark.parametrize("which", range(30))
def test_as_many_rays_across_the_post_tell(which):
    rng = random.Random(which)
    lean, depth, width = math.radians(rng.uniform(-35, 35)), rng.uniform(10, 26), rng.uniform(3, 8)
    if which % 2:
        opening = Slot(id="slot", shape=StraightSlot(nut_end=(14 - 60 * math.tan(lean), 40.0), tip_end=(14 + 60 * math.tan(lean), 160.0), width=12.0))
    else:
        bulge = rng.uniform(-0.3, 0.3)
        opening = Slot(id="slot", shape=DrawnSlot(loop=loop((8.0, 60.0), (20.0 + rng.uniform(-4, 4), 60.0, bulge), (20.0, 140.0), (8.0, 140.0))))
    layout = _head(opening, depth, width)
    area = shapely.Polygon(slot_path(opening).flatten(1e-6))
    starts = [shapely.intersection(shapely.LineString([(40.0, y), (-60.0, y)]), area) for y in np.linspace(100 - width / 2, 100 + width / 2, 201)]
    through = max(40.0 - line.bounds[2] for line in starts)
    told = _not_reached(layout)
    assert bool(told) == (depth < through)
    if told:
        assert told[0].needed == pytest.approx(through, abs=1e-3)
        enough = set_field(layout, ("patterns", "of", "bores", 0, "depth"), depth + math.ceil((through - depth) * 10) / 10)
        assert _not_reached(enough) == []
    bench = bench_of(layout)
    still = np.zeros(len(bench.model.recipes))
    lacks = [spec.measure(bench.nominal)[0] for spec in bench.specs(Reach(still, still, 0.0, 0.0)) if spec.kind == "slot-not-reached"]
    assert lacks[0] == pytest.approx(depth - through, abs=0.02)


@pytest.mark.parametrize(("wide", "along", "measured"), [
    (None, 60.0, []), (12.0, 60.0, []), (16.0, 60.0, [-2.0]), (20.0, 64.0, [math.hypot(4.0, 1.0) - 3.0]), (20.0, 66.7, [])])
def test_of_its_own_slots_ramp_a_bore_keeps_clear_where_that_cuts_the_rail(wide, along, measured):
    """The ramp goes on to y = 60, where it is 7 deep; the slot is 12 wide. The bore of 6 lies 8 below the face: its top, under the rail, at 5."""
    layout = head(tuners=(side("a", along),), patterns=(SIDE,), slots=(replace(slot(), ramp=Ramp(length=8.0, depth=4.0, width=wide)),))
    assert [snag.measured for snag in check(layout).snags if snag.kind == "hole-to-ramp"] == pytest.approx(measured, abs=1e-3)
