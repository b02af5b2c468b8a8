"""Rounded corners against closed forms, and on curves by what a rounding is."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry import vectors as v
from geometry.curves import Arc
from geometry.edits import fillet, largest_fillet
from geometry.edits.loops import edge_of
from geometry.errors import GeometryError
from geometry.layout import Loop, Node, loop_path
from tests.geometry.edits.heads import CURVED, curved, plain, sound
from tests.symmetric import is_symmetric

BARE = {"slots": (), "tuners": (), "rows": ()}


def head(*nodes: Node):
    return plain(outline=Loop(nodes=nodes), **BARE)


def test_a_square_corner():
    """Tangent points one radius from the corner, a quarter turn, area less by r^2 (1 - pi/4)."""
    made = sound(fillet(plain(), "outline", 2, 10.0))
    nodes = list(made.outline.nodes)
    assert [node.at for node in nodes[2:4]] == [pytest.approx((40.0, 170.0), abs=1e-12),
                                                pytest.approx((30.0, 180.0), abs=1e-12)]
    arc = edge_of(nodes, 2)
    assert arc.radius == pytest.approx(10.0, abs=1e-12) and arc.sweep == pytest.approx(math.pi / 2)
    assert loop_path(made.outline).area == pytest.approx(80 * 180 - 100 * (1 - math.pi / 4), abs=1e-9)
    assert nodes[2].smooth and nodes[3].smooth


@pytest.mark.parametrize(("long", "nodes"), [(20.0, 6), (10.0, 5)])
def test_an_arc_may_use_up_an_edge(long, nodes):
    """A step of 10 into the head: rounded by 10 its arc leaves from the corner before, and ends at the next where the other edge is no longer."""
    step = head(Node(at=(0.0, 0.0)), Node(at=(60.0, 0.0)), Node(at=(60.0, 40.0)), Node(at=(50.0, 40.0)), Node(at=(50.0, 40.0 + long)), Node(at=(0.0, 40.0 + long)))
    made = list(fillet(step, "outline", 3, 10.0).outline.nodes)
    assert len(made) == nodes and made[2].at == (60.0, 40.0) and made[3].at == pytest.approx((50.0, 50.0), abs=1e-9)
    arc = edge_of(made, 2)
    assert arc.radius == pytest.approx(10.0) and arc.centre == pytest.approx((60.0, 50.0), abs=1e-9)
    assert loop_path(Loop(nodes=tuple(made))).area == pytest.approx(60 * 40 + 50 * long + 100 * (1 - math.pi / 4), abs=1e-6)


def test_a_sharp_corner():
    """Two edges at 30 degrees: the arc touches r / tan(15 degrees) from the corner."""
    far = (100 * math.cos(math.radians(30)), 100 * math.sin(math.radians(30)))
    made = fillet(head(Node(at=(0.0, 0.0)), Node(at=(100.0, 0.0)), Node(at=far)), "outline", 0, 5.0)
    touch = 5.0 / math.tan(math.radians(15))
    nodes = made.outline.nodes
    assert nodes[1].at == pytest.approx((touch, 0.0), abs=1e-9)
    assert v.norm(nodes[0].at) == pytest.approx(touch, abs=1e-9)


def test_line_and_arc():
    """A half disc of radius 20 over its chord: the arc's centre lies at height r, at 20 - r from the middle."""
    made = fillet(head(Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), bulge=1.0)), "outline", 1, 4.0)
    nodes = list(made.outline.nodes)
    centre = (math.sqrt(16.0 ** 2 - 4.0 ** 2), 4.0)
    arc = edge_of(nodes, 1)
    assert arc.centre == pytest.approx(centre, abs=1e-9)
    assert nodes[1].at == pytest.approx((centre[0], 0.0), abs=1e-9)
    assert nodes[2].at == pytest.approx(v.scale(v.unit(centre), 20.0), abs=1e-9)


