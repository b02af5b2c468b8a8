"""Words of a layout or a file where the toolkit would take them for markup, and open the pictures that they name."""

from __future__ import annotations

MOST_LETTERS = 60
"""Of a name in a list: that of a file may have 255."""


def plain(words: str) -> str:
    """The words as a tip shows them letter by letter and line by line."""
    if "<" not in words:
        return words
    from html import escape  # here, for few words need it
    return f"<qt>{escape(words).replace(chr(10), '<br>')}</qt>"


def short(name: str) -> str:
    """A name on one line and of at most MOST_LETTERS, for a list; what is left out is in its middle."""
    name = "".join(letter if letter.isprintable() else " " for letter in name)
    head = MOST_LETTERS // 2
    return name if len(name) <= MOST_LETTERS else f"{name[:head]}…{name[head + 1 - MOST_LETTERS:]}"
