"""Drawings by other programs (DXF, SVG) in; exact loops in millimetres out.

`read_drawing` works in this process; `read_drawing_safely` and `ImportJob` in
another one with limits on time and memory, for files from anywhere.
"""

from app.formats.drawing_in.job import ImportJob, read_drawing_safely
from app.formats.drawing_in.read import read_drawing
from app.formats.drawing_in.result import DrawingRead, Loop

__all__ = ["DrawingRead", "ImportJob", "Loop", "read_drawing", "read_drawing_safely"]
