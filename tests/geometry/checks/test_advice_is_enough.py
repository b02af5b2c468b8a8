"""Doing as an advice says is enough: what it tells to slide, drill or cut is done, and the snag is gone."""

import math
import random
import re
import sys

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.cures import settle
from geometry.cures.advice import advised
from geometry.edits import set_field, set_slot_width
from geometry.layout import (
    Button,
    DrawnSlot,
    Ear,
    EdgePlace,
    Flat,
    Margins,
    Nut,
    Rack,
    Ramp,
    SingleHole,
    Slot,
    StraightSlot,
    loop_of,
    slot_path,
)
from tests.geometry.checks.cases_strings import _DEEP, _ONE
from tests.geometry.checks.heads import BIT, FACE, SIDE, bore, bulging, face, head, loop, pattern, side, slot
from tests.geometry.checks.heads import leaning as leaning_outline


def told(layout, kind, words):
    """Snags of a kind whose advice has such words, with the number in it (mm)."""
    found = [(snag, re.search(words, replace(snag, cured=advised(layout, snag)).cure)) for snag in check(layout).snags if snag.kind == kind]
    return [(snag, match) for snag, match in found if match]


def left(layout, snag):
    return [one.measured for one in check(layout).snags if (one.kind, one.between) == (snag.kind, snag.between)]


def slid(layout, snag, match):
    """The layout with the tuner slid as told, along the straight treble edge."""
    tuner = layout.tuner(snag.between[0])
    along = tuner.place.along + float(match[1]) * (1.0 if match[2] == "tip" else -1.0)
    return replace(layout, tuners=tuple(replace(t, place=EdgePlace(side="treble", along=along, depth=t.place.depth)) if t is tuner else t
                                        for t in layout.tuners))


def leaning(rng, degrees):
    lean, x = math.radians(rng.uniform(-degrees, degrees)), rng.uniform(13.0, 17.0)
    return Slot(id="slot", shape=StraightSlot(nut_end=(x, 60.0), tip_end=(x + 80 * math.tan(lean), 140.0), width=12.0))


@pytest.mark.parametrize("kind", ["post-to-slot-end", "string-hole"])
def test_a_post_in_a_round_end_is_slid_far_enough(kind):
    rng, done, more = random.Random(4), 0, 0
    for _ in range(260):
        tuner = pattern("of", "side", bore(surface="seat", depth=24.0), post=(rng.uniform(2.0, 6.0), 25.0, rng.uniform(22.0, 29.0)))
        layout = head(tuners=(side("a", rng.choice((rng.uniform(53.0, 62.0), rng.uniform(138.0, 147.0))), tuner),), patterns=(tuner,),
                      slots=(leaning(rng, 8.0),))
        for snag, match in told(layout, kind, r"Slide a by ([\d.]+) mm to the (tip|nut)"):
            lacks = snag.needed - snag.measured
            if float(match[1]) < 3.9 * lacks:  # else no slide does it
                done, more = done + 1, more + (float(match[1]) > 1.1 * lacks + 0.1)
                assert left(slid(layout, snag, match), snag) == []
    assert done > 10 and more > 3


def test_a_bore_beside_a_leaning_slot_is_slid_or_drawn_back_far_enough():
    rng, done = random.Random(5), {"Slide": 0, "Drill": 0}
    tuner = pattern("of", "side", bore(surface="seat", depth=24.0), bore("screw", 3.0, "seat", (9.0, 0.0), 21.0))
    for _ in range(200):
        at = rng.choice(((rng.uniform(22.0, 34.0), rng.uniform(75.0, 125.0)), (rng.uniform(13.5, 16.5), rng.uniform(90.0, 98.0))))
        lean = math.radians(rng.uniform(-60.0, 60.0))
        far = (at[0] + 14 * math.sin(lean), at[1] + 14 * math.cos(lean))
        other = Slot(id="other", shape=StraightSlot(nut_end=at, tip_end=far, width=4.0))
        layout = head(tuners=(side("a", 90.0, tuner),), patterns=(tuner,), slots=(slot(x=5.0), other))
        for snag, match in told(layout, "screw-to-slot", r"Slide a by ([\d.]+) mm to the (tip|nut)"):
            if snag.between == ("a", "other") and snag.measured > 0:
                done["Slide"] += 1
                assert left(slid(layout, snag, match), snag) == []
        for snag, match in told(layout, "screw-to-slot", r"Drill it ([\d.]+) mm less deep"):
            if snag.between == ("a", "other") and snag.measured > 0:
                done["Drill"] += 1
                assert left(set_field(layout, ("patterns", "of", "bores", 1, "depth"), 21.0 - float(match[1])), snag) == []
    assert min(done.values()) > 5


