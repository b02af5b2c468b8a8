"""Plane perspective: hand values, independent solvers, round trips, and what a tilt costs."""

import math

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from PIL import Image
from scipy.optimize import least_squares

from geometry.errors import GeometryError
from geometry.tracing.plane_map import (
    PlaneMap,
    laid,
    moved,
    scaled,
    straightened,
    through_four,
)

SQUARE = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
corner = st.tuples(st.floats(-0.25, 0.25), st.floats(-0.25, 0.25))


def quad(shifts) -> list[tuple[float, float]]:
    return [(1000 * (x + dx), 1000 * (y + dy)) for (x, y), (dx, dy) in zip(SQUARE, shifts, strict=True)]


def test_a_trapezium_by_hand():
    """The unit square to (0,0) (1,0) (0.75,0.5) (0.25,0.5), by hand: x' = (x + y/2) / (1 + y), y' = y / (1 + y).

    Its middle, where the diagonals cross, goes to (0.5, 1/3): the diagonals of the trapezium cross there.
    """
    made = through_four(SQUARE, ((0, 0), (1, 0), (0.75, 0.5), (0.25, 0.5)))
    assert made((0.5, 0.5)) == pytest.approx((0.5, 1 / 3), abs=1e-12)
    assert made((0.2, 0.6)) == pytest.approx(((0.2 + 0.3) / 1.6, 0.6 / 1.6), abs=1e-12)


@settings(max_examples=40)
@given(st.tuples(corner, corner, corner, corner), st.floats(20, 400), st.floats(20, 400),
       st.tuples(st.floats(0, 1), st.floats(0, 1)))
def test_four_corners_go_to_a_rectangle_and_back(shifts, width, height, inside):
    corners = quad(shifts)
    try:
        made = straightened(corners, width, height)
    except GeometryError:
        assume(False)
    target = ((0, height), (width, height), (width, 0), (0, 0))
    for p, q in zip(corners, target, strict=True):
        assert made(p) == pytest.approx(q, abs=1e-8)
    back = made.inverse()
    p = (inside[0] * width, inside[1] * height)
    assert made(back(p)) == pytest.approx(p, abs=1e-8)
    assert made.many(np.array(corners)) == pytest.approx(np.array(target, dtype=float), abs=1e-8)


@settings(max_examples=10)
@given(st.tuples(corner, corner, corner, corner))
def test_an_independent_solver_finds_the_same_map(shifts):
    """scipy's least squares from a crude start, in the eight numbers themselves."""
    corners = quad(shifts)
    target = np.array(((0, 297.0), (210, 297), (210, 0), (0, 0)))
    try:
        made = straightened(corners, 210, 297)
    except GeometryError:
        assume(False)

    def miss(v):
        a, b, c, d, e, f, g, h = v
        out = []
        for (x, y), (u, w) in zip(np.array(corners) / 1000, target, strict=True):
            scale = g * x + h * y + 1
            out += [a * x + b * y + c - u * scale, d * x + e * y + f - w * scale]
        return out

    found = least_squares(miss, [210, 0, 0, 0, -297, 297, 0, 0], xtol=1e-15, ftol=1e-15, gtol=1e-15).x
    a, b, c, d, e, f, g, h = found
    x, y = 0.4, 0.7
    scale = g * x + h * y + 1
    assert made((400, 700)) == pytest.approx(((a * x + b * y + c) / scale, (d * x + e * y + f) / scale), abs=1e-5)


