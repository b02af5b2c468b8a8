"""Lines of one layer are told apart by their colour and kind of line."""

import math

import pytest

from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import read, read_svg

HEAD = [(-21.5, 0), (21.5, 0), (42, 40), (42, 170), (-42, 170), (-42, 40)]
GRID = [*(((x, -20), (x, 200)) for x in range(-60, 61, 20)), *(((-60, y), (60, y)) for y in range(-20, 201, 20))]
DIMENSION = [((-21.5, 0), (-80, 0)), ((-42, 170), (-80, 170)), ((-75, 0), (-75, 170))]


def drawn(lines, *pen):
    """Lines on layer 0 with more tags of their own."""
    return "".join(dxf.line(a, b).replace(dxf.tags(8, "0"), dxf.tags(8, "0", *pen)) for a, b in lines)


@pytest.mark.parametrize("pen", [(62, 8), (6, "DASHED"), (420, 0xCCCCCC)])
@pytest.mark.parametrize("other", [GRID, DIMENSION], ids=["grid", "dimension"])
def test_a_grid_or_a_dimension_of_another_colour_that_touches_the_outline_is_none_of_it(other, pen):
    found = read(dxf.drawing(dxf.lines(HEAD) + drawn(other, *pen)))
    assert found.outline.path.box == pytest.approx((-42, 0, 42, 170)) and len(found.outline.path.segments) == 6


def test_an_outline_of_many_colours_is_one():
    pieces = zip(HEAD, [*HEAD[1:], HEAD[0]], strict=True)
    found = read(dxf.drawing("".join(drawn([piece], 62, 1 + n) for n, piece in enumerate(pieces)) + drawn([((0, 170), (0, 200))], 62, 9)))
    assert found.outline.path.box == pytest.approx((-42, 0, 42, 170)) and len(found.loops) == 1


def test_the_grid_of_an_svg_is_told_by_its_stroke():
    def lines(each, stroke):
        return "".join(f'<line x1="{a[0] + 60}" y1="{180 - a[1]}" x2="{b[0] + 60}" y2="{180 - b[1]}" stroke="{stroke}"/>' for a, b in each)
    found = read_svg(lines(GRID, "#ccc") + lines(zip(HEAD, [*HEAD[1:], HEAD[0]], strict=True), "#000"), head='width="120mm" height="200mm" viewBox="0 0 120 200"')
    assert found.size_mm == pytest.approx((84, 170)) and len(found.outline.path.segments) == 6


SIDES = [((-42, 40), (-42, 170)), ((42, 40), (42, 170)), ((21.5, 0), (42, 40)), ((-42, 40), (-21.5, 0))]
ENDS = [((-21.5, 0), (21.5, 0)), ((42, 170), (-42, 170))]


def longer(a, b, by):
    """A line drawn past both its ends."""
    step = by / math.dist(a, b) * (b[0] - a[0]), by / math.dist(a, b) * (b[1] - a[1])
    return (a[0] - step[0], a[1] - step[1]), (b[0] + step[0], b[1] + step[1])


@pytest.mark.parametrize("gap", [0.0, 0.3, 1.5])
@pytest.mark.parametrize("far", [42, 60], ids=["to the edge", "across it"])
def test_what_the_lines_of_one_colour_enclose_is_no_head_where_the_outline_goes_on_in_another(far, gap):
    """Sides and two lines across in red, nut and tip in blue: the red ones enclose a rectangle; drawn with a gap, or past the corners."""
    past, gap = (gap, 0.0) if gap > 1 else (0.0, gap)
    sides = [longer(*piece, past) for piece in SIDES]
    ends = [longer((x0, y0 + gap * (y0 == 170)), (x1, y1 + gap * (y1 == 170)), past) for (x0, y0), (x1, y1) in ENDS]
    across = [((-far, y), (far, y)) for y in (60, 150)]
    found = read(dxf.drawing(drawn(sides + across, 62, 1) + drawn(ends, 62, 5)), join=0.5)
    assert found.outline.path.box == pytest.approx((-42, 0, 42, 170 + gap)) and len(found.loops) == 1


def test_a_dimension_that_ends_on_the_corner_of_an_outline_is_told_apart_beside_an_open_line_of_its_colour():
    found = read(dxf.drawing(dxf.lines(HEAD) + drawn([((0, -20), (0, 190))]) + drawn(DIMENSION, 62, 8)))
    assert found.outline.path.box == pytest.approx((-42, 0, 42, 170))
