"""What is written into the job book outlives every undo, is saved, and can be taken back on its own."""

import json
from decimal import Decimal

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from app.document import Document
from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.formats import headstock
from app.formats.errors import FormatError
from app.window.demo import demo
from geometry.book import add_remark, put_price, put_reading, remove_remark, set_minutes, start, stop, tick_off, ticked
from geometry.edits import copy_side, mirror_layout, remove_features, rename
from geometry.errors import GeometryError
from geometry.layout import Book, Price, Reading, Remark, Task

SAW = Task(operation="saw bass slot", title="Saw out bass slot", rate="saw_100", features=("bass slot",), planned=9.0)


def note(text, on=None):
    return lambda book: add_remark(book, Remark(piece="practice", text=text, on=on))


def texts(document):
    return [one.text for one in document.book.remarks]


@pytest.fixture
def document(qapp):
    made = Document(demo())
    yield made
    made.deleteLater()


def test_undo_and_redo_of_steps_leave_the_book_alone(document):
    document.apply("Rename", replace(document.layout, name="One"))
    document.record("A note", note("first"))
    document.apply("Rename", replace(document.layout, name="Two"))
    document.record("A note", note("second"))
    assert document.undo() == "Rename"
    assert document.undo() == "Rename"
    assert (document.layout.name, texts(document)) == (demo().name, ["first", "second"])
    assert document.redo() == "Rename"
    assert (document.layout.name, texts(document)) == ("One", ["first", "second"])
    assert document.unsaved


def test_an_entry_is_no_step_and_is_taken_back_on_its_own(document):
    document.record("A note", note("first"))
    assert document.history.undo_name is None
    document.record("A note", note("second"))
    assert document.take_back() == "A note"
    assert texts(document) == ["first"]
    assert document.take_back() == "A note"
    assert document.take_back() is None
    assert not document.unsaved


def test_a_step_worked_out_before_an_entry_does_not_lose_it(document):
    stale = replace(document.layout, name="worked out slowly")
    document.record("A note", note("meanwhile"))
    document.apply("Import", stale)
    assert (document.layout.name, texts(document)) == ("worked out slowly", ["meanwhile"])


def test_an_entry_while_something_is_dragged_is_kept(document):
    dragged = replace(document.layout, name="dragged")
    document.preview(dragged)
    document.record("A note", note("meanwhile"))
    assert document.shown.name == "dragged"
    assert [one.text for one in document.shown.book.remarks] == ["meanwhile"]
    document.apply("Drag", dragged)
    assert texts(document) == ["meanwhile"]


def test_a_refused_entry_changes_nothing(document):
    before = document.layout

    def wrong(book):
        raise GeometryError("No.")
    with pytest.raises(GeometryError):
        document.record("Wrong", wrong)
    assert document.layout is before


def test_names_in_the_book_follow_a_renaming_and_its_undo(document):
    document.record("Time", lambda book: set_minutes(book, "real", SAW, 8.0))
    document.record("Note", note("went well", "bass slot"))
    document.apply("Rename", rename(document.layout, "slots", "bass slot", "long slot"))
    time, remark = document.book.times[0], document.book.remarks[0]
    assert (time.task.operation, time.task.features, remark.on) == ("saw long slot", ("long slot",), "long slot")
    document.undo()
    assert (document.book.times[0].task.operation, document.book.remarks[0].on) == ("saw bass slot", "bass slot")


def rout(slot):
    return Task(operation=f"rout {slot}", title=f"Rout {slot}", features=(slot,))


def timed(document):
    """Minutes by operation, of the book and of the file that is saved and opened again."""
    again = headstock.decode(headstock.encode(document.layout))
    assert again == document.layout
    return [(one.task.operation, one.minutes) for one in again.book.times]


def test_a_slot_takes_no_name_of_one_that_is_gone_and_was_worked_at(document):
    document.record("Time", lambda book: set_minutes(book, "real", rout("bass slot"), 8.0))
    document.apply("Remove", remove_features(document.layout, ["bass slot"]))
    with pytest.raises(GeometryError, match="another bass slot, which is gone"):
        rename(document.layout, "slots", "treble slot", "bass slot")
    document.take_back()
    assert rename(document.layout, "slots", "treble slot", "bass slot").slots[0].id == "bass slot"


SMALL = replace(demo(), tuners=(), strings=(), rows=(), patterns=(), pins=(), holes=(), order=(), routes=())
"""Two slots and nothing else, so that steps are quick."""


