"""Several nodes of the outline in hand: held with Shift or a frame, dragged, aligned, removed together."""

import math

import pytest

from app.tools import Options
from app.tools.hold import hold
from geometry.edits import align_nodes, remove_nodes
from geometry.errors import GeometryError
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import demo, plain
from tests.symmetric import is_symmetric

FREE = {"snapping": False, "shape": True}


def hand(head, held=("outline",), **options) -> TestHand:
    return TestHand(hold(head, held, Options(**FREE, **options)), head)


def test_shift_adds_a_node_and_takes_it_away_again():
    head = plain()
    one, two = head.outline.nodes[2].at, head.outline.nodes[3].at
    done = hand(head, nodes=(2,)).click(*two, shift=True)
    assert (done.held, done.node, done.nodes) == (("outline",), 3, (2, 3))
    done = hand(head, nodes=(2, 3)).click(*one, shift=True)
    assert done.node == 3 and done.nodes == ()
    assert hand(head, nodes=(2, 3)).click(*one).nodes == (), "a plain press holds one alone"


def test_dragging_one_of_them_moves_all_by_the_same():
    head = plain()
    a, b = head.outline.nodes[2].at, head.outline.nodes[3].at
    done = hand(head, nodes=(2, 3)).drag(a, (a[0] + 3, a[1] + 5))
    assert done.name == "Move 2 nodes" and done.nodes == (2, 3)
    moved = done.layout.outline.nodes
    assert moved[2].at == pytest.approx((a[0] + 3, a[1] + 5)) and moved[3].at == pytest.approx((b[0] + 3, b[1] + 5))
    assert moved[0] == head.outline.nodes[0] and moved[1] == head.outline.nodes[1]


def test_mirrored_both_sides_of_two_nodes_follow():
    head = demo()
    a = head.outline.nodes[2].at
    done = hand(head, nodes=(2, 3), mirrored=True).drag(a, (a[0] + 2, a[1] - 4))
    assert is_symmetric(done.layout.outline)
    assert done.layout.outline.nodes[2].at == pytest.approx((a[0] + 2, a[1] - 4))


def test_a_typed_place_moves_all_along():
    head = plain()
    a, b = head.outline.nodes[2].at, head.outline.nodes[3].at
    grabbed = hand(head, nodes=(2, 3))
    grabbed.press(*a)
    grabbed.move(a[0] + 1, a[1])
    done = grabbed.type(f"{a[0] + 2}; {a[1] + 2}")
    assert done.layout.outline.nodes[3].at == pytest.approx((b[0] + 2, b[1] + 2))


def test_a_frame_holds_the_nodes_in_it():
    head = plain()
    done = hand(head).drag((60.0, 190.0), (-60.0, 170.0))
    assert done.held == ("outline",) and set(done.nodes) == {2, 3}
    assert done.layout is head


def test_escape_gives_back_the_very_same_layout():
    head = plain()
    a = head.outline.nodes[2].at
    grabbed = hand(head, nodes=(2, 3))
    grabbed.press(*a)
    grabbed.move(a[0] + 7, a[1])
    assert grabbed.running.cancel() is head


def test_removed_and_aligned():
    head = demo()
    assert len(remove_nodes(head, "outline", (2, 3)).outline.nodes) == 7
    both = remove_nodes(head, "outline", (2,), mirrored=True)
    assert len(both.outline.nodes) == 7 and is_symmetric(both.outline)
    level = align_nodes(head, "outline", (2, 3), "y")
    assert level.outline.nodes[3].at[1] == level.outline.nodes[2].at[1] == head.outline.nodes[2].at[1]
    assert math.isclose(align_nodes(head, "outline", (2, 3), "x").outline.nodes[3].at[0], head.outline.nodes[2].at[0])
    with pytest.raises(GeometryError):
        align_nodes(head, "outline", (2, 99), "x")
