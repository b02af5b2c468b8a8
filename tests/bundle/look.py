"""Whether a one-file program does what the program does: it is started as a maker would, away from every Python."""

from __future__ import annotations

import os
import subprocess
import time
from collections.abc import Iterator
from pathlib import Path

from app.setup.places import CHECKOUT

SAMPLES = CHECKOUT / "samples"
SEE = "PEGWRIGHT_SEE"
"""In the environment: a file that the window is painted into soon after it has opened, whereupon it closes."""


def look(program: Path, folder: Path) -> Iterator[tuple[str, bool, float]]:
    """What was tried, whether it worked, and how long it took in seconds."""
    sample = SAMPLES / "twelve-string-mixed.headstock.json"
    yield from _try("--version", program, ["--version"], "Pegwright ")
    yield from _try("check", program, ["check", sample], "36 holes")
    yield from _try("check again", program, ["check", sample], "36 holes")
    yield from _try("sheets", program, ["sheets", sample, "--out", folder / "sheets"], "sheets.pdf")
    new = folder / "new.headstock.json"
    yield from _try("outline", program, ["outline", SAMPLES / "outlines" / "head-in-millimetres.svg", "--out", new],
                    "Slots: 2")
    yield from _try("refusal", program, ["check", folder / "nothing"], "There is no file", code=2)
    seen = folder / "window.png"
    seen.unlink(missing_ok=True)
    began = time.monotonic()
    done = _call(program, [sample], {SEE: str(seen), "QT_QPA_PLATFORM": "offscreen"})
    yield "the window", done.returncode == 0 and seen.is_file() and seen.stat().st_size > 20_000, time.monotonic() - began


def _try(what: str, program: Path, words: list, wanted: str, code: int = 0) -> Iterator[tuple[str, bool, float]]:
    began = time.monotonic()
    done = _call(program, words, {})
    good = done.returncode == code and wanted in done.stdout + done.stderr
    yield what if good else f"{what} ({done.stderr.strip()})", good, time.monotonic() - began


def _call(program: Path, words: list, environ: dict[str, str]) -> subprocess.CompletedProcess:
    clean = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "VIRTUAL_ENV"))}
    return subprocess.run([str(program), *map(str, words)], cwd=program.parent, env={**clean, **environ},
                          stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=900)
