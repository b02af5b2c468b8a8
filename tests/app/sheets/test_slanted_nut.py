"""Sheets of a head whose nut is slanted: what their distances are from is said wherever they are read, for cards are cut apart."""

from msgspec.structs import replace

from app.sheets import pages, plan_work
from app.sheets.card_pages import card_blocks
from app.sheets.cards import cards
from app.sheets.router_pages import router_blocks
from geometry.drawing import Label
from tests.app.sheets.printed import layout, made, words

SAID = "distances from the nut line are those from the line through its middle that is square to the centreline"


def told(blocks):
    return " ".join(mark.text for block in blocks for placed in block.placed for mark in placed.drawing if isinstance(mark, Label))


def test_what_distances_are_from_is_said_on_every_page_that_tells_them():
    """A mark 69.5 mm along is 69.5 from y = 0; from the slanted line it would be 7 mm less at the edge of the blank, 50 mm out."""
    head = replace(layout("demo"), nut=replace(layout("demo").nut, slant=8.0))
    work = plan_work(head)
    found = cards(head, work)
    for card in found:
        assert SAID in told(card_blocks(head, work, [card], 190.0)), card.title
    assert SAID in told(router_blocks(head, work, 20, 190.0))
    by_title = {}
    for page in pages(head, "A4", (), work):
        by_title.setdefault(page.title, []).append(words(page))
    assert {title for title, texts in by_title.items() if SAID in " ".join(texts)} == {"Cover", "Running order", "Cards", "Readings"}


def test_nothing_of_it_is_said_of_a_nut_that_stands_square():
    assert not any(SAID in words(page) for page in made("demo"))
