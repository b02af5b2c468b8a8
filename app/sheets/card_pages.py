"""Drilling cards laid out in rows, as many beside each other as fit."""

from __future__ import annotations

from functools import partial

from app.formats.mark_shapes import drawing_box
from app.formats.paper import Placed
from app.sheets.card_face import PAD, Maker, Section, frame, section
from app.sheets.cards import Card
from app.sheets.lay import Block, moved
from app.sheets.work import Work
from geometry.cancellation import Ask, go_on
from geometry.layout import Headstock
from geometry.saying import say

LEAST = 86.0
"""Narrowest card, mm."""
GAP = 4.0
"""Between cards, mm."""


def card_blocks(layout: Headstock, work: Work, made: list[Card], width: float, ask: Ask = go_on) -> list[Block]:
    """A block for each row of cards, to flow down pages of that width (mm).

    A card whose section at full size is wider than a column takes two. `ask` is asked before each row.
    """
    columns = max(1, int((width + GAP) / (LEAST + GAP)))
    wide = (width + GAP) / columns - GAP
    blocks: list[Block] = []
    rows = _rows(layout, work, made, columns, wide)
    for number, row in enumerate(rows, 1):
        ask(partial(_at_cards, number, len(rows)))
        laid = [(column, room, Maker(layout, work, card, room, cut).block()) for column, room, card, cut in row]
        tall = max(block.height for _, _, block in laid)
        placed = [one for column, room, block in laid
                  for one in moved((*block.placed, Placed(frame(room, tall, work.plan_words))), column * (wide + GAP), 0.0)]
        blocks.append(Block(tuple(placed), tall + GAP))
    return blocks


def _at_cards(number: int, rows: int) -> str:
    return say("Cards: row {number} of {rows}", number=number, rows=rows)


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
