"""The check of the template's bit and the planner of router cuts never contradict each other, on random racks."""

from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check
from geometry.layout import Drill, GuideBush, Rack, Router, RouterBit, Template
from geometry.routing.alone import Alone, alone
from geometry.routing.depth import Job
from geometry.routing.reached import slot_reached
from geometry.routing.waste import Waste, drill_waste, narrow, widest
from tests.geometry.checks.heads import head, slot

_sizes = st.sampled_from([6.0, 8.0, 9.5, 10.0, 12.0, 12.7])


@st.composite
def _racks(draw):
    bearing = draw(st.sampled_from(["none", "tip", "shank"]))
    bit = RouterBit(id="bit", cutter=draw(_sizes), cutting_length=draw(st.floats(4, 40)), shank=draw(_sizes),
                    stick_out=draw(st.floats(15, 70)), bearing=bearing,
                    bearing_diameter=None if bearing == "none" else draw(_sizes))
    bush = GuideBush(id="bush", outer=draw(st.floats(14, 24)), inner=13.0, length=draw(st.floats(1, 12)))
    drills = tuple(Drill(id=f"d{d:g}", kind="forstner", diameter=d, length=draw(st.floats(10, 60)), spur=2.0)
                   for d in draw(st.sets(st.sampled_from([8.0, 10.0]))))
    rack = Rack(bits=(bit,), bushes=(bush,), drills=drills, router=Router(plunge=draw(st.floats(20, 70))))
    chosen = "bush" if bearing == "none" and draw(st.booleans()) else None
    return rack, Template(bit="bit", bush=chosen, thickness=draw(st.floats(2, 14)))


@settings(max_examples=120, deadline=None)
@given(_racks(), st.none() | st.floats(3, 15), st.booleans())
def test_the_check_says_what_the_planner_finds(made, depth, hard):
    rack, template = made
    layout = head(slots=(slot(width=14.0, depth=depth),), rack=rack, template=template)
    layout = replace(layout, blank=replace(layout.blank, hard_wood=hard))
    one = layout.slots[0]
    waste = drill_waste(one, layout)
    drilled = waste if isinstance(waste, Waste) else None
    thick = layout.blank.thickness
    job = Job(of=one.id, depth=thick if depth is None else min(depth, thick), thickness=thick,
              template=template.thickness, contact=layout.margins.template_contact,
              light=drilled is not None and drilled.light,
              entry=drilled.drill.diameter if drilled is not None and drilled.through else 0.0,
              hard=hard, router=rack.router, width=narrow(one), widest=widest(one))
    planned = alone(rack.bits[0], rack.bushes[0] if template.bush else None, job,
                    lambda cutter, offset: slot_reached(one, cutter, offset))
    told = {snag.kind: snag.grade for snag in check(layout).snags}
    ours = [grade for kind, grade in told.items() if kind in ("bit-too-short", "bit-unguided")]
    if isinstance(planned, Alone):
        assert ours == (["note"] if planned.flips else []), told
    elif planned.stage in (3, 4):
        assert ours == ["tight"], (told, planned.reason)
