"""Holding and dragging, from press to release."""

import math

import pytest
from msgspec.structs import replace

from app.tools import Done, Options, Pointer, Running
from app.tools.hold import hold
from geometry.edits import along_edge, free_from_row, plan_point, twin_feature
from geometry.edits.loops import edge_of
from geometry.edits.shape import add_node
from geometry.layout import Ear, Slot, StraightSlot
from geometry.solids import holes
from geometry.vectors import distance
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import curved, plain, sound, twelve
from tests.symmetric import is_symmetric


def hand(layout, held=(), **options):
    return TestHand(hold(layout, held, Options(**options)), layout)


def test_a_click_holds_and_changes_nothing():
    head = plain()
    done = hand(head).click(30.0, 60.0)
    assert done == Done(head, held=("treble face 1",)) and done.layout is head and done.name == ""
    assert hand(head, ("pin",)).click(30.0, 60.0, ctrl=True).held == ("pin", "treble face 1")
    assert hand(head, ("pin", "treble face 1")).click(30.0, 60.0, ctrl=True).held == ("pin",)
    assert hand(head, ("pin",)).click(30.0, 60.0, shift=True).held == ("pin", "treble face 1")
    assert hand(head, ("pin",)).click(0.0, 130.0).held == ()
    assert hand(head).click(40.0, 130.0).held == ("outline",)
    assert hand(head).click(50.0, 150.0).held == ("blank",)
    node = hand(head, ("outline",)).click(40.0, 180.0)
    assert node.held == ("outline",) and node.node == 2


def test_a_face_tuner_is_dragged_by_where_it_was_pressed():
    done = hand(plain()).drag((31.0, 61.0), (26.2, 71.3))
    assert plan_point(sound(done.layout), "treble face 1") == (25.0, 70.0)
    assert done.name == "Move treble face 1" and done.held == ("treble face 1",)


def test_readout_and_snap_are_told_while_dragging():
    head = hand(plain())
    head.press(30.0, 60.0)
    shown = head.move(12.3, 64.2)
    assert shown.readout == "12 mm to the treble, 64 mm from the nut line"
    assert shown.snapped == "grid 1 mm"
    assert head.move(16.8, 67.2).snapped == "in line with nut end of treble slot"
    free = head.move(12.346, 64.234, alt=True)
    assert plan_point(free.layout, "treble face 1") == (12.35, 64.23) and free.snapped == ""


def test_shift_keeps_one_axis():
    done = hand(plain()).drag((30.0, 60.0), (31.9, 75.0), shift=True)
    assert plan_point(done.layout, "treble face 1") == (30.0, 75.0)


def test_a_side_tuner_slides_in_plan():
    head = free_from_row(twelve(), "treble side 2")
    at = plan_point(head, "treble side 2")
    running = hand(head)
    running.press(*at)
    shown = running.move(at[0] - 3.0, at[1] + 7.2)
    assert along_edge(shown.layout, "treble side 2")[1] == pytest.approx(105.0)
    assert shown.readout.startswith("along 105 mm, tilt")
    back = running.move(at[0], at[1] + 0.3)
    assert back.snapped == "midway between treble side 1 and treble side 3"
    over = running.move(-at[0], at[1])
    assert along_edge(over.layout, "treble side 2")[0] == "bass"


def test_a_side_tuner_is_dragged_by_its_mark_on_the_folded_edge():
    head = free_from_row(twelve(), "treble side 2")

    def mark(layout):
        return next(d.mark for hole in holes(layout) for d in hole.drillings
                    if d.of == "treble side 2" and d.role == "post")

    before = mark(head)
    running = hand(head)
    press = (50.0 + before[2], before[1])
    assert running.press(*press).held == ("treble side 2",)
    shown = running.move(press[0], press[1] + 9.0, alt=True)
    assert mark(shown.layout)[1] == pytest.approx(before[1] + 9.0, abs=0.02)
    assert shown.layout.tuner("treble side 2").place.depth is None
    deep = running.move(press[0] - 3.0, press[1] + 9.0)
    assert deep.layout.tuner("treble side 2").place.depth == pytest.approx(5.0, abs=0.01)
    assert deep.readout.endswith("5 mm below the face")
    kept = running.move(press[0] - 3.0, press[1] + 9.0, shift=True)
    assert kept.layout.tuner("treble side 2").place.depth is None
    sound(running.release().layout)


