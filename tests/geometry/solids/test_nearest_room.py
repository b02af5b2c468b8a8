"""Where a disc just fits: by looking about it, as by looking at the whole head; and of a head of very many corners those about it alone."""

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
def test_the_place_found_near_is_the_nearest_of_all(spokes, centre, radius, keep):
    turns = 2 * math.pi * np.arange(len(spokes)) / len(spokes)
    area = shapely.Polygon(np.column_stack([np.cos(turns), np.sin(turns)]) * np.array(spokes)[:, None])
    apart = shapely.distance(area.boundary, shapely.Point(centre))
    found = _nearest_room(centre, radius, area, keep, apart)
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


def test_far_from_a_saw_of_many_teeth_few_of_them_count(monkeypatch):
    """Of three thousand teeth a hundred and fifty lie about the hole: the others are not followed by arcs."""
    turns = 2 * math.pi * np.arange(3000) / 3000
    out = np.where(np.arange(3000) % 2, 60.0, 60.05)
    area = shapely.Polygon(np.column_stack([out * np.cos(turns), out * np.sin(turns)]))
    asked = []
    real = shapely.buffer
    monkeypatch.setattr(shapely, "buffer", lambda some, *rest, **words: asked.append(shapely.get_num_coordinates(some)) or real(some, *rest, **words))
    assert _nearest_room((58.0, 0.0), 5.0, area, 1.0, 2.0) == pytest.approx((55.0, 0.0), abs=0.01)
    assert len(asked) == 1 and asked[0] < 300


def test_discs_of_one_size_without_room_near_them_share_the_whole_room(monkeypatch):
    """A comb too narrow for the disc but at its far end: each of six places in its teeth is looked about, all of it once."""
    teeth = [(x, y) for k in range(30) for x, y in ((4.0 * k, 60.0), (4.0 * k + 2.0, 60.0), (4.0 * k + 2.0, 1.0), (4.0 * k + 4.0, 1.0))]
    area = shapely.Polygon([(0.0, 0.0), *teeth, (120.0, 60.0), (160.0, 60.0), (160.0, 0.0)])
    asked = []
    real = shapely.buffer
    monkeypatch.setattr(shapely, "buffer", lambda some, *rest, **words: asked.append(shapely.bounds(some)[2] == 160.0) or real(some, *rest, **words))
    found = [_nearest_room((4.0 * k + 1.0, 50.0), 5.0, area, 1.0, 1.0) for k in range(6)]
    assert all(place == pytest.approx((125.0, 50.0), abs=0.1) for place in found)
    assert asked.count(True) == 1
