"""Passes: even, no deeper than allowed, none too shallow to be guided."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from geometry.routing.depth import Reach, reach_of
from geometry.routing.follower import follower_of
from geometry.routing.passes import MOST_PASSES, Guided, depths, from_template, from_wall, in_turn, same_offset
from geometry.routing.refusal import Refusal
from tests.geometry.routing.specimens import BUSH, bit, job


def reach(least=0.0, most=30.0, step=8.0):
    return Reach(least, most, step, str, float("inf"))


@pytest.mark.parametrize(("one", "begins", "ends", "found"), [
    (reach(), 0, 16, (8, 16)),
    (reach(), 0, 17, (5.7, 11.4, 17)),
    (reach(), 0, 8, (8,)),
    (reach(), 10, 16, (16,)),
    (reach(least=7), 0, 16, (8, 16)),
    (reach(least=7), 0, 17, (7, 12, 17)),
    (reach(least=9), 0, 16, None),
    (reach(least=9), 4, 16, (10, 16)),
    (reach(most=15), 0, 16, None),
    (reach(least=17, step=20), 0, 16, None),
    (reach(), 16, 16, None),
    (reach(), 0, 16.0000009, (8, 16.0000009)),  # a millionth more is no reason for a third
    (reach(least=7.96, step=7.98), 0, 16, (8 - 0.04, 12, 16)),  # 8 were too deep for one pass
    (reach(least=8.04, step=8.06), 0, 16.2, (8.04, 12.1, 16.2)),  # and here too shallow
])
def test_by_hand(one, begins, ends, found):
    made = depths(one, begins, ends)
    assert made == (None if found is None else pytest.approx(found))


SIZE = st.floats(0.1, 40)


@given(st.floats(0, 20), SIZE, st.floats(0.3, 20), st.floats(0, 10), SIZE)
def test_whatever_the_numbers(least, most, step, begins, ends):
    made = depths(Reach(least, most, step, str, 0.0), begins, ends)
    if made is None:
        assert ends > most or ends < least or ends <= begins + 1e-6 or begins + step < least \
            or ends - begins > MOST_PASSES * step * (1 - 1e-9)
        return
    assert made[-1] == ends
    assert all(d >= least - 1e-6 and d <= most + 1e-6 for d in made)
    assert all(0 < b - a <= step + 1e-6 for a, b in zip((begins, *made), made, strict=False))
    fewest = -(-(ends - begins) // step)
    assert len(made) <= fewest + 1


def test_more_than_forty_passes_are_none():
    assert depths(reach(step=0.4), 0, 16) == pytest.approx([0.4 * k for k in range(1, 41)]) and depths(reach(step=0.4), 0, 16.1) is None


def test_along_a_wall_each_pass_is_as_deep_as_that_has_to_guide_it():
    """Its template would guide it from the face on, the wall from 7 mm on."""
    follower = follower_of(bit(cutter=9.5, cutting=12.7, bearing="shank", high=5, shank=6.35), None)
    passes = from_wall(Guided(follower, Reach(0.0, 30.0, 8.0, str, 7.0)), 0, 17, "back", job())
    assert [(p.begins, p.ends) for p in passes] == [(0, 7), (7, 12), (12, 17)]
    assert {(p.side, p.rubs_on) for p in passes} == {("back", "wall already cut")}
    assert from_wall(Guided(follower, reach()), 0, 17, "back", job()) is None, "no wall guides it"


def test_each_pass_says_what_rubs_and_how_much():
    """Cutting length 12.7, bearing 5, template 6: at 9.7 just 3 mm rub on the template; at 16 only 2.7, so the wall counts."""
    follower = follower_of(bit(cutter=9.5, cutting=12.7, bearing="shank", high=5, shank=6.35), None)
    assert from_template(Guided(follower, reach_of(follower, job())), 0, 16, "face", job()) is None, "9.5 a pass, 9.7 needed"
    asked = job(light=True)
    passes = from_template(Guided(follower, reach_of(follower, asked)), 0, 16, "face", asked)
    assert [(p.begins, p.ends, p.rubs_on) for p in passes] == [
        (0, pytest.approx(9.7), "template"), (pytest.approx(9.7), 16, "wall already cut")]
    assert passes[1].contact == pytest.approx(5)
    assert [p.said(through=True, template=6).partition(",")[0] for p in from_template(Guided(follower, reach_of(follower, asked)), 0, 9.7, "back", asked)] == ["Back up"]
    assert passes[1].said(through=True, template=6).startswith("Face up, ") and "corners" not in passes[1].said(through=True, template=6)
    assert "bearing rubbing on the wall already cut" in passes[1].said(through=True, template=6)


def test_a_long_bit_goes_on_where_a_short_one_stops():
    """Short: 8 mm edges, reach 9; long: 16 mm edges need 13 mm for the template, one pass of 10 from 9 gets there."""
    short = follower_of(bit("short", cutter=10, cutting=8, shank=10, out=15), None)
    long = follower_of(bit("long", cutter=10, cutting=16, bearing="shank", high=5), None)
    asked = job()
    passes = in_turn(Guided(short, reach_of(short, asked)), Guided(long, reach_of(long, asked)), 16, "face", asked)
    assert [p.bit for p in passes] == ["short", "long"]
    assert passes[0].begins == 0 and passes[0].ends == passes[1].begins and passes[-1].ends == 16
    assert in_turn(Guided(long, reach_of(long, asked)), Guided(short, reach_of(short, asked)), 16, "face", asked) is None


def test_a_second_bit_with_another_offset_has_to_follow_the_wall():
    """First bit in a bush, opening 4.5 larger; the second's bearing finds no template but the wall, from 8 + 3 mm on."""
    first = follower_of(bit("first", cutter=8, cutting=12, shank=8, out=16), BUSH)
    second = follower_of(bit("second", cutter=8, cutting=8, shank=6, bearing="shank", high=5), None)
    asked = job()
    passes = in_turn(Guided(first, reach_of(first, asked)), Guided(second, reach_of(second, asked)), 16, "face", asked)
    assert passes[-1].rubs_on == "wall already cut" and passes[-1].contact == pytest.approx(5)
    assert passes[-1].ends == 16 and passes[-1].takes <= 8


