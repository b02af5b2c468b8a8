"""A pocket that is in the blank already: drawn and named, and neither routed, drilled, asked for nor counted anywhere."""

import pytest
from msgspec.structs import replace

from app.formats.dxf_out import dxf_bytes
from app.formats.headstock import decode, encode
from app.formats.mark_shapes import mark_box
from app.panels.describe import describe
from app.panels.pocket_rows import new_pocket_row, slot_there_row
from app.sheets import pages, plan_work
from app.sheets.cards import cards
from app.sheets.needs import drills, pieces
from app.sheets.parts import wrap_part
from app.sheets.stage_pages import stage_blocks
from app.window.demo import demo
from geometry import edits
from geometry.checks import check
from geometry.drawing import Area, Label, Stroke
from geometry.drawing.back import back_drawing
from geometry.drawing.heights import LEAST
from geometry.drawing.line_section import line_section
from geometry.drawing.opened_out import opened_out
from geometry.drawing.slot_marks import POCKET
from geometry.drawing.solid import solid
from geometry.drawing.step_views import step_views
from geometry.drawing.template import template_drawing
from geometry.drawing.wrap import wrap_drawing
from geometry.edits.mirrored import echo_edit
from geometry.edits.pockets import add_truss_rod_pocket, set_slots_there
from geometry.errors import GeometryError
from geometry.layout import Headstock, Ramp, StraightSlot
from geometry.routing import plan_routing
from geometry.sequence import operations, plan_pins, wood_after

NAME = "truss rod pocket"


def slim(layout: Headstock) -> Headstock:
    """The demo with a pocket that leaves both slots and the pin at the nut all their wood."""
    *slots, pocket = add_truss_rod_pocket(layout).slots
    shape = StraightSlot(nut_end=(0.0, -2.5), tip_end=(0.0, 9.5), width=5.0)
    return replace(layout, slots=(*slots, replace(pocket, shape=shape, depth=9.0)))


@pytest.fixture(scope="module")
def layout() -> Headstock:
    return slim(replace(demo(), pins=tuple(replace(pin, at=(0.0, 40.0)) if pin.id == "nut pin" else pin for pin in demo().pins)))


@pytest.fixture(scope="module")
def bare(layout) -> Headstock:
    return edits.remove_features(layout, [NAME])


@pytest.fixture(scope="module")
def work(layout):
    return plan_work(layout)


def test_the_plan_is_that_of_a_layout_without_it(layout, bare, work):
    plain = plan_work(bare)
    assert [op.id for op in work.steps] == [op.id for op in plain.steps]
    assert [op.cautions for op in work.steps] == [op.cautions for op in plain.steps]
    routed = set_slots_there(layout, [NAME], False)
    assert any(op.features == (NAME,) for op in operations(routed)), "else it is routed"
    assert [one.of for one in plan_routing(layout).all] == [one.of for one in plan_routing(bare).all]
    assert drills(layout, work) == drills(bare, plain)
    assert all(NAME not in card.ids for card in cards(layout, work))
    assert check(layout).counts == check(bare).counts and check(layout).snags == check(bare).snags


def test_it_is_drawn_dashed_and_named(layout):
    for drawing in (wrap_drawing(layout), template_drawing(layout, 1.0), opened_out(layout)):
        own = [mark for mark in drawing if getattr(mark, "owner", "") == NAME]
        shapes = [mark for mark in own if isinstance(mark, Area | Stroke) and mark.style not in ("dimension",)]
        assert [mark.style for mark in shapes] == [POCKET]
        shape = shapes[0].outer if isinstance(shapes[0], Area) else shapes[0].path
        assert shape.box == pytest.approx((-2.5, -5.0, 2.5, 12.0))
    for drawing in (wrap_drawing(layout), template_drawing(layout, None)):
        assert [mark.text for mark in drawing if isinstance(mark, Label) and mark.owner == NAME] == [NAME, "9 deep, is there"]
    assert not [mark for mark in back_drawing(layout) if getattr(mark, "owner", "") == NAME], "it does not come through"
    for behind, level in ((20.0, -2.5), (0.0, 6.0)):  # beside what runs on into the neck where the paper has it, else in the head
        words = [mark.at for mark in wrap_drawing(replace(layout, blank=replace(layout.blank, behind=behind)))
                 if isinstance(mark, Label) and mark.owner == NAME]
        assert min(y for _, y in words) < level < max(y for _, y in words) + 1.5 and {x for x, _ in words} == {4.0}
    through = replace(layout, slots=(*layout.slots[:-1], replace(layout.slots[-1], depth=None)))
    assert [mark.style for mark in back_drawing(through) if getattr(mark, "owner", "") == NAME] == [POCKET]
    cut = [mark for mark in line_section(layout, (-20.0, 5.0), (20.0, 5.0)) if isinstance(mark, Area) and mark.owner == NAME]
    assert [(mark.style, mark.outer.box) for mark in cut] == [(POCKET, pytest.approx((17.5, -9.0, 22.5, 0.0)))]


