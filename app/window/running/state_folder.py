"""The folder of the user's own for what is to be found by the next start: journals, and whether the program runs."""

from __future__ import annotations

import os
import sys
from pathlib import Path

NAME = "Pegwright"


def state_folder() -> Path:
    """Where it is by the habits of the system; it may not be there yet.

    Where the base directories of freedesktop.org hold and nothing is odd about them, they are read here: the library
    that knows all systems takes a twentieth of the time to the first painted card, and it is asked in every other case.
    Both must name the same folder, or unsaved work would not be found again.
    """
    if sys.platform.startswith("linux"):
        state, home = (os.environ.get(name, "") for name in ("XDG_STATE_HOME", "HOME"))
        if os.path.isabs(state):
            return Path(state, NAME)
        if os.path.isabs(home):
            return Path(home, ".local", "state", NAME)
    from platformdirs import user_state_path

    return user_state_path(NAME, appauthor=False)
