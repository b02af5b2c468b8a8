"""A post in its slot is told no farther from the wall than it is, in any direction: by hand, and by points of the wall."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.checks import check
from geometry.layout import Headstock, Margins, Slot, StraightSlot
from tests.geometry.checks.heads import drawn, post_head


def told(layout: Headstock, kind: str) -> float:
    """What the checks tell of a kind, infinite where they tell nothing."""
    return min((s.measured for s in check(layout).snags if s.kind == kind), default=math.inf)


def test_a_post_end_beside_a_round_end_by_hand() -> None:
    # The round end of radius 6 has its middle at (14, 150). The post's corner is 30 deep, at x = 10, and at
    # y = 150 + 3: (4, 3) from that middle, 5 mm. Along the axis there would be sqrt(36 - 9) - 4 = 1.196.
    assert told(post_head(along=150.0), "post-to-wall") == pytest.approx(1.0, abs=1e-9)
    # (4, 4): 6 - 4 sqrt(2) = 0.343 for 0.472 along the axis.
    assert told(post_head(along=151.0), "post-to-wall") == pytest.approx(6 - 4 * math.sqrt(2), abs=1e-9)
    # The same beside the end towards the nut, whose middle lies at y = 60.
    assert told(post_head(along=59.0), "post-to-wall") == pytest.approx(6 - 4 * math.sqrt(2), abs=1e-9)


def test_a_post_end_before_a_straight_wall_is_as_far_as_along_its_axis() -> None:
    assert told(post_head(), "post-to-wall") == 2.0


def test_a_post_end_past_the_end_of_its_slot_runs_into_wood() -> None:
    # The axis at y = 155, 5 mm past the middle, meets the slot; the flank at 158 does not: (4, 8) is sqrt(80) from it.
    assert told(post_head(along=155.0, post=(6.0, 30.0, 26.0)), "post-to-wall") <= 6 - math.sqrt(80) + 1e-9


@pytest.mark.parametrize("length", [17.0, 19.5])
def test_a_post_that_ends_in_the_rail_has_no_inner_wall_before_it(length) -> None:
    """At y = 155 its axis meets the slot 26 - sqrt(36 - 25) = 22.68 deep, at y = 150 20 deep: its string hole in the rail is all that is told."""
    for along in (155.0, 150.0):
        layout = post_head(along=along, post=(6.0, length, 16.0))
        assert told(layout, "post-to-wall") == math.inf and told(layout, "string-hole") < -3.9


def test_a_string_hole_and_a_flank_in_the_round_end_by_hand() -> None:
    # A thin post, 2 mm, hole 30 deep: 4 mm past the slot's middle line. With its axis at y = 153 the hole lies (4, 3)
    # from the end's middle, 5 mm of 6; along the axis there would be sqrt(36 - 9) - 4 = 1.196.
    thin = post_head(along=153.0, post=(2.0, 30.5, 30.0))
    assert told(thin, "string-hole") == pytest.approx(1.0, abs=1e-9)
    # Its flank lies (4, 4) from there: 0.343 for the 0.472 along the edge.
    assert told(thin, "post-to-slot-end") == pytest.approx(6 - 4 * math.sqrt(2), abs=1e-9)
    # A hole on the middle line, 5 mm past the end's middle: 1 mm to the end, 3.3 to rail and inner wall.
    layout = post_head(along=155.0, post=(1.0, 27.0, 26.0), margins=Margins(post_wall=0.1))
    snag, = [s for s in check(layout).snags if s.kind == "string-hole"]
    assert snag.measured == pytest.approx(1.0, abs=1e-9)
    assert snag.text == "The string hole of a lies 1.0 mm from the end of slot; 1.5 mm wanted."
    assert snag.cure == "Slide a by 0.5 mm to the nut, or lengthen slot by that."


def test_a_wall_askew_is_measured_square_to_it_by_hand() -> None:
    # The inner wall falls from (8, 60) to (14, 150), as drawn and as a straight slot askew by atan(6 / 90).
    sine, cosine = 6 / math.hypot(6, 90), 90 / math.hypot(6, 90)
    layout = post_head(slots=(drawn("slot", (8.0, 60.0), (22.0, 60.0), (28.0, 150.0), (14.0, 150.0)),), post=(6.0, 28.0, 24.0))
    # At y = 90 the wall stands at x = 10, at the tip flank (y = 93) at 10.2. The post ends at x = 12: 1.8 along it.
    assert told(layout, "post-to-wall") == pytest.approx(1.8 * cosine, abs=1e-9)
    # The hole at x = 16: 6 mm to the inner wall along the axis, 8 to the rail.
    assert told(layout, "string-hole") == pytest.approx(6 * cosine, abs=1e-9)
    assert 0 < sine < cosine


def test_a_drawn_wall_that_bulges_between_the_flanks() -> None:
    """A tooth of the inner wall at y = 91.5 between axis and flank: no ray meets its tip."""
    tooth = ((8.0, 60.0), (20.0, 60.0), (20.0, 120.0), (8.0, 120.0), (8.0, 92.0), (9.5, 91.5), (8.0, 91.0))
    assert told(post_head(slots=(drawn("slot", *tooth),)), "post-to-wall") == pytest.approx(0.5, abs=1e-9)
    # 1 mm longer it runs 0.5 mm into that tooth; chords are taken on the safe side.
    into = told(post_head(slots=(drawn("slot", *tooth),), post=(6.0, 31.0, 26.0)), "post-to-wall")
    assert into == pytest.approx(-0.5, abs=0.0021) and into <= -0.5


def rim(shape: StraightSlot) -> np.ndarray:
    """(n, 2) points of a straight slot's wall, every 0.02 mm or so, from its own numbers; the rail is the last 5000."""
    a, b = np.array(shape.nut_end), np.array(shape.tip_end)
    along = (b - a) / np.hypot(*(b - a))
    left, half = np.array([-along[1], along[0]]), shape.width / 2
    turn = np.linspace(0.0, np.pi, 1200)[:, None]
    share = np.linspace(0.0, 1.0, 5000)[:, None]
    return np.concatenate([b + half * (np.sin(turn) * along + np.cos(turn) * left),
                           a + half * (-np.sin(turn) * along - np.cos(turn) * left),
                           a + share * (b - a) + half * left, a + share * (b - a) - half * left])


