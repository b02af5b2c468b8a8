"""Work in a thread of its own: its answer, its error, and no collecting of garbage meanwhile."""

import gc
import threading
import weakref

from PySide6.QtCore import QObject

from app.window.background import Background


class Loop:
    """Garbage that only the collector of cycles can find; it tells which thread took it away."""

    def __init__(self, told: list) -> None:
        self.me = self
        weakref.finalize(self, lambda: told.append(threading.current_thread() is threading.main_thread()))


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


def test_cycles_are_never_collected_in_the_thread(qtbot):
    told: list[bool] = []
    for _ in range(50):
        Loop(told)

    def many_lists() -> int:
        return len([[i] for i in range(400_000)])
    parent = QObject()
    thread = Background(many_lists, parent)
    thread.start()
    assert not gc.isenabled()
    thread.wait()
    assert gc.isenabled()
    gc.collect()
    assert len(told) == 50 and all(told)


def test_the_collector_rests_until_the_last_thread_has_ended(qtbot):
    parent = QObject()
    release = threading.Event()
    slow, quick = Background(release.wait, parent), Background(lambda: None, parent)
    slow.start()
    quick.start()
    quick.wait()
    assert not gc.isenabled()
    release.set()
    slow.wait()
    assert gc.isenabled()
