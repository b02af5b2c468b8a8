"""Block heights for every tilt of the drill press table."""

from __future__ import annotations

from app.formats.mark_shapes import drawing_box
from app.sheets.cards import Card
from app.sheets.lay import TICKED, Block, Column, drawing, heading, natural, space, table
from app.sheets.lengths import length, thousandths
from app.sheets.work import Work
from geometry.drawing.cards import block_picture
from geometry.drawing.heights import READ
from geometry.layout import Headstock
from geometry.lengths import spoken
from geometry.saying import say
from geometry.solids.side import block_height, board_for
from geometry.terms import term
from geometry.tilt_words import raised_end
from geometry.units import MM_PER_INCH, UNPARTED, format_angle

LENGTHS = (100.0, 150.0, 200.0, 250.0, 300.0)
"""Lengths of boards for which the blocks are given, mm."""
INCHES = tuple(MM_PER_INCH * n for n in (4, 6, 8, 10, 12))
"""The same for a maker in inches, mm."""


def lengths_for(base: float) -> tuple[float, ...]:
    """Five lengths of board in mm for the table: the one in the rack, and the usual ones beside it."""
    usual = LENGTHS if spoken() == "mm" else INCHES
    others = [one for one in usual if abs(one - base) > 0.05]
    return tuple(sorted((base, *others[:len(usual) - 1])))


def two_lengths(base: float) -> tuple[float, float]:
    """Two boards in mm for a card: the one in the rack (board_for) and one twice as long."""
    board = board_for(base, spoken())
    return board, 2 * board


def block_table(layout: Headstock, work: Work, made: list[Card], width: float) -> list[Block]:
    """One line a table setting, steepest first; nothing for a layout without bores from the side."""
    settings: dict[tuple[float, float], list[str]] = {}
    number = {id: card.number for card in made for id in card.ids}
    for op in work.steps:
        table_ = op.setup.table
        if table_ is not None and table_.fence is not None and op.drillings:
            own = settings.setdefault((table_.tilt, table_.fence), [])
            words = UNPARTED.join(say("{tuner} (card {card})", tuner=op.features[0], card=number[op.features[0]]).rsplit(" ", 1))
            if words not in own:
                own.append(words)
    if not settings:
        return []
    base = board_for(layout.rack.press.base, spoken())
    lengths = lengths_for(base)
    blocks = [space(5.0), heading(say("Block heights"), width, say("H = L x sin(tilt): L is measured along the board from "
                                                              "its lower edge to where it rests on the block, H is "
                                                              "the block. Set it, drill a scrap, check the angle, "
                                                              "then drill the blank. The board of the rack is L "
                                                              "{base}.",
                                                              base=length(base, 3))),
              _sketch()]
    rows = []
    for (tilt, fence), who in sorted(settings.items(), key=lambda item: -abs(item[0][0])):
        raised = raised_end(tilt)
        rows.append((format_angle(abs(tilt)), say("level") if raised is None else term(raised), length(fence, 1),
                     *(thousandths(block_height(tilt, board)) for board in lengths), ", ".join(who)))
    titles = (say("tilt"), say("raised end"), say("fence"), *(f"L {length(board, 3)}" for board in lengths), say("for"))
    widths = natural([titles, *rows], READ, width - TICKED, 3.0)
    columns = [Column(title, wide, i not in (1, len(titles) - 1)) for i, (title, wide) in enumerate(zip(titles, widths, strict=True))]
    return [*blocks, *table(columns, rows, gap=3.0, ticks=True), space(4.0)]


def _sketch() -> Block:
    marks = block_picture()
    x0, y0, _, y1 = drawing_box(marks)
    return Block((drawing(marks, -x0 + 4.0, -y1),), y1 - y0 + 3.0, keep=True)
