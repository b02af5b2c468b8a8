"""Which clearances are measured, and that each is the one the checks tell when nothing strays."""

import math

import numpy as np
import pytest
from msgspec.structs import replace

from geometry.accuracy.bench import Trials, bench_of
from geometry.accuracy.simulation import simulate
from geometry.accuracy.spec import Reach
from geometry.accuracy.told import NOT_SIMULATED
from geometry.checks import check
from geometry.layout import Accuracy, Blank, DrawnSlot, Headstock, Loop, Margins, Node, Pin, SingleHole, Slot, StraightSlot
from geometry.layout.generic import PATTERNS
from tests.geometry.accuracy.first_order import propagate
from tests.geometry.accuracy.specimens import SAMPLES, SIDE, WIDE, endless, face_head, head, holes, only, sample, side_head
from tests.geometry.checks.heads import bore, drawn, pattern, post_head, side
from tests.geometry.checks.heads import head as edged
from tests.geometry.edits.heads import curved, plain, twelve

STRAIGHT_ONLY = {"slot-not-reached"}
"""Told by the checks as two depths, here as their difference."""
DEPTH_OF_OVERLAP = 0.05
"""mm: an overlap of skew cylinders is measured along fewer directions here."""

HEADS = {path.name.split(".")[0]: path for path in sorted(SAMPLES.glob("*.headstock.json"))}


def layouts() -> dict[str, Headstock]:
    made = {name: sample(name) for name in HEADS}
    return made | {"plain": plain(), "curved": curved(), "twelve": twelve()}


@pytest.mark.parametrize("name", sorted(layouts()))
def test_without_errors_every_clearance_is_what_the_checks_tell(name: str) -> None:
    hold_to_checks(replace(layouts()[name], margins=WIDE))


def hold_to_checks(layout: Headstock) -> None:
    """Every clearance without errors is what the checks tell, and no other."""
    bench = bench_of(layout)
    still = np.zeros(len(bench.model.recipes))
    specs = bench.specs(Reach(still, still, 0.0, 0.0))
    measured = [(s.kind, frozenset(s.between), float(s.measure(bench.nominal)[0])) for s in specs]
    told = [s for s in check(layout).snags if s.unit == "mm" and s.measured is not None
            and s.kind not in NOT_SIMULATED | STRAIGHT_ONLY]
    assert told
    for snag in told:
        same = [value for kind, between, value in measured if (kind, between) == (snag.kind, frozenset(snag.between))]
        assert same, snag.text
        nearest = min(same, key=lambda value: abs(value - snag.measured))
        assert nearest == pytest.approx(snag.measured, abs=0.0035 if snag.measured > 0 else DEPTH_OF_OVERLAP), snag.text
    # And nothing that the checks do not tell of.
    kinds = {(s.kind, frozenset(s.between)) for s in check(layout).snags}
    for spec, (kind, between, value) in zip(specs, measured, strict=True):
        assert value > spec.needed - 0.0035 or (kind, between) in kinds, (kind, between, value)


def spread(layout: Headstock, kind: str, **of: str):
    """(nominal, sd) by first order of the only clearance of a kind."""
    found = [p for p in propagate(layout) if p.kind == kind and all(v in p.between for v in of.values())]
    assert len(found) == 1, [p.kind for p in propagate(layout)]
    return found[0].nominal, found[0].sd


def simulated(layout: Headstock, kind: str, between: tuple[str, ...] | None = None):
    """(mean, sd) of the only clearance of a kind, or between these two, measured in 4,000 trials."""
    bench = bench_of(layout)
    lot = Trials(bench, 4000, 3)
    spec, = [s for s in bench.specs(lot.reach()) if s.kind == kind and between in (None, s.between)]
    values = np.concatenate([spec.measure(built) for built in lot.built()])
    return values.mean(), values.std()


