"""An outline in loose pieces keeps its shape whatever straight lines were drawn over it: dimensions, boxes, long nut lines."""

import math
from itertools import pairwise

import pytest

from geometry import vectors as v
from geometry.curves import Arc, Line, Path, circle
from geometry.joining import join, rings
from geometry.joining.chains import link
from geometry.joining.rings import end_to_end

CORNERS = [(-21.5, 0.0), (21.5, 0.0), (38.0, 40.0), (42.0, 165.0), (-42.0, 165.0), (-38.0, 40.0)]
SIDES = [Line(p, q) if k != 3 else Arc.bulging(p, q, 0.15) for k, (p, q) in enumerate(zip(CORNERS, [*CORNERS[1:], CORNERS[0]], strict=True))]
STRAIGHT = [Line(p, q) for p, q in zip(CORNERS, [*CORNERS[1:], CORNERS[0]], strict=True)]
AREA = Path(tuple(SIDES), True).area
BOX = [((-42, 0), (42, 0)), ((42, 0), (42, 180)), ((42, 180), (-42, 180)), ((-42, 180), (-42, 0))]


def loops(lines) -> list[float]:
    made = join([Path((one,)) for one in (*SIDES, *(Line(p, q) for p, q in lines))])
    return [chain.path.area for chain in made.loops]


@pytest.mark.parametrize("lines", [
    [((42, 165), (42, 200)), ((-42, 165), (-42, 200)), ((-42, 198), (42, 198))],
    [((42, 165), (62, 165)), ((21.5, 0), (62, 0)), ((60, 0), (60, 165))],
    [((-21.5, 0), (62, 0)), ((42, 165), (62, 165)), ((60, 0), (60, 165))],
    [((-60, 0), (60, 0)), ((42, -10), (42, 190)), ((-42, -10), (-42, 190))],
    [*BOX, ((0, -20), (0, 200))],
    [((-42, 165), (-72, 165)), ((-38, 40), (-72, 40)), ((-21.5, 0), (-72, 0)), ((-70, 0), (-70, 40)), ((-70, 40), (-70, 165))],
    [((21.5, 0), (62, 0)), ((42, 165), (62, 165)), ((60, 0), (60, 165)), ((21.5, 0), (72, 0)), ((42, 165), (72, 165)), ((70, 0), (70, 165))],
    [(p, q) for p, q in zip(CORNERS[:3], CORNERS[1:3], strict=False)]],
    ids=["across", "along", "from the nut line", "sides", "box and centreline", "in a row", "beside each other", "two sides twice"])
def test_no_straight_line_over_an_outline_or_off_its_corners_changes_it(lines):
    found = loops(lines)
    assert min(abs(area - AREA) for area in found) < 1e-9
    assert all(abs(area - AREA) < 1e-9 or area <= 84 * 180 for area in found)


@pytest.mark.parametrize("line", [
    [(-21.5, 0), (-21.5, -12), (21.5, -12), (21.5, 0)],
    [(38, 40), (60, 40), (60, 165), (42, 165)],
    [(-42, 165), (-42, 180), (42, 180), (42, 165)],
    [(-38, 40), (-38, 195), (38, 195), (38, 40)],
    [(38, 40), (38, -20), (-38, -20), (-38, 40)],
    [(21.5, 0), (60, 0), (60, 165), (42, 165)]], ids=["nut", "side", "tip", "over the tip", "over the nut", "from the nut to the tip"])
def test_a_dimension_from_corner_to_corner_is_told_and_no_part_of_the_outline(line):
    made = join([Path((one,)) for one in (*SIDES, *(Line(p, q) for p, q in pairwise(line)))])
    assert [chain.path.area for chain in made.loops] == [pytest.approx(AREA)]
    assert [bracket.box for bracket in made.brackets] == [Path(tuple(Line(p, q) for p, q in pairwise(line))).box]
    assert not made.open and not made.tangles and not made.duplicates


@pytest.mark.parametrize(("legs", "tips"), [
    ([(38, 40), (60, 40), (60, 165), (42, 165)], [((60, 40), (0, 1)), ((60, 165), (0, -1))]),
    ([(38, 40), (60, 40), (60, 165), (42, 165)], [((38, 40), (1, 0)), ((42, 165), (1, 0))]),
    ([(-42, 165), (-42, 180), (42, 180), (42, 165)], [((-42, 180), (1, 0))])], ids=["bends", "corners of the head", "one alone"])
def test_arrowheads_in_lines_on_a_dimension_are_rings_of_their_own(legs, tips):
    heads = [Line(p, q) for tip, way in tips for p, q in pairwise(
        [tip, *(v.along(v.along(tip, way, 3.0), v.left(way), side) for side in (0.6, -0.6)), tip])]
    made = join([Path((one,)) for one in (*SIDES, *(Line(p, q) for p, q in pairwise(legs)), *heads)])
    assert [chain.path.area for chain in made.loops] == [pytest.approx(AREA), *[pytest.approx(1.8)] * len(tips)]
    assert len(made.brackets) == 1 and not made.tangles and not made.open


@pytest.mark.parametrize("line", [
    [(-21.5, 0), (-24, -12), (24, -12), (21.5, 0)],
    [(-21.5, 0), (-21.5, -60), (21.5, -60), (21.5, 0)],
    [(-21.5, 0), (-21.5, 30), (21.5, 30), (21.5, 0)]], ids=["no square", "a neck", "a pocket"])
