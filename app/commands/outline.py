"""`python3 -m app outline DRAWING --out NEW.headstock.json`: a layout from a drawing of another program."""

import argparse
import json
import math
import os
from collections import Counter
from collections.abc import Iterator, Sequence
from functools import partial
from pathlib import Path

from msgspec.structs import replace

from app.formats import headstock
from app.formats.drawing_in import DrawingRead, read_drawing_safely
from app.formats.drawing_in.closing import read_closing
from app.formats.drawing_in.command import outline_report, require_outline
from app.formats.drawing_in.roles import heads, heads_told, is_upright
from app.formats.drawing_in.scale_text import scale_told
from app.formats.drawing_in.units import MM, NINETIETH, sized, unit_named
from app.formats.drawing_in.whole_neck import headed, with_outline
from app.formats.errors import FormatError
from app.formats.layer_names import depth_on
from geometry.beginning.given_names import tools_in_language
from geometry.edits.imported import layout_from
from geometry.edits.imported_openings import there_told
from geometry.joining.placing import Placing, place
from geometry.saying import count, say
from geometry.terms import HOLE_THERE, POCKET

from .arguments import without_ending
from .terminal import shown


def run(request: argparse.Namespace) -> int:
    """Read the drawing, write the layout and tell what was found; 0.

    FormatError or GeometryError when the drawing cannot be read, has no closed
    outline, or has a size that no headstock has and no unit was given, and
    when the layout would be written over the drawing; nothing is written then.
    """
    if request.out.exists() and request.drawing.exists() and os.path.samefile(request.out, request.drawing):
        raise FormatError(say("{out} is the drawing itself: name another file for the layout.", out=request.out))
    drawn = _chosen(_read(request.drawing, request.unit, request.scale), request.head)
    slant = -request.nut_slant if request.mirrored and request.nut_slant else request.nut_slant
    read = _head(drawn, request.nut_to_tip, slant)
    slanted = request.slanted or bool(slant) or is_upright(read)
    require_outline(read)
    told = [heads_told(drawn.loops) if request.head is None else None, _scale_told(read) if request.scale is None else None]
    read = replace(read, warnings=(*read.warnings, *filter(None, told)))
    placed = place(read.outline.path, request.turn // 90, request.mirrored, slanted, read.nut, read.up)
    roles = [(loop.path, loop.role, depth_on(loop.layer)) for loop in read.loops]
    name = without_ending(request.out)
    headstock.write(tools_in_language(layout_from(roles, placed.matrix, name, placed.nut_width, placed.slant)), request.out)
    if request.json:
        print(json.dumps(outline_report(read, placed), indent=2, allow_nan=False))
    else:
        for line in _outline_lines(read, _nut_lines(placed, request.slanted or bool(slant)), there_told(roles, placed.matrix), request.out):
            print(shown(line))
    return 0


def _read(drawing: Path, unit: str | None, scale: float | None) -> DrawingRead:
    """The drawing, gaps closed as need be; larger where a scale is given by which what it is of is larger."""
    if scale is not None:
        unit = repr(scale * (unit_named(unit) if unit is not None else read_drawing_safely(drawing).unit_mm))
    read, _ = read_closing(partial(read_drawing_safely, drawing, unit))
    assert read is not None
    return read


def _chosen(read: DrawingRead, number: int | None) -> DrawingRead:
    """The drawing with the head of that number from the left as its outline."""
    if number is None:
        return read
    found = heads(read.loops)
    if not 1 <= number <= len(found):
        raise FormatError(count(len(found), "The drawing has {n} head of that size: leave --head out.",
                                "The drawing has {n} heads of that size: give --head a number up to that."))
    return with_outline(read, found[number - 1])


def _scale_told(read: DrawingRead) -> str | None:
    """The scale that the drawing states, and how it is taken; None where it states none."""
    if read.scale is None:
        return None
    return say("{told} Give --scale {scale} if it was drawn so.", told=scale_told(read.scale, sized(*(side * read.scale.factor for side in read.size_mm))),
               scale=read.scale.words)


def _head(read: DrawingRead, length: float | None, slant: float | None) -> DrawingRead:
    """The head of a drawing of a whole neck, cut off `length` mm behind the tip and slanted by so many degrees, as it is drawn, where they are
    given; other drawings as they are."""
    if length is None and slant is None:
        return read.head or read
    if read.neck is None:
        raise FormatError(say("No neck was found behind the headstock of the drawing: leave --nut-to-tip out.") if slant is None else
                          say("No neck was found behind the headstock of the drawing: leave --nut-slant out."))
    return headed(read, read.neck.length if length is None else length, slant)


def _nut_lines(placed: Placing, slanted: bool) -> Iterator[str]:
    """What was taken for the nut, and whether it may be otherwise than was said of it."""
    yield placed.sentence
    if slanted and not placed.slant:
        yield say("No slanted edge was found that could be the nut: it is laid square to the centreline.")
    elif placed.askew and not placed.slant:
        yield say("As drawn that edge lies {askew:.1f} degrees askew: with --slanted the drawing stays upright and the nut is slanted.",
                  askew=abs(placed.askew))


def _outline_lines(read: DrawingRead, guessed: Iterator[str], there: Sequence[str], out: Path) -> Iterator[str]:
    """What was found in the drawing, what was guessed about it, what is told of pockets and where the layout is, as lines of text."""
    width, height = read.size_mm
    source = {
        "file": say("as the drawing says"),
        "option": say("as you said"),
        "guess": say("guessed from its size"),
    }[read.unit_source]
    words = {"width": width, "height": height, "source": source}
    one = read.unit if read.unit == NINETIETH else f"1 {read.unit}"
    yield (say("Outline {width:.2f} x {height:.2f} mm; one unit of the drawing is {one}, {source}.", one=one, **words)
           if read.unit in MM and math.isclose(read.unit_mm, MM[read.unit], rel_tol=1e-6) else
           say("Outline {width:.2f} x {height:.2f} mm; one unit of the drawing is {mm:.5g} mm, {source}.", mm=read.unit_mm, **words))
    found = Counter(loop.role for loop in read.loops)
    yield say(
        "Slots: {slots}. Holes: {holes}. Loops left out: {other}.",
        slots=found["slot"], holes=found["hole"], other=found["other"],
    )
    if found[POCKET] or found[HOLE_THERE]:
        yield say("Pockets that are there: {pockets}. Holes that are there: {holes}.", pockets=found[POCKET], holes=found[HOLE_THERE])
    yield from guessed
    yield from there
    yield from read.warnings
    yield say("Written to {out}.", out=out)
