"""The end of a window: whatever runs beside it is ended first, so that nothing outlives it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.window import place

if TYPE_CHECKING:
    from app.window.main import MainWindow


def end(window: MainWindow) -> None:
    """End the threads and timers of a window that is about to close, and note how it was."""
    window.front.end()
    window.cures.end()
    window.pins.end()
    window.book_watch.end()
    if window.sheet_writer is not None:
        window.sheet_writer.wait()
    for room in window.rooms.made:
        room.end()
    if window.journal is not None:
        window.journal.clear()
    place.keep(window)
    window.windows.gone(window)
