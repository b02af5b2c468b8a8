"""The piece drawn as it is at a step: opened out, and cut through."""

import math

import msgspec
import pytest
import shapely
from shapely.geometry import Polygon

from geometry.curves import Path
from geometry.curves.polygons import polygon
from geometry.drawing.marks import Area, Cross, Disc, Drawing, Label, Stroke
from geometry.drawing.section_cut import SectionLine
from geometry.drawing.tuner_plan import OVERRUN
from geometry.drawing.wood_section import level_cuts, section_for, wood_section
from geometry.drawing.wood_state import face_area, opening, wood_drawing
from geometry.layout import Ear
from geometry.sequence import WoodState, best_order, operations, precedence, wood_after
from geometry.solids import Drilling, holes
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo, leaning, stocked, with_waste

LAYOUT = stocked(ears=(Ear(id="ear", side="treble", width=5.0, start=20.0, end=150.0),))
PLANS = {"slot": with_waste(TURNED), "outline": THROUGH}
OPS = operations(LAYOUT, PLANS)
BY_ID = {op.id: op for op in OPS}
STEPS = best_order(OPS, precedence(LAYOUT, OPS)).steps


def after(step: str) -> WoodState:
    return wood_after(LAYOUT, STEPS, STEPS.index(step) + 1, OPS)


def drawn(step: str) -> Drawing:
    return wood_drawing(LAYOUT, after(step))


def of(drawing: Drawing, kind: type, owner: str) -> list:
    return [mark for mark in drawing if isinstance(mark, kind) and mark.owner == owner]


def area(path: Path) -> float:
    return abs(path.area)


def styled(drawing: Drawing, style: str) -> list:
    return [mark for mark in drawing if mark.style == style]


# ---- opened out ------------------------------------------------------------------------
def test_square_edges_are_drawn_while_they_are_there() -> None:
    for step in ("mark", "rout slot 2"):
        # The whole of the bass edge, and of the other what lies behind the nut and on the ear.
        assert [mark.path.length for mark in styled(drawn(step), "fold")] == pytest.approx([200.0, 10.0, 130.0], abs=0.01)
    assert styled(drawn("cut outline"), "fold") == styled(drawn("cut outline"), "blank") == []


def test_a_square_edge_has_a_gap_until_its_ear_is_on() -> None:
    bare = wood_drawing(LAYOUT, wood_after(LAYOUT, STEPS, 0, OPS))
    folds = sorted((m.path.start, m.path.end) for m in styled(bare, "fold"))
    assert folds == [((-45.0, -10.0), (-45.0, 190.0)), ((45.0, -10.0), (45.0, 0.0))]
    face = next(m for m in bare if isinstance(m, Area) and m.style == "waste")
    assert area(face.outer) == pytest.approx(90 * 200 - 5 * 190)
    assert styled(bare, "glue line") == []
    (glue,) = styled(drawn("glue ear ear"), "glue line")
    assert (glue.path.start, glue.path.end) == ((40.0, 20.0), (40.0, 150.0))
    other = stocked(ears=(Ear(id="ear", side="bass", width=5.0, start=20.0, end=150.0),))
    (glue,) = styled(wood_drawing(other, wood_after(other, ["glue ear ear"], 1)), "glue line")
    assert (glue.path.start, glue.path.end) == ((-40.0, 20.0), (-40.0, 150.0))


def test_beside_a_short_ear_there_is_no_wood_once_it_is_glued_either() -> None:
    wood = face_area(LAYOUT, after("glue ear ear"))
    assert wood.area == pytest.approx(90 * 200 - 5 * (20 + 40), abs=0.1)
    for y, there in ((-5.0, True), (10.0, False), (30.0, True), (140.0, True), (160.0, False), (185.0, False)):
        assert wood.contains(shapely.Point(44.0, y)) is there and wood.contains(shapely.Point(-44.0, y)) and wood.contains(shapely.Point(39.0, y))


def test_the_line_of_the_head_shows_with_the_paper() -> None:
    bare = wood_drawing(LAYOUT, wood_after(LAYOUT, STEPS, 0, OPS))
    assert styled(bare, "outline") == styled(bare, "wood") == []
    assert len(styled(drawn("mark"), "outline")) == len(styled(drawn("mark"), "wood")) == 1