def test_what_is_no_dimension_is_left_as_it_was(line):
    assert not join([Path((one,)) for one in (*SIDES, *(Line(p, q) for p, q in pairwise(line)))]).brackets


def test_a_square_end_beyond_a_line_across_is_part_of_the_head():
    points = [(-21.5, 0), (21.5, 0), (40, 40), (40, 120), (40, 150), (-40, 150), (-40, 120), (-40, 40), (-21.5, 0)]
    sides = [Line(p, q) for p, q in pairwise(points)]
    made = join([Path((one,)) for one in (*sides, Line((40, 120), (-40, 120)))])
    assert not made.brackets and max(chain.path.area for chain in made.loops) == pytest.approx(Path(tuple(sides), True).area)


def test_a_dimension_along_a_square_head_lies_beside_it_though_its_ends_run_straight_on():
    """What runs on from two sides as far apart as the ends of a head is neither neck nor tip."""
    points = [(-40, 0), (40, 0), (40, 165), (-40, 165), (-40, 0)]
    made = join([Path((Line(p, q),)) for p, q in (*pairwise(points), *pairwise([(40, 165), (60, 165), (60, 0), (40, 0)]))])
    assert [chain.path.area for chain in made.loops] == [pytest.approx(80 * 165)] and len(made.brackets) == 1


@pytest.mark.parametrize("gap", [0.005, 0.05])
@pytest.mark.parametrize("at", [0, 2, 4])
def test_an_outline_with_a_gap_is_no_smaller_for_a_line_across_it(gap, at):
    sides = list(STRAIGHT)
    sides[at] = Line(sides[at].p0, v.along(sides[at].p1, sides[at].tangent(0), -gap))
    made = join([Path((one,)) for one in (*sides, Line(CORNERS[2], CORNERS[5]))])
    assert max(chain.path.area for chain in made.loops) == pytest.approx(Path(tuple(STRAIGHT), True).area, abs=200 * gap)


@pytest.mark.parametrize("at", range(6))
def test_an_outline_with_a_side_drawn_past_its_corner_is_no_smaller_for_a_line_across_it(at):
    sides = list(STRAIGHT)
    sides[at] = Line(sides[at].p0, v.along(sides[at].p1, sides[at].tangent(0), 5.0))
    made = join([Path((one,)) for one in (*sides, Line(CORNERS[2], CORNERS[5]))])
    assert max(chain.path.area for chain in made.loops) == pytest.approx(Path(tuple(STRAIGHT), True).area)


def test_lines_that_lead_nowhere_are_sought_in_few_rounds(monkeypatch):
    """Off a corner a line in fifty pieces, another one off the end of each."""
    rounds = []
    monkeypatch.setattr(rings, "link", lambda pieces: rounds.append(len(pieces)) or link(pieces))
    points = [(42.0 + 5 * k, 165.0) for k in range(50)]
    comb = [line for p, q in zip(points, points[1:], strict=False) for line in (Line(p, q), Line(q, (q[0], 190.0)))]
    found, *_ = end_to_end([*SIDES, *comb], 0.01, 0.1)
    assert rounds == [104, 56] and not found


def test_a_ring_tells_which_pieces_are_in_it_and_which_are_drawn_again():
    twin = Line(CORNERS[1], CORNERS[0])
    found, taken, _ = end_to_end([*SIDES, twin, Line((42, 165), (42, 200))], 0.01, 0.1)
    assert [sorted(ring.sources) for ring in found] == [[0, 1, 2, 3, 4, 5]] and taken == {0, 1, 2, 3, 4, 5, 6}


@pytest.mark.parametrize("segments", [
    [Line((0, 0), (60, 0)), Line((0, 0), (25, 0)), Line((25, 0), (60, 0))],
    [Line((0, 0), (60, 60)), Line((60, 60), (60, 0)), Line((60, 0), (0, 40)), Line((0, 40), (0, 0))],
    [Line((-20, 0), (20, 0)), Line((20, 0), (20, 30)), Line((20, 30), (-20, 30))]], ids=["one line in two pieces", "crosses itself", "open"])
def test_what_encloses_nothing_end_to_end_is_no_ring(segments):
    assert end_to_end(segments, 0.01, 0.1) == ([], set(), [])


def test_a_curve_that_leads_nowhere_branches_a_ring():
    """It may be a side of the head that is drawn past its corner."""
    tail = Arc.about((60, 0), 30, math.pi, -1.0)
    halves = list(circle((0, 0), 30).segments)
    assert end_to_end([*halves, Line((30, 0), (80, 0))], 0.01, 0.1)[0]
    assert end_to_end([*halves, tail], 0.01, 0.1) == ([], set(), [])


def test_of_very_many_lines_that_lead_nowhere_none_is_left_out():
    """Each would be asked about every other."""
    star = [Line((21.5, 0.0), (21.5 + 90 * math.cos(k / 200), -90 * math.sin(k / 200))) for k in range(1, rings.MOST_ASTRAY + 2)]
    assert end_to_end([*SIDES, *star[:-1]], 0.01, 0.1)[0] and not end_to_end([*SIDES, *star], 0.01, 0.1)[0]
