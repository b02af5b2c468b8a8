"""A nut line that is turned for fanned frets: strings, wood before it, its drawing and its mirror image, by hand."""

import math

import numpy as np
import pytest
from msgspec.structs import replace

from geometry.accuracy.bench import bench_of
from geometry.accuracy.spec import Reach
from geometry.checks import check
from geometry.drawing.shapes import nut_line
from geometry.edits import mirror_layout
from geometry.errors import GeometryError
from geometry.layout import Margins, Nut, Ramp, Slot, StraightSlot, String, slot_path
from geometry.solids.walls import Wall
from geometry.strings.dive import dives_into
from geometry.strings.pairing import propose_pairing
from geometry.strings.ramps import ramp_for
from geometry.strings.runs import Run, runs
from tests.geometry.checks.cases_strings import necked
from tests.geometry.checks.heads import FACE, face, head, loop

TURN = math.radians(10.0)
SLANTED = Nut(spread=20.0, height=6.0, slant=10.0)
TWO = (String(id="1", diameter=1.0, course=1), String(id="2", diameter=0.6, course=2))
POSTS = (face("a", -20.0, 80.0, turn=180.0, string="1", winds="treble"), face("b", 20.0, 80.0, string="2", winds="bass"))


def slanted(**parts):
    return head(**({"tuners": POSTS, "patterns": (FACE,), "strings": TWO, "nut": SLANTED} | parts))


def of(layout, kind):
    return [snag for snag in check(layout).snags if snag.kind == kind]


def test_the_bass_end_lies_nearer_the_tip():
    one, two = runs(slanted())
    assert one.nut == pytest.approx((-10.0, 10.0 * math.tan(TURN))) and two.nut == pytest.approx((10.0, -10.0 * math.tan(TURN)))
    assert one.length == pytest.approx(math.dist(one.nut, one.post))
    assert math.tan(one.side_angle) == pytest.approx((one.post[0] + 10.0) / (one.post[1] - one.nut[1]))


def test_a_proposal_and_the_checks_see_the_same_strings():
    layout = slanted()
    assert {run.string: run for run in propose_pairing(layout).runs} == {run.string: run for run in runs(layout)}


def test_its_line_is_as_wide_as_the_nut_square_to_the_centreline():
    line = nut_line(Nut(width=40.0, slant=10.0)).segments[0]
    assert line.start == pytest.approx((-20.0, 20.0 * math.tan(TURN))) and line.end == pytest.approx((20.0, -20.0 * math.tan(TURN)))


@pytest.mark.parametrize(("slant", "x"), [(10.0, 14.0), (10.0, -14.0), (-25.0, 14.0), (0.0, 14.0)])
def test_the_wood_between_a_slot_and_the_line_is_square_to_it(slant, x):
    # The round end is about (x, 30) with a radius of 6.
    opening = Slot(id="slot", shape=StraightSlot(nut_end=(x, 30.0), tip_end=(x, 150.0), width=12.0))
    turned = math.radians(slant)
    wood = x * math.sin(turned) + 30.0 * math.cos(turned) - 6.0
    layout = head(slots=(opening,), nut=Nut(slant=slant), margins=Margins(slot_nut=40.0))
    snag, = of(layout, "slot-to-nut")
    assert snag.measured == pytest.approx(wood, abs=1e-9)
    assert snag.push == pytest.approx((0.0, (40.0 - wood) / math.cos(turned)))
    moved = replace(opening, shape=replace(opening.shape, nut_end=(x, 30.0 + snag.push[1] + 1e-6)))
    assert of(replace(layout, slots=(moved,)), "slot-to-nut") == []


def test_a_ramp_keeps_clear_of_the_line_at_its_nearer_corner():
    opening = Slot(id="slot", shape=StraightSlot(nut_end=(-14.0, 60.0), tip_end=(-14.0, 150.0), width=12.0),
                   ramp=Ramp(length=50.0, depth=5.0))
    snag, = of(head(slots=(opening,), nut=Nut(slant=10.0)), "ramp-to-nut")
    assert snag.measured == pytest.approx(-20.0 * math.sin(TURN) + 4.0 * math.cos(TURN))
    assert of(head(slots=(opening,)), "ramp-to-nut") == []


