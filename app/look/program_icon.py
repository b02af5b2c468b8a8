"""The picture of the program itself, for its windows. `python3 -m tests.program_icon` makes its sizes anew."""

from __future__ import annotations

from PySide6.QtGui import QIcon

from app.look.program_sizes import SIZES, png

LARGEST = 256
"""Pixels a side. All sizes are handed to the screen with every window that opens; the one above takes most of that."""


def program_icon() -> QIcon:
    """The sizes that desktops show windows with, as one icon."""
    icon = QIcon()
    for size in SIZES:
        if size <= LARGEST:
            icon.addFile(str(png(size)))
    return icon
