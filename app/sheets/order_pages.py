"""The running order with boxes to tick: set-up after set-up, and why nothing may be swapped lightly."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from app.formats.csv_out import Cell
from app.formats.letters import text_width
from app.sheets.book_pages import PIECES_IN_WORDS
from app.sheets.lay import TICKED, TITLE, Block, heading, of_marks, paragraph, space, tick
from app.sheets.words import block
from app.sheets.work import Work
from geometry.checks.words import told_first
from geometry.drawing import Area, Label, Mark, Stroke
from geometry.drawing.heights import READ
from geometry.drawing.shapes import rectangle, straight
from geometry.lengths import spoken
from geometry.saying import count, say
from geometry.sequence import Counts, Operation
from geometry.sequence.neck_hangs import neck_words
from geometry.terms import term
from geometry.units import UNPARTED

NUMBERS = 8.0
"""Room for the number of a step, mm."""
PAIRS = 62.0
"""Room for what comes before what, mm."""
MOST_SAID = 6
"""Steps that cannot be done and are told one by one at the top."""


def order_blocks(work: Work, card: Mapping[str, int], width: float, sides: str = "") -> list[Block]:
    """The running order down the page; `card` gives the card of an operation by its id, `sides` is said of the two sides."""
    blocks = [heading(say("Running order"), width, f"{summary(work)} {sides}".rstrip())]
    warning = order_warning(work)
    if warning:
        lines, low = block(warning, (2.0, -1.8), 2.4, width - 4.0)
        blocks.append(of_marks([*lines, Stroke(rectangle(0.0, low - 1.4, width, 0.0), "outline")], -low + 3.6, keep=True))
    blocks += [paragraph(text, width) for text in (*_standing(work), *troubles(work)) if text]
    for run in work.set_ups:
        each = run[0].words if len(run) > 1 and len({op.words for op in run}) == 1 else ""
        mind = [text for text in work.cautions(run[0]) if len(run) > 1 and all(text in work.cautions(op) for op in run)]
        again = _set_up(work, run[0], width, each, mind, continued=True)
        rows = [replace(_step(work, op, "" if each else op.words, mind, card.get(op.id), width), head=again.placed, head_height=again.height) for op in run]
        blocks += [_set_up(work, run[0], width, each, mind), *rows, space(1.4)]
    return blocks + _reasons(work, width)


def _standing(work: Work) -> list[str]:
    """What the ticks in the boxes say, where there are any."""
    if not any(work.mark(op.id) for op in work.steps):
        return []
    said = [say("Ticked: done, by the job book ({piece}). A stroke: begun. What is done keeps its number.",
                piece=PIECES_IN_WORDS[work.layout.book.piece])]
    if work.done and work.open:
        said.append(say("{done} of {steps} steps done, about {hours:.1f} hours left: go on with step {number}.",
                        done=len(work.order.steps) - len(work.open), steps=len(work.order.steps), hours=work.hours_left, number=work.number[work.open[0]]))
    return said


def order_warning(work: Work) -> str:
    """A sentence when the maker's own order, or what is done, spoils work, else nothing."""
    misplaced, _ = work.misplaced
    if not misplaced:
        return work.too_early
    return count(misplaced, "Do not work in this order: {n} step in it is impossible or unsafe. Put it in its place, or go "
                 "back to the best order.",
                 "Do not work in this order: {n} steps in it are impossible or unsafe. Put them in their places, or go back "
                 "to the best order.")


def summary(work: Work) -> str:
    """How much there is to do, in two sentences."""
    c = work.counts
    best = work.best
    own = "" if best is None or not work.layout.order else " " + count(best.changes.total, "The order is your own; the best one has {n} change.",
                                              "The order is your own; the best one has {n} changes.")
    how = (say("No order of these steps needs fewer changes.") if work.order.proven else
           say("No order can do with fewer than {bound} changes.", bound=work.order.bound))
    holes = count(c.holes, "{n} hole", "{n} holes")
    if c.pins:
        holes = say("{one} and {two}", one=holes, two=count(c.pins, "{n} pin", "{n} pins"))
    return say("{operations} steps, {holes} {drillings}, {set_ups} set-ups at machines, {changes} of machine,"
               " bit, table or side{tilts}; about {total:.1f} hours (common "
               "practice, no source).{dry}{found} {how}{own}",
               operations=c.operations, holes=holes,
               drillings=count(c.drillings, "in one drilling", "in {n} drillings"), set_ups=c.set_ups,
               changes=count(c.changes.total, "{n} change", "{n} changes"),
               tilts=count(c.tilts, ", {n} table setting for bores from the side", ", {n} table settings for bores from the side")
               if c.tilts else "", total=c.hours.total,
               dry=_drying(c), found=_found(work), how=how, own=own)


def _drying(counts: Counts) -> str:
    """How often glue dries meanwhile."""
    return "" if not counts.waits else " " + count(counts.waits, "Glue dries once beside that, for about {hours:.0f} hours.",
                                                   "Glue dries {n} times beside that, for about {hours:.0f} hours in all.", hours=counts.drying)


