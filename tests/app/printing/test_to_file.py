"""Pages printed to a file: whole, or the file is as it was."""

from pathlib import Path

import pytest
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QWidget

from app.formats.errors import FormatError
from app.printing import page_paint, to_file
from app.printing.job import print_sheets, printing
from app.printing.to_file import file_of, saved
from app.threads.waiting import Progress, done_beside
from tests.app.document.test_unreadable_journal import small_disk
from tests.app.formats.out.pdf_reading import open_pdf
from tests.app.printing.test_job import never
from tests.app.printing.test_job import to_file as printer_to
from tests.app.sheets.printed import made

BEFORE = b"of an earlier day"


@pytest.fixture
def parent(qtbot):
    widget = QWidget()
    qtbot.addWidget(widget)
    return widget


def printed(parent, path):
    return print_sheets(parent, made("plain")[:2], "Plain", never, lambda *asked: printer_to(path), path.parent / "none.json")


def test_it_takes_the_place_of_an_earlier_one(parent, tmp_path):
    path = tmp_path / "head.pdf"
    path.write_bytes(BEFORE)
    assert str(path) in printed(parent, path)
    assert len(open_pdf(path.read_bytes())) == 2 and [file.name for file in tmp_path.iterdir()] == ["head.pdf"]


def test_a_full_disk_is_told_and_leaves_the_earlier_one(parent, tmp_path):
    with small_disk(tmp_path / "small", "16k") as place:
        path = place / "head.pdf"
        path.write_bytes(BEFORE)
        with pytest.raises(FormatError, match="the disk is full"):
            printed(parent, path)
        assert path.read_bytes() == BEFORE and [file.name for file in place.iterdir()] == ["head.pdf"]


def test_what_the_toolkit_could_not_write_whole_is_told(parent, tmp_path, monkeypatch):
    """It says nothing of a full disk itself."""
    path = tmp_path / "head.pdf"
    monkeypatch.setattr(to_file, "END", b"an end that no file has")
    with pytest.raises(FormatError, match="not printed whole"):
        printed(parent, path)
    assert not path.exists()


def test_called_off_it_leaves_the_earlier_one(qapp, tmp_path):
    path = tmp_path / "head.pdf"
    path.write_bytes(BEFORE)
    printer = printer_to(path)
    steps = saved(printer, printing(printer, made("plain")[:2]))
    next(steps)
    assert printer.outputFileName() != str(path)
    steps.close()
    assert path.read_bytes() == BEFORE and printer.outputFileName() == str(path)


def test_a_port_that_asks_for_a_file_itself_is_printed_to_as_paper_is(qapp, monkeypatch):
    """One system has its own dialog ask for the file, and gives the toolkit the name of a port meanwhile."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    monkeypatch.setattr(QPrinter, "outputFormat", lambda self: QPrinter.OutputFormat.NativeFormat)
    printer.setOutputFileName("FILE:")
    names = []
    assert list(saved(printer, (names.append(printer.outputFileName()) or step for step in [(1, 1)]))) == [(1, 1)]
    assert file_of(printer) == "" and names == ["FILE:"] and not Path("FILE:").exists()


def test_letters_that_were_first_printed_are_painted_in_the_window_afterwards(parent, tmp_path):
    """Each thread has a font of its own: the toolkit's ends with the thread that made it, and serves no two at once."""
    ours = page_paint._font()
    page_paint._letter.cache_clear()
    assert done_beside(parent, "", lambda: (page_paint._font() is ours, page_paint._letter("m")[1]), Progress())[0] is False
    page_paint._letter.cache_clear()
    outline, advance = page_paint._letter("m")
    assert not outline.isEmpty() and advance > 0
