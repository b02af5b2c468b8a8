"""Ctrl-C in the terminal ends the program as Quit does: at once when nothing is unsaved, with the question otherwise."""

import os
import signal

import pytest

from app.window import ask
from app.window.running.interrupt import Interrupt
from tests.waiting import until


@pytest.fixture
def quits(bench, monkeypatch):
    """What was asked of the windows' own way to end."""
    asked = []
    monkeypatch.setattr(bench.window.windows, "quit", lambda: asked.append("quit"))
    return asked


@pytest.fixture
def interrupt(bench):
    """Hears of Ctrl-C, and leaves everything as it was."""
    # As in a terminal of its own: who starts the tests beside other work has them ignore it.
    outside = signal.signal(signal.SIGINT, signal.default_int_handler)
    made = Interrupt(bench.window.windows)
    yield made
    made.end()
    made.end()
    assert signal.getsignal(signal.SIGINT) is signal.default_int_handler
    assert signal.set_wakeup_fd(-1) == -1
    signal.signal(signal.SIGINT, outside)


def press_ctrl_c():
    signal.raise_signal(signal.SIGINT)


def test_ctrl_c_is_heard_while_nothing_moves_and_breaks_nothing_off(interrupt, quits):
    press_ctrl_c()
    until(lambda: quits == ["quit"])
    press_ctrl_c()
    until(lambda: quits == ["quit", "quit"])


def test_while_something_is_asked_the_answer_comes_first(bench, interrupt, quits, monkeypatch):
    monkeypatch.setattr("app.window.running.interrupt.QApplication.activeModalWidget", lambda: bench.window)
    press_ctrl_c()
    until(lambda: _empty(interrupt))
    assert quits == []


def test_unsaved_work_is_asked_about(bench, interrupt, monkeypatch):
    bench.window.commands.run("turn over")
    asked = []
    monkeypatch.setattr(ask, "save_first", lambda *_: asked.append("save first?") or "cancel")
    press_ctrl_c()
    until(lambda: asked == ["save first?"])
    bench.pump()
    assert bench.window.isVisible()


@pytest.mark.skipif(os.name == "nt", reason="there is no nohup there")
def test_who_was_told_to_ignore_it_ignores_it(bench, quits):
    before = signal.signal(signal.SIGINT, signal.SIG_IGN)
    try:
        made = Interrupt(bench.window.windows)
        press_ctrl_c()
        bench.pump()
        made.end()
        assert quits == [] and signal.getsignal(signal.SIGINT) is signal.SIG_IGN
    finally:
        signal.signal(signal.SIGINT, before)


def _empty(interrupt: Interrupt) -> bool:
    """Whether all that woke it has been read."""
    import select
    return not select.select([interrupt._hears], [], [], 0)[0]
