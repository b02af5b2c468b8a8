"""The end of a window: whatever runs beside it is ended first; what only looks at files is left, for it may be with a drive that
has gone."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from app.threads.background import end_all, running
from app.window import place

if TYPE_CHECKING:
    from app.window.main import MainWindow


def end(window: MainWindow) -> None:
    """End the threads and timers of a window that is about to close, and note how it was.

    A fault in one of these steps keeps none of the others from being done; the first is raised when all are.
    """
    steps = [window.front.end, window.recent_menu.there.end, window.cures.end, window.book_watch.end]
    if window.opening is not None:
        steps.insert(0, window.opening.end)
    if window.pins is not None:
        steps.append(window.pins.end)
    if window.sheet_writer is not None:
        steps.append(window.sheet_writer.wait)
    steps += [room.end for room in window.rooms.made]
    if window.journal is not None:
        steps.append(window.journal.end)
    steps.append(lambda: end_all(running(window)))
    faults = []
    for step in (*steps, partial(place.keep, window), partial(window.windows.gone, window)):
        try:
            step()
        except Exception as fault:
            faults.append(fault)
    if faults:
        raise faults[0]