def _found(work: Work) -> str:
    """What the job book makes of the hours, once something was timed."""
    hours = work.found_hours
    return "" if hours is None else " " + say("By what the job book holds it takes about {hours:.1f}.", hours=hours)


def troubles(work: Work) -> list[str]:
    """What cannot be done, the first few by their reasons, the rest counted."""
    said = told_first([work.harm(p) for p in work.problems], MOST_SAID, lambda n: count(n, "And {n} more thing that this order spoils or makes harder: its step says it.",
                                                         "And {n} more things that this order spoils or makes harder: their steps say them."))
    cannot = [say("Cannot be done: {text}", text=text) for text in work.cannot]
    said += told_first(cannot, MOST_SAID, lambda n: count(n, "And {n} more step that cannot be done: it says why.",
                                                          "And {n} more steps that cannot be done: each says why."))
    if work.order.stuck:
        called = {op.id: op.called for op in work.ops}
        said.append(say("Left out, because they cannot be reached: {title}.",
                        title=', '.join(called[id] for id in work.order.stuck)))
    return said


def _set_up(work: Work, first: Operation, width: float, each: str, mind: Sequence[str], continued: bool = False) -> Block:
    """A grey line with the machine and everything to set on it, each setting whole on a line, and under it what `each` of its steps says,
    and what there is to `mind` at all of them; it stands again where its steps go on on another page, without what there is to mind."""
    text = first.setup.words(spoken())
    if continued:
        text = say("{set_up} (continued)", set_up=text)
    parts = (part.replace(" ", UNPARTED) if text_width(part, READ) < width / 2 else part for part in (text[0].upper() + text[1:]).split(", "))
    lines, y = block(", ".join(parts), (1.5, -1.6), READ, width - 3.0)
    for text in () if continued else (neck_words(work.layout, first.setup, spoken()), *mind):
        if text:
            more, y = block(say("Mind: {text}", text=text), (1.5, y), READ, width - 3.0)
            lines += more
    if each:
        more, y = block(say("Each: {words}", words=each), (1.5, y), READ, width - 3.0)
        lines += more
    low = y - 0.1
    return of_marks([Area(rectangle(0.0, low, width, 0.0), "wood"), *lines], -low + 1.2, keep=True)


def _step(work: Work, op: Operation, words: str, minded: Sequence[str], card: int | None, width: float) -> Block:
    """Box, number, title, `words` for the bench, cautions but for those that are `minded` already, card."""
    number, base, left = f"{work.number[op.id]}", -TITLE, TICKED + NUMBERS
    marks: list[Mark] = [*tick(0.0, base, TITLE, mark=work.mark(op.id)), Label(number, (left - 2.0, base), TITLE, "note", anchor="right")]
    on_card = "" if card is None else say("card {number}", number=card)
    titles, y = block(op.title, (left, 0.0), TITLE, width - left - text_width(on_card, READ) - 3.0)
    lines, y = block(words, (left, y), READ, width - left)
    marks += [*titles, *lines]
    for text in work.to_mind(op):
        if text not in minded:
            lines, y = block(say("Mind: {text}", text=text), (left, y), READ, width - left)
            marks += lines
    if on_card:
        marks.append(Label(on_card, (width, base), READ, "note", anchor="right"))
    marks.append(Stroke(straight((left, y), (width, y)), "dimension"))
    return of_marks(marks, -y + 1.6)


def _reasons(work: Work, width: float) -> list[Block]:
    """What must come before what, with the reason, said once for all kinds of step that share it."""
    kinds = {op.id: term(op.kind) for op in work.ops}
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
    blocks: list[Block] = [space(2.0), heading(say("Before you swap steps"), width, say("These come before those, or the work "
                                                                                   "is spoiled or cannot be done any more:"))]
    for (then, reason), first in firsts.items():
        left, low = block(say("{first} before {then}", first=", ".join(first), then=then), (0.0, 0.0), READ, PAIRS)
        lines, y = block(reason, (PAIRS + 4.0, 0.0), READ, width - PAIRS - 4.0)
        blocks.append(of_marks([*left, *lines], -min(low, y) + 0.5, keep=True))
    title = blocks[1]
    return [*blocks[:2], *(replace(one, head=title.placed, head_height=title.height) for one in blocks[2:-1]),
            replace(blocks[-1], keep=False)]


CSV_HEAD = (
    say("step", about="column"), say("id", about="column"), say("kind", about="column"), say("title", about="column"),
    say("machine", about="column"), say("bit", about="column"), say("table", about="column"), say("side_up", about="column"),
    say("words", about="column"), say("stop_mm", about="column"), say("card", about="column"), say("cautions", about="column"),
    say("done", about="column"))
"""Columns of the running order for a spreadsheet."""


def csv_rows(work: Work, card: Mapping[str, int]) -> list[tuple[Cell, ...]]:
    """The running order as rows, one a step."""
    return [(work.number[op.id], op.id, term(op.kind), op.title, term(op.setup.machine), op.setup.bit,
             None if op.setup.table is None else op.setup.table.words(spoken()), op.setup.side and term(op.setup.side), op.words, op.stop, card.get(op.id),
             " ".join(work.to_mind(op)),
             {"done": say("done"), "begun": say("begun")}.get(work.mark(op.id))) for op in work.steps]
