"""Pages printed to a file: the toolkit takes a full disk for paper, so it prints beside, and the file is saved as every other."""

from __future__ import annotations

from collections.abc import Generator
from pathlib import Path
from tempfile import TemporaryDirectory

from PySide6.QtPrintSupport import QPrinter

from app.formats.disk_words import why
from app.formats.errors import FormatError
from app.formats.saving import save_bytes
from geometry.saying import say

Steps = Generator[tuple[int, int], None, None]

END = b"%%EOF"
"""With this a whole PDF ends."""


def file_of(printer: QPrinter) -> str:
    """The PDF that a printer prints to; empty where it prints on paper, and where the system asks for a file itself: what the toolkit has as
    its name is then that of a port."""
    return printer.outputFileName() if printer.outputFormat() == QPrinter.OutputFormat.PdfFormat else ""


def saved(printer: QPrinter, steps: Steps) -> Steps:
    """The steps of printing, and then the PDF that the printer was to print to, written whole or left as it was; those steps alone where
    it prints to none. FormatError when there is no room for it, here or there."""
    target = file_of(printer)
    if not target:
        yield from steps
        return
    try:
        with TemporaryDirectory(prefix="pegwright-") as folder:
            beside = Path(folder) / Path(target).name
            printer.setOutputFileName(str(beside))
            try:
                yield from steps
            finally:
                steps.close()
                printer.setOutputFileName(target)
            data = beside.read_bytes()
    except OSError as error:
        raise FormatError(say("The pages cannot be prepared: {why}. Make room where the system keeps temporary files, then print again.",
                              why=why(error))) from error
    if END not in data[-1024:]:
        raise FormatError(say("The pages were not printed whole: make room where the system keeps temporary files, then print again."))
    save_bytes(Path(target), data)