def test_a_flat_before_a_leaning_slot_is_cut_so_much_shallower():
    rng, done = random.Random(6), 0
    tuner = pattern("of", "side", bore(surface="seat", depth=24.0))
    for _ in range(60):
        lean, depth = math.radians(rng.uniform(-40.0, 40.0)), rng.uniform(2.0, 6.0)
        layout = head(tuners=(replace(side("a", 100.0, tuner), flat=Flat(size=14.0, depth=depth)),), patterns=(tuner,), slots=(
            Slot(id="slot", shape=StraightSlot(nut_end=(18.0, 100.0), tip_end=(18.0 + 30 * math.tan(lean), 130.0), width=12.0)),))
        for snag, match in told(layout, "flat-rail", r"Cut the flat ([\d.]+) mm shallower"):
            if snag.measured > 0 and float(match[1]) < depth - 0.1:
                done += 1
                assert left(set_field(layout, ("tuners", "a", "flat", "depth"), depth - float(match[1])), snag) == []
    assert done > 5


@pytest.mark.parametrize("slant", [0.0, 10.0, 20.0, 25.0])
def test_a_bore_before_a_leaning_edge_is_drilled_so_much_less_deep(slant):
    """The far edge of the head leans so many degrees, and lies 3 mm beyond the end of the bore where its axis would meet it."""
    tuner, lean = pattern("of", "side", bore(surface="seat", depth=52.0)), math.tan(math.radians(slant))
    outline = loop((-15.0 - 60 * lean, 0.0), (40.0, 0.0), (40.0, 130.0), (-15.0 + 70 * lean, 130.0))
    layout = head(tuners=(side("a", 60.0, tuner),), patterns=(tuner,), slots=(slot(x=20.0, nut=30.0, tip=90.0),), outline=outline)
    (snag, match), = told(layout, "side-bore-to-outline", r"Drill it ([\d.]+) mm less deep")
    assert left(set_field(layout, ("patterns", "of", "bores", 0, "depth"), 52.0 - float(match[1])), snag) == []


@pytest.mark.parametrize(("post", "depth"), [(31.5, 31.0), (31.5, 31.7), (33.0, 31.0), (33.0, 31.9)])
def test_a_bore_is_drilled_on_into_the_inner_wall_as_far_as_told(post, depth):
    """The slot's inner wall lies 32 from the seat, before it or behind it the post's end."""
    tuner = pattern("of", "side", bore(surface="seat", depth=depth), post=(6.0, post, 26.0))
    layout = head(tuners=(side("a", 100.0, tuner),), patterns=(tuner,), slots=(slot(),))
    (snag, match), = told(layout, "post-to-wall", r"drill ([\d.]+) mm deeper, into that wall")
    after = set_field(layout, ("patterns", "of", "bores", 0, "depth"), depth + float(match[1]))
    assert left(after, snag) == [] and not {"post-too-long", "point-to-wall"} & {one.kind for one in check(after).snags}


