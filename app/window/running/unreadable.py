"""Telling the maker of unsaved work that was found at the start and cannot be read: what, where, that it stays, what to do."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.window import ask, kept
from app.window.running.recovery import written_down
from geometry.checks.words import told_first
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.document.leftovers import Unreadable
    from app.window.windows import Windows

TOLD = "unreadable work told of"
"""The setting with the marks of what the maker wants to hear no more of."""
MOST_NAMED = 3
"""Files named in one question; a disk that spoils one file may have spoiled many."""


def tell(windows: Windows, found: list[Unreadable]) -> None:
    """Tell of each once, in one question for all; of those that the maker asks to be reminded of, at each start.

    Nothing is removed or renamed, so that an updated program, or somebody who knows the format, may still read it.
    """
    known = kept.words(windows.settings, TOLD)
    news = [one for one in found if _mark(one) not in known]
    if news and ask.unreadable(windows.current, _words(news), news[0].folder) == "enough":
        windows.settings.setValue(TOLD, [_mark(one) for one in found])


def _mark(one: Unreadable) -> str:
    """What tells it from what may be spoiled later."""
    return f"{one.file.name} {one.when.isoformat()}"


def _words(news: list[Unreadable]) -> str:
    parts = [count(len(news), "A program that ended without saving left work behind that cannot be read.",
                   "Programs that ended without saving left {n} pieces of work behind that cannot be read.")]
    parts += told_first([*map(_one, news)], MOST_NAMED, lambda n: count(n, "{n} more lies in the same folder.", "{n} more lie in the same folder."))
    parts.append(say("Nothing of it is removed. To go on, open the layout as it was saved last; “Open the version before” in the "
                     "menu Layout leads one saving further back. If the work matters, copy what is named here to another disk, and "
                     "see whether this one is sound."))
    return "\n\n".join(parts)


def _one(one: Unreadable) -> str:
    lines = [str(one.file), one.why]
    if one.path:
        lines.append(say("Opened from: {path}", path=one.path))
    return "\n".join([*lines, *written_down(one.when)])
