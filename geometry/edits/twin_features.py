"""Symmetric editing of features: what one does, its mirror image on the other side does too."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.copying import flipped_row, flipped_tuner
from geometry.edits.moving import plan_point
from geometry.edits.other_hand import with_mirrored_patterns
from geometry.edits.parts import checked, feature, group_of, put, settled
from geometry.edits.slots import flipped_slot, lies_across, moved_slot, swapped_sides
from geometry.edits.tuners import without_left_rows
from geometry.edits.twins import NEAR
from geometry.errors import GeometryError
from geometry.layout import FreePlace, Headstock, RowPlace, Slot, StraightSlot, Tuner
from geometry.layout.names import Names
from geometry.layout.parts import Part
from geometry.saying import say


def twin_feature(layout: Headstock, id: str) -> str | None:
    """The feature of the same kind at the mirrored place, the feature itself on the centreline, None without one."""
    own, at = feature(layout, id), plan_point(layout, id)
    if abs(at[0]) <= NEAR:
        return id if _is_its_own_image(own) else None
    for other in getattr(layout, group_of(layout, id)):
        if other.id != id and v.distance(plan_point(layout, other.id), v.mirrored(at)) <= NEAR and _alike(layout, own, other):
            return other.id
    return None


def echo_features(before: Headstock, after: Headstock, ids: Iterable[str]) -> Headstock:
    """`after`, with the twins that these features had in `before` brought to the mirrored places.

    A twin that is itself among the ids stays where it went. What stood on the
    centreline stays on it. A row is echoed by the row of the twin, a new one
    by a new one, other hardware of a tuner by its mirror image.
    """
    ids = list(dict.fromkeys(ids))
    for id in ids:
        twin = twin_feature(before, id)
        if twin == id:
            after = _kept_on_centreline(after, id, feature(before, id))
        elif twin is not None and twin not in ids:
            after = _echoed(_with_hardware_echoed(before, after, id, twin), id, twin, feature(before, id))
    return settled(without_left_rows(before, after))


def _is_its_own_image(one: Part) -> bool:
    """Whether what has its own point on the centreline is its own mirror image: a straight slot may lie slanted there."""
    if not isinstance(one, Slot) or not isinstance(one.shape, StraightSlot):
        return True
    return max(abs(one.shape.nut_end[0]), abs(one.shape.tip_end[0])) <= NEAR or lies_across(one.shape)


def _alike(layout: Headstock, one: Part, other: Part) -> bool:
    if isinstance(one, Tuner):
        return (layout.pattern(one.pattern).mount == layout.pattern(other.pattern).mount
                and isinstance(one.place, RowPlace) == isinstance(other.place, RowPlace))
    if isinstance(one, Slot):
        return type(one.shape) is type(other.shape) and one.there == other.there
    return True


def _with_hardware_echoed(before: Headstock, after: Headstock, id: str, twin: str) -> Headstock:
    """`after`, the twin of a tuner whose hardware was changed with the mirror image of that; its place is yet to follow."""
    own, other = feature(after, id), feature(after, twin)
    if not isinstance(own, Tuner) or own.pattern == feature(before, id).pattern:
        return after
    patterns, images = with_mirrored_patterns(after, [own])
    return put(replace(after, patterns=patterns), "tuners", replace(other, pattern=images.get(own.pattern, own.pattern)))


def _echoed(layout: Headstock, id: str, twin: str, before: Part) -> Headstock:
    own, other = feature(layout, id), feature(layout, twin)
    if isinstance(own, Slot):
        new: Part = replace(flipped_slot(own), id=twin)
    elif isinstance(own, Tuner):
        if isinstance(own.place, RowPlace):
            same = isinstance(before.place, RowPlace) and before.place.row == own.place.row
            return _row_echoed(layout, own.place, other.place) if same else _new_row_echoed(layout, own.place, other)
        new = replace(other, place=flipped_tuner(own, layout.pattern(own.pattern)).place)
    elif hasattr(own, "at"):
        new = replace(other, at=v.mirrored(own.at))
    else:
        new = replace(other, start=own.start, end=own.end)
    return put(layout, group_of(layout, twin), checked(new, twin))


def _row_echoed(layout: Headstock, own: RowPlace, other: RowPlace) -> Headstock:
    if own.row == other.row:
        raise GeometryError(say("A row that runs across the centreline cannot be edited symmetrically."))
    row = replace(flipped_row(layout.row(own.row)), id=other.row)
    return put(layout, "rows", row)


def _new_row_echoed(layout: Headstock, own: RowPlace, other: Tuner) -> Headstock:
    """The twin of a tuner that came into a row in the mirror image of that row, which is made for the first one."""
    image = flipped_row(layout.row(own.row))
    row = next((row for row in layout.rows if row.id != own.row and row == replace(image, id=row.id)), None)
    if row is None:
        row = replace(image, id=Names(row.id for row in layout.rows).alike(swapped_sides(image.id)))
        layout = replace(layout, rows=(*layout.rows, row))
    return put(layout, "tuners", replace(other, place=RowPlace(row=row.id, index=own.index)))


def _kept_on_centreline(layout: Headstock, id: str, before: Part) -> Headstock:
    """A slot that lay along the centreline keeps both ends on it; of one across it an end that was moved has the other follow as
    its mirror image, and both together keep their middle."""
    own = feature(layout, id)
    new = own
    if isinstance(own, Tuner) and isinstance(own.place, FreePlace):
        new = replace(own, place=replace(own.place, at=(0.0, own.place.at[1])))
    elif isinstance(own, Slot) and isinstance(own.shape, StraightSlot) and isinstance(before.shape, StraightSlot):
        new = replace(own, shape=_centred(own.shape, before.shape))
    elif isinstance(own, Slot):
        new = moved_slot(own, (-plan_point(layout, id)[0], 0.0))
    elif not isinstance(own, Tuner | Slot) and hasattr(own, "at"):
        new = replace(own, at=(0.0, own.at[1]))
    return put(layout, group_of(layout, id), new)


def _centred(own: StraightSlot, before: StraightSlot) -> StraightSlot:
    nut, tip = own.nut_end, own.tip_end
    if not lies_across(before):
        nut, tip = (0.0, nut[1]), (0.0, tip[1])
    elif nut == before.nut_end:
        nut = v.mirrored(tip)
    elif tip == before.tip_end:
        tip = v.mirrored(nut)
    else:
        far = (nut[0] - tip[0]) / 2
        nut, tip = (far, nut[1]), (-far, tip[1])
    return replace(own, nut_end=nut, tip_end=tip)
