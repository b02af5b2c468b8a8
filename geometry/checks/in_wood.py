"""What is drilled and cut of the piece on the bench, by the job book, held against what the drawing has now.

A tick, or the time of a step that is begun, goes by its operation's name, and where that is another hole now, by the hole itself: the wood does not turn over with a
mirror image, nor does it know what a hole is called.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Sized
from functools import cached_property
from typing import TypeVar

from msgspec import Struct
from msgspec.structs import replace

from geometry.checks.in_wood_words import hole_place, told, told_cut
from geometry.checks.memo import Memo, together
from geometry.checks.said import length
from geometry.checks.scene import Scene
from geometry.checks.set_down import Misplaced, held_against
from geometry.checks.set_down import snags as of_set_down
from geometry.checks.snags import FACE, SPOILS, TIGHT, Snag
from geometry.checks.words import first, name
from geometry.errors import GeometryError
from geometry.layout.book import Book, Bored, Clock, Done, Piece, Task, Time
from geometry.layout.drilled import cut_as, cut_of, drilled_as, drilling_of
from geometry.layout.headstock import Headstock
from geometry.layout.names import OUTLINE
from geometry.layout.outline import Loop
from geometry.layout.slots import Slot, shape_path
from geometry.saying import count, say
from geometry.solids.cut_shape import Astray, astray
from geometry.solids.drilling import Drilling, Hole, holes
from geometry.solids.in_wood import bored, deeper, on_axis, same_hole
from geometry.solids.spots import SET_DOWN
from geometry.tolerance import SAME_HOLE

Tick = Done | Time
_Entry = TypeVar("_Entry", Done, Time, Clock)


class Feature(Struct, frozen=True, eq=False):
    """What has holes: of an Item of the checks as much as is asked for here."""

    id: str
    holes: tuple[Hole, ...]


class Drilled(Struct, frozen=True, eq=False):
    """A hole that is drilled otherwise than it is drawn."""

    tick: Tick
    of: str
    drilling: Drilling
    now: Bored

    @property
    def can_go_on(self) -> bool:
        """Whether drilling on at the same place makes one hole of the other: nothing of it is smaller."""
        was, now = self.tick.hole, self.now
        return on_axis(was, now) and now.diameter >= was.diameter - SAME_HOLE and now.through >= was.through and deeper(was, now) >= -SAME_HOLE

    @property
    def text(self) -> str:
        """What is drilled, and what the drawing says."""
        return told(name(self.drilling), self.tick.hole, self.now)


class CutOff(Struct, frozen=True, eq=False):
    """A slot, or the outline, that is cut otherwise than it is drawn."""

    tick: Tick
    of: str
    now: Slot | Loop
    found: Astray
    thickness: float

    @property
    def can_go_on(self) -> bool:
        """Whether cutting on makes one of the other."""
        return self.found.can_go_on

    @property
    def text(self) -> str:
        """What is cut, and how far off."""
        return told_cut(self.of, self.tick.cut, self.now, self.found, self.thickness)


class InWood(Struct, frozen=True, eq=False, dict=True):
    """What the drawing has of all that is ticked off on a piece with what it made."""

    ticks: tuple[Tick, ...]
    drilled: tuple[tuple[Drilled, ...], ...]
    """otherwise than drawn, feature by feature"""
    cut: tuple[tuple[CutOff, ...], ...]
    gone: tuple[Tick, ...]
    """what the drawing has nowhere"""
    again: tuple[tuple[Task, Tick], ...]
    """what it has under another name than the tick's: as what it is done now"""
    laid: tuple[Done, ...] = ()
    """ticks of papers, template, ears and plugs that know what they set down"""
    misplaced: tuple[Misplaced, ...] = ()
    """of these what the drawing has otherwise"""
    left: tuple[tuple[Drilled, ...], ...] = ()
    """bores that were drilled as the hole of a pin, which is where it was drilled, and that are drawn elsewhere since"""

    @cached_property
    def strayed(self) -> frozenset[str]:
        """Features of the layout, and its outline, of which something is made otherwise than it is drawn; what is only marked so is not."""
        return frozenset((*(one.of for rows in (*self.drilled, *self.cut, *self.left) for one in rows),
                          *(id for one in self.misplaced for id in one.of if id in one.tick.task.features)))

    @cached_property
    def held(self) -> dict[str, Done]:
        """By operation, what is drawn as a tick knows that it was made."""
        away = {id(one.tick) for one in self._astray} | {id(one) for one in self.gone} | {id(one) for _, one in self.again}
        return ({one.task.operation: one for one in (*self.ticks, *self.laid) if isinstance(one, Done) and id(one) not in away}
                | {task.operation: one for task, one in self.again if isinstance(one, Done)})

    @cached_property
    def otherwise(self) -> dict[str, str]:
        """By operation, a sentence about what is made otherwise than it is drawn; what is drawn nowhere is not among it."""
        return {one.tick.task.operation: one.text for one in self._astray if one.of}

    @cached_property
    def to_go_on(self) -> frozenset[str]:
        """Operations of these that make of it what is drawn when they are gone on with."""
        return frozenset(one.tick.task.operation for one in self._astray if one.of and one.can_go_on)

    @cached_property
    def _astray(self) -> tuple[Drilled | CutOff | Misplaced, ...]:
        return tuple([one for rows in (*self.drilled, *self.cut, self.misplaced) for one in rows])