def test_pillow_draws_the_same_perspective():
    """A dot drawn in a picture lies, after Pillow's own perspective transform, where the map says."""
    corners = ((40.0, 30.0), (210.0, 50.0), (190.0, 240.0), (20.0, 200.0))
    made = through_four(corners, ((0, 0), (200, 0), (200, 300), (0, 300)))
    picture = Image.new("L", (256, 256), 0)
    for x in range(118, 123):
        for y in range(98, 103):
            picture.putpixel((x, y), 255)
    back = made.inverse().matrix
    flat = picture.transform((200, 300), Image.Transform.PERSPECTIVE, tuple((back / back[2, 2]).ravel()[:8]),
                             Image.Resampling.BILINEAR)
    grey = np.asarray(flat, dtype=float)
    ys, xs = np.mgrid[0:300, 0:200] + 0.5
    middle = ((grey * xs).sum() / grey.sum(), (grey * ys).sum() / grey.sum())
    assert middle == pytest.approx(made((120.5, 100.5)), abs=0.25)


def test_a_pinhole_camera_is_undone():
    """A plane seen by a pinhole camera 600 mm away that looks down at 25 degrees off the square: straightened exactly.

    Without straightening, two points along the slope would come out 1 - cos(25) = 9.4 % short and more.
    """
    tilt, away, focal = math.radians(25), 600.0, 3000.0

    def photo(x, y):
        across, deep = y * math.cos(tilt), away + y * math.sin(tilt)
        return (2000 + focal * x / deep, 1500 - focal * across / deep)

    sheet = [photo(x, y) for x, y in ((0, 297), (210, 297), (210, 0), (0, 0))]
    made = straightened(sheet, 210, 297)
    for at in ((0.0, 0.0), (48.0, 190.0), (-60.0, 120.0), (105.0, -40.0)):
        assert made(photo(*at)) == pytest.approx(at, abs=1e-7)
    assert made.sees(4000, 3000)


def test_two_points_give_the_scale():
    """By hand: 300 and 400 points along and across are 500; 100 mm on them is 0.2 mm a point, and y turns up."""
    made = scaled((100, 100), (400, 500), 100.0)
    assert made.size_at((0, 0)) == pytest.approx(0.2)
    assert made((10, 20)) == pytest.approx((2, -4))


def test_the_nut_comes_to_lie_on_the_nut_line():
    flat = scaled((0, 0), (100, 0), 50.0)
    made = laid(flat, (300, 420), (380, 360))
    assert made((340, 390)) == pytest.approx((0, 0), abs=1e-9)
    assert made((300, 420)) == pytest.approx((-25, 0), abs=1e-9)
    assert made((380, 360)) == pytest.approx((25, 0), abs=1e-9)
    # The tip lies to the left of the way from bass to treble, up in the picture.
    assert made((300, 340))[1] > 0
    over = laid(flat, (380, 360), (300, 420), mirrored=True)
    assert over((380, 360)) == pytest.approx((-25, 0), abs=1e-9)
    assert over((300, 340))[1] > 0


def test_moving_turns_about_the_origin_then_shifts():
    made = moved(PlaneMap(), (3, 4), math.radians(90))
    assert made((10, 0)) == pytest.approx((3, 14))


@pytest.mark.parametrize("corners", [
    ((0, 0), (1, 1), (2, 2), (0, 5)), ((0, 0), (0, 0), (10, 10), (0, 10)), ((0, 0), (10, 10), (10, 0), (0, 10)),
    ((0, 0), (float("nan"), 0), (1, 1), (0, 1))])
def test_corners_that_fix_nothing_are_refused(corners):
    with pytest.raises(GeometryError):
        straightened(corners, 210, 297)


def test_lengths_without_meaning_are_refused():
    for call in (lambda: straightened(SQUARE, 0, 5), lambda: scaled((0, 0), (0, 0), 5), lambda: scaled((0, 0), (9, 0), 0),
                 lambda: laid(scaled((0, 0), (9, 0), 9), (4, 4), (4, 4)),
                 lambda: PlaneMap((1, 0, 0, 0, 0, 0, 0, 0, 1)).inverse(),
                 lambda: PlaneMap((1, 0, 0, 0, 1, 0, 1, 0, 0))((0, 3))):
        with pytest.raises(GeometryError):
            call()
