"""Generic sets of strings by gauge, common practice, no source, gauges from memory: the maker measures or types his own."""

from __future__ import annotations

from msgspec import Struct

from geometry.units import MM_PER_INCH

CORE = 0.4
"""Core of a wound string in its diameters (common practice, no source)."""


class StringSet(Struct, frozen=True):
    """Diameters in thousandths of an inch from the bass side on, negative for wound on steel, with their notes; for which instrument, and
    whether they stand in pairs.

    Nylon has a letter for its note and no core, wound or not: no wire's pull is reckoned for it. Of a course in octaves the thin string
    lies on the bass side, where a stroke down meets it first.
    """

    gauges: tuple[int, ...]
    notes: tuple[str, ...]
    instrument: str = "guitar"
    paired: bool = False

    def __len__(self) -> int:
        return len(self.gauges)

    @property
    def diameters(self) -> tuple[float, ...]:
        """mm."""
        return tuple(round(abs(g) / 1000 * MM_PER_INCH, 3) for g in self.gauges)

    @property
    def cores(self) -> tuple[float | None, ...]:
        """mm, None for a plain string."""
        return tuple(round(CORE * d, 3) if g < 0 else None for g, d in zip(self.gauges, self.diameters, strict=True))


_SIX = ("E2", "A2", "D3", "G3", "B3", "E4")
SETS = (
    StringSet((-46, -36, -26, 17, 13, 10), _SIX),
    StringSet((-53, -42, -32, -24, 16, 12), _SIX),
    StringSet((-59, -46, -36, -26, 17, 13, 10), ("B1", *_SIX)),
    StringSet((-74, -59, -46, -36, -26, 17, 13, 10), ("F#1", "B1", *_SIX)),
    StringSet((-105, -85, -65, -45), ("E1", "A1", "D2", "G2"), "bass"),
    StringSet((-130, -105, -85, -65, -45), ("B0", "E1", "A1", "D2", "G2"), "bass"),
    StringSet((-130, -105, -85, -65, -45, -32), ("B0", "E1", "A1", "D2", "G2", "C3"), "bass"),
    StringSet((43, 35, 29, 40, 32, 28), ("E", "A", "D", "G", "B", "E"), "classical"),
    *(StringSet((29, 41, 32, 28), ("G", "C", "E", "A"), f"{size} ukulele") for size in ("soprano", "concert", "tenor")),
    StringSet((35, 30, 32, 28), ("D", "G", "B", "E"), "baritone ukulele"),
    StringSet((-20, 13, 11, 10), ("D3", "G3", "B3", "D4"), "banjo"),
    StringSet((-40, -40, -26, -26, 15, 15, 11, 11), ("G3", "G3", "D4", "D4", "A4", "A4", "E5", "E5"), "mandolin", paired=True),
    StringSet((-46, -46, -32, -32, -22, -22, 12, 12), ("G2", "G2", "D3", "D3", "A3", "A3", "E4", "E4"), "octave mandolin", paired=True),
    StringSet((12, -28, 10, -22, 13, 13, 10, 10), ("C4", "C3", "F4", "F3", "A3", "A3", "D4", "D4"), "bouzouki", paired=True),
    StringSet((-27, -47, 18, -39, 12, -30, 8, -23, 14, 14, 10, 10),
              ("E3", "E2", "A3", "A2", "D4", "D3", "G4", "G3", "B3", "B3", "E4", "E4"), paired=True),
)
