"""Which steps are done on which piece, and the numbers that they keep."""

from msgspec.structs import replace

from geometry.book import (
    begun_steps,
    done_steps,
    made_by,
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
from geometry.layout import Book, Bored, Made, Task
from geometry.layout.drilled import drilled
from geometry.sequence import Wishes, operations
from tests.geometry.sequence.specimens import demo

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


def test_a_step_follows_its_feature_to_another_name() -> None:
    book = renamed_in_book(tick_off(Book(), BORE, 3), exchanged("bass side 1", "low E"))
    assert ticked(book) == {"side bore low E.1.1"}


def test_a_hole_ticked_off_on_the_real_piece_is_in_the_wood() -> None:
    real = replace(Book(), piece="real")
    assert drilled(replace(demo(), book=tick_off(tick_off(real, BORE, 3), SAW, 37))) == {"bass side 1"}
    assert drilled(replace(demo(), book=tick_off(Book(), BORE, 3))) == frozenset()


def test_a_step_ticked_again_keeps_its_number_and_has_the_hole_that_is_drilled_now() -> None:
    was, now = (Bored(at=(x, 0.0, 0.0), end=(x, 0.0, 9.0), diameter=6.0) for x in (1.0, 2.0))
    book = tick_off(tick_off(Book(), BORE, 3, Made(hole=was)), BORE, 8, Made(hole=now))
    assert [(one.number, one.hole) for one in book.done] == [(3, now)]
    assert tick_off(book, BORE, 8) == book, "what is not known now was known then"


def test_only_what_drills_a_hole_of_its_own_leaves_one() -> None:
    made = [(op.kind, made_by(demo(), op)) for op in operations(demo(), wishes=Wishes(finish=True))]
    assert {kind for kind, one in made if one.hole} == {"pin hole", "counterbore", "bore", "side bore", "pilot", "edge pilot"}
    assert {kind for kind, one in made if one.cut} == {"waste holes", "saw", "rout", "cut outline", "rout outline"}


def test_what_is_drilled_otherwise_is_told_by_its_operation() -> None:
    was = demo()
    book = Book()
    for number, op in enumerate(operations(was), 1):
        book = tick_off(book, task_of(op), number, made_by(was, op))
    moved = move_features(was, ["treble face 2"], (0.0, 1.0))
    assert otherwise(replace(was, book=book)) == {}
    assert {id.split(" ", 1)[1][:13] for id in otherwise(replace(moved, book=book))} == {"treble face 1", "treble face 2", "treble face 3"}, "a row moves together"
    assert otherwise(replace(moved, book=replace(book, piece="real"))) == {}
