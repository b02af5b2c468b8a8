"""Whole loops: mirrored from one half, replaced, moved, scaled, turned."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.curves import Arc, Cubic, circle, stretch, turn
from geometry.edits import (
    make_symmetric,
    mirrored_loop,
    move_loop,
    move_node,
    replace_outline,
    transform_loop,
)
from geometry.edits.loops import flipped, turned_back
from geometry.errors import GeometryError
from geometry.layout import Loop, Node, loop_path
from tests.geometry.edits.heads import BOX, CURVED, curved, demo, plain, sound
from tests.symmetric import is_symmetric


@given(st.integers(0, 7), st.tuples(st.floats(-5, 5), st.floats(-5, 5)))
def test_one_half_makes_the_whole(index, by):
    at = CURVED.nodes[index].at
    bent = move_node(curved(), "outline", index, (at[0] + by[0], at[1] + by[1]))
    made = sound(make_symmetric(bent))
    assert is_symmetric(made.outline)
    kept = at[0] > 0
    target = (at[0] + by[0], at[1] + by[1]) if kept else at
    assert any(math.dist(node.at, (sign * target[0], target[1])) < 1e-9 for node in made.outline.nodes
               for sign in (1, -1))


def test_making_a_symmetric_outline_symmetric_changes_nothing_but_its_first_node():
    for head in (plain(), curved(), demo()):
        made = sound(make_symmetric(head)).outline
        assert len(made.nodes) == len(head.outline.nodes)
        assert loop_path(made).area == pytest.approx(loop_path(head.outline).area, abs=1e-6)
        for node in made.nodes:
            assert any(math.dist(node.at, other.at) < 1e-9 and node.smooth == other.smooth
                       for other in head.outline.nodes)


def test_a_clockwise_outline_keeps_its_treble_half_too():
    clockwise = Loop(nodes=tuple(turned_back(list(BOX.nodes))))
    wider = move_node(plain(outline=clockwise), "outline", 2, (44.0, 180.0))
    made = make_symmetric(wider)
    assert loop_path(made.outline).box == pytest.approx((-44.0, 0.0, 44.0, 180.0))


def test_an_arc_across_the_centreline_stays_one_arc():
    nodes = (Node(at=(-20.0, 0.0)), Node(at=(20.0, 0.0)), Node(at=(20.0, 50.0), bulge=0.5), Node(at=(-20.0, 50.0)))
    made = make_symmetric(plain(outline=Loop(nodes=nodes), slots=(), tuners=(), rows=()))
    assert len(made.outline.nodes) == 4
    assert sum(isinstance(s, Arc) for s in loop_path(made.outline)) == 1


def test_a_half_that_is_not_there_cannot_be_mirrored():
    aside = tuple(Node(at=(node.at[0] + 60, node.at[1])) for node in BOX.nodes)
    with pytest.raises(GeometryError, match="cross the centreline"):
        make_symmetric(plain(outline=Loop(nodes=aside), slots=(), tuners=(), rows=()))
    wild = (Node(at=(-40.0, 0.0)), Node(at=(40.0, 0.0)), Node(at=(40.0, 60.0)), Node(at=(-10.0, 70.0)),
            Node(at=(40.0, 80.0)), Node(at=(40.0, 180.0)), Node(at=(-40.0, 180.0)))
    with pytest.raises(GeometryError, match="strays over"):
        make_symmetric(plain(outline=Loop(nodes=wild)))


def test_a_half_becomes_a_whole_loop():
    half = [Node(at=(20.0, 0.0), bulge=0.1), Node(at=(30.0, 90.0), handles=((30.0, 120.0), (15.0, 150.0))),
            Node(at=(0.0, 150.0))]
    whole = mirrored_loop(half)
    assert len(whole) == 5 and is_symmetric(Loop(nodes=tuple(whole)))
    assert loop_path(Loop(nodes=tuple(whole))).area > 0


def test_walking_backwards_and_mirroring_twice_give_the_same_nodes():
    nodes = list(CURVED.nodes)
    assert turned_back(turned_back(nodes)) == nodes
    assert flipped(flipped(nodes)) == nodes
    assert loop_path(Loop(nodes=tuple(turned_back(nodes)))).area == pytest.approx(-loop_path(CURVED).area)
    assert loop_path(Loop(nodes=tuple(flipped(nodes)))).area == pytest.approx(loop_path(CURVED).area)


def test_a_new_outline_knows_its_smooth_nodes():
    made = sound(replace_outline(plain(), loop_path(CURVED).reversed()))
    assert loop_path(made.outline).area > 0
    assert {node.at for node in made.outline.nodes if node.smooth} == {(40.0, 40.0), (-40.0, 40.0)}
    assert all(node.smooth for node in replace_outline(plain(), circle((0.0, 50.0), 40.0)).outline.nodes)


def test_moving_scaling_turning():
    moved = sound(move_loop(curved(), "outline", (3.0, -2.0)))
    assert loop_path(moved.outline).box == pytest.approx(tuple(
        a + b for a, b in zip(loop_path(CURVED).box, (3.0, -2.0, 3.0, -2.0), strict=True)))
    assert [node.smooth for node in moved.outline.nodes] == [node.smooth for node in CURVED.nodes]
    grown = sound(transform_loop(curved(), "outline", stretch(1.1, 1.1)))
    assert loop_path(grown.outline).area == pytest.approx(1.21 * loop_path(CURVED).area)
    assert any(isinstance(s, Arc) for s in loop_path(grown.outline))
    long = sound(transform_loop(curved(), "outline", stretch(1.0, 1.2)))
    assert loop_path(long.outline).area == pytest.approx(1.2 * loop_path(CURVED).area, rel=1e-6)
    assert all(not isinstance(s, Arc) for s in loop_path(long.outline))
    assert any(isinstance(s, Cubic) for s in loop_path(long.outline))
    turned = sound(transform_loop(plain(), "heart", turn(math.pi / 2, (0.0, 60.0))))
    assert turned.slots[1].shape.loop.nodes[1].at == pytest.approx((-50.0, 70.0))
    for k in (0.0, -1.0, math.nan):
        with pytest.raises(GeometryError, match="flatten or mirror"):
            transform_loop(curved(), "outline", stretch(1.0, k))