def test_a_mark_of_a_row_moves_the_row():
    done = hand(plain()).drag((-45.0 - 8.0, 60.0), (-45.0 - 8.0, 75.2))
    assert [along_edge(done.layout, f"flank {k}")[1] for k in range(3)] == pytest.approx([45.0, 75.0, 105.0])


def test_slots():
    whole = hand(plain()).drag((17.0, 75.0), (20.1, 79.2))
    assert whole.layout.slots[0].shape.nut_end == (20.0, 44.0) and whole.name == "Move treble slot"
    end = hand(plain()).drag((17.0, 150.0), (17.2, 139.8))
    assert end.layout.slots[0].shape.tip_end == (17.0, 140.0)
    assert end.name == "Move the tip end of treble slot"
    leaning = hand(plain()).drag((17.0, 150.0), (25.0, 140.0), shift=True)
    assert leaning.layout.slots[0].shape.tip_end == (17.0, 140.0)


def test_a_length_and_a_width_typed_together_both_hold():
    dragged = hand(plain())
    dragged.press(17.0, 150.0)
    dragged.move(17.0, 140.0)
    both = dragged.type("length 80 width 11").layout.slots[0].shape
    assert both.width == 11.0 and distance(both.nut_end, both.tip_end) + both.width == pytest.approx(80.0)


def test_several_held_things_move_together():
    held = ("treble face 1", "treble slot", "treble side 1", "pin")
    done = hand(plain(), held).drag((30.0, 60.0), (32.0, 65.0), alt=True)
    assert plan_point(done.layout, "treble face 1") == (32.0, 65.0)
    assert plan_point(done.layout, "pin") == (2.0, 30.0)
    assert along_edge(done.layout, "treble side 1")[1] == pytest.approx(105.0)
    assert done.layout.slots[0].shape.nut_end == (19.0, 45.0)
    assert done.held == held and done.name == "Move 4 things"


def test_nodes_handles_and_edges_of_the_held_outline():
    node = hand(curved(), ("outline",)).drag((40.0, 40.0), (43.1, 44.2))
    assert node.layout.outline.nodes[2].at == (43.0, 44.0) and node.node == 2
    assert node.name == "Move node 3 of the outline"
    handle = hand(curved(), ("outline",)).drag((22.0, 15.0), (20.2, 18.0))
    assert handle.layout.outline.nodes[1].handles[0] == (20.0, 18.0)
    edge = hand(curved(), ("outline",)).drag((0.0, 180.0), (0.0, 185.0))
    assert [n.at for n in edge.layout.outline.nodes[4:6]] == [(20.0, 185.0), (-20.0, 185.0)]
    both = hand(curved(), ("outline",), mirrored=True).drag((40.0, 40.0), (43.1, 44.2))
    assert is_symmetric(sound(both.layout).outline) and both.layout.outline.nodes[7].at == (-43.0, 44.0)


def test_what_is_not_held_is_not_pulled_by_accident():
    for press, kind in (((40.0, 130.0), "outline"), ((50.0, 150.0), "blank"), ((22.0, 0.0), "nut")):
        done = hand(plain()).drag(press, (press[0] - 20.0, press[1] + 35.0))
        assert done.layout == plain(), kind


