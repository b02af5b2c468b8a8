"""The strip of the Router stage: what is shown on the face."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QToolButton, QWidget

SHOWS = (
    ("left", "Wood left", "Wood that the cutter cannot reach, hatched, with its depth: to be pared by hand.", True),
    ("waste", "Waste holes", "Where the waste is drilled out first.", True),
    ("template", "Template", "The edge that the follower rubs on.", True),
    ("tightest", "Narrowest", "Where each slot is narrowest.", False),
    ("grain", "Grain and feed", "Dashed heavy: the router runs against the grain or across it. "
                                "Arrows: the way to feed.", False),
)
"""(group, word, help, on at first)"""


class RouterStrip(QWidget):
    """Buttons that stay down."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(10, 0, 0, 0)
        row.setSpacing(6)
        self.buttons: dict[str, QToolButton] = {}
        for key, word, about, on in SHOWS:
            button = QToolButton(self)
            button.setText(self.tr(word))
            button.setToolTip(self.tr(about))
            button.setAccessibleName(self.tr("Show: {}").format(self.tr(word)))
            button.setCheckable(True)
            button.setChecked(on)
            button.toggled.connect(self.changed)
            self.buttons[key] = button
            row.addWidget(button)

    @property
    def shown(self) -> set[str]:
        """The groups that are wanted."""
        return {key for key, button in self.buttons.items() if button.isChecked()}
