"""Printing for real, into a PDF by the toolkit's own printer, measured by PDFium."""

import math
from pathlib import Path
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QMarginsF, QTimer
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QProgressDialog, QWidget

from app.formats.errors import FormatError
from app.formats.paper import PAPERS
from app.formats.pdf_out import pdf_bytes
from app.look.descendants import below
from app.printing import job
from app.printing.correction import Correction
from app.printing.job import choose_printer, lock, paper_of, print_sheets, printing
from app.printing.printers import keep_correction
from app.threads import waiting
from tests.app.formats.out.pdf_reading import drawn, lines, open_pdf
from tests.app.sheets.printed import made
from tests.app.sheets.test_pdf_sheets import crosses

HAIR = 0.02


def to_file(path):
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(path))
    return printer


def print_pages(printer, pages, correction=None):
    """How many pages were printed."""
    return list(printing(printer, pages, correction))[-1][0]


def printed(pages, path, correction=None, printer=None):
    printer = printer or to_file(path)
    assert print_pages(printer, pages, correction) == len(pages)
    return open_pdf(path.read_bytes())


def bars(page):
    """(lying, upright) lengths of the check bars."""
    found = [(a, b) for a, b in lines(page) if 90 < math.dist(a, b) < 110]
    return ([math.dist(a, b) for a, b in found if abs(a[1] - b[1]) < 0.01],
            [math.dist(a, b) for a, b in found if abs(a[0] - b[0]) < 0.01])


@pytest.mark.parametrize("paper", sorted(PAPERS))
def test_bars_come_out_as_100_mm_on_every_paper(paper, tmp_path, qapp):
    pages = made("plain", paper)[:4]
    document = printed(pages, tmp_path / "out.pdf")
    assert len(document) == len(pages)
    for page in document:
        wide, high = (n * 25.4 / 72 for n in page.get_size())
        assert (wide, high) == pytest.approx(PAPERS[paper], abs=0.2)  # the toolkit rounds page boxes to whole points
        for kind in bars(page):
            assert any(length == pytest.approx(100.0, abs=HAIR) for length in kind)


def test_every_cross_lies_where_the_pdf_of_the_sheets_has_it(tmp_path, qapp):
    """The page that is glued on, measured on both ways to paper."""
    pages = [page for page in made("demo") if page.title in ("Template", "Wrap paper", "Back paper")]
    ours, theirs = open_pdf(pdf_bytes(pages, "t")), printed(pages, tmp_path / "out.pdf")
    for one, other in zip(ours, theirs, strict=True):
        wanted, found = crosses(one), crosses(other)
        assert len(wanted) > 10
        # The page boxes differ by the rounding of whole points at the top, so y is compared from the lower bar.
        for x, y in wanted:
            assert min(math.dist((x, y), f) for f in found) < 0.06
        steps = [(a[0] - wanted[0][0], a[1] - wanted[0][1]) for a in wanted]
        start = min(found, key=lambda f: math.dist(f, wanted[0]))
        for dx, dy in steps:
            assert min(math.dist((start[0] + dx, start[1] + dy), f) for f in found) < HAIR


def test_a_lying_page_is_turned_on_upright_paper(tmp_path, qapp):
    lying = next(page for page in made("large", "A3") if page.width > page.height)
    (page,) = printed([lying], tmp_path / "out.pdf")
    wide, high = page.get_size()
    assert wide < high
    level, upright = bars(page)
    assert level[0] == pytest.approx(100.0, abs=HAIR) and upright[0] == pytest.approx(100.0, abs=HAIR)
    ends = [p[:2] for one in drawn(page) for p in one.points]
    assert max(x for x, _ in ends) - min(x for x, _ in ends) > 200


@pytest.mark.parametrize("lying", [False, True])
def test_a_correction_goes_by_the_sides_of_the_paper(lying, tmp_path, qapp):
    page = next(page for page in made("large", "A3") if (page.width > page.height) == lying)
    (done,) = printed([page], tmp_path / "out.pdf", Correction(1.01, 0.98))
    level, upright = bars(done)
    assert level[0] == pytest.approx(101.0, abs=HAIR) and upright[0] == pytest.approx(98.0, abs=HAIR)


def test_what_a_dialog_left_behind_is_set_right_again(tmp_path, qapp):
    """Lying, other paper, margins: the pages decide, and the scale stays."""
    printer = to_file(tmp_path / "out.pdf")
    printer.setPageLayout(QPageLayout(QPageSize(QPageSize.PageSizeId.Legal), QPageLayout.Orientation.Landscape,
                                      QMarginsF(20, 20, 20, 20), QPageLayout.Unit.Millimeter))
    printer.setFullPage(False)
    document = printed(made("plain")[:1], tmp_path / "out.pdf", printer=printer)
    level, upright = bars(document[0])
    assert level[0] == pytest.approx(100.0, abs=HAIR) and upright[0] == pytest.approx(100.0, abs=HAIR)
    assert [n * 25.4 / 72 for n in document[0].get_size()] == pytest.approx([210.0, 297.0], abs=0.2)


def test_a_range_of_pages(tmp_path, qapp):
    printer = to_file(tmp_path / "out.pdf")
    printer.setPrintRange(QPrinter.PrintRange.PageRange)
    printer.setFromTo(2, 3)
    assert print_pages(printer, made("plain")) == 2
    assert len(open_pdf((tmp_path / "out.pdf").read_bytes())) == 2


def test_pages_of_two_papers_are_not_printed_together(qapp):
    with pytest.raises(FormatError, match="A3 and A4: print them apart"):
        paper_of([*made("plain"), *made("plain", "A3")])
    with pytest.raises(FormatError, match="no pages"):
        paper_of([])


