"""Strings that start beside the wood at the nut line, by hand; and the outlines of which nothing of the kind is told."""

import math

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.checks.snags import SPOILS
from geometry.layout import Headstock, Nut
from tests.geometry.checks.cases_strings import necked
from tests.geometry.checks.heads import OBLONG, head, loop


def told(layout: Headstock):
    return [snag for snag in check(layout).snags if snag.kind == "string-off-wood"]


def strung(*corners, spread: float = 36.0) -> Headstock:
    """The two strings of the cases (1.0 and 0.6 mm) this far apart before another outline."""
    return replace(necked(30.0), outline=loop(*corners), nut=Nut(spread=spread))


def test_each_side_is_told_by_its_own_string() -> None:
    # A head of 7 mm before strings at -18 and 18: their skins lie at -18.5 and 18.3.
    bass, treble = sorted(told(replace(necked(3.5), nut=Nut(spread=36.0))), key=lambda snag: snag.where[0])
    assert (bass.measured, bass.where) == (pytest.approx(-15.0), (-18.0, 0.0, 0.0))
    assert (treble.measured, treble.where) == (pytest.approx(-14.8), (18.0, 0.0, 0.0))
    assert {bass.grade, treble.grade} == {SPOILS}
    assert bass.text == "String 1 starts 15.0 mm beyond the bass edge at the nut line."
    assert "14.8 mm wider to that side" in treble.cure


def test_an_outline_beside_its_place_is_told_on_one_side() -> None:
    # 60 wide, but 25 mm too far to the treble side: from -5 to 55.
    snag, = told(strung((-5.0, 0.0), (55.0, 0.0), (55.0, 180.0), (-5.0, 180.0)))
    assert (snag.measured, snag.between) == (pytest.approx(-13.5), ("outline", "nut line"))


def test_without_strings_nothing_is_told() -> None:
    assert told(replace(necked(3.5), strings=())) == []
    assert told(head(outline=OBLONG)) == []


def test_a_head_that_narrows_just_behind_the_nut_is_sound() -> None:
    # 44 wide at the nut line alone; and the same going on into the neck.
    waist = ((12.0, 15.0), (40.0, 60.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 60.0), (-12.0, 15.0))
    assert told(strung((-22.0, 0.0), (22.0, 0.0), *waist)) == []
    assert told(strung((-24.0, -40.0), (24.0, -40.0), (22.0, 0.0), *waist, (-22.0, 0.0))) == []


def test_a_neck_that_is_drawn_too_narrow_is_told() -> None:
    snag, other = told(strung((-15.0, -40.0), (15.0, -40.0), (15.0, 4.0), (40.0, 60.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 60.0),
                              (-15.0, 4.0)))
    assert sorted((snag.measured, other.measured)) == pytest.approx([-3.5, -3.3])


def test_rounded_corners_and_a_curved_end_are_sound() -> None:
    # Corners rounded by 6 mm leave 32 mm straight of 44; an arc that sags by 2.5 mm touches the nut line in one point.
    quarter = math.tan(math.radians(90.0) / 4)
    up = ((40.0, 60.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 60.0))
    assert told(strung((-16.0, 0.0), (16.0, 0.0, quarter), (22.0, 6.0), *up, (-22.0, 6.0, quarter))) == []
    assert told(strung((-22.0, 2.5, 2.5 / 22.0), (22.0, 2.5), *up)) == []


def test_an_outline_that_begins_beyond_the_nut_line_or_ends_before_it_tells_nothing() -> None:
    assert told(strung((-3.0, 5.0), (3.0, 5.0), (40.0, 60.0), (-40.0, 60.0))) == []
    assert told(strung((-3.0, -60.0), (3.0, -60.0), (3.0, -5.0), (-3.0, -5.0))) == []
