"""Which ramp to cut: one that frees the strings of a slot and leaves the wood around it sound."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from geometry.checks import ramp_edges, ramp_walls
from geometry.checks.memo import Memo
from geometry.checks.said import read
from geometry.checks.scene import scene_of
from geometry.checks.snags import SPOILS, Snag
from geometry.checks.string_slots import ramp_words
from geometry.edits.parts import with_feature
from geometry.errors import GeometryError
from geometry.layout import Headstock, Ramp, Slot
from geometry.lengths import spoken
from geometry.saying import say
from geometry.solids.ramps import nut_end
from geometry.strings.ramps import freeing_ramp

_OTHER_WIDTHS = (-2.0, -4.0, -6.0, -8.0, -10.0, -12.0, -15.0, 4.0, 8.0, 14.0)
"""mm by which a ramp is tried narrower or wider than its slot"""


def sound_ramp(layout: Headstock, slot: Slot) -> Ramp | None:
    """The ramp that frees all strings of a slot and has no snag with outline, nut, back or a hole; None when they need none.

    As wide as the slot where that will do. GeometryError with the reason where no ramp does it.
    """
    mildest: tuple[Ramp, tuple[Snag, ...]] | None = None
    for ramp, snags in ramps_tried(layout, slot):
        if not snags:
            return ramp
        if mildest is None or _worst(snags) < _worst(mildest[1]):
            mildest = ramp, snags
    if mildest is None:
        # Not one frees the strings, so this raises why not; unless they need none.
        return freeing_ramp(layout, slot.id)
    ramp, snags = mildest
    worst = max(snags, key=_badness)
    raise GeometryError(say("No ramp frees the strings of {slot} and leaves enough wood. The best would be {ramp_words}: {snag}",
                            slot=slot.id, ramp_words=read(ramp_words(ramp), spoken()), snag=worst.text_in(spoken())))


def ramps_tried(layout: Headstock, slot: Slot) -> Iterator[tuple[Ramp | None, tuple[Snag, ...]]]:
    """Ramps that free all strings of a slot, each with its snags: as wide as the slot, then narrower, where the head is
    narrow or a hole is near, then wider, where strings come from aside. None, without a snag, where they need none."""
    for by in (0.0, *_OTHER_WIDTHS):
        width = round(nut_end(slot).width + by, 3) if by else None
        if width is not None and width <= 0:
            continue
        try:
            ramp = freeing_ramp(layout, slot.id, width)
        except GeometryError:
            continue
        yield ramp, _snags(layout, replace(slot, ramp=ramp))


def _snags(layout: Headstock, slot: Slot) -> tuple[Snag, ...]:
    """What the checks find between a slot's ramp and the wood, the nut and the holes."""
    others = replace(layout, slots=tuple(replace(other, ramp=None) for other in layout.slots))
    scene = scene_of(with_feature(others, slot), Memo())
    return tuple(snag for family in (ramp_edges, ramp_walls) for snag in family.snags(scene))


def _worst(snags: tuple[Snag, ...]) -> tuple[bool, float]:
    return max(map(_badness, snags))


def _badness(snag: Snag) -> tuple[bool, float]:
    return snag.grade == SPOILS, snag.lacks