def test_two_holes_by_hand() -> None:
    # 10 mm apart, radii 2.5 and 3: 4.5 mm. Marks stray 0.15 mm along the line between them at each hole.
    layout = head(holes=holes((0.0, 60.0, 5.0), (10.0, 60.0, 6.0)), accuracy=only(mark=0.3),
                  margins=Margins(bore_bore=4.5))
    nominal, sd = spread(layout, "hole-to-hole")
    assert nominal == pytest.approx(4.5) and sd == pytest.approx(0.15 * math.sqrt(2), rel=1e-3)
    mean, deviation = simulated(layout, "hole-to-hole")
    assert mean == pytest.approx(4.502, abs=0.01) and deviation == pytest.approx(0.2121, rel=0.03)


def test_paper_stretches_the_wood_between_two_holes_once() -> None:
    layout = head(holes=holes((0.0, 60.0, 5.0), (10.0, 60.0, 6.0)), accuracy=only(paper_percent=2.0),
                  margins=Margins(bore_bore=4.5))
    # 1 % of the 10 mm between the axes: both holes come off one paper.
    assert spread(layout, "hole-to-hole")[1] == pytest.approx(0.1, rel=1e-3)


def test_cover_over_a_side_bore_by_hand() -> None:
    # z 8, radius 3.2: 4.8 mm to either face. The mark alone lifts it by 0.15; the tilt swings it over 40 mm.
    margins = Margins(side_cover=4.8)
    nominal, sd = spread(side_head(only(mark=0.3), margins=margins), "cover", side="face", of="side")
    assert nominal == pytest.approx(4.8) and sd == pytest.approx(0.15, rel=1e-6)
    mean, deviation = simulated(side_head(only(tilt_degrees=1.0), margins=margins), "cover", ("side", "back"))
    # The nearer end counts, so the least is 4.8 - max(0.1 swing ..): z falls by 40 sin or 10 sin of the lean.
    lean = np.random.default_rng(1).standard_normal(200_000) * math.radians(0.5)
    meant = 4.8 - np.maximum(40 * lean, 10 * lean)
    assert mean == pytest.approx(meant.mean(), abs=0.02) and deviation == pytest.approx(meant.std(), rel=0.05)


def test_rail_and_web_by_hand() -> None:
    slots = tuple(Slot(id=f"slot {x:g}", shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 150.0), width=13.0))
                  for x in (-17.0, 17.0))
    layout = head(slots=slots, accuracy=only(template=0.2), margins=Margins(rail=16.5, web=21.0))
    rails = [p for p in propagate(layout) if p.kind == "rail"]
    assert [(p.nominal, p.sd) for p in rails] == [pytest.approx((16.5, 0.1 * math.sqrt(2)))] * 2
    # One template: its place cancels, two followed walls remain.
    assert spread(layout, "web") == pytest.approx((21.0, 0.1 * math.sqrt(2)))
    paper = replace(layout, accuracy=only(paper_percent=0.2))
    assert spread(paper, "web")[1] == pytest.approx(0.021)


def test_slot_to_nut_by_hand() -> None:
    layout = side_head(only(template=0.2), margins=Margins(slot_nut=33.5))
    nominal, sd = spread(layout, "slot-to-nut")
    assert nominal == pytest.approx(33.5) and sd == pytest.approx(0.1 * math.sqrt(2))


def test_hole_beside_slot_and_outline_by_hand() -> None:
    # The wall of the slot stands at 17 + 6.5; a hole of radius 2.5 at x 29 leaves 3 mm; 8.5 mm to the outline.
    layout = side_head(only(template=0.2), holes=holes((29.0, 100.0, 5.0)), tuners=(),
                       margins=Margins(bore_slot=3.0, bore_outline=8.5))
    assert spread(layout, "hole-to-slot") == pytest.approx((3.0, 0.1 * math.sqrt(2)))
    assert spread(layout, "hole-to-outline") == pytest.approx((8.5, 0.1 * math.sqrt(2)))
    marked = replace(layout, accuracy=only(mark=0.3))
    assert spread(marked, "hole-to-slot")[1] == pytest.approx(0.15)


