"""Operations as they follow from a layout, against numbers worked out by hand."""

import math

import msgspec
import pytest

from geometry.checks import check
from geometry.layout import (
    Blank,
    Bore,
    Drill,
    Ear,
    EdgePlace,
    FreePlace,
    Loop,
    Node,
    Pin,
    SingleHole,
    Slot,
    StraightSlot,
    Template,
    Tuner,
)
from geometry.layout.shop import DrillPress
from geometry.routing.search import plan_outline, plan_slot
from geometry.sequence import KINDS, Operation, Routing, Trip, Wishes, operations
from geometry.sequence.drill_ops import _grouped
from geometry.sequence.operation import Cut, Setup
from geometry.solids import holes
from geometry.solids.drilling import point_length
from geometry.solids.side import shared_tilts
from tests.geometry.drawing.specimens import FACE
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo, finished, leaning, stocked

REPLACE = msgspec.structs.replace
PLANS = {"slot": THROUGH, "outline": THROUGH}


def by_id(ops: tuple[Operation, ...]) -> dict[str, Operation]:
    return {op.id: op for op in ops}


def test_the_plain_head_needs_these_operations() -> None:
    ops = operations(stocked())
    assert [op.id for op in ops] == [
        "template", "mark", "pin hole pin.1", "counterbore front.1.1", "bore front.1.2", "bore peep.1",
        "side bore flank.1.1", "pilot front.2.1", "waste holes slot", "saw slot", "rout slot 1", "cut outline",
        "rout outline 1", "edge pilot flank.2.1", "clean up"]
    assert [op.id for op in ops if op.blocked] == []


def test_what_a_step_is_called_and_where_it_is_drilled() -> None:
    ops = by_id(operations(stocked(), {"slot": TURNED, "outline": TURNED}))
    assert {op.id: op.title for op in ops.values() if op.drillings} == {
        "pin hole pin.1": "Locating pin hole pin", "counterbore front.1.1": "Counterbore front", "bore front.1.2": "Post bore front",
        "bore peep.1": "Hole peep", "side bore flank.1.1": "Side bore flank", "pilot front.2.1": "Screw pilot front.2",
        "edge pilot flank.2.1": "Screw pilot flank.2"}
    assert ops["counterbore front.1.1"].words == "8.8 mm wide, 8 mm deep; 28 mm to the bass side, 60 mm from the nut line."
    assert ops["bore front.1.2"].words == "6.5 mm wide, through, on a spoil board; 28 mm to the bass side, 60 mm from the nut line."
    assert "drill pin through template and blank, 6 mm wide, on a spoil board; on the centreline, 25 mm from the nut line." in ops["pin hole pin.1"].words
    named = by_id(operations(stocked(holes=(SingleHole(id="hole 1", at=(0.5, 160.0), diameter=5.0, depth=7.0),))))["bore hole 1.1"]
    assert named.title == "Hole 1" and "; 0.5 mm to the treble side" in named.words


def test_every_drilling_of_the_demo_is_in_one_operation_and_counts_are_those_of_the_trade() -> None:
    ops = operations(demo())
    drillings = [d for op in ops for d in op.drillings]
    assert sorted(d.id for d in drillings) == sorted(d.id for hole in holes(demo()) for d in hole.drillings)
    of_tuners = [d for d in drillings if d.role != "locating"]
    # Twelve tuners: 36 holes and 42 drilling operations. Common practice, no source.
    assert len(of_tuners) == 42
    assert len({d.hole for d in of_tuners}) == 36


def test_ids_are_unique_and_kinds_come_in_the_order_of_habit() -> None:
    ops = operations(finished(demo()))
    assert len({op.id for op in ops}) == len(ops)
    assert [KINDS.index(op.kind) for op in ops] == sorted(KINDS.index(op.kind) for op in ops)
    assert all(op.words.endswith(".") and op.title for op in ops)


