"""The check of the template's bit and the planner of router cuts never contradict each other, on random racks."""

from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check
from geometry.layout import Drill, GuideBush, Rack, Router, RouterBit, Template
from geometry.routing.alone import Alone, alone
from geometry.routing.depth import Job
from geometry.routing.fit import narrowest
from geometry.routing.reached import slot_reached
from geometry.routing.waste import Waste, drill_waste, widest
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


@settings(max_examples=120)
@given(_racks(), st.none() | st.floats(3, 15), st.booleans())
def test_the_check_says_what_the_planner_finds(made, depth, hard):
    rack, template = made
    layout = head(slots=(slot(width=14.0, depth=depth),), rack=rack, template=template)
    layout = replace(layout, blank=replace(layout.blank, hard_wood=hard))
    one = layout.slots[0]
    waste = drill_waste(one, layout.blank, layout.rack)
    drilled = waste if isinstance(waste, Waste) else None
    thick = layout.blank.thickness
    job = Job(of=one.id, depth=thick if depth is None else min(depth, thick), thickness=thick,
              template=template.thickness, contact=layout.margins.template_contact,
              light=drilled is not None and drilled.light,
              entry=drilled.drill.diameter if drilled is not None and drilled.through else 0.0,
              hard=hard, router=rack.router, width=narrowest(one), widest=widest(one))
    planned = alone(rack.bits[0], rack.bushes[0] if template.bush else None, job,
                    lambda cutter, offset: slot_reached(one, cutter, offset))
    told = {snag.kind: snag.grade for snag in check(layout).snags}
    ours = [grade for kind, grade in told.items() if kind in ("bit-too-short", "bit-unguided")]
    if isinstance(planned, Alone):
        assert ours == (["note"] if planned.flips else []), told
    elif planned.stage in (3, 4):
        assert ours == ["tight"], (told, planned.reason)


def test_why_a_bit_does_not_do_it_is_said_in_the_makers_unit():
    long = RouterBit(id="bit", cutter=12.7, cutting_length=38.1, shank=6.35, stick_out=60.0, bearing="shank", bearing_diameter=12.7)
    snag, = (s for s in check(head(slots=(slot(width=14.0),), rack=Rack(bits=(long,)), template=Template(bit="bit"))).snags
             if s.kind == "bit-unguided")
    assert "its cutting edges are 38.1 mm long and a pass may take 12.7 mm" in snag.text
    assert 'its cutting edges are 1.5" long and a pass may take 0.5"' in snag.text_in("in")
    assert 'are 1 1/2" long and a pass may take 1/2"' in snag.text_in("in64")
    bush = GuideBush(id="bush", outer=17.0, inner=9.525, length=5.0)
    narrow_one = head(slots=(slot(width=14.0),), rack=Rack(bits=(replace(long, bearing="none"),), bushes=(bush,)),
                      template=Template(bit="bit", bush="bush"))
    snag, = (s for s in check(narrow_one).snags if s.kind == "bush-too-narrow")
    assert "The 12.7 mm cutter" in snag.text and 'The 0.5" cutter' in snag.text_in("in") and '0.375"' in snag.text_in("in")
