"""A drawing file read in this process."""

from __future__ import annotations

import os
from collections.abc import Callable
from functools import partial

from app.formats.disk_words import why_unread
from app.formats.drawing_in.assemble import assemble
from app.formats.drawing_in.haul import Haul
from app.formats.drawing_in.result import DrawingRead
from app.formats.drawing_in.sniff import kind_of
from app.formats.drawing_in.units import INSUNITS, MM, Unit, guessed, settled, unit_named
from app.formats.errors import FormatError
from app.formats.reading import read_bytes
from geometry.saying import say
from geometry.tolerance import JOIN

LOADED = 0.65
"""Part of the work that is done when the shapes are there and only have to be joined."""
MOST_BYTES = 50 * 1024 * 1024
"""Files larger than this are not outlines."""


def read_drawing(path: str | os.PathLike[str], unit: str | None = None, join: float = JOIN,
                 tell: Callable[[float], None] = lambda part: None) -> DrawingRead:
    """Loops and open chains of a DXF or SVG file, in mm, y up.

    `unit` (mm, cm, inch, ...) overrules what the file says: one number of the
    drawing is one such unit. Gaps up to `join` mm are closed silently, up to
    0.1 mm with a warning. `tell` hears how much of the work is done, 0..1. Raises FormatError, one sentence, for anything that
    is not a readable drawing.
    """
    given = Unit(unit, "option", unit_named(unit)) if unit is not None else None
    if not 0 < join <= 5:
        raise FormatError(say("The gap to close has to be above 0 and at most 5 mm: {join:g} does not do.", join=join))
    data = _bytes(path)
    tell(0.02)
    kind = kind_of(data)
    if kind == "svg":
        from app.formats.drawing_in.svg import read_svg  # here, so that nobody else waits for its libraries
        haul, own, likeliest = read_svg(data)
        tell(LOADED)
        if given is not None:
            return assemble(haul, lambda sides: given, join)
        if own is not None:
            return assemble(haul, partial(settled, own), join)
        return assemble(haul, partial(guessed, metric=None, first=(likeliest,)), join)
    haul, code, measurement = read_dxf(data, kind == "binary dxf", lambda part: tell(0.02 + part * (LOADED - 0.02)))
    if given is not None:
        return assemble(haul, lambda sides: given, join)
    if code in INSUNITS:
        stated = Unit(INSUNITS[code], "file", MM[INSUNITS[code]])
        return assemble(haul, partial(settled, stated), join)
    metric = None if measurement not in (0, 1) else measurement == 1
    return assemble(haul, partial(guessed, metric=metric), join)


def _bytes(path: str | os.PathLike[str]) -> bytes:
    try:
        size = os.stat(path).st_size
        if size > MOST_BYTES:
            raise FormatError(say("The file is {size:.0f} MB, over the limit of {most_bytes:.0f} MB: export only the "
                                  "outline, the slots and the holes.",
                                  size=size / 1e6, most_bytes=MOST_BYTES / 1e6))
        return read_bytes(path, MOST_BYTES)
    except OSError as error:
        raise FormatError(say("The file '{fspath}' cannot be read: {why}.", fspath=os.fspath(path), why=why_unread(error))) from error


def read_dxf(data: bytes, binary: bool, tell: Callable[[float], None] = lambda part: None) -> tuple[Haul, int | None, int | None]:
    """(haul, $INSUNITS, $MEASUREMENT); a number is None when the file does not state it. `tell` hears how much is done, 0..1.

    Raises FormatError for a file that cannot be read. The library is imported
    here and not above: it takes half a second that other commands need not pay.
    """
    from app.formats.drawing_in.dxf_load import load
    from app.formats.drawing_in.dxf_walk import collect
    loaded = load(data, binary)
    tell(0.75)
    haul = Haul(warnings=loaded.warnings)
    collect(loaded.document, haul)
    tell(1.0)
    return haul, loaded.insunits, loaded.measurement
