"""`What must I hold?`: how fine the work has to be where, and what moving a tuner would gain instead."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QProgressBar,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
)

from app.look.alt_letters import give_letters
from app.look.choice import Choice
from app.look.filled import filled, keep_room
from app.look.paragraph import paragraph
from app.look.sizes import open_at
from app.look.walk import ReadInOrder
from app.panels.snags.chance_words import MODEL
from app.panels.snags.need_words import AIMS, answer_words, left_out_words, need_row, proposal_words, wanted_words
from app.threads.background import raised
from app.window.background.errand import Errand, in_steps
from geometry.accuracy import Proposal, Requirements, place_words, propose_moves, requirements
from geometry.drawing.ghost import ghost
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.units import format_close

if TYPE_CHECKING:
    from app.window.frame import Frame

WANTED = (0.9, 0.95, 0.98, 0.99, 0.995, 0.999)
TRIALS = 10_000
SEED = 1
REST_MS = 600


class HoldDialog(ReadInOrder, QDialog):
    """Stays open beside the drawing and answers anew when the layout has changed and rests."""

    _part = Signal(float)

    def __init__(self, window: Frame) -> None:
        super().__init__(window, windowTitle=say("What must I hold?"))
        self._window = window
        self._wanted_next: str = ""
        self._works_on = ""
        """the kind of work that runs, or ran last"""
        self._stopped = False
        """by the maker: its button has it done after all"""
        self._heard = self._answered_needs
        self.errand = Errand(self, answered=self._answered, failed=self._failed, ended=self._ended)
        self.requirements: Requirements | None = None
        self.proposal: Proposal | None = None
        self._build()
        self._rest = QTimer(self, singleShot=True, timeout=self._ask_needs)
        self._part.connect(self._progress)
        window.document.shown_changed.connect(self._edited)
        self.finished.connect(self._closed)

    # ---- building -------------------------------------------------------
    def _build(self) -> None:
        self.wanted = Choice(self, choices=[(chance, wanted_words(chance)) for chance in WANTED], accessibleName=say("Wanted chance"),
                             activated=self._ask_needs)
        self.wanted.setCurrentIndex(WANTED.index(0.99))
        self.aim = Choice(self, choices=AIMS, accessibleName=say("What is wanted"), activated=self._ask_needs)
        top = filled(QHBoxLayout(), QLabel(say("Wanted: it"), self), self.aim, QLabel(say("at least"), self), self.wanted, 1)
        self.answer = paragraph(self)
        self.table = QTableWidget(0, 4, self, wordWrap=True, showGrid=False, editTriggers=QTableWidget.EditTrigger.NoEditTriggers,
                                  accessibleName=say("What must be held"))
        self.table.setHorizontalHeaderLabels([say("What"), say("As now"), say("Needed"), say("Where")])
        rows, heads = self.table.verticalHeader(), self.table.horizontalHeader()
        rows.hide()
        rows.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)  # as high as its words, however wide they stand
        heads.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        heads.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        heads.setSectionResizeMode(3, QHeaderView.ResizeMode.Stretch)
        heading = QLabel(say("Move instead"), self, objectName="heading")
        self.says = paragraph(self)
        self.look = QPushButton(say("Look for better places"), self, autoDefault=False, clicked=self._ask_moves)
        self.move_them = QPushButton(say("Move as shown"), self, autoDefault=False, clicked=self._move)
        self.leave = QPushButton(say("Leave as it is"), self, autoDefault=False, clicked=self._leave)
        buttons = filled(QHBoxLayout(), self.look, self.move_them, self.leave, 1)
        self.bar = QProgressBar(self, minimum=0, maximum=100, textVisible=False, accessibleName=say("Being worked out"))
        self.bar.setFixedHeight(6)
        self.halt = QPushButton(say("Stop"), self, autoDefault=False, clicked=self._halted)
        running = filled(QHBoxLayout(), (keep_room(self.bar), 1), keep_room(self.halt))
        about = paragraph(self, MODEL + " " + say(
            "Tuners marked “Leave it where it is” stay, and so do those with a hole that the job book has as drilled "
            "in the real piece."), "dim")
        filled(QVBoxLayout(self), top, self.answer, (self.table, 10), heading, self.says, buttons, running, 1, about, gap=10)
        open_at(self, 620, 470)
        self.table.hide()
        self._show_proposal(None)

    # ---- asking ---------------------------------------------------------
    def open_for(self, sound: float | None) -> None:
        """Show it; `sound` is the chance of coming out sound where it is known: when that is high, margins are asked."""
        if not self.isVisible():
            self.aim.setCurrentIndex(1 if sound is not None and sound >= self.wanted.currentData() else 0)
            self.show()
            self._ask_needs()
        else:
            self.raise_()
            self.activateWindow()

    def end(self) -> None:
        """The window goes: wait for what runs, begin nothing more."""
        self._rest.stop()
        self.errand.end()

    def _edited(self) -> None:
        if not self.isVisible():
            return
        shown = self._window.document.shown
        if self.proposal is not None and self.proposal.layout is shown:
            return
        self.errand.stop()
        self._show_proposal(None)
        self._tell_work()
        self._rest.start(REST_MS)

    def _ask_needs(self) -> None:
        self._begin("needs")

    def _ask_moves(self) -> None:
        self._begin("moves")

    def _begin(self, what: str) -> None:
        """Begin one kind of work; what runs is stopped first and this comes after it."""
        self._rest.stop()
        if not self.isVisible():
            return
        if not self.errand.free:
            self.errand.stop()
            self._wanted_next = what
            return
        self._wanted_next, self._works_on, self._stopped = "", what, False
        aim, chance, shown = self.aim.currentData(), self.wanted.currentData(), self._window.document.shown
        how = (TRIALS, SEED, in_steps(self._part.emit))
        if what == "needs":
            self._show_proposal(None)
            self._tell_work()
            work, self._heard = partial(requirements, shown, chance, aim, *how), self._answered_needs
        else:
            self.says.setText(say("Looking for better places…"))
            work, self._heard = partial(propose_moves, shown, aim, *how), self._show_proposal
        self.bar.setValue(0)
        self.bar.show()
        self.halt.setText(say("Stop"))
        give_letters(self)
        self.halt.show()
        if self.look.hasFocus():
            self.halt.setFocus()  # as this button goes grey, the keyboard would go on to one that changes the layout
        self.look.setEnabled(False)
        self.errand.start_in_parts(work)

    def _tell_work(self) -> None:
        """What must be held is being worked out, or will be as soon as the layout rests."""
        self.answer.setText(say("Being worked out…") if self.table.isHidden() else
                            say("Being worked out anew: what stands below is older than the last change."))

    def _halted(self) -> None:
        """The button beside the bar: let go of what runs, or have done what was let go of."""
        if not self.errand.busy:
            self._begin(self._works_on)
            return
        self._stopped, self._wanted_next = True, ""
        self.errand.stop()
        if self._works_on == "needs":
            self.table.hide()
            self.answer.setText(say("Stopped: what must be held is not known."))
        elif self.proposal is not None:
            self._show_proposal(self.proposal)  # the one of before, of this very layout
        else:
            self.says.setText(say("Stopped: the search for better places is not finished."))

    # ---- answers --------------------------------------------------------
    def _progress(self, part: float) -> None:
        self.bar.setValue(round(100 * part))

    def _answered(self, found: Requirements | Proposal) -> None:
        self._heard(found)

    def _answered_needs(self, found: Requirements) -> None:
        self.requirements = found
        first = left_out_words(self._window.document.result.snags)
        self.answer.setText(" ".join(filter(None, (first, answer_words(found, TRIALS, self._window.unit)))))
        self.table.setRowCount(len(found.needs))
        for row, need in enumerate(found.needs):
            for column, text in enumerate(need_row(need, self._window.unit)):
                item = QTableWidgetItem(text)
                item.setToolTip(", ".join(map(place_words, need.where)))
                self.table.setItem(row, column, item)
        self.table.setVisible(bool(found.needs))
        if found.now < found.wanted:
            self._wanted_next = self._wanted_next or "moves"

    def _failed(self, error: Exception) -> None:
        raised(error, but=GeometryError)
        self._show_proposal(None)
        self.answer.setText(str(error))

    def _ended(self) -> None:
        self.look.setEnabled(True)
        self.bar.hide()
        if self._wanted_next:
            self._begin(self._wanted_next)
        elif self._stopped:
            self.halt.setText(say("Work it out"))
            give_letters(self)
        else:
            if self.halt.hasFocus():
                self.look.setFocus()
            self.halt.hide()

    def _show_proposal(self, found: Proposal | None) -> None:
        """Show what would move, on the drawing too; None takes it away."""
        self.proposal = found
        moving = found is not None and bool(found.moves)
        self.says.setText(say("Better places may help more than finer work.") if found is None
                          else proposal_words(found, TRIALS, self._window.unit))
        if not moving and (self.move_them.hasFocus() or self.leave.hasFocus()):
            (self.look if self.look.isEnabled() else self.halt).setFocus()
        self.move_them.setEnabled(moving)
        self.leave.setEnabled(moving)
        marks = ()
        if moving:
            unit = self._window.unit
            marks = ghost(self._window.document.shown, found.layout, [id for id, _ in found.moves],
                          partial(_length, unit))
        self._window.canvas.show_ghost(marks)

    def _move(self) -> None:
        if self._window.hand.busy:  # the proposal may be of what is in hand, which is no step yet
            self.says.setText(say("Something is in hand: put it down, or back with Esc, and press again."))
        elif self.proposal is not None and self.proposal.moves:
            layout = self.proposal.layout
            self._show_proposal(None)
            self._window.document.apply(say("Move tuners as proposed"), layout)

    def _leave(self) -> None:
        self._show_proposal(None)

    def _closed(self) -> None:
        self._rest.stop()
        self._wanted_next = ""
        self.errand.stop()
        self._show_proposal(None)


def _length(unit, mm: float) -> str:
    return format_close(mm, unit, mark=True)
