"""Loose pieces into loops: order, direction, duplicates, tangles. Areas against Green's theorem on the whole shape."""

import math
import random

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.curves import Arc, Cubic, Line, Path, circle, shift, stretch, turn
from geometry.joining import crossings, join
from geometry.joining.chains import Chain, bridge, link


def rim(radii, kinds) -> Path:
    """A star-shaped closed path about the origin through the given radii, each side a line, an arc or a cubic."""
    n = len(radii)
    corners = [(r * math.cos(math.tau * i / n), r * math.sin(math.tau * i / n)) for i, r in enumerate(radii)]
    segments = []
    for i, kind in enumerate(kinds):
        p, q = corners[i], corners[(i + 1) % n]
        if kind == "line":
            segments.append(Line(p, q))
        elif kind == "arc":
            segments.append(Arc.bulging(p, q, 0.15))
        else:
            out = (0.02 * (q[1] - p[1]), 0.02 * (p[0] - q[0]))
            segments.append(Cubic(p, (p[0] + (q[0] - p[0]) / 3 + out[0], p[1] + (q[1] - p[1]) / 3 + out[1]),
                                  (p[0] + (q[0] - p[0]) * 2 / 3 + out[0], p[1] + (q[1] - p[1]) * 2 / 3 + out[1]), q))
    return Path(tuple(segments), closed=True)


@st.composite
def rims(draw):
    n = draw(st.integers(3, 9))
    radii = draw(st.lists(st.floats(40, 60), min_size=n, max_size=n))
    return rim(radii, draw(st.lists(st.sampled_from(["line", "arc", "cubic"]), min_size=n, max_size=n)))


def scattered(path: Path, seed: int, twice: float = 0.0) -> list[Path]:
    """The segments as loose paths in another order, some backwards, some of them twice."""
    chance = random.Random(seed)
    pieces = [s for s in path.segments for _ in range(2 if chance.random() < twice else 1)]
    chance.shuffle(pieces)
    return [Path((s.reversed() if chance.random() < 0.5 else s,)) for s in pieces]


@given(rims(), st.integers(0, 999), st.sampled_from([0.0, 0.5]))
@settings(max_examples=80)
def test_scattered_pieces_come_back_as_the_same_loop(path, seed, twice):
    made = join(scattered(path, seed, twice))
    assert len(made.loops) == 1 and not made.open and not made.bridged
    assert made.loops[0].path.area == pytest.approx(path.area, rel=1e-9)
    assert len(made.loops[0].path.segments) == len(path.segments)


@given(rims(), st.integers(0, 999))
@settings(max_examples=40)
def test_a_line_across_changes_nothing_but_the_nodes(path, seed):
    angle = random.Random(seed).uniform(0, math.pi)
    c, s = math.cos(angle), math.sin(angle)
    across = Path((Line((-90 * c, -90 * s), (90 * c, 90 * s)),))
    made = join([*scattered(path, seed), across])
    assert [chain.path.area for chain in made.loops] == pytest.approx([path.area], rel=1e-7)


@given(rims(), st.floats(0.2, 0.8), st.floats(0.0, 3.0))
@settings(max_examples=30)
def test_drawings_turn_and_move_with_their_loops(path, size, angle):
    matrix = shift(300, -200).after(turn(angle)).after(stretch(size))
    made = join(scattered(path.mapped(matrix), 1))
    assert made.loops[0].path.area == pytest.approx(path.area * size * size, rel=1e-9)


def one(segment) -> Path:
    return Path((segment,))


def test_two_half_circles_are_not_taken_for_duplicates():
    halves = [one(Arc.about((0, 0), 10, 0, math.pi)), one(Arc.about((0, 0), 10, math.pi, math.pi))]
    made = join(halves)
    assert made.loops[0].path.area == pytest.approx(100 * math.pi) and made.duplicates == 0


def test_an_arc_and_its_chord_are_not_taken_for_duplicates():
    made = join([one(Arc.about((0, 0), 10, 0, math.pi)), one(Line((10, 0), (-10, 0)))])
    assert made.loops[0].path.area == pytest.approx(50 * math.pi)


