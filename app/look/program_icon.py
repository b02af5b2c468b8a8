"""The picture of the program itself, for its windows. `python3 -m tests.program_icon` makes its sizes anew."""

from __future__ import annotations

from PySide6.QtGui import QIcon

from app.look.program_sizes import SIZES, png


def program_icon() -> QIcon:
    """Every size as one icon."""
    icon = QIcon()
    for size in SIZES:
        icon.addFile(str(png(size)))
    return icon
