"""A drill's point takes wood beyond the full diameter: told wherever it comes out, by hand and by points of a cone."""

import math

import numpy as np
import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.layout import Bore, Drill, Headstock, Margins, Rack, Ramp, Slot, StraightSlot
from geometry.solids.pointed import Pointed, drawn_back, pointed_gaps
from tests.geometry.checks.heads import BIT, DRILLS, SIDE, SingleHole, bore, drawn, face, head, loop, pattern, side, slot


def sharp(layout: Headstock, diameter: float, spur: float) -> Headstock:
    """The layout with a drill of a diameter whose point runs `spur` mm ahead."""
    drill = Drill(id="sharp", kind="brad", diameter=diameter, length=150.0, spur=spur)
    kept = tuple(one for one in DRILLS if one.diameter != diameter)
    return replace(layout, rack=Rack(bits=(BIT,), drills=(*kept, drill), press=layout.rack.press))


def told(layout: Headstock, kind: str = "drill-point") -> list[float]:
    return [snag.measured for snag in check(layout).snags if snag.kind == kind]


def over_a_side_bore(depth: float) -> Headstock:
    """A hole of 3 mm from the face, its brad point 0.9 mm, above a side bore whose top lies 5 mm down."""
    return head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(slot(),), holes=(
        SingleHole(id="jig", at=(30.0, 90.0), diameter=3.0, depth=depth),))


def test_a_point_above_a_side_bore_by_hand() -> None:
    snag, = [s for s in check(over_a_side_bore(2.0)).snags if s.kind == "drill-point"]
    assert snag.measured == pytest.approx(5 - 2 - 0.9, abs=1e-6)
    assert snag.text == "Hole jig leaves 2.1 mm of wood to the side bore of a, to the drill's point; 3.0 mm wanted."
    assert told(over_a_side_bore(1.1)) == []
    # As much ahead as there is wood, and 1 mm more: the point is in the bore.
    assert told(sharp(over_a_side_bore(2.0), 3.0, 4.0)) == [pytest.approx(-1.0, abs=1e-3)]
    assert snag.cure == "Drill jig less deep by 0.9 mm there, or use a drill with a shorter point."
    # No hole can be 4 mm less deep than 2.
    deep, = [s for s in check(sharp(over_a_side_bore(2.0), 3.0, 4.0)).snags if s.kind == "drill-point"]
    assert deep.cure == "Use a drill with a shorter point, or move jig farther away."
    # What the flat end tells already is told once.
    assert told(over_a_side_bore(3.0)) == []


def test_two_points_that_face_each_other_are_told_as_near_as_they_are() -> None:
    # Two bores from either edge, 30 deep each, their ends 6 mm apart on one axis; brad points of 1.8 leave 2.4.
    outline = loop((-33.0, 0.0), (33.0, 0.0), (33.0, 180.0), (-33.0, 180.0))

    def facing(spur: float) -> list[float]:
        return told(sharp(head(tuners=(side("a", 90.0), side("b", 90.0, edge="bass")), patterns=(SIDE,), outline=outline), 6.0, spur))
    assert facing(2.99) == []
    assert facing(3.2) == [pytest.approx(-0.4, abs=1e-3)]


@pytest.mark.parametrize("spur", [0.6, 0.8, 1.5, 2.0, 2.8, 4.0])
@pytest.mark.parametrize("gap", [-0.5, 0.5, 1.9, 2.0])
def test_a_point_longer_than_its_screw_is_wide_before_an_upright_hole(spur: float, gap: float) -> None:
    """A screw of 1.6 mm goes 9 mm in from the edge at x = 40, to a point `gap` mm before a hole of 4 mm; 2 mm wanted."""
    screw = Bore(role="screw", diameter=1.6, surface="seat", at=(9.0, 0.0), depth=9.0, drill="twist")
    end = 40.0 - 9.0 - spur
    layout = head(tuners=(side("a", 90.0),), patterns=(pattern("side", "side", bore(surface="seat", depth=30.0), screw),),
                  holes=(SingleHole(id="jig", at=(end - gap - 2.0, 99.0), diameter=4.0),))
    found = [(s.kind, s.measured) for s in check(sharp(layout, 1.6, spur)).snags if "jig" in s.between]
    bare = spur + gap
    if bare < 2.0:  # the flat end tells already
        assert ("hole-to-screw", pytest.approx(bare, abs=1e-6)) in found
    elif gap < 2.0:
        assert found == [("drill-point", pytest.approx(gap, abs=1e-3))]
    else:
        assert found == []


