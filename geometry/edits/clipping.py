"""Cut, copy and paste: features taken out of a layout as a record of their own, and put into this or another one."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.moving import plan_point
from geometry.edits.parts import feature, settled
from geometry.edits.tuners import own_place
from geometry.errors import GeometryError
from geometry.layout import Headstock, Pattern, Pin, SingleHole, Slot, Tuner
from geometry.layout.names import Names, feature_names
from geometry.layout.parts import Part
from geometry.saying import say
from geometry.vectors import Vec2


class Clip(Part, frozen=True, kw_only=True):
    """Tuners with the hardware that they need, slots, pins and holes, each at its place (mm)."""

    patterns: tuple[Pattern, ...] = ()
    tuners: tuple[Tuner, ...] = ()
    slots: tuple[Slot, ...] = ()
    pins: tuple[Pin, ...] = ()
    holes: tuple[SingleHole, ...] = ()

    @property
    def ids(self) -> list[str]:
        """What all of these things are called."""
        return [one.id for group in (self.slots, self.tuners, self.pins, self.holes) for one in group]

    def __bool__(self) -> bool:
        return bool(self.ids)


def clip(layout: Headstock, ids: Iterable[str]) -> Clip:
    """What is named, in its own places: a tuner of a row without its row. Strings stay with the layout.

    What cannot be copied (outline, nut, blank, an ear) is left out; GeometryError when nothing is left.
    """
    parts = [feature(layout, id) for id in dict.fromkeys(ids) if _copied(layout, id)]
    tuners = tuple(replace(part, place=own_place(layout, part), string=None) for part in parts
                   if isinstance(part, Tuner))
    needed = {tuner.pattern for tuner in tuners}
    made = Clip(patterns=tuple(one for one in layout.patterns if one.id in needed), tuners=tuners,
                slots=tuple(part for part in parts if isinstance(part, Slot)),
                pins=tuple(part for part in parts if isinstance(part, Pin)),
                holes=tuple(part for part in parts if isinstance(part, SingleHole)))
    if not made:
        raise GeometryError(say("Hold tuners, slots, pins or holes first: these can be copied."))
    return made


def paste(layout: Headstock, held: Clip) -> Headstock:
    """The layout with what the clip holds, where it was copied; see parts.new_ids for the names.

    A taken name gets the next free number. Hardware comes along; of the same
    name but with other dimensions it comes under a name of its own.
    """
    features, hardware = feature_names(layout), Names(one.id for one in layout.patterns)
    patterns, called = list(layout.patterns), {}
    for pattern in held.patterns:
        if pattern not in layout.patterns:
            called[pattern.id] = hardware.alike(pattern.id)
            patterns.append(replace(pattern, id=called[pattern.id]))

    def named(part: Part) -> Part:
        return replace(part, id=features.alike(part.id))

    tuners = [named(replace(one, pattern=called.get(one.pattern, one.pattern))) for one in held.tuners]
    slots, pins, holes = ([named(one) for one in group] for group in (held.slots, held.pins, held.holes))
    return settled(replace(
        layout, patterns=tuple(patterns), tuners=(*layout.tuners, *tuners), slots=(*layout.slots, *slots),
        pins=(*layout.pins, *pins), holes=(*layout.holes, *holes)))


def lead(layout: Headstock, ids: Iterable[str]) -> Vec2:
    """The point (mm) by which pasted features are carried: that of the only one, else the middle of all."""
    points = [plan_point(layout, id) for id in ids]
    return v.scale((sum(p[0] for p in points), sum(p[1] for p in points)), 1 / len(points))


def _copied(layout: Headstock, id: str) -> bool:
    return any(one.id == id for group in (layout.tuners, layout.slots, layout.pins, layout.holes) for one in group)
