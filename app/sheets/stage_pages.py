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

WIDE, HIGH = 41.0, 60.0
"""The usual room for a picture, mm: three rows fit on the smaller papers."""
GAP = 5.0
"""Between pictures, mm."""
WORDS = 2.0
"""From a picture to the words under it, mm; what runs on into the neck ends half-way."""
STRAY = 0.01
"""How far a border may run beside where it is on the paper, mm: a tenth of the line that shows it."""
SAME = ("template", "clean up", "finish", "final diameter")
"""Steps after which the wood looks as before."""


def stage_blocks(layout: Headstock, work: Work, width: float, ask: Ask = go_on) -> list[list[Block]]:
    """Rows of pictures, each with its steps under it: as much larger than usual that a row holds two less, or one; usual ones; and as much
    smaller that it holds one more, or two. `ask` is asked before each picture. GeometryError when the outline has no inside."""
    usual = max(1, int((width + GAP) / (WIDE + GAP)))
    ways = [columns for columns in range(usual - 2, usual + 3) if columns > 1]
    pictures = _pictures(layout, work, STRAY / _scale(layout, _room(ways[0], width)), ask)
    return [_rows(layout, pictures, columns, width) for columns in ways]


def _room(columns: int, width: float) -> float:
    """How wide a picture may be, mm."""
    return (width + GAP) / columns - GAP


def _scale(layout: Headstock, room: float) -> float:
    x0, y0, x1, y1 = blank_box(layout.blank)
    return min(room / (x1 - x0), max(HIGH, room * HIGH / WIDE) / (y1 - y0))


def _rows(layout: Headstock, pictures: list[tuple[str, Drawing]], columns: int, width: float) -> list[Block]:
    x0, y0, x1, y1 = blank_box(layout.blank)
    room = _room(columns, width)
    scale = _scale(layout, room)
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
