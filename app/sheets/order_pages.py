"""The running order with boxes to tick: set-up after set-up, and why nothing may be swapped lightly."""

from __future__ import annotations

from collections.abc import Mapping

from app.formats.csv_out import Cell
from app.sheets.lay import BODY, SMALL, Block, heading, of_marks, space, tick
from app.sheets.lay import words as paragraph
from app.sheets.words import block
from app.sheets.work import Work
from geometry.drawing import Area, Label, Mark, Stroke
from geometry.drawing.shapes import rectangle, straight
from geometry.routing.words import spoken
from geometry.sequence import Operation

TITLES = 52.0
"""Room for number and title of a step, mm."""
CARDS = 14.0
"""Room for the card's number, mm."""
PAIRS = 62.0
"""Room for what comes before what, mm."""
MOST_SAID = 6
"""Steps that cannot be done and are told one by one at the top."""


_HARM = {"impossible": "Impossible in this order", "unsafe": "Unsafe in this order", "unwise": "Unwise in this order"}


def order_blocks(work: Work, card: Mapping[str, int], width: float) -> list[Block]:
    """The running order down the page; `card` gives the card of an operation by its id."""
    blocks = [heading("Running order", width, summary(work), own_page=True)]
    warning = order_warning(work)
    if warning:
        lines, low = block(warning, (2.0, -1.8), 2.4, width - 4.0)
        blocks.append(of_marks([*lines, Stroke(rectangle(0.0, low - 1.4, width, 0.0), "outline")], -low + 3.6, keep=True))
    blocks += [paragraph(text, width) for text in troubles(work)]
    for run in work.set_ups:
        rows = [_step(work, op, card.get(op.id), width) for op in run]
        blocks += [_set_up(run[0], width), *rows, space(1.4)]
    return blocks + _reasons(work, width)


def order_warning(work: Work) -> str:
    """A sentence when the maker's own order spoils work, else nothing."""
    loud = {p.op for p in work.problems if p.grade in ("impossible", "unsafe")}
    if not loud:
        return ""
    return (f"Do not work in this order: {_count(len(loud), 'step')} in it {'is' if len(loud) == 1 else 'are'} impossible or unsafe. "
            "Put them in their places, or go back to the best order.")


def summary(work: Work) -> str:
    """How much there is to do, in two sentences."""
    c = work.counts
    best = work.best
    own = "" if best is None else f" The order is your own; the best one has {_count(best.changes.total, 'change')}."
    how = ("No order of these steps needs fewer changes." if work.order.proven else
           f"No order can do with fewer than {work.order.bound} changes.")
    return (f"{c.operations} steps, {c.holes} holes in {c.drillings} drillings, {c.set_ups} set-ups at machines, "
            f"{_count(c.changes.total, 'change')} of machine, bit, table or side, {_count(c.tilts, 'table setting')} for bores "
            f"from the side; about {c.hours.total:.1f} hours (common practice, no source).{_found(work)} {how}{own}")


def _found(work: Work) -> str:
    """What the job book makes of the hours, once something was timed."""
    hours = work.found_hours
    return "" if hours is None else f" By what the job book holds it takes about {hours:.1f}."


def troubles(work: Work) -> list[str]:
    """What cannot be done, the first few by their reasons, the rest counted."""
    said = [f"{_HARM.get(p.grade, 'Wrong')}: {p.text}" for p in work.problems[:MOST_SAID]]
    more = len(work.problems) - MOST_SAID
    if more > 0:
        said.append(f"And {_count(more, 'more thing')} that this order spoils or makes harder: each step says it.")
    said += [f"Cannot be done: {text}" for text in work.order.blocked[:MOST_SAID]]
    more = len(work.order.blocked) - MOST_SAID
    if more > 0:
        said.append(f"And {_count(more, 'more step')} that cannot be done: each says why.")
    if work.order.stuck:
        titles = {op.id: op.title for op in work.ops}
        said.append(f"Left out, because they cannot be reached: {', '.join(titles[id] for id in work.order.stuck)}.")
    return said


def _count(n: int, thing: str) -> str:
    return f"{n} {thing}" if n == 1 else f"{n} {thing}s"


def _set_up(first: Operation, width: float) -> Block:
    """A grey line with the machine and everything to set on it."""
    text = first.setup.words(spoken())
    lines, y = block(text[0].upper() + text[1:], (1.5, -1.3), BODY, width - 3.0)
    low = y - 0.1
    return of_marks([Area(rectangle(0.0, low, width, 0.0), "wood"), *lines], -low + 1.2, keep=True)


def _step(work: Work, op: Operation, card: int | None, width: float) -> Block:
    """Box, number, title, words for the bench, cautions, card."""
    number = f"{work.number[op.id]}"
    base = -BODY
    marks: list[Mark] = [tick(0.0, base), Label(number, (9.5, base), BODY, "note", anchor="right")]
    titles, low = block(op.title, (11.5, 0.0), BODY, TITLES - 13.0)
    marks += titles
    room = width - TITLES - CARDS
    lines, y = block(op.words, (TITLES, -0.2), SMALL, room)
    marks += lines
    harmed = [f"{_HARM.get(p.grade, 'Wrong')}: {p.text}" for p in work.problems if p.op == op.id]
    for text in (*harmed, *op.cautions, op.blocked):
        if text and text != op.words:
            lines, y = block(f"Mind: {text}", (TITLES, y), SMALL, room)
            marks += lines
    if card is not None:
        marks.append(Label(f"card {card}", (width, base), SMALL, "note", anchor="right"))
    low = min(low, y) + 0.4
    marks.append(Stroke(straight((11.5, low - 0.5), (width, low - 0.5)), "dimension"))
    return of_marks(marks, -low + 1.9)


def _reasons(work: Work, width: float) -> list[Block]:
    """What must come before what, with the reason, said once for all kinds of step that share it."""
    kinds = {op.id: op.kind for op in work.ops}
    thens: dict[tuple[str, str], list[str]] = {}
    seen: set[tuple[str, str]] = set()
    for edge in work.before:
        pair = (kinds[edge.first], kinds[edge.then])
        if edge.hard and pair not in seen:
            seen.add(pair)
            thens.setdefault((pair[0], edge.reason), []).append(pair[1])
    firsts: dict[tuple[str, str], list[str]] = {}
    for (first, reason), then in thens.items():
        firsts.setdefault((", ".join(then), reason), []).append(first)
    if not firsts:
        return []
    blocks: list[Block] = [space(2.0), heading("Before you swap steps", width, "These come before those, or the work is spoiled or "
                                               "cannot be done any more:")]
    for (then, reason), first in firsts.items():
        left, low = block(f"{', '.join(first)} before {then}", (0.0, 0.0), SMALL, PAIRS)
        lines, y = block(reason, (PAIRS + 4.0, 0.0), SMALL, width - PAIRS - 4.0)
        blocks.append(of_marks([*left, *lines], -min(low, y) + 0.5))
    return blocks


CSV_HEAD = ("step", "id", "kind", "title", "machine", "bit", "table", "side_up", "words", "stop_mm", "card", "cautions")
"""Columns of the running order for a spreadsheet."""


def csv_rows(work: Work, card: Mapping[str, int]) -> list[tuple[Cell, ...]]:
    """The running order as rows, one a step."""
    return [(i, op.id, op.kind, op.title, op.setup.machine, op.setup.bit,
             None if op.setup.table is None else op.setup.table.words(spoken()), op.setup.side, op.words, op.stop, card.get(op.id),
             " ".join(text for text in (*op.cautions, op.blocked) if text)) for i, op in enumerate(work.steps, 1)]
