"""A drawing of a whole neck, and what of it is the headstock."""

from __future__ import annotations

import math
from collections.abc import Iterator

from msgspec.structs import replace

from app.formats.drawing_in.left_out import left_out_told
from app.formats.drawing_in.likeliest import area_of
from app.formats.drawing_in.result import DrawingRead
from app.formats.drawing_in.roles import with_roles
from app.formats.drawing_in.units import is_certain
from geometry.curves import Line, Path
from geometry.errors import GeometryError
from geometry.joining.neck import Neck, beyond, head_of, neck_of
from geometry.saying import count, say
from geometry.tolerance import JOIN

SAID = 1e-6
"""mm from the proposed place beyond which a nut line is where the maker wants it"""


def with_head(read: DrawingRead) -> DrawingRead:
    """The drawing with the head alone beside it where its outline is a neck with one."""
    if read.neck is None:
        return read
    try:
        return replace(read, head=headed(read, read.neck.length))
    except GeometryError:  # the proposal crosses no neck after all
        return replace(read, neck=None)


def headed(read: DrawingRead, length: float, slant: float | None = None) -> DrawingRead:
    """What is left of a drawing with a `neck` when that is cut off `length` mm behind the tip; roles are found anew.

    `slant`: degrees by which the nut line is slanted, with the sign of `Nut.slant`; None: as a line across the neck tells it. GeometryError where it cannot be cut there.
    """
    neck, whole = read.neck, read.outline
    assert neck is not None and whole is not None
    if slant is not None:
        neck = replace(neck, slope=-math.radians(slant))
    path = head_of(whole.path, neck, length)
    nut = path.segments[-1]
    x0, y0, x1, y1 = path.box
    size = (x1 - x0, y1 - y0)
    kept = [(_before(loop.path, neck, length, path), loop.layer) for loop in read.loops if loop is not whole and not beyond(loop.path, neck, length)]
    chains = tuple([chain for chain in read.open_chains if not beyond(chain, neck, length)])
    told = [_where(neck, length), *_left_out(len(read.loops) - 1 - len(kept), len(read.open_chains) - len(chains))]
    return replace(read, loops=with_roles([(path, whole.layer), *kept], read.layers, path), open_chains=chains, size_mm=size,
                   unit_certain=is_certain(read.unit_source, size), warnings=(" ".join(told), *read.warnings), nut=(nut.start, nut.end), up=neck.to_tip, neck=None, head=None)


def _before(loop: Path, neck: Neck, length: float, head: Path) -> Path:
    """What of a loop in the neck that runs on under the nut, as the slot of a truss rod does, lies before the nut line; others as they are."""
    try:
        part = head_of(loop, neck, length)
    except GeometryError:
        return loop
    return part if area_of(head).buffer(JOIN).covers(area_of(part)) else loop


def with_outline(read: DrawingRead, number: int) -> DrawingRead:
    """The drawing with another of its loops as the outline: what lies inside that one has its role, and sizes and what is left out
    are told of it."""
    outline = read.loops[number].path
    x0, y0, x1, y1 = outline.box
    size = (x1 - x0, y1 - y0)
    loops = with_roles([(loop.path, loop.layer) for loop in read.loops], read.layers, outline)
    neck = neck_of(outline, _lines(read))
    of_the_other = set(left_out_told(read.loops))
    warnings = (*(text for text in read.warnings if text not in of_the_other), *left_out_told(loops))
    return with_head(replace(read, loops=loops, warnings=warnings, size_mm=size, unit_certain=is_certain(read.unit_source, size, neck is not None),
                             nut=None, up=None, neck=neck, head=None))


def _lines(read: DrawingRead) -> list[Line]:
    return [segment for path in (*(loop.path for loop in read.loops), *read.open_chains) for segment in path.segments if isinstance(segment, Line)]


def _where(neck: Neck, length: float) -> str:
    """Where the head was cut off, and what told it."""
    if abs(length - neck.length) > SAID:
        return say("The outline is that of a whole neck: its headstock was cut off {length:.1f} mm behind the tip, as you said.", length=length)
    if neck.drawn:
        return say("The outline is that of a whole neck: its headstock was cut off {length:.1f} mm behind the tip, where a line lies across "
                   "the neck. See whether that is the nut line.", length=length)
    return say("The outline is that of a whole neck: its headstock was cut off {length:.1f} mm behind the tip, where the straight sides of "
               "the neck end. See whether the nut line lies there.", length=length)


def _left_out(loops: int, lines: int) -> Iterator[str]:
    if loops:
        yield count(loops, "{n} loop behind it was left out.", "{n} loops behind it were left out.")
    if lines:
        yield count(lines, "{n} open line behind it was left out.", "{n} open lines behind it were left out.")
