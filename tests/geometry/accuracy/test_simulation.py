"""The simulation as a whole: seeds, pruning, stopping, agreement with first order, and chances by hand."""

import math
import time

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.accuracy.bench import Trials, bench_of
from geometry.accuracy.rods import AGREE
from geometry.accuracy.simulation import chance_of, simulate, simulated
from geometry.accuracy.told import is_simulated
from geometry.cancellation import Stopped, asking
from geometry.checks import check
from geometry.errors import GeometryError
from geometry.layout import Accuracy, Headstock, Margins
from tests.geometry.accuracy.first_order import chance_below, first_order, propagate
from tests.geometry.accuracy.specimens import PERFECT, brute, crowded, demo, head, holes, only, rough, sample, side_head
from tests.geometry.checks.test_kinds import CASES
from tests.geometry.edits.heads import curved, plain
from tests.spent import least, slowness, spent, times_as_long


# ---- pruning ---------------------------------------------------------------------------------------------------------
@pytest.mark.parametrize(("layout", "trials"), [
    (rough(crowded(), 2.0), 30), (plain(), 50), (rough(curved(), 2.0), 40),
    (rough(sample("slotted-three-a-side"), 2.0), 40), (sample("six-in-line"), 150)])
def test_pruning_changes_nothing(layout: Headstock, trials: int) -> None:
    pruned, whole = simulate(layout, trials, 5), brute(layout, trials, 5)
    assert (pruned.sound, pruned.within) == (whole.sound, whole.within)
    assert len(pruned.clearances) == len(whole.clearances) > 0
    for a, b in zip(pruned.clearances, whole.clearances, strict=True):
        assert (a.kind, a.between, a.of, a.spoiled, a.short) == (b.kind, b.between, b.of, b.spoiled, b.short)
        assert (a.spread.mean, a.spread.sd) == pytest.approx((b.spread.mean, b.spread.sd), abs=1e-6)
        assert a.spread.edges[0] == pytest.approx(b.spread.edges[0], abs=1e-5)


@settings(max_examples=10)
@given(st.lists(st.tuples(st.floats(-30, 30), st.floats(15, 160), st.floats(2, 10)), min_size=2, max_size=6),
       st.floats(0.2, 4.0), st.integers(0, 99))
def test_pruning_changes_nothing_on_any_holes(places: list, by: float, seed: int) -> None:
    layout = rough(side_head(Accuracy(), holes=holes(*places)), by)
    pruned, whole = simulate(layout, 25, seed), brute(layout, 25, seed)
    assert (pruned.sound, pruned.within) == (whole.sound, whole.within)
    assert [(c.kind, c.of, c.short) for c in pruned.clearances] == [(c.kind, c.of, c.short) for c in whole.clearances]


# ---- seeds, blocks, progress, stopping -------------------------------------------------------------------------------
def test_the_same_seed_gives_the_same_answer_and_another_seed_another() -> None:
    one = simulate(crowded(), 600, 2)
    assert simulate(crowded(), 600, 2) == one
    assert simulate(crowded(), 600, 3) != one


def test_more_trials_begin_with_the_same_ones() -> None:
    bench = bench_of(crowded())
    few, many = Trials(bench, bench.lot + 40, 1), Trials(bench, 2 * bench.lot, 1)
    a, b = (list(lot.built()) for lot in (few, many))
    assert a[1].trials == 40 and (a[0].draws == b[0].draws).all()
    assert (a[1].draws == b[1].draws[:, :40]).all()