def test_sizes_that_are_held_follow_the_pointer():
    assert hand(plain(), ("blank",)).drag((50.0, 150.0), (54.2, 150.0)).layout.blank.treble == 54.0
    assert hand(plain(), ("blank",)).drag((-45.0, 150.0), (-47.0, 150.0)).layout.blank.bass == 47.0
    assert hand(plain(), ("blank",)).drag((66.0, 150.0), (69.0, 150.0)).layout.blank.thickness == 19.0
    assert hand(plain(), ("blank",)).drag((-61.0, 150.0), (-64.0, 150.0)).layout.blank.thickness == 19.0
    assert hand(plain(), ("blank",)).drag((10.0, 190.0), (10.0, 195.0)).layout.blank.tip == 195.0
    assert hand(plain(), ("blank",)).drag((10.0, -10.0), (10.0, 20.0)).layout.blank.behind == 0.0
    width = plain().nut.width
    nut = hand(plain(), ("nut",)).drag((width / 2, 0.0), (width / 2 + 2, 0.0))
    assert nut.layout.nut.width == width + 4 and nut.name == "Change the width of the nut"
    spread = plain().nut.spread
    strings = hand(plain(), ("nut",)).drag((-spread / 2, 0.0), (-spread / 2 + 1, 0.0))
    assert strings.layout.nut.spread == spread - 2 and strings.name == "Spread the strings"
    eared = plain(ears=(Ear(id="ear", side="bass", width=12.0, start=0.0, end=90.0),))
    assert hand(eared, ("ear",)).drag((-33.0, 8.0), (-30.0, 8.0)).layout.ears[0].width == 15.0


def test_the_line_of_a_scarf_joint_that_is_held_follows_the_pointer():
    joined = plain(blank=replace(plain().blank, scarf=70.0), nut=replace(plain().nut, pitch=13.0, slant=5.0))
    x = 44.0
    line = 70.0 + joined.nut.at(x)[1]
    first = hand(joined).drag((x, line + 0.1), (x, line + 4.1))
    assert first.layout.blank.scarf == 70.0, "nothing is pulled by accident"
    assert hand(joined).click(x, line + 0.1).held == ("blank",)
    moved = hand(joined, ("blank",)).drag((x, line + 0.1), (x, line + 4.2))
    assert moved.layout.blank.scarf == 74.0 and moved.name == "Change the line of the scarf joint"
    for end, scarf in ((-90.0, 0.5), (joined.blank.tip + 60.0, joined.blank.tip)):
        assert hand(joined, ("blank",)).drag((x, line), (x, end)).layout.blank.scarf == scarf, "it stays on the face"


def test_a_band_holds_what_lies_in_it():
    done = hand(plain()).drag((-12.0, 20.0), (39.0, 160.0))
    assert set(done.held) == {"treble slot", "heart", "treble face 1", "pin", "peep"}
    strip = hand(plain()).drag((70.0, 80.0), (51.0, 120.0))
    assert strip.held == ("treble side 1",)
    added = hand(plain(), ("heart",)).drag((-12.0, 20.0), (3.0, 30.0), shift=True)
    assert added.held == ("heart", "pin")


def test_double_clicks():
    made = hand(curved(), ("outline",)).do("double", (0.0, 180.1))
    assert len(made.layout.outline.nodes) == 9
    assert made.layout.outline.nodes[made.node].at == pytest.approx((0.0, 180.0))
    smooth = hand(plain(), ("outline",)).do("double", (40.0, 180.0))
    assert smooth.layout.outline.nodes[2].smooth and smooth.name == "Make node 3 of the outline smooth"
    assert hand(smooth.layout, ("outline",)).do("double", (40.0, 180.0)).name.endswith("a corner")
    assert hand(plain()).do("double", (30.0, 60.0)).held == ("treble face 1",)
    assert hand(plain(), ("pin",)).do("double", (0.0, 130.0)).held == ("pin",)


