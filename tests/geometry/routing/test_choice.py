"""The maker's own choice of bits, the template that is chosen, corner bits, three bits, and sentences in inches."""

import math

import pytest
from msgspec.structs import replace

from geometry.edits import remove_features, rename
from geometry.edits.copying import mirror_layout
from geometry.edits.rack import choose_route, set_in_rack, set_rack, set_template_tool
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Loop, Node, Route, Slot, Tool, validate
from geometry.lengths import area, down, exact, mm, place, speaking, up
from geometry.routing import plan_routing
from geometry.routing.search import plan_outline, plan_slot
from geometry.sequence import operations
from tests.geometry.routing.specimens import BRAD, BUSH, bit, drawn, head, rubbing, straight, with_rack

BEARING = bit("bearing 12", cutter=12, cutting=16, bearing="shank", high=5, out=38)
SLIM = bit("bearing 6", cutter=6, cutting=11, shank=6, bearing="shank", high=5, out=38)
RECTANGLE = drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0))


def slot_plan(layout):
    return plan_slot(layout.slots[0], layout)


# ---- choosing ----------------------------------------------------------------
def two():
    return with_rack(head(straight()), BEARING, SLIM, drills=(BRAD, replace(BRAD, id="brad 8", diameter=8.0)))


def test_the_choice_comes_first_and_is_taken_back():
    layout = two()
    assert slot_plan(layout).best.bits == ("bearing 12",) and not slot_plan(layout).chosen
    chosen = choose_route(layout, "slot", (("bearing 6", None),))
    found = slot_plan(chosen)
    assert found.best.bits == ("bearing 6",) and found.chosen and found.lost_choice == ""
    assert found.plans[1].bits == ("bearing 12",), "the others stay on offer"
    assert plan_routing(chosen).slots[0].best.bits == ("bearing 6",)
    assert choose_route(chosen, "slot", ()) == layout


def test_a_choice_that_no_longer_works_says_why():
    layout = choose_route(two(), "slot", (("bearing 12", None),))
    narrow = replace(layout, slots=(straight(width=11),))
    found = slot_plan(narrow)
    assert found.best.bits == ("bearing 6",) and not found.chosen
    assert found.lost_choice == ("Your choice, bearing 12, no longer does it, so the best other plan is shown. Its 12 mm cutter "
                                 "does not pass slot, which is 11 mm wide where it is narrowest: up to 11 mm would.")


def test_a_choice_follows_names_and_goes_with_its_slot():
    layout = choose_route(choose_route(two(), "slot", (("bearing 12", None),)), "outline", (("bearing 6", None),))
    layout = rename(layout, "bits", "bearing 12", "fat")
    layout = rename(layout, "slots", "slot", "bass slot")
    assert layout.routes[0] == Route(of="bass slot", tools=(Tool(bit="fat"),))
    assert mirror_layout(layout).routes[0].of == "treble slot"
    assert [r.of for r in remove_features(layout, ("bass slot",)).routes] == ["outline"]


def test_another_rack_drops_what_it_does_not_hold():
    layout = set_template_tool(choose_route(two(), "slot", (("bearing 12", None),)), "bearing 12", None)
    less = replace(layout.rack, bits=(SLIM,))
    assert set_rack(layout, less).routes == () and set_rack(layout, less).template.bit is None
    named = set_in_rack(layout.rack, ("bits", "bearing 12", "id"), "fat")
    followed = set_rack(layout, named, ("bits", "bearing 12", "fat"))
    assert followed.template.bit == "fat" and followed.routes[0].tools[0].bit == "fat"


def test_two_choices_for_one_slot_are_refused():
    route = Route(of="slot", tools=(Tool(bit="bearing 12"),))
    with pytest.raises(GeometryError, match="slot is used more than once among the routes"):
        validate(replace(two(), routes=(route, route)))


