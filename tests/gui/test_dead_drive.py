"""A network drive that has gone: whoever asks it anything waits for a minute, and the thread of the window must not be who asks.

The drive is a folder before which every call of the system that is given a path waits until the test lets it go.
"""

import builtins
import os
import threading
from pathlib import Path

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QEventLoop, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton, QWidget

import app.window as program
from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.formats import headstock, saving
from app.look.descendants import below
from app.threads import waiting
from app.threads.background import left, running
from app.threads.waiting import Waiting, done_beside
from app.window import ask
from app.window.background.disk import saved_where_asked
from app.window.demo import demo
from app.window.running.recovery import recover
from tests.waiting import PATIENCE, press, until

CALLS = ("stat", "lstat", "open", "listdir", "scandir", "readlink", "replace", "unlink", "access", "link")


class Dead:
    """Holds calls with a path on the drive, and notes those that the window's thread makes."""

    def __init__(self, place: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        self.place, self.answers, self.gone = place, threading.Event(), False
        self.blamed: list[str] = []
        self.asked = threading.Event()
        for module, names in ((os, CALLS), (builtins, ("open",))):
            for name in names:
                monkeypatch.setattr(module, name, self._held(name, getattr(module, name)))

    def _held(self, name, real):
        def call(path, *more, **named):
            if self.gone and isinstance(path, str | os.PathLike) and os.fspath(path).startswith(str(self.place)):
                if threading.get_ident() == threading.main_thread().ident:
                    self.blamed.append(f"{name} {path}")
                else:
                    self.asked.set()
                    self.answers.wait()
                    raise OSError(110, "it took too long")
            return real(path, *more, **named)
        return call

    def comes_back(self) -> None:
        """Every call that waits ends."""
        self.gone = False
        self.answers.set()
        until(lambda: not left() and not running(), "what was left has not ended")


@pytest.fixture
def drive(tmp_path, monkeypatch, qtbot):
    place = tmp_path / "drive"
    place.mkdir()
    made = Dead(place, monkeypatch)
    yield made
    made.comes_back()


@pytest.fixture
def opened(bench, drive):
    """A layout open from the drive, which then goes."""
    path = drive.place / "head.headstock.json"
    headstock.write(replace(demo(), name="first"), path)
    assert bench.window.files.open(path)
    bench.window.document.apply("Rename", replace(bench.layout, name="second"))
    drive.gone = True
    return path


def not_waited_for(window: QWidget) -> None:
    """The maker presses the button of the box as soon as there is one."""
    def look() -> None:
        box = QApplication.activeModalWidget()
        if box is None or not box.isVisible():
            QTimer.singleShot(20, window, look)
        else:
            press(next(below(box, QPushButton)))
    QTimer.singleShot(0, window, look)


def given_up_while(held: threading.Event, window: QWidget, monkeypatch) -> None:
    """Saving is given up while the disk is held; then the disk goes on to its end."""
    monkeypatch.setattr(ask, "not_saved", lambda *_: "later")
    not_waited_for(window)
    assert not window.files.save()
    held.set()
    until(lambda: not left())


def test_a_window_closes_at_once_while_the_drive_is_asked_what_is_there(bench, drive):
    bench.window.files._settings.setValue("recent", [str(drive.place / f"{n}.headstock.json") for n in range(3)])
    drive.gone = True
    bench.window.recent_menu.fill()
    bench.window.front.show()
    until(drive.asked.is_set)
    bench.window.document.replace(bench.layout, None)
    assert bench.window.close() and not running(bench.window) and left()
    assert drive.blamed == []


def test_a_drive_that_has_gone_keeps_no_other_file_from_being_told_of(bench, drive, tmp_path):
    gone = [drive.place / f"{n}.headstock.json" for n in range(2)]
    here, missing = tmp_path / "here.headstock.json", tmp_path / "missing.headstock.json"
    here.write_text("")
    bench.window.files._settings.setValue("recent", [str(path) for path in (*gone, here, missing)])
    drive.gone = True
    menu = bench.window.recent_menu
    menu.fill()
    texts = lambda: [action.text() for action in menu._menu.actions()][:4]  # noqa: E731
    until(lambda: "missing.headstock.json – not there now" in texts())
    assert texts()[:3] == ["0.headstock.json", "1.headstock.json", "here.headstock.json"], "nothing is known of the drive"
    menu.fill()
    assert len(running(menu.there)) <= 3, "what has not answered is not asked again"
    drive.comes_back()
    until(lambda: sum("not there" in text for text in texts()) == 3)
    assert drive.blamed == []


def test_the_first_page_brought_back_knows_what_was_missing_though_a_drive_has_gone(bench, drive, tmp_path):
    recent = [drive.place / "0.headstock.json", tmp_path / "missing.headstock.json"]
    bench.window.files._settings.setValue("recent", [str(path) for path in recent])
    drive.gone = True
    front = bench.window.front
    offered = lambda: [front.page._recent.itemAt(at).widget().isEnabled() for at in range(2)]  # noqa: E731
    for _ in range(2):
        front.show()
        until(lambda: not front.there._left and offered() == [True, False])
        front.leave()
    drive.comes_back()
    until(lambda: offered() == [False, False])


def test_enter_and_space_as_the_box_comes_do_not_give_the_drive_up(bench, drive, opened, monkeypatch):
    monkeypatch.setattr(ask, "not_saved", lambda *_: "later")
    pressed = []

    def look() -> None:
        box = QApplication.activeModalWidget()
        if box is None or not box.isVisible():
            QTimer.singleShot(20, bench.window, look)
            return
        for key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            QTest.keyClick(QApplication.focusWidget() or box, key)
        pressed.append(box.isVisible())
        QTest.keyClick(box, Qt.Key.Key_Tab)
        QTest.keyClick(next(below(box, QPushButton)), Qt.Key.Key_Space)
    QTimer.singleShot(0, bench.window, look)
    assert not bench.window.files.save()
    assert pressed == [True], "the box stays, and its button is there for who goes to it"


def test_what_was_given_up_and_landed_after_all_is_not_taken_for_another_s(bench, drive, opened, monkeypatch):
    drive.gone = False
    held, real = threading.Event(), saving._rename

    def slow(part, target, data):
        held.wait()
        real(part, target, data)
    monkeypatch.setattr(saving, "_rename", slow)
    given_up_while(held, bench.window, monkeypatch)
    assert headstock.read(opened).name == "second", "it was given up in the very renaming"
    bench.window.document.apply("Rename", replace(bench.layout, name="third"))
    monkeypatch.setattr(ask, "changed_elsewhere", lambda *_: pytest.fail("it was written from here"))
    assert bench.window.files.save()
    headstock.write(replace(bench.layout, name="theirs"), opened)
    asked = []
    monkeypatch.setattr(ask, "changed_elsewhere", lambda *_: asked.append(True) or "later")
    bench.window.document.apply("Rename", replace(bench.layout, name="fourth"))
    assert not bench.window.files.save() and asked == [True]


def test_saving_can_be_given_up_and_the_window_then_closes(bench, drive, opened, monkeypatch):
    told = []
    monkeypatch.setattr(ask, "not_saved", lambda _, text, certain: told.append((text, certain)) or "later")
    not_waited_for(bench.window)
    assert not bench.window.files.save()
    [(text, certain)] = told
    assert "head.headstock.json was not written as long as you waited" in text and not certain
    assert bench.window.document.unsaved and bench.layout.name == "second"
    monkeypatch.setattr(ask, "save_first", lambda *_: "discard")
    assert bench.window.close() and left()
    assert drive.blamed == []


def test_what_was_given_up_is_not_written_when_the_drive_comes_back(bench, drive, opened, monkeypatch):
    real = headstock.write
    held = threading.Event()

    def slow(layout, path, go_on):
        held.wait()
        return real(layout, path, go_on)
    drive.gone = False
    monkeypatch.setattr(headstock, "write", slow)
    given_up_while(held, bench.window, monkeypatch)
    assert headstock.read(opened).name == "first" and os.listdir(drive.place) == [opened.name]


def test_no_other_file_that_was_given_up_comes_to_be_written(bench, tmp_path, monkeypatch):
    held, real = threading.Event(), saving._earlier
    monkeypatch.setattr(saving, "_earlier", lambda target: held.wait() and real(target))
    warned = []
    monkeypatch.setattr(ask, "save_file", lambda *_: tmp_path / "out")
    monkeypatch.setattr(ask, "warn", lambda _, title, words: warned.append((title, words)))
    not_waited_for(bench.window)
    assert saved_where_asked(bench.window, "Write", "out", "", (), "Not written", lambda _: b"what was asked for") is None
    assert [title for title, _ in warned] == ["Not written"] and "its drive does not answer" in warned[0][1]
    held.set()
    until(lambda: not left())
    assert os.listdir(tmp_path) == ["settings.ini"] or os.listdir(tmp_path) == []


def test_opening_can_be_given_up(bench, drive):
    before = bench.layout
    drive.gone = True
    for way in (bench.window.files.open, bench.window.windows.open):
        not_waited_for(bench.window)
        assert not way(drive.place / "head.headstock.json")
    assert bench.layout is before and len(bench.window.windows.all) == 1 and drive.blamed == []


def test_another_layout_opens_and_is_saved_while_the_drive_of_the_first_is_gone(bench, drive, opened, tmp_path, qtbot):
    path = tmp_path / "near.headstock.json"
    headstock.write(replace(demo(), name="near"), path)
    other = bench.window.windows.open(path)
    other.document.apply("Rename", replace(other.document.layout, name="nearer"))
    assert other.files.save() and headstock.read(path).name == "nearer"
    other.close()
    assert drive.blamed == [] and not left()


def test_a_dialog_for_files_begins_in_a_folder_that_answers(bench, drive, opened, monkeypatch):
    begun = []
    monkeypatch.setattr(ask.QtWidgets.QFileDialog, "getOpenFileName", lambda *words: begun.append(words[2]) or ("", ""))
    monkeypatch.setattr(ask.QtWidgets.QFileDialog, "getSaveFileName", lambda *words: begun.append(words[2]) or ("", ""))
    assert not bench.window.files.open() and not bench.window.files.save_as()
    assert begun == [str(Path.home()), str(Path.home() / opened.name)] and drive.blamed == []


def test_a_start_with_a_layout_there_does_not_wait_for_it(bench, drive, monkeypatch):
    drive.gone = True
    monkeypatch.setattr(program, "READ_SECONDS", 0.05)
    with pytest.raises(TimeoutError):
        program.read_soon(drive.place / "head.headstock.json")
    assert drive.blamed == [] and left()


def test_work_from_there_that_was_not_saved_is_offered_all_the_same(bench, drive, tmp_path, monkeypatch):
    journal = Journal(tmp_path / "journal")
    journal.note(replace(demo(), name="Half done"), drive.place / "head.headstock.json")
    assert journal.write()
    journal._lock.unlock()
    drive.gone, asked = True, []
    found = leftovers(tmp_path / "journal")
    monkeypatch.setattr("app.window.running.recovery.LOOK_MS", 50)
    monkeypatch.setattr(ask, "recover", lambda _, text, picture: asked.append(text) or "later")
    recover(bench.window.windows, found)
    assert len(asked) == 1 and "Half done" in asked[0] and drive.blamed == []


def test_a_journal_on_it_is_told_of_and_keeps_nobody(bench, drive, monkeypatch):
    window, told = bench.window, []
    window.journal = journal = Journal(drive.place / "journal", window)
    journal._late.setInterval(50)
    journal.troubled.connect(told.append)
    drive.gone = True
    journal.note(bench.layout, None)
    until(lambda: told, "it is not told")
    assert told == ["Unsaved work cannot be kept safe: The disk does not answer."]
    assert window.close() and left() and drive.blamed == []


def test_a_journal_keeps_the_order_of_what_is_written(bench, tmp_path, monkeypatch):
    """What is saved while an older state is on its way to the disk leaves nothing behind."""
    begun, held = threading.Event(), threading.Event()
    real = headstock.compact

    def slow(layout):
        begun.set()
        held.wait()
        return real(layout)
    monkeypatch.setattr(headstock, "compact", slow)
    journal = Journal(tmp_path / "journal", bench.window)
    journal.note(bench.layout, None)
    until(begun.is_set)
    journal.clear()
    journal.note(replace(bench.layout, name="newer"), None)
    held.set()
    until(lambda: journal.file.exists() and "newer" in journal.file.read_text(encoding="utf-8"))
    journal.clear()
    until(lambda: not journal.file.exists() and journal._work is None)
    journal.end()


def test_what_the_hand_does_waits_until_there_is_a_box_or_an_answer(bench, monkeypatch):
    """It stays in the system's queue: a press meant for what is soon there reaches nothing before, and is not lost."""
    run = []

    class Loop(QEventLoop):
        def exec(self, *flags) -> int:
            run.append(flags)
            return super().exec(*flags)
    monkeypatch.setattr(waiting, "QEventLoop", Loop)
    kept = (QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents,)
    assert done_beside(bench.window, "At work…", lambda: 42) == 42 and run == [kept]
    monkeypatch.setattr(waiting, "SHOWS_MS", 0)
    run.clear()
    not_waited_for(bench.window)
    go = threading.Event()
    assert done_beside(bench.window, "At work…", go.wait, gives_up="Enough") is None and run == [kept, ()]
    go.set()
    until(lambda: not left())


def test_work_that_hears_of_no_cancel_is_left(bench, monkeypatch):
    """As a printer that does not answer, or a file to print to on a drive that has gone."""
    monkeypatch.setattr(waiting, "SHOWS_MS", 0)
    monkeypatch.setattr(waiting, "ENDS_MS", 50)
    go = threading.Event()
    not_waited_for(bench.window)
    assert done_beside(bench.window, "At work…", lambda: go.wait(PATIENCE), waiting.Progress()) is None and left()
    go.set()
    until(lambda: not left())


def test_a_window_does_not_go_in_the_midst_of_waiting(bench):
    wait, closed = Waiting(bench.window, "At work…"), []

    def act() -> None:
        closed.extend((bench.window.close(), bench.window.windows.quit()))
        wait.over()
    QTimer.singleShot(0, bench.window, act)
    assert wait.wait() and closed == [False, False] and bench.window.isVisible()
