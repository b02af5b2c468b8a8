"""The scale that a drawing states in its words: `SCALE 1:2` in the box for its title."""

from __future__ import annotations

import re
from collections.abc import Sequence

from msgspec import Struct

from geometry.saying import say

LONGEST = 400
"""Letters of one text that are looked at."""
MOST = 2000
"""Texts that are looked at."""
WIDEST = 50.0
"""times larger or smaller than the wood beyond which no head is drawn (common practice, no source)"""

_NUMBER = r"(\d{1,3}(?:[.,]\d{1,3})?)"
_SPOKEN = re.compile(rf"(?:\b(?:scale|massstab|maßstab|échelle|echelle|escala|scala)\b[\s:=.]*{_NUMBER}\s*[:/]|\bM[.\s]\s*{_NUMBER}\s*:)\s*{_NUMBER}(?![\d:/])", re.IGNORECASE)
_ALONE = re.compile(rf"\s*(?:(1)\s*:\s*{_NUMBER}|{_NUMBER}\s*:\s*(1))\s*")
"""As it stands in a box of its own, its name in another text; 12:30 is a time there."""


class Scale(Struct, frozen=True):
    """A scale other than 1:1."""

    words: str
    """as `1:2`, its numbers as they stand there"""
    factor: float
    """mm of wood for each that is drawn: 2 for 1:2"""


def stated_scale(texts: Sequence[str]) -> Scale | None:
    """The first scale other than 1:1 that one of these texts states, named as one or alone in its text."""
    for pattern in (_SPOKEN.search, _ALONE.fullmatch):
        for text in texts:
            found = pattern(text)
            if found is None:
                continue
            told = [number for number in found.groups() if number is not None]
            drawn, wood = [float(number.replace(",", ".")) for number in told]
            if drawn > 0 and wood > 0 and drawn != wood and 1 / WIDEST <= wood / drawn <= WIDEST:
                return Scale(":".join(told), wood / drawn)
    return None


def scale_told(scale: Scale, larger: str) -> str:
    """What is asked about a scale that was not applied; `larger`: the size that it makes, in words."""
    return say("The drawing says {scale}, and was read as it is drawn: at that scale the outline measures {larger}.", scale=scale.words, larger=larger)
