"""The cover: what is here, in which order to join and use it, and what to heed before the first cut."""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec import Struct

from app.formats.letters import complete, printable
from app.formats.mark_shapes import mapped
from app.formats.paper import Placed
from app.sheets.furniture import bar_words
from app.sheets.lay import natural
from app.sheets.parts import Part
from app.sheets.sides import side_words
from app.sheets.tiling import Tiling
from app.sheets.words import CAUTIONS, block, glued_words
from geometry.checks import Snag
from geometry.curves import Arc, Line, Matrix, Path
from geometry.drawing import Drawing, Label, Mark, Stroke
from geometry.drawing.heights import LEAST, READ
from geometry.drawing.room import Room
from geometry.drawing.shapes import rectangle, straight
from geometry.drawing.slot_marks import SLOT_STYLES
from geometry.layout import Headstock, Nut
from geometry.lengths import spoken
from geometry.saying import say
from geometry.strings.square_line import slant_words, square_line
from geometry.terms import term
from geometry.vectors import Box, Vec2, box_of_all

BETWEEN = 3.0
"""White between the columns of the list of contents, mm."""
SAMPLE = 1.3
"""Radius of the small slot in the legend, mm."""


class Laid(Struct, frozen=True):
    """A part, its tiling and the number of its first page."""

    part: Part
    tiling: Tiling
    first: int


class Entry(Struct, frozen=True):
    """A line of the list of contents."""

    title: str
    first: int
    last: int
    purpose: str

    @property
    def pages(self) -> str:
        return (page_words(self.first) if self.first == self.last else
                say("pages {first} to {last}", first=self.first, last=self.last))


def cover(layout: Headstock, laid: list[Laid], entries: Sequence[Entry], window: Box, snags: Sequence[Snag],
          order: str, plan: str) -> list[Placed]:
    """The content of the cover's window, in page coordinates; `order` warns of the running order, `plan` are the plan's letters."""
    x0, y0, x1, y = window
    width = x1 - x0
    marks: list[Mark] = []

    def line(text: str, height: float = READ, indent: float = 0.0, after: float = 0.8, short: float = 0.0) -> None:
        nonlocal y
        lines, y = block(text, (x0 + indent, y), height, width - indent - short)
        marks.extend(lines)
        y -= after

    def before(text: str, indent: float = 0.0) -> None:
        """Words in the line that comes next."""
        marks.append(Label(text, (x0 + indent, y - READ), READ, "note"))

    y -= 2.0
    line(_short(layout.name or say("Unnamed layout"), 120), 4.2, after=1.5)
    if layout.about.strip():
        line(_short(layout.about, 240), after=1.5)
    for warning in filter(None, (snag_warning(snags), order, side_words(layout))):
        top = y
        y -= 1.8
        line(warning, 2.4, indent=2.5, after=1.4, short=2.5)
        marks.append(Stroke(rectangle(x0, y, x1, top), "outline"))
        y -= 2.5
    if not complete(layout.name):
        line(say("The print lacks some letters of the layout's name and shows others in their place."))
    titled, numbered = natural([(one.title, one.pages) for one in entries], READ)
    for one in entries:
        before(one.title)
        before(one.pages, titled + BETWEEN)
        line(one.purpose, indent=titled + numbered + 2 * BETWEEN)
    y -= 1.5
    for i, step in enumerate(_steps(laid, plan, layout.nut, glued_words(layout)), 1):
        before(f"{i}.", 2.0)
        line(step, indent=8.0, after=0.3)
    y -= 1.5
    line(CAUTIONS)
    y -= 2.0
    legend, low = _legend(x0, y, x1, laid)
    marks += legend
    maps = _maps(laid, (x0, y0, x1, low - 3.0))
    return [Placed(tuple(marks)), *maps]


def snag_warning(snags: Sequence[Snag]) -> str:
    """A sentence when something spoils the work, else nothing."""
    worst = [snag for snag in snags if snag.grade == "spoils the work"]
    if not worst:
        return ""
    first = worst[0].text_in(spoken()).rstrip(".")
    rest = " " + say("(and {n} more)", n=len(worst) - 1) if len(worst) > 1 else ""
    return say("Do not cut from these sheets yet, something spoils the work: {first}{rest}.", first=first, rest=rest)


def _steps(laid: list[Laid], plan: str, nut: Nut, glued: str) -> list[str]:
    steps = [say("Print every page at 100 %, never fitted to the page."),
             say("Measure both bars of each page: {long} from end tick to end tick, or throw the page away.", long=bar_words())]
    if any(len(one.tiling.tiles) > 1 for one in laid):
        steps.append(say("Join pages row by row from the nut end, left to right: cut one page along the row of short "
                         "strokes, lay it on its neighbour so that lozenges with the same letter meet, tape; then "
                         "join the rows in the same way."))
    steps.append(say("Glue with the {line} and the centreline on lines squared on the wood. Prick where the "
                     "hairlines cross. Dashed circles are drilled from the other side.", line=square_line(nut)))
    if glued:
        steps.append(glued)
    if slanted := slant_words(nut):
        steps.append(slanted)
    steps.append(say("Throw away pages and cards of another plan than {plan}: places, tools or numbers of steps may be others "
                     "there.", plan=plan))
    return steps


