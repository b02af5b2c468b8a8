"""Built headstocks one by one: each trial's walls and cylinders made whole, and measured by other means.

Walls are polygons stretched, shifted and grown by the polygon library; holes
are measured by the checks' exact distance of cylinders; covers by points of
their rims. Nothing is pruned, and nothing is done for many trials at once.
"""

import math

import numpy as np
import pytest
import shapely

from geometry.accuracy.bench import Bench, Trials, bench_of
from geometry.accuracy.built import Built
from geometry.accuracy.sides import _UnderSlot
from geometry.accuracy.spec import Spec
from geometry.checks.hole_pairs import meant, wanted
from geometry.checks.hole_walls import wanted_to_outline, wanted_to_slot
from geometry.layout import Accuracy, Loop, Margins, Node, Slot, StraightSlot
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from tests.geometry.accuracy.specimens import crowded, demo, only, rough, sample, side_head

TRIALS = 300
LOOKED_AT = 12
"""Every so-manieth trial is built one by one, of each head: together some hundred headstocks"""
FLAT = 0.005
"""mm: walls flattened within 0.002, and the polygon library's rounded corners"""
RADIUS = 7.0
"""mm: largest radius of a hole. Distances from axes are taken in the template's own mm, as its paper was stretched."""


class Head:
    """One built headstock: polygons and cylinders."""

    def __init__(self, bench: Bench, built: Built, trial: int) -> None:
        self.model, draws = bench.model, built.draws[:, trial]
        rows = self.model.template
        size = [1.0 + draws[row] for row in rows.paper]
        self.stretched = max(abs(factor - 1.0) for factor in size)
        shift = [draws[row] for row in rows.place]

        def made(wall, grown: float) -> shapely.Polygon:
            moved = shapely.transform(shapely.Polygon(wall.points[:-1]), lambda points: points * size + shift)
            return moved.buffer(grown, quad_segs=64)

        self.outline = made(self.model.scene.outline, draws[rows.outline])
        self.slots = {o.id: made(o.wall, draws[rows.slots[o.id]]) for o in self.model.scene.openings}
        self.rods = [(np.array([float(c[trial]) for c in rod.start]), np.array([float(c[trial]) for c in rod.axis]),
                      float(rod.length[trial]), rod.radius)
                     for rod in (built.rod(i) for i in range(len(self.model.recipes)))]

    def measured(self, spec: Spec) -> float | None:
        """What a clearance measures here; None for kinds that are measured elsewhere."""
        margins = self.model.scene.layout.margins
        drillings = [r.drilling for r in self.model.recipes]

        def of(hole: str, wants) -> list[int]:
            return [i for i, d in enumerate(drillings) if d.hole == hole and wants(d, margins) == spec.needed]

        if len(spec.of) == 2:
            pairs = [(i, k) for i, a in enumerate(drillings) for k, b in enumerate(drillings)
                     if (a.hole, b.hole) == spec.of and not meant(a, b, drillings) and wanted(a, b, margins) == spec.needed]
            return float(gaps(self._solids([i for i, _ in pairs]), self._solids([k for _, k in pairs])).distance.min())
        if spec.kind == "cover":
            i, = [i for i, d in enumerate(drillings) if d.hole == spec.of[0] and not d.upright]
            depths = self._rim(i)[:, 2]
            thickness = self.model.scene.layout.blank.thickness
            return float(depths.min() if spec.between[1] == "face" else thickness - depths.max())
        if spec.kind.endswith("-to-slot") and np.isinf(self._opening(spec.between[1]).depth):
            return min(self._wall_gap(i, self.slots[spec.between[1]], -1.0) for i in of(spec.of[0], wanted_to_slot))
        if spec.kind.endswith("-to-outline") and all(drillings[i].upright for i in of(spec.of[0], wanted_to_outline)):
            return min(self._outline_gap(i) for i in of(spec.of[0], wanted_to_outline))
        if spec.kind == "rail":
            return self.outline.exterior.distance(self.slots[spec.between[0]])
        if spec.kind == "web":
            return self.slots[spec.between[0]].distance(self.slots[spec.between[1]])
        return self.slots[spec.between[0]].bounds[1] if spec.kind == "slot-to-nut" else None

    def _opening(self, id: str):
        return next(o for o in self.model.scene.openings if o.id == id)

    def _solids(self, index: list[int]) -> Cylinders:
        return Cylinders(*(np.array([self.rods[i][part] for i in index]) for part in range(4)))

    def _rim(self, i: int) -> np.ndarray:
        """Points of both rims of a cylinder."""
        start, axis, length, radius = self.rods[i]
        u = np.cross(axis, (0.3, 0.5, 0.7))
        u /= np.linalg.norm(u)
        w = np.cross(axis, u)
        turns = np.linspace(0, 2 * math.pi, 2880)[:, None]
        ring = radius * (np.cos(turns) * u + np.sin(turns) * w)
        return np.concatenate([start + ring, start + axis * length + ring])

    def _ends(self, i: int) -> list[shapely.Point]:
        start, axis, length, _ = self.rods[i]
        return [shapely.Point(start[:2]), shapely.Point((start + axis * length)[:2])]

    def _wall_gap(self, i: int, slot: shapely.Polygon, _: float) -> float:
        """To a through slot: an upright hole from the nearer end of its axis, a level one as a rectangle."""
        if self.model.recipes[i].drilling.upright:
            signed = [p.distance(slot) if not slot.contains(p) else -p.distance(slot.exterior) for p in self._ends(i)]
            return min(signed) - self.rods[i][3]
        a, b = self._ends(i)
        return shapely.LineString([a, b]).buffer(self.rods[i][3], cap_style="flat").distance(slot)

    def _outline_gap(self, i: int) -> float:
        centre = shapely.Point(self.model.recipes[i].drilling.start[:2])
        waste = (self.model.recipes[i].drilling.role == "locating"
                 and not shapely.Polygon(self.model.scene.outline.points[:-1]).contains(centre))
        signed = [p.distance(self.outline.exterior) * (1 if self.outline.contains(p) != waste else -1)
                  for p in self._ends(i)]
        return min(signed) - self.rods[i][3]


