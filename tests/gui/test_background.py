"""Work in a thread of its own: its answer, its error, its end."""

import threading
import weakref

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget
from shiboken6 import delete, isValid

from app.threads.background import Background, left, running
from app.threads.waiting import Progress, done_beside


def test_the_answer_and_the_error_come_as_signals(qtbot):
    parent = QObject()
    good = Background(lambda: 42, parent)
    with qtbot.waitSignal(good.answered) as answer:
        good.start()
    assert answer.args == [42]
    bad = Background(lambda: 1 / 0, parent)
    with qtbot.waitSignal(bad.failed) as error:
        bad.start()
    assert isinstance(error.args[0], ZeroDivisionError)
    good.wait()
    bad.wait()


def test_whoever_asked_may_be_destroyed_while_it_runs(qtbot):
    """The toolkit ends the program when a thread is destroyed that still runs."""
    window, release = QWidget(), threading.Event()
    asker = QObject(window)
    thread = Background(release.wait, asker)
    thread.start()
    kept = weakref.ref(thread)
    del thread
    assert running(window) == running(asker) == running() == [kept()]
    delete(window)
    assert not isValid(asker) and running(asker) == [] and running() == [kept()]
    release.set()
    qtbot.waitUntil(lambda: running() == [])
    qtbot.waitUntil(lambda: kept() is None)


def test_a_thread_outlives_the_telling_of_its_end(qtbot):
    """The toolkit looked at it once more when the slot returned that let go of it, and ended the program."""
    there = []
    for _ in range(20):
        parent, held = QObject(), []
        held.append(Background(lambda: 1, parent))
        kept = weakref.ref(held[0])
        held[0].finished.connect(lambda held=held, kept=kept: (held.clear(), there.append(kept() is not None)))
        held[0].start()
        qtbot.waitUntil(lambda kept=kept: kept() is None)
    assert there == [True] * 20 and running() == []


def closed(window: QWidget) -> None:
    """As a window is that is closed while another stays open."""
    for thread in running(window):
        thread.wait()
    window.deleteLater()


@pytest.mark.parametrize("gone", [closed, delete])
@pytest.mark.parametrize("progress", [False, True])
def test_a_window_destroyed_while_it_waits_for_work_takes_nothing_along(qtbot, gone, progress):
    """Its loop was a child of the window once, and so was the thread."""
    window, told = QWidget(), Progress() if progress else None
    window.show()
    begun, wanted = threading.Event(), threading.Event()

    def work() -> int:
        begun.set()
        wanted.wait(60.0)
        if told is not None:
            told.tell(0.5)
        return 42

    def destroy() -> None:
        begun.wait(60.0)
        if gone is closed:
            wanted.set()
        gone(window)
        QTimer.singleShot(0, wanted.set)
    QTimer.singleShot(0, destroy)
    assert done_beside(window, "At work…", work, told) is None
    wanted.set()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    qtbot.waitUntil(lambda: running() == [] and not left())
    assert not isValid(window)
