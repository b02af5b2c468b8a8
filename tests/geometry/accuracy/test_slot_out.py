"""Bores that lie in a straight slot, trial by trial against the way out that the checks find."""

import numpy as np
import pytest
from msgspec.structs import replace

from app.panels.snags.chance_words import card_words
from geometry.accuracy.bench import Trials, bench_of
from geometry.accuracy.sides import _ToWall, _UnderSlot, strip_of
from geometry.accuracy.simulation import simulate
from geometry.accuracy.spec import Reach
from geometry.checks import check
from geometry.layout import Accuracy, Slot, StraightSlot
from geometry.layout.slots import Ramp
from geometry.solids.walls import Wall
from geometry.solids.ways_out import from_slot
from tests.geometry.accuracy.specimens import WIDE, endless, only, rough, side_head
from tests.geometry.accuracy.test_ramps import ramped

TRIALS = 36


def slot(x: float, slant: float, width: float, depth: float | None = None) -> tuple[Slot, ...]:
    return (Slot(id="slot", depth=depth, shape=StraightSlot(nut_end=(x, 82.0), tip_end=(x + slant, 150.0), width=width)),)


@pytest.mark.parametrize("accuracy", [only(mark=4.0), only(tilt_degrees=6.0), only(stop=3.0, template=2.0)])
@pytest.mark.parametrize(("x", "slant", "width", "depth"), [(33.0, 2.0, 6.0, None), (29.0, -14.0, 5.0, None), (34.0, 0.0, 3.0, 8.5),
                                                            (31.0, 5.0, 4.0, 10.0), (33.0, 0.0, 5.0, 7.7)])
def test_a_screw_in_a_slot_is_as_deep_as_the_checks_say(accuracy: Accuracy, x: float, slant: float, width: float,
                                                        depth: float | None) -> None:
    layout = side_head(accuracy, slots=slot(x, slant, width, depth), margins=WIDE)
    bench = bench_of(layout)
    lot, looked = Trials(bench, TRIALS, 5), 0
    specs = [s for s in bench.specs(endless(len(bench.model.recipes))) if isinstance(s.measure, _ToWall | _UnderSlot) and s.measure.slot]
    assert specs
    opening = bench.model.scene.openings[0]
    for built in lot.built():
        for spec in specs:
            values, i = spec.measure(built), spec.measure.index
            seen, rod = strip_of(built, i), built.rod(i)
            grown = built.row(spec.measure.follow)
            for t in range(built.trials):
                wide = Slot(id="slot", shape=StraightSlot(nut_end=opening.slot.shape.nut_end, tip_end=opening.slot.shape.tip_end,
                                                          width=width + 2 * float(grown[t])),
                            depth=None if depth is None else depth + float(built.row(bench.model.template.floors["slot"])[t]))
                meant = bench.model.recipes[i].drilling
                top = float(min(rod.start[2][t], rod.at(rod.length)[2][t]))
                one = replace(meant, start=(float(seen.x[t]), float(seen.y[t]), top), depth=float(seen.length[t]),
                              direction=(float(seen.dx[t]), float(seen.dy[t]), 0.0))
                true = from_slot(one, wide, Wall(opening.wall.path)).depth
                if isinstance(spec.measure, _UnderSlot) and (values[t] >= 0 or true <= 0):
                    # A rim is dotted there, and a bore counts as level at its higher end.
                    assert abs(values[t]) < 0.5 or (values[t] > 0) == (true <= 0)
                elif true > 1e-6:
                    looked += 1
                    assert -values[t] == pytest.approx(true, abs=0.001 if depth is None else 0.02)
                else:
                    assert values[t] >= -1e-6
    assert looked > 10


def test_without_errors_a_bore_in_a_slot_is_as_deep_as_its_snag_says() -> None:
    layout = side_head(Accuracy(), slots=slot(33.0, 2.0, 6.0), margins=WIDE)
    bench = bench_of(layout)
    still = np.zeros(len(bench.model.recipes))
    told = [s for s in check(layout).snags if s.kind == "screw-to-slot" and s.measured < 0]
    measured = [float(s.measure(bench.nominal)[0]) for s in bench.specs(Reach(still, still, 0.0, 0.0)) if s.kind == "screw-to-slot"]
    assert told
    for snag in told:
        assert min(abs(value - snag.measured) for value in measured) < 1e-3


def test_a_card_says_where_depths_are_those_of_a_corner() -> None:
    """A wide ramp in a rough shop runs out at the edge; a screw in a straight slot has the least way out."""
    edge = ramped(rough(side_head(Accuracy())).accuracy, Ramp(length=12.0, depth=5.0, width=51.5))
    words = "Below zero it tells how deep the deepest corner is in"
    told = {c.kind: card_words(c, 400, "mm")[2] for c in simulate(edge, 400, 1).clearances}
    assert words in told["ramp-to-outline"]
    inside = side_head(Accuracy(), slots=slot(33.0, 2.0, 6.0))
    found = [c for c in simulate(inside, 400, 1).clearances if c.kind == "screw-to-slot" and c.spoiled]
    assert found and not any(words in card_words(c, 400, "mm")[2] for c in found)
