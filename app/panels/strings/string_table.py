"""The table of the Strings stage: each string with its post, its bends and how it presses on the nut."""

from __future__ import annotations

import math

from msgspec import Struct
from PySide6.QtCore import QCoreApplication, QEvent, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from app.look.choice import Choice
from app.look.sizes import keep, px, sizes
from app.look.turns import Steps, Turns
from geometry.layout import Headstock
from geometry.saying import number, say
from geometry.strings import runs
from geometry.strings.runs import TOLERABLE, break_angle
from geometry.strings.tension import bend_force, tension

ALONE = 1.4
"""Letters this many times larger than at 100 % leave no room for a post beside where its string runs."""


class StringRow(Struct, frozen=True):
    """What the table says of one string; None where there is nothing to say yet."""

    string: str
    note: str
    post: str | None
    winds: str | None
    mount: str | None
    side: float | None
    """degrees, never negative"""
    down: float | None
    """degrees"""
    pull: float | None
    """N"""
    press: float | None
    """N, on the nut"""


def string_rows(layout: Headstock) -> tuple[StringRow, ...]:
    """A row for each string, in the order of the strings."""
    found = {run.string: run for run in runs(layout)}
    posts = {tuner.string: tuner for tuner in layout.tuners if tuner.string is not None}
    made = []
    for string in layout.strings:
        run, tuner = found.get(string.id), posts.get(string.id)
        pull = tension(string, layout.nut)
        down = None if run is None else break_angle(run, layout.nut)
        made.append(StringRow(
            string.id, string.note, tuner and tuner.id, tuner and tuner.winds,
            tuner and layout.pattern(tuner.pattern).mount, None if run is None else abs(math.degrees(run.side_angle)),
            None if down is None else math.degrees(down), pull,
            None if pull is None or down is None else bend_force(pull, down)))
    return tuple(made)


