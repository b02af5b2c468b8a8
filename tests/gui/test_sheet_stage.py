"""The Sheets stage shows the real pages, follows paper and layout, and prints them at full size."""

import math

import pypdfium2
import pytest
from PySide6.QtPrintSupport import QPrinter

from app.printing import job
from app.sheets.furniture import BAR
from app.threads.background import running
from tests.app.formats.out.pdf_reading import lines


@pytest.fixture
def sheets(bench, qtbot):
    bench.window.set_stage("sheets")
    qtbot.waitUntil(lambda: bool(bench.window.rooms["sheets"].pages))
    return bench.window.rooms["sheets"]


def test_the_pages_are_on_show(bench, sheets):
    assert bench.window.paper.currentWidget() is sheets.preview
    assert sheets.preview.current == 0
    assert {page.title for page in sheets.pages} >= {"Cover", "Template", "Wrap paper", "Hole table"}


def test_another_paper_and_an_undo_lay_them_out_anew(bench, sheets, qtbot):
    tools = bench.window.tools
    tools.paper.setCurrentText("Letter")
    tools.option_changed.emit()
    qtbot.waitUntil(lambda: sheets.pages[0].paper == "Letter")
    before = sheets.pages
    bench.window.commands.run("turn over")
    qtbot.waitUntil(lambda: sheets.pages is not before)


def test_going_back_shows_the_canvas(bench, sheets):
    bench.window.set_stage("tuners")
    assert bench.window.paper.currentWidget() is bench.window.canvas


def test_printing_keeps_100_mm(bench, sheets, tmp_path, monkeypatch):
    file = tmp_path / "printed.pdf"

    def to_file(parent, paper, count, title):
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        printer.setOutputFileName(str(file))
        job.lock(printer, paper)
        return printer
    monkeypatch.setattr(job, "choose_printer", to_file)
    bench.window.commands.run("print")
    assert f"{len(sheets.pages)} pages of A4" in bench.window.foot.said
    document = pypdfium2.PdfDocument(file)
    assert len(document) == len(sheets.pages)
    lengths = [math.dist(a, b) for a, b in lines(document[0])]
    document.close()
    assert min(abs(length - BAR) for length in lengths) < 0.02


def test_a_printer_is_corrected_from_what_its_bars_measure(bench, sheets, monkeypatch):
    from app.printing.measure import MeasureBars
    shown = []
    monkeypatch.setattr(MeasureBars, "exec", lambda self: shown.append(self.paper.currentText()))
    bench.window.commands.run("correct")
    assert shown == ["A4"]


def test_leaving_while_the_pages_are_being_laid_out_waits_and_starts_nothing_new(bench):
    bench.window.set_stage("sheets")
    sheets = bench.window.rooms["sheets"]
    assert sheets.errand.busy
    [thread] = running(sheets.errand)
    assert bench.window.close()
    assert thread.isFinished()
    bench.pump()
    bench.pump()
    assert not sheets.errand.busy and running(sheets.errand) == []
