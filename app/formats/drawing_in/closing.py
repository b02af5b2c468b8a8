"""Small gaps of an outline are closed without being asked, and told."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from app.formats.drawing_in.result import DrawingRead
from geometry.curves import Path

JOINS = (0.01, 0.1, 0.5, 1.0)
"""mm: gaps that may be closed; the first is no gap to the eye"""
UNASKED = 0.5
"""mm: a wider gap is closed only when the maker says so, for it may be meant (common practice, no source)."""


def read_closing(read: Callable[[float], DrawingRead | None]) -> tuple[DrawingRead | None, float]:
    """(drawing, gaps closed up to so many mm): closed farther where a line that stays open is larger than any loop.

    `read` reads the drawing with gaps closed up to that many mm, and gives None where nothing comes of it.
    What is tried in vain is not taken. What any of these readings raises ends them all.
    """
    found = read(JOINS[0])
    if found is None or not _open(found):
        return found, JOINS[0]
    least = found.gaps[0].size if found.gaps else 0.0
    for join in JOINS[1:]:
        if not least <= join <= UNASKED:
            continue
        again = read(join)
        if again is None:
            break
        if again.loops and not _open(again):
            return again, join
    return found, JOINS[0]


def _open(read: DrawingRead) -> bool:
    return open_is_larger(read.open_chains, [loop.path for loop in read.loops])


def open_is_larger(open_lines: Sequence[Path], loops: Sequence[Path]) -> bool:
    """Whether one of the lines that stay open is larger than any loop, as an outline is that has a gap."""
    return bool(open_lines) and max(map(_size, open_lines)) > max(map(_size, loops), default=0.0)


def _size(path: Path) -> float:
    """mm across and along the box about a path, together."""
    x0, y0, x1, y1 = path.box
    return x1 - x0 + y1 - y0
