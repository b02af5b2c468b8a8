"""Frames, holes and side bores derived from a layout, on heads whose numbers can be read off."""

import math

import pytest
from msgspec.structs import replace

from geometry.layout import (
    Blank,
    Drill,
    EdgePlace,
    EdgeRun,
    Flat,
    Retainer,
    Row,
    RowPlace,
    SingleHole,
    Slot,
    StraightRun,
    StraightSlot,
    Tuner,
)
from geometry.solids import frames, holes, side_bore
from geometry.solids.drilling import (
    THERE,
    as_cut,
    drill_among,
    drill_for,
    misfit,
    once_plugged,
    point_ahead,
    point_length,
    square_edge_reach,
    to_drill,
    twist_point,
    wider_by,
)
from geometry.solids.flats import stands_off
from geometry.solids.side import block_height, board_for, tilt_of
from geometry.units import parse_length
from tests.geometry.checks.heads import FACE, SIDE, bore, bulging, face, head, leaning, loop, pattern, side, slot


def test_a_face_tuner_drills_from_face_and_back():
    of = pattern("of", "face", bore("counterbore", 8.8, depth=8.0), bore(diameter=6.5),
                 bore("screw", 1.6, "back", (0.0, 9.0), 9.0))
    post, screw = holes(head(tuners=(face("a", 10.0, 50.0, of),), patterns=(of,), pins=()))
    assert [d.role for d in post.drillings] == ["counterbore", "post"]
    wide, through = post.drillings
    assert (wide.start, wide.direction, wide.depth, wide.through) == ((10.0, 50.0, 0.0), (0.0, 0.0, 1.0), 8.0, False)
    assert (through.depth, through.through, through.end) == (16.0, True, (10.0, 50.0, 16.0))
    # The button points to +x, so v to the left of it is +y; from the back the drill goes up.
    assert screw.drillings[0].start == (10.0, 59.0, 16.0)
    assert screw.drillings[0].end == (10.0, 59.0, 7.0)


def test_a_face_tuner_turns_to_the_nearest_edge():
    frame = frames(head(tuners=(face("a", 30.0, 90.0, turn=None), face("b", -30.0, 90.0, turn=None)),
                        patterns=(FACE,)))
    assert frame["a"].u == pytest.approx((1.0, 0.0, 0.0))
    assert frame["b"].u == pytest.approx((-1.0, 0.0, 0.0))


@pytest.mark.parametrize("turn", [30.0, 200.0])
def test_a_face_tuner_that_is_turned_points_where_it_is_turned_to(turn):
    """v lies to the left of u on the face; a hole 9 to the button and 2 to its left goes with them."""
    placed = frames(head(tuners=(face("a", 10.0, 90.0, turn=turn),), patterns=(FACE,)))["a"]
    u = (math.cos(math.radians(turn)), math.sin(math.radians(turn)))
    assert placed.u == pytest.approx((*u, 0.0)) and placed.v == pytest.approx((-u[1], u[0], 0.0))
    assert placed.at(9.0, 2.0) == pytest.approx((10.0 + 9.0 * u[0] - 2.0 * u[1], 90.0 + 9.0 * u[1] + 2.0 * u[0], 0.0))


def test_rows_space_their_members():
    rows = (Row(id="straight", run=StraightRun(start=(10.0, 20.0), heading=90.0), spacing=25.0),
            Row(id="edge", run=EdgeRun(side="bass", first=30.0, inset=11.0), spacing=40.0))
    tuners = tuple(Tuner(id=f"{row.id} {i}", pattern="face", place=RowPlace(row=row.id, index=i))
                   for row in rows for i in range(2))
    placed = frames(head(tuners=tuners, rows=rows, patterns=(FACE,)))
    assert placed["straight 1"].origin == pytest.approx((10.0, 45.0, 0.0))
    assert placed["edge 1"].origin == pytest.approx((-29.0, 70.0, 0.0))
    assert placed["edge 1"].u == pytest.approx((-1.0, 0.0, 0.0))
    row = replace(rows[1], run=EdgeRun(side="treble", first=30.0))
    on_edge = frames(head(tuners=tuple(replace(t, pattern="side", place=replace(t.place, row="edge")) for t in tuners[:2]), rows=(row,), patterns=(SIDE,)))
    assert [one.origin for one in on_edge.values()] == [pytest.approx((40.0, y, 8.0)) for y in (30.0, 70.0)]
    turned = head(tuners=tuners[:2], rows=(replace(rows[0], run=replace(rows[0].run, turn=180.0)),), patterns=(FACE,))
    assert [one.u for one in frames(turned).values()] == [pytest.approx((-1.0, 0.0, 0.0))] * 2


