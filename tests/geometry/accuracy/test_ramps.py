"""Ramps in trials: by hand, against the checks' own measure trial by trial, and against the polygon library."""

import math

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from geometry.accuracy.bench import Trials, bench_of
from geometry.accuracy.ramp_built import ramp_of
from geometry.accuracy.simulation import simulate
from geometry.accuracy.spec import Reach
from geometry.checks import check
from geometry.layout import Accuracy, EdgePlace, Headstock, Loop, Margins, Node, Slot, StraightSlot, Tuner
from geometry.layout.slots import Ramp
from geometry.solids.drilling import Drilling
from geometry.solids.ramp_gap import from_ramp
from geometry.solids.ramps import RampCut
from tests.geometry.accuracy.first_order import propagate
from tests.geometry.accuracy.specimens import SIDE, brute, endless, head, holes, only, rough

KINDS = ("hole-to-ramp", "ramp-to-outline", "ramp-to-nut", "ramp-too-deep")


def ramped(accuracy: Accuracy, ramp: Ramp | None = None, slant: float = 0.0, **parts: object) -> Headstock:
    """A slot 12 wide about x = 14 from y = 54 on, with a ramp that falls by 5 in 12 from y = 42."""
    slot = Slot(id="slot", shape=StraightSlot(nut_end=(14.0, 60.0), tip_end=(14.0 + slant, 150.0), width=12.0),
                ramp=ramp or Ramp(length=12.0, depth=5.0))
    return head(**({"slots": (slot,), "accuracy": accuracy} | parts))


def below(accuracy: Accuracy, depth: float = 11.0, **parts: object) -> Headstock:
    """A hole from the back with its bottom under the ramp, a face hole beside it and a side bore below it."""
    made = holes((14.0, 48.0, 6.0), depth=depth) + tuple(replace(h, id="beside") for h in holes((25.0, 46.0, 6.0)))
    made = (replace(made[0], surface="back"), made[1])
    tuner = Tuner(id="side", pattern=SIDE, place=EdgePlace(side="treble", along=48.0))
    return ramped(accuracy, holes=made, tuners=(tuner,), margins=Margins(bore_slot=4.0, screw_any=4.0), **parts)


def one(layout: Headstock, kind: str) -> tuple[float, float]:
    """(nominal, sd) by first order of the only clearance of a kind."""
    found, = [p for p in propagate(layout) if p.kind == kind]
    return found.nominal, found.sd


# ---- by hand ---------------------------------------------------------------------------------------------------------
def test_the_flat_before_the_nut_is_the_mark_and_the_paper_alone() -> None:
    layout = ramped(only(mark=0.3), Ramp(length=53.0, depth=5.0))
    assert one(layout, "ramp-to-nut") == pytest.approx((1.0, 0.15))
    # One mm of paper between the nut line and the mark: 0.5 % of it.
    assert one(replace(layout, accuracy=only(paper_percent=1.0)), "ramp-to-nut") == pytest.approx((1.0, 0.005))
    assert one(replace(layout, accuracy=only(template=0.2, stop=0.3)), "ramp-to-nut") == pytest.approx((1.0, 0.0))


def test_the_wood_to_the_edge_by_hand() -> None:
    # 50 wide about x = 14: its rim at 39, the edge at 40. Both share the template; each is followed by itself.
    layout = ramped(only(template=0.2), Ramp(length=12.0, depth=5.0, width=50.0))
    assert one(layout, "ramp-to-outline") == pytest.approx((1.0, 0.1 * math.sqrt(2)))
    assert one(replace(layout, accuracy=only(mark=0.3)), "ramp-to-outline") == pytest.approx((1.0, 0.15))


def test_a_face_hole_beside_a_ramp_by_hand() -> None:
    # Rim of the ramp at 20; a hole of radius 3 at 25 leaves 2. Both are marked; the flank comes with the template.
    layout = ramped(only(mark=0.3), holes=holes((25.0, 46.0, 6.0)), margins=Margins(bore_slot=2.0))
    assert one(layout, "hole-to-ramp") == pytest.approx((2.0, 0.15 * math.sqrt(2)))
    assert one(replace(layout, accuracy=only(template=0.2)), "hole-to-ramp") == pytest.approx((2.0, 0.1 * math.sqrt(2)))


