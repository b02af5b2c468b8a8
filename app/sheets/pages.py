"""All pages of a layout as data: the PDF and the preview in the window draw the same ones."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from app.formats.errors import FormatError
from app.formats.paper import Page, Placed, paper_size
from app.sheets.cover import Laid, cover
from app.sheets.furniture import FRAME, furniture, window_corners, window_of
from app.sheets.hole_pages import hole_tables
from app.sheets.parts import Part, parts
from app.sheets.tiling import Tile, joining_marks, tile
from geometry.curves import shift
from geometry.errors import GeometryError
from geometry.layout import Headstock

if TYPE_CHECKING:
    from geometry.checks import Snag


def pages(layout: Headstock, paper: str = "A4", snags: Sequence[Snag] | None = None) -> list[Page]:
    """Cover, template, wrap paper, back paper where one is needed, hole table.

    `snags` are what the checks found, for a warning on the cover; None has them looked for.
    FormatError with one sentence for a paper that is not known, a layout that has no shape to
    print, or one that is far too large for the paper.
    """
    width, height = paper_size(paper)
    try:
        drawn = parts(layout)
        tables = hole_tables(layout, window_of(width, height))
    except GeometryError as error:
        raise FormatError(f"There is nothing to print yet: {error}") from error
    laid: list[Laid] = []
    number = 2
    for part in drawn:
        tiling = tile(part.box, paper, FRAME, part.title.lower())
        laid.append(Laid(part, tiling, number))
        number += len(tiling.tiles)
    count = number - 1 + len(tables)
    named = "" if not tables else f"page {number}" if len(tables) == 1 else f"pages {number} to {count}"
    front = cover(layout, laid, named, window_of(width, height), _found(layout) if snags is None else snags)
    out = [_page(paper, width, height, layout, "Cover", 1, count, front)]
    for one in laid:
        out += [_tile_page(one, tile, layout, count) for tile in one.tiling.tiles]
    out += [_page(paper, width, height, layout, "Hole table", number + i, count, [Placed(table)])
            for i, table in enumerate(tables)]
    return out


def _found(layout: Headstock) -> Sequence[Snag]:
    from geometry.checks import check
    return check(layout).snags


def _page(paper: str, width: float, height: float, layout: Headstock, title: str, number: int, count: int,
          content: list[Placed], note: str = "") -> Page:
    around = Placed(furniture(width, height, layout.name, title, number, count, note))
    return Page(paper, width, height, title, (around, *content))


def _tile_page(one: Laid, tile: Tile, layout: Headstock, count: int) -> Page:
    """One window on a part; what is printed round it says which."""
    tiling = one.tiling
    width, height = paper_size(tiling.paper, tiling.lying)
    window = window_of(width, height)
    matrix = shift(window[0] - tile.window[0], window[1] - tile.window[1])
    title = _title(one.part, tile, tiling.rows, tiling.columns)
    number = one.first + tiling.tiles.index(tile)
    content = [Placed(one.part.drawing, matrix, window)]
    if len(tiling.tiles) > 1:
        content.append(Placed(joining_marks(tiling), matrix, window))
    content.append(Placed(tuple(window_corners(window))))
    return _page(tiling.paper, width, height, layout, title, number, count, content, one.part.note)


def _title(part: Part, tile: Tile, rows: int, columns: int) -> str:
    if rows * columns == 1:
        return part.title
    return f"{part.title}, row {tile.row} of {rows} from the nut, column {tile.column} of {columns} from the left"