def test_crosses_show_what_is_still_to_be_drilled_and_discs_what_is() -> None:
    marked = drawn("mark")
    # Counterbore and bore of the front tuner share a centre: two crosses. The screw on the edge is drilled through the plate.
    assert [cross.arm - OVERRUN for cross in of(marked, Cross, "front")] == pytest.approx([4.4, 3.25])
    assert [cross.arm - OVERRUN for cross in of(marked, Cross, "flank")] == pytest.approx([3.2])
    assert of(marked, Disc, "front") == []
    later = drawn("bore front.1.2")
    assert [(d.style, d.radius) for d in of(later, Disc, "front")] == [("counterbore", 4.4), ("post bore", 3.25)]
    assert of(later, Cross, "front") == []


def test_a_side_bore_has_a_mouth_on_the_folded_edge_until_the_waste_is_gone() -> None:
    bored = drawn("side bore flank.1.1")
    (mouth,) = of(bored, Disc, "flank")
    # 8 below the face on the treble edge at x = 45 folds to x = 53.
    assert mouth.centre == pytest.approx((53.0, 100.0)) and mouth.radius == 3.2
    # 5 of waste and 30 of depth, 6.4 wide.
    assert sorted(area(m.outer) for m in of(bored, Area, "flank")) == pytest.approx([5 * 6.4, 30 * 6.4])
    sawn = drawn("cut outline")
    assert [area(m.outer) for m in of(sawn, Area, "flank")] == pytest.approx([30 * 6.4])
    assert of(sawn, Disc, "flank") == []


def test_marks_on_the_edge_are_lost_with_it() -> None:
    late = ("mark", "cut outline")
    state = wood_after(LAYOUT, late, 2, OPS)
    assert of(wood_drawing(LAYOUT, state), Cross, "flank") == []
    assert of(wood_drawing(LAYOUT, state), Cross, "front") != []


def test_a_slot_is_a_line_then_holes_then_an_opening() -> None:
    assert [type(m) for m in of(drawn("mark"), Stroke, "slot")] == [Stroke]
    holed = of(drawn("waste holes slot"), Area, "slot")
    assert len(holed) == len(BY_ID["waste holes slot"].waste_holes.centres)
    assert len(of(drawn("saw slot"), Area, "slot")) == len(holed) + 1
    done = drawn("rout slot 2")
    assert len(of(done, Area, "slot")) == 1
    (wood,) = (m for m in styled(done, "wood"))
    assert len(wood.openings) == 1
    assert area(wood.openings[0]) == pytest.approx(110 * 13 + math.pi * 6.5 ** 2)


@pytest.mark.parametrize("step", ["waste holes slot", "saw slot", "rout slot 2", "cut outline"])
def test_borders_of_a_small_picture_stray_no_farther_than_they_may(step) -> None:
    exact, rough = drawn(step), wood_drawing(LAYOUT, after(step), 0.05)
    assert [(type(mark), mark.style, mark.owner) for mark in rough] == [(type(mark), mark.style, mark.owner) for mark in exact]
    for one, two in zip(exact, rough, strict=True):
        if isinstance(one, Area):
            assert len(one.openings) == len(two.openings)
            for border, other in zip((one.outer, *one.openings), (two.outer, *two.openings), strict=True):
                assert polygon(border).boundary.hausdorff_distance(polygon(other).boundary) <= 0.05
        else:
            assert one == two
    assert corners(rough) < 0.6 * corners(exact) or step == "rout slot 2"


def corners(drawing: Drawing) -> int:
    """Pieces of the borders of all wood in a drawing."""
    return sum(len(border.segments) for mark in styled(drawing, "wood") + styled(drawing, "waste")
               for border in (mark.outer, *mark.openings))


def test_half_a_slot_is_no_opening_yet() -> None:
    state = wood_after(LAYOUT, ("mark", "rout slot 1"), 2, OPS)
    assert opening(LAYOUT.slots[0], state.slots[0]) is None
    (wood,) = styled(wood_drawing(LAYOUT, state), "wood")
    assert wood.openings == ()


