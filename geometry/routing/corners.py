"""A slimmer bit that goes into the corners which a wide one leaves, on the same template."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.layout.names import OUTLINE
from geometry.routing.passes import Pass, same_offset
from geometry.routing.plan import RoutPlan
from geometry.routing.reached import outline_reached, slot_reached
from geometry.tolerance import TOUCH

WORTH = 0.3
"""Wood in corners less deep than this (mm) is pared sooner than a bit is changed (common practice, no source)."""
GAIN = 0.75
"""A corner bit leaves at most this share of the depth."""


def with_corner_bit(plan: RoutPlan, singles: Iterable[RoutPlan]) -> RoutPlan | None:
    """The plan followed in its corners by the bit, of those whose plans alone are `singles`, that leaves least there.

    That bit is slimmer, runs on the same template and needs no other flips. None when the corners are not
    worth it or no such bit is there.
    """
    wood = plan.reached.left_depth
    if wood < WORTH:
        return None
    slim = min(one.follower.bit.cutter for one in plan.passes)
    best: RoutPlan | None = None
    for single in singles:
        last = single.passes[0]
        if (last.follower.bit.cutter >= slim or single.flips != plan.flips or not same_offset(single.offset, plan.offset)
                or last.rubs_on != plan.passes[0].rubs_on or single.reached.left_depth > GAIN * wood):
            continue
        if best is None or _rank(single) < _rank(best):
            best = single
    if best is None:
        return None
    after = [replace(one, corners=True) for one in best.passes]
    passes: tuple[Pass, ...] = tuple(one for side in ("face", "back") for one in (
        *(p for p in plan.passes if p.side == side), *(p for p in after if p.side == side)))
    return replace(plan, passes=passes, reached=replace(plan.reached, left=best.reached.left), corner_wood=wood)


def goes_as_far(layout: Headstock, of: str, wide: float, slim: float) -> bool:
    """Whether a cutter (mm) goes into the corners of a slot, or of the outline, as far as another one, so that no bit is changed for what
    it leaves there. Not where it leaves more of them than are looked at."""
    if wide <= slim + TOUCH:
        return True
    try:
        left, then = (outline_reached(layout, cutter).left_depth if of == OUTLINE else
                      slot_reached(next(slot for slot in layout.slots if slot.id == of), cutter).left_depth for cutter in (wide, slim))
    except GeometryError:
        return False
    return left < WORTH or then > GAIN * left


def _rank(single: RoutPlan) -> tuple:
    return (round(single.reached.left_area, 1), len(single.passes), -single.passes[0].follower.bit.cutter, single.bits)
