"""A side bore and the far arm of the U-shaped slot that it runs into: the wood between the two, by hand and by separate shapes."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.accuracy import simulate
from geometry.checks import check
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.checks.snags import SPOILS, TIGHT
from geometry.cures import apply_cure, settle
from geometry.layout import DrawnSlot, Headstock, Loop, Node, Slot
from tests.geometry.checks.heads import bore, drawn, head, leaning, pattern, side

# The near arm from x = 20 to its inner wall at 8, the far arm from 4 to -4; they join below y = 72.
U = ((-4.0, 60.0), (20.0, 60.0), (20.0, 120.0), (8.0, 120.0), (8.0, 72.0), (4.0, 72.0), (4.0, 120.0), (-4.0, 120.0))


def bored(depth: float, along: float = 100.0, corners=U, outline=None, drill: str = "forstner") -> Headstock:
    """A bore 6 wide from the edge x = 40 and the slot; nothing else."""
    of = pattern("of", "side", bore(surface="seat", depth=depth, drill=drill), post=(6.0, depth, 26.0))
    slots = (corners,) if isinstance(corners, Slot) else (drawn("slot", *corners),)
    return head(tuners=(side("a", along, of),), patterns=(of,), slots=slots, **({} if outline is None else {"outline": outline}))


def told(layout: Headstock, kind: str = "side-bore-to-slot"):
    return [snag for snag in check(layout).snags if snag.kind == kind]


def test_the_wood_before_the_far_arm_by_hand() -> None:
    # 33 deep from x = 40 the bore ends at 7, 3 mm before the far arm: just what is wanted.
    assert told(bored(33.0)) == []
    near, = told(bored(34.0))
    assert (near.measured, near.needed, near.grade, set(near.between)) == (pytest.approx(2.0), 3.0, TIGHT, {"a", "slot"})
    assert near.where[:2] == pytest.approx((5.0, 100.0), abs=3.001)
    assert "2.0 mm from the far arm of slot" in near.text and "1.0 mm less deep" in near.cure
    into, = told(bored(37.0))
    assert (into.measured, into.grade) == (pytest.approx(-1.0), SPOILS)
    # Right across the far arm and on: drawn back from -6 to 4.
    assert told(bored(46.0))[0].measured == pytest.approx(-10.0)


def test_a_bore_that_ends_in_its_own_arm_is_left_alone() -> None:
    for depth in (24.0, 31.0, 31.999):
        assert told(bored(depth)) == []


def test_the_point_before_the_far_arm_by_hand() -> None:
    # A brad's point is 0.3 x 6 = 1.8 long: 34 deep it ends 0.2 before the far arm, 35 deep 0.8 in it.
    assert told(bored(34.0, drill="brad"), "drill-point") == []
    through, = told(bored(35.0, drill="brad"), "drill-point")
    assert through.measured == pytest.approx(-0.8)


def test_the_base_of_the_u_counts_beyond_the_inner_wall() -> None:
    # The corner of the end stands at (5, 73), the far arm at 4, the base at y = 72: as near the one as the other.
    assert told(bored(35.0, along=76.0))[0].measured == pytest.approx(1.0)
    # A shorter far arm that only a flank nears: it begins at y = 101, the flank ends at 103 and the end at x = 6.
    hook = ((-14.0, 60.0), (20.0, 60.0), (20.0, 120.0), (8.0, 120.0), (8.0, 72.0), (-6.0, 72.0), (-6.0, 110.0), (-14.0, 110.0))
    assert told(bored(34.0, corners=hook)) == []
    lip = ((20.0, 60.0), (20.0, 130.0), (-4.0, 130.0), (-4.0, 104.0), (4.0, 104.0), (4.0, 118.0), (8.0, 118.0), (8.0, 60.0))
    beside, = told(bored(34.0, corners=lip))
    assert beside.measured == pytest.approx(math.hypot(2.0, 1.0))


def test_a_flank_in_the_foot_of_the_slot_counts_however_short_its_other_arm_is() -> None:
    """The axis stands at y = 73, the flank 2 mm in the foot, whose upper side is y = 72: from x = 8 on there is no wood below the bore.

    It is measured from one radius beyond the inner wall, x = 5. Least of the ways out is up, by what the flank lies lower than the
    foot, or than the arm that ends 0.1 below the axis.
    """
    foot = ((-4.0, 60.0), (20.0, 60.0), (20.0, 120.0), (8.0, 120.0), (8.0, 72.0), (-4.0, 72.0))
    short_arm = (*foot[:-1], (4.0, 72.0), (4.0, 72.9), (-4.0, 72.9))
    far_away = ((-60.0, 60.0), *foot[1:-1], (-50.0, 72.0), (-50.0, 120.0), (-60.0, 120.0))
    for corners, deep in ((foot, -2.0), (short_arm, -2.9), (far_away, -2.0)):
        assert told(bored(32.0, 73.0, corners)) == []
        near, = told(bored(34.0, 73.0, corners))
        assert (near.measured, near.grade) == (pytest.approx(1.0), TIGHT) and "far arm of slot" in near.text
        into, = told(bored(46.0, 73.0, corners))
        assert (into.measured, into.grade) == (pytest.approx(deep), SPOILS)
        thin, = told(bored(46.0, 76.5, corners))
        assert thin.measured == pytest.approx(3.5 + deep), "of wood between the flank and the foot, or the arm in it"
        assert told(bored(46.0, 79.0, corners)) == [], "3 mm of wood below the flank, and more"
        assert simulate(bored(46.0, 73.0, corners), 300, 1).of(into).spoiled == 1.0


def test_a_slot_of_one_arm_is_no_other_one() -> None:
    askew = ((8.0, 60.0), (22.0, 60.0), (28.0, 150.0), (14.0, 150.0))
    tooth = ((8.0, 60.0), (20.0, 60.0), (20.0, 120.0), (8.0, 120.0), (8.0, 102.0), (9.5, 101.5), (8.0, 101.0))
    steep = ((20.0, 60.0), (20.0, 102.0), (-22.0, 60.0))
    round_ = Slot(id="slot", shape=DrawnSlot(loop=Loop(nodes=(Node(at=(20.0, 60.0)), Node(at=(20.0, 140.0), bulge=1.0),
                                                              Node(at=(0.0, 140.0), bulge=0.2), Node(at=(0.0, 60.0), bulge=1.0)))))
    for corners in (askew, tooth, steep, round_):
        for depth in (24.0, 29.0, 32.0, 34.5, 40.0, 50.0):
            for along in (76.0, 90.0, 97.0, 100.0, 118.0):
                assert told(bored(depth, along, corners)) == [] == told(bored(depth, along, corners), "drill-point")


@settings(max_examples=60)
@given(depth=st.floats(30.0, 60.0), tongue=st.floats(1.0, 9.0), lean=st.floats(0.0, 12.0), turn=st.floats(-12.0, 12.0),
       wide=st.floats(4.0, 12.0))
def test_it_is_the_distance_to_the_far_arm_drawn_by_itself(depth, tongue, lean, turn, wide) -> None:
    """Arms and base as three oblongs of the polygon library; the base lies far from the bore."""
    cos, sin, middle = math.cos(math.radians(turn)), math.sin(math.radians(turn)), np.array((10.0, 90.0))
    parts = [shapely.transform(shapely.box(*box), lambda xy: (xy - middle) @ ((cos, sin), (-sin, cos)) + middle) for box in (
        (8.0, 40.0, 20.0, 150.0), (8.0 - tongue - wide, 40.0, 8.0 - tongue, 150.0), (8.0 - tongue - wide, 40.0, 20.0, 52.0))]
    ring = shapely.union_all(parts).exterior.coords[:-1]
    layout = bored(depth, 100.0, tuple(ring), leaning(lean))
    drilling = scene_of(layout, Memo()).items[0].drillings[0]
    start, way = shapely.Point(drilling.start[:2]), drilling.direction[:2]
    first, last = ((start.x + way[0] * t, start.y + way[1] * t) for t in (0.0, depth))
    axis = shapely.LineString([first, last])
    body = axis.buffer(3.0, cap_style="flat")
    leaves = max(start.distance(shapely.Point(p)) for p in shapely.intersection(
        shapely.LineString([first, (start.x + way[0] * 90.0, start.y + way[1] * 90.0)]), parts[0]).coords)
    found = told(layout)
    gap = body.distance(parts[1])
    if depth < leaves or gap >= 3.0:
        assert found == []
    elif gap > 1e-6:
        assert found[0].measured == pytest.approx(gap, abs=1e-6)
    else:
        assert found[0].measured <= 1e-6 and found[0].grade == (SPOILS if found[0].measured < -1e-6 else TIGHT)


def test_the_shop_spoils_what_the_checks_measure() -> None:
    for depth in (34.0, 35.0, 37.0, 46.0):
        snag, = told(bored(depth))
        clearance = simulate(bored(depth), 300, 1).of(snag)
        assert clearance.nominal == pytest.approx(snag.measured, abs=3e-3)
        assert clearance.spoiled == pytest.approx(1.0 if depth > 36 else 0.0, abs=0.01)


def test_a_cure_is_found_that_does_it() -> None:
    layout = bored(34.0)
    result = check(layout)
    cured = settle(layout, result, next(snag for snag in result.snags if snag.kind == "side-bore-to-slot"))
    assert cured is not None and told(apply_cure(layout, cured)) == []
