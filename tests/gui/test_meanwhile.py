"""What a maker does while something is being worked out beside the window is neither lost nor done to something else."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.window import ask
from app.window.dialogs.offset_dialog import OffsetDialog
from app.window.front.numbers_dialog import NumbersDialog
from geometry.book.edits import set_minutes
from geometry.edits import move_features
from geometry.edits.fields import set_field
from geometry.edits.strings import set_post
from tests.gui.hands import field, fill, typed
from tests.waiting import press, until


@pytest.fixture(autouse=True)
def held(beside, bench):
    """Until a test lets go of it, whatever works beside the window waits."""
    beside.set()
    return beside


@pytest.fixture
def entered(bench, held):
    """Goes to a stage and waits for its first answer; from then on what works beside the window waits."""
    def enter(key: str):
        bench.window.set_stage(key)
        room = bench.window.rooms[key]
        until(lambda: not room.errand.busy)
        held.clear()
        return room
    return enter


def changed(bench):
    """Another layout, as by a drag: what is on show of the plan is of the one before."""
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    return bench.layout


def test_rates_typed_one_after_the_other_are_all_kept(bench, entered):
    order = entered("order")
    press(order.panel.tabs.button(1))
    fill(field(order.panel._rates, "Drill a bore from the side"), "30")
    assert order.errand.busy
    fill(field(order.panel._rates, "Drill a hole"), "7")
    assert (bench.layout.rates.side_bore, bench.layout.rates.hole) == (30.0, 7.0)


def test_what_is_typed_of_the_template_is_typed_into_the_layout_as_it_is(bench, entered):
    router = entered("router")
    changed(bench)
    before = bench.layout
    assert router.errand.busy and router.planned.layout is not before
    fill(field(router.panel.form, "Thickness"), "9")
    assert bench.layout == set_field(before, ("template", "thickness"), 9.0)


def test_a_template_is_not_written_for_a_plan_of_another_layout(bench, entered, held, monkeypatch):
    asked = []
    monkeypatch.setattr(ask, "save_file", lambda *_: asked.append(1))
    router = entered("router")
    changed(bench)
    press(router.panel.write_template)
    assert not asked and "planned anew" in bench.window.foot.said
    held.set()
    until(lambda: router.planned.layout is bench.layout)
    press(router.panel.write_template)
    assert asked


def test_pages_of_another_layout_are_not_printed(bench, entered, held, monkeypatch):
    printed = []
    monkeypatch.setattr("app.printing.job.print_sheets", lambda window, pages, *_: printed.append(pages) or "Printed")
    sheets = entered("sheets")
    old = sheets.pages
    changed(bench)
    bench.window.commands.run("print")
    assert printed == [] and "laid out anew" in bench.window.foot.said and sheets.pages is old
    held.set()
    until(lambda: not sheets.errand.busy)
    bench.window.commands.run("print")
    assert printed == [sheets.pages] and sheets.pages is not old


def test_what_would_do_is_taken_only_for_the_numbers_that_stand_there(bench, held):
    dialog = NumbersDialog(bench.window)
    dialog.show()
    until(lambda: dialog.settled)
    dialog._fields["length"].sent.emit(120.0)
    until(lambda: dialog.settled and dialog._cure.isVisible())
    held.clear()
    dialog._fields["nut_width"].sent.emit(44.0)
    assert not dialog._cure.isEnabled()
    held.set()
    press(dialog._cure)
    until(lambda: dialog.settled)
    assert dialog._numbers.nut_width == 44.0
    dialog.close()
    dialog.deleteLater()


def test_minutes_belong_to_the_row_that_was_seen_when_they_were_typed(bench, held):
    """One entry is in the book; the plan puts all other steps before and behind it while minutes are typed into its row."""
    book = entered_book(bench, held)
    task = book.rows[0].task
    table = book.view.hours
    table.setFocus()
    table.stand_at(0, 3)
    QTest.keyClicks(table, "4")
    held.set()
    until(lambda: len(book.rows) > 1)
    assert book.rows[0].task != task and table.words.rowCount() == 2, "the row and the sum, until the cell is left"
    editor = QApplication.focusWidget()
    QTest.keyClicks(editor, "2")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    bench.pump()
    assert [(time.task.operation, time.minutes) for time in bench.layout.book.times] == [(task.operation, 42.0)]
    until(lambda: table.words.rowCount() == len(book.rows) + 1)


def entered_book(bench, held):
    """The stage of the job book with minutes for one step from the midst of the plan."""
    bench.window.set_stage("book")
    room = bench.window.rooms["book"]
    until(lambda: room.work is not None)
    task = room.rows[10].task
    bench.window.document.record("Time", lambda book: set_minutes(book, "practice", task, 5.0))
    bench.window.set_stage("tuners")
    room._base = room.work = room.planning._known = room.planning._asked = None
    held.clear()
    bench.window.set_stage("book")
    assert room.errand.busy and len(room.rows) == 1
    return room


def test_posts_asked_for_again_after_a_change_are_proposed_for_the_layout_as_it_is(bench, held):
    bench.window.set_stage("strings")
    room = bench.window.rooms["strings"]
    sound = bench.layout
    held.clear()
    press(room.panel.propose)
    bench.window.document.apply("cross two", set_post(sound, "1", next(t.id for t in sound.tuners if t.string == "12")))
    press(room.panel.propose)
    held.set()
    until(lambda: room.proposal is not None)
    assert room._for is bench.layout and "crossings" in room.panel.gain.text()
    press(room.panel.take)
    assert [t.string for t in bench.layout.tuners] == [t.string for t in sound.tuners]


def test_pins_asked_for_again_after_a_change_are_proposed_for_the_layout_as_it_is(bench, held):
    bench.window.set_stage("slots")
    held.clear()
    bench.window.commands.run("propose pins")
    layout = changed(bench)
    bench.window.commands.run("propose pins")
    held.set()
    until(lambda: bench.window.hand.busy)
    bench.key(Qt.Key.Key_Return)
    assert bench.layout.pins != layout.pins and bench.layout == replace(layout, pins=bench.layout.pins)


def test_what_hangs_at_the_pointer_never_takes_back_what_is_typed_meanwhile(bench):
    at = (-20.0, 184.0)
    bench.window.set_tool("hole")
    bench.click(at)
    bench.window.keyboard.escape()
    bench.click(at)
    for command in ("copy", "paste"):
        bench.window.commands.run(command)
    bench.move((-10.0, 20.0))
    assert bench.window.hand.busy and len(bench.window.document.shown.holes) == 2
    bench.window.document.apply("Thickness", set_field(bench.layout, ("blank", "thickness"), 12.0))
    assert not bench.window.hand.busy and "put back" in bench.window.foot.said
    bench.click((-10.0, 25.0))
    assert bench.layout.blank.thickness == 12.0 and len(bench.layout.holes) == 1 and bench.window.document.shown is bench.layout


def test_a_number_typed_of_what_hangs_at_the_pointer_does_not_set_it_down(bench):
    """The panel tells of the tuner that hangs there: its number taken as a step left it where the pointer had gone by."""
    before = bench.layout
    bench.window.set_tool("tuner")
    bench.move((0.0, 60.0))
    bench.move((1.0, 61.0))
    form = bench.window.side.inside._fields
    until(lambda: any(row.label.startswith("Across") for row in form.rows) and not bench.window.held_page._due.isActive())
    hanging, = bench.window.document.held
    assert bench.window.hand.busy and hanging not in {tuner.id for tuner in before.tuners}
    field = next(widget for row, widget in zip(form.rows, form.widgets, strict=True) if row.label.startswith("Across"))
    fill(field, "7")
    assert bench.layout is before and bench.window.hand.busy and "not set down yet" in bench.window.foot.said
    assert not field.text().startswith("7")
    bench.click((0.0, 40.0))
    assert len(bench.layout.tuners) == len(before.tuners) + 1 and bench.layout.tuner(hanging).place.at == pytest.approx((0, 40), abs=0.5)


def test_no_note_is_pinned_to_what_still_hangs_at_the_pointer(bench, monkeypatch):
    """It was pinned to a tuner that no layout had."""
    asked = []
    monkeypatch.setattr(ask, "text", lambda parent, title, label, value: asked.append(label) or "drill it last")
    bench.window.set_tool("tuner")
    bench.move((0.0, 60.0))
    bench.move((1.0, 61.0))
    hanging, = bench.window.document.held
    assert hanging not in {tuner.id for tuner in bench.layout.tuners}
    bench.window.commands.run("note")
    assert [note.on for note in bench.layout.book.remarks] == [None] and "the whole head" in asked[0]


def test_a_step_in_the_hand_is_put_back_when_another_order_comes(bench, entered, held):
    order = entered("order")
    bench.window.document.hold(("treble face 3",))
    bench.window.commands.run("remove")
    before, steps = bench.layout, order.panel.list
    start = steps.row_box(order.at).center()
    QTest.mousePress(steps.viewport(), Qt.MouseButton.LeftButton, pos=start)
    QTest.mouseMove(steps.viewport(), start + QPoint(0, 60))
    assert steps._held
    held.set()
    until(lambda: not order.errand.busy)
    assert not steps._held
    QTest.mouseRelease(steps.viewport(), Qt.MouseButton.LeftButton, pos=start + QPoint(0, 60))
    assert bench.layout is before


def test_what_is_wrong_with_a_length_stays_said_when_the_answer_to_the_one_before_comes(bench, held):
    held.clear()
    dialog = OffsetDialog(bench.window, "outline")
    dialog.show()
    for text in ("3", "3 or so"):
        dialog.field.selectAll()
        QTest.keyClicks(dialog.field, text)
        dialog.field.editingFinished.emit()  # as when the keyboard goes on to the next
    assert dialog.errand.busy and not dialog.take.isEnabled()
    wrong = dialog.says.text()
    held.set()
    until(lambda: dialog.settled)
    assert "3 or so" in wrong and dialog.says.text() == wrong and not dialog.take.isEnabled()
    dialog.close()
    dialog.deleteLater()


def test_who_stays_with_the_layout_that_is_open_keeps_the_numbers_of_another(bench, held, monkeypatch):
    """Unsaved work is asked about as Begin is pressed: on Cancel the numbers stand there as they were typed."""
    layout = changed(bench)
    answers = ["cancel", "discard"]
    monkeypatch.setattr(ask, "save_first", lambda *_: answers.pop(0))
    dialog = NumbersDialog(bench.window)
    dialog.show()
    typed(dialog._fields["nut_width"], "44")
    dialog._fields["nut_width"].editingFinished.emit()
    until(lambda: dialog.settled)
    press(dialog.begin_button)
    assert dialog.isVisible() and dialog._numbers.nut_width == 44.0 and bench.layout is layout and answers == ["discard"]
    press(dialog.begin_button)
    assert not dialog.isVisible() and dialog.layout_made.nut.width == 44.0
    dialog.deleteLater()


def test_the_plan_is_that_of_the_layout_after_something_was_written_and_taken_back_in_the_book(bench, held):
    """The layout is then another one that holds the same: its marks lie on the face, and its template can be written."""
    bench.window.set_stage("router")
    room = bench.window.rooms["router"]
    until(lambda: room.marks())
    bench.window.set_stage("book")
    first = bench.window.rooms["book"].planned
    until(first)
    bench.window.document.record("Time", lambda book: set_minutes(book, "practice", first()[0], 5.0))
    for taken_back in (False, True):
        if taken_back:
            bench.window.document.take_back()
        bench.window.set_stage("router")
        assert room.marks() and room.planned.layout is bench.layout and not room.errand.busy
        bench.window.set_stage("book")