def test_work_on_a_slot_that_is_gone_later_counts_for_none_that_has_its_name_then(document):
    document.apply("Remove", remove_features(document.layout, ["bass slot"]))
    document.apply("Rename", rename(document.layout, "slots", "treble slot", "bass slot"))
    document.go(0)
    for slot, minutes in (("bass slot", 8.0), ("treble slot", 5.0)):
        document.record("Done", lambda book, slot=slot: tick_off(replace(book, piece="real"), rout(slot), 1))
        document.record("Time", lambda book, slot=slot, minutes=minutes: set_minutes(book, "real", rout(slot), minutes))
    assert timed(document) == [("rout bass slot", 8.0), ("rout treble slot", 5.0)]
    document.go(2)
    assert [slot.id for slot in document.layout.slots] == ["bass slot"]
    assert timed(document) == [("rout treble slot", 8.0), ("rout bass slot", 5.0)], "the slot that is there has five minutes"
    assert len(ticked(document.book)) == 2
    for minutes in (20.0, None):
        document.record("Time", lambda book, minutes=minutes: set_minutes(book, "real", rout("bass slot"), minutes))
        document.go(0)
        assert timed(document) == [("rout bass slot", 8.0), *([("rout treble slot", minutes)] if minutes else [])]
        document.go(2)


def test_mirroring_exchanges_the_sides_of_what_is_gone_too(document):
    document.record("Done", lambda book: tick_off(book, rout("bass slot"), 1))
    document.apply("Remove", remove_features(document.layout, ["bass slot"]))
    document.apply("Mirror", mirror_layout(document.layout))
    assert [slot.id for slot in document.layout.slots] == ["bass slot"]
    assert ticked(document.book) == {"rout treble slot"}, "the slot that is there is not done"
    document.take_back()
    document.undo()
    assert ticked(document.book) == set()


def test_one_side_copied_to_the_other_is_no_mirroring(document):
    assert [slot.id for slot in document.layout.slots] == ["bass slot", "treble slot"]
    document.apply("Copy", copy_side(document.layout, "treble", "bass"))
    assert [slot.id for slot in document.layout.slots] == ["treble slot", "bass slot"]
    document.record("Done", lambda book: tick_off(book, rout("treble slot"), 1))
    document.undo()
    assert ticked(document.book) == {"rout treble slot"}, "that slot is the same before and after"
    document.apply("Mirror", mirror_layout(document.layout))
    assert ticked(document.book) == {"rout bass slot"}
    document.take_back()
    assert ticked(document.book) == set()


def test_what_is_set_anew_in_the_very_place_of_what_was_done_is_not_that_renamed(document):
    document.apply("Copy", copy_side(document.layout, "bass", "treble"))
    document.record("Done", lambda book: tick_off(book, rout("treble slot"), 1))
    document.apply("Copy", copy_side(document.layout, "bass", "treble"))
    assert [slot.id for slot in document.layout.slots] == ["bass slot", "treble slot 2"]
    document.record("Done", lambda book: tick_off(book, rout("treble slot 2"), 1))
    document.undo()
    assert ticked(document.book) == {"rout treble slot", "rout treble slot 2"}, "each goes by its own name"


def test_what_another_file_s_book_has_is_not_there_twice_after_an_entry(document):
    document.record("Done", lambda book: tick_off(book, rout("bass slot"), 1))
    document.record("Time", lambda book: set_minutes(book, book.piece, rout("bass slot"), 4.0))
    older = replace(document.layout, book=replace(document.book, done=(), times=()))
    document.apply("Open the version before", older)
    document.record("Done", lambda book: tick_off(book, rout("bass slot"), 2))
    document.record("Time", lambda book: set_minutes(book, book.piece, rout("bass slot"), 7.0))
    document.undo()
    assert [one.number for one in document.book.done] == [2] and timed(document) == [("rout bass slot", 7.0)]


def test_what_is_written_after_a_renaming_goes_by_the_earlier_name_when_it_is_undone(document):
    for was, now in (("bass slot", "long slot"), ("treble slot", "bass slot")):
        document.apply("Rename", rename(document.layout, "slots", was, now))
    document.record("Time", lambda book: set_minutes(book, "real", rout("bass slot"), 5.0))
    document.record("Note", note("went well", "long slot"))
    document.record("Start", lambda book: start(book, "real", rout("long slot"), 1_700_000_000.0))
    document.record("Read", lambda book: put_reading(book, Reading(piece="real", drilling="long slot.1", what="depth", value=3.0)))
    found = []
    for _ in range(3):
        book = document.book
        found.append((book.times[0].task.operation, book.remarks[0].on, book.clock.task.features, book.readings[0].drilling))
        document.undo()
    assert found == [("rout bass slot", "long slot", ("long slot",), "long slot.1"),
                     ("rout treble slot", "long slot", ("long slot",), "long slot.1"),
                     ("rout treble slot", "bass slot", ("bass slot",), "bass slot.1")]
    document.go(2)
    assert document.book.times[0].task.operation == "rout bass slot"


