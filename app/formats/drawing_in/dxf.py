"""A DXF drawing as strands in its own units."""

from __future__ import annotations

from collections.abc import Callable

from app.formats.drawing_in.haul import Haul


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