def test_the_drawing_keeps_it_on_a_layer_of_its_own(layout):
    assert b"pockets that are there" in dxf_bytes(template_drawing(layout, 1.0))
    assert b"pockets that are there" not in dxf_bytes(template_drawing(demo(), 1.0))


def test_it_is_open_from_the_first_step_on(layout):
    ops = operations(layout)
    state = wood_after(layout, [op.id for op in ops], 0, ops)
    assert [slot.slot for slot in state.slots if slot.open] == [NAME]
    assert not any(NAME in words for words in state.words())
    assert POCKET in {mark.style for mark in step_views(layout, ops, 0, ops).plan}


def test_no_page_tells_to_cut_it(layout, work):
    told = [mark.text for page in pages(layout, "A4", (), work) for placed in page.content for mark in placed.drawing
            if isinstance(mark, Label) and (NAME in mark.text or "pocket" in mark.text)]
    assert set(told) >= {NAME, "pocket that is there"}
    assert {text for text in told if text not in (NAME, "pocket that is there")} == {text for text in told if "there already" in text}
    blank, = [piece for piece in pieces(layout, work) if "blank" in piece.name]
    assert blank.remark.endswith("; there already: truss rod pocket")


def test_pins_are_not_proposed_in_it(layout):
    wide = add_truss_rod_pocket(replace(demo(), pins=()))
    low, _ = sorted(plan_pins(wide).pins, key=lambda pin: pin.at[1])
    assert low.at[1] >= 28.0 + 3.0 + low.diameter / 2 - 0.01, "28 to its end, 3 of wood, half of the pin"


def test_who_drills_into_it_is_told_to_plug_it_first(layout):
    over = edits.add_hole(layout, (0.0, 6.0), 8.0)
    op, = [op for op in operations(over) if op.kind == "bore" and "hole" in op.features[0]]
    assert any(f"It meets {NAME}, which is there already: plug that first" in text for text in op.cautions)
    below = edits.set_field(edits.set_field(over, ("holes", op.features[0], "surface"), "back"), ("holes", op.features[0], "depth"), 5.0)
    op, = [op for op in operations(below) if op.kind == "bore" and "hole" in op.features[0]]
    assert not any("plug that first" in text for text in op.cautions), "2 mm of wood stay between them"


def test_the_panel_says_so_and_takes_it_back(layout):
    page = describe(layout, NAME, "mm")
    row, = [row for row in page.fields if row.label == "The slot"]
    assert page.title == f"Pocket, {NAME}" and row.value == "there"
    assert [(fact.label, fact.value) for fact in page.facts][1] == ("Wood below its floor", "7 mm")
    assert not [r for r in page.fields if "ramp" in r.label]
    routed = row.change("rout")
    assert routed == set_slots_there(layout, [NAME], False) and not routed.slots[-1].there
    mixed = slot_there_row(layout, (NAME, "bass slot"))
    assert mixed.value == "" and mixed.change("") is layout
    assert [slot.there for slot in mixed.change("there").slots] == [True, False, True]
    assert new_pocket_row(demo(), "mm").change(None) == add_truss_rod_pocket(demo())
    assert new_pocket_row(demo(), "in64").change(None) == add_truss_rod_pocket(demo(), unit="in64")


def test_a_new_one_lies_over_the_nut_line_on_the_centreline():
    layout = add_truss_rod_pocket(add_truss_rod_pocket(demo()))
    one, two = layout.slots[-2:]
    assert one.shape == StraightSlot(nut_end=(0.0, -6.0), tip_end=(0.0, 22.0), width=12.0)
    assert (one.depth, one.there) == (10.0, True) and (one.id, two.id) == (NAME, f"{NAME} 2")
    thin = replace(demo(), blank=replace(demo().blank, thickness=12.0))
    assert add_truss_rod_pocket(thin).slots[-1].depth == 8.0, "never through, nor nearly"


