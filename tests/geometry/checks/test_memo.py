"""What a memo keeps of items and of pairs is what telling everything anew gives, whatever happens to the items."""

from dataclasses import dataclass

from hypothesis import given
from hypothesis import strategies as st

from geometry.checks.memo import Memo


@dataclass(eq=False)
class Spot:
    """Something at a place, its own self whatever else stands there."""

    x: float


def told(spot, factor):
    return (spot.x * factor,) if spot.x > 0 else ()


def all_told(spots, factor):
    return [told(spot, factor) for spot in spots]


def boxes(spots):
    return [((spot.x, 0.0, 0.0), (spot.x + 1.0, 1.0, 1.0)) for spot in spots]


def meet(one, two):
    return (one.x, two.x) if abs(one.x - two.x) < 2 else ()


_spots = st.lists(st.builds(Spot, st.floats(-9, 9)), max_size=9)


def _next(draw, spots):
    """Another sequence of the same spots, some put elsewhere, dropped, added or in another order."""
    what = draw(st.sampled_from(["move", "move", "drop", "add", "turn", "same", "anew"]))
    if what == "anew" or not spots:
        return tuple(draw(_spots))
    at = draw(st.integers(0, len(spots) - 1))
    return {"move": (*spots[:at], Spot(draw(st.floats(-9, 9))), *spots[at + 1:]), "drop": spots[:at] + spots[at + 1:],
            "add": (*spots[:at], Spot(draw(st.floats(-9, 9))), *spots[at:]), "turn": spots[::-1], "same": spots}[what]


@given(st.data())
def test_each_and_pairs_follow_the_items(data):
    memo, spots, factor = Memo(), tuple(data.draw(_spots)), 2.0
    for _ in range(data.draw(st.integers(1, 6))):
        memo.new_round()
        assert list(memo.each(told, spots, factor)) == [told(spot, factor) for spot in spots]
        expected = tuple(one for spot in spots for one in told(spot, factor))
        assert memo.snags(told, spots, factor) == memo.snags_together(all_told, spots, factor) == expected
        pairs = memo.pairs(boxes, spots, 1.0, factor)
        pairs.keep([meet(spots[i], spots[k]) for i, k in pairs.new])
        whole = {(i, k): meet(spots[i], spots[k]) for i in range(len(spots)) for k in range(i, len(spots))}
        assert pairs.found == {pair: found for pair, found in whole.items() if found}
        spots = _next(data.draw, spots)
        if data.draw(st.integers(0, 4)) == 0:
            factor = data.draw(st.floats(1, 3))


def test_one_moved_item_is_told_alone():
    asked = []

    def counted(spots):
        asked.append(len(spots))
        return [(spot.x,) for spot in spots]

    memo, spots = Memo(), tuple(Spot(float(k)) for k in range(8))
    memo.snags_together(counted, spots)
    pairs = memo.pairs(boxes, spots, 1.0)
    pairs.keep([()] * len(pairs.new))
    memo.new_round()
    spots = (*spots[:3], Spot(3.5), *spots[4:])
    assert memo.snags_together(counted, spots)[3] == 3.5
    assert asked == [8, 1]
    # 3.5 lies within 1 of the boxes that begin at 2, 4 and 5, and of its own.
    assert memo.pairs(boxes, spots, 1.0).new == [(2, 3), (3, 3), (3, 4), (3, 5)]


def test_what_follows_from_nothing_stays_one_object():
    memo, spots = Memo(), (Spot(-1.0), Spot(2.0), Spot(-3.0))
    flat = memo.snags(told, spots, 1.0)
    memo.new_round()
    assert memo.snags(told, (Spot(-4.0), *spots[1:]), 1.0) is flat
    memo.new_round()
    assert memo.snags(told, (Spot(5.0), *spots[1:]), 1.0) == (5.0, 2.0)


def test_what_is_kept_whole_is_told_again_only_when_an_argument_changes():
    told_of = []

    def whole(memo, spots, factor):
        told_of.append(spots)
        return memo.snags(told, spots, factor)

    memo, spots = Memo(), (Spot(-1.0), Spot(2.0))
    factor = 2.0
    first = memo.whole(whole, spots, factor)
    for _ in range(3):
        memo.new_round()
        assert memo.whole(whole, spots, factor) is first
    moved = (spots[0], Spot(3.0))
    assert first == (4.0,) and memo.whole(whole, moved, factor) == (6.0,)
    assert told_of == [spots, moved]
