"""What must I hold? Every answer is simulated again, with the accuracy that it asks for."""

import math

import numpy as np
import pytest
from msgspec.structs import replace

from geometry.accuracy.bench import bench_of
from geometry.accuracy.needs import FINEST, ROUGHEST, Requirements, rounded_down
from geometry.accuracy.required import requirements
from geometry.accuracy.simulation import simulated
from geometry.accuracy.sources import SOURCES, half_width
from geometry.cancellation import Stopped, asking
from geometry.errors import GeometryError
from geometry.layout import Accuracy, Headstock
from tests.geometry.accuracy.specimens import demo, head, holes, only, side_head


def held(layout: Headstock, answer: Requirements, trials: int = 4000, seed: int = 77) -> float:
    """The chance when the needs are held where they say, and everything else stays as it is."""
    bench = bench_of(layout)
    scale = {(n.source, where): n.wanted / n.now for n in answer.needs for where in n.where}
    scales = np.array([scale.get((e.source, e.where), 1.0) for e in bench.model.errors.errors])
    found = simulated(bench.scaled(scales), trials, seed)
    return found.sound if answer.aim == "sound" else found.within


def test_the_marks_of_two_holes_by_hand() -> None:
    # 0.3 mm between them; sound with 99 % when that is 2.326 deviations: 0.3 / (2.326 sqrt 2) = 0.0912, twice 0.182.
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0)), accuracy=only(mark=0.3))
    answer = requirements(layout, 0.99, trials=10_000)
    need, = answer.needs
    assert (need.source, need.now, need.unit, need.where) == ("mark", 0.3, "mm", ("hole 1", "hole 2"))
    assert need.wanted == pytest.approx(2 * 0.3 / (2.326 * math.sqrt(2)), rel=0.06)
    assert answer.alone[0].source == "mark" and answer.possible and answer.spare == 1.0
    assert answer.now == pytest.approx(0.921, abs=0.01) and answer.reached >= 0.99
    assert held(layout, answer) == pytest.approx(0.99, abs=0.005)


@pytest.mark.parametrize(("layout", "aim", "chance"), [
    (demo(), "within", 0.99),
    (side_head(Accuracy(mark=0.6, tilt_degrees=1.0), slots=(), holes=holes((20.0, 83.3, 6.0))), "sound", 0.98)])
def test_an_answer_holds_when_it_is_simulated_again(layout: Headstock, aim: str, chance: float) -> None:
    answer = requirements(layout, chance, aim, trials=3000)
    assert answer.now < chance <= answer.reached and answer.possible
    assert answer.needs and all(FINEST <= n.wanted / n.now < 1 and n.where for n in answer.needs)
    # Four standard errors of a chance near 0.99 in 4,000 trials: 0.006.
    assert held(layout, answer) >= chance - 0.007
    tuners = {t.id for t in layout.tuners} | {h.id for h in layout.holes}
    assert all(set(n.where) <= tuners for n in answer.needs if n.source in ("mark", "tilt", "wander", "square"))


def test_a_shop_that_is_fine_enough_learns_how_much_rougher_it_could_be() -> None:
    # 2 mm apart: 2 / (0.15 sqrt 2) = 9.4 deviations, so that three times as rough is still 3.1.
    layout = head(holes=holes((0.0, 60.0, 5.0), (7.0, 60.0, 5.0)), accuracy=only(mark=0.3))
    answer = requirements(layout, 0.99, trials=2000)
    assert (answer.now, answer.needs, answer.alone, answer.spare) == (1.0, (), (), ROUGHEST)
    near = head(holes=holes((0.0, 60.0, 5.0), (6.0, 60.0, 5.0)), accuracy=only(mark=0.3))
    # 1 mm: 1 / (2.326 sqrt 2 0.15) = 2.03 times as rough.
    assert requirements(near, 0.99, trials=4000).spare == pytest.approx(2.0, abs=0.15)


def test_no_accuracy_mends_holes_that_are_meant_to_meet() -> None:
    layout = head(holes=holes((0.0, 60.0, 5.0), (4.8, 60.0, 5.0)), accuracy=only(mark=0.3))
    answer = requirements(layout, 0.99, trials=500)
    assert not answer.possible and answer.needs == () and answer.blocked == (("hole 1", "hole 2"),)
    assert answer.reached < 0.01


def test_it_can_be_stopped_and_tells_how_far_it_is() -> None:
    heard: list[float] = []
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0)), accuracy=only(mark=0.3))
    requirements(layout, 0.99, trials=500, progress=heard.append)
    assert heard[0] == 0.0 and heard[-1] == 1.0 and heard == sorted(heard)
    with pytest.raises(Stopped):
        requirements(layout, 0.99, trials=500, ask=asking(lambda: True))


@pytest.mark.parametrize("chance", [0.0, 1.0, 1.2, -0.1])
def test_a_chance_that_is_none_is_refused(chance: float) -> None:
    with pytest.raises(GeometryError, match="between 0 and 1"):
        requirements(demo(), chance)


def test_half_widths_are_told_to_two_figures_and_never_rounded_up() -> None:
    assert rounded_down(Accuracy(mark=0.3), "mark", 0.7234) == pytest.approx(0.21)
    assert rounded_down(Accuracy(mark=0.3), "mark", 1 / 3) == pytest.approx(0.1)
    assert rounded_down(Accuracy(tilt_degrees=2.5), "square", 0.99) == pytest.approx(2.4)
    assert rounded_down(Accuracy(stop=0.0), "stop", 0.5) == 0.0
    for source in SOURCES:
        for scale in (0.1, 0.37, 0.999):
            assert 0 < rounded_down(Accuracy(), source, scale) <= half_width(Accuracy(), source) * scale


def test_other_features_keep_their_accuracy() -> None:
    """A pair of holes far from the trouble is not asked for anything."""
    layout = head(holes=holes((0.0, 60.0, 5.0), (5.3, 60.0, 5.0), (0.0, 120.0, 5.0), (30.0, 120.0, 5.0)),
                  accuracy=only(mark=0.3))
    need, = requirements(replace(layout, accuracy=only(mark=0.3)), 0.99, trials=1000).needs
    assert need.where == ("hole 1", "hole 2")
