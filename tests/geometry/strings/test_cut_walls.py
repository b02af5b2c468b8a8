"""A slot 12 wide from y = 40 to 140 about x = 0 in its pieces: its two sides and sixteen pieces of either round end, by hand."""

import math

import numpy as np
import pytest

from geometry.layout import Ramp, Slot, StraightSlot, slot_path
from geometry.solids.ramps import nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.strings.cut_walls import crossed, cut_up, ramp_lines, rims, rounding, sides_of
from geometry.tolerance import FLAT
from tests.geometry.checks.heads import drawn


def slot(width=None, turned=False):
    """With a ramp 20 long and 4 deep, from y = 14 on. Turned, the slot and all of it run along x instead."""
    ends = ((40.0, 0.0), (140.0, 0.0)) if turned else ((0.0, 40.0), (0.0, 140.0))
    return Slot(id="s", shape=StraightSlot(nut_end=ends[0], tip_end=ends[1], width=12.0), ramp=Ramp(length=20.0, depth=4.0, width=width))


WALL = Wall(slot_path(slot()))


def test_straight_sides_stay_whole_and_round_ends_are_cut_by_a_sixteenth_of_a_half_turn():
    pieces = cut_up(WALL)
    assert len(pieces.pieces) == 2 + 2 * 16
    assert pieces.middles[np.hypot(*(pieces.middles - (0.0, 90.0)).T) < 7.0] == pytest.approx(np.array([[6.0, 90.0], [-6.0, 90.0]]))
    round_ = np.abs(pieces.middles[:, 1] - 90.0) > 50.0
    centres = np.where(pieces.middles[round_, 1:] < 90.0, [[0.0, 40.0]], [[0.0, 140.0]])
    out = pieces.middles[round_] - centres
    assert np.hypot(*out.T) == pytest.approx(6.0) and (out * pieces.tangents[round_]).sum(axis=1) == pytest.approx(0.0, abs=1e-9)
    turns = sorted(np.degrees(np.arctan2(out[out[:, 1] > 0, 1], out[out[:, 1] > 0, 0])))
    assert turns == pytest.approx([180 / 32 + 180 / 16 * k for k in range(16)])


@pytest.mark.parametrize(("bulge_degrees", "pieces"), [(10.0, 4), (50.0, 5), (90.0, 8)])
def test_a_flat_arc_is_cut_into_four_at_least(bulge_degrees, pieces):
    bulge = math.tan(math.radians(bulge_degrees) / 4)
    wall = Wall(slot_path(drawn("d", (-6.0, 40.0), (6.0, 40.0), (6.0, 140.0, bulge), (-6.0, 140.0))))
    assert len(cut_up(wall).pieces) == 3 + pieces


def test_to_the_rounding_belongs_what_turns_aside_in_the_nut_end():
    masked = rounding(WALL, nut_end(slot()))
    assert masked.sum() == 16 and (cut_up(WALL).middles[masked, 1] < 40.0).all()
    corners = ((-6.0, 40.0), (6.0, 40.0), (6.0, 140.0), (-6.0, 140.0))
    for square in (drawn("d", *corners), drawn("d", *corners[::-1])):
        wall = Wall(slot_path(square))
        assert cut_up(wall).middles[rounding(wall, nut_end(square))] == pytest.approx(np.array([[0.0, 40.0]])), "one end, and no side"


@pytest.mark.parametrize("way", [(0.0, 1.0), (0.0, -1.0)])
def test_only_behind_its_post_does_the_slot_end_for_a_string(way):
    """Of either round end half lies across a string along the slot. What rounds the nut end is never beside it."""
    (sides,) = sides_of(WALL, nut_end(slot()), [way], [(0.0, 100.0)])
    middles = cut_up(WALL).middles
    towards_nut = way[1] > 0
    assert len(sides.ends) == (16 if towards_nut else 8)
    assert ((middles[sides.ends, 1] < 100.0) == towards_nut).all()
    assert len(sides.askew) == (8 if towards_nut else 0), "the nut end's rounding ends the slot whichever way it lies"
    assert (np.abs(middles[sides.askew, 0]) > 6.0 * math.sin(math.pi / 4)).all()
    assert len(sides.beside) == 2 + 8 and (middles[sides.beside, 1] >= 40.0).all()


