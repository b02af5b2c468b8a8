"""Every widget below another one.

Not asked with the toolkit's `findChildren`: what it finds it gives to Python as
parts of the one that was asked, and those that the toolkit made itself (the list
of a box to choose from, the bars of a list) stay with it for good, even when the
dialog that they were in is long gone. A window that was painted in other colours
a hundred times held thousands.
"""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtWidgets import QWidget


def below(root: QWidget) -> Iterator[QWidget]:
    """The parts of a widget, their parts, and so on, each before its own."""
    for part in root.children():
        if isinstance(part, QWidget):
            yield part
            yield from below(part)
