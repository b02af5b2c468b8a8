"""Outlines that are left open where they run into a neck."""

import math

import pytest

from geometry.terms import POCKET
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import areas, read

HEAD = [(-22, 0), (-40, 40), (-38, 150), (0, 176), (38, 150), (40, 40), (22, 0)]
"""By its corners: 44 wide at the neck."""
WHOLE = 40 * (44 + 80) / 2 + 110 * (80 + 76) / 2 + 26 * 76 / 2


def open_line(corners):
    return "".join(dxf.line(a, b) for a, b in zip(corners, corners[1:], strict=False))


def bores(*places):
    return "".join(dxf.circle(at, 5) for at in places)


def said(found):
    return [word for word in found.warnings if "as where it runs into a neck" in word]


def test_it_is_the_outline_and_not_the_largest_bore():
    found = read(dxf.drawing(open_line(HEAD) + bores((-27, 60), (27, 60))))
    assert areas(found) == pytest.approx([WHOLE, 25 * math.pi, 25 * math.pi], rel=1e-4)
    assert [loop.role for loop in found.loops] == ["outline", "hole", "hole"]
    assert found.open_chains == () and found.unit == "mm"
    assert said(found)[0].startswith("The outline is open over 44.0 mm")


def test_alone_in_its_drawing_it_is_taken_too():
    found = read(dxf.drawing(open_line(HEAD)))
    assert areas(found) == pytest.approx([WHOLE]) and len(said(found)) == 1


@pytest.mark.parametrize("gap", [0.3, 0.8])
def test_where_the_nut_line_is_drawn_with_a_piece_of_the_side_it_closes_the_head_and_no_line_askew_does(gap):
    sides = [(-22, 0), (-22, 8), *HEAD[1:-1], (22, 8)]
    nut = [(-22 + gap, 0), (22, 0), (22, 8 - gap)]
    text = dxf.drawing(open_line(sides) + open_line(nut) + bores((-27, 60), (27, 60)))
    found = read(text)
    assert said(found) == [] and found.outline is None and [line.size for line in found.gaps] == pytest.approx([gap, gap])
    closed = read(text, join=1.0)
    assert said(closed) == [] and closed.outline.path.box[:2] == pytest.approx((-40, 0)) and not closed.open_chains


def test_a_nut_line_that_falls_short_of_the_sides_lies_where_it_is_closed():
    assert said(read(dxf.drawing(open_line(HEAD) + open_line([(-21.4, 0), (21.4, 0)]) + bores((-27, 60), (27, 60)))))


@pytest.mark.parametrize("more", [
    open_line([(100, 0), (140, 90)]),  # without a bore in it, beside another line, nobody knows
    bores((90, 60)),  # a bore that it does not hold
    dxf.lines([(-30, 45), (30, 45), (30, 140), (-30, 140)])], ids=["another line", "a bore elsewhere", "a large loop in it"])
def test_what_may_be_something_else_stays_open(more):
    found = read(dxf.drawing(open_line(HEAD) + more))
    assert said(found) == [] and found.open_chains


@pytest.mark.parametrize("corners", [
    [(-22, 0), (-40, 40), (-38, 150), (0, 176), (38, 150), (40, -40), (22, 0)],  # comes back from behind its ends
    [(-3, 0), (-40, 40), (-38, 150), (0, 176), (38, 150), (40, 40), (3, 0)],  # a gap, and no neck
    [(-22, 0), (40, 40), (38, 150), (0, 176), (-38, 150), (-40, 40), (22, 0)]], ids=["behind", "narrow", "crossing"])
def test_a_line_that_is_no_head_stays_open(corners):
    assert said(read(dxf.drawing(open_line(corners) + bores((0, 100))))) == []


@pytest.mark.parametrize("beside", [[(-20, 0), (-60, 0), (-60, 54), (-20, 54)], [(40, -200), (40, 90)]], ids=["a dimension", "a string"])
def test_a_small_head_is_the_outline_beside_a_larger_open_line_that_does_not_hold_it(beside):
    """A ukulele's, drawn half as large."""
    found = read(dxf.drawing(dxf.lines([(-9, 0), (9, 0), (17, 12), (17, 54), (-17, 54), (-17, 12)]) + open_line(beside) + dxf.circle((8, 30), 2.5)))
    assert [loop.role for loop in found.loops] == ["outline", "hole"] and found.size_mm == pytest.approx((34, 54))


@pytest.mark.parametrize("foot", [0, -20, 0.4], ids=["to the nut line", "past it", "a little short of it"])
@pytest.mark.parametrize("head", [dxf.lines(HEAD), open_line(HEAD), dxf.lines([*HEAD, (4, 0)])], ids=["closed", "open", "closed in two pieces"])
def test_the_pocket_of_a_truss_rod_drawn_as_far_as_the_nut_line_is_closed_by_it(head, foot):
    arch = dxf.line((-4, foot), (-4, 30)) + dxf.arc((0, 30), 4, 0, 180) + dxf.line((4, foot), (4, 30))
    found = read(dxf.drawing(head + arch + dxf.line((0, -30), (0, 190)) + bores((-27, 60), (27, 60))))
    assert [loop.role for loop in found.loops] == ["outline", POCKET, "hole", "hole"]
    assert areas(found)[:2] == pytest.approx([WHOLE, 240 + 8 * math.pi], rel=1e-4)
    assert any(text.startswith("1 open line was closed by the straight edge") for text in found.warnings)


@pytest.mark.parametrize("drawn", [
    [(-18, 0), (-36, 41), (-34, 147), (0, 170), (34, 147), (36, 41), (18, 0)],  # a binding
    [(-40 + 40 / 110, 60), (0, 90), (40 - 40 / 110, 60)],  # a lightning from side to side
    [(-10.4, 0), (-10.4, 3), (-9.6, 3), (-9.6, 0)],
], ids=["a binding", "from side to side", "the slot of a string"])
def test_only_what_is_small_and_on_the_nut_line_is_closed_by_it(drawn):
    found = read(dxf.drawing(dxf.lines(HEAD) + open_line(drawn) + bores((-27, 60), (27, 60))))
    assert [loop.role for loop in found.loops if loop.role != "hole"] == ["outline"]
    assert not [text for text in found.warnings if "by the straight edge" in text]


def test_a_line_as_short_as_dust_is_no_open_head():
    found = read(dxf.drawing(dxf.lines(HEAD) + open_line([(100, 0), (100, 0.005)]) + bores((-27, 60))))
    assert [loop.role for loop in found.loops] == ["outline", "hole"] and len(found.open_chains) == 1
