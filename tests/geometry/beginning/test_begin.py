"""A layout from numbers: sound over the whole range, or refused with a number that works."""

import math
from itertools import pairwise

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats import headstock
from geometry.accuracy import simulate
from geometry.beginning import Numbers, Refused, begin, mended
from geometry.checks import CheckResult, check
from geometry.edits import mirror_layout
from geometry.errors import GeometryError
from geometry.layout import Headstock, StraightSlot, loop_path
from geometry.layout.edges import edges
from geometry.routing import plan_routing
from geometry.sequence import best_order, operations, precedence
from geometry.solids.frames import frames
from geometry.solids.pins_along import in_bores
from geometry.strings.ramps import dives
from geometry.strings.runs import runs

MOUNTS = ("face", "side", "mixed")
COUNTS = [(bass, total - bass) for total in range(4, 13) for bass in range(total + 1)]


BESIDE_A_RAMP = {"hole-to-ramp", "ramp-to-outline", "string-to-string"}
"""On a very wide nut strings come to their slot from so far aside, or in very thick wood so steeply, that a ramp gets tight
or they touch on their way down."""


def sound(layout: Headstock) -> CheckResult:
    """The layout's check, which must hold nothing but notes: no string rubs, no wood is thin."""
    result = check(layout)
    left = BESIDE_A_RAMP if layout.nut.width > 55 or layout.blank.thickness > 22 else set()
    assert [s.text for s in result.snags if s.grade != "note" and s.kind not in left] == []
    assert not result.spoils
    return result


@settings(max_examples=40, phases=(Phase.explicit, Phase.generate))
@given(st.sampled_from(COUNTS), st.sampled_from(MOUNTS), st.sampled_from(MOUNTS), st.floats(10, 90),
       st.floats(80, 420), st.floats(40, 180), st.floats(8, 45), st.floats(25, 95), st.booleans())
def test_every_combination_is_sound_or_refused_with_what_would_do(counts, bass, treble, pitch, length, width, thickness,
                                                                 nut, courses):
    asked = Numbers(*counts, bass, treble, pitch, length, width, thickness, nut, courses)
    numbers, layout, said = mended(asked)
    sound(layout)
    assert (said == ()) == (numbers == asked) and all(word.endswith(".") for word in said)
    assert (layout.blank.thickness, layout.nut.width) == (numbers.thickness, numbers.nut_width)


def test_a_post_is_wound_the_other_way_where_strings_would_run_into_each_other():
    """Seven on one edge, 18 mm apart, behind a narrow nut: wound as usual string 2 passes the first post 0.26 mm into string 1."""
    _, layout, _ = mended(Numbers(7, 1, "face", "face", 10, 80, 40, 8, 25))
    sound(layout)
    assert [t.id for t in layout.tuners if t.winds != ("treble" if t.id.startswith("bass") else "bass")] == ["bass 1"]


@settings(max_examples=25, phases=(Phase.explicit, Phase.generate))
@given(st.sampled_from(COUNTS), st.floats(20, 85), st.floats(80, 420), st.floats(40, 180), st.floats(8, 30), st.floats(25, 95),
       st.booleans())
def test_every_bass_is_sound_or_refused_with_what_would_do(counts, pitch, length, width, thickness, nut, courses):
    _, layout, _ = mended(Numbers(*counts, "face", "face", pitch, length, width, thickness, nut, courses, instrument="bass"))
    assert [s.text for s in check(layout).snags if s.grade != "note"] == []
    assert {layout.pattern(t.pattern).post.diameter for t in layout.tuners} == {12.0}


def test_heavy_bass_tuners_have_room_for_long_plates():
    assert [row.spacing for row in begin(Numbers(3, 2, pitch=62.0, length=260.0, width=130.0, instrument="bass")).rows] == [62.0, 62.0]


def test_a_bass_is_refused_in_its_own_words():
    with pytest.raises(Refused, match="^30 mm from tuner to tuner is too little for large tuners") as refused:
        begin(Numbers(2, 2, pitch=30.0, instrument="bass"))
    assert (refused.value.field, refused.value.value) == ("pitch", 35.0)


