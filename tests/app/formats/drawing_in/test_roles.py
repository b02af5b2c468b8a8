"""Roles of loops: also of those that are nowhere wider than the chords of them stray."""

import math
import sys

import pytest

from app.formats.drawing_in.left_out import left_out_told
from app.formats.drawing_in.roles import frames, heads, heads_told, with_roles
from geometry.curves import Cubic, Line, Path, circle, shift, stretch
from geometry.drawing.shapes import chain, rectangle

HEAD = chain(((0.0, 0.0), (50.0, 0.0), (50.0, 90.0), (0.0, 90.0)), closed=True)


def there_and_back(bulge: float) -> Path:
    """Straight there and back along a curve that is bent by so many mm, about (23, 40)."""
    p, q = (20.0, 40.0), (26.0, 40.0)
    return Path((Line(p, q), Cubic(q, (24.0, 40.0 + bulge), (22.0, 40.0 + bulge), p)), closed=True)


@pytest.mark.parametrize("bulge", [0.0, 1e-6, 1e-4, 0.1])
def test_a_loop_without_width_has_a_role_too(bulge):
    thin = there_and_back(bulge)
    assert [loop.role for loop in with_roles([(thin, "a"), (HEAD, "b")])] == ["outline", "other"]
    assert [loop.role for loop in with_roles([(thin, "a")])] == ["outline"]


@pytest.mark.parametrize("line", [Line((0.0, 0.0), (1e-17, 1e-17)), Cubic((0.0, 0.0), (1e-17, 0.0), (0.0, 1e-17), (1e-17, 1e-17))])
def test_a_loop_that_is_no_more_than_a_point_breaks_nothing(line):
    dot, head = Path((line,), closed=True), chain(((-25.0, -5.0), (25.0, -5.0), (25.0, 90.0), (-25.0, 90.0)), closed=True)
    loops = with_roles([(dot, "a"), (head, "b")])
    assert [loop.path for loop in loops] == [head, dot] and loops[0].role == "outline"
    assert [loop.role for loop in with_roles([(dot, "a")])] == ["outline"]


def box(x0, y0, wide, high):
    return chain(((x0, y0), (x0 + wide, y0), (x0 + wide, y0 + high), (x0, y0 + high)), closed=True)


def test_letters_on_the_face_are_no_slots():
    """I, L and O as outlines of their strokes; a slot with a line round it within, as of a chamfer, is longer than they and stays one."""
    ell = chain(((20.0, 70.0), (27.0, 70.0), (27.0, 71.5), (21.5, 71.5), (21.5, 80.0), (20.0, 80.0)), closed=True)
    letters = [box(15.0, 70.0, 1.5, 10.0), ell, box(30.0, 70.0, 8.0, 10.0), box(31.5, 71.5, 5.0, 7.0)]
    slot, chamfer = box(10.0, 10.0, 12.0, 50.0), box(11.0, 11.0, 10.0, 48.0)
    loops = with_roles([(path, "0") for path in (HEAD, slot, chamfer, *letters)])
    assert [loop.path for loop in loops if loop.role == "slot"] == [slot]
    assert any(text.startswith("3 shapes, as narrow as letters") for text in left_out_told(loops))
    assert [loop.role for loop in with_roles([(HEAD, "0"), (letters[2], "0"), (letters[3], "0")])] == ["outline", "slot", "other"]


def test_a_slot_with_its_chamfer_stays_one_beside_an_inlaid_line_that_is_longer():
    slot, chamfer, stripe = box(10.0, 10.0, 12.0, 50.0), box(11.0, 11.0, 10.0, 48.0), box(30.0, 5.0, 1.5, 70.0)
    loops = with_roles([(path, "0") for path in (HEAD, slot, chamfer, stripe)])
    assert [loop.path for loop in loops if loop.role == "slot"] == [slot]


SHEET = chain(((-120.0, -60.0), (177.0, -60.0), (177.0, 150.0), (-120.0, 150.0)), closed=True)
LABEL = chain(((80.0, -60.0), (177.0, -60.0), (177.0, 60.0), (80.0, 60.0)), closed=True)
TAPERED = chain(((0.0, 0.0), (50.0, 0.0), (60.0, 90.0), (-10.0, 90.0)), closed=True)


