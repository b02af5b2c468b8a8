"""Of a drawing of a whole neck: whether its headstock alone is taken, and how far behind the tip it is cut off."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QCheckBox, QFormLayout, QWidget

from app.formats.drawing_in import DrawingRead
from app.formats.drawing_in.whole_neck import headed
from app.look.alt_letters import Lead
from app.panels.forms.fields import LengthField
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.units import LengthUnit


class NeckRows(QObject):
    """Two rows of a form, on show while the outline is a neck."""

    changed = Signal()

    def __init__(self, form: QFormLayout, unit: LengthUnit, parent: QWidget) -> None:
        super().__init__(parent)
        self._form = form
        self._typed: float | None = None
        """nut line to tip in units of the drawing; None: as proposed"""
        self.only = QCheckBox(say("Only the &headstock of this neck"), parent,
                              toolTip=say("What lies behind the nut line is left out."), checked=True, toggled=self._toggled)
        self.length = LengthField(unit, parent=parent)
        self.length.setToolTip(say("How far behind the tip the neck is cut off: there the nut line comes to lie."))
        self.length.sent.connect(self._sent)
        self._drawn: DrawingRead | None = None
        form.addRow(self.only)
        form.addRow(Lead(say("Nut line to tip"), self.length), self.length)

    def show(self, drawn: DrawingRead) -> None:
        """Show what becomes of this drawing."""
        self._drawn = drawn
        for row in (self.only, self.length):
            self._form.setRowVisible(row, drawn.neck is not None)
        self.length.setEnabled(self.only.isChecked())
        if drawn.neck is not None:
            self.length.show_value(drawn.neck.length if self._typed is None else self._typed * drawn.unit_mm)

    def forget(self) -> None:
        """The outline is another one: its nut line is where it is proposed."""
        self._typed = None

    def taken(self, drawn: DrawingRead, beside: Callable[[Callable[[], DrawingRead]], DrawingRead | None]) -> DrawingRead | None:
        """What is imported of a drawing, worked out `beside` the window; None where the length that was typed is refused."""
        if drawn.head is None or not self.only.isChecked():
            return drawn
        if self._typed is None:
            return drawn.head
        try:
            return beside(partial(headed, drawn, self._typed * drawn.unit_mm)) or drawn.head
        except GeometryError as error:
            self.length.refuse(str(error))
            return None

    def _toggled(self) -> None:
        self.changed.emit()

    def _sent(self, length: float) -> None:
        before, self._typed = self._typed, length / self._drawn.unit_mm
        self.changed.emit()
        if self.length.bad:
            self._typed = before
