"""Every widget below another one, and what is told to all of them.

Instead of the toolkit's `findChildren`, which makes whatever it finds a part of
the one that was asked. What the toolkit made itself (the list of a box to choose
from, the bars of a list) then stays with that one for good, even when its dialog
is gone: a window that is painted in other colours a hundred times holds thousands.
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


def tell(root: QWidget, way: str, *what: object) -> None:
    """Call the method of this name of whatever has it below a widget, parts before what they are in, and of the widget last."""
    for part in reversed((root, *below(root))):
        if hasattr(part, way):
            getattr(part, way)(*what)
