"""Adding and removing nodes, kinds of edges, exact sizes."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.curves import Arc, Cubic, Line
from geometry.edits import add_node, remove_node, set_bulge, set_edge, set_edge_length, set_radius
from geometry.edits.loops import edge_of
from geometry.errors import GeometryError
from geometry.layout import Loop, Node, loop_path
from geometry.solids.walls import Wall
from tests.geometry.edits.heads import CURVED, curved, plain, sound
from tests.symmetric import is_symmetric

edges = st.integers(0, 7)
inside = st.floats(0.01, 0.99)


def apart(one, two) -> float:
    """Hausdorff distance of two paths, from many exact points of each."""
    return max(Wall(b, 0.02).foot(segment.point(k / 5)).distance
               for a, b in ((one, two), (two, one)) for segment in a for k in range(6))


@settings(max_examples=40)
@given(edges, inside)
def test_a_new_node_leaves_the_shape_alone(index, t):
    made = sound(add_node(curved(), "outline", index, t))
    assert len(made.outline.nodes) == 9
    before, after = loop_path(CURVED), loop_path(made.outline)
    assert apart(before, after) < 1e-9
    assert after.area == pytest.approx(before.area, abs=1e-9)
    assert after.length == pytest.approx(before.length, abs=1e-7)


@given(edges, inside)
def test_removing_the_new_node_gives_the_old_outline(index, t):
    made = add_node(curved(), "outline", index, t)
    back = sound(remove_node(made, "outline", index + 1))
    for one, two in zip(back.outline.nodes, CURVED.nodes, strict=True):
        assert one.at == two.at and one.smooth == two.smooth
        assert one.bulge == pytest.approx(two.bulge, abs=1e-12)
        if two.handles:
            assert one.handles[0] == pytest.approx(two.handles[0], abs=1e-9)
            assert one.handles[1] == pytest.approx(two.handles[1], abs=1e-9)


@settings(max_examples=40)
@given(edges, inside)
def test_a_new_node_on_both_sides(index, t):
    made = sound(add_node(curved(), "outline", index, t, mirrored=True))
    assert is_symmetric(made.outline)
    assert apart(loop_path(CURVED), loop_path(made.outline)) < 1e-9


def test_the_middle_of_an_edge_across_the_centreline_gets_one_node():
    made = add_node(curved(), "outline", 4, 0.5, mirrored=True)
    assert len(made.outline.nodes) == 9 and made.outline.nodes[5].at == (0.0, 180.0)


def test_a_new_node_wants_a_place_of_its_own():
    for t in (0.0, 1.0, 1e-12, 1.5):
        with pytest.raises(GeometryError):
            add_node(curved(), "outline", 0, t)


def test_removing_a_corner_of_straight_edges_leaves_a_straight_edge():
    made = remove_node(plain(slots=(), tuners=(), rows=()), "outline", 2)
    assert [type(edge_of(list(made.outline.nodes), i)) for i in range(3)] == [Line] * 3


def test_two_pieces_of_one_arc_become_the_arc():
    nodes = (Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), bulge=1.0))
    head = plain(outline=Loop(nodes=nodes), slots=(), tuners=(), rows=())
    made = remove_node(add_node(head, "outline", 1, 0.3), "outline", 2)
    arc = edge_of(list(made.outline.nodes), 1)
    assert isinstance(arc, Arc) and arc.radius == pytest.approx(20.0) and arc.sweep == pytest.approx(math.pi)


def test_a_loop_keeps_some_area():
    triangle = plain(outline=Loop(nodes=(Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0)), Node(at=(0.0, 50.0)))),
                     slots=(), tuners=(), rows=())
    with pytest.raises(GeometryError, match="without area"):
        remove_node(triangle, "outline", 2)
    half = plain(outline=Loop(nodes=(Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), bulge=1.0))), slots=(), tuners=(),
                 rows=())
    with pytest.raises(GeometryError, match="at least two nodes"):
        remove_node(half, "outline", 0)


def test_kinds_of_edges():
    head = plain()
    arc = sound(set_edge(head, "outline", 1, "arc"))
    assert arc.outline.nodes[1].bulge == 0.2
    assert loop_path(arc.outline).box[2] == pytest.approx(40.0 + 0.2 * 90.0)
    curve = sound(set_edge(arc, "outline", 1, "curve"))
    assert isinstance(edge_of(list(curve.outline.nodes), 1), Cubic)
    assert apart(loop_path(curve.outline), loop_path(arc.outline)) < 0.05
    assert edge_of(list(set_edge(curve, "outline", 1, "arc").outline.nodes), 1).radius == pytest.approx(
        edge_of(list(arc.outline.nodes), 1).radius, rel=1e-3)
    assert sound(set_edge(curve, "outline", 1, "straight")).outline == head.outline
    flat = set_edge(head, "outline", 1, "curve")
    assert flat.outline.nodes[1].handles == ((40.0, 60.0), (40.0, 120.0))
    assert set_edge(flat, "outline", 1, "arc").outline.nodes[1].bulge == 0.2


def test_a_curve_whose_neighbour_becomes_straight_turns_into_line_at_a_smooth_node():
    made = sound(set_edge(curved(), "outline", 1, "straight", mirrored=True))
    assert is_symmetric(made.outline)
    nodes = list(made.outline.nodes)
    assert edge_of(nodes, 1).tangent(1.0) == pytest.approx(edge_of(nodes, 2).tangent(0.0))


def test_the_radius_of_an_edge():
    made = sound(set_radius(plain(), "outline", 2, 50.0))
    arc = edge_of(list(made.outline.nodes), 2)
    assert arc.radius == pytest.approx(50.0)
    assert arc.centre == pytest.approx((0.0, 150.0))
    hollow = set_radius(set_bulge(plain(), "outline", 2, -0.1), "outline", 2, 50.0)
    assert edge_of(list(hollow.outline.nodes), 2).centre == pytest.approx((0.0, 210.0))
    more = set_radius(set_bulge(plain(), "outline", 2, 1.5), "outline", 2, 50.0)
    assert edge_of(list(more.outline.nodes), 2).centre == pytest.approx((0.0, 210.0))
    assert edge_of(list(set_radius(plain(), "outline", 2, 40.0).outline.nodes), 2).sweep == pytest.approx(math.pi)
    with pytest.raises(GeometryError, match=r"be 40 mm or more"):
        set_radius(plain(), "outline", 2, 39.0)


@given(edges, st.floats(5.0, 150.0))
def test_the_length_of_an_edge(index, length):
    made = set_edge_length(curved(), "outline", index, length)
    assert edge_of(list(made.outline.nodes), index).length() == pytest.approx(length, abs=1e-6)


def test_edges_that_make_no_sense_are_refused():
    head = plain()
    for edit in (lambda: set_edge(head, "outline", 0, "wavy"), lambda: set_edge_length(head, "outline", 0, 0.0),
                 lambda: set_bulge(head, "outline", 0, 5000.0), lambda: set_edge(head, "outline", 4, "arc")):
        with pytest.raises(GeometryError):
            edit()