def test_a_point_from_the_back_under_a_floor_by_hand() -> None:
    # The hole's end 12 mm down, 4 below the floor; a brad drill of 4 mm runs 1.2 ahead.
    def under(x: float, depth: float = 4.0) -> list[float]:
        return told(head(slots=(slot(x=0.0, depth=8.0),), holes=(
            SingleHole(id="h", at=(x, 90.0), diameter=4.0, surface="back", depth=depth),)))
    assert under(0.0) == [pytest.approx(2.8)]
    assert under(0.0, 3.8) == []
    # 1 mm outside of the wall at x = 6 the point is the nearest: (1, 2.8) from the floor's rim.
    assert under(7.0) == [pytest.approx(math.hypot(1, 2.8), abs=1e-9)]
    # 3 mm outside of it the rim of the full diameter is no nearer to it than (1, 4), the point (3, 2.8).
    assert under(9.0) == []


def test_a_point_of_a_level_bore_under_a_floor() -> None:
    # The axis 8 mm down, a floor 3 mm above it whose wall stands at x = 6; the bore ends at x = 10, and its point at x = 10 - spur.
    def under(spur: float, floor: float = 5.0) -> list[float]:
        layout = head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(slot(x=0.0, depth=floor),), margins=Margins(bore_slot=1.0))
        return told(sharp(layout, 6.0, spur))
    # The floor's rim, 4 mm beyond the end and 1 mm over the axis: the cone is 1 mm thick where it is two thirds of the way.
    assert under(6.0, 7.0) == []
    assert under(7.5, 7.0) == [pytest.approx(4 - 7.5 * (1 - 1 / 3))]


@pytest.mark.parametrize("depth", [41.0, 43.0])
def test_a_point_beyond_the_inner_wall_that_reaches_the_next_slot(depth: float) -> None:
    long = pattern("long", "side", bore(surface="seat", depth=depth))
    layout = head(tuners=(side("a", 90.0, long),), patterns=(long,), slots=(slot(), slot("next", x=-14.0)))
    # The wall of the next one stands 48 mm from the seat.
    assert told(sharp(layout, 6.0, 48.0 - depth)) == []
    assert told(sharp(layout, 6.0, 49.0 - depth)) == [pytest.approx(-1.0)]
    text = next(s.text for s in check(sharp(layout, 6.0, 49.0 - depth)).snags if s.kind == "drill-point")
    assert text == "Side bore of a comes 1.0 mm into the wall of next with the drill's point."


def test_the_flank_of_a_point_at_a_corner_by_hand() -> None:
    # The corner of the next slot lies 2 mm beyond the bore's end and 1.5 beside its axis, where half of the cone's length is left.
    corner = drawn("next", (8.0, 91.5), (-12.0, 91.5), (-12.0, 111.5))
    layout = head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(corner,), margins=Margins(bore_slot=0.1))
    assert told(sharp(layout, 6.0, 4.0)) == []
    assert told(sharp(layout, 6.0, 6.0)) == [pytest.approx(-1.0)]


def test_a_point_comes_out_of_the_far_edge() -> None:
    far = pattern("far", "side", bore(surface="seat", depth=76.0))
    layout = head(tuners=(side("a", 90.0, far),), patterns=(far,))
    assert told(sharp(layout, 6.0, 4.0)) == []
    snag, = [s for s in check(sharp(layout, 6.0, 5.0)).snags if s.kind == "drill-point"]
    assert snag.measured == pytest.approx(-1.0) and snag.grade == "spoils the work"
    assert snag.text == "Side bore of a comes 1.0 mm into the outline with the drill's point."


def test_a_point_comes_up_into_a_ramp() -> None:
    # The ramp of a slot whose nut end lies at y = 54 is 9 mm deep there, and falls 0.9 a mm. A hole from the back at y = 50
    # ends 4 mm below the slope over it; its point runs 4.5 ahead.
    opening = Slot(id="slot", shape=StraightSlot(nut_end=(14.0, 60.0), tip_end=(14.0, 150.0), width=12.0), ramp=Ramp(length=10.0, depth=9.0))
    layout = head(slots=(opening,), holes=(SingleHole(id="h", at=(14.0, 50.0), diameter=2.0, surface="back", depth=16 - 5.4 - 4.0),),
                  margins=Margins(bore_slot=1.0))
    assert told(layout) == []
    assert told(sharp(layout, 2.0, 4.5)) == [pytest.approx(-0.5, abs=1e-3)]


def askew(depth: float, spur: float, diameter: float = 6.0) -> list[float]:
    """Into a drawn slot whose inner wall leans by 45 degrees: 32 mm from the seat on the axis, 29 at one flank, 35 at the other."""
    of = pattern("of", "side", bore(diameter=diameter, surface="seat", depth=depth), post=(2.0, 25.0, 24.0))
    leaning = drawn("slot", (20.0, 60.0), (20.0, 102.0), (-22.0, 60.0))
    layout = head(tuners=(side("a", 90.0, of),), patterns=(of,), slots=(leaning,))
    return told(sharp(layout, diameter, spur), "point-to-wall")


