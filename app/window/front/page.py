"""The page of an empty start: ways to begin on the left, invented samples on the right."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from pathlib import Path

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.look.filled import filled
from app.look.icons import button_icon
from app.look.paragraph import paragraph
from app.look.plain import plain, short
from app.look.scroll import steady
from app.look.sizes import keep, px, sizes
from app.look.wrapping import WrappingButton
from app.window.front.card import SIZE, Card
from geometry.saying import say

MOST_RECENT = 5
WAY = 300
"""Width of the ways to begin at 100 %, pixels."""
GAP = 12
RING = 2
"""Frame of an area that scrolls, where its ring is seen when it has the keyboard, pixels."""
SIGNS = {"draw": "draw outline"}
"""Signs of ways that are not called like the way."""


class FrontPage(QWidget):
    """Offers ways to begin. It opens nothing itself."""

    chosen = Signal(str)
    """key of a way: numbers, draw, import, trace, open, back"""
    sample_chosen = Signal(object)
    recent_chosen = Signal(object)
    """a path"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="front")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.cards: list[Card] = []
        filled(QHBoxLayout(self), self._ways(), (self._samples(), 1), margins=(48, 36, 36, 24), gap=44)

    # ---- building -------------------------------------------------------
    def _scrolling(self) -> tuple[QScrollArea, QWidget]:
        """An area that scrolls, and what lies in it."""
        area = QScrollArea(self, widgetResizable=True, focusPolicy=Qt.FocusPolicy.NoFocus)
        steady(area)
        area.viewport().setAutoFillBackground(False)
        inside = QWidget(area)
        area.setWidget(inside)
        return area, inside

    def _ways(self) -> QScrollArea:
        area, inside = self._scrolling()
        keep(area, fixed_panel=WAY + 28)
        said = paragraph(self, say("Every beginning can be changed in all its parts, and nothing is saved until you say "
                                "so."), "dim")
        keep(said, fixed_panel=WAY)
        column = filled(QVBoxLayout(inside), paragraph(self, say("A new headstock"), "fronttitle"), said, margins=(0, 0, 0, 0),
                        gap=8)
        column.addSpacing(10)
        self.ways: dict[str, QPushButton] = {}
        for key, word, about in (
                ("numbers", say("From a few numbers…"),
                 say("Strings, tuners and blank: a sound layout to go on from.")),
                ("draw", say("Draw it yourself"), say("A bare blank with nut and strings, the pencil in hand.")),
                ("import", say("From a drawing…"), say("An outline from a DXF or SVG file.")),
                ("trace", say("From a photo or scan…"), say("Set to scale, and its outline traced.")),
                ("open", say("Open a layout…"), say("Go on with one that you saved."))):
            way = QPushButton(word, self, objectName="way", iconSize=QSize(px(20), px(20)),
                              icon=button_icon(SIGNS.get(key, key)), autoDefault=True, accessibleDescription=about, toolTip=about,
                              clicked=self._way)
            way.setProperty("way", key)
            keep(way, fixed_panel=WAY)
            self.ways[key] = way
            column.addWidget(way)
            told = paragraph(self, about, "dim")
            told.setContentsMargins(0, 0, 0, 6)
            column.addWidget(told)
        column.addSpacing(8)
        self._recent_title = paragraph(self, say("Opened lately"), "heading")
        column.addWidget(self._recent_title)
        self._recent = QVBoxLayout()
        self._recent.setSpacing(2)
        column.addLayout(self._recent)
        column.addStretch(1)
        self.back = WrappingButton(say("Back to the layout"), self, objectName="link", clicked=self._way)
        self.back.setProperty("way", "back")
        column.addWidget(self.back, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(paragraph(self, say("A drawing, a picture or a layout may also be dropped here."), "dim"))
        return area

    def _samples(self) -> QVBoxLayout:
        told = (paragraph(self, say("From an invented sample"), "fronttitle"),
                paragraph(self, say("Each is drawn from its own layout. A copy opens; the sample stays."), "dim"))
        for words in told:
            words.setContentsMargins(RING, 0, 0, 0)
        column = filled(QVBoxLayout(), *told, margins=(0, RING, 0, 0), gap=8)
        column.addSpacing(6)
        self._area, self._shelf = self._scrolling()
        self._grid = QGridLayout(self._shelf)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(GAP)
        self._grid.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self._area.viewport().installEventFilter(self)
        column.addWidget(self._area, 1)
        return column

    # ---- what to show ---------------------------------------------------
    def show_samples(self, files: Sequence[Path]) -> None:
        """A card for each sample, by the name of its file until its picture comes."""
        for file in files:
            words = file.name.split(".")[0].replace("-", " ").capitalize()
            card = Card(words, "", self._shelf)
            card.setProperty("file", str(file))
            card.clicked.connect(self._card)
            card.installEventFilter(self)
            self.cards.append(card)
        self._lay()

    def show_recent(self, files: Sequence[Path]) -> None:
        """Names of layouts opened lately."""
        while self._recent.count():
            widget = self._recent.takeAt(0).widget()
            widget.hide()
            widget.deleteLater()
        for file in list(files)[:MOST_RECENT]:
            button = QPushButton(self, objectName="link", toolTip=plain(str(file)), clicked=self._recent_one)
            button.ensurePolished()  # for the letters it is written in: a long name must not widen the column
            _name_recent(button, file, True)
            button.setProperty("file", str(file))
            self._recent.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self._recent_title.setVisible(bool(files))

    def show_missing(self, missing: Collection[Path]) -> None:
        """Tell of those names whose files are not there."""
        for at in range(self._recent.count()):
            button = self._recent.itemAt(at).widget()
            file = Path(button.property("file"))
            _name_recent(button, file, file not in missing)

    def follow_sizes(self) -> None:
        """Lay the cards anew for letters of another size, and let the signs grow with them."""
        for way in self.ways.values():
            way.setIconSize(QSize(px(20), px(20)))
        self._lay()

    # ---- inside ---------------------------------------------------------
    def _columns(self) -> int:
        return max(1, (self._area.viewport().width() + GAP) // (sizes().soft(SIZE.width()) + GAP))

    def _lay(self) -> None:
        columns = self._columns()
        for i, card in enumerate(self.cards):
            self._grid.addWidget(card, i // columns, i % columns)

    def eventFilter(self, watched, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize and watched is self._area.viewport():
            self._lay()
        if event.type() == QEvent.Type.FocusIn and watched in self.cards:
            self._area.ensureWidgetVisible(watched, 8, 8)
        if event.type() == QEvent.Type.KeyPress and watched in self.cards:
            columns = self._columns()
            steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_Up: -columns, Qt.Key.Key_Down: columns}
            if event.key() in steps:
                to = self.cards.index(watched) + steps[event.key()]
                if 0 <= to < len(self.cards):
                    self.cards[to].setFocus(Qt.FocusReason.TabFocusReason)
                return True
        return super().eventFilter(watched, event)

    def _way(self) -> None:
        self.chosen.emit(self.sender().property("way"))

    def _card(self) -> None:
        self.sample_chosen.emit(Path(self.sender().property("file")))

    def _recent_one(self) -> None:
        self.recent_chosen.emit(Path(self.sender().property("file")))


def _name_recent(button: QPushButton, file: Path, there: bool) -> None:
    name = short(file.name.removesuffix(".json").removesuffix(".headstock"))
    words = name if there else say("{name} – not there now", name=name)
    button.setText(button.fontMetrics().elidedText(words, Qt.TextElideMode.ElideMiddle, px(WAY - 16)).replace("&", "&&"))
    button.setEnabled(there)