def test_arcs_that_overlap_on_one_circle_are_drawn_once():
    made = join([one(Arc.about((0, 0), 10, 0, 1.5 * math.pi)), one(Arc.about((0, 0), 10, math.pi, 1.5 * math.pi))])
    assert made.loops[0].path.area == pytest.approx(100 * math.pi)
    assert made.loops[0].path.length == pytest.approx(20 * math.pi)


def test_a_closed_curve_of_one_segment():
    made = join([one(Cubic((0, 0), (60, 80), (-60, 80), (0, 0)))])
    assert len(made.loops) == 1 and made.loops[0].path.area == pytest.approx(3 / 20 * 2 * 60 * 80)


def test_curves_are_cut_exactly_where_they_cross():
    # Two arcs that overshoot each other: a lens of two circles 60 apart with radius 50.
    made = join([one(Arc.about((-30, 0), 50, -1.2, 2.4)), one(Arc.about((30, 0), 50, math.pi - 1.2, 2.4))])
    lens = 2 * (50**2 * math.acos(30 / 50) - 30 * 40)
    assert [c.path.area for c in made.loops] == pytest.approx([lens], rel=1e-12)
    assert all(isinstance(s, Arc) for s in made.loops[0].path) and made.inexact == 0


def test_crossing_cubics_are_cut_exactly():
    up, down = Cubic((-50, -40), (-20, 80), (20, 80), (50, -40)), Cubic((-50, 40), (-20, -80), (20, -80), (50, 40))
    made = join([one(up), one(down)])
    assert made.inexact == 0 and all(isinstance(s, Cubic) for s in made.loops[0].path)
    # The curves are mirror images: twice the part of the upper one above the axis, by quadrature.
    ts = [i / 200000 for i in range(200001)]
    points = [p for p in (up.point(t) for t in ts) if p[1] >= 0]
    truth = 2 * sum((b[0] - a[0]) * (a[1] + b[1]) / 2 for a, b in zip(points, points[1:], strict=False))
    assert made.loops[0].path.area == pytest.approx(truth, rel=1e-6)


def test_a_curve_that_crosses_itself_gives_its_loop():
    made = join([one(Cubic((0, 0), (40, 60), (-30, 60), (10, 0)))])
    assert len(made.loops) == 1 and made.inexact == 0
    assert made.loops[0].path.area == pytest.approx(399.6396, abs=1e-3)


def test_tangents_that_touch_without_crossing_are_seen_by_the_second_look():
    # Three quarters of two circles that touch at (0, 0), tied by lines: an area that only the touch closes.
    made = join([one(Arc.about((-20, 0), 20, 0, math.pi / 2)), one(Arc.about((20, 0), 20, math.pi / 2, math.pi / 2)), one(Line((-20, 20), (20, 20)))])
    area = 40 * 20 - 2 * math.pi * 400 / 4
    assert [c.path.area for c in made.loops] == pytest.approx([area], rel=1e-3)


def test_ends_on_the_side_of_an_arc_are_found():
    cut = (10 * math.cos(1.0), 10 * math.sin(1.0))
    made = join([one(Arc.about((0, 0), 10, 0, math.pi)), one(Line((-10, 0), (10, 0))), one(Line((0, 0), cut))])
    assert [c.path.area for c in made.loops] == pytest.approx([50 * math.pi])
    assert made.dropped_lines == 1


def short(corners, by: float) -> list[Path]:
    """The sides of a polygon, each that much short at both ends."""
    sides = []
    for p, q in zip(corners, [*corners[1:], corners[0]], strict=True):
        k = by / math.dist(p, q)
        sides.append(one(Line((p[0] + (q[0] - p[0]) * k, p[1] + (q[1] - p[1]) * k), (q[0] - (q[0] - p[0]) * k, q[1] - (q[1] - p[1]) * k))))
    return sides


def test_straight_sides_that_end_short_of_their_corner_run_on_to_it():
    corners = [(-21.5, 0.0), (21.5, 0.0), (38.0, 38.0), (42.0, 165.0), (20.0, 184.0), (-40.0, 150.0)]
    made = join(short(corners, 0.2), reach=0.5)
    assert len(made.bridged) == 6 and len(made.loops[0].path.segments) == 6
    found = sorted((round(s.p0[0], 6), round(s.p0[1], 6)) for s in made.loops[0].path.segments)
    assert found == sorted(corners)


