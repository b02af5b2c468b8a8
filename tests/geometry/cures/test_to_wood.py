"""What is drilled or cut otherwise than it is drawn: the drawing goes to the wood, which goes nowhere."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.book import made_by, task_of, tick_off
from geometry.checks import check
from geometry.cures import apply_cure, settle, touched
from geometry.edits import free_from_row, move_features, set_field, set_slot_width, slide_tuner, to_drawn
from geometry.layout import EdgePlace, FreePlace, Ramp, Slot, StraightSlot, slot_path
from geometry.sequence import Routing, Trip, operations
from geometry.solids import holes
from geometry.solids.in_wood import bored
from geometry.tolerance import SAME_HOLE
from tests.geometry.sequence.specimens import SAMPLES, THROUGH, demo, with_waste


def drilled(*features):
    """The demo, the post bores of some of its tuners ticked off on the real piece."""
    layout, book = demo(), replace(demo().book, piece="real")
    for number, op in enumerate(operations(layout), 1):
        if op.kind.startswith(("side", "bore", "counterbore")) and set(op.features) & set(features):
            book = tick_off(book, task_of(op), number, made_by(layout, op))
    assert book.done
    return replace(layout, book=book)


def post(layout, of):
    return next(bored(one) for hole in holes(layout) for one in hole.drillings if hole.of == of and one.role == "post")


def cured(layout):
    result = check(layout)
    snag = next(one for one in result.snags if one.kind == "drilled-otherwise")
    return settle(layout, result, snag)


@pytest.mark.parametrize("by", [3.0, -7.0])
def test_a_side_tuner_slides_back_along_a_curved_edge_to_where_its_bore_goes_in(by):
    job = drilled("bass side 3")
    along = job.tuner("bass side 3").place.along
    snag = cured(slide_tuner(job, "bass side 3", along + by))
    back = apply_cure(slide_tuner(job, "bass side 3", along + by), snag)
    assert back.tuner("bass side 3").place.along == pytest.approx(along, abs=SAME_HOLE)
    assert not [one for one in check(back).snags if one.kind == "drilled-otherwise"]
    assert "as it is drilled" in snag.cure and "Or tick its step again" in snag.cure


def test_in_thinner_wood_a_bore_stays_as_far_below_the_face_as_it_is_drilled():
    job = drilled("bass side 1")
    thinner = replace(job, blank=replace(job.blank, thickness=job.blank.thickness - 4.0))
    made = apply_cure(thinner, cured(thinner))
    assert isinstance(made.tuner("bass side 1").place, EdgePlace)
    assert post(made, "bass side 1").at[2] == pytest.approx(job.blank.thickness / 2) and "tight" in cured(thinner).cure
    assert not [one for one in check(made).snags if one.kind == "drilled-otherwise"]


def test_a_face_tuner_goes_back_to_its_hole():
    job = drilled("bass face 1")
    moved = move_features(job, ["bass face 1"], (1.3, -0.4))
    back = apply_cure(moved, cured(moved))
    assert isinstance(back.tuner("bass face 1").place, FreePlace)
    assert post(back, "bass face 1").at == pytest.approx(post(job, "bass face 1").at, abs=1e-6)


def test_of_two_that_are_astray_each_goes_back_to_its_own_hole():
    moved = move_features(move_features(drilled("bass face 1", "treble face 1"), ["bass face 1"], (1.3, -0.4)), ["treble face 1"], (-1.0, 0.7))
    result = check(moved)
    moves = {snag.between[0]: settle(moved, result, snag).move for snag in result.snags if snag.kind == "drilled-otherwise"}
    assert {of: (move.of, move.by) for of, move in moves.items()} == {
        "bass face 1": ("bass face 1", pytest.approx((-1.3, 0.4))), "treble face 1": ("treble face 1", pytest.approx((1.0, -0.7)))}


def test_a_tuner_goes_back_to_its_bore_that_was_drilled_as_a_pins_hole():
    layout = free_from_row(read(SAMPLES / "three-a-side.headstock.json"), "bass 1")
    book = replace(layout.book, piece="real")
    op = next(op for op in operations(layout) if op.id == "pin hole nut pin.1")
    job = replace(layout, book=tick_off(book, task_of(op), 1, made_by(layout, op)))
    away = move_features(job, ["bass 1"], (0.0, 6.0))
    snag = cured(away)
    assert snag.cure.startswith("Move bass 1 by 6.0 mm to the nut, as it is drilled.")
    assert post(apply_cure(away, snag), "bass 1").at == pytest.approx(post(job, "bass 1").at, abs=1e-6)


def test_where_a_screw_alone_is_drilled_the_axis_goes_as_far_as_the_screw_lies_off():
    job = demo()
    pattern = job.pattern(job.tuner("bass side 1").pattern)
    aside = tuple(replace(one, at=(one.at[0], 3.0)) if one.role == "screw" else one for one in pattern.bores)
    job = replace(job, patterns=tuple(replace(one, bores=aside) if one is pattern else one for one in job.patterns))
    op = next(op for op in operations(job) if op.kind == "edge pilot" and op.features == ("bass side 1",))
    book = tick_off(replace(job.book, piece="real"), task_of(op), 1, made_by(job, op))
    thinner = replace(job, book=book, blank=replace(job.blank, thickness=job.blank.thickness - 2.0))
    snag = cured(thinner)
    assert (snag.move.before, snag.move.after) == pytest.approx((job.blank.thickness / 2 - 1.0, job.blank.thickness / 2))


def test_where_the_hole_as_it_is_spoils_the_work_it_is_told_to_be_made_anew_and_not_to_be_drawn():
    job = drilled("bass side 1")
    thin = replace(job, blank=replace(job.blank, thickness=10.0))
    snag = cured(thin)
    assert snag.move is None and snag.cure == snag.advice


def cut(*features, layout=None):
    """The demo, or another, all that cuts some of its slots, or its outline, ticked off on the real piece."""
    layout = layout or demo()
    book = replace(layout.book, piece="real")
    for number, op in enumerate(operations(layout), 1):
        made = made_by(layout, op)
        if made.cut is not None and set(op.features) & set(features):
            book = tick_off(book, task_of(op), number, made)
    assert book.done
    return replace(layout, book=book)


def off(layout, kind="cut-otherwise"):
    return [one for one in check(layout).snags if one.kind == kind]


def settled(layout, mirrored=False):
    return settle(layout, check(layout), off(layout)[0], mirrored=mirrored)


@pytest.mark.parametrize("edit", [lambda job: move_features(job, ["bass slot"], (0.7, 0.0)),
                                  lambda job: set_slot_width(job, "bass slot", job.slots[0].shape.width - 1.0),
                                  lambda job: set_field(job, ("slots", "bass slot", "depth"), 9.0)])
def test_a_slot_is_drawn_again_as_it_is_cut(edit):
    job = cut("bass slot")
    moved = edit(job)
    snag = settled(moved)
    assert "Draw bass slot as it is cut" in snag.cure and "let in" in snag.cure
    back = apply_cure(moved, snag)
    assert back.slots == job.slots and not off(back)


@pytest.mark.parametrize("ramp", [Ramp(length=3.0, depth=0.1), Ramp(length=1.0, depth=0.6), None])
def test_a_slot_is_drawn_again_with_the_ramp_that_is_filed(ramp):
    job = cut("bass slot", layout=read(SAMPLES / "slotted-three-a-side.headstock.json"))
    moved = replace(job, slots=tuple(replace(one, ramp=ramp) if one.id == "bass slot" else one for one in job.slots))
    assert job.slots[0].ramp == Ramp(length=3.0, depth=0.6) and apply_cure(moved, settled(moved)).slots == job.slots


def test_with_mirrored_on_both_slots_go_back():
    job = cut("bass slot", "treble slot")
    moved = move_features(move_features(job, ["bass slot"], (0.7, 0.0)), ["treble slot"], (-0.7, 0.0))
    snag = settled(moved, mirrored=True)
    back = apply_cure(moved, snag, mirrored=True)
    assert "and the other side alike" in snag.cure
    assert not off(back) and [slot_path(one).box for one in back.slots] == [pytest.approx(slot_path(one).box) for one in job.slots]


def test_with_mirrored_on_a_slot_goes_back_alone_where_the_other_one_is_cut_as_it_is_drawn():
    first = cut("bass slot")
    moved = move_features(move_features(first, ["bass slot"], (0.7, 0.0)), ["treble slot"], (-0.7, 0.0))
    job = cut("treble slot", layout=moved)
    snag = settled(job, mirrored=True)
    assert snag.move is not None and "the other side" not in snag.cure
    bass, treble = apply_cure(job, snag, mirrored=True).slots
    assert (bass, treble) == (first.slots[0], job.slots[1])


@pytest.mark.parametrize("mirrored", [False, True])
def test_the_outline_is_drawn_again_as_it_is_cut(mirrored):
    job = cut("outline")
    x, y = job.outline.nodes[2].at
    moved = set_field(job, ("outline", "nodes", 2, "at"), (x + 1.0 if x > 0 else x - 1.0, y))
    snag = settled(moved, mirrored)
    assert "Draw the outline as it is cut" in snag.cure and "glued on" in snag.cure and touched(moved, snag.move, mirrored) == ()
    assert apply_cure(moved, snag, mirrored).outline == job.outline


def test_with_mirrored_on_a_slot_on_the_centreline_goes_back_to_its_straight_walls():
    """It was cut straight, and its wall was drawn and altered after."""
    middle = Slot(id="middle", shape=StraightSlot(nut_end=(0.0, 75.0), tip_end=(0.0, 110.0), width=12.0), depth=8.0)
    job = cut("middle", layout=replace(demo(), slots=(middle,)))
    drawn = to_drawn(job, "middle")
    moved = set_field(drawn, ("slots", "middle", "shape", "loop", "nodes", 1, "at"), (5.0, drawn.slots[0].shape.loop.nodes[1].at[1]))
    assert apply_cure(moved, settled(moved, mirrored=True), mirrored=True).slots == job.slots


def test_a_slot_that_is_only_to_be_cut_on_keeps_its_advice():
    job = cut("bass slot")
    wider = set_slot_width(job, "bass slot", job.slots[0].shape.width + 1.0)
    assert settled(wider).move is None and "Cut it on" in settled(wider).cure


def ticked(layout, of, *passes):
    """The layout with some steps of one of its slots done as it is drawn, whatever is done already."""
    book = replace(layout.book, piece="real")
    for number, op in enumerate([op for op in operations(layout, {of: passes[0]}) if of in op.features], 1):
        if op.kind in passes[1:]:
            book = tick_off(book, task_of(op), number, made_by(layout, op))
    return replace(layout, book=book)


def test_a_slot_goes_to_what_is_routed_and_not_to_what_was_sawn_before():
    """It is moved after the saw, and again after the router, which took the rest."""
    sawn = ticked(demo(), "bass slot", with_waste(THROUGH), "saw")
    routed = ticked(move_features(sawn, ["bass slot"], (0.0, 0.4)), "bass slot", THROUGH, "rout")
    moved = move_features(routed, ["bass slot"], (0.0, 3.0))
    assert [bool(one.cut.light) for one in moved.book.done] == [True, False] and apply_cure(moved, settled(moved)).slots == routed.slots


def test_a_slot_is_drawn_as_deep_as_the_deepest_pass_of_several():
    deep = set_field(demo(), ("slots", "bass slot", "depth"), 12.0)
    passes = Routing((Trip("face", "12 shank bearing", None, 0.0, 5.0), Trip("face", "6 straight", None, 5.0, 12.0)))
    job = ticked(deep, "bass slot", passes, "rout")
    less = set_field(job, ("slots", "bass slot", "depth"), 3.0)
    assert len(job.book.done) == 2 and apply_cure(less, settled(less)).slots == job.slots
