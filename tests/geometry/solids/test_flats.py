"""Flats under plates: how deep, and what they change."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import example, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.checks import check
from geometry.edits import mirror_layout
from geometry.edits.hand_cuts import propose_flat, propose_ramp, set_flat, set_ramp
from geometry.errors import GeometryError
from geometry.layout import Flat, Footprint, Loop, Node, Ramp
from geometry.layout.edges import edge
from geometry.sequence import operations, precedence
from geometry.solids.flats import deep_enough, least_size, strays_within, under_plate
from geometry.solids.side import side_bore
from tests.geometry.checks.cases_strings import _DROP, _dive
from tests.geometry.checks.heads import bore, bulging, head, loop, pattern, side, slot
from tests.property.layouts import SAMPLES

WIDE = pattern("of", "side", bore(surface="seat", depth=30.0),
               bore("screw", 2.0, "seat", (9.0, 0.0), 9.0), seat=(12.0, 12.0, 10.0))
LONG = pattern("of", "side", bore(surface="seat", depth=30.0), seat=(20.0, 20.0, 10.0))
SAGITTA = 200 - math.sqrt(200 ** 2 - 12 ** 2)


def bellied(radius=200.0, **rest):
    return head(outline=bulging(radius), tuners=(side("a", edge(bulging(radius), "treble").length / 2, WIDE, **rest),),
                patterns=(WIDE,), slots=(slot(),))


def test_a_round_edge_falls_away_by_its_sagitta():
    layout = bellied()
    one = edge(layout.outline, "treble")
    seat = one.seat(one.length / 2)
    assert under_plate(one, seat, 12.0, 12.0) == pytest.approx((SAGITTA, 0.0), abs=1e-9)
    assert under_plate(one, seat, 12.0, 0.0)[0] == pytest.approx(SAGITTA, abs=1e-9)
    # At R 200, 24 long: 0.3603, so 0.37 does.
    assert deep_enough(layout, "a") == Flat(size=24.0, depth=0.37)


def test_a_hollow_edge_rises_beside_the_seat_on_both_sides_of_the_head():
    layout = bellied(-200.0)
    for one, name in ((layout, "treble"), (mirror_layout(layout), "bass")):
        way = edge(one.outline, name)
        assert under_plate(way, way.seat(way.length / 2), 12.0, 12.0) == pytest.approx((0.0, SAGITTA), abs=1e-9)


def test_a_straight_edge_wants_none():
    straight = head(tuners=(side("a", 90.0, WIDE),), patterns=(WIDE,), slots=(slot(),))
    assert deep_enough(straight, "a") is None
    with pytest.raises(GeometryError, match="straight"):
        propose_flat(straight, "a")


def test_a_flat_deepens_the_stop_and_stops_the_rocking():
    layout = bellied()
    flat = propose_flat(layout, "a")
    before, after = side_bore(layout, "a"), side_bore(flat, "a")
    assert after.stop_full == pytest.approx(before.stop_full + 0.37)
    assert after.seat[0] == pytest.approx(before.seat[0] - 0.37)
    assert after.mark == pytest.approx(before.mark)
    assert "plate-rocks" in {s.kind for s in check(layout).snags}
    assert "plate-rocks" not in {s.kind for s in check(flat).snags}
    shallow = set_flat(flat, "a", depth=0.03)
    left, = (s for s in check(shallow).snags if s.kind == "plate-rocks")
    assert left.measured == pytest.approx(SAGITTA - 0.03, abs=1e-9) and left.cure == "Cut its flat 0.34 mm deeper."
    assert set_flat(flat, "a", gone=True) == layout


def test_a_plate_rocks_by_all_that_falls_away_under_it_and_a_flat_as_deep_as_told_cures_it():
    """x = 40 up to y = 60, then an arc of radius 80 that turns in: 12 mm farther on from a seat at 57 the edge has
    fallen away by 80 - sqrt(80^2 - 9^2) = 0.508, though it is straight at the seat."""
    angle = math.asin(100 / 80 / 2) * 2
    end = (40 - 80 + 80 * math.cos(angle), 60 + 80 * math.sin(angle))
    wall = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 60.0, math.tan(angle / 4)), end, (-40.0, end[1]))
    layout = head(outline=wall, tuners=(side("a", 57.0, WIDE),), patterns=(WIDE,), slots=())
    fall = 80 - math.sqrt(80 ** 2 - 9 ** 2)
    rocks, = (s for s in check(layout).snags if s.kind == "plate-rocks")
    assert rocks.measured == pytest.approx(fall, abs=1e-9)
    assert rocks.text == "The plate of a rocks on the curved edge by 0.51 mm."
    assert rocks.cure.startswith("Cut a flat 0.51 mm deep")
    assert "plate-rocks" not in {s.kind for s in check(set_flat(layout, "a", size=24.0, depth=0.51)).snags}
    assert "plate-rocks" not in {s.kind for s in check(replace(layout, tuners=(side("a", 50.5, WIDE),))).snags}, "2.5 mm on the arc: 0.04"


def test_a_plate_that_rocks_by_more_than_a_screw_draws_down_is_tight():
    """20 mm to either side on a radius of 190: 190 - sqrt(190^2 - 20^2) = 1.056 mm; on one of 210: 0.955 mm."""
    grades = [next(s.grade for s in check(replace(bellied(radius), patterns=(LONG,))).snags if s.kind == "plate-rocks")
              for radius in (190.0, 210.0)]
    assert grades == ["tight", "note"]


def test_a_plate_on_a_hollow_edge_bridges_it():
    snag, = (s for s in check(bellied(-200.0)).snags if s.kind == "plate-rocks")
    assert snag.measured == pytest.approx(SAGITTA, abs=1e-9)
    assert "bridges the curved edge by 0.36 mm" in snag.text and "level with the middle of its seat" in snag.cure
    assert "plate-rocks" not in {s.kind for s in check(propose_flat(bellied(-200.0), "a")).snags}


def test_ramps_and_flats_are_operations_with_their_reasons():
    ramped = set_ramp(_dive(_DROP - 1.3), "slot", length=6.0, depth=2.0)
    ramp = next(op for op in operations(ramped) if op.kind == "ramp")
    # The slot's nut end lies at 54.
    assert "from 48 mm above the nut line" in ramp.words and "18.4 degrees" in ramp.words
    assert any(edge_.then == ramp.id for edge_ in precedence(ramped, operations(ramped)))
    made = operations(propose_flat(bellied(), "a"))
    flat = next(op for op in made if op.kind == "flat")
    rules = {(edge_.first, edge_.then) for edge_ in precedence(propose_flat(bellied(), "a"), made)}
    assert {first for first, then in rules if then == flat.id} >= {"cut outline"}
    assert "0.37 mm deep" in flat.words


def test_refusals_are_sentences():
    layout = _dive(30.0)
    with pytest.raises(GeometryError, match="needs no ramp"):
        propose_ramp(layout, "slot")
    with pytest.raises(GeometryError, match="no slot"):
        set_ramp(layout, "a", length=3.0, depth=1.0)
    with pytest.raises(GeometryError, match="edge"):
        set_flat(layout, "slot", size=3.0, depth=1.0)
    with pytest.raises(GeometryError, match="no ramp yet"):
        set_ramp(layout, "slot", length=3.0)
    with pytest.raises(GeometryError, match="no flat yet"):
        set_flat(bellied(), "a", depth=0.3)
    assert propose_ramp(_dive(_DROP - 1.3), "slot").slots[0].ramp is not None
    assert replace(set_ramp(layout, "slot", length=3.0, depth=1.0).slots[0], ramp=None) == layout.slots[0]
    assert set_ramp(layout, "slot", length=3.0, depth=1.0).slots[0].ramp == Ramp(length=3.0, depth=1.0)


@pytest.mark.parametrize(("before", "behind", "spot"), [(9.0, 5.0, 2 * math.hypot(9.0, 4.0)), (5.0, 9.0, 2 * math.hypot(9.0, 4.0))])
def test_a_flat_is_as_long_as_twice_the_longer_side_of_the_plate_and_a_spot_holds_its_corners(before, behind, spot):
    foot = Footprint(before=before, behind=behind, across=8.0)
    assert least_size(Flat(size=1.0, depth=1.0), foot) == 18.0
    assert least_size(Flat(shape="spot", size=1.0, depth=1.0), foot) == pytest.approx(spot)


@settings(max_examples=60)
@example(SAMPLES[0], "bass", 0.0, 2 ** -23, 0.0)
@given(st.sampled_from(SAMPLES), st.sampled_from(["bass", "treble"]), st.floats(0, 1), st.floats(0, 15), st.floats(0, 15))
def test_no_edge_of_a_sample_strays_farther_than_is_called_sure(path, name, share, before, behind):
    one = edge(read(path).outline, name)
    seat = one.seat(share * one.length)
    exact = under_plate(one, seat, before, behind)
    for most in (0.05, 0.3, 2.0):
        assert not strays_within(one, seat, before, behind, most) or max(exact) <= most + 1e-9


@settings(max_examples=60)
@example((46.0, 107.6), (30.2, 166.9), 166.2, 10.0, 6.3)
@example((44.1, 122.0), (31.2, 169.1), 166.5, 10.0, 10.3)
@given(st.tuples(st.floats(30, 50), st.floats(5, 175)), st.tuples(st.floats(30, 50), st.floats(5, 175)), st.floats(5, 175), st.floats(1, 15),
       st.floats(1, 15))
def test_of_an_edge_drawn_with_uneven_handles_no_more_is_called_sure_than_is_so(leaves, comes, along, before, behind):
    """Where a curve slows down or hastens under the plate, its stray is what walking along it finds, and a hundredth less is never sure."""
    wall = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0), handles=(leaves, comes)), Node(at=(40.0, 180.0)), Node(at=(-40.0, 180.0))))
    one = edge(wall, "treble")
    seat = one.seat(min(along, one.length))
    exact = under_plate(one, seat, before, behind)
    assert max(exact) < 1e-5 or not strays_within(one, seat, before, behind, 0.99 * max(exact))


@pytest.mark.parametrize("aside", [3.0, -3.0])
@pytest.mark.parametrize(("before", "behind"), [(20.0, 5.0), (5.0, 20.0)])
def test_an_even_bend_is_called_sure_where_a_tenth_more_of_the_plate_would_not_stray_farther(aside, before, behind):
    """A parabola of 180 mm, as a cubic with its middle points a third along, at its level middle strays by aside (s / 90)^2."""
    wall = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0), handles=((40.0 + 4 / 3 * aside, 60.0), (40.0 + 4 / 3 * aside, 120.0))),
                       Node(at=(40.0, 180.0)), Node(at=(-40.0, 180.0))))
    one = edge(wall, "treble")
    seat, strays = one.seat(one.length / 2), abs(aside) * (20.0 / 90.0) ** 2
    assert max(under_plate(one, seat, before, behind)) == pytest.approx(strays, abs=1e-6)
    assert strays_within(one, seat, before, behind, 1.22 * strays) and not strays_within(one, seat, before, behind, 0.999 * strays)


def test_where_a_curve_stands_still_nothing_is_sure():
    wall = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0)), Node(at=(40.0, 90.0), handles=((40.0, 90.0), (40.0, 150.0))),
                       Node(at=(40.0, 180.0)), Node(at=(-40.0, 180.0))))
    one = edge(wall, "treble")
    assert not strays_within(one, replace(one.seat(90.0), segment=1, t=0.0), 0.0, 5.0, 2.0)


@pytest.mark.parametrize("aside", [4.0, -4.0])
@pytest.mark.parametrize(("before", "over"), [(6.0, False), (11.0, True), (18.0, True)])
def test_a_bump_beside_the_seat_counts_at_its_top_once_the_plate_reaches_over_it(aside, before, over):
    """x = 40 up to y = 90, then a lopsided bump or hollow to (40, 110): by the Bernstein polynomials of its points, many of them."""
    corners = np.array([(40.0, 90.0), (40.0 + aside, 91.0), (40.0 + aside / 4, 104.0), (40.0, 110.0)])
    wall = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0)), Node(at=(40.0, 90.0), handles=(tuple(corners[1]), tuple(corners[2]))),
                       Node(at=(40.0, 110.0)), Node(at=(40.0, 180.0)), Node(at=(-40.0, 180.0))))
    one = edge(wall, "treble")
    t = np.linspace(0.0, 1.0, 200_001)[:, None]
    x, y = (((1 - t) ** 3 * corners[0] + 3 * (1 - t) ** 2 * t * corners[1] + 3 * (1 - t) * t ** 2 * corners[2] + t ** 3 * corners[3]).T)
    strays = np.abs(x[y <= 86.0 + before] - 40.0).max()
    assert (strays == np.abs(x - 40.0).max()) == over
    assert under_plate(one, one.seat(86.0), before, 12.0) == pytest.approx((0.0, strays) if aside > 0 else (strays, 0.0), abs=1e-5)


@pytest.mark.parametrize("which", range(60))
def test_as_points_close_together_along_any_edge_tell(which):
    """A treble edge of lines, arcs and wild curves, which may turn back beneath the plate, at corners too: of its points those count, from the
    seat either way, up to the first that is no longer over the plate."""
    draw = np.random.default_rng(which)
    levels = draw.uniform(4, 170, draw.integers(1, 5))
    levels = levels if which % 3 == 0 else np.sort(levels)
    corners = [(40.0, 0.0), *((float(draw.uniform(25, 55)), float(y)) for y in levels), (float(draw.uniform(10, 40)), 180.0)]
    nodes = [Node(at=(-40.0, 0.0))]
    for (x, y), (u, v) in zip(corners, corners[1:], strict=False):
        kind = draw.integers(4)
        handles = tuple((x + (u - x) * share + float(draw.uniform(-15, 15)), y + (v - y) * share + float(draw.uniform(-10, 10)))
                        for share in (1 / 3, 2 / 3))
        nodes.append(Node(at=(x, y), handles=handles) if kind > 1 else Node(at=(x, y), bulge=float(draw.uniform(-0.4, 0.4)) * kind))
    one = edge(Loop(nodes=(*nodes, Node(at=corners[-1]), Node(at=(-20.0, 180.0)))), "treble")
    dense = shapely.get_coordinates(shapely.segmentize(shapely.LineString(one.path.flatten(1e-6)), 0.005))
    for along, before, behind in draw.uniform((0, 1, 1), (one.length, 18, 18), (12, 3)).tolist():
        seat = one.seat(along)
        away = dense - np.array(seat.point)
        u, height = away @ np.array(seat.tangent), away @ np.array(seat.normal)
        middle = int(np.argmin(np.hypot(*away.T)))

        def seen(slack, u=u, height=height, middle=middle, before=before, behind=behind):
            over = (u <= before + slack) & (u >= -behind - slack)
            low, high = (next((k for k in way if not over[k]), last) for way, last in ((range(middle, -1, -1), -1),
                                                                                      (range(middle, len(u)), len(u))))
            return max(0.0, -height[low + 1:high].min()), max(0.0, height[low + 1:high].max())
        fall, rise = under_plate(one, seat, before, behind)
        for got, least, most in zip((fall, rise), seen(-0.01), seen(0.01), strict=True):
            assert least - 1e-3 <= got <= most + 1e-3