_NOTHING = InWood((), (), (), (), ())
_last: tuple[Headstock | None, Piece, InWood] = (None, "real", _NOTHING)
"""The layout asked for last, which keeps its identity from being given to another, and what was found; swapped as one."""


def in_wood(layout: Headstock, piece: Piece) -> InWood:
    """What a layout has of all that is made of a piece; that of the layout asked for last is remembered. Nothing where its shapes make no sense."""
    global _last
    known, of, found = _last
    if known is not layout or of != piece:
        found = _in_wood(layout, piece)
        _last = layout, piece, found
    return found


def _in_wood(layout: Headstock, piece: Piece) -> InWood:
    if not any([one.hole or one.cut for one in layout.book.times]) and not any([one.hole or one.cut or one.spots for one in layout.book.done]):
        return _NOTHING
    of: dict[str, list[Hole]] = {}
    try:
        for hole in holes(layout):
            of.setdefault(hole.of, []).append(hole)
    except GeometryError:
        return _NOTHING
    return _held_against(layout, [Feature(id, tuple(own)) for id, own in of.items()], piece, Memo())


def called_now(layout: Headstock, piece: Piece) -> Book:
    """The book with what is done, timed and measured of a piece under the names that the drawing has now for what was made, so that whoever goes
    by names meets the right one."""
    return renamed(layout.book, in_wood(layout, piece).again, piece)


def renamed(book: Book, again: tuple[tuple[Task, Tick], ...], piece: Piece) -> Book:
    """The same by InWood.again. What went by one of these names and is in the drawing no more takes one of its sort that has become free. The very
    same book where nothing is called otherwise."""
    if not again:
        return book
    pairs: dict[str, tuple[Task, Task]] = {}
    taken: set[str] = set()
    for task, one in again:
        if one.task.operation not in pairs and task.operation not in taken:
            pairs[one.task.operation] = one.task, task
            taken.add(task.operation)
    moves = list(pairs.values())
    for was, task in pairs.values():
        if was.operation not in taken:  # free now: for what went by the name at the other end of the chain that begins here
            while task.operation in pairs:
                task = pairs[task.operation][1]
            moves.append((task, was))
    new = {was.operation: task for was, task in moves}
    bores = {drilling_of(was): drilling_of(task) for was, task in moves}

    def called(one: _Entry) -> _Entry:
        task = new.get(one.task.operation) if one.piece == piece else None
        return one if task is None else replace(one, task=replace(one.task, operation=task.operation, features=task.features))

    readings = tuple([replace(one, drilling=bores.get(one.drilling, one.drilling), other=bores.get(one.other, one.other)) if one.piece == piece else one
                      for one in book.readings])
    return replace(book, done=tuple(map(called, book.done)), times=tuple(map(called, book.times)), clock=book.clock and called(book.clock),
                   readings=readings)


