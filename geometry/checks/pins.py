"""Locating pins: enough of them, in the wood of the blank, out of the way of side bores as holes and pockets that are there are, and mirrored
where the template turns over."""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks import router
from geometry.checks.around import Around
from geometry.checks.hole_pairs import wanted
from geometry.checks.hole_walls import wanted_to_slot
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import BLANK, NOTE, TEMPLATE, TIGHT, Snag, grade, short
from geometry.checks.words import both, clearance, name
from geometry.layout.blank import Blank
from geometry.layout.pin_pairs import SAME, missed, standing_in
from geometry.layout.shop import Margins
from geometry.layout.slots import Pin
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2, Vec3


def snags(scene: Scene) -> Iterable[Snag]:
    """A note when the template can use fewer than two locating pins and there is a slot to rout; a snag where they are not mirrored and have to be, and for
    each that stands in the waste in the way of a side bore, as for a hole or a pocket that is there already."""
    layout = scene.layout
    for item in scene.items:
        if item.what != "tuner" and item.drillings[0].waste_too:
            yield from scene.memo.snags(_in_the_way, scene.sides, item, layout.margins)
    for opening in scene.openings:
        if opening.there and not opening.crosses:
            yield from scene.memo.snags(_pocket_in_the_way, scene.sides, opening, layout.margins)
    usable = scene.memo.of(_usable, scene.outline, layout.pins, layout.template.board)
    if layout.to_rout and len(usable) < 2:
        yield scene.memo.of(_few, layout.pins, usable, layout.blank)
    elif layout.to_rout and (off := scene.memo.of(_missed, scene.outline, layout.pins, layout.template.board)):
        turned = next((opening for opening in scene.to_rout if router.turns_over(opening, layout)), None)
        if turned is not None:
            yield scene.memo.of(_askew, off, turned)


def _few(pins: tuple[Pin, ...], usable: tuple[Pin, ...], blank: Blank) -> Snag:
    said = (say("There is only one locating pin.") if pins else say("There are no locating pins.")) if len(pins) < 2 else (
        say("Only one locating pin stands inside the outline, where a template of the shape of the head can use it.") if usable else
        say("No locating pin stands inside the outline, where a template of the shape of the head can use it."))
    return Snag("few-pins", NOTE, tuple(pin.id for pin in pins) or (TEMPLATE,), (*pins[0].at, 0.0) if pins else (0.0, blank.tip / 2, 0.0),
                None, None, f"{said} " + say("Two bring the template back to the same place."),
                say("Set two pins on the centreline, as far apart as the wood allows (Propose pins, Slots stage)."))


def _askew(off: tuple[tuple[Pin, float], ...], turned: Opening) -> Snag:
    """Pins that are not mirrored, where the best plan for a slot turns the template over on them."""
    worst, miss = off[0]
    a, _ = both(miss, 0.0)
    return Snag("pins-askew", TIGHT, (*(pin.id for pin, _ in off), turned.id), (*worst.at, 0.0), miss, 0.0,
                say("The template turns over for {turned}, but {worst} misses its mirror image by {a} mm, so the cut "
                    "from the back would not meet the cut from the face.",
                    turned=turned.id, worst=worst.id, a=a),
                say("Have two pins proposed: they are set mirrored about the centreline; or choose bits that get "
                    "through from the face."))


def _usable(outline: Wall, pins: tuple[Pin, ...], board: str) -> tuple[Pin, ...]:
    """The pins that the template for the slots can use; all of them where the outline has no inside, which has its own snag."""
    return pins if board == "blank" or outline.crossing is not None or not pins else standing_in(pins, outline.area)


def _missed(outline: Wall, pins: tuple[Pin, ...], board: str) -> tuple[tuple[Pin, float], ...]:
    if board == "blank" or not missed(pins) and all(2 * abs(pin.at[0]) <= SAME for pin in pins):
        # On the centreline each is its own image, whichever of them stand in the wood.
        return missed(pins)
    if outline.crossing is not None:
        return ()  # the outline has no inside: it has its own snag
    return missed(standing_in(pins, outline.area))


