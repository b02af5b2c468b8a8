"""Drawing closed lines: outlines and slots, edge by edge."""

import math

import pytest

from app.tools import Options
from app.tools.draw import draw
from geometry.curves import Arc, Cubic, Line
from geometry.drawing import Stroke
from geometry.layout import DrawnSlot, loop_path, slot_path
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import plain, sound
from tests.symmetric import is_symmetric

BARE = {"slots": (), "tuners": (), "rows": (), "pins": (), "holes": ()}


def pen(layout, into="outline", **options):
    chosen = Options(**options)
    hand = TestHand(draw(layout, into, chosen), layout)
    hand.options = chosen
    return hand


def kinds(loop):
    return [type(segment) for segment in loop_path(loop)]


def test_straight_edges_closed_on_the_first_node():
    hand = pen(plain())
    for at in ((-38.0, 5.0), (38.0, 5.0), (30.0, 170.0)):
        hand.click(*at)
    shown = hand.move(-37.7, 5.3)
    assert shown.snapped == "the first node: closes the line"
    done = hand.press(-37.7, 5.3)
    assert done.name == "Draw the outline" and done.held == ("outline",)
    assert [node.at for node in sound(done.layout).outline.nodes] == [(-38.0, 5.0), (38.0, 5.0), (30.0, 170.0)]


def test_the_layout_stays_as_it_is_while_drawing():
    head = plain()
    hand = pen(head)
    hand.click(-38.0, 5.0)
    shown = hand.move(38.0, 5.0)
    assert shown.layout is head
    assert any(isinstance(mark, Stroke) and mark.style == "outline" for mark in shown.marks)
    assert shown.readout == "length 76 mm, angle 0.0°"
    assert hand.running.cancel() is head


def test_an_arc_by_its_end_and_a_point_on_it():
    hand = pen(plain(**BARE))
    hand.click(-20.0, 12.0)
    hand.click(20.0, 12.0)
    hand.key("a")
    assert hand.options.kind == "arc"
    hand.click(20.0, 72.0)
    shown = hand.move(50.0, 42.0)
    assert shown.readout.startswith("radius 30 mm")
    hand.click(50.0, 42.0)
    hand.key("s")
    hand.click(-20.0, 72.0)
    done = hand.key("enter")
    arc = loop_path(done.layout.outline).segments[1]
    assert isinstance(arc, Arc) and arc.radius == pytest.approx(30.0) and arc.centre == pytest.approx((20.0, 42.0))
    assert kinds(done.layout.outline) == [Line, Arc, Line, Line]


@pytest.mark.parametrize("key, edge", [("s", Line), ("t", Arc), ("c", Cubic)])
def test_another_kind_of_edge_keeps_the_end_that_was_set_for_an_arc(key, edge):
    hand = pen(plain(**BARE))
    hand.click(20.0, 12.0)
    hand.click(20.0, 40.0)
    hand.key("a")
    hand.click(5.0, 72.0)
    hand.key("a")
    hand.key(key)
    hand.key("s")
    hand.click(-22.0, 45.0)
    done = hand.press(20.0, 12.0)
    nodes = [node.at for node in done.layout.outline.nodes]
    assert nodes == [pytest.approx(at) for at in ((20.0, 12.0), (20.0, 40.0), (5.0, 72.0), (-22.0, 45.0))]
    assert kinds(done.layout.outline)[1] is edge


def test_an_arc_that_goes_on_without_a_corner():
    hand = pen(plain(**BARE))
    hand.click(20.0, 12.0)
    hand.click(20.0, 60.0)
    hand.key("t")
    hand.click(-20.0, 60.0)
    hand.key("s")
    done = hand.press(20.0, 12.0)
    arc = loop_path(done.layout.outline).segments[1]
    assert isinstance(arc, Arc) and arc.radius == pytest.approx(20.0) and arc.sweep == pytest.approx(math.pi)
    assert [node.smooth for node in done.layout.outline.nodes] == [False, True, False]


