"""A second start hands its files to the running program; what makes no sense is not opened."""

import json
import subprocess
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace
from PySide6.QtNetwork import QLocalSocket

from app.formats import headstock
from app.setup.places import CHECKOUT
from app.window import ask
from app.window.demo import demo
from app.window.running.one_program import MOST_PLACE, Reception, hand_over, meeting_place
from tests.waiting import until

SECOND = """
import sys
from pathlib import Path
from pathlib import Path
from app.window import handed_over
from app.window.running import one_program
one_program.PATIENCE_MS = 60_000  # as long as a busy machine needs
print(handed_over(Path(sys.argv[1]), [Path(file) for file in sys.argv[2:]]))
"""


@pytest.fixture
def state(tmp_path_factory):
    """A folder with a short name, as a user's own is."""
    return tmp_path_factory.mktemp("s")


@pytest.fixture
def reception(bench, state):
    made = Reception(bench.window.windows, meeting_place(state))
    assert made.listens
    yield made
    made.end()
    for window in bench.window.windows.all:
        if window is not bench.window:
            window.document.replace(window.document.layout, None)
            window.close()
    bench.window.windows.end()
    made.deleteLater()


def second_start(state, *files) -> str:
    """What another process says of handing over, while this one goes on."""
    process = subprocess.Popen([sys.executable, "-c", SECOND, str(state), *map(str, files)], cwd=CHECKOUT,
                               stdout=subprocess.PIPE, text=True)
    until(lambda: process.poll() is not None, "the other process does not end")
    said, _ = process.communicate()
    return said.strip()


def test_files_of_a_second_start_open_here(bench, reception, state, tmp_path):
    files = [tmp_path / f"{name}.headstock.json" for name in ("one", "zwei ü")]
    for file in files:
        headstock.write(replace(demo(), name=file.name), file)
    assert second_start(state, *files) == "True"
    bench.pump()
    windows = bench.window.windows
    assert [window.document.path for window in windows.all] == [None, *files]
    assert second_start(state, files[0]) == "True"
    bench.pump()
    assert len(windows.all) == 3 and windows.current.document.path == files[0]


def test_a_start_without_a_file_gets_a_window_to_begin_in(bench, reception, state):
    assert second_start(state) == "True"
    bench.pump()
    assert len(bench.window.windows.all) == 2 and bench.window.windows.current.front.shown


def test_without_a_running_program_nothing_is_handed_over(state):
    assert not hand_over(meeting_place(state), [])
    (state / "running").write_text("left behind", encoding="utf-8")
    assert not hand_over(meeting_place(state), [])


def test_what_a_dead_program_left_is_taken_over(bench, state):
    (state / "running").write_text("left behind", encoding="utf-8")
    made = Reception(bench.window.windows, meeting_place(state))
    assert made.listens
    made.end()
    made.deleteLater()


def test_a_pipe_of_windows_has_a_name_without_folders(state, monkeypatch):
    folders = [state, state / "other"]
    monkeypatch.setattr("app.window.running.one_program.os.name", "nt")
    names = [meeting_place(folder) for folder in folders]
    assert len(set(names)) == 2 and all("/" not in name and "\\" not in name for name in names)


def test_a_place_with_too_long_a_name_is_none(bench, state):
    assert meeting_place(state / ("x" * MOST_PLACE)) == ""
    assert not hand_over("", [])
    made = Reception(bench.window.windows, "")
    assert not made.listens
    made.deleteLater()


def test_who_gave_up_waiting_has_its_file_open_itself(bench, reception, state, tmp_path):
    """As when this program was too busy to answer: the file would be open in two programs."""
    file = tmp_path / "given up.headstock.json"
    headstock.write(demo(), file)
    socket = QLocalSocket()
    socket.connectToServer(meeting_place(state))
    assert socket.state() == QLocalSocket.LocalSocketState.ConnectedState or socket.waitForConnected()
    socket.write(json.dumps([str(file)]).encode() + b"\n")
    socket.flush()
    socket.abort()
    heard = []
    later = QLocalSocket()  # heard after the one before
    later.connectToServer(meeting_place(state))
    later.readyRead.connect(lambda: heard.append(bytes(later.readAll().data())))
    later.write(b"[]\n")
    until(lambda: b"".join(heard) == b"taken\n")
    bench.pump()
    assert [window.document.path for window in bench.window.windows.all] == [None, None]


@pytest.mark.parametrize("message", [b"nonsense\n", b'{"a": 1}\n', b"[1]\n", b'["relative.headstock.json"]\n', b"\xff\xfe\n", b"[" * 200_000 + b"\n"],
                         ids=lambda message: message[:12].decode("latin-1"))
def test_a_message_without_sense_opens_nothing(bench, reception, state, message):
    socket = QLocalSocket()
    socket.connectToServer(meeting_place(state))
    until(lambda: socket.state() == QLocalSocket.LocalSocketState.ConnectedState)
    socket.write(message)
    until(lambda: socket.state() == QLocalSocket.LocalSocketState.UnconnectedState, "it is not shown the door")
    assert bytes(socket.readAll().data()) == b"" and len(bench.window.windows.all) == 1


@pytest.mark.parametrize("name", ["/a\0b.headstock.json", "/\ud800.headstock.json", "/" + "x" * 5000, "/no/folder/here.headstock.json"], ids=repr)
def test_a_name_that_no_system_takes_is_told_and_opens_nothing(bench, tmp_path, monkeypatch, name):
    """From another start, the list of files opened lately, or a journal that a bad disk spoiled."""
    told, window = [], bench.window
    monkeypatch.setattr(ask, "warn", lambda _, title, text: told.append(text))
    window.document.path = tmp_path / "open.headstock.json"
    assert window.windows.open(Path(name)) is None and not window.files.open(Path(name))
    assert len(told) == 2 and all("cannot be read" in text for text in told)
    assert window.windows.holding(Path(name)) is None and len(window.windows.all) == 1
