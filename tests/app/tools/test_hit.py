"""What lies under the pointer."""

from importlib import import_module

import pytest
from msgspec.structs import replace

from app.tools.hit import drillings, hit
from geometry.edits import add_tuner, plan_point
from geometry.layout import Ear, Pin, String
from geometry.strings.nut import nut_places
from tests.geometry.edits.heads import FACE, plain, twelve

PIXEL = 0.1


def kind(layout, at, held=(), shape=False):
    target = hit(layout, at, PIXEL, held, shape)
    return None if target is None else (target.kind, target.id, target.part)


@pytest.mark.parametrize(("at", "target"), [
    ((30.0, 60.5), ("tuner", "treble face 1", None)),
    ((0.3, 25.0), ("pin", "pin", None)),
    ((5.0, 162.0), ("hole", "peep", None)),
    ((17.5, 41.0), ("slot end", "treble slot", "nut")),
    ((17.0, 150.0), ("slot end", "treble slot", "tip")),
    ((17.0, 75.0), ("slot", "treble slot", None)),
    ((23.7, 75.0), ("slot", "treble slot", None)),
    ((30.0, 100.0), ("tuner", "treble side 1", None)),
    ((47.0, 101.0), ("tuner", "treble side 1", None)),
    ((50.0 + 8.0, 100.0), ("mark", "treble side 1", None)),
    ((50.0 + 8.0, 109.0), ("mark", "treble side 1", None)),
    ((40.2, 130.0), ("edge", "outline", (1, pytest.approx(130 / 180)))),
    ((22.2, 0.2), ("nut end", "nut", "treble")),
    ((50.1, 150.0), ("blank edge", "blank", "treble")),
    ((-61.0, 150.0), ("blank edge", "blank", "thickness")),
    ((10.0, 190.3), ("blank edge", "blank", "tip")),
    ((10.0, -10.0), ("blank edge", "blank", "behind")),
    ((0.0, 130.0), None), ((300.0, 300.0), None),
])
def test_each_thing_under_the_pointer(at, target):
    assert kind(plain(), at) == target


def test_nodes_and_handles_are_met_only_on_the_loop_in_hand():
    assert kind(plain(), (40.0, 180.0))[0] == "edge"
    assert kind(plain(), (40.0, 180.2), shape=True) == ("node", "outline", 2)
    assert kind(plain(), (40.0, 180.2), held=("outline",)) == ("node", "outline", 2)
    assert kind(plain(), (10.0, 110.1)) == ("slot", "heart", None)
    assert kind(plain(), (10.0, 110.1), held=("heart",)) == ("node", "heart", 1)
    assert kind(plain(), (14.0, 80.1), held=("heart",)) == ("handle", "heart", (0, 1))


def test_a_mark_belongs_to_its_tuner_on_the_folded_edge():
    target = hit(plain(), (59.0, 100.5), PIXEL)
    assert target.at == pytest.approx((58.0, 100.0))


def test_an_ear_is_met_on_its_glue_line():
    head = plain(ears=(Ear(id="ear", side="bass", width=12.0, start=0.0, end=90.0),))
    assert kind(head, (-33.0, 8.2)) == ("ear", "ear", None)


def test_the_nearer_of_two_is_met():
    head = add_tuner(plain(), FACE, (33.0, 64.0))
    assert hit(head, (30.5, 60.5), PIXEL).id == "treble face 1"
    assert hit(head, (33.5, 65.0), PIXEL).id == "treble face 2"


def test_reach_is_in_pixels():
    assert hit(plain(), (41.5, 130.0), 0.1) is None
    assert hit(plain(), (41.5, 130.0), 0.5).kind == "edge"


def test_names():
    assert hit(plain(), (17.0, 150.0), PIXEL).name == "tip end of treble slot"
    assert hit(plain(), (40.0, 180.0), PIXEL, shape=True).name == "node 3 of the outline"
    assert hit(plain(), (30.0, 60.0), PIXEL).name == "treble face 1"
    assert hit(plain(), (40.0, 130.0), PIXEL).name == "the outline"
    assert hit(plain(), (-45.0, 130.0), PIXEL).name == "bass edge of the blank"


def test_every_drilling_of_a_layout_leads_to_its_owner():
    for d in drillings(twelve()):
        if d.upright:
            assert hit(twelve(), d.start[:2], PIXEL).id == d.of


def test_own_points():
    target = hit(twelve(), plan_point(twelve(), "bass face 2"), PIXEL)
    assert target.at == pytest.approx(plan_point(twelve(), "bass face 2"))


@pytest.mark.parametrize(("courses", "grips"), [((1, 2), True), ((1, 1, 2), True), ((1, 1), False), ((1,), False)], ids=str)
def test_outer_strings_are_gripped_where_the_spread_sets_them(courses, grips):
    """One course alone stands about the centreline, whatever the spread."""
    head = plain()
    head = replace(head, strings=tuple(String(id=str(i + 1), diameter=1.0, course=n) for i, n in enumerate(courses)))
    for side, x in (("bass", -head.nut.spread / 2), ("treble", head.nut.spread / 2)):
        found = kind(head, (x + 0.2, 0.1))
        assert (found == ("outer string", "nut", side)) == grips
        assert (min(abs(x - place) for place in nut_places(head.nut, head.strings)) < 1e-9) == grips


def test_only_what_is_near_is_asked_where_it_stands_and_the_outline_once(monkeypatch):
    """A look at what lies under the mouse comes with every few of its steps."""
    asked, hits = [], import_module("app.tools.hit")
    point, near = hits.edits.plan_point, hits.edge_near
    monkeypatch.setattr(hits.edits, "plan_point", lambda layout, id: asked.append(id) or point(layout, id))
    monkeypatch.setattr(hits, "edge_near", lambda loop, ref, at: asked.append(ref) or near(loop, ref, at))
    for held in ((), ("outline",)):
        asked.clear()
        assert kind(plain(), (0.0, 130.0), held) is None and asked == ["outline"]
    assert kind(plain(), (30.0, 60.5))[1] == "treble face 1" and set(asked[1:]) == {"treble face 1"}


def test_a_pin_is_met_before_the_tuner_in_whose_bore_it_stands_only_on_the_pin_itself():
    x, y = plan_point(plain(), "treble face 1")
    head = plain(pins=(Pin(id="in it", at=(x, y), diameter=3.0),))
    assert [hit(head, (x + aside, y), PIXEL, pins=pins).id for pins in (True, False) for aside in (1.4, 2.0)] == [
        "in it", "treble face 1", "treble face 1", "treble face 1"]
