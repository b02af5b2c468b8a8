"""Placing tuners, pins and holes: a ghost follows the pointer, a press sets it down."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from app.tools import neighbours, typed, words
from app.tools.hit import strip_at
from app.tools.options import Options
from app.tools.pointer import Done, Gesture, Pointer, Shown, Takes
from app.tools.snap import Snapper, tidy
from app.tools.snap_along import AlongSnapper
from geometry.checks.words import first
from geometry.drawing import Drawing
from geometry.edits.adding import add_hole, add_pin, add_tuner
from geometry.edits.copying import ON_CENTRELINE, mirror_copies
from geometry.edits.edge_places import along_for_mark, nearest_on_edges
from geometry.edits.moving import plan_point
from geometry.edits.other_hand import hand_for_edge
from geometry.edits.parts import new_ids
from geometry.edits.tuners import along_edge, pattern_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.edges import edge
from geometry.saying import say
from geometry.solids.frames import frame
from geometry.solids.side import tilt_of
from geometry.tilt_words import tilt_words
from geometry.vectors import Vec2, distance

What = Literal["tuner", "pin", "hole"]


class _Made(Struct, frozen=True):
    """A layout with what was added, mirror images included."""

    layout: Headstock
    ids: tuple[str, ...]
    turned: bool
    """whether the tuner is the mirror image of the hardware chosen"""

    @property
    def step(self) -> str:
        """What the step is called."""
        return (say("Add {held}, its hardware mirrored for this edge", held=self.ids[0]) if self.turned else
                say("Add {held}", held=self.ids[0]))


class _Standing(Struct, frozen=True):
    """Something that the layout has of the kind that is placed."""

    id: str
    at: Vec2
    across: float
    """mm; of a tuner its post"""


def place(layout: Headstock, what: What, options: Options) -> Gesture:
    """Set down one tuner of the chosen hardware, one pin or one hole.

    The new thing is in the layout while it follows the pointer, so its snags
    show before it is set down. A side tuner slides along the edge nearest to
    the pointer, or to the mark under it on a folded edge. Of hardware that
    comes as left and right the other edge takes the mirror image. Typed: a place, or
    for a side tuner how far along its edge. Mirrored: its mirror image comes too.
    A tuner within the post of another is refused, and so is a pin within a pin, a hole within one as wide.
    """
    if what == "tuner" and not options.pattern:
        raise GeometryError(say("Choose the hardware to place first."))
    side = what == "tuner" and pattern_of(layout, options.pattern).mount == "side"
    standing = _standing(layout, what)
    snapper = AlongSnapper(layout, options) if side else Snapper(layout, options)
    pointer = yield Shown(layout, readout={"tuner": say("press where the tuner goes"), "pin": say("press where the pin goes"),
                                           "hole": say("press where the hole goes")}[what], follows=True)
    last = Shown(layout, follows=True)
    while True:
        try:
            if pointer.kind == "key" and pointer.typed:
                made = _at_typed(layout, what, options, standing, side, pointer, tidy(pointer.at) if side else
                                 snapper.point(pointer.at, pointer.mm_per_pixel, pointer.alt).point)
                return Done(made.layout, made.step, made.ids)
            if pointer.kind != "key":
                made, last = _along(layout, options, standing, snapper, pointer) if side else \
                    _free(layout, what, options, standing, snapper, pointer)
            if pointer.kind in ("press", "double"):
                return Done(made.layout, made.step, made.ids)
        except GeometryError as error:
            last = last.refusing(str(error)) if pointer.typed else Shown(layout, last.marks, str(error), takes=last.takes, follows=True)
        pointer = yield last


def _free(layout: Headstock, what: What, options: Options, standing: tuple[_Standing, ...], snapper: Snapper,
          pointer: Pointer) -> tuple[_Made, Shown]:
    snap = snapper.point(pointer.at, pointer.mm_per_pixel, pointer.alt)
    made = _added(layout, what, options, standing, snap.point)
    near = () if options.mirrored else neighbours.of_point(made.layout, made.ids[0], options.unit, pointer.mm_per_pixel)
    hand = say("hardware mirrored for this edge") if made.turned else ""
    caught = ", ".join(word for word in (snap.words, hand) if word)
    return made, _shown(made, words.place(snap.point, options.unit, layout.nut), caught, (*snap.marks, *near), words.place_takes(snap.point, layout.nut))


def _along(layout: Headstock, options: Options, standing: tuple[_Standing, ...], snapper: AlongSnapper,
           pointer: Pointer) -> tuple[_Made, Shown]:
    side = strip_at(layout, pointer.at)
    if side is not None:
        along = along_for_mark(layout, side, pointer.at[1], pointer.at[1])
    else:
        side, along = nearest_on_edges(layout.outline, pointer.at)
    stop = snapper.snap(side, along, pointer.mm_per_pixel, pointer.alt)
    made = _added(layout, "tuner", options, standing, edge(layout.outline, side).seat(stop.along).point)
    id = made.ids[0]
    sits = frame(made.layout, made.layout.tuner(id))
    _, reached = along_edge(made.layout, id)
    readout = say("along {along}, tilt {tilt}", along=words.length(reached, options.unit), tilt=tilt_words(tilt_of(sits)))
    near = () if options.mirrored else neighbours.of_seat(made.layout, id, options.unit, pointer.mm_per_pixel)
    return made, _shown(made, readout, stop.words, (*stop.marks, *near), (("along", say("along the edge")),))


def _at_typed(layout: Headstock, what: What, options: Options, standing: tuple[_Standing, ...], side: bool, pointer: Pointer,
              now: Vec2) -> _Made:
    text = pointer.typed
    to = typed.point(text, options.unit)
    if to is None and side:
        number = typed.number(text, options.unit)
        along = number if number is not None else typed.named(text, options.unit).get("along")
        if along is None:
            raise GeometryError(say("Type how far along the edge the tuner sits, for example 73.9."))
        which, _ = nearest_on_edges(layout.outline, pointer.at)
        run = edge(layout.outline, which)
        typed.held_to(along, min(max(along, 0.0), run.length))
        to = run.seat(along).point
    elif to is None:
        to = typed.placed(text, options.unit, None, now)
    return _added(layout, what, options, standing, to)


def _added(layout: Headstock, what: What, options: Options, standing: tuple[_Standing, ...], at: Vec2) -> _Made:
    pattern = options.pattern
    if what == "tuner":
        handed, pattern = hand_for_edge(layout, pattern, at)
        made = add_tuner(handed, pattern, at)
    elif what == "pin":
        made = add_pin(layout, at, options.pin_diameter)
    else:
        made = add_hole(layout, at, options.hole_diameter)
    ids = new_ids(layout, made)
    if options.mirrored and abs(plan_point(made, ids[0])[0]) > ON_CENTRELINE:
        made = mirror_copies(made, ids)
        ids = new_ids(layout, made)
    _refuse_upon_another(standing, made, ids, options.hole_diameter if what == "hole" else None)
    return _Made(made, ids, pattern != options.pattern)


def _standing(layout: Headstock, what: What) -> tuple[_Standing, ...]:
    """What the layout has of this kind: asked once for the whole gesture, not at each step of the pointer. A hole that is plugged first
    is wood."""
    if what == "tuner":
        return tuple(_Standing(one.id, plan_point(layout, one.id), pattern_of(layout, one.pattern).post.diameter) for one in layout.tuners)
    singles = layout.pins if what == "pin" else [hole for hole in layout.holes if not hole.plugged]
    return tuple(_Standing(one.id, one.at, one.diameter) for one in singles)


def _refuse_upon_another(standing: tuple[_Standing, ...], made: Headstock, ids: tuple[str, ...], hole: float | None) -> None:
    """GeometryError where something new, or its mirror image, stands within another of its kind.

    Of a `hole` of that diameter in mm only one as wide counts: a wider and a shallower one at one place are a counterbore.
    """
    new = [plan_point(made, id) for id in ids]
    for one in standing:
        upon = [distance(one.at, point) < one.across / 2 and hole in (None, one.across) for point in new]
        if upon[0]:
            raise GeometryError(first(say("{thing} sits here already: press elsewhere, or Esc and press {thing} to move it.", thing=one.id)))
        if any(upon):
            raise GeometryError(say("The mirror image would sit on {thing}: press elsewhere, or switch Mirrored off.", thing=one.id))


def _shown(made: _Made, readout: str, snapped: str, marks: Drawing, takes: tuple[Takes, ...]) -> Shown:
    return Shown(made.layout, marks, readout, snapped, made.ids, takes=takes, follows=True)