def test_the_saw_leaves_two_millimetres_and_the_router_none() -> None:
    assert face_area(LAYOUT, after("rout outline 1")).area == pytest.approx(80 * 180)
    # Two to either side and beyond the tip, round at both corners; nothing past the nut line.
    assert face_area(LAYOUT, after("cut outline")).area == pytest.approx(80 * 180 + 2 * 2 * 180 + 2 * 80 + 2 * math.pi, abs=0.01)
    assert styled(drawn("rout outline 1"), "waste") == []


def test_every_step_of_the_demo_adds_something_to_see_or_takes_something_away() -> None:
    layout = demo()
    ops = operations(layout)
    steps = best_order(ops, precedence(layout, ops)).steps
    before = wood_drawing(layout, wood_after(layout, steps, 0, ops))
    for n, step in enumerate(steps, 1):
        now = wood_drawing(layout, wood_after(layout, steps, n, ops))
        assert now != before or step == "template", step
        before = now


def test_a_plugged_pin_hole_is_seen_no_more_and_one_that_became_a_bore_is() -> None:
    assert of(drawn("rout outline 1"), Disc, "pin") != []
    assert of(drawn("clean up"), Disc, "pin") == []
    assert after("clean up").plugged == ("pin",)
    shared = msgspec.structs.replace(LAYOUT, pins=(msgspec.structs.replace(LAYOUT.pins[0], at=(-28.0, 60.0), diameter=6.5),))
    ops = operations(shared, PLANS)
    state = wood_after(shared, ("pin hole pin.1", "clean up"), 2, ops)
    assert [d.radius for d in of(wood_drawing(shared, state), Disc, "front")] == [3.25]


# ---- sections --------------------------------------------------------------------------
ACROSS = SectionLine((-45.0, 100.0), (1.0, 0.0))


def boxes(drawing: Drawing, style: str) -> list[tuple[float, ...]]:
    return [m.outer.box for m in drawing if isinstance(m, Area) and m.style == style]


def test_a_section_across_shows_waste_head_bore_and_slot_where_they_are() -> None:
    drawing = wood_section(LAYOUT, after("saw slot"), ACROSS)
    assert boxes(drawing, "waste") == [pytest.approx((0.0, -16.0, 90.0, 0.0))]
    assert boxes(drawing, "wood") == [pytest.approx((5.0, -16.0, 85.0, 0.0))]
    # From the square edge at 90 to 30 past the seat at 85, 6.4 high about 8 below the face.
    assert boxes(drawing, "side bore") == [pytest.approx((55.0, -11.2, 90.0, -4.8))]
    # The slot is 13 wide about x = 17, so from 55.5 to 68.5; the saw stays 1.5 inside it.
    assert pytest.approx((57.0, -16.0, 67.0, 0.0)) in boxes(drawing, "slot")


def test_a_section_follows_the_router() -> None:
    half = wood_after(LAYOUT, ("mark", "rout slot 1"), 2, OPS)
    assert boxes(wood_section(LAYOUT, half, ACROSS), "slot") == [pytest.approx((55.5, -10.0, 68.5, 0.0))]
    assert boxes(wood_section(LAYOUT, after("rout slot 2"), ACROSS), "slot") == [pytest.approx((55.5, -16.0, 68.5, 0.0))]
    done = wood_section(LAYOUT, after("rout outline 1"), ACROSS)
    assert boxes(done, "waste") == boxes(done, "wood") == [pytest.approx((5.0, -16.0, 85.0, 0.0))]
    assert boxes(done, "side bore") == [pytest.approx((55.0, -11.2, 85.0, -4.8))]


def test_upright_bores_are_cut_at_their_chord() -> None:
    at = SectionLine((-45.0, 62.0), (1.0, 0.0))
    drawing = wood_section(LAYOUT, after("bore front.1.2"), at)
    # 2 off the axis at x = -28: half chords of sqrt(4.4^2 - 4) and sqrt(3.25^2 - 4).
    half = [math.sqrt(r * r - 4) for r in (4.4, 3.25)]
    assert boxes(drawing, "counterbore") == [pytest.approx((17 - half[0], -8.0, 17 + half[0], 0.0))]
    assert boxes(drawing, "post bore") == [pytest.approx((17 - half[1], -16.0, 17 + half[1], 0.0))]


