"""A small dialog that takes one length and shows over the drawing what would come of it before it is taken.

What comes of it is worked out beside the window: a long line takes its time.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QDialog, QFormLayout, QVBoxLayout, QWidget

from app.look.alt_letters import Lead
from app.look.buttons import ok_cancel
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.sizes import keep
from app.look.walk import ReadInOrder
from app.panels.forms.fields import LengthField
from app.threads.background import raised
from app.window.background.errand import Errand
from geometry.drawing import Drawing
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


LONG_MS = 300
"""After so long it is said that something is being worked out."""


class GhostDialog(ReadInOrder, QDialog):
    """`value` is the length in mm, `made` the layout that it gives, once that is known.

    Who derives from it says what is worked out (`work`), what is seen of it (`ghost`) and what is told (`told`).
    """

    def __init__(self, window: Frame, title: str, label: str, value: float) -> None:
        super().__init__(window)
        self.window_ = window
        self.layout_ = window.document.layout
        self.value = value
        self.made: Headstock | None = None
        self.errand = Errand(self, answered=self._answered, failed=self._failed, ended=self._ended)
        self._again = False
        self._leaving: int | None = None
        self._long = QTimer(self, singleShot=True, interval=LONG_MS, timeout=self._takes_long)
        self.setWindowTitle(title)
        self.field = LengthField(window.unit, parent=self, accessibleName=label)
        self.field.show_value(value)
        self.field.sent.connect(self._sent)
        self.field.refused.connect(self._refused)
        self.says = paragraph(self, name="dim")
        keep(self.says, minimum_height=52)
        form = QFormLayout()
        form.addRow(Lead(label, self.field), self.field)
        buttons, self.take = ok_cancel(self, self.accept)
        column = filled(QVBoxLayout(self), form, gap=10)
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

    def work(self) -> Callable[[], Headstock]:
        """What makes a layout of the value, away from the window; GeometryError with the reason when nothing comes of it."""
        raise NotImplementedError

    def ghost(self, made: Headstock) -> Drawing:
        """What is seen of it."""
        raise NotImplementedError

    def told(self) -> str:
        """A sentence under the field while the value can be taken."""
        raise NotImplementedError

    @property
    def settled(self) -> bool:
        """Whether what comes of the value is known."""
        return not self.errand.busy

    # ---- at work --------------------------------------------------------
    def try_it(self) -> None:
        """Show what would come of it, or say why nothing does, as soon as that is known."""
        self.take.setEnabled(not self.field.bad)
        if self.errand.busy:
            self._again = True
            return
        self._again = False
        self.errand.start(partial(_speaking, self.window_.unit, self.work()))
        self._long.start()

    def accept(self) -> None:
        """Take what stands in the field, Enter pressed in it or not; stay when it cannot be."""
        self.field.editingFinished.emit()
        if self.take.isEnabled():
            self.done(QDialog.DialogCode.Accepted)

    def done(self, result: int) -> None:
        """Leave; not before what is being worked out is known."""
        if self.errand.busy:
            self._leaving = result
            self.setEnabled(False)
        else:
            self.errand.end()
            super().done(result)

    def _answered(self, made: Headstock) -> None:
        if not self._again and not self.field.bad:  # what cannot be read has been said, and stays said
            self.made = made
            self.window_.canvas.show_ghost(self.ghost(made))
            self.says.setText(self.told())

    def _failed(self, error: Exception) -> None:
        raised(error, but=GeometryError)
        if not self._again and not self.field.bad:
            self.window_.canvas.show_ghost(())
            self._refused(str(error))

    def _ended(self) -> None:
        self._long.stop()
        if self._again:
            self.try_it()
        elif self._leaving is not None:
            result, self._leaving = self._leaving, None
            self.setEnabled(True)
            if result != QDialog.DialogCode.Accepted or self.take.isEnabled():
                self.done(result)

    def _takes_long(self) -> None:
        if not self.field.bad:
            self.says.setText(say("Being worked out…"))

    def _sent(self, mm: float) -> None:
        self.value = mm
        self.field.show_value(mm)  # with its unit: what was typed may have been in another
        self.try_it()

    def _refused(self, message: str) -> None:
        self.says.setText(message)
        self.take.setEnabled(False)

    def _end(self) -> None:
        self.window_.canvas.show_ghost(())


def _speaking(unit: LengthUnit, work: Callable[[], Headstock]) -> Headstock:
    with speaking(unit):
        return work()
