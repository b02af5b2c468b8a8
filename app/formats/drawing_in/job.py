"""An import in another process: it can be polled, cancelled and killed, and cannot take this one down."""

from __future__ import annotations

import os
import subprocess
import sys
import threading
import time
from pathlib import Path as FilePath

from app.formats.drawing_in.result import DrawingRead
from app.formats.drawing_in.wire import MARK
from app.formats.errors import FormatError
from geometry.saying import LANGUAGE, language, say
from geometry.tolerance import JOIN

SECONDS = 8.0
"""Most of the processor's time for one file: the maker hears within ten seconds, start and end of the process included."""

BUSY = 12.0
"""By the clock so many times as long, since a busy machine gives the process a small part of the processor: what is told is how
far it is, and Cancel ends it."""

SECONDS_A_MB = 10.0
MOST_SECONDS = 120.0
"""A drawing of very many shapes takes longer however it is read, and its maker can see how far it is: so much more for
each MB beyond SMALL_MB, and no more than this."""
SMALL_MB = 0.2

UNPACKING = 15.0
"""Seconds that the one-file program gets on top: the other process may have to unpack itself first."""

ENDS_SECONDS = 1.0
"""How long a killed process is waited for: one that a drive which has gone lets wait ends when the drive does. The thread that
reads from it takes its end."""

MEMORY_MB = 1024
"""Most memory for one file."""

_OUT_OF_MEMORY = (-6, -9, -11, 127, 134, 137, 139)
"""How a process ends when a library in it meets the memory limit: aborted, killed, or given up by the C library."""

_MOST_ANSWER = 256 * 1024 * 1024
"""Bytes of an answer; far above any drawing that passes the reader's limits."""


class ImportJob:
    """One drawing being read in a worker process.

    start(), then poll() until it is true (it never blocks), then result().
    cancel() ends it at once; so does the time limit, when poll() or result()
    notices it.
    """

    def __init__(self, path: str | os.PathLike[str], unit: str | None = None, join: float = JOIN,
                 seconds: float | None = None, memory_mb: int = MEMORY_MB) -> None:
        self.path = os.path.abspath(os.fspath(path))
        self.seconds = seconds = allowed(self.path) if seconds is None else seconds
        self.progress = 0.0
        """how much of the work is done, 0..1"""
        self.memory_mb = memory_mb
        self._arguments = [self.path, unit or "", repr(float(join)), repr(float(seconds)), str(int(memory_mb))]
        self._process: subprocess.Popen[bytes] | None = None
        self._reader: threading.Thread | None = None
        self._read: DrawingRead | Exception | None = None
        self._ends_at = 0.0
        self._refusal: str | None = None

    def start(self) -> ImportJob:
        """Start the worker and return at once. Raises FormatError when it cannot be started."""
        root = FilePath(__file__).resolve().parents[3]
        environment = {**os.environ, "OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1", "PYTHONIOENCODING": "utf-8", LANGUAGE: language(),
                       "PYTHONPATH": os.pathsep.join(filter(None, [str(root), os.environ.get("PYTHONPATH", "")]))}
        try:
            self._process = subprocess.Popen(
                [sys.executable, *_worker(), *self._arguments], cwd=root, env=environment,
                stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0))
        except (OSError, ValueError) as error:
            raise FormatError(say("The import could not be started: {error}.", error=error)) from error
        self._ends_at = time.monotonic() + BUSY * self.seconds + (UNPACKING if getattr(sys, "frozen", False) else 0.0)
        self._reader = threading.Thread(target=self._collect, args=(self._process,), daemon=True, name="drawing import")
        self._reader.start()
        return self

    def poll(self) -> bool:
        """Whether the job has ended, in whatever way."""
        if self._process is None or self._reader is None:
            return False
        if not self._reader.is_alive():
            return True
        if time.monotonic() > self._ends_at:
            self._stop(self._too_long())
            return True
        return False

    def cancel(self) -> None:
        """End the job; result() then says that it was cancelled. Harmless when it has ended already."""
        if self._process is not None and not self.poll():
            self._stop(say("The import was cancelled."))

    def result(self) -> DrawingRead:
        """The drawing, waiting for it if need be. Raises FormatError, one sentence, for every other end."""
        assert self._process is not None and self._reader is not None, "start() comes first"
        while not self.poll():
            self._reader.join(max(0.0, min(0.2, self._ends_at - time.monotonic())))
        if self._refusal is not None:
            raise FormatError(self._refusal)
        self._reader.join()
        code = self._process.wait()
        from app.formats.drawing_in.worker import OUT_OF_TIME, too_large
        if isinstance(self._read, DrawingRead):
            return self._read
        if code == OUT_OF_TIME:
            raise FormatError(self._too_long()) from self._read
        if isinstance(self._read, FormatError) or self._read is not None and not isinstance(self._read, ValueError):
            raise self._read
        if code in _OUT_OF_MEMORY:
            raise FormatError(too_large(self.memory_mb)) from self._read
        raise FormatError(say("The drawing could not be read: the reader stopped without an answer; save the "
                              "drawing again in the program that drew it.")) from self._read

    def _too_long(self) -> str:
        return say("The drawing takes longer than {seconds:g} seconds to read: export only the outline, the slots and the holes.",
                   seconds=self.seconds)

    def _stop(self, refusal: str) -> None:
        assert self._process is not None and self._reader is not None
        self._refusal = refusal
        self._process.kill()
        self._reader.join(ENDS_SECONDS)

    def _collect(self, process: subprocess.Popen[bytes]) -> None:
        """Drain the pipe, so that a long answer cannot block the worker, and give it up beyond the limit."""
        assert process.stdout is not None
        with process.stdout as pipe:
            start = pipe.read(1)
            while start == MARK:
                line = pipe.readline(40)
                try:
                    self.progress = min(1.0, max(self.progress, float(line)))
                except ValueError:
                    break
                start = pipe.read(1)
            answer = start + pipe.read(_MOST_ANSWER)
            if len(answer) > _MOST_ANSWER:
                answer = b""
                process.kill()
        process.wait()
        if self._refusal is None:
            from app.formats.drawing_in.wire import decode
            try:
                self._read = decode(answer)
            except Exception as error:  # told by result(), in the thread that asks for it
                self._read = error


def allowed(path: str) -> float:
    """Seconds that a file may take by its size; SECONDS for one that cannot be looked at, since that is told soon enough."""
    try:
        size = os.stat(path).st_size / 1e6
    except OSError:
        return SECONDS
    return min(MOST_SECONDS, SECONDS + SECONDS_A_MB * max(0.0, size - SMALL_MB))


def read_drawing_safely(path: str | os.PathLike[str], unit: str | None = None, join: float = JOIN,
                        seconds: float | None = None, memory_mb: int = MEMORY_MB) -> DrawingRead:
    """Like read_drawing, in a worker process that may take `seconds` and `memory_mb` and no more."""
    return ImportJob(path, unit, join, seconds, memory_mb).start().result()


def _worker() -> list[str]:
    """The words after the name of the running program that make it the other process."""
    from app.formats.drawing_in.worker import ALONE
    return [ALONE] if getattr(sys, "frozen", False) else ["-m", "app.formats.drawing_in.worker"]
