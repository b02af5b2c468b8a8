"""From whatever Python the maker started to one that has every part."""

from __future__ import annotations

import os
import sys

from . import stamps
from .places import ENVIRONMENT, in_checkout, inside, interpreter
from .trouble import SetupTrouble

COUNTER = "PEGWRIGHT_RESTARTS"
MOST_RESTARTS = 3


def hand_over(parts: list[str]) -> None:
    """Go on inside the environment at once where nothing has to be set up: what else there is to ask and to say, it does itself.

    Called before anything else is loaded, which the Python inside would load again. Returns where there is more to find
    out; then `ensure` does.
    """
    if os.environ.get(COUNTER) or sys.prefix != sys.base_prefix or not in_checkout():
        return
    if stamps.ready(ENVIRONMENT, parts):
        _go_on_inside()


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
    sys.exit(_run(command))


def _run(command: list[str]) -> int:
    """Run a child that gets the same Ctrl-C as we do, leave the answer to it, and wait for its exit code."""
    import subprocess  # here, for no other start needs it

    process = subprocess.Popen(command)
    while True:
        try:
            return process.wait()
        except KeyboardInterrupt:
            continue