def test_a_leaning_hole_comes_nearest_at_its_end() -> None:
    layout = side_head(only(tilt_degrees=1.0), holes=holes((29.0, 100.0, 5.0)), tuners=(),
                       margins=Margins(bore_slot=3.0))
    mean, deviation = simulated(layout, "hole-to-slot")
    lean = np.random.default_rng(1).standard_normal(200_000) * math.radians(0.5)
    meant = 3.0 + np.minimum(0.0, 16 * lean)
    assert mean == pytest.approx(meant.mean(), abs=0.01) and deviation == pytest.approx(meant.std(), rel=0.05)


def test_a_pin_in_the_waste_keeps_clear_on_its_own_side() -> None:
    layout = head(pins=(Pin(id="pin", at=(45.0, 100.0), diameter=4.0),), accuracy=only(template=0.2),
                  margins=Margins(pin_any=3.0))
    # It moves with the template, so only the follower counts: the outline that grows comes nearer.
    nominal, sd = spread(layout, "locating-pin-to-outline")
    assert nominal == pytest.approx(3.0) and sd == pytest.approx(0.1)


def test_wood_under_a_blind_hole_by_hand() -> None:
    layout = head(holes=(SingleHole(id="jig", at=(0.0, 60.0), diameter=5.0, depth=11.5),), accuracy=only(stop=0.3),
                  margins=Margins(side_cover=3.0))
    # A brad point of 5 mm that the rack does not hold counts 0.3 x 5 = 1.5 mm.
    assert spread(layout, "too-deep") == pytest.approx((3.0, 0.15))


def test_the_post_in_its_slot_by_hand() -> None:
    # Seat at x 40, slot from 21.5 to 8.5. The bore ends in the slot at 30, the post at 29, 2.5 mm before the wall at
    # 31.5; its string hole at 28 lies 3.5 mm from that wall.
    margins = Margins(post_wall=2.5, string_hole=3.5)
    followed = side_head(only(template=0.2), slot_x=15.0, margins=margins)
    # Seat and wall shift together with the template; the outline's follower moves the post, the slot's the wall.
    assert spread(followed, "post-to-wall") == pytest.approx((2.5, 0.1 * math.sqrt(2)))
    assert spread(followed, "string-hole") == pytest.approx((3.5, 0.1 * math.sqrt(2)))
    # A brad point of 6.4 mm in the rack runs 1.92 ahead: 31.5 - 30 - 1.92. Stop, template and follower move it.
    assert spread(followed, "point-to-wall") == pytest.approx((-0.42, 0.1 * math.sqrt(2)))
    stopped = side_head(only(stop=0.3), slot_x=15.0, margins=margins)
    assert spread(stopped, "point-to-wall") == pytest.approx((-0.42, 0.15))
    assert spread(stopped, "post-to-wall")[1] == 0


def test_the_rim_of_a_bore_before_a_leaning_inner_wall_by_hand() -> None:
    # The inner wall is y = x + 86: on the axis at y = 90 it stands 36 mm from the seat, at the flank of the 6.4 mm bore 32.8.
    # The bore is 30 deep: its point comes as near as 36 - 31.92 = 4.08, but its rim as near as 2.8.
    leaning = side_head(only(stop=0.3), slots=(drawn("slot", (20.0, 60.0), (20.0, 106.0), (-26.0, 60.0)),))
    assert spread(leaning, "point-to-wall") == pytest.approx((2.8, 0.15))


def test_a_post_that_bears_in_the_inner_wall_by_hand() -> None:
    # Slot from 26.5 to 13.5: the bore goes 3.5 mm into the wall, 1 mm deeper than the post.
    layout = side_head(only(stop=0.3, template=0.2), slot_x=20.0)
    assert spread(layout, "post-too-long") == pytest.approx((1.0, math.hypot(0.15, 0.1 * math.sqrt(2))))


