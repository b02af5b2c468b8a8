"""One piece of work at a time beside the window: when the next may be given, and what the end of the window does to it."""

import threading

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QThread

from app.threads.background import running
from app.window.background.errand import SEEN, Errand, in_steps
from tests.waiting import until


class Heard:
    """An errand whose signals are written down in their order."""

    def __init__(self) -> None:
        self.owner = QObject()
        self.errand = Errand(self.owner)
        self.told: list[object] = []
        self.errand.answered.connect(self.told.append)
        self.errand.failed.connect(self.told.append)
        self.errand.ended.connect(self._ended)

    def _ended(self) -> None:
        self.told.append("free" if self.errand.free else "busy")


@pytest.fixture
def heard(qtbot):
    one = Heard()
    yield one
    one.errand.end()


def test_it_is_free_as_soon_as_the_answer_is_told(heard):
    """Also while the thread that told it has not ended: what is pressed next must not be lost."""
    for n in range(20):
        heard.errand.start(lambda n=n: n)
        assert heard.errand.busy and not heard.errand.free
        until(lambda n=n: heard.told[-1:] == ["free"] and len(heard.told) == 2 * (n + 1))
    assert heard.told == [word for n in range(20) for word in (n, "free")]
    until(lambda: running(heard.errand) == [] and not heard.errand._threads, "the threads are not let go")


def test_the_next_may_begin_the_moment_one_has_ended(heard):
    left = [1, 2, 3]

    def again() -> None:
        if left:
            heard.errand.start(lambda n=left.pop(0): n)
    heard.errand.ended.connect(again)
    heard.errand.start(lambda: 0)
    until(lambda: len(heard.told) == 8)
    assert [one for one in heard.told if one != "free"] == [0, 1, 2, 3]


def test_an_error_comes_as_it_was_raised_and_frees_it_too(heard):
    heard.errand.start(lambda: 1 / 0)
    until(lambda: len(heard.told) == 2)
    assert isinstance(heard.told[0], ZeroDivisionError) and heard.told[1] == "free"


def test_two_at_once_are_refused(heard):
    release = threading.Event()
    heard.errand.start(release.wait)
    with pytest.raises(RuntimeError):
        heard.errand.start(lambda: 2)
    release.set()
    until(lambda: heard.told == [True, "free"])


def test_a_thread_is_not_let_go_before_its_end_is_heard_of(heard):
    """What was put off to be destroyed may go before what was told."""
    heard.errand.start(lambda: 1)
    [thread] = running(heard.errand)
    QThread.wait(thread)
    del thread
    heard.errand._gone()  # as at the end of another one
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    until(lambda: running() == [] and heard.told == [1, "free"])


def test_at_the_end_it_waits_and_tells_nothing_more(heard, qtbot):
    release = threading.Event()
    heard.errand.start(release.wait)
    [thread] = running(heard.errand)
    threading.Timer(0.05, release.set).start()
    heard.errand.end()
    assert thread.isFinished() and not heard.errand.busy and not heard.errand.free
    until(lambda: running(heard.errand) == [])
    assert heard.told == []


def test_progress_is_told_in_steps_that_can_be_seen():
    told: list[float] = []
    tell = in_steps(told.append)
    for part in range(1001):
        tell(part / 1000)
    assert all(b - a >= SEEN for a, b in zip([0.0, *told], told, strict=False)) and 0.95 < told[-1] <= 1.0
