"""Geometry against published worked examples. The source stands beside each value; `computed` marks a value
recomputed from the published formula."""

import math

import numpy as np
import pytest
import shapely

from geometry.curves import Arc, Cubic, circle
from geometry.curves.polygons import grown, polygon
from geometry.layout.slots import straight_path
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.solids.side import block_height
from geometry.solids.walls import Wall

SKEW = [
    # (point, direction), (point, direction), distance, source
    (((6, 2, 2), (1, -2, 2)), ((-4, 0, -1), (3, -2, -2)), 9.0,
     "byjus.com, shortest distance between the skew lines"),
    (((1, 2, 1), (1, -1, 1)), ((2, -1, -1), (2, 1, 2)), 3 / math.sqrt(2), "clay6.com/qa/1779, computed"),
    (((1, -2, 3), (-1, 1, -2)), ((1, -1, -1), (1, 2, -2)), 8 / math.sqrt(29), "vidyadip.com, computed"),
]


def rod(point, direction, radius):
    """A cylinder so long about a line that its ends play no part."""
    axis = np.array(direction) / np.linalg.norm(direction)
    return tuple(np.array(point) - 500 * axis), tuple(axis), 1000.0, radius


@pytest.mark.parametrize(("one", "two", "distance", "source"), SKEW, ids=[row[3][:12] for row in SKEW])
def test_skew_lines(one, two, distance, source):
    found = gaps(Cylinders.made([rod(*one, 0.25)]), Cylinders.made([rod(*two, 0.5)]))
    assert found.distance[0] == pytest.approx(distance - 0.75, abs=1e-9), source


@pytest.mark.parametrize(("radius", "chord", "sagitta", "within", "source"), [
    (10.0, 12.0, 2.0, 1e-9, "bit1024.com/tool/Arc-Height-Sagitta-Calculator"),
    (15.0, 20.0, 3.82, 0.005, "bit1024.com/tool/Arc-Height-Sagitta-Calculator"),
    (304.8, 42.0, 0.724286, 5e-7, "computed from the same formula"),
])
def test_sagitta(radius, chord, sagitta, within, source):
    assert radius == pytest.approx(sagitta / 2 + chord ** 2 / (8 * sagitta), rel=0.01), "inverse, same source"
    arc = Arc.about((0.0, 0.0), radius, -math.asin(chord / 2 / radius), 2 * math.asin(chord / 2 / radius))
    low, _, high, _ = arc.box()
    assert high - low == pytest.approx(sagitta, abs=within), source
    assert Arc.bulging(arc.p0, arc.p1, 2 * (high - low) / chord).radius == pytest.approx(radius, rel=1e-9)


@pytest.mark.parametrize(("base", "degrees", "height", "within", "source"), [
    (5.0, 30.0, 2.5, 5e-5, "scienceinsights.org/how-to-use-a-sine-bar-for-accurate-angle-measurement"),
    (5.0, 23 + 41 / 60, 2.0084, 5e-5, "scienceinsights.org, same page"),
    (5.0, 34 + 25 / 60, 2.826, 5e-4, "globalspec.com, Handbook of Machining and Metalworking Calculations, ch. 4"),
    (5.0, 18.0, 1.545, 5e-4, "shopdawg.com/sinebar.htm"),
    (10.0, 30.0, 5.0, 5e-5, "calcady.com/trade/manufacturing/sine-bar-gage-block"),
    # Printed as 1.124 (cut off) at reference.com/math/sine-bar; the right value:
    (5.0, 13.0, 1.12476, 5e-6, "computed"),
    (100.0, 14.0, 24.192, 5e-4, "computed"),
])
def test_block_heights(base, degrees, height, within, source):
    assert block_height(math.radians(degrees), base) == pytest.approx(height, abs=within), source


def test_a_block_is_measured_on_the_slope_not_on_the_flat():
    # Wedge of 17 degrees on a run of 100 is 30.573 high, the block 29.237 (computed): tests keep them apart.
    assert block_height(math.radians(17), 100.0) == pytest.approx(29.237, abs=5e-4)
    assert 100 * math.tan(math.radians(17)) == pytest.approx(30.573, abs=5e-4)


@pytest.mark.parametrize(("radius", "tolerance", "chords"), [(50.0, 0.01, 158), (100.0, 0.05, 100)],
                         ids=["158", "100"])
