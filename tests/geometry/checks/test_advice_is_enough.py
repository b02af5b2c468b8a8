"""Doing as an advice says is enough: what it tells to slide, drill or cut is done, and the snag is gone."""

import math
import random
import re

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.edits import set_field
from geometry.layout import EdgePlace, Flat, Margins, Ramp, Slot, StraightSlot
from tests.geometry.checks.heads import BIT, FACE, bore, face, head, loop, pattern, side, slot


def told(layout, kind, words):
    """Snags of a kind whose advice has such words, with the number in it (mm)."""
    found = [(snag, re.search(words, snag.cure)) for snag in check(layout).snags if snag.kind == kind]
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
    for _ in range(300):
        tuner = pattern("of", "side", bore(surface="seat", depth=24.0), post=(rng.uniform(2.0, 6.0), 25.0, rng.uniform(22.0, 29.0)))
        layout = head(tuners=(side("a", rng.choice((rng.uniform(53.0, 62.0), rng.uniform(138.0, 147.0))), tuner),), patterns=(tuner,),
                      slots=(leaning(rng, 8.0),))
        for snag, match in told(layout, kind, r"Slide a ([\d.]+) mm to the (tip|nut)"):
            lacks = snag.needed - snag.measured
            if float(match[1]) < 3.9 * lacks:  # else no slide does it
                done, more = done + 1, more + (float(match[1]) > 1.1 * lacks + 0.1)
                assert left(slid(layout, snag, match), snag) == []
    assert done > 10 and more > 3


def test_a_bore_beside_a_leaning_slot_is_slid_or_drawn_back_far_enough():
    rng, done = random.Random(5), {"Slide": 0, "Drill": 0}
    tuner = pattern("of", "side", bore(surface="seat", depth=24.0), bore("screw", 3.0, "seat", (9.0, 0.0), 21.0))
    for _ in range(400):
        at = rng.choice(((rng.uniform(22.0, 34.0), rng.uniform(75.0, 125.0)), (rng.uniform(13.5, 16.5), rng.uniform(90.0, 98.0))))
        lean = math.radians(rng.uniform(-60.0, 60.0))
        far = (at[0] + 14 * math.sin(lean), at[1] + 14 * math.cos(lean))
        other = Slot(id="other", shape=StraightSlot(nut_end=at, tip_end=far, width=4.0))
        layout = head(tuners=(side("a", 90.0, tuner),), patterns=(tuner,), slots=(slot(x=5.0), other))
        for snag, match in told(layout, "screw-to-slot", r"Slide a ([\d.]+) mm to the (tip|nut)"):
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
    (_, match), = told(layout, "bit-too-wide", r"a bit of ([\d.]+) mm or less, or make slot ([\d.]+) mm wide")
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
