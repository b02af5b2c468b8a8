"""The search over the rack: what comes first, what is refused and why, what would do."""


import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.layout import GuideBush, Rack, Router, RouterBit, Template
from geometry.layout.generic import RACK
from geometry.layout.generic_inch import RACK_INCH
from geometry.routing import together
from geometry.routing.depth import contact
from geometry.routing.search import plan_outline, plan_slot
from geometry.routing.together import plan_routing
from tests.geometry.routing.specimens import BRAD, BUSH, PINS, bit, drawn, head, plan, rubbing, straight, with_rack
from tests.geometry.sequence.specimens import demo
from tests.spent import spent

BEARING = bit("bearing 12", cutter=12, cutting=16, bearing="shank", high=5, out=38)
SHORT = bit("short", cutter=10, cutting=8, shank=10, out=15)
LONG = bit("long", cutter=10, cutting=16, bearing="shank", high=5)
TIP = bit("tip", cutter=10, cutting=16, bearing="tip", high=5)


def verdict(found, id):
    return next(v for v in found.verdicts if v.bit == id)


# ---- the order of plans ------------------------------------------------------
def test_one_bit_that_goes_through_beats_everything():
    found = plan(SHORT, LONG, BEARING)
    assert found.best.bits == ("bearing 12",) and found.best.flips == 0 and len(found.best.passes) == 1
    assert found.words == "slot: bearing 12, 1 pass."


def test_two_bits_from_one_side_beat_one_bit_turned_over():
    """In solid wood the long bit cannot start; turned over, the short one alone would do."""
    found = plan(SHORT, LONG, drills=())
    assert found.best.bits == ("short", "long") and found.best.flips == 0
    assert [p.ends for p in found.best.passes] == pytest.approx([8, 16])
    alone = verdict(found, "short").plan
    assert alone.flips == 1 and alone in found.plans
    assert verdict(found, "long").reason.startswith("Its cutting edges are 16 mm long and a pass may take 10 mm")


def test_turned_over_when_nothing_reaches_through():
    """Reach 15 - 6 = 9, a pass takes the 8 of the edges: 9 in two and 8 in one make 16 and 1 mm of overlap."""
    found = plan(SHORT)
    assert found.best.flips == 1
    assert sorted(p.side for p in found.best.passes) in (["back", "back", "face"], ["back", "face", "face"])
    assert {p.ends for p in found.best.passes} >= {8, 9}
    assert sum(p.takes for p in found.best.passes) == pytest.approx(17)
    assert any("Turn wood and template over on the same two pins" in step for step in found.best.steps)
    assert found.words.endswith("turned over once.")
    assert [any("needs two locating pins" in text for text in plan(SHORT, pins=pins).best.cautions) for pins in (PINS, PINS[:1])] == [False, True]
    rubbed = [replace(found.best, passes=tuple(replace(one, rubs_on=on) for one in found.best.passes)) for on in ("template", "wall already cut")]
    assert [any("A bare shank on the wall burns it" in text for text in one.cautions) for one in rubbed] == [False, True]


def test_a_tip_bearing_finishes_from_the_back():
    """Wood 20: the short bit reaches 9, the tip bearing copies that wall and takes 12 from the back."""
    found = plan(SHORT, TIP, thickness=20.0)
    assert found.best.bits == ("short", "tip") and found.best.flips == 1
    last = found.best.passes[-1]
    assert (last.side, last.rubs_on, last.ends) == ("back", "wall already cut", pytest.approx(12))
    assert "Turn the wood over, back up." in found.best.steps
    assert plan(SHORT, TIP, thickness=20.0, drills=()).best is None, "it cannot be lowered into solid wood"


def test_a_longer_bit_behind_a_short_one_and_turned_over():
    """Wood 26: the short bit reaches 9; a follower of the wall gets to 18 on the face; the back takes 9."""
    starter = bit("starter", cutter=10, cutting=7, shank=10, out=15)
    longer = bit("longer", cutter=10, cutting=15, bearing="shank", high=5, out=24)
    found = plan(starter, longer, thickness=26.0, drills=())
    assert found.best.flips == 1 and found.best.bits == ("starter", "longer")
    assert found.best.passes[-1].bit == "starter" and found.best.passes[-1].side == "back"
    assert sum(p.takes for p in found.best.passes) == pytest.approx(27)


