"""The piece as it is after each stretch of the running order, small, to flip through before touching wood."""

from __future__ import annotations

from functools import partial
from itertools import groupby

from app.formats.paper import Placed
from app.sheets.lay import Block, drawing, heading, space
from app.sheets.words import block, numbers
from app.sheets.work import Work
from geometry.cancellation import Ask, go_on
from geometry.drawing import Drawing, Label
from geometry.drawing.heights import LEAST
from geometry.drawing.opened_out import blank_box
from geometry.drawing.wood_state import wood_drawing
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence import Operation
from geometry.sequence.state import state_of
from geometry.terms import term

WIDEST = 41.0
"""Widest a picture becomes, mm."""
HIGHEST = 60.0
"""Highest a picture becomes, mm: three rows fit on the smaller papers."""
GAP = 5.0
"""Between pictures, mm."""
WORDS = 2.0
"""From a picture to the words under it, mm; what runs on into the neck ends half-way."""
STRAY = 0.01
"""How far a border may run beside where it is on the paper, mm: a tenth of the line that shows it."""
SAME = ("template", "clean up", "finish", "final diameter")
"""Steps after which the wood looks as before."""


def stage_blocks(layout: Headstock, work: Work, width: float, ask: Ask = go_on) -> list[list[Block]]:
    """Rows of pictures, each with its steps under it; and the same that much smaller that a row holds one more, and two. `ask` is asked
    before each picture. GeometryError when the outline has no inside."""
    x0, y0, x1, y1 = blank_box(layout.blank)
    columns = max(1, int((width + GAP) / (WIDEST + GAP)))
    pictures = _pictures(layout, work, STRAY * max((x1 - x0) / WIDEST, (y1 - y0) / HIGHEST), ask)
    return [_rows(layout, pictures, columns + more, width) for more in range(3)]


def _rows(layout: Headstock, pictures: list[tuple[str, Drawing]], columns: int, width: float) -> list[Block]:
    x0, y0, x1, y1 = blank_box(layout.blank)
    room = (width + GAP) / columns - GAP
    scale = min(room / (x1 - x0), HIGHEST / (y1 - y0))
    blocks = [heading(say("The piece, stage by stage"), width, say("Face in the middle, square edges folded flat beside "
                                                              "it, as far as they are still there. Crosses are still "
                                                              "to be drilled."))]
    for i in range(0, len(pictures), columns):
        row = pictures[i:i + columns]
        placed: list[Placed] = []
        low = 0.0
        for k, (words, marks) in enumerate(row):
            left = k * (room + GAP)
            low_end = -(y1 - y0) * scale
            placed.append(drawing(marks, left + (room - (x1 - x0) * scale) / 2 - x0 * scale, -y1 * scale, scale,
                                  (left - GAP / 2, low_end - WORDS / 2, left + room + GAP / 2, WORDS / 2)))
            lines, y = block(words, (left, low_end - WORDS), LEAST, room)
            placed.append(Placed(tuple(lines)))
            low = min(low, y)
        blocks.append(Block(tuple(placed), -low + 4.0, head=blocks[0].placed, head_height=blocks[0].height))
    return [space(4.0), *blocks] if pictures else []


def _at_stage(step: int, steps: int) -> str:
    return say("Pictures of the stages: step {step} of {steps}", step=step, steps=steps)


def _pictures(layout: Headstock, work: Work, stray: float, ask: Ask) -> list[tuple[str, Drawing]]:
    """(words, the piece) after every stretch of steps of one kind that changes how it looks; `stray` as for wood_drawing."""
    found: list[tuple[str, Drawing]] = []
    done: list[Operation] = []
    for kind, group in groupby(work.worked, key=lambda op: op.kind):
        steps = list(group)
        done += steps
        if kind in SAME:
            continue
        ask(partial(_at_stage, len(done), len(work.steps)))
        what = steps[0].title if len(steps) == 1 else f"{len(steps)} x {term(kind)}"
        found.append((f"{numbers([work.number[op.id] for op in steps])}: {what}", tuple(mark for mark in wood_drawing(layout, state_of(layout, done, work.ops), stray)
                                                     if not isinstance(mark, Label))))
    return found