def by_the_wood(layout: Headstock, piece: Piece = "real") -> Headstock:
    """The layout with what is made of a piece under the names of now: for whoever asks by name what stays where it is, or what was measured."""
    book = called_now(layout, piece)
    return layout if book is layout.book else replace(layout, book=book)


def strays(layout: Headstock, id: str) -> bool:
    """Whether a feature of the layout, or its outline, is drilled or cut otherwise in the real piece."""
    return id in in_wood(layout, "real").strayed


def of_scene(scene: Scene) -> InWood:
    """What the drawing has of all that is in the real piece."""
    return _held_against(scene.layout, scene.items, "real", scene.memo)


def snags(scene: Scene, found: InWood) -> Iterator[Snag]:
    """A snag for every feature of which something is in the wood and is otherwise in the drawing, or not at all."""
    for rows in (*found.drilled, *found.left):
        yield scene.memo.of(_drilled_otherwise, *rows)
    for rows in found.cut:
        yield scene.memo.of(_cut_otherwise, *rows)
    if found.gone:
        yield from scene.memo.of(_gone, *found.gone)
    if found.misplaced:
        yield from scene.memo.of(of_set_down, *found.misplaced)


# ---- the ticks and the drawing --------------------------------------------
def _held_against(layout: Headstock, items: Sequence[Feature], piece: Piece, memo: Memo) -> InWood:
    made, laid = _as_made(layout, items, piece, memo), memo.of(_laid, layout.book.done, piece)
    if not laid:
        return made
    found = held_against(layout, items, laid, *memo.of(_settled, layout.book.done, piece, made.ticks, made.again), memo)
    return replace(made, laid=laid, misplaced=found.astray, again=memo.of(together, *made.again, *found.again))


def _laid(done: tuple[Done, ...], piece: Piece) -> tuple[Done, ...]:
    return tuple([one for one in done if one.piece == piece and one.spots and one.task.operation.startswith(SET_DOWN)])


def _settled(done: tuple[Done, ...], piece: Piece, ticks: tuple[Tick, ...],
             again: tuple[tuple[Task, Tick], ...]) -> tuple[frozenset[str], frozenset[str], frozenset[str]]:
    """Drillings that are made, slots that are cut at, and those, with the outline, that are cut to their line, all by their names of now."""
    now = {id(one): task for task, one in again}
    tasks = [now.get(id(one), one.task) for one in done if one.piece == piece]
    cuts = [(cut_of(now.get(id(one), one.task)), one.cut) for one in ticks if one.cut]
    return (frozenset(drilling for task in tasks if (drilling := drilling_of(task))), frozenset(of for of, _ in cuts),
            frozenset(of for of, cut in cuts if not cut.light and cut.ramp is None))


def _as_made(layout: Headstock, items: Sequence[Feature], piece: Piece, memo: Memo) -> InWood:
    ticks, drilled, shared, cut = memo.of(_ticks, layout.book.done, layout.book.times, piece)
    if not ticks:
        return _NOTHING
    thickness = layout.blank.thickness
    bores = [rows for rows in memo.each(_strayed, items, drilled) if rows]
    drawn: dict[str, Slot | Loop] = {slot.id: slot for slot in layout.slots} | {OUTLINE: layout.outline} if cut else {}
    cuts = [rows for id, own in cut.items() if id in drawn and (rows := memo.of(_off, id, drawn[id], thickness, *own))]
    known = {drilling.id for item in items for hole in item.holes for drilling in hole.drillings} if drilled else ()
    gone = [one for id, one in drilled.items() if id not in known]
    gone += [one for id, own in cut.items() if id not in drawn for one in own]
    left = [rows for rows in memo.each(_left, items, shared, drilled) if rows] if shared else []
    if not (bores or cuts or gone):
        return InWood(ticks, (), (), (), (), left=tuple(left))
    lost = memo.of(together, *[one.tick for rows in (*bores, *cuts) for one in rows], *gone)
    again = [pair for pairs in memo.each(_as_drilled, items, lost) for pair in pairs]
    again += [pair for id, one in drawn.items() if isinstance(one, Slot) for pair in memo.of(_as_cut, id, one, thickness, lost)]
    if again:
        found, taken = {id(one) for _, one in again}, {task.operation for task, _ in again}
        gone = [one for one in gone if id(one) not in found]
        left = [rows for rows in left if id(rows[0].tick) not in found]
        for rows in (*bores, *cuts):  # what is drawn there now is another that is made
            gone += [one.tick for one in rows if id(one.tick) not in found and one.tick.task.operation in taken]
        bores, cuts = ([own for rows in some if (own := tuple([
            one for one in rows if id(one.tick) not in found and one.tick.task.operation not in taken]))] for some in (bores, cuts))
    return InWood(ticks, tuple(bores), tuple(cuts), tuple(gone), memo.of(together, *again), left=tuple(left))