def test_what_is_written_before_a_mirroring_is_redone_goes_by_the_mirrored_name(document):
    document.apply("Mirror", mirror_layout(document.layout))
    document.undo()
    document.record("Time", lambda book: set_minutes(book, "real", rout("bass slot"), 5.0))
    document.redo()
    assert timed(document) == [("rout treble slot", 5.0)]


def test_a_note_struck_out_of_another_file_s_book_takes_none_of_its_notes(document):
    for text in "abc":
        document.record("Note", note(text))
    older = replace(document.layout, name="older", book=replace(document.book, remarks=document.book.remarks[1:]))
    document.apply("Open the version before", older)
    document.record("Strike", lambda book: remove_remark(book, 0))
    assert texts(document) == ["c"]
    document.undo()
    assert texts(document) == ["a", "c"], "b is struck out there too, and nothing else"
    document.take_back()
    assert texts(document) == ["a", "b", "c"]
    document.redo()
    assert texts(document) == ["b", "c"]


def test_what_was_struck_out_before_a_mirroring_comes_back_under_the_mirrored_name(document):
    document.record("Note", note("a", "bass slot"))
    document.record("Strike", lambda book: remove_remark(book, 0))
    document.apply("Mirror", mirror_layout(document.layout))
    document.take_back()
    assert document.book.remarks[0].on == "treble slot"
    document.undo()
    assert document.book.remarks[0].on == "bass slot"


def test_a_step_from_before_a_renaming_and_an_entry_loses_neither_the_entry(document):
    old = document.layout
    document.apply("Rename", rename(document.layout, "slots", "bass slot", "long slot"))
    document.record("Note", note("written meanwhile"))
    document.apply("Long work", replace(old, name="worked out from what was there before"))
    assert texts(document) == ["written meanwhile"]


POOL = ["bass slot", "treble slot", "a", "b"]


def step(document, kind, first, second):
    """A renaming, a removal, a mirroring, or a way through the history; False for a refused one, which does nothing."""
    try:
        if kind == "rename":
            document.apply(kind, rename(document.layout, "slots", first, second))
        elif kind == "remove":
            document.apply(kind, remove_features(document.layout, [first]))
        elif kind == "mirror":
            document.apply(kind, mirror_layout(document.layout))
        else:
            getattr(document, kind)()
    except GeometryError:
        return False
    return True


STEPS = st.tuples(st.sampled_from(["rename", "rename", "rename", "remove", "mirror", "undo", "redo"]), st.sampled_from(POOL), st.sampled_from(POOL))
ENTRIES = st.tuples(st.sampled_from(["time", "time", "note", "strike", "read", "clock", "piece"]), st.sampled_from(POOL),
                    st.sampled_from([None, 1.0, 2.0, 4.0]))


def entry(kind, slot, number):
    """What is written down."""
    def change(book):
        if kind == "time":
            return set_minutes(book, "real", rout(slot), number)
        if kind == "note":
            return add_remark(book, Remark(piece="real", text=f"{number}", on=slot, task=rout(slot)))
        if kind == "strike":
            return remove_remark(book, 0)
        if kind == "read":
            return put_reading(book, Reading(piece="real", drilling=f"{slot}.1", what="depth", value=number or 0.0))
        if kind == "clock":
            return start(book, "real", rout(slot), 1.7e9) if book.clock is None else stop(book, 1.7e9 + 60)
        return replace(book, piece="real" if book.piece == "practice" else "practice")
    return change


@given(st.lists(STEPS | ENTRIES, max_size=14), ENTRIES, st.lists(STEPS, max_size=8))
def test_an_entry_taken_back_is_as_if_it_had_never_been_written(first, last, then):
    def written(document, word):
        if word[0] in ("rename", "remove", "mirror", "undo", "redo"):
            step(document, *word)
        else:
            document.record(word[0], entry(*word))

    plain, other = Document(SMALL), Document(SMALL)
    for document in (plain, other):
        for word in first:
            written(document, word)
    written(plain, last)
    changed = plain.book != other.book
    for word in then:
        if step(plain, *word):  # else the entry may be what is in the way: a name of which the book tells is not given
            step(other, *word)
    if changed:
        assert plain.take_back() == last[0]
    assert plain.history.names == other.history.names
    for layout, same in zip(plain.history.layouts, other.history.layouts, strict=True):
        assert layout == same
        headstock.decode(headstock.encode(layout))