@pytest.mark.parametrize("layout", [rough(demo(), 1.5), rough(crowded(), 2.5), rough(sample("six-in-line"), 2.0),
                                    rough(sample("slotted-three-a-side"), 2.5)])
def test_every_clearance_is_what_the_built_head_measures(layout) -> None:
    bench = bench_of(layout)
    lot = Trials(bench, TRIALS, 11)
    specs = bench.specs(lot.reach())
    kinds, looked = set(), 0
    for built in lot.built():
        told = [spec.measure(built) for spec in specs]
        for trial in range(0, built.trials, LOOKED_AT):
            head = Head(bench, built, trial)
            for spec, values in zip(specs, told, strict=True):
                measured = head.measured(spec)
                if measured is None:
                    continue
                looked += 1
                kinds.add(spec.kind)
                value = float(values[trial])
                if len(spec.of) == 2:
                    if measured > 0:
                        assert measured - 2.5e-4 <= value <= measured + 1e-6, (spec.kind, spec.between)
                    else:
                        assert value <= 0, (spec.kind, spec.between)
                elif spec.kind == "cover":
                    assert value == pytest.approx(measured, abs=1e-4), spec.between
                elif measured > 0 or value > 0:
                    assert value == pytest.approx(
                        measured, abs=FLAT + head.stretched * (abs(measured) + RADIUS)), (spec.kind, spec.between)
    assert looked >= 25 and kinds


