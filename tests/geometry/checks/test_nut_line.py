"""Strings that start beside the wood at the nut line and steps between it and the nut, by hand; and the outlines of which nothing of the
kind is told."""

import math

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.checks.snags import SPOILS
from geometry.layout import Headstock, Nut, String
from tests.geometry.checks.cases_strings import necked
from tests.geometry.checks.heads import OBLONG, head, loop


def told(layout: Headstock, kind: str = "string-off-wood"):
    return [snag for snag in check(layout).snags if snag.kind == kind]


def strung(*corners, spread: float = 36.0, slant: float = 0.0) -> Headstock:
    """The two strings of the cases (1.0 and 0.6 mm) this far apart before another outline."""
    return replace(necked(30.0), outline=loop(*corners), nut=Nut(spread=spread, slant=slant))


def along(half: float, slant: float) -> list[tuple[float, float]]:
    """The ends of a nut line of twice this length, measured square to the centreline, the bass end first."""
    return [Nut(slant=slant).at(x) for x in (-half, half)]


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


def square(bass: float, treble: float, **nut) -> Headstock:
    """A head with straight edges from the nut line on, x in mm, and a nut 44 wide."""
    return replace(strung((bass, 0.0), (treble, 0.0), (treble, 180.0), (bass, 180.0), spread=20.0), nut=Nut(spread=20.0, **nut))


def test_a_nut_narrower_or_wider_than_the_wood_names_the_number_to_type() -> None:
    snag, = told(square(-24.3, 24.3), "nut-step")
    assert snag.text == "The nut is 44 mm wide, the outline 48.6 mm at the nut line. The wood stands 2.3 mm beyond it at either end."
    assert snag.cure == "Type 48.6 mm as the width of the nut (Strings stage), or draw the outline 44 mm wide at the nut line."
    snag, = told(square(-20.0, 20.0), "nut-step")
    assert snag.text == "The nut is 44 mm wide, the outline 40.0 mm at the nut line. It stands 2.0 mm beyond the wood at either end."
    assert told(replace(square(-24.3, 24.3), nut=Nut(spread=20.0, width=48.6)), "nut-step") == []
    # Edges that flare by 1 in 5 from 44: the width at the line is told, not the one a little on.
    flared = strung((-22.0, 0.0), (22.0, 0.0), (34.0, 60.0), (34.0, 180.0), (-34.0, 180.0), (-34.0, 60.0), spread=20.0)
    snag, = told(replace(flared, nut=Nut(spread=20.0, width=40.0)), "nut-step")
    assert snag.measured == pytest.approx(2.0, abs=0.01) and 'Type 1.732"' in snag.cure_in("in")


def test_each_end_of_a_nut_is_told_by_itself() -> None:
    snag, = told(square(-25.0, 21.0), "nut-step")
    assert snag.text == ("The nut is 44 mm wide, the outline 46.0 mm at the nut line. At the bass edge the wood stands 3.0 mm beyond it. "
                         "At the treble edge it stands 1.0 mm beyond the wood.")
    assert (snag.measured, snag.where) == (pytest.approx(3.0), (-22.0, 0.0, 0.0))
    assert "22 mm to either side of the centreline" in snag.cure
    snag, = told(square(-22.0, 23.0), "nut-step")
    assert snag.text.endswith("At the treble edge the wood stands 1.0 mm beyond it.")


@pytest.mark.parametrize("slant", [6.0, 12.0, -12.0])
def test_along_a_slanted_nut_the_step_is_told_square_to_the_centreline(slant: float) -> None:
    # At 12 degrees one end of the nut lies 4.7 mm behind the square end of the wood: the neck goes on there.
    snag, = told(square(-25.0, 25.0, slant=slant), "nut-step")
    assert snag.measured == pytest.approx(3.0)
    assert told(square(-22.0, 22.0, slant=slant), "nut-step") == []


@pytest.mark.parametrize("slant", [7.0, -7.0])
def test_sides_that_flare_from_the_ends_of_a_slanted_nut_have_no_step(slant: float) -> None:
    # Both ends of the outline at those of the nut, 2.7 mm before and behind the base line, and sides that flare by 1 in 3 from there.
    flared = strung(*along(22.0, slant), (42.0, 60.0), (42.0, 180.0), (-42.0, 180.0), (-42.0, 60.0), slant=slant)
    assert told(flared, "nut-step") == [] == told(flared)
    # So it is where the neck is drawn, too; and half a millimetre of each end is told from where the nut lies.
    (bx, by), (tx, ty) = along(22.0, slant)
    necked_down = strung((bx, by - 30.0), (tx, ty - 30.0), (tx, ty), (42.0, 60.0), (42.0, 180.0), (-42.0, 180.0), (-42.0, 60.0), (bx, by),
                         slant=slant)
    assert told(necked_down, "nut-step") == []
    snag, = told(replace(flared, nut=replace(flared.nut, width=42.0)), "nut-step")
    assert snag.measured == pytest.approx(1.0, abs=0.1)


def test_a_nut_that_ends_in_a_rounded_corner_or_a_flare_has_no_step() -> None:
    # Corners cut by 2 mm, so 40 wide at the line and 44 behind; edges that flare by 1 in 5 from 44.
    assert told(strung((-20.0, 0.0), (20.0, 0.0), (22.0, 2.0), (22.0, 180.0), (-22.0, 180.0), (-22.0, 2.0), spread=20.0), "nut-step") == []
    assert told(strung((-22.0, 0.0), (22.0, 0.0), (34.0, 60.0), (34.0, 180.0), (-34.0, 180.0), (-34.0, 60.0), spread=20.0), "nut-step") == []


def test_strings_beside_the_wood_are_told_alone_and_no_step_without_strings() -> None:
    assert told(square(-9.0, 9.0)) and not told(square(-9.0, 9.0), "nut-step")
    assert told(replace(square(-30.0, 30.0), strings=()), "nut-step") == []


@pytest.mark.parametrize(("thick", "rest"), [((1.0, 1.0, 1.0, 1.4), "; 2 other pairs lie too near as well."), ((0.4, 1.0, 1.0, 1.4), "; 1 other pair lies too near as well."),
                                             ((0.2, 0.2, 0.2, 1.8), ".")])
def test_of_strings_too_near_in_the_nut_the_nearest_are_told_and_the_others_counted(thick, rest):
    """Their middles are 4 / 3 apart: 1.33 less 1.2 or 1.0 are 0.13 of air, and 0.33 between the two before; 0.5 are wanted."""
    strings = tuple(String(id=str(i), diameter=d, course=i) for i, d in enumerate(thick, 1))
    snag, = told(head(strings=strings, nut=Nut(width=40.0, spread=4.0)), "strings-in-nut")
    assert snag.measured == pytest.approx(4 / 3 - (thick[2] + thick[3]) / 2) and snag.text.startswith("Strings 3 and 4 lie 0.")
    assert snag.text.endswith(f"0.50 mm wanted{rest}")
