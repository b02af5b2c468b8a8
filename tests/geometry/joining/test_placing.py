"""An outline laid into the headstock's frame."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.curves import MIRROR, Arc, Cubic, Line, Path, circle, shift, turn
from geometry.edits.imported import layout_from
from geometry.errors import GeometryError
from geometry.joining import place
from geometry.joining.placing import SAME_WAY, STRAIGHT, Edge, _end_edges, _rival, straight_runs
from tests.spent import times_as_long

NUT = 44.0


def head(nut: float = NUT) -> Path:
    """A symmetric head already in its frame: nut edge on y = 0, 180 long, round tip."""
    right = [(nut / 2, 0.0), (30.0, 25.0), (40.0, 150.0)]
    left = [(-x, y) for x, y in reversed(right)]
    corners = [*right, *left]
    sides = [Line(p, q) for p, q in zip(corners, corners[1:], strict=False)]
    sides[2] = Arc.through(right[2], (0.0, 180.0), left[0])
    return Path((*sides, Line(left[-1], right[0])), closed=True)


def one_sided_head() -> Path:
    """All tuners on one edge: no symmetry to lean on."""
    return Path((Line((-21, 0), (21, 0)), Line((21, 0), (24, 150)), Cubic((24, 150), (24, 190), (-20, 200), (-45, 185)), Line((-45, 185), (-50, 30)),
                 Line((-50, 30), (-21, 0))), closed=True)


@given(st.floats(-math.pi, math.pi), st.floats(-500, 500), st.floats(-500, 500), st.booleans())
def test_a_head_from_anywhere_comes_back_to_its_frame(angle, x, y, backwards):
    drawn = head().mapped(shift(x, y).after(turn(angle)))
    placing = place(drawn.reversed() if backwards else drawn)
    found = drawn.mapped(placing.matrix)
    assert found.box == pytest.approx(head().box, abs=0.03)
    assert placing.nut_width == pytest.approx(NUT)
    assert placing.matrix.similarity() == pytest.approx(1.0) and placing.matrix.determinant > 0


def test_quarter_turns_are_exact():
    for k in range(4):
        drawn = head().mapped(turn(k * math.pi / 2 + 1e-6))
        m = place(drawn).matrix
        assert {abs(round(m.a, 12)), abs(round(m.b, 12))} == {0.0, 1.0}


@pytest.mark.parametrize("tip", [18.0, 15.5, 20.0])
@pytest.mark.parametrize("quarters", [0, 1, 2, 3])
def test_a_straight_tip_narrower_than_the_nut_is_not_taken_for_it(tip, quarters):
    """The head hollows in towards the neck: it narrows to the tip in straight lines, or over a crown."""
    flare = Cubic((21.5, 0.0), (21.5, 15.0), (36.0, 18.0), (36.0, 35.0))
    for upper in ([Line((36.0, 35.0), (tip, 172.0))],
                  [Line((36.0, 35.0), (40.0, 150.0)), Cubic((40.0, 150.0), (35.0, 165.0), (25.0, 160.0), (tip, 172.0))]):
        right = [flare, *upper]
        left = [s.mapped(MIRROR).reversed() for s in reversed(right)]
        drawn = Path((Line((-21.5, 0.0), (21.5, 0.0)), *right, Line((tip, 172.0), (-tip, 172.0)), *left), closed=True)
        placing = place(drawn.mapped(turn(quarters * math.pi / 2)))
        assert placing.nut_width == pytest.approx(43.0)
        assert f"The straight edge of {2 * tip:g} mm at the other end would do as well" in placing.sentence
        other = place(drawn, turn_quarter=2)
        assert other.nut_width == pytest.approx(2 * tip) and "other end" not in other.sentence


@pytest.mark.parametrize("tip", [17.0, 20.0, 21.5, 24.0])
def test_a_head_of_straight_lines_widens_towards_its_tip(tip):
    """Its corners there are cut off, so that what is left is about as wide as the nut; nothing is hollow."""
    side = [(21.5, 0.0), (38.0, 38.0), (42.0, 165.0), (tip, 184.0)]
    corners = [*side, *((-x, y) for x, y in reversed(side))]
    drawn = Path(tuple(Line(p, q) for p, q in zip(corners, [*corners[1:], corners[0]], strict=True)), closed=True)
    assert drawn.mapped(turn(1.0)).mapped(place(drawn.mapped(turn(1.0))).matrix).box == pytest.approx((-42, 0, 42, 184))


def test_the_narrow_nut_of_a_mandolin_is_taken_before_a_straight_tip_that_a_guitars_nut_is_as_wide_as():
    side = [(14.5, 0.0), (14.5, 10.0), (30.0, 40.0), (26.0, 120.0), (20.0, 130.0)]
    corners = [*side, *((-x, y) for x, y in reversed(side))]
    drawn = Path(tuple(Line(p, q) for p, q in zip(corners, [*corners[1:], corners[0]], strict=True)), closed=True)
    assert place(drawn).nut_width == pytest.approx(29)


@pytest.mark.parametrize("tip", [29.0, 30.0, 35.0])
def test_of_two_straight_ends_that_of_a_usual_nut_is_taken(tip):
    """Widest near the nut, narrowing in straight lines to a tip that few nuts are as wide as; nothing is hollow."""
    corners = [(21.5, 0), (43, 45), (tip, 180), (-tip, 180), (-43, 45), (-21.5, 0)]
    drawn = Path(tuple(Line(p, q) for p, q in zip(corners, [*corners[1:], corners[0]], strict=True)), closed=True)
    placing = place(drawn)
    assert placing.nut_width == pytest.approx(43) and f"of {2 * tip:g} mm at the other end would do as well" in placing.sentence


def test_a_drawing_that_stands_on_its_tip_is_told_to_be_turned_by_half_a_turn():
    assert "turned by 180.0 degrees" in place(one_sided_head().mapped(turn(math.pi))).sentence


def test_a_one_sided_head_finds_its_nut():
    drawn = one_sided_head().mapped(turn(-math.pi / 2))
    placing = place(drawn)
    assert placing.nut_width == pytest.approx(42)
    assert drawn.mapped(placing.matrix).box == pytest.approx(one_sided_head().box, abs=0.03)
    assert "42 mm at one end was taken for the nut line" in placing.sentence and "turned by 90.0 degrees" in placing.sentence


def test_mirroring_swaps_bass_and_treble():
    plain, mirrored = place(one_sided_head()), place(one_sided_head(), mirrored=True)
    x0, y0, x1, y1 = one_sided_head().mapped(plain.matrix).box
    assert one_sided_head().mapped(mirrored.matrix).box == pytest.approx((-x1, y0, -x0, y1), abs=1e-9)
    assert mirrored.matrix.determinant < 0 and "mirrored" in mirrored.sentence


def test_the_maker_can_choose_another_end():
    x0, y0, x1, y1 = head().mapped(place(head(), turn_quarter=2).matrix).box
    assert y0 == pytest.approx(0) and y1 == pytest.approx(180) and x0 == pytest.approx(-x1)
    for k in range(4):
        assert place(head(), turn_quarter=k + 4) == place(head(), turn_quarter=k)


def test_a_nut_edge_in_pieces_counts_as_one():
    whole = head()
    nut = whole.segments[-1]
    pieces = [Line((-22 + 44 * i / 7, 0.0), (-22 + 44 * (i + 1) / 7, 0.0)) for i in range(7)]
    assert nut.start == (-22.0, 0.0)
    # The path starts in the middle of the nut edge.
    path = Path((*pieces[4:], *whole.segments[:-1], *pieces[:4]), closed=True)
    assert place(path).nut_width == pytest.approx(NUT)


def test_a_nut_edge_that_bows_a_little_counts():
    whole = head()
    bowed = Cubic((-22.0, 0.0), (-8.0, -0.15), (8.0, -0.15), (22.0, 0.0))
    placing = place(Path((*whole.segments[:-1], bowed), closed=True))
    assert placing.nut_width == pytest.approx(NUT)


def test_without_a_straight_edge_the_lowest_point_is_taken_and_said():
    placing = place(circle((30, 40), 50))
    assert placing.nut_width is None
    assert circle((30, 40), 50).mapped(placing.matrix).box == pytest.approx((-50, 0, 50, 100))
    assert placing.sentence.startswith("No straight edge")


@pytest.mark.parametrize(("across", "along", "turned"), [(180.0, 80.0, True), (80.0, 180.0, False), (105.0, 100.0, False)])
def test_without_a_straight_edge_a_lying_outline_is_stood_upright(across, along, turned):
    drawn = circle((30.0, 40.0), 50.0).flatten(0.05) * (across / 100.0, along / 100.0) + (7.0, -9.0)
    oval = Path(tuple(Cubic(tuple(p), tuple(p + (q - p) / 3 + 1e-3), tuple(p + (q - p) / 1.5 + 1e-3), tuple(q))
                      for p, q in zip(drawn, np.roll(drawn, -1, axis=0), strict=True)), closed=True)
    placing = place(oval)
    x0, y0, x1, y1 = oval.mapped(placing.matrix).box
    assert placing.nut_width is None and ("turned by 90.0" in placing.sentence) == turned
    assert (x1 - x0, y1 - y0) == pytest.approx((along, across) if turned else (across, along), abs=0.1)
    assert (x0 + x1, y0) == pytest.approx((0.0, 0.0), abs=1e-6)


@pytest.mark.parametrize(("degrees", "told"), [(0.0, ""), (0.04, ""), (90.0, "-90.0"), (-3.0, "3.0"), (3.0, "-3.0")])
def test_by_how_much_a_drawing_was_turned_is_said_where_it_is_seen(degrees, told):
    sentence = place(head().mapped(turn(math.radians(degrees)))).sentence
    assert ("turned" in sentence) == bool(told) and f"turned by {told} degrees" in sentence + "turned by  degrees"
    assert "mirrored" not in sentence


def test_an_edge_that_winds_about_its_chord_is_not_straight():
    """By 1.7 mm to either side, and through its middle."""
    winding = Cubic((-22.0, 0.0), (-8.0, -6.0), (8.0, 6.0), (22.0, 0.0))
    assert winding.point(0.5) == pytest.approx((0.0, 0.0))
    assert place(Path((*head().segments[:-1], winding), closed=True)).nut_width != pytest.approx(NUT)


def test_an_open_path_is_refused():
    with pytest.raises(GeometryError, match="close the outline"):
        place(Path((Line((0, 0), (1, 0)),)))


def test_the_nut_takes_the_width_of_the_edge_it_was_laid_on():
    from geometry.curves import Line, Path
    corners = ((-21.0, 0.0), (21.0, 0.0), (35.0, 160.0), (-35.0, 160.0))
    path = Path(tuple(Line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)), closed=True)
    placing = place(path)
    nut = layout_from([(path, "outline")], placing.matrix, "head", placing.nut_width).nut
    # 42 wide: 4 mm stay free beside the outer strings, as on the nut of 44 that a layout begins with.
    assert (nut.width, nut.spread) == (42.0, 34.0)
    assert layout_from([(path, "outline")], placing.matrix, "head").nut.width == 44.0


def runs_by_definition(pieces: list[Line]) -> list[tuple]:
    """Ends of the runs, each piece held against all that are in the run already."""
    runs: list[list[Line]] = []
    for piece in pieces:
        if not (runs and goes_on(runs[-1], piece)):
            runs.append([])
        runs[-1].append(piece)
    if len(runs) > 1 and goes_on(runs[-1], runs[0][0]):
        runs[0] = [*runs.pop(), *runs[0]]
    return [(run[0].start, run[-1].end) for run in runs]


def goes_on(run: list[Line], piece: Line) -> bool:
    a, b = np.array(run[0].start), np.array(piece.end)
    whole, length = b - a, math.dist(a, b)
    if length < 1e-9:
        return False
    bows = [abs(whole[0] * (one.end[1] - a[1]) - whole[1] * (one.end[0] - a[0])) / length for one in run]
    turned = math.remainder(heading(piece) - heading(run[-1]), math.tau)
    return max(bows) <= STRAIGHT and abs(turned) <= SAME_WAY


def heading(piece: Line) -> float:
    return math.atan2(piece.end[1] - piece.start[1], piece.end[0] - piece.start[0])


@given(st.floats(-math.pi, math.pi), st.lists(st.tuples(st.floats(0.05, 9.0), st.floats(-0.019, 0.019)), min_size=2, max_size=60),
       st.integers(0, 60))
def test_straight_runs_are_those_of_the_definition(way, steps, first):
    at, pieces = (0.0, 0.0), []
    for length, turned in steps:
        way += turned
        to = (at[0] + length * math.cos(way), at[1] + length * math.sin(way))
        pieces.append(Line(at, to))
        at = to
    apex = (1000.0 * math.cos(way + 2.0), 1000.0 * math.sin(way + 2.0))
    pieces += [Line(at, apex), Line(apex, (0.0, 0.0))]
    first %= len(pieces)
    loop = [*pieces[first:], *pieces[:first]]
    assert [(edge.start, edge.end) for edge in straight_runs(loop)] == runs_by_definition(loop)


def test_a_straight_edge_that_was_cut_into_thousands_of_pieces_takes_no_longer_for_each():
    def cut(n: int) -> Path:
        sides = head().segments
        nut = sides[-1]
        points = [(nut.start[0] + (nut.end[0] - nut.start[0]) * i / n, 0.0) for i in range(n + 1)]
        return Path((*sides[:-1], *(Line(p, q) for p, q in zip(points, points[1:], strict=False))), closed=True)
    few, many = cut(500), cut(4000)
    assert place(many).nut_width == pytest.approx(NUT)

    def placed(outline: Path) -> None:
        _end_edges.cache_clear()
        place(outline)
    assert times_as_long(lambda: placed(many), lambda: placed(few), 16.0) < 16.0, "eight times as many pieces"


def slanted_head(degrees: float) -> Path:
    """The head with its nut edge turned about its middle by a nut's slant: positive brings the bass end (-x) nearer the tip."""
    def moved(p: tuple[float, float]) -> tuple[float, float]:
        return (p[0], -p[0] * math.tan(math.radians(degrees))) if p[1] == 0 else p
    return Path(tuple(Line(moved(s.start), moved(s.end)) if isinstance(s, Line) else s for s in head().segments), closed=True)


