"""What the maker sees after a fault of the program: what happened, that the layout is kept, the report, and a way on."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontDatabase, QGuiApplication
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QPlainTextEdit, QPushButton, QVBoxLayout, QWidget

from app.formats.errors import FormatError
from app.formats.saving import save_bytes
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.sizes import open_at
from app.look.walk import ReadInOrder
from app.window import ask
from app.window.background.disk import written_beside
from geometry.saying import say

MOST_COUNTED = 100


class FaultDialog(ReadInOrder, QDialog):
    """Shown without stopping the program's own loop; `more` counts what else goes wrong while it is open."""

    def __init__(self, what: str, kept: str, report: str, parent: QWidget | None) -> None:
        super().__init__(parent, windowTitle=say("A fault in Pegwright"))
        self.setModal(True)
        self.report = report
        self._count = 1
        head = self._words(what, "heading")
        self._more = self._words("")
        self._more.hide()
        self._report = QPlainTextEdit(report, self, readOnly=True, accessibleName=say("Report about the fault"))
        self._report.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        self._report.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self._report.setTabChangesFocus(True)
        self._says = self._words("", "dim")
        buttons, roles = QDialogButtonBox(self), QDialogButtonBox.ButtonRole
        buttons.addButton(QPushButton(say("Copy the report"), self, clicked=self._copy), roles.ActionRole)
        buttons.addButton(QPushButton(say("Save the report…"), self, clicked=self._save), roles.ActionRole)
        on = QPushButton(say("Go on working"), self, clicked=self.accept, default=True)
        buttons.addButton(on, roles.AcceptRole)
        about = self._words(say("The report below tells whoever mends the program where the fault is. It holds no layout and no names of "
                                "your folders; it is sent nowhere."))
        filled(QVBoxLayout(self), head, self._words(kept), self._more, about, (self._report, 1), self._says, buttons, gap=10)
        open_at(self, 640, 460)
        on.setFocus()

    def more(self, report: str) -> None:
        """Another fault while this one is on show: counted, and its report added while there is room."""
        self._count += 1
        if self._count > MOST_COUNTED:
            return  # a fault that the showing of this count itself brings about must come to rest
        self._more.setText(say("It has happened {count} times since this opened.", count=self._count))
        self._more.show()
        if self._count <= 5 and report and report not in self.report:
            self.report += "\n" + report
            self._report.setPlainText(self.report)

    def _words(self, text: str, name: str = "") -> QLabel:
        return paragraph(self, text, name, textFormat=Qt.TextFormat.PlainText)

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.report)
        self._says.setText(say("The report is on the clipboard."))

    def _save(self) -> None:
        path = ask.save_file(self, say("Save the report"), str(Path.home() / "pegwright-report.txt"), say("Text (*.txt)"), (".txt",))
        if path is None:
            return
        try:
            written_beside(self, path, partial(save_bytes, path, self.report.encode("utf-8", "backslashreplace"), False))
        except FormatError as error:
            self._says.setText(str(error))
            return
        self._says.setText(say("The report is saved as {path}.", path=path.name))