def test_trips_of_one_slot_from_one_side_have_titles_of_their_own() -> None:
    """Who ticks them off must tell them apart."""
    trips = (Trip("face", "wide", None, 0.0, 13.0), Trip("face", "wide", None, 13.0, 16.0, template=False),
             Trip("face", "slim", None, 0.0, 16.0, corners=True))
    titles = [op.title for op in operations(stocked(), {"slot": Routing(trips), "outline": THROUGH}) if op.kind.startswith("rout")]
    assert titles == ["Rout slot from the face, to 13 mm", "Rout slot from the face, to 16 mm",
                      "Rout slot from the face, its corners", "Rout the outline from the face"]
    assert by_id(operations(stocked(), {"slot": TURNED, "outline": TURNED}))["rout slot 2"].title == "Rout slot from the back"
    assert by_id(operations(stocked(), {"slot": TURNED, "outline": TURNED}))["rout outline 2"].title == "Rout the outline from the back"


def test_a_leaning_edge_tilts_the_table_by_its_slope_and_raises_the_nut_end() -> None:
    op = by_id(operations(leaning()))["side bore flank.1.1"]
    # The treble edge leans out by 10 over 90: the bore tilts by -atan(1/9) = -6.34 degrees.
    assert op.setup.machine == "drill press"
    assert op.setup.bit == "brad 6.4"
    assert op.setup.side == "treble edge"
    assert op.setup.table.tilt == pytest.approx(-math.atan(1 / 9))
    assert op.setup.table.fence == pytest.approx(8.0)
    # Blocks: 100 sin(6.34 deg) = 11.04 mm.
    assert op.setup.table.words() == "table tilted 6.3° (11 mm of blocks over 100 mm), nut end raised, axis 8 mm from the fence"
    # On the card it is 0.435 in; 7/16 in, which is 11.11 mm, would be near enough elsewhere.
    assert op.setup.table.words("in64").startswith('table tilted 6.3° (0.442" of blocks over 4"')


def test_a_stop_counts_from_the_square_edge() -> None:
    op = by_id(operations(stocked()))["side bore flank.1.1"]
    # 30 mm deep from the seat at x = 40, square edge at x = 45; the brad point of 6.4 runs 1.92 ahead.
    assert op.stop == pytest.approx(35.0)
    assert "stop at 35 mm, 36.9 mm to the point" in op.words
    assert "100 mm from the nut line and 8 mm below the face" in op.words


def test_waste_holes_through_stop_where_the_full_diameter_has_come_through() -> None:
    layout = demo()
    made = [op for op in operations(layout) if op.kind == "waste holes"]
    assert made
    for op in made:
        drill = next(drill for drill in layout.rack.drills if drill.id == op.setup.bit)
        assert op.stop == pytest.approx(layout.blank.thickness)
        assert op.waste_holes.depth == pytest.approx(layout.blank.thickness + point_length(drill))


def test_a_drill_that_the_rack_lacks_is_named_in_the_makers_unit() -> None:
    layout = stocked(holes=(SingleHole(id="odd", at=(0.0, 160.0), diameter=7.9375),))
    assert by_id(operations(layout))["bore odd.1"].setup.bit.endswith(" 7.9375")
    # 5/16 of an inch.
    assert by_id(operations(layout, wishes=Wishes(unit="in")))["bore odd.1"].setup.bit.endswith(' 0.3125"')


def test_behind_the_nut_line_is_said_so() -> None:
    ops = by_id(operations(stocked(pins=(Pin(id="back pin", at=(-4.0, -3.0), diameter=6.0), Pin(id="mid pin", at=(0.0, -12.5), diameter=6.0)))))
    assert "4 mm to the bass side, 3 mm behind the nut line" in ops["pin hole back pin.1"].words
    assert "on the centreline, 12.5 mm behind the nut line" in ops["pin hole mid pin.1"].words


def test_opposite_bores_share_a_setting_only_at_half_the_thickness() -> None:
    def settings(layout: object) -> list[Setup]:
        return [op.setup for op in operations(layout) if op.kind == "side bore"]

    one, two = settings(leaning())
    assert one.table == two.table and one.side != two.side
    high = leaning(tuners=tuple(REPLACE(t, place=REPLACE(t.place, depth=7.0)) for t in leaning().tuners))
    one, two = settings(high)
    # 7 below the face is 9 from the fence where the back lies against it, as it does with the treble edge up.
    assert one.table.tilt == two.table.tilt
    assert {setup.side: setup.table.fence for setup in (one, two)} == {"treble edge": 9.0, "bass edge": 7.0}
    assert ["and the back against" in op.words for op in operations(high) if op.kind == "side bore"] == [
        setup.side == "treble edge" for setup in (one, two)]


