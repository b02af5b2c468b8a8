"""Offering back what a run that died had not saved."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.document.leftovers import Leftover
from app.look.picture import picture
from app.window import ask
from geometry.drawing import opened_out

if TYPE_CHECKING:
    from app.window.main import MainWindow

PICTURE = (220, 260)
"""Width and height of the picture of what was found, in points."""


def recover(window: MainWindow, left: list[Leftover]) -> None:
    """Ask about unsaved work, newest first, until the maker opens a piece or puts the question off.

    What another running copy is asking about, or has dealt with, is passed over.
    """
    for found in left:
        if not found.claim():
            continue
        try:
            if not _settled(window, found):
                return
        finally:
            found.release()


def _settled(window: MainWindow, found: Leftover) -> bool:
    """Ask about one piece; whether the next one may be asked about."""
    layout = found.layout
    words = [window.tr("“{}” was not saved when the program ended.").format(layout.name),
             window.tr("Last change written down: {}").format(found.when.strftime("%Y-%m-%d %H:%M:%S")),
             window.tr("{} tuners, {} slots").format(len(layout.tuners), len(layout.slots))]
    if found.path is not None:
        words.append(window.tr("Opened from: {}").format(found.path))
    seen = picture(opened_out(layout), window.theme, *PICTURE, window.devicePixelRatioF())
    answer = ask.recover(window, "\n".join(words), seen)
    if answer == "open":
        window.document.recover(layout, found.path, found.seen)
        if window.journal is not None:
            window.journal.write()
        # Until it is written down anew, what was found is the only copy.
        if window.journal is not None and not window.journal.trouble:
            found.forget()
        window.canvas.fit(window.document.shown)
        return False
    if answer == "discard":
        found.forget()
    return answer == "discard"