def test_a_bit_and_a_slot_are_told_so_that_one_enters_the_other():
    """A slot 9.46 wide takes no bit of 9.5, and one for a cutter of 3/8 in is not wide enough with 9.5."""
    bit = replace(BIT, cutter=9.525)
    layout = head(slots=(slot(width=9.46),))
    layout = replace(layout, rack=replace(layout.rack, bits=(bit,)))
    (_, match), = told(layout, "bit-too-wide", r"a bit of ([\d.]+) mm or less, or widen slot to ([\d.]+) mm")
    assert float(match[1]) <= 9.46 and float(match[2]) >= 9.525


def test_thin_wood_is_told_as_thick_as_it_has_to_be():
    tuner = pattern("of", "side", bore(diameter=10.13, surface="seat", depth=24.0))
    layout = head(tuners=(side("a", 90.0, tuner),), patterns=(tuner,), slots=(slot(),), margins=Margins(side_cover=3.0))
    layout = replace(layout, blank=replace(layout.blank, thickness=15.0))
    for _, match in told(layout, "cover", r"it takes ([\d.]+) mm"):
        assert 10.13 + 6.0 <= float(match[1]) <= 16.2
    assert len(told(layout, "cover", r"it takes ([\d.]+) mm")) == 2


def test_how_deep_a_drill_goes_and_how_far_the_quill_travels_are_told_apart():
    layout = head(tuners=(face("a", 0.0, 90.0, FACE),), patterns=(FACE,), pins=())
    layout = replace(layout, rack=replace(layout.rack, press=replace(layout.rack.press, quill=17.78)))
    text, = [snag.text for snag in check(layout).snags if snag.kind == "quill"]
    assert text.endswith("goes 17.80 mm deep, to the drill's point; the quill travels 17.78 mm.")


@pytest.mark.parametrize("slant", [0.0, 15.0, 30.0, 40.0, 70.0])
def test_a_ramp_beside_a_leaning_edge_is_cut_so_much_narrower(slant):
    """The edge leans so many degrees about a point 1.5 mm beside the ramp's corner at its start; 2 mm wanted."""
    lean = math.tan(math.radians(slant))
    outline = loop((-40.0, 0.0), (15.5 - 40 * lean, 0.0), (15.5 + 24.5, 40.0 + 24.5 / lean) if lean > 0.3 else (15.5 + 140 * lean, 180.0),
                   (40.0, 180.0), (-40.0, 180.0))
    layout = head(slots=(replace(slot(x=8.0), ramp=Ramp(length=14.0, depth=2.0)),), outline=outline)
    snag, = [snag for snag in check(layout).snags if snag.kind == "ramp-to-outline"]
    match = re.search(r"([\d.]+) mm narrower on that side, that is ([\d.]+) mm in all", snag.cure)
    assert bool(match) == (slant < 60.0)
    if match:
        assert left(set_field(layout, ("slots", "slot", "ramp", "width"), 12.0 - float(match[2])), snag) == []


def test_a_button_behind_any_edge_is_moved_or_its_shaft_lengthened_far_enough():
    rng, done, more = random.Random(7), 0, 0
    for _ in range(100):
        edge_ = rng.choice((bulging(rng.uniform(95.0, 200.0)), leaning_outline(rng.uniform(-20.0, 20.0)),
                            loop((-40.0, 0.0), (40.0, 0.0), (40.0, 80.0), (46.0, 86.0), (40.0, 92.0), (40.0, 180.0), (-40.0, 180.0))))
        button = Button(reach=rng.uniform(14.0, 30.0), length=rng.uniform(5.0, 14.0), width=rng.uniform(4.0, 20.0), thickness=4.0,
                        stand=rng.uniform(1.0, 12.0))
        tuner = pattern("of", "face", bore(), button=button)
        layout = head(outline=edge_, tuners=(face("a", rng.uniform(15.0, 32.0), rng.uniform(60.0, 120.0), tuner, turn=rng.uniform(-50, 50)),),
                      patterns=(tuner,), margins=Margins(button_gap=rng.uniform(0.0, 6.0)))
        for snag, match in told(layout, "button-to-wood", r"Move a by ([\d.]+) mm the way its button points"):
            done, more = done + 1, more + (float(match[1]) > snag.lacks + 0.2)
            longer = set_field(layout, ("patterns", "of", "button", "reach"), button.reach + float(match[1]))
            assert left(longer, snag) == []
            less = set_field(layout, ("patterns", "of", "button", "reach"), button.reach + max(0.01, float(match[1]) - 0.15))
            assert float(match[1]) < 0.2 or left(less, snag) != []
    assert done > 50 and more > 20


