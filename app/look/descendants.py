"""Every widget below another one.

Not asked with the toolkit's `findChildren`: what it finds it gives to Python as
parts of the one that was asked, and those that the toolkit made itself (the list
of a box to choose from, the bars of a list) stay with it for good, even when the
dialog that they were in is long gone. A window that was painted in other colours
a hundred times held thousands.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TypeVar

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

Part = TypeVar("Part", bound=QObject)


def below(root: QWidget, kind: type[Part] = QWidget) -> Iterator[Part]:
    """The parts of a widget that are of this kind, their parts, and so on, each before its own: widgets, or what belongs to
    one, as actions do."""
    for part in root.children():
        if isinstance(part, kind):
            yield part
        if isinstance(part, QWidget):
            yield from below(part, kind)
