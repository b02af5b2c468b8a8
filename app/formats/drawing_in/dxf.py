"""A DXF drawing as strands in its own units."""

from __future__ import annotations

from app.formats.drawing_in.haul import Haul


def read_dxf(data: bytes, binary: bool) -> tuple[Haul, int | None, int | None]:
    """(haul, $INSUNITS, $MEASUREMENT); a number is None when the file does not state it.

    Raises FormatError for a file that cannot be read. The library is imported
    here and not above: it takes half a second that other commands need not pay.
    """
    from app.formats.drawing_in.dxf_load import load
    from app.formats.drawing_in.dxf_walk import collect
    loaded = load(data, binary)
    haul = Haul(warnings=loaded.warnings)
    collect(loaded.document, haul)
    return haul, loaded.insunits, loaded.measurement
