"""What was left out of a drawing, counted in the words of the maker."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable

from geometry.saying import count

WORDS: dict[str, Callable[[int], str]] = {
    "texts": lambda n: count(n, "{n} text", "{n} texts"),
    "dimensions": lambda n: count(n, "{n} dimension", "{n} dimensions"),
    "leaders": lambda n: count(n, "{n} leader", "{n} leaders"),
    "hatches": lambda n: count(n, "{n} hatch", "{n} hatches"),
    "filled areas": lambda n: count(n, "{n} filled area", "{n} filled areas"),
    "points": lambda n: count(n, "{n} point", "{n} points"),
    "unbounded lines": lambda n: count(n, "{n} unbounded line", "{n} unbounded lines"),
    "pictures": lambda n: count(n, "{n} picture", "{n} pictures"),
    "viewports": lambda n: count(n, "{n} viewport", "{n} viewports"),
    "3-D faces": lambda n: count(n, "{n} 3-D face", "{n} 3-D faces"),
    "solid bodies": lambda n: count(n, "{n} solid body", "{n} solid bodies"),
    "regions": lambda n: count(n, "{n} region", "{n} regions"),
    "surfaces": lambda n: count(n, "{n} surface", "{n} surfaces"),
    "tables": lambda n: count(n, "{n} table", "{n} tables"),
    "foreign contents": lambda n: count(n, "{n} foreign content", "{n} foreign contents"),
    "shapes on paper pages": lambda n: count(n, "{n} shape on paper pages", "{n} shapes on paper pages"),
    "hidden shapes": lambda n: count(n, "{n} hidden shape", "{n} hidden shapes"),
    "blocks that the file does not hold": lambda n: count(n, "{n} block that the file does not hold", "{n} blocks that the file does not hold"),
    "blocks scaled to nothing": lambda n: count(n, "{n} block scaled to nothing", "{n} blocks scaled to nothing"),
    "damaged blocks": lambda n: count(n, "{n} damaged block", "{n} damaged blocks"),
    "shapes without length": lambda n: count(n, "{n} shape without length", "{n} shapes without length"),
    "shapes with impossible coordinates": lambda n: count(n, "{n} shape with impossible coordinates", "{n} shapes with impossible coordinates"),
    "white page backgrounds": lambda n: count(n, "{n} white page background", "{n} white page backgrounds"),
    "shapes without line or fill": lambda n: count(n, "{n} shape without line or fill", "{n} shapes without line or fill"),
    "shapes with a broken transform": lambda n: count(n, "{n} shape with a broken transform", "{n} shapes with a broken transform"),
    "references to what the file does not hold": lambda n: count(n, "{n} reference to what the file does not hold", "{n} references to what the file does not hold"),
}
"""By the key under which a reader counts them in Haul.skipped; kinds that are not listed are told by their own name."""

LONGEST = 40
"""Letters of a kind that are told: it is a word of the file's own, of any length."""


def listed(counts: Counter[str]) -> str:
    """`3 dimensions, 1 hatch`: the counts as words, most frequent first."""
    return ", ".join(WORDS[what](n) if what in WORDS else _other(what, n) for what, n in counts.most_common())


def damaged(kind: str) -> str:
    """The key for shapes of a kind that the format names whose numbers make no shape."""
    return f"damaged {kind.lower()}"


def _other(what: str, n: int) -> str:
    """Shapes of a kind that only the format has a name for, as `3 acad_proxy_entity shapes`."""
    broken = re.fullmatch("damaged (.*)", what)
    kind = what if broken is None else broken[1]
    kind = kind if len(kind) <= LONGEST else kind[:LONGEST] + "…"
    if broken is not None:
        return count(n, "{n} damaged {kind} shape", "{n} damaged {kind} shapes", kind=kind)
    return count(n, "{n} {kind} shape", "{n} {kind} shapes", kind=kind)
