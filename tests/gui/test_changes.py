"""The list of changes: it follows the work, and any step of it can be gone back to."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.formats import headstock
from app.panels.forms.card_list import ROW
from app.window.demo import demo
from geometry.book.edits import add_remark
from geometry.layout.book import Remark


@pytest.fixture
def steps(bench):
    """The layouts of the beginning and of three steps, the list on show."""
    made = [bench.layout]
    for name in ("first", "second", "third"):
        bench.window.document.apply(f"Call it {name}", replace(bench.layout, name=name))
        made.append(bench.layout)
    bench.window.actions_["changes"].trigger()
    bench.pump()
    return made


def listed(bench):
    return [(row.words, row.when) for row in bench.window.side.inside.changes.rows]


def press(bench, number):
    changes = bench.window.side.inside.changes
    box = changes.visualRect(changes.model().index(number, 0))
    QTest.mouseClick(changes.viewport(), Qt.MouseButton.LeftButton, pos=box.center())
    bench.pump()


def test_it_names_every_step_and_marks_the_present_one(bench, steps):
    assert bench.window.side.inside.changes.isVisible()
    assert listed(bench) == [("The beginning", "past"), ("Call it first", "past"), ("Call it second", "past"),
                             ("Call it third", "present")]


def test_a_press_goes_there_and_the_way_forward_stays(bench, steps):
    press(bench, 1)
    assert bench.window.document.layout is steps[1]
    assert [when for _, when in listed(bench)] == ["past", "present", "undone", "undone"]
    assert bench.window.foot.said == "Back to: Call it first"
    press(bench, 3)
    assert bench.window.document.layout is steps[3]
    press(bench, 0)
    assert bench.window.document.layout is steps[0] and not bench.window.actions_["undo"].isEnabled()
    assert not bench.window.document.unsaved, "the beginning is what was opened"


def test_a_new_step_takes_the_undone_ones_away(bench, steps):
    press(bench, 1)
    bench.window.document.apply("Call it other", replace(bench.layout, name="other"))
    assert listed(bench) == [("The beginning", "past"), ("Call it first", "past"), ("Call it other", "present")]


def test_the_keyboard_goes_through_the_list(bench, steps):
    changes = bench.window.side.inside.changes
    assert changes.hasFocus()
    for key, number in ((Qt.Key.Key_Up, 2), (Qt.Key.Key_Up, 1), (Qt.Key.Key_Home, 0), (Qt.Key.Key_End, 3)):
        QTest.keyClick(changes, key)
        assert bench.window.document.layout is steps[number]
    bench.window.commands.run("undo")
    assert changes.currentIndex().row() == 2, "the list follows the usual keys"


def test_the_saved_state_is_marked_whatever_the_job_book_holds(bench, steps, tmp_path):
    assert not any(row.saved for row in bench.window.side.inside.changes.rows), "there is no file yet"
    press(bench, 2)
    bench.window.document.save(tmp_path / "head.headstock.json")
    assert [row.saved for row in bench.window.side.inside.changes.rows] == [False, False, True, False]
    press(bench, 3)
    assert bench.window.document.unsaved
    bench.window.document.record("Note", lambda book: add_remark(book, Remark(piece="practice", text="Slower.")))
    press(bench, 2)
    assert [row.saved for row in bench.window.side.inside.changes.rows] == [False, False, True, False]
    assert headstock.read(tmp_path / "head.headstock.json").name == "second"
    index = bench.window.side.inside.changes.model().index(2, 0)
    assert index.data(Qt.ItemDataRole.AccessibleTextRole) == "Call it second, shown now, as saved"
    assert index.data(ROW).saved


def test_a_gesture_is_put_back_before_going(bench, steps):
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] - 10))
    bench.window.changes.go(0)
    assert bench.window.document.shown is steps[0]
    bench.release(start)
    assert bench.window.document.shown is steps[0]


def test_it_stays_on_show_on_every_stage_and_goes_when_put_away(bench, steps):
    bench.window.set_stage("order")
    assert bench.window.side.inside.changes.isVisible()
    bench.window.actions_["changes"].trigger()
    assert not bench.window.side.inside.changes.isVisible()
    bench.window.set_stage("tuners")
    assert bench.window.side.inside.snags.isVisible() and not bench.window.actions_["changes"].isChecked()


def test_another_layout_begins_another_list(bench, steps):
    bench.window.document.replace(demo(), None)
    assert listed(bench) == [("The beginning", "present")]


def test_an_undo_with_something_in_hand_puts_that_back_and_says_so(bench, steps):
    x, y = bench.origin("treble face 2")
    bench.press((x, y))
    bench.move((x + 6, y + 9))
    assert bench.window.hand.busy
    bench.window.commands.run("undo")
    assert bench.window.document.shown is steps[3] and bench.window.foot.said == "Put back"