def test_the_makers_own_follower_comes_first_among_equals():
    same = replace(BEARING, id="other 12")
    layout = with_rack(head(straight()), same, BEARING, drills=(BRAD,))
    chosen = replace(layout, template=Template(bit="bearing 12", thickness=6))
    assert plan_slot(chosen.slots[0], chosen).best.bits == ("bearing 12",)
    chosen = replace(layout, template=Template(bit="other 12", thickness=6))
    assert plan_slot(chosen.slots[0], chosen).best.bits == ("other 12",)


def test_a_cutter_that_fills_the_slot_comes_after_one_that_does_not():
    wide = bit("wide", cutter=13, cutting=16, bearing="shank", high=5)
    found = plan(wide, BEARING)
    assert found.best.bits == ("bearing 12",)
    assert any("cuts both walls at once" in c for c in plan(wide).best.cautions)


def test_every_bit_has_a_verdict_in_the_order_of_the_rack():
    found = plan(*RACK.bits, bushes=RACK.bushes, drills=RACK.drills)
    assert [v.bit for v in found.verdicts] == [b.id for b in RACK.bits]
    assert all((v.plan is None) == bool(v.reason) for v in found.verdicts)


# ---- blind slots -------------------------------------------------------------
def test_a_blind_slot_is_cut_to_its_depth_from_the_face():
    found = plan(SHORT, BEARING, TIP, slot=straight(depth=7.0))
    assert found.best.bits == ("short",)
    assert [(p.side, p.ends) for p in found.best.passes] == [("face", 7)]
    assert "blind" in verdict(found, "tip").reason
    assert not any("spoil board" in c for c in found.best.cautions)


def test_a_blind_slot_is_never_turned_over():
    found = plan(SHORT, slot=straight(depth=12.0))
    assert found.best is None
    assert verdict(found, "short").reason == ("It reaches 9 mm into the wood, because it stands 15 mm out of the router and the "
                                              "template takes 6 mm of that; slot is 12 mm deep.")


# ---- planted impossible racks ------------------------------------------------
@pytest.mark.parametrize(("tool", "bushes", "words"), [
    (bit(cutter=14, bearing="shank"), (), "Its 14 mm cutter does not pass slot, which is 13 mm wide where it is narrowest: "
                                          "up to 13 mm would."),
    (bit(cutter=12, cutting=5, shank=12.7), (), "It reaches 5 mm into the wood, because its 12.7 mm shank is thicker than the "
     "cutter and must stay out of the wood; the wood is 16 mm thick, and even turned over it would have to reach 8.5 mm."),
    (bit(cutter=8, cutting=32, shank=8), (), "Its cutting edges are 32 mm long and a pass may take 12 mm: so high up in the 6 mm "
     "template they leave nothing of the shank to rub, and 3 mm are wanted. A template of 23 mm would do, or a cutting length "
     "up to 15 mm."),
    (bit(cutter=12, cutting=20, shank=8), (), "Its cutter is wider than what follows the template, so the template opening is "
     "only 9 mm wide and the 12 mm cutter cannot be lowered through it."),
    (bit(cutter=12, cutting=0.1, shank=12), (), "A pass may take only 0.1 mm, so it would need more than 80 passes: take a wider "
     "cutter or longer cutting edges."),
    (bit(cutter=4, cutting=12, shank=3), (), "Its cutter is wider than what follows the template, so all 12 mm of its cutting "
     "edges have to be down in the wood before it may touch the template, and a pass may take only 6 mm."),
])
def test_the_reason_for_a_rejected_bit(tool, bushes, words):
    found = plan(tool, bushes=bushes)
    assert found.best is None and found.verdicts[0].reason == words


