"""Which steps are done on which piece, and the numbers that they keep."""

import pytest
from msgspec.structs import replace

from geometry.book import (
    begun_steps,
    done_steps,
    made_by,
    not_so_deep,
    open_again,
    otherwise,
    set_minutes,
    start,
    task_of,
    tick_off,
    ticked,
)
from geometry.edits import move_features
from geometry.edits.in_book import exchanged, renamed_in_book
from geometry.layout import Book, Bored, Made, Ramp, Task
from geometry.layout.drilled import drilled
from geometry.routing import drill_waste
from geometry.routing.depth import LIGHT
from geometry.routing.waste import CLEAR
from geometry.sequence import Routing, Trip, operations
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo, finished, stocked, with_waste

BORE = Task(operation="side bore bass side 1.1.1", features=("bass side 1",))
SAW = Task(operation="saw bass slot", features=("bass slot",))


def numbers(book):
    return {id: one.number for id, one in done_steps(replace(demo(), book=book)).items()}


def test_a_step_is_done_on_one_piece_and_keeps_its_first_number() -> None:
    book = tick_off(tick_off(Book(), BORE, 3), SAW, 37)
    assert numbers(tick_off(book, BORE, 4)) == {BORE.operation: 3, SAW.operation: 37}
    other = replace(book, piece="real")
    assert numbers(other) == {} and numbers(tick_off(other, SAW, 1)) == {SAW.operation: 1}
    assert numbers(open_again(tick_off(other, SAW, 1), SAW.operation)) == {}
    assert numbers(replace(open_again(tick_off(other, SAW, 1), SAW.operation), piece="practice")) == numbers(book)


def test_what_took_time_and_is_not_done_is_begun() -> None:
    book = start(set_minutes(Book(), "practice", BORE, 4.0), "practice", SAW, 0.0)
    assert begun_steps(book) == {BORE.operation, SAW.operation}
    assert begun_steps(tick_off(book, BORE, 3)) == {SAW.operation}
    assert begun_steps(replace(book, piece="real")) == frozenset()
    assert begun_steps(set_minutes(Book(), "practice", BORE, 0.0)) == frozenset()
    assert begun_steps(set_minutes(Book(), "practice", BORE, 0.5)) == {BORE.operation}


def test_a_step_follows_its_feature_to_another_name() -> None:
    book = renamed_in_book(tick_off(Book(), BORE, 3), exchanged("bass side 1", "low E"))
    assert ticked(book) == {"side bore low E.1.1"} and ticked(replace(book, piece="real")) == frozenset()


def test_a_hole_ticked_off_on_the_real_piece_is_in_the_wood() -> None:
    real = replace(Book(), piece="real")
    assert drilled(replace(demo(), book=tick_off(tick_off(real, BORE, 3), SAW, 37))) == {"bass side 1"}
    assert drilled(replace(demo(), book=tick_off(Book(), BORE, 3))) == frozenset()


def test_a_step_ticked_again_keeps_its_number_and_has_the_hole_that_is_drilled_now() -> None:
    was, now = (Bored(at=(x, 0.0, 0.0), end=(x, 0.0, 9.0), diameter=6.0) for x in (1.0, 2.0))
    book = tick_off(tick_off(Book(), BORE, 3, Made(hole=was)), BORE, 8, Made(hole=now))
    assert [(one.number, one.hole) for one in book.done] == [(3, now)]
    more = tick_off(tick_off(Book(), SAW, 1), BORE, 3, Made(hole=was))
    assert [one.task for one in tick_off(tick_off(more, BORE, 3, Made(hole=now)), SAW, 5, Made(hole=now)).done] == [SAW, BORE]
    assert tick_off(book, BORE, 8) == book, "what is not known now was known then"


def test_only_what_drills_a_hole_of_its_own_leaves_one() -> None:
    made = [(op.kind, made_by(finished(demo()), op)) for op in operations(finished(demo()))]
    assert {kind for kind, one in made if one.hole} == {"pin hole", "counterbore", "bore", "side bore", "pilot", "edge pilot"}
    assert {kind for kind, one in made if one.cut} == {"waste holes", "saw", "rout", "cut outline", "rout outline"}


