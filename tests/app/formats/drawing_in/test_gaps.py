"""Gaps, crossings and duplicates: what is closed, what stays open, and what the maker is told."""

from itertools import pairwise

import pytest

from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import areas, read


def square_with_gap(gap: float) -> str:
    """Four lines, the first of which starts `gap` mm above its corner: the gap's own side is drawn by the bridge."""
    return dxf.drawing(dxf.line((0, gap), (100, 0)) + dxf.line((100, 0), (100, 60)) + dxf.line((100, 60), (0, 60)) + dxf.line((0, 60), (-gap, 0)))


@pytest.mark.parametrize("gap", [0.0, 1e-7, 0.001, 0.007])
def test_a_gap_within_the_tolerance_closes_without_a_word(gap):
    found = read(square_with_gap(gap))
    # Trapezoid by its corners: (0, gap), (100, 0), (100, 60), (0, 60), (-gap, 0)
    assert areas(found) == pytest.approx([6000 + gap * 60 / 2 - gap * 100 / 2 - gap * gap / 2], abs=1e-9)
    assert found.warnings == ()


@pytest.mark.parametrize("gap", [0.02, 0.05, 0.07])
def test_a_wider_gap_closes_with_its_size_and_place(gap):
    found = read(square_with_gap(gap))
    assert len(found.loops) == 1 and found.loops[0].path.area == pytest.approx(6000, rel=0.001)
    assert len(found.warnings) == 1
    assert f"{gap * 2**0.5:.3f} mm wide at (" in found.warnings[0]


@pytest.mark.parametrize("gap", [0.2, 1.0, 5.0])
def test_a_wide_gap_stays_open_and_is_reported(gap):
    found = read(square_with_gap(gap))
    assert found.loops == () and len(found.open_chains) == 1
    assert found.gaps[0].size == pytest.approx(gap * 2**0.5)
    assert found.gaps[0].place == pytest.approx((-gap / 2, gap / 2))
    assert f"{gap * 2**0.5:.3f} mm at (" in found.warnings[0]


def test_a_larger_tolerance_given_by_the_maker_closes_it():
    found = read(square_with_gap(0.3), join=0.5)
    assert len(found.loops) == 1 and found.gaps == ()


def test_bridging_moves_nothing_that_was_drawn():
    found = read(square_with_gap(0.05))
    ends = {p for s in found.loops[0].path for p in (s.start, s.end)}
    assert {(0.0, 0.05), (-0.05, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 60.0)} == ends


def test_a_bow_tie_is_taken_apart_and_said():
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (60, 80, 0), (60, 0, 0), (0, 80, 0)])))
    assert areas(found) == pytest.approx([1200.0, 1200.0])
    assert any("crosses itself at (30.00, 40.00)" in w for w in found.warnings)


def test_a_place_just_below_nought_is_told_without_a_sign():
    found = read(dxf.drawing(dxf.polyline([(-30, -40.001, 0), (30, 39.999, 0), (30, -40.001, 0), (-30, 39.999, 0)])))
    assert any("crosses itself at (0.00, 0.00)" in w for w in found.warnings)


def test_two_closed_shapes_side_by_side_stay_two():
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (50, 0, 0), (50, 80, 0), (0, 80, 0)])
                             + dxf.polyline([(50, 10, 0), (90, 10, 0), (90, 40, 0), (50, 40, 0)])))
    assert areas(found) == pytest.approx([4000.0, 1200.0])


def test_a_shape_that_leans_on_a_closed_one_is_a_shape_of_its_own():
    # Three sides of a rectangle that end on the side of a closed one.
    found = read(dxf.drawing(dxf.polyline([(0, 0, 0), (50, 0, 0), (50, 80, 0), (0, 80, 0)])
                             + dxf.lines([(50, 10), (90, 10), (90, 40), (50, 40)], closed=False)))
    assert areas(found) == pytest.approx([4000.0, 1200.0])


def test_a_grid_of_lines_gives_its_border():
    grid = "".join(dxf.line((i * 10, 0), (i * 10, 110)) + dxf.line((0, i * 10), (110, i * 10)) for i in range(12))
    assert areas(read(dxf.drawing(grid))) == pytest.approx([12100.0])


def test_a_slot_tied_to_the_outline_by_a_line_is_still_found():
    found = read(dxf.drawing(dxf.lines([(0, 0), (100, 0), (100, 60), (0, 60)]) + dxf.lines([(30, 20), (70, 20), (70, 40), (30, 40)])
                             + dxf.line((0, 30), (30, 30))))
    assert [(loop.role, pytest.approx(loop.path.area)) for loop in found.loops] == [("outline", 6000.0), ("slot", 800.0)]


def test_stray_lines_in_an_open_drawing_stay_open():
    found = read(dxf.drawing(dxf.lines([(0, 0), (100, 0), (100, 60)], closed=False) + dxf.line((300, 300), (310, 310))))
    assert found.loops == () and len(found.open_chains) == 2


def test_a_dimension_that_is_drawn_from_corner_to_corner_is_told_with_its_place():
    corners = [(-21, 0), (21, 0), (38, 40), (34, 160), (-34, 160), (-38, 40), (-21, 0)]
    bracket = [(38, 40), (60, 40), (60, 160), (34, 160)]
    found = read(dxf.drawing("".join(dxf.line(p, q) for line in (corners, bracket) for p, q in pairwise(line))))
    assert found.size_mm == pytest.approx((76.0, 160.0)) and len(found.loops) == 1
    assert found.warnings == ("Three lines of 26.0 x 120.0 mm (1.02 x 4.72 inch) at (47.00, 100.00) run from corner to corner of an outline, "
                              "as a dimension does, and were left out.",)
