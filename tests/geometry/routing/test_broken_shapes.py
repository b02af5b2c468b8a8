"""A slot or an outline that crosses itself stops its own plan, and no other."""

from msgspec.structs import replace

from app.panels.router.rout_sheet import rout_sheets, template_notes
from geometry.drawing.router_face import face_groups
from geometry.drawing.step_views import step_views
from geometry.layout import Loop, Node
from geometry.routing import plan_routing, reached
from geometry.sequence import best_order, operations, precedence
from tests.geometry.checks.heads import drawn
from tests.geometry.sequence.specimens import stocked

GOOD = stocked()
CROSSED = drawn("bow", (-20.0, 60.0), (-5.0, 80.0), (-5.0, 60.0), (-20.0, 80.0))
WITH_BOW = replace(GOOD, slots=(*GOOD.slots, CROSSED))
BOW_TIE = replace(GOOD, outline=Loop(nodes=tuple(Node(at=at) for at in (
    (-40.0, 0.0), (40.0, 180.0), (-40.0, 180.0), (40.0, 0.0)))))


def test_the_other_slots_and_the_outline_keep_their_plans():
    alone, both = plan_routing(GOOD), plan_routing(WITH_BOW)
    assert both.slots[0].best.tools == alone.slots[0].best.tools and both.outline.best.tools == alone.outline.best.tools
    assert both.slots[1].best is None and not both.slots[1].verdicts
    assert both.slots[1].words == both.slots[1].broken
    assert both.slots[1].words.startswith("There is no plan for bow: its wall crosses itself")


def test_a_wall_of_very_many_corners_stops_its_own_plan_and_says_why(monkeypatch):
    """Each corner that no bit gets into would be measured for each bit; here the four of an oblong are too many."""
    monkeypatch.setattr(reached, "MOST_PATCHES", 3)
    made = plan_routing(replace(GOOD, slots=(*GOOD.slots, drawn("box", (-21.0, 60.5), (-9.5, 60.5), (-9.5, 121.5), (-21.0, 121.5)))))
    assert made.slots[0].best is not None and made.slots[1].best is None
    assert made.slots[1].words == ("There is no plan for box: The line has more than 3 corners that a bit does not get into: "
                                   "draw it with fewer.")


def test_an_outline_that_crosses_itself_leaves_the_slots_their_plans():
    found = plan_routing(BOW_TIE)
    assert found.slots[0].best is not None and found.outline.best is None
    assert found.outline.words.startswith("There is no plan for the outline: ")


def test_the_router_stage_shows_what_can_be_planned():
    for layout, broken in ((WITH_BOW, "bow"), (BOW_TIE, "outline")):
        routing = plan_routing(layout)
        sheets = {sheet.of: sheet for sheet in rout_sheets(layout, routing)}
        assert sheets[broken].headline == next(p.broken for p in routing.all if p.of == broken) and not sheets[broken].able
        assert sheets["slot"].able and sheets["slot"].steps
        assert {m.owner for m in face_groups(layout, routing)["template"]} >= {"slot"}
        assert isinstance(template_notes(layout, routing), tuple)


def test_the_running_order_stops_that_slot_alone_and_draws_the_rest():
    ops = operations(WITH_BOW)
    assert [op.features for op in ops if op.blocked] == [("bow",)]
    steps = best_order(ops, precedence(WITH_BOW, ops)).steps
    assert set(steps) >= {op.id for op in operations(GOOD)}
    by_id = {op.id: op for op in ops}
    for at in range(0, len(steps), 4):
        views = step_views(WITH_BOW, [by_id[id] for id in steps], at, ops)
        assert views.plan and views.section