def test_chords_of_a_circle(radius, tolerance, chords):
    """n >= pi / acos(1 - e / r): 157.08 and 99.34 (computed). Each half is cut on its own."""
    made = len(circle((0.0, 0.0), radius).flatten(tolerance)) - 1
    assert chords <= made <= chords + 2


def test_offset_of_a_rectangle_by_steiner():
    """A + P d + pi d^2 and P + 2 pi d (from memory of the textbook formula): 100 x 50 by 3."""
    out = grown(shapely.box(0, 0, 100, 50), 3.0)
    assert out.area == pytest.approx(5928.274, abs=0.01)
    assert out.length == pytest.approx(318.850, abs=0.01)
    assert grown(shapely.box(0, 0, 100, 50), -3.0).area == pytest.approx(4136.0)


def test_offset_of_a_round_ended_slot_by_steiner():
    slot = straight_path((0.0, 0.0), (80.0, 0.0), 14.0)
    out = grown(polygon(slot), 2.5)
    assert out.area == pytest.approx(slot.area + slot.length * 2.5 + math.pi * 2.5 ** 2, rel=1e-4)


@pytest.mark.parametrize(("sweep", "bulge", "source"), [
    (30, 0.131652, "computed"), (45, 0.198912, "computed"), (60, 0.267949, "computed"),
    (90, 0.414214, "qiita.com/tydesign/items/cab9d9cf6a625204707c"), (120, 0.577350, "computed"),
    (180, 1.0, "qiita.com/tydesign/items/cab9d9cf6a625204707c")])
def test_bulges(sweep, bulge, source):
    assert Arc.about((0.0, 0.0), 7.0, 0.3, math.radians(sweep)).bulge == pytest.approx(bulge, abs=5e-7), source


def test_bulge_to_radius_and_centre():
    half = Arc.bulging((0.0, 0.0), (1.0, 0.0), 1.0)
    source = "docs.rs/cavalier_contours, seg_arc_radius_and_center"
    assert (half.radius, half.centre) == (pytest.approx(0.5), pytest.approx((0.5, 0.0))), source
    quarter = Arc.bulging((0.0, 0.0), (10.0, 0.0), 0.414214)
    assert quarter.radius == pytest.approx(7.0711, abs=5e-5), "computed: c (1 + b^2) / (4 b)"
    # Positive bulges run counter-clockwise, so the arc lies to the right of its chord.
    assert quarter.point(0.5)[1] == pytest.approx(-2.0711, abs=5e-5), "computed: b c / 2"


def test_a_quarter_circle_as_one_cubic_drifts_outwards():
    """k = 4/3 (sqrt 2 - 1): greatest radial drift 0.027253 %, never inside.

    spencermortensen.com/articles/bezier-circle
    """
    k = 4 / 3 * (math.sqrt(2) - 1)
    curve = Cubic((1.0, 0.0), (1.0, k), (k, 1.0), (0.0, 1.0))
    radii = [math.hypot(*curve.point(i / 2000)) for i in range(2001)]
    assert max(radii) - 1 == pytest.approx(2.7253e-4, rel=1e-3)
    assert min(radii) >= 1 - 1e-12


@pytest.mark.parametrize(("degrees", "drift"), [(30, 3.73e-7), (45, 4.25e-6), (90, 2.725e-4)])
def test_arcs_as_cubics_drift_by_their_sweep(degrees, drift):
    """Computed from k = 4/3 tan(a / 4)."""
    arc = Arc.about((0.0, 0.0), 1.0, 0.0, math.radians(degrees))
    piece, = arc.cubics(most_sweep=math.radians(degrees) + 1e-9)
    assert max(math.hypot(*piece.point(i / 4000)) for i in range(4001)) - 1 == pytest.approx(drift, rel=0.01)


def test_lengths_of_curves_by_quadrature():
    """Trapezoids over the speed, a rule that the program does not use."""
    curve = Cubic((0.0, 0.0), (10.0, 25.0), (30.0, -20.0), (40.0, 5.0))
    t = np.linspace(0, 1, 200_001)
    speed = np.hypot(*np.array([curve.derivative(float(x)) for x in t[::10]]).T)
    assert curve.length() == pytest.approx(np.trapezoid(speed, t[::10]), rel=1e-8)


def test_a_hole_in_a_round_head_clears_by_the_difference_of_radii():
    head = Wall(circle((0.0, 0.0), 60.0))
    assert head.inside((30.0, 40.0)) - 5.0 == pytest.approx(60.0 - 50.0 - 5.0, abs=1e-12)
