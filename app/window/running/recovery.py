"""Offering back what a run that died had not saved."""

from __future__ import annotations

import sys
from datetime import datetime
from typing import TYPE_CHECKING

from PySide6.QtGui import QPixmap

from app.document.leftovers import Leftover, Look
from app.window import ask
from geometry.drawing import opened_out
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.window.main import MainWindow
    from app.window.windows import Windows
    from geometry.layout import Headstock

PICTURE = (220, 260)
"""Width and height of the picture of what was found, in points."""
LOOK_MS = 2000
"""How long the drive is waited for that unsaved work came from."""


def recover(windows: Windows, left: list[Leftover]) -> int:
    """Ask about unsaved work, newest first, until the maker puts the question off; how many pieces were opened. What its own file
    holds already is forgotten.

    The first comes into the window that is there if nothing else is open in it,
    each other one into a window of its own. What another running copy is asking
    about, or has dealt with, is passed over.
    """
    opened = 0
    for found in left:
        if not found.claim():
            continue
        try:
            look = _looked(windows.current, found)
            if look.saved:
                found.forget()
                continue
            answer = _asked(windows.current, found, look)
            if answer == "open":
                opened += _opened(windows, found, look, opened)
            elif answer == "discard":
                found.forget()
            else:
                break
        finally:
            found.release()
    return opened


def _looked(window: MainWindow, found: Leftover) -> Look:
    """What is there under the name it came from; when its drive does not answer soon it is as if nothing were."""
    from app.threads.waiting import answer_soon  # here: most starts find nothing

    return answer_soon(window, found.look, Look(False, False, None), LOOK_MS)


def _room_for(windows: Windows, found: Leftover, look: Look, opened: int) -> MainWindow:
    """The window to open a piece in: the one with the older state of the same file, an empty one, or a new one."""
    held = _held(windows, found, look)
    if held is not None and not held.document.unsaved:
        return held
    first = windows.current
    if not opened and first.document.path is None and not first.document.unsaved:
        return first
    return windows.new(found.layout)


def _held(windows: Windows, found: Leftover, look: Look) -> MainWindow | None:
    """The window in which its file is open."""
    return None if found.path is None else windows.holding(look.known or found.path)


def _asked(window: MainWindow, found: Leftover, look: Look) -> str:
    """What to do with one piece: open, discard or later."""
    layout = found.layout
    words = [say("“{name}” was not saved when the program ended.", name=layout.name),
             *written_down(found.when),
             ", ".join(counted(layout))]
    if found.path is not None:
        words.append(say("Opened from: {path}", path=found.path) if look.there else
                     say("Opened from: {path} – not there now", path=found.path))
    try:
        from app.look.picture import picture  # here: most starts find nothing
        from app.look.theme import theme
        seen = picture(opened_out(layout), theme(), *PICTURE, window.devicePixelRatioF())
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
    return [say("Last change written down: {when:%Y-%m-%d %H:%M:%S}", when=when)]


def _opened(windows: Windows, found: Leftover, look: Look, opened: int) -> bool:
    """Open a piece; whether that went well. A fault on the way is told, and the piece is offered again at the next start."""
    try:
        _open(_room_for(windows, found, look, opened), found, look)
    except Exception as error:
        sys.excepthook(type(error), error, error.__traceback__)
        return False
    return True


def _open(window: MainWindow, found: Leftover, look: Look) -> None:
    """Go on with a piece; until it is written down anew, what was found is the only copy.

    No file is open in two windows: of two pieces of one file the older is saved elsewhere.
    """
    held = _held(window.windows, found, look)
    if held is None or held is window:
        window.document.recover(found.layout, found.path, found.seen, look.known)
    else:
        window.document.recover(found.layout, None)
        window.say(say("{name} is open in another window with newer work: saving this asks for a place.", name=found.path.name))
    if window.journal is not None:
        window.journal.write()
    if window.journal is not None and not window.journal.trouble:
        found.forget()
    window.canvas.fit(window.document.shown)
