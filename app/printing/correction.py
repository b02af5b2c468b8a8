"""What a printer stretches, and pages made so much smaller or larger that they come out true.

Two bars of 100 mm are measured on a printed page. The factors are 100 divided
by what was measured: `across` is for the short side of the paper, `along` for
its long side, whichever way a page is turned on it.
"""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from app.formats.errors import FormatError
from app.formats.paper import Page, Placed
from app.sheets.furniture import BAR, correction_words
from geometry.curves import Matrix
from geometry.saying import say
from geometry.terms import term

LEAST, MOST = 95.0, 105.0
"""Lengths (mm) between which a measured bar is believed."""
WARN = 0.02
"""Stretch past which something else is more likely than a printer's habit."""


class Correction(Struct, frozen=True):
    """Factors by which a page is multiplied before it is printed."""

    across: float = 1.0
    along: float = 1.0

    @property
    def words(self) -> str:
        """What stands on every corrected page."""
        return say("corrected for this printer: across {across:.3f}, along {along:.3f}",
                   across=self.across, along=self.along)

    @property
    def warning(self) -> str:
        """A sentence when the printer strays by more than 2 %, else nothing."""
        if max(abs(self.across - 1.0), abs(self.along - 1.0)) <= WARN + 1e-9:
            return ""
        return say("Printers seldom stray by more than 2 %: look first whether a setting scales the page, and measure "
                   "the bars once more.")


def measured(across_mm: float, along_mm: float, printed_with: Correction | None = None) -> Correction:
    """The correction for a printer from its two bars, measured on an upright page in mm.

    `across_mm` is the lying bar, `along_mm` the upright one. `printed_with` is the correction that the measured
    page carried already. FormatError when a length, or the correction that would come of it, is not within 95 to 105 mm.
    """
    before = printed_with or Correction()
    factors = []
    for name, length, factor in (("lying", across_mm, before.across), ("upright", along_mm, before.along)):
        if not LEAST <= length <= MOST:
            raise FormatError(say("The {name} bar was measured as {length:g} mm: between {least:g} and {most:g} mm "
                                  "can be corrected, more is a page that was scaled. Print it again at 100 %.",
                                  name=term(name), length=length, least=LEAST, most=MOST))
        factors.append(factor * BAR / length)
    for name, factor in zip(("lying", "upright"), factors, strict=True):
        if not BAR / MOST - 1e-9 <= factor <= BAR / LEAST + 1e-9:
            raise FormatError(say("The {name} bar would need a correction by {factor:.3f}, which no printer needs: "
                                  "measure a page that was printed without correction.",
                                  name=term(name), factor=factor))
    return Correction(*factors)


def corrected(pages: Sequence[Page], correction: Correction | None) -> list[Page]:
    """The pages for one printer, stretched about their middle, saying so; the pages themselves without a correction."""
    return list(pages) if correction is None else [_corrected(page, correction) for page in pages]


def _corrected(page: Page, correction: Correction) -> Page:
    lying = page.width > page.height
    kx, ky = (correction.along, correction.across) if lying else (correction.across, correction.along)
    middle = (page.width / 2, page.height / 2)
    stretched = Matrix(a=kx, d=ky, e=middle[0] * (1 - kx), f=middle[1] * (1 - ky))
    said = Placed(correction_words(page.width, page.height, correction.words, page.foot))
    return replace(page, content=tuple(_stretched(one, stretched) for one in (*page.content, said)))


def _stretched(placed: Placed, by: Matrix) -> Placed:
    clip = placed.clip
    if clip is not None:
        clip = (*by(clip[:2]), *by(clip[2:]))
    return Placed(placed.drawing, by.after(placed.matrix), clip)
