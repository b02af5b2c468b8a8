"""Drawings of a whole neck: the headstock is taken out of them, and told."""

import io
import math

import ezdxf
import pytest

from app.formats.drawing_in.job import read_drawing_safely
from app.formats.drawing_in.units import refuse_doubtful_unit, unit_question
from app.formats.drawing_in.whole_neck import headed, with_outline
from geometry.joining.placing import place
from geometry.terms import POCKET
from tests.app.formats.drawing_in.reading import read, read_svg

SIDE = [(28, -420), (21.5, 0), (30, 20), (43, 45), (38, 150), (20, 180)]
NECK = [*SIDE, *((-x, y) for x, y in reversed(SIDE)), (-24, -450), (0, -465), (24, -450)]
"""Corners: 43 wide at the nut line on y 0, head 180 long."""
HOLES = [(side * 25, y) for y in (50, 90, 130) for side in (-1, 1)]


def drawn(units: int = 4, scale: float = 1.0, way=lambda x, y: (x, y), closed: bool = True, nut: bool = False) -> ezdxf.document.Drawing:
    """With six holes, a truss rod slot behind the nut line, two lines and a heel screw."""
    drawing = ezdxf.new("R2010", units=units)
    space = drawing.modelspace()

    def at(x: float, y: float) -> tuple[float, float]:
        return tuple(scale * c for c in way(x, y))
    corners = NECK if closed else [*SIDE, *((-x, y) for x, y in reversed(SIDE))]
    space.add_lwpolyline([at(*p) for p in corners], close=closed)
    for x, y in [*HOLES, (0, -440)]:
        space.add_circle(at(x, y), 5 * scale)
    space.add_lwpolyline([at(x, y) for x, y in ((-3, -8), (-3, -400), (3, -400), (3, -8))], close=True)
    for y in (-36.5, -71):
        space.add_line(at(6, y), at(20, y))
    if nut:
        space.add_line(at(-24, -2), at(24, -2))
    return drawing


def written(drawing) -> str:
    out = io.StringIO()
    drawing.write(out)
    return out.getvalue()


@pytest.mark.parametrize("way", [lambda x, y: (x, y), lambda x, y: (y, -x), lambda x, y: (-y, x), lambda x, y: (-x, -y)])
@pytest.mark.parametrize("closed", [True, False])
def test_the_head_of_a_neck_is_taken_however_it_lies(way, closed):
    found = read(written(drawn(way=way, closed=closed)))
    assert found.unit_certain and unit_question(found) is None
    head = found.head
    assert [loop.role for loop in head.loops] == ["outline", *["hole"] * 6] and not head.open_chains and head.unit_certain
    laid = place(head.outline.path, nut=head.nut)
    assert laid.nut_width == pytest.approx(43, abs=1e-3)
    assert head.outline.path.mapped(laid.matrix).box == pytest.approx((-43, 0, 43, 180), abs=1e-3)
    told = " ".join(head.warnings)
    assert "cut off 180.0 mm behind the tip, where the straight sides of the neck end" in told
    assert "2 loops behind it were left out. 2 open lines behind it were left out." in told and "no headstock is that size" not in told


def test_a_line_drawn_across_is_the_nut_line():
    head = read(written(drawn(nut=True))).head
    assert "182.0 mm behind the tip, where a line lies across the neck" in head.warnings[0]
    assert max(head.size_mm) == pytest.approx(182, abs=1e-3)


def test_it_is_cut_off_elsewhere_where_the_maker_says_so():
    whole = read(written(drawn()))
    head = headed(whole, 190)
    assert max(head.size_mm) == pytest.approx(190, abs=1e-3) and "190.0 mm behind the tip, as you said" in head.warnings[0]
    assert [loop.path.box for loop in head.loops if loop.role == POCKET] == [pytest.approx((-3, -10, 3, -8))]  # of the slot across it