def test_trials_measured_together_are_those_of_their_blocks(monkeypatch: pytest.MonkeyPatch) -> None:
    """A head with many errors has short blocks; how many of them are measured at once changes no trial."""
    monkeypatch.setattr("geometry.accuracy.bench._MOST_DRAWS", 20_000)
    bench = bench_of(crowded())
    assert bench.lot > 2 * bench.block and bench.lot % bench.block == 0
    at_once = simulate(crowded(), bench.lot + 40, 1)
    monkeypatch.setattr("geometry.accuracy.bench._AT_ONCE", 0)
    assert bench.lot == bench.block
    again = simulate(crowded(), at_once.trials, 1)
    assert (again.sound, again.within) == (at_once.sound, at_once.within)
    for one, two in zip(at_once.clearances, again.clearances, strict=True):
        assert (one.kind, one.between, one.short, one.spoiled) == (two.kind, two.between, two.short, two.spoiled)
        assert two.spread.mean == pytest.approx(one.spread.mean, abs=AGREE) and two.spread.sd == pytest.approx(one.spread.sd, abs=AGREE)


@pytest.mark.parametrize("aim", ["sound", "within"])
def test_a_chance_by_itself_is_that_of_the_whole_simulation(aim: str) -> None:
    """Though nothing is measured finer than it takes."""
    for layout in (crowded(), demo()):
        bench = bench_of(layout)
        found = simulated(bench, 3000, 5)
        assert chance_of(bench, 3000, 5, aim) == (found.sound if aim == "sound" else found.within)


def test_what_is_measured_roughly_is_exact_below_what_is_enough_and_never_more_than_it_is() -> None:
    bench = bench_of(crowded())
    lot = Trials(bench, bench.block, 3)
    specs = bench.specs(lot.reach())
    built, quicker = next(lot.built()), 0
    for spec in specs:
        exact, rough = spec.measure(built), spec.least(built, spec.needed)
        below = exact < spec.needed
        assert rough[below] == pytest.approx(exact[below], abs=AGREE) and (rough <= exact + AGREE).all() and (rough[~below] >= spec.needed - AGREE).all()
        quicker += int((rough < exact - AGREE).any())
    assert quicker > 0


def test_blocks_that_are_drawn_again_give_what_kept_ones_give(monkeypatch: pytest.MonkeyPatch) -> None:
    kept = simulate(crowded(), 6000, 1)
    monkeypatch.setattr("geometry.accuracy.bench._KEPT_DRAWS", 0)
    assert simulate(crowded(), 6000, 1) == kept


def test_progress_runs_from_nothing_to_all() -> None:
    heard: list[float] = []
    simulate(demo(), 6000, progress=heard.append)
    assert heard[0] == 0.0 and heard[-1] == 1.0 and heard == sorted(heard) and len(heard) > 6


def test_a_simulation_that_is_cancelled_stops_soon() -> None:
    asked: list[bool] = []

    def cancelled() -> bool:
        asked.append(True)
        return len(asked) > 40

    with pytest.raises(Stopped):
        simulate(demo(), 50_000, ask=asking(cancelled))
    assert len(asked) == 41


def test_the_caller_is_asked_again_and_again() -> None:
    """Never more than 50 ms of work between two questions: measured 0.03 s; twice 50 ms here for a busy machine."""
    def longest() -> float:
        answers: list[float] = [time.thread_time()]
        simulate(rough(demo(), 2.0), 10_000, ask=lambda at=None: answers.append(time.thread_time()))
        answers.append(time.thread_time())
        assert len(answers) > 200
        return max(np.diff(answers)) / slowness()
    assert least(longest, 0.1) <= 0.1


def test_twice_the_trials_take_about_twice_as_long() -> None:
    simulate(demo(), 2500)
    assert times_as_long(lambda: simulate(demo(), 30_000), lambda: simulate(demo(), 15_000), 3.2) <= 3.2


@pytest.mark.parametrize("trials", [0, 1, 2_000_000])
def test_an_impossible_number_of_trials_is_refused(trials: int) -> None:
    with pytest.raises(GeometryError, match="2 to 1,000,000 trials"):
        simulate(demo(), trials)


