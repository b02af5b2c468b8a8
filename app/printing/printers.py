"""The corrections of the maker's printers, kept in the platform's settings folder.

One entry for each printer and paper: the same printer may draw in two papers by different sides.
"""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Literal

import msgspec
import platformdirs
from msgspec import Meta

from app.formats.disk_words import why_no_folder, why_unread
from app.formats.errors import FormatError
from app.formats.reading import read_bytes
from app.formats.saving import save_bytes
from app.formats.tidy_json import tidy
from app.formats.versioned import Refusals, read_versioned
from app.printing.correction import BAR, LEAST, MOST, Correction
from geometry.errors import GeometryError
from geometry.saying import say

VERSION = 1
FILE = "printers.json"
LARGEST_BYTES = 1_000_000

Factor = Annotated[float, Meta(ge=BAR / MOST - 1e-6, le=BAR / LEAST + 1e-6)]


class Entry(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """One printer with one paper."""

    printer: Annotated[str, Meta(min_length=1, max_length=400)]
    paper: Literal["A4", "A3", "Letter", "Tabloid"]
    across: Factor
    along: Factor


class PrintersFile(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """What the file holds."""

    pegwright_printers: Literal[1] = VERSION
    printers: tuple[Entry, ...] = ()


def printers_path() -> Path:
    """Where the corrections are kept on this platform. Nothing is created."""
    return platformdirs.user_config_path("pegwright", appauthor=False) / FILE


def correction_for(printer: str, paper: str, path: Path | None = None) -> Correction | None:
    """What was measured for a printer with a paper; None when nothing was.

    FormatError when a file is there and cannot be used.
    """
    for entry in _load(path):
        if (entry.printer, entry.paper) == (printer, paper):
            return Correction(entry.across, entry.along)
    return None


def keep_correction(printer: str, paper: str, correction: Correction | None, path: Path | None = None) -> None:
    """Keep the correction of a printer with a paper, or forget it with None; whole or not at all.

    FormatError when the earlier file cannot be read, or the place cannot be written.
    """
    path = printers_path() if path is None else Path(path)
    entries = [entry for entry in _load(path) if (entry.printer, entry.paper) != (printer, paper)]
    if correction is not None:
        entries.append(Entry(printer=printer, paper=paper, across=round(correction.across, 5),
                             along=round(correction.along, 5)))
    data = tidy(PrintersFile(printers=tuple(sorted(entries, key=lambda entry: (entry.printer, entry.paper)))))
    decode(data, say("The printer's correction"))
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise FormatError(say("The folder {parent} for your printers cannot be made: {why}.",
                              parent=path.parent, why=why_no_folder(error))) from error
    save_bytes(path, data, keep_before=True)


def decode(data: bytes, name: str = "") -> tuple[Entry, ...]:
    """The entries from file bytes. FormatError with one sentence and the place otherwise."""
    return read_versioned(data, PrintersFile, "pegwright_printers", VERSION, LARGEST_BYTES,
                          _refusals(name or say("the file")), _each_once)


def _each_once(file: PrintersFile) -> tuple[Entry, ...]:
    """The entries; GeometryError when two speak of one printer and paper, for nobody knows which of them is right."""
    seen: set[tuple[str, str]] = set()
    for entry in file.printers:
        if (entry.printer, entry.paper) in seen:
            raise GeometryError(say("It has two corrections of {printer} for {paper}: keep the one that is right.",
                                    printer=entry.printer, paper=entry.paper))
        seen.add((entry.printer, entry.paper))
    return file.printers


def _refusals(name: str) -> Refusals:
    return Refusals(
        name=name,
        empty=lambda: say("{name} is empty: it holds no printers. Delete it and measure the bars again.", name=name),
        large=lambda: say("{name} is far larger than a list of printers: choose the right file.", name=name),
        unmarked=lambda: say('{name} is not a list of printers: it has no "pegwright_printers" version at the top.',
                             name=name),
        damaged=lambda: say("{name} is damaged: there has never been a list of printers of the version that it names.",
                            name=name),
        newer=lambda version: say("{name} is a list of printers of version {version}; this program reads version "
                                  "{known}. Update Pegwright to open it; the file is left as it is.",
                                  name=name, version=version, known=VERSION))


def _load(path: Path | None) -> tuple[Entry, ...]:
    path = printers_path() if path is None else Path(path)
    try:
        data = read_bytes(path, LARGEST_BYTES)
    except (FileNotFoundError, NotADirectoryError):
        return ()  # who cannot make the folder hears of it when a correction is to be kept
    except OSError as error:
        raise FormatError(say("The corrections of your printers in {path} cannot be read: {why}.",
                              path=path, why=why_unread(error))) from error
    return decode(data, str(path))
