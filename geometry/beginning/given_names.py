"""The names that the program gives of its own accord, in the language in use."""

from __future__ import annotations

from geometry.edits.fields import rename
from geometry.edits.parts import FEATURE_GROUPS
from geometry.layout import Headstock
from geometry.terms import given


def in_language(layout: Headstock) -> Headstock:
    """The layout with those of its features and rows that have such an English name under the name in the language in use, wherever it
    stands. The very same layout in English."""
    for group in (*FEATURE_GROUPS, "rows"):
        for one in getattr(layout, group):
            layout = rename(layout, group, one.id, given(one.id))
    return layout
