"""What holds for every test: no screen, no user folders, no warnings, nothing left behind."""

import gc
import os
import shutil
import sys
import tempfile
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from tests.collector import collect_when_due, set_aside, set_aside_again
from tests.shares import keep_bytecode_in, shared_out

os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["COLUMNS"] = "80"  # how wide the terminal is is the machine's own

# How long an example takes is the machine's own. The same examples in every run; others with `--hypothesis-profile=others`.
for _name in ("others", "pegwright"):
    settings.register_profile(_name, deadline=None, suppress_health_check=[HealthCheck.too_slow], print_blob=True,
                              derandomize=_name == "pegwright")
settings.load_profile("pegwright")

_USER_FOLDERS = ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CACHE_HOME", "APPDATA", "LOCALAPPDATA")
_kept = pytest.StashKey[Path]()


def pytest_configure(config: pytest.Config) -> None:
    """Give the tests user folders of their own, so that they neither see nor touch the maker's."""
    home = Path(tempfile.mkdtemp(prefix="pegwright-tests-"))
    config.stash[_kept] = home
    for name in _USER_FOLDERS:
        os.environ[name] = str(home / name.lower())
    keep_bytecode_in(home / "bytecode")


@pytest.hookimpl(wrapper=True)
def pytest_collection(session: pytest.Session):
    """The workers share the loading of the tests among them."""
    with shared_out(session.config):
        return (yield)


def pytest_collection_finish() -> None:
    """All that a run has loaded is there, and no test has begun."""
    set_aside()


def pytest_unconfigure(config: pytest.Config) -> None:
    """Remove those folders again."""
    shutil.rmtree(config.stash[_kept], ignore_errors=True)


@pytest.fixture
def qtbot(qapp, request: pytest.FixtureRequest):
    """The test library's bot, as patient as a busy machine asks for."""
    from tests.waiting import PatientBot
    return PatientBot(request)


@pytest.fixture(autouse=True)
def plain_looks() -> Iterator[None]:
    """Letters are at 100 % and colours those of daylight again after each test: both are the same for the whole process."""
    yield
    sizes = sys.modules.get("app.look.sizes")
    if sizes is not None:
        sizes._desktop = sizes.BODY
        sizes.use(sizes.BODY)
    theme = sys.modules.get("app.look.theme")
    if theme is not None:
        theme.use_theme(theme.DAY)


@pytest.fixture(autouse=True)
def nothing_left_behind(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a window test that leaves a top-level widget, a running timer or a thread behind.

    Set up before the fixtures of pytest-qt and torn down after they have closed
    the widgets they were given.
    """
    if not {"qapp", "qtbot"}.intersection(request.fixturenames):
        yield
        collect_when_due()
        set_aside_again()
        return
    threads_before = set(threading.enumerate())
    yield
    _clear_clipboard()
    widgets, timers = _qt_leftovers()
    threads = [thread.name for thread in set(threading.enumerate()) - threads_before if thread.is_alive()]
    left = widgets + timers + threads
    collect_when_due()
    set_aside_again()
    if left:
        pytest.fail(f"left behind: {', '.join(left)}", pytrace=False)


def _clear_clipboard() -> None:
    """The next test begins with an empty one; and what the process leaves there, the screenless platform destroys too late."""
    from PySide6.QtGui import QGuiApplication
    if QGuiApplication.instance() is not None:
        QGuiApplication.clipboard().clear()


def _qt_leftovers() -> tuple[list[str], list[str]]:
    """Names of the top-level widgets and active timers that are alive after all that was put off is done."""
    from PySide6.QtCore import QCoreApplication, QEvent
    from PySide6.QtWidgets import QApplication

    QCoreApplication.processEvents()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    if not QApplication.topLevelWidgets() and not _active_timers():
        return [], []
    gc.collect()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    widgets, timers = QApplication.topLevelWidgets(), _active_timers()
    named = ([f"{type(w).__name__} {w.objectName()!r}" for w in widgets],
             [f"{type(t).__name__} of {type(t.parent()).__name__}" for t in timers])
    for timer in timers:
        timer.stop()
    for widget in widgets:
        widget.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    return named


def _active_timers() -> list:
    """Among what the toolkit has alive: the collector knows a hundred times as many things."""
    from PySide6.QtCore import QTimer
    from shiboken6 import getAllValidWrappers

    return [thing for thing in getAllValidWrappers() if isinstance(thing, QTimer) and thing.isActive()]
