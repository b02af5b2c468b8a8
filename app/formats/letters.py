"""The letters on paper: one embedded face, its measures, and what to do with characters that it lacks."""

from __future__ import annotations

import re
import unicodedata
from functools import cache, lru_cache
from pathlib import Path

from geometry.units import UNPARTED, unparted

FACE = "Bitstream Vera Sans"
"""A free font that comes with the PDF library and is embedded, so that every printer sets the same lines."""
CAPITAL = 1493 / 2048
"""Height of its capitals in parts of the size (read from the H of the font file)."""
MISSING = "?"
"""Stands for a character that the font does not have."""
_LINE_ENDS = re.compile(rf"[^\S{UNPARTED}]+")


@cache
def font_name() -> str:
    """The name under which the font is known to the PDF library, registered at the first call."""
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont
    pdfmetrics.registerFont(TTFont("Sheet", str(font_file())))
    return "Sheet"


def size_for(height: float) -> float:
    """Font size (same unit) whose capitals are `height` tall."""
    return height / CAPITAL


def text_width(text: str, height: float) -> float:
    """Width of a printed text in the unit of its capital `height`."""
    return _width(printable(text)) * height


@lru_cache(maxsize=8192)
def printable(text: str) -> str:
    """The text in characters that the font has, on one line.

    Accented letters that it lacks lose their accent; whatever remains becomes a question mark.
    """
    text = " ".join(text.split())
    if text.isascii() and text.isprintable():
        return text
    known = _characters()
    out = []
    for char in text:
        if ord(char) in known:
            out.append(char)
            continue
        plain = "".join(c for c in unicodedata.normalize("NFKD", char) if not unicodedata.combining(c))
        out.append(plain if plain and all(ord(c) in known for c in plain) else MISSING)
    return "".join(out)


def complete(text: str) -> bool:
    """Whether the font has every character of the text."""
    known = _characters()
    return all(ord(char) in known for char in " ".join(text.split()))


def wrapped(text: str, height: float, width: float) -> list[str]:
    """The text in lines no wider than `width`; what is kept together and is wider is broken, at a space in it if it can be."""
    return list(_wrapped(text, height, width))


@lru_cache(maxsize=4096)
def _wrapped(text: str, height: float, width: float) -> tuple[str, ...]:
    """The same, remembered: pages that are planned anew after an edit say mostly what they said before."""
    room, gap = width / height, _width(" ")
    lines: list[str] = []
    line, used = "", 0.0
    for word in whole_words(text):
        wide = _width(word)
        if line and used + gap + wide <= room:
            line, used = f"{line} {word}", used + gap + wide
            continue
        if line:
            lines.append(line)
        while wide > room and len(word) > 1:
            cut = max(n for n in range(1, len(word)) if n == 1 or _width(word[:n]) <= room)
            cut = max(0, word.rfind(" ", 1, cut + 1)) or cut
            lines.append(word[:cut])
            word = word[cut:].lstrip(" ")
            wide = _width(word)
        line, used = word, wide
    return (*lines, line) if line else tuple(lines)


def whole_words(text: str) -> list[str]:
    """The words between which a line may end, as they are printed; what `unparted` keeps together is one, and what a space that parts
    nothing stands in."""
    return [printable(word) for word in unparted(_LINE_ENDS.sub(" ", text).strip()).split(" ")]


def font_file() -> Path:
    """The font file itself, for whoever draws its outlines."""
    import reportlab
    return Path(reportlab.__file__).parent / "fonts" / "Vera.ttf"


@lru_cache(maxsize=8192)
def _width(text: str) -> float:
    """Width of printable text in capital heights; advances add up, the font is set without kerning."""
    from reportlab.pdfbase.pdfmetrics import stringWidth
    return stringWidth(text, font_name(), size_for(1.0))


@cache
def _characters() -> frozenset[int]:
    from reportlab.pdfbase import pdfmetrics
    return frozenset(pdfmetrics.getFont(font_name()).face.charToGlyph)