def test_the_frame_of_a_sheet_is_no_outline():
    """297 x 210 round a head, the box for its title larger than the head; a frame within the edge of the sheet."""
    inner = chain(((-110.0, -55.0), (170.0, -55.0), (170.0, 145.0), (-110.0, 145.0)), closed=True)
    for sheets in ([SHEET], [SHEET, inner]):
        loops = with_roles([(SHEET, "a"), *((one, "a") for one in sheets[1:]), (LABEL, "a"), (TAPERED, "b"), (there_and_back(0.1), "b")])
        assert {loop.path: loop.role for loop in loops}[TAPERED] == "outline"
        assert {loop.role for loop in loops if loop.path in (SHEET, inner, LABEL)} == {"other"}
        assert set(frames(loops)) == set(sheets)


def test_a_rectangle_that_may_be_a_head_is_one_and_so_is_a_sheet_without_a_head():
    """A head as a paddle with a slot in it; and whatever is drawn alone."""
    slot = chain(((10.0, 10.0), (20.0, 10.0), (22.0, 80.0), (12.0, 80.0)), closed=True)
    assert [loop.role for loop in with_roles([(HEAD, ""), (slot, "")])] == ["outline", "slot"]
    assert [loop.role for loop in with_roles([(SHEET, "")])] == ["outline"] and frames(with_roles([(SHEET, "")])) == ()


def test_the_plate_of_a_tuner_about_its_hole_is_no_slot():
    """22 x 24 about a bore of 10 and a screw; without a hole in it, or 80 long, it is a slot, and its layer in an export of ours has the last word."""
    plate = chain(((10.0, 10.0), (32.0, 10.0), (32.0, 34.0), (10.0, 34.0)), closed=True)
    long = chain(((10.0, 5.0), (24.0, 5.0), (24.0, 85.0), (10.0, 85.0)), closed=True)
    bore, screw = circle((20.0, 22.0), 5.0), circle((14.0, 30.0), 0.8)
    roles = {loop.path: loop.role for loop in with_roles([(one, "") for one in (HEAD, plate, bore, screw)])}
    assert (roles[plate], roles[bore], roles[screw]) == ("other", "hole", "hole")
    assert [loop.role for loop in with_roles([(HEAD, ""), (plate, "")])] == ["outline", "slot"]
    assert [loop.role for loop in with_roles([(HEAD, ""), (long, ""), (bore, "")])] == ["outline", "slot", "hole"]
    ours = with_roles([(HEAD, "outline"), (plate, "slots"), (bore, "holes")], ["outline", "nut line", "centreline", "slots", "holes"])
    assert [loop.role for loop in ours] == ["outline", "slot", "hole"]


def test_many_plates_are_not_compared_with_every_hole():
    """Four times as many need four times as many calls."""
    calls = [0, 0]
    for i, n in enumerate((8, 16)):
        paths = [(rectangle(-1.0, -1.0, 10.0 * n, 10.0 * n), "")]
        paths += [(shape, "") for x in range(n) for y in range(n)
                  for shape in (rectangle(10.0 * x, 10.0 * y, 10.0 * x + 4.0, 10.0 * y + 4.0), circle((10.0 * x + 7.0, 10.0 * y + 7.0), 0.8))]

        def count(_frame, event, _arg, i=i):
            calls[i] += event == "call"

        sys.setprofile(count)
        try:
            with_roles(paths)
        finally:
            sys.setprofile(None)
    assert calls[1] < 4.5 * calls[0]


def at(path: Path, x: float) -> Path:
    return path.mapped(shift(x, 0.0))


def test_of_heads_of_one_size_that_with_most_in_it_is_the_outline_else_the_one_farthest_left():
    """Front and back on one sheet, drawn anew and so a trifle larger: chance would decide."""
    bored = [at(circle((30.0, y), 5.0), 200.0) for y in (30.0, 60.0)]
    larger = at(TAPERED.mapped(stretch(1.001)), 200.0)
    for loops, best in (([TAPERED, larger, *bored], larger), ([TAPERED, larger], TAPERED), ([larger, TAPERED, at(TAPERED, 100.0)], TAPERED),
                        ([TAPERED, at(TAPERED.mapped(stretch(1.03)), 200.0)], at(TAPERED.mapped(stretch(1.03)), 200.0))):
        found = with_roles([(path, "a") for path in loops])
        assert [loop.path for loop in found if loop.role == "outline"] == [best]
        assert sum(loop.role == "hole" for loop in found) == len(loops[2:]) * (best is larger)
    turned = with_roles([(path, "a") for path in (larger, TAPERED)])
    assert [turned[i].path for i in heads(turned)] == [TAPERED, larger]
    assert heads(with_roles([(TAPERED, "a"), (circle((25.0, 50.0), 5.0), "a")])) == [0]


