"""What a reader brings home from a drawing, before units and joining."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Sequence

from msgspec import Struct, field
from msgspec.structs import replace

from app.formats.drawing_in.scale_text import LONGEST, MOST
from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Path, Segment
from geometry.vectors import Vec2

FARTHEST = 1e9
"""Coordinates beyond this are rubbish, whatever the unit."""


class Strand(Struct, frozen=True):
    """One shape of the drawing in the drawing's own units, y up."""

    path: Path
    layer: str = ""
    filled: bool = False
    """drawn as a filled area: it may be closed when nothing joins it"""
    pen: str = ""
    """its colour and kind of line, in words of the format; empty for those of its layer"""


class Haul(Struct):
    """Strands, and everything that the maker should know about what was left behind."""

    strands: list[Strand] = field(default_factory=list)
    points: list[Vec2] = field(default_factory=list)
    """single points, which mark the middles of holes"""
    texts: list[str] = field(default_factory=list)
    """what is written in the drawing, as far as it may tell a scale"""
    skipped: Counter[str] = field(default_factory=Counter)
    """what was skipped, by a key of skipped.WORDS or the format's own name of its kind, with its number"""
    warnings: list[str] = field(default_factory=list)

    def add(self, segments: Sequence[Segment], closed: bool, layer: str, filled: bool = False, pen: str = "") -> None:
        """Take one shape; pieces without length are dropped, a shape with broken numbers is skipped and counted."""
        kept = [s for s in segments if s.start != s.end or not isinstance(s, Line)]
        kept = [s for s in kept if not isinstance(s, Cubic) or not s.p0 == s.c0 == s.c1 == s.p1]
        if not kept:
            self.skipped["shapes without length"] += 1
        elif not all(sound(s) for s in kept):
            self.skipped["shapes with impossible coordinates"] += 1
        else:
            self.strands.append(Strand(Path(tuple(welded(kept, closed)), closed), clean(layer), filled, pen))

    def point(self, at: Vec2) -> None:
        """Take a single point; one with impossible coordinates is counted."""
        if all(abs(c) <= FARTHEST for c in at):
            self.points.append(at)
        else:
            self.skipped["points"] += 1

    def text(self, words: str) -> None:
        """Take what is written."""
        if len(self.texts) < MOST:
            self.texts.append(words[:LONGEST])

    def warn(self, sentence: str) -> None:
        """Keep a sentence for the maker, once."""
        if sentence not in self.warnings:
            self.warnings.append(sentence)


def welded(segments: Sequence[Segment], closed: bool) -> list[Segment]:
    """The segments with shared ends to the last bit, so that no later change of scale can open them.

    Rounding (1e-9 of the shape's size) is healed by moving a start point onto
    the end before it; a wider gap gets a straight piece.
    """
    size = max(max(s.box()[2] - s.box()[0], s.box()[3] - s.box()[1]) for s in segments)
    out = [segments[0]]
    for segment in segments[1:]:
        if segment.start != out[-1].end:
            if v.distance(segment.start, out[-1].end) <= 1e-9 * size:
                segment = replace(segment, p0=out[-1].end)
            else:
                out.append(Line(out[-1].end, segment.start))
        out.append(segment)
    if closed and out[-1].end != out[0].start:
        if v.distance(out[-1].end, out[0].start) <= 1e-9 * size and len(out) > 1:
            out[-1] = replace(out[-1], p1=out[0].start)
        else:
            out.append(Line(out[-1].end, out[0].start))
    return out


def sound(segment: Segment) -> bool:
    """Whether every number of the segment is finite and not absurdly far away."""
    if isinstance(segment, Arc):
        return segment.radius < FARTHEST and usable((segment.centre, segment.p0, segment.p1))
    if isinstance(segment, Cubic):
        return usable((segment.p0, segment.c0, segment.c1, segment.p1))
    return usable((segment.p0, segment.p1))


def usable(points: Iterable[Vec2]) -> bool:
    """Whether all points are finite and within FARTHEST."""
    return all(math.isfinite(x) and math.isfinite(y) and abs(x) < FARTHEST and abs(y) < FARTHEST for x, y in points)


def clean(name: str) -> str:
    """A layer's name as printable text, whatever bytes it came from."""
    readable = name.encode("utf-8", "replace").decode("utf-8")
    return "".join(c if c.isprintable() else "?" for c in readable)[:80]
