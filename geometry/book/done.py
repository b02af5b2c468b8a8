"""Which steps are done on the piece on the bench, so that a list made later still says so."""

from __future__ import annotations

import math
from collections.abc import Iterable

from msgspec.structs import replace

from geometry.checks.in_wood import in_wood
from geometry.checks.in_wood_words import told_pass
from geometry.errors import GeometryError
from geometry.layout import NOTHING, Book, Done, DrawnSlot, Headstock, Made, Shaped, Spot, Task
from geometry.layout.names import OUTLINE
from geometry.routing.corners import goes_as_far
from geometry.routing.depth import LIGHT
from geometry.routing.follower import template_offset
from geometry.routing.waste import CLEAR
from geometry.sequence import Operation
from geometry.solids.cut_shape import reach
from geometry.solids.in_wood import bored
from geometry.solids.spots import SET_DOWN, set_down
from geometry.tolerance import SAME_HOLE, TOUCH


def ticked(book: Book) -> frozenset[str]:
    """Operations under whose names something is ticked off on the piece on the bench, whatever the drawing has there now."""
    return frozenset(one.task.operation for one in book.done if one.piece == book.piece)


def done_steps(layout: Headstock, ops: Iterable[Operation] = ()) -> dict[str, Done]:
    """By operation, the tick that says that it is done on the piece on the bench as the layout has it: what was drilled or cut
    otherwise is not, and what is called otherwise since is. Of the operations that are planned now, passes that go deeper than what was
    routed are not, and whatever of which all wood is routed away is, by whatever passes. A tick of which is not known what it made counts
    as it stands."""
    found = in_wood(layout, layout.book.piece)
    known = {id(one) for one in (*found.ticks, *found.laid)}
    stand = {one.task.operation: one for one in layout.book.done if one.piece == layout.book.piece and id(one) not in known} | found.held
    away = found.otherwise.keys()
    for op, _, by in _cuts(layout, ops):
        if by is None and op.kind in _ROUTED and op.id in found.held:
            del stand[op.id]
        elif by is not None and op.id not in away:
            stand.setdefault(op.id, by)
    return stand


def otherwise(layout: Headstock) -> dict[str, str]:
    """Operations that are ticked off on the piece on the bench and make something else now, each with a sentence that tells both and
    keeps its lengths (geometry.checks.said)."""
    return in_wood(layout, layout.book.piece).otherwise


def not_so_deep(layout: Headstock, ops: Iterable[Operation]) -> dict[str, str]:
    """Passes of the plan of now that go deeper, or farther into the corners, than what was routed under their names, by a plan with other
    bits; each with a sentence as in `otherwise`."""
    held = in_wood(layout, layout.book.piece).held
    return {op.id: told_pass(op.called, was := held[op.id].cut, now, not _into_corners(layout, op.features[0], was, now))
            for op, now, by in _cuts(layout, ops) if by is None and op.kind in _ROUTED and op.id in held}


_ROUTED = ("rout", "rout outline")


def _cuts(layout: Headstock, ops: Iterable[Operation]) -> list[tuple[Operation, Shaped, Done | None]]:
    """The operations that cut slots and outline where something is routed already, as it is drawn now: what each cuts, and the last pass
    by which all that it would take is gone; None where some of it is there."""
    routed: dict[str, list[Done]] = {}
    for operation, one in in_wood(layout, layout.book.piece).held.items():
        if one.cut is not None and operation.startswith("rout "):
            # Its name of now: a slot may be called otherwise since.
            routed.setdefault(operation.removeprefix("rout ").rpartition(" ")[0] or OUTLINE, []).append(one)
    found = []
    for op in ops if routed else ():
        if op.kind != "ramp" and op.features and op.features[0] in routed and (now := made_by(layout, op).cut) is not None:
            cuts = routed[op.features[0]]
            into = [one for one in cuts if _into_corners(layout, op.features[0], one.cut, now)]
            whole = into if now.corners else [one for one in cuts if not one.cut.corners]
            found.append((op, now, whole[-1] if _all_gone(now, whole) and _all_gone(now, into) else None))
    return found


