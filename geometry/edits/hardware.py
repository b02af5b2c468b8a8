"""Hardware patterns and ears: copies to change, bores taken out or added."""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry.edits.parts import put, settled
from geometry.edits.tuners import pattern_of
from geometry.errors import GeometryError
from geometry.layout import Bore, Ear, Headstock, Side, loop_path
from geometry.layout.names import Names, feature_names
from geometry.saying import say
from geometry.terms import given
from geometry.tolerance import TOUCH


def copy_pattern(layout: Headstock, id: str) -> Headstock:
    """The layout with a copy of a pattern under a fresh name, last of its patterns."""
    pattern = pattern_of(layout, id)
    name = Names(p.id for p in layout.patterns).alike(id)
    return settled(replace(layout, patterns=(*layout.patterns, replace(pattern, id=name))))


def remove_pattern(layout: Headstock, id: str) -> Headstock:
    """The layout without a pattern; GeometryError while a tuner uses it."""
    pattern_of(layout, id)
    users = [t.id for t in layout.tuners if t.pattern == id]
    if users:
        raise GeometryError(say("{user} uses the hardware {id}: give its tuners other hardware first.",
                                user=users[0], id=id))
    return settled(replace(layout, patterns=tuple(p for p in layout.patterns if p.id != id)))


def add_bore(layout: Headstock, id: str) -> Headstock:
    """The layout with one more screw pilot in a pattern, 10 mm from the post axis, to be changed."""
    pattern = pattern_of(layout, id)
    surface = "seat" if pattern.mount == "side" else "back"
    bore = Bore(role="screw", diameter=1.6, surface=surface, at=(10.0, 0.0), depth=8.0, drill="twist")
    return settled(put(layout, "patterns", replace(pattern, bores=(*pattern.bores, bore))))


def remove_bore(layout: Headstock, id: str, index: int) -> Headstock:
    """The layout without bore number `index` (0 first) of a pattern; a pattern keeps at least one."""
    pattern = pattern_of(layout, id)
    if len(pattern.bores) < 2:
        raise GeometryError(say("The hardware {id} needs at least one bore.", id=id))
    return settled(put(layout, "patterns", replace(pattern, bores=(*pattern.bores[:index], *pattern.bores[index + 1:]))))


def add_ear(layout: Headstock, side: Side) -> Headstock:
    """The layout with an ear along the head's whole length.

    Where the outline leaves the blank, or its margin, on a side without an ear, the wood is as wide as it is: the ear is glued on outside it, in whole
    millimetres what is lacking, and the blank with it so much wider. Else the blank keeps its width: the ear's wood, 15 mm and at most a
    third of its side, is part of it already.
    """
    blank = layout.blank
    x0, _, x1, _ = loop_path(layout.outline).box
    edge = getattr(blank, side)
    lacking = (x1 if side == "treble" else -x0) + layout.margins.blank_edge - edge
    width = min(15.0, edge / 3)
    if lacking > TOUCH and not any(ear.side == side for ear in layout.ears):
        width = float(math.ceil(lacking - TOUCH))
        blank = replace(blank, **{side: edge + width})
    ear = Ear(id=feature_names(layout).alike(given(f"{side} ear")), side=side, width=width, start=0.0, end=blank.tip)
    return settled(replace(layout, blank=blank, ears=(*layout.ears, ear)))
