"""Words of a layout or a file where the toolkit would take them for markup, and open the pictures that they name."""

from __future__ import annotations


def plain(words: str) -> str:
    """The words as a tip shows them letter by letter."""
    if "<" not in words:
        return words
    from html import escape  # here, for few words need it
    return f"<qt>{escape(words)}</qt>"
