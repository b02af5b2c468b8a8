"""What stands in the panel on the right: what is held or the stage's page, its section, and the snags below."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, Qt, Signal
from PySide6.QtWidgets import QLabel, QSplitter, QVBoxLayout, QWidget

from app.look.calm import Calm
from app.look.filled import filled
from app.look.ground import Ground
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.section_view import SectionView
from app.look.sizes import keep
from app.panels.change_list import ChangeList
from app.panels.describe import Page
from app.panels.forms.form import Form, rule
from app.panels.forms.rows import FieldRow
from app.panels.forms.stack import Stack
from app.panels.forms.tabs import Tabs
from app.panels.snags.chance_page import ChanceLine, ChancePage
from app.panels.snags.chance_words import Chances
from app.panels.snags.snag_list import SnagList
from geometry.checks import CheckResult
from geometry.drawing import Drawing
from geometry.drawing.section_snags import Signs
from geometry.saying import count, say
from geometry.units import LengthUnit

LIST = 80
"""Height of a list below at least, at 100 %, pixels: a card with two lines of words."""


class SideInside(QSplitter):
    """Shows rows above and snags below; sends edits and chosen snags on."""

    edited = Signal(str, object)
    refused = Signal(str)
    chosen = Signal(object)
    """the Snag that was chosen"""
    changes_shown = Signal(bool)
    """the list of changes came to the front, or went"""

    def __init__(self, unit: LengthUnit) -> None:
        super().__init__(Qt.Orientation.Vertical, childrenCollapsible=False)
        self._title = paragraph(self, name="title")
        self._facts, self._fields = Form(unit, self, (1, 1)), Form(unit, self)
        for form in (self._facts, self._fields):
            form.edited.connect(self.edited)
            form.refused.connect(self.refused)
        self._section_title = QLabel(self, objectName="heading")
        self._section = SectionView(self)
        for part in (self._section_title, self._section):
            part.hide()  # until there is one: what is empty would still take its spacing
        page = Ground(self, objectName="page")
        filled(QVBoxLayout(page), self._title, self._facts, self._section_title, self._section, self._fields, 1,
               margins=(22, 18, 18, 12), gap=8)
        scroll = Scroll(say("What is held, or the stage"), self, page)
        self._scroll = scroll
        self._upper = Stack(self)
        self._upper.addWidget(scroll)

        below = Ground(self, objectName="page")
        self._tally = paragraph(below, name="dim")
        self.tabs = Tabs((say("Snags"), say("Chances"), say("Changes")), below)
        self.snags = SnagList(below)
        self.snags.set_unit(unit)
        self.snags.chosen.connect(self.chosen)
        self.snags.grown.connect(self._make_room)
        self.chance_line = ChanceLine(below)
        self.chances = ChancePage(unit, below)
        lists = Stack(below)
        keep(lists, minimum_height=LIST)
        lists.addWidget(self.snags)
        lists.addWidget(self.chances)
        self.changes = ChangeList(below)
        lists.addWidget(self.changes)
        self._lists = lists
        self.tabs.chosen.connect(self._list_chosen)
        self._chance_room = Calm(self.chance_line, below, wraps=True)
        filled(QVBoxLayout(below), self.tabs, Calm(self._tally, below, wraps=True, lines=1), self._chance_room, rule(below),
               (lists, 1), margins=(22, 10, 10, 8), gap=8)

        self.addWidget(self._upper)
        self._below = Calm(below, self)
        self.addWidget(self._below)
        self.upper, self.lower = self._upper, below
        """what is held or the stage's panel, and the lists below it"""
        self.setStretchFactor(0, 3)
        self.setStretchFactor(1, 2)
        self.setSizes([540, 300])
        self._snag_sizes: list[int] | None = None
        self._with_snags = True

    def state(self) -> QByteArray:
        """How the panel is divided, without what the tall cards of chances borrow."""
        if self._snag_sizes is not None:
            self.setSizes(self._snag_sizes)
            self._snag_sizes = None
        return self.saveState()

    def show_facts(self, page: Page) -> None:
        """Show what is held: its name and what is worked out of it."""
        if self._title.text() != page.title:
            self._title.setText(page.title)
            self._scroll.to_top()
        self._show_rows(self._facts, page.facts)

    def show_fields(self, page: Page) -> None:
        """Show what of it can be typed."""
        self._show_rows(self._fields, page.fields, f"{page.title} {page.of}")

    def _show_rows(self, form: Form, rows: list[FieldRow], of: str = "") -> None:
        form.show_rows(rows, of)
        form.setVisible(bool(rows))

    def add_room(self, panel: QWidget) -> None:
        """Take in the panel of a stage, to be shown later."""
        self._upper.addWidget(panel)

    def show_room(self, panel: QWidget | None) -> None:
        """Show the panel of a stage in place of the rows; None shows the rows again."""
        self._upper.setCurrentWidget(self._scroll if panel is None else panel)

    def show_snags(self, shown: bool) -> None:
        """Keep the list of snags below, or give its room away."""
        self._with_snags = shown
        self._below.setVisible(shown or self.shows_changes)

    @property
    def shows_changes(self) -> bool:
        """Whether the list of changes is on show: it stays so on every stage."""
        return self._lists.currentWidget() is self.changes

    def show_changes(self, shown: bool) -> None:
        """Bring the list of changes to the front, or the snags back."""
        self.tabs.button(2 if shown else 0).click()
        self._below.setVisible(shown or self._with_snags)

    def show_section(self, title: str, drawing: Drawing, signs: Signs = (), moving: bool = False) -> None:
        """Show a section below the rows; an empty drawing hides it. `moving`: it is being dragged."""
        self._section_title.setText(title)
        self._section_title.setVisible(bool(drawing))
        self._section.show_drawing(drawing, signs, moving)

    def show_result(self, result: CheckResult) -> None:
        """Show the snags and their tally."""
        counts = {grade: sum(s.grade == grade for s in result.snags) for grade in ("spoils the work", "tight", "note")}
        words = []
        if counts["spoils the work"]:
            words.append(count(counts["spoils the work"], "{n} spoils the work", "{n} spoil the work"))
        if counts["tight"]:
            words.append(say("{n} tight", n=counts["tight"]))
        if counts["note"]:
            words.append(count(counts["note"], "{n} note", "{n} notes"))
        self._tally.setText(" · ".join(words) or say("There is no snag."))
        self.snags.show_snags(result.snags)

    def _make_room(self, lacking: int) -> None:
        """The snag in hand with its chance wants to be seen whole: it gets up to the lower three fifths of the panel."""
        upper, lower = self.sizes()
        more = min(lacking, round(0.6 * (upper + lower)) - lower)
        if more > 0:
            self.setSizes([upper - more, lower + more])

    def _list_chosen(self, number: int) -> None:
        """Cards of chances are tall: they get more than half of the panel while they are on show."""
        self._lists.setCurrentIndex(number)
        if number == 1 and self._snag_sizes is None:
            self._snag_sizes = self.sizes()
            whole = sum(self._snag_sizes)
            if self._snag_sizes[1] < 0.6 * whole:
                self.setSizes([round(0.4 * whole), round(0.6 * whole)])
        elif number != 1 and self._snag_sizes is not None:
            self.setSizes(self._snag_sizes)
            self._snag_sizes = None
        self._chance_room.setVisible(number != 2)
        self.changes_shown.emit(number == 2)

    def show_chances(self, chances: Chances) -> None:
        """Show how likely the whole comes out, and where it may not."""
        self.chance_line.show_chances(chances)
        self.snags.show_chances(chances)
        self.chances.show_chances(chances)