@given(st.sampled_from([6.0, 8.0, 12.0]), st.floats(0.2, 1.1), st.sampled_from([-2.0, 0.0, 0.0, 2.0]), st.floats(-1, 20),
       st.floats(3, 14), st.floats(0.5, 2.5), st.sampled_from(["none", "shank"]), st.booleans())
def test_every_pass_keeps_its_contact(cutter, share, wider, more, template, deep, bearing, light):
    """Contact measured again, as the overlap of the follower with template and cut wall."""
    cutting = max(3.0, share * ((1.5 if light else 1.0) * cutter + template - 3))
    depth, size = deep * cutting, cutter + wider
    out = max(depth + template + more, 1.0)
    tool = bit(cutter=cutter, cutting=cutting, shank=size if bearing == "none" else min(size, 6.0), out=out, bearing=bearing,
               ring=size, high=5.0)
    follower = follower_of(tool, None)
    asked = job(template=template, depth=depth, thickness=depth, light=light)
    found = reach_of(follower, asked)
    assume(not isinstance(found, Refusal))
    passes = from_template(Guided(follower, found), 0.0, depth, "face", asked)
    assume(passes is not None)
    assert sum(p.takes for p in passes) == pytest.approx(depth)
    for p in passes:
        low = tool.cutting_length - p.ends
        high = low + (5.0 if bearing == "shank" else 1e9)
        open_below = -max(p.begins, 0.0) if abs(follower.diameter - cutter) <= 0.02 else 0.0
        rubs = max(0.0, min(template, high) - max(low, open_below))
        assert rubs == pytest.approx(p.contact, abs=1e-6) and rubs >= 3 - 1e-6
        assert p.ends + template <= out + 1e-6
        if follower.diameter < cutter - 0.02:
            assert low <= 1e-6
        if follower.diameter > cutter + 0.02:
            assert low >= -1e-6


def test_how_far_below_the_base_the_bit_is_set():
    """On a template of 6.35 the base stands 6.35 above the wood: 9.7 and 16 deep are 16.05 and 22.35 below it, in a bush too."""
    asked = job(light=True)
    for one in (follower_of(bit(cutter=9.5, cutting=12.7, bearing="shank", high=5, shank=6.35), None),):
        passes = from_template(Guided(one, reach_of(one, asked)), 0, 16, "face", asked)
        assert [p.below_base(6.35) for p in passes] == pytest.approx([16.05, 22.35])
    assert "to 16 mm deep, the bit set 22.35 mm below the base, 5 mm" in passes[1].said(through=True, template=6.35)
    bushed = follower_of(bit(cutter=6, cutting=20, shank=6), BUSH)
    assert from_template(Guided(bushed, reach_of(bushed, asked)), 0, 16, "face", asked)[-1].below_base(6) == 22


@pytest.mark.parametrize(("one", "other", "same"), [(1.5, 1.5, True), (1.5, 1.505, True), (1.5, 1.52, False), (1.5, -1.5, False), (-2.0, -2.0, True)])
def test_a_template_that_is_larger_is_not_one_that_is_smaller(one, other, same):
    assert same_offset(one, other) is same
