"""The Sheets stage: the real pages on show, laid out in the background, printed from there."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from shiboken6 import isValid

from app.formats.errors import FormatError
from app.formats.paper import Page
from app.look.theme import Theme
from app.preview import SheetPreview
from app.window import ask
from app.window.errand import Errand
from app.window.room import StageRoom
from geometry.asking import Ask
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.main import MainWindow


class SheetStage(StageRoom):
    """Keeps the preview in step with the layout while the stage is on show."""

    key = "sheets"

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self.preview = self.centre = SheetPreview(window.theme)
        self.pages: list[Page] = []
        self._laid: tuple[Headstock, str, LengthUnit] | None = None
        self.errand = Errand(self)
        self.errand.answered.connect(self._answered)
        self.errand.failed.connect(self._failed)
        self.errand.ended.connect(self._ended)

    def refresh(self) -> None:
        """Lay the pages out anew if layout, paper or unit changed; what still lays out others is stopped first."""
        wanted = self._wanted()
        if self.errand.busy and self._laid != wanted:
            self._laid = None
            self.errand.stop()
        if not self.errand.free or self._laid == wanted:
            return
        if not self.pages:
            self.preview.show_message(say("Laying out the pages…"))
        self._laid = wanted
        self.errand.start_in_parts(partial(_lay_out, *wanted))

    def end(self) -> None:
        """The window goes: wait for a laying out that runs, and begin no other."""
        self.errand.end()

    def set_theme(self, theme: Theme) -> None:
        self.preview.set_theme(theme)

    def print(self) -> None:
        """Print the pages on show through the system's dialog, at 100 %."""
        from app.printing.job import print_sheets
        if self.errand.busy or self._laid != self._wanted():
            self.window.say(say("The pages are being laid out anew: print them when they are on show."))
            return
        if not self.pages:
            self.window.say(say("There are no pages to print yet."))
            return
        try:
            said = print_sheets(self.window, self.pages, self.window.document.layout.name)
        except FormatError as error:
            ask.warn(self.window, say("The sheets were not printed"), str(error))
            return
        if isValid(self):  # the window may have been closed meanwhile
            self.window.say(said or say("Not printed"))

    def correct(self) -> None:
        """Ask what the bars of a printed page measure."""
        from app.printing.measure import MeasureBars
        dialog = MeasureBars(self.window.tools.paper.currentText(), self.window.unit, self.window)
        dialog.exec()
        dialog.deleteLater()

    # ---- inside ---------------------------------------------------------
    def _wanted(self) -> tuple[Headstock, str, LengthUnit]:
        """What the pages should be of."""
        return self.window.document.layout, self.window.tools.paper.currentText(), self.window.unit

    def _answered(self, pages: list[Page]) -> None:
        self.pages = pages
        self.preview.show_pages(pages)

    def _failed(self, error: Exception) -> None:
        self.pages = []
        if not isinstance(error, FormatError):
            raise error
        self.preview.show_message(str(error))

    def _ended(self) -> None:
        if self.window.stage == "sheets":
            self.refresh()


def _lay_out(layout: Headstock, paper: str, unit: LengthUnit, ask: Ask) -> list[Page]:
    from app.sheets import pages
    return pages(layout, paper, unit=unit, ask=ask)
