"""Sections through one tuner, to scale: what the drill meets on its way.

x runs along the section from where the line leaves the blank (for a side bore:
from its mark on the square edge) into the wood, y is up: the face is y = 0,
the back y = -thickness. Millimetres.
"""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.curves import Path
from geometry.drawing.layers import layers_in_section
from geometry.drawing.marks import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.ramp_section import ramp_sections
from geometry.drawing.section_cut import SectionLine, Span, edge_distance, line_along_bore, wood_area
from geometry.drawing.shapes import chain, rectangle, straight
from geometry.drawing.slot_marks import slot_style
from geometry.errors import GeometryError
from geometry.layout import Headstock, Pattern
from geometry.saying import say
from geometry.solids import Drilling, Frame, Hole, once_plugged
from geometry.solids.drilling import drill_for, point_ahead
from geometry.solids.frames import frame
from geometry.solids.slot_area import slot_area
from geometry.terms import term
from geometry.units import LengthUnit, format_close, format_down

LETTER = 1.9
"""Capital height of the words in a section, mm."""
LEADING = 1.6 * LETTER
"""From one line of words to the next, mm."""
LETTER_WIDTH = 0.78
"""Width of an average letter in capital heights, for keeping words apart."""
_SLIVER = 1.0
"""mm at the end of a section that need no name"""
BEYOND = 12.0
"""Wood shown past the last thing that matters, mm."""


class _Scene(Struct, frozen=True):
    """The cut to be drawn: its line, where it stops, and what lies along it."""

    layout: Headstock
    line: SectionLine
    end: float
    owner: str
    unit: LengthUnit = "mm"

    def say(self, length: float) -> str:
        """A length in the maker's unit."""
        return format_close(length, self.unit, 1, mark=self.unit != "mm")

    def deep(self, length: float) -> str:
        """How deep something is drilled, or what wood is left: never more than it is."""
        return format_down(length, self.unit, 1, mark=self.unit != "mm")

    @property
    def thick(self) -> float:
        return self.layout.blank.thickness


def section_along_bore(layout: Headstock, tuner_id: str, unit: LengthUnit = "mm",
                       drilled: tuple[Hole, ...] | None = None) -> Drawing:
    """The section through a tuner's post axis.

    Side mount: along the bore, with waste, rail, slot and web. Face mount: square to
    the edge that its button points at. Empty when the tuner has no place yet or no post bore
    (the checks say why). `drilled` may hand in once_plugged(layout), where they are known already. KeyError for an id that the layout does not have.
    """
    tuner = layout.tuner(tuner_id)
    try:
        placed = frame(layout, tuner)
    except GeometryError:
        return ()
    drilled = once_plugged(layout) if drilled is None else drilled
    own = [d for hole in drilled if hole.of == tuner_id for d in hole.drillings]
    post = next((d for d in own if d.role == "post"), None)
    if post is None:
        return ()
    pattern = layout.pattern(tuner.pattern)
    return (_side(layout, placed, pattern, own, post, drilled, unit) if placed.mount == "side" else
            _face(layout, placed, own, post, drilled, unit))


def _drilled(end: float, level: float, radius: float, point: float, flat: bool) -> Path:
    """A drill's way: the full diameter from 0 to `end`, then a cone, or a thin spur on a flat end."""
    tip = [(end + point, level)]
    if flat:
        spur = radius * 0.25
        tip = [(end, level - spur), *tip, (end, level + spur)]
    return chain(((0.0, level - radius), (end, level - radius), *tip, (end, level + radius),
                  (0.0, level + radius)), closed=True)


def _level(layout: Headstock, d: Drilling) -> Path:
    """The way of a side bore's drill from the mark on the square edge to the end of its point."""
    drill = drill_for(layout, d)
    return _drilled(d.stop, -d.start[2], d.radius, point_ahead(drill, d), (drill.kind if drill else d.drill) != "twist")


