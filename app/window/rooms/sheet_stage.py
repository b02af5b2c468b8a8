"""The Sheets stage: the real pages on show, laid out in the background, printed from there."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from shiboken6 import isValid

from app.formats.errors import FormatError
from app.formats.paper import Page
from app.preview import SheetPreview
from app.threads.background import raised
from app.window import ask
from app.window.rooms.planning import PlanningRoom, PlanWords
from geometry.cancellation import Ask
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


WORDS = PlanWords(
    first=say("The pages are being laid out."),
    anew=say("The pages on show are older than the last change: they are being laid out anew."),
    stopped=say("Stopped: there are no pages of this layout yet."),
    older=say("Stopped: the pages on show are older than the last change. They cannot be printed."),
    done=say("The pages on show are of this layout."))


class SheetStage(PlanningRoom):
    """Keeps the preview in step with the layout while the stage is on show."""

    key = "sheets"

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.preview = self.centre = SheetPreview()
        self.pages: list[Page] = []
        self.plan_over(self.preview, WORDS, self.preview.right)

    def refresh(self) -> None:
        """Lay the pages out anew if layout, paper or unit changed; what still lays out others is stopped first."""
        wanted = self._wanted()
        if not self.planning.see_to(wanted, partial(_lay_out, *wanted)) and not self.pages and self.errand.busy:
            self.preview.show_message(say("Laying out the pages…"))

    def print(self) -> None:
        """Print the pages on show through the system's dialog, at 100 %."""
        from app.printing.job import print_sheets
        if not self.planning.has(self._wanted()):
            self.window.say(say("The pages are being laid out anew: print them when they are on show.") if self.errand.busy else
                            say("The pages on show are older than the last change: have them laid out before you print.") if self.pages else
                            say("There are no pages to print yet."))
            return
        try:
            said = print_sheets(self.window, self.pages, self.window.document.layout.name, partial(ask.uncorrected, self.window))
        except FormatError as error:
            ask.warn(self.window, ask.title_of(error, say("The sheets were not printed")), str(error))
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
        raised(error, but=FormatError)
        self.preview.show_message(str(error))


def _lay_out(layout: Headstock, paper: str, unit: LengthUnit, ask: Ask) -> list[Page]:
    from app.sheets import pages
    return pages(layout, paper, unit=unit, ask=ask)