# ---- chances ---------------------------------------------------------------------------------------------------------
def test_a_perfect_shop_builds_what_the_checks_say() -> None:
    layout = replace(demo(), accuracy=PERFECT)
    found = simulate(layout, 50)
    assert found.sound == found.within == 1.0 and found.clearances == ()
    tight = replace(layout, margins=replace(layout.margins, screw_any=2.7))
    found = simulate(tight, 50)
    short = {frozenset(c.between) for c in found.clearances}
    told = {frozenset(s.between) for s in check(tight).snags if s.grade == "tight"}
    assert short == told != set()
    assert {(c.short, c.spoiled, c.spread.sd, c.shares) for c in found.clearances} == {
        (1.0, 0.0, 0.0, ())}


def test_touching_the_margin_exactly_passes_in_a_perfect_shop() -> None:
    layout = head(holes=holes((0.0, 60.0, 5.0), (8.5, 60.0, 6.0)), accuracy=PERFECT, margins=Margins(bore_bore=3.0))
    assert simulate(layout, 20).clearances == ()


def test_the_chance_of_two_holes_meeting_by_hand() -> None:
    # 0.3 mm apart, each marked with a deviation of 0.15 along the line between: 0.3 / (0.15 sqrt 2) = 1.41421.
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0)), accuracy=only(mark=0.3))
    found, = simulate(layout, 20_000, 4).clearances
    meant = 0.5 * math.erfc(1.41421 / math.sqrt(2))
    # Aside errors only part them: under a hundredth of a mm. Five standard errors of a chance of 0.079 in 20,000.
    assert found.spoiled == pytest.approx(meant, abs=5 * math.sqrt(meant / 20_000))
    assert found.short == 1.0 and found.spoils and found.kind == "hole-to-hole"
    assert [(s.source, s.where) for s in found.shares] in ([("mark", "hole 1"), ("mark", "hole 2")],
                                                            [("mark", "hole 2"), ("mark", "hole 1")])
    assert sum(s.share for s in found.shares) == pytest.approx(1.0, abs=0.03)


def test_a_headstock_is_sound_when_all_its_clearances_are() -> None:
    # Three holes in a row: the middle one's mark brings it nearer to one neighbour and farther from the other.
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0), (10.6, 60.0, 5.0)), accuracy=only(mark=0.3))
    found = simulate(layout, 20_000, 4)
    draws = np.random.default_rng(8).standard_normal((3, 400_000)) * 0.15
    sound = ((0.3 + draws[1] - draws[0] > 0) & (0.3 + draws[2] - draws[1] > 0)).mean()
    assert found.sound == pytest.approx(sound, abs=0.01)
    apart = [c.spoiled for c in found.clearances if c.spoiled > 0]
    # Not the product of both chances: an error that spoils one keeps the other.
    assert abs(found.sound - math.prod(1 - chance for chance in apart)) > 0.003


def test_a_blemish_does_not_cost_the_piece() -> None:
    layout = side_head(only(stop=0.3), slot_x=15.0)
    found = simulate(layout, 500)
    scar = next(c for c in found.clearances if c.kind == "point-to-wall")
    assert scar.spoiled > 0.9 and not scar.spoils and found.sound == 1.0 and found.within < 0.1


def test_shares_tell_which_source_dominates() -> None:
    layout = head(holes=holes((0.0, 60.0, 5.0), (8.0, 60.0, 5.0), depth=8.0),
                  accuracy=Accuracy(mark=0.1, wander_per_50=0.0, tilt_degrees=3.0, stop=0.0, template=0.0,
                                    paper_percent=0.0))
    found = next(c for c in simulate(layout, 5000).clearances if c.kind == "hole-to-hole")
    assert found.shares[0].source == "square"
    marked = replace(layout, accuracy=replace(layout.accuracy, mark=1.0))
    assert next(c for c in simulate(marked, 5000).clearances if c.kind == "hole-to-hole").shares[0].source == "mark"


def test_every_snag_of_a_crowded_head_finds_its_clearance() -> None:
    found = simulate(crowded(), 2000)
    snags = [s for s in check(crowded()).snags if s.grade != "note" and s.kind in ("screw-to-screw", "cover", "rail")]
    assert snags
    for snag in snags:
        clearance = found.of(snag)
        assert clearance.nominal == pytest.approx(snag.measured, abs=2e-3)
        assert clearance.short > 0.5
    assert found.of(replace(snags[0], kind="plate-rocks")) is None


