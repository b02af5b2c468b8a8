"""The picture of the program itself, for windows and launchers. `python3 -m tests.program_icon` makes its sizes anew."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QIcon

FOLDER = Path(__file__).parent / "program"
SIZES = (16, 24, 32, 48, 64, 128, 256, 512)
"""Sides in pixels of the PNG files; below 32 they are made from a drawing of their own, which has fewer parts."""


def png(size: int) -> Path:
    """The file of one size."""
    return FOLDER / f"pegwright-{size}.png"


def program_icon() -> QIcon:
    """Every size as one icon."""
    icon = QIcon()
    for size in SIZES:
        icon.addFile(str(png(size)))
    return icon
