"""From whatever Python the maker started to one that has every part."""

from __future__ import annotations

import os
import sys
from typing import TYPE_CHECKING

from . import stamps
from .places import ENVIRONMENT, in_checkout, inside, interpreter
from .trouble import SetupTrouble

if TYPE_CHECKING:
    import subprocess

COUNTER = "PEGWRIGHT_RESTARTS"
MOST_RESTARTS = 3


def ensure(parts: list[str]) -> None:
    """Return if the running Python has these parts; else set up and go on inside the environment.

    In the second case it does not return: this process becomes (on Windows:
    waits for) the same command run by the environment's Python. An installed
    copy, or another environment that has everything, is used as it is. The imports of what
    is seldom needed stand where they are needed, to keep every other start
    short. Raises SetupTrouble.
    """
    if not in_checkout() or _all_here(parts):
        os.environ.pop(COUNTER, None)
        return
    if not stamps.ready(ENVIRONMENT, parts):
        from .environment import prepare

        prepare(ENVIRONMENT, parts)
    _go_on_inside()


def _all_here(parts: list[str]) -> bool:
    if inside(ENVIRONMENT):
        return stamps.ready(ENVIRONMENT, parts)
    in_another = sys.prefix != sys.base_prefix
    if not in_another and stamps.ready(ENVIRONMENT, parts):
        return False
    from .present import everything

    return everything(parts)


def _go_on_inside() -> None:
    restarts = int(os.environ.get(COUNTER, "0")) + 1
    if restarts > MOST_RESTARTS:
        raise SetupTrouble(
            f"The Python in {ENVIRONMENT} does not start as it should: delete that folder and start again."
        )
    os.environ[COUNTER] = str(restarts)
    python = str(interpreter(ENVIRONMENT))
    command = [python, *sys.orig_argv[1:]]
    if os.name != "nt":
        os.execv(python, command)
    import subprocess  # here, for no other start needs it

    sys.exit(_wait(subprocess.Popen(command)))


def _wait(process: subprocess.Popen) -> int:
    """Wait for a child that gets the same Ctrl-C as we do, and leave the answer to it."""
    while True:
        try:
            return process.wait()
        except KeyboardInterrupt:
            continue
