"""Notes inside the environment that say what it holds, and whether making it was cut short.

A stamp repeats the pins it stands for, so that comparing it needs no more than
reading two small files, and names the checkout and the Python it was made for.
"""

import sys
from pathlib import Path

from .places import PINS, inside, interpreter

UNFINISHED = "pegwright-unfinished"


def text(environment: Path, pins: str, python: str) -> str:
    """What a stamp holds for these pins in this environment under this Python, such as `3.12`."""
    return f"{_place(environment)}\npython {python}\n{pins}"


def running_python() -> str:
    """Version of the running Python as a stamp writes it."""
    return f"{sys.version_info[0]}.{sys.version_info[1]}"


def state(environment: Path, part: str, python: str | None = None) -> str:
    """How the environment stands for the part `app` or `tests`.

    `ready`: holds exactly these pins. `outdated`: whole, but made for other
    pins, or for none yet. `broken`: cut short, moved, or made for another
    Python (only looked at if `python` is given), so that it must be made anew.
    `absent`: no stamp of any part; it may be the maker's own environment.
    """
    if (environment / UNFINISHED).exists():
        return "broken"
    try:
        found = _stamp(environment, part).read_text(encoding="utf-8")
    except (FileNotFoundError, NotADirectoryError):
        stamped = any(_stamp(environment, other).exists() for other in PINS)
        return "outdated" if stamped else "absent"
    checkout, made_for, pins = found.split("\n", 2) if found.count("\n") >= 2 else ("", "", "")
    if checkout != _place(environment):
        return "broken"
    if python is not None and made_for != f"python {python}":
        return "broken"
    return "ready" if pins == PINS[part].read_text(encoding="utf-8") else "outdated"


def ready(environment: Path, parts: list[str]) -> bool:
    """Whether the environment holds these parts, whole; costs two small file reads a part.

    Asked from inside the environment, its Python must also be the one it was made for.
    """
    python = running_python() if inside(environment) else None
    whole = all(state(environment, part, python) == "ready" for part in parts)
    return whole and interpreter(environment).exists()


def begin(environment: Path) -> None:
    """Note that the environment is being made or changed."""
    (environment / UNFINISHED).write_text("Set-up has begun and not ended.\n", encoding="utf-8")


def finish(environment: Path, parts: list[str], python: str) -> None:
    """Note that the environment holds these parts, whole."""
    for part in parts:
        pins = PINS[part].read_text(encoding="utf-8")
        _stamp(environment, part).write_text(text(environment, pins, python), encoding="utf-8")
    (environment / UNFINISHED).unlink()


def _place(environment: Path) -> str:
    """Which checkout an environment stands in. One that `.venv` is a link to has not moved: it would be emptied under its own."""
    return f"checkout {environment.resolve().parent}"


def _stamp(environment: Path, part: str) -> Path:
    return environment / f"pegwright-{part}.txt"
