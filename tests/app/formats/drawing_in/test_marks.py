"""Holes that are only marked by a point or a small cross."""

import io

import ezdxf
import pytest

from app.formats.drawing_in.marks import crosses
from app.formats.drawing_in.roles import heads
from app.formats.drawing_in.whole_neck import with_outline
from geometry.drawing.shapes import straight
from tests.app.formats.drawing_in.reading import read, read_svg

HEAD = [(22, 0), (40, 40), (40, 180), (-40, 180), (-40, 40), (-22, 0)]
PLACES = [(28.0, 60.0), (-28.0, 60.0), (28.0, 110.0)]


def found(draw, units: int = 4, scale: float = 1.0):
    drawing = ezdxf.new("R2010", units=units)
    space = drawing.modelspace()
    space.add_lwpolyline([(x * scale, y * scale) for x, y in HEAD], close=True)
    draw(space)
    out = io.StringIO()
    drawing.write(out)
    return read(out.getvalue())


def middles(drawing) -> list[tuple[float, float]]:
    boxes = [loop.path.box for loop in drawing.loops if loop.role == "hole"]
    return sorted((round((x0 + x1) / 2, 6), round((y0 + y1) / 2, 6)) for x0, y0, x1, y1 in boxes)


def test_points_in_the_wood_become_holes_and_the_others_are_left_out():
    def draw(space):
        for at in [*PLACES, PLACES[0], (200, 0), (22, 0), (39, 100), (0, 120)]:  # twice, beside, on a corner, at the edge, in a hole
            space.add_point(at)
        space.add_point((0, 60), dxfattribs={"layer": "Defpoints"})
        space.add_circle((0, 120), 5)
    drawing = found(draw)
    assert middles(drawing) == sorted([*PLACES, (0.0, 120.0)])
    assert [round(loop.path.box[2] - loop.path.box[0], 6) for loop in drawing.loops if loop.role == "hole"] == [10, 3, 3, 3]
    told = " ".join(drawing.warnings)
    assert "3 points or small crosses were taken for the middles of holes, 3 mm wide" in told and "Left out: 3 points." in told
    assert "3 points or small crosses do not lie in the wood of the head, or too near its edge, and were left out: at (200.00, 0.00); (22.00, 0.00); " \
        "(39.00, 100.00)." in told


def test_the_head_in_which_holes_are_marked_is_taken_and_another_has_its_marks_when_it_is_chosen():
    """Face and back beside each other: the crosses are on the face, on the right; one on each leaves the left one."""
    def draw(space, *places):
        space.add_lwpolyline([(x + 150, y) for x, y in HEAD], close=True)
        for x, y in places:
            space.add_line((x - 3, y), (x + 3, y))
            space.add_line((x, y - 3), (x, y + 3))
    right = [(x + 150, y) for x, y in PLACES]
    drawing = found(lambda space: draw(space, *right))
    assert middles(drawing) == sorted(right) and not any("do not lie in the wood" in text for text in drawing.warnings)
    assert any("3 points or small crosses were taken" in text for text in drawing.warnings)
    drawing = found(lambda space: draw(space, PLACES[0], right[0]))
    assert middles(drawing) == PLACES[:1]
    assert middles(with_outline(drawing, heads(drawing.loops)[1])) == right[:1]


def test_crosses_outside_the_wood_are_told_with_their_places():
    def draw(space):
        for x, y in [PLACES[0], *((-100.0, float(y)) for y in range(0, 60, 10))]:
            space.add_line((x - 3, y), (x + 3, y))
            space.add_line((x, y - 3), (x, y + 3))
    drawing = found(draw)
    assert middles(drawing) == PLACES[:1]
    assert any("6 points or small crosses do not lie in the wood" in text and "(-100.00, 0.00); (-100.00, 10.00)" in text
               and text.endswith("(-100.00, 40.00) and 1 more.") for text in drawing.warnings)


def test_points_in_blocks_and_inches_are_where_they_are_drawn():
    def draw(space):
        block = space.doc.blocks.new("HALF")
        block.add_point((28 / 25.4, 60 / 25.4))
        space.add_blockref("HALF", (0, 0))
        space.add_blockref("HALF", (0, 0), dxfattribs={"xscale": -1})
    assert middles(found(draw, units=1, scale=1 / 25.4)) == [(-28, 60), (28, 60)]


def test_small_crosses_become_holes_and_other_lines_do_not():
    def draw(space):
        for x, y in PLACES:
            space.add_line((x - 3, y - 3), (x + 3, y + 3))
            space.add_line((x - 3, y + 3), (x + 3, y - 3))
        space.add_line((0, 100), (0, 130))  # longer than a mark
        space.add_line((-15, 115), (15, 115))
        space.add_line((-30, 150), (-24, 150))  # not in its middle
        space.add_line((-24, 147), (-24, 153))
    drawing = found(draw)
    assert middles(drawing) == sorted(PLACES)
    assert len(drawing.open_chains) == 4


def test_a_cross_is_found_wherever_it_stands():
    """The middles of its lines differ by what a number with two decimals loses, on either side of any grid."""
    def arms(x, y):
        return [straight((round(x - 3, 2), y), (round(x + 3, 2), y)), straight((x, round(y - 3, 2)), (x, round(y + 3, 2)))]
    places = [(round(5 + i / 100, 2), round(33 + i * 3 / 100, 2)) for i in range(300)]
    assert all(len(crosses(arms(*at))[0]) == 1 and not crosses(arms(*at))[1] for at in places)
    assert crosses([]) == ([], [])


def test_a_cross_in_a_hole_is_its_middle_and_no_hole_of_its_own():
    def draw(space):
        space.add_circle(PLACES[0], 5)
        x, y = PLACES[0]
        space.add_line((x - 3, y), (x + 3, y))
        space.add_line((x, y - 3), (x, y + 3))
    drawing = found(draw)
    assert middles(drawing) == PLACES[:1] and not drawing.open_chains


def test_a_cross_of_one_path_in_an_svg_is_a_mark():
    drawing = read_svg('<path d="M10 90 L90 90 L85 10 L15 10 Z"/><path d="M27 50 H33 M30 47 V53"/>')
    assert middles(drawing) == [(30, 50)]


def test_points_by_the_hundred_are_no_holes():
    drawing = found(lambda space: [space.add_point((x / 2, 50 + y)) for x in range(-9, 9) for y in range(9)])
    assert middles(drawing) == [] and "Left out: 162 points." in drawing.warnings


def test_points_alone_are_told():
    from app.formats.errors import FormatError
    drawing = ezdxf.new("R2010")
    drawing.modelspace().add_point((1, 2))
    out = io.StringIO()
    drawing.write(out)
    with pytest.raises(FormatError, match="only 1 point"):
        read(out.getvalue())
