"""Words keep their size on the screen: their middle stays where that of the printed capitals is."""

import math

import pytest

from app.look.paths import middle_of
from app.window.demo import demo
from geometry.drawing import Cross, Label
from geometry.drawing.opened_out import opened_out_groups


def test_tilts_are_level_with_the_crosses_that_they_are_of():
    found = 0
    for marks in opened_out_groups(demo()).values():
        crosses = [mark.centre[1] for mark in marks if isinstance(mark, Cross)]
        for tilt in (mark for mark in marks if isinstance(mark, Label) and "°" in mark.text):
            found += 1
            assert min(abs(middle_of(tilt)[1] - y) for y in crosses) < 1e-9
    assert found == 6


@pytest.mark.parametrize("angle", (0.0, 1.1, -math.pi / 2))
def test_it_stands_upon_the_line_of_the_words(angle):
    x, y = middle_of(Label("words", (3.0, 4.0), 2.0, angle=angle))
    assert (x - 3.0) * math.cos(angle) + (y - 4.0) * math.sin(angle) == pytest.approx(0.0, abs=1e-12)
    assert (y - 4.0) * math.cos(angle) - (x - 3.0) * math.sin(angle) == pytest.approx(1.0)