def between(corners: tuple[tuple[float, float], ...]) -> np.ndarray:
    """(n, 2) points of straight walls through corners; the wall to the second one after the first, the rail, is the last 5000."""
    share = np.linspace(0.0, 1.0, 5000)[:, None]
    sides = [np.array(p) + share * (np.array(q) - np.array(p)) for p, q in zip(corners, corners[1:] + corners[:1], strict=True)]
    return np.concatenate([sides[0], *sides[2:], sides[1]])


@settings(max_examples=150)
@given(st.floats(57.0, 153.0) | st.floats(148.0, 154.0), st.floats(1.0, 5.0), st.floats(24.0, 33.0), st.floats(-12.0, 12.0),
       st.floats(8.0, 14.0), st.booleans(), st.floats(-1.5, 1.5))
def test_nothing_is_told_larger_than_points_of_the_wall_are_near(along: float, half: float, length: float, lean: float,
                                                                 width: float, straight: bool, bend: float) -> None:
    """Random posts in slots askew, straight and drawn: the post's end to all but the rail, its string hole to all walls."""
    left, right = 14 - width / 2, 14 + width / 2
    corners = ((left, 60.0), (right, 60.0), (right + lean, 150.0), (left + lean, 150.0), (left + lean / 2 + bend, 105.0))
    straight_one = StraightSlot(nut_end=(14.0, 60.0), tip_end=(14.0 + lean, 150.0), width=width)
    made = Slot(id="slot", shape=straight_one) if straight else drawn("slot", *corners)
    wall = rim(straight_one) if straight else between(corners)
    hole = length - 2.0
    layout = post_head(along=along, post=(2 * half, length, hole), slots=(made,), margins=Margins())
    ahead = wall[:-5000][wall[:-5000, 0] < 40.0 - length]
    end = np.array([(40.0 - length, y) for y in np.linspace(along - half, along + half, 9)])
    nearest = np.hypot(*(ahead[:, None] - end[None]).transpose(2, 0, 1)).min() if len(ahead) else math.inf
    at_hole = np.hypot(*(wall - (40.0 - hole, along)).T).min()
    inside = (shapely.LineString([straight_one.nut_end, straight_one.tip_end]).buffer(width / 2, quad_segs=500) if straight
              else shapely.Polygon(corners))
    if not inside.covers(shapely.Point(16.0, along)) or any(s.kind == "no-slot" for s in check(layout).snags):
        # The bore, 24 mm deep, ends in wood, and the post in its bore; or it only grazes the end of a drawn slot.
        return
    # As near as the points lie beside each other.
    assert told(layout, "post-to-wall") <= nearest + 0.02 or nearest > 0.98
    assert told(layout, "string-hole") <= at_hole + 0.02 or at_hole > 1.48
