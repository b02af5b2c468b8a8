"""The section through the cut, pass after pass, with a slider and the arrow keys."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QToolButton, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.section_view import SectionView
from app.look.slider import Slider
from geometry.drawing import Drawing
from geometry.saying import say


class PassStepper(QWidget):
    """Shows one of several pictures and what happens in it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pictures: tuple[Drawing, ...] = ()
        self._words: tuple[str, ...] = ()
        self._view = SectionView(self)
        self._view.setAccessibleName(say("Section through the cut"))
        self._says = paragraph(self)
        self._back, self._on = (self._button(arrow, about) for arrow, about in (
            (Qt.ArrowType.LeftArrow, say("The pass before")), (Qt.ArrowType.RightArrow, say("The next pass"))))
        self._back.clicked.connect(self.back)
        self._on.clicked.connect(self.on)
        self.slider = Slider(Qt.Orientation.Horizontal, self, pageStep=1, tickPosition=Slider.TickPosition.TicksBelow,
                             accessibleName=say("Pass"), toolTip=say("Step through the passes; the arrow keys do it too."),
                             valueChanged=self._show)
        row = filled(QHBoxLayout(), self._back, (self.slider, 1), self._on, gap=6)
        filled(QVBoxLayout(self), self._view, row, self._says, margins=(0, 0, 0, 0), gap=4)

    @property
    def index(self) -> int:
        """Number of the pass shown, 0 first."""
        return self.slider.value()

    @property
    def says(self) -> str:
        """The sentence below the picture."""
        return self._says.text()

    def show_passes(self, pictures: tuple[Drawing, ...], words: tuple[str, ...]) -> None:
        """Show these passes; the number of the one on show stays where it can."""
        self._pictures, self._words = pictures, words
        self.setVisible(bool(pictures))
        if pictures:
            self.slider.setRange(0, len(pictures) - 1)
            several = len(pictures) > 1
            for widget in (self.slider, self._back, self._on):
                widget.setVisible(several)
            self._show()

    def back(self) -> None:
        """One pass back."""
        self.slider.setValue(self.slider.value() - 1)

    def on(self) -> None:
        """One pass on."""
        self.slider.setValue(self.slider.value() + 1)

    def _button(self, arrow: Qt.ArrowType, about: str) -> QToolButton:
        return QToolButton(self, arrowType=arrow, toolTip=about, accessibleName=about)

    def _show(self) -> None:
        at = min(self.slider.value(), len(self._pictures) - 1)
        self._view.show_drawing(self._pictures[at])
        count = say("Pass {at} of {pictures}", at=at + 1, pictures=len(self._pictures))
        self._says.setText(f"{count}. {self._words[at]}")
        self._view.setAccessibleDescription(self._words[at])
        self._back.setEnabled(at > 0)
        self._on.setEnabled(at < len(self._pictures) - 1)