def test_a_curve_pulls_its_handle_until_the_button_is_let_go():
    hand = pen(plain(**BARE), kind="curve")
    hand.press(-20.0, 12.0)
    hand.move(-20.0, 2.0)
    hand.release()
    hand.press(20.0, 12.0)
    shown = hand.move(20.0, 32.0)
    assert shown.readout.startswith("handle length 20 mm")
    hand.release()
    hand.press(0.0, 90.0)
    hand.move(-15.0, 90.0)
    hand.release()
    hand.press(-20.0, 12.0)
    assert not hand.running.over
    done = hand.release()
    nodes = sound(done.layout).outline.nodes
    assert nodes[0].handles == ((-20.0, 2.0), (20.0, -8.0))
    assert nodes[1].handles == ((20.0, 32.0), (15.0, 90.0))
    assert nodes[1].smooth and nodes[2].smooth


def test_backspace_takes_nodes_back():
    hand = pen(plain(**BARE))
    hand.click(-20.0, 12.0)
    hand.click(20.0, 12.0)
    hand.click(33.0, 44.0)
    hand.key("backspace")
    hand.click(20.0, 72.0)
    done = hand.do("double", (20.0, 72.0))
    assert [node.at for node in done.layout.outline.nodes] == [(-20.0, 12.0), (20.0, 12.0), (20.0, 72.0)]
    empty = pen(plain())
    empty.click(-20.0, 12.0)
    empty.key("backspace")
    assert empty.move(5.0, 5.0).readout == "5 mm to the treble, 5 mm from the nut line"
    arc = pen(plain(), kind="arc")
    arc.click(-20.0, 12.0)
    arc.click(20.0, 12.0)
    arc.key("backspace")
    arc.options.kind = "straight"
    assert arc.move(-20.0, 32.0).readout == "length 20 mm, angle 90.0°"


def test_drawing_one_half_closes_on_the_centreline():
    hand = pen(plain(**BARE), mirrored=True)
    hand.click(22.0, 0.0)
    hand.click(38.0, 50.0)
    shown = hand.move(30.0, 150.0)
    assert sum(isinstance(mark, Stroke) and mark.style == "outline" for mark in shown.marks) == 2
    hand.click(30.0, 150.0)
    assert hand.move(-12.0, 181.0).snapped == "centreline: closes the line"
    done = hand.press(-12.0, 181.0)
    assert is_symmetric(sound(done.layout).outline)
    assert len(done.layout.outline.nodes) == 7 and loop_path(done.layout.outline).area > 0


def test_drawing_one_half_closes_straight_across_on_enter():
    hand = pen(plain(**BARE), mirrored=True)
    hand.click(-22.0, 0.0)
    hand.click(-38.0, 50.0)
    hand.click(-30.0, 150.0)
    done = hand.key("enter")
    assert is_symmetric(sound(done.layout).outline) and len(done.layout.outline.nodes) == 6
    assert loop_path(done.layout.outline).box == pytest.approx((-38.0, 0.0, 38.0, 150.0))


def test_typed_places_lengths_and_radii():
    hand = pen(plain(**BARE))
    hand.type("-20; 12")
    hand.type("length 40 angle 0")
    hand.move(20.0, 99.0)
    hand.type("60")
    hand.key("t")
    hand.move(-5.0, 72.0)
    hand.type("radius 20")
    hand.key("a")
    hand.type("-20, 50")
    hand.move(-30.0, 60.0)
    shown = hand.type("radius 12,5")
    assert "must be" not in shown.readout
    done = hand.key("enter")
    path = loop_path(sound(done.layout).outline)
    assert path.segments[0] == Line((-20.0, 12.0), (20.0, 12.0))
    assert path.segments[1].end == pytest.approx((20.0, 72.0))
    assert path.segments[2].radius == pytest.approx(20.0)
    assert path.segments[3].radius == pytest.approx(12.5)


def test_enter_that_sends_a_value_does_not_close_the_line():
    hand = pen(plain(**BARE))
    hand.click(-20.0, 12.0)
    hand.click(20.0, 12.0)
    hand.move(20.0, 40.0)
    shown = hand.do("key", key="enter", typed="60")
    assert not hand.running.over and shown.readout == "length 32 mm, angle -90.0°"


def test_a_bare_number_is_a_radius_where_an_arc_wants_one():
    hand = pen(plain(**BARE), kind="tangent arc")
    hand.click(20.0, 12.0)
    hand.move(-30.0, 12.0)
    hand.type("20")
    hand.options.kind = "arc"
    hand.click(20.0, 12.0)
    hand.move(0.0, -20.0)
    done = hand.type("25")
    assert [arc.radius for arc in loop_path(sound(done.layout).outline)] == pytest.approx([20.0, 25.0])


