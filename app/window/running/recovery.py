"""Offering back what a run that died had not saved."""

from __future__ import annotations

import sys
from datetime import datetime
from typing import TYPE_CHECKING

from PySide6.QtGui import QPixmap

from app.document.leftovers import Leftover
from app.formats.reading import is_file
from app.look.picture import picture
from app.window import ask
from geometry.drawing import opened_out
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.window.main import MainWindow
    from app.window.windows import Windows
    from geometry.layout import Headstock

PICTURE = (220, 260)
"""Width and height of the picture of what was found, in points."""


def recover(windows: Windows, left: list[Leftover]) -> int:
    """Ask about unsaved work, newest first, until the maker puts the question off; how many pieces were opened.

    The first comes into the window that is there if nothing else is open in it,
    each other one into a window of its own. What another running copy is asking
    about, or has dealt with, is passed over.
    """
    opened = 0
    for found in left:
        if not found.claim():
            continue
        try:
            answer = _asked(windows.current, found)
            if answer == "open":
                opened += _opened(windows, found, opened)
            elif answer == "discard":
                found.forget()
            else:
                break
        finally:
            found.release()
    return opened


def _room_for(windows: Windows, found: Leftover, opened: int) -> MainWindow:
    """The window to open a piece in: the one with the older state of the same file, an empty one, or a new one."""
    if found.path is not None:
        held = windows.holding(found.path)
        if held is not None and not held.document.unsaved:
            return held
    first = windows.current
    if not opened and first.document.path is None and not first.document.unsaved:
        return first
    return windows.new(found.layout)


def _asked(window: MainWindow, found: Leftover) -> str:
    """What to do with one piece: open, discard or later."""
    layout = found.layout
    words = [say("“{name}” was not saved when the program ended.", name=layout.name),
             *written_down(found.when),
             ", ".join(counted(layout))]
    if found.path is not None:
        words.append(say("Opened from: {path}", path=found.path) if is_file(found.path) else
                     say("Opened from: {path} – not there now", path=found.path))
    try:
        seen = picture(opened_out(layout), window.theme, *PICTURE, window.devicePixelRatioF())
    except Exception as error:
        # It may be what the program died of.
        seen = QPixmap()
        sys.excepthook(type(error), error, error.__traceback__)
    return ask.recover(window, "\n".join(words), seen)


def counted(layout: Headstock) -> list[str]:
    """How many tuners, slots to rout and, where there are any, pockets that are there a layout has."""
    pockets = len(layout.slots) - len(layout.to_rout)
    return [count(len(layout.tuners), "{n} tuner", "{n} tuners"), count(len(layout.to_rout), "{n} slot", "{n} slots"),
            *([count(pockets, "{n} pocket that is there", "{n} pockets that are there")] if pockets else [])]


def written_down(when: datetime) -> list[str]:
    """When work was written down, as a line; none when that is not known."""
    if when == datetime.min:
        return []
    return [say("Last change written down: {when}", when=when.strftime("%Y-%m-%d %H:%M:%S"))]


def _opened(windows: Windows, found: Leftover, opened: int) -> bool:
    """Open a piece; whether that went well. A fault on the way is told, and the piece is offered again at the next start."""
    try:
        _open(_room_for(windows, found, opened), found)
    except Exception as error:
        sys.excepthook(type(error), error, error.__traceback__)
        return False
    return True


def _open(window: MainWindow, found: Leftover) -> None:
    """Go on with a piece; until it is written down anew, what was found is the only copy.

    No file is open in two windows: of two pieces of one file the older is saved elsewhere.
    """
    held = window.windows.holding(found.path) if found.path is not None else None
    if held is None or held is window:
        window.document.recover(found.layout, found.path, found.seen)
    else:
        window.document.recover(found.layout, None)
        window.say(say("{name} is open in another window with newer work: saving this asks for a place.", name=found.path.name))
    if window.journal is not None:
        window.journal.write()
    if window.journal is not None and not window.journal.trouble:
        found.forget()
    window.canvas.fit(window.document.shown)
