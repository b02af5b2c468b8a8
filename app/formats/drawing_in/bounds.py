"""What a drawing may ask for: a file of a thousand letters can stand for a million shapes or for curves as long as a road."""

from __future__ import annotations

from collections.abc import Sequence

from app.formats.drawing_in.haul import Strand
from app.formats.drawing_in.units import sized
from app.formats.errors import FormatError
from geometry.saying import say
from geometry.tolerance import FLAT
from geometry.vectors import Box

MOST_COPIES = 5_000
"""Shapes that blocks or clones may repeat beyond those written out in the file, which its size bounds; blocks of a DXF
as many more as its model space holds."""
MOST_NUMBERS = 600_000
"""Coordinates of all shapes together, blocks and clones unfolded: three hundred thousand corners, or a hundred thousand cubics."""
FARTHEST_MM = 1e15
"""mm from the origin beyond which no drawing reaches; numbers a good deal larger overflow when they are squared."""
LONG = 500
"""Chords (sagitta FLAT) from which a curve is long: half a circle of 400 mm radius."""
MOST_LONG = 25_000
"""Chords of all long curves together: fifty times half a circle of 400 mm radius. Each is followed some ten times."""


def hold_to_scale(box: Box, mm: float) -> None:
    """FormatError when a drawing with that box, in its own units of so many `mm`, reaches farther than FARTHEST_MM."""
    if not max(map(abs, box)) * mm <= FARTHEST_MM:
        raise FormatError(say("With {mm:.1e} mm to one unit the drawing is too large to be worked out: set its unit to the one it was "
                              "drawn in. In an SVG the size of the page and its viewBox tell it.", mm=mm))


def hold_to_length(strands: Sequence[Strand], size: tuple[float, float]) -> None:
    """FormatError when the curves, in mm, are so long in all that working them out would take minutes.

    Each joint is sought on chords that keep within FLAT of the curve. A drawing
    of that many is one of a landscape, or in the wrong unit. `size` (mm) is that of the drawing.
    """
    chords = (segment.chords(FLAT) for strand in strands for segment in strand.path.segments)
    if sum(count for count in chords if count > LONG) > MOST_LONG:
        raise FormatError(say("The drawing is {sized} and its curves are too long to be worked out: set its unit to the one it was "
                              "drawn in, or export only the outline, the slots and the holes.", sized=sized(*size)))


def many_points() -> str:
    """What to say of a drawing with more than MOST_NUMBERS coordinates."""
    return say("The drawing has more than {most:,} points: simplify its lines in the program that drew it, or export only the "
               "outline, the slots and the holes.", most=MOST_NUMBERS // 2)