def test_what_cannot_be_drawn_is_said():
    hand = pen(plain(**BARE))
    assert "two lengths" in hand.type("40").readout
    hand.type("-20; 12")
    assert "not a length" in hand.type("12..5; 3").readout
    assert "not understood" in hand.type("wide 3").readout
    assert "two different ends" in hand.press(-20.0, 12.0).readout
    hand.click(20.0, 12.0)
    assert "no area" in hand.key("enter").readout
    hand.key("t")
    assert "straight behind" in hand.press(0.0, 12.0).readout
    hand.key("a")
    hand.click(20.0, 52.0)
    assert "be 20 mm or more" in hand.type("radius 5").readout
    assert "above zero" in hand.type("radius 0").readout
    assert "straight line" in hand.press(20.0, 40.0).readout


def test_shift_keeps_level_and_alt_lets_go():
    hand = pen(plain(**BARE))
    hand.click(-20.0, 12.0)
    hand.press(25.3, 14.0, shift=True)
    hand.press(25.31, 33.337, alt=True)
    done = hand.key("enter")
    assert [node.at for node in done.layout.outline.nodes] == [(-20.0, 12.0), (25.0, 12.0), (25.31, 33.34)]


def test_a_slot_of_any_shape():
    hand = pen(plain(), "slot")
    for at in ((-22.0, 100.0), (-12.0, 100.0), (-12.0, 130.0)):
        hand.click(*at)
    done = hand.key("enter")
    assert done.name == "Draw bass slot" and done.layout.slots[-1].depth is None
    assert isinstance(done.layout.slots[-1].shape, DrawnSlot)
    assert slot_path(sound(done.layout).slots[-1]).area == pytest.approx(150.0)
    both = pen(plain(), "slot", mirrored=True)
    for at in ((-15.0, 100.0), (-5.0, 100.0), (-5.0, 120.0)):
        both.click(*at)
    assert both.key("enter").held == ("bass slot", "treble slot 2")


def test_the_wall_of_a_drawn_slot_is_drawn_anew():
    hand = pen(plain(), "heart", kind="curve")
    for at in ((-15.0, 60.0), (-5.0, 60.0), (-5.0, 90.0)):
        hand.click(*at)
    done = hand.key("enter")
    assert done.layout.slots[1].id == "heart" and done.layout.slots[1].depth == 5.0
    assert kinds(done.layout.slots[1].shape.loop)[:2] == [Cubic, Cubic]


@pytest.mark.parametrize("mirrored", [False, True])
def test_on_the_node_just_set_nothing_is_told_of_it(mirrored):
    hand = pen(plain(**BARE), mirrored=mirrored)
    assert hand.click(0.0, 5.0).snapped == ""
    for at in ((20.0, 5.0), (31.3, 47.7)):
        assert hand.click(*at).snapped == ""
        assert hand.move(at[0] + 0.2, at[1] + 0.1).snapped == ""
    assert "level with node 3 of this line" in hand.move(60.0, 47.7).snapped


def test_what_is_taken_back_is_no_longer_told_of():
    hand = pen(plain(**BARE))
    for at in ((0.0, 5.0), (20.0, 5.0), (31.3, 47.7)):
        hand.click(*at)
    assert "node 3 of this line" in hand.move(60.0, 47.7).snapped
    shown = hand.key("backspace")
    assert shown.back and "node 3" not in shown.snapped
    hand.key("backspace")
    assert not hand.key("backspace").back


def test_what_the_line_takes_the_place_of_attracts_nothing():
    """A node and a wall of the outline and of a slot, a tenth of a millimetre away: caught by whoever draws something else."""
    head = plain()
    outline, heart = head.outline.nodes[2].at, head.slots[1].shape.loop.nodes[1].at
    wall = loop_path(head.outline).segments[0].point(0.37)
    for place, of in ((outline, "outline"), (wall, "outline"), (heart, "heart")):
        near = (place[0] + 0.1, place[1] + 0.1)
        for into, catches in (("slot", True), ("outline", of != "outline"), ("heart", of != "heart")):
            snapped = pen(head, into).move(*near).snapped
            assert (of in snapped) == catches, (place, into, snapped)