def test_a_face_tuner_belongs_to_the_side_of_the_centreline_that_it_stands_on():
    placed = frames(head(tuners=tuple(face(f"at {x}", x, 90.0) for x in (-0.5, 0.0, 0.5)), patterns=(FACE,)))
    assert [one.side for one in placed.values()] == ["bass", "treble", "treble"]


def test_local_coordinates_of_a_side_tuner_go_along_its_edge_down_and_into_the_wood():
    placed = frames(head(tuners=(side("a", 90.0, depth=5.0),), patterns=(SIDE,)))["a"]
    assert placed.at(3.0, 2.0, 10.0) == pytest.approx((30.0, 93.0, 7.0))
    placed = frames(head(tuners=(face("a", 10.0, 90.0),), patterns=(FACE,)))["a"]
    assert placed.at(3.0, 2.0, 4.0) == pytest.approx((13.0, 92.0, 4.0))


def test_no_post_lies_across_a_pocket_that_is_there():
    pocket = replace(slot("pocket", x=30.0, width=4.0), there=True)
    assert side_bore(head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(pocket,)), "a").crossing is None
    assert side_bore(head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(pocket, slot())), "a").crossing.slot == "slot"


def test_a_side_bore_on_a_straight_edge():
    found = side_bore(head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(slot(),)), "a")
    assert found.seat == (40.0, 90.0, 8.0)
    assert found.tilt == 0
    assert found.mark == (50.0, 90.0, 8.0)
    assert (found.waste, found.stop_full, found.squared_miss) == (10.0, 40.0, 0.0)
    assert found.stop_point == pytest.approx(40.0 + 1.8)
    assert (found.crossing.slot, found.crossing.enters, found.crossing.leaves) == ("slot", 20.0, 32.0)


def test_of_two_slots_in_a_bores_way_the_first_is_its_own():
    two = side_bore(head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(slot("far", x=-14.0), slot("near"))), "a").crossing
    assert (two.slot, two.enters, two.leaves) == ("near", 20.0, 32.0)


@pytest.mark.parametrize("degrees", [3.0, 8.0, 15.0])
def test_a_side_bore_on_a_leaning_edge(degrees):
    """Worked out in plan: the axis leaves the seat along n and runs lambda farther to the square edge."""
    angle = math.radians(degrees)
    along = 60.0
    found = side_bore(head(outline=leaning(degrees), tuners=(side("a", along),), patterns=(SIDE,)), "a")
    x, y = 40.0 - along * math.sin(angle), along * math.cos(angle)
    waste = (50.0 - x) / math.cos(angle)
    assert found.seat == pytest.approx((x, y, 8.0))
    assert found.tilt == pytest.approx(angle)
    assert found.waste == pytest.approx(waste)
    assert found.mark == pytest.approx((50.0, y + waste * math.sin(angle), 8.0))
    assert found.squared_miss == pytest.approx(waste * math.sin(angle))
    assert found.stop_full == pytest.approx(waste + 30.0)
    assert block_height(found.tilt, 100.0) == pytest.approx(100.0 * math.sin(angle))


@pytest.mark.parametrize("degrees", [3.0, 8.0, 15.0])
def test_a_tilted_axis_meets_a_leaning_slot_where_the_lines_meet(degrees):
    """The slot's middle line goes from (6, 30) to (22, 150), its walls 6 mm to either side; the axis leaves the seat by (-cos, -sin)."""
    angle = math.radians(degrees)
    x, y = 40.0 - 60.0 * math.sin(angle), 60.0 * math.cos(angle)
    long = math.hypot(16.0, 120.0)
    out = (120.0 / long, -16.0 / long)
    away = out[0] * (x - 6.0) + out[1] * (y - 30.0)
    nearer = -(out[0] * math.cos(angle) + out[1] * math.sin(angle))
    of = Slot(id="slot", shape=StraightSlot(nut_end=(6.0, 30.0), tip_end=(22.0, 150.0), width=12.0))

    def crossing(depth):
        return side_bore(head(outline=leaning(degrees), tuners=(side("a", 60.0),), patterns=(SIDE,), slots=(replace(of, depth=depth),)), "a").crossing

    assert (crossing(None).enters, crossing(None).leaves) == (pytest.approx((6.0 - away) / nearer), pytest.approx((-6.0 - away) / nearer))
    # The axis lies 8 below the face: a floor there or above it lets it pass below.
    assert crossing(8.1) == crossing(None) and crossing(8.0) is crossing(7.0) is None