def _in_the_way(item: Item, other: Item, margins: Margins) -> tuple[Snag, ...]:
    """A pin, or a hole that is there, that a bore comes near on its way from the square edge to the seat; what is nearer beyond the seat is told
    of the bore itself."""
    bore = item.post
    if bore is None or bore.mark is None:
        return ()
    radius = max(d.radius for d in item.drillings if d.hole == bore.hole)
    hole, seat, z = other.drillings[0], plan(bore.start), bore.start[2]
    at = plan(hole.start)
    near = v.nearest_between(plan(bore.mark), seat, at)
    beside, past = v.distance(near, at) - hole.radius, max(0.0, min(hole.start[2], hole.end[2]) - z, z - max(hole.start[2], hole.end[2]))
    measured, needed = (math.hypot(max(0.0, beside), past) if past else beside) - radius, wanted(bore, hole, margins)
    if near == seat or not short(measured, needed):
        return ()
    away = v.sub(at, near)
    way = v.unit(away) if v.norm(away) > TOUCH else plan(item.frame.u)
    return (_met(item, bore, other.id, hole.there, (*near, z), measured, needed, v.scale(way, needed - measured)),)


def _pocket_in_the_way(item: Item, pocket: Opening, margins: Margins) -> tuple[Snag, ...]:
    """A pocket that is there, that a bore comes near between the square edge and the seat: measured square to its way, less FLAT."""
    bore = item.post
    if bore is None or bore.mark is None:
        return ()
    radius = max(d.radius for d in item.drillings if d.hole == bore.hole)
    mark, seat, z, needed = plan(bore.mark), plan(bore.start), bore.start[2], wanted_to_slot(bore, margins)
    long, past = v.distance(mark, seat), max(0.0, z - pocket.depth)
    if long <= TOUCH or not short(past - radius, needed):
        return ()
    ahead = v.unit(v.sub(seat, mark))
    beside = v.left(ahead)
    turned = shapely.transform(pocket.wall.area, lambda xy: (xy - np.array(mark)) @ np.array((ahead, beside)).T)
    _, low, _, high = turned.bounds
    part = shapely.clip_by_rect(turned, 0.0, low - 1.0, long, high + 1.0)
    if part.is_empty:
        return ()
    _, low, _, high = part.bounds
    off = max(low, -high) - FLAT
    measured = (math.hypot(max(0.0, off), past) if past else off) - radius
    if not short(measured, needed):
        return ()
    x = (part.bounds[0] + part.bounds[2]) / 2
    way = beside if low >= -high else v.scale(beside, -1.0)
    return (_met(item, bore, pocket.id, True, (*v.along(mark, ahead, x), z), measured, needed, v.scale(way, needed - measured)),)


def _met(item: Item, bore: Drilling, other: str, there: bool, where: Vec3, measured: float, needed: float, push: Vec2) -> Snag:
    """What a bore meets on its way: something that is there already, or the hole of a pin."""
    words = {"bore": name(bore), "other": other}
    if there:
        text = clearance(measured, needed, "On its way through the waste the {bore} cuts {measured} mm into {other}, which is there already.",
                         "On its way through the waste the {bore} passes {a} mm from {other}, which is there already; {b} mm wanted.",
                         **words)
        cure = say("Slide {item} along its edge, or plug {other} with wood first.", item=item.id, other=other)
    else:
        text = clearance(measured, needed, "On its way through the waste the {bore} cuts {measured} mm into the hole of {other}.",
                         "On its way through the waste the {bore} passes {a} mm from the hole of {other}; {b} mm wanted.", **words)
        cure = say("Set the pin elsewhere: beside the ways of the side bores, or in wood that stays.")
    return Snag("hole-in-the-way", TIGHT, (other, item.id), where, measured, needed, text, cure, push=push)


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Snags of a locating pin with the blank."""
    if item.what != "pin":
        return ()
    blank, margins = around.blank, around.margins
    pin = item.drillings[0]
    x, y = plan(pin.start)
    sides = ((x + blank.bass, (1.0, 0.0)), (blank.treble - x, (-1.0, 0.0)),
             (y + blank.behind, (0.0, 1.0)), (blank.tip - y, (0.0, -1.0)))
    measured = min(distance for distance, _ in sides) - pin.radius
    needed = margins.pin_any
    if not short(measured, needed):
        return ()
    room = min(blank.bass + blank.treble, blank.tip + blank.behind) >= 2 * (needed + pin.radius)
    lacking = [(max(0.0, needed + pin.radius - distance), way) for distance, way in sides]
    by = (sum(a * w[0] for a, w in lacking), sum(a * w[1] for a, w in lacking))
    text = clearance(measured, needed, "The hole of locating pin {item} leaves the blank by {measured} mm.",
                     "The hole of locating pin {item} leaves {a} mm of wood to the edge of the blank; {b} mm wanted.", item=item.id)
    return (Snag("pin-to-blank", grade(measured), (item.id, BLANK), (x, y, 0.0), measured, needed, text,
                 say("Use a slimmer pin or a larger blank."), push=by if room else None),)
