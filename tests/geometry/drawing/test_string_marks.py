"""The words behind the nut: apart from each other and off the centreline."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.drawing.string_marks import APART, CLEAR, _fanned, angle_marks
from geometry.strings import runs
from tests.geometry.edits.heads import demo, twelve


@given(st.lists(st.floats(-30, 30), min_size=1, max_size=13))
def test_lines_of_words_stand_apart_and_off_the_centreline(places):
    places = sorted(places)
    found = _fanned(places)
    assert all(b - a >= APART - 1e-9 for a, b in pairwise(found))
    assert all(abs(x) >= CLEAR - 1e-9 for x in found)
    assert sum(found) / len(found) == pytest.approx(sum(places) / len(places), abs=CLEAR + 1e-9)


def test_the_string_in_the_middle_has_its_words_beside_the_centreline():
    assert _fanned([-20.0, -10.0, 0.0, 10.0, 20.0]) == pytest.approx([-17.2, -7.2, 2.8, 12.8, 22.8])
    assert _fanned([-15.0, -5.0, 5.0, 15.0]) == [-15.0, -5.0, 5.0, 15.0]
    for head in (demo(), twelve()):
        words = [mark for mark in angle_marks(head, runs(head)) if hasattr(mark, "text")]
        assert words and all(abs(mark.at[0]) >= CLEAR - 1e-9 for mark in words)
