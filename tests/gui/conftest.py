"""A fresh window for each test, and a hand on what works beside it."""

import threading

import pytest

from app.threads.background import Background
from app.window import chances
from app.window.background import aside
from tests.gui.bench import Bench


@pytest.fixture
def bench(qtbot, tmp_path) -> Bench:
    return Bench(qtbot, tmp_path)


@pytest.fixture(autouse=True)
def no_rest(monkeypatch: pytest.MonkeyPatch) -> None:
    """Work beside the window does not stand aside for a quarter of a second after each step of the hand.

    Tests of how the window moves meanwhile have a `no_rest` of their own that leaves this as it is.
    """
    monkeypatch.setattr(aside, "REST", 0.0)


@pytest.fixture(autouse=True)
def chances_come(monkeypatch: pytest.MonkeyPatch) -> None:
    """Chances are not worked out beside a test that does not ask for them: files of those that do have a `chances_come` of
    their own, in which they come at once."""
    monkeypatch.setattr(chances, "REST_MS", 3_600_000)


@pytest.fixture
def beside(monkeypatch: pytest.MonkeyPatch) -> threading.Event:
    """Work beside the window is begun and not done, until a test sets this or the window waits for the end of it.

    Ask for it before the window, to look at what is so while something runs, however quick the machine would be with it.
    """
    go = threading.Event()
    make, wait = Background.__init__, Background.wait

    def made(thread: Background, work, parent) -> None:
        def later():
            go.wait()
            return work()
        make(thread, later, parent)

    def waited(thread: Background, seconds: float | None = None) -> bool:
        go.set()
        return wait(thread, seconds)
    monkeypatch.setattr(Background, "__init__", made)
    monkeypatch.setattr(Background, "wait", waited)
    return go