@pytest.mark.parametrize("pieces", [
    short([(0.0, 0.0), (60.0, 0.0), (60.0, 10.0)], 0.2)[:2] + [one(Line((60.0, 9.8), (0.2, 0.03)))],  # a corner of nine degrees
    [one(Line((0, 0), (50, 0))), one(Line((50.3, 0), (100, 0))), one(Line((100, 0), (50, 80))), one(Line((50, 80), (0, 0)))],
    [one(Arc.about((0, 0), 20, 0, math.pi - 0.01)), one(Line((-20, 0), (20, 0)))]], ids=["sharp", "in line", "curve"])
def test_what_would_run_on_too_far_or_is_no_line_gets_a_short_piece(pieces):
    made = join(pieces, reach=0.5, far_reach=0.5)
    drawn = {end for path in pieces for end in (path.start, path.end)}
    assert len(made.loops) == 1 and made.bridged
    bridges = [s for s in made.loops[0].path.segments if s.length() <= 0.5]
    assert bridges and all(s.start in drawn or s.end in drawn for s in bridges)


def test_an_end_that_stops_short_of_a_side_reaches_it():
    sides = [Line((0, 0), (100, 0)), Line((100, -20), (100, 60)), Line((100, 50), (0, 50)), Line((0, 50), (0, 0))]
    short = [Line((0, 0), (99.993, 0)), *sides[1:]]
    made = join([one(s) for s in short])
    assert [c.path.area for c in made.loops] == pytest.approx([5000], rel=1e-4)


def test_pieces_shorter_than_the_tolerance_keep_their_order():
    # A curve drawn as thousands of loose crumbs, each shorter than the gap that is closed.
    n = 9000
    points = [(8 * math.cos(math.tau * i / n), 8 * math.sin(math.tau * i / n)) for i in range(n)]
    made = join([one(Line(p, q)) for p, q in zip(points, [*points[1:], points[0]], strict=True)])
    assert len(made.loops) == 1 and len(made.loops[0].path.segments) == n
    assert made.loops[0].path.area == pytest.approx(n / 2 * 64 * math.sin(math.tau / n))


def test_nothing_gives_nothing():
    made = join([])
    assert (made.loops, made.open, made.gaps) == ((), (), ())


def test_a_loop_that_an_open_line_touches_stays_as_it_is():
    made = join([circle((0, 0), 30), one(Line((-50, 3), (50, 3))), one(Line((0, -30), (0, -60)))])
    assert [c.path for c in made.loops] == [circle((0, 0), 30)]
    assert made.dropped_lines == 2 and not made.open


def test_loops_drawn_twice_count_once_wherever_they_start():
    twin = Path(tuple(s.reversed() for s in reversed(circle((5, 5), 20).segments)), closed=True)
    quarter = circle((0, 0), 20).mapped(turn(0.7)).mapped(shift(5, 5))
    made = join([circle((5, 5), 20), twin, quarter])
    assert len(made.loops) == 1 and made.duplicates == 2


def test_of_two_loops_drawn_as_one_that_of_fewer_pieces_is_kept():
    path = Path((Line((0, 0), (30, 0)), Line((30, 0), (30, 20)), Line((30, 20), (0, 20)), Line((0, 20), (0, 0))), True)
    pieces = Path(tuple(piece for line in path.segments for piece in line.split(0.5)), True)
    for paths in ([path, pieces], [pieces, path]):
        found = join(paths)
        assert [len(chain.path.segments) for chain in found.loops] == [4] and found.duplicates == 1


def test_two_straight_lines_that_cross_are_not_worked_out(monkeypatch):
    """In a drawing of a hundred thousand lines most that touch are two."""
    monkeypatch.setattr("geometry.joining.loops.enclosed", None)
    found = join([Path((Line((0, 0), (10, 10)),), False), Path((Line((0, 10), (10, 0)),), False)])
    assert len(found.open) == 2 and not found.loops


def test_concentric_circles_are_not_twins():
    assert len(join([circle((0, 0), 20), circle((0, 0), 20.1)]).loops) == 2


