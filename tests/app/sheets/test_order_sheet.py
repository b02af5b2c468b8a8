"""An order of the maker's own on paper: printed as it is, with a frame round the warning when it spoils work."""

from pathlib import Path

import msgspec
import pytest

from app.formats.headstock import read
from app.sheets import pages, plan_work
from app.sheets.card_pages import card_blocks
from app.sheets.cards import cards
from app.sheets.order_pages import order_blocks, order_warning, summary
from app.sheets.stage_pages import stage_blocks
from geometry.drawing import Label
from geometry.sequence import moved
from tests.app.sheets.printed import SLOTTED, layout, section

WIDE = 182.0
"""Of the window of an A4 page, mm."""


@pytest.fixture(scope="module")
def spoiled():
    head = layout("demo")
    return msgspec.structs.replace(head, order=moved(plan_work(head).order.steps, "cut outline", 2))


def glued_on():
    """The demo, its head pitched by 12° and glued to a neck."""
    head = layout("demo")
    return msgspec.structs.replace(head, blank=msgspec.structs.replace(head.blank, scarf=60.0), nut=msgspec.structs.replace(head.nut, pitch=12.0))


def words(made, title):
    return " ".join(m.text for page in made if page.title == title for placed in page.content for m in placed.drawing
                    if isinstance(m, Label))


def test_the_paper_warns_of_an_order_that_spoils_work(spoiled):
    made = pages(spoiled, "A4", ())
    for title in ("Cover", "Running order"):
        # Six side bores that have lost their square edge, and the saw without its pins.
        assert "Do not work in this order: 7 steps in it are impossible or unsafe." in words(made, title)
    text = words(made, "Running order")
    assert "The order is your own; the best one has 29 changes." in text
    assert text.index("Saw the outline") < text.index("Locating pin hole nut pin")


def test_an_own_order_that_is_sound_is_printed_without_a_warning():
    head = layout("demo")
    own = moved(plan_work(head).order.steps, "counterbore bass face 2.1.1", 10)
    work = plan_work(msgspec.structs.replace(head, order=own))
    assert work.order.steps == own and order_warning(work) == "" and "your own" in summary(work)
    assert order_warning(plan_work(head)) == "" and "your own" not in summary(plan_work(head))


def test_no_setting_of_a_set_up_is_parted_by_the_end_of_a_line():
    """The heading of a tilted table takes two lines: the first ends behind a comma."""
    tilted = [block for block in order_blocks(plan_work(layout("demo")), {}, WIDE)
              if any(isinstance(mark, Label) and "tilted" in mark.text for placed in block.placed for mark in placed.drawing)]
    heads = [[mark.text for mark in block.placed[0].drawing if isinstance(mark, Label)] for block in tilted]
    assert heads and all(len(lines) == 2 and lines[0].endswith(",") for lines in heads)


def test_pictures_are_as_large_as_costs_no_page():
    """The demo has 12 stages, four in a row on A4; glued up with a scarf joint it has 13, five in a row, and no page for the last alone. Eight
    strings have 6, three in a row of a paper twice as large."""
    head = layout("demo")
    joined = glued_on()

    def rows(blocks):
        return [len([placed for placed in block.placed if any(mark.style == "centreline" for mark in placed.drawing)])
                for block in blocks[2:]]

    for of, *ways in ((head, 6 * [2], 4 * [3], [4, 4, 4], [5, 5, 2], [6, 6]), (joined, [*6 * [2], 1], [*4 * [3], 1], [4, 4, 4, 1], [5, 5, 3], [6, 6, 1])):
        assert [rows(blocks) for blocks in stage_blocks(of, plan_work(of), WIDE)] == ways
    (small,), (large,) = ({round(placed.matrix.a, 3) for page in pages(read(Path("samples/eight-strings.headstock.json")), paper, ()) if page.title == "Running order"
                           for placed in page.content if any(mark.style == "centreline" for mark in placed.drawing)} for paper in ("A4", "Tabloid"))
    assert large > 1.5 * small
    for paper in ("A4", "Letter"):
        assert section("slotted", "Running order", paper).count("The piece, stage by stage") == 1


def test_every_set_up_at_the_drill_press_tells_of_a_neck_that_is_glued_on():
    """At 12° it hangs 100 sin 12° = 20.8 mm lower on 100 mm; once for each set-up with that side up, and not where its steps go on."""
    head = layout("demo")
    joined = glued_on()
    work = plan_work(joined)
    text = words(pages(joined, "A4", ()), "Running order")
    ups = [run[0].setup.side for run in work.set_ups if run[0].setup.machine == "drill press"]
    for side, says in (("face", "hangs below the head"), ("back", "stands up"), ("treble edge", "leans to the fence")):
        assert text.count(says) == ups.count(side) > 0, side
    assert "hangs below the head, 20.8 mm on each 100 mm of it" in text
    assert "the neck hangs" not in words(pages(head, "A4", ()), "Running order")


def test_the_card_that_lies_at_the_drill_press_tells_of_the_neck_too():
    """On the card of a side bore with the treble edge up it leans to the fence; with the bass edge up it leans away. What lies flat is set
    up once for many cards."""
    joined = glued_on()
    of = plan_work(joined)
    every = cards(joined, of)
    said = {card.ids[0]: " ".join(mark.text for one in block.placed for mark in one.drawing if isinstance(mark, Label))
            for card, block in zip(every, card_blocks(joined, of, every, WIDE)[::2], strict=True)}
    assert "the neck leans to the fence, 20.8 mm on each 100 mm" in said["treble side 1"]
    assert not any("the neck" in said[id] for id in ("bass side 1", "bass face 1", "nut pin"))


def test_the_stages_stand_on_one_page_where_that_takes_no_more_pages():
    """Of a plain head on A4 a row has room under the last steps, but the next page is taken all the same: all stand there."""
    plain = pages(read(SLOTTED.with_name("three-a-side.headstock.json")), "A4", ())
    assert [sum(found) for found in zip(*((page.title == "Running order", "The piece, stage by stage" in words([page], page.title))
                                          for page in plain), strict=True)] == [3, 1]
    six = read(SLOTTED.with_name("six-in-line.headstock.json"))
    assert sum(page.title == "Running order" for page in pages(six, "A4", ())) == 2, "a row of six small ones under the last steps"
