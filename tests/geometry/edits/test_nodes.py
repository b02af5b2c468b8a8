"""Nodes, handles and smoothness, by hand and as properties."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry import vectors as v
from geometry.edits import bend_edge, move_handle, move_node, move_nodes, node_at, set_smooth
from geometry.edits.loops import edge_of
from geometry.edits.parts import with_loop
from geometry.errors import GeometryError
from geometry.layout import Node
from tests.geometry.edits.heads import CURVED, curved, plain, sound
from tests.symmetric import is_symmetric

steps = st.tuples(st.floats(-6, 6), st.floats(-6, 6))


def line_up(layout, index):
    """The sine of the turn at a node."""
    nodes = list(layout.outline.nodes)
    return v.cross(edge_of(nodes, index - 1).tangent(1.0), edge_of(nodes, index).tangent(0.0))


def test_a_node_takes_its_handles_along():
    moved = sound(move_node(curved(), "outline", 2, (43.0, 41.0))).outline.nodes
    assert moved[2].at == (43.0, 41.0)
    assert moved[2].handles[0] == (45.5, 51.0)
    assert moved[1].handles[1] == (38.0, 21.0)
    assert moved[1].handles[0] == CURVED.nodes[1].handles[0] and moved[2].handles[1] == CURVED.nodes[2].handles[1]


def test_arcs_keep_their_bulge_when_a_node_moves():
    assert move_node(curved(), "outline", 3, (41.0, 148.0)).outline.nodes[3].bulge == 0.3


@given(steps)
def test_there_and_back_is_the_same_shape(by):
    head = curved()
    there = move_node(head, "outline", 2, v.add(CURVED.nodes[2].at, by))
    back = move_node(there, "outline", 2, CURVED.nodes[2].at)
    for one, two in zip(back.outline.nodes, head.outline.nodes, strict=True):
        assert one.at == pytest.approx(two.at, abs=1e-9)
        assert (one.handles is None) == (two.handles is None)
        if one.handles:
            assert one.handles[0] == pytest.approx(two.handles[0], abs=1e-9)
            assert one.handles[1] == pytest.approx(two.handles[1], abs=1e-9)


def test_the_opposite_handle_of_a_smooth_node_turns_and_keeps_its_length():
    moved = sound(move_handle(curved(), "outline", 2, 0, (50.0, 40.0))).outline.nodes
    assert moved[2].handles[0] == (50.0, 40.0)
    reach = math.hypot(5.0, 20.0)
    assert moved[1].handles[1] == pytest.approx((40.0 - reach, 40.0))


def test_a_handle_at_a_corner_moves_alone():
    moved = move_handle(curved(), "outline", 1, 0, (30.0, 10.0)).outline.nodes
    assert moved[1].handles[0] == (30.0, 10.0)
    assert moved[0] == CURVED.nodes[0]


def test_beside_a_straight_edge_a_smooth_handle_slides_along_its_direction():
    nodes = (Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0)), Node(at=(20.0, 50.0), smooth=True,
                                                              handles=((20.0, 70.0), (0.0, 100.0))),
             Node(at=(-20.0, 100.0)))
    head = plain(outline=msg_loop(nodes), slots=(), tuners=(), rows=())
    moved = sound(move_handle(head, "outline", 2, 0, (35.0, 80.0)))
    assert moved.outline.nodes[2].handles[0] == (20.0, 80.0)
    tilted = move_node(head, "outline", 1, (50.0, 10.0))
    assert tilted.outline.nodes[2].handles[0] == pytest.approx((20 - 12.0, 50 + 16.0))
    assert line_up(tilted, 2) == pytest.approx(0.0, abs=1e-12)


def msg_loop(nodes):
    from geometry.layout import Loop
    return Loop(nodes=nodes)


@given(steps, st.integers(0, 7))
def test_smooth_nodes_stay_smooth_whatever_moves(by, index):
    head = curved()
    moved = move_node(head, "outline", index, v.add(CURVED.nodes[index].at, by))
    assert line_up(moved, 2) == pytest.approx(0.0, abs=1e-9)
    assert line_up(moved, 7) == pytest.approx(0.0, abs=1e-9)


@given(steps, st.integers(0, 7))
def test_symmetric_editing_keeps_the_outline_symmetric(by, index):
    moved = move_node(curved(), "outline", index, v.add(CURVED.nodes[index].at, by), mirrored=True)
    assert is_symmetric(sound(moved).outline)
    assert moved.outline.nodes[index].at == pytest.approx(v.add(CURVED.nodes[index].at, by))


@given(steps, st.sampled_from([(1, 0), (1, 1), (2, 0), (2, 1), (6, 0), (7, 1)]))
def test_symmetric_editing_of_handles(by, which):
    edge, end = which
    to = v.add(CURVED.nodes[edge].handles[end], by)
    moved = move_handle(curved(), "outline", edge, end, to, mirrored=True)
    assert is_symmetric(sound(moved).outline)
    assert moved.outline.nodes[edge].handles[end] == pytest.approx(to)


def test_a_node_without_a_twin_moves_alone():
    head = move_node(curved(), "outline", 2, (41.0, 40.0))
    moved = move_node(head, "outline", 2, (45.0, 45.0), mirrored=True)
    assert moved.outline.nodes[7].at == (-40.0, 40.0)


def test_a_node_on_the_centreline_stays_on_it():
    nodes = (*CURVED.nodes[:5], Node(at=(0.0, 185.0)), *CURVED.nodes[5:])
    moved = move_node(plain(outline=msg_loop(nodes)), "outline", 5, (7.0, 188.0), mirrored=True)
    assert moved.outline.nodes[5].at == (0.0, 188.0)


def test_several_nodes_move_together():
    moved = sound(move_nodes(curved(), "outline", (4, 5), (0.0, 4.0)))
    assert [node.at for node in moved.outline.nodes[4:6]] == [(20.0, 184.0), (-20.0, 184.0)]


def test_a_corner_between_straight_edges_becomes_smooth_by_becoming_curves():
    made = sound(set_smooth(plain(), "outline", 2, True))
    assert made.outline.nodes[2].smooth and made.outline.nodes[2].handles and made.outline.nodes[1].handles
    assert line_up(made, 2) == pytest.approx(0.0, abs=1e-12)
    into, out = v.sub(made.outline.nodes[2].at, made.outline.nodes[1].handles[1]), v.sub(
        made.outline.nodes[2].handles[0], made.outline.nodes[2].at)
    assert v.unit(into) == pytest.approx((-math.sqrt(0.5), math.sqrt(0.5)))
    assert v.norm(into) == pytest.approx(60.0) and v.norm(out) == pytest.approx(80.0 / 3)


def test_a_corner_again_keeps_the_shape():
    head = curved()
    assert set_smooth(head, "outline", 2, False).outline.nodes[2].handles == head.outline.nodes[2].handles


def test_two_arcs_that_make_a_corner_cannot_become_smooth():
    nodes = (Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0), bulge=0.2), Node(at=(20.0, 50.0), bulge=0.2),
             Node(at=(-20.0, 50.0)))
    with pytest.raises(GeometryError, match="arcs"):
        set_smooth(plain(outline=msg_loop(nodes), slots=(), tuners=(), rows=()), "outline", 2, True)


def test_bending_an_arc_brings_it_through_the_point():
    bent = sound(bend_edge(curved(), "outline", 3, 0.5, (39.0, 172.0)))
    assert edge_of(list(bent.outline.nodes), 3).nearest((39.0, 172.0)) > 0
    arc = edge_of(list(bent.outline.nodes), 3)
    assert v.distance(arc.point(arc.nearest((39.0, 172.0))), (39.0, 172.0)) < 1e-9


@given(steps, st.floats(0.2, 0.8))
def test_bending_a_curve_with_free_ends_brings_it_through_the_point(by, t):
    head = set_smooth(curved(), "outline", 2, False)
    curve = edge_of(list(head.outline.nodes), 2)
    to = v.add(curve.point(t), by)
    bent = edge_of(list(bend_edge(head, "outline", 2, t, to).outline.nodes), 2)
    assert v.distance(bent.point(t), to) < 1e-9


def test_bending_a_straight_edge_moves_it_whole():
    bent = bend_edge(plain(), "outline", 1, 0.5, (44.0, 90.0))
    assert [node.at for node in bent.outline.nodes[1:3]] == [(44.0, 0.0), (44.0, 180.0)]


@given(steps)
def test_bending_symmetrically(by):
    curve = edge_of(list(CURVED.nodes), 2)
    bent = bend_edge(curved(), "outline", 2, 0.4, v.add(curve.point(0.4), by), mirrored=True)
    assert is_symmetric(sound(bent).outline)


def test_a_drawn_slot_is_edited_by_its_id():
    moved = sound(move_node(plain(), "heart", 1, (11.0, 112.0)))
    assert moved.slots[1].shape.loop.nodes[1].at == (11.0, 112.0)
    assert moved.outline is plain().outline


def test_refusals_name_what_is_wrong():
    head = curved()
    for sentence, edit in (
            ("no slot named nowhere", lambda: move_node(head, "nowhere", 0, (0.0, 0.0))),
            ("straight walls", lambda: move_node(head, "treble slot", 0, (0.0, 0.0))),
            ("no node 9", lambda: move_node(head, "outline", 8, (0.0, 0.0))),
            ("no curve", lambda: move_handle(head, "outline", 0, 0, (0.0, 0.0))),
            ("finite", lambda: move_node(head, "outline", 0, (math.nan, 0.0))),
            ("place must be at most 5000 mm", lambda: move_node(head, "outline", 0, (6000.0, 0.0))),
            ("^The outline has more than 20,000 nodes: draw it with fewer.$", lambda: with_loop(head, "outline", 5001 * head.outline.nodes[:4])),
            ("^Slot heart needs at least 2 nodes.$", lambda: with_loop(plain(), "heart", head.outline.nodes[:1])),
            ("no height", lambda: flattened(head))):
        with pytest.raises(GeometryError, match=sentence):
            edit()


def flattened(head):
    from geometry.curves import Matrix
    from geometry.edits import transform_loop
    return transform_loop(head, "outline", Matrix(d=1e-9))


def test_the_nearest_node_is_found():
    assert node_at(curved(), "outline", (39.0, 45.0)) == 2
