"""SVG path data as segments: the library reads the grammar, this records what it draws."""

from __future__ import annotations

import math
import re

from fontTools.svgLib.path import parse_path
from msgspec import Struct, field

from app.formats.drawing_in.ellipse import EllipticArc, elliptic_arc
from app.formats.errors import FormatError
from geometry.curves import Cubic, Line, Segment
from geometry.saying import say
from geometry.vectors import Vec2

Piece = Segment | EllipticArc

MOST_PATH_TEXT = 2_000_000
"""Characters of one path; more would take too long to read."""


class Subpath(Struct):
    """Pieces end to end in user units, y down."""

    pieces: list[Piece] = field(default_factory=list)
    closed: bool = False


class _Recorder:
    """The pen that the library draws with."""

    def __init__(self) -> None:
        self.done: list[Subpath] = []
        self.open = Subpath()
        self.at: Vec2 = (0.0, 0.0)
        self.first: Vec2 = (0.0, 0.0)

    def moveTo(self, p: Vec2) -> None:  # noqa: N802 - the library's pen protocol
        self._finish(False)
        self.at = self.first = p

    def lineTo(self, p: Vec2) -> None:  # noqa: N802
        self.open.pieces.append(Line(self.at, p))
        self.at = p

    def curveTo(self, c0: Vec2, c1: Vec2, p: Vec2) -> None:  # noqa: N802
        self.open.pieces.append(Cubic(self.at, c0, c1, p))
        self.at = p

    def qCurveTo(self, c: Vec2, p: Vec2) -> None:  # noqa: N802
        self.open.pieces.append(Cubic.raised(self.at, c, p))
        self.at = p

    def arcTo(self, rx: float, ry: float, turn: float, large: bool, sweep: bool, p: Vec2) -> None:  # noqa: N802
        made = elliptic_arc(self.at, p, abs(rx), abs(ry), math.radians(turn), bool(large), bool(sweep))
        if made is not None:
            self.open.pieces.append(made)
        self.at = p

    def closePath(self) -> None:  # noqa: N802
        self._finish(True)
        self.at = self.first

    def endPath(self) -> None:  # noqa: N802
        self._finish(False)

    def _finish(self, closed: bool) -> None:
        if self.open.pieces:
            self.done.append(Subpath(self.open.pieces, closed))
        self.open = Subpath()


def subpaths(data: str) -> tuple[list[Subpath], bool]:
    """The subpaths of path data, and whether all of it was understood.

    As the standard asks, everything before the first error is drawn. Raises
    FormatError beyond MOST_PATH_TEXT.
    """
    if len(data) > MOST_PATH_TEXT:
        raise FormatError(say("A path of the SVG file has more than {most_path_text:,} characters: simplify it in the "
                              "program that drew it.",
                              most_path_text=MOST_PATH_TEXT))
    text, whole = _tidied(data)
    try:
        return _drawn(text), whole
    except (ValueError, OverflowError):
        return _up_to_error(text), False


def _drawn(text: str, recorder: _Recorder | None = None) -> list[Subpath]:
    recorder = recorder or _Recorder()
    parse_path(text, recorder)
    recorder.endPath()
    return recorder.done


def _up_to_error(text: str) -> list[Subpath]:
    """The longest run of whole commands that can be drawn, then what the next command draws before it fails."""
    starts = [m.start() for m in re.finditer(r"[MmZzLlHhVvCcSsQqTtAa]", text)] + [len(text)]
    good, bad = 0, len(starts) - 1
    while bad - good > 1:
        middle = (good + bad) // 2
        try:
            _drawn(text[:starts[middle]])
            good = middle
        except (ValueError, OverflowError):
            bad = middle
    recorder = _Recorder()
    try:
        return _drawn(text[:starts[bad]], recorder)
    except (ValueError, OverflowError):
        recorder.endPath()
    return recorder.done or (_drawn(text[:starts[good]]) if good else [])


def _tidied(data: str) -> tuple[str, bool]:
    """Path data in the spelling that the library reads without loss, cut at the first foreign character."""
    text = re.sub(r"\s+", " ", data.strip())
    foreign = re.search(r"[^MmZzLlHhVvCcSsQqTtAa0-9eE+\-., ]", text)
    whole = foreign is None
    if foreign:
        text = text[:foreign.start()]
    text = re.sub(r"(\d)\.(?=[eE])", r"\1", text)
    pieces = re.split(r"([Aa][^MmZzLlHhVvCcSsQqTt]*)", text)
    for i in range(0, len(pieces), 2):  # leading zeros, except among the flags of arcs, which may be run together
        pieces[i] = re.sub(r"(?<![\d.])0+(?=\d)", "", pieces[i])
    return "".join(pieces), whole
