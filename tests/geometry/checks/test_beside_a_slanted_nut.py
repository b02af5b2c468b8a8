"""What lies at a slanted nut line, along which the outline ends, is told there and not as a rail or an edge too; with one's own trigonometry."""

import math

import pytest
from msgspec.structs import replace

from geometry.accuracy.bench import bench_of
from geometry.checks import check
from geometry.layout import Nut, Ramp, Slot, StraightSlot
from tests.geometry.accuracy.specimens import endless
from tests.geometry.checks.heads import head, loop, slot


def slanted(degrees, **parts):
    """The oblong head, which ends along a nut line that the bass end of leads to the tip by so many degrees, drawn in tenths."""
    rise = round(40 * math.tan(math.radians(degrees)), 1)
    return head(outline=loop((-40.0, rise), (40.0, -rise), (40.0, 180.0), (-40.0, 180.0)), nut=Nut(slant=degrees), pins=(), **parts)


def told(layout, *kinds):
    return {snag.kind: snag.measured for snag in check(layout).snags if snag.kind in kinds}


@pytest.mark.parametrize("degrees", [0.0, 8.0, -8.0, 12.0])
def test_a_slot_near_it_has_its_rail_at_the_edges(degrees):
    turn = math.radians(degrees)
    near = 14 * math.sin(turn) + 14 * math.cos(turn) - 6  # the round end of 6 about (14, 14)
    layout = slanted(degrees, slots=(slot(x=14.0, nut=14.0),))
    expected = {"slot-to-nut": pytest.approx(near, abs=1e-6)} if near < 10 else {}
    assert told(layout, "slot-to-nut", "rail", "slot-outside") == expected
    bench = bench_of(layout)
    nominal = {spec.kind: float(spec.measure(bench.nominal)[0]) for spec in bench.specs(endless(0)) if spec.kind in ("slot-to-nut", "rail")}
    # 40 - 14 - 6 to the treble edge; before a nut line that is farther off the whole outline counts.
    assert nominal["slot-to-nut"] == pytest.approx(near, abs=1e-6) and (near >= 10 or nominal["rail"] == pytest.approx(20.0, abs=1e-6))


@pytest.mark.parametrize("degrees", [0.0, 8.0, -8.0])
def test_a_ramp_near_it_has_its_edge_beside(degrees):
    """It begins 1 mm before the nut line, where 2 are wanted, with both corners of 12 mm about x = 0 in the wood."""
    turn = math.radians(degrees)
    begins = (1 + 6 * abs(math.sin(turn))) / math.cos(turn)
    layout = slanted(degrees, slots=(replace(slot(x=0.0, nut=20.0), ramp=Ramp(length=14.0 - begins, depth=1.0)),))
    assert told(layout, "ramp-to-nut", "ramp-to-outline") == {"ramp-to-nut": pytest.approx(1.0, abs=1e-6)}


@pytest.mark.parametrize("degrees", [0.0, 10.0, -10.0])
def test_a_pocket_that_the_edge_cuts_reaches_out_before_the_nut_line_only(degrees):
    """8 wide about x = 38, from behind the nut line on: 2 mm lie beyond the edge at 40; where the neck goes on nothing is out."""
    pocket = Slot(id="pocket", shape=StraightSlot(nut_end=(38.0, -25.0), tip_end=(38.0, 20.0), width=8.0), depth=9.0, there=True)
    layout = slanted(degrees, slots=(pocket,))
    assert told(layout, "slot-outside", "rail") == {"slot-outside": pytest.approx(-2.0, abs=0.08)}
    bench = bench_of(layout)
    simulated, = [float(spec.measure(bench.nominal)[0]) for spec in bench.specs(endless(0)) if spec.kind == "slot-outside"]
    assert simulated == pytest.approx(-2.0, abs=0.08)
    behind = replace(pocket, shape=replace(pocket.shape, tip_end=(38.0, -14.0)))
    assert told(slanted(degrees, slots=(behind,)), "slot-outside", "rail") == {}
