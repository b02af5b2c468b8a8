"""Glue lines of ears: drillings along them, and drillings across them; ears that end too soon; and what comes near the feather edges of a scarf joint."""

from __future__ import annotations

import math
from collections.abc import Iterable

from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, TIGHT, Snag, short
from geometry.checks.words import into, listed, name, tenths
from geometry.layout.blank import Blank, Ear
from geometry.saying import say
from geometry.solids.drilling import Drilling


def snags(scene: Scene) -> Iterable[Snag]:
    """A snag for every upright drilling that a glue line runs through; one note an ear for bores that cross it; where an ear ends too soon."""
    blank = scene.layout.blank
    if scene.layout.ears:
        from geometry.checks import ear_ends  # few heads have any, and a start goes without it
        yield from ear_ends.snags(scene)
    for ear in scene.layout.ears:
        yield from scene.memo.snags(_along, scene.items, ear, blank)
        across = scene.memo.each(_across, scene.items, ear, blank)
        crossing = [item.id for item, crosses in zip(scene.items, across, strict=True) if crosses]
        if crossing:
            yield scene.memo.of(_crossed, ear, blank, *crossing)
    if blank.scarf:
        from geometry.checks import feather  # few heads have one, and a start goes without it
        yield from feather.snags(scene)


def _along(item: Item, ear: Ear, blank: Blank) -> tuple[Snag, ...]:
    """Drillings square to the face that touch the glue line."""
    x = blank.glue_x(ear)
    low, high = sorted((ear.start, ear.end))
    found = []
    for i in item.upright:
        drilling = item.drillings[i]
        cx, cy = drilling.start[:2]
        measured = _gap(drilling, x, low, high)
        if not short(measured, 0.0):
            continue
        found.append(Snag("glue-line", TIGHT, (item.id, ear.id), (x, min(max(cy, low), high), drilling.start[2]),
                          measured, 0.0,
                          say("The glue line of {ear} runs {measured} mm inside the {name}.",
                              ear=ear.id, measured=into(measured), name=name(drilling)),
                          say("Make {ear} wider by {measured} mm, or move {item} as much.", ear=ear.id, measured=tenths(-measured), item=item.id)
                          if (cx >= x) == (ear.side == "treble") else
                          say("Make {ear} narrower by {measured} mm, or move {item} as much.",
                              ear=ear.id, measured=tenths(-measured), item=item.id),
                          push=(-measured if cx >= x else measured, 0.0)))
    return tuple(found)


def _crossed(ear: Ear, blank: Blank, *crossing: str) -> Snag:
    return Snag("glue-line-crossed", NOTE, (ear.id, *crossing), (blank.glue_x(ear), (ear.start + ear.end) / 2, blank.thickness / 2), None, None,
                say("The glue line of {ear} is crossed by the bores of {crossing}.", ear=ear.id, crossing=listed(crossing)),
                say("Glue on {ear} before these are drilled, and let the glue cure.", ear=ear.id))


def _gap(drilling: Drilling, x: float, low: float, high: float) -> float:
    """From a drilling square to the face to a glue line at x between two levels, mm."""
    cx, cy = drilling.start[:2]
    return math.hypot(cx - x, max(low - cy, 0.0, cy - high)) - drilling.radius


def _across(item: Item, ear: Ear, blank: Blank) -> bool:
    """Whether a drilling from the side crosses the glue line."""
    x = blank.glue_x(ear)
    low, high = sorted((ear.start, ear.end))
    for drilling in item.drillings:
        if drilling.upright:
            continue
        a, b = (drilling.mark or drilling.start), drilling.end
        if (a[0] - x) * (b[0] - x) < 0:
            y = a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0])
            if low <= y <= high:
                return True
    return False