def test_the_ends_of_the_slot_by_hand() -> None:
    # Post of 6.2 with its axis 10 mm from where the straight walls end at y 150: on the slot's middle the round end
    # reaches 6.5 farther. String hole at 28, so at x 12; slot middle at 12.
    layout = side_head(only(mark=0.3), along=140.0, slot_x=12.0, margins=Margins(post_wall=13.4))
    assert spread(layout, "post-to-slot-end") == pytest.approx((13.4, 0.15), abs=2e-3)


def test_a_bore_that_ends_in_the_rail_never_comes_through() -> None:
    layout = side_head(only(stop=0.3), slot_x=-17.0)
    found = simulate(layout, 500)
    assert found.sound == 0.0 and [c.kind for c in found.clearances if c.spoiled == 1.0] == ["slot-not-reached"]


def test_a_side_screw_before_a_slot_and_below_a_blind_one() -> None:
    # Screws go 9 mm in from the edge at 40; the wall of a slot at 23.5 + 4.5 leaves 3 mm before their ends.
    near = Slot(id="slot", shape=StraightSlot(nut_end=(21.5, 40.0), tip_end=(21.5, 150.0), width=13.0))
    layout = side_head(only(stop=0.3), slots=(near,), margins=Margins(screw_any=3.0))
    screws = [p for p in propagate(layout) if p.kind == "screw-to-slot"]
    assert [(p.nominal, p.sd) for p in screws] == [pytest.approx((3.0, 0.15))] * 2
    # A blind slot over their tips: floor at 4, axis at 8, radius 0.8: 3.2 mm straight up. Its stop moves the floor.
    over = Slot(id="slot", shape=StraightSlot(nut_end=(27.0, 40.0), tip_end=(27.0, 150.0), width=13.0), depth=4.0)
    layout = side_head(only(stop=0.3), slots=(over,), margins=Margins(screw_any=3.2))
    screws = [p for p in propagate(layout) if p.kind == "screw-to-slot"]
    assert [(p.nominal, p.sd) for p in screws] == [pytest.approx((3.2, 0.15), abs=0.02)] * 2


def test_a_blind_slot_that_is_shallow_for_its_post_by_hand() -> None:
    # Axis at 8, post 6.2: its underside at 11.1; a slot 13 deep leaves 1.9. Its stop strays by 0.15.
    slot = Slot(id="slot", shape=StraightSlot(nut_end=(15.0, 40.0), tip_end=(15.0, 150.0), width=13.0), depth=13.0)
    layout = side_head(only(stop=0.3), slots=(slot,), margins=Margins(post_wall=1.9))
    assert spread(layout, "slot-too-shallow") == pytest.approx((1.9, 0.15))


def test_a_side_bore_that_nears_the_outline_beyond_its_mouth() -> None:
    """A shoulder of the outline 5 mm beside a bore: its flank comes near that wall, not near its own mouth."""
    nodes = ((-40.0, 0.0), (40.0, 0.0), (40.0, 81.8), (-9.0, 81.8), (-9.0, 180.0),
             (-40.0, 180.0))
    shape = Loop(nodes=tuple(Node(at=at) for at in nodes))
    layout = side_head(only(mark=0.3), along=73.6, outline=shape, slots=(), margins=Margins(bore_outline=5.0))
    # y 73.6 + 3.2 = 76.8, the wall above stands at 81.8.
    found = [p for p in propagate(layout) if p.kind == "side-bore-to-outline"]
    assert [(p.nominal, p.sd) for p in found] == [pytest.approx((5.0, 0.15))]


@pytest.mark.parametrize(("nut", "x", "rails"), [(20.0, 14.0, 20.0), (12.0, 14.0, 20.0), (12.0, 28.0, 6.0), (2.0, 28.0, 6.0),
                                                 (-20.0, 28.0, 6.0), (-20.0, 14.0, 20.0)])
