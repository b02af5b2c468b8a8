"""Offering back what a run that died had not saved."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING

from app.document.journal import Leftover, forget
from app.window import ask

if TYPE_CHECKING:
    from app.window.main import MainWindow


def recover(window: MainWindow, left: list[Leftover]) -> None:
    """Ask about the newest piece of unsaved work; older ones are asked about at later starts."""
    newest = left[0]
    when = datetime.fromtimestamp(newest.file.stat().st_mtime).strftime("%Y-%m-%d %H:%M")
    text = window.tr("“{name}” was not saved when the program ended on {when}. It has {tuners} tuners and {slots} "
                     "slots.").format(name=newest.layout.name, when=when, tuners=len(newest.layout.tuners),
                                      slots=len(newest.layout.slots))
    answer = ask.recover(window, text)
    if answer == "open":
        window.document.recover(newest.layout, newest.path)
        window.journal.write()
        forget(newest)
        window.canvas.fit(window.document.shown)
    elif answer == "discard":
        forget(newest)