def test_a_shank_without_a_collet():
    layout = with_rack(head(straight()), BEARING, drills=(BRAD,))
    layout = replace(layout, rack=replace(layout.rack, router=Router(collets=(6.35, 12.7))))
    found = plan_slot(layout.slots[0], layout)
    assert found.verdicts[0].reason == "The router has no collet for its 8 mm shank (it has 6.35 mm, 12.7 mm)."


def test_the_nearest_miss_is_told_where_bushes_give_several():
    """Bare, its edges eat the template; in the bush it only lacks reach: that is the nearer miss."""
    found = plan(bit(cutter=8, cutting=20, shank=6, out=13), bushes=(BUSH,))
    assert "It reaches 7 mm into the wood" in found.verdicts[0].reason


@pytest.mark.parametrize(("bits", "k", "words"), [
    ((bit(cutter=12, cutting=12.7, shank=12.7),), {"thickness": 30.0, "template": 12.0},
     "A 12 mm straight bit with a cutting length of 15.5 mm would, in 2 passes, turned over once."),
    ((bit(cutter=10, cutting=20, bearing="shank", high=5),), {"template": 4.0},
     "A 10 mm shank-bearing bit with a cutting length of 16 mm would, in 2 passes."),
    ((bit(cutter=12, cutting=8, bearing="shank", high=5, out=20),), {"thickness": 30.0},
     "A 12 mm shank-bearing bit standing 21.5 mm below the router's base would, in 4 passes, turned over once."),
    ((bit(cutter=12, bearing="shank", high=2),), {}, "A 12 mm shank-bearing bit with a bearing 3 mm high would, in 1 pass."),
    ((bit("fat", cutter=14, bearing="shank"),), {}, "A slot 14 mm wide would let fat in, in 1 pass."),
    ((bit("fat", cutter=14, bearing="shank"),), {}, "A 12.7 mm shank-bearing bit like fat would, in 1 pass."),
    ((bit("long", cutter=8, cutting=32, shank=8),), {}, "A template 23 mm thick would let long do it, in 2 passes."),
    ((), {}, "A 12 mm shank-bearing bit with a cutting length of 16 mm, standing 22 mm below the router's base, would, in 1 "
             "pass."),
])
def test_what_would_do(bits, k, words):
    found = plan(*bits, **k)
    assert found.best is None and words in found.would
    assert found.words.startswith("No bit of the rack can rout slot.")


def test_what_would_do_does():
    """The bit that is asked for, once bought, makes the plan."""
    bought = bit("new", cutter=12, cutting=16, bearing="shank", out=22)
    assert plan(bought).best.bits == ("new",) and len(plan(bought).best.passes) == 1


# ---- shapes ------------------------------------------------------------------
def test_corners_of_a_drawn_slot_are_left_to_pare():
    found = plan(BEARING, slot=drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0)))
    assert len(found.best.left) == 4 and found.best.left[0].depth == pytest.approx(2.485, abs=0.01)
    assert sum(step.startswith("Pare by hand") for step in found.best.steps) == 4


def test_a_narrow_tail_is_too_much_to_pare():
    wedge = drawn((0.0, 40.0), (20.0, 40.0), (20.0, 90.0), (10.4, 150.0), (9.6, 150.0), (0.0, 90.0))
    found = plan(BEARING, slot=wedge)
    assert found.best is None and "of wood standing at" in found.verdicts[0].reason


def test_a_follower_that_rounds_the_wood_too_much_is_refused():
    """A bush 9 wider than its cutter: 4.5 mm of offset take (sqrt 2 - 1) 4.5 = 1.9 mm of the corner; 6 mm take 2.5."""
    ell = drawn((0.0, 40.0), (30.0, 40.0), (30.0, 60.0), (18.0, 60.0), (18.0, 120.0), (0.0, 120.0))
    tool = bit("six", cutter=6, cutting=20, shank=6)
    wide = GuideBush(id="wide", outer=18, inner=15, length=5)
    assert any("rounds the corner of wood" in c for c in plan(tool, slot=ell, bushes=(replace(wide, outer=15.0),)).best.cautions)
    found = plan(tool, slot=ell, bushes=(wide,))
    assert found.best is None and "rounds the corner of wood at 18 across to the treble, 60 along by 2.5 mm" in found.verdicts[0].reason


