"""The foot of the window: where the hand points, one sentence, and what the layout comes to."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QWidget

from geometry.checks import CheckResult
from geometry.units import LengthUnit, format_length


class Saying(QLabel):
    """A sentence in the middle; one too long for its room begins at the left and ends in dots."""

    def paintEvent(self, event) -> None:
        painter = QPainter(self)
        painter.setPen(self.palette().windowText().color())
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.width())
        painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignCenter), text)


class Foot(QWidget):
    """Three texts side by side; the middle one never widens the window."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("foot")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = QHBoxLayout(self)
        row.setContentsMargins(18, 5, 18, 5)
        self._where = QLabel(self)
        self._where.setMinimumWidth(250)
        self._says = Saying(self)
        # A label asks for the width of its text: a long sentence would make the window grow.
        self._says.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._counts = QLabel(self)
        row.addWidget(self._where)
        row.addWidget(self._says, 1)
        self._timer = QLabel(self)
        self._timer.setAccessibleName(self.tr("Timer"))
        self._timer.hide()
        row.addWidget(self._timer)
        row.addSpacing(14)
        row.addWidget(self._counts)

    @property
    def said(self) -> str:
        """The sentence on show."""
        return self._says.text()

    def say(self, text: str) -> None:
        """One sentence; the whole of it as its tip where there is no room."""
        fits = self._says.fontMetrics().horizontalAdvance(text) <= self._says.width()
        # What does not fit begins at its beginning: centred it would lose both ends.
        self._says.setAlignment(Qt.AlignmentFlag.AlignCenter if fits else
                                Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self._says.setText(text)
        self._says.setToolTip(text)

    def show_timer(self, text: str) -> None:
        """The timer of the job book that runs; nothing when none does."""
        self._timer.setText(text)
        self._timer.setVisible(bool(text))

    def show_place(self, at: tuple[float, float] | None, unit: LengthUnit) -> None:
        """Where the hand points in plan, mm; None when it is elsewhere."""
        if at is None:
            self._where.setText("")
            return
        x, y = at
        side = self.tr("to the treble") if x >= 0 else self.tr("to the bass")
        end = self.tr("from the nut line") if y >= 0 else self.tr("behind the nut line")
        decimals = 1 if unit == "mm" else None
        self._where.setText(f"{format_length(abs(x), unit, decimals)} {side} · "
                            f"{format_length(abs(y), unit, decimals)} {end}")

    def show_counts(self, result: CheckResult) -> None:
        """How many holes, drilling operations and pins there are."""
        counts = result.counts
        words = self.tr("{} holes · {} drilling operations").format(counts.holes, counts.drilling)
        if counts.pins:
            words += " · " + self.tr("{} pins").format(counts.pins)
        self._counts.setText(words)