def test_the_rail_of_a_slot_near_the_nut_line_is_the_wood_beside_it(nut: float, x: float, rails: float) -> None:
    """A slot 12 wide in a head to x = 40; its nut end lies 6 mm nearer to the nut line than the middle of its round end, or beyond it."""
    layout = head(slots=(Slot(id="slot", shape=StraightSlot(nut_end=(x, nut), tip_end=(x, 120.0), width=12.0)),), margins=WIDE)
    hold_to_checks(layout)
    # Whatever is wanted beside it: at the nut line its own margin tells what it lacks.
    layout = replace(layout, margins=Margins(rail=rails + 1.0, slot_nut=15.0))
    hold_to_checks(layout)
    rail, = [c for c in simulate(layout, 200, 1).clearances if c.kind in ("rail", "slot-outside")]
    assert (rail.kind, rail.nominal) == ("rail", pytest.approx(rails))


def test_slots_that_overlap_or_leave_the_head_are_spoiled_in_every_trial() -> None:
    slots = (Slot(id="a", shape=StraightSlot(nut_end=(30.0, 60.0), tip_end=(30.0, 120.0), width=30.0)),
             Slot(id="b", shape=StraightSlot(nut_end=(10.0, 60.0), tip_end=(10.0, 120.0), width=20.0)))
    found = simulate(head(slots=slots), 200)
    kinds = {c.kind: c for c in found.clearances if c.spoiled == 1.0}
    assert set(kinds) == {"slot-outside", "slots-overlap"} and found.sound == 0.0
    assert kinds["slot-outside"].nominal == pytest.approx(-5.0)


def test_a_bore_right_across_another_slot_is_spoiled_in_every_trial() -> None:
    """70 deep from x = 40 through its own slot and on across one from x = -8 to -12: no corner of either lies in the
    other. From the slot's near wall it runs 70 - 48 = 22 too far."""
    pattern = next(p for p in PATTERNS if p.id == SIDE)
    deep = replace(pattern, bores=(replace(pattern.bores[0], depth=70.0), *pattern.bores[1:]))
    layout = side_head(Accuracy(), patterns=(deep,), slots=(
        Slot(id="own", shape=StraightSlot(nut_end=(14.0, 60.0), tip_end=(14.0, 150.0), width=12.0)),
        Slot(id="other", shape=StraightSlot(nut_end=(-10.0, 60.0), tip_end=(-10.0, 150.0), width=4.0))))
    found = [c for c in simulate(layout, 500, 1).clearances if c.kind == "side-bore-to-slot"]
    assert [(c.spoiled, c.nominal) for c in found] == [(1.0, pytest.approx(-22.0))]
    told = next(s for s in check(layout).snags if s.kind == "side-bore-to-slot")
    assert told.measured == pytest.approx(-22.0)


def test_a_slot_that_crosses_itself_has_no_rail() -> None:
    bow = Loop(nodes=tuple(Node(at=at) for at in ((0.0, 60.0), (20.0, 90.0), (20.0, 60.0), (0.0, 90.0))))
    layout = head(slots=(Slot(id="bow", shape=DrawnSlot(loop=bow)),), margins=WIDE)
    assert not [p for p in propagate(layout) if p.kind in ("rail", "web", "slot-to-nut")]


def test_nothing_on_a_head_has_no_clearances() -> None:
    assert propagate(head()) == ()
    assert simulate(head(), 10).sound == 1.0


def test_a_tuner_without_a_place_is_left_out() -> None:
    """An outline without height has no edges; its pins and slots are still measured."""
    flat = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0))))
    layout = replace(face_head(only(mark=0.3)), outline=flat, blank=Blank(bass=50.0, treble=50.0, tip=20.0,
                                                                          thickness=16.0))
    assert simulate(layout, 50).clearances == ()


def test_slots_that_cross_like_a_plus_are_spoiled_by_what_parts_them() -> None:
    """One 12 wide along y, one 10 wide and 60 long across it: no round end of either lies in the other. Square to the
    second the way out is 60 / 2 + 5 to its end and 6 more."""
    layout = head(slots=(Slot(id="a", shape=StraightSlot(nut_end=(0.0, 40.0), tip_end=(0.0, 160.0), width=12.0)),
                         Slot(id="b", shape=StraightSlot(nut_end=(-30.0, 100.0), tip_end=(30.0, 100.0), width=10.0))))
    found = next(c for c in simulate(layout, 200, 1).clearances if c.kind == "slots-overlap")
    told = next(s for s in check(layout).snags if s.kind == "slots-overlap")
    assert (found.spoiled, found.nominal, told.measured) == (1.0, pytest.approx(-41.0), pytest.approx(-41.0))


