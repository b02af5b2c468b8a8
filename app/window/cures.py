"""The cures on the cards of the snags: sought beside the window once nothing moves, carried out as one step."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from app.window.aside import stand_aside
from app.window.background import Background
from geometry.checks import CheckResult, Snag
from geometry.checks.moves import Change, Move, Swap, Wind
from geometry.checks.said import read
from geometry.drawing import Area, Disc, Drawing, Stroke
from geometry.drawing.opened_out import feature_marks
from geometry.drawing.string_marks import ghost_strings
from geometry.errors import GeometryError
from geometry.layout import Headstock, RowPlace
from geometry.saying import say
from geometry.strings import runs

if TYPE_CHECKING:
    from app.window.main import MainWindow

PAUSE_MS = 200
"""How long nothing has changed before cures are sought."""
_GHOST = "dimension"


class _Search:
    """One search; `stopped` ends it between two trials, where it also stands aside while the hand is at work."""

    def __init__(self, layout: Headstock, result: CheckResult) -> None:
        self.layout, self.result = layout, result
        self.stopped = False

    def is_stopped(self) -> bool:
        return stand_aside(lambda: self.stopped)


class Cures(QObject):
    """Settles the cures of what the window shows, and makes the move that the maker asks for."""

    found = Signal(object, object, object)
    """(search, snag, the same snag settled), from the thread of the search"""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._search: _Search | None = None
        self._thread: Background | None = None
        self._settled: dict[int, Snag] = {}
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._seek)
        self.found.connect(self._take)
        window.document.shown_changed.connect(self._changed)
        window.side.cure_wanted.connect(self.carry_out)
        window.side.cure_pointed.connect(self._ghost)
        self._pause.start()

    @property
    def settled(self) -> bool:
        """Whether every cure on show has been sought."""
        return not self._pause.isActive() and (self._thread is None or self._thread.isFinished())

    def carry_out(self, snag: Snag) -> None:
        """Make the move that cures a snag, as one step of the history."""
        from geometry.cures import apply_cure, told  # here and below: a start need not wait for it

        window = self._window
        if window.hand.busy:
            window.say(say("Something is in hand: put it down, or back with Esc, and press again."))
            return
        if self._search is None or self._search.layout is not window.document.layout:
            window.say(say("The layout changed meanwhile: ask again."))
            return
        try:
            after = apply_cure(window.document.layout, snag)
        except GeometryError as error:
            window.say(str(error))
            return
        what = read(told(window.document.layout, snag.move), window.unit)
        window.document.apply(what, after)
        window.say(what)

    def end(self) -> None:
        """The window goes: stop and wait."""
        self._pause.stop()
        if self._search is not None:
            self._search.stopped = True
        if self._thread is not None:
            self._thread.wait()

    def _changed(self) -> None:
        if self._search is not None:
            self._search.stopped = True
        self._settled = {}
        if not self._window.hand.busy:
            self._window.canvas.show_guides(())
        self._pause.start()

    def _seek(self) -> None:
        from geometry.cures import curable

        if self._thread is not None and not self._thread.isFinished():
            self._pause.start()
            return
        document = self._window.document
        search = self._search = _Search(document.shown, document.result)
        if any(snag.cured is None and curable(snag) for snag in search.result.snags):
            self._thread = Background(partial(self._run, search), self)
            self._thread.failed.connect(self._failed)
            self._thread.start()

    def _run(self, search: _Search) -> None:
        from geometry.cures import settle_all  # loaded by _seek

        for snag, done in settle_all(search.layout, search.result, search.is_stopped):
            self.found.emit(search, snag, done)

    def _failed(self, error: Exception) -> None:
        raise error

    def _take(self, search: _Search, snag: Snag, done: Snag) -> None:
        if search.stopped or search is not self._search:
            return
        self._settled[id(snag)] = done
        self._window.side.snags.show_snags(tuple(self._settled.get(id(one), one) for one in search.result.snags))

    def _ghost(self, snag: Snag | None) -> None:
        """Show where what would move comes to, while the button is pointed at."""
        from geometry.cures import apply_cure

        window = self._window
        if window.hand.busy:
            return
        marks: Drawing = ()
        if snag is not None and snag.move is not None and window.document.shown is window.document.layout:
            try:
                marks = _moved(apply_cure(window.document.layout, snag), snag.move)
            except (GeometryError, KeyError):
                marks = ()
        window.canvas.show_guides(marks)


def _moved(after: Headstock, move: Move) -> Drawing:
    """What a move brings about, in the layout after it: strings led otherwise, or the outlines of what has moved."""
    if isinstance(move, Swap | Wind):
        led = (move.of, move.other) if isinstance(move, Swap) else (move.of,)
        return ghost_strings([run for run in runs(after) if run.tuner in led])
    ids = [move.path[1]] if isinstance(move, Change) else [move.of]
    if isinstance(move, Change) and move.path[0] == "rows":
        ids = [tuner.id for tuner in after.tuners if isinstance(tuner.place, RowPlace) and tuner.place.row == move.path[1]]
    return tuple(_outline(mark) for id in ids for mark in feature_marks(after, id) if isinstance(mark, Area | Disc | Stroke))


def _outline(mark: Area | Disc | Stroke) -> Stroke | Disc:
    if isinstance(mark, Disc):
        return Disc(mark.centre, mark.radius, _GHOST)
    return Stroke(mark.outer if isinstance(mark, Area) else mark.path, _GHOST)
