"""A hole that is in the blank already: checked and drawn, and neither drilled, pricked nor counted anywhere."""

import pytest
from msgspec.structs import replace

from app.formats.headstock import decode, encode
from app.panels.describe import describe
from app.panels.hole_rows import there_row
from app.sheets import pages, plan_work
from app.sheets.cards import cards
from app.sheets.hole_table import csv_rows, paper_rows
from app.sheets.needs import drills
from app.window.demo import demo
from geometry.accuracy import simulate
from geometry.checks import check
from geometry.cures import settle
from geometry.drawing import Cross, Disc, Label
from geometry.drawing.back import back_drawing
from geometry.drawing.opened_out import opened_out
from geometry.drawing.template import template_drawing
from geometry.drawing.wrap import wrap_drawing
from geometry.edits.holes import set_there
from geometry.errors import GeometryError
from geometry.layout import Headstock, SingleHole
from geometry.sequence import operations, plan_pins, wood_after

AT = (0.0, 60.0)
OLD = SingleHole(id="old", at=AT, diameter=7.3)
"""Between the slots of the demo, of a size for which its rack has no drill."""


def having(*holes: SingleHole) -> Headstock:
    return replace(demo(), holes=holes)


@pytest.fixture(scope="module")
def layout() -> Headstock:
    return set_there(having(OLD), ["old"], True)


@pytest.fixture(scope="module")
def work(layout):
    return plan_work(layout)


def test_the_plan_is_that_of_a_layout_without_it(layout, work):
    bare = plan_work(demo())
    assert [op.id for op in work.steps] == [op.id for op in bare.steps]
    assert [op.cautions for op in work.steps] == [op.cautions for op in bare.steps]
    assert "old.1" in {d.id for op in operations(having(OLD)) for d in op.drillings}, "else it is drilled"
    assert check(layout).counts == check(demo()).counts
    assert drills(layout, work) == drills(demo(), bare)
    assert all("old" not in card.ids for card in cards(layout, work))


def test_nothing_is_to_be_had_for_it(layout):
    assert "no-drill" in {snag.kind for snag in check(having(OLD)).snags}
    assert check(layout).snags == check(demo()).snags


def test_it_is_drawn_and_told_and_not_pricked(layout):
    for drawing in (wrap_drawing(layout), template_drawing(layout, 0.0), opened_out(layout)):
        own = [mark for mark in drawing if getattr(mark, "owner", "") == "old"]
        assert [mark.radius for mark in own if isinstance(mark, Disc)] == [3.65]
        assert {mark.style for mark in own if isinstance(mark, Disc)} == {"hole that is there"}
        assert not [mark for mark in own if isinstance(mark, Cross)]
    for drawing in (wrap_drawing(layout), template_drawing(layout, 0.0), back_drawing(layout)):
        assert any("is there" in mark.text for mark in drawing if isinstance(mark, Label) and mark.owner == "old")
    assert not [mark for mark in back_drawing(layout) if isinstance(mark, Cross) and mark.centre == (-AT[0], AT[1])]


def test_the_tables_name_it_without_a_stop(layout):
    row, = [row for row in paper_rows(layout) if row[0] == "old.1"]
    assert row[1] == "hole that is there" and row[-1] == "-"
    told, = [row for row in csv_rows(layout) if row[0] == "old.1"]
    assert told[2] == "hole that is there" and told[-2] is None


def test_everything_keeps_clear_of_it_and_no_cure_moves_it(layout):
    """Its rim 1 mm from a slot's wall, 3 wanted: told as for a hole to be drilled, but it stays where it is."""
    close = replace(demo(), holes=(replace(OLD, at=(3.0, 60.0)),))
    near = set_there(close, ["old"], True)
    found = [snag for snag in check(near).snags if "old" in snag.between]
    assert [(s.kind, s.measured) for s in found] == [(s.kind, s.measured) for s in check(close).snags if "old" in s.between and s.kind != "no-drill"]
    assert found
    result = check(near)
    for snag in found:
        assert settle(near, result, snag).cured and "Move old" not in settle(near, result, snag).cured
    result = check(close)
    assert any("Move old" in settle(close, result, snag).cured for snag in result.snags if "old" in snag.between)