def test_where_there_is_no_wood_there_is_no_section() -> None:
    assert wood_section(LAYOUT, after("mark"), SectionLine((-45.0, 400.0), (1.0, 0.0))) == ()


def test_the_section_says_where_it_is() -> None:
    (words,) = (m.text for m in wood_section(LAYOUT, after("mark"), ACROSS) if isinstance(m, Label))
    assert words == "across, 100 mm from the nut line"


@pytest.mark.parametrize(("step", "origin", "direction"), [
    ("side bore flank.1.1", (45.0, 100.0), (-1.0, 0.0)),
    ("bore front.1.2", (-45.0, 60.0), (1.0, 0.0)),
    ("rout slot 1", (-45.0, 95.0), (1.0, 0.0)),
    ("glue ear ear", (-45.0, 85.0), (1.0, 0.0)),
    ("cut outline", (-45.0, 90.0), (1.0, 0.0)),
])
def test_each_operation_is_looked_at_where_it_cuts(step: str, origin: tuple, direction: tuple) -> None:
    line = section_for(LAYOUT, BY_ID[step])
    assert line.origin == pytest.approx(origin)
    assert line.direction == pytest.approx(direction)
    assert section_for(LAYOUT).origin == pytest.approx((-45.0, 90.0))


def side_bore(layout: object) -> Drilling:
    return next(d for hole in holes(layout) for d in hole.drillings if d.role == "post" and not d.upright)


def test_a_bore_cut_at_an_angle_is_part_of_an_ellipse() -> None:
    d = side_bore(leaning())
    # A plane across the blank meets the axis at atan(1/9): the ellipse is 3.2 high and 3.2 / sin wide, cut at the ends.
    line = SectionLine((-50.0, d.start[1]), (1.0, 0.0))
    # The finished edge stands where the seat is, the square edge past it: what of the bore was in the waste goes with that.
    seat = 50.0 + d.start[0]
    cut, = level_cuts(d, line, [(0.0, seat)])
    x0, y0, x1, y1 = cut.box
    assert (y0, y1) == pytest.approx((-11.2, -4.8), abs=0.02)
    assert x1 - x0 > 2 * d.radius
    assert Polygon(cut.flatten(0.01)).is_valid
    slope = math.atan(1 / 9)
    assert x1 == pytest.approx(seat)
    whole, = level_cuts(d, line, [(0.0, 100.0)])
    assert whole.box[2] > seat + 1.0 and whole.box[0] == pytest.approx(x0)
    # In two pieces of wood it is cut twice, and in no gap between them.
    low, high = level_cuts(d, line, [(0.0, x0 + 2.0), (x0 + 5.0, 100.0)])
    assert low.box[2] == pytest.approx(x0 + 2.0) and high.box[0] == pytest.approx(x0 + 5.0)
    assert x0 >= 50.0 + d.start[0] - (d.depth / math.cos(slope)) - 1e-6


def test_a_plane_square_to_the_axis_cuts_a_full_circle() -> None:
    d = side_bore(stocked())
    line = SectionLine((20.0, 0.0), (0.0, 1.0))
    cut, = level_cuts(d, line, [(0.0, 190.0)])
    assert cut.box == pytest.approx((96.8, -11.2, 103.2, -4.8), abs=0.01)
    # 64 chords inside a circle: the area is short by a factor of about (2 pi / 64)^2 / 6, unevenly spread here.
    assert area(cut) == pytest.approx(math.pi * 3.2 ** 2, rel=0.005)
    assert level_cuts(d, SectionLine((60.0, 0.0), (0.0, 1.0)), [(0.0, 190.0)]) == []


def test_states_without_slots_or_tuners_draw_too() -> None:
    layout = msgspec.structs.replace(LAYOUT, slots=(), tuners=(), holes=(), pins=(), ears=())
    ops = operations(layout, {"outline": THROUGH})
    steps = best_order(ops, precedence(layout, ops)).steps
    for n in range(len(steps) + 1):
        state = wood_after(layout, steps, n, ops)
        assert wood_drawing(layout, state) and wood_section(layout, state, ACROSS)
