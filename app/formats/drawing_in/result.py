"""What an import gives back: loops, open chains, the unit, and sentences for the maker."""

from __future__ import annotations

from msgspec import Struct

from app.formats.drawing_in.scale_text import Scale
from geometry.curves import Path
from geometry.joining import Gap
from geometry.joining.neck import Neck
from geometry.vectors import Vec2


class Loop(Struct, frozen=True):
    """A closed border in mm, counter-clockwise."""

    path: Path
    role: str
    """outline, slot, hole, POCKET or HOLE_THERE of geometry.terms, or other"""
    layer: str = ""
    """the drawing's own name for where it was found; may be empty"""


class DrawingRead(Struct, frozen=True):
    """A drawing in mm, y up, at the place where it was drawn."""

    loops: tuple[Loop, ...]
    """largest first"""
    open_chains: tuple[Path, ...]
    """what could not be closed"""
    unit: str
    """mm, cm, inch, ...: the size of one number in the drawing; 'px' is 1/96 inch"""
    unit_source: str
    """file, option or guess"""
    unit_certain: bool
    """False when the maker should be asked: guessed, or a size no headstock has"""
    warnings: tuple[str, ...]
    """one sentence each"""
    size_mm: tuple[float, float]
    """width and height of the outline, or of everything when there is none"""
    unit_mm: float = 1.0
    """millimetres per drawing unit that were applied"""
    gaps: tuple[Gap, ...] = ()
    """loose ends of the open chains, nearest first"""
    layers: tuple[str, ...] = ()
    """names of all layers with something on them that could be read"""
    nut: tuple[Vec2, Vec2] | None = None
    """ends (mm) of the edge of the outline where it was cut or closed at the neck, or of the nut that is drawn, counter-clockwise about it;
    None: nobody knows"""
    up: Vec2 | None = None
    """unit vector along the neck towards the tip, of a head that was cut off one or has its centreline drawn"""
    neck: Neck | None = None
    """where the head begins, of an outline that is a whole neck"""
    scale: Scale | None = None
    """what the drawing says of its scale, other than 1:1; it is not applied"""
    instead: tuple[str, float] | None = None
    """what the file states as its unit, and its mm, where another was guessed since that makes nothing that a head is part of"""
    head: DrawingRead | None = None
    """the same drawing with the head alone of such an outline, and without what lies behind its nut line"""

    @property
    def outline(self) -> Loop | None:
        """The loop whose role is outline, or None when nothing closed was found."""
        return next((loop for loop in self.loops if loop.role == "outline"), None)