# ---- the outline -------------------------------------------------------------
def test_the_outline_is_routed_from_outside():
    layout = with_rack(head(straight()), BEARING, bit("tip", cutter=12.7, cutting=25, bearing="tip"))
    found = plan_outline(layout)
    assert found.best.bits == ("bearing 12",) and found.of == "outline" and found.waste is None
    assert verdict(found, "tip").plan.passes[0].rubs_on == "template below"
    assert found.best.steps[1] == "Saw the waste off to within 2 mm outside the line."
    assert "counter-clockwise" in found.best.cautions[0]
    assert found.words == "The outline: bearing 12, 1 pass."


def test_everything_on_one_template_where_that_costs_no_flip():
    """Alone, each slot would take the stiffest cutter that it admits; together they take one follower."""
    narrow, wide = straight(width=9, x=-15, id="narrow"), straight(width=16, x=15, id="wide")
    small = bit("small", cutter=8, cutting=12, bearing="shank", high=5)
    straight_bit = bit("straight", cutter=14, cutting=20, shank=12)
    bush = GuideBush(id="big", outer=20, inner=16, length=5)
    layout = with_rack(head(narrow, wide), small, straight_bit, bushes=(bush,),
                       drills=(BRAD, replace(BRAD, id="brad 6", diameter=6.0)))
    assert plan_slot(wide, layout).best.bits == ("straight",)
    together = plan_routing(layout)
    assert together.slots[1].best.bits == ("small",)
    assert {plan.best.offset for plan in together.slots} == {0.0}


def test_the_rack_in_inches_does_the_job_too():
    layout = head(straight(width=13), straight(width=12.7, x=25, id="other"), rack=RACK_INCH, template=6.35)
    together = plan_routing(layout)
    assert all(p.best is not None and p.best.flips == 0 for p in together.all)


# ---- properties --------------------------------------------------------------
BITS = st.builds(
    lambda n, cutter, share, shank, out, bearing, wider: bit(
        f"b{n}", cutter=cutter, cutting=share * cutter, shank=shank, out=out, bearing=bearing, ring=cutter + wider, high=5.0),
    st.integers(0, 10 ** 6), st.sampled_from([6.0, 8.0, 10.0, 12.0]), st.floats(0.5, 3), st.sampled_from([6.0, 8.0, 12.0]),
    st.floats(10, 45), st.sampled_from(["none", "tip", "shank"]), st.sampled_from([0.0, 0.0, 0.0, 2.0]))
RACKS = st.lists(BITS, min_size=1, max_size=6, unique_by=lambda b: b.id)


@settings(max_examples=80, suppress_health_check=[HealthCheck.too_slow])
@example([bit("bare", cutter=6, cutting=12, shank=6, out=14), bit("ring", cutter=6, cutting=10.5, shank=6, out=21, bearing="shank", ring=6, high=5)],
         22.0, 6.0, False, False)
