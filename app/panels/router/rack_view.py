"""The rack on the bench: its shelves as tables, the entry that is chosen as fields beside them."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QLabel,
    QPushButton,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.look.choice import Choice
from app.look.filled import filled
from app.look.flow import Flow
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.sizes import keep, px, sizes
from app.panels.forms.form import Form
from app.panels.forms.rows import FieldRow
from app.panels.router.rack_rows import MACHINES, SHELVES, entry_rows, machine_rows
from app.panels.router.rack_table import ShelfTable
from geometry.edits.rack import add_entry, copy_entry, remove_entry, sort_shelf
from geometry.errors import GeometryError
from geometry.layout import Headstock, Rack
from geometry.saying import say
from geometry.units import LengthUnit

WHOSE = (("layout", say("The rack in this layout")), ("mine", say("My own rack")))
WHOLE = (("take", say("Take mine into this layout"), say("Copy your own rack into the layout. Choices of bits that it does "
                                                    "not hold are dropped.")),
         ("keep", say("Keep this one as mine"), say("Copy the layout's rack to where your own is kept for all layouts.")),
         ("import", say("Import…"), say("Read a rack from a file.")), ("export", say("Export…"), say("Write this rack to a file.")),
         ("start mm", say("Start anew in mm"), say("The invented starting rack, sizes in mm.")),
         ("start inch", say("Start anew in inches"), say("The invented starting rack, sizes in inches.")),
         ("back", say("Take back"), say("Undo the last change of your own rack.")))
"""(key, word, help) of what is done with a whole rack."""


TABLE, ENTRY = 540, 280
"""Width of a shelf that has room beside its entry, and of the entry, at 100 %, pixels."""
BESIDE = [570, 330]
"""How a shelf and its entry share the room side by side: in German the shelf of bits needs that much."""
LOW, TALL = 190, 360
"""Least height of shelf and entry beside each other and below each other, at 100 %, pixels: with less the rack scrolls."""


class RackView(QWidget):
    """Shows one rack; sends every change as a whole new rack."""

    edited = Signal(str, object, object)
    """(what, Rack or Headstock, (shelf, old name, new name) or None)"""
    refused = Signal(str)
    whose_changed = Signal(str)
    wanted = Signal(str)
    """a key of WHOLE"""

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._unit = unit
        self._rack = Rack()
        self._extra: list[FieldRow] = []
        self._shelf = "bits"
        self._ids: dict[str, str] = {}
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        page = QWidget(self, objectName="page")
        area = Scroll(say("Rack"), self, page)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # Tab goes through what is in it, and brings it into sight
        filled(QVBoxLayout(self), area, margins=(0, 0, 0, 0))
        top, tabs = self._top(), self._tabs()
        self._says = paragraph(self, name="dim")
        self.table = ShelfTable(self)
        self.table.chosen.connect(self._chosen)
        self.form = Form(unit, self)
        self.machines = Form(unit, self)
        for form in (self.form, self.machines):
            form.edited.connect(self._edited)
            form.refused.connect(self.refused)
        left = QWidget(self)
        filled(QVBoxLayout(left), (self.table, 1), self._below(), margins=(0, 0, 0, 8), gap=8)
        self._splitter = QSplitter(Qt.Orientation.Horizontal, self, childrenCollapsible=False)
        self._splitter.addWidget(left)
        self._splitter.addWidget(_scrolled(self.form, self))
        self._splitter.setSizes(BESIDE)
        self._pages = QStackedWidget(self)
        self._pages.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)  # what is left, or LOW and TALL
        self._pages.addWidget(self._splitter)
        self._pages.addWidget(_scrolled(self.machines, self))
        filled(QVBoxLayout(page), top, self._says, tabs, (self._pages, 1), margins=(22, 16, 18, 14), gap=10)
        self.follow_sizes()

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self.follow_sizes()

    def follow_sizes(self) -> None:
        """Lay the entry beside the table, or below it where the table would show no more than parts of names."""
        below = self.width() < px(TABLE) + sizes().soft(ENTRY)
        self._pages.setMinimumHeight(px(TALL if below else LOW))
        self.table.setMinimumHeight(px(LOW - 70) if below else 0)
        turned = Qt.Orientation.Vertical if below else Qt.Orientation.Horizontal
        if self._splitter.orientation() != turned:
            self._splitter.setOrientation(turned)
            self._splitter.setSizes([500, 500] if below else BESIDE)

    # ---- showing --------------------------------------------------------
    @property
    def whose(self) -> str:
        """ "layout" or "mine" """
        return self._whose.currentData()

    @property
    def rack(self) -> Rack:
        """The rack on show."""
        return self._rack

    def show_rack(self, rack: Rack, says: str, extra: list[FieldRow], can_take_back: bool) -> None:
        """Show a rack, a sentence on whose it is, and more rows for the machines' page."""
        self._rack, self._extra = rack, extra
        self._says.setText(says)
        if self.buttons["back"].hasFocus() and not can_take_back:
            self.table.setFocus()  # and not the next button
        self.buttons["take"].setVisible(self.whose == "layout")
        self.buttons["keep"].setVisible(self.whose == "layout")
        self.buttons["back"].setVisible(self.whose == "mine")
        self.buttons["back"].setEnabled(can_take_back)
        self._fill()

    def set_unit(self, unit: LengthUnit) -> None:
        """Show lengths in another unit, once its forms do."""
        self._unit = unit
        self._fill()

    # ---- building -------------------------------------------------------
    def _top(self) -> QVBoxLayout:
        self._whose = Choice(self, choices=WHOSE, accessibleName=say("Which rack"), activated=self._other)
        self.buttons: dict[str, QPushButton] = {}
        title = QLabel(say("Rack"), self, objectName="title")
        first, second = Flow(), Flow()
        first.addWidget(title)
        first.add_gap(8)
        first.addWidget(self._whose)
        for key, word, about in WHOLE:
            button = QPushButton(word, self, toolTip=about, clicked=self._whole)
            button.setProperty("key", key)
            self.buttons[key] = button
            (first if key in ("take", "keep", "back") else second).addWidget(button)
        self.buttons["back"].setVisible(False)
        return filled(QVBoxLayout(), first, second, gap=8)

    def _tabs(self) -> Flow:
        group = QButtonGroup(self, exclusive=True)
        row = Flow()
        self._tab: dict[str, QPushButton] = {}
        for key, word in (*SHELVES, (MACHINES, say("Machines and template"))):
            button = QPushButton(word, self, checkable=True, clicked=self._other_shelf)
            button.setProperty("shelf", key)
            group.addButton(button)
            self._tab[key] = button
            row.addWidget(button)
        self._tab["bits"].setChecked(True)
        return row

    def _below(self) -> Flow:
        row = Flow()
        for key, word, slot in (("add", say("Add"), self._add), ("copy", say("Copy"), self._copy), ("remove", say("Remove"), self._remove),
                                ("sort", say("Sort by size"), self._sort)):
            button = QPushButton(word, self, clicked=slot)
            self.buttons[key] = button
            row.addWidget(button)
        return row

    # ---- inside ---------------------------------------------------------
    def _fill(self) -> None:
        if self._shelf == MACHINES:
            self._pages.setCurrentIndex(1)
            self.machines.show_rows([*machine_rows(self._rack, self._unit), *self._extra], self.whose)
            return
        self._pages.setCurrentIndex(0)
        self.table.show_shelf(self._rack, self._shelf, self._unit, self._ids.get(self._shelf, ""))
        self._show_entry()

    def _show_entry(self) -> None:
        id = self.table.id
        if id:
            self._ids[self._shelf] = id
        need_one = [self.buttons[key] for key in ("copy", "remove", "sort")]
        if not id and any(button.hasFocus() for button in need_one):
            self.table.setFocus()  # and not the next button, which is Undo
        for button in need_one:
            button.setEnabled(bool(id))
        rows = entry_rows(self._rack, self._shelf, id, self._unit)
        self.form.show_rows(rows or [FieldRow(say("Nothing on this shelf yet: add one."), "heading")],
                            f"{self.whose} {self._shelf} {id}")

    def _chosen(self, id: str) -> None:
        if self._shelf != MACHINES and id and id != self._ids.get(self._shelf):
            self._show_entry()

    def _edited(self, what: str, changed: Rack | Headstock) -> None:
        if isinstance(changed, Headstock):
            self.edited.emit(what, changed, None)
            return
        old, renamed = self._ids.get(self._shelf, ""), None
        if self._shelf != MACHINES:
            ids = [entry.id for entry in getattr(changed, self._shelf)]
            at = [entry.id for entry in getattr(self._rack, self._shelf)].index(old)
            if ids[at] != old:
                renamed = (self._shelf, old, ids[at])
                self._ids[self._shelf] = ids[at]
        self.edited.emit(what, changed, renamed)

    def _change(self, what: str, change: Callable[[Rack], Rack]) -> None:
        try:
            rack = change(self._rack)
        except GeometryError as error:
            self.refused.emit(str(error))
            return
        before = {entry.id for entry in getattr(self._rack, self._shelf)}
        fresh = [entry.id for entry in getattr(rack, self._shelf) if entry.id not in before]
        if fresh:
            self._ids[self._shelf] = fresh[0]
        self.edited.emit(what, rack, None)

    def _add(self) -> None:
        self._change(say("Add to the rack"), lambda rack: add_entry(rack, self._shelf))

    def _copy(self) -> None:
        id = self.table.id
        self._change(say("Copy in the rack"), lambda rack: copy_entry(rack, self._shelf, id))

    def _remove(self) -> None:
        entries = [entry.id for entry in getattr(self._rack, self._shelf)]
        id = self.table.id
        at = entries.index(id)
        beside = entries[at + 1] if at + 1 < len(entries) else entries[at - 1]
        self._ids[self._shelf] = beside if beside != id else ""
        self._change(say("Remove {id}", id=id), lambda rack: remove_entry(rack, self._shelf, id))

    def _sort(self) -> None:
        self._change(say("Sort the rack"), lambda rack: sort_shelf(rack, self._shelf))

    def _other_shelf(self) -> None:
        self._shelf = self.sender().property("shelf")
        self._fill()

    def _other(self) -> None:
        self.whose_changed.emit(self.whose)

    def _whole(self) -> None:
        self.wanted.emit(self.sender().property("key"))


def _scrolled(form: Form, parent: QWidget) -> Scroll:
    page = QWidget(parent, objectName="page")
    filled(QVBoxLayout(page), form, 1, margins=(12, 0, 10, 8))
    keep(form, maximum_width=520)
    area = Scroll(say("The entry that is chosen"), parent, page)
    keep(area, panel_width=ENTRY)
    return area
