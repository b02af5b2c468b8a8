"""Rows and even spacing."""

import pytest

from geometry.edits import add_pin, align, along_edge, free_from_row, make_row, plan_point, set_row_spacing, spread
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, FreePlace, RowPlace, Tuner
from tests.geometry.edits.heads import FACE, SIDE, curved, plain, sound, twelve


def faces(*points, head=plain):
    return head(rows=(), tuners=tuple(Tuner(id=f"t {k}", pattern=FACE, place=FreePlace(at=at))
                                      for k, at in enumerate(points)))


def sides(*alongs, head=curved):
    return head(rows=(), tuners=tuple(Tuner(id=f"s {k}", pattern=SIDE, place=EdgePlace(side="treble", along=along))
                                      for k, along in enumerate(alongs)))


def test_a_straight_row_keeps_its_first_and_last_member():
    head = faces((25.0, 110.0), (28.0, 50.0), (20.0, 70.0))
    made = sound(make_row(head, ("t 0", "t 1", "t 2"), "straight"))
    assert made.rows[0].id == "treble face"
    assert plan_point(made, "t 1") == pytest.approx((28.0, 50.0))
    assert plan_point(made, "t 2") == pytest.approx((26.5, 80.0))
    assert plan_point(made, "t 0") == pytest.approx((25.0, 110.0))
    assert made.rows[0].spacing == pytest.approx((9 + 3600) ** 0.5 / 2)


def test_a_row_along_the_edge():
    made = sound(make_row(sides(120.0, 40.0, 70.0), ("s 0", "s 1", "s 2")))
    assert [along_edge(made, f"s {k}")[1] for k in range(3)] == pytest.approx([120.0, 40.0, 80.0])
    face = sound(make_row(faces((25.0, 50.0), (31.0, 120.0), (28.0, 60.0)), ("t 0", "t 1", "t 2"), "edge"))
    assert face.rows[0].run.inset == pytest.approx(12.0)
    assert plan_point(face, "t 2") == pytest.approx((28.0, 85.0))


def test_members_of_an_old_row_leave_it():
    made = sound(make_row(plain(), ("line 0", "line 1", "line 2"), "edge"))
    assert "line" not in [row.id for row in made.rows]
    assert all(made.tuner(f"line {k}").place == RowPlace(row="bass face", index=k) for k in range(3))


def test_spacing_from_the_first_place():
    made = sound(set_row_spacing(plain(), "line", 20.0))
    assert [plan_point(made, f"line {k}")[1] for k in range(3)] == pytest.approx([40.0, 60.0, 80.0])
    edge = sound(set_row_spacing(plain(), "flank", 25.0))
    assert along_edge(edge, "flank 2")[1] == 80.0 and along_edge(edge, "flank 0")[1] == 30.0


def test_spreading_by_arc_length():
    made = sound(spread(sides(40.0, 45.0, 60.0, 130.0), ("s 2", "s 0", "s 1", "s 3")))
    assert [along_edge(made, f"s {k}")[1] for k in range(4)] == pytest.approx([40.0, 70.0, 100.0, 130.0])


def test_spreading_face_tuners_along_the_edge_keeps_their_insets():
    made = sound(spread(faces((25.0, 40.0), (30.0, 50.0), (20.0, 120.0)), ("t 0", "t 1", "t 2")))
    assert plan_point(made, "t 1") == pytest.approx((30.0, 80.0))
    line = sound(spread(faces((25.0, 40.0), (30.0, 50.0), (20.0, 120.0)), ("t 0", "t 1", "t 2"), "line"))
    assert plan_point(line, "t 1") == pytest.approx((22.5, 80.0))


def test_alignment():
    head = faces((25.0, 40.0), (30.0, 50.0))
    assert plan_point(sound(align(head, ("t 0", "t 1"), "x")), "t 1") == (25.0, 50.0)
    assert plan_point(align(head, ("t 1", "t 0"), "y"), "t 0") == (25.0, 50.0)
    side = sound(align(add_pin(sides(60.0), (0.0, 90.0)), ("pin 1", "s 0"), "y"))
    assert plan_point(side, "s 0")[1] == pytest.approx(90.0)


def test_refusals():
    head = twelve()
    freed = free_from_row(head, "treble side 1")
    for sentence, edit in (
            ("at least two", lambda: make_row(head, ("treble side 1",))),
            ("cannot share", lambda: make_row(head, ("treble side 1", "treble face 1"))),
            ("both edges", lambda: make_row(head, ("treble side 1", "bass side 1"))),
            ("follows the edge", lambda: make_row(head, ("treble side 1", "treble side 2"), "straight")),
            ("one place", lambda: make_row(faces((1.0, 50.0), (1.0, 50.0)), ("t 0", "t 1"), "straight")),
            ("at least three", lambda: spread(head, ("treble side 1", "treble side 2"))),
            ("free it first", lambda: spread(head, ("treble side 1", "treble side 2", "treble side 3"))),
            ("free it first", lambda: align(head, ("treble side 1",), "y")),
            ("cannot be moved across", lambda: align(freed, ("treble side 1",), "x")),
            ("does not come to 1000 mm along", lambda: align(add_pin(freed, (0.0, 1000.0)), ("pin 1", "treble side 1"), "y")),
            ("no single point", lambda: align(head, ("bass slot",), "x")),
            ("no row named", lambda: set_row_spacing(head, "nothing", 3.0)),
            ("spacing must be above 0", lambda: set_row_spacing(head, "treble side", 0.0))):
        with pytest.raises(GeometryError, match=sentence):
            edit()