def test_arc_and_arc():
    """A lens of two arcs of radius 50 about (-30, 50) and (30, 50): the rounding's centre lies 50 - r from both."""
    top, bottom = (0.0, 90.0), (0.0, 10.0)
    sweep = 2 * math.asin(40 / 50)
    lens = (Node(at=bottom, bulge=math.tan(sweep / 4)), Node(at=top, bulge=math.tan(sweep / 4)))
    made = fillet(head(*lens), "outline", 1, 5.0)
    arc = edge_of(list(made.outline.nodes), 1)
    assert arc.radius == pytest.approx(5.0, abs=1e-9)
    assert arc.centre == pytest.approx((0.0, 50.0 + math.sqrt(45.0 ** 2 - 30.0 ** 2)), abs=1e-9)


def test_an_inward_corner_is_filled():
    """An L: the corner turns right, so the rounding adds r^2 (1 - pi/4)."""
    corners = ((0.0, 0.0), (60.0, 0.0), (60.0, 40.0), (30.0, 40.0), (30.0, 100.0), (0.0, 100.0))
    made = fillet(head(*(Node(at=at) for at in corners)), "outline", 3, 6.0)
    assert edge_of(list(made.outline.nodes), 3).sweep == pytest.approx(-math.pi / 2)
    assert loop_path(made.outline).area == pytest.approx(60 * 40 + 30 * 60 + 36 * (1 - math.pi / 4), abs=1e-9)


@given(st.sampled_from([0, 1, 3, 4, 5, 6]), st.floats(0.5, 5.0))
def test_a_rounding_touches_both_edges_without_a_corner(index, radius):
    """On lines, arcs and curves alike: its ends lie on the old outline and every turn there vanishes."""
    made = sound(fillet(curved(), "outline", index, radius))
    nodes = list(made.outline.nodes)
    arc = edge_of(nodes, index)
    assert isinstance(arc, Arc) and arc.radius == pytest.approx(radius, abs=1e-6)
    old = loop_path(CURVED)
    for at, into, out in ((arc.start, index - 1, index), (arc.end, index, index + 1)):
        assert old.nearest(at).distance < 1e-9
        assert v.cross(edge_of(nodes, into).tangent(1.0), edge_of(nodes, out % len(nodes)).tangent(0.0)) == \
            pytest.approx(0.0, abs=1e-8)
    for segment in old:
        for k in range(21):
            assert v.distance(segment.point(k / 20), arc.centre) > radius - 1e-6


@given(st.sampled_from([0, 1, 3, 4, 5, 6]), st.floats(0.5, 5.0))
def test_both_sides_at_once(index, radius):
    made = sound(fillet(curved(), "outline", index, radius, mirrored=True))
    assert is_symmetric(made.outline, 1e-6) and len(made.outline.nodes) == 10


def test_the_largest_radius_uses_up_the_shorter_edge():
    assert largest_fillet(plain(), "outline", 2) == pytest.approx(80.0, abs=1e-5)
    used = sound(fillet(plain(), "outline", 2, 80.0))
    assert len(used.outline.nodes) == 4
    with pytest.raises(GeometryError, match=r"the largest that fits is 80 mm"):
        fillet(plain(), "outline", 2, 80.5)


def test_two_roundings_of_half_the_width_meet():
    made = sound(fillet(fillet(plain(), "outline", 3, 40.0), "outline", 2, 40.0))
    assert len(made.outline.nodes) == 5
    assert loop_path(made.outline).area == pytest.approx(80 * 140 + math.pi * 40 ** 2 / 2, abs=1e-6)


def test_a_handle_on_the_corner_does_no_harm():
    nodes = (Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), handles=((20.0, 0.0), (40.0, 30.0))), Node(at=(30.0, 80.0)),
             Node(at=(-20.0, 80.0)))
    made = fillet(head(*nodes), "outline", 1, 3.0)
    assert edge_of(list(made.outline.nodes), 1).radius == pytest.approx(3.0, abs=1e-6)


def test_no_corner_no_rounding():
    with pytest.raises(GeometryError, match="without a corner"):
        fillet(curved(), "outline", 2, 3.0)
    with pytest.raises(GeometryError, match="above zero"):
        fillet(curved(), "outline", 0, -1.0)
    needle = head(Node(at=(0.0, 0.0)), Node(at=(0.0, 50.0)), Node(at=(0.0, 20.0)), Node(at=(30.0, 20.0)))
    with pytest.raises(GeometryError, match="fold back"):
        fillet(needle, "outline", 1, 3.0)
