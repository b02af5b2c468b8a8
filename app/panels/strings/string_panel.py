"""The panel of the Strings stage: nut, strings and posts, a proposal with its gain, sets by gauge."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QVBoxLayout, QWidget

from app.look.choice import Choice
from app.look.filled import filled
from app.look.flow import Flow
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.wrapping import WrappingButton
from app.panels.describe import field, nut_rows
from app.panels.forms.form import Form
from app.panels.forms.rows import FieldRow
from app.panels.strings.string_table import StringTable, string_rows
from geometry.beginning.instruments import INSTRUMENTS
from geometry.edits.nut_end import end_along_nut, ends_off_nut
from geometry.edits.retainers import add_retainer
from geometry.edits.string_count import (
    add_string,
    all_paired,
    pair_all,
    pair_string,
    remove_string,
    shares_course,
    strings_for_posts,
)
from geometry.layout import Headstock
from geometry.saying import say
from geometry.strings.hands import thick_on_treble
from geometry.strings.sets import SETS
from geometry.units import LengthUnit, format_length


class StringPanel(QWidget):
    """Shows a layout's strings; sends edits and wishes on."""

    edited = Signal(str, object)
    refused = Signal(str)
    wanted = Signal()
    """a proposal which post serves which string"""
    taken = Signal()
    left = Signal()
    set_chosen = Signal(object)
    usual_wanted = Signal(str)
    """nut and strings as usual for an instrument"""

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        page = self._page = QWidget(self, objectName="page")
        title = QLabel(say("Nut and strings"), page, objectName="title")
        self.table = StringTable(page)
        self.propose = WrappingButton(say("Propose which post serves which string"), page)
        self.propose.clicked.connect(self.wanted)
        self.gain = paragraph(page)
        self.take, self.leave = QPushButton(say("Take it"), page), QPushButton(say("Leave it"), page)
        self.take.clicked.connect(self.taken)
        self.leave.clicked.connect(self.left)
        answers = filled(Flow(), self.take, self.leave)
        self.sets = Choice(page, asks=True, accessibleName=say("Generic set of strings"), activated=self._set)
        # Above all that grows with the strings: who presses twice must find the same button there.
        self.count = Form(unit, page, at_once=2)
        self.nut, self.strings = Form(unit, page, at_once=8), Form(unit, page, at_once=0)
        for form in (self.count, self.nut, self.strings):
            form.edited.connect(self.edited)
            form.refused.connect(self.refused)
        self.hands = paragraph(page, say("The thick strings run on the treble side, as for a left-handed player: sides are named by the "
                                         "drawing, bass on the left and treble on the right of the face."))
        self.hands.setVisible(False)
        self.note = paragraph(page, say("Newtons on the nut: what a string presses down with where it bends; 10 N is the "
                                        "weight of 1 kg. Friction is left out."), "dim")
        filled(QVBoxLayout(page), title, self.hands, self.count, self.propose, self.gain, answers, self.table, self.note, self.nut,
               self.sets, self.strings, 1, margins=(22, 18, 18, 12), gap=8)
        self._scroll = Scroll(say("Nut and strings"), self, page)
        filled(QVBoxLayout(self), self._scroll, margins=(0, 0, 0, 0))
        self.show_gain("")

    def show_layout(self, layout: Headstock, unit: LengthUnit) -> None:
        """Show the strings of a layout."""
        self.table.show_strings(string_rows(layout), tuple(tuner.id for tuner in layout.tuners))
        self.note.setVisible(bool(layout.strings))
        self.hands.setVisible(thick_on_treble(layout.strings))
        self.count.show_rows(_one_more_rows(layout))
        self.nut.show_rows([*_for_posts_rows(layout), _usual_row(self.usual_wanted.emit), *_pair_rows(layout), *nut_rows(layout), *_end_rows(layout)])
        self.strings.show_rows(_string_rows(layout))
        fitting = [one for one in SETS if len(one) == len(layout.strings)]
        self.sets.clear()
        self.sets.addItem(say("Generic set by gauge…"), None)
        for one in fitting:
            thin, thick = min(one.diameters), max(one.diameters)
            decimals = 2 if unit == "mm" else 3
            shown: LengthUnit = "mm" if unit == "mm" else "in"
            self.sets.addItem(say("{instrument}: {thin} to {thick}", instrument=INSTRUMENTS[one.instrument].title,
                                  thin=format_length(thin, shown, decimals, mark=shown != "mm"),
                                  thick=format_length(thick, shown, decimals, mark=True)), one)
        self.sets.setVisible(bool(fitting))

    def show_gain(self, words: str) -> None:
        """What a proposal would gain, with the buttons that answer it; empty takes them away."""
        self.gain.setText(words)
        if not words and (self.take.hasFocus() or self.leave.hasFocus()):
            self.propose.setFocus()  # else the keyboard would go on to Undo as they go
        for part in (self.gain, self.take, self.leave):
            part.setVisible(bool(words))
        typing = QApplication.focusWidget()
        if words and (typing is None or not self._page.isAncestorOf(typing)):  # it came of its own accord, and nobody types below
            self._page.layout().activate()
            self._scroll.ensureWidgetVisible(self.gain)
            self._scroll.ensureWidgetVisible(self.take)

    def _set(self) -> None:
        chosen = self.sets.currentData()
        if chosen is not None:
            self.set_chosen.emit(chosen)