def test_the_rim_of_a_bore_before_a_leaning_inner_wall_by_hand() -> None:
    # The wall from (20, 102) to (-22, 60) is y = x + 82: at y = 90 it stands at x = 8, 32 from the seat; at 93 at x = 11, 29.
    assert askew(28.0, 0.1) == []
    assert askew(29.0, 0.1) == []
    assert askew(29.5, 0.1) == [pytest.approx(-0.5)]
    # A point of 2.9 reaches as far as the wall on the axis, and nothing of the cone but the rim reaches it otherwise.
    assert askew(29.0, 2.9) == []
    assert askew(29.0, 3.5) == [pytest.approx(-0.5)]


def test_a_bore_that_runs_out_beside_the_end_of_its_slot_scars_no_inner_wall() -> None:
    of = pattern("of", "side", bore(surface="seat", depth=28.0), post=(4.0, 25.0, 24.0))
    layout = head(tuners=(side("a", 153.5, of),), patterns=(of,), slots=(slot(),))
    assert told(layout, "point-to-wall") == []


def test_a_counterbore_whose_point_comes_out_is_told() -> None:
    def one(thrown: bool) -> Headstock:
        bores = (bore("counterbore", 10.0, "face", (20.0, 0.0), 12.5), *((bore("clearance", 5.0, "back", (20.0, 0.0)),) if thrown else ()), bore())
        of = pattern("of", "face", *bores)
        return head(tuners=(face("a", -10.0, 90.0, of),), patterns=(of,))
    assert told(sharp(one(False), 10.0, 3.5), "too-deep") == []
    snag, = [s for s in check(sharp(one(False), 10.0, 4.0)).snags if s.kind == "too-deep"]
    assert snag.measured == pytest.approx(-0.5)
    assert snag.text == "Counterbore of a comes out of the back by 0.50 mm, to the drill's point."
    # 0.503 mm out is told as no less than that.
    farther, = [s for s in check(sharp(one(False), 10.0, 4.003)).snags if s.kind == "too-deep"]
    assert farther.text == "Counterbore of a comes out of the back by 0.51 mm, to the drill's point."
    # Where a bore on the same axis comes through there is no wood for the point to break.
    assert told(sharp(one(True), 10.0, 4.0), "too-deep") == []


def test_a_drill_without_a_point_opens_nothing_for_the_next_one_on_its_axis() -> None:
    """A counterbore 4 mm deep without a spur, and a blind bore in it 12.5 mm deep with a point of 4 mm: 0.5 mm out of the back of 16."""
    of = pattern("of", "face", bore("counterbore", 10.0, "face", (20.0, 0.0), 4.0), bore("clearance", 6.0, "face", (20.0, 0.0), 12.5), bore())
    layout = sharp(head(tuners=(face("a", -10.0, 90.0, of),), patterns=(of,)), 10.0, 0.0)
    drills = {drill.diameter: drill for drill in layout.rack.drills} | {6.0: Drill(id="sharp 6", kind="brad", diameter=6.0, length=150.0, spur=4.0)}
    layout = replace(layout, rack=replace(layout.rack, drills=tuple(drills.values())))
    assert told(layout, "too-deep") == [pytest.approx(-0.5)]


def _some(count: int) -> list[Pointed]:
    """Two groups of solids, some of the one in some of the other."""
    rng = np.random.default_rng(7)
    axes = rng.normal(size=(2, count, 3))
    axes /= np.linalg.norm(axes, axis=2)[:, :, None]
    return [Pointed(rng.uniform(-14, 14, (count, 3)), way, rng.uniform(0, 20, count), rng.uniform(0.5, 4, count),
                    rng.uniform(0, 5, count)) for way in axes]


def test_on_which_side_of_a_length_a_gap_lies_is_told_sooner_than_the_gap(monkeypatch) -> None:
    """As by the gap itself, as near to it as makes no difference to a maker."""
    rounds, own = [], Pointed.nearest
    monkeypatch.setattr(Pointed, "nearest", lambda self, p: rounds.append(1) or own(self, p))
    solids = _some(200)
    gaps = pointed_gaps(*solids)
    whole = len(rounds)
    assert 5 < (gaps == 0).sum() < 180
    for least in (1e-6, 0.5, 3.0):
        rounds.clear()
        assert ((pointed_gaps(*solids, decide=least) < least) == (gaps < least)).all()
        assert len(rounds) <= whole
    rounds.clear()
    at = np.flatnonzero(gaps == 0)
    pointed_gaps(*(solid.pick(at) for solid in solids), decide=1.0)
    assert len(rounds) < whole / 4
    rounds.clear()
    assert not len(pointed_gaps(*(solid.pick(at[:0]) for solid in solids)))
    assert len(rounds) <= 3, "of no solids there is nothing to find"
    near = np.flatnonzero(gaps > 0)
    for off in (1e-6, -1e-6):
        assert all((pointed_gaps(*(solid.pick(np.array([k])) for solid in solids), decide=gaps[k] + off)[0] < gaps[k] + off) == (off > 0)
                   for k in near[:40].tolist())


