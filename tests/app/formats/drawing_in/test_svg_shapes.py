"""SVG shapes, paths and transforms against closed forms, in mm (the root is 100 x 100 mm with a viewBox in mm)."""

import math

import pytest

from geometry.curves import Arc, Cubic
from tests.app.formats.drawing_in.reading import areas, read_svg

PI = math.pi
SHAPES = {
    "rect": ('<rect x="5" y="5" width="80" height="60"/>', 4800),
    "rounded rect": ('<rect x="5" y="5" width="80" height="60" rx="10"/>', 4800 - 100 * (4 - PI)),
    "rounded rect by ry": ('<rect x="5" y="5" width="80" height="60" ry="10"/>', 4800 - 100 * (4 - PI)),
    "oval corners": ('<rect width="80" height="60" rx="20" ry="10"/>', 4800 - 200 * (4 - PI)),
    "corners too large": ('<rect width="80" height="60" rx="70"/>', 4800 - 40 * 30 * (4 - PI)),
    "circle": ('<circle cx="50" cy="50" r="40"/>', PI * 1600),
    "ellipse": ('<ellipse cx="50" cy="50" rx="40" ry="25"/>', PI * 1000),
    "ellipse by one radius": ('<ellipse cx="50" cy="50" rx="40" ry="auto"/>', PI * 1600),
    "polygon": ('<polygon points="0,0 80 0 80,60"/>', 2400),
    "polyline back to its start": ('<polyline points="0,0 80,0 80,60 0,0"/>', 2400),
    "four lines": ('<line x1="0" y1="0" x2="80" y2="0"/><line x1="80" x2="80" y1="60"/><line x1="80" y1="60" y2="60"/><line y2="60"/>', 4800),
    "percentages": ('<rect x="10%" y="10%" width="50%" height="40%"/>', 2000),
    "units inside": ('<rect width="5cm" height="20mm"/>', 5 * 96 / 2.54 * 20 * 96 / 25.4),
    "path, absolute": ('<path d="M0 0H80V60H0Z"/>', 4800),
    "path, relative": ('<path d="m10 10h80v60h-80z"/>', 4800),
    "path, packed": ('<path d="M0,0l80-.0.0,60-80,.0z"/>', 4800),
    "path with numbers run together": ('<path d="M0 0l40.5.5l.5-.25L0 30z"/>', None),
    "path without its last side": ('<path d="M0 0H80V60H0V0"/>', 4800),
    "path in pieces": ('<path d="M0 0H80V60"/><path d="M80 60H0V0"/>', 4800),
    "half circle": ('<path d="M10 50A40 40 0 0 1 90 50Z"/>', PI * 800),
    "half circle by radii too small": ('<path d="M10 50A4 4 0 0 1 90 50Z"/>', PI * 800),
    "arc with flags run together": ('<path d="M10 50a40 40 0 0180 0z"/>', PI * 800),
    "two arcs make a circle": ('<path d="M10 50a40 40 0 1 0 80 0a40 40 0 1 0-80 0z"/>', PI * 1600),
    "large turned elliptic arc and its complement": ('<path d="M20 50A40 20 30 1 1 60 60A40 20 30 0 1 20 50"/>', PI * 800),
    "cubic": ('<path d="M0 0C0 60 80 60 80 0Z"/>', 3 / 20 * 80 * 60 * 2 + 3 / 10 * 80 * 60),
    "smooth cubics": ('<path d="M0 30C0 70 40 70 40 30S80-10 80 30V90H0Z"/>', 80 * 60),
    "quadratic": ('<path d="M0 0Q40 60 80 0Z"/>', 2 / 3 * 80 * 30),
    "smooth quadratics": ('<path d="M0 40Q20 80 40 40T80 40V90H0Z"/>', 80 * 50),
    "an S after a T starts straight": ('<path d="M0 0Q20 40 40 0T80 0S80 60 40 60L0 60Z"/>', None),
    "a subpath after a close": ('<path d="M0 0H80V60H0Zl0 0"/>', 4800),
    "exponents": ('<path d="M0 0H8e1V6E+1H0e-3Z"/>', 4800),
}


@pytest.mark.parametrize("name", [name for name, (_, area) in SHAPES.items() if area is not None])
def test_the_outline_has_the_area_of_the_formula(name):
    body, area = SHAPES[name]
    found = read_svg(body)
    assert areas(found) == pytest.approx([area], rel=1e-7)
    assert (found.unit, found.unit_source) == ("mm", "file")


def test_numbers_run_together_are_told_apart():
    ends = {tuple(round(c, 9) for c in s.end) for s in read_svg(SHAPES["path with numbers run together"][0]).loops[0].path}
    assert ends == {(40.5, 99.5), (41.0, 99.75), (0.0, 70.0), (0.0, 100.0)}


