"""Drilling cards laid out on pages, as many beside and below each other as fit."""

from __future__ import annotations

from app.formats.mark_shapes import drawing_box
from app.formats.paper import Box, Placed
from app.sheets.card_face import PAD, Maker, Section, frame, section
from app.sheets.cards import Card
from app.sheets.lay import moved
from app.sheets.work import Work
from geometry.layout import Headstock

LEAST = 86.0
"""Narrowest card, mm."""
GAP = 4.0
"""Between cards, mm."""


def card_pages(layout: Headstock, work: Work, made: list[Card], window: Box) -> list[list[Placed]]:
    """One list of placed drawings a page, in page coordinates.

    A card whose section at full size is wider than a column takes two.
    """
    x0, y0, x1, y1 = window
    columns = max(1, int((x1 - x0 + GAP) / (LEAST + GAP)))
    width = (x1 - x0 + GAP) / columns - GAP
    pages: list[list[Placed]] = []
    y = y1
    for row in _rows(layout, work, made, columns, width):
        blocks = [(column, wide, Maker(layout, work, card, wide, cut).block()) for column, wide, card, cut in row]
        tall = max(block.height for _, _, block in blocks)
        if not pages or y - tall < y0 - 1e-6:
            pages.append([])
            y = y1
        for column, wide, block in blocks:
            left = x0 + column * (width + GAP)
            pages[-1] += moved((*block.placed, Placed((frame(wide, tall),))), left, y)
        y -= tall + GAP
    return pages


def _rows(layout: Headstock, work: Work, made: list[Card], columns: int,
          width: float) -> list[list[tuple[int, float, Card, Section]]]:
    """(first column, width, card, its section) row by row."""
    rows: list[list[tuple[int, float, Card, Section]]] = []
    column = columns
    for card in made:
        cut = section(layout, work, card)
        box = cut[1] or drawing_box(cut[0])
        span = min(columns, 2 if box[2] - box[0] > width - 2 * PAD else 1)
        if column + span > columns:
            rows.append([])
            column = 0
        rows[-1].append((column, span * (width + GAP) - GAP, card, cut))
        column += span
    return rows
