"""Which lines are near one another: against every distance measured, and long ones without their thousands of points."""

import numpy as np
import pytest
import shapely

from geometry.joining import nearness
from geometry.joining.nearness import LONG, near_lines


def oval(width: float, height: float, points: int, x: float = 0.0, y: float = 0.0, turn: float = 6.0) -> shapely.LineString:
    """Part of an ellipse round (x, y) as chords; `turn` (radians) of it."""
    t = np.linspace(0.0, turn, points)
    return shapely.linestrings(np.column_stack([x + width * np.cos(t), y + height * np.sin(t)]))


def measured(lines, first: int, reach: float) -> set[tuple[int, int]]:
    return {(i, j) for i in range(first) for j in range(i + 1, len(lines)) if shapely.distance(lines[i], lines[j]) <= reach}


@pytest.mark.parametrize("long", [2, LONG])
@pytest.mark.parametrize("seed", range(8))
def test_the_pairs_are_those_whose_measured_distance_is_within_reach(seed, long, monkeypatch):
    monkeypatch.setattr(nearness, "LONG", long)
    chance = np.random.default_rng(seed)
    size = 10.0 ** chance.integers(0, 5)
    lines = [oval(*(size * chance.uniform(0.1, 1, 2)), int(chance.choice([2, 5, 40, 1500])), *(size * chance.uniform(-1, 1, 2)),
                  chance.uniform(0.2, 2 * np.pi)) for _ in range(24)]
    # Copies beside their originals at just less and just more than the reach, and a speck that is closed.
    reach = size * chance.choice([1e-6, 1e-4, 1e-2])
    lines += [shapely.transform(line, lambda xy, way=way: xy + (way * reach, 0.0))
              for line, way in zip(lines[:6], (0.999, 1.001, 0.5, 2.0, 5.0, 30.0), strict=True)]
    end = shapely.get_coordinates(lines[0])[0]
    speck = end + reach * 0.9 * np.array([(0, 0), (1, 0), (0, 1), (0, 0)])
    lines += [shapely.linestrings(speck), shapely.linestrings(speck + reach * 3)]
    first = int(chance.integers(1, len(lines)))
    found = list(near_lines(lines, first, reach))
    assert len(found) == len(set(found)) and set(found) == measured(lines, first, reach)


def test_a_line_alone_and_lines_in_one_place():
    assert list(near_lines([oval(1, 1, 9)], 1, 0.1)) == []
    short = shapely.linestrings([(3.0, 3.0), (3.0, 3.001)])
    assert list(near_lines([short, short, short], 2, 0.1)) == [(0, 1), (0, 2), (1, 2)]


def test_long_lines_side_by_side_are_told_apart_without_all_their_points(monkeypatch):
    """Sixteen arcs of 80 m round one centre, 20 mm apart: of 120 pairs only the one that touches is measured in full."""
    asked = []
    real = nearness.within
    monkeypatch.setattr(nearness, "within", lambda some, others, reach: asked.append(len(some)) or real(some, others, reach))
    lines = [oval(40_000 + 20 * i, 40_000 + 20 * i, 12_000, turn=4.0) for i in range(16)]
    lines.append(shapely.linestrings([(40_000, 0), (40_010, 0)]))
    assert list(near_lines(lines, 16, 0.1)) == [(0, 16)]
    assert sum(asked) == 1