@pytest.mark.qt_log_ignore("QPainter::begin")
def test_a_place_that_takes_nothing_is_said(tmp_path, qapp):
    printer = to_file(tmp_path / "missing folder" / "out.pdf")
    with pytest.raises(FormatError, match="takes no pages"):
        print_pages(printer, made("plain"))


def test_a_printer_without_the_paper_is_named(qapp, monkeypatch):
    class Small:
        def setFullPage(self, on):
            self.full = on

        def setPageLayout(self, layout):
            return False

        def printerName(self):
            return "label printer"

    with pytest.raises(FormatError, match="label printer does not take Tabloid"):
        lock(Small(), "Tabloid")


# ---- asking ----------------------------------------------------------------
@pytest.fixture
def window(qtbot):
    widget = QWidget()
    qtbot.addWidget(widget)
    return widget


def never(text):
    raise AssertionError(text)


def test_the_kept_correction_of_the_chosen_printer_is_used(window, tmp_path, qapp, monkeypatch):
    settings = tmp_path / "printers.json"
    keep_correction("shop", "A4", Correction(1.004, 0.991), settings)
    printer = to_file(tmp_path / "out.pdf")
    monkeypatch.setattr(QPrinter, "printerName", lambda self: "shop")
    said = print_sheets(window, made("plain"), "Plain", never, lambda *asked: printer, settings)
    assert said == f"{len(made('plain'))} pages of A4 sent to shop, corrected for this printer: across 1.004, along 0.991."
    level, upright = bars(open_pdf((tmp_path / "out.pdf").read_bytes())[0])
    assert level[0] == pytest.approx(100.4, abs=HAIR) and upright[0] == pytest.approx(99.1, abs=HAIR)


def test_calling_it_off_prints_nothing(window, tmp_path):
    assert print_sheets(window, made("plain"), "Plain", never, lambda *asked: None, tmp_path / "none.json") == ""


def test_without_a_correction_that_is_said(window, tmp_path, qapp):
    said = print_sheets(window, made("plain"), "Plain", never, lambda *asked: to_file(tmp_path / "out.pdf"), tmp_path / "none.json")
    assert said.endswith("at 100 %, not corrected: measure the bars.")


@pytest.mark.parametrize("goes_on", [True, False])
def test_without_a_file_that_can_be_used_the_maker_says_whether_to_print(window, tmp_path, qapp, monkeypatch, goes_on):
    settings, asked = tmp_path / "printers.json", []
    settings.write_bytes(b'{"pegwright_printers": 1, "printers": [')
    monkeypatch.setattr(QPrinter, "printerName", lambda self: "shop")
    said = print_sheets(window, made("plain"), "Plain", lambda text: asked.append(text) or goes_on,
                        lambda *_: to_file(tmp_path / "out.pdf"), settings)
    assert len(asked) == 1 and "printers.json" in asked[0]
    assert (tmp_path / "out.pdf").exists() == goes_on
    assert said.endswith("sent to shop, at 100 %, not corrected: measure the bars.") if goes_on else said == ""


@pytest.mark.parametrize("on_paper", [True, False])
def test_cancel_ends_it_and_says_what_may_still_come(window, tmp_path, qapp, monkeypatch, on_paper):
    def cancel():
        box = next(below(window, QProgressDialog), None)
        if box is None:
            QTimer.singleShot(0, window, cancel)
        else:
            box.canceled.emit()

    monkeypatch.setattr(waiting, "SHOWS_MS", 0)
    if on_paper:
        monkeypatch.setattr(QPrinter, "outputFileName", lambda self: "")
    QTimer.singleShot(0, window, cancel)
    said = print_sheets(window, made("demo"), "Demo", never, lambda *asked: to_file(tmp_path / "out.pdf"), tmp_path / "none.json")
    assert said.startswith("Printing was cancelled") if on_paper else said == ""
    assert on_paper or not (tmp_path / "out.pdf").exists()


@pytest.mark.parametrize("answer", [QPrintDialog.DialogCode.Accepted, QPrintDialog.DialogCode.Rejected])
def test_the_systems_dialog_leaves_paper_and_scale_alone(window, monkeypatch, answer):
    seen = SimpleNamespace()

    def answered(dialog):
        options = dialog.PrintDialogOption
        seen.size, seen.range = dialog.testOption(options.PrintShowPageSize), dialog.testOption(options.PrintPageRange)
        seen.pages = (dialog.minPage(), dialog.maxPage())
        return answer

    monkeypatch.setattr(job.QPrintDialog, "exec", answered)
    printer = choose_printer(window, "Letter", 7, "Plain")
    assert (seen.size, seen.range, seen.pages) == (False, True, (1, 7))
    if answer == QPrintDialog.DialogCode.Rejected:
        assert printer is None
    else:
        assert printer.pageLayout().pageSize().id() == QPageSize.PageSizeId.Letter and printer.fullPage()
        assert printer.docName() == "Plain"


@pytest.mark.parametrize(("printers", "name"), [([], "twelve-mixed.pdf"), (["shop"], "")])
def test_without_a_printer_there_is_a_file_with_a_name(window, monkeypatch, printers, name):
    monkeypatch.setattr(job.QPrinterInfo, "availablePrinterNames", lambda: printers)
    monkeypatch.setattr(job.QPrintDialog, "exec", lambda dialog: QPrintDialog.DialogCode.Accepted)
    assert Path(choose_printer(window, "A4", 7, "Twelve/mixed").outputFileName()).name == name