def test_shared_settings_of_the_demo_are_those_that_side_bores_report() -> None:
    layout = demo()
    tables = {op.features[0]: op.setup.table for op in operations(layout) if op.kind == "side bore"}
    for tuner, table in tables.items():
        assert {other for other, its in tables.items() if its == table} == {tuner, *shared_tilts(layout, tuner)}


def test_settings_that_lie_near_each_other_are_one_in_their_middle() -> None:
    """The first two lie within 5 of each other, not all three."""
    assert _grouped([6.75, -3.25, 0.75, -3.25], 5.0) == {-3.25: -1.25, 0.75: -1.25, 6.75: 6.75}


def test_side_pilots_are_drilled_by_hand_on_the_seat() -> None:
    pilot = by_id(operations(stocked()))["edge pilot flank.2.1"]
    assert (pilot.setup.machine, pilot.stop) == ("hand drill", 9.0)


def test_a_finish_brings_a_final_diameter_for_every_bushing() -> None:
    ops = operations(finished(demo()))
    assert [op.kind for op in ops][-7:] == ["finish"] + 6 * ["final diameter"]
    assert not [op for op in operations(demo()) if op.kind in ("finish", "final diameter")]


def test_trips_with_one_bit_from_one_side_are_one_operation() -> None:
    ops = by_id(operations(stocked(), {"slot": TURNED, "outline": THROUGH}))
    face, back = ops["rout slot 1"], ops["rout slot 2"]
    assert face.cut.start == 0.0 and face.cut.end == 10.0
    # 7 deep from the back of wood 16 thick leaves off at 9 below the face.
    assert back.cut.start == 9.0 and back.cut.end == 16.0
    assert face.setup.side == "face" and back.setup.side == "back"
    length = face.amount / 2
    assert length == pytest.approx(2 * 110 + math.pi * 13)
    assert "in 2 passes" in face.words


def test_a_trip_from_the_back_without_pins_is_warned_of() -> None:
    bare = by_id(operations(stocked(pins=()), {"slot": TURNED, "outline": THROUGH}))
    assert "Without pins" in bare["rout slot 2"].cautions[0]
    one = by_id(operations(stocked(), {"slot": TURNED, "outline": THROUGH}))["rout slot 2"]
    assert "One pin" in one.cautions[0] and "template on its pin, turned to the marks: rout" in one.words


def test_what_pins_the_outlines_template_cannot_use_do_not_bring_it_back() -> None:
    """Of two pins one stands in the waste: a template as large as the blank has both, that of the outline one."""
    pins = (*stocked().pins, Pin(id="tip", at=(0.0, 185.5), diameter=4.0))
    ops = by_id(operations(stocked(pins=pins, template=Template(board="blank")), {"slot": TURNED, "outline": TURNED}))
    assert ops["rout slot 2"].cautions == () and "One pin" in ops["rout outline 2"].cautions[-1]
    for board, used in (("blank", 2), ("outline", 1)):
        layout = stocked(pins=pins, template=Template(board=board))
        assert [plan.pins for plan in plan_slot(layout.slots[0], layout).plans[:1]] == [used]
        assert [plan.pins for plan in plan_outline(layout).plans[:1]] == [1]
    crossed = REPLACE(layout, outline=Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 180.0), (40.0, 0.0), (-40.0, 180.0)))))
    assert plan_slot(crossed.slots[0], crossed).plans[0].pins == 2


def test_the_routing_planner_serves_where_no_plan_is_given() -> None:
    ops = operations(stocked(), {"outline": THROUGH})
    assert [op.setup.bit for op in ops if op.kind == "rout"] == ["12 shank bearing"]


def test_without_router_bits_a_slot_is_blocked_and_the_outline_is_finished_by_hand() -> None:
    ops = by_id(operations(stocked(rack=REPLACE(stocked().rack, bits=()))))
    assert ops["rout slot 0"].blocked.startswith("No bit of the rack can rout slot")
    assert ops["rout slot 0"].words == "Rout slot to its line.", "which it is told by too where it is done already"
    assert ops["rout outline"].setup.machine == "bench"
    assert ops["rout outline"].blocked == "" and ops["rout outline"].cut == Cut(0.0, 16.0)


