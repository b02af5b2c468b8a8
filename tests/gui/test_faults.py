"""A fault inside the program: one calm dialog, the layout kept, a report, and on with the work."""

import sys
import threading

import pytest
from PySide6.QtCore import Qt, qWarning
from PySide6.QtWidgets import QDialog, QProgressDialog
from shiboken6 import delete, isValid

from app.window.running.faults import Faults
from geometry.edits import mirror_layout


@pytest.fixture
def faults(bench):
    made = Faults(bench.window.windows)
    made.install()
    yield made
    made.remove()


def break_command(bench, monkeypatch, error=ZeroDivisionError("planted")):
    def broken():
        raise error
    monkeypatch.setitem(bench.window.commands._do, "hold all", broken)


def raise_as_a_slot_would(bench, key="hold all"):
    """Qt hands an exception of a slot to sys.excepthook; the test library would catch it first."""
    try:
        bench.window.commands.run(key)
    except Exception as error:
        sys.excepthook(type(error), error, error.__traceback__)
    bench.pump()


def test_a_fault_is_told_once_with_the_layout_kept(bench, faults, monkeypatch, tmp_path):
    bench.window.commands.run("turn over")
    before = bench.layout
    break_command(bench, monkeypatch)
    raise_as_a_slot_would(bench)
    assert faults.dialog is not None and faults.dialog.isVisible()
    assert "ZeroDivisionError" in faults.dialog.report and "Left-handed mirror" in faults.dialog.report
    assert bench.layout is before
    faults.dialog.accept()
    bench.pump()
    raise_as_a_slot_would(bench)
    assert faults.dialog is None, "the same fault is not shown again"
    assert "came again" in bench.window.foot.said


def test_faults_that_follow_are_counted_not_stacked(bench, faults, monkeypatch):
    break_command(bench, monkeypatch)
    raise_as_a_slot_would(bench)
    first = faults.dialog
    break_command(bench, monkeypatch, KeyError("another"))
    for _ in range(30):
        raise_as_a_slot_would(bench)
    assert faults.dialog is first and "31 times" in first._more.text()
    assert first.report.count("KeyError") >= 1
    first.accept()


def test_the_report_names_no_folder_of_the_maker(bench, faults, monkeypatch, tmp_path):
    bench.window.document.save(tmp_path / "secret.headstock.json")
    break_command(bench, monkeypatch, OSError(f"cannot read {tmp_path}/secret.headstock.json"))
    raise_as_a_slot_would(bench)
    assert str(tmp_path) not in faults.dialog.report and "secret" not in faults.dialog.report
    faults.dialog.accept()


def test_the_report_can_be_saved_and_a_full_disk_is_said(bench, faults, monkeypatch, tmp_path):
    break_command(bench, monkeypatch)
    raise_as_a_slot_would(bench)
    dialog = faults.dialog
    monkeypatch.setattr("app.window.ask.save_file", lambda *_: tmp_path / "report.txt")
    dialog._save()
    assert (tmp_path / "report.txt").read_text(encoding="utf-8") == dialog.report
    monkeypatch.setattr("app.window.ask.save_file", lambda *_: tmp_path / "gone" / "report.txt")
    dialog._save()
    assert "report" in dialog._says.text() and "saved as" not in dialog._says.text()
    dialog.accept()


def test_an_error_in_a_thread_is_told_too(bench, faults):
    """Called as Python calls it for a thread; the test library would catch the error of a real one first."""
    error = ZeroDivisionError("planted in a thread")
    threading.excepthook(threading.ExceptHookArgs((type(error), error, None, threading.current_thread())))
    bench.pump()
    assert faults.dialog is not None and "planted in a thread" in faults.dialog.report
    faults.dialog.accept()


def test_an_edit_that_the_checks_break_on_is_not_taken(bench, monkeypatch):
    document = bench.window.document
    before, steps = document.layout, len(document.history.past)

    def broken(layout):
        raise RuntimeError("planted in the checks")
    with monkeypatch.context() as planted, pytest.raises(RuntimeError):
        planted.setattr(document._live, "check", broken)
        document.apply("Left-handed mirror", mirror_layout(before))
    assert document.layout is before and len(document.history.past) == steps


class Gone:
    """A stream whose reader has gone, as of a terminal that was closed."""

    def write(self, text: str) -> None:
        raise BrokenPipeError(32, "Broken pipe")


def test_a_word_of_the_toolkit_that_nobody_can_read_any_more_harms_nothing(bench, faults, monkeypatch):
    monkeypatch.setattr(sys, "stderr", Gone())
    qWarning("a word of the toolkit")
    bench.pump()
    assert faults.dialog is None and "a word of the toolkit" in faults._told


def test_everything_is_as_before_once_it_is_removed(bench):
    hooks = sys.excepthook, threading.excepthook, sys.unraisablehook
    made = Faults(bench.window.windows)
    made.install()
    made.remove()
    assert (sys.excepthook, threading.excepthook, sys.unraisablehook) == hooks


def test_a_fault_behind_a_box_of_progress_is_still_told_when_the_box_has_gone(bench, faults, monkeypatch):
    """What is being read when a fault is met goes on, and its box closes by itself: the report must not go with it."""
    box = QProgressDialog("Reading", "Cancel", 0, 0, bench.window)
    box.setWindowModality(Qt.WindowModality.WindowModal)
    box.show()
    break_command(bench, monkeypatch)
    raise_as_a_slot_would(bench)
    box.close()
    delete(box)
    bench.pump()
    assert isValid(faults.dialog) and faults.dialog.isVisible() and "planted" in faults.dialog.report
    faults.dialog.accept()


def test_a_fault_is_told_though_the_dialog_of_the_one_before_went_with_its_window(bench, faults, monkeypatch):
    under = QDialog(bench.window)
    under.setModal(True)
    under.show()
    break_command(bench, monkeypatch)
    raise_as_a_slot_would(bench)
    assert faults.dialog.parent() is under
    delete(under)
    break_command(bench, monkeypatch, KeyError("another"))
    raise_as_a_slot_would(bench)
    assert isValid(faults.dialog) and faults.dialog.isVisible()
    faults.dialog.accept()
