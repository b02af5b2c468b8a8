"""Names of what is new: none that the job book tells of, whoever makes the feature."""

import pytest
from msgspec.structs import replace

from geometry import edits
from geometry.book import add_remark, put_reading, set_minutes, start, task_of, tick_off, ticked
from geometry.curves import shift
from geometry.edits.clipping import clip, paste
from geometry.edits.hardware import add_ear
from geometry.edits.imported_openings import with_openings
from geometry.errors import GeometryError
from geometry.layout import Book, Headstock, Pin, Reading, Remark, Task, feature_ids, slot_path
from geometry.layout.names import Names, feature_names, told_of
from geometry.sequence import operations, plan_pins
from tests.geometry.edits.heads import demo, plain

TASK = Task(operation="bore gone 1.1.1", features=("gone 1",))
LAYOUT = demo()
SLOT = LAYOUT.slots[0].id


def worked(layout: Headstock) -> Headstock:
    """Every step of the layout is done, and then everything is taken out of it."""
    book = Book()
    for number, op in enumerate(operations(layout), 1):
        book = tick_off(book, task_of(op), number)
    return replace(edits.remove_features(layout, feature_ids(layout)), book=book)


@pytest.mark.parametrize("book", [
    tick_off(Book(), TASK, 1), set_minutes(Book(), "real", TASK, 3.0), start(Book(), "real", TASK, 1.7e9),
    add_remark(Book(), Remark(piece="real", text="a", on="gone 1")), add_remark(Book(), Remark(piece="real", text="a", task=TASK)),
    put_reading(Book(), Reading(piece="real", drilling="gone 1.1.1", what="x", value=1.0)),
    put_reading(Book(), Reading(piece="real", drilling="gone 1.2", what="x", value=1.0)),
    put_reading(Book(), Reading(piece="real", drilling="there.1", what="distance", value=1.0, other="gone 1.1"))])
def test_whatever_the_book_tells_of_is_taken(book):
    assert "gone 1" in told_of(book)
    names = feature_names(replace(plain(), book=book))
    assert [names.numbered("gone"), names.numbered("gone"), names.alike("gone 1"), names.alike("free")] == ["gone 2", "gone 3", "gone 4", "free"]


def test_a_long_name_keeps_its_number_within_what_a_file_takes():
    names = Names(("a" * 60, "a" * 54 + " 2"))
    assert names.alike("a" * 60) == "a" * 54 + " 3"
    assert names.numbered("b" * 60) == "b" * 54 + " 1"


def test_no_two_features_have_holes_of_one_name():
    layout = edits.rename(LAYOUT, "tuners", LAYOUT.tuners[0].id, "peg")
    pin = layout.pins[0].id
    for name in ("peg.1", "peg.12.3"):
        with pytest.raises(GeometryError, match="mistaken for peg,"):
            edits.rename(layout, "pins", pin, name)
        assert feature_names(layout).alike(name) == f"{name} 2"
    assert edits.rename(layout, "pins", pin, "peg.1.2.3").pins[0].id == "peg.1.2.3"
    dotted = edits.rename(LAYOUT, "pins", pin, "peg.1")
    with pytest.raises(GeometryError, match="mistaken for peg.1,"):
        edits.rename(dotted, "tuners", dotted.tuners[0].id, "peg")
    assert edits.rename(dotted, "pins", "peg.1", "peg").pins[0].id == "peg"
    assert feature_names(dotted).alike("peg") == "peg 2"


def square(layout: Headstock) -> list:
    return [(slot_path(slot), "slot") for slot in layout.slots]


@pytest.mark.parametrize("made", [
    lambda gone: paste(gone, clip(LAYOUT, feature_ids(LAYOUT))),
    lambda gone: edits.add_straight_slot(edits.add_straight_slot(gone, (-20.0, 50.0), (-20.0, 90.0), 8.0), (0.0, 50.0), (0.0, 90.0), 8.0),
    lambda gone: edits.add_drawn_slot(gone, slot_path(LAYOUT.slots[0])),
    lambda gone: edits.add_pin(edits.add_hole(gone, (0.0, 100.0), 4.0), (0.0, 120.0)),
    lambda gone: edits.add_truss_rod_pocket(gone),
    lambda gone: add_ear(gone, "bass"),
    lambda gone: edits.add_tuner(gone, LAYOUT.patterns[0].id, (20.0, 100.0)),
    lambda gone: with_openings(gone, square(LAYOUT), shift(0.0, 0.0)),
    lambda gone: replace(gone, pins=plan_pins(gone).pins),
    lambda gone: edits.mirror_copies(edits.add_straight_slot(gone, (-20.0, 50.0), (-20.0, 90.0), 8.0), ["bass slot 2"]),
    lambda gone: edits.duplicate(edits.add_pin(gone, (0.0, 100.0)), ["pin 1"]),
], ids=["pasted", "straight slots", "drawn slot", "hole and pin", "pocket", "ear", "tuner", "imported", "pins", "mirrored", "twice"])
def test_nothing_new_is_done_already(made):
    gone = worked(LAYOUT)
    after = made(gone)
    new = edits.new_ids(gone, after)
    assert new and told_of(gone.book).isdisjoint(new)
    assert not {op.id for op in operations(after) if op.features and set(op.features) & set(new)} & ticked(after.book)


def test_copies_of_the_other_side_are_not_drilled_as_those_they_replace_were():
    book = Book()
    for op in operations(LAYOUT):
        book = tick_off(book, task_of(op), 1)
    made = edits.copy_side(replace(LAYOUT, book=book), "treble", "bass")
    assert {id for id in feature_ids(made) if id not in feature_ids(LAYOUT)} == set(feature_ids(made)) - told_of(book) != set()
    assert not [id for id in edits.side_features(made, "bass") if id in told_of(book)]


def test_a_pin_proposed_where_one_stands_is_that_one_and_elsewhere_another():
    first, second = plan_pins(LAYOUT).pins
    own = replace(LAYOUT, pins=(replace(first, id="low"), Pin(id="tip pin", at=(0.0, 100.0))))
    task = Task(operation="pin hole tip pin.1", features=("tip pin",))
    own = replace(own, book=tick_off(Book(), task, 1))
    assert [pin.id for pin in plan_pins(own).pins] == ["low", "tip pin 2"]
    assert [pin.id for pin in plan_pins(replace(own, book=Book())).pins] == ["low", "tip pin"]