@pytest.mark.parametrize(("at", "push"), [((40.0, 90.0), (-7.0, 0.0)), ((-40.0, 90.0), (7.0, 0.0)), ((0.0, 180.0), (0.0, -7.0)),
                                          ((20.0, 105.0), (6.0, 0.0)), ((8.0, 105.0), (-6.0, 0.0))])
def test_a_hole_right_on_a_wall_is_led_to_where_it_belongs(at, push):
    """6 wide, into the outline with 4 of wood, or out of the slot (8 to 20) with 3."""
    layout = head(slots=(slot(),), holes=(SingleHole(id="h", at=at, diameter=6.0),))
    assert [snag.push for snag in check(layout).snags if snag.kind in ("hole-to-outline", "hole-to-slot")] == [pytest.approx(push)]


def test_a_wall_beside_a_string_is_moved_far_enough():
    rng, done, ramps = random.Random(3), 0, 0
    for _ in range(120):
        lean, x, long = math.radians(rng.uniform(-25, 25)), rng.uniform(10, 18), rng.uniform(30, 60)
        wide = rng.uniform(8, 14)
        other = Slot(id="slot", shape=StraightSlot(nut_end=(x, 60.0), tip_end=(x + long * math.tan(lean), 60.0 + long), width=wide))
        layout = head(tuners=(side("a", rng.uniform(70, 60 + long), _DEEP, string="1", winds=rng.choice(("bass", "treble"))),),
                      patterns=(_DEEP,), slots=(other,), strings=_ONE, nut=Nut(height=rng.uniform(1, 10), spread=rng.uniform(1, 60)))
        for snag, match in told(layout, "string-to-wall", r"Move that wall of slot away by ([\d.]+) mm( and lead)?"):
            wider = set_slot_width(layout, "slot", wide + 2 * float(match[1]))
            ends = [one for one in check(wider).snags if one.kind == "string-to-nut-end"]
            assert left(wider, snag) == [] and bool(ends) >= bool(match[2])
            done, ramps = done + 1, ramps + bool(match[2])
    assert done > ramps > 20


def test_how_far_a_wall_goes_away_is_told_where_no_move_was_found():
    """The check says that the wall has to go away, the search for a cure how far."""
    lean = Slot(id="slot", shape=StraightSlot(nut_end=(12.0, 60.0), tip_end=(4.0, 100.0), width=12.0))
    layout = head(tuners=(side("a", 98.0, _DEEP, string="1", winds="treble"),), patterns=(_DEEP,), slots=(lean,), strings=_ONE,
                  nut=Nut(height=5.0, spread=20.0))
    result = check(layout)
    snag, = [one for one in result.snags if one.kind == "string-to-wall"]
    assert snag.cure.startswith("Move that wall of slot away, or")
    settled = settle(layout, result, snag)
    assert settled.move is None and re.search(r" none does it\..* Move that wall of slot away by [\d.]+ mm", settled.cure)


def test_a_wall_that_is_drawn_is_moved_far_enough_too(monkeypatch):
    """The same wall, drawn; and one in so many pieces that no other place of it is tried: then what lacks is told."""
    def drawn(width):
        lean = Slot(id="slot", shape=StraightSlot(nut_end=(12.0, 60.0), tip_end=(4.0, 100.0), width=width))
        return head(tuners=(side("a", 98.0, _DEEP, string="1", winds="treble"),), patterns=(_DEEP,), strings=_ONE, nut=Nut(height=5.0, spread=20.0),
                    slots=(replace(lean, shape=DrawnSlot(loop=loop_of(slot_path(lean)))),))
    (snag, match), = told(drawn(12.0), "string-to-wall", r"Move that wall of slot away by ([\d.]+) mm")
    assert 10.9 < snag.lacks <= float(match[1]) < 11.1 and left(drawn(12.0 + 2 * float(match[1])), snag) == []
    monkeypatch.setattr(sys.modules["geometry.cures.advice"], "_MOST", 3)
    (snag, match), = told(drawn(12.0), "string-to-wall", r"Move that wall of slot away by ([\d.]+) mm, or")
    assert 0.0 <= float(match[1]) - snag.lacks < 0.1


