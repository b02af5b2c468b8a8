"""The maker's own order, minutes for each step, and ids that outlive small changes."""

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.sheets.work import plan_work
from geometry.edits import mirror_layout, move_features, remove_features, rename
from geometry.edits.steps import renamed_steps
from geometry.errors import GeometryError
from geometry.layout import Pin, Rates, validate
from geometry.sequence import arranged, best_order, counts, estimate, judge, moved, operations, precedence
from tests.geometry.sequence.specimens import before, demo, stocked

DEMO = demo()
OPS = operations(DEMO)
EDGES = precedence(DEMO, OPS)
BEST = best_order(OPS, EDGES)


# ---- minutes -----------------------------------------------------------------------------
def test_minutes_of_the_steps_add_up_to_the_hours() -> None:
    rates = Rates(hole=3.0, bit_change=5.0, factor=1.3)
    taken = estimate(BEST.steps, OPS, rates)
    found = counts(BEST.steps, OPS, rates).hours
    assert list(taken) == list(BEST.steps)
    assert sum(one.work for one in taken.values()) == pytest.approx(60 * found.work)
    assert sum(one.set_up for one in taken.values()) == pytest.approx(60 * found.changes)


def test_minutes_of_single_steps() -> None:
    taken = estimate(BEST.steps, OPS, Rates())
    assert (taken["template"].work, taken["template"].set_up) == (60.0, 2.0)  # to the bench, once
    assert taken["mark"].total == 30.0
    # To the drill press, a bit, a table setting, an edge up: 2 + 2 + 6 + 1.5, and 4 for the bore.
    assert taken[BEST.steps[2]].total == pytest.approx(4.0 + 11.5)
    assert taken["counterbore bass face 2.1.1"].total == 1.5


# ---- ids ---------------------------------------------------------------------------------
@settings(max_examples=12)
@given(st.sampled_from([one.id for group in (DEMO.tuners, DEMO.slots, DEMO.pins) for one in group]),
       st.floats(-1.5, 1.5), st.floats(-1.5, 1.5))
def test_ids_outlive_small_moves(id: str, dx: float, dy: float) -> None:
    shifted = move_features(DEMO, (id,), (dx, dy))
    assert {op.id for op in operations(shifted)} == {op.id for op in OPS}


def test_ids_outlive_other_thickness_and_other_bits() -> None:
    thicker = msgspec.structs.replace(DEMO, blank=msgspec.structs.replace(DEMO.blank, thickness=DEMO.blank.thickness + 0.5))
    assert {op.id for op in operations(thicker)} == {op.id for op in OPS}
    renamed = rename(DEMO, "drills", DEMO.rack.drills[0].id, "another name")
    assert {op.id for op in operations(renamed)} == {op.id for op in OPS}


def test_ids_of_the_rest_outlive_a_removal() -> None:
    fewer = remove_features(DEMO, ("treble face 2",))
    left = {op.id for op in operations(fewer)}
    assert left < {op.id for op in OPS}
    assert {id for id in (op.id for op in OPS) if "treble face 2" not in id} == left


# ---- keeping up ----------------------------------------------------------------------------
def test_an_order_that_is_kept_stays() -> None:
    own = moved(BEST.steps, "cut outline", 3)
    assert arranged(own, BEST.steps, EDGES) == own
    assert arranged((), BEST.steps, EDGES) == BEST.steps
    assert arranged(("no longer there", *own, own[0]), BEST.steps, EDGES) == own


def test_a_new_step_goes_behind_its_forerunner_or_where_it_is_legal() -> None:
    edges = (before("a", "n"), before("n", "d"))
    # Best: a b n c d; kept: c a b d. n follows b in the best order, and that place is legal.
    assert arranged("cabd", "abncd", edges) == tuple("cabnd")
    # Kept: b d c a. n follows b, but a comes last: no place is both after a and before d, so it stays behind b.
    assert arranged("bdca", "abncd", edges) == tuple("bndca")
    # Kept: b c a d: it moves on until it is behind a.
    assert arranged("bcad", "abncd", edges) == tuple("bcand")


@settings(max_examples=25)
@given(st.lists(st.sampled_from(BEST.steps), max_size=60))
def test_whatever_was_kept_every_step_comes_once_and_kept_ones_in_turn(kept: list[str]) -> None:
    found = arranged(kept, BEST.steps, EDGES)
    assert sorted(found) == sorted(BEST.steps)
    unique = list(dict.fromkeys(kept))
    assert [step for step in found if step in unique] == unique


@settings(max_examples=25)
@given(st.sets(st.sampled_from(BEST.steps), max_size=20))
def test_steps_put_back_into_the_best_order_spoil_nothing(taken: set[str]) -> None:
    kept = tuple(step for step in BEST.steps if step not in taken)
    assert arranged(kept, BEST.steps, EDGES) == BEST.steps
    assert judge(arranged(kept, BEST.steps, EDGES), OPS, EDGES) == ()


def test_the_work_follows_the_maker_and_remembers_the_best() -> None:
    own = moved(BEST.steps, "cut outline", 2)
    made = plan_work(msgspec.structs.replace(DEMO, order=own))
    best = plan_work(DEMO)
    assert best.best is None and best.problems == () and best.order.proven
    assert made.order.steps == arranged(own, best.order.steps, made.before)
    assert made.best == best.order and not made.order.proven
    legal = plan_work(msgspec.structs.replace(DEMO, order=moved(BEST.steps, "mark", 0)))
    assert legal.problems == () and legal.order.proven == (legal.order.changes.total == best.order.changes.total)
    assert {p.op for p in made.problems} >= {"side bore treble side 1.1.1"}
    assert made.with_order(DEMO).order == best.order


# ---- names ------------------------------------------------------------------------------------
def test_the_order_follows_a_name() -> None:
    own = moved(BEST.steps, "mark", 0)
    named = rename(msgspec.structs.replace(DEMO, order=own), "slots", "bass slot", "west")
    assert "rout west 1" in named.order and not any("bass slot" in step for step in named.order)
    assert set(named.order) == {op.id for op in operations(named)}


def test_the_longest_name_is_meant() -> None:
    steps = ("rout bass slot 1", "saw slot", "side bore slot.1.1", "mark")
    assert renamed_steps(steps, {"slot": "x", "bass slot": "bass slot"}) == (
        "rout bass slot 1", "saw x", "side bore x.1.1", "mark")


def test_the_order_of_a_mirrored_layout_is_mirrored_and_comes_back() -> None:
    kept = msgspec.structs.replace(DEMO, order=BEST.steps)
    turned = mirror_layout(kept)
    assert set(turned.order) == {op.id for op in operations(turned)}
    assert mirror_layout(turned).order == BEST.steps


def test_a_step_named_twice_is_refused() -> None:
    with pytest.raises(GeometryError, match="mark is used more than once among the steps of the running order"):
        validate(msgspec.structs.replace(stocked(pins=(Pin(id="p", at=(0.0, 30.0)),)), order=("mark", "mark")))
