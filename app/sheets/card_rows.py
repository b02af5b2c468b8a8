"""The lines of a drilling card: what is drilled where, with which drill, how deep."""

from __future__ import annotations

import math

from app.sheets.cards import Card
from app.sheets.lay import TICKED, Column, narrowest, natural, table
from app.sheets.lay import Block as Laid
from app.sheets.lengths import deep, length, tenths
from app.sheets.words import numbers
from app.sheets.work import Work
from geometry.drawing.heights import READ
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence import Operation
from geometry.solids import Drilling
from geometry.solids.drilling import drill_for, point_ahead
from geometry.terms import term
from geometry.units import UNPARTED

GAP = 2.0
"""White between columns, mm."""
SHORT = {"post": say("post bore", about="in a narrow column"), "screw": say("pilot"), "pin": say("pin"), "clearance": say("clear")}
"""Names of operations that would not fit their column."""


def across(x: float) -> str:
    """How far to which side of the centreline, in one line."""
    return tenths(0.0) if abs(x) < 0.05 else f"{tenths(abs(x))}{UNPARTED}{term('treble' if x > 0 else 'bass')}"


def point_of(layout: Headstock, d: Drilling) -> float:
    """How far the point of the drill runs ahead: of the rack's drill, else 0.3 diameters."""
    drill = drill_for(layout, d)
    return point_ahead(drill, d)


def drill_words(layout: Headstock, d: Drilling) -> str:
    """The rack's drill by its name, or the kind and size that the rack lacks."""
    drill = drill_for(layout, d)
    return drill.id if drill else say("{drill} {diameter}, not in the rack", drill=term(d.drill), diameter=length(d.diameter))


def rows(layout: Headstock, work: Work, card: Card, width: float, wanted: float = math.inf) -> tuple[list[Laid], float]:
    """A table with a box to tick and the number of its step for each drilling, each column as wide as its words where `width` mm allow
    it, and narrower where that makes the table as narrow as is wanted and breaks no word; and how wide it is."""
    upright = card.kind != "side"
    along = say("from base line") if layout.nut.slant else say("from nut")
    titles = (say("step"), say("drill"), along, say("across") if upright else say("below face"), say("deep"),
              say("to point"))
    cells = [_row(layout, work, card, d, upright) for d in card.drillings]
    lines, gaps = [titles, *cells], TICKED + GAP * (len(titles) - 1)
    if gaps + sum(narrowest(lines, READ)) <= wanted < width:
        width = wanted
    widths = natural(lines, READ, width - TICKED, GAP)
    columns = [Column(title, w, i > 1) for i, (title, w) in enumerate(zip(titles, widths, strict=True))]
    ticked = [work.mark(*(op.id for op in made_by(card, d))) for d in card.drillings]
    return table(columns, cells, READ, GAP, ticks=True, marks_of=ticked), gaps + sum(widths)


def _row(layout: Headstock, work: Work, card: Card, d: Drilling, upright: bool) -> tuple[str, ...]:
    x, y, z = d.mark or d.start
    by_hand = hand_op(card, d) is not None
    if by_hand:
        x, y, z = d.start
    stop = d.depth if by_hand else d.stop
    what = d.of if card.kind in ("hole", "pin") else SHORT.get(d.role, term(d.operation))
    if d.surface == "back":
        what += say(", back")
    if steps := sorted(work.number[op.id] for op in made_by(card, d) if op.id in work.number):
        what = f"{numbers(steps)}: {what}"
    if d.through:
        return (what, drill_words(layout, d), tenths(y), across(x) if upright else tenths(z),
                say("through", about="in a narrow column"), "-")
    return (what, drill_words(layout, d), tenths(y), across(x) if upright else tenths(z), deep(stop),
            deep(stop + point_of(layout, d)))


def hand_op(card: Card, d: Drilling) -> Operation | None:
    """The operation of a hole that is drilled by hand through the plate, None for others."""
    return next((op for op in made_by(card, d) if op.setup.machine == "hand drill"), None)


def made_by(card: Card, d: Drilling) -> list[Operation]:
    """The operations of a card that make a drilling."""
    return [op for op in card.ops if d.id in {one.id for one in op.drillings}]