@pytest.mark.parametrize("degrees", [3.0, 15.0])
def test_screws_on_a_leaning_edge_lie_along_it_and_a_flat_takes_them_into_the_wood(degrees):
    angle = math.radians(degrees)
    of = pattern("of", "side", bore(surface="seat", depth=30.0), bore("screw", 2.0, "seat", (9.0, 3.0), 8.0))
    layout = head(outline=leaning(degrees), tuners=(side("a", 60.0, of, flat=Flat(size=24.0, depth=1.5)),), patterns=(of,), pins=())
    post, screw = (hole.drillings[0] for hole in holes(layout))
    foot = (40.0 - 60.0 * math.sin(angle) - 1.5 * math.cos(angle), 60.0 * math.cos(angle) - 1.5 * math.sin(angle))
    assert post.start == pytest.approx((*foot, 8.0))
    assert screw.start == pytest.approx((foot[0] - 9.0 * math.sin(angle), foot[1] + 9.0 * math.cos(angle), 11.0))
    assert post.stop == pytest.approx((50.0 - foot[0]) / math.cos(angle) + 30.0)
    assert screw.mark == pytest.approx((50.0, screw.start[1] + (50.0 - screw.start[0]) * math.tan(angle), 11.0))


def test_the_bass_side_is_the_mirror_image():
    layout = head(tuners=(side("t", 70.0), side("b", 70.0, edge="bass")), patterns=(SIDE,))
    treble, bass = side_bore(layout, "t"), side_bore(layout, "b")
    assert bass.seat == pytest.approx((-40.0, 70.0, 8.0)) and bass.mark == pytest.approx((-50.0, 70.0, 8.0))
    assert bass.tilt == pytest.approx(treble.tilt)
    assert treble.turns_with == ("b",) and bass.turns_with == ("t",)


def test_bores_off_the_middle_share_no_setting():
    layout = head(tuners=(side("t", 70.0, depth=7.0), side("b", 70.0, edge="bass", depth=7.0)), patterns=(SIDE,))
    assert side_bore(layout, "t").turns_with == ()
    one_off = head(tuners=(side("t", 70.0), side("b", 70.0, edge="bass", depth=7.0), side("low", 90.0, edge="bass", depth=9.0)), patterns=(SIDE,))
    assert side_bore(one_off, "t").turns_with == ()


def test_bores_share_a_setting_where_they_lean_alike_whichever_way_that_is():
    """Treble edge leaning in by 6 degrees, bass edge by 6, by 3 or out by 6: the first alone has the treble bore's tilt."""
    def turned(of, degrees):
        outline = loop((-40.0, 0.0), (40.0, 0.0), (40.0 - 180.0 * math.tan(math.radians(6.0)), 180.0), (-40.0 + 180.0 * math.tan(math.radians(degrees)), 180.0))
        layout = head(outline=outline, blank=replace(head().blank, bass=70.0), tuners=(side("t", 70.0), side("b", 70.0, edge="bass")), patterns=(SIDE,))
        return side_bore(layout, of).turns_with
    assert [(turned("t", degrees), turned("b", degrees)) for degrees in (6.0, 3.0, -6.0)] == [(("b",), ("t",)), ((), ()), ((), ())]


def test_a_tilt_is_set_by_blocks_under_a_board_of_round_length_whichever_side_is_raised():
    assert block_height(math.radians(-30.0), 80.0) == block_height(math.radians(30.0), 80.0) == pytest.approx(40.0)
    assert [board_for(base, unit) for base, unit in ((100.0, "mm"), (100.0, "in"), (100.0, "in64"), (120.0, "in"))] == pytest.approx([100.0, 101.6, 101.6, 120.0])


def test_only_a_side_tuner_with_a_post_bore_has_a_side_bore():
    bare = pattern("bare", "side", bore("screw", 2.0, "seat", depth=8.0))
    layout = head(tuners=(face("f", 0.0, 90.0), side("t", 70.0), side("bare", 90.0, bare)), patterns=(FACE, SIDE, bare))
    assert [one and one.stop_full for one in (side_bore(layout, id) for id in ("f", "t", "bare"))] == [None, pytest.approx(40.0), None]


