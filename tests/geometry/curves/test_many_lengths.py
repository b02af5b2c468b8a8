"""The lengths of very many cubics at once are those of each by itself."""

import random

import pytest

from geometry.curves import Cubic, Line, Path
from geometry.curves.many import cubic_lengths


def wild(count: int) -> list[Cubic]:
    """Cubics between points anywhere, with handles anywhere, each beginning where the one before ends."""
    chance = random.Random(5)
    points = [(chance.uniform(-50, 50), chance.uniform(-50, 50)) for _ in range(3 * count + 1)]
    return [Cubic(*points[k:k + 4]) for k in range(0, 3 * count, 3)]


def test_as_long_as_by_themselves() -> None:
    there_and_back = Cubic((0.0, 0.0), (30.0, 0.0), (-20.0, 0.0), (10.0, 0.0))
    nothing = Cubic((1.0, 2.0), (1.0, 2.0), (1.0, 2.0), (1.0, 2.0))
    straight = Cubic((0.0, 0.0), (1.0, 1.0), (2.0, 2.0), (3.0, 3.0))
    curves = [*wild(200), there_and_back, nothing, straight]
    lengths = cubic_lengths(curves)
    assert lengths == pytest.approx([curve.length() for curve in curves], rel=1e-12, abs=1e-12)
    assert lengths[-2] == 0.0 and lengths[-1] == pytest.approx(3 * 2 ** 0.5, abs=1e-12)


def test_a_path_of_very_many_pieces_is_walked_and_cut_alike() -> None:
    curves = wild(150)
    joined = [piece for curve in curves for piece in (curve, Line(curve.p1, (0.0, 0.0)), Line((0.0, 0.0), curve.p1))]
    path, total = Path(tuple(joined)), 0.0
    for segment, end in zip(joined, path.ends, strict=True):
        total += segment.length()
        assert end == pytest.approx(total, rel=1e-13)
    part = path.part(path.ends[99] + 1.0, path.ends[320] - 2.0)
    assert part.length == pytest.approx(path.ends[320] - path.ends[99] - 3.0, abs=1e-6)
    assert part.start == pytest.approx(path.point_at(path.ends[99] + 1.0), abs=1e-9)
