"""Blocks, tables and how they flow down pages."""

import pytest

from app.formats.letters import text_width
from app.formats.paper import Placed
from app.sheets.lay import (
    TICK,
    TICKED,
    Block,
    Column,
    apart,
    drawing,
    fitting,
    flow,
    heading,
    moved,
    natural,
    of_marks,
    space,
    table,
    tick,
)
from app.sheets.words import short
from geometry.drawing import Label, Stroke
from geometry.drawing.shapes import straight

WINDOW = (10.0, 20.0, 110.0, 120.0)
HIGH = WINDOW[3] - WINDOW[1]
"""100 mm either way."""


def bar(name: str, height: float, **more) -> Block:
    return of_marks([Label(name, (0.0, -2.0), 2.0)], height, **more)


def names(pages):
    return [[m.text for placed in page for m in placed.drawing if isinstance(m, Label)] for page in pages]


def test_blocks_follow_each_other_down_the_window():
    (page,) = flow([bar("a", 30.0), bar("b", 40.0)], WINDOW)
    assert [placed.matrix((0.0, -2.0)) for placed in page] == [(10.0, 118.0), (10.0, 88.0)]


def test_what_does_not_fit_begins_a_page():
    assert names(flow([bar("a", 60.0), bar("b", 40.0), bar("c", 1.0)], WINDOW)) == [["a", "b"], ["c"]]


def test_a_heading_stays_with_what_follows():
    assert names(flow([bar("a", 80.0), bar("head", 10.0, keep=True), bar("b", 20.0)], WINDOW)) == [["a"], ["head", "b"]]


def test_a_chain_that_is_higher_than_a_page_is_parted():
    chain = [bar(str(i), 30.0, keep=i < 4) for i in range(5)]
    found = names(flow(chain, WINDOW))
    assert [name for page in found for name in page] == ["0", "1", "2", "3", "4"] and len(found) == 2


def test_room_to_write_in_begins_no_page():
    lines = [bar(str(i), 30.0, spare=i > 0) for i in range(5)]
    assert names(flow(lines, WINDOW)) == [["0", "1", "2"]]
    assert names(flow([*lines, bar("end", 5.0)], WINDOW)) == [["0", "1", "2", "end"]]
    assert names(flow(lines[1:2], WINDOW)) == [["1"]], "a page that holds nothing yet"


def test_a_block_higher_than_the_page_ends_up_alone_on_one():
    assert names(flow([bar("a", 5.0), bar("b", 500.0), bar("c", 5.0)], WINDOW)) == [["a"], ["b"], ["c"]]


def test_what_is_kept_together_leaves_room_for_the_head_that_comes_again():
    """Three blocks of 32 mm fill a page of 100 mm, but not below a head of 10 mm."""
    head = bar("head", 10.0)
    chain = [bar(str(i), 32.0, keep=i < 3, head=head.placed, head_height=10.0) for i in range(1, 4)]
    pages = flow([bar("a", 60.0), *chain], WINDOW)
    assert names(pages) == [["a"], ["head", "1", "2"], ["head", "3"]]
    for page in pages:
        assert min(placed.matrix((0.0, 0.0))[1] for placed in page) - 32.0 >= WINDOW[1] - 1e-6


def test_what_is_cut_apart_lies_on_the_fewest_pages():
    """Three of 60 mm and two of 40: in their order they take four pages, the second and third small one beside large ones three."""
    cards = [bar("a", 58.0), space(2.0), bar("b", 50.0, keep=True), bar("b2", 8.0), space(2.0), bar("c", 58.0), space(2.0),
             bar("d", 38.0), space(2.0), bar("e", 38.0), space(2.0)]
    assert len(flow(cards, WINDOW)) == 4
    assert names(flow(apart(cards, HIGH), WINDOW)) == [["a", "d"], ["b", "b2", "e"], ["c"]]


def test_what_is_cut_apart_keeps_its_order_where_another_saves_no_page():
    assert names(flow(apart([bar("a", 58.0), bar("b", 58.0), bar("c", 38.0)], HIGH), WINDOW)) == [["a"], ["b", "c"]]


def test_a_card_higher_than_a_page_is_parted_and_the_rest_follows():
    chain = [bar(str(i), 30.0, keep=i < 4) for i in range(5)]
    assert names(flow(apart([bar("a", 50.0), *chain, bar("b", 45.0)], HIGH), WINDOW)) == [["a", "b"], ["0", "1"], ["2", "3", "4"]]