def test_a_drills_point_is_drawn_back_far_enough():
    """Into the wall of a slot that leans, past the corner of a floor, and beside another bore."""
    rng, done, more = random.Random(9), 0, 0
    for _ in range(220):
        lean = math.radians(rng.uniform(-70.0, 70.0))
        shape = StraightSlot(nut_end=(20.0, 90.0), tip_end=(20.0 + 20 * math.sin(lean), 90.0 + 20 * math.cos(lean)), width=5.0)
        depth = rng.uniform(4.0, 20.0)
        tuner = pattern("of", "side", bore("screw", rng.uniform(2.0, 8.0), "seat", (rng.uniform(-12.0, 12.0), 0.0), depth))
        hole = SingleHole(id="h", at=(20.0 + rng.uniform(-9, 9), 95.0 + rng.uniform(-9, 9)), diameter=rng.uniform(2.0, 9.0), surface="back",
                          depth=rng.uniform(3.0, 9.0))
        layout = head(tuners=(side("a", 95.0, tuner),), patterns=(tuner,), holes=(hole,), rack=Rack(bits=(BIT,)),
                      slots=(Slot(id="slot", shape=shape, depth=rng.choice((None, 5.0, 7.5))),))
        for snag, match in told(layout, "drill-point", r"Drill (?:a|h) less deep by ([\d.]+) mm there"):
            by = float(match[1])
            less = (set_field(layout, ("patterns", "of", "bores", 0, "depth"), depth - by) if snag.between[0] == "a" else
                    set_field(layout, ("holes", "h", "depth"), hole.depth - by))
            assert left(less, snag) == []
            done, more = done + 1, more + (by > snag.lacks + 0.1)
    assert done > 30 and more > 5


def test_a_bore_deeper_than_thin_wood_allows_is_not_told_to_be_drilled_less_deep_than_nothing():
    layout = head(holes=(SingleHole(id="h", at=(0.0, 90.0), diameter=3.0, depth=2.0),), rack=Rack(bits=(BIT,)), margins=Margins(side_cover=6.0))
    layout = replace(layout, blank=replace(layout.blank, thickness=4.0))
    snag, = [snag for snag in check(layout).snags if snag.kind == "too-deep"]
    least = float(re.search(r"it takes ([\d.]+) mm for this bore", snag.cure)[1])
    assert left(replace(layout, blank=replace(layout.blank, thickness=least)), snag) == []


def test_a_plate_wider_than_the_wood_is_not_told_to_go_both_ways():
    tuner = pattern("of", "side", bore(surface="seat", depth=24.0), seat=(8.0, 8.0, 14.0))
    layout = head(tuners=(side("a", 90.0, tuner),), patterns=(tuner,), slots=(slot(),))
    layout = replace(layout, blank=replace(layout.blank, thickness=12.0))
    found = told(layout, "seat-overhang", r"it takes ([\d.]+) mm for this plate")
    assert {snag.between for snag, _ in found} == {("a", "face"), ("a", "back")}
    thick = replace(layout, blank=replace(layout.blank, thickness=float(found[0][1][1])))
    assert not {"seat-overhang"} & {snag.kind for snag in check(thick).snags}


