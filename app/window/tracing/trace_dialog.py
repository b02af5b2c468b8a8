"""Where the head is in the picture, how fine the line follows it, and the proposal as a ghost over it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QSignalBlocker, Qt
from PySide6.QtGui import QPainterPath, QPolygonF
from PySide6.QtWidgets import (
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
)

from app.canvas.picture import pixmap
from app.formats.errors import FormatError
from app.look.alt_letters import Lead
from app.look.buttons import ok_cancel
from app.look.choice import Choice
from app.look.column import lay_beside
from app.look.filled import filled, keep_room
from app.look.paragraph import paragraph, restyle
from app.look.sizes import keep, open_at
from app.look.slider import Slider
from app.look.walk import ReadInOrder
from app.threads.background import raised
from app.threads.waiting import Cancelled, Progress
from app.window.background.errand import Errand
from app.window.tracing.board import PictureBoard
from app.window.tracing.opening_boxes import OpeningBoxes
from app.window.tracing.trace import Proposal, over_picture, propose
from geometry.edits import replace_outline
from geometry.edits.imported_openings import with_more
from geometry.errors import GeometryError
from geometry.layout.picture import Picture
from geometry.lengths import at_least, speaking
from geometry.saying import say
from geometry.tracing.plane_map import PlaneMap
from geometry.units import format_close
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from app.window.frame import Frame

TOLERANCES = (0.1, 0.15, 0.25, 0.5, 1.0)
BEGIN_WITH = 0.15


def trace_outline(window: Frame) -> None:
    """Ask where the head is in the picture and take its outline; one step of the history."""
    picture = window.document.layout.picture
    if picture is None:
        raise GeometryError(say("No picture lies behind the drawing: lay one there first."))
    dialog = TraceDialog(window, picture)
    taken = dialog.proposal if dialog.exec() == QDialog.DialogCode.Accepted else None
    openings = dialog.found.chosen()
    dialog.deleteLater()
    if taken is not None:
        traced = replace_outline(window.document.layout, taken.path)
        window.document.apply(say("Trace the picture"), with_more(traced, openings) if openings else traced)
        window.set_stage("outline")
        window.canvas.fit(window.document.shown)


class TraceDialog(ReadInOrder, QDialog):
    """Proposes anew whenever a place, the level of grey or the tolerance changes; the newest wish wins."""

    def __init__(self, window: Frame, picture: Picture) -> None:
        super().__init__(window, windowTitle=say("Trace {picture}", picture=picture.name or say("the picture")))
        self._window = window
        self._picture = picture
        self.proposal: Proposal | None = None
        self._at = self._middle()
        self._level: float | None = None
        self.errand = Errand(self, answered=self._answered, failed=self._failed, ended=self._ended)
        self._progress: Progress | None = None
        self._again = False
        self.board = PictureBoard(pixmap(picture.jpeg), self)
        self.board.put_pen(self._at)
        self.board.pressed.connect(self._pressed)
        self.tolerance = Choice(self, choices=[(mm, format_close(mm, window.unit, 2, mark=True)) for mm in TOLERANCES],
                                accessibleName=say("How far the line may stray"), activated=self._propose)
        self.level = Slider(Qt.Orientation.Horizontal, self)
        self.best = QPushButton(say("Best"), self, autoDefault=False, toolTip=say("The level that parts dark and light best."),
                                clicked=self._best)
        self._says = QLabel(self, wordWrap=True, alignment=Qt.AlignmentFlag.AlignTop)
        self._bar = QProgressBar(self, minimum=0, maximum=100, textVisible=False, accessibleName=say("How far the proposal is"))
        self.stop = QPushButton(say("Stop"), self, autoDefault=False, clicked=self._stop)
        self.found = OpeningBoxes(window.unit, self)
        self.found.changed.connect(self._show_openings)
        self._build()
        self._propose()

    # ---- building -------------------------------------------------------
    def _build(self) -> None:
        self.tolerance.setCurrentIndex(TOLERANCES.index(BEGIN_WITH))
        self.level.setRange(1, 254)
        self.level.setAccessibleName(say("Level of grey between head and background"))
        self.level.valueChanged.connect(self._levelled)
        grey = filled(QHBoxLayout(), (self.level, 1), self.best)
        form = QFormLayout()
        form.setVerticalSpacing(8)
        form.setHorizontalSpacing(14)
        form.addRow(Lead(say("May stray by"), self.tolerance), self.tolerance)
        form.addRow(Lead(say("Level of grey"), self.level), grey)
        how = paragraph(self, say("Press inside the head. The largest closed edge round that place is followed; corners stay "
                                  "corners, and the neck is cut off at the nut line."), "dim")
        keep(self._says, minimum_height=76)
        running = filled(QHBoxLayout(), (keep_room(self._bar), 1), keep_room(self.stop))
        note = paragraph(self, say("The outline of the layout is replaced. Tuners along an edge go with it, all else but what "
                                   "is ticked stays where it is. The picture's own errors come on top: check the first print with the 100 mm bar."), "dim")
        buttons, self.take_button = ok_cancel(self, self._accept, say("Take this outline"))
        right = filled(QVBoxLayout(), how, form, running, self._says, self.found, 1, note, gap=10)
        lay_beside(self, self.board, right, say("How the outline is traced"), buttons)
        open_at(self, 980, 680)

    def _middle(self) -> Vec2:
        """Where the head probably is: on the centreline, 60 mm from the nut line; else the picture's middle."""
        size = self._picture.width, self._picture.height
        try:
            at = PlaneMap(self._picture.place).inverse()((0.0, 60.0))
        except GeometryError:
            at = (-1.0, -1.0)
        return at if 0 < at[0] < size[0] and 0 < at[1] < size[1] else (size[0] / 2, size[1] / 2)

    # ---- wishes ---------------------------------------------------------
    def _pressed(self, at: Vec2) -> None:
        if self.proposal is not None and self.found.toggle(PlaneMap(self._picture.place)(at)):
            self.board.put_pen(at)
            return
        self._at = at
        self.board.put_pen(at)
        self._propose()

    def _levelled(self, value: int) -> None:
        self._level = float(value)
        self._propose()

    def _best(self) -> None:
        self._level = None
        self._propose()

    def _stop(self) -> None:
        self._again = False
        if self._progress is not None:
            self._progress.stop()

    # ---- proposing ------------------------------------------------------
    def _propose(self) -> None:
        self.proposal = None
        self.take_button.setEnabled(False)
        if self.errand.busy:
            self._again = True
            self._progress.stop()
        if not self.errand.free:
            return
        self._progress = Progress()
        self._progress.told.connect(self._bar.setValue)
        work = partial(propose, self._picture, self._window.document.layout.nut, self._at, self._level, self.tolerance.currentData(), self._progress)
        self._bar.setValue(0)
        self._running(True)
        self.errand.start(work)

    def _answered(self, made: Proposal) -> None:
        if self._again:
            return
        self.proposal = made
        with QSignalBlocker(self.level):
            self.level.setValue(round(made.level))
        points = over_picture(made.path, self._picture)
        ghost = QPainterPath()
        ghost.addPolygon(QPolygonF([QPointF(x, y) for x, y in points.tolist()]))
        nodes = PlaneMap(self._picture.place).inverse().many([segment.start for segment in made.path])
        self.board.show_ghost(ghost, [tuple(node) for node in nodes.tolist()])
        self.found.show_openings(made.openings)
        corners = len(made.path.corners())
        with speaking(self._window.unit):
            far = at_least(made.deviation)
        told = say("{nodes} nodes, {corners} of them corners. The line and the edge in the picture stray by no "
                   "more than {far} anywhere.",
                   nodes=len(made.path.segments), corners=corners, far=far)
        if made.rim:
            told = say("{told} A thin rim in another colour was taken along as a binding: shift the level of grey where it is none.", told=told)
        if made.shadow:
            told = say("{told} A shadow that falls beside the head was left out: if that is wood, shift the level of grey.", told=told)
        if made.line:
            told = say("{told} The head is drawn in a line about {width} wide: the middle of the line was taken. Where a line across the "
                       "head cuts it short, press nearer the tip.", told=told, width=format_close(made.line, self._window.unit, mark=True))
        self._tell(told, "heading")
        self.take_button.setEnabled(True)

    def _failed(self, error: Exception) -> None:
        raised(error, but=(Cancelled, GeometryError, FormatError))
        if self._again:
            return
        self.board.show_ghost(QPainterPath())
        self.board.show_openings([])
        self.found.hide()
        if isinstance(error, Cancelled):
            self._tell(say("Stopped. Press in the head, or change a number, to try again."), "dim")
        else:
            self._tell(str(error), "warning")

    def _show_openings(self) -> None:
        shapes = []
        for i, one in enumerate(self.found.openings):
            shape = QPainterPath()
            shape.addPolygon(QPolygonF([QPointF(x, y) for x, y in over_picture(one.path, self._picture).tolist()]))
            shapes.append((shape, i in self.found.ticked))
        self.board.show_openings(shapes)

    def _ended(self) -> None:
        self._progress.deleteLater()
        self._progress = None
        self._running(False)
        if self._again:
            self._again = False
            self._propose()

    def _running(self, on: bool) -> None:
        """Bar and Stop are there while a proposal is made; their room stays."""
        if not on and self.stop.hasFocus():
            self.board.setFocus()
        for widget in (self._bar, self.stop):
            widget.setVisible(on)

    def _tell(self, text: str, name: str) -> None:
        self._says.setText(text)
        restyle(self._says, name)

    def _accept(self) -> None:
        if self.proposal is not None:
            self.accept()

    def done(self, result: int) -> None:
        if self._progress is not None:
            self._progress.stop()
        self.errand.end()
        super().done(result)