def _ticks(done: tuple[Done, ...], times: tuple[Time, ...], piece: Piece,
           ) -> tuple[tuple[Tick, ...], dict[str, Tick], dict[str, Tick], dict[str, tuple[Tick, ...]]]:
    """The ticks of a piece that know what they made, and the times of what is not ticked off; by drilling those that drilled, by
    feature those that drilled a pin's hole that was its bore as well, by feature those that cut."""
    ticked = {one.task.operation for one in done if one.piece == piece}
    begun = [one for one in times if one.minutes > 0 and one.task.operation not in ticked]
    ticks = [one for one in (*done, *begun) if one.piece == piece and (one.hole or one.cut)]
    drilled = {id: one for one in ticks if one.hole and (id := drilling_of(one.task))}
    shared = {id: one for one in drilled.values() for id in one.task.features[1:]}
    cut: dict[str, tuple[Tick, ...]] = {}
    for one in ticks:
        if one.cut:
            cut[cut_of(one.task)] = (*cut.get(cut_of(one.task), ()), one)
    return (*drilled.values(), *(one for own in cut.values() for one in own)), drilled, shared, cut


def _strayed(item: Feature, ticks: dict[str, Tick]) -> tuple[Drilled, ...]:
    found = []
    for drilling in [drilling for hole in item.holes for drilling in hole.drillings if drilling.id in ticks]:
        tick, now = ticks[drilling.id], bored(drilling)
        if now is not None and not same_hole(tick.hole, now):
            found.append(Drilled(tick, item.id, drilling, now))
    return tuple(found)


def _left(item: Feature, shared: dict[str, Tick], drilled: dict[str, Tick]) -> tuple[Drilled, ...]:
    """The bore that was drilled as a pin's hole and is none of this feature's now, nor becomes one when it is drilled on; () where
    that has been drilled since."""
    tick = shared.get(item.id)
    rows = [] if tick is None else [Drilled(tick, item.id, drilling, now) for hole in item.holes for drilling in hole.drillings
                                    if drilling.upright and drilling.through and (now := bored(drilling)) is not None]
    if any(one.can_go_on or one.drilling.id in drilled for one in rows):
        return ()
    return tuple(sorted(rows, key=lambda one: abs(one.now.diameter - tick.hole.diameter))[:1])


def _off(id: str, now: Slot | Loop, thickness: float, *ticks: Tick) -> tuple[CutOff, ...]:
    return tuple([CutOff(tick, id, now, found, thickness) for tick in ticks if not (found := astray(tick.cut, now, thickness)).same])


def _as_drilled(item: Feature, lost: tuple[Tick, ...]) -> tuple[tuple[Task, Tick], ...]:
    """The ticks, of those that are not what their names say, that drilled a hole of a feature."""
    bores = [(drilling.id, drilling.role == "locating", bored(drilling)) for hole in item.holes for drilling in hole.drillings]
    return tuple([(_task(one, drilled_as(one.task, id, pin), item.id), one) for one in lost if one.hole
                  for id, pin, now in bores if now is not None and abs(now.diameter - one.hole.diameter) <= SAME_HOLE and same_hole(one.hole, now)])


def _as_cut(id: str, slot: Slot, thickness: float, lost: tuple[Tick, ...]) -> tuple[tuple[Task, Tick], ...]:
    """As `_as_drilled`, of a slot."""
    found = []
    for one in lost:
        if one.cut and one.task.features and _near(one.cut.shape, slot.shape) and astray(one.cut, slot, thickness).same:
            found.append((_task(one, cut_as(one.task, id), id), one))
    return tuple(found)


