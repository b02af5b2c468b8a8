"""The loops of a drawing as rows: how large each is, and what it becomes."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from app.formats.drawing_in import Loop
from app.formats.drawing_in.roles import is_hole
from app.look.choice import Choice
from app.look.plain import plain
from app.look.sizes import keep
from app.look.turns import Steps, Turns
from app.window.importing.roles import ROLE_WORDS, ROLES, Roles
from geometry.curves import Path
from geometry.saying import say
from geometry.units import LengthUnit, format_close, format_size

MOST_ROWS = 200
AT_ONCE = 30
"""Rows that are there when the dialog opens; more are made while it stands."""


class LoopTable(QTableWidget):
    """One row a loop, the first MOST_ROWS of them. The roles are the dialog's, the table shows them and asks for others."""

    chosen = Signal(int, str)
    """number of a loop, and the role that the maker chose for it"""

    def __init__(self, roles: Roles, unit: LengthUnit, parent: QWidget) -> None:
        super().__init__(0, 2, parent)
        self._roles, self._unit = roles, unit
        self._loops: tuple[Loop, ...] = ()
        self._made = 0
        self._filling = Turns(self)
        self.setHorizontalHeaderLabels([say("Loop"), say("Becomes")])
        self.horizontalHeader().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setShowGrid(False)
        self.verticalHeader().hide()
        self.setTabKeyNavigation(False)
        keep(self, minimum_height=150, rows=30)
        self.setAccessibleName(say("Loops of the drawing"))

    def show_loops(self, loops: tuple[Loop, ...]) -> None:
        """These loops in place of the ones before, no row current."""
        self.setRowCount(0)
        self._loops, self._made = loops, 0
        self.setRowCount(min(MOST_ROWS, len(loops)))
        self._filling.begin(self._fill_rows(), at_once=AT_ONCE)
        self.resizeColumnToContents(1)
        self.setMinimumWidth(self.horizontalHeader().sectionSizeHint(0) + self.columnWidth(1)
                             + self.verticalScrollBar().sizeHint().width() + 2 * self.frameWidth())

    def show_roles(self) -> None:
        """The roles as they are now, in all rows that are made."""
        for i in range(self._made):
            self.cellWidget(i, 1).setCurrentIndex(ROLES.index(self._roles.of[i]))

    def _fill_rows(self) -> Steps:
        """Make the rows; one that is not made yet keeps the role that was read."""
        for i in range(self.rowCount()):
            self._fill_row(i)
            self._made = i + 1
            yield

    def _fill_row(self, i: int) -> None:
        loop = self._loops[i]
        layer = say(", layer {layer}", layer=loop.layer) if loop.layer else ""
        label = QTableWidgetItem(f"{self._size(loop.path)}{layer}")
        label.setFlags(label.flags() & ~Qt.ItemFlag.ItemIsEditable)
        label.setToolTip(plain(label.text()))
        box = Choice(self, choices=[(role, ROLE_WORDS[role]) for role in ROLES], activated=self._role,
                     accessibleName=say("What the loop {size} becomes", size=label.text()))
        box.setCurrentIndex(ROLES.index(self._roles.of[i]))
        box.setProperty("loop", i)
        self.setItem(i, 0, label)
        self.setCellWidget(i, 1, box)

    def _size(self, path: Path) -> str:
        """How large a loop is: by its diameter where it is a hole, else by the box about it."""
        x0, y0, x1, y1 = path.box
        if is_hole(path):
            return say("{diameter} hole", diameter=format_close((x1 - x0 + y1 - y0) / 2, self._unit, 2, mark=True))
        return format_size(x1 - x0, y1 - y0, self._unit, 2)

    def _role(self) -> None:
        box = self.sender()
        self.chosen.emit(box.property("loop"), box.currentData())
