"""Single tuners: free, on an edge, in rows; turn, depth and hardware."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.edits import (
    along_edge,
    free_from_row,
    move_tuner,
    plan_point,
    set_pattern,
    set_place,
    set_turn,
    slide_tuner,
)
from geometry.edits.edge_places import along_for_mark
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, FreePlace, RowPlace
from geometry.solids import frames, holes
from tests.geometry.edits.heads import FACE, SIDE, curved, plain, sound, twelve


def test_a_free_face_tuner_goes_where_it_is_sent():
    moved = sound(move_tuner(plain(), "treble face 1", (25.0, 70.0)))
    assert plan_point(moved, "treble face 1") == (25.0, 70.0)


def test_a_side_tuner_slides_to_the_nearest_point_of_its_edge_and_stays_square_to_it():
    moved = sound(move_tuner(plain(), "treble side 1", (33.0, 120.0)))
    assert along_edge(moved, "treble side 1") == ("treble", pytest.approx(120.0))
    bent = move_tuner(curved(), "treble side 1", (44.0, 90.0))
    frame = frames(bent)["treble side 1"]
    miss = (44.0 - frame.origin[0], 90.0 - frame.origin[1])
    assert frame.u[0] * miss[0] + frame.u[1] * miss[1] == pytest.approx(0.0, abs=1e-6)


def test_dragged_nearer_to_the_other_edge_it_changes_sides():
    assert along_edge(move_tuner(plain(), "treble side 1", (-30.0, 80.0)), "treble side 1") == (
        "bass", pytest.approx(80.0))


def test_a_member_takes_its_straight_row_along():
    moved = sound(move_tuner(plain(), "line 2", (-25.0, 95.0)))
    assert [plan_point(moved, f"line {k}") for k in range(3)] == [
        pytest.approx((-25.0, 45.0)), pytest.approx((-25.0, 70.0)), pytest.approx((-25.0, 95.0))]


def test_a_member_takes_its_row_along_the_edge_and_stays_on_its_side():
    moved = sound(move_tuner(plain(), "flank 1", (30.0, 70.0)))
    assert [along_edge(moved, f"flank {k}") for k in range(3)] == [
        ("bass", pytest.approx(40.0)), ("bass", pytest.approx(70.0)), ("bass", pytest.approx(100.0))]


def test_a_row_is_held_between_nut_line_and_tip():
    far = move_tuner(plain(), "flank 0", (-40.0, 179.0))
    assert along_edge(far, "flank 2") == ("bass", pytest.approx(180.0))
    near = slide_tuner(plain(), "flank 2", 10.0)
    assert along_edge(near, "flank 0") == ("bass", pytest.approx(0.0))


def test_a_face_row_along_an_edge_takes_its_inset_from_the_pointer():
    moved = sound(move_tuner(twelve(), "treble face 2", (30.0, 95.0)))
    assert plan_point(moved, "treble face 2") == pytest.approx((30.0, 95.0), abs=1e-6)
    row = moved.row("treble face")
    assert row.run.inset != twelve().row("treble face").run.inset
    outside = move_tuner(twelve(), "treble face 2", (70.0, 95.0))
    assert outside.row("treble face").run.inset == 0.0


@given(st.floats(-3, 3), st.floats(-20, 20))
def test_there_and_back(dx, dy):
    for id in ("treble face 2", "bass side 3", "treble side 1"):
        x, y = plan_point(twelve(), id)
        there = move_tuner(twelve(), id, (x + dx, y + dy))
        back = move_tuner(there, id, (x, y))
        assert plan_point(back, id) == pytest.approx((x, y), abs=1e-6)


@given(st.sampled_from(["treble side 1", "bass side 3", "treble face 2"]))
def test_freeing_from_a_row_moves_nothing(id):
    before, freed = twelve(), free_from_row(twelve(), id)
    sound(freed)
    assert not isinstance(freed.tuner(id).place, RowPlace)
    for one, two in zip(holes(before), holes(freed), strict=True):
        for a, b in zip(one.drillings, two.drillings, strict=True):
            assert a.start == pytest.approx(b.start, abs=1e-9) and a.direction == pytest.approx(b.direction, abs=1e-12)


def test_the_last_to_leave_takes_the_row_away():
    head = plain()
    for k in range(3):
        assert any(row.id == "line" for row in head.rows)
        head = free_from_row(head, f"line {k}")
    assert [row.id for row in head.rows] == ["flank"]
    with pytest.raises(GeometryError, match="in no row"):
        free_from_row(head, "line 0")


def test_the_mark_on_the_square_edge_leads():
    """Edges that lean out by 1 in 9: the mark lies off the seat by the same slope everywhere."""
    from tests.geometry.drawing.specimens import leaning_head
    head = leaning_head()
    side, along = along_edge(head, "flank")
    moved = sound(slide_tuner(head, "flank", along_for_mark(head, side, 30.0, along)))
    mark = next(d.mark for hole in holes(moved) for d in hole.drillings if d.of == "flank" and d.role == "post")
    assert mark[1] == pytest.approx(30.0, abs=1e-9)


@given(st.floats(45.0, 140.0))
def test_marks_on_curved_edges_follow_the_pointer(y):
    head = free_from_row(twelve(), "treble side 2")
    side, along = along_edge(head, "treble side 2")
    moved = slide_tuner(head, "treble side 2", along_for_mark(head, side, y, along))
    mark = next(d.mark for hole in holes(moved) for d in hole.drillings if d.of == "treble side 2" and d.role == "post")
    assert mark[1] == pytest.approx(y, abs=1e-6)


def test_turn_and_place():
    assert set_turn(plain(), "treble face 1", 45.0).tuner("treble face 1").place.turn == 45.0
    assert set_turn(plain(), "treble face 1", 765.0).tuner("treble face 1").place.turn == 45.0
    assert set_turn(plain(), "treble face 1", None).tuner("treble face 1").place.turn is None
    turned = sound(set_turn(plain(), "line 1", 765.0))
    assert turned.row("line").run.turn == 45.0 and set_turn(turned, "line 0", None) == plain()
    assert set_place(plain(), "treble side 1", EdgePlace(side="bass", along=50.0)).tuner(
        "treble side 1").place.along == 50.0
    slid = slide_tuner(plain(), "treble side 1", 500.0, "bass")
    assert along_edge(slid, "treble side 1") == ("bass", pytest.approx(180.0))


def test_other_hardware_of_the_other_mount_finds_a_place():
    side = sound(set_pattern(plain(), "treble face 1", SIDE))
    assert along_edge(side, "treble face 1") == ("treble", pytest.approx(60.0))
    face = sound(set_pattern(plain(), "treble side 1", FACE))
    inset = plain().pattern(FACE).seat.before + 0.5
    assert plan_point(face, "treble side 1") == pytest.approx((40.0 - inset, 100.0))
    assert sound(set_pattern(plain(), "flank 1", FACE)).tuner("flank 1").place.at[0] == pytest.approx(inset - 40.0)
    assert set_pattern(plain(), "flank 1", "side 10 roller two screws").tuner("flank 1").place == RowPlace(
        row="flank", index=1)


def test_refusals():
    head = plain()
    for sentence, edit in (
            ("no feature", lambda: move_tuner(head, "nobody", (0.0, 0.0))),
            ("no tuner", lambda: move_tuner(head, "pin", (0.0, 0.0))),
            ("finite", lambda: move_tuner(head, "treble face 1", (math.inf, 0.0))),
            ("from its row", lambda: set_turn(twelve(), "treble face 2", 10.0)),
            ("no turn", lambda: set_turn(head, "treble side 1", 10.0)),
            ("no turn", lambda: set_turn(head, "flank 1", 10.0)),
            ("does not follow an edge", lambda: slide_tuner(head, "line 0", 5.0)),
            ("no hardware pattern", lambda: set_pattern(head, "line 0", "none")),
            ("place is on an edge", lambda: set_place(head, "treble side 1", FreePlace(at=(0.0, 0.0)))),
            ("at most 5000 mm", lambda: move_tuner(head, "treble face 1", (9e3, 0.0)))):
        with pytest.raises(GeometryError, match=sentence):
            edit()
