"""Where a disc just fits, against the clipped area of all such places."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.solids.ways_out import _nearest_room


@settings(max_examples=60)
@given(st.lists(st.floats(15, 60), min_size=5, max_size=12), st.tuples(st.floats(-80, 80), st.floats(-80, 80)), st.floats(0.5, 12),
       st.sampled_from([1.0, -1.0]))
def test_the_place_found_is_the_nearest_of_all(spokes, centre, radius, keep):
    turns = 2 * math.pi * np.arange(len(spokes)) / len(spokes)
    area = shapely.Polygon(np.column_stack([np.cos(turns), np.sin(turns)]) * np.array(spokes)[:, None])
    found = _nearest_room(centre, radius, area, keep)
    room = shapely.buffer(area, -keep * radius, quad_segs=256)
    room = room if keep > 0 else room.boundary
    if room.is_empty:
        assert found is None
        return
    assert math.dist(centre, found) == pytest.approx(shapely.distance(shapely.Point(centre), room), abs=1e-3)
    # The disc is there as promised: it keeps inside, or outside, and touches.
    if keep > 0:
        assert shapely.distance(area.boundary, shapely.Point(found)) >= radius - 1e-3 and shapely.covers(area, shapely.Point(found))
    else:
        assert shapely.distance(area, shapely.Point(found)) == pytest.approx(radius, abs=1e-3)


def test_discs_of_one_size_share_the_room_that_they_have(monkeypatch):
    """A comb too narrow for the disc but at its far end: from six places in its teeth it is looked for once."""
    teeth = [(x, y) for k in range(30) for x, y in ((4.0 * k, 60.0), (4.0 * k + 2.0, 60.0), (4.0 * k + 2.0, 1.0), (4.0 * k + 4.0, 1.0))]
    area = shapely.Polygon([(0.0, 0.0), *teeth, (120.0, 60.0), (160.0, 60.0), (160.0, 0.0)])
    asked = []
    real = shapely.buffer
    monkeypatch.setattr(shapely, "buffer", lambda some, *rest, **words: asked.append(some) or real(some, *rest, **words))
    found = [_nearest_room((4.0 * k + 1.0, 50.0), 5.0, area, 1.0) for k in range(6)]
    assert all(place == pytest.approx((125.0, 50.0), abs=0.1) for place in found)
    assert len(asked) == 1