def test_a_slot_without_a_plan_is_another_step_than_one_of_a_slot_with_nearly_its_name() -> None:
    slot = stocked().slots[0]
    layout = stocked(slots=(slot, REPLACE(slot, id=f"{slot.id} 1")))
    ids = [op.id for op in operations(layout, {"slot": TURNED, "slot 1": REPLACE(TURNED, blocked="No bit."), "outline": THROUGH})]
    assert len(set(ids)) == len(ids) and {"rout slot 1", "rout slot 1 0"} <= set(ids)


def test_a_pin_in_a_later_bore_of_its_own_size_is_drilled_once() -> None:
    layout = stocked(pins=(Pin(id="pin", at=(-28.0, 60.0), diameter=6.5),))
    ops = by_id(operations(layout))
    assert "bore front.1.2" not in ops
    assert [d.id for d in ops["pin hole pin.1"].drillings] == ["pin.1", "front.1.2"]
    assert ops["pin hole pin.1"].features == ("pin", "front")
    assert "; it is the post bore of front too." in ops["pin hole pin.1"].words
    assert "plug" not in ops["clean up"].words


@pytest.mark.parametrize(("pin", "bore"), [
    (Pin(id="pin", at=(-28.0, 60.0), diameter=8.0), "bore front.1.2"), (Pin(id="pin", at=(-27.9, 60.0), diameter=6.5), "bore front.1.2"),
    (Pin(id="pin", at=(0.0, 160.0), diameter=5.0), "bore peep.1")], ids=["wider", "beside it", "where the bore is blind"])
def test_a_pin_that_is_no_bore_leaves_it_to_be_drilled(pin: Pin, bore: str) -> None:
    ops = by_id(operations(stocked(pins=(pin,))))
    assert ops[bore].cautions == () and ops["pin hole pin.1"].features == ("pin",)
    assert " too." not in ops["pin hole pin.1"].words


def test_a_pin_that_stays_visible_is_plugged_and_one_in_the_waste_is_not() -> None:
    assert "plug the pin hole pin," in by_id(operations(stocked()))["clean up"].words
    waste = stocked(pins=(Pin(id="pin", at=(0.0, 186.0), diameter=3.0),))
    assert "plug" not in by_id(operations(waste))["clean up"].words
    assert "on centreline and nut line" in by_id(operations(waste))["cut outline"].words


def test_a_narrow_pin_on_a_wider_bore_warns_that_the_centre_is_gone() -> None:
    layout = stocked(pins=(Pin(id="pin", at=(-28.0, 60.0), diameter=4.0),))
    ops = by_id(operations(layout))
    assert ops["bore front.1.2"].cautions == ("The hole of pin leaves no wood for a centre point: open it up with a twist drill or a reamer, clamped.",)
    assert ops["counterbore front.1.1"].cautions == ()


@pytest.mark.parametrize(("bit", "said"), [(6.46, "The drill bit makes it 0.04 mm narrower than the 6.5 mm asked for"),
                                           (6.54, "The drill bit makes it 0.04 mm wider than the 6.5 mm asked for")])
def test_a_drill_of_nearly_the_size_is_told_which_way_it_is_off(bit: float, said: str) -> None:
    rack = REPLACE(stocked().rack, drills=(Drill(id="bit", kind="brad", diameter=bit, length=100.0, spur=1.0),))
    assert [caution.partition(":")[0] for caution in by_id(operations(stocked(rack=rack), PLANS))["bore front.1.2"].cautions] == [said]


def test_a_drill_that_comes_into_wood_that_is_missing_already_is_told_to_find_it_plugged() -> None:
    """A hole of 5 beside a counterbore of 8.8 and a bore of 6.5: into them nearer than 6.9 and 5.75 mm from their axis.

    A pilot goes 9 deep from the back of 16, up to 7 below the face, where a pocket may end.
    """
    def told(**there: object) -> set[str]:
        return {op.kind for op in operations(stocked(**there), PLANS) if any("there already: plug that first" in c for c in op.cautions)}

    def beside(away: float, plugged: bool = False) -> SingleHole:
        return SingleHole(id="old", at=(-28.0 + away, 60.0), diameter=5.0, depth=9.0, there=True, plugged=plugged)

    def pocket(depth: float, there: bool = True) -> Slot:
        return Slot(id="pocket", shape=StraightSlot(nut_end=(-28.0, 50.0), tip_end=(-28.0, 52.0), width=4.0), depth=depth, there=there)

    slot = stocked().slots[0]
    assert [told(holes=(beside(away),)) for away in (5.7, 5.8, 6.8, 7.0)] == [
        {"counterbore", "bore"}, {"counterbore"}, {"counterbore"}, set()]
    assert [told(slots=(slot, pocket(depth))) for depth in (6.9, 7.1)] == [set(), {"pilot"}]
    assert told(holes=(beside(5.7, plugged=True),)) == told(slots=(slot, pocket(7.1, there=False))) == set()


