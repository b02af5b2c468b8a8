"""Work in turns of the event loop: all of it is done, other things in between, and what is given up is closed."""

import time

from PySide6.QtCore import QObject, QTimer

from app.look.turns import TURN, Turns
from tests.waiting import until


def work(seconds: float) -> None:
    """Use up so much processor time."""
    ends = time.thread_time() + seconds
    while time.thread_time() < ends:
        pass


def test_the_event_loop_turns_between_steps(qtbot):
    parent, told = QObject(), []
    turns, beat = Turns(parent), QTimer(parent)

    def steps():
        for k in range(6):
            work(1.2 * TURN)
            told.append(k)
            yield

    beat.timeout.connect(lambda: told.append("beat"))
    beat.start(0)
    with qtbot.waitSignal(turns.done):
        turns.begin(steps())
        assert told == [] and turns.busy, "nothing is done in the turn that asks for it"
    beat.stop()
    assert [one for one in told if one != "beat"] == list(range(6)) and not turns.busy
    assert "beat" in told[told.index(0):told.index(5)]


def test_what_is_given_up_or_replaced_is_closed(qtbot):
    parent, told = QObject(), []
    turns = Turns(parent)

    def steps(name: str):
        try:
            told.append(name)
            for _ in range(12):
                work(1.2 * TURN)
                yield
            told.append(f"{name} to its end")
        finally:
            told.append(f"{name} closed")

    turns.begin(steps("one"))
    qtbot.waitUntil(lambda: "one" in told)
    turns.begin(steps("two"))
    assert told == ["one", "one closed"]
    turns.finish()
    assert told[2:] == ["two", "two to its end", "two closed"] and not turns.busy
    turns.begin(steps("three"))
    turns.stop()
    qtbot.wait(20)
    assert "three" not in told and not turns.busy


def test_a_step_may_give_up_what_it_is_a_part_of(qtbot):
    """As a row does whose making changes what is held: a generator cannot be closed while it runs."""
    parent, told = QObject(), []
    turns = Turns(parent)
    turns.done.connect(lambda: told.append("done"))

    def second():
        told.append("second")
        yield

    def first(last: bool):
        try:
            turns.begin(second())
            if not last:
                yield
                told.append("goes on")
        finally:
            told.append("first closed")

    for last in (False, True):
        told.clear()
        turns.begin(first(last))
        until(lambda: "done" in told)
        assert told == ["first closed", "second", "done"] and not turns.busy


def test_steps_that_break_are_none_any_more(qtbot, qapp):
    parent, told = QObject(), []
    turns = Turns(parent)
    turns.done.connect(lambda: told.append("done"))

    def broken():
        yield
        raise ZeroDivisionError("planted")
    with qtbot.captureExceptions() as raised:
        turns.begin(broken())
        until(lambda: raised)
    assert raised[0][0] is ZeroDivisionError and not turns.busy and told == []
    turns.begin(iter_once())
    until(lambda: told == ["done"])


def iter_once():
    yield
