"""What to mind of a neck that is glued to a pitched head, by hand: 14° lower it by 100 sin 14° = 24.2 mm on 100 mm, 0.968" on 4"."""

import pytest
from msgspec.structs import replace

from geometry.layout import Blank, Nut
from geometry.sequence.neck_hangs import neck_words
from geometry.sequence.operation import LEVEL, Setup
from tests.geometry.checks.heads import head

GLUED = head(nut=Nut(pitch=14.0), blank=Blank(bass=50.0, treble=50.0, tip=190.0, thickness=16.0, scarf=60.0))


@pytest.mark.parametrize(("side", "says"), [("face", "hangs below the head"), ("back", "stands up"), ("treble edge", "leans to the fence")])
def test_where_the_neck_goes_is_told_for_each_side_up(side: str, says: str) -> None:
    words = neck_words(GLUED, Setup("drill press", "brad 6.5", LEVEL, side))
    assert says in words and "24.2 mm on each 100 mm" in words
    assert '0.968" on each 4"' in neck_words(GLUED, Setup("drill press", "brad 6.5", LEVEL, side), "in")


def test_nothing_is_told_where_the_neck_is_not_in_the_way_or_nobody_knows_of_it() -> None:
    up = Setup("drill press", "brad 6.5", LEVEL, "face")
    assert neck_words(GLUED, replace(up, side="bass edge")) == "", "the face lies against the fence, and the neck leans to the back"
    assert neck_words(GLUED, replace(up, machine="router")) == neck_words(GLUED, Setup("bench")) == ""
    assert neck_words(replace(GLUED, blank=replace(GLUED.blank, scarf=None)), up) == ""
