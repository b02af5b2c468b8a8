"""How one bit with its follower gets to the depth of one slot: what the checks and the panel ask the planner."""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry.layout import Blank, Rack, Slot, Template
from geometry.layout.shop import Margins
from geometry.routing.alone import outcome_of, passes_of
from geometry.routing.depth import Job
from geometry.routing.follower import Follower
from geometry.routing.passes import Pass
from geometry.routing.refusal import Refusal
from geometry.routing.waste import drilled


def passes_for(slot: Slot, guide: Follower, blank: Blank, rack: Rack, template: Template,
               margins: Margins) -> tuple[tuple[Pass, ...] | Refusal, Job]:
    """The planner's passes for one bit in one slot, or why there are none, and the job that they were asked for (mm).

    GeometryError when a drawn slot crosses itself.

    Whether the waste can be drilled out takes long to tell for a drawn slot; it is asked only where it matters.
    """
    thick = blank.thickness
    job = Job(of=slot.id, depth=slot.floor(thick), thickness=thick, template=template.thickness,
              contact=margins.template_contact, light=True, entry=math.inf, hard=blank.hard_wood,
              router=rack.router)
    solid = replace(job, light=False, entry=0.0)
    if outcome_of(guide, job) == outcome_of(guide, solid):
        return passes_of(guide, solid), solid
    light, entry = drilled(slot, blank, rack)
    job = replace(job, light=light, entry=entry)
    return passes_of(guide, job), job