@pytest.mark.parametrize(("at", "nearest"), [((40.0, 300.0), 190), ((80.0, 300.0), 180), ((60.0, 380.0), 120)])
def test_what_the_throat_has_to_reach_over_is_counted_from_the_nearest_edge_of_a_lopsided_blank(at: tuple[float, float], nearest: int) -> None:
    """150 to the bass side, 260 to the treble side, 500 to the tip; the neck goes on behind the nut line."""
    far = SingleHole(id="far", at=at, diameter=5.0, depth=7.0)
    layout = stocked(blank=Blank(bass=150.0, treble=260.0, tip=500.0, behind=10.0, thickness=16.0), holes=(far,))

    def blocked(throat: float) -> str:
        return by_id(operations(REPLACE(layout, rack=REPLACE(layout.rack, press=REPLACE(layout.rack.press, throat=throat))), PLANS))["bore far.1"].blocked

    assert f"{nearest} mm from the nearest edge" in blocked(nearest - 1.0) and not blocked(float(nearest))


def test_ears_are_glued_by_name() -> None:
    ops = operations(stocked(ears=(Ear(id="treble ear", side="treble", width=10.0, start=20.0, end=150.0),)))
    assert ops[0].id == "glue ear treble ear"
    assert "Glue treble ear to the treble side" in ops[0].words


def test_a_drill_as_long_as_the_hole_with_its_point_will_do() -> None:
    long = REPLACE(stocked().rack, drills=(Drill(id="stub", kind="brad", diameter=6.4, length=36.0, spur=1.0),))
    assert by_id(operations(stocked(rack=long), PLANS))["side bore flank.1.1"].blocked == ""


@pytest.mark.parametrize(("changes", "op", "words"), [
    ({"rack": REPLACE(stocked().rack, drills=())}, "bore front.1.2", "The rack has no 6.5 mm drill: add one"),
    ({"rack": REPLACE(stocked().rack, drills=(Drill(id="stub", kind="brad", diameter=6.4, length=35.9, spur=1.0),))},
     "side bore flank.1.1", "It is 36 mm deep to the drill's point, the drill stub is 35.9 mm long"),
    ({"rack": REPLACE(stocked().rack, press=DrillPress(throat=16.0))}, "bore front.1.2",
     "It lies 17 mm from the nearest edge of the blank, the drill press has a throat of 16 mm"),
    ({"pins": (Pin(id="pin", at=(17.0, 60.0)),)}, "rout slot 1", "The pin pin stands in the way of the cutter"),
])
def test_what_the_shop_or_the_layout_cannot_do_is_blocked_in_words(changes: dict, op: str, words: str) -> None:
    blocked = by_id(operations(stocked(**changes), PLANS))[op]
    assert blocked.blocked.startswith(words), blocked.blocked
    assert not any(name in blocked.blocked for name in blocked.features), "its title, which stands beside it, names it"


def test_a_tilt_past_the_table_is_blocked_and_one_past_the_skate_angle_is_warned_of() -> None:
    usual = by_id(operations(leaning()))["side bore flank.1.1"]
    assert usual.blocked == "" and usual.cautions == ()
    stiff = leaning(rack=REPLACE(stocked().rack, press=DrillPress(tilt=5.0)), margins=REPLACE(leaning().margins, skate_angle=6.0))
    op = by_id(operations(stiff))["side bore flank.1.1"]
    assert op.blocked.startswith("It needs a tilt of 6.3°, the table of the drill press tilts to 5.0°")
    assert "skates" in op.cautions[0]
    just = math.degrees(abs(usual.setup.table.tilt)) - 1e-9
    as_far = leaning(rack=REPLACE(stocked().rack, press=DrillPress(tilt=just)), margins=REPLACE(leaning().margins, skate_angle=just))
    op = by_id(operations(as_far))["side bore flank.1.1"]
    assert op.blocked == "" and op.cautions == () and not [snag for snag in check(as_far).snags if snag.kind in ("skate", "table-tilt")]


