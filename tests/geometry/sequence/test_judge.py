"""What the maker is told when he drags an operation to another place."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.sequence import best_order, judge, legal_span, moved, operations, precedence
from tests.geometry.sequence.specimens import THROUGH, before, demo, stocked, with_waste, work

PLANS = {"slot": with_waste(THROUGH), "outline": THROUGH}
LAYOUT = stocked()
OPS = operations(LAYOUT, PLANS)
EDGES = precedence(LAYOUT, OPS)
STEPS = best_order(OPS, EDGES).steps


def test_the_best_order_has_no_problem() -> None:
    assert judge(STEPS, OPS, EDGES) == ()


def test_a_side_bore_dragged_behind_the_slot_is_unsafe_and_behind_the_outline_impossible() -> None:
    late = moved(STEPS, "side bore flank.1.1", STEPS.index("clean up") - 1)
    impossible, unsafe = (p for p in judge(late, OPS, EDGES) if p.op == "side bore flank.1.1")
    assert (impossible.grade, unsafe.grade) == ("impossible", "unsafe")
    assert impossible.others == ("cut outline", "rout outline 1")
    assert impossible.text.startswith("“Side bore flank” comes after “Saw the outline” and 1 more. Once the outline is cut")
    assert impossible.protects == "the square treble edge"
    assert unsafe.others == ("waste holes slot", "saw slot", "rout slot 1")
    assert "break out into slot" in unsafe.text


def test_the_outline_dragged_forward_harms_what_comes_after_it() -> None:
    early = moved(STEPS, "cut outline", STEPS.index("mark") + 1)
    harmed = {p.op: p.grade for p in reversed(judge(early, OPS, EDGES))}
    assert harmed["side bore flank.1.1"] == "impossible"
    assert harmed["rout slot 1"] == "unwise"
    assert "template" not in harmed


def test_cleaning_up_first_takes_the_marks_away() -> None:
    problems = judge(moved(STEPS, "clean up", 2), OPS, EDGES)
    texts = [p.text for p in problems if p.op == "counterbore front.1.1"]
    assert texts == ["“Counterbore front” comes after “Clean up”. Cleaning up takes the papers off, and their marks with them."]


def test_an_operation_that_comes_too_early_is_itself_harmed() -> None:
    problems = judge(moved(STEPS, "rout slot 1", 0), OPS, EDGES)
    assert {p.op for p in problems} == {"rout slot 1", "side bore flank.1.1"}
    assert [p.grade for p in problems] == sorted((p.grade for p in problems), key=("impossible", "unsafe", "unwise").index)


def test_what_is_left_out_or_comes_twice_is_said() -> None:
    problems = judge((*STEPS[1:], STEPS[-1]), OPS, EDGES)
    assert [(p.grade, p.text) for p in problems if p.grade in ("left out", "twice")] == [
        ("left out", "“Make the template” is left out of the order."), ("twice", "“Clean up” comes 2 times in the order.")]


def test_a_step_that_nobody_knows_is_a_programmers_error() -> None:
    with pytest.raises(KeyError):
        judge(("no such step",), OPS, EDGES)


def test_moving_there_and_back_changes_nothing() -> None:
    at = STEPS.index("saw slot")
    assert moved(moved(STEPS, "saw slot", 0), "saw slot", at) == STEPS
    assert moved(STEPS, "saw slot", 999)[-1] == "saw slot"
    assert moved(STEPS, "saw slot", -5)[0] == "saw slot"


@given(st.data())
@settings(max_examples=60)
def test_inside_its_legal_span_an_operation_makes_no_problem_and_outside_it_does(data: st.DataObject) -> None:
    id = data.draw(st.sampled_from(STEPS))
    to = data.draw(st.integers(0, len(STEPS) - 1))
    first, last = legal_span(STEPS, id, EDGES)
    assert first <= STEPS.index(id) <= last
    assert (judge(moved(STEPS, id, to), OPS, EDGES) == ()) == (first <= to <= last)


def test_between_two_that_stand_wrong_there_is_no_legal_span() -> None:
    edges = [before("a", "b"), before("b", "c")]
    first, last = legal_span(("c", "b", "a"), "b", edges)
    assert first > last


def test_every_drag_in_the_demo_is_judged_with_a_reason() -> None:
    layout = demo()
    ops = operations(layout)
    edges = precedence(layout, ops)
    steps = best_order(ops, edges).steps
    for id in steps:
        for to in (0, len(steps) - 1):
            order = moved(steps, id, to)
            place = {step: i for i, step in enumerate(order)}
            problems = judge(order, ops, edges)
            broken = {e.harmed for e in edges if place[e.first] > place[e.then]}
            assert {p.op for p in problems} == broken
            assert all(p.text.count(".") >= 2 and p.protects and p.others for p in problems)


def test_made_up_edges_name_the_harmed_one() -> None:
    ops = [work("a"), work("b")]
    (problem,) = judge(("b", "a"), ops, [before("a", "b")])
    assert (problem.op, problem.others, problem.text) == ("b", ("a",), "“B” comes before “A”. a first.")