def test_white_begins_no_page():
    assert names(flow([bar("a", 98.0), space(5.0)], WINDOW)) == [["a"]]
    assert names(flow([bar("a", 98.0), space(5.0), bar("b", 5.0)], WINDOW)) == [["a"], ["b"]]


def test_nothing_makes_no_page():
    assert flow([], WINDOW) == []


def test_the_head_of_a_table_stands_on_each_of_its_pages():
    rows = table([Column("left", 40.0), Column("right", 40.0, True)], [(f"row {i}", str(i)) for i in range(40)])
    found = names(flow([heading("Table", 80.0), *rows], WINDOW))
    assert len(found) > 1
    for page in found:
        assert page.count("left") == page.count("right") == 1
    assert [text for page in found for text in page if text.startswith("row")] == [f"row {i}" for i in range(40)]


def test_after_a_table_its_head_does_not_come_back():
    rows = table([Column("left", 40.0)], [("row",)])
    assert names(flow([*rows, bar("a", 60.0), bar("b", 60.0)], WINDOW)) == [["left", "row", "a"], ["b"]]


def test_cells_keep_to_their_columns():
    long = "several words that have to wrap"
    blocks = table([Column("a", 20.0), Column("b", 15.0, True)], [(long, "12.5"), ("x", long)], height=2.2, gap=2.5, ticks=True)
    for block in blocks:
        for mark in block.placed[0].drawing:
            if isinstance(mark, Label):
                wide = text_width(mark.text, mark.height)
                left = mark.at[0] if mark.anchor == "left" else mark.at[0] - wide
                assert (TICKED - 0.1 <= left and left + wide <= TICKED + 20.01) or (TICKED + 22.4 <= left and left + wide <= TICKED + 37.51)
                assert -block.height <= mark.at[1]


def test_each_row_of_a_list_to_tick_has_one_box():
    blocks = table([Column("a", 20.0)], [("x",), ("y",)], ticks=True)
    boxes = [sum(isinstance(m, Stroke) and m.path.closed for m in block.placed[0].drawing) for block in blocks]
    assert boxes == [0, 1, 1]


def test_a_box_stands_level_with_its_words():
    x0, y0, x1, y1 = tick(3.0, -10.0, 2.0)[0].path.box
    assert (x0 + x1) / 2 == pytest.approx(3.0 + TICK / 2) and (y0 + y1) / 2 == pytest.approx(-9.0)


def test_moving_takes_clips_along():
    placed = drawing((Stroke(straight((0.0, 0.0), (1.0, 0.0)), "note"),), 2.0, 3.0, 2.0, (0.0, 0.0, 5.0, 5.0))
    (there,) = moved([placed], 10.0, -1.0)
    assert there.matrix((1.0, 0.0)) == (14.0, 2.0) and there.clip == (10.0, -1.0, 15.0, 4.0)
    assert isinstance(there, Placed) and space(4.0).height == 4.0


def test_columns_in_proportion():
    assert fitting((1, 3), 42.5, 2.5) == [10.0, 30.0]


def test_words_are_cut_to_their_room():
    assert short("fits", 2.0, 50.0) == "fits"
    cut = short("does not fit into so little room", 2.0, 20.0)
    assert cut.endswith("...") and text_width(cut, 2.0) <= 20.0


def test_columns_are_as_wide_as_their_words_and_the_widest_gives_way():
    lines = [("a", "some words", "b"), ("c", "x", "a name that is much longer than the page is wide")]
    free = natural(lines, 2.2)
    assert free[1] == pytest.approx(text_width("some words", 2.2) + 0.1)
    held = natural(lines, 2.2, 60.0, 2.5)
    assert held[:2] == free[:2] and sum(held) + 2 * 2.5 == pytest.approx(60.0)
    assert natural(lines, 2.2, 1000.0, 2.5) == free
    assert natural(lines, 2.2, 20.0, 2.5)[1:] == pytest.approx([(15.0 - free[0]) / 2] * 2)


def test_no_column_gives_way_so_far_that_a_word_is_broken():
    """A name of many words gives way to one long word, and to a number that no line parts."""
    for long in ("Schraubenvorbohrung", '1234567890123 45/64"'):
        lines = [("a name of many short words indeed", long, "x"), ("b", "c", "9")]
        word = text_width(long, 2.2) + 0.1
        found = natural(lines, 2.2, word + 30.0, 2.5)
        assert found[1] == pytest.approx(word) and sum(found) + 5.0 == pytest.approx(word + 30.0)