def test_plans_on_the_chosen_template_come_first():
    """The bush asks for an opening 3.5 mm larger; what is printed for it is what is planned with."""
    tool = bit("ten", cutter=10, cutting=20, shank=8, out=40)
    layout = with_rack(head(straight()), BEARING, tool, bushes=(BUSH,), drills=(BRAD,))
    assert slot_plan(layout).best.offset == 0
    made = set_template_tool(layout, "ten", "bush")
    assert slot_plan(made).best.offset == pytest.approx(3.5)
    assert plan_outline(made).best.offset == pytest.approx(3.5)


def test_what_guides_a_bit_is_named_from_the_plan_to_the_bench():
    layout = with_rack(head(straight()), bit("ten", cutter=10, cutting=20, shank=8), bushes=(BUSH,), drills=(BRAD,))
    best = slot_plan(layout).best
    assert best.tools == (("ten", "bush"),) and {one.bush for one in best.passes} == {"bush"}
    routs = [op for op in operations(layout) if op.features == ("slot",) and op.setup.machine == "router"]
    assert routs and all(op.setup.bit == "ten in bush" and "rout slot with ten in bush to" in op.words for op in routs)


# ---- a bit for the corners ---------------------------------------------------
def test_a_slimmer_bit_follows_into_the_corners():
    """A 12 mm cutter leaves 6 (sqrt 2 - 1) = 2.49 mm in a square corner, a 6 mm one half of that."""
    layout = with_rack(head(RECTANGLE), BEARING, SLIM, drills=(BRAD,))
    found = slot_plan(layout)
    assert found.best.bits == ("bearing 12",), "one bit and the paring chisel come first"
    more = next(plan for plan in found.plans if plan.bits == ("bearing 12", "bearing 6"))
    wanted = choose_route(layout, "slot", more.tools)
    assert slot_plan(wanted).best == more and slot_plan(wanted).chosen
    assert [p.corners for p in more.passes] == [False] + [True] * (len(more.passes) - 1)
    assert more.corner_wood == pytest.approx(2.485, abs=0.01)
    assert more.reached.left_depth == pytest.approx(1.243, abs=0.01)
    assert "bearing 6, in the corners only: from 0 mm to" in more.passes[1].said(through=True, template=6)
    assert more.flips == 0


def test_a_corner_bit_that_leaves_nothing_is_the_best_of_all():
    """Corners of 3.5 mm: a 12 mm cutter leaves (6 - 3.5)(sqrt 2 - 1) = 1.04 mm there, one of 6 mm nothing."""
    quarter, r = math.tan(math.pi / 8), 3.5
    nodes = [Node(at=(x, y), bulge=b) for x, y, b in (
        (r, 40.0, 0.0), (16 - r, 40.0, quarter), (16.0, 40 + r, 0.0), (16.0, 140 - r, quarter),
        (16 - r, 140.0, 0.0), (r, 140.0, quarter), (0.0, 140 - r, 0.0), (0.0, 40 + r, quarter))]
    slot = Slot(id="slot", shape=DrawnSlot(loop=Loop(nodes=tuple(nodes))))
    found = slot_plan(with_rack(head(slot), BEARING, SLIM, drills=(BRAD,)))
    more = next(p for p in found.plans if any(one.corners for one in p.passes))
    assert more.corner_wood == pytest.approx(2.5 * (math.sqrt(2) - 1), abs=0.01) and more.reached.left == () and more.reached.left_depth == 0.0


def test_no_corner_bit_on_another_template():
    wide = bit("bearing 6", cutter=6, cutting=11, shank=6, bearing="shank", high=5, out=38, ring=8.0)
    found = slot_plan(with_rack(head(RECTANGLE), BEARING, wide, drills=(BRAD,)))
    assert all(len(plan.bits) == 1 for plan in found.plans)


def test_no_corner_bit_where_nothing_is_left():
    assert all(len(plan.bits) == 1 for plan in slot_plan(two()).plans)