def _side(layout: Headstock, placed: Frame, pattern: Pattern, own: list[Drilling], post: Drilling, drilled: tuple[Hole, ...],
          unit: LengthUnit) -> Drawing:
    waste = post.stop - post.depth
    line = line_along_bore(layout.blank, placed, post)
    point = point_ahead(drill_for(layout, post), post)
    level = -post.start[2]
    first = next((span for span, _ in _slots(layout, line) if span[1] > waste), None)
    reach = max(post.stop + point, first[1] if first and first[0] < post.stop + 60 else 0.0) + BEYOND
    scene = _Scene(layout, line, min(reach, edge_distance(layout.blank, line.origin, line.direction)), placed.tuner, unit)
    marks = _wood(scene)
    marks += _crossing_bores(scene, drilled)
    for d in sorted((d for d in own if d.hole == post.hole and d is not post), key=lambda d: d.stop, reverse=True):
        marks.append(Area(_level(layout, d), d.operation, scene.owner))
    marks.append(Area(_level(layout, post), "side bore", scene.owner))
    shaft = pattern.post.diameter / 2
    marks.append(Area(rectangle(waste, level - shaft, waste + pattern.post.length, level + shaft), "post",
                      scene.owner))
    hole = waste + pattern.post.string_hole
    marks.append(Stroke(straight((hole, level - shaft), (hole, level + shaft)), "string", scene.owner))
    flat = layout.tuner(placed.tuner).flat
    if flat is not None:
        half = flat.size / 2 if flat.shape == "spot" else scene.thick
        low, high = max(level - half, -scene.thick), min(level + half, 0.0)
        marks.append(Area(rectangle(waste - flat.depth, low, waste, high), "waste", scene.owner))
        marks.append(Stroke(straight((waste, low), (waste, high)), "flat", scene.owner))
    seat = pattern.seat.across / 2
    marks.append(Stroke(straight((waste, level - seat), (waste, level + seat)), "seat", scene.owner))
    marks.append(Stroke(straight((-3.0, level), (post.stop + point + 3.0, level)), "axis", scene.owner))
    marks += _measure(scene, 0.0, post.stop, 4.0, say("stop {stop}, {point} to the point",
                                                      stop=scene.deep(post.stop), point=scene.deep(post.stop + point)))
    return tuple(marks + _named_spans(scene, waste))


def _face(layout: Headstock, placed: Frame, own: list[Drilling], post: Drilling, drilled: tuple[Hole, ...],
          unit: LengthUnit) -> Drawing:
    centre = post.start[:2]
    line = line_along_bore(layout.blank, placed, post)
    reach = edge_distance(layout.blank, centre, placed.u[:2])
    widest = max(d.radius for d in own if d.hole == post.hole)
    first = next((span for span, _ in _slots(layout, line) if span[0] > reach), None)
    furthest = max([reach + widest, *(line.along(d.start[:2]) + d.radius for d in own)])
    end = max(furthest, first[1] if first and first[0] < furthest + 40 else 0.0) + BEYOND
    scene = _Scene(layout, line, min(end, reach + edge_distance(layout.blank, centre, line.direction)), placed.tuner, unit)
    marks = _wood(scene) + _crossing_bores(scene, drilled)
    for d in own:
        middle = line.along(d.start[:2])
        if line.chord(d) is None and abs(middle - reach) > widest + d.radius:  # beside the bore, not before it
            marks.append(Stroke(_upright_box(d, (middle - d.radius, middle + d.radius)), d.operation, scene.owner))
    marks.append(Stroke(straight((reach, 0.0), (reach, -scene.thick - 1.5)), "axis", scene.owner))
    stack = [d for d in own if d.hole == post.hole]
    words = [say("{operation} {diameter} through", operation=term(d.operation), diameter=scene.say(d.diameter)) if d.through else
             say("{operation} {diameter} x {depth} deep", operation=term(d.operation), diameter=scene.say(d.diameter), depth=scene.deep(d.depth))
             for d in stack]
    marks += [Label(line, (0.0, 4.5 + LEADING * (len(words) - 1 - i)), LETTER, "dimension", scene.owner) for i, line in enumerate(words)]
    return tuple(marks + _named_spans(scene, 0.0))


def _slots(layout: Headstock, line: SectionLine) -> list[tuple[Span, str]]:
    """(span, what it is called) of every slot or pocket that the line crosses, from the origin on."""
    found = [(span, "pocket" if slot.there else "slot") for slot in layout.slots if (area := slot_area(slot)) is not None
             for span in line.spans(area) if span[1] > 0]
    return sorted(found, key=lambda entry: entry[0])


def _wood(scene: _Scene) -> list[Mark]:
    """Waste, finished wood and the slots in it, as far as the section shows."""
    area = wood_area(scene.layout)
    marks: list[Mark] = [Area(rectangle(0.0, -scene.thick, scene.end, 0.0), "waste", "blank")]
    for a, b in () if area is None else scene.line.spans(area):
        if (span := _shown(scene, (a, b))) is not None:
            marks.append(Area(rectangle(span[0], -scene.thick, span[1], 0.0), "wood", "outline"))
    marks += layers_in_section(scene.layout, scene.line, [(0.0, scene.end)])
    for slot in scene.layout.slots:
        area = slot_area(slot)
        if area is not None:
            marks += [Area(shape, slot_style(slot), slot.id)
                      for shape in ramp_sections(slot, scene.line, scene.thick, 0.0, scene.end)]
        for found in () if area is None else scene.line.spans(area):
            if (span := _shown(scene, found)) is not None:
                floor = slot.floor(scene.thick)
                marks.append(Area(rectangle(span[0], -floor, span[1], 0.0), slot_style(slot), slot.id))
    return marks


