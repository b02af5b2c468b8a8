"""One start at a time: who starts while another start is under way waits for it, and then finds the program running.

Impatient hands click twice. Both starts would look for a running program, find none and be two, with one file open in both.
"""

from __future__ import annotations

import os
import time
from pathlib import Path

from app.setup.lock import taken

FILE_NAME = "starting"
PATIENCE_S = 3.0
"""How long a start waits for the one before; one that hangs keeps nobody from work."""
NAP_S = 0.02


class Turn:
    """This start's turn, from now until `over`; the system ends it with the program, however that ends."""

    def __init__(self, folder: Path) -> None:
        """Waits for the turn, at most PATIENCE_S. A folder that cannot be written has no turns: nobody waits there."""
        self._number: int | None = None
        try:
            folder.mkdir(parents=True, exist_ok=True)
            self._number = os.open(folder / FILE_NAME, os.O_RDWR | os.O_CREAT, 0o600)
        except OSError:
            return
        ends = time.monotonic() + PATIENCE_S
        while not taken(self._number) and time.monotonic() < ends:
            time.sleep(NAP_S)

    def over(self) -> None:
        """Let the next start go on; harmless when called again."""
        if self._number is not None:
            os.close(self._number)
            self._number = None
