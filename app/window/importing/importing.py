"""Importing a drawing: read it in another process, ask what is what, place it, make it the layout."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import (
    QButtonGroup,
    QDialog,
    QLabel,
    QPushButton,
    QVBoxLayout,
)
from shiboken6 import isValid

from app.formats.drawing_in import DrawingRead
from app.formats.drawing_in.closing import JOINS, read_closing
from app.formats.drawing_in.units import plausible, sized
from app.formats.drawing_in.whole_neck import with_outline
from app.formats.layer_names import depth_on
from app.look.alt_letters import Lead
from app.look.buttons import ok_cancel
from app.look.choice import Choice
from app.look.column import form_of_dialog, lay_beside
from app.look.filled import filled
from app.look.flow import Flow
from app.look.paragraph import paragraph, restyle
from app.look.sizes import open_at
from app.look.walk import ReadInOrder
from app.look.wrapping import WrappingCheck, WrappingRadio
from app.panels.forms.fields import LengthField
from app.threads.waiting import Cancelled, done_beside
from app.window import ask
from app.window.importing.loop_table import LoopTable
from app.window.importing.neck_rows import NeckRows
from app.window.importing.preview import ImportPreview
from app.window.importing.reading import read_with_progress
from app.window.importing.roles import Roles
from app.window.importing.told import noticed, size_told
from app.window.importing.unit_choices import unit_choices
from app.window.rooms.own_rack import with_own_rack_beside
from geometry.beginning.in_unit import blank_in_unit
from geometry.curves import Matrix, shift
from geometry.edits.imported import layout_from, with_shape
from geometry.edits.imported_hardware import hardware_told
from geometry.edits.imported_openings import Role, there_told
from geometry.errors import GeometryError
from geometry.joining.placing import Placing, place
from geometry.layout import Headstock
from geometry.lengths import exact, speaking
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def import_drawing(window: Frame, path: Path | None = None) -> None:
    """Ask for a drawing and lead it into the layout."""
    if path is None:
        path = ask.open_file(window, say("Import a drawing"), str(window.folder), ask.DRAWINGS)
    if path is None:
        return
    try:
        read, join = read_closing(partial(read_with_progress, window, path, None))
    except Cancelled:
        return
    if read is None:
        return
    dialog = ImportDialog(window, path, read, join)
    if dialog.exec() == QDialog.DialogCode.Accepted:
        if dialog.whole:
            window.document.replace(dialog.result_layout, None)
        else:
            window.document.apply(say("Import {path}", path=path.name), dialog.result_layout)
        window.canvas.fit(window.document.shown)
        window.set_stage("outline")
    dialog.deleteLater()


class ImportDialog(ReadInOrder, QDialog):
    """Which loop is what, how big it is, and where the nut line and the centreline lie."""

    def __init__(self, window: Frame, path: Path, read: DrawingRead, join: float = JOINS[0]) -> None:
        """`read`: the drawing, of a whole neck if need be; `join`: up to how many mm gaps were closed as it was read."""
        super().__init__(window, windowTitle=say("Import {path}", path=path.name))
        self._window = window
        self._path = path
        self._drawn = self._first_read = read
        self._read = read.head or read
        """what is imported of it"""
        self._made_of = Roles(self._read)
        self._made_of.know(window.document.layout)
        self._turns = 0
        self._mirrored = False
        self._slanted = WrappingCheck(say("The nut is &slanted, for fanned frets"), self,
                                      toolTip=say("The drawing stays upright, and its slanted edge becomes the nut line."),
                                      checked=self._made_of.slanted_as(window.document.layout.nut), toggled=self._lay)
        self._nudge = [0.0, 0.0]
        self.result_layout: Headstock | None = None
        self._preview = ImportPreview(self)
        self._preview.picked.connect(self._pick)
        self._unit = Choice(self, sizeAdjustPolicy=Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon,
                            minimumContentsLength=14, activated=self._read_again)
        self._unit.currentTextChanged.connect(self._unit.setToolTip)
        self._longest = LengthField(window.unit, parent=self, toolTip=say(
            "The outline as it lies in the drawing, across or along. Type what it is in truth, and the whole drawing is made larger or "
            "smaller."))
        with speaking(window.unit):
            self._join = Choice(self, choices=[(gap, exact(gap)) for gap in JOINS], activated=self._read_again)
        self._closed = join
        self._join.setCurrentIndex(JOINS.index(join))
        self._says, self._warnings, self._guess = (self._words(name) for name in ("", "dim", "dim"))
        self._doubted: tuple[float, float] | None = None
        """a size that no headstock has, mm, which the maker was told of once"""
        self._table = LoopTable(self._made_of, window.unit, self)
        self._table.chosen.connect(self._role)
        self._table.currentCellChanged.connect(self._row)
        self._all = QPushButton(say("&The same for all alike"), self,
                                toolTip=say("Every loop of the same size on the same layer becomes what the chosen one becomes."),
                                autoDefault=False, clicked=self._as_this)
        self._across, self._along = LengthField(window.unit, parent=self), LengthField(window.unit, parent=self)
        self._whole = WrappingRadio(say("A new layout around this outline"), self)
        self._only = WrappingRadio(say("This outline in the layout that is open"), self)
        self._with = WrappingRadio(say("This outline, its slots and holes in the layout that is open"), self)
        self._whole.setChecked(True)
        for field, slot in ((self._longest, self._sized), (self._across, self._nudged), (self._along, self._nudged)):
            field.sent.connect(slot)
            field.sent.connect(self._took)
        self._taken: QObject | None = None
        """the field that sent a number last"""
        self._build()
        self._fill()

    @property
    def whole(self) -> bool:
        """Whether a new layout was asked for."""
        return self._whole.isChecked()

    # ---- building -------------------------------------------------------
    def _words(self, name: str) -> QLabel:
        return paragraph(self, name=name, textFormat=Qt.TextFormat.PlainText)

    def _build(self) -> None:
        form = form_of_dialog()
        form.addRow(Lead(say("One unit of the drawing is"), self._unit), self._unit)
        form.addRow(Lead(say("Its longer side is"), self._longest), self._longest)
        form.addRow(Lead(say("Close gaps up to"), self._join), self._join)
        turns = Flow()  # below the form: within one it may be given the height of one row where it goes on in another
        turns.addWidget(QLabel(say("Position"), self))
        for word, about, slot in ((say("Turn left"), say("A quarter turn"), self._left),
                                  (say("Turn right"), say("A quarter turn"), self._right),
                                  (say("Mirror"), say("Bass and treble change places"), self._mirror)):
            button = QPushButton(word, self, toolTip=about, autoDefault=False, clicked=slot)
            turns.addWidget(button)
        self._neck = NeckRows(form, self._window.unit, self)
        for field in (self._neck.length, self._neck.slant):
            field.sent.connect(self._took)
        self._neck.slant.sent.connect(self._slants)
        self._neck.changed.connect(self._cut)
        form.addRow(self._slanted)
        form.addRow(Lead(say("Shift across"), self._across), self._across)
        form.addRow(Lead(say("Shift along"), self._along), self._along)
        right = filled(QVBoxLayout(), self._says, form, turns, self._guess, (self._table, 1),
                       (self._all, 0, Qt.AlignmentFlag.AlignLeft), self._warnings)
        group = QButtonGroup(self)
        for choice in (self._whole, self._only, self._with):
            group.addButton(choice)
            choice.toggled.connect(self._tell_place)
            right.addWidget(choice)
        buttons, _ = ok_cancel(self, self._accept, say("Import"))
        lay_beside(self, self._preview, right, say("How the drawing is taken"), buttons)
        open_at(self, 980, 840)

    def _fill(self) -> None:
        self._tell()
        self._all.setEnabled(False)
        self._neck.show(self._drawn)
        self._table.show_loops(self._read.loops)
        self._lay()

    def _tell(self) -> None:
        """Its unit and size, and what was noticed as it was read."""
        read = self._read
        self._offer_units()
        self._longest.show_value(max(read.size_mm))
        text, doubtful = size_told(read)
        self._say(text, "warning" if doubtful else "heading")
        self._warnings.setText("\n".join(noticed(read, self._drawn)))

    def _say(self, text: str, name: str) -> None:
        self._says.setText(text)
        restyle(self._says, name)

    def _offer_units(self) -> None:
        offered, chosen = unit_choices(self._read, self._first_read, self._window.unit)
        self._unit.clear()
        for words, name in offered:
            self._unit.addItem(words, name)
        self._unit.setCurrentIndex(chosen)

    # ---- state ----------------------------------------------------------
    def _roles(self) -> list[Role]:
        return [(loop.path, role, depth_on(loop.layer)) for loop, role in zip(self._read.loops, self._made_of.of, strict=True)]

    def _placing(self) -> Placing:
        """How the outline is laid; the shift that was typed is in its matrix."""
        outline = next((path for path, role, *_ in self._roles() if role == "outline"), None)
        if outline is None:
            return Placing(Matrix(), say("No loop is the outline yet."), None)
        with speaking(self._window.unit):
            found = place(outline, self._turns, self._mirrored, self._slanted.isChecked(), self._read.nut, self._read.up)
        return replace(found, matrix=shift(*self._nudge).after(found.matrix))

    def _lay(self) -> None:
        placing = self._tell_place()
        self._across.show_value(self._nudge[0])
        self._along.show_value(self._nudge[1])
        neck = self._drawn.outline.path if self._read is not self._drawn else None
        self._preview.show_loops(self._roles(), self._read.open_chains, placing.matrix, placing.slant, neck)

    def _tell_place(self) -> Placing:
        """What was guessed, and what becomes of the pockets that are there; gives the place back."""
        placing = self._placing()
        matrix, words = placing.matrix, placing.sentence
        self._slanted.setEnabled(placing.askew != 0)
        layout = self._window.document.layout
        told = [] if self._only.isChecked() else there_told(self._roles(), matrix, None if self.whole else layout)
        told += hardware_told(self._roles(), matrix, layout) if self._with.isChecked() else []
        self._guess.setText(" ".join([words, *told]))
        return placing

    def _role(self, number: int, role: str) -> None:
        chosen = self._read.loops[number]
        whole = next((i for i, loop in enumerate(self._drawn.loops) if loop.path == chosen.path), None)
        if role == "outline" and chosen is not self._read.outline and whole is not None:
            drawn = self._around(self._drawn, whole)
            if isValid(self):
                self._made_of.choose(number, role)
                self._neck.forget()
                self._take(drawn)
            return
        self._made_of.choose(number, role)
        self._show_roles()

    def _take(self, drawn: DrawingRead) -> None:
        """The drawing has been read anew, or is seen otherwise: show it, or the head of its neck."""
        part = self._neck.taken(drawn, self._beside)
        if part is not None and isValid(self):
            self._drawn, self._read = drawn, part
            self._made_of.take(part)
            self._fill()

    def _cut(self) -> None:
        """The head is to be cut off its neck elsewhere, or not at all."""
        self._take(self._drawn)

    def _as_this(self) -> None:
        """All loops that are alike become what the one in hand becomes."""
        number = self._table.currentRow()
        for i in self._made_of.alike(number):
            self._made_of.choose(i, self._made_of.of[number])
        self._show_roles()

    def _show_roles(self) -> None:
        self._table.show_roles()
        self._row(self._table.currentRow())
        self._lay()

    def _around(self, read: DrawingRead, number: int | None) -> DrawingRead:
        """The drawing with another outline; what lies inside that is found out beside the window. None: as it is."""
        return read if number is None else self._beside(partial(with_outline, read, number)) or read

    def _beside(self, work: Callable[[], DrawingRead]) -> DrawingRead | None:
        return done_beside(self, say("Looking at what lies inside the outline…"), work)

    def _pick(self, number: int) -> None:
        self._table.setCurrentCell(number, 0)
        self._preview.set_current(number)

    def _row(self, row: int) -> None:
        self._preview.set_current(row)
        self._all.setEnabled(row >= 0 and self._made_of.of[row] != "outline")

    def _read_again(self) -> None:
        """With another unit, or gaps closed farther. Where nothing comes of it both choices are as before."""
        self._read_as(self._unit.currentData())

    def _sized(self, longest: float) -> None:
        """The drawing has a scale of its own: that which makes the outline so many mm long."""
        if longest <= 0:
            self._longest.refuse(say("The longer side of the outline is more than 0."))
            return
        self._read_as(repr(self._read.unit_mm * longest / max(self._read.size_mm)))

    def _read_as(self, unit: str | None) -> None:
        join = self._join.currentData()
        try:
            again = read_with_progress(self, self._path, unit, join)
        except Cancelled:
            again = None
        if again is not None and isValid(self):
            again = self._around(again, self._made_of.outline_of(again))
        if not isValid(self):
            return
        if again is not None:
            self._closed = join
        self._join.setCurrentIndex(JOINS.index(self._closed))
        self._take(again or self._drawn)

    def _left(self) -> None:
        self._turns = (self._turns + 1) % 4
        self._lay()

    def _right(self) -> None:
        self._turns = (self._turns - 1) % 4
        self._lay()

    def _mirror(self) -> None:
        self._mirrored = not self._mirrored
        self._neck.mirror(self._mirrored)
        self._lay()

    def _nudged(self, value: float) -> None:
        self._nudge[0 if self.sender() is self._across else 1] = value
        self._lay()

    def _slants(self, degrees: float) -> None:
        if not self._neck.slant.bad:
            self._slanted.setChecked(degrees != 0)

    def _took(self) -> None:
        self._taken = self.sender()

    def keyPressEvent(self, event) -> None:
        """Enter in a field takes what was typed and shows what it makes; the next one imports."""
        taken, self._taken = self._taken, None
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter) or taken is None or self.focusWidget() is not taken:
            super().keyPressEvent(event)

    def _accept(self) -> None:
        refused = next((field for field in (self._longest, self._across, self._along, self._neck.length, self._neck.slant) if field.bad), None)
        if refused is not None:
            self._say(refused.refusal, "warning")
            refused.setFocus()
            return
        size = self._read.size_mm
        if self._read.neck is None and not plausible(size) and size != self._doubted:
            self._doubted = size
            self._say(say("The outline measures {sized}: no headstock is that size. Choose another unit, or import once more to take "
                          "it all the same.", sized=sized(*size)), "warning")
            self._unit.setFocus()
            return
        placing = self._placing()
        try:
            with speaking(self._window.unit):
                if self._whole.isChecked():
                    self.result_layout = layout_from(self._roles(), placing.matrix, self._path.stem, placing.nut_width, placing.slant)
                else:
                    self.result_layout = with_shape(self._window.document.layout, self._roles(), placing.matrix,
                                                    openings=self._with.isChecked(), slant=placing.slant or None)
        except GeometryError as error:
            self._say(str(error), "warning")
            return
        # Asked here and not when the dialog has gone: who stays with the layout that is open stays with what was chosen too.
        may = not self.whole or self._window.files.may_leave()
        if may and isValid(self) and self.whole:
            self.result_layout = with_own_rack_beside(self, self._window, blank_in_unit(self.result_layout, self._window.unit))
        if may and isValid(self) and self.result_layout is not None:
            self.accept()
