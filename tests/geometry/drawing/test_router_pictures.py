"""Pictures of passes, the template board, wood to pare, grain."""

import pytest
from msgspec.structs import replace

from geometry.drawing import STYLES, Area, Cross, Disc, Label, Stroke
from geometry.drawing.grain import grain_marks
from geometry.drawing.router_marks import plan_marks
from geometry.drawing.router_picture import pass_picture
from geometry.drawing.template_board import board_drawing
from geometry.layout import Pin, Template
from geometry.routing.follower import follower_of
from geometry.routing.search import plan_outline
from tests.geometry.routing.specimens import BUSH, PINS, bit, drawn, head, plan, straight, with_rack

BEARING = bit("bearing", cutter=12, cutting=16, bearing="shank", high=5, out=38)
SHORT = bit("short", cutter=10, cutting=8, shank=10, out=15)
TIP = bit("tip", cutter=10, cutting=16, bearing="tip", high=5)


def boxes(drawing, style):
    return sorted(tuple(round(n, 6) for n in m.outer.box) for m in drawing if isinstance(m, Area) and m.style == style)


def test_a_bearing_on_the_template_stands_where_it_should():
    """Slot 13: left wall at -6.5, cutter to 5.5, edges from -16 to 0, bearing to 5, template to 6, base above it."""
    drawing = pass_picture(plan(BEARING).best, 0)
    assert boxes(drawing, "cutter") == [(-6.5, -16, 5.5, 0)]
    assert boxes(drawing, "follower") == [(-6.5, 0, 5.5, 5)]
    assert boxes(drawing, "template board") == [(-20.5, 0, -6.5, 6), (6.5, 0, 20.5, 6)]
    assert boxes(drawing, "wood") == [(-20.5, -16, -6.5, 0), (6.5, -16, 20.5, 0)]
    assert boxes(drawing, "shank") == [(-4.5, 0, 3.5, 20)]
    assert all(b[1] == 6 for b in boxes(drawing, "router base"))
    assert boxes(drawing, "waste") == [(4.5, -16, 6.5, 0)], "2 mm still to come at the right wall"
    assert {m.text for m in drawing if isinstance(m, Label)} == {
        "16 mm", "pass 1 of 1, face up: bearing", "bearing rubs 5 mm on the template", "wood", "template", "base"}


def test_a_bush_runs_along_a_larger_opening():
    """Bush 17, cutter 8: its edge stands 4.5 outside the wall."""
    drawing = pass_picture(plan(bit(cutter=8, cutting=25, shank=8), bushes=(BUSH,)).best, 0)
    assert boxes(drawing, "template board")[0] == (-20.5, 0, -11, 6)
    assert boxes(drawing, "follower")[0] == (-11, 1, -10, 10)


def test_what_the_other_side_has_cut_is_open():
    best = plan(SHORT, TIP, thickness=20.0).best
    drawing = pass_picture(best, len(best.passes) - 1)
    assert boxes(drawing, "slot") == [(-6.5, -20, 6.5, -11)], "9 mm from the face, now below"
    assert boxes(drawing, "template board") == [], "the bearing runs on the wall"
    assert boxes(drawing, "cutter") == [(-6.5, -12, 3.5, 4)]
    assert boxes(drawing, "follower") == [(-6.5, -17, 3.5, -12)]
    assert all(b[1] == 0 for b in boxes(drawing, "router base"))


def test_solid_wood_and_the_floor_of_a_blind_slot():
    drawing = pass_picture(plan(SHORT, slot=straight(depth=7.0), drills=()).best, 0)
    assert (-6.5, -16, 6.5, -7) in boxes(drawing, "wood")
    assert boxes(drawing, "waste") == [(3.5, -7, 6.5, 0)]


def test_the_outline_shows_one_wall_and_the_template_below():
    layout = with_rack(head(), bit("tip", cutter=12.7, cutting=25, bearing="tip", high=5))
    drawing = pass_picture(plan_outline(layout).best, 0)
    assert boxes(drawing, "wood") == [(-14, -16, 0, 0)]
    assert boxes(drawing, "template board") == [(-14, -22, 0, -16)]
    assert boxes(drawing, "cutter") == [(0, -16, 12.7, 9)]


def test_each_pass_has_a_picture_and_no_more():
    best = plan(SHORT).best
    drawings = [pass_picture(best, i) for i in range(len(best.passes))]
    assert len(set(drawings)) == len(drawings)
    assert {m.style for d in drawings for m in d} <= set(STYLES)
    for wrong in (-1, len(drawings)):
        with pytest.raises(IndexError):
            pass_picture(best, wrong)


def test_wood_to_pare_and_holes_are_marked_on_the_face():
    slot = drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0))
    found = plan(BEARING, slot=slot)
    marks = plan_marks(found)
    assert sum(m.style == "left standing" for m in marks) == 4
    holes = [m for m in marks if isinstance(m, Disc)]
    assert len(holes) == len(found.waste.centres) and all(m.radius == 5 for m in holes)
    nothing = plan(bit(cutter=20, bearing="shank"))
    assert nothing.best is None and {m.style for m in plan_marks(nothing)} == {"hole", "cross"}


def test_the_template_board_is_compensated_and_exact():
    layout = head(straight(width=13))
    marks = board_drawing(layout, follower_of(bit(cutter=8, shank=8), BUSH))
    lines = {m.owner: m.path for m in marks if isinstance(m, Stroke) and m.style == "template"}
    assert lines["slot"].box == pytest.approx((-11, 29, 11, 151))
    assert lines["slot"].area == pytest.approx(22 * 100 + 3.141592653589793 * 121)
    assert lines["outline"].box == pytest.approx((-35.5, 0.0, 35.5, 175.5))
    assert [m.owner for m in marks if isinstance(m, Disc)] == ["low", "high"]
    assert sum(isinstance(m, Cross) for m in marks) == 2
    words = [m.text for m in marks if isinstance(m, Label)]
    assert words == ["Template 6 mm thick for bit with bush", "17 follower, 8 cutter, offset 4.5 mm"]
    blank = board_drawing(replace(layout, template=Template(board="blank")), follower_of(bit(cutter=8, shank=8), BUSH))
    assert {m.owner: m.path for m in blank if m.style == "template"}["blank"].box == (-50, -20, 50, 200)


def test_the_outline_has_a_board_of_its_own_where_that_of_the_slots_is_as_large_as_the_blank():
    """Cut from the slots' board, the outside line would take the pins in the waste away; without it there is no template."""
    layout = replace(head(straight(width=13), pins=(*PINS, Pin(id="far", at=(45.0, 190.0)))), template=Template(board="blank"))
    follower = follower_of(bit(cutter=8, shank=8), BUSH)
    of_slot, of_outline = (board_drawing(layout, follower, of) for of in ("slot", "outline"))
    assert of_slot == board_drawing(layout, follower)
    assert {m.owner for m in of_slot if m.style == "template"} == {"blank", "slot"}
    assert {m.owner: m.path.box for m in of_outline if m.style == "template"} == {"outline": pytest.approx((-35.5, 0.0, 35.5, 175.5))}
    assert [m.owner for m in of_outline if isinstance(m, Disc)] == ["low", "high"]
    same = replace(layout, template=Template())
    assert board_drawing(same, follower, "outline") == board_drawing(same, follower, "slot")


def test_grain_is_marked_along_the_outline_and_named():
    marks = grain_marks(head())
    assert [type(m) for m in marks] == [Stroke, Label]
    assert marks[0].style == "grain risk" and marks[0].path.length == pytest.approx(80)
    assert marks[1].text == "end grain" and marks[1].at[1] > 180
