"""The settings of a card of a side bore, in large figures, and the picture of its mark beside them."""

import pytest

from app.formats.letters import text_width
from app.sheets import plan_work
from app.sheets.card_face import BODY, FIGURE, Maker
from app.sheets.cards import cards
from geometry.drawing import Label
from geometry.edits import move_features
from geometry.lengths import speaking
from tests.app.sheets.printed import layout


@pytest.mark.parametrize("unit", ["mm", "in", "in64"])
@pytest.mark.parametrize("width", [86.0, 89.0, 93.0])
def test_no_setting_runs_into_the_picture_of_the_mark(unit, width):
    """In sixty-fourths a mark is written longest, as 4 29/64"; cards of A4 are 89 mm wide."""
    longest = 0
    for by in (0.0, 0.4, 1.2, 2.0):
        head = move_features(layout("demo"), ["bass side 1", "treble side 2", "bass side 3"], (0.0, by))
        with speaking(unit):
            work = plan_work(head)
            for card in (one for one in cards(head, work) if one.kind == "side"):
                maker = Maker(head, work, card, width, ((), None))
                maker._settings()
                picture, = (one.clip for one in maker.placed if one.clip)
                beside = [mark for mark in maker.marks if isinstance(mark, Label) and mark.height in (BODY, FIGURE) and
                          picture[1] <= mark.at[1] <= picture[3]]
                assert len(beside) > 6
                for mark in beside:
                    assert mark.at[0] + text_width(mark.text, mark.height) < picture[0], (card.title, mark.text)
                longest = max(longest, *(len(mark.text) for mark in beside if mark.height == FIGURE))
    assert longest >= (8 if unit == "in64" else 5)