TOOTH = ((8.0, 60.0), (20.0, 60.0), (20.0, 120.0), (8.0, 120.0), (8.0, 92.0), (9.5, 91.5), (8.0, 91.0))
ASKEW = ((8.0, 60.0), (22.0, 60.0), (28.0, 150.0), (14.0, 150.0))


@pytest.mark.parametrize("layout", [
    post_head(along=151.0), post_head(along=59.0), post_head(along=153.0, post=(2.0, 30.5, 30.0)),
    post_head(slots=(drawn("slot", *ASKEW),), post=(6.0, 28.0, 24.0)), post_head(slots=(drawn("slot", *TOOTH),))],
    ids=["tip", "nut", "thin", "askew", "tooth"])
def test_a_post_near_a_wall_that_is_not_square_to_it_is_measured_as_the_checks_do(layout: Headstock) -> None:
    """All round its end and its string hole; and nothing is lost by leaving out walls that no trial comes near."""
    layout = replace(layout, margins=Margins(post_wall=2.0, string_hole=7.0))
    bench = bench_of(layout)
    still = np.zeros(len(bench.model.recipes))
    kinds = ("post-to-wall", "string-hole", "post-to-slot-end")
    measured = {s.kind: float(s.measure(bench.nominal)[0]) for s in bench.specs(Reach(still, still, 0.0, 0.0)) if s.kind in kinds}
    told = {s.kind: s.measured for s in check(layout).snags if s.kind in kinds}
    assert "string-hole" in told and len(told) >= 2
    for kind, value in told.items():
        assert measured[kind] == pytest.approx(value, abs=0.0035), kind
    lot = Trials(bench, 400, 5)
    few = {s.kind: s for s in bench.specs(lot.reach())}
    every = {s.kind: s for s in bench.specs(endless(len(bench.model.recipes)))}
    for built in lot.built():
        for kind, needed in zip(kinds, (2.0, 7.0, 2.0), strict=True):
            if kind in few:
                a, b = few[kind].measure(built), every[kind].measure(built)
                assert np.minimum(a, needed) == pytest.approx(np.minimum(b, needed), abs=1e-9), kind


@pytest.mark.parametrize(("depth", "out"), [(38.0, 2.0), (43.0, 7.0), (45.99, 7.0), (46.5, 7.0)])
def test_a_side_bore_that_ends_in_a_drawn_slot_is_as_deep_in_it_as_the_checks_tell(depth: float, out: float) -> None:
    """From the edge at x = 40 through one slot and into another from x = 4 to -6, whose tip end lies 4 mm above the axis.

    The way out is back to x = 4, or aside by those 4 mm and the 3 of its radius; how near its end is to the slot's far wall
    is no way out, and no shop error makes it one.
    """
    walls = (((10.0, 60.0), (20.0, 60.0), (20.0, 120.0), (10.0, 120.0)), ((-6.0, 60.0), (4.0, 60.0), (4.0, 104.0), (-6.0, 104.0)))
    of = pattern("of", "side", bore(surface="seat", depth=depth, drill="forstner"), post=(6.0, depth, 26.0))
    layout = edged(tuners=(side("a", 100.0, of),), patterns=(of,), slots=(drawn("one", *walls[0]), drawn("two", *walls[1])))
    snag, = [snag for snag in check(layout).snags if snag.kind == "side-bore-to-slot" and "two" in snag.between]
    found = simulate(layout, 2000, 1).of(snag)
    assert snag.measured == pytest.approx(-out) and found.nominal == pytest.approx(-out, abs=1e-6)
    assert found.spoiled == 1.0