def _shown(scene: _Scene, span: Span) -> Span | None:
    a, b = max(span[0], 0.0), min(span[1], scene.end)
    return (a, b) if b > a else None


def _crossing_bores(scene: _Scene, drilled: tuple[Hole, ...]) -> list[Mark]:
    """Every bore square to the face that the section cuts, own and foreign, narrower ones below wider ones."""
    marks: list[Mark] = []
    for hole in drilled:
        opened: dict[str, float] = {}
        for d in hole.drillings:
            chord = scene.line.chord(d) if d.upright else None
            begun = opened.get(d.surface, 0.0)
            if chord is None or _shown(scene, chord) != chord or d.depth <= begun:
                continue
            opened[d.surface] = d.depth
            marks.append(Area(_upright_box(d, chord, begun), d.operation, d.of))
    return marks


def _upright_box(d: Drilling, span: Span, begun: float = 0.0) -> Path:
    """A bore square to the face in the section, from `begun` mm below its surface, where a wider one ended."""
    into = -d.direction[2]
    a, b = -d.start[2] + into * begun, -d.start[2] + into * d.depth
    return rectangle(span[0], min(a, b), span[1], max(a, b))


def _named_spans(scene: _Scene, waste: float) -> list[Mark]:
    """Under the section: how much waste, rail, slot and web lie along the line."""
    area = wood_area(scene.layout)
    wood = [] if area is None else scene.line.spans(area)
    start = next((a for a, b in wood if b > waste + 1e-6), None)
    named: list[tuple[float, float, str]] = []
    if start is not None and start > 0.05:
        named.append((0.0, start, f"{term('waste')} {scene.say(start)}"))
    # Under a plate the rail begins at the bottom of the flat.
    at, name, last = max(start or 0.0, waste), "rail", "wood"
    for (a, b), called in _slots(scene.layout, scene.line):
        if a >= scene.end:
            last = "web" if name == "web" else last
            break
        if a > at:  # slots that overlap have no web between them
            named.append((at, a, f"{term(name)} {scene.deep(a - at)}"))
        if a < scene.end - _SLIVER:
            named.append((a, min(b, scene.end), f"{term(called)} {scene.say(b - a)}"))
        at, name = max(at, b), "web"
    if at < scene.end - _SLIVER:
        named.append((at, scene.end, term(last)))
    return _rows_of_words(scene, named)


def _rows_of_words(scene: _Scene, named: list[tuple[float, float, str]]) -> list[Mark]:
    """Words centred under their spans; one that would touch its neighbour, or the line that leads to one below, goes a row lower."""
    ends: list[float] = []
    led: list[float] = []
    marks: list[Mark] = []
    for a, b, text in named:
        half = len(text) * LETTER * LETTER_WIDTH / 2
        middle = (a + b) / 2
        row = next((i for i in range(len(ends)) if middle - half > max(ends[i] + 1.5, led[i] + 0.5)), len(ends))
        if row == len(ends):
            ends.append(-math.inf)
            led.append(-math.inf)
        at = min(max([middle, *(end + 0.5 for end in ends[:row])]), b)
        ends[row], led[:row] = middle + half, [at] * row
        base = -scene.thick - 2.0 - LETTER - row * LETTER * 1.8
        if row:
            marks.append(Stroke(straight((at, -scene.thick), (at, base + LETTER + 0.6)), "dimension"))
        marks.append(Label(text, (middle, base), LETTER, "dimension", anchor="middle"))
    return marks


def _measure(scene: _Scene, a: float, b: float, level: float, text: str) -> list[Mark]:
    """A dimension line at a level above the face, with ticks and its words."""
    ticks = [Stroke(straight((x, 0.6), (x, level + 1.0)), "dimension", scene.owner) for x in (a, b)]
    line = Stroke(straight((a, level), (b, level)), "dimension", scene.owner)
    return [*ticks, line, Label(text, ((a + b) / 2, level + 1.4), LETTER, "dimension", scene.owner, anchor="middle")]
