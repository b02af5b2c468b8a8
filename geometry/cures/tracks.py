"""The ways in which something could give: families of moves with one amount each, the likely ones first."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator

from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks import Snag
from geometry.checks.moves import Change, Move, Ramped, Shift, Slide, Stretch, Swap, Wind
from geometry.checks.snags import BACK, FACE, TEMPLATE
from geometry.cures.plates import may_share_a_plate
from geometry.edits.parts import FEATURE_GROUPS
from geometry.edits.twin_features import twin_feature
from geometry.errors import GeometryError
from geometry.layout import (
    OTHER,
    Ear,
    EdgeRun,
    Headstock,
    Pin,
    RowPlace,
    SingleHole,
    Slot,
    StraightSlot,
    Tuner,
    drilled,
    staying,
    staying_rows,
    worked,
)
from geometry.layout.names import OUTLINE
from geometry.layout.pin_pairs import mirroring_moves, template_pins
from geometry.solids.frames import frame
from geometry.strings.ramps import freeing_ramp
from geometry.vectors import Vec2

FARTHEST_MIRRORED = 60.0
"""mm: how far a pin may go to its place; nothing hangs on a pin"""
FARTHEST_SHIFT, FARTHEST_SLIDE, FARTHEST_CHANGE = 15.0, 30.0, 15.0
"""mm: a cure that asks for more than this is no cure"""
FARTHEST_PIN = 30.0
"""mm: a pin may go farther than what holds strings"""

_DEAR = {Pin: 0.8, SingleHole: 0.9, Tuner: 1.1, Slot: 2.0, Ear: 2.0}
"""What a millimetre of moving costs, so that of two features the lesser one gives way."""
_STRING = 0.5
"""What a millimetre that lacks costs where a string is led otherwise: less than any wood that moves."""
_SPACING, _WHOLE_ROW, _OUT_OF_ROW, _OFF_ITS_PLATE = 0.9, 0.95, 1.4, 6.0
"""A row that stays one is worth more than a tuner out of it, which costs so many times what it would by itself; most where all of the row
may share a plate, so that none can go alone."""
_LONGER = 0.5
"""An ear that becomes longer moves nothing, and is but more of the same wood."""
_EAR_FOR_A_PIN = 5.0
"""No wood is glued on for a pin that finds room elsewhere."""
_SIDE, _AXIS, _END, _WIDTH, _DEPTH, _BLANK, _PATTERN = 1.0, 1.3, 1.5, 3.0, 1.5, 1.0, 2.5
_RAMP = 0.6
"""A ramp is cut by hand when everything else is done: nothing hangs on it."""

_DEPTH_KINDS = {"too-deep": -1, "post-not-through": 1, "slot-not-reached": 1, "post-too-long": 1, "point-to-wall": -1,
                "drill-point": -1}
"""Kinds that another drilling depth cures, and whether it takes more or less."""
_BLANK_KINDS = ("blank-too-small", "no-mark", "pin-to-blank")
_STRING_KINDS = ("string-to-string", "string-to-post")
"""Kinds between two tuners that strings led otherwise cure, which leaves all wood as it is."""
_RAMP_KINDS = ("string-to-ramp", "string-to-nut-end")
_WIDER_KINDS = ("string-hole", "string-to-wall", "post-to-wall", "post-to-slot-end", "bit-too-wide", "wood-left")


_ANY = 10.0
"""mm by which two ways are compared: those that make the same move are one"""


class Track(Struct, frozen=True):
    """`make(amount)` is the move by an amount in mm above 0; `dear` weighs a mm of it against a mm of others."""

    make: Callable[[float], Move]
    dear: float
    farthest: float


def tracks(layout: Headstock, snag: Snag, mirrored: bool = False) -> list[Track]:
    """Every way in which one of the snag's features, or a number that it depends on, could give; each once.

    Two tuners of one row or of one pattern share what all of these can do. `mirrored`: what is its own mirror image stays on
    the centreline, and is pushed nowhere else.
    """
    found: list[Track] = []
    done = worked(layout.book)
    if snag.kind == "pins-askew":
        return [Track(lambda _, pin=pin, by=by: Shift(pin.id, by), _SIDE, FARTHEST_SHIFT)
                for pin, by in mirroring_moves(template_pins(layout)) if v.norm(by) <= FARTHEST_MIRRORED and pin.id not in done.drilled]
    if snag.kind in ("marked-otherwise", "glued-otherwise"):
        return []  # what is pricked or glued is where it is, and the drawing is put back by hand
    found += _row(layout, snag.between)
    if snag.kind in _STRING_KINDS:
        found += _strings(layout, *snag.between)
    for i, id in enumerate(snag.between):
        part = next((one for group in FEATURE_GROUPS for one in getattr(layout, group) if one.id == id), None)
        push = None if snag.push is None or i > 1 else v.scale(snag.push, 1.0 if i == 0 else -1.0)
        if (isinstance(part, Slot | SingleHole) and part.there or isinstance(part, Pin | SingleHole) and id in done.drilled
                or isinstance(part, Ear) and id in done.glued):
            continue  # it is where it is
        if mirrored and push is not None and part is not None and twin_feature(layout, id) == id:
            push = None  # aslant it would not go, and aside it is not moved at all
        if isinstance(part, Tuner):
            found += _tuner(layout, part, snag, push)
        elif isinstance(part, Slot):
            found += _slot(part, snag, push, id in done.cut)
            if snag.kind in _RAMP_KINDS:
                found += _ramp(layout, part)
        elif isinstance(part, Ear):
            found += _ear(part, snag)
        elif part is not None:
            found += _shifts(part, id, push)
            if isinstance(part, SingleHole) and part.depth is not None:
                found.append(Track(_to(("holes", id, "depth"), part.depth, -1), 1.0, FARTHEST_CHANGE))
    if snag.kind in _BLANK_KINDS and OUTLINE not in done.cut:
        found += [Track(_to(("blank", side), getattr(layout.blank, side), 1),
                        _EAR_FOR_A_PIN if snag.kind == "pin-to-blank" and side in OTHER else _BLANK, 4 * FARTHEST_CHANGE)
                  for side in ("bass", "treble", "tip", "behind")]
    return list({way.make(_ANY): way for way in reversed(found)}.values())[::-1]


def _row(layout: Headstock, between: tuple[str, ...]) -> Iterator[Track]:
    """A wider or closer spacing of the row that two tuners share: it stays a row. None where one of the row stays where it is."""
    rows = [tuner.place.row for tuner in layout.tuners if tuner.id in between and isinstance(tuner.place, RowPlace)]
    if len(rows) == 2 and rows[0] == rows[1] and rows[0] not in staying_rows(layout):
        spacing = layout.row(rows[0]).spacing
        for sign in (1, -1):
            yield Track(_to(("rows", rows[0], "spacing"), spacing, sign), _SPACING, FARTHEST_CHANGE)


def _whole_row(layout: Headstock, tuner: Tuner) -> Iterator[Track]:
    """All of the row of a tuner along its edge, farther in from it or nearer to it, or across and along the head where it is straight.

    Nothing where one of the row is to stay.
    """
    row = layout.row(tuner.place.row)
    if row.id in staying_rows(layout):
        return
    ends: list[tuple[tuple[str | int, ...], float]]
    if isinstance(row.run, EdgeRun):
        ends = [(("first",), row.run.first)]
        if layout.pattern(tuner.pattern).mount == "face":
            ends.append((("inset",), row.run.inset))
    else:
        ends = [(("start", axis), row.run.start[axis]) for axis in (0, 1)]
    for path, value in ends:
        for sign in (1, -1):
            yield Track(_to(("rows", row.id, "run", *path), value, sign), _WHOLE_ROW, FARTHEST_SHIFT)


def _strings(layout: Headstock, one: str, two: str) -> Iterator[Track]:
    """Each string past the other side of its post, and the posts with each other's strings; what is held keeps its string."""
    served = [tuner for tuner in map(layout.tuner, (one, two)) if tuner.string is not None and not tuner.held]
    for tuner in served:
        yield Track(lambda _, id=tuner.id: Wind(id), _STRING, math.inf)
    if len(served) == 2:
        yield Track(lambda _: Swap(one, two), _STRING, math.inf)


