"""Garbage is collected between two events of the window: in no thread, and not while a window is destroyed."""

import gc
import threading
from weakref import finalize, ref

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QSettings, Qt
from shiboken6 import delete, isValid

from app.look.descendants import below
from app.threads import collector
from app.threads.background import Background
from app.threads.collector import Collector
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.windows import Windows
from tests.waiting import on_screen, until


class Loop:
    """Garbage that only the collector of cycles can find; it tells which thread took it away."""

    def __init__(self, told: list) -> None:
        self.me = self
        finalize(self, lambda: told.append(threading.current_thread() is threading.main_thread()))


def loops(told: list) -> None:
    for _ in range(50):
        Loop(told)


class Hand:
    """A mouse of its own: what the toolkit's holds may be from another test, whose window went while a button was down."""

    held = Qt.MouseButton.NoButton

    def mouseButtons(self) -> Qt.MouseButton:
        return self.held


@pytest.fixture
def hand(monkeypatch):
    made = Hand()
    monkeypatch.setattr(collector, "QGuiApplication", made)
    return made


@pytest.fixture
def collecting(qapp, hand, monkeypatch):
    """As in the program, but at once and each time. Holds how often it was time to look."""
    times, real = [], collector.collect_when_due
    monkeypatch.setattr(collector, "collect_when_due", lambda: (times.append(1), real()))
    monkeypatch.setattr(collector, "EVERY_MS", 1)
    monkeypatch.setattr(collector, "MOST", -1)
    whole = QObject()
    Collector(whole)
    yield times
    delete(whole)


def test_what_nobody_holds_is_given_up_between_two_events(collecting):
    told: list[bool] = []
    loops(told)
    assert not gc.isenabled() and not told
    until(lambda: len(told) == 50)


def test_nothing_is_collected_in_a_thread(collecting):
    """A widget that is destroyed outside the thread of the window spoils the heap."""
    told: list[bool] = []
    loops(told)
    thread = Background(lambda: len([[i] for i in range(400_000)]), QObject())
    thread.start()
    thread.wait()
    assert not told
    until(lambda: len(told) == 50)
    assert all(told)


def test_a_look_through_everything_waits_for_the_hand(collecting, hand):
    told: list[bool] = []
    hand.held = Qt.MouseButton.LeftButton
    loops(told)
    before = len(collecting)
    until(lambda: len(collecting) > before + 3)
    assert not told
    hand.held = Qt.MouseButton.NoButton
    until(lambda: len(told) == 50)


@pytest.mark.parametrize("last", [True, False])
def test_a_closed_window_is_whole_until_it_is_destroyed(qtbot, tmp_path, last):
    """Nobody else holds it: the collector would take its parts away one by one, while it still asks them for their sizes."""
    windows = Windows(QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat))
    window = MainWindow(demo(), None, windows)
    if not last:
        other, window = window, windows.new(demo())
    window.show()
    on_screen(window)
    parts = [ref(part) for part in below(window) if type(part).__module__.startswith("app.")]
    window.close()
    kept = ref(window)
    del window
    gc.collect()
    assert kept() is not None and isValid(kept()) and len(parts) > 40
    assert [part for part in parts if part() is None or not isValid(part())] == []
    if last:
        windows.end()
    else:
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    QCoreApplication.processEvents()
    gc.collect()
    assert kept() is None, "and is given up then"
    if not last:
        other.close()
    windows.end()