@pytest.mark.parametrize("edge_", ["bass", "treble"])
@pytest.mark.parametrize("aside", [-2.0, -0.3, 0.3, 2.0])
def test_an_ear_is_made_wider_or_narrower_as_told(edge_, aside):
    line = 50.0 - 14.0
    x = (line if edge_ == "treble" else -line) + aside
    layout = head(ears=(Ear(id="ear", side=edge_, width=14.0, start=20.0, end=160.0),), holes=(SingleHole(id="h", at=(x, 90.0), diameter=6.0),))
    (snag, match), = told(layout, "glue-line", r"Make ear (wider|narrower) by ([\d.]+) mm")
    width = 14.0 + float(match[2]) * (1 if match[1] == "wider" else -1)
    assert left(set_field(layout, ("ears", "ear", "width"), width), snag) == []


def test_a_tilt_that_is_hardly_too_much_is_told_as_more_than_the_table_has():
    layout = head(tuners=(side("a", 90.0),), patterns=(SIDE,), outline=leaning_outline(10.004))
    layout = replace(layout, rack=replace(layout.rack, press=replace(layout.rack.press, tilt=10.0)))
    text, = [snag.text for snag in check(layout).snags if snag.kind == "table-tilt"]
    assert text == "A needs a tilt of 10.004 degrees; the table goes to 10."


@pytest.mark.parametrize(("reach", "stand"), [(12.0, 9.0), (12.0, 4.0), (16.9, 6.0), (6.0, 8.0)])
def test_a_shaft_is_so_much_longer_that_the_button_turns_below_the_back(reach, stand):
    button = Button(reach=reach, length=8.0, width=14.0, thickness=6.0, stand=stand)
    tuner = pattern("of", "side", bore(surface="seat", depth=30.0), button=button)
    layout = head(tuners=(side("a", 100.0, tuner),), patterns=(tuner,), slots=(slot(),))
    (snag, match), = told(layout, "button-to-wood", r"Choose a shaft ([\d.]+) mm longer")
    assert left(set_field(layout, ("patterns", "of", "button", "reach"), reach + float(match[1])), snag) == []


@pytest.mark.parametrize("radius", [95.0, 120.0, 300.0])
@pytest.mark.parametrize(("along", "to"), [(3.0, "tip"), (7.5, "tip"), (11.9, "tip")])
def test_a_plate_past_the_end_of_a_bent_edge_is_told_by_its_tangent_and_slid_far_enough(radius, along, to):
    """On an arc of R the end lies R sin(a / R) along the tangent at a seat a mm from it."""
    tuner = pattern("of", "side", bore(surface="seat", depth=24.0), seat=(12.0, 12.0, 8.0))
    layout = head(outline=bulging(radius), tuners=(side("a", along, tuner),), patterns=(tuner,), slots=(slot(),))
    (snag, match), = told(layout, "seat-overhang", r"Slide a by ([\d.]+) mm to the (tip|nut)")
    assert snag.measured == pytest.approx(radius * math.sin(along / radius) - 12.0, abs=1e-6) and match[2] == to
    assert left(slid(layout, snag, match), snag) == []
    ends = head(outline=bulging(radius), tuners=(side("a", radius * math.asin(12.0 / radius) + 0.001, tuner),), patterns=(tuner,), slots=(slot(),))
    assert told(ends, "seat-overhang", r"Slide a by ([\d.]+) mm") == []


def test_a_screw_is_moved_far_enough_from_a_feather_edge_that_lies_askew():
    of = pattern("of", "face", bore(), bore("screw", diameter=2.0, surface="face", at=(0.0, 22.0), depth=9.0))
    layout = head(tuners=(face("a", 0.0, 65.0, of),), patterns=(of,), nut=Nut(pitch=14.0, slant=28.0))
    layout = replace(layout, blank=replace(layout.blank, scarf=90.0))
    (snag, match), = told(layout, "feather-screw", r"Move a by ([\d.]+) mm along")
    x, y = layout.tuner("a").place.at
    there = set_field(layout, ("tuners", "a", "place", "at"), (x, y + math.copysign(float(match[1]), snag.push[1])))
    assert left(there, snag) == []
