"""Writing the sheets from the window: ask where, write in the background, say how far it is and what there is."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QDesktopServices

from app.formats.errors import FormatError
from app.formats.file_names import stem_of
from app.panels.forms.work_note import WorkNote
from app.threads.background import raised
from app.threads.waiting import Waiting
from app.window import ask
from app.window.background.errand import Errand
from geometry.cancellation import Ask
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


def write_sheets(window: Frame) -> None:
    """Ask for a folder and write the sheets of the layout on show into it; one writing at a time."""
    if window.sheet_writer is not None and window.sheet_writer.busy:
        window.say(say("The sheets are being written already."))
        return
    folder = ask.folder(window, say("Write the sheets into this folder"), str(window.folder))
    if folder is not None:
        if window.sheet_writer is not None:
            window.sheet_writer.put_away()
        window.sheet_writer = SheetWriter(window, folder)
        window.sheet_writer.start()


class SheetWriter(QObject):
    """One writing of sheets. It can be stopped until the first file is written: there are all files or none."""

    def __init__(self, window: Frame, folder: Path) -> None:
        super().__init__(window)
        self._window = window
        self._folder = folder
        self._errand = Errand(self, answered=self._done, failed=self._failed, ended=self._ended)
        self._stopped = False
        self._paths: list[Path] = []
        """what was written, told by the thread"""
        self._left = ""
        """what there is to say of other files in the folder, told by the thread"""
        self.note = WorkNote(window.paper, top=True)
        self.note.stopped.connect(self.stop)
        self.note.put_away.connect(window.drawing_wanted)

    def start(self) -> None:
        """Begin; the window goes on meanwhile."""
        layout, paper = self._window.document.layout, self._window.tools.paper.currentText()
        self._window.say(say("Writing the sheets…"))
        self.note.working(say("The sheets are being written."), self._errand.at)
        self._errand.start_in_parts(partial(self._write, layout, paper, stem_of(layout.name, "headstock"), self._window.unit))

    @property
    def busy(self) -> bool:
        """Whether it is still writing."""
        return self._errand.busy

    def stop(self) -> None:
        """The maker wants no sheets any more."""
        self._stopped = True
        self._errand.stop()

    def finish(self) -> None:
        """Let a writing that runs come to its end, or be stopped by the maker, before the window goes; the window shows that it waits."""
        if not self.busy:
            return
        wait = Waiting(self._window, say("The sheets are still being written. The window closes when they are."), say("Stop the writing"))
        self._errand.ended.connect(wait.over)
        wait.stopped.connect(self.stop)
        wait.stopped.connect(wait.over)  # a drive that does not answer hears of no stop
        wait.wait()

    def wait(self) -> None:
        """The window goes: wait for the end of what still runs, and tell nothing of it any more."""
        self._errand.end()

    def put_away(self) -> None:
        """Another writing takes its place."""
        self.note.deleteLater()
        self.deleteLater()

    # ---- inside -------------------------------------------------------------
    def _write(self, layout: Headstock, paper: str, stem: str, unit: LengthUnit, ask: Ask) -> list[Path]:
        """In the thread."""
        from app.sheets import write_sheets as write
        from app.sheets.write import left_words
        self._paths = write(layout, self._folder, paper=paper, stem=stem, unit=unit, ask=ask)
        self._left = left_words(self._folder, stem, self._paths)
        return self._paths

    def _ended(self) -> None:
        self.note.none()
        if not self._stopped:
            return
        if self._paths:  # it was too late
            self._done(self._paths)
        else:
            self._window.say(say("Stopped: no file was written."))

    def _done(self, paths: list[Path]) -> None:
        self._window.say(say("{paths} files written to {folder}", paths=len(paths), folder=self._folder))
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._folder)))
        if self._left:
            ask.tell(self._window, say("Files of an earlier plan"), self._left)

    def _failed(self, error: Exception) -> None:
        raised(error, but=(FormatError, GeometryError, OSError))
        title = ask.title_of(error, say("The sheets were not written"))
        self._window.say(title)
        ask.warn(self._window, title, str(error))