def test_a_hole_from_the_back_under_a_ramp_by_hand() -> None:
    # Its rim at y = 51 comes nearest, where the ramp is 9 / 12 of its depth deep, seen along 12 / 13 of that.
    layout = ramped(only(stop=0.3), holes=(replace(holes((14.0, 48.0, 6.0), depth=10.0)[0], surface="back"),),
                    margins=Margins(bore_slot=4.0))
    nominal, sd = one(layout, "hole-to-ramp")
    assert nominal == pytest.approx((6.0 - 3.75) * 12 / 13, abs=1e-3)
    # (z - s u) / sqrt(1 + s s) with s = 5 / 12 and u = 9: the hole's stop moves z, the ramp's s by 0.15 / 12.
    steeper = 0.15 / 12 * (9 * 12 / 13 + nominal * (5 / 12) / (1 + 25 / 144))
    assert sd == pytest.approx(math.hypot(0.15 * 12 / 13, steeper), rel=1e-3)


def test_the_wood_below_a_ramp_by_hand() -> None:
    """12 long, 10 deep, as wide as its slot: 6 past the nut end it is 15 deep, where 16 are thick."""
    layout = ramped(only(stop=0.3), Ramp(length=12.0, depth=10.0))
    # A depth that strays by 0.15 does so by half as much again there; a start that strays makes it steeper: 10 * 18 / 12.
    assert one(layout, "ramp-too-deep") == pytest.approx((1.0, 0.15 * 1.5))
    nominal, sd = one(replace(layout, accuracy=only(mark=0.3)), "ramp-too-deep")
    # d(10 (l + 6) / l) / dl at 12 is -60 / 144.
    assert (nominal, sd) == pytest.approx((1.0, 0.15 * 60 / 144), rel=1e-3)
    # A follower that rides off by g makes the slot end g nearer to the ramp's start: 10 * 18 / (12 - g).
    assert one(replace(layout, accuracy=only(template=0.2)), "ramp-too-deep")[1] == pytest.approx(
        math.hypot(0.1 * 10 * 18 / 144, 0.1 * 60 / 144), rel=1e-3)


def test_a_ramp_and_the_floor_of_its_slot_by_hand() -> None:
    layout = ramped(only(stop=0.3), Ramp(length=12.0, depth=5.0),
                    slots=(Slot(id="slot", shape=StraightSlot(nut_end=(14.0, 60.0), tip_end=(14.0, 150.0), width=12.0),
                                depth=4.8, ramp=Ramp(length=12.0, depth=5.0)),))
    assert one(layout, "ramp-too-deep") == pytest.approx((-0.2, 0.15 * math.sqrt(2)))
    snag, = (s for s in check(layout).snags if s.kind == "ramp-too-deep")
    found = simulate(layout, 4000).of(snag)
    # It costs no piece; less than nothing is 0.2 / 0.212 sd away.
    assert not found.spoils and found.short == pytest.approx(0.5 * (1 + math.erf(0.2 / (0.3 * math.sqrt(0.5)) / math.sqrt(2))), abs=0.02)


# ---- against the checks ----------------------------------------------------------------------------------------------
@pytest.mark.parametrize(("ramp", "slant"), [(None, 0.0), (None, -6.0), (Ramp(length=52.6, depth=5.0), 3.0),
                                             (Ramp(length=12.0, depth=4.0, width=49.5), 0.0),
                                             (Ramp(length=12.0, depth=4.0, width=56.0), 0.0)])
def test_without_errors_ramps_measure_what_the_checks_tell(ramp: Ramp | None, slant: float) -> None:
    layout = below(Accuracy(), ramp=ramp, slant=slant)
    bench = bench_of(layout)
    specs = bench.specs(Reach(np.zeros(len(bench.model.recipes)), np.zeros(len(bench.model.recipes)), 0.0, 0.0))
    measured = {(s.kind, frozenset(s.between), s.of): float(s.measure(bench.nominal)[0]) for s in specs if s.kind in KINDS}
    told = [s for s in check(layout).snags if s.kind in KINDS]
    assert told
    for snag in told:
        values = [value for (kind, between, _), value in measured.items()
                  if (kind, between) == (snag.kind, frozenset(snag.between))]
        assert min(abs(value - snag.measured) for value in values) < 0.002, snag.text
    assert len([value for value in measured.values() if value < 2.0]) <= len(told)