@pytest.mark.parametrize("degrees", [8.0, -8.0, 20.0])
@pytest.mark.parametrize("quarters", [0, 1, 2, 3])
def test_a_slanted_nut_leaves_the_drawing_upright(degrees, quarters):
    drawn = slanted_head(degrees).mapped(shift(30.0, -70.0).after(turn(quarters * math.pi / 2)))
    placing = place(drawn, slanted=True)
    assert (placing.slant, placing.askew) == pytest.approx((degrees, degrees)) and placing.nut_width == pytest.approx(NUT)
    assert drawn.mapped(placing.matrix).box == pytest.approx(slanted_head(degrees).box, abs=1e-9)
    assert f"a nut slanted by {abs(degrees):.1f} degrees" in placing.sentence
    other = place(drawn, mirrored=True, slanted=True)
    nut = layout_from([(drawn, "outline")], other.matrix, "head", other.nut_width, other.slant).nut
    assert (nut.slant, nut.width) == pytest.approx((-degrees, NUT))
    assert drawn.mapped(other.matrix).box == pytest.approx(slanted_head(-degrees).box, abs=1e-9)


@pytest.mark.parametrize("degrees", [8.0, -8.0])
@pytest.mark.parametrize("lies", [12.0, -100.0, 175.0])
def test_where_the_way_of_the_neck_is_known_a_slanted_nut_is_told_from_that(degrees, lies):
    """The drawing lies askew by so many degrees, which is no slant of its nut."""
    drawn = slanted_head(degrees).mapped(turn(math.radians(lies)))
    placing = place(drawn, slanted=True, up=(-math.sin(math.radians(lies)), math.cos(math.radians(lies))))
    assert placing.slant == pytest.approx(degrees) and drawn.mapped(placing.matrix).box == pytest.approx(slanted_head(degrees).box, abs=1e-9)


