"""A locating pin that stands in a bore to come goes where that bore goes.

Which pin that is, is nobody's field: it stands on the axis of the bore.
"""

from __future__ import annotations

from msgspec.structs import replace

from geometry import vectors as v
from geometry.errors import GeometryError
from geometry.layout import Headstock, drilled
from geometry.layout.slots import Pin
from geometry.solids.drilling import Drilling, Hole, holes, single_hole, tuner_holes
from geometry.solids.frames import frame

SAME = 0.01
"""mm: a pin so near the axis of a bore stands in it"""


def pins_along(before: Headstock, after: Headstock) -> Headstock:
    """`after`, an edit of `before`, with the pins that stood in bores moved on to where those are now; itself where there is none.

    One as wide as its bore stays as wide as that, and none is wider than its bore is then. Left where it is: a pin that was moved or made
    otherwise by the edit, one that is drilled in the real piece, one that stands in a bore still (that a mirror image has called otherwise),
    and one whose bore is none any more. So are all where either outline has no edges: nobody knows where its bores are.
    """
    try:
        return _along(before, after)
    except GeometryError:
        return after


def _along(before: Headstock, after: Headstock) -> Headstock:
    stood = _stood(before) if before.pins and after.pins else {}
    if not stood:
        return after
    was = {pin.id: pin for pin in before.pins}
    moved: dict[str, Pin] = {}
    for pin in after.pins:
        then = stood.get(pin.id)
        now = None if then is None or pin != was[pin.id] else _now(after, then)
        if now is not None and (now.start[:2], now.diameter) != (then.start[:2], then.diameter):
            wide = now.diameter if pin.diameter > min(then.diameter, now.diameter) - SAME else pin.diameter
            moved[pin.id] = replace(pin, at=now.start[:2], diameter=wide)
    if not moved:
        return after
    kept = {*drilled(after), *(id for id, bore in in_bores(after).items() if id in stood and bore.of != stood[id].of)}
    if moved.keys() <= kept:
        return after
    return replace(after, pins=tuple(pin if pin.id in kept else moved.get(pin.id, pin) for pin in after.pins))


_last: tuple[Headstock | None, dict[str, Drilling]] = (None, {})
"""The layout asked for last, from which every frame of a drag begins, and its pins in bores; swapped as one."""


def _stood(before: Headstock) -> dict[str, Drilling]:
    global _last
    known, found = _last
    if known is not before:
        found = in_bores(before)
        _last = before, found
    return found


def in_bores(layout: Headstock) -> dict[str, Drilling]:
    """The bore to come, square to the face and through, in whose middle each pin stands that does in one: its narrowest drilling, by the
    pin's id. GeometryError when the outline has no edges."""
    bores = [bore for hole in holes(layout) if (bore := _bore(hole)) is not None]
    return {pin.id: bore for pin in layout.pins for bore in bores
            if pin.diameter <= bore.diameter + SAME and v.distance(pin.at, bore.start[:2]) <= SAME}


def _now(layout: Headstock, then: Drilling) -> Drilling | None:
    """The same bore in another layout, None where it has none there: of other hardware, that which does the same, wherever it lists it."""
    tuner = next((one for one in layout.tuners if one.id == then.of), None)
    single = next((one for one in layout.holes if one.id == then.of), None)
    found = (tuner_holes(frame(layout, tuner), layout.pattern(tuner.pattern).bores, layout.blank) if tuner is not None else
             (single_hole(single, layout.blank),) if single is not None else ())
    bores = [bore for hole in found if (bore := _bore(hole)) is not None and (bore.role == then.role or bore.hole == then.hole)]
    return min(bores, key=lambda bore: (bore.role != then.role, bore.hole != then.hole), default=None)


def _bore(hole: Hole) -> Drilling | None:
    """What of a hole a pin can stand in: its narrowest drilling, where that goes through from the face and is drilled yet."""
    least = min(hole.drillings, key=lambda one: one.diameter)
    return least if least.upright and least.through and not least.there and least.role != "locating" else None
