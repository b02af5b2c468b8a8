"""All sheets of the demo: pages planned and laid out, and every file written."""

from __future__ import annotations

import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

from app.sheets import write_sheets
from app.sheets.pages import pages
from app.window.demo import demo
from tests.benchmarks.lines import Line, interleaved


def lines(rounds: int) -> Iterator[Line]:
    """Processor time, because writing waits for the disk; the first round, which imports, does not count."""
    layout = demo()
    with tempfile.TemporaryDirectory(prefix="pegwright-sheets-") as folder:
        laid, whole = interleaved(rounds, lambda: pages(layout), lambda: write_sheets(layout, Path(folder)),
                                  clock=time.process_time)
    yield Line("pages of the demo as data", laid)
    yield Line("all sheets of the demo as files", whole, 300.0, "pages as data", laid)
