"""Heads drawn as one closed half and its mirror image."""

import pytest

from app.formats.drawing_in.roles import heads_told
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import read, read_svg

HALF = [(0, 0, 0), (21.5, 0, 0), (42, 40, 0.1), (42, 150, 0), (0, 170, 0)]


def mirrored(corners, at=0.0):
    return [(2 * at - x, y, -bulge) for x, y, bulge in corners]


def test_two_halves_are_one_head():
    found = read(dxf.drawing(dxf.polyline(HALF) + dxf.polyline(mirrored(HALF)) + dxf.circle((30, 90), 5) + dxf.circle((-30, 90), 5)))
    assert [loop.role for loop in found.loops] == ["outline", "hole", "hole"]
    assert found.outline.path.box[0] == pytest.approx(-found.outline.path.box[2]) and len(found.outline.path.segments) == 8
    assert "Two halves of a head that meet in a straight edge were taken as one." in found.warnings


@pytest.mark.parametrize("other", [
    mirrored(HALF, at=-1.0),  # apart
    [(0, 0, 0), (-60, 0, 0), (-60, 170, 0), (0, 170, 0)],  # something else that ends in the same edge
    [(-x, 170 - y, bulge) for x, y, bulge in HALF],  # another head, laid the other way round
], ids=["apart", "another", "turned"])
def test_what_is_no_mirror_image_stays_by_itself(other):
    found = read(dxf.drawing(dxf.polyline(HALF) + dxf.polyline(other)))
    assert len(found.loops) == 2 and not [told for told in found.warnings if "halves" in told]


def test_two_heads_that_a_board_is_cut_into_stay_two():
    """Straight on one side, left-handed and right-handed: no head is as wide as both."""
    head = [(0, 0, 0), (43, 0, 0), (80, 50, 0), (60, 190, 0), (0, 190, 0)]
    found = read(dxf.drawing(dxf.polyline(head) + dxf.polyline(mirrored(head))))
    assert found.size_mm == pytest.approx((80, 190)) and heads_told(found.loops).startswith("The drawing has 2 heads of one size")


def test_two_boards_side_by_side_stay_two():
    board = [(0, 0, 0), (45, 0, 0), (45, 200, 0), (0, 200, 0)]
    assert len(read(dxf.drawing(dxf.polyline(board) + dxf.polyline(mirrored(board)))).loops) == 2


def test_what_is_painted_with_no_opacity_is_hidden():
    found = read_svg('<rect x="1" y="1" width="98" height="98" opacity="0"/><circle cx="50" cy="50" r="40"/>')
    assert len(found.loops) == 1 and "1 hidden shape" in found.warnings[-1]