def _one_more_rows(layout: Headstock) -> list[FieldRow]:
    return [FieldRow(say("Add a string on the bass side"), "button", None, lambda _: add_string(layout, "bass")),
            FieldRow(say("Add a string on the treble side"), "button", None, lambda _: add_string(layout, "treble")),
            FieldRow(say("Add a string retainer"), "button", None, lambda _: add_retainer(layout))]


def _usual_row(chosen: Callable[[str], None]) -> FieldRow:
    return FieldRow(say("As usual for an instrument"), "choice", "", chosen,
                    choices=(("", say("choose one…")), *((key, kind.title) for key, kind in INSTRUMENTS.items())), asks=True,
                    help=say("Sets scale length, height, pitch and strings as they are usual for an instrument. Width and slant of the nut stay, and "
                             "the first and the last string stand where they are."))


def _pair_rows(layout: Headstock) -> list[FieldRow]:
    if len(layout.strings) < 4 or len(layout.strings) % 2:
        return []
    return [FieldRow(say("Strings in pairs"), "flag", all_paired(layout), partial(pair_all, layout),
                     help=say("Two by two from the bass side on; each string below says whether it shares a course with the one above it."))]


def _end_rows(layout: Headstock) -> list[FieldRow]:
    if not ends_off_nut(layout):
        return []
    return [FieldRow(say("End the outline along the nut line"), "button", None, lambda _: end_along_nut(layout),
                     help=say("Cuts its sides off at the nut line, or lets them go straight on to it. What sits on its edges stays where it is."))]


def _for_posts_rows(layout: Headstock) -> list[FieldRow]:
    if layout.strings or len(layout.tuners) < 2:
        return []
    return [FieldRow(say("Add a string for each of the {n} posts", n=len(layout.tuners)), "button", None,
                     lambda _: strings_for_posts(layout))]


def _string_rows(layout: Headstock) -> list[FieldRow]:
    rows: list[FieldRow] = []
    for i, string in enumerate(layout.strings):
        path = ("strings", i)
        rows += [FieldRow(say("String {string}, course {course}", string=string.id, course=string.course), "heading"),
                 field(layout, say("Tuned to"), "text", (*path, "note"), string.note,
                       help=say("A note such as E2 or F#3: with it the pull is worked out.")),
                 field(layout, say("Diameter"), "length", (*path, "diameter"), string.diameter),
                 field(layout, say("Steel core, if wound"), "length", (*path, "core"), string.core, optional=True, empty=say("plain"),
                       help=say("Wound in bronze over a steel core; densities from memory of handbooks.")),
                 field(layout, say("Scale length"), "length", (*path, "scale_length"), string.scale_length, optional=True,
                       empty=say("the nut's"))]
        if i:
            rows.append(FieldRow(say("In one course with string {string}", string=layout.strings[i - 1].id), "flag",
                                 shares_course(layout, i), partial(pair_string, layout, string.id),
                                 help=say("Strings of one course lie close together and are played as one.")))
        rows.append(FieldRow(say("Remove string {string}", string=string.id), "button", None,
                             lambda _, id=string.id: remove_string(layout, id)))
    return rows