@given(RACKS, st.sampled_from([8.0, 16.0, 22.0, 30.0]), st.sampled_from([4.0, 6.0, 12.0]), st.booleans(), st.booleans())
def test_every_plan_keeps_the_rules(bits, thickness, template, drilled, hard):
    layout = with_rack(head(straight(), thickness=thickness, template=template, hard=hard), *bits, bushes=(BUSH,),
                       drills=(BRAD,) if drilled else ())
    found = plan_slot(layout.slots[0], layout)
    assert (found.best is None) == bool(found.would)
    keys = [(p.flips, len(p.bits), len(p.passes)) for p in found.plans]
    assert keys == sorted(keys)
    for one in found.plans:
        assert one.flips in (0, 1) and [p.side for p in one.passes] == sorted((p.side for p in one.passes), reverse=True)
        assert sum(p.takes for p in one.passes) >= thickness + one.flips - 1e-6
        deepest = {side: max((p.ends for p in one.passes if p.side == side), default=0.0) for side in ("face", "back")}
        assert deepest["face"] + deepest["back"] >= thickness + one.flips - 1e-6
        cut = {"face": 0.0, "back": 0.0}
        for p in one.passes:
            tool: RouterBit = p.follower.bit
            assert p.begins == pytest.approx(cut[p.side]) and p.contact >= 3 - 1e-6
            share = (1.5 if p.light else 1.0) * (0.5 if hard and tool.cutter < 8 else 1.0)
            assert p.takes <= min(share * tool.cutter, tool.cutting_length) + 1e-6
            if p.rubs_on == "template":
                assert contact(p.follower, p.ends, template)[0] >= 3 - 1e-6
            assert p.light == drilled
            if tool.bearing != "tip":
                assert any(p.contact == pytest.approx(told) for told in rubbing(p, template))
                assert p.ends + template <= tool.stick_out + 1e-6
            else:
                assert p.ends + 5 <= tool.stick_out + 1e-6 and drilled
            cut[p.side] = p.ends


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])
@given(RACKS, BITS)
def test_one_more_bit_never_makes_the_best_plan_worse(bits, more):
    layout = with_rack(head(straight()), *bits, drills=(BRAD,))
    before = plan_slot(layout.slots[0], layout)
    richer = replace(layout, rack=replace(layout.rack, bits=(*bits, replace(more, id="more"))))
    after = plan_slot(richer.slots[0], richer)
    if before.best is not None:
        keys = [(p.best.flips, len(p.best.bits), len(p.best.passes)) for p in (before, after)]
        assert keys[1] <= keys[0]


# ---- speed -------------------------------------------------------------------
def sixty() -> Rack:
    tools = tuple(bit(f"b{i}", cutter=6 + i * 0.11, cutting=8 + i % 17, shank=6.0 if i % 2 else 8.0, out=25 + i % 20,
                      bearing=("none", "shank", "tip")[i % 3]) for i in range(60))
    return Rack(bits=tools, bushes=RACK.bushes, drills=RACK.drills)


@pytest.mark.parametrize("thickness", [16.0, 24.0, 34.0])
def test_sixty_bits_within_a_tenth_of_a_second(thickness):
    layout = head(straight(), rack=sixty(), thickness=thickness)
    plan_slot(layout.slots[0], layout)
    assert spent(lambda: plan_slot(layout.slots[0], layout), 0.1, rounds=5) <= 0.1


def test_no_bit_is_set_lower_than_it_stands_out_or_the_router_plunges():
    """The setting that is told, against the rack's own numbers, in every plan for the demo."""
    layout = demo()
    seen = set()
    for one in plan_routing(layout).all:
        for made in one.plans:
            for trip in made.passes:
                bit = trip.follower.bit
                assert trip.ends < trip.below_base(made.job.template) <= min(bit.stick_out, layout.rack.router.plunge) + 1e-6
                seen.add(trip.rubs_on)
    assert "template" in seen


def test_wood_that_would_be_told_as_nothing_is_left_to_the_sandpaper():
    found = plan(BEARING, slot=drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0)))
    best = found.best
    corner = best.left[0]
    assert corner.depth == pytest.approx(6 * (2 ** 0.5 - 1), abs=0.03) and "mm² of wood" in best.paring[0]
    left = (corner, replace(corner, depth=0.0634, size=0.02), replace(corner, depth=0.0434, size=0.02))
    told = replace(best, reached=replace(best.reached, left=left))
    assert told.left == left[:2] and len(told.paring) == 2
    assert told.paring[1].endswith(": 0.1 mm deep.")


def test_what_shares_one_template_already_is_planned_once(monkeypatch):
    """Another round, on the template of the best, would find the same plans."""
    rounds, real = [], together.plan_outline
    monkeypatch.setattr(together, "plan_outline", lambda *words: rounds.append(words[1]) or real(*words))
    assert len({best.offset for best in (one.best for one in plan_routing(demo()).all)}) == 1
    assert rounds == [None]