def test_typed_values_end_a_drag():
    def typed(press, text, head=None, held=()):
        running = hand(head or plain(), held)
        running.press(*press)
        running.move(press[0] + 1.0, press[1] + 2.0)
        return running.type(text)

    assert plan_point(typed((30.0, 60.0), "25; 70").layout, "treble face 1") == (25.0, 70.0)
    assert along_edge(typed((30.0, 100.0), "73.9").layout, "treble side 1")[1] == 73.9
    assert along_edge(typed((30.0, 100.0), "along 80").layout, "treble side 1")[1] == 80.0
    assert typed((17.0, 150.0), "length 100").layout.slots[0].shape.tip_end == pytest.approx((17.0, 127.0))
    assert typed((17.0, 150.0), "width 10").layout.slots[0].shape.width == 10.0
    assert typed((17.0, 150.0), "18; 140").layout.slots[0].shape.tip_end == (18.0, 140.0)
    assert typed((40.0, 180.0), "41; 181", held=("outline",)).layout.outline.nodes[2].at == (41.0, 181.0)
    assert typed((50.0, 150.0), '2"', held=("blank",)).layout.blank.treble == 50.8
    arc = typed((0.0, 180.0), "radius 50", curved(), ("outline",)).layout
    assert arc.outline.nodes[4].bulge > 0
    longer = typed((0.0, 180.0), "length 85", held=("outline",)).layout
    assert edge_of(list(longer.outline.nodes), 2).length() == pytest.approx(85.0)
    assert "or the radius of an arc" in typed((0.0, 180.0), "width 3", held=("outline",)).readout
    assert typed((17.0, 75.0), "20; 90").layout.slots[0].shape.nut_end == (20.0, 35.0)
    refused = typed((30.0, 100.0), "width 3")
    assert "how far along" in refused.readout


def test_a_typed_value_keeps_the_edge_and_the_depth_that_were_shown():
    head = free_from_row(twelve(), "treble side 2")
    at = plan_point(head, "treble side 2")
    over = hand(head)
    over.press(*at)
    assert along_edge(over.move(-at[0], at[1]).layout, "treble side 2")[0] == "bass"
    assert along_edge(over.type("90").layout, "treble side 2") == ("bass", 90.0)
    mark = next(d.mark for hole in holes(head) for d in hole.drillings if d.of == "treble side 2" and d.role == "post")
    out = head.blank.treble + mark[2]
    sunk = hand(head)
    sunk.press(out, mark[1])
    depth = sunk.move(out + 2.5, mark[1]).layout.tuner("treble side 2").place.depth
    assert depth == pytest.approx(mark[2] + 2.5, abs=0.01)
    place = sunk.type("90").layout.tuner("treble side 2").place
    assert (place.along, place.depth) == (90.0, depth)


def test_each_end_of_a_slot_has_its_own_name_for_undo():
    assert hand(plain()).drag((17.0, 40.0), (17.0, 45.0)).name == "Move the nut end of treble slot"
    assert hand(plain()).drag((17.0, 150.0), (17.0, 145.0)).name == "Move the tip end of treble slot"


def test_what_makes_no_sense_is_said_and_the_last_good_layout_stays():
    running = hand(plain())
    running.press(30.0, 60.0)
    good = running.move(25.0, 60.0)
    bad = running.move(9000.0, 60.0)
    assert bad.layout is good.layout and "5000 mm" in bad.readout
    assert running.release().layout is good.layout


def test_cancelling_gives_back_the_very_layout():
    head = plain()
    running = hand(head)
    running.press(30.0, 60.0)
    running.move(10.0, 20.0)
    assert running.running.cancel() is head and running.running.over
    assert running.running.send(Pointer((0.0, 0.0), "move")) is None


def test_a_drag_back_to_its_start_changes_nothing():
    head = plain()
    running = hand(head)
    running.press(30.0, 60.0)
    running.move(20.0, 20.0)
    running.move(30.0, 60.0)
    done = running.release()
    assert done.layout is head and done.name == ""


def test_symmetric_dragging_takes_the_twin_along():
    for id in ("treble face 2", "bass side 1", "treble slot"):
        at = plan_point(twelve(), id)
        twin = twin_feature(twelve(), id)
        done = hand(twelve(), mirrored=True).drag(at, (at[0] + 1.5, at[1] + 4.0))
        assert twin_feature(sound(done.layout), id) == twin, id


def test_a_release_without_a_press_is_nothing():
    head = plain()
    assert Running(hold(head), head).send(Pointer((0.0, 0.0), "release")) is None


def test_a_double_press_on_what_it_does_nothing_to_is_a_press():
    dragged = hand(plain())
    dragged.do("double", (30.0, 60.0))
    dragged.move(30.0, 65.0)
    done = dragged.release()
    assert done.name and plan_point(done.layout, "treble face 1") == pytest.approx((30.0, 65.0))
    both = hand(plain(), ("pin", "treble face 1"))
    assert both.do("double", (30.0, 60.0), ctrl=True).held == ("pin",), "as a second press would"