def _legend(x0: float, y: float, x1: float, laid: list[Laid]) -> tuple[list[Mark], float]:
    """The kinds of line that occur, with their names, in four columns; and the y below."""
    kinds = (("outline", say("finished outline")), ("slot", say("finished slot")), ("pocket that is there", term("pocket that is there")), ("template", say("cut in the template")),
             ("side bore", say("bore from the side")), ("axis", say("axis")), ("centreline", term("centreline")),
             ("fold", say("fold")), ("seat", say("seat of a tuner")), ("ramp", term("ramp")), ("hole that is there", term("hole that is there")), ("glue line", say("glue line")))
    used = {mark.style for one in laid for mark in one.part.drawing}
    shown = [(style, name) for style, name in kinds if style in used]
    columns = 4
    step = (x1 - x0) / columns
    marks: list[Mark] = []
    for i, (style, name) in enumerate(shown):
        x, level = x0 + (i % columns) * step, y - 2.0 - (i // columns) * 4.6
        marks.append(Stroke(_sample(style, x, level + LEAST / 2), style))
        marks.append(Label(name, (x + 12.5, level), LEAST, "note"))
    return marks, y - 2.0 - ((len(shown) + columns - 1) // columns) * 4.6


def _sample(style: str, x: float, y: float) -> Path:
    """A piece of line 11 mm long from x about y; a small slot for what is one, for its line is as full as the outline's."""
    if style not in SLOT_STYLES:
        return straight((x, y), (x + 11.0, y))
    left, right, radius = x + SAMPLE, x + 11.0 - SAMPLE, SAMPLE
    return Path((Line((left, y - radius), (right, y - radius)), Arc.about((right, y), radius, -math.pi / 2, math.pi),
                 Line((right, y + radius), (left, y + radius)), Arc.about((left, y), radius, math.pi / 2, math.pi)), True)


def page_words(number: int) -> str:
    """A page by its number."""
    return say("page {page}", page=number)


def _maps(laid: list[Laid], room: Box) -> list[Placed]:
    """A small picture of each part with its pages, side by side at one scale."""
    x0, y0, x1, y1 = room
    caption = 4.0
    extents = [box_of_all(_windows(one)) for one in laid]
    gap = 8.0
    total = sum(e[2] - e[0] for e in extents)
    scale = min((x1 - x0 - gap * (len(laid) - 1)) / total, (y1 - y0 - caption) / max(e[3] - e[1] for e in extents), 0.5)
    if scale < 0.04:
        return []
    placed: list[Placed] = []
    x = x0 + (x1 - x0 - total * scale - gap * (len(laid) - 1)) / 2
    for one, extent in zip(laid, extents, strict=True):
        matrix = Matrix(a=scale, d=scale, e=x - extent[0] * scale, f=y1 - extent[3] * scale)
        drawing = tuple(mark for mark in one.part.drawing if not isinstance(mark, Label)
                        and mark.style not in ("cross", "dimension", "axis"))
        placed.append(Placed(drawing, matrix))
        placed.append(Placed(_tile_frames(one, matrix, drawing)))
        middle = x + (extent[2] - extent[0]) * scale / 2
        whole = len(one.tiling.tiles) == 1
        placed.append(Placed((Label(f"{one.part.title}, {page_words(one.first)}" if whole else one.part.title, (middle, y1 - (extent[3] - extent[1]) * scale - caption), READ,
                                    "note", anchor="middle"),)))
        x += (extent[2] - extent[0]) * scale + gap
    return placed


def _windows(one: Laid) -> list[Box]:
    """The pages' windows, as far as there is something to see in them."""
    x0, y0, x1, y1 = one.part.box
    return [(max(w[0], x0 - 4), max(w[1], y0 - 4), min(w[2], x1 + 4), min(w[3], y1 + 4))
            for w in (tile.window for tile in one.tiling.tiles)]


def _tile_frames(one: Laid, matrix: Matrix, drawing: Drawing) -> Drawing:
    """The windows of the pages on the map, each with its page number in it, clear of the small `drawing` where it can be; of a
    single page the caption tells it."""
    frames = [(*matrix(window[:2]), *matrix(window[2:])) for window in _windows(one)]
    marks: list[Mark] = [Stroke(rectangle(*frame), "tile") for frame in frames]
    if len(frames) > 1:
        room = Room((*marks, *(mapped(mark, matrix) for mark in drawing)))
        for number, frame in enumerate(frames, one.first):
            places = [[Label(str(number), at, READ, "note", anchor="middle")] for at in _inside(frame)]
            marks += room.put(places) or places[0]
    return tuple(marks)


def _inside(box: Box) -> list[Vec2]:
    """Where a number may stand in a page on the map, the middle first."""
    x0, y0, x1, y1 = box
    parts = [i / 12 for i in range(1, 12)]
    places = [(x0 + (x1 - x0) * across, y0 + (y1 - y0) * along - READ / 2) for across in parts for along in parts]
    return sorted(places, key=lambda at: math.dist(at, ((x0 + x1) / 2, (y0 + y1) / 2)))


def _short(text: str, most: int) -> str:
    text = printable(text)
    return text if len(text) <= most else text[:most - 3].rstrip() + "..."