# ---- three bits --------------------------------------------------------------
def stairs(*lengths, outs, first_shank=10.0):
    """10 mm bits, each with longer edges and standing farther out; the first cannot go deeper than its edges."""
    return [bit(f"bit {i}", cutter=10, cutting=length, shank=first_shank if i == 0 else 8.0, out=out,
                bearing="none" if i == 0 else "shank", high=5)
            for i, (length, out) in enumerate(zip(lengths, outs, strict=True))]


def test_three_bits_where_two_do_not_get_through():
    """Blind slot of 30 in solid wood under a 6 mm template, passes of 10 at most, 3 mm have to rub.

    bit 0 (10 out) stands 4 below the template: reaches 4... so 16 out reaches 10. bit 1 with 16 mm edges follows the
    wall from 19 on: with its edges' end at 10 + 10 = 20 it may, and standing 26 it gets to 20. bit 2 with 26 mm edges
    follows from 29 on: 20 + 10 = 30, standing 36 it gets there. bit 2 behind bit 0 would have to begin at 10 + 10 = 20.
    """
    tools = stairs(9, 16, 26, outs=(16, 26, 36))
    layout = with_rack(head(straight(depth=30.0), thickness=40.0), *tools)
    found = slot_plan(layout)
    assert found.best.bits == ("bit 0", "bit 1", "bit 2")
    assert found.best.passes[-1].ends == pytest.approx(30)
    depth = 0.0
    for one in found.best.passes:
        assert one.begins == pytest.approx(depth) and one.contact >= 3 - 1e-6 and one.takes <= 10 + 1e-6
        assert any(one.contact == pytest.approx(told) for told in rubbing(one, 6.0)) and not one.light
        depth = one.ends
    for missing in range(3):
        less = [tool for i, tool in enumerate(tools) if i != missing]
        assert slot_plan(with_rack(layout, *less)).best is None


def test_both_bits_from_both_sides_in_the_thickest_wood():
    """Bit 0 reaches 10 and bit 1 gets to 20 behind it: 20 + 20 = 39 + 1 of overlap, one flip, no third bit."""
    tools = stairs(9, 16, outs=(16, 26))
    found = slot_plan(with_rack(head(straight(), thickness=39.0), *tools))
    assert found.best.bits == ("bit 0", "bit 1") and found.best.flips == 1
    deep = {side: max(p.ends for p in found.best.passes if p.side == side) for side in ("face", "back")}
    assert deep["face"] + deep["back"] == pytest.approx(40)


# ---- the maker's unit --------------------------------------------------------
def test_lengths_in_the_makers_unit():
    assert (mm(12.7), exact(1.5875), area(12.34), place((1.27, -25.4))) == (
        "12.7 mm", "1.587 mm", "12.3 mm²", "1.3 across to the treble, -25.4 along")
    with speaking("in"):
        assert (mm(12.7), exact(1.5875), place((1.27, -25.4))) == ('0.5"', '0.0625"', '0.05" across to the treble, -1" along')
        assert area(645.16) == "1.0000 sq in"
        assert up(12.8) == pytest.approx(25.4 * 9 / 16) and down(12.8) == pytest.approx(12.7)
    with speaking("in64"):
        assert mm(9.525) == '3/8"' and exact(9.525) == '0.375"'
    assert mm(12.7) == "12.7 mm" and up(12.6) == 13.0 and down(12.6) == 12.5


def test_a_plan_made_in_inches_says_so():
    layout = with_rack(head(straight()), bit("fat", cutter=14, bearing="shank"), drills=(BRAD,))
    with speaking("in"):
        found = slot_plan(layout)
        assert found.verdicts[0].reason.startswith('Its 0.551" cutter does not pass slot, which is 0.511" wide')
        assert any(words.startswith('A 0.5" shank-bearing bit like fat would') for words in found.would)
        assert " mm" not in found.words
    assert slot_plan(layout).verdicts[0].reason.startswith("Its 14 mm cutter")
