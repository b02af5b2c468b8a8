"""A tilt of the table is told by the end that is raised, never by a sign."""

import math

import pytest

from geometry.solids import holes, side_bore
from geometry.tilt_words import raised_end, tilt_words
from tests.geometry.accuracy.specimens import sample


@pytest.mark.parametrize(("degrees", "words"), [(3.06, "3.1° tip raised"), (-3.06, "3.1° nut raised"), (0.04, "level"), (-0.04, "level"),
                                                (0.051, "0.1° tip raised")])
def test_the_raised_end_stands_beside_the_tilt(degrees: float, words: str) -> None:
    assert tilt_words(math.radians(degrees)) == words
    assert (raised_end(math.radians(degrees)) is None) == (words == "level")


def test_raising_that_end_makes_the_bore_plumb() -> None:
    """The blank stands on one edge, drilled from the other: turned until the bore is plumb, the named end lies higher."""
    layout = sample("twelve-string-mixed")
    seen = set()
    for hole in holes(layout):
        for d in hole.drillings:
            if d.upright or d.role != "post":
                continue
            side = 1.0 if d.surface == "treble edge" else -1.0
            up, on = -d.direction[0] * side, -d.direction[1]
            turn = math.atan2(on, up)
            plumb = (up * math.cos(turn) + on * math.sin(turn), on * math.cos(turn) - up * math.sin(turn))
            assert plumb == pytest.approx((1.0, 0.0))
            tip_over_nut = 100.0 * math.sin(turn)
            end = raised_end(side_bore(layout, d.of).tilt)
            assert end == ("tip" if tip_over_nut > 0 else "nut")
            seen.add(end)
    assert seen == {"tip", "nut"}