@pytest.mark.parametrize("degrees", [0, 90, 33])
@pytest.mark.parametrize("slant", [8.0, -8.0])
def test_a_slant_that_is_typed_lays_the_nut_line_askew_about_its_middle(degrees, slant):
    """However the neck lies in the drawing it stands upright in the layout."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    head = headed(read(written(drawn(way=lambda x, y: (c * x - s * y, s * x + c * y)))), 190, slant)
    laid = place(head.outline.path, slanted=True, nut=head.nut, up=head.up)
    assert laid.slant == pytest.approx(slant, abs=1e-6)
    outline = head.outline.path.mapped(laid.matrix)
    bass, treble = outline.segments[-1].start, outline.segments[-1].end
    assert (bass[1] - treble[1]) / (treble[0] - bass[0]) == pytest.approx(math.tan(math.radians(slant)))
    assert outline.box[3] == pytest.approx(190, abs=0.1) and outline.box[0] == pytest.approx(-outline.box[2], abs=0.1)


@pytest.mark.parametrize("units,scale,unit", [(0, 1.0, "mm"), (0, 1 / 25.4, "inch"), (0, 0.1, "cm"), (1, 1 / 25.4, "inch")])
def test_a_neck_without_a_unit_is_guessed_to_be_as_long_as_one(units, scale, unit):
    found = read(written(drawn(units, scale)))
    assert found.unit == unit
    assert max(found.head.size_mm) == pytest.approx(180, abs=1e-3)
    refuse_doubtful_unit(found.head)


def test_a_neck_of_curves_in_an_svg_keeps_them_to_the_nut_line():
    """Sides of 120 mm in the smallest neck; the flare is a cubic that begins at the nut line."""
    found = read_svg('<path d="M 35 260 L 37 140 C 37 120 25 110 25 90 L 28 20 Q 55 10 82 20 L 85 90 C 85 110 73 120 73 140 L 75 260 Z"/>'
                     '<circle cx="40" cy="60" r="3"/>', head='width="110mm" height="270mm" viewBox="0 0 110 270"')
    head = found.head
    # The crown is 5 mm above its ends: half of its handle.
    assert found.neck.length == pytest.approx(125, abs=0.1)
    laid = place(head.outline.path, nut=head.nut)
    assert laid.nut_width == pytest.approx(36, abs=0.1)
    assert [type(s).__name__ for s in head.outline.path.segments].count("Cubic") == 3
    assert [loop.role for loop in head.loops] == ["outline", "hole"]


def test_a_neck_that_is_chosen_as_the_outline_gives_its_head_too():
    drawing = drawn()
    drawing.modelspace().add_lwpolyline([(200, 0), (600, 0), (600, 300), (400, 380), (200, 300)], close=True)
    found = with_outline(read(written(drawing)), 0)
    assert found.head is None
    again = with_outline(found, 1)
    assert max(again.head.size_mm) == pytest.approx(180, abs=1e-3)
    assert [loop.role for loop in again.head.loops].count("hole") == 6


def test_a_neck_comes_through_the_other_process_as_it_is(tmp_path):
    drawn(nut=True).saveas(tmp_path / "neck.dxf")
    found = read_drawing_safely(tmp_path / "neck.dxf")
    here = read((tmp_path / "neck.dxf").read_bytes())
    assert found == here and found.head is not None and math.isclose(found.neck.length, 182)


@pytest.mark.parametrize("units,scale,unit", [(4, 1.0, "mm"), (0, 1.0, "mm"), (0, 1 / 25.4, "inch")])
def test_a_fretboard_beside_the_head_is_not_the_outline(units, scale, unit):
    drawing = ezdxf.new("R2010", units=units)
    space = drawing.modelspace()
    for corners in ([*SIDE[1:], *((-x, y) for x, y in reversed(SIDE[1:]))], [(21.5, 0), (28, -460), (-28, -460), (-21.5, 0)]):
        space.add_lwpolyline([(x * scale, y * scale) for x, y in corners], close=True)
    for x, y in HOLES:
        space.add_circle((x * scale, y * scale), 5 * scale)
    found = read(written(drawing))
    assert found.unit == unit and found.size_mm == pytest.approx((86, 180))
    assert [loop.role for loop in found.loops] == ["other", "outline", *["hole"] * 6]