@pytest.mark.parametrize("side", ["bass", "treble"])
def test_large_tuners_go_through_the_face(side):
    with pytest.raises(GeometryError, match=f"choose so on the {side} side"):
        mended(Numbers(2, 2, instrument="bass", **{f"{side}_mount": "side"}))
    none = {"bass": 0, "treble": 4} if side == "bass" else {"bass": 4, "treble": 0}
    mended(Numbers(**none, instrument="bass", **{f"{side}_mount": "side"}))  # no tuners there


@pytest.mark.parametrize("counts", COUNTS, ids=str)
def test_each_count_has_its_tuners_strings_and_slots(counts):
    bass, treble = counts
    mounts = MOUNTS[bass % 3], MOUNTS[(treble + bass // 3) % 3]
    _, layout, _ = mended(Numbers(bass, treble, *mounts, pitch=26.0))
    sound(layout)
    placed = frames(layout)
    for side, count, mount in (("bass", bass, mounts[0]), ("treble", treble, mounts[1])):
        own = [t for t in layout.tuners if t.id.startswith(side)]
        assert len(own) == count
        kinds = [layout.pattern(t.pattern).mount for t in own]
        assert kinds == ((["face", "side"] * count)[:count] if mount == "mixed" else [mount] * count)
        edge = edges(layout.outline)[0 if side == "bass" else 1]
        along = [edge.nearest(placed[t.id].origin[:2]).along for t in own]
        assert all(abs(b - a - 26.0) < 0.35 for a, b in pairwise(along))
        assert any(slot.id == f"{side} slot" for slot in layout.slots) == ("side" in kinds)
    assert sorted(int(t.string) for t in layout.tuners) == list(range(1, bass + treble + 1))
    assert len(layout.pins) == 2 or not layout.slots and not layout.pins
    assert layout.slots or in_bores(layout).keys() == {pin.id for pin in layout.pins}, "no plug in a face whose outline alone is routed"


def test_strings_do_not_cross():
    _, layout, _ = mended(Numbers(4, 4, "mixed", "mixed", pitch=26))
    found = sorted(runs(layout), key=lambda run: run.nut[0])
    bass, treble = found[:4], found[4:]
    assert [r.tuner for r in bass] == ["bass face 1", "bass side 1", "bass face 2", "bass side 2"]
    assert [r.tuner for r in reversed(treble)] == ["treble face 1", "treble side 1", "treble face 2", "treble side 2"]


@pytest.mark.parametrize("counts", [(0, 6), (6, 0), (1, 6), (2, 4), (3, 3), (5, 5), (6, 6)], ids=str)
@pytest.mark.parametrize("mount", ["side", "mixed"])
def test_strings_come_down_beside_walls_with_air_and_bend_little(counts, mount):
    """What the slots are laid out for, measured string by string: half a millimetre beside every wall and over every end."""
    _, layout, _ = mended(Numbers(*counts, mount, mount, pitch=28.0))
    seen = 0
    for slot in layout.slots:
        for one in dives(layout, slot):
            assert one.beside().air >= 0.5 and one.end().air >= 0.5
            seen += 1
        assert slot.ramp is None or slot.ramp.length < 25.0
    assert seen == sum(layout.pattern(t.pattern).mount == "side" for t in layout.tuners)
    angles = [abs(math.degrees(run.side_angle)) for run in runs(layout)]
    assert max(angles) < 12.0 and sum(angles) / len(angles) < 7.0


@pytest.mark.parametrize("numbers", [
    Numbers(3, 3, "side", "side", 34), Numbers(6, 6, "mixed", "mixed", 26, courses=True, nut_width=48),
    Numbers(0, 6, "face", "side", 26), Numbers(2, 4, "mixed", "side", 30), Numbers(0, 4)], ids=str)
def test_what_is_begun_can_be_built_and_comes_out(numbers):
    """Every slot has a plan that leaves nothing to pare, the operations have an order, and a shop of common accuracy
    keeps every margin nine times in ten."""
    _, layout, _ = mended(numbers)
    plan = plan_routing(layout)
    assert len(plan.slots) == len(layout.slots)
    assert all(slot.best is not None and not slot.best.left for slot in plan.slots)
    ops = operations(layout, plan)
    assert not best_order(ops, precedence(layout, ops)).blocked
    found = simulate(layout, 1000, 1)
    assert found.sound == 1.0 and found.within > 0.9


@pytest.mark.parametrize("thickness", [13.0, 16.0])
def test_a_string_that_lacks_hardly_any_air_over_a_slots_end_gets_a_ramp_that_a_hand_can_cut(thickness):
    """One a tenth of a millimetre long comes out of the back of every third head: it is as steep as the file slips."""
    _, layout, _ = mended(Numbers(bass=6, treble=2, bass_mount="mixed", treble_mount="mixed", thickness=thickness))
    assert all(slot.ramp.length >= 3.0 for slot in layout.slots)
    assert simulate(layout, seed=1, trials=1000).sound > 0.99


def test_both_sides_alike_make_a_symmetric_head():
    _, layout, _ = mended(Numbers(3, 3, "side", "side", pitch=34, nut_width=50))
    there = mirror_layout(layout)
    assert loop_path(there.outline).area == pytest.approx(loop_path(layout.outline).area, abs=1e-9)
    assert {(s.shape.nut_end, s.shape.tip_end) for s in there.slots} == {
        (s.shape.nut_end, s.shape.tip_end) for s in layout.slots}


def test_a_slot_lies_where_the_posts_need_it():
    """By hand: the post ends 29 mm from the seat, its drill's point 30 + 0.3 x 6.4 = 31.92 mm; the wall lies beyond."""
    _, layout, _ = mended(Numbers(3, 3, "side", "side", pitch=34))
    slot = layout.slots[1]
    assert isinstance(slot.shape, StraightSlot) and slot.shape.width >= 13.6
    seat = frames(layout)["treble 2"].origin
    axis = (slot.shape.nut_end[0] + slot.shape.tip_end[0]) / 2
    assert seat[0] - axis - slot.shape.width / 2 > 8.0 + 1.5
    assert seat[0] - axis + slot.shape.width / 2 > 31.92


def test_a_short_blank_is_refused_with_its_length_and_a_pitch_that_works():
    asked = Numbers(6, 0, pitch=30, length=190, width=120)
    with pytest.raises(Refused, match="make it longer, or set them") as caught:
        begin(asked)
    assert caught.value.field == "length"
    nearer = float(str(caught.value).split("set them ")[1].split(" mm")[0])
    sound(begin(replace(asked, pitch=nearer)))
    sound(begin(replace(asked, length=caught.value.value)))
    with pytest.raises(Refused):
        begin(replace(asked, length=caught.value.value - 0.5))


@pytest.mark.parametrize(("numbers", "field", "value"), [
    (Numbers(2, 1), "bass", 3), (Numbers(8, 8), "bass", 4), (Numbers(-1, 6), "bass", 0),
    (Numbers(3, 2, courses=True), "bass", 4),
    (Numbers(pitch=17), "pitch", 18), (Numbers(bass_mount="side", pitch=25), "pitch", 25.5),
    (Numbers(thickness=11), "thickness", 12), (Numbers(treble_mount="mixed", thickness=12.5), "thickness", 13),
    # By hand: 6 strings have 5 gaps of at least 3 mm, the nut is 7.4 mm wider.
    (Numbers(nut_width=22), "nut_width", 22.4),
    # By hand: 6 pairs have 5 gaps of 5.5 mm, and half a pair stands out at either end.
    (Numbers(6, 6, courses=True, nut_width=37), "nut_width", 37.1)])
def test_a_number_that_cannot_work_is_named_with_one_that_does(numbers, field, value):
    with pytest.raises(Refused) as caught:
        begin(numbers)
    assert (caught.value.field, caught.value.value) == (field, pytest.approx(value))


@pytest.mark.parametrize("numbers", [Numbers(pitch=float("nan")), Numbers(length=-3), Numbers(width=float("inf")),
                                     Numbers(bass_mount="glue")])
def test_what_is_no_number_is_a_sentence(numbers):
    with pytest.raises(GeometryError) as caught:
        begin(numbers)
    assert not isinstance(caught.value, Refused)


def test_a_layout_from_numbers_is_saved_and_read_back():
    _, layout, _ = mended(Numbers(6, 6, "mixed", "mixed", pitch=24, courses=True, nut_width=48))
    assert headstock.decode(headstock.encode(layout)) == layout
    assert len(layout.outline.nodes) == 7
