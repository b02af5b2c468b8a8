"""The nearest points of two curves: at the bottom of a valley nobody goes on looking for what rounding hides."""

from collections import Counter
from itertools import product

import pytest

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Path
from geometry.solids import closest
from geometry.solids.walls import ring

BENT = Cubic((0.0, 0.0), (10.0, 14.0), (30.0, -12.0), (40.0, 3.0))
ROUND = Arc.bulging((0.0, 0.0), (40.0, 3.0), 0.4)


@pytest.mark.parametrize(("curve", "spot"), [*product((BENT, ROUND), ((12.0, 9.0), (21.0, -6.0), (33.3, 1.7), (18.0, 0.4)))])
def test_a_point_takes_few_looks(monkeypatch, curve, spot):
    asked, jet = Counter(), closest._jet
    monkeypatch.setattr(closest, "_jet", lambda segment, t: asked.update([segment]) or jet(segment, t))
    path = Path((curve,))
    rough = min((k / 40 for k in range(41)), key=lambda t: v.distance(curve.point(t), spot))
    distance, point, _, t = closest.settle_point(path, 0, rough, spot)
    assert asked[curve] <= 9
    away = v.sub(spot, point)
    assert 0 < t < 1 and abs(v.dot(v.unit(away), curve.tangent(t))) < 1e-11, "square to the curve"
    assert v.norm(away) == pytest.approx(distance, abs=1e-12)
    assert distance <= min(v.distance(curve.point(k / 20000), spot) for k in range(20001)) + 1e-12


@pytest.mark.parametrize("corner", [(12.0, 9.0), (14.3, 8.7), (9.1, 11.0), (20.0, 6.0)])
def test_a_corner_beside_a_curve_takes_few_looks(monkeypatch, corner):
    asked, jet = Counter(), closest._jet
    monkeypatch.setattr(closest, "_jet", lambda segment, t: asked.update(["one"]) or jet(segment, t))
    (x, y), rough = corner, min((k / 400 for k in range(401)), key=lambda t: v.distance(BENT.point(t), corner))
    beside = ring(((x, y), (x + 18, y + 2), (x + 18, y + 20), (x, y + 20)))
    distance, p, q = closest.settle(Path((BENT,)), 0, rough, beside, 0, 0.0)
    assert asked["one"] <= 14
    assert q == corner and v.distance(p, q) == pytest.approx(distance, abs=1e-12)
    assert distance <= min(v.distance(BENT.point(k / 20000), corner) for k in range(20001)) + 1e-12
