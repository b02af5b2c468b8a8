"""Work beside the window stands aside while the hand moves the paper, and goes on when it rests."""

import math
import sys
import time

import pytest
from PySide6.QtCore import QObject, QPoint

from app.window import aside
from app.window.background import Background
from app.window.demo import demo
from app.window.trial import Trial
from tests.waiting import rest, until


class Parts:
    """Work in small parts, counted; each asks first whether it is cancelled."""

    def __init__(self, most: int = 100_000) -> None:
        self.done, self.most = 0, most

    def __call__(self, layout, progress, cancelled) -> str:
        while self.done < self.most:
            if cancelled():
                return "stopped"
            self.done += 1
            time.sleep(0.002)
        return "ended"


@pytest.fixture
def parts():
    return Parts()


@pytest.fixture
def thread(parts, qtbot, monkeypatch):
    parent = QObject()
    trial = Trial(demo(), parts, lambda part: None)
    made = Background(trial, parent)
    made.trial, made.owner = trial, parent
    yield made
    trial.stop()
    monkeypatch.setattr(aside, "REST", 0.0)
    made.wait()


@pytest.fixture
def never_rests(monkeypatch):
    """One step of the hand, and no test is quick enough to see it rest; until then it has rested for ever."""
    monkeypatch.setattr(aside, "_last", -math.inf)
    monkeypatch.setattr(aside, "REST", 1e6)


@pytest.mark.parametrize("way", ["zoom", "pan"])
def test_no_part_of_the_work_is_done_between_two_steps_of_the_paper(bench, parts, thread, never_rests, monkeypatch, way):
    view = bench.view
    step = (lambda: view.zoom(1.01)) if way == "zoom" else (lambda: view.pan(QPoint(3, 0)))
    thread.start()
    until(lambda: parts.done > 5)
    step()
    rest(0.05)
    before = parts.done
    for _ in range(4):
        step()
        rest(0.06)
        assert parts.done <= before + 1, "the part under way is finished, none is begun"
    monkeypatch.setattr(aside, "REST", 0.25)
    until(lambda: parts.done > before + 5, "it goes on when the hand rests")


def test_a_step_of_a_drag_counts_and_hovering_over_the_drawing_does_not(bench, never_rests):
    x, y = bench.origin("treble face 2")
    for k in range(4):
        bench.move((x + k, y + 30))
    assert aside.at_rest()
    bench.press((x, y))
    bench.move((x + 6, y + 9))
    assert not aside.at_rest()
    bench.window.hand.cancel()


def test_stopped_work_ends_though_the_hand_goes_on(bench, thread, never_rests):
    bench.view.zoom(1.01)
    thread.start()
    until(thread.isRunning)
    thread.trial.stop()
    until(thread.isFinished, "it waits for the hand though nobody wants its answer")


def test_a_thread_gives_the_interpreter_back_soon(thread):
    thread.start()
    assert sys.getswitchinterval() <= 0.001
