"""The middle of the Order stage: the picture of the piece, the words for the step, and what turns the steps over."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, QTimer, Signal
from PySide6.QtWidgets import QLabel, QPushButton, QSplitter, QVBoxLayout, QWidget

from app.canvas.step_picture import StepPicture
from app.look.elided import Elided
from app.look.filled import filled
from app.look.flow import Flow
from app.look.slider import Slider
from app.panels.order.step_page import StepPage
from geometry.saying import say

PACE = 700
"""Milliseconds that a step stands while the build is played."""


class OrderCentre(QWidget):
    """Shows one step; `at_wanted` carries the number of the step wanted, 0 first.

    `title` is not placed here: it stands in the strip above.
    """

    at_wanted = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture = StepPicture(self)
        self.page = StepPage(self)
        self.title = Elided(self, objectName="title")
        self.slider = Slider(Qt.Orientation.Horizontal, self, pageStep=5, accessibleName=say("Step"))
        self.slider.valueChanged.connect(self.at_wanted)
        self.before = self._button(say("Previous"), say("The step before (Left)"), self._back)
        self.next = self._button(say("Next"), say("The step after (Right)"), self._on)
        self.play = self._button(say("Play"), say("Show the build step by step"), self._played)
        self.play.setCheckable(True)
        self._count = QLabel(self, objectName="dim")
        self._clock = QTimer(self, interval=PACE, timeout=self._tick)
        self.picture.turned.connect(self.turn)
        self._lay_out()
        self.show_count(0, 0)

    def _button(self, word: str, about: str, slot) -> QPushButton:
        return QPushButton(word, self, toolTip=about, clicked=slot)

    def _lay_out(self) -> None:
        parts = self.parts = QSplitter(Qt.Orientation.Horizontal, self)
        parts.setChildrenCollapsible(False)
        parts.addWidget(self.picture)
        parts.addWidget(self.page)
        parts.setStretchFactor(0, 3)
        parts.setStretchFactor(1, 2)
        parts.setSizes([560, 360])
        foot = QWidget(self, objectName="tools")
        foot.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = filled(Flow(foot, (18, 6, 14, 6), 8), self.before, self.next, self.slider)
        row.add_gap(keeps=0)
        row.addWidget(self._count)
        row.addWidget(self.play)
        filled(QVBoxLayout(self), (parts, 1), foot, margins=(0, 0, 0, 0), gap=0)

    # ---- what is shown ----------------------------------------------------
    def show_count(self, at: int, of: int, title: str = "") -> None:
        """Which step is on show, 0 first, of how many."""
        with QSignalBlocker(self.slider):
            self.slider.setRange(0, max(0, of - 1))
            self.slider.setValue(at)
        self.slider.setEnabled(of > 1)
        self.before.setEnabled(at > 0)
        self.next.setEnabled(at < of - 1)
        self.play.setEnabled(of > 1)
        self._count.setText(say("{at} of {of}", at=at + 1, of=of) if of else "")
        self.title.setText(title)

    def turn(self, by: int) -> None:
        """Some steps on, or back; stops at the ends."""
        self.at_wanted.emit(min(max(self.slider.value() + by, 0), self.slider.maximum()))

    def stop(self) -> None:
        """End a play-through."""
        self._clock.stop()
        self.play.setChecked(False)

    # ---- inside -------------------------------------------------------------
    def _on(self) -> None:
        self.turn(1)

    def _back(self) -> None:
        self.turn(-1)

    def _played(self, on: bool) -> None:
        if not on:
            self._clock.stop()
            return
        if self.slider.value() == self.slider.maximum():
            self.at_wanted.emit(0)
        self._clock.start()

    def _tick(self) -> None:
        if self.slider.value() >= self.slider.maximum():
            self.stop()
        else:
            self.turn(1)
