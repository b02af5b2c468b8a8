"""Words of a page written straight into its stream: the library lays every string out anew, and most are there many times."""

from __future__ import annotations

import math

from app.formats.letters import font_name, printable, size_for, text_width
from geometry.vectors import Vec2

SHIFT = {"left": 0.0, "middle": 0.5, "right": 1.0}
"""Part of its width by which a text starts before its anchor."""


_ESCAPED = {code: f"\\{code:03o}" for code in (*range(32), *range(127, 256))} | {ord(char): "\\" + char for char in "\\()"}
"""How the codes of a string are written in a page where they may not stand as they are (ISO 32000-1, 7.3.4.2)."""


class Words:
    """Writes words onto the pages of one canvas of the PDF library, in the one face there is."""

    def __init__(self, canvas) -> None:
        from reportlab.pdfbase.pdfmetrics import getFont
        self._canvas = canvas
        self._font = getFont(font_name())
        self._known: dict[str, list[tuple[str, str]]] = {}

    def write(self, text: str, at: Vec2, height: float, anchor: str, angle: float) -> None:
        """A text with capitals `height` points tall, anchored at a point of the page, turned by rad counter-clockwise."""
        text = printable(text)
        back = SHIFT[anchor] * text_width(text, height) if anchor != "left" else 0.0
        cos, sin = (math.cos(angle), math.sin(angle)) if angle else (1.0, 0.0)
        place = f"BT {cos:.6f} {sin:.6f} {-sin:.6f} {cos:.6f}" if angle else "BT 1 0 0 1"
        shown = f"{at[0] - back * cos:.4f} {at[1] - back * sin:.4f} Tm"
        size = f"{size_for(height):.4f} Tf"
        parts = " ".join(f"{name} {size} ({escaped}) Tj" for name, escaped in self._parts(text))
        self._canvas._code.append(f"{place} {shown} {parts} ET")

    def _parts(self, text: str) -> list[tuple[str, str]]:
        """(name of the embedded part of the face, its codes) for each stretch of a text."""
        known = self._known.get(text)
        if known is None:
            document, font = self._canvas._doc, self._font
            known = [(font.getSubsetInternalName(subset, document), codes.decode("latin-1").translate(_ESCAPED))
                     for subset, codes in font.splitString(text, document)]
            self._known[text] = known
        return known
