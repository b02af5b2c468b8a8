"""Where the picture of the program lies, in which sizes. Known without the window toolkit."""

from __future__ import annotations

from pathlib import Path

FOLDER = Path(__file__).parent / "program"
SIZES = (16, 24, 32, 48, 64, 128, 256, 512)
"""Sides in pixels of the PNG files; below 32 they are made from a drawing of their own, which has fewer parts."""


def png(size: int) -> Path:
    """The file of one size."""
    return FOLDER / f"pegwright-{size}.png"
