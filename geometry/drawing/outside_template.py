"""The line along which an outside template is cut: exact where the outline is made of lines and arcs."""

from __future__ import annotations

from geometry.curves import Line, Path, Segment
from geometry.curves.polygons import parts, polygon
from geometry.drawing.offset_path import offset_path
from geometry.drawing.shapes import ring_path
from geometry.layout import Loop, Nut
from geometry.routing.nut_end import led_on, neck_strip
from geometry.tolerance import TOUCH

HALVINGS = 60
"""Of a stretch of a segment, until a crossing is found to the last digit."""


def outside_lines(loop: Loop, nut: Nut, offset: float) -> tuple[Path, ...]:
    """Closed lines of the outside template for an offset in mm (geometry.routing.follower), ending at the nut line.

    GeometryError when the outline crosses itself.
    """
    lines, strip = offset_path(led_on(loop, nut, offset), -offset).paths, neck_strip(loop, nut, offset)
    if strip is None:
        return lines
    if len(lines) == 1 and (cut := _cut_off(lines[0], nut)) is not None:
        area = polygon(lines[0]).difference(strip)
        if polygon(cut).symmetric_difference(area).area < TOUCH * cut.length + 1e-3:
            return (cut,)
    return tuple(ring_path(ring).counter_clockwise() for line in lines for part in parts(polygon(line).difference(strip))
                 for ring in (part.exterior, *part.interiors))


def _cut_off(line: Path, nut: Nut) -> Path | None:
    """What lies before the nut line of a counter-clockwise line that goes behind it once; None for any other."""
    places = [before + segment.length_to(_zero(segment, nut)) for segment, before in zip(line.segments, (0.0, *line.ends), strict=False)
              if (nut.before(segment.start) < 0.0) != (nut.before(segment.end) < 0.0)]
    if len(places) != 2:
        return None
    one, two = places
    up, down = (one, two) if nut.before(line.point_at((one + two) / 2)) > 0 else (two, one)
    above = line.part(up, down)
    return Path((*above.segments, Line(above.end, above.start)), closed=True)


def _zero(segment: Segment, nut: Nut) -> float:
    """The parameter at which a segment that crosses the nut line does so."""
    low, high, rising = 0.0, 1.0, nut.before(segment.start) < 0.0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        if (nut.before(segment.point(middle)) < 0.0) == rising:
            low = middle
        else:
            high = middle
    return (low + high) / 2