@pytest.mark.parametrize("mark", [0.5, 3.0])
def test_a_shoulder_that_turns_away_from_a_screw_is_not_taken_for_its_other_side(mark: float) -> None:
    """Beside a re-entrant corner the far end of a short screw lies beyond the line of the shoulder, yet in the wood."""
    corners = ((-40.0, 0.0), (30.0, 0.0), (30.0, 80.0), (45.0, 80.0), (45.0, 180.0), (-40.0, 180.0))
    layout = side_head(only(mark=mark), along=60.0, outline=Loop(nodes=tuple(Node(at=at) for at in corners)), slots=(),
                       margins=Margins(screw_outline=12.0))
    bench = bench_of(layout)
    lot = Trials(bench, 400, 3)
    specs = [s for s in bench.specs(lot.reach()) if s.kind == "screw-to-outline"]
    assert specs
    shoulder, looked = shapely.LineString([(30.0, 80.0), (45.0, 80.0)]), 0
    for built in lot.built():
        for spec in specs:
            i, = [i for i, r in enumerate(bench.model.recipes) if r.drilling.hole == spec.of[0]]
            if bench.model.recipes[i].drilling.start[1] < 60.0:
                continue
            values, rod = spec.measure(built), built.rod(i)
            far = rod.at(rod.length)
            for t in range(0, built.trials, 4):
                ends = [(rod.start[0][t], rod.start[1][t]), (far[0][t], far[1][t])]
                apart = shapely.LineString(ends).buffer(rod.radius, cap_style="flat").distance(shoulder)
                if apart > 0:
                    looked += 1
                    assert values[t] == pytest.approx(apart, abs=0.01)
    assert looked > 50


@pytest.mark.parametrize(("x", "slant", "depth"), [(13.0, 0.0, 2.4), (-3.0, 12.0, 1.2), (30.0, -9.0, 3.9)])
def test_under_a_blind_slot_nothing_is_overstated(x: float, slant: float, depth: float) -> None:
    """Against points all over the floor and its rim. A leaning bore counts as level at its higher end: understated."""
    slot = Slot(id="slot", shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x + slant, 150.0), width=9.0), depth=depth)
    layout = side_head(Accuracy(), slots=(slot,), margins=Margins(bore_slot=9.0, screw_any=9.0))
    bench = bench_of(layout)
    lot, looked = Trials(bench, 40, 5), 0
    specs = [s for s in bench.specs(lot.reach()) if isinstance(s.measure, _UnderSlot)]
    for built in lot.built():
        for trial in range(0, built.trials, 8):
            head = Head(bench, built, trial)
            floor, plan = depth + built.draws[bench.model.template.floors["slot"], trial], head.slots["slot"]
            x0, y0, x1, y1 = plan.bounds
            grid = np.stack(np.meshgrid(np.arange(x0, x1, 0.15), np.arange(y0, y1, 0.15)), axis=-1).reshape(-1, 2)
            grid = grid[shapely.contains_xy(plan, grid[:, 0], grid[:, 1])]
            rim = shapely.get_coordinates(shapely.segmentize(plan.exterior, 0.05))
            points = np.concatenate([grid, rim])
            for spec in specs:
                start, axis, length, radius = head.rods[spec.measure.index]
                away = np.column_stack([points, np.full(len(points), floor)]) - start
                along = away @ axis
                aside = np.linalg.norm(away - along[:, None] * axis, axis=1) - radius
                least = float(np.hypot(np.maximum(aside, 0), np.maximum(np.maximum(-along, along - length), 0)).min())
                if least > 0.3:
                    looked += 1
                    assert least - 0.5 <= spec.measure(built)[trial] <= least + 0.01 + head.stretched * (least + RADIUS)
    assert looked >= 5


def test_a_blind_slot_that_came_out_smaller_has_no_more_wood_below_it() -> None:
    """Only the template errs: the bore of 6.4 at half of 16 mm runs below the whole slot, whose floor is 3 deep, in every trial."""
    slot = Slot(id="slot", shape=StraightSlot(nut_end=(24.0, 40.0), tip_end=(24.0, 150.0), width=9.0), depth=3.0)
    bench = bench_of(side_head(only(template=1.5), slots=(slot,), margins=Margins(bore_slot=9.0)))
    lot = Trials(bench, 500, 5)
    spec, = [s for s in bench.specs(lot.reach()) if isinstance(s.measure, _UnderSlot) and s.kind == "side-bore-to-slot"]
    for built in lot.built():
        assert built.row(bench.model.template.slots["slot"]).min() < -1.5
        assert spec.measure(built) == pytest.approx(8.0 - 3.2 - 3.0, abs=0.01)