class StringTable(QWidget):
    """A line for each string; sends what the maker changes in it."""

    post_chosen = Signal(str, object)
    """(string, tuner or None)"""
    winds_chosen = Signal(str, str)
    """(tuner, bass or treble)"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[StringRow, ...] = ()
        self._posts: tuple[str, ...] = ()
        self._made: list[tuple[Choice, Choice, tuple[QLabel, ...]]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(px(5))
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnStretch(1, 1)
        self._later = Turns(self, self._grid)
        self._two_lines = False
        """whether where a string runs stands below its post"""

    def follow_sizes(self) -> None:
        """Room between columns as the letters ask for. Large letters give each post the room of two columns: several begin with the same word."""
        self._grid.setHorizontalSpacing(px(5))
        if self._made and self._two_lines != (sizes().factor > ALONE):
            self._build()

    @property
    def complete(self) -> bool:
        """Whether every string has its row."""
        return len(self._made) == len(self._rows)

    @property
    def _bare(self) -> bool:
        """Whether there are rows to show, none of them made or about to be."""
        return bool(self._rows) and not self._made and not self._later.busy

    def show_strings(self, rows: tuple[StringRow, ...], posts: tuple[str, ...]) -> None:
        """Show these rows; the widgets are kept while strings and posts stay the same."""
        same = posts == self._posts and [r.string for r in rows] == [r.string for r in self._rows]
        self._rows, self._posts = rows, posts
        if not same or self._bare:
            self._build()
        for row, widgets in zip(rows, self._made, strict=False):  # what is not made yet is filled when it is made
            self._fill(row, *widgets)

    def _fill(self, row: StringRow, post: Choice, winds: Choice, labels: tuple[QLabel, ...]) -> None:
        post.setCurrentIndex(max(0, post.findData(row.post)))
        post.setToolTip(row.post or "")
        words = (say("over"), say("under")) if row.mount == "side" else (say("bass"), say("treble"))
        for i, text in enumerate(words):
            winds.setItemText(i, text)
        winds.setCurrentIndex(0 if row.winds == "bass" else 1)
        winds.setEnabled(row.winds is not None)
        winds.setToolTip(winds.currentText())
        values = (_degrees(row.side), _degrees(row.down), "–" if row.press is None else number(row.press, ".0f"))
        for label, text in zip(labels, values, strict=True):
            label.setText(text)
        wide = row.side is not None and row.side > TOLERABLE + 1e-9
        labels[0].setToolTip(say("More than 10 degrees: it tends to catch in the nut.") if wide else "")
        labels[0].setText(labels[0].text() + (" !" if wide else ""))
        labels[2].setToolTip("" if row.pull is None else say(
            "It pulls with {pull:.0f} N, as a weight of {weight:.1f} kg would.", pull=row.pull, weight=row.pull / 9.81))

    def let_unseen_go(self) -> None:
        """Keep no widgets that are not seen: they are made again when they are to be shown."""
        if not self.isVisible():
            for widget in self._clear():
                QCoreApplication.sendPostedEvents(widget, QEvent.Type.DeferredDelete)

    def showEvent(self, event) -> None:
        super().showEvent(event)
        if self._bare:
            self.show_strings(self._rows, self._posts)

    def _clear(self) -> list[QWidget]:
        self._later.stop()
        gone = [self._grid.takeAt(0).widget() for _ in range(self._grid.count())]
        for widget in gone:
            widget.hide()
            widget.deleteLater()
        self._made = []
        return gone

    def _build(self) -> None:
        seen = bool(self._clear()) and self.isVisible()
        self._two_lines = sizes().factor > ALONE
        heads = (("", ""), (say("Post"), say("Where the post that is chosen has a string already, the two strings change posts.")),
                 (say("Runs"), say("Side of the post through the face, over or under one through the side.")),
                 (say("Side"), say("Degrees aside at the nut: up to 6 is good, up to 10 tolerable.")),
                 (say("Down"), say("Break angle over the nut in degrees: 7 to 17 is good.")),
                 (say("N"), say("Newtons on the nut: 10 N is the weight of 1 kg.")))
        for column, (text, tip) in enumerate(heads if self._rows else ()):
            label = QLabel(text, self, objectName="dim", toolTip=tip)
            self._grid.addWidget(label, 0, column, Qt.AlignmentFlag.AlignLeft if column < 3 else Qt.AlignmentFlag.AlignRight)
        self._later.begin(self._add_rows())
        if seen:  # a table that changes under the maker's eyes is not taken away for some moments
            self._later.finish()

    def _add_rows(self) -> Steps:
        """A row in each step: their boxes take long to make."""
        while len(self._made) < len(self._rows):
            self._add(self._rows[len(self._made)])
            yield

    def _add(self, row: StringRow) -> None:
        number = len(self._made)
        name = QLabel(f"{row.string}  {row.note}".strip(), self, textFormat=Qt.TextFormat.PlainText)
        post, winds = Choice(self), Choice(self)
        post.addItem(say("none"), None)
        for id in self._posts:
            post.addItem(id, id)
        winds.addItems(["", ""])
        post.setAccessibleName(say("Post of string {string}", string=row.string))
        winds.setAccessibleName(say("Where string {string} runs", string=row.string))
        post.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        post.setMinimumContentsLength(8)
        winds.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToContents)  # no wider: posts have the longer words
        for box in (post, winds):
            box.setProperty("row", number)
            keep(box, minimum_width=68 if box is post else 56)  # where letters are large the words in them may be shortened
        post.activated.connect(self._chosen)
        winds.activated.connect(self._wound)
        labels = tuple(QLabel(self) for _ in range(3))
        first = 2 * number + 1
        for column, widget in ((0, name), *enumerate(labels, 3)):
            self._grid.addWidget(widget, first, column)
        self._grid.addWidget(post, first, 1, 1, 2 if self._two_lines else 1)
        self._grid.addWidget(winds, first + self._two_lines, 2)
        for label in labels:
            label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._made.append((post, winds, labels))
        self._fill(row, post, winds, labels)

    def _chosen(self) -> None:
        box = self.sender()
        self.post_chosen.emit(self._rows[box.property("row")].string, box.currentData())

    def _wound(self) -> None:
        box = self.sender()
        row = self._rows[box.property("row")]
        if row.post is not None:
            self.winds_chosen.emit(row.post, "bass" if box.currentIndex() == 0 else "treble")


def _degrees(value: float | None) -> str:
    return "–" if value is None else f"{number(value, '.1f')}°"
