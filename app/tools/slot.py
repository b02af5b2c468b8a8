"""Drawing a straight slot by the two centres of its round ends."""

from __future__ import annotations

from msgspec.structs import replace

from app.tools import guides, typed, words
from app.tools.hold import DEAD
from app.tools.options import Options, sound_width
from app.tools.pointer import Done, Gesture, Pointer, Shown
from app.tools.snap import Snap, Snapper, constrained
from geometry import vectors as v
from geometry.edits.copying import ON_CENTRELINE, mirror_copies
from geometry.edits.parts import new_ids
from geometry.edits.slots import add_straight_slot
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.vectors import Vec2


def draw_slot(layout: Headstock, options: Options) -> Gesture:
    """Press for one end, then for the other (or drag from one to the other).

    The slot shows at once, checks and all, as wide as `options.slot_width`.
    Shift keeps it level or in line with the first end. Typed: a place, a
    length, a length and an angle, or a width. Mirrored: a slot off the
    centreline gets its mirror image too.
    """
    snapper = Snapper(layout, options)
    first: Vec2 | None = None
    pressed: Vec2 | None = None
    pointer = yield Shown(layout, readout=say("press where one end goes"), follows=True)
    shown = Shown(layout)
    while True:
        snap = _snapped(snapper, pointer, first)
        try:
            if pointer.kind == "key" and pointer.typed:
                to = _typed(pointer, options, first, snap.point)
                if to is not None and first is None:
                    first = to
                elif to is not None:
                    return _done(layout, options, first, to)
            elif pointer.kind in ("press", "double"):
                if first is not None:
                    return _done(layout, options, first, snap.point)
                first = pressed = snap.point
            elif pointer.kind == "release" and pressed is not None:
                if v.distance(pressed, snap.point) > 2 * DEAD * pointer.mm_per_pixel:
                    return _done(layout, options, pressed, snap.point)
                pressed = None
            shown = _ghost(layout, options, first, snap, pointer)
        except GeometryError as error:
            shown = shown.refusing(str(error)) if pointer.typed else Shown(layout, shown.marks, str(error), takes=shown.takes)
        pointer = yield replace(shown, follows=first is None)


def _snapped(snapper: Snapper, pointer: Pointer, first: Vec2 | None) -> Snap:
    if first is None:
        return snapper.point(pointer.at, pointer.mm_per_pixel, pointer.alt)
    to, axis = constrained(first, pointer.at, pointer.shift)
    return snapper.point(to, pointer.mm_per_pixel, pointer.alt, axis, own=((say("the first end"), first),))


def _ghost(layout: Headstock, options: Options, first: Vec2 | None, snap: Snap, pointer: Pointer) -> Shown:
    if first is None:
        ring = guides.ring(snap.point, options.slot_width / 2)
        return Shown(layout, (*snap.marks, *ring), words.place(snap.point, options.unit, layout.nut), snap.words,
                     takes=words.place_takes(snap.point, layout.nut))
    made = _made(layout, options, first, snap.point)
    size = v.distance(first, snap.point) + options.slot_width
    readout = say("length {length} over the ends, {place}", length=words.length(size, options.unit),
                  place=words.place(snap.point, options.unit, layout.nut))
    return Shown(made, snap.marks, readout, snap.words, new_ids(layout, made), takes=words.next_takes(snap.point, layout.nut))


def _typed(pointer: Pointer, options: Options, first: Vec2 | None, now: Vec2) -> Vec2 | None:
    """The end that was typed, None when the text set the width."""
    text = pointer.typed
    if text.strip().lower().startswith(("width", say("width").lower())):
        values = typed.named(text, options.unit)
        if values.keys() != {"width"}:
            raise GeometryError(say("Type the width by itself, then the place, the length or the angle."))
        options.slot_width = sound_width(values["width"])
        return None
    if first is None or typed.point(text, options.unit) is not None:
        return typed.placed(text, options.unit, first, now)
    values = typed.polar(text, options.unit)
    if values and values.keys() <= typed.PLACE:
        return typed.placed(text, options.unit, first, now)
    if not values.keys() <= {"length", "angle"}:
        raise GeometryError(say("Type a place, the length over both ends, an angle, or a length and an angle here."))
    to = typed.placed(text, options.unit, first, now)
    if "length" not in values:
        return to
    if values["length"] < options.slot_width:
        raise GeometryError(say("The slot is measured over its round ends, so it cannot be shorter than it is wide."))
    return v.along(first, v.unit(v.sub(to, first)), values["length"] - options.slot_width)


def _done(layout: Headstock, options: Options, first: Vec2, second: Vec2) -> Done:
    made = _made(layout, options, first, second)
    ids = new_ids(layout, made)
    return Done(made, say("Add {ids}", ids=ids[0]), ids)


def _made(layout: Headstock, options: Options, first: Vec2, second: Vec2) -> Headstock:
    made = add_straight_slot(layout, first, second, options.slot_width)
    if options.mirrored and abs(first[0] + second[0]) / 2 > ON_CENTRELINE:
        made = mirror_copies(made, new_ids(layout, made))
    return made
