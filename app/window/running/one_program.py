"""A second start hands its files to the program that runs already: one process, several windows.

The two meet at a socket in this user's own folder. A start that gets no answer
within a moment goes on as a program of its own, so a copy that hangs keeps
nobody from work.
"""

from __future__ import annotations

import hashlib
import json
import os
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer
from PySide6.QtNetwork import QLocalServer, QLocalSocket
from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from app.window.windows import Windows

PATIENCE_MS = 3000
"""How long a start waits for the answer of the running program."""
LOOK_MS = 1000
"""How long a program that begins to listen waits for the one that may listen already."""
MOST_BYTES = 1_000_000
MOST_PLACE = 100
"""Bytes of the socket's name: systems refuse longer ones, and then every start is a program of its own."""
TAKEN = b"taken\n"
NO_SENSE = b"\n"


def meeting_place(folder: Path) -> str:
    """The name of the socket in a folder of this user's; "" where it would be too long.

    On Windows it is a pipe, which lies in no folder: its name is made from that of the folder.
    """
    name = str(folder / "running")
    if os.name == "nt":
        return f"pegwright-{hashlib.sha256(os.fsencode(name)).hexdigest()[:16]}"
    return name if len(os.fsencode(name)) <= MOST_PLACE else ""


def hand_over(place: str, files: Sequence[Path]) -> bool:
    """Give the files (absolute) to the running program; whether there is one that took them."""
    if not place or (os.name != "nt" and not os.path.exists(place)):
        return False
    socket = QLocalSocket()
    socket.connectToServer(place)
    if not socket.waitForConnected(PATIENCE_MS):
        return False
    socket.write(json.dumps([str(file) for file in files]).encode() + b"\n")
    socket.flush()
    answer = b""
    while not answer.endswith(b"\n") and socket.waitForReadyRead(PATIENCE_MS):
        answer += bytes(socket.readAll().data())
    socket.disconnectFromServer()
    return answer == TAKEN


def answers(place: str) -> bool:
    """Whether a program hears there: it shows what makes no sense the door at once, while one that hangs does nothing."""
    socket = QLocalSocket()
    socket.connectToServer(place)
    if not socket.waitForConnected(LOOK_MS):
        return False
    socket.write(NO_SENSE)
    socket.flush()
    heard = socket.waitForDisconnected(LOOK_MS) or socket.state() == QLocalSocket.LocalSocketState.UnconnectedState
    socket.abort()
    return heard


class Reception(QObject):
    """Listens for later starts and opens what they bring, each file in a window of its own.

    Where another program of this user listens already (this one was started in another language, say), it stays with that:
    the toolkit would put this one's socket in place of the other's, which then hears of nothing any more.
    """

    def __init__(self, windows: Windows, place: str) -> None:
        super().__init__(windows)
        self._windows = windows
        self._waiting: list[list[str]] = []
        self._server = QLocalServer(self)
        self._server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        self._server.newConnection.connect(self._met)
        self._later = QTimer(self, singleShot=True, timeout=self._open)
        if place and not answers(place) and not self._server.listen(place):
            QLocalServer.removeServer(place)  # left behind by a program that died
            self._server.listen(place)

    @property
    def listens(self) -> bool:
        """Whether later starts are heard."""
        return self._server.isListening()

    def end(self) -> None:
        """Hear no more: the next start is a program of its own."""
        self._server.close()

    def _met(self) -> None:
        while (socket := self._server.nextPendingConnection()) is not None:
            socket.readyRead.connect(self._read)
            socket.disconnected.connect(socket.deleteLater)

    def _read(self) -> None:
        socket = self.sender()
        if not socket.canReadLine():
            if socket.bytesAvailable() > MOST_BYTES:
                socket.abort()
            return
        files = read_message(bytes(socket.readLine(MOST_BYTES).data()))
        if files is None or self._windows.current is None:  # without sense, or too late: the program ends
            socket.abort()
            return
        socket.write(TAKEN)
        socket.flush()
        if socket.state() != QLocalSocket.LocalSocketState.ConnectedState:
            return  # it gave up waiting and opens them itself: no file in two programs
        self._waiting.append(files)
        # Opening may ask something; the other start has its answer and is not kept waiting.
        self._later.start(0)

    def _open(self) -> None:
        waiting, self._waiting = self._waiting, []
        for files in waiting:
            opened = [self._windows.open(Path(file)) for file in files] or [self._windows.empty()]
            for window in self._windows.all:
                if window in opened:
                    QApplication.alert(window)


def read_message(line: bytes) -> list[str] | None:
    """The names in a message; None for one that makes no sense."""
    try:
        files = json.loads(line)
    except (ValueError, RecursionError):
        return None
    good = isinstance(files, list) and all(isinstance(file, str) and os.path.isabs(file) for file in files)
    return files if good else None
