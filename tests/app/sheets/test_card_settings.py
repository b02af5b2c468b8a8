"""The settings of a card of a side bore, in large figures, and the pictures beside them."""

import pytest
from msgspec.structs import replace

from app.formats.letters import text_width
from app.formats.mark_shapes import drawing_box
from app.languages.catalogue import speak
from app.sheets import plan_work
from app.sheets.card_face import FIGURE, MARK_PICTURE, PAD, Maker, section
from app.sheets.cards import cards
from geometry import saying
from geometry.drawing import Label
from geometry.drawing.heights import READ
from geometry.edits import move_features
from geometry.layout import SingleHole
from geometry.lengths import speaking
from tests.app.sheets.printed import layout


@pytest.fixture
def german():
    speak("de")
    yield
    saying.use(None)


@pytest.mark.parametrize("width", [182.0, 187.9])
def test_in_german_sixty_fourths_the_section_stands_beside_too(german, width):
    """The picture of the mark gives way to it, and on cards of upright bores words in the table go on in a second line."""
    head = layout("demo")
    below = []
    with speaking("in64"):
        work = plan_work(head)
        for card in cards(head, work):
            maker = Maker(head, work, card, width, section(head, work, card))
            drawing, clip = maker.cut
            (drawn,) = [one for one in maker.made()[0] if one.drawing is drawing]
            left = drawn.matrix.e + (clip or drawing_box(drawing))[0]
            below += [] if left > maker.right else [card.title]
    assert below == ([] if width > 182.0 else ["treble face 1", "treble face 2"]), "on A4 the longest figures leave no room"


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
@pytest.mark.parametrize("width", [182.0, 187.9, 269.0])
def test_settings_the_mark_and_the_section_stand_beside_each_other(unit, width):
    """In sixty-fourths a mark is written longest, as 4 29/64"; cards of A4 are 182 mm wide, of A3 269 mm."""
    longest = 0
    for by in (0.0, 0.4, 1.2, 2.0):
        head = move_features(layout("demo"), ["bass side 1", "treble side 2", "bass side 3"], (0.0, by))
        with speaking(unit):
            work = plan_work(head)
            for card in (one for one in cards(head, work) if one.kind == "side"):
                maker = Maker(head, work, card, width, section(head, work, card))
                placed, height = maker.made()
                (left, low, right, top), = (one.clip for one in placed if one.clip)
                beside = [mark for mark in maker.marks if isinstance(mark, Label) and mark.height in (READ, FIGURE) and low <= mark.at[1] <= top]
                assert len(beside) > 6
                for mark in beside:
                    assert mark.at[0] + text_width(mark.text, mark.height) < left, (card.title, mark.text)
                longest = max(longest, *(len(mark.text) for mark in beside if mark.height == FIGURE))
                drawn = next(one for one in placed if one.clip is None and one.matrix.e)
                assert drawn.matrix.e > right and right < width - PAD and height < MARK_PICTURE[1] + 50.0, "not below"
    assert longest >= (8 if unit == "in64" else 5)


def test_a_section_across_a_hole_shows_the_wood_as_it_is_at_that_step():
    """The pin hole with the nut pin is drilled before the hole beside it: it is seen on the card of that hole alone."""
    head = layout("demo")
    pin = head.pins[0]
    bored = replace(head, holes=(SingleHole(id="beside", at=(pin.at[0] + 15.0, pin.at[1]), diameter=4.0),))
    work = plan_work(bored)
    owners = {card.kind: {mark.owner for mark in section(bored, work, card)[0]} for card in cards(bored, work)}
    assert "beside" not in owners["pin"] and {"beside", pin.id} <= owners["hole"]
