"""One line on standard error that shows how far set-up is."""

import shutil
import sys
import time
from typing import TextIO


class Progress:
    """A line that is rewritten in place on a terminal, and written anew for each stage elsewhere.

    With no stream at all (a program started without a console) it is silent.
    """

    def __init__(self, stream: TextIO | None = None) -> None:
        self._stream = stream if stream is not None else sys.stderr
        self._terminal = self._stream is not None and self._stream.isatty()
        self._began = time.monotonic()
        self._stage = ""
        self._width = 0

    def stage(self, text: str) -> None:
        """Say what is being done now."""
        anew = text != self._stage
        self._stage = text
        if self._terminal:
            self.tick()
        elif anew and self._stream is not None:
            print(f"Pegwright set-up: {text}", file=self._stream, flush=True)

    def tick(self) -> None:
        """Show that time passes while the stage stays the same."""
        if self._terminal:
            seconds = int(time.monotonic() - self._began)
            room = shutil.get_terminal_size().columns - 1
            self._rewrite(f"Pegwright set-up: {self._stage} ({seconds} s)"[:room])

    def close(self) -> None:
        """Clear the line, so that what comes next starts at the left."""
        if self._width:
            self._rewrite("")
            self._rewrite("")

    def _rewrite(self, line: str) -> None:
        self._stream.write("\r" + line.ljust(self._width) + ("\r" if not line else ""))
        self._stream.flush()
        self._width = len(line)