def test_a_slot_with_a_ramp_is_no_pocket_and_a_pocket_gets_no_ramp(layout):
    ramped = replace(demo(), slots=(replace(demo().slots[0], ramp=Ramp(length=8.0, depth=2.0)), *demo().slots[1:]))
    with pytest.raises(GeometryError, match="bass slot has a ramp"):
        set_slots_there(ramped, ["bass slot"], True)
    from geometry.edits.hand_cuts import propose_ramp, set_ramp
    for edit in (lambda: set_ramp(layout, NAME, length=8.0, depth=2.0), lambda: propose_ramp(layout, NAME)):
        with pytest.raises(GeometryError, match="is there already: nothing is cut for it"):
            edit()
    with pytest.raises(GeometryError, match="bass face 1 is no slot"):
        set_slots_there(layout, ["bass face 1"], True)


def test_edits_keep_what_it_is(layout):
    moved = edits.move_features(layout, [NAME], (1.0, 2.0)).slots[-1]
    assert moved.there and moved.shape.tip_end == (1.0, 11.5)
    assert edits.mirror_layout(layout).slots[-1] == layout.slots[-1]
    assert edits.to_drawn(layout, NAME).slots[-1].there
    assert edits.duplicate(layout, [NAME]).slots[-1].there
    assert edits.rename(layout, "slots", NAME, "bed").slots[-1].there


def test_with_both_sides_edited_alike_a_pocket_is_no_twin_of_a_slot(layout):
    """One set there takes its twin along; a slot on one side and a pocket on the other are edited each by itself."""
    before = demo()
    both = echo_edit(before, set_slots_there(before, ["bass slot"], True), ["bass slot"])
    assert [slot.there for slot in both.slots] == [True, True]
    apart = set_slots_there(before, ["bass slot"], True)
    moved = echo_edit(apart, edits.move_features(apart, ["treble slot"], (0.0, 1.0)), ["treble slot"])
    assert moved.slots[0] == apart.slots[0] and moved.slots[1] != apart.slots[1]
    aside = echo_edit(layout, edits.move_features(layout, [NAME], (3.0, 2.0)), [NAME])
    assert aside.slots[-1].there and aside.slots[-1].shape.tip_end == (0.0, 11.5), "on the centreline it stays there"


def test_the_file_keeps_it_and_older_files_have_none(layout):
    assert decode(encode(layout)) == layout
    assert b'"there": true' in encode(layout)
    older = encode(demo()).replace(b',\n      "there": false', b"")
    assert b'"there"' not in older and decode(older) == demo()
    assert not any(slot.there for slot in decode(encode(demo())).slots)


def test_the_body_in_space_ends_where_the_head_does(layout):
    """12 mm of the pocket lie in the head; its rim goes along the nut line there, and its floor 9 mm down."""
    ring, = [ring for ring in solid(layout).openings if ring.owner == NAME]
    assert (ring.points[:, 1].min(), ring.points[:, 1].max()) == pytest.approx((0.0, 12.0), abs=0.06)
    assert (ring.top, ring.bottom) == (0.0, 9.0)
    away = edits.move_features(layout, [NAME], (0.0, -40.0))
    assert not [ring for ring in solid(away).openings if ring.owner == NAME]


def test_what_runs_on_behind_the_end_of_the_blank_is_told_on_the_wrap_paper_and_crosses_no_words(layout, work):
    """The pictures of the stages end with the blank: words stand under them."""
    said = "goes on behind the end of the blank: truss rod pocket."
    for end, told in ((-60.0, True), (-2.5, False)):
        long = replace(layout, slots=tuple(replace(slot, shape=replace(slot.shape, nut_end=(0.0, end))) if slot.id == NAME else slot for slot in layout.slots))
        assert (said in wrap_part(long, ()).note) == told
        pictures = [placed for block in stage_blocks(long, work, 180.0)[0] for placed in block.placed if placed.clip is not None]
        lines = [mark_box(mark, placed.matrix)[1] for block in stage_blocks(long, work, 180.0)[0] for placed in block.placed if placed.clip is None
                 for mark in placed.drawing if isinstance(mark, Label) and ": " in mark.text]
        assert pictures and max(lines) + LEAST < min(placed.clip[1] for placed in pictures)
