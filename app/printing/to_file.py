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
"""With this a whole PDF or PostScript ends."""


def saved(printer: QPrinter, steps: Steps) -> Steps:
    """The steps of printing, and then the file that the printer was to print to, written whole or left as it was; those steps alone where
    it prints on paper. FormatError when there is no room for it, here or there."""
    target = printer.outputFileName()
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
