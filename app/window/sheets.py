"""Writing the sheets from the window: ask where, write in the background, say what there is."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QDesktopServices

from app.formats.errors import FormatError
from app.formats.file_names import stem_of
from app.window import ask
from app.window.aside import stand_aside
from app.window.errand import Errand
from geometry.asking import asking
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.main import MainWindow


def write_sheets(window: MainWindow) -> None:
    """Ask for a folder and write the sheets of the layout on show into it; one writing at a time."""
    if window.sheet_writer is not None and window.sheet_writer.busy:
        window.say(say("The sheets are being written already."))
        return
    path = window.document.path
    folder = ask.folder(window, say("Write the sheets into this folder"),
                        str(path.parent if path else Path.home()))
    if folder is not None:
        if window.sheet_writer is not None:
            window.sheet_writer.deleteLater()
        window.sheet_writer = SheetWriter(window, folder)
        window.sheet_writer.start()


class SheetWriter(QObject):
    """One writing of sheets."""

    def __init__(self, window: MainWindow, folder: Path) -> None:
        super().__init__(window)
        self._window = window
        self._folder = folder
        self._errand = Errand(self)
        self._errand.answered.connect(self._done)
        self._errand.failed.connect(self._failed)

    def start(self) -> None:
        """Begin; the window goes on meanwhile."""
        layout, paper = self._window.document.layout, self._window.tools.paper.currentText()
        self._window.tools.enable_action("write sheets", False)
        self._window.say(say("Writing the sheets…"))
        self._errand.start(partial(_write, layout, self._folder, paper, stem_of(layout.name, "headstock"), self._window.unit))

    @property
    def busy(self) -> bool:
        """Whether it is still writing."""
        return self._errand.busy

    def wait(self) -> None:
        """Wait until the writing has ended; what came of it is not told any more."""
        self._errand.end()

    def _done(self, paths: list[Path]) -> None:
        self._window.tools.enable_action("write sheets", True)
        self._window.say(say("{paths} files written to {folder}", paths=len(paths), folder=self._folder))
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._folder)))

    def _failed(self, error: Exception) -> None:
        self._window.tools.enable_action("write sheets", True)
        if not isinstance(error, FormatError | GeometryError | OSError):
            raise error
        self._window.say(say("The sheets were not written"))
        ask.warn(self._window, say("The sheets were not written"), str(error))


def _write(layout, folder: Path, paper: str, stem: str, unit: LengthUnit) -> list[Path]:
    from app.sheets import write_sheets as write
    return write(layout, folder, paper=paper, stem=stem, unit=unit, ask=asking(stand_aside))  # never stopped: it was asked for
