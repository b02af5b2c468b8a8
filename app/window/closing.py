"""The end of a window: whatever runs beside it is ended first, so that nothing outlives it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from app.window import place
from app.window.background.background import running

if TYPE_CHECKING:
    from app.window.main import MainWindow


def end(window: MainWindow) -> None:
    """End the threads and timers of a window that is about to close, and note how it was.

    A fault in one of these steps keeps none of the others from being done; the first is raised when all are.
    """
    steps = [window.front.end, window.recent_menu.there.errand.end, window.cures.end, window.book_watch.end]
    if window.opening is not None:
        steps.insert(0, window.opening.end)
    if window.pins is not None:
        steps.append(window.pins.end)
    if window.sheet_writer is not None:
        steps.append(window.sheet_writer.wait)
    steps += [room.end for room in window.rooms.made]
    steps += [thread.wait for thread in running(window)]
    if window.journal is not None:
        steps.append(window.journal.clear)
    faults = []
    for step in (*steps, partial(place.keep, window), partial(window.windows.gone, window)):
        try:
            step()
        except Exception as fault:
            faults.append(fault)
    if faults:
        raise faults[0]
