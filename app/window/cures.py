"""The cures on the cards of the snags: sought beside the window once nothing moves, carried out as one step."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QObject, QTimer, Signal

from app.window import texts
from app.window.background.errand import Errand
from geometry.checks import Snag
from geometry.checks.moves import AsCut, Move, Swap, Wind
from geometry.checks.said import read
from geometry.drawing import Area, Disc, Drawing, Stroke
from geometry.drawing.opened_out import feature_marks
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.strings import runs

if TYPE_CHECKING:
    from app.panels.forms.work_note import WorkNote
    from app.window.cure_search import CureSearch
    from app.window.frame import Frame

PAUSE_MS = 200
"""How long nothing has changed before cures are sought."""
LONG_MS = 2000
"""How long cures are sought before that is told of: the cards themselves say that they are."""
_GHOST = "dimension"


class Cures(QObject):
    """Settles the cures of what the window shows, and makes the move that the maker asks for.

    A search that finds no end by itself ends after a while, or when the maker stops it; the cards of what was not sought
    then say so, and whoever chooses one has its cure sought, and the others for as long again.
    """

    found = Signal(object, object, object)
    """(search, snag, the same snag settled), from the thread of the search"""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        self._search: CureSearch | None = None
        self.errand = Errand(self, failed=self._failed, ended=self._ended)
        self._settled: dict[int, Snag] = {}
        self._unsought: dict[int, Snag] = {}
        """what the card of a snag tells of whose cure the search has left"""
        self.patience: float | None = None
        """seconds, another than that of the search"""
        self.note: WorkNote | None = None
        self._long = QTimer(self, singleShot=True, interval=LONG_MS, timeout=self._tell_of_it)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS, timeout=self._seek)
        self.found.connect(self._take)
        window.document.shown_changed.connect(self._changed)
        window.tools.mirrored.toggled.connect(self._mirroring)
        window.side.cure_wanted.connect(self.carry_out)
        window.side.cure_pointed.connect(self._ghost)
        window.side.snag_chosen.connect(self._chosen)
        self._pause.start()

    @property
    def settled(self) -> bool:
        """Whether every cure on show has been sought."""
        return not self._pause.isActive() and not self.errand.busy

    def carry_out(self, snag: Snag) -> None:
        """Make the move that cures a snag, as one step of the history; with Mirrored on, the twin of what moves follows."""
        from geometry.cures import told  # here and below: a start need not wait for it

        window = self._window
        if window.hand.begun:
            window.say(texts.IN_HAND)
            return
        if self._search is None or self._search.result is not window.document.result:  # the book may have been written into since
            window.say(say("The layout changed meanwhile: ask again."))
            return
        try:
            after, _ = self._moved(snag)
        except GeometryError as error:
            window.say(str(error))
            return
        what = read(told(window.document.layout, snag.move, self._mirrored), window.unit)
        window.document.apply(what, after)
        window.say(what)

    def end(self) -> None:
        """The window goes: stop, and wait for the end."""
        self._pause.stop()
        self._long.stop()
        if self._search is not None:
            self._search.stopped = True
        self.errand.end()

    def _changed(self) -> None:
        if self._search is not None:
            self._search.stopped = True
        self._settled, self._unsought = {}, {}
        self._long.stop()  # the search that it was about is over, and the next may have nothing to seek
        if self.note is not None:
            self.note.none()
        if not self._window.hand.busy:
            self._window.canvas.show_guides(())
        self._pause.start()

    def _seek(self) -> None:
        if self._window.opens or self.errand.busy:
            self._pause.start()
            return
        from app.window.cure_search import CureSearch

        document = self._window.document
        self._search = CureSearch(document.shown, document.result, self.patience, self._mirrored)
        if self._search.left:
            self._begin()

    def _begin(self) -> None:
        self._long.start()
        self.errand.start(partial(self._run, self._search))

    def _run(self, search: CureSearch) -> None:
        for snag, done in search.run():
            self.found.emit(search, snag, done)

    def _chosen(self, snag: Snag) -> None:
        """The card of a snag is in hand: its cure comes first. Where the search has ended it goes on."""
        search = self._search
        if search is None or self._pause.isActive():
            return
        wanted = next((one for one in tuple(search.left) if snag is one or snag is self._unsought.get(id(one))), None)
        if wanted is None:
            return
        search.wanted = wanted
        if self.errand.free:
            search.stopped, self._unsought = False, {}
            self._show()
            self._begin()

    def _stop(self) -> None:
        self._search.stopped = True

    def _ended(self) -> None:
        """What was not sought says so, unless the layout is another by now."""
        if self._pause.isActive():
            return
        self._long.stop()
        if self.note is not None:
            self.note.none()
        if self._search.asked_for is not None and not self._search.stopped:  # chosen while the search was on its way out
            self._begin()
            return
        words = say("The search for a move that cures it is not finished: choose this card, and it goes on.")
        self._unsought = {id(snag): replace(snag, cured=words) for snag in self._search.left}
        if self._unsought:
            self._show()

    def _tell_of_it(self) -> None:
        """It takes long."""
        if self.note is None:
            from app.panels.forms.work_note import WorkNote  # here, so that a start does not wait for it
            self.note = WorkNote(self._window.canvas)
            self.note.stopped.connect(self._stop)
            self.note.put_away.connect(self._window.drawing_wanted)
        self.note.working(say("Moves that cure snags are being looked for."), self._search.at)

    def _failed(self, error: Exception) -> None:
        self._search.stopped = True
        raise error

    def _take(self, search: CureSearch, snag: Snag, done: Snag) -> None:
        if self._pause.isActive() or search is not self._search:
            return
        self._settled[id(snag)] = done
        self._show()

    def _show(self) -> None:
        self._window.side.inside.snags.show_snags(tuple((self._settled | self._unsought).get(id(one), one) for one in self._search.result.snags))

    def _moved(self, snag: Snag) -> tuple[Headstock, tuple[str, ...]]:
        """The layout after the move of a snag, and the features that it moves: with Mirrored on, their twins too, whatever stage
        its card is pressed on. GeometryError when it cannot be made."""
        from geometry.cures import apply_cure, touched

        before = self._window.document.layout
        return apply_cure(before, snag, self._mirrored), touched(before, snag.move, self._mirrored and not snag.alone)

    @property
    def _mirrored(self) -> bool:
        return self._window.tools.mirrored.isChecked()

    def _mirroring(self) -> None:
        """What was sought moved other things with it than what is sought now."""
        self._changed()
        if self._search is not None and self._search.result is self._window.document.result:
            self._show()

    def _ghost(self, snag: Snag | None) -> None:
        """Show where what would move comes to, while the button is pointed at."""
        window = self._window
        if window.hand.busy:
            return
        marks: Drawing = ()
        if snag is not None and snag.move is not None and window.document.shown is window.document.layout:
            try:
                marks = _ghosts(*self._moved(snag), snag.move)
            except (GeometryError, KeyError):
                marks = ()
        window.canvas.show_guides(marks)


def _ghosts(after: Headstock, ids: tuple[str, ...], move: Move) -> Drawing:
    """What a move brings about, in the layout after it: strings led otherwise, or the outlines of what has moved."""
    if isinstance(move, Swap | Wind):
        from geometry.drawing.string_marks import ghost_strings

        return ghost_strings([run for run in runs(after) if run.tuner in ids])
    seen = ids or ((move.of,) if isinstance(move, AsCut) else ())  # the outline is no feature
    return tuple(_outline(mark) for id in seen for mark in feature_marks(after, id) if isinstance(mark, Area | Disc | Stroke))


def _outline(mark: Area | Disc | Stroke) -> Stroke | Disc:
    if isinstance(mark, Disc):
        return Disc(mark.centre, mark.radius, _GHOST)
    return Stroke(mark.outer if isinstance(mark, Area) else mark.path, _GHOST)
