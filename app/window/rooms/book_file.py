"""Writing the job book as a table."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from app.formats.book_csv import write_book
from app.formats.errors import FormatError
from app.window import ask
from app.window.background.disk import written_beside
from geometry.layout import Book, Task
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def write_book_file(window: Frame, book: Book, planned: Sequence[Task]) -> None:
    """Ask for a name and write; what fails is said."""
    path = window.document.path
    suggestion = (path.parent if path else Path.home()) / f"{say('job-book')}.csv"
    chosen = ask.save_file(window, say("Write the job book"), str(suggestion), ask.TABLES, (".csv",))
    if chosen is None:
        return
    try:
        written_beside(window, chosen, partial(write_book, book, planned, chosen))
    except FormatError as error:
        ask.warn(window, say("The job book was not written"), str(error))
    else:
        window.say(say("Written: {chosen}", chosen=chosen))
