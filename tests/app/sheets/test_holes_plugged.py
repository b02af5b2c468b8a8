"""A hole that is in the blank and plugged first, as of old tuners: a step fills it, and it is wood for all that comes after."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import FormatError, decode, encode
from app.panels.describe import describe
from app.sheets import plan_work
from app.sheets.book_pages import book_blocks
from app.sheets.card_face import section
from app.sheets.cards import cards
from app.sheets.hole_table import csv_rows
from app.sheets.needs import wares
from app.sheets.reading_pages import reading_blocks
from app.window.demo import demo
from geometry.accuracy import simulate
from geometry.checks import check
from geometry.drawing import Disc, Label
from geometry.drawing.back import back_drawing
from geometry.drawing.line_section import line_section
from geometry.drawing.opened_out import opened_out
from geometry.drawing.sections import section_along_bore
from geometry.drawing.template import template_drawing
from geometry.drawing.wood_state import wood_drawing
from geometry.drawing.wrap import wrap_drawing
from geometry.edits import mirror_layout
from geometry.edits.holes import set_retainer, set_there
from geometry.errors import GeometryError
from geometry.layout import Headstock, SingleHole, validate
from geometry.sequence import operations, wood_after
from geometry.sequence.pin_places import later_holes
from geometry.solids.frames import frames


def old_holes(*holes: SingleHole) -> Headstock:
    return set_there(replace(demo(), holes=holes), [hole.id for hole in holes], True, True)


@pytest.fixture(scope="module")
def layout() -> Headstock:
    """Two old holes beside the posts of new tuners, into which their bores cut, and one that is blind from the back."""
    posts = [frames(demo())[id].at(0.0, 0.0)[:2] for id in ("bass face 1", "treble face 2")]
    beside = [SingleHole(id=f"old {i}", at=(x + 2.0, y + 3.0), diameter=10.0) for i, (x, y) in enumerate(posts, 1)]
    return old_holes(*beside, SingleHole(id="blind", at=(0.0, 60.0), diameter=3.0, depth=9.0, surface="back"))


def test_nothing_keeps_clear_of_it_as_of_one_that_stays(layout):
    open_ones = set_there(layout, ["old 1", "old 2"], True)
    told = [snag for snag in check(open_ones).snags if {"old 1", "old 2"} & set(snag.between)]
    assert told and all("plugged first" in snag.text for snag in told if snag.measured < 0)
    assert (check(layout).snags, check(layout).counts) == (check(demo()).snags, check(demo()).counts)
    assert simulate(layout, 200).sound == simulate(demo(), 200).sound


def test_a_step_fills_them_all_and_the_others_are_those_without(layout):
    work, bare = plan_work(layout), plan_work(demo())
    first, *others = work.steps
    assert (first.id, first.features, first.amount) == ("plug", ("old 1", "old 2", "blind"), 3.0)
    assert "10 mm through: old 1 and old 2; 3 mm x 9 mm deep from the back: blind." in first.words
    assert [(op.id, op.cautions) for op in others] == [(op.id, op.cautions) for op in bare.steps]
    befores = {before.then for before in work.before if before.first == "plug"}
    assert befores >= {"mark", "counterbore bass face 1.1.1"}


def test_the_plugs_are_in_the_part_list(layout):
    assert [(ware.count, ware.sizes) for ware in wares(layout) if ware.name == "plug of wood"] == [(1, "3, 9 deep"), (2, "10, through")]
    written = [mark.text for block in book_blocks(layout, plan_work(layout), 170.0) for placed in block.placed for mark in placed.drawing if isinstance(mark, Label)]
    assert {"plug of wood: 3, 9 deep", "plug of wood: 10, through"} <= set(written), "each has its price"
    hair = replace(layout, holes=tuple(replace(hole, depth=layout.blank.thickness - 1e-7) if hole.id == "blind" else hole for hole in layout.holes))
    assert ("3, through" in {ware.sizes for ware in wares(hair)}) and "3 mm through: blind" in plan_work(hair).steps[0].words, "one word for it"


def test_it_is_seen_until_it_is_plugged_and_on_no_paper(layout):
    ops = operations(layout)
    for done, seen in ((0, {"old 1", "old 2", "blind"}), (1, set())):
        assert {d.of for d in wood_after(layout, [op.id for op in ops], done, ops).to_be_seen} == seen
    assert {m.owner for m in opened_out(layout) if isinstance(m, Disc)} >= {"old 1", "old 2", "blind"}
    for drawn in (wrap_drawing, back_drawing, lambda one: template_drawing(one, 0.0), lambda one: section_along_bore(one, "bass face 1"),
                  lambda one: line_section(one, (-50.0, 49.0), (50.0, 49.0)), csv_rows):
        assert drawn(layout) == drawn(demo())
    assert "old 1.1" not in str(reading_blocks(layout, 180.0))
    sides = replace(layout, tuners=tuple(tuner for tuner in layout.tuners if "side" in tuner.id))
    ops = operations(sides)
    assert "back" not in wood_after(sides, [op.id for op in ops if op.kind in ("plug", "mark")], 2, ops).papers


def test_the_picture_of_its_step_shows_the_plugs_until_the_paper_lies_over_them(layout):
    """The rim of one that is open at the back alone is hidden. When the paper is taken off, slots and bores have cut what rims they cross."""
    ops = plan_work(layout).steps
    for done, rims in ((0, {}), (1, {"old 1": False, "old 2": False, "blind": True}), (len(ops) - 1, {}), (len(ops), {})):
        state = wood_after(layout, [op.id for op in ops], done, ops)
        assert {m.owner: m.hidden for m in wood_drawing(layout, state) if isinstance(m, Disc) and m.style == "glue line"} == rims
    veneered = replace(layout, blank=replace(layout.blank, face_veneer=1.0))
    steps = plan_work(veneered).steps
    at = next(i for i, op in enumerate(steps, 1) if op.id == "glue face veneer")
    assert not [m for m in wood_drawing(veneered, wood_after(veneered, [op.id for op in steps], at, steps)) if m.style == "glue line" and isinstance(m, Disc)]


def test_sections_on_cards_do_not_show_it(layout):
    """Across a pin hole through an old hole beside it, and at a post that an old one lies beside."""
    work = plan_work(replace(layout, pins=tuple(replace(pin, at=(0.0, 60.0)) for pin in layout.pins[:1]) + layout.pins[1:]))
    shown = {card.ids[0]: {mark.owner for mark in section(work.layout, work, card)[0]} for card in cards(work.layout, work)}
    assert len(shown) > 12
    assert not {"old 1", "old 2", "blind"} & set().union(*shown.values())


def test_pins_are_proposed_in_bores_through_it(layout):
    assert later_holes(layout) == later_holes(demo()) != []


def test_the_veneer_is_not_opened_over_it(layout):
    veneered = replace(layout, blank=replace(layout.blank, face_veneer=1.0))
    step, = [op for op in operations(veneered) if op.kind == "glue face veneer"]
    assert "knife" not in step.words


def test_the_panel_offers_it_and_takes_it_back(layout):
    row, = [row for row in describe(layout, "old 1", "mm").fields if row.label == "The hole"]
    assert row.value == "plugged" and [word for word, _ in row.choices] == ["drill", "there", "plugged"]
    for word, state in (("there", (True, False)), ("drill", (False, False)), ("plugged", (True, True))):
        hole = next(hole for hole in row.change(word).holes if hole.id == "old 1")
        assert (hole.there, hole.plugged) == state
    assert not [row for row in describe(layout, "old 1", "mm").fields if "retainer" in row.label]


def test_a_retainer_goes_with_the_hole_and_comes_into_none(layout):
    carrying = set_retainer(set_there(layout, ["old 1"], True), ["old 1"], True)
    assert set_there(carrying, ["old 1"], True, True) == layout
    with pytest.raises(GeometryError, match="old 1 is plugged first"):
        set_retainer(layout, ["old 1"], True)
    for odd in (replace(layout.holes[0], there=False), replace(layout.holes[0], retainer=carrying.holes[0].retainer)):
        with pytest.raises(GeometryError, match="old 1 is plugged first") as caught:
            validate(replace(layout, holes=(odd,)))
        assert caught.value.place == "$.holes[0].plugged"


def test_the_file_and_a_mirror_image_keep_it(layout):
    assert decode(encode(layout)) == layout and b'"plugged": true' in encode(layout)
    assert [hole.plugged for hole in mirror_layout(layout).holes] == [True] * 3
    with pytest.raises(FormatError, match="update Pegwright"):
        decode(encode(layout).replace(b'"plugged"', b'"filled"'))
