"""Reads text or bytes as a file, for the import tests."""

from __future__ import annotations

import tempfile
from pathlib import Path

from app.formats.drawing_in.read import read_drawing
from app.formats.drawing_in.result import DrawingRead

SAMPLES = Path(__file__).parents[4] / "samples" / "outlines"


def read(content: str | bytes, suffix: str = ".dxf", unit: str | None = None, join: float = 0.01) -> DrawingRead:
    """What read_drawing makes of a file with this content."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"drawing{suffix}"
        path.write_bytes(content if isinstance(content, bytes) else content.encode("utf-8"))
        return read_drawing(path, unit, join)


def read_svg(body: str, head: str = 'width="100mm" height="100mm" viewBox="0 0 100 100"', unit: str | None = None) -> DrawingRead:
    """An SVG with this body inside a root with these attributes; everything is drawn as a black line unless it says otherwise."""
    return read(f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" {head}>'
                f'<g fill="none" stroke="black">{body}</g></svg>', ".svg", unit)


def areas(drawing: DrawingRead) -> list[float]:
    """Areas of all loops in mm2, largest first."""
    return [loop.path.area for loop in drawing.loops]
