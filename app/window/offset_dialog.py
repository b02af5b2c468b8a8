"""How far an offset lies from the line, and whether the line stays: seen as a ghost before it is taken."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QLabel, QRadioButton, QVBoxLayout

from app.look.sizes import keep
from app.panels.fields import LengthField
from geometry.drawing import Stroke
from geometry.edits.offsetting import offset_copy, offset_in_place
from geometry.errors import GeometryError
from geometry.layout import loop_path, slot_path
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.main import MainWindow

BEGIN_WITH = 2.0


class OffsetDialog(QDialog):
    """`by` in mm, outwards above zero; `keeps` says that a new slot is made and the line stays."""

    def __init__(self, window: MainWindow, ref: str) -> None:
        super().__init__(window)
        self._window, self._ref = window, ref
        self._layout = window.document.layout
        self.by, self.keeps = (-BEGIN_WITH if ref == "outline" else BEGIN_WITH), False
        self.setWindowTitle(say("Offset of the outline") if ref == "outline" else say("Offset of {slot}", slot=ref))
        self.field = LengthField(window.unit, parent=self)
        self.field.setAccessibleName(say("Distance"))
        self.field.show_value(self.by)
        self.field.sent.connect(self._sent)
        self.field.refused.connect(self._refused)
        self.in_place = QRadioButton(say("Move the line itself"), self)
        self.copy = QRadioButton(say("Leave the line, add a slot beside it"), self)
        self.in_place.setChecked(True)
        self.copy.toggled.connect(self._chosen)
        self._says = QLabel(self)
        self._says.setObjectName("dim")
        self._says.setWordWrap(True)
        keep(self._says, minimum_height=52)
        form = QFormLayout()
        form.addRow(say("Distance"), self.field)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self)
        self._ok = buttons.button(QDialogButtonBox.StandardButton.Ok)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addLayout(form)
        column.addWidget(self.in_place)
        column.addWidget(self.copy)
        column.addWidget(self._says)
        column.addWidget(buttons)
        keep(self, panel_width=340)
        self.finished.connect(self._end)
        self._try()

    def _sent(self, mm: float) -> None:
        self.by = mm
        self._try()

    def _chosen(self, copy: bool) -> None:
        self.keeps = copy
        self._try()

    def _refused(self, message: str) -> None:
        self._says.setText(message)
        self._ok.setEnabled(False)

    def _try(self) -> None:
        """Show what would come of it, or say why nothing does."""
        edit = offset_copy if self.keeps else offset_in_place
        try:
            made = edit(self._layout, self._ref, self.by)
        except GeometryError as error:
            self._window.canvas.show_ghost(())
            self._refused(str(error))
            return
        slot = made.slots[-1] if self.keeps else next((s for s in made.slots if s.id == self._ref), None)
        path = loop_path(made.outline) if slot is None else slot_path(slot)
        self._window.canvas.show_ghost((Stroke(path, "template"),))
        self._says.setText(say("Above zero it lies outside the line, below zero inside. Corners that open become round."))
        self._ok.setEnabled(True)

    def accept(self) -> None:
        """Take what stands in the field, Enter pressed in it or not; stay when it cannot be."""
        self.field.editingFinished.emit()
        if self._ok.isEnabled():
            super().accept()

    def _end(self) -> None:
        self._window.canvas.show_ghost(())
