"""What a stage works out of the layout, beside the window: kept in step with it, told of where it takes long, stopped at will."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from msgspec import Struct
from msgspec.structs import replace
from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.panels.forms.work_note import WorkNote
from app.window.background.errand import Errand
from app.window.input.spoken import announce
from app.window.rooms.room import StageRoom
from geometry.cancellation import Ask
from geometry.layout import Book, Headstock
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


def asked_for(layout: Headstock, unit: LengthUnit) -> tuple[Headstock, LengthUnit]:
    """All that a plan of steps depends on: neither the maker's order nor what was written into the book."""
    return replace(layout, order=(), notes=(), book=Book()), unit


class PlanWords(Struct, frozen=True):
    """Whole sentences about one kind of plan. What is on show may be older than the last change of layout, unit or paper."""

    first: str
    """it is being worked out, none is on show"""
    anew: str
    """another one is being worked out, an older one is on show"""
    stopped: str
    """that was stopped, none is on show"""
    older: str
    """that was stopped, an older one is on show"""
    done: str
    """what is on show is as it should be"""


class Planning(QObject):
    """Works out one answer at a time, always for what was wanted last.

    `answered` or `failed` brings what came of it, `ended` says that it may be asked for again: whoever listens then calls
    `see_to` with what is wanted now. What the maker has stopped is not begun again until he wants it or wants something else.
    """

    answered = Signal(object)
    failed = Signal(object)
    ended = Signal()

    def __init__(self, parent: QObject, window: Frame, host: QWidget, words: PlanWords, over: QWidget | None = None) -> None:
        """Long work is told of over the lower edge of `host`, or of `over` in it."""
        super().__init__(parent)
        self._words = words
        self._wanted: object = None
        """what the answer should be of"""
        self._asked: object = None
        """what is being worked out, or was last; None when that is of no use any more"""
        self._known: object = None
        """what the last answer is of"""
        self._halted = False
        self._work: Callable[[Ask], object] | None = None
        self.errand = Errand(self, answered=self._answered, failed=self._failed, ended=self._ended)
        self.note = WorkNote(host, over)
        self.note.stopped.connect(self._stop)
        self.note.wanted.connect(self._again)
        self.note.put_away.connect(window.drawing_wanted)
        self.note.told.connect(self._announce)

    # ---- what its owner asks ------------------------------------------------
    def see_to(self, wanted: object, work: Callable[[Ask], object]) -> bool:
        """Whether the last answer is of `wanted`; if not it is worked out. What is being worked out for something else is stopped."""
        if wanted != self._wanted:
            self._halted = False
        self._wanted, self._work = wanted, work
        if self.errand.busy and self._asked != wanted:
            self._asked = None
            self.errand.stop()
        if not (self.current or self._halted) and self.errand.free and self._asked != wanted:
            self._asked = wanted
            self.errand.start_in_parts(work)
        self._tell()
        return self.current

    def has(self, wanted: object) -> bool:
        """Whether the last answer is of that."""
        return self._known is not None and self._known == wanted

    @property
    def current(self) -> bool:
        """Whether the last answer is of what was wanted last."""
        return self.has(self._wanted)

    def end(self) -> None:
        """The window goes: stop what runs, wait for its end, and begin nothing more."""
        self.errand.end()
        self.note.none()

    # ---- inside -------------------------------------------------------------
    def _answered(self, answer: object) -> None:
        self._known = self._asked
        self.answered.emit(answer)

    def _failed(self, error: Exception) -> None:
        self._known = None
        self.failed.emit(error)

    def _ended(self) -> None:
        self.ended.emit()
        self._tell()

    def _stop(self) -> None:
        self._halted, self._asked = True, None
        self.errand.stop()
        self._tell()

    def _again(self) -> None:
        self._halted = False
        self.see_to(self._wanted, self._work)

    def _tell(self) -> None:
        """Have the note say how things are."""
        shown = self._known is not None
        if self.current:
            self.note.done(self._words.done)
        elif self._halted:
            self.note.halted(self._words.older if shown else self._words.stopped, say("Work it out"))
        elif self.errand.busy:
            self.note.working(self._words.anew if shown else self._words.first, self.errand.at)
        else:
            self.note.none()

    def _announce(self, text: str) -> None:
        announce(self.note, text)


class PlanningRoom(StageRoom):
    """A room that keeps what it shows in step with the layout: `refresh` has `planning` see to what is wanted now."""

    def plan_over(self, host: QWidget, words: PlanWords, over: QWidget | None = None) -> None:
        """Have the planning, which tells of long work as `Planning` says."""
        self.planning = Planning(self, self.window, host, words, over)
        self.errand = self.planning.errand
        self.planning.answered.connect(self._answered)
        self.planning.failed.connect(self._failed)
        self.planning.ended.connect(self._ended)

    def end(self) -> None:
        self.planning.end()

    def _answered(self, answer: object) -> None:
        """This came of it; `refresh` follows."""
        raise NotImplementedError

    def _failed(self, error: Exception) -> None:
        """It went wrong. What is no sentence for the maker is raised again."""
        raise NotImplementedError

    def _ended(self) -> None:
        if self.window.stage == self.key:
            self.refresh()
