"""Words of a layout or a file where the toolkit would take them for markup, and open the pictures that they name."""

from __future__ import annotations

import html


def plain(words: str) -> str:
    """The words as a tip shows them letter by letter."""
    return f"<qt>{html.escape(words)}</qt>" if "<" in words else words