def test_what_is_cut_is_kept_with_where_it_begins_and_ends_and_what_it_leaves() -> None:
    """Through slot and outline turned over, in 16 mm of wood: to 10 mm from the face and 7 from the back; and a slot 6 mm deep."""
    def cuts(layout, plans):
        found = {op.id: made_by(layout, op).cut for op in operations(layout, plans)}
        return {id: (cut.begins, cut.ends, cut.floor, cut.light) for id, cut in found.items() if cut}

    plans = {"slot": with_waste(TURNED), "outline": TURNED}
    assert cuts(stocked(), plans) == {
        "waste holes slot": (0.0, None, False, CLEAR), "saw slot": (0.0, None, False, LIGHT), "rout slot 1": (0.0, 10.0, False, 0.0),
        "rout slot 2": (9.0, None, False, 0.0), "cut outline": (0.0, None, False, LIGHT), "rout outline 1": (0.0, 10.0, False, 0.0),
        "rout outline 2": (9.0, None, False, 0.0)}
    slot = replace(stocked().slots[0], depth=6.0)
    blind = stocked(slots=(slot, replace(slot, id="other", shape=replace(slot.shape, nut_end=(-17.0, 100.0), tip_end=(-17.0, 150.0)))))
    passes = Routing((Trip("face", "12 shank bearing", None, 0.0, 4.0), Trip("face", "6 straight", None, 4.0, 6.0)),
                     drill_waste(slot, blind.blank, blind.rack))
    found = cuts(blind, {"slot": passes, "other": passes, "outline": THROUGH})
    assert found["rout slot 1"] == (0.0, 4.0, False, 0.0) and found["rout slot 2"] == (4.0, 6.0, True, 0.0)
    stop = next(op.stop for op in operations(blind, {"slot": passes, "other": passes, "outline": THROUGH}) if op.kind == "waste holes")
    assert found["waste holes slot"] == (0.0, stop, False, CLEAR) and 0 < stop < 6.0
    other = next(op for op in operations(blind) if op.id.startswith("rout other"))
    assert made_by(blind, other).cut.shape == blind.slots[1].shape
    sloping = stocked(slots=(replace(stocked().slots[0], ramp=Ramp(length=12.0, depth=4.0)),))
    (ramp,) = [op for op in operations(sloping) if op.kind == "ramp"]
    assert (cut := made_by(sloping, ramp).cut).ramp == sloping.slots[0].ramp and cut.shape == sloping.slots[0].shape


@pytest.mark.parametrize(("depths", "short"), [
    (((0.0, None),), False), (((0.0, 8.0),), True), (((0.0, 8.0), (8.0, None)), False), (((0.0, 8.0), (9.0, None)), True),
    (((0.0, 8.0), (0.0, 5.0)), True), (((0.0, 8.0), (4.0, 12.0), (12.0, None)), False), (((0.0, 8.0), (9.0, 16.0), (7.0, 9.0)), True)])
def test_a_pass_is_not_so_deep_where_what_was_routed_leaves_wood(depths, short) -> None:
    """The plan goes through at once. What ends at 16 mm has a floor; what is open at the back has none."""
    layout = demo()
    (op,) = [op for op in operations(layout) if op.id == "rout bass slot 1"]
    made, book = made_by(layout, op), Book()
    for number, (begins, ends) in enumerate(depths, 1):
        task = Task(operation=f"rout bass slot {number}", features=("bass slot",))
        book = tick_off(book, task, number, Made(cut=replace(made.cut, begins=begins, ends=ends)))
    saw = Task(operation="saw bass slot", features=("bass slot",))
    book = tick_off(book, saw, 9, Made(cut=replace(made.cut, begins=0.0, ends=None)))
    job = replace(layout, book=book)
    assert (op.id in not_so_deep(job, [op])) == short and (op.id in done_steps(job, [op])) == (not short)
    assert op.id in done_steps(job)


def test_what_is_drilled_otherwise_is_told_by_its_operation() -> None:
    was = demo()
    book = Book()
    for number, op in enumerate(operations(was), 1):
        book = tick_off(book, task_of(op), number, made_by(was, op))
    moved = move_features(was, ["treble face 2"], (0.0, 1.0))
    assert otherwise(replace(was, book=book)) == {}
    assert {id.split(" ", 1)[1][:13] for id in otherwise(replace(moved, book=book))} == {"treble face 1", "treble face 2", "treble face 3"}, "a row moves together"
    assert otherwise(replace(moved, book=replace(book, piece="real"))) == {}
