"""What is being typed counts before anything is made of the layout, and what was refused goes with its layout."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.formats import headstock
from app.look.descendants import below
from app.look.scroll import Scroll
from app.panels.forms.fields import Field
from app.window import ask
from tests.gui.hands import field, type_on, typed
from tests.waiting import until


def typing(bench, text: str, stage: str = "blank", name: str = "Thickness") -> Field:
    """A text in a field that has not been left."""
    bench.window.set_stage(stage)
    bench.pump()
    found = field(bench.window.side, name)
    typed(found, text)
    return found


@pytest.fixture
def saved(bench, tmp_path):
    path = tmp_path / "head.headstock.json"
    bench.window.document.save(path)
    return path


def test_saving_takes_it(bench, saved):
    thickness = typing(bench, "17")
    QTest.keyClick(thickness, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    assert headstock.read(saved).blank.thickness == 17 and not bench.window.document.unsaved
    assert not thickness.isModified()


def test_what_cannot_be_read_is_refused_and_the_rest_is_saved(bench, saved):
    bench.window.document.apply("Name", replace(bench.layout, name="Another"))
    thickness = typing(bench, "seventeen")
    QTest.keyClick(thickness, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    assert thickness.bad and headstock.read(saved).name == "Another" and headstock.read(saved).blank.thickness == 16


def test_another_unit_is_not_the_unit_of_what_was_typed_before(bench):
    thickness = typing(bench, "18")
    bench.window.actions_["in"].trigger()
    assert bench.layout.blank.thickness == 18
    QTest.keyClick(thickness, Qt.Key.Key_Tab)
    assert bench.layout.blank.thickness == 18 and thickness.text() == '0.709"'


def test_closing_asks_about_it(bench, saved, monkeypatch):
    asked = []
    monkeypatch.setattr(ask, "save_first", lambda *what: asked.append(what[1:]) or "cancel")
    typing(bench, "17")
    assert not bench.window.document.unsaved
    bench.window.close()
    assert len(asked) == 1 and bench.window.isVisible() and bench.layout.blank.thickness == 17


def test_an_undo_leaves_it_in_the_field(bench):
    thickness = typing(bench, "17")
    QTest.keyClick(thickness, Qt.Key.Key_Return)
    typed(thickness, "18")
    bench.window.commands.run("undo")
    assert bench.layout.blank.thickness == 16 and thickness.text() == "18"


def test_undo_in_a_field_takes_typing_back_first_and_then_the_last_step(bench):
    """Who has sent a wrong number with Enter is still in its field: there the key does what it does everywhere."""
    thickness = typing(bench, "17")
    QTest.keyClick(thickness, Qt.Key.Key_Return)
    until(lambda: bench.layout.blank.thickness == 17)
    thickness = typing(bench, "18")
    control, shift = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(thickness, Qt.Key.Key_Z, control)
    assert thickness.text() == "17 mm" and bench.layout.blank.thickness == 17
    QTest.keyClick(thickness, Qt.Key.Key_Z, control)
    assert bench.layout.blank.thickness == 16
    until(lambda: thickness.text() == "16 mm")
    QTest.keyClick(thickness, Qt.Key.Key_Z, control | shift)
    assert bench.layout.blank.thickness == 17


def test_minutes_in_a_cell_are_saved_too(bench, saved):
    bench.window.set_stage("book")
    hours = bench.window.room.view.hours
    until(lambda: hours.words.rowCount() > 1)
    hours.setFocus()
    hours.stand_at(0, 3)
    QTest.keyClicks(hours, "7")
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    entry, = headstock.read(saved).book.times
    assert entry.minutes == 7


@pytest.mark.parametrize(("stage", "name"), [("blank", "Thickness"), ("strings", "Scale length")])
def test_what_was_refused_is_not_shown_of_another_layout(bench, stage, name):
    wrong = typing(bench, "abc", stage, name)
    QTest.keyClick(wrong, Qt.Key.Key_Return)
    before = wrong.text()
    assert wrong.bad and before == "abc"
    bench.window.document.replace(replace(bench.layout, name="Another"), None)
    bench.pump()
    right = field(bench.window.side, name)
    assert not right.bad and right.text() not in ("", "abc") and "abc" not in right.toolTip()


def test_saving_leaves_it_to_be_mended(bench, saved, tmp_path):
    wrong = typing(bench, "abc")
    QTest.keyClick(wrong, Qt.Key.Key_Return)
    bench.window.document.save(tmp_path / "elsewhere.headstock.json")
    assert wrong.bad and wrong.text() == "abc"


def test_a_cell_that_was_refused_is_not_of_another_layout(bench):
    bench.window.set_stage("book")
    hours = bench.window.room.view.hours
    until(lambda: hours.words.rowCount() > 1)
    hours.setFocus()
    hours.stand_at(0, 3)
    type_on(hours, "abc")
    assert hours.words.bad
    bench.window.document.replace(replace(bench.layout, name="Another"), None)
    until(lambda: not hours.words.bad)


def test_the_panels_of_another_layout_are_read_from_their_beginning(bench):
    bench.window.resize(1000, 500)
    for stage in ("strings", "tuners"):
        bench.window.set_stage(stage)
        bench.pump()
        bars = [area.verticalScrollBar() for area in below(bench.window.side, Scroll) if area.isVisible()]
        until(lambda bars=bars: max(bar.maximum() for bar in bars) > 200, "rows come in some turns of the event loop")
        for bar in bars:
            bar.setValue(bar.maximum())
        assert max(bar.value() for bar in bars) > 200
        bench.window.document.replace(replace(bench.layout, name=f"Another than at {stage}"), None)
        bench.pump()
        assert [bar.value() for bar in bars] == [0] * len(bars)
