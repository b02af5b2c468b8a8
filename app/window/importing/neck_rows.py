"""Of a drawing of a whole neck: whether its headstock alone is taken, how far behind the tip it is cut off, and how slanted."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QCheckBox, QFormLayout, QWidget

from app.formats.drawing_in import DrawingRead
from app.formats.drawing_in.whole_neck import headed
from app.look.alt_letters import Lead
from app.panels.forms.fields import AngleField, LengthField
from geometry.errors import GeometryError
from geometry.layout.strings import MOST_SLANT
from geometry.saying import say
from geometry.units import LengthUnit


class NeckRows(QObject):
    """Three rows of a form, on show while the outline is a neck."""

    changed = Signal()

    def __init__(self, form: QFormLayout, unit: LengthUnit, parent: QWidget) -> None:
        super().__init__(parent)
        self._form = form
        self._typed: float | None = None
        """nut line to tip in units of the drawing; None: as proposed"""
        self.only = QCheckBox(say("Only the &headstock of this neck"), parent,
                              toolTip=say("What lies behind the nut line is left out."), checked=True)
        self.only.toggled.connect(self.changed)
        self.length = self._sender = LengthField(
            unit, parent=parent, toolTip=say("How far behind the tip the neck is cut off: there the nut line comes to lie."))
        self.length.sent.connect(self._sent)
        self._slant: float | None = None
        """degrees, as `Nut.slant` in the drawing as it was not mirrored; None: as proposed"""
        self._mirrored = False
        self.slant = AngleField(parent=parent, toolTip=say("For fanned frets: how far the nut line is turned about its middle. Above zero "
                                                           "the bass end lies nearer the tip."))
        self.slant.sent.connect(self._turned)
        self._drawn: DrawingRead | None = None
        form.addRow(self.only)
        form.addRow(Lead(say("Nut line to tip"), self.length), self.length)
        form.addRow(Lead(say("Slant of the nut"), self.slant), self.slant)

    def show(self, drawn: DrawingRead) -> None:
        """Show what becomes of this drawing."""
        self._drawn = drawn
        for row in (self.only, self.length, self.slant):
            self._form.setRowVisible(row, drawn.neck is not None)
        for field in (self.length, self.slant):
            field.setEnabled(self.only.isChecked())
        if drawn.neck is not None:
            self.length.show_value(drawn.neck.length if self._typed is None else self._typed * drawn.unit_mm)
            slant = -math.degrees(drawn.neck.slope) if self._slant is None else self._slant
            self.slant.show_value((-slant if self._mirrored else slant) + 0.0)

    def mirror(self, mirrored: bool) -> None:
        """Bass and treble have changed places: the nut line is slanted the other way."""
        self._mirrored = mirrored
        if self._drawn is not None:
            self.show(self._drawn)

    def forget(self) -> None:
        """The outline is another one: its nut line is where it is proposed."""
        self._typed = self._slant = None

    def taken(self, drawn: DrawingRead, beside: Callable[[Callable[[], DrawingRead]], DrawingRead | None]) -> DrawingRead | None:
        """What is imported of a drawing, worked out `beside` the window; None where the length that was typed is refused."""
        if drawn.head is None or not self.only.isChecked():
            return drawn
        if self._typed is None and self._slant is None:
            return drawn.head
        length = drawn.neck.length if self._typed is None else self._typed * drawn.unit_mm
        try:
            return beside(partial(headed, drawn, length, self._slant)) or drawn.head
        except GeometryError as error:
            self._sender.refuse(str(error))
            return None

    def _sent(self, length: float) -> None:
        before, self._typed, self._sender = self._typed, length / self._drawn.unit_mm, self.length
        self.changed.emit()
        if self.length.bad:
            self._typed = before

    def _turned(self, degrees: float) -> None:
        if abs(degrees) > MOST_SLANT:
            self.slant.refuse(say("A nut line is slanted by {most:g} degrees at the most.", most=MOST_SLANT))
            return
        before, self._slant, self._sender = self._slant, -degrees if self._mirrored else degrees, self.slant
        self.changed.emit()
        if self.slant.bad:
            self._slant = before