def test_screws_of_a_side_tuner_lie_on_the_seat_plane():
    of = pattern("of", "side", bore(surface="seat", depth=30.0),
                 bore("screw", 2.0, "seat", (9.0, 3.0), 8.0))
    _, screw = holes(head(tuners=(side("a", 90.0, of),), patterns=(of,), pins=()))
    assert screw.drillings[0].start == pytest.approx((40.0, 99.0, 11.0))
    assert screw.drillings[0].direction == pytest.approx((-1.0, 0.0, 0.0))


def test_a_plate_on_an_arc_rocks_by_its_sagitta():
    layout = head(outline=bulging(200.0), tuners=(side("a", 94.0),), patterns=(
        pattern("side", "side", bore(surface="seat", depth=30.0), seat=(12.0, 12.0, 10.0)),))
    assert stands_off(layout, "a") == pytest.approx(200.0 - math.sqrt(200.0 ** 2 - 12.0 ** 2), abs=1e-9)


def test_an_axis_along_the_edge_has_no_mark():
    layout = head()
    assert square_edge_reach(layout.blank, "treble", (40.0, 90.0, 8.0), (0.0, 1.0, 0.0)) is None
    assert square_edge_reach(layout.blank, "treble", (40.0, 90.0, 8.0), (-1.0, 0.0, 0.0)) is None
    assert square_edge_reach(layout.blank, "treble", (40.0, 90.0, 8.0), (1.0, 0.0, 0.0)) == 10.0


def test_without_waste_outside_the_seat_the_stop_is_the_depth():
    """The outline's edge is the blank's, or the axis meets no square edge, on a step that faces the tip."""
    flush = head(tuners=(side("a", 90.0),), patterns=(SIDE,), blank=Blank(bass=50.0, treble=40.0, tip=190.0, behind=20.0, thickness=16.0))
    found = side_bore(flush, "a")
    assert (found.mark, found.waste, found.stop_full, found.stop_point) == ((40.0, 90.0, 8.0), 0.0, 30.0, pytest.approx(31.8))
    step = head(outline=loop((-40.0, 0.0), (40.0, 0.0), (40.0, 100.0), (20.0, 100.0), (20.0, 180.0), (-40.0, 180.0)),
                tuners=(side("a", 110.0),), patterns=(SIDE,))
    assert (side_bore(step, "a").mark, side_bore(step, "a").stop_full) == (None, 30.0)


def test_a_place_past_the_end_stops_there():
    of = Tuner(id="a", pattern="side", place=EdgePlace(side="treble", along=900.0))
    assert frames(head(tuners=(of,), patterns=(SIDE,)))["a"].origin == (40.0, 180.0, 8.0)
    assert tilt_of(frames(head(tuners=(of,), patterns=(SIDE,)))["a"]) == pytest.approx(0.0)


def test_drill_points():
    assert point_length(Drill(id="t", kind="twist", diameter=10.0, length=100.0)) == pytest.approx(3.0043, abs=1e-4)
    assert point_length(Drill(id="t", kind="twist", diameter=10.0, length=100.0, point_angle=90.0)) == pytest.approx(5)
    assert point_length(Drill(id="b", kind="brad", diameter=10.0, length=100.0, spur=2.5)) == 2.5
    assert point_length(Drill(id="b", kind="brad", diameter=10.0, length=100.0)) == 3.0
    assert point_length(Drill(id="f", kind="forstner", diameter=20.0, length=100.0)) == 2.0
    assert twist_point(6.0, math.pi) == pytest.approx(0.0, abs=1e-12)


def test_the_rack_gives_the_kind_asked_for_first():
    layout = head(tuners=(face("a", 0.0, 90.0),), patterns=(FACE,))
    drilling = holes(layout)[0].drillings[0]
    assert drill_for(layout, drilling).id == "brad 6"


