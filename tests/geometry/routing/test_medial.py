"""Middle lines of slots among whose points along the wall the polygon library loses its way."""

import pytest
import shapely

from geometry.curves.polygons import polygon
from geometry.layout import slot_path
from geometry.routing.medial import middle_lines
from tests.geometry.checks.heads import drawn

W, H, T, B = 42.716254676, 41.429693629, 7.423375564, 5.186232559
ARMS = drawn("arms", (0.0, 0.0), (W, 0.0), (W, H), (W - T, H), (W - T, B), (T, B), (T, H), (0.0, H))
"""Its cells (Voronoi) cannot be clipped by the library."""
BENT = drawn("bent", (-9.6050365634388, 103.22644088055314, 0.45928745809802424), (-0.08002499684890019, 104.36342094746769),
             (-0.3351000542602751, 146.39558591359713, -0.21268530255074225), (-9.6050365634388, 143.93250904507727))
"""Its points cannot be joined to triangles, but for others along the same wall."""


@pytest.mark.parametrize(("slot", "least", "longest"), [(ARMS, 2.0, 2 * (H - B / 2) + W - T - 4.0), (BENT, 3.0, 37.3)], ids=["arms", "bent"])
def test_a_slot_has_its_middle_line_however_its_points_lie(slot, least, longest):
    branches, wall = middle_lines(slot, least), polygon(slot_path(slot))
    assert shapely.LineString(branches[0]).length == pytest.approx(longest, rel=0.05)
    for branch in branches:
        far = shapely.distance(wall.exterior, shapely.points(branch))
        assert far.min() >= least - 1e-6 and shapely.contains(wall, shapely.LineString(branch))


def test_points_that_cannot_be_joined_at_all_are_heard_of(monkeypatch):
    def lost(points):
        raise shapely.GEOSException("lost")
    monkeypatch.setattr(shapely, "delaunay_triangles", lost)
    with pytest.raises(shapely.GEOSException):
        middle_lines(ARMS, 2.1)
