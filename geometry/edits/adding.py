"""Adding, removing and duplicating features. New features come last in their group; see parts.new_ids."""

from __future__ import annotations

from collections.abc import Collection, Iterable

import msgspec
from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.edge_places import nearest_on_edges
from geometry.edits.parts import (
    FEATURE_GROUPS,
    appended,
    feature,
    group_of,
    point,
    settled,
)
from geometry.edits.slots import moved_slot
from geometry.edits.tuners import members, own_place, pattern_of, without_left_rows
from geometry.errors import GeometryError
from geometry.layout import (
    OTHER,
    EdgePlace,
    EdgeRun,
    FreePlace,
    Headstock,
    Pin,
    RowPlace,
    SingleHole,
    Slot,
    Tuner,
)
from geometry.layout.edges import edge
from geometry.layout.names import OUTLINE, RESERVED, feature_names
from geometry.saying import say
from geometry.terms import given
from geometry.vectors import Vec2

BESIDE = (5.0, 5.0)
"""Where a copy lies from what it is of, mm."""


def add_tuner(layout: Headstock, pattern: str, at: Vec2) -> Headstock:
    """A new tuner at a point in mm: through the face there, or through the side at the nearest place of an edge.

    A face tuner's button points squarely at the nearest edge. It is named for the side of that edge and its mount with the next
    number, and its string winds on the side away from that edge.
    """
    hardware, at = pattern_of(layout, pattern), point(at)
    side, along = nearest_on_edges(layout.outline, at)
    place = EdgePlace(side=side, along=along) if hardware.mount == "side" else FreePlace(at=at)
    name = feature_names(layout).numbered(given(f"{side} {hardware.mount}"))
    return appended(layout, "tuners", Tuner(id=name, pattern=pattern, place=place, winds=OTHER[side]))


def add_pin(layout: Headstock, at: Vec2, diameter: float = 6.0) -> Headstock:
    """A new locating pin (mm)."""
    return appended(layout, "pins", Pin(id=feature_names(layout).numbered(given("pin")), at=point(at), diameter=diameter))


def add_hole(layout: Headstock, at: Vec2, diameter: float) -> Headstock:
    """A new single hole from the face (mm), through."""
    name = feature_names(layout).numbered(given("hole"))
    return appended(layout, "holes", SingleHole(id=name, at=point(at), diameter=diameter))


def remove_features(layout: Headstock, ids: Iterable[str]) -> Headstock:
    """The layout without these features, and without the rows that they leave empty.

    A note that was pinned to one stays, with the feature's name put before its text. GeometryError for the outline, the nut
    and the blank, which every layout has.
    """
    gone = set(ids)
    if OUTLINE in gone:
        raise GeometryError(say("The outline stays, as every head has one: draw or import another, and that takes its place."))
    if not gone.isdisjoint(RESERVED):
        raise GeometryError(say("Nut and blank stay, as every layout has them: change their numbers instead."))
    for id in gone:
        group_of(layout, id)
    groups = {group: tuple(one for one in getattr(layout, group) if one.id not in gone) for group in FEATURE_GROUPS}
    return settled(without_left_rows(layout, unpinned(msgspec.structs.replace(layout, **groups), gone)))


def unpinned(layout: Headstock, gone: Collection[str]) -> Headstock:
    """The layout without what was chosen for features that are gone; a note pinned to one stays, its name before the text."""
    notes = tuple(replace(note, on=None, text=f"{note.on}: {note.text}"[:4000]) if note.on in gone else note
                  for note in layout.notes)
    return replace(layout, notes=notes, routes=tuple(route for route in layout.routes if route.of not in gone))


def duplicate(layout: Headstock, ids: Iterable[str]) -> Headstock:
    """Copies of these features with names of their own, each BESIDE the first.

    A tuner in a row joins the row as its next member; a side tuner is copied
    one plate farther along its edge (back towards the nut line when there is
    no room ahead). Copies take no string.
    """
    names = feature_names(layout)
    for id in dict.fromkeys(ids):
        group, old = group_of(layout, id), feature(layout, id)
        name = names.alike(id)
        if isinstance(old, Slot):
            new = replace(moved_slot(old, BESIDE), id=name)
        elif isinstance(old, Tuner):
            new = replace(old, id=name, string=None, place=_place_beside(layout, old))
        elif isinstance(old, Pin | SingleHole):
            new = replace(old, id=name, at=v.add(old.at, BESIDE))
        else:
            new = replace(old, id=name, start=old.start + BESIDE[1], end=old.end + BESIDE[1])
        layout = appended(layout, group, new)
    return layout


def _place_beside(layout: Headstock, tuner: Tuner) -> FreePlace | EdgePlace | RowPlace:
    pattern = layout.pattern(tuner.pattern)
    if isinstance(tuner.place, RowPlace):
        row = layout.row(tuner.place.row)
        index = members(layout, row.id)[-1].place.index + 1
        fits = (not isinstance(row.run, EdgeRun)
                or row.run.first + index * row.spacing <= edge(layout.outline, row.run.side).length)
        if fits and index <= 200:
            return RowPlace(row=row.id, index=index)
    place = own_place(layout, tuner)
    if isinstance(place, FreePlace):
        return replace(place, at=v.add(place.at, BESIDE))
    step = pattern.seat.before + pattern.seat.behind + layout.margins.seat_gap
    ahead = place.along + step
    length = edge(layout.outline, place.side).length
    return replace(place, along=ahead if ahead <= length else max(0.0, place.along - step))