def _tuner(layout: Headstock, tuner: Tuner, snag: Snag, push: Vec2 | None) -> Iterator[Track]:
    pattern = layout.pattern(tuner.pattern)
    stays = tuner.id in staying(layout)
    alone = 1.0 if not isinstance(tuner.place, RowPlace) else _OFF_ITS_PLATE if may_share_a_plate(layout, tuner) else _OUT_OF_ROW
    if not stays and pattern.mount == "side":
        for sign in (1.0, -1.0):
            yield Track(lambda amount, sign=sign: Slide(tuner.id, sign * amount), alone * _SIDE, FARTHEST_SLIDE)
        z = frame(layout, tuner).origin[2]
        # Other depths than the middle cost the shared table setting: only where height is what is wrong, or last.
        dear = 1.0 if snag.kind == "cover" or {FACE, BACK} & set(snag.between) else 2 * _AXIS
        for sign in (1, -1):
            yield Track(_to(("tuners", tuner.id, "place", "depth"), z, sign), alone * dear, layout.blank.thickness / 2)
    elif not stays:
        yield from (replace(way, dear=alone * way.dear) for way in _shifts(tuner, tuner.id, push))
    if isinstance(tuner.place, RowPlace):
        yield from _whole_row(layout, tuner)
    signs = (_DEPTH_KINDS[snag.kind],) if snag.kind in _DEPTH_KINDS else (
        (-1,) if snag.kind.startswith("side-bore-to") else ())
    if any(one.pattern == pattern.id for one in layout.tuners if one.id in drilled(layout)):
        signs = tuple(sign for sign in signs if sign > 0)  # what is drilled can be drilled on, and no wood comes back
    for k, bore in enumerate(pattern.bores):
        if bore.depth is not None and (bore.role == "post" or snag.kind in ("too-deep", "drill-point")):
            for sign in signs:
                yield Track(_to(("patterns", pattern.id, "bores", k, "depth"), bore.depth, sign),
                            _SIDE if snag.kind in _DEPTH_KINDS else _PATTERN, FARTHEST_CHANGE)


