"""The panel of the Router stage: for a slot or the outline the plan, its passes, its numbers, and why no other bit."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.look.choice import Choice
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.wrapping import WrappingButton
from app.panels.forms.fold import Fold
from app.panels.forms.form import Form, rule
from app.panels.forms.lines import Lines, numbered, plain
from app.panels.forms.rows import FieldRow
from app.panels.router.pass_stepper import PassStepper
from app.panels.router.rout_sheet import RoutSheet
from geometry.saying import say
from geometry.units import LengthUnit


class RoutPanel(QWidget):
    """Shows RoutSheets one at a time. It changes nothing: it says what the maker wants."""

    picked = Signal(str)
    """another slot, or "outline", is shown"""
    plan_chosen = Signal(str, object)
    """(of, tools): the maker wants this plan; () for the best"""
    template_wanted = Signal(object)
    """(bit, bush): the template should be made for this"""
    template_file_wanted = Signal(object)
    """(bit, bush): the template of this should be written to a file"""
    edited = Signal(str, object)
    """what was changed, and the edited layout"""
    refused = Signal(str)

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sheets: tuple[RoutSheet, ...] = ()
        self._of = ""
        self._rules: list[QWidget] = []
        self._headings: dict[Lines, QLabel] = {}
        page = QWidget(self, objectName="page")
        column = QVBoxLayout(page)
        column.setContentsMargins(22, 18, 18, 12)
        column.setSpacing(8)
        self._column = column
        self.what = self._combo(say("Slot or outline"))
        self.what.activated.connect(self._picked)
        self.headline = self._label("title")
        self.plans = self._combo(say("Plan"))
        self._about_plans = say("Another plan than the best: your choice is kept in the layout.")
        self.plans.activated.connect(self._planned)
        self.best = QPushButton(say("Back to the best plan"), self, clicked=self._back_to_best)
        self.lost = self._label("warning")
        self.would = self._lines(say("What would do it"))
        self.steps = self._lines(say("Steps"))
        self.stepper = PassStepper(self)
        self.facts = Lines(self, (1, 1))
        self.template = self._label("")
        self.make_template = WrappingButton(say("Make the template for this plan"), self, clicked=self._template)
        self.write_template = WrappingButton(say("Write this plan's template…"), self, clicked=self._write,
                                             toolTip=say("The board alone, with openings and pin holes, as DXF or SVG at full size."))
        self.form = Form(unit, self)
        self.form.edited.connect(self.edited)
        self.form.refused.connect(self.refused)
        self.notes = Lines(self)
        self.rejected = Lines(self)
        self.rejected_fold = Fold(self.rejected, False, self)
        self.cautions = Lines(self)
        self.speeds = Lines(self, (1, 1))
        self.speeds_fold = Fold(self.speeds, False, self)
        self.speeds_fold.set_title(say("Rim speed at each setting"))
        for widget in (self.what, self.headline, self.lost, self.plans, self.best, self.would, self.stepper, self.steps):
            if isinstance(widget, Lines):
                column.addWidget(self._headings[widget])
            column.addWidget(widget)
        self._numbers = self._heading(say("In numbers"), self.facts)
        column.addWidget(self.rejected_fold)
        self._board = self._heading(say("Template"), self.template)
        for widget in (self.make_template, self.write_template, self.form, self.notes):
            column.addWidget(widget)
        self._mind = self._heading(say("Mind"), self.cautions)
        column.addWidget(self.speeds_fold)
        column.addStretch(1)
        self._scroll = Scroll(say("The plan"), self, page)
        filled(QVBoxLayout(self), self._scroll, margins=(0, 0, 0, 0))
        self.show_message(say("Planning…"))

    # ---- showing --------------------------------------------------------
    @property
    def of(self) -> str:
        """The slot on show, or "outline"."""
        return self._of

    @property
    def sheet(self) -> RoutSheet | None:
        """What is on show."""
        return next((sheet for sheet in self._sheets if sheet.of == self._of), None)

    def show_message(self, text: str) -> None:
        """One sentence in place of any plan."""
        self._sheets = ()
        self.headline.setText(text)
        for widget in (self.what, self.lost, self.plans, self.best, self.template, self.make_template,
                       self.write_template, self.form,
                       self._numbers, self._board, self._mind, *self._rules, self.rejected_fold,
                       self.speeds_fold):
            widget.setVisible(False)
        for lines in (self.would, self.steps, self.facts, self.notes, self.cautions):
            self._fill(lines, ())
        self.stepper.show_passes((), ())

    def show_template(self, rows: list[FieldRow]) -> None:
        """What can be typed of the template."""
        self.form.show_rows(rows)

    def show_sheets(self, sheets: tuple[RoutSheet, ...], notes: tuple[str, ...]) -> None:
        """Show what is planned, and what is to be said of the board."""
        self._sheets = sheets
        names = [(sheet.of, f"{sheet.title}" if sheet.able else say("{title} – no bit does it", title=sheet.title))
                 for sheet in sheets]
        if [(self.what.itemData(i), self.what.itemText(i)) for i in range(self.what.count())] != names:
            self.what.clear()
            for of, words in names:
                self.what.addItem(words, of)
        if self.sheet is None:
            self._of = next((sheet.of for sheet in sheets if not sheet.able), sheets[0].of)
        self.what.setCurrentIndex(self.what.findData(self._of))
        self._fill(self.notes, plain(notes))
        for widget in (self.what, self.form, self._numbers, self._board, self._mind, *self._rules, self.template):
            widget.setVisible(True)
        self._show()

    def tells_of(self, of: str) -> bool:
        """Whether there is a sheet of that slot, or of the outline."""
        return any(sheet.of == of for sheet in self._sheets)

    def show_of(self, of: str) -> None:
        """Show another slot, or the outline; unknown names change nothing."""
        if of != self._of and self.tells_of(of):
            self._of = of
            self.what.setCurrentIndex(self.what.findData(of))
            self._show()
            self._scroll.to_top()

    # ---- inside ---------------------------------------------------------
    def _show(self) -> None:
        sheet = self.sheet
        agrees = not sheet.able or sheet.agrees
        if self.best.hasFocus() and not sheet.chosen or self.make_template.hasFocus() and agrees:
            self.what.setFocus()  # else the keyboard would go on to Undo as they go
        self.headline.setText(sheet.headline)
        self.lost.setText(sheet.lost_choice)
        self.lost.setVisible(bool(sheet.lost_choice))
        self._show_plans(sheet)
        self._fill(self.would, plain(sheet.would))
        self._fill(self.steps, numbered(sheet.steps))
        self.stepper.show_passes(sheet.pictures, sheet.passes)
        self._fill(self.facts, sheet.facts)
        self.rejected_fold.setVisible(bool(sheet.rejected))
        self.rejected_fold.set_title(say("Why not the other bits ({rejected})", rejected=len(sheet.rejected)))
        self.rejected.show_rows([("", f"{bit}: {reason}", False) for bit, reason in sheet.rejected])
        self.rejected.setVisible(self.rejected_fold.opened)
        if not sheet.able:
            self.rejected_fold.open()
        self.template.setText(sheet.template)
        self.template.setVisible(bool(sheet.template))
        self.make_template.setVisible(not agrees)
        self.write_template.setVisible(sheet.able)
        self._fill(self.cautions, plain(sheet.cautions))
        self.speeds_fold.setVisible(bool(sheet.speeds))
        self.speeds.show_rows(_speed_rows(sheet))
        self.speeds.setVisible(self.speeds_fold.opened)

    def _show_plans(self, sheet: RoutSheet) -> None:
        self.plans.setVisible(len(sheet.choices) > 1)
        self.plans.clear()
        for number, (_, words) in enumerate(sheet.choices):
            kind = "" if number else (say("Your choice: ") if sheet.chosen else say("Best: "))
            self.plans.addItem(kind + words)
        self.plans.setToolTip(f"{self.plans.currentText()}\n{self._about_plans}")
        self.best.setVisible(sheet.chosen)

    def _fill(self, lines: Lines, rows) -> None:
        lines.show_rows(rows)
        lines.setVisible(bool(rows))
        heading = self._headings.get(lines)
        if heading is not None:
            heading.setVisible(bool(rows))

    def _combo(self, name: str) -> Choice:
        box = Choice(self, accessibleName=name, sizeAdjustPolicy=Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon,
                     minimumContentsLength=12)
        box.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        return box

    def _label(self, name: str) -> QLabel:
        return paragraph(self, name=name, textFormat=Qt.TextFormat.PlainText,
                         textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse)

    def _lines(self, title: str) -> Lines:
        lines = Lines(self)
        label = QLabel(title, self, objectName="heading")
        self._headings[lines] = label
        return lines

    def _heading(self, title: str, below: QWidget) -> QLabel:
        self._rules.append(rule(self))
        self._column.addWidget(self._rules[-1])
        label = QLabel(title, self, objectName="heading")
        self._column.addWidget(label)
        self._column.addWidget(below)
        return label

    def _picked(self) -> None:
        self.show_of(self.what.currentData())
        self.picked.emit(self._of)

    def _planned(self, index: int) -> None:
        sheet = self.sheet
        if index > 0:
            self.plan_chosen.emit(sheet.of, sheet.choices[index][0])

    def _back_to_best(self) -> None:
        self.plan_chosen.emit(self._of, ())

    def _write(self) -> None:
        self.template_file_wanted.emit(self.sheet.tool)

    def _template(self) -> None:
        self.template_wanted.emit(self.sheet.tool)


def _speed_rows(sheet: RoutSheet) -> list[tuple[str, str, bool]]:
    rows: list[tuple[str, str, bool]] = []
    for bit, table in sheet.speeds:
        rows.append(("", bit, False))
        rows += [(say("{turns:,.0f} turns a minute", turns=turns), rim + ("" if allowed else say(", too fast")), not allowed)
                 for turns, rim, allowed in table]
    return rows
