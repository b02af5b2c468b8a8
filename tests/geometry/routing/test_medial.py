"""Middle lines of slots among whose points along the wall the polygon library loses its way."""

import math

import numpy as np
import pytest
import shapely

from geometry.curves.polygons import polygon
from geometry.layout import slot_path
from geometry.routing.medial import _triangles, middle_lines
from geometry.routing.narrow_places import middles
from tests.geometry.checks.heads import drawn

W, H, T, B = 42.716254676, 41.429693629, 7.423375564, 5.186232559
ARMS = drawn("arms", (0.0, 0.0), (W, 0.0), (W, H), (W - T, H), (W - T, B), (T, B), (T, H), (0.0, H))
"""Its cells (Voronoi) cannot be clipped by the library."""
BENT = drawn("bent", (-9.6050365634388, 103.22644088055314, 0.45928745809802424), (-0.08002499684890019, 104.36342094746769),
             (-0.3351000542602751, 146.39558591359713, -0.21268530255074225), (-9.6050365634388, 143.93250904507727))
"""Its points by themselves cannot be joined to triangles by the library."""


@pytest.mark.parametrize(("slot", "least", "longest"), [(ARMS, 2.0, 2 * (H - B / 2) + W - T - 4.0), (BENT, 3.0, 37.3)], ids=["arms", "bent"])
def test_a_slot_has_its_middle_line_however_its_points_lie(slot, least, longest):
    branches, wall = middle_lines(slot, least), polygon(slot_path(slot))
    assert shapely.LineString(branches[0]).length == pytest.approx(longest, rel=0.05)
    for branch in branches:
        far = shapely.distance(wall.exterior, shapely.points(branch))
        assert far.min() >= least - 1e-6 and shapely.contains(wall, shapely.LineString(branch))


def test_a_leaning_slot_has_its_line_from_end_to_end():
    """Of its points alone the polygon library makes triangles whose circles hold others: the line ended a quarter of the way along."""
    wide, long, lean = 11.388455387259354, 136.042311863895, -0.6817244245112057
    leaning = drawn("leaning", (0.0, 0.0), (wide, 0.0), (wide + lean, long), (lean, long, 0.0))
    assert shapely.LineString(middle_lines(leaning, 2.0)[0]).length == pytest.approx(long, abs=wide / 2)


@pytest.mark.parametrize("lean", [-7.3, -1.0, 0.0, 0.5, 1 / 3, 12.0])
@pytest.mark.parametrize("tongue", [1.0, 3.0])
def test_no_point_of_the_wall_is_nearer_than_those_of_its_triangle(tongue, lean):
    """Empty circles, asked of all points (Delaunay's condition), for the U of two arms that is turned by some degrees."""
    cos, sin = math.cos(math.radians(lean)), math.sin(math.radians(lean))
    ring = shapely.transform(shapely.Polygon(((8, 40), (20, 40), (20, 150), (8, 150), (8, 52), (8 - tongue, 52), (8 - tongue, 150),
                                              (-tongue, 150), (-tongue, 40))), lambda xy: xy @ ((cos, sin), (-sin, cos))).exterior
    triangles = _triangles(ring, 360)
    assert len(triangles) == 358
    centres, spots = middles(triangles), np.unique(triangles.reshape(-1, 2), axis=0)
    inside = shapely.contains_xy(shapely.Polygon(ring), centres)
    round_ = np.hypot(*(centres - triangles[:, 0])[inside].T)
    nearest = np.hypot(*(centres[inside][:, None] - spots).transpose(2, 0, 1)).min(axis=1)
    assert nearest == pytest.approx(round_, abs=1e-9)
