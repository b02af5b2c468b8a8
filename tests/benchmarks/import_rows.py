"""A huge drawing: how long, how much memory, how soon given up, and how much longer for twice as much."""

from __future__ import annotations

import resource
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

from app.formats.drawing_in import ImportJob
from app.formats.errors import FormatError
from tests.benchmarks.lines import Line

ENTITIES = 100_000
MOST = 30_000.0
"""What they may take, ms."""


def huge(path: Path, entities: int) -> None:
    """A DXF of separate lines that make up small closed shapes of ten lines each, and one outline round them."""
    words = ["0", "SECTION", "2", "HEADER", "9", "$INSUNITS", "70", "4", "0", "ENDSEC", "0", "SECTION", "2", "ENTITIES"]

    def line(x0: float, y0: float, x1: float, y1: float) -> None:
        words.extend(("0", "LINE", "8", "0", "10", f"{x0:.6f}", "20", f"{y0:.6f}", "30", "0", "11", f"{x1:.6f}",
                      "21", f"{y1:.6f}", "31", "0"))

    for (x0, y0), (x1, y1) in zip(OUTLINE, (*OUTLINE[1:], OUTLINE[0]), strict=True):
        line(x0, y0, x1, y1)
    across = max(1, round(((entities - 4) / 10) ** 0.5))
    for k in range((entities - 4) // 10):
        x, y = -90 + 180 * (k % across) / across, 10 + 180 * (k // across) / across
        size = 60 / across
        corners = [(x + size * (0.2 * i if i < 5 else 0.2 * (9 - i)), y + (0 if i < 5 else size)) for i in range(10)]
        for (x0, y0), (x1, y1) in zip(corners, (*corners[1:], corners[0]), strict=True):
            line(x0, y0, x1, y1)
    words += ["0", "ENDSEC", "0", "EOF", ""]
    path.write_text("\n".join(words))


OUTLINE = ((-100.0, 0.0), (100.0, 0.0), (100.0, 200.0), (-100.0, 200.0))


def lines(rounds: int) -> Iterator[Line]:
    """Processor time of the worker process, which the window has do it, and of this one; some hundred entities when it is only tried."""
    entities = ENTITIES if rounds else 300
    with tempfile.TemporaryDirectory(prefix="pegwright-import-") as folder:
        whole, half = Path(folder, "whole.dxf"), Path(folder, "half.dxf")
        huge(whole, entities)
        huge(half, entities // 2)
        spent: dict[Path, list[float]] = {whole: [], half: []}
        note, found = "", None
        for path in (whole, half) * max(1, rounds):
            began = _processor_ms()
            try:
                found = ImportJob(path).start().result()
                note = note or f"{len(found.loops)} loops"
            except FormatError as refusal:
                note = f"REFUSED: {refusal}"
            spent[path].append(_processor_ms() - began)
        most = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / (1024 if sys.platform != "darwin" else 1024 ** 2)
        note += f", at most {most:.0f} MB of memory"
        yield Line(f"import of a DXF of {entities:,} entities, processor time", spent[whole], MOST, "half of it", spent[half], 2.2, note)
        job = ImportJob(whole).start()
        time.sleep(0.5)
        began = time.perf_counter()
        job.cancel()
        yield Line("giving that import up", [(time.perf_counter() - began) * 1000], 200.0)


def _processor_ms() -> float:
    """Processor time in ms of this process and of those that it has waited for."""
    own, others = resource.getrusage(resource.RUSAGE_SELF), resource.getrusage(resource.RUSAGE_CHILDREN)
    return 1000 * sum(one.ru_utime + one.ru_stime for one in (own, others))
