"""Papers, template, ears and plugs as they were set down by the job book, held against what the drawing has now."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from msgspec import Struct
from msgspec.structs import replace

from geometry.checks.memo import Memo
from geometry.checks.said import length
from geometry.checks.snags import FACE, TIGHT, Snag
from geometry.checks.words import few, first
from geometry.errors import GeometryError
from geometry.layout.blank import Blank
from geometry.layout.book import Done, Spot, Task
from geometry.layout.headstock import Headstock
from geometry.layout.names import OUTLINE
from geometry.layout.outline import Loop
from geometry.layout.shop import Rack, Template
from geometry.layout.slots import Slot
from geometry.routing.follower import template_offset
from geometry.saying import count, say
from geometry.solids.drilling import Hole
from geometry.solids.spots import Places, all_there, by_place, crosses_of, glue_line, locates, off_corner, plugs
from geometry.vectors import Vec3

NAMED = 3
"""Features that a sentence names; the others are counted."""


class _Feature(Protocol):
    @property
    def id(self) -> str: ...
    @property
    def holes(self) -> tuple[Hole, ...]: ...


class Misplaced(Struct, frozen=True, eq=False):
    """Something that was set down otherwise than it is drawn."""

    tick: Done
    of: tuple[str, ...]
    """whose spots were not set down where they are drawn; () where the drawing has nothing of it"""
    where: Vec3
    text: str

    @property
    def can_go_on(self) -> bool:
        """Nothing is cut yet: it can be set down anew."""
        return True


class SetDown(Struct, frozen=True, eq=False):
    """What of all that was set down on a piece the drawing has otherwise."""

    astray: tuple[Misplaced, ...]
    again: tuple[tuple[Task, Done], ...]
    """ears that are called otherwise now: as what they are glued on now"""


def held_against(layout: Headstock, items: Sequence[_Feature], ticks: tuple[Done, ...], drilled: frozenset[str], cut: frozenset[str],
                 routed: frozenset[str], memo: Memo) -> SetDown:
    """`drilled` are ids of drillings that are in the wood, `cut` those of slots, `routed` those that are cut to their line and need no
    template any more: nothing of them has to be set down."""
    found: list[Misplaced] = []
    again: list[tuple[Task, Done]] = []
    lines = {ear.id: memo.of(glue_line, layout.blank, ear) for ear in layout.ears}
    for one in ticks:
        had = memo.of(by_place, one.spots)
        papers = one.task.operation == "mark"
        if papers or one.task.operation == "template":
            shapes = [(slot.id, slot) for slot in layout.to_rout] + ([] if papers else [(OUTLINE, layout.outline)])
            lies = (_off_line,) if papers else (_off_template, layout.template, layout.rack)
            off = [pair for id, shape in shapes if id not in (cut if papers else routed) for pair in memo.of(*lies, id, shape, had)]
            off += [pair for pairs in memo.each(_not_pricked if papers else _no_pin, items, had, drilled) for pair in pairs]
            if off:
                found.append(memo.of(_of_paper, layout.blank, one, *off))
            continue
        if one.task.operation == "plug":
            if off := [(id, spot) for id, spot in memo.of(plugs, layout.holes) if not all_there((spot,), had)]:
                found.append(memo.of(_of_plugs, layout.blank, one, *off))
            continue
        id = _ear(one)
        if id in lines and all_there(lines[id], had):
            continue
        other = next((name for name, line in lines.items() if line and all_there(line, had)), None)
        if other is None:
            found.append(memo.of(_of_ear, layout.blank, one, lines.get(id, ())))
        else:
            again.append(memo.of(_as_glued, one, other))
    taken = {task.operation for task, _ in again}  # what is drawn under that name is another that is glued on
    return SetDown(tuple([memo.of(_of_ear, layout.blank, one.tick, ()) if one.tick.task.operation in taken else one for one in found]), tuple(again))


def snags(*found: Misplaced) -> tuple[Snag, ...]:
    """One for each step whose spots are not those of the drawing."""
    return tuple(map(_snag, found))


def _snag(one: Misplaced) -> Snag:
    if one.tick.task.operation == "mark":
        return Snag("marked-otherwise", TIGHT, one.of, one.where, None, None, one.text,
                    say("Paste new papers, or mark by hand what lies elsewhere, and tick their step again; or put the drawing back."))
    if one.tick.task.operation == "template":
        return Snag("marked-otherwise", TIGHT, one.of, one.where, None, None, one.text,
                    say("Make the template anew and tick its step again; or put the drawing back."))
    if one.tick.task.operation == "plug":
        return Snag("glued-otherwise", TIGHT, one.of, one.where, None, None, one.text,
                    say("Plug it now and tick the step again; or put the drawing back."))
    return Snag("glued-otherwise", TIGHT, one.of or (FACE,), one.where, None, None, one.text,
                say("Draw it as it is glued on; or, where it is glued on anew, tick its step again."))


def _place(blank: Blank, spot: Spot) -> Vec3:
    one, other = spot.at
    if spot.surface in ("face", "back"):
        return one, other, 0.0 if spot.surface == "face" else blank.thickness
    return blank.edge_x("bass" if spot.surface == "bass edge" else "treble"), one, other


def _not_pricked(item: _Feature, had: Places, drilled: frozenset[str]) -> tuple[tuple[str, Spot], ...]:
    open_now = [d for hole in item.holes for d in hole.drillings if not d.there and d.id not in drilled]
    off = [spot for spot in crosses_of(open_now) if not all_there((spot,), had)]
    return ((item.id, off[0]),) if off else ()


def _no_pin(item: _Feature, had: Places, drilled: frozenset[str]) -> tuple[tuple[str, Spot], ...]:
    return _not_pricked(item, had, drilled) if any(map(locates, item.holes)) else ()


def _off_template(template: Template, rack: Rack, id: str, shape: Slot | Loop, had: Places) -> tuple[tuple[str, Spot], ...]:
    try:
        return _off_line(id, shape, had, template_offset(template, rack))
    except GeometryError:  # with no bit that follows it, it has no lines at all: the sheets tell that
        return ()


def _off_line(id: str, shape: Slot | Loop, had: Places, offset: float = 0.0) -> tuple[tuple[str, Spot], ...]:
    off = off_corner(shape, had, offset)
    return ((id, off),) if off is not None else ()


def _of_paper(blank: Blank, one: Done, *off: tuple[str, Spot]) -> Misplaced:
    names = few([say("the outline") if id == OUTLINE else id for id, _ in off], NAMED)
    text = (count(len(off), "The papers that are pasted on (job book) do not have {names} where it is drawn now.",
                  "The papers that are pasted on (job book) do not have {names} where they are drawn now.", names=names)
            if one.task.operation == "mark" else
            count(len(off), "The template that is made (job book) does not have {names} as it is planned now.",
                  "The template that is made (job book) does not have {names} as they are planned now.", names=names))
    return Misplaced(one, tuple([id for id, _ in off]), _place(blank, off[0][1]), text)


def _of_plugs(blank: Blank, one: Done, *off: tuple[str, Spot]) -> Misplaced:
    text = count(len(off), "When the old holes were plugged (job book), {names} was not plugged where it is drawn now.",
                 "When the old holes were plugged (job book), {names} were not plugged where they are drawn now.",
                 names=few([id for id, _ in off], NAMED))
    return Misplaced(one, tuple([id for id, _ in off]), _place(blank, off[0][1]), text)


def _of_ear(blank: Blank, one: Done, now: tuple[Spot, ...]) -> Misplaced:
    id = _ear(one)
    text = (say("{ear} is glued on with its glue line {was} (job book); the drawing now says {now}.", ear=first(id), was=_line(one.spots), now=_line(now))
            if now else
            say("{ear} is glued on with its glue line {was} (job book), and the drawing has it no more.", ear=first(id), was=_line(one.spots)))
    return Misplaced(one, (id,) if now else (), _place(blank, one.spots[0]), text)


def _as_glued(one: Done, ear: str) -> tuple[Task, Done]:
    return replace(one.task, operation=f"glue ear {ear}", features=(ear,)), one


def _ear(one: Done) -> str:
    return one.task.operation.removeprefix("glue ear ")


def _line(spots: Sequence[Spot]) -> str:
    return say("at x {x} mm, from y {y0} mm to {y1} mm", x=length(spots[0].at[0], 2), y0=length(spots[0].at[1], 2), y1=length(spots[-1].at[1], 2))
