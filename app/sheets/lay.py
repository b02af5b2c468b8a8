"""Blocks of a bench page: made once, then flowed down pages and moved to their place."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from msgspec import Struct
from msgspec.structs import replace

from app.formats.letters import text_width, whole_words
from app.formats.paper import Placed
from app.sheets.words import block, short
from geometry.curves import Matrix, shift
from geometry.drawing import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.heights import READ
from geometry.drawing.shapes import rectangle, straight
from geometry.vectors import Box

HEADING = 3.0
"""Capital height of a heading, mm."""
TITLE = 2.6
"""Capital height of the title of a card or step, mm."""
BAND = 6.4
"""Height of the head of a card, mm."""
TICK = 3.0
"""Side of a box to tick, mm."""
TICKED = TICK + 2.0
"""From a box to tick to what stands beside it, mm."""


class Block(Struct, frozen=True):
    """Something `height` mm high whose upper left corner is the origin, y up (so all of it lies below 0)."""

    placed: tuple[Placed, ...]
    height: float
    keep: bool = False
    """stay on one page with the block that follows"""
    spare: bool = False
    """left out where it would begin a page: room to write in"""
    head: tuple[Placed, ...] = ()
    """what stands above it again when it begins a page, `head_height` mm high"""
    head_height: float = 0.0


def moved(placed: Iterable[Placed], dx: float, dy: float) -> list[Placed]:
    """The same marks elsewhere (mm)."""
    by = shift(dx, dy)
    return [replace(one, matrix=by.after(one.matrix),
                    clip=None if one.clip is None else (one.clip[0] + dx, one.clip[1] + dy, one.clip[2] + dx,
                                                        one.clip[3] + dy)) for one in placed]


def of_marks(marks: Sequence[Mark], height: float, **more: object) -> Block:
    """A block of marks in its own coordinates."""
    return Block((Placed(tuple(marks)),), height, **more)


def space(height: float) -> Block:
    """White."""
    return Block((), height)


def heading(text: str, width: float, about: str = "") -> Block:
    """A heading with a rule under it and a sentence, kept with what follows."""
    marks: list[Mark] = [Label(text, (0.0, -HEADING - 1.5), HEADING, "note")]
    y = -HEADING - 3.5
    marks.append(Stroke(straight((0.0, y), (width, y)), "outline"))
    y -= 1.8
    if about:
        lines, y = block(about, (0.0, y), READ, width)
        marks += lines
    return of_marks(marks, -y + 1.0, keep=True)


def paragraph(text: str, width: float, height: float = READ, after: float = 1.0, keep: bool = False) -> Block:
    """Words that wrap within `width`, with white `after` them (mm)."""
    lines, y = block(text, (0.0, 0.0), height, width)
    return of_marks(lines, -y + after, keep=keep)


def tick(x: float, baseline: float, height: float = READ, mark: str = "") -> list[Mark]:
    """A box to tick beside words of that capital height: ticked for "done", with one stroke for "begun"."""
    low = baseline + height / 2 - TICK / 2
    box = Stroke(rectangle(x, low, x + TICK, low + TICK), "check bar")
    turns = {"done": ((0.15, 0.55), (0.4, 0.15), (1.1, 1.2)), "begun": ((0.0, 0.0), (1.0, 1.0))}.get(mark, ())
    points = [(x + a * TICK, low + b * TICK) for a, b in turns]
    return [box, *(Stroke(straight(*line), "outline") for line in pairwise(points))]


def title_band(title: str, number: str, width: float) -> list[Mark]:
    """The head of a card on light grey, BAND mm high, its top at 0: what it is of, and its number at the right."""
    base, edge = -BAND / 2 - TITLE / 2, 2.5
    room = width - text_width(number, READ) - 4 * edge
    return [Area(rectangle(0.0, -BAND, width, 0.0), "wood"), Label(short(title, TITLE, room), (edge, base), TITLE, "note"),
            Label(number, (width - edge, base), READ, "note", anchor="right")]


def paged(blocks: Sequence[Block], high: float) -> list[list[Block]]:
    """The blocks on as many pages of that height (mm) as it takes, what stands above a block again as one of its own.

    Blocks kept together that are higher than a page are parted again. A single block higher than a page has one of its own and runs out
    of it below. White begins no page.
    """
    pages: list[list[Block]] = []
    left = 0.0
    i = 0
    while i < len(blocks):
        group = [blocks[i]]
        while group[-1].keep and i + len(group) < len(blocks):
            group.append(blocks[i + len(group)])
            if group[0].head_height + sum(one.height for one in group) > high:
                group = group[:2]
                break
        i += len(group)
        tall = sum(one.height for one in group)
        full = tall > left + 1e-6
        if pages and full and (group[0].spare or not any(one.placed for one in group)):
            continue
        if not pages or full:
            pages.append([Block(group[0].head, group[0].head_height)])
            left = high - group[0].head_height
        pages[-1] += group
        left -= tall
    return pages


def flow(blocks: Sequence[Block], window: Box) -> list[list[Placed]]:
    """The blocks down their pages (see paged), in page coordinates."""
    x0, y0, _, y1 = window
    laid: list[list[Placed]] = []
    for page in paged(blocks, y1 - y0):
        y = y1
        laid.append([])
        for one in page:
            laid[-1] += moved(one.placed, x0, y)
            y -= one.height
    return laid


def apart(blocks: Sequence[Block], high: float) -> Sequence[Block]:
    """The order for what is cut apart and may lie in any: each, with what is kept together with it, on the first page of that height (mm)
    with room for it, where that saves a page. Otherwise its own, in which it is worked by."""
    return min((blocks, _first_fit(_groups(blocks), high)), key=lambda way: len(paged(way, high)))


def together(blocks: Sequence[Block]) -> list[Block]:
    """The same blocks, kept on one page but for white before them; paged() gives up on that where they are higher than a page."""
    return [replace(one, keep=bool(one.placed)) for one in blocks[:-1]] + list(blocks[-1:])


def _first_fit(groups: Sequence[Sequence[Block]], high: float) -> list[Block]:
    """The groups page after page of that height, each on the first with room for it (mm, without its white)."""
    pages: list[list[Block]] = []
    left: list[float] = []
    for group in groups:
        height = sum(one.height for one in group if one.placed)
        page = next((at for at, room in enumerate(left) if height <= room + 1e-6), len(pages))
        if page == len(pages):
            pages.append([])
            left.append(high)
        pages[page] += group
        left[page] -= sum(one.height for one in group)
    return [one for page in pages for one in page]


def _groups(blocks: Sequence[Block]) -> list[list[Block]]:
    """Blocks that are kept together, each with the white that follows."""
    groups: list[list[Block]] = []
    for i, one in enumerate(blocks):
        if groups and (blocks[i - 1].keep or not one.placed):
            groups[-1].append(one)
        else:
            groups.append([one])
    return groups


class Column(Struct, frozen=True):
    """A column of a table: its title, its width in mm, and on which side its words stand."""

    title: str
    width: float
    right: bool = False


def table(columns: Sequence[Column], rows: Iterable[Sequence[str]], height: float = READ, gap: float = 2.5,
          ticks: bool = False, marks_of: Sequence[str] = ()) -> list[Block]:
    """Head and rows as blocks; words wrap within their column, a rule under every row.

    With `ticks` each row begins with a box to tick, with the mark that `marks_of` has for it (see tick). The head stands
    again on every further page.
    """
    shift_x = TICKED if ticks else 0.0
    width = shift_x + sum(column.width for column in columns) + gap * (len(columns) - 1)
    marks, low = _cells(columns, [column.title for column in columns], height, gap, shift_x)
    marks.append(Stroke(straight((0.0, low - 1.0), (width, low - 1.0)), "check bar"))
    head = (Placed(tuple(marks)),)
    tall = -low + 1.8
    out = [Block(head, tall, keep=True)]
    for i, cells in enumerate(rows):
        marks, low = _cells(columns, cells, height, gap, shift_x)
        if ticks:
            marks += tick(0.0, -height, height, marks_of[i] if marks_of else "")
        low = min(low, -TICK) if ticks else low
        marks.append(Stroke(straight((0.0, low - 0.8), (width, low - 0.8)), "dimension"))
        out.append(of_marks(marks, -low + 1.8, head=head, head_height=tall))
    return out


def _cells(columns: Sequence[Column], cells: Sequence[str], height: float, gap: float,
           x: float) -> tuple[list[Mark], float]:
    marks: list[Mark] = []
    low = -height
    for column, cell in zip(columns, cells, strict=True):
        lines, y = block(cell, (x, 0.0), height, column.width)
        if column.right:
            lines = [replace(line, at=(x + column.width, line.at[1]), anchor="right") for line in lines]
        marks += lines
        if lines:
            low = min(low, lines[-1].at[1])
        x += column.width + gap
    return marks, low - 0.35 * height


def fitting(wanted: Sequence[float], width: float, gap: float = 2.5) -> list[float]:
    """Column widths in the given proportions that fill a width (mm)."""
    room = width - gap * (len(wanted) - 1)
    return [room * part / sum(wanted) for part in wanted]


def natural(lines: Sequence[Sequence[str]], height: float, room: float | None = None, gap: float = 2.5) -> list[float]:
    """Widths (mm) of the columns of a table, as wide as their widest words; where `room` is less the widest ones give way, all to one
    width, and their words wrap. No column gives way so far that a word would be broken, unless all of them would still be too wide."""
    widths = [max(text_width(line[i], height) for line in lines) + 0.1 for i in range(len(lines[0]))]
    left = math.inf if room is None else room - gap * (len(widths) - 1)
    if sum(widths) <= left:
        return widths
    least = narrowest(lines, height)
    if sum(least) > left:
        least = [0.0] * len(widths)
    kept: dict[int, float] = {}
    while True:
        free = [i for i in range(len(widths)) if i not in kept]
        most = _share([widths[i] for i in free], left - sum(kept.values()))
        broken = [i for i in free if least[i] > most]
        if not broken:
            return [kept.get(i, min(wide, most)) for i, wide in enumerate(widths)]
        kept.update((i, least[i]) for i in broken)


def narrowest(lines: Sequence[Sequence[str]], height: float) -> list[float]:
    """Widths (mm) of the columns of a table that are as wide as their longest words."""
    return [max(text_width(word, height) for line in lines for word in whole_words(line[i])) + 0.1 for i in range(len(lines[0]))]


def _share(widths: Sequence[float], left: float) -> float:
    """The width to which the widest of those give way so that all together are no wider than `left` (mm): narrow ones keep theirs."""
    for i, wide in enumerate(sorted(widths)):
        if wide * (len(widths) - i) > left:
            return left / (len(widths) - i)
        left -= wide
    return math.inf


def drawing(marks: Drawing, x: float, y: float, scale: float = 1.0, clip: Box | None = None) -> Placed:
    """A drawing with its own origin at (x, y) of the block, `scale` times as large; `clip` in block coordinates."""
    return Placed(marks, Matrix(a=scale, d=scale, e=x, f=y), clip)