ACROSS = Slot(id="across", shape=StraightSlot(nut_end=(-10.0, 120.0), tip_end=(10.0, 120.0), width=6.0))
SLANTED = Slot(id="slanted", shape=StraightSlot(nut_end=(-10.0, 110.0), tip_end=(10.0, 120.0), width=6.0))


def test_an_end_in_the_hand_stays_in_the_hand_and_its_mirror_image_follows():
    done = hand(plain(slots=(ACROSS,)), ("across",), mirrored=True).drag((10.0, 120.0), (15.0, 124.0))
    assert (done.layout.slots[0].shape.tip_end, done.layout.slots[0].shape.nut_end) == ((15.0, 124.0), (-15.0, 124.0))
    moved = hand(plain(slots=(ACROSS,)), ("across",), mirrored=True).drag((3.0, 120.0), (6.0, 124.0))
    assert (moved.layout.slots[0].shape.tip_end, moved.layout.slots[0].shape.nut_end) == ((10.0, 124.0), (-10.0, 124.0))
    alone = hand(plain(slots=(SLANTED,)), ("slanted",), mirrored=True).drag((10.0, 120.0), (15.0, 124.0))
    assert alone.layout.slots[0].shape.nut_end == (-10.0, 110.0), "a slanted slot has no mirror image to follow"


def test_while_both_sides_do_alike_the_card_tells_where_a_thing_is():
    head = hand(plain(), ("pin",), mirrored=True)
    x, y = plain().pins[0].at
    assert x == 0.0
    head.press(x, y)
    assert head.move(8.0, y + 5.0).readout == f"on the centreline, {y + 5:g} mm from the nut line"
    slot = hand(plain(slots=(ACROSS,)), ("across",), mirrored=True)
    slot.press(10.0, 120.0)
    assert slot.move(15.0, 120.0).readout.startswith("length 36 mm")
    whole = hand(plain(slots=(ACROSS,)), ("across",), mirrored=True)
    whole.press(3.0, 120.0)
    assert whole.move(9.0, 124.0).readout == "moved 0 mm across, 4 mm along"


@pytest.mark.parametrize("held, at, text", [
    (("pin",), None, "12; 130"), (("pin",), None, "treble 5"), (("along",), (0.0, 90.0), "4; 90"), (("along",), (0.0, 70.0), "across 3"),
    (("outline",), (0.0, 180.0), "6; 181")])
def test_a_value_across_is_not_dropped_from_what_stays_on_the_centreline(held, at, text):
    along = Slot(id="along", shape=StraightSlot(nut_end=(0.0, 50.0), tip_end=(0.0, 90.0), width=6.0))
    head = add_node(plain(slots=(along,)), "outline", 2, 0.5)
    grip = hand(head, held, mirrored=True)
    at = at or head.pins[0].at
    grip.press(*at)
    grip.move(at[0], at[1] + 1.0)
    shown = grip.type(text)
    assert shown.refused and "switch Mirrored off" in shown.readout
    assert isinstance(grip.type("length 50" if at == (0.0, 90.0) else "along 2"), Done)


def test_a_length_typed_for_a_handle_is_its_length_where_the_edge_beside_it_holds_its_direction():
    head = curved()
    nodes = head.outline.nodes
    at, handle = nodes[2].at, nodes[1].handles[1]
    grip = hand(head, ("outline",))
    grip.press(*handle)
    grip.move(handle[0] - 3.0, handle[1] - 1.0)
    shown = grip.running.shown.layout.outline.nodes[1].handles[1]
    done = grip.type("length 20")
    found = done.layout.outline.nodes[1].handles[1]
    assert math.dist(found, at) == pytest.approx(20.0)
    assert (found[0] - at[0]) * (shown[1] - at[1]) == pytest.approx((found[1] - at[1]) * (shown[0] - at[0]), abs=1e-9)
