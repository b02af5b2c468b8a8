"""The button that changes left hardware for right."""

from app.panels.describe import describe
from app.panels.several import several
from geometry.edits import take_other_hand
from tests.geometry.edits.heads import plain

LABEL = "Change left for right"


def test_the_panel_offers_it_only_for_hardware_that_is_left_or_right() -> None:
    head = plain()
    row, = [row for row in describe(head, "line 1", "mm").fields if row.label == LABEL]
    assert row.change(None) == take_other_hand(head, ["line 1"])
    assert LABEL not in [row.label for id in ("treble face 1", "treble side 1") for row in describe(head, id, "mm").fields]
    row, = [row for row in several(head, ("line 0", "line 1"), "mm").fields if row.label == LABEL]
    assert row.change(None) == take_other_hand(head, ["line 0", "line 1"])