def _task(tick: Tick, operation: str, feature: str) -> Task:
    return replace(tick.task, operation=operation, features=(feature,))


def _near(one: object, other: object) -> bool:
    """Whether two shapes may be one, told by the boxes about them."""
    boxes = shape_path(one).box, shape_path(other).box
    return all(abs(a - b) <= SAME_HOLE for a, b in zip(*boxes, strict=True))


# ---- what is told -----------------------------------------------------------
def _drilled_otherwise(*rows: Drilled) -> Snag:
    worst = min(rows, key=lambda one: one.can_go_on)
    return Snag("drilled-otherwise", TIGHT if worst.can_go_on else SPOILS, (worst.of,), worst.tick.hole.at, None, None, _with_others(worst.text, rows),
                say("Drill it on to what the drawing says, unless it came out so, and tick its step again; or put the drawing back.")
                if worst.can_go_on else
                say("Put the drawing back. Or tick its step again: at once if it came out as the drawing has it now, else when it is plugged "
                    "and drilled anew."))


def _cut_otherwise(*rows: CutOff) -> Snag:
    """What is cut to the line tells more than what only cleared the waste; of these, the first step."""
    worst = min(rows, key=lambda one: (one.can_go_on, -one.found.gone[0], -one.found.left[0], one.tick.cut.light))
    found = worst.found
    x, y = found.gone[1] if found.gone[0] else found.left[1] if found.left[0] else shape_path(worst.tick.cut.shape).start
    return Snag("cut-otherwise", TIGHT if worst.can_go_on else SPOILS, (worst.of,), (x, y, 0.0), None, None, worst.text,
                say("Cut it on to what the drawing says, unless it came out so, and tick its steps again; or put the drawing back.")
                if worst.can_go_on else
                say("Put the drawing back. Or tick its steps again: at once if it came out as the drawing has it now, else when wood is glued "
                    "on and it is cut anew.") if worst.of == OUTLINE else
                say("Put the drawing back. Or tick its steps again: at once if it came out as the drawing has it now, else when wood is let "
                    "in and it is cut anew."))


def _gone(*done: Tick) -> tuple[Snag, ...]:
    """Of each feature that has them, what is made and is nowhere in the drawing."""
    found: dict[tuple[str, bool], list[Tick]] = {}
    for one in done:
        found.setdefault((cut_of(one.task), one.hole is not None), []).append(one)
    return tuple([_drilled_and_gone(ones) if hole else _cut_and_gone(id, ones) for (id, hole), ones in found.items()])


def _drilled_and_gone(ones: list[Tick]) -> Snag:
    return Snag("drilled-and-gone", SPOILS, (FACE,), ones[0].hole.at, None, None,
                _with_others(say("The drawing has no hole any more for “{title}”, which is drilled {was} (job book).",
                                 title=ones[0].task.title or ones[0].task.operation, was=hole_place(ones[0].hole)), ones),
                say("Take back what took it out of the drawing; or plug the hole and strike its tick out in the job book."))


def _cut_and_gone(id: str, ones: list[Tick]) -> Snag:
    x0, y0, x1, y1 = shape_path(ones[0].cut.shape).box
    return Snag("cut-and-gone", SPOILS, (FACE,), ((x0 + x1) / 2, (y0 + y1) / 2, 0.0), None, None,
                say("{slot} is cut at x {x0} mm to {x1} mm, y {y0} mm to {y1} mm (job book), and the drawing has it no more.", slot=first(id),
                    x0=length(x0, 2), x1=length(x1, 2), y0=length(y0, 2), y1=length(y1, 2)),
                say("Take back what took it out of the drawing; or let wood into it and strike its ticks out in the job book."))


def _with_others(text: str, all_of_them: Sized) -> str:
    """The sentence about the first of some holes of a feature, and how many others there are."""
    more = len(all_of_them) - 1
    return text if not more else f"{text} {count(more, 'So it is with {n} more hole there.', 'So it is with {n} more holes there.')}"