def test_s_after_t_takes_no_handle_from_it():
    found = read_svg(SHAPES["an S after a T starts straight"][0]).loops[0].path
    at = next(s for s in found if isinstance(s, Cubic) and {(80.0, 40.0)} & {s.c0, s.c1})
    assert (80.0, 100.0) in (at.c0, at.c1), "the handle beside the node lies on the node"


def test_y_points_up():
    found = read_svg('<path d="M10 90H60L10 10Z"/>')
    assert found.loops[0].path.box == pytest.approx((10, 10, 60, 90))
    assert found.loops[0].path.nearest((10, 90)).distance < 1e-9


def test_a_hole_keeps_its_place_above_the_lower_edge():
    found = read_svg('<rect width="100" height="100"/><circle cx="30" cy="80" r="4"/>')
    assert found.loops[1].path.box == pytest.approx((26, 16, 34, 24))


TRANSFORMS = {
    "translate(7)": 1, "translate(7 -3)": 1, "scale(.5)": 0.25, "scale(1.5,.5)": 0.75, "rotate(33)": 1, "rotate(33,4,5)": 1,
    "skewX(30)": 1, "skewY(-20)": 1, "matrix(-.5 0 0 .8 60 0)": 0.4, "matrix(.6,.2,-.3,.9,10,10)": 0.6, "scale(-1,1) rotate(20)": 1,
    "translate(3,4)rotate(10)skewX(12)scale(1.2,.7)": 0.84,
}


@pytest.mark.parametrize("transform", TRANSFORMS)
@pytest.mark.parametrize("shape,area", [('<circle cx="20" cy="30" r="15"/>', PI * 225), ('<ellipse rx="30" ry="12"/>', PI * 360),
                                        ('<path d="M0 0A30 30 0 0 1 60 0Z"/>', PI * 450), ('<rect width="70" height="40"/>', 2800)])
def test_transforms_scale_areas_by_their_determinant(transform, shape, area):
    found = read_svg(f'<g transform="{transform}">{shape}</g>', unit="mm")
    assert areas(found) == pytest.approx([area * TRANSFORMS[transform]], rel=1e-7)


def test_transforms_nest_from_the_outside_in():
    found = read_svg('<g transform="translate(10,0)"><g transform="scale(2)"><rect x="5" width="20" height="30" transform="rotate(90)"/></g></g>')
    # rect [5, 25] x [0, 30] -> turned [-30, 0] x [5, 25] -> doubled, shifted, y up from 100
    assert found.loops[0].path.box == pytest.approx((-50, 50, 10, 90))


def test_arcs_stay_arcs_where_circles_stay_round():
    found = read_svg('<g transform="translate(3,4)rotate(10)scale(-1.5,1.5)"><path d="M-20 0A20 20 0 0 1 20 0Z"/></g>')
    arcs = [s for s in found.loops[0].path if isinstance(s, Arc)]
    assert len(arcs) == 1 and arcs[0].radius == pytest.approx(30)


def test_an_ellipse_stretched_into_a_circle_is_one():
    found = read_svg('<g transform="scale(1,2)"><ellipse cx="40" cy="20" rx="30" ry="15"/></g>')
    assert all(isinstance(s, Arc) and s.radius == pytest.approx(30) for s in found.loops[0].path)


def test_a_skewed_circle_has_the_box_of_its_formula():
    # An image of the unit circle under (a c; b d) reaches hypot(a, c) across and hypot(b, d) down.
    found = read_svg('<circle r="20" transform="translate(50,50) skewX(30)"/>')
    x0, y0, x1, y1 = found.loops[0].path.box
    assert (x1 - x0) / 2 == pytest.approx(20 * math.hypot(1, math.tan(PI / 6)), rel=1e-6)
    assert (y1 - y0) / 2 == pytest.approx(20, rel=1e-6)


@pytest.mark.parametrize("data", ["M0 0H80V60H0Z M5 x", "M0 0H80V60H0Z L", "M0 0H80V60H0Z C1 2 3", "M0 0H80V60H0ZA5 5 0 2 0 1 1"])
def test_a_path_is_drawn_up_to_its_first_error_and_that_is_said(data):
    found = read_svg(f'<path d="{data}"/>')
    assert areas(found)[0] == pytest.approx(4800)
    assert any("damaged" in w for w in found.warnings)


def test_a_path_that_never_begins_is_left_out_and_that_is_said():
    """Its first command, an M, was lost: nothing comes before the error."""
    found = read_svg('<rect width="80" height="60"/><path d="0-100c-80 50-136 30-140 100l-22 430z"/><path d="5 5"/>')
    assert areas(found) == pytest.approx([4800])
    assert any("damaged" in w for w in found.warnings)


def test_a_path_with_endless_numbers_is_left_out():
    found = read_svg('<rect width="80" height="60"/><path d="M0 0L1e400 5 5 5Z"/>')
    assert areas(found) == pytest.approx([4800])
    assert "1 shape with impossible coordinates" in found.warnings[-1]
