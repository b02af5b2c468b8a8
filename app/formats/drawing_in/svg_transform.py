"""Transform lists of SVG and CSS, read by the SVG library."""

from __future__ import annotations

import math

from svgelements import Matrix as LibraryMatrix

from geometry.curves import Matrix

LONGEST = 10_000
"""Characters of a transform list; the library takes the longer over each the more there are."""


def transform(text: str) -> Matrix | None:
    """The map of a transform list; lengths with units count at 96 px to the inch. None when it makes no sense."""
    if text.strip().lower() in ("", "none"):
        return Matrix()
    if len(text) > LONGEST:
        return None
    try:
        made = LibraryMatrix(text)
        made.render(ppi=96)
        numbers = [float(n) for n in (made.a, made.b, made.c, made.d, made.e, made.f)]
    except (ValueError, IndexError, TypeError, AttributeError, ZeroDivisionError, OverflowError):
        return None
    return Matrix(*numbers) if all(map(math.isfinite, numbers)) else None
