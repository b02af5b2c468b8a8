"""Directions told all at once are those told one by one."""

import numpy as np
import pytest

from geometry.curves import Arc, Cubic, Line
from geometry.curves.many import tangents

_MIXED = (Line((0.0, 0.0), (3.0, 4.0)), Arc.bulging((3.0, 4.0), (9.0, 1.0), -0.4), Cubic((9.0, 1.0), (12.0, 1.0), (20.0, 8.0), (11.0, 9.0)),
          Arc.bulging((11.0, 9.0), (0.0, 9.0), 1.0), Cubic((0.0, 9.0), (0.0, 9.0), (-4.0, 3.0), (0.0, 0.0)))


@pytest.mark.parametrize("segments", [_MIXED, _MIXED[:1], _MIXED[1:3]])
def test_all_at_once_as_one_by_one(segments):
    rng = np.random.default_rng(2)
    of, t = rng.integers(0, len(segments), 80), np.append(rng.random(78), (0.0, 1.0))
    assert tangents(segments, of, t) == pytest.approx(np.array([segments[i].tangent(p) for i, p in zip(of, t, strict=True)]), abs=1e-12)


def test_where_a_handle_sits_on_its_node_the_direction_just_inside_counts():
    assert tangents(_MIXED, np.array([4]), np.array([0.0]))[0] == pytest.approx(_MIXED[4].tangent(0.0))
