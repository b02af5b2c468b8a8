"""What the job book shows on every stage: the timer that runs, in the foot, and where notes are pinned, on the drawing."""

from __future__ import annotations

import time
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from app.window import ask
from geometry.book import add_remark, running
from geometry.checks.words import few
from geometry.drawing import opened_out_groups
from geometry.drawing.pinned_notes import pinned_notes
from geometry.layout import Remark, feature_ids
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

TICK_MS = 1000
MOST_LETTERS = 32
MOST_NAMED = 3
"""Things that are named in a question: it is as wide as its words."""


class BookWatch(QObject):
    """Ticks only while a timer runs."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self._tick = QTimer(self, interval=TICK_MS, timeout=self.show_timer)
        window.document.shown_changed.connect(self.show)
        window.document.book_changed.connect(self.show)
        self.show()

    def show(self) -> None:
        """Timer and pinned notes as they are now."""
        shown = self._window.document.shown
        notes = pinned_notes(shown.book.remarks, opened_out_groups(shown)) if shown.book.remarks else {}
        self._window.canvas.show_notes(notes)
        self.show_timer()

    def show_timer(self) -> None:
        """The step that is timed and since how long."""
        clock = self._window.document.book.clock
        if clock is None:
            self._tick.stop()
            self._window.foot.show_timer("")
            return
        if not self._tick.isActive():
            self._tick.start()
        seconds = round(60 * running(self._window.document.book, time.time()))
        hours, rest = divmod(seconds, 3600)
        minutes, rest = divmod(rest, 60)
        self._window.foot.show_timer(say("Timer {hours}:{minutes:02d}:{rest:02d} · {title}",
                                         hours=hours, minutes=minutes, rest=rest, title=_short(clock.task.title)))

    def pin(self) -> None:
        """Ask for a note to what is held, or to the whole layout when nothing is."""
        document = self._window.document
        hanging = set(feature_ids(document.shown)) - set(feature_ids(document.layout))  # at the pointer, and in no layout yet
        held = tuple(id for id in document.held if id not in hanging)
        about = few(held, MOST_NAMED) if held else say("the whole head")

        def take(text: str) -> None:
            def change(book):
                for id in held or (None,):
                    book = add_remark(book, Remark(piece=book.piece, text=text.strip(), on=id))
                return book
            document.record(say("A note"), change)
        if ask.line(self._window, say("A note"), say("Do differently: {what}", what=about), take):
            self._window.say(say("Written into the job book: {what}", what=about))

    def end(self) -> None:
        """The window goes."""
        self._tick.stop()


def _short(title: str) -> str:
    """A title that leaves room for the rest of the foot."""
    return title if len(title) <= MOST_LETTERS else title[:MOST_LETTERS - 1].rstrip() + "…"