def test_a_nut_edge_is_laid_level_unless_it_is_said_to_be_slanted():
    level = place(slanted_head(8.0))
    assert (level.slant, level.askew) == pytest.approx((0.0, 8.0)) and "turned by 8.0 degrees" in level.sentence
    assert level.nut_width == pytest.approx(NUT / math.cos(math.radians(8.0)))
    for drawn in (head(), slanted_head(0.3), slanted_head(35.0)):
        assert place(drawn, slanted=True) == place(drawn) and place(drawn).askew == 0
    assert place(slanted_head(8.0), 2, slanted=True).slant == 0, "another end was chosen for the nut's"


def test_the_other_end_is_told_of_where_an_edge_there_is_nearly_as_good():
    """The head lies on its side, with its nut at x = 0; its tip is cut off in two steps."""
    best, tip, step, beside = (Edge(start, end) for start, end in (
        ((0.0, 21.0), (0.0, -21.0)), ((170.0, -10.0), (170.0, 10.0)), ((160.0, -30.0), (160.0, -10.0)), ((0.0, -21.0), (50.0, -21.0))))
    assert _rival({best: 2.0, tip: 1.0, step: 0.9, beside: 1.8}) == tip and _rival({best: 2.0, tip: 1.0, step: 1.1, beside: 1.8}) == step
    assert _rival({best: 2.0, tip: 0.99, beside: 1.8}) is None is _rival({})
