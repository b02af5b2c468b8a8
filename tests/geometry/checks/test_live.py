"""The demo's counts and soundness, what LiveCheck keeps, and that keeping it pays."""

import itertools

import pytest
from msgspec.structs import replace

from geometry.checks import LiveCheck, check
from geometry.checks.memo import Memo
from geometry.layout import EdgePlace
from tests.geometry.checks.test_kinds import CASES
from tests.property.layouts import DEMO
from tests.spent import times_as_long


def test_the_demo_counts_thirty_six_holes_and_forty_two_drillings():
    """Twelve strings, six tuners each way: a post bore and two screws each, six counterbores (common practice)."""
    counts = check(DEMO).counts
    assert (counts.holes, counts.counterbores, counts.drilling, counts.pins) == (36, 6, 42, 2)
    assert len(check(DEMO).holes) == 38


def test_the_demo_is_sound():
    result = check(DEMO)
    assert not result.spoils
    assert [snag.text for snag in result.snags if snag.grade != "note"] == []


def _slid(step):
    tuners = list(DEMO.tuners)
    i = next(i for i, tuner in enumerate(tuners) if tuner.id == "treble side 2")
    tuners[i] = replace(tuners[i], place=EdgePlace(side="treble", along=117.9 + 0.05 * step))
    return replace(DEMO, tuners=tuple(tuners))


def test_a_snag_appears_and_vanishes_while_a_tuner_slides():
    live = LiveCheck()
    assert not live.check(DEMO).spoils
    near = live.check(_slid(-360))
    assert {"side-bore-to-counterbore", "side-bore-to-screw"} & {snag.kind for snag in near.snags}
    assert live.check(DEMO) == check(DEMO)


def test_one_moved_tuner_costs_less_than_half_of_everything():
    """Measured: a quarter on an idle machine, a third on a busy one. Each layout is a new one."""
    live, steps = LiveCheck(), itertools.count()
    live.check(DEMO)
    assert times_as_long(lambda: live.check(_slid(next(steps))), lambda: check(_slid(next(steps))), 0.5, rounds=10) <= 0.5


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.kind)
def test_snags_of_what_stays_are_the_same_objects(case):
    """What no check makes anew is put in order once, and shown once."""
    live = LiveCheck()
    assert live.check(case.layout).snags is live.check(replace(case.layout, name="the same")).snags


def test_a_memo_forgets_what_the_last_round_did_not_use():
    calls = []

    def made(one):
        calls.append(one)
        return object()

    memo, thing, other = Memo(), [1], [2]
    first = memo.of(made, thing)
    memo.new_round()
    assert memo.of(made, thing) is first
    memo.new_round()
    memo.of(made, other)
    memo.new_round()
    assert memo.of(made, thing) is not first
    assert calls == [thing, other, thing]


def test_a_memo_hands_only_the_missing_rows_on():
    batches = []

    def doubled(rows):
        batches.append(len(rows))
        return [one * 2 for one, in rows]

    memo = Memo()
    assert memo.many(doubled, [(1.0,), (2.0,), (1.0,)]) == [2.0, 4.0, 2.0]
    memo.new_round()
    assert memo.many(doubled, [(2.0,), (3.0,)]) == [4.0, 6.0]
    assert batches == [2, 1]