@pytest.mark.parametrize("kind", ["slot-to-nut", "ramp-to-nut"])
def test_the_simulation_measures_what_the_checks_tell(kind):
    opening = Slot(id="slot", shape=StraightSlot(nut_end=(-14.0, 60.0), tip_end=(-14.0, 150.0), width=12.0),
                   ramp=Ramp(length=50.0, depth=5.0))
    layout = head(slots=(opening,), nut=Nut(slant=10.0), margins=Margins(slot_nut=60.0))
    bench = bench_of(layout)
    still = np.zeros(len(bench.model.recipes))
    spec, = [spec for spec in bench.specs(Reach(still, still, 0.0, 0.0)) if spec.kind == kind]
    snag, = of(layout, kind)
    assert float(spec.measure(bench.nominal)[0]) == pytest.approx(snag.measured, abs=1e-6)


def test_strings_start_on_the_wood_that_lies_at_the_line():
    # 9 mm to either side for 10 mm from y = 0: the string at -10 starts at y = 1.8, the one at 10 where the neck goes on.
    found = sorted(of(replace(necked(9.0), nut=SLANTED), "string-off-wood"), key=lambda snag: snag.where)
    assert [snag.measured for snag in found] == pytest.approx([-1.5, -1.3])
    assert found[0].where == pytest.approx((-10.0, 10.0 * math.tan(TURN), 0.0))
    wide = replace(slanted(), outline=loop((-9.0, 0.0), (40.0, 0.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 1.0), (-9.0, 1.0)))
    assert of(wide, "string-off-wood") == []  # it is narrow before the line only


def test_strings_that_run_beside_each_other_are_still_measured():
    # Both slope alike, 1.1 mm apart beside each other: less than half a millimetre between their skins.
    side_by_side = (face("a", 26.0, 100.0, string="1", winds="bass"), face("b", 27.2, 130.0, string="2", winds="bass"))
    made = slanted(tuners=side_by_side, nut=replace(SLANTED, spread=1.0))
    one, two = runs(made)
    gap = math.hypot(two.nut[0] - one.nut[0], two.nut[1] - one.nut[1]) * abs(math.sin(
        math.atan2(two.nut[1] - one.nut[1], two.nut[0] - one.nut[0]) - math.atan2(one.post[1] - one.nut[1], one.post[0] - one.nut[0])))
    snag, = of(made, "string-to-string")
    assert snag.measured <= gap - 0.8 + 1e-6


def test_the_mirror_image_leans_the_other_way_and_has_the_same_snags():
    layout = slanted(slots=(Slot(id="slot", shape=StraightSlot(nut_end=(14.0, 12.0), tip_end=(14.0, 60.0), width=10.0)),))
    there = mirror_layout(layout)
    assert there.nut.slant == -10.0 and mirror_layout(there) == layout
    one, other = ({(s.kind, round(s.measured, 9)) for s in check(each).snags if s.measured is not None} for each in (layout, there))
    assert one == other and any(kind == "slot-to-nut" for kind, _ in one)


@pytest.mark.parametrize(("slant", "x"), [(12.0, -14.0), (12.0, 14.0), (0.0, 14.0)])
def test_a_ramp_is_proposed_as_near_to_the_line_as_the_checks_let_it_lie(slant, x):
    """12 mm about x with its round end from y = 12 on: flat face before it is 12 cos + x sin - 6 sin, less 2 for the nut."""
    opening = Slot(id="slot", shape=StraightSlot(nut_end=(x, 18.0), tip_end=(x, 150.0), width=12.0))
    turned = math.radians(slant)
    most = (x * math.sin(turned) + 12.0 * math.cos(turned) - 6.0 * math.sin(turned) - 2.0) / math.cos(turned)
    lengths = []
    for low in range(1, 160):
        string = Run("1", "a", Nut(slant=slant).at(x), (x, 100.0), 0.0, -low / 10, 1.2, 1.0)
        found = tuple(one for one in dives_into([string], opening, Wall(slot_path(opening))) if one is not None)
        try:
            ramp = ramp_for(opening, found, Nut(slant=slant), 40.0, Margins())
        except GeometryError as error:
            assert "from the nut" in str(error)
            continue
        if ramp is not None:
            lengths.append(ramp.length)
            layout = head(slots=(replace(opening, ramp=ramp),), nut=Nut(slant=slant))
            assert of(layout, "ramp-to-nut") == []
    assert most < 0 and lengths == [] or most - 0.6 < max(lengths) < most
