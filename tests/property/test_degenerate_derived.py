"""Layouts without sense through everything that is derived from them: a result or one sentence, never a crash."""

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats.errors import FormatError
from app.panels.describe import describe
from app.sheets import pages, plan_work
from geometry.accuracy import simulate
from geometry.drawing.line_section import line_section
from geometry.drawing.opened_out import opened_out_groups
from geometry.drawing.sections import section_along_bore
from geometry.drawing.solid import solid
from geometry.drawing.turning import View, turned
from geometry.errors import GeometryError
from geometry.layout import Blank, DrawnSlot, Headstock, Loop, Node, Pin, SingleHole, Slot, StraightSlot, feature_ids
from geometry.routing import plan_routing
from tests.geometry.checks.heads import FACE, SIDE, face, head, loop, side
from tests.property.layouts import DEMO, edited


def derived(layout: Headstock):
    """(name, function) of everything that the window or the sheets ask for."""
    yield "opened-out view", lambda: opened_out_groups(layout)
    yield "solid", lambda: turned(solid(layout), View(0.4, 0.3))
    yield "section line", lambda: line_section(layout, (-80.0, 60.0), (80.0, 63.0))
    yield "sections", lambda: [section_along_bore(layout, tuner.id) for tuner in layout.tuners]
    yield "router plan", lambda: plan_routing(layout)
    yield "running order", lambda: plan_work(layout)
    yield "accuracy", lambda: simulate(layout, 200)
    yield "sheets", lambda: pages(layout, "A4")


def through_everything(layout: Headstock) -> dict[str, str]:
    """What each came to: "" or the sentence with which it was refused."""
    said = {}
    for name, function in derived(layout):
        try:
            function()
            said[name] = ""
        except (GeometryError, FormatError) as error:
            said[name] = str(error)
            assert said[name].strip().endswith((".", "?")) and "\n" not in said[name], said[name]
    return said


_ODD = {
    "tiny": Headstock(name="", blank=Blank(bass=1, treble=1, tip=1, thickness=1), outline=loop((0, 0), (1, 0), (1, 1))),
    "no tuners, no slots": head(tuners=(), slots=()),
    "slot outside": head(slots=(Slot(id="s", shape=StraightSlot(nut_end=(300.0, 40.0), tip_end=(300.0, 40.0), width=12.0)),)),
    "huge hole": head(holes=(SingleHole(id="h", at=(0.0, 90.0), diameter=500.0),)),
    "no slot": head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=()),
    "beyond the edge": head(tuners=(side("a", -50.0), side("b", 900.0)), patterns=(SIDE,)),
    "below the wood": head(tuners=(side("a", 90.0, depth=400.0),), patterns=(SIDE,)),
    "far pin": head(pins=(Pin(id="p", at=(400.0, 400.0)),)),
    "one place": head(tuners=(face("a", 10.0, 90.0), face("b", 10.0, 90.0)), patterns=(FACE,)),
    "no width": head(outline=Loop(nodes=(Node(at=(0, 0)), Node(at=(0, 10)))), tuners=(face("a", 0.0, 5.0, turn=None),),
                     patterns=(FACE,)),
    "crossed outline": head(outline=loop((-40, 0), (40, 0), (-40, 120), (40, 120))),
    "crossed slot": head(slots=(Slot(id="s", shape=DrawnSlot(loop=loop((0, 20), (9, 20), (0, 60), (9, 60)))),)),
    "crossed slots under side tuners": replace(DEMO, slots=tuple(replace(slot, shape=DrawnSlot(
        loop=loop((-35, 20), (35, 20), (-35, 160), (35, 160)))) for slot in DEMO.slots)),
    "slots without width": replace(DEMO, slots=tuple(replace(slot, ramp=None, shape=StraightSlot(
        nut_end=(x, 30.0), tip_end=(x, 160.0), width=1e-12)) for slot, x in zip(DEMO.slots, (-15.0, 15.0), strict=True))),
    "slot wider than the head": head(slots=(Slot(id="s", shape=StraightSlot(
        nut_end=(0.0, 40.0), tip_end=(0.0, 120.0), width=190.0)),)),
    "thin wood": replace(DEMO, blank=replace(DEMO.blank, thickness=0.5)),
    "no strings": replace(DEMO, strings=()),
    "empty rack": replace(DEMO, rack=replace(DEMO.rack, bits=(), bushes=(), drills=())),
}


@pytest.mark.parametrize("name", _ODD)
def test_named_layouts(name):
    through_everything(_ODD[name])


@pytest.mark.parametrize("name", _ODD)
def test_whatever_is_held_the_panel_has_its_numbers(name):
    """It is filled in the middle of a drag, where nobody hears a sentence."""
    layout = _ODD[name]
    for id in ("outline", "blank", "nut", *feature_ids(layout)):
        assert describe(layout, id, "mm").title


@settings(phases=(Phase.explicit, Phase.generate), max_examples=6)
@given(st.data())
def test_random_edits(data):
    layout = DEMO
    for _ in range(data.draw(st.integers(1, 8))):
        layout = data.draw(edited(layout))
    through_everything(layout)
