"""Where the outline runs against the grain."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.layout import Loop, Node
from geometry.routing.grain import ACROSS, ALONG, edge_kind, grain_risks, routed_edge
from tests.geometry.routing.specimens import head, loop


def kinds(layout, side="face"):
    return [(r.kind, round(r.start, 1), round(r.end, 1)) for r in grain_risks(layout, side)]


def test_up_the_flare_is_against_the_grain_and_down_to_the_tip_is_not():
    """Counter-clockwise from the foot: up the treble flare (against), in to the tip (with), out on the bass side (against)."""
    side = math.hypot(40, 80)
    foot = loop((-10.0, 0.0), (10.0, 0.0), (50.0, 80.0), (0.0, 180.0), (-50.0, 80.0))
    found = kinds(head(outline=foot))
    assert [k for k, _, _ in found] == ["against the grain", "against the grain"]
    assert found[0][1:] == (0, round(side, 1))
    assert found[1][1] == pytest.approx(side + math.hypot(50, 100), abs=0.1)


def test_turned_over_the_other_stretches_are_against_the_grain():
    foot = loop((-10.0, 0.0), (10.0, 0.0), (50.0, 80.0), (0.0, 180.0), (-50.0, 80.0))
    face, back = kinds(head(outline=foot)), kinds(head(outline=foot), "back")
    assert len(face) == len(back) == 2
    assert not {k[1:] for k in face} & {k[1:] for k in back}


def test_a_rectangle_has_end_grain_at_its_tip_alone():
    (only,) = grain_risks(head())
    assert only.kind == "end grain" and only.end - only.start == pytest.approx(80)
    assert only.last == pytest.approx((-40, 180)) and only.steepest == pytest.approx(math.pi / 2)
    assert "back up the corner at 40 across to the bass, 180 along" in only.words
    assert grain_risks(head(), "back")[0].last == pytest.approx((40, 180))


def test_where_a_round_tip_changes_is_found_exactly():
    """A half circle of radius 40: end grain within 25 degrees of its top, against the grain from there to 8 degrees."""
    dome = Loop(nodes=(Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0)), Node(at=(40.0, 100.0), bulge=1.0), Node(at=(-40.0, 100.0))))
    end, against = grain_risks(head(outline=dome))
    assert end.end - end.start == pytest.approx(40 * 2 * (math.pi / 2 - ACROSS), abs=1e-6)
    assert against.end - against.start == pytest.approx(40 * (ACROSS - ALONG), abs=1e-6)
    assert against.start == pytest.approx(end.end)
    assert "65 degrees off it" in against.words and "with the back up" in against.words


def test_the_routed_edge_leaves_the_nut_line_out():
    path = routed_edge(head())
    assert path.start == pytest.approx((40, 0)) and path.end == pytest.approx((-40, 0))
    assert path.length == pytest.approx(180 + 80 + 180)


@given(st.floats(0, 2 * math.pi))
def test_each_edge_is_safe_one_way_up_unless_it_is_end_grain(angle):
    tangent = (math.cos(angle), math.sin(angle))
    face, back = edge_kind(tangent), edge_kind(tangent, "back")
    if "end grain" in (face, back):
        assert face == back
    else:
        assert face is None or back is None
    mirrored = edge_kind((tangent[0], -tangent[1]), "back")
    assert mirrored == face, "turning over is a mirror that runs the other way round"
