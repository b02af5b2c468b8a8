"""A small dialog that takes one length and shows over the drawing what would come of it before it is taken."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QLabel, QVBoxLayout, QWidget

from app.look.sizes import keep
from app.look.walk import ReadInOrder
from app.panels.fields import LengthField
from geometry.drawing import Drawing
from geometry.errors import GeometryError
from geometry.lengths import speaking

if TYPE_CHECKING:
    from app.window.main import MainWindow


class GhostDialog(ReadInOrder, QDialog):
    """`value` is the length in mm. Who derives from it says what is seen (`ghost`) and what is told of it (`told`)."""

    def __init__(self, window: MainWindow, title: str, label: str, value: float) -> None:
        super().__init__(window)
        self.window_ = window
        self.layout_ = window.document.layout
        self.value = value
        self.setWindowTitle(title)
        self.field = LengthField(window.unit, parent=self)
        self.field.setAccessibleName(label)
        self.field.show_value(value)
        self.field.sent.connect(self._sent)
        self.field.refused.connect(self._refused)
        self.says = QLabel(self)
        self.says.setObjectName("dim")
        self.says.setWordWrap(True)
        keep(self.says, minimum_height=52)
        form = QFormLayout()
        form.addRow(label, self.field)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self)
        self.take = buttons.button(QDialogButtonBox.StandardButton.Ok)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addLayout(form)
        for widget in self.more():
            column.addWidget(widget)
        column.addWidget(self.says)
        column.addWidget(buttons)
        keep(self, panel_width=340)
        self.finished.connect(self._end)
        self.field.setFocus()
        self.field.selectAll()  # what is typed takes the place of the value
        self.try_it()

    # ---- what a dialog says of itself -----------------------------------
    def more(self) -> list[QWidget]:
        """Widgets below the field."""
        return []

    def ghost(self) -> Drawing:
        """What would come of the value, to be seen. GeometryError with the reason when nothing does."""
        raise NotImplementedError

    def told(self) -> str:
        """A sentence under the field while the value can be taken."""
        raise NotImplementedError

    # ---- at work --------------------------------------------------------
    def try_it(self) -> None:
        """Show what would come of it, or say why nothing does."""
        try:
            with speaking(self.window_.unit):
                marks = self.ghost()
        except GeometryError as error:
            self.window_.canvas.show_ghost(())
            self._refused(str(error))
            return
        self.window_.canvas.show_ghost(marks)
        self.says.setText(self.told())
        self.take.setEnabled(True)

    def accept(self) -> None:
        """Take what stands in the field, Enter pressed in it or not; stay when it cannot be."""
        self.field.editingFinished.emit()
        if self.take.isEnabled():
            super().accept()

    def _sent(self, mm: float) -> None:
        self.value = mm
        self.try_it()

    def _refused(self, message: str) -> None:
        self.says.setText(message)
        self.take.setEnabled(False)

    def _end(self) -> None:
        self.window_.canvas.show_ghost(())