def test_a_drill_of_the_size_asked_for_goes_before_one_of_the_kind_asked_for():
    """A tuner that is pressed into 6.35 is loose in 6.4; to 0.02 sizes are one, and then the kind decides."""
    layout = head(tuners=(face("a", 0.0, 90.0, quarter := pattern("quarter", "face", bore(diameter=6.35))),), patterns=(quarter,))
    drilling = holes(layout)[0].drillings[0]

    def chosen(*drills):
        return drill_among([Drill(id=f"{kind} {size}", kind=kind, diameter=size, length=100.0) for kind, size in drills], drilling)
    assert chosen(("brad", 6.4), ("twist", 6.35)).id == "twist 6.35"
    assert chosen(("twist", 6.35), ("brad", 6.37)).id == "brad 6.37"
    assert chosen(("brad", 6.4)).id == "brad 6.4" and chosen(("brad", 6.41)) is None and chosen(("brad", 6.29)) is None
    assert [chosen(*(("brad", size) for size in sizes)).id for sizes in ((6.33, 6.36), (6.34, 6.37))] == ["brad 6.36", "brad 6.34"]
    assert [round(misfit(chosen(("brad", size)), drilling), 6) for size in (6.3, 6.33, 6.35, 6.37, 6.4)] == [-0.05, 0.0, 0.0, 0.0, 0.05]


def test_what_a_single_hole_is_for_says_how_it_is_drilled():
    """A plain one, the pilot of a retainer's screw, one that is in the blank already, and such a one that is plugged first."""
    plain = SingleHole(id="h", at=(0.0, 90.0), diameter=3.0, depth=9.0)
    singles = (plain, replace(plain, id="r", retainer=Retainer(height=2.0)), replace(plain, id="t", there=True), replace(plain, id="p", there=True, plugged=True))
    layout = head(holes=singles, pins=(), tuners=(side("a", 40.0),), patterns=(SIDE,))
    made = {hole.id: hole.drillings[0] for hole in holes(layout) if hole.id in "hrtp"}
    assert {id: (d.operation, d.style, d.drill, d.there, d.pilot, d.plugged, d.waste_too) for id, d in made.items()} == {
        "h": ("hole", "hole", "brad", False, False, False, False), "r": ("screw pilot", "screw pilot", "twist", False, True, False, False),
        "t": (THERE, THERE, "brad", True, False, False, True), "p": (THERE, THERE, "brad", True, False, True, True)}
    assert {hole.id for hole in to_drill(layout)} == {"a.1", "h", "r"} and {hole.id for hole in once_plugged(layout)} == {"a.1", "h", "r", "t"}
    assert [holes(layout)[0].drillings[0].style, holes(head())[0].drillings[0].waste_too] == ["side bore", True], "a pin may stand in the waste"


def test_a_hole_is_as_wide_as_its_drill_and_its_reamer_make_it_and_its_point_runs_ahead():
    reamed = pattern("peg", "face", bore(diameter=6.0, depth=12.0, reamed=7.5, taper=20.0))
    layout = head(tuners=(face("a", 0.0, 90.0, reamed), face("b", 0.0, 120.0)), patterns=(reamed, FACE), holes=(
        SingleHole(id="old", at=(20.0, 90.0), diameter=6.0, there=True),))
    peg, plain, old = (hole.drillings[0] for hole in holes(layout) if hole.of in ("a", "b", "old"))
    wide, slim, exact = (Drill(id="d", kind="brad", diameter=size, length=90.0, spur=1.1) for size in (6.04, 5.96, 6.0))
    assert [wider_by(drill, plain) for drill in (wide, slim, exact, None)] == pytest.approx([0.04, 0.0, 0.0, 0.0])
    assert [wider_by(drill, peg) for drill in (wide, None)] == [1.5, 1.5] and wider_by(wide, old) == 0.0
    assert as_cut(plain, (wide,)).radius == pytest.approx(3.02) and as_cut(plain, (slim,)).radius == 3.0
    assert (peg.narrow, peg.finished, plain.narrow) == (7.5 - 12.0 / 20.0, 7.5, 6.0)
    assert (point_ahead(wide, plain), point_ahead(None, plain)) == (1.1, pytest.approx(1.8))


def test_a_hole_as_deep_as_the_wood_is_thick_goes_through_in_either_unit():
    """3/4 in typed as a fraction is 19.049999999999997 mm, typed in mm it is 19.05."""
    layout = head(holes=(SingleHole(id="hole", at=(0.0, 90.0), diameter=5.0, depth=parse_length('3/4"')),), pins=())
    layout = replace(layout, blank=replace(layout.blank, thickness=parse_length("19.05")))
    assert layout.holes[0].depth < layout.blank.thickness
    (d,) = holes(layout)[0].drillings
    assert d.through and d.depth == d.stop == layout.blank.thickness
