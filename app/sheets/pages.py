"""All pages of a layout as data: the PDF, the printer and the preview in the window draw the same ones."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import partial

from msgspec import Struct

from app.formats.errors import FormatError
from app.formats.paper import Page, Placed, paper_size
from app.sheets.block_table import block_table
from app.sheets.book_pages import book_blocks
from app.sheets.card_pages import card_blocks
from app.sheets.cards import card_of, cards
from app.sheets.cover import Entry, Laid, cover
from app.sheets.furniture import frame_of, furniture, window_corners, window_of
from app.sheets.hole_pages import hole_blocks
from app.sheets.lay import Block, apart, flow, paged, space, together
from app.sheets.list_pages import APART, list_blocks
from app.sheets.nut_blocks import nut_blocks
from app.sheets.order_pages import order_blocks, order_warning
from app.sheets.parts import Part, parts, turned
from app.sheets.reading_pages import reading_blocks
from app.sheets.router_pages import router_blocks
from app.sheets.sides import side_blocks, side_words
from app.sheets.stage_pages import stage_blocks
from app.sheets.tiling import Tile, Tiling, joining_marks, tile
from app.sheets.work import Work, plan_work
from geometry.cancellation import Ask, go_on
from geometry.checks import Snag
from geometry.curves import shift
from geometry.drawing import Drawing
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking
from geometry.routing import Waste
from geometry.saying import say
from geometry.solids.slot_area import slot_area
from geometry.units import LengthUnit
from geometry.vectors import Box

SHARED = " + "
"""Between the titles of sections that share a page."""


class _Section(Struct, frozen=True):
    """What is read at the bench, upright: blocks that flow down pages."""

    title: str
    purpose: str
    blocks: Sequence[Block]
    joins: bool = False
    """whether it begins on the last page of the section before, where all of it has room there"""


class _Run(Struct, frozen=True):
    """Sections of which all but the first stand on the last page, and their pages, in page coordinates."""

    sections: list[_Section]
    pages: list[list[Placed]]

    def titles(self, page: int) -> list[str]:
        """Of the sections on one of the pages, 0 first."""
        return [one.title for one in (self.sections if page == len(self.pages) - 1 else self.sections[:1])]


class _Stack(Struct, frozen=True):
    """What all pages of a print have in common."""

    work: Work
    paper: str
    count: int

    def page(self, sections: Sequence[str], number: int, content: Sequence[Placed], note: str = "", lying: bool = False, title: str = "") -> Page:
        """One of them, with what is printed round its content; its title names its sections if it has none of its own."""
        title = title or SHARED.join(sections)
        width, height = paper_size(self.paper, lying)
        around = furniture(width, height, self.work.layout.name, title, number, self.count, note, self.work.plan_words)
        return Page(self.paper, width, height, title, (Placed(around), *content), frame_of(note)[1], tuple(sections))


def pages(layout: Headstock, paper: str = "A4", snags: Sequence[Snag] | None = None, work: Work | None = None,
          unit: LengthUnit = "mm", ask: Ask = go_on, drawn: Sequence[Part] | None = None) -> list[Page]:
    """Cover, lists, running order, the full-size papers, drilling cards, router cards, hole table, job book.

    `snags` are what the checks found, for a warning on the cover; None has them looked for. `work` holds the router
    plans and the running order (the maker's own, perhaps), with sentences in the same `unit`; None has them planned.
    `drawn` are the papers of that work, where somebody has them already.
    Lengths to work to are in `unit`; check bars and what is beside them stay in mm. `ask` is asked between the parts.
    FormatError with one sentence for a paper that is not known, a layout that has no shape to
    print, or one that is far too large for the paper.
    """
    with speaking(unit):
        return _pages(layout, paper, snags, work, ask, drawn)


def papers(layout: Headstock, work: Work) -> list[Part]:
    """The papers at full size, with the holes that clear the slots; FormatError with one sentence for a layout that has no shape to print."""
    _ask_for_walls(layout)
    try:
        return parts(layout, [plan.waste for plan in work.plans if isinstance(plan.waste, Waste)], work.sawn, not work.no_template)
    except GeometryError as error:
        raise FormatError(say("There is nothing to print yet: {error}", error=error)) from error


def _ask_for_walls(layout: Headstock) -> None:
    broken = next((slot.id for slot in layout.slots if slot_area(slot) is None), None)
    if broken is not None:
        raise FormatError(say("There is nothing to print yet: the wall of {broken} crosses itself or shuts nothing in.",
                              broken=broken))


def _pages(layout: Headstock, paper: str, snags: Sequence[Snag] | None, work: Work | None, ask: Ask, drawn: Sequence[Part] | None) -> list[Page]:
    window = window_of(*paper_size(paper))
    _ask_for_walls(layout)
    try:
        work = plan_work(layout, ask=ask) if work is None else work
        ask(_at_papers)
        drawn = papers(layout, work) if drawn is None else drawn
        before, after = (_fewest(ways, window, ask) for ways in _bench(layout, work, window, ask))
    except GeometryError as error:
        raise FormatError(say("There is nothing to print yet: {error}", error=error)) from error
    drawn, tilings = zip(*(_tiled(part, paper) for part in drawn), strict=True)
    ask(_at_papers)
    entries: list[Entry] = []
    laid: list[Laid] = []
    for run in before:
        _enter(entries, run)
    for part, tiling in zip(drawn, tilings, strict=True):
        laid.append(Laid(part, tiling, _next(entries)))
        entries.append(Entry(part.title, _next(entries), _next(entries) + len(tiling.tiles) - 1, part.purpose))
    for run in after:
        _enter(entries, run)
    count = entries[-1].last
    front = cover(layout, laid, entries, window, _found(layout) if snags is None else snags, order_warning(work), work.letters)
    ask()
    first = {entry.title: entry.first for entry in entries}
    stack = _Stack(work, paper, count)
    out = [stack.page([say("Cover")], 1, front), *_bench_pages(before, first, stack)]
    for one in laid:
        ask(partial(_at_page, len(out) + 1, count))
        joins = joining_marks(one.tiling, one.part.drawing)
        out += [_tile_page(one, tile, joins, stack) for tile in one.tiling.tiles]
    return out + _bench_pages(after, first, stack)


def _bench_pages(bench: Sequence[_Run], first: Mapping[str, int], stack: _Stack) -> list[Page]:
    return [stack.page(run.titles(i), first[run.sections[0].title] + i, content) for run in bench for i, content in enumerate(run.pages)]


def _at_papers() -> str:
    return say("The papers at full size")


def _at_order() -> str:
    return say("Table of the running order")


def _at_page(number: int, pages: int) -> str:
    return say("Page {number} of {pages}", number=number, pages=pages)


def _tiled(part: Part, paper: str) -> tuple[Part, Tiling]:
    """The part and its pages; drawn tighter, turned to the side, or no longer than its marks, where that saves paper."""
    ways = _ways(part)
    best = next(ways)
    pages = _tiles(best, paper)
    for tried in ways:
        if len(pages.tiles) == 1:
            break
        other = _tiles(tried, paper)
        if len(other.tiles) < len(pages.tiles) and (not tried.turned or len(other.tiles) == 1):
            best, pages = tried, other
    return best, pages


def _ways(part: Part) -> Iterator[Part]:
    """How a part may be drawn, the fullest way first."""
    upright = [one for one in (part, part.tight) if one is not None]
    yield from upright
    yield from map(turned, upright)
    if part.short is not None:
        yield from _ways(part.short())


def _tiles(part: Part, paper: str) -> Tiling:
    return tile(part.box, paper, frame_of(part.note), part.title.lower(), part.drawing)


def _next(entries: Sequence[Entry]) -> int:
    """The number of the page behind those listed; the cover is 1."""
    return entries[-1].last + 1 if entries else 2


def _enter(entries: list[Entry], run: _Run) -> None:
    """List sections on the cover behind the others."""
    first = _next(entries)
    last = first + len(run.pages) - 1
    entries += [Entry(one.title, first if one is run.sections[0] else last, last, one.purpose) for one in run.sections]


def _fewest(ways: Sequence[Sequence[_Section]], window: Box, ask: Ask) -> list[_Run]:
    """The sections on their pages, in the first of the ways that takes the fewest."""
    high = window[3] - window[1]
    made: list[_Run] = []
    for own, blocks, _ in min((_runs(sections, high) for sections in ways), key=lambda runs: sum(taken for *_, taken in runs)):
        ask()
        made.append(_Run(own, flow(blocks, window)))
    return made


def _runs(sections: Sequence[_Section], high: float) -> list[tuple[list[_Section], list[Block], int]]:
    """Sections that share a page of that height (mm), with all their blocks and the number of pages of these; those without blocks are left out."""
    runs: list[tuple[list[_Section], list[Block], int]] = []
    for section in filter(lambda one: one.blocks, sections):
        if section.joins and runs:
            own, blocks, taken = runs[-1]
            under = [*blocks, space(APART), *section.blocks]
            if len(paged(under, high)) == taken:
                runs[-1] = ([*own, section], under, taken)
                continue
        runs.append(([section], list(section.blocks), len(paged(section.blocks, high))))
    return runs


def _bench(layout: Headstock, work: Work, window: Box, ask: Ask) -> tuple[list[list[_Section]], list[list[_Section]]]:
    """What stands before the full-size papers and what after them, in every way in which it may be laid, the best first."""
    wide, high = window[2] - window[0], window[3] - window[1]
    made = cards(layout, work)
    ask(_at_order)
    blocks = block_table(layout, work, made, wide)
    order = [*order_blocks(work, card_of(made, work), wide, side_words(layout)), *blocks]
    ask()
    stages = stage_blocks(layout, work, wide, ask)
    to_cut = [*side_blocks(layout, wide), *card_blocks(layout, work, made, wide, ask), *router_blocks(layout, work, len(made) + 1, wide)]
    lists = _Section(say("Cut list and parts"), say("Wood, hardware by its dimensions, drills and bits, what the rack lacks."), list_blocks(layout, work, wide))
    nut = _Section(say("Strings in the nut"), say("Where each string crosses the nut, at full size to lay on it, and as a table."),
                   nut_blocks(layout, wide), joins=True)
    about = _sentences(
        say("Every step with a box to tick, set-up after set-up."), say("Block heights for the tilts.") if blocks else "",
        say("What the piece looks like after each stretch of steps.") if stages[0] else "")
    # the largest pictures first: on one page, or parted where that saves one; the nut under the lists, else behind the pictures
    steps = [_Section(say("Running order"), about, [*order, *pictures]) for pictures in (*map(together, stages), *stages)]
    before = [*([lists, nut, one] for one in steps), *([lists, one, nut] for one in steps)]
    after = [
        _Section(say("Cards"), say("For the drill press one for each tuner, for the router one for each slot and one for the outline. Cut them apart."),
                 apart(to_cut, high)),
        _Section(say("Hole table"), say("Every drilling with its mark, tilt and stop; the same table is in the CSV file."),
                 hole_blocks(layout, work, wide)),
        _Section(say("Readings"), say("To fill in with a caliper once the piece is finished: what is measured against the "
                                 "plan."),
                 reading_blocks(layout, wide), joins=True)]
    # rows of the book with room to write in, or as low as all others where that saves a page
    books = [_Section(say("Job book"), say("Hours, money, what to do differently: recorded, or to fill in."), blocks)
             for blocks in (book_blocks(layout, work, wide), book_blocks(layout, work, wide, 0.0))]
    return before, [[*after, book] for book in books]


def _sentences(*said: str) -> str:
    return " ".join(filter(None, said))


def _found(layout: Headstock) -> Sequence[Snag]:
    from geometry.checks import check
    return check(layout).snags


def _tile_page(one: Laid, tile: Tile, joins: Drawing, stack: _Stack) -> Page:
    """One window on a part, with what joins it to its neighbours; what is printed round it says which."""
    tiling = one.tiling
    left, low = frame_of(one.part.note)[:2]
    x0, y0, x1, y1 = tile.window
    window = (left, low, left + x1 - x0, low + y1 - y0)
    matrix = shift(left - x0, low - y0)
    number = one.first + tiling.tiles.index(tile)
    content = [Placed(one.part.drawing, matrix, window), Placed(joins, matrix, window), Placed(tuple(window_corners(window)))]
    return stack.page([one.part.title], number, content, one.part.note, tiling.lying, _title(one.part, tile, tiling.rows, tiling.columns))


def _title(part: Part, tile: Tile, rows: int, columns: int) -> str:
    if rows * columns == 1:
        return part.title
    if columns == 1:
        return say("{title}, {row} of {rows} from the nut", title=part.title, row=tile.row, rows=rows)
    return say("{title}, row {row} of {rows} from the nut, column {column} of {columns} from the left",
               title=part.title, row=tile.row, rows=rows, column=tile.column, columns=columns)
