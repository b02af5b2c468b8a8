"""Drill points against published tables. The source stands beside each value."""

import math

import pytest

from geometry.layout import Drill
from geometry.solids.drilling import point_length, twist_point

INCH = 25.4


@pytest.mark.parametrize(("angle", "share", "source"), [
    (60, 0.86603, "computed"), (82, 0.57518, "computed"),
    (90, 0.500, "calcady.com/trade/manufacturing/drill-point-breakthrough-depth"),
    (118, 0.300, "calcady.com, same page"), (135, 0.207, "calcady.com, same page"),
    (118, 0.30043, "computed"), (130, 0.23315, "computed"), (140, 0.18199, "computed")])
def test_point_length_as_a_share_of_the_diameter(angle, share, source):
    digits = len(str(share).split(".")[1])
    assert twist_point(1.0, math.radians(angle)) == pytest.approx(share, abs=0.6 * 10 ** -max(3, digits)), source


@pytest.mark.parametrize(("diameter", "angle", "length", "source"), [
    (0.500, 118, 0.150, "calcady.com/trade/manufacturing/drill-point-breakthrough-depth"),
    (0.104, 118, 0.031, "hobby-machinist.com/threads/drill-tip-lengths"),
    (0.406, 135, 0.0841, "computed from the set-up at hobby-machinist.com")])
def test_point_length_in_inches(diameter, angle, length, source):
    drill = Drill(id="twist", kind="twist", diameter=diameter * INCH, length=100.0, point_angle=angle)
    assert point_length(drill) / INCH == pytest.approx(length, abs=0.0005), source


def test_the_tangent_printed_in_one_place_is_wrong():
    """cal12.calculator.city gives (D / 2) tan(A / 2), 0.832 D at 118 degrees: tangent and cotangent changed places."""
    assert twist_point(1.0, math.radians(118)) != pytest.approx(0.832, abs=0.1)


def test_depth_to_break_through_a_plate():
    """0.5 in drill through 1 in with 0.050 to spare: 1.200 (calcady.com, same page)."""
    assert 1.0 + 0.050 + twist_point(0.5, math.radians(118)) == pytest.approx(1.200, abs=0.0005)


@pytest.mark.parametrize(("diameter", "angle", "length"), [
    (6.35, 118, 1.908), (6.35, 135, 1.315), (8.8, 118, 2.644), (10.0, 118, 3.004), (10.0, 135, 2.071)])
def test_point_length_in_mm(diameter, angle, length):
    """Computed from the published formula."""
    assert twist_point(diameter, math.radians(angle)) == pytest.approx(length, abs=0.0006)
