"""Which version this is, whose it is, what it is built on, and a report of the versions to copy."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app import __version__
from app.look.column import Column
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.program_icon import program_icon
from app.look.scroll import Yielding
from app.look.sizes import open_at
from app.look.walk import ReadInOrder
from app.window.dialogs.libraries import libraries, versions
from geometry.saying import say

ICON = 72
"""Side of the program's picture, in points."""
SOURCES = "https://download.qt.io/official_releases/"


class AboutDialog(ReadInOrder, QDialog):
    """Nothing is asked here; Esc or Enter closes it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, windowTitle=say("About Pegwright"))
        picture = QLabel(self)
        picture.setPixmap(program_icon().pixmap(ICON, ICON))
        picture.setAlignment(Qt.AlignmentFlag.AlignTop)
        head = filled(QVBoxLayout(), self._words(f"Pegwright {__version__}", "title"),
                      self._words(say("Plans the holes, slots and templates of a guitar headstock, for makers in small shops.")),
                      self._words(say("The owners have not chosen a licence yet: all rights reserved.")),
                      self._words(say("All samples are invented. Margins and rates marked as common practice have no published "
                                      "source: set what you trust.")))
        top = filled(QHBoxLayout(), picture, (head, 1), gap=18)
        self.table = self._table()
        built = self._words(say("Built on these libraries, each under its own licence:"), "heading")
        self._says = self._words("", "dim")
        self.copy_button = QPushButton(say("Copy the versions"), self, clicked=self._copy,
                                       toolTip=say("Versions of the program, its libraries and this machine, for a report of a fault."))
        close = QPushButton(say("Close"), self, clicked=self.accept, default=True)
        buttons = QDialogButtonBox(self)
        buttons.addButton(self.copy_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(close, QDialogButtonBox.ButtonRole.AcceptRole)
        inside = filled(QVBoxLayout(), top, built, (Yielding(self.table, self), 1), gap=10)
        inside.addWidget(self._words(say(
            "Qt and PySide6 are used under the GNU Lesser General Public License, version 3: they may be replaced by "
            "other builds of the same version. Their source text is at {place}. GEOS, inside shapely, is under the same "
            "licence, version 2.1; its source text is at {other}.", place=SOURCES, other="https://libgeos.org/")))
        filled(QVBoxLayout(self), (Column(inside, self.windowTitle(), self), 1), self._says, buttons, margins=(22, 20, 22, 16),
               gap=10)
        open_at(self, 620, 640)
        close.setFocus()

    def _table(self) -> QTableWidget:
        found = libraries()
        table = QTableWidget(len(found), 3, self, wordWrap=False, showGrid=False, tabKeyNavigation=False, accessibleName=say("Libraries"),
                             editTriggers=QAbstractItemView.EditTrigger.NoEditTriggers,
                             selectionBehavior=QAbstractItemView.SelectionBehavior.SelectRows)
        table.setHorizontalHeaderLabels([say("Library"), say("Version"), say("Licence")])
        for row, library in enumerate(found):
            licence = library.licence or say("not said in its record")
            for column, text in enumerate((library.name, library.version, licence)):
                item = QTableWidgetItem(text)
                item.setToolTip(text)
                table.setItem(row, column, item)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(24)
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        return table

    def _words(self, text: str, name: str = "") -> QLabel:
        return paragraph(self, text, name, textFormat=Qt.TextFormat.PlainText,
                         textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse)

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText("\n".join(versions()) + "\n")
        self._says.setText(say("The versions are on the clipboard."))