def _slot(slot: Slot, snag: Snag, push: Vec2 | None, is_cut: bool) -> Iterator[Track]:
    """One that is cut in the real piece can be made longer, wider and deeper alone."""
    in_place = TEMPLATE in snag.between  # what a bit does to a slot hangs neither on where that lies nor on how long it is
    signs = (1,) if is_cut else (-1, 1)
    if not in_place and not is_cut:
        yield from _shifts(slot, slot.id, push)
    if isinstance(slot.shape, StraightSlot):
        for end in () if in_place else ("nut", "tip"):
            for sign in signs:
                yield Track(lambda amount, end=end, sign=sign: Stretch(slot.id, end, sign * amount), _END, 2 * FARTHEST_SHIFT)
        wider = 1 if snag.kind in _WIDER_KINDS else -1
        if wider in signs:
            yield Track(_to(("slots", slot.id, "shape", "width"), slot.shape.width, wider), _WIDTH, FARTHEST_CHANGE)
    if slot.depth is not None:
        for sign in signs:
            yield Track(_to(("slots", slot.id, "depth"), slot.depth, sign), _DEPTH, FARTHEST_CHANGE)


def _ramp(layout: Headstock, slot: Slot) -> Iterator[Track]:
    """The ramp that frees all strings of a slot, where one does."""
    try:
        ramp = freeing_ramp(layout, slot.id, None if slot.ramp is None else slot.ramp.width)
    except GeometryError:
        return
    if ramp is not None:
        yield Track(lambda _: Ramped(slot.id, ramp), _RAMP, math.inf)


def _ear(ear: Ear, snag: Snag) -> list[Track]:
    """One that ends too soon can be longer at either end, any other wider or narrower."""
    if snag.kind != "ear-too-short":
        return [Track(_to(("ears", ear.id, "width"), ear.width, sign), _DEAR[Ear], FARTHEST_CHANGE) for sign in (1, -1)]
    ends = sorted(("start", "end"), key=lambda end: getattr(ear, end))
    return [Track(_to(("ears", ear.id, end), getattr(ear, end), sign), _LONGER, 4 * FARTHEST_CHANGE) for end, sign in zip(ends, (-1, 1), strict=True)]


def _shifts(part: Pin | SingleHole | Tuner | Slot, id: str, push: Vec2 | None) -> Iterator[Track]:
    """Along the push and 45 degrees to either side of it, and along both axes."""
    ways = [(1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)]
    if push is not None and v.norm(push) > 1e-9:
        turn = math.atan2(push[1], push[0])
        ways = [(math.cos(turn + by), math.sin(turn + by)) for by in (0.0, math.pi / 4, -math.pi / 4)] + ways
    kept: list[Vec2] = []
    for way in ways:
        if all(v.dot(way, other) < 0.999 for other in kept):
            kept.append(way)
            yield Track(lambda amount, way=way: Shift(id, _tenths(v.scale(way, amount))), _DEAR[type(part)],
                        FARTHEST_PIN if isinstance(part, Pin) else FARTHEST_SHIFT)


def _to(path: tuple[str | int, ...], value: float, sign: int) -> Callable[[float], Move]:
    return lambda amount: Change(path, value, value + sign * amount)


def _tenths(by: Vec2) -> Vec2:
    """To tenths of a millimetre, away from zero; what is under 0.02 mm goes."""
    return tuple(0.0 if abs(c) < 0.02 else math.copysign(math.ceil(abs(c) * 10 - 1e-6) / 10, c) for c in by)