@pytest.mark.parametrize(("by", "depth", "slant"), [(1.5, 12.0, 0.0), (4.0, 12.0, 9.0), (8.0, 10.0, -12.0)])
def test_each_trial_is_measured_as_the_checks_measure_one(by: float, depth: float, slant: float) -> None:
    """Ramps and drillings of single trials, made one by one and given to the routine of the checks."""
    bench = bench_of(below(rough(head(), by).accuracy, depth, slant=slant))
    lot = Trials(bench, 90, 7)
    specs = [s for s in bench.specs(endless(len(bench.model.recipes))) if s.kind == "hole-to-ramp"]
    signs: set[bool] = set()
    for built in lot.built():
        ramp = ramp_of(built, "slot")
        for spec in specs:
            values = spec.measure(built)
            for t in range(0, built.trials, 3):
                length = bench.model.ramps["slot"].cut.length
                cut = RampCut((float(ramp.start[0][t]), float(ramp.start[1][t])), ramp.axis, length,
                              float(ramp.slope[t]) * length, float(ramp.half[t]), float(ramp.reach[t]))
                true = min(-from_ramp(drilled(bench.model.recipes[i].drilling, built.rod(i), t), cut).depth
                           for i in (part.index for part in spec.measure.parts))
                signs.add(true > 0)
                if spec.measure.parts[0].from_face:
                    # A drilling that leans is wider in plan by its own end than the ellipse of that end.
                    assert true - 0.004 * by <= values[t] <= true + 0.002, (spec.of, t)
                elif true > 0:
                    assert true - 0.003 <= values[t] <= true + 1e-6, (spec.of, t)
                else:
                    assert true - 0.15 <= values[t] <= true + 1e-6, (spec.of, t)
    assert signs == {True, False}


def own(accuracy: Accuracy, along: float = 62.0, width: float = 20.0) -> Headstock:
    """A side bore into the slot whose ramp lies over the rails beside it by 4: the top of the bore is 4.8 below the face."""
    return ramped(accuracy, Ramp(length=8.0, depth=3.0, width=width), tuners=(Tuner(id="side", pattern=SIDE, place=EdgePlace(side="treble", along=along)),))


@pytest.mark.parametrize("along", [60.0, 62.0, 64.0])
def test_of_its_own_slots_ramp_a_bore_has_the_chance_of_what_lies_over_the_rail(along: float) -> None:
    layout = own(rough(head(), 3.0).accuracy, along)
    snags = [s for s in check(layout).snags if s.kind == "hole-to-ramp"]
    simulation = simulate(layout, 2000)
    assert snags
    for snag in snags:
        found = simulation.of(snag)
        assert found is not None and found.nominal == pytest.approx(snag.measured, abs=0.002) and found.short > 0.1


def test_of_its_own_slots_ramp_a_bore_is_as_far_as_points_close_together_tell() -> None:
    """Of every trial the floor of the ramp over the rail is strewn with points, from the slot's wall to the ramp's rim."""
    bench = bench_of(own(rough(head(), 3.0).accuracy))
    spec, = (s for s in bench.specs(endless(len(bench.model.recipes))) if s.kind == "hole-to-ramp" and any(part.rail for part in s.measure.parts))
    part, rows, looked = next(part for part in spec.measure.parts if part.rail), bench.model.template, 0
    for built in Trials(bench, 120, 5).built():
        values, rod, draws = spec.measure(built), built.rod(part.index), built.draws
        for t in range(built.trials):
            # The slot: 12 wide about x = 14, its nut end at y = 54; rim and wall move with the follower, the rim with its mark too.
            shift, size, grown = [draws[r, t] for r in rows.place], [1 + draws[r, t] for r in rows.paper], draws[rows.slots["slot"], t]
            errors = bench.model.ramps["slot"]
            wall, rim = 14 * size[0] + shift[0] + 6 + grown, 14 * size[0] + shift[0] - draws[errors.mark[1], t] + 10 + grown
            begins, ends = 46 * (1 + draws[errors.paper[1], t]) + draws[errors.mark[0], t], 54 * size[1] + shift[1]
            slope = (3.0 + draws[errors.stop, t]) / (ends - grown - begins)
            x, y = np.meshgrid(np.linspace(wall, rim, 60), np.linspace(begins, ends + 6.0, 400))
            points = np.stack([x, y, (y - begins) * slope], axis=-1).reshape(-1, 3)
            start, axis = (np.array([float(c[t]) for c in way]) for way in (rod.start, rod.axis))
            along = np.clip((points - start) @ axis, 0.0, part.rail.enters)
            true = np.linalg.norm(points - start - along[:, None] * axis, axis=1).min() - rod.radius
            if true > 0.05:
                looked += 1
                assert values[t] == pytest.approx(true, abs=0.02)
            else:
                assert values[t] < 0.07
    assert looked > 60


