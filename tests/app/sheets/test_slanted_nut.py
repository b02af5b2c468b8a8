"""Sheets of a head whose nut is slanted: what their distances are from is said wherever they are read, for cards are cut apart."""

import math

import pytest
from msgspec.structs import replace

from app.sheets import pages, plan_work
from app.sheets.card_pages import card_blocks
from app.sheets.cards import cards
from app.sheets.router_pages import router_blocks
from geometry.drawing import Label, Stroke
from geometry.drawing.back import back_drawing
from geometry.drawing.template import template_drawing
from geometry.layout import SingleHole
from geometry.strings.square_line import slant_words
from tests.app.sheets.printed import layout, made, words

SAID = "are from the base line"


def told(blocks):
    return " ".join(mark.text for block in blocks for placed in block.placed for mark in placed.drawing if isinstance(mark, Label))


def test_what_distances_are_from_is_said_on_every_page_that_tells_them():
    """A mark 69.5 mm along is 69.5 from y = 0; from the slanted line it would be 7 mm less at the edge of the blank, 50 mm out.

    By tables of sines the tangent of 8 degrees is 0.1405: at 21.5 mm the nut lies 3.02 mm off the base line.
    """
    head = replace(layout("demo"), nut=replace(layout("demo").nut, slant=8.0))
    work = plan_work(head)
    found = cards(head, work)
    for card in found:
        said = told(card_blocks(head, work, [card], 190.0))
        assert SAID in said and "from nut" not in said, card.title
    assert SAID in told(router_blocks(head, work, 20, 190.0))
    by_title = {}
    for page in pages(head, "A4", (), work):
        by_title.setdefault(page.title, []).append(words(page))
    assert {title for title, texts in by_title.items() if SAID in " ".join(texts)} == {"Cover", "Running order", "Cards", "Hole table", "Readings"}


def test_nothing_of_it_is_said_of_a_nut_that_stands_square():
    assert not any(SAID in words(page) for page in made("demo"))


def test_it_says_how_the_nut_lies_to_the_base_line():
    nut = replace(layout("demo").nut, width=60.0, slant=-8.0)
    assert "slanted by 8.0°, its treble end nearer the tip: 30 mm to either side" in slant_words(nut) and "lies 4.2 mm off" in slant_words(nut)
    assert slant_words(replace(nut, slant=0.0)) == ""


@pytest.mark.parametrize("slant", [8.0, -8.0, 0.4])
def test_template_and_back_paper_show_the_line_that_distances_are_from(slant):
    """Square to the centreline through the middle of the nut, named and told from the slanted line beside both ends of them."""
    head = with_a_bore_from_the_back(replace(layout("demo"), nut=replace(layout("demo").nut, slant=slant)))
    for drawing, turned in ((template_drawing(head, None), 1.0), (back_drawing(head), -1.0)):
        base, = [mark.path for mark in drawing if isinstance(mark, Stroke) and (mark.style, mark.owner) == ("centreline", "nut")]
        nut, = [mark.path for mark in drawing if isinstance(mark, Stroke) and mark.style == "nut line"]
        half = head.nut.width / 2 + 4.0
        assert (base.start, base.end) == ((-half, 0.0), (half, 0.0))
        assert nut.end == pytest.approx((half, -turned * half * math.tan(math.radians(slant))))
        names = {mark.text: mark for mark in drawing if isinstance(mark, Label) and mark.owner == "nut"}
        assert set(names) == {"base line", f"nut line, {abs(slant):.1f}°"}
        high, low = sorted((mark.at[1] for mark in names.values()), reverse=True)
        assert high - low >= 1.6 + 1.6, "their letters stand clear of each other and of the base line"
        assert (names["base line"].at[1] > 0) == (nut.end[1] < 0)


@pytest.mark.parametrize("slant", [8.0, 0.0])
def test_steps_name_the_line_that_is_squared_on_the_wood(slant):
    head = with_a_bore_from_the_back(replace(layout("demo"), nut=replace(layout("demo").nut, slant=slant)))
    words = " ".join(op.words for op in plan_work(head).ops)
    here, never = ("base line", "mm from the nut line") if slant else ("nut line", "base line")
    assert never not in words
    for said in (f"back paper to centreline and {here} squared round", f"mark centreline and {here}", f"from the {here}",
                 f"clamped on centreline and {here}"):
        assert said in words


def with_a_bore_from_the_back(head):
    return replace(head, holes=(*head.holes, SingleHole(id="from behind", at=(0.0, 100.0), diameter=3.0, depth=5.0, surface="back")))
