"""Chains across gaps by hand: corners that were drawn short, and which ends are joined."""

import pytest

from geometry.curves import Arc, Line, Path
from geometry.joining.chains import Chain, bridge, onto_corners, running_on

SHORT = [Line((0.0, 0.0), (9.0, 0.0)), Line((10.0, 1.0), (10.0, 10.0))]
ROUND = [Line((1.0, 0.0), (10.0, 0.0)), Line((10.0, 0.0), (10.0, 10.0)), Line((10.0, 10.0), (0.0, 10.0)), Line((0.0, 10.0), (0.0, 1.0))]


def open_chain(source, *corners):
    return Chain(Path(tuple(Line(p, q) for p, q in zip(corners, corners[1:], strict=False)), False), (source,))


def test_a_corner_that_was_drawn_short_is_met_again():
    assert running_on(SHORT, False) == [Line((0.0, 0.0), (10.0, 0.0)), Line((10.0, 0.0), (10.0, 10.0))]
    aslant = [SHORT[0], Line((10.5, 0.5), (20.0, 10.0))]
    assert [(one.p0, one.p1) for one in running_on(aslant, False)] == [((0.0, 0.0), pytest.approx((10.0, 0.0))), (pytest.approx((10.0, 0.0)), (20.0, 10.0))]
    assert running_on(ROUND, True) == [Line((0.0, 0.0), (10.0, 0.0)), *ROUND[1:3], Line((0.0, 10.0), (0.0, 0.0))]
    assert running_on(ROUND, False) == ROUND, "an open chain has no corner between its ends"


@pytest.mark.parametrize("segments", [
    SHORT[:1], [SHORT[0], Arc.bulging((10.0, 1.0), (10.0, 10.0), 0.5)], [Arc.bulging((0.0, 0.0), (9.0, 0.0), 0.5), SHORT[1]],
    [SHORT[0], Line((10.0, 0.0), (20.0, 0.0))], [SHORT[0], Line((9.5, 6.0), (9.5, 1.0))], [SHORT[0], Line((10.0, 1.0), (0.0, 1.2))]],
    ids=["one alone", "an arc behind", "an arc before", "straight on", "the other way", "too far on"])
def test_other_gaps_stay(segments):
    assert running_on(segments, True) == segments


def test_the_nearest_ends_are_joined_and_each_once():
    """1 mm from the first to the second; the third is 2 mm from the one and 2.2 from the other, which are taken."""
    chains = [open_chain(1, (-20.0, 0.0), (0.0, 0.0)), open_chain(2, (1.0, 0.0), (20.0, 5.0)), open_chain(3, (0.0, 2.0), (-20.0, 20.0))]
    joined, gaps = bridge(chains, 3.0)
    assert [(gap.place, gap.size) for gap in gaps] == [((0.5, 0.0), 1.0)]
    assert sorted(chain.sources for chain in joined) == [(1, 2), (3,)] and bridge(chains, 0.9) == (chains, [])


def test_an_end_where_others_meet_is_joined_to_nothing():
    star = [open_chain(k, (0.0, 0.0), far) for k, far in enumerate(((10.0, 0.0), (0.0, 10.0), (-10.0, 0.0)))]
    joined, gaps = bridge([*star, open_chain(9, (1.0, -1.0), (10.0, -10.0))], 3.0)
    assert gaps == [] and len(joined) == 4


@pytest.mark.parametrize(("far", "closes"), [(10.0, True), (0.9, False)])
def test_a_chain_is_closed_onto_itself_where_it_is_long_beside_its_gap(far, closes):
    """1 mm apart its ends: 2.8 mm of it are no loop."""
    joined, gaps = bridge([open_chain(1, (0.0, 0.0), (0.0, far), (1.0, far), (1.0, 0.0))], 3.0)
    assert len(gaps) == closes and joined[0].path.closed == closes and len(joined) == 1


def test_a_chain_drawn_backwards_is_turned_round():
    joined, _ = bridge([open_chain(1, (0.0, 0.0), (9.0, 0.0)), open_chain(2, (20.0, 0.5), (9.5, 0.5))], 1.0)
    (chain,) = joined
    assert (chain.path.start, chain.path.end) == ((0.0, 0.0), (20.0, 0.5)) and not chain.path.closed


def test_an_end_beside_a_corner_of_another_chain_is_led_to_it_and_branches_it():
    bent = open_chain(1, (0.0, 10.0), (0.0, 0.0), (10.0, 0.0))
    made, gaps = onto_corners([bent, open_chain(2, (-10.0, 0.0), (-0.5, 0.0))], 0.6)
    assert [(gap.place, gap.size) for gap in gaps] == [((-0.25, 0.0), 0.5)]
    assert sorted(chain.sources for chain in made) == [(1,), (1,), (2,)]
    assert all((0.0, 0.0) in (chain.path.start, chain.path.end) for chain in made)


@pytest.mark.parametrize("others", [
    [open_chain(2, (-10.0, 0.0), (-0.7, 0.0))], [open_chain(2, (5.0, 0.5), (5.0, 9.0))], [open_chain(2, (-9.0, 0.0), (0.0, 0.0))],
    [open_chain(2, (30.0, 0.0), (30.0, 0.5), (40.0, 0.5))]], ids=["too far", "beside no corner", "on it", "its own corner"])
def test_other_ends_are_led_nowhere(others):
    chains = [open_chain(1, (0.0, 10.0), (0.0, 0.0), (10.0, 0.0)), *others]
    assert onto_corners(chains, 0.6) == (chains, [])
