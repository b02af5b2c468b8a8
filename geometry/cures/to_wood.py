"""The move that draws a feature as it is drilled or cut in the real piece, by the job book."""

from __future__ import annotations

from collections.abc import Iterator

from geometry import vectors as v
from geometry.checks import Snag
from geometry.checks.in_wood import CutOff, in_wood
from geometry.checks.moves import AsCut, Change, Move, Shift, Slide
from geometry.cures.carry_out import carried_out
from geometry.edits.tuners import tuner_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.book import Bored
from geometry.layout.names import OUTLINE
from geometry.solids import holes
from geometry.solids.frames import frame
from geometry.solids.in_wood import bored
from geometry.tolerance import SAME_HOLE, TOUCH

_ROUNDS = 6
"""How often a slide is corrected: on a curved edge a mark does not go as far as its tuner."""


def to_the_wood(layout: Headstock, snag: Snag) -> Iterator[Move]:
    """The single moves that may draw the feature of a snag of check(layout) as it is in the wood. Of `drilled-otherwise` as the first of
    its holes that is elsewhere is drilled: a shift of what is drilled upright, another height or a slide of a bore from the side. Of
    `cut-otherwise` the slot or the outline as it is cut. None for what is drilled or cut on: that is where it is."""
    found = in_wood(layout, "real")
    if snag.kind == "cut-otherwise":
        cuts = [one for rows in found.cut for one in rows if one.of in snag.between and not one.can_go_on]
        if cuts:
            yield _as_cut(layout, cuts)
        return
    first = next((one for rows in (*found.drilled, *found.left) for one in rows if one.of in snag.between and not one.can_go_on), None)
    if first is None:
        return
    was, now, of = first.tick.hole, first.now, first.of
    if first.drilling.upright:
        yield Shift(of, v.sub(was.at[:2], now.at[:2]))
        return
    if abs(by := was.at[2] - now.at[2]) > SAME_HOLE:
        deep = frame(layout, tuner_of(layout, of)).origin[2]  # of the axis: a screw may stand above or below it
        yield Change(("tuners", of, "place", "depth"), deep, deep + by)
    elif (by := _slid(layout, of, first.drilling.id, was, now)) is not None:
        yield Slide(of, by)


def _as_cut(layout: Headstock, rows: list[CutOff]) -> AsCut:
    """What the cuts of a slot, or of the outline, made of it, what is cut to the line before what only cleared the waste."""
    last = min(rows, key=lambda one: one.tick.cut.light)
    if last.of == OUTLINE:
        return AsCut(OUTLINE, last.tick.cut.shape, None, None)
    slot = next(slot for slot in layout.slots if slot.id == last.of)
    deeper = [one.tick.cut.ends for one in rows if one.found.floor < 0]
    depth = slot.depth if not deeper else None if None in deeper else max(deeper)
    return AsCut(slot.id, last.tick.cut.shape, depth, next((one.tick.cut.ramp for one in rows if one.tick.cut.ramp is not None), slot.ramp))


def _slid(layout: Headstock, of: str, drilling: str, was: Bored, now: Bored) -> float | None:
    """How far a side tuner slides (mm, towards the tip) until its bore goes in where it was drilled; None where it never does."""
    by = lacks = was.at[1] - now.at[1]
    try:
        for _ in range(_ROUNDS):
            slid = carried_out(layout, Slide(of, by))
            there = next((found for hole in holes(slid) for one in hole.drillings if one.id == drilling and (found := bored(one))), None)
            if there is None:
                return None
            lacks = was.at[1] - there.at[1]
            if abs(lacks) <= TOUCH:
                return by
            by += lacks * (by / (by - lacks) if abs(by - lacks) > TOUCH else 1.0)
    except GeometryError:
        return None
    return by if abs(lacks) <= SAME_HOLE else None
