"""Shortest distances between things, by numbers worked out by hand."""

import math

import pytest

from app.tools import Options
from app.tools.hit import hit
from app.tools.measure import measure
from app.tools.things import Thing, between, thing
from geometry import vectors as v
from geometry.drawing import Label
from geometry.edits import plan_point
from geometry.layout import Ear
from geometry.solids import holes
from geometry.strings import runs
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import demo, plain, twelve


def apart(layout, a, b):
    one, two = (thing(layout, hit(layout, at, 0.1), abs(at[0]) > 50.0) for at in (a, b))
    return between(one, two)


def test_slot_to_outline():
    """The slot's wall at 17 + 6.5, the outline at 40."""
    found = apart(plain(), (17.0, 75.0), (40.0, 130.0))
    assert found.distance == pytest.approx(40.0 - 23.5, abs=1e-9)


def test_slot_to_slot():
    assert apart(twelve(), (17.0, 75.0), (-17.0, 75.0)).distance == pytest.approx(34.0 - 13.0, abs=1e-9)


def test_pin_to_slot():
    """From (0, 25) to the round nut end about (17, 40)."""
    found = apart(plain(), (0.0, 25.0), (17.0, 75.0))
    assert found.distance == pytest.approx(math.hypot(17.0, 15.0) - 6.5 - 3.0, abs=1e-9)


def test_bores_are_told_in_plan_and_in_space():
    """A screw pilot of 1.6 at (30, 69), 9 deep from the back, and a hole of 5 at (5, 160), 7 deep from the back."""
    found = apart(plain(), (30.0, 60.0), (5.0, 160.0))
    assert found.distance == pytest.approx(math.hypot(25.0, 91.0) - 0.8 - 2.5, abs=1e-9)
    assert found.in_space == pytest.approx(found.distance, abs=1e-6)
    crossing = apart(plain(), (30.0, 60.0), (30.0, 100.0))
    assert crossing.in_space >= crossing.distance - 1e-9


def test_what_lies_inside_another_is_at_no_distance():
    holed = plain(pins=(plain().pins[0], type(plain().pins[0])(id="in", at=(17.0, 80.0), diameter=4.0)))
    assert apart(holed, (17.0, 80.0), (17.0, 60.0)).distance == 0.0


def test_a_thing_inside_the_outline_is_measured_to_it():
    assert apart(plain(), (0.0, 25.0), (40.0, 130.0)).distance == pytest.approx(25.0 - 3.0, abs=1e-9)


def test_a_place_on_plain_wood_is_measured_to_edges_and_other_places():
    place, edge = Thing("this point", (20.0, 120.0)), thing(plain(), hit(plain(), (40.0, 130.0), 0.1), False)
    there, back = between(place, edge), between(edge, place)
    assert there.distance == back.distance == pytest.approx(20.0)
    assert (there.a, there.b) == (back.b, back.a) == (place.point, pytest.approx((40.0, 120.0)))
    assert between(place, Thing("this point", (23.0, 124.0))).distance == 5.0


def test_blank_and_ear():
    eared = plain(ears=(Ear(id="ear", side="bass", width=12.0, start=0.0, end=90.0),))
    assert apart(eared, (-33.0, 8.0), (-45.0, 150.0)).distance == pytest.approx(12.0)
    assert apart(plain(), (10.0, 190.0), (5.0, 160.0)).distance == pytest.approx(30.0 - 2.5)


def test_marks_on_a_folded_edge_are_measured_there():
    assert apart(plain(), (-53.0, 30.0), (-53.0, 60.0)).distance == pytest.approx(30.0 - 18.0 - 1.6, abs=1e-9)


def test_two_side_tuners_are_measured_between_the_middles_of_their_bores():
    """On the folded edge mark to mark of the bores, not of their screws; in plan seat to seat. Told beside it: the wood between."""
    head = twelve()
    seats = [plan_point(head, id) for id in ("treble side 1", "treble side 2")]
    marks = [d.mark for id in ("treble side 1", "treble side 2") for hole in holes(head)
             for d in hole.drillings if d.of == id and d.role == "post"]
    for places, far in (([(head.blank.treble + depth, y) for _, y, depth in marks], math.dist(marks[0], marks[1])),
                        ([(x - 4.0, y) for x, y in seats], math.dist(*seats))):
        hand = TestHand(measure(head, Options()), head)
        hand.press(*places[0])
        shown = hand.press(*places[1])
        told = f"{math.floor(far * 100 + 1e-6) / 100:g} mm"
        assert shown.readout.startswith(f"{told} between the middles of treble side 1 and treble side 2; at the closest ")
        assert [mark.text for mark in shown.marks if isinstance(mark, Label)] == [told]


def test_the_gesture_shows_a_dimension_and_changes_nothing():
    head = plain()
    hand = TestHand(measure(head, Options()), head)
    assert hand.press(17.0, 75.0).readout == "from treble slot"
    live = hand.move(40.0, 130.0)
    assert live.readout == "16.5 mm from treble slot to the outline"
    kept = hand.press(40.0, 130.0)
    assert kept.layout is head
    assert [mark.text for mark in kept.marks if isinstance(mark, Label)] == ["16.5 mm"]
    assert hand.move(0.0, 0.0).readout == kept.readout
    assert hand.press(40.0, 180.0).readout == "from node 3 of the outline"
    assert hand.press(0.0, 150.0).readout == "50 mm from node 3 of the outline to this point"


def test_meeting_in_plan_but_not_in_the_wood():
    head = plain(holes=(type(plain().holes[0])(id="peep", at=(30.0, 100.0), diameter=5.0, depth=3.0, surface="face"),))
    hand = TestHand(measure(head, Options()), head)
    hand.press(30.0, 100.0)
    readout = hand.press(20.0, 100.0).readout
    assert readout == "10 mm between the middles of peep and treble side 1; at the closest 0 mm seen from the face, 1.8 mm apart in the wood"


def test_from_a_string_to_a_post_beside_it():
    """Held against many points of the string, one by one."""
    head = demo()
    hand = TestHand(measure(head, Options()), head)
    run = next(run for run in runs(head) if run.tuner == "treble face 3")
    at = v.along(run.nut, v.unit(v.sub(run.post, run.nut)), 28.0)
    shown = hand.press(*at)
    assert shown.readout.startswith("from the middle of string ")
    other = plan_point(head, "treble face 1")
    shown = hand.press(*other)
    radius = max(b.diameter for b in head.pattern(head.tuner("treble face 1").pattern).bores if b.at == (0.0, 0.0)) / 2
    points = [v.along(run.nut, v.unit(v.sub(run.post, run.nut)), k * run.length / 20000) for k in range(20001)]
    nearest = min(math.dist(p, other) for p in points) - radius
    told = next(mark.text for mark in shown.marks if isinstance(mark, Label))
    assert told == f"{math.floor(nearest * 100) / 100:g} mm"
    # Drawn and kept while the pointer goes on, until the next press.
    assert hand.move(0.0, 0.0).marks == shown.marks
