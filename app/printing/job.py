"""Pages on a printer of the system, at full size and nothing else."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterator, Sequence
from pathlib import Path

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QAbstractPrintDialog, QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QDialog, QWidget

from app.formats.errors import FormatError
from app.formats.file_names import stem_of
from app.formats.paper import PAPERS, Page
from app.printing.correction import Correction, corrected
from app.printing.page_paint import painted, shapes_of
from app.printing.printers import correction_for
from app.printing.to_file import file_of, saved
from app.threads.waiting import Progress, done_beside
from geometry.checks.words import listed
from geometry.saying import count, say

SIZES = {"A4": QPageSize.PageSizeId.A4, "A3": QPageSize.PageSizeId.A3, "Letter": QPageSize.PageSizeId.Letter,
         "Tabloid": QPageSize.PageSizeId.Tabloid}
"""The system's name of each paper."""
MM_PER_INCH = 25.4

Ask = Callable[[QWidget, str, int, str], QPrinter | None]
"""Asks for a printer: parent, paper, number of pages, title."""


def print_sheets(parent: QWidget, pages: Sequence[Page], title: str, uncorrected: Callable[[str], bool], ask: Ask | None = None,
                 settings: Path | None = None) -> str:
    """Ask for a printer, correct the pages for it and print them; a sentence on what was done, "" when called off.

    The correction is the one kept for that printer and paper (`settings` is the file, by default the maker's); where the file cannot
    be used, `uncorrected` is told why, and answers whether to print without. FormatError when the pages need more than one paper, or the printer or
    the disk does not take them.
    """
    paper = paper_of(pages)
    printer = (ask or choose_printer)(parent, paper, len(pages), title)
    if printer is None:
        return ""
    name = printer.printerName()
    try:
        correction = correction_for(name, paper, settings) if name else None
    except FormatError as error:
        if not uncorrected(str(error)):
            return ""
        correction = None
    to = name or printer.outputFileName() or say("the printer")
    printed = _printed_beside(parent, saved(printer, printing(printer, pages, correction)))
    if printed is None and file_of(printer):
        return ""
    if printed is None:
        return say("Printing was cancelled; pages that were sent already may still come out of the printer.")
    if correction:
        return count(printed, "{n} page of {paper} sent to {name}, {correction}.",
                     "{n} pages of {paper} sent to {name}, {correction}.", paper=paper, name=to, correction=correction.words)
    return count(printed, "{n} page of {paper} sent to {name}, at 100 %, not corrected: measure the bars.",
                 "{n} pages of {paper} sent to {name}, at 100 %, not corrected: measure the bars.", paper=paper, name=to)


def _printed_beside(parent: QWidget, steps: Generator[tuple[int, int], None, None]) -> int | None:
    """Go through the steps of printing in a thread, for the toolkit packs a whole page in one go; None when the maker cancelled."""
    progress = Progress()

    def work() -> int:
        done = 0
        try:
            for done, whole in steps:
                progress.tell(done / whole)
        finally:
            steps.close()
        return done
    return done_beside(parent, say("Printing…"), work, progress)


def choose_printer(parent: QWidget, paper: str, count: int, title: str) -> QPrinter | None:
    """The system's print dialog; None when it was called off. Paper and scale are not for choosing.

    Where the system has no printer there is only a file to print to: it has a name already.
    """
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(title)
    if not QPrinterInfo.availablePrinterNames():
        printer.setOutputFileName(str(Path.home() / f"{stem_of(title, 'headstock')}.pdf"))
    lock(printer, paper)
    dialog = QPrintDialog(printer, parent)
    options = QAbstractPrintDialog.PrintDialogOption
    for option in (options.PrintShowPageSize, options.PrintSelection, options.PrintCurrentPage):
        dialog.setOption(option, False)
    dialog.setOption(options.PrintPageRange, True)
    dialog.setMinMax(1, count)
    chosen = dialog.exec() == QDialog.DialogCode.Accepted
    dialog.deleteLater()
    return printer if chosen else None


def lock(printer: QPrinter, paper: str) -> None:
    """Set the paper, upright, without margins and without scale; FormatError when the printer does not have it."""
    layout = QPageLayout(QPageSize(SIZES[paper]), QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0),
                         QPageLayout.Unit.Millimeter, QMarginsF(0, 0, 0, 0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    printer.setFullPage(True)
    taken = printer.setPageLayout(layout)
    if not taken or printer.pageLayout().pageSize().id() != SIZES[paper]:
        raise FormatError(say("{printername} does not take {paper}: choose another paper for the sheets, or another "
                              "printer.",
                              printername=printer.printerName() or say("The printer"), paper=paper))
    printer.setFullPage(True)


def paper_of(pages: Sequence[Page]) -> str:
    """The one paper of all pages. FormatError for none or several."""
    papers = sorted({page.paper for page in pages})
    if len(papers) != 1:
        raise FormatError(say("There are no pages to print.") if not papers else
                          say("The pages need {papers}: print them apart.", papers=listed(papers)))
    return papers[0]


def printing(printer: QPrinter, pages: Sequence[Page], correction: Correction | None = None) -> Generator[tuple[int, int], None, None]:
    """Paint the pages on a printer, lying ones turned on upright paper, in slices of some milliseconds.

    Each yields (pages done, pages in all), the last with all done; of a page range chosen in the dialog only those.
    Closing it early ends the job with what was painted so far. FormatError when the printer takes no pages.
    """
    paper = paper_of(pages)
    lock(printer, paper)
    wanted = list(pages)
    if printer.printRange() == QPrinter.PrintRange.PageRange and printer.fromPage():
        wanted = wanted[printer.fromPage() - 1:max(printer.toPage(), printer.fromPage())]
    painter = QPainter()
    if not wanted or not painter.begin(printer):
        raise FormatError(say("{printername} takes no pages: look whether it is switched on and connected, or print "
                              "to a file.",
                              printername=printer.printerName() or printer.outputFileName() or say("The printer")))
    try:
        for i, page in enumerate(corrected(wanted, correction)):
            if i and not printer.newPage():
                raise FormatError(say("The printer stopped after page {i} of {wanted}.", i=i, wanted=len(wanted)))
            for _ in _painted(painter, printer, page):
                yield i, len(wanted)
            yield i + 1, len(wanted)
    finally:
        painter.end()


def _painted(painter: QPainter, printer: QPrinter, page: Page) -> Iterator[None]:
    width, _ = PAPERS[page.paper]
    painter.save()
    painter.scale(printer.logicalDpiX() / MM_PER_INCH, printer.logicalDpiY() / MM_PER_INCH)
    if page.width > page.height:
        painter.translate(width, 0.0)
        painter.rotate(90.0)
    try:
        yield from painted(painter, shapes_of(page), page, 1.0)
    finally:
        painter.restore()