def test_minutes_that_are_taken_back_go_by_the_names_of_now(document):
    for slot, minutes in (("treble slot", 5.0), ("bass slot", 3.0), ("treble slot", 7.0)):
        document.record("Time", lambda book, slot=slot, minutes=minutes: set_minutes(book, "real", rout(slot), minutes))
    for was, now in (("treble slot", "long slot"), ("bass slot", "treble slot")):
        document.apply("Rename", rename(document.layout, "slots", was, now))
    assert timed(document) == [("rout long slot", 7.0), ("rout treble slot", 3.0)]
    document.take_back()
    assert timed(document) == [("rout long slot", 5.0), ("rout treble slot", 3.0)]
    document.take_back()
    assert timed(document) == [("rout long slot", 5.0)]


def test_a_renaming_touches_no_longer_name_that_begins_alike(document):
    bore = Task(operation="side bore bass side 1.1.1", title="x", features=("bass side 1",))
    document.record("Time", lambda book: set_minutes(book, "real", bore, 8.0))
    document.record("Read", lambda book: replace(book, readings=(
        Reading(piece="real", drilling="bass side 1.1.1", what="depth", value=3.0, other="bass side 2.1"),)))
    layout = rename(document.layout, "tuners", "bass side 1", "A.1")
    assert layout.book.times[0].task.operation == "side bore A.1.1.1"
    assert (layout.book.readings[0].drilling, layout.book.readings[0].other) == ("A.1.1.1", "bass side 2.1")
    assert mirror_layout(mirror_layout(document.layout)).book == document.book


def test_a_note_outlives_the_feature_that_it_was_pinned_to(document):
    document.record("Note", note("too close", "nut pin"))
    document.apply("Remove", remove_features(document.layout, ["nut pin"]))
    assert texts(document) == ["too close"]


def test_the_book_is_in_the_file_and_in_the_journal(document, tmp_path):
    document.record("Start", lambda book: start(book, "practice", SAW, 1_700_000_000.0))
    document.record("Cost", lambda book: put_price(book, None, Price(piece="real", part="wood", each=Decimal("12.50"))))
    document.save(tmp_path / "a.headstock.json")
    again = headstock.read(tmp_path / "a.headstock.json")
    assert again == document.layout
    assert again.book.clock.since == 1_700_000_000.0
    assert str(again.book.prices[0].each) == "12.50"
    journal = Journal(tmp_path / "journal")
    journal.note(document.layout, None)
    journal.write()
    journal._lock.unlock()
    assert leftovers(tmp_path / "journal")[0].layout.book == document.book
    journal.end()


def test_an_older_file_without_a_book_opens_with_an_empty_one():
    plain = json.loads(headstock.encode(demo()))
    del plain["book"]
    assert headstock.decode(json.dumps(plain).encode()).book == Book()


@pytest.mark.parametrize(("book", "word"), [
    ({"prices": [{"piece": "real", "part": "x", "each": "NaN"}]}, "not an amount"),
    ({"prices": [{"piece": "real", "part": "x", "each": "1e99"}]}, "not an amount"),
    ({"prices": [{"piece": "real", "part": "x", "each": "a"}]}, "prices"),
    ({"times": [{"piece": "real", "task": {"operation": "a"}, "minutes": 1}] * 2}, "more than once"),
    ({"times": [{"piece": "real", "task": {"operation": "a"}, "minutes": -1}]}, "minutes"),
    ({"pages": 3}, "pages")])
def test_a_spoiled_book_is_refused_with_its_place(book, word):
    plain = json.loads(headstock.encode(demo())) | {"book": book}
    with pytest.raises(FormatError, match=word):
        headstock.decode(json.dumps(plain).encode())


@given(st.lists(st.sampled_from(["step", "write", "undo", "redo", "back"]), max_size=40))
def test_whatever_is_done_the_book_is_what_was_written(words):
    document, written = Document(demo()), []
    for i, word in enumerate(words):
        if word == "step":
            document.apply("Step", replace(document.layout, name=f"step {i}"))
        elif word == "write":
            document.record("Note", note(str(i)))
            written.append(str(i))
        elif word == "back":
            assert (document.take_back() is None) == (not written)
            written = written[:-1]
        else:
            getattr(document, word)()
        assert texts(document) == written


def test_the_schema_knows_the_book():
    schema = json.loads(headstock.schema_text())
    assert "book" in schema["$defs"]["Headstock"]["properties"]
    assert msgspec.convert(msgspec.to_builtins(Book()), Book) == Book()
