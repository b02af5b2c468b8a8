"""How the bit and follower that are chosen for the template do in one slot."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from geometry.by_size import of_slot, remembered_by_size
from geometry.curves.polygons import polygon
from geometry.layout import Blank, Headstock, Rack, Slot, Template, slot_path
from geometry.layout.shop import Margins
from geometry.layout.slots import at_home
from geometry.routing.depth import Reach, reach_of
from geometry.routing.depth_of_slot import passes_for
from geometry.routing.fit import enters, pieces, wood_left
from geometry.routing.follower import Follower, template_opening
from geometry.routing.refusal import Refusal

Way = Literal["one side", "both sides", "too short", "not guided"]


class ChosenFit(Struct, frozen=True):
    """What becomes of one slot with one follower (mm).

    A cutter that leaves wood deeper than it is wide does not enter. `depth` is how deep the slot is, through the
    wood when `through`; `reach` how deep the bit comes from one side, None where that is no limit.
    """

    cutter_enters: bool
    follower_enters: bool
    depth: float
    through: bool
    reach: float | None
    way: Way


def chosen_fit(layout: Headstock, slot: Slot, chosen: Follower) -> ChosenFit:
    """Whether cutter and follower go in, and whether the passes come down to the slot's depth. Pure.

    GeometryError when a drawn slot has no inside.
    """
    return _fit(at_home(slot)[0], chosen, layout.blank, layout.rack, layout.template, layout.margins)


@remembered_by_size(64, of_slot)
def _fit(slot: Slot, chosen: Follower, blank: Blank, rack: Rack, template: Template, margins: Margins) -> ChosenFit:
    """All that it depends on, so that a slot that is only moved is asked once."""
    made, job = passes_for(slot, chosen, blank, rack, template, margins)
    reach = None if chosen.bit.bearing == "tip" else reach_of(chosen, job)
    limit = max(0.0, reach.most) if isinstance(reach, Reach) and reach.most < job.depth else None
    if isinstance(made, Refusal):
        way: Way = "not guided" if limit is None else "too short"
    else:
        way = "one side" if made[-1].side == made[0].side else "both sides"
    area, cutter = polygon(slot_path(slot)), chosen.bit.cutter
    left = wood_left(slot, area, cutter)
    return ChosenFit(enters(slot, area, cutter) == 1 and (left is None or not left.no_corner(cutter)),
                     pieces(template_opening(slot, chosen.offset), chosen.diameter) == 1,
                     job.depth, job.through, limit, way)