def test_gaps_of_pointed_solids_are_those_of_points_on_them() -> None:
    count = 24
    solids = _some(count)
    gaps = pointed_gaps(*solids)
    # The nearest point of the one to each of many points on the other: no pair of points is nearer than the gap.
    for at, (one, other) in ((k, pair) for k in range(count) for pair in (solids, solids[::-1])):
        on = _surface(one.pick(np.array([at])))
        far = np.linalg.norm(on - other.pick(np.full(len(on), at)).nearest(on), axis=1).min()
        assert far >= gaps[at] - 1e-9
        assert far <= gaps[at] + 0.05


@pytest.mark.parametrize("spurs", [(3.0, 0.0), (3.0, 2.5), (2.0, 6.0)])
@pytest.mark.parametrize("aside", [0.0, 0.7, 1.9])
def test_drawn_back_is_just_clear(spurs: tuple[float, float], aside: float) -> None:
    """Two bores of 4 mm from either side, the middles of their ends 1.6 mm apart, the axes at an angle of 30 degrees."""
    turn = math.radians(30)
    one = Pointed(*(np.array(c) for c in ([[-11.0, 0.0, 0.0]], [[1.0, 0.0, 0.0]], [10.0], [2.0], [spurs[0]])))
    axis = (-math.cos(turn), -math.sin(turn), 0.0)
    two = Pointed(*(np.array(c) for c in ([[0.6 - 8.0 * axis[0], -8.0 * axis[1], aside]], [axis], [8.0], [2.0], [spurs[1]])))
    assert pointed_gaps(one, two)[0] == 0.0
    (back,) = drawn_back(one, two)
    # Within 0.001 mm of touching the gap itself is told as none.
    assert 0 < back < 10 and pointed_gaps(one.shortened(np.array([back + 0.005])), two)[0] > 0
    assert pointed_gaps(one.shortened(np.array([back - 0.01])), two)[0] < 2e-3


def _surface(solid: Pointed) -> np.ndarray:
    """Points of a solid's flank, of its cone and of its flat end."""
    length, radius, ahead, axis = solid.length[0], solid.radius[0], solid.ahead[0], solid.axis[0]
    e = np.cross(axis, (1.0, 0.0, 0.0) if abs(axis[0]) < 0.8 else (0.0, 1.0, 0.0))
    e /= np.linalg.norm(e)
    f = np.cross(axis, e)
    level = np.concatenate([np.zeros(12), np.linspace(0, length, 60), length + np.linspace(0, ahead, 30)])
    out = np.concatenate([np.linspace(0, radius, 12), np.full(60, radius), np.linspace(radius, 0, 30)])
    turn = np.linspace(0, 2 * math.pi, 120, endpoint=False)
    ring = np.cos(turn)[:, None] * e + np.sin(turn)[:, None] * f
    return (solid.start[0] + level[:, None, None] * axis + out[:, None, None] * ring).reshape(-1, 3)


@pytest.mark.parametrize("depth", [8.0, 31.9])
def test_a_bore_of_the_smallest_number_is_checked_like_any_other(depth: float) -> None:
    """Half of it is nothing, while the rack's drill for it has a point: from the side before an inner wall, from the back below a floor."""
    least = math.ulp(0.0)
    bores = (bore(diameter=least, surface="seat", depth=depth),) if depth > 20 else (bore(diameter=least, surface="back", depth=depth),)
    tuner = pattern("thin", "side" if depth > 20 else "face", *bores)
    layout = head(tuners=(side("a", 100.0, tuner) if depth > 20 else face("a", 14.0, 100.0, tuner),), patterns=(tuner,),
                  slots=(slot(depth=None if depth > 20 else 6.0),))
    found = [snag.kind for snag in check(sharp(layout, 0.04, 0.5)).snags if "point" in snag.kind]
    assert found == (["point-to-wall"] if depth > 20 else [])


@pytest.mark.parametrize(("deep", "told"), [(11.5, []), (11.8, []), (12.0, [-0.2]), (13.5, [2.5])])
def test_the_point_of_a_blind_counterbore_may_come_near_the_face_but_not_out(deep, told):
    """The wood is 16 thick and 3 are wanted below the floor; the drill of 14 has a point of 4.2."""
    of = pattern("of", "face", bore(), bore("counterbore", 14.0, "back", (14.0, 0.0), deep))
    found = [snag.measured for snag in check(head(tuners=(face("a", 0.0, 90.0, of),), patterns=(of,))).snags if snag.kind == "too-deep"]
    assert found == pytest.approx(told)
