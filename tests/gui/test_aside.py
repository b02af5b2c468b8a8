"""Work beside the window stands aside while the hand moves the paper or the window, and goes on when it rests."""

import math
import sys
import threading
import time
from functools import partial

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtTest import QTest

from app.threads.background import Background, running
from app.window.background import aside, motion
from app.window.background.aside import stand_aside
from geometry.cancellation import asking
from geometry.edits import move_features
from tests.waiting import rest, until


class Parts:
    """Work in small parts, counted; each asks first whether it may go on."""

    def __init__(self, most: int = 100_000) -> None:
        self.done, self.most = 0, most

    def __call__(self, ask) -> None:
        while self.done < self.most:
            ask()
            self.done += 1
            time.sleep(0.002)


@pytest.fixture
def parts():
    return Parts()


@pytest.fixture
def thread(parts, qtbot, monkeypatch):
    parent, stop = QObject(), threading.Event()
    made = Background(partial(parts, asking(partial(stand_aside, stop.is_set))), parent)
    made.stop, made.owner = stop.set, parent
    yield made
    stop.set()
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
    thread.stop()
    until(thread.isFinished, "it waits for the hand though nobody wants its answer")


def test_a_thread_gives_the_interpreter_back_soon(thread):
    thread.start()
    assert sys.getswitchinterval() <= 0.001


# ---- plans ------------------------------------------------------------------
class Busy:
    """A hand that works until it is told to rest; how often work beside it has asked."""

    def __init__(self) -> None:
        self.asked, self.rests = 0, False

    def __call__(self) -> bool:
        self.asked += 1
        return self.rests


@pytest.fixture
def busy(bench, monkeypatch):
    """The hand is at work for good, whatever the clock says."""
    hand = Busy()
    monkeypatch.setattr(aside, "at_rest", hand)
    yield hand
    hand.rests = True


ANSWERS = {"router": lambda room: room.planned, "order": lambda room: room.work, "book": lambda room: room.work,
           "sheets": lambda room: room.pages}


def standing(hand: Busy) -> None:
    """Wait until work has come to where it asks, and is told to wait."""
    before = hand.asked
    until(lambda: hand.asked > before, "it never asks")


@pytest.mark.parametrize("stage", ANSWERS)
def test_a_plan_waits_for_the_hand_and_comes_when_it_rests(bench, busy, stage):
    bench.window.set_stage(stage)
    room = bench.window.rooms[stage]
    until(lambda: running(room.errand))
    standing(busy)
    assert room.errand.busy and not ANSWERS[stage](room)
    busy.rests = True
    until(lambda: ANSWERS[stage](room))


@pytest.mark.parametrize("stage", ANSWERS)
def test_a_plan_for_a_layout_that_is_gone_makes_room_for_the_next_though_the_hand_goes_on(bench, busy, stage):
    bench.window.set_stage(stage)
    room = bench.window.rooms[stage]
    until(lambda: running(room.errand))
    [old] = running(room.errand)
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    until(lambda: old.isFinished() and room.errand.busy, "the plan that nobody wants is in the way")
    assert not ANSWERS[stage](room)
    busy.rests = True
    until(lambda: not room.errand.busy)
    assert ANSWERS[stage](room) and (stage == "sheets" or ANSWERS[stage](room).layout == bench.layout)


def test_a_layout_that_comes_back_while_another_is_planned_has_its_plan(bench, busy):
    busy.rests = True
    bench.window.set_stage("router")
    room = bench.window.rooms["router"]
    until(lambda: room.marks())
    busy.rests = False
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    assert not room.marks() and room.errand.busy
    bench.window.commands.run("undo")
    assert room.marks() and room.planned.layout is bench.layout
    busy.rests = True
    until(lambda: not room.errand.busy)
    assert room.marks() and room.planned.layout is bench.layout


def test_a_window_closes_while_its_plan_stands_aside(bench, busy):
    bench.window.set_stage("order")
    room = bench.window.rooms["order"]
    until(lambda: running(room.errand))
    standing(busy)
    bench.window.close()
    assert running(bench.window) == [] and room.work is None


# ---- what counts as a step of the hand ------------------------------------------
@pytest.fixture
def steps(bench, monkeypatch):
    """What the window's motion has told of the hand so far."""
    told = []
    monkeypatch.setattr(motion, "hand_works", lambda: told.append(1))
    return told


@pytest.fixture
def screen(bench, steps):
    """The window as the system knows it: what is sent to it comes as from a mouse."""
    return bench.window.windowHandle()


def on(widget) -> QPoint:
    """The middle of a widget, in points of its window."""
    return widget.mapTo(widget.window(), widget.rect().center())


def test_the_edge_of_the_window_under_the_hand_counts(bench, steps):
    bench.window.resize(1300, 840)
    until(lambda: steps)


def test_a_list_that_is_scrolled_counts(bench, steps, screen):
    place = on(bench.window.side.inside.snags)
    QTest.wheelEvent(screen, QPointF(place), QPoint(0, -120))
    until(lambda: steps)


def test_a_key_that_repeats_itself_counts_and_one_that_is_pressed_does_not(bench, steps, screen):
    bench.view.setFocus()
    steps.clear()
    QCoreApplication.sendEvent(screen, QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Shift, Qt.KeyboardModifier.NoModifier))
    assert not steps
    QCoreApplication.sendEvent(screen, QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Shift, Qt.KeyboardModifier.NoModifier, "", True, 1))
    assert steps


def test_the_line_between_drawing_and_panel_counts_while_it_is_drawn_and_a_press_or_a_way_over_it_does_not(bench, steps, screen):
    """Sent one by one: what else the window hears meanwhile is the machine's own."""
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    place = on(bench.window.splitter.handle(1))
    before = bench.window.splitter.sizes()

    def counted(kind: QEvent.Type, at: QPoint, button: Qt.MouseButton, held: Qt.MouseButton) -> int:
        steps.clear()
        told = QMouseEvent(kind, QPointF(at), QPointF(screen.mapToGlobal(at)), button, held, Qt.KeyboardModifier.NoModifier)
        QCoreApplication.sendEvent(screen, told)
        return len(steps)

    assert not counted(QEvent.Type.MouseMove, place, none, none)
    assert not counted(QEvent.Type.MouseButtonPress, place, left, left)
    assert counted(QEvent.Type.MouseMove, place - QPoint(30, 0), none, left)
    counted(QEvent.Type.MouseButtonRelease, place - QPoint(30, 0), left, none)
    assert bench.window.splitter.sizes() != before