def test_strings_are_told_each_by_its_own_way_and_post():
    """The second crosses the slot at 30 degrees from its axis to the treble side; the third lies right across, and the sides end it."""
    ways = [(0.0, 1.0), (0.5, math.sqrt(0.75)), (1.0, 0.0)]
    posts = [(0.0, 100.0), (2.0, 60.0), (0.0, 90.0)]
    together = sides_of(WALL, nut_end(slot()), ways, posts)
    middles, tangents = cut_up(WALL).middles, cut_up(WALL).tangents
    for one, way, post in zip(together, ways, posts, strict=True):
        across = np.abs(tangents @ np.array((-way[1], way[0])))
        ending = (across > math.sqrt(0.5) - 1e-9) | (middles[:, 1] < 40.0)
        behind = (middles - post) @ np.array(way) < 0
        assert set(one.ends) == set(np.flatnonzero(ending & behind)) and set(one.beside) == set(np.flatnonzero(~ending))
        assert set(one.askew) == {k for k in one.ends if across[k] < math.sqrt(0.5) - 1e-9}
    assert any(middles[k] == pytest.approx((-6.0, 90.0)) for k in together[2].ends)


@pytest.mark.parametrize("turned", [False, True])
def test_walls_are_cut_where_the_sides_of_a_narrow_ramp_meet_them(turned):
    """Sides at x = -3 and 3, which meet the rounding 6 cos 30 before its middle. There the ramp is 4 / 20 (26 - 5.196) = 4.161 deep."""
    of = slot(6.0, turned)
    wall, cut = Wall(slot_path(of)), ramp_cut(of)
    across, along = (1, 0) if turned else (0, 1)
    whole, parts = rims(wall, cut)
    assert len(whole.pieces) == 34 - 2 and len(parts.pieces) == 4 and sorted(parts.of) == sorted([*set(parts.of.tolist())] * 2)
    assert not set(parts.of) & set(whole.of) and set(parts.of) | set(whole.of) == set(range(34))
    meets = 40.0 - 6.0 * math.cos(math.radians(30))
    ends = np.vstack([parts.pieces.p, parts.pieces.q])
    at_sides = np.isclose(np.abs(ends[:, across]), 3.0, atol=1e-9)
    assert at_sides.sum() == 4 and ends[at_sides][:, along] == pytest.approx(meets, abs=1e-9)
    for rim in (whole, parts):
        for under, top, *points in zip(rim.under, rim.tops, rim.pieces.p, rim.pieces.q, strict=True):
            lies_on = all(abs(p[across]) <= 3.0 + 1e-9 and p[along] <= 40.0 + 1e-9 for p in points)
            assert under == lies_on
            assert top == pytest.approx(min(4 / 20 * (p[along] - 14.0) for p in points) if lies_on else 0.0)
    assert whole.under.sum() == 4 and parts.under.sum() == 2


def test_a_ramp_as_wide_as_its_slot_cuts_no_wall():
    """All of the nut end's rounding lies on it."""
    (whole,) = rims(WALL, ramp_cut(slot()))
    assert len(whole.pieces) == 34 and set(np.flatnonzero(whole.under)) == set(np.flatnonzero(rounding(WALL, nut_end(slot()))))


@pytest.mark.parametrize(("width", "to"), [(6.0, 40.0 - 6.0 * math.cos(math.radians(30))), (12.0, 40.0), (14.0, 40.0), (None, 40.0)])
def test_sides_of_a_ramp_go_on_beside_a_round_end_as_far_as_there_is_wood(width, to):
    """Of the same wall, drawn, up to 4 FLAT farther."""
    cut, half = ramp_cut(slot(width)), (width or 12.0) / 2
    for rounded, slack in ((6.0, 1e-9), (None, 4.1 * FLAT)):
        top, left, right = ((line.segment.p0, line.segment.p1) for line in ramp_lines(WALL, cut, rounded).stretches)
        assert top == ((-half, 14.0), (half, 14.0))
        for (start, end), x in ((left, -half), (right, half)):
            if rounded is None and half > 6.0:
                continue
            assert start == (x, 14.0) and end[0] == x and -1e-9 <= end[1] - to <= slack


def test_beside_a_drawn_slot_a_side_that_meets_no_wall_ends_with_the_ramp():
    narrow = drawn("d", (-2.0, 40.0), (2.0, 40.0), (2.0, 140.0), (-2.0, 140.0))
    cut = ramp_cut(slot(12.0))
    ends = {line.segment.p1 for line in ramp_lines(Wall(slot_path(narrow)), cut, None).stretches[1:]}
    assert ends == {(-6.0, 40.0), (6.0, 40.0)}


def test_a_cross_product_is_above_nothing_where_the_one_lies_to_the_left():
    assert crossed(np.array([[1.0, 0.0], [0.0, 2.0], [3.0, 4.0]]), (0.0, 1.0)).tolist() == [1.0, 0.0, 3.0]
    assert crossed(np.array([[1.0, 2.0]]), (3.0, 5.0)).tolist() == [-1.0]