def test_a_line_that_goes_round_beside_the_edge_is_no_slot():
    """As a binding does; what lies within it is a slot all the same."""
    binding, slot = (chain(corners, closed=True) for corners in (((3.0, 3.0), (47.5, 3.0), (56.5, 87.0), (-6.5, 87.0)),
                                                                 ((10.0, 20.0), (18.0, 20.0), (18.0, 70.0), (10.0, 70.0))))
    assert [loop.role for loop in with_roles([(TAPERED, "a"), (binding, "a"), (slot, "a")])] == ["outline", "other", "slot"]
    assert any("near its edge" in text for text in left_out_told(with_roles([(TAPERED, "a"), (binding, "a")])))


@pytest.mark.parametrize("over", [0.0, 1e-12, 0.005])
def test_a_box_drawn_about_the_head_holds_it_though_rounding_parts_their_sides(over):
    about = box(-10.0 + over, 0.0, 70.0 - 2 * over, 95.0)
    loops = with_roles([(about, "0"), (TAPERED, "0")])
    assert next(loop.path for loop in loops if loop.role == "outline") == TAPERED and frames(loops) == (about,)


def test_a_blank_round_the_head_is_no_outline():
    """Drawn as a rectangle little larger than the head; one in which only something small lies is the outline."""
    blank = chain(((-20.0, -5.0), (70.0, -5.0), (70.0, 100.0), (-20.0, 100.0)), closed=True)
    loops = with_roles([(blank, "a"), (TAPERED, "a"), (circle((25.0, 50.0), 5.0), "a")])
    assert [(loop.path, loop.role) for loop in loops] == [(blank, "other"), (TAPERED, "outline"), (circle((25.0, 50.0), 5.0), "hole")]
    assert frames(loops) == (blank,)
    long = chain(((0.0, 0.0), (12.0, 0.0), (14.0, 70.0), (-2.0, 70.0)), closed=True)
    assert [loop.role for loop in with_roles([(blank, "a"), (long, "a")])] == ["outline", "slot"]


@pytest.mark.parametrize(("diameters", "taken"), [((10.0, 17.0), 10.0), ((6.35, 10.0, 14.0), 6.35), ((2.0, 10.0, 17.0), 10.0), ((1.5, 3.0), 1.5)])
def test_of_circles_about_one_middle_one_is_the_hole(diameters, taken):
    """As a bushing, a washer and the mark of the middle are drawn; as drawn by hand a little off."""
    stack = [at(circle((30.0, 50.0), size / 2), 0.04 * i) for i, size in enumerate(diameters)]
    loops = with_roles([(TAPERED, "a"), *((one, "a") for one in stack), (circle((10.0, 50.0), 5.0), "a")])
    assert sorted(loop.path.box[2] - loop.path.box[0] for loop in loops if loop.role == "hole") == pytest.approx(sorted((taken, 10.0)))
    assert any(f"{len(diameters) - 1} round loop" in text for text in left_out_told(loops))


def test_drillings_of_one_hole_with_their_depths_stay_together():
    """As an export of ours names its layers."""
    layers = [(circle((30.0, 50.0), 7.0), "counterbores - 3 mm deep"), (circle((30.0, 50.0), 5.0), "post bores - through")]
    assert [loop.role for loop in with_roles([(TAPERED, "a"), *layers])] == ["outline", "hole", "hole"]


@pytest.mark.parametrize(("corners", "role"), [(12, "hole"), (36, "hole"), (8, "slot"), (6, "slot")])
def test_a_circle_of_a_dozen_chords_is_a_hole(corners, role):
    ring = chain(tuple((25.0 + 5.0 * math.cos(2 * math.pi * k / corners), 50.0 + 5.0 * math.sin(2 * math.pi * k / corners)) for k in range(corners)), closed=True)
    assert [loop.role for loop in with_roles([(TAPERED, "a"), (ring, "a")])] == ["outline", role]


def test_dozens_of_loops_of_one_size_are_no_heads_and_of_many_frames_a_few_are_told():
    many = with_roles([(at(TAPERED, 100.0 * k), "a") for k in range(40)])
    assert len(heads(many)) == 1 and heads_told(many) is None
    sheets = [chain(((-200.0 - k, -200.0), (200.0, -200.0), (200.0, 300.0), (-200.0 - k, 300.0)), closed=True) for k in range(9)]
    told = list(left_out_told(with_roles([(TAPERED, "a"), *((sheet, "a") for sheet in sheets)])))
    assert len(told) == 3 and "402.0 x 500.0 mm" in told[0] and "400.0 x 500.0 mm" in told[2]