def test_without_errors_a_clearance_lacks_what_the_snag_of_every_kind_lacks() -> None:
    """Over all cases of the checks: what is simulated is measured alike, and what is not is told apart by its kind."""
    compared = set()
    for case in CASES:
        found = simulate(case.layout, 2)
        for snag in check(case.layout).snags:
            # A hole that is asked deeper than the wood is thick comes through: no error makes it a blind one.
            if not is_simulated(snag) or (snag.kind == "too-deep" and snag.measured < 0):
                continue
            clearance = found.of(snag)
            assert clearance is not None, snag
            assert clearance.nominal - clearance.needed == pytest.approx(snag.measured - snag.needed, abs=3e-3), snag
            compared.add(snag.kind)
    assert len(compared) > 40


# ---- first order -----------------------------------------------------------------------------------------------------
@pytest.mark.parametrize("layout", [demo(), crowded(), rough(demo(), 1.5), rough(sample("slotted-three-a-side"), 1.5)])
def test_first_order_agrees_where_a_clearance_is_nearly_linear(layout: Headstock) -> None:
    """Where the simulation explains nearly all by a straight line, both tell the same spread and the same chance."""
    first = {(p.kind, p.between, p.of, p.needed): p for p in propagate(layout)}
    linear = 0
    for clearance in simulate(layout, 10_000).clearances:
        own = first[clearance.kind, clearance.between, clearance.of, clearance.needed]
        assert own.nominal == pytest.approx(clearance.nominal, abs=1e-9)
        moved = abs(clearance.spread.mean - clearance.nominal)
        if sum(s.share for s in clearance.shares) > 0.97 and moved < 0.06 * clearance.spread.sd:
            linear += 1
            assert own.sd == pytest.approx(clearance.spread.sd, rel=0.04)
            # A mean moved by 0.06 sd shifts a chance by up to 0.06 x 0.399 = 0.024; both chances are held to less.
            assert own.short == pytest.approx(clearance.short, abs=0.01)
            assert own.spoiled == pytest.approx(clearance.spoiled, abs=0.01)
            assert own.shares[0].source == clearance.shares[0].source
    assert linear >= 1


def test_first_order_of_everything_that_is_linear_in_the_demo() -> None:
    """All clearances that come near, also those that never fail: the same spread wherever the trials are normal."""
    bench = bench_of(demo())
    lot = Trials(bench, 2 * bench.block, 1)
    specs = bench.specs(lot.reach())
    blocks = [[spec.measure(built) for spec in specs] for built in lot.built()]
    values = [np.concatenate(parts) for parts in zip(*blocks, strict=True)]
    normal = 0
    for spec, found in zip(specs, values, strict=True):
        own = first_order(bench, spec)
        skew = abs(((found - found.mean()) ** 3).mean() / found.std() ** 3)
        if skew < 0.1 and abs(found.mean() - own.nominal) < 0.1 * found.std():
            normal += 1
            assert own.sd == pytest.approx(found.std(), rel=0.06), spec.kind
    assert normal > 15


def test_chances_of_a_normal_number() -> None:
    # 1.95996 deviations leave 2.5 % below (any table of the normal distribution).
    assert chance_below(1.95996, 1.0) == pytest.approx(0.025, abs=1e-6)
    assert chance_below(0.0, 1.0) == pytest.approx(0.5)
    assert (chance_below(0.1, 0.0), chance_below(-0.1, 0.0)) == (0.0, 1.0)


def test_ten_thousand_demos_are_quick() -> None:
    """Half a second on a quiet machine of two cores (measured); three times that here, where other tests may run."""
    simulate(demo(), 2500)
    assert spent(lambda: simulate(demo(), 10_000), 1.5, rounds=2) <= 1.5