def test_hopeless_tangles_end_in_chords_of_the_same_border(monkeypatch):
    monkeypatch.setattr(crossings, "MOST_PAIRS", 20)
    chance = random.Random(3)
    lines = [one(Line((chance.uniform(-50, 50), chance.uniform(-50, 50)), (chance.uniform(-50, 50), chance.uniform(-50, 50)))) for _ in range(30)]
    rounded = [one(Arc.about((0, 0), 80, math.pi / 2 * k, math.pi / 2)) for k in range(4)]
    made = join([*lines, *rounded, one(Line((-80, 0), (80, 0))), one(Line((0, -80), (0, 80)))])
    assert max(c.path.area for c in made.loops) == pytest.approx(6400 * math.pi, rel=1e-4)
    assert made.inexact == 1


@given(st.lists(st.tuples(st.floats(-50, 50), st.floats(-50, 50), st.floats(-50, 50), st.floats(-50, 50)), min_size=3, max_size=14))
@settings(max_examples=60)
def test_any_lines_enclose_what_the_polygon_library_says(numbers):
    ends = [((round(a, 3), round(b, 3)), (round(c, 3), round(d, 3))) for a, b, c, d in numbers]
    ends = [(p, q) for p, q in ends if math.dist(p, q) > 1]
    if not ends:
        return
    made = join([one(Line(p, q)) for p, q in ends], reach=1e-5, far_reach=1e-5)
    if made.by_edge:  # such a line is a loop beside the border that it is part of
        return
    noded = shapely.union_all([shapely.linestrings([p, q]) for p, q in ends])
    faces = shapely.get_parts(shapely.polygonize(shapely.get_parts(noded)))
    truth = sum(f.area for f in faces)
    holes = sum(shapely.Polygon(ring).area for p in shapely.get_parts(shapely.union_all(faces)) for ring in p.interiors) if len(faces) else 0.0
    border = sum(c.path.length for c in made.loops)
    assert sum(c.path.area for c in made.loops) == pytest.approx(truth + holes, abs=1e-3 + 2e-5 * border)


SQUARE = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0), (5.0, 5.0))


@pytest.mark.parametrize(("pieces", "chains", "branches"), [
    (((0, 1), (2, 1), (2, 3), (0, 3)), [((1, 2, 3, 0), True)], False),
    (((1, 2), (1, 0), (3, 2)), [((1, 0, 2), False)], False),
    (((0, 1), (2, 1), (2, 3), (0, 3), (1, 4)), [((1, 2, 3, 0), False), ((4,), False)], True)])
def test_pieces_are_linked_wherever_two_ends_meet_whichever_way_they_were_drawn(pieces, chains, branches):
    """Round a square; along three of its sides from one loose end to the other; round it from a corner where a fifth line sets off."""
    made, found = link([(i, Line(SQUARE[a], SQUARE[b])) for i, (a, b) in enumerate(pieces)])
    assert [(chain.sources, chain.path.closed) for chain in made] == chains and found == branches


@pytest.mark.parametrize("back", [(), (0,), (1,), (2,), (0, 2)])
def test_gaps_in_a_row_are_all_bridged_whichever_way_the_pieces_were_drawn(back):
    """Three sides of a square, each 0.1 short of the next, and one far away."""
    ends = [((0.0, 0.0), (10.0, 0.0)), ((10.0, 0.1), (10.0, 10.0)), ((9.9, 10.0), (0.0, 10.0)), ((50.0, 0.0), (60.0, 0.0))]
    pieces = [Chain(Path((Line(*(pair[::-1] if k in back else pair)),)), (k,)) for k, pair in enumerate(ends)]
    made, gaps = bridge(pieces, 0.2)
    assert sorted(tuple(sorted(chain.sources)) for chain in made) == [(0, 1, 2), (3,)] and not any(chain.path.closed for chain in made)
    assert [gap.size for gap in gaps] == pytest.approx([0.1, 0.1])


def test_a_cut_is_left_out_at_the_ends_and_right_behind_another_alone():
    line = Line((0.0, 0.0), (10.0, 0.0))
    assert crossings.inner(line, {0.04, 0.3, 0.33, 0.5, 0.97}, 0.5) == [0.3, 0.5]
