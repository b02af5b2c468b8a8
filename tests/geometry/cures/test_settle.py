"""How the search for a cure begins and what it says when no move could be made, on snags that no check finds: any move cures them."""

import sys

import pytest
from msgspec.structs import replace

from geometry.checks import Snag, check
from geometry.checks.moves import Shift
from geometry.checks.snags import TIGHT
from geometry.cures import settle
from geometry.errors import GeometryError
from geometry.layout import Pin
from tests.geometry.checks.heads import head

ASIDE = Snag("aside", TIGHT, ("pin",), (0.0, 60.0, 0.0), 4.0, 9.0, "Too far aside.", "Do something.")


@pytest.mark.parametrize(("unit", "least"), [("mm", 5.0), ("degrees", 0.1)])
def test_a_move_begins_with_what_lacks_in_mm_and_small_where_that_is_an_angle(unit, least):
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))
    move = settle(layout, check(layout), replace(ASIDE, unit=unit)).move
    assert isinstance(move, Shift) and max(map(abs, move.by)) == pytest.approx(least)


def test_where_no_move_can_be_made_the_advice_stands_alone(monkeypatch):
    def refused(layout, move):
        raise GeometryError("No.")
    monkeypatch.setattr(sys.modules["geometry.cures.settle"], "carried_out", refused)
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))
    done = settle(layout, check(layout), ASIDE)
    assert done.move is None and done.cure == "Do something."
