"""What is written about a fault of the program: versions, where it arose, the last steps. No names of the maker's folders."""

from __future__ import annotations

import os
import sys
import traceback
from collections.abc import Iterable
from pathlib import Path

import PySide6

from app import __version__
from app.setup.places import CHECKOUT

MOST_FRAMES = 40
MOST_TEXT = 2000
"""Characters of an exception's own words: they may hold a whole file."""


def report(error: BaseException, doing: str, steps: Iterable[str], told: Iterable[str], hidden: Iterable[str] = ()) -> str:
    """The report as text. `steps` are names of the last steps, `told` what the window toolkit said, `hidden` what to leave out."""
    import platform  # here, as the libraries are: nobody should wait for a report that is seldom written

    from app.window.dialogs.libraries import libraries
    lines = [f"Pegwright {__version__}, Python {platform.python_version()}, PySide6 {PySide6.__version__}, "
             f"{platform.system()} {platform.release()} {platform.machine()}",
             "With " + ", ".join(f"{library.name} {library.version}" for library in libraries()),
             f"While: {doing}", "", "Last steps, oldest first:",
             *(f"  {step}" for step in steps), "", "Where it arose:", _trace(error)]
    said = list(told)
    if said:
        lines += ["", "Said by the window toolkit:", *(f"  {line}" for line in said)]
    return _without_places("\n".join(lines), hidden) + "\n"


def place_of(error: BaseException) -> str:
    """Kind and place of an error: the same for the same fault met again."""
    frames = traceback.extract_tb(error.__traceback__)
    where = f"{frames[-1].filename}:{frames[-1].lineno}" if frames else "?"
    return f"{type(error).__name__} at {where}"


def _trace(error: BaseException) -> str:
    # Without the words of the source lines: the program's own are known, others are nobody's business.
    lines = traceback.TracebackException.from_exception(error, limit=-MOST_FRAMES, lookup_lines=False,
                                                        compact=True).format(chain=True)
    text = "".join(line if len(line) <= MOST_TEXT else line[:MOST_TEXT] + "…\n" for line in lines)
    return text.rstrip()


def _without_places(text: str, hidden: Iterable[str]) -> str:
    """The text without the maker's own folders: those of the program become its rooms, the home folder `~`."""
    inner = [str(CHECKOUT), *(place for place in sys.path if len(place) > 1)]
    for place in sorted(set(inner), key=len, reverse=True):
        text = text.replace(place.rstrip(os.sep) + os.sep, "")
    for place in sorted({h for h in hidden if len(h) > 1}, key=len, reverse=True):
        text = text.replace(place, "…")
    return text.replace(str(Path.home()), "~") if len(str(Path.home())) > 1 else text
