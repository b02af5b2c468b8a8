"""A curve of many chords: its points are worked out all at once and are the same numbers as one by one."""

import random

import pytest

from geometry.curves import Cubic


@pytest.mark.parametrize("size", [5.0, 300.0, 40_000.0, 1e7])
def test_points_worked_out_together_are_the_points_one_by_one_to_the_last_bit(size):
    chance = random.Random(size)
    for sagitta in (1e-4, 2.5e-3, 0.1):
        curve = Cubic(*((chance.uniform(-size, size), chance.uniform(-size, size)) for _ in range(4)))
        points = curve.flatten(sagitta)
        n = len(points) - 1
        assert points == [curve.p0, *(curve.point(i / n) for i in range(1, n)), curve.p1]
        assert all(type(number) is float for point in points for number in point)


def test_a_long_curve_asks_for_its_points_once(monkeypatch):
    asked = []
    real = Cubic.point
    monkeypatch.setattr(Cubic, "point", lambda self, t: asked.append(t) or real(self, t))
    assert len(Cubic((0, 0), (0, 9000), (9000, 9000), (9000, 0)).flatten(1e-3)) > 1000
    assert len(asked) == 1
