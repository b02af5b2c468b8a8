"""Paper sizes, and pages as data: display lists laid on a sheet. PDF and the preview draw the same pages."""

from __future__ import annotations

from msgspec import Struct

from app.formats.errors import FormatError
from geometry.curves import Matrix
from geometry.drawing import Drawing
from geometry.saying import say
from geometry.units import LengthUnit
from geometry.vectors import Box

PAPERS: dict[str, tuple[float, float]] = {
    "A4": (210.0, 297.0),  # ISO 216
    "A3": (297.0, 420.0),  # ISO 216
    "Letter": (215.9, 279.4),  # 8.5 x 11 inches, ASME Y14.1 size A
    "Tabloid": (279.4, 431.8),  # 11 x 17 inches, ASME Y14.1 size B
}
"""Width and height upright, mm."""


def usual_paper(unit: LengthUnit) -> str:
    """What printers usually hold where lengths are told in that unit (common practice, no source)."""
    return "A4" if unit == "mm" else "Letter"


def paper_size(name: str, lying: bool = False) -> tuple[float, float]:
    """(width, height) in mm, turned on its side when `lying`. FormatError for a name that is not known."""
    for known, (width, height) in PAPERS.items():
        if known.lower() == name.lower():
            return (height, width) if lying else (width, height)
    raise FormatError(say("There is no paper called {name}: choose one of {papers}.",
                          name=name, papers=', '.join(PAPERS)))


class Placed(Struct, frozen=True):
    """A display list on a page: moved by `matrix` to page coordinates, cut off outside `clip`."""

    drawing: Drawing
    matrix: Matrix = Matrix()
    clip: Box | None = None


class Page(Struct, frozen=True):
    """One sheet of paper. Page coordinates: mm from its lower left corner, y up."""

    paper: str
    width: float
    height: float
    title: str
    content: tuple[Placed, ...]
    foot: float = 0.0
    """how far up what is drawn begins, mm: under it stands what is printed along the lower end"""
    sections: tuple[str, ...] = ()
    """titles of what stands on it: sections share a page, and a paper at full size goes over several"""