def test_two_that_are_there_are_nobodys_business_and_one_to_be_drilled_is(layout):
    pair = having(OLD, replace(OLD, id="older", at=(0.0, 68.0)))
    between = {frozenset(s.between) for s in check(pair).snags}
    assert frozenset(("old", "older")) in between
    assert frozenset(("old", "older")) in {frozenset(s.between) for s in check(set_there(pair, ["old"], True)).snags}
    assert frozenset(("old", "older")) not in {frozenset(s.between) for s in check(set_there(pair, ["old", "older"], True)).snags}


def test_who_drills_into_it_is_told_to_plug_it_first(layout):
    """A wider bore about the same middle is meant, and its point finds no wood."""
    over = having(OLD, SingleHole(id="new", at=AT, diameter=10.0))
    assert not [s for s in check(over).snags if {"old", "new"} <= set(s.between)]
    over = set_there(over, ["old"], True)
    assert not [s for s in check(over).snags if {"old", "new"} <= set(s.between)]
    op, = [op for op in operations(over) if "new" in op.features]
    assert any("It meets old, which is there already: plug that first" in text for text in op.cautions)
    assert not any("plug that first" in text for op in operations(having(OLD)) for text in op.cautions)


def test_it_is_seen_in_the_wood_from_the_first_step_on(layout):
    ops = operations(layout)
    state = wood_after(layout, [op.id for op in ops], 0, ops)
    assert [d.id for d in state.drillings] == ["old.1"]
    assert "0 of 44 drillings made." in state.words()


def test_in_the_waste_it_is_in_nobodys_way_and_across_the_outline_it_is():
    """Near its tip the head of the demo is narrow: 45 from the centreline there is waste, 20 lies across its edge."""
    def told(x):
        return {(s.kind, s.grade) for s in check(set_there(having(replace(OLD, at=(x, 185.0))), ["old"], True)).snags if "old" in s.between}
    assert told(45.0) == set()
    assert {grade for _, grade in told(20.0)} == {"spoils the work"}


def test_the_panel_says_so_and_takes_it_back(layout):
    row, = [row for row in describe(layout, "old", "mm").fields if row.label == "The hole"]
    assert row.value == "there" and not [r for r in describe(layout, "old", "mm").fields if "tuner" in r.label]
    assert row.change("drill") == having(OLD)
    both = replace(layout, holes=(*layout.holes, SingleHole(id="new", at=(0.0, 90.0), diameter=6.0)))
    mixed = there_row(both, ("old", "new"))
    assert mixed.value == "" and mixed.change("") is both
    assert {hole.there for hole in mixed.change("there").holes} == {True}


def test_pins_are_not_proposed_in_it(layout):
    bare = replace(layout, pins=())
    assert AT not in {pin.at for pin in plan_pins(bare).pins}


def test_the_simulation_counts_it(layout):
    assert {of for c in simulate(layout, 200).clearances for of in c.between} >= {of for c in simulate(demo(), 200).clearances for of in c.between}


def test_the_file_keeps_it_and_older_files_have_none(layout):
    assert decode(encode(layout)) == layout
    assert b'"there": true' in encode(layout)
    assert all(not hole.there for hole in decode(encode(having(OLD))).holes)


def test_only_single_holes_can_be_there(layout):
    with pytest.raises(GeometryError, match="bass face 1 is no single hole"):
        set_there(layout, ["bass face 1"], True)


def test_no_page_tells_to_drill_it(layout, work):
    for page in pages(layout, "A4", (), work):
        said = [mark.text for placed in page.content for mark in placed.drawing if isinstance(mark, Label) and "old" in mark.text.split()]
        assert not any(word in text for text in said for word in ("drill", "mark", "prick")), (page.title, said)