def _all_gone(now: Shaped, cuts: list[Done]) -> bool:
    return bool(cuts) and reach(now.begins, [one.cut for one in cuts]) >= (math.inf if now.ends is None else now.ends - SAME_HOLE)


def _into_corners(layout: Headstock, of: str, was: Shaped, now: Shaped) -> bool:
    """Whether a pass went as far into the corners of a slot, or the outline, as another would; where it is not known which cutter either
    has, of what it is told that it goes there."""
    if was.cutter is None or now.cutter is None:
        return was.corners == now.corners
    return goes_as_far(layout, of, was.cutter, now.cutter)


def made_by(layout: Headstock, op: Operation) -> Made:
    """What an operation of the layout leaves in the wood. Nothing where it drills no hole of its own (what it opens a bore to is none),
    cuts neither slot nor outline, and is no step whose spots the job book keeps."""
    if op.kind in SET_DOWN:
        return Made(spots=_spots(layout, op))
    if op.kind != "final diameter" and op.drillings and op.id.endswith(f" {op.drillings[0].id}"):
        return Made(hole=bored(op.drillings[0]))
    thick = layout.blank.thickness
    begins = 0.0 if op.cut is None else op.cut.start
    # What begins at the back, or runs through, leaves it open there.
    ends = None if op.cut is None or op.cut.end >= thick - TOUCH else op.cut.end
    corners, cutter = (False, None) if op.cut is None else (op.cut.corners, op.cut.cutter)
    if op.kind in ("cut outline", "rout outline"):
        return Made(cut=Shaped(shape=DrawnSlot(loop=layout.outline), begins=begins, ends=ends, light=LIGHT if op.kind == "cut outline" else 0.0,
                               corners=corners, cutter=cutter))
    slot = next((slot for slot in layout.slots if op.kind in ("waste holes", "saw", "rout", "ramp") and slot.id in op.features), None)
    if slot is None:
        return NOTHING
    if op.kind == "ramp":
        return Made(cut=Shaped(shape=slot.shape, ramp=slot.ramp))
    if not slot.through(thick):
        ends = op.stop if op.cut is None else min(op.cut.end, slot.depth)
    light = {"waste holes": CLEAR, "saw": LIGHT}.get(op.kind, 0.0)
    return Made(cut=Shaped(shape=slot.shape, begins=begins, ends=ends, floor=not light and ends is not None and ends >= slot.floor(thick) - TOUCH, light=light,
                           corners=corners, cutter=cutter))


def _spots(layout: Headstock, op: Operation) -> tuple[Spot, ...]:
    """None of a template for which there is no follower: it has no lines."""
    try:
        return set_down(layout, op.kind, op.features, template_offset(layout.template, layout.rack) if op.kind == "template" else 0.0)
    except GeometryError:
        return ()


def begun_steps(book: Book) -> frozenset[str]:
    """Operations that took time on the piece on the bench and are not ticked off."""
    timed = {time.task.operation for time in book.times if time.piece == book.piece and time.minutes > 0}
    if book.clock is not None and book.clock.piece == book.piece:
        timed.add(book.clock.task.operation)
    return frozenset(timed - ticked(book))


def tick_off(book: Book, task: Task, number: int, made: Made = NOTHING) -> Book:
    """The step done on the piece on the bench, with what it made. It keeps the number that it was ticked off with first; ticked again
    it has what is made now."""
    one = Done(piece=book.piece, task=task, number=number, hole=made.hole, cut=made.cut, spots=made.spots)
    at = next((i for i, old in enumerate(book.done) if (old.piece, old.task.operation) == (book.piece, task.operation)), None)
    if at is None:
        return replace(book, done=(*book.done, one))
    if made == NOTHING or (book.done[at].hole, book.done[at].cut, book.done[at].spots) == (made.hole, made.cut, made.spots):
        return book
    return replace(book, done=(*book.done[:at], replace(one, number=book.done[at].number), *book.done[at + 1:]))


def open_again(book: Book, operation: str) -> Book:
    """The step not done on the piece on the bench."""
    return replace(book, done=tuple(one for one in book.done if (one.piece, one.task.operation) != (book.piece, operation)))