def test_an_axis_that_never_meets_the_square_edge_is_blocked() -> None:
    stepped = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 100.0), (20.0, 100.0),
                                                      (20.0, 180.0), (-40.0, 180.0))))
    # 110 along the edge lies in the middle of the step, which faces the tip.
    on_the_step = REPLACE(stocked().tuners[1], place=EdgePlace(side="treble", along=110.0))
    op = by_id(operations(stocked(outline=stepped, slots=(), tuners=(on_the_step,)), PLANS))["side bore flank.1.1"]
    assert "never meets the treble edge" in op.blocked


def test_a_short_quill_is_a_caution() -> None:
    layout = stocked(rack=REPLACE(stocked().rack, press=DrillPress(quill=36.0)))
    # 35 to the full diameter and 1.92 of point are more than 36.
    assert "The quill travels 36 mm" in by_id(operations(layout))["side bore flank.1.1"].cautions[0]


def test_words_follow_the_unit() -> None:
    op = by_id(operations(stocked(), wishes=Wishes(unit="in")))["side bore flank.1.1"]
    assert 'stop at 1.377"' in op.words, "35 mm are 1.37795 in, and a stop is never rounded up"


def test_a_screw_from_the_back_and_a_moulded_pin_are_pilots() -> None:
    pattern = REPLACE(FACE, bores=(*FACE.bores, Bore(role="pin", diameter=2.0, surface="back", at=(-9.0, 0.0), depth=4.0)))
    ops = by_id(operations(stocked(patterns=(pattern, *stocked().patterns[1:]))))
    assert ops["pilot front.2.1"].setup == Setup("drill press", "twist 1.6", ops["bore front.1.2"].setup.table, "back")
    assert ops["pilot front.3.1"].setup.bit == "twist 2"


def test_a_single_hole_from_the_back_stands_back_up() -> None:
    assert by_id(operations(stocked()))["bore peep.1"].setup.side == "back"


def test_a_blind_slot_has_no_saw_and_waste_holes_as_deep_as_it_is() -> None:
    slot = Slot(id="pocket", shape=StraightSlot(nut_end=(17.0, 40.0), tip_end=(17.0, 80.0), width=13.0), depth=6.0)
    ops = by_id(operations(stocked(slots=(slot,), tuners=(Tuner(id="front", pattern="face", place=FreePlace(at=(-28.0, 60.0))),),
                                   holes=(SingleHole(id="peep", at=(0.0, 160.0), diameter=5.0),))))
    assert "saw pocket" not in ops
    holes_of = ops["waste holes pocket"].waste_holes
    assert 0 < holes_of.depth <= 6.0
    assert ops["waste holes pocket"].stop == holes_of.depth
    assert ops["rout pocket 1"].cut.end == 6.0


@pytest.mark.parametrize(("length", "reaches"), [(23.79, False), (23.81, True)])
def test_a_pin_hole_goes_through_the_template_too(length: float, reaches: bool) -> None:
    """16 of wood under 6 of template, and 0.3 diameters of brad point: 16 + 6 + 1.8 = 23.8."""
    layout = stocked()
    drills = tuple(REPLACE(d, length=length) if d.diameter == 6.0 else d for d in layout.rack.drills)
    op = by_id(operations(REPLACE(layout, rack=REPLACE(layout.rack, drills=drills))))["pin hole pin.1"]
    assert op.stop == pytest.approx(22.0)
    assert (op.blocked == "") == reaches and ("23.8 mm deep to the drill's point" in op.blocked) != reaches


def test_each_template_turns_over_on_its_own_pins() -> None:
    """The outline's template has the head's shape: a pin in the waste, which has no mirror image, is none of its own."""
    layout = stocked(pins=(*(Pin(id=f"mid {y}", at=(0.0, float(y)), diameter=6.0) for y in (25, 150)),
                           Pin(id="far", at=(43.5, 185.0), diameter=2.0)))
    layout = REPLACE(layout, template=REPLACE(layout.template, board="blank"))
    ops = [op for op in operations(layout, {"slot": TURNED, "outline": TURNED}) if op.setup.side == "back" and op.kind in ("rout", "rout outline")]
    assert {op.kind: "not mirrored" in op.blocked for op in ops} == {"rout": True, "rout outline": False}
