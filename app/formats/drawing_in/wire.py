"""A drawing read, as JSON and back: what the worker process sends. Numbers survive to the last bit."""

from __future__ import annotations

from typing import Any

import msgspec

from app.formats.drawing_in.result import DrawingRead, Loop
from app.formats.drawing_in.scale_text import Scale
from app.formats.errors import FormatError
from geometry.curves import Arc, Cubic, Line, Path, Segment
from geometry.joining import Gap
from geometry.joining.neck import Neck
from geometry.vectors import Vec2

MARK = b"%"
"""Before a line that tells how much is done, 0..1; no answer begins with it."""


class _WirePath(msgspec.Struct):
    closed: bool
    segments: list[list[float]]
    """4 numbers: line; 8 numbers: cubic; 9 numbers: arc (the ninth tells it apart)"""


class _WireLoop(msgspec.Struct):
    path: _WirePath
    role: str
    layer: str


class _WireGap(msgspec.Struct):
    x: float
    y: float
    size: float


class _WireRead(msgspec.Struct):
    loops: list[_WireLoop]
    open_chains: list[_WirePath]
    unit: str
    unit_source: str
    unit_certain: bool
    warnings: list[str]
    size_mm: tuple[float, float]
    unit_mm: float
    gaps: list[_WireGap]
    layers: list[str]
    nut: tuple[Vec2, Vec2] | None
    up: Vec2 | None
    neck: Neck | None
    scale: Scale | None
    instead: tuple[str, float] | None
    head: _WireRead | None


class _Answer(msgspec.Struct):
    """Either a drawing or the one sentence of a FormatError."""

    read: _WireRead | None = None
    refusal: str | None = None


def encode(read: DrawingRead) -> bytes:
    """The drawing as JSON."""
    return msgspec.json.encode(_Answer(read=_read_out(read)))


def encode_refusal(sentence: str) -> bytes:
    """A refusal as JSON."""
    return msgspec.json.encode(_Answer(refusal=sentence))


def decode(data: bytes) -> DrawingRead:
    """The drawing. Raises FormatError with the worker's sentence, or ValueError for anything else than an answer."""
    try:
        answer = msgspec.json.decode(data, type=_Answer)
    except msgspec.MsgspecError as error:
        raise ValueError("not an answer of the import worker") from error
    if answer.refusal is not None:
        raise FormatError(answer.refusal)
    if answer.read is None:
        raise ValueError("an empty answer of the import worker")
    return _read_in(answer.read)


def _read_out(read: DrawingRead) -> _WireRead:
    return _WireRead(
        [_WireLoop(_path_out(loop.path), loop.role, loop.layer) for loop in read.loops],
        [_path_out(path) for path in read.open_chains], read.unit, read.unit_source, read.unit_certain,
        list(read.warnings), read.size_mm, read.unit_mm, [_WireGap(*gap.place, gap.size) for gap in read.gaps],
        list(read.layers), read.nut, read.up, read.neck, read.scale, read.instead, _read_out(read.head) if read.head is not None else None)


def _read_in(r: _WireRead) -> DrawingRead:
    return DrawingRead(tuple(Loop(_path_in(loop.path), loop.role, loop.layer) for loop in r.loops),
                       tuple(_path_in(path) for path in r.open_chains), r.unit, r.unit_source, r.unit_certain,
                       tuple(r.warnings), r.size_mm, r.unit_mm, tuple(Gap((g.x, g.y), g.size) for g in r.gaps),
                       tuple(r.layers), r.nut, r.up, r.neck, r.scale, r.instead, _read_in(r.head) if r.head is not None else None)


def _path_out(path: Path) -> _WirePath:
    return _WirePath(path.closed, [_segment_out(s) for s in path.segments])


def _segment_out(segment: Segment) -> list[Any]:
    if isinstance(segment, Line):
        return [*segment.p0, *segment.p1]
    if isinstance(segment, Cubic):
        return [*segment.p0, *segment.c0, *segment.c1, *segment.p1]
    return [*segment.centre, segment.radius, segment.a0, segment.sweep, *segment.p0, *segment.p1]


def _path_in(path: _WirePath) -> Path:
    return Path(tuple(_segment_in(n) for n in path.segments), path.closed)


def _segment_in(n: list[float]) -> Segment:
    if len(n) == 4:
        return Line((n[0], n[1]), (n[2], n[3]))
    if len(n) == 8:
        return Cubic((n[0], n[1]), (n[2], n[3]), (n[4], n[5]), (n[6], n[7]))
    if len(n) == 9:
        return Arc((n[0], n[1]), n[2], n[3], n[4], (n[5], n[6]), (n[7], n[8]))
    raise ValueError(f"a segment of {len(n)} numbers")
