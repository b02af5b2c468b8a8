"""Work in turns of the event loop: all of it is done, other things in between, and what is given up is closed."""

import time

from PySide6.QtCore import QObject, QTimer

from app.look.turns import TURN, Turns


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
