"""Starts that meet: two at once, one in another language beside a running program, one after a program that hangs."""

import os
import signal
import subprocess
import sys

import pytest
from PySide6.QtCore import QCoreApplication, QEvent

from app.setup.places import CHECKOUT
from app.window import handed_over, receive
from app.window.demo import DEMO, samples
from app.window.running import start_lock as turn
from app.window.running.one_program import Reception, meeting_place
from app.window.running.start_lock import Turn
from tests.waiting import until

PATIENT = """
import sys
from app.window.running import one_program
from app.window.running import start_lock as turn
one_program.PATIENCE_MS = one_program.LOOK_MS = 60_000  # as long as a busy machine needs
turn.PATIENCE_S = 60.0
"""
LISTENS = PATIENT + """
from PySide6.QtCore import QCoreApplication, QObject
class Windows(QObject):
    current = True
    def open(self, path): print("opened", path, flush=True)
application = QCoreApplication([])
reception = one_program.Reception(Windows(), sys.argv[1])
print("listens", reception.listens, flush=True)
application.exec()
"""
SECOND = PATIENT + """
from pathlib import Path
print(one_program.hand_over(sys.argv[1], [Path("/some.headstock.json")]))
"""
WHOLE = PATIENT + """
import app.commands.main, app.window
from app.commands.arguments import parse
from app.window.windows import Windows
def receive(*all, own=app.window.receive):
    own(*all)
    print("hears", flush=True)
app.window.receive = receive
def open(windows, path, own=Windows.open):
    own(windows, path)
    print("has", len(windows.all), flush=True)
Windows.open = open
app.commands.main.run(parse(sys.argv[1:]))
"""
HOMES = ("XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "APPDATA", "LOCALAPPDATA")


@pytest.fixture
def state(tmp_path_factory):
    """A folder with a short name, as a user's own is."""
    return tmp_path_factory.mktemp("s")


@pytest.fixture
def process(qapp, state):
    """Starts Python on a code with words; ended with the test."""
    begun = []

    def begin(code: str, *words: str) -> subprocess.Popen:
        home = dict.fromkeys(HOMES, str(state))
        begun.append(subprocess.Popen([sys.executable, "-c", code, *words], cwd=CHECKOUT, stdout=subprocess.PIPE, text=True,
                                      env=os.environ | home))
        return begun[-1]

    yield begin
    for one in begun:
        one.kill()
        one.communicate()


@pytest.fixture
def listen(bench, state, monkeypatch):
    """Has this program begin to listen, with so many milliseconds of patience for another that may do so."""
    made = []

    def begin(patience: int = 60_000) -> bool:
        monkeypatch.setattr("app.window.running.one_program.LOOK_MS", patience)
        made.append(Reception(bench.window.windows, meeting_place(state)))
        return made[-1].listens

    yield begin
    for one in made:
        one.end()
        one.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_who_begins_to_listen_leaves_the_place_to_a_program_that_hears(listen, process, state):
    running = process(LISTENS, meeting_place(state))
    assert running.stdout.readline() == "listens True\n"
    assert not listen()
    later = process(SECOND, meeting_place(state))
    assert later.stdout.readline() == "True\n", "the program that ran first is deaf"
    assert running.stdout.readline() == "opened /some.headstock.json\n"
    running.kill()
    running.wait()
    assert listen(), "what a program leaves that was killed is taken over"


@pytest.mark.skipif(os.name == "nt", reason="nothing there stops a program as this does")
def test_the_place_of_a_program_that_hangs_is_taken_over(listen, process, state):
    hanging = process(LISTENS, meeting_place(state))
    assert hanging.stdout.readline() == "listens True\n"
    hanging.send_signal(signal.SIGSTOP)
    assert listen(patience=50)


def test_of_two_starts_at_once_one_becomes_the_program_and_opens_what_both_bring(process):
    files = [samples() / DEMO, samples() / "six-in-line.headstock.json"]
    starts = [process(WHOLE, str(file)) for file in files]
    until(lambda: any(one.poll() is not None for one in starts), "both are programs of their own")
    ended, runs = sorted(starts, key=lambda one: one.poll() is None)
    assert ended.returncode == 0 and ended.stdout.read() == ""
    assert [runs.stdout.readline() for _ in range(2)] == ["hears\n", "has 2\n"]


def test_a_turn_is_waited_for_and_a_start_that_hangs_is_not(state, monkeypatch):
    first = Turn(state / "new")
    naps = []
    monkeypatch.setattr("app.window.running.start_lock.time.sleep", lambda seconds: (naps.append(seconds), first.over()))
    second = Turn(state / "new")
    assert naps == [turn.NAP_S], "it goes on as soon as the one before is over"
    monkeypatch.setattr("app.window.running.start_lock.PATIENCE_S", 0.0)
    third = Turn(state / "new")
    assert naps == [turn.NAP_S]
    for one in (first, second, third):
        one.over()


def test_where_no_folder_can_be_everything_goes_on_alone(bench, state):
    (state / "file").write_text("in the way", encoding="utf-8")
    nowhere = state / "file" / "state"
    alone = Turn(nowhere)
    assert not handed_over(nowhere, [])
    receive(bench.window.windows, nowhere, alone)
    assert bench.window.windows.reception is None
    bench.window.windows.stop_receiving()