def drilled(meant: Drilling, rod, trial: int) -> Drilling:
    """A drilling as one trial has it."""
    def at(parts) -> tuple[float, float, float]:
        return tuple(float(c[trial]) for c in parts)
    return replace(meant, start=at(rod.start), direction=at(rod.axis), depth=float(rod.length[trial]))


# ---- against the polygon library -------------------------------------------------------------------------------------
CORNERS = ((-40.0, 0.0), (24.0, 0.0), (24.0, 38.0), (34.0, 46.0), (24.5, 52.0), (40.0, 60.0), (40.0, 180.0), (-40.0, 180.0))


@pytest.mark.parametrize("width", [16.0, 19.0])
def test_wood_to_the_outline_and_the_nut_as_polygons_measure_it(width: float) -> None:
    layout = ramped(rough(head(), 3.0).accuracy, Ramp(length=51.0, depth=5.0, width=width), slant=5.0,
                    outline=Loop(nodes=tuple(Node(at=at) for at in CORNERS)))
    bench = bench_of(layout)
    lot, looked = Trials(bench, 150, 3), 0
    specs = {s.kind: s for s in bench.specs(lot.reach()) if s.kind in KINDS}
    rows = bench.model.template
    for built in lot.built():
        ramp = ramp_of(built, "slot")
        beside, before = (specs[kind].measure(built) for kind in KINDS[1:3])
        for t in range(0, built.trials, 3):
            draws = built.draws[:, t]
            size, shift = [1.0 + draws[r] for r in rows.paper], [draws[r] for r in rows.place]
            wall = shapely.transform(shapely.LineString(CORNERS[1:] + CORNERS[:1]), lambda p: p * size + shift)
            shape = shapely.Polygon([(float(x[t]), float(y[t])) for x, y in ramp.corners])
            assert before[t] == pytest.approx(shape.bounds[1], abs=1e-9)
            apart = shape.distance(wall) + draws[rows.outline]
            if shape.distance(wall) > 0:
                looked += 1
                assert beside[t] == pytest.approx(apart, abs=0.01)
            else:
                assert beside[t] - draws[rows.outline] < 1e-9
    assert looked > 10


# ---- pruning, and what a snag's card finds ---------------------------------------------------------------------------
@pytest.mark.parametrize("by", [1.0, 4.0])
def test_pruning_changes_nothing_of_ramps(by: float) -> None:
    layout = below(rough(head(), by).accuracy, ramp=Ramp(length=52.0, depth=4.0, width=50.0), slant=0.5)
    layout = replace(layout, margins=replace(layout.margins, side_cover=13.0))
    told = [[(c.kind, c.of, c.between, c.spoiled, c.short, pytest.approx(c.spread.mean, abs=1e-4))
             for c in found.clearances if c.kind in KINDS] for found in (simulate(layout, 200, 5), brute(layout, 200, 5))]
    assert told[0] == told[1] and {row[0] for row in told[0]} == set(KINDS)


def test_every_snag_of_a_ramp_finds_its_chance() -> None:
    layout = below(Accuracy(), ramp=Ramp(length=52.5, depth=4.0, width=51.0))
    layout = replace(layout, margins=replace(layout.margins, side_cover=13.0))
    found = simulate(layout, 2000)
    told = [s for s in check(layout).snags if s.kind in KINDS]
    assert {s.kind for s in told} == set(KINDS)
    for snag in told:
        clearance = found.of(snag)
        assert clearance is not None and clearance.nominal == pytest.approx(snag.measured, abs=0.002)
        assert clearance.short > 0.1 and clearance.shares
