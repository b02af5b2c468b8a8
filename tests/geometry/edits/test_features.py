"""Adding, removing, duplicating, moving, copying a side, mirroring, and symmetric editing of features."""

import math

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.edits import (
    add_hole,
    add_pin,
    add_tuner,
    along_edge,
    copy_side,
    duplicate,
    echo_features,
    mirror_copies,
    mirror_layout,
    move_features,
    move_slot_end,
    new_ids,
    plan_point,
    remove_features,
    side_features,
    twin_feature,
)
from geometry.errors import GeometryError
from geometry.layout import Book, Done, Ear, FreePlace, Note, Task, Time, feature_ids
from geometry.solids import frames, holes
from tests.geometry.edits.heads import FACE, LOPSIDED, SIDE, curved, demo, plain, sound, twelve


def test_new_features_get_names_and_places():
    face = sound(add_tuner(plain(), FACE, (-20.0, 90.0)))
    assert new_ids(plain(), face) == ("bass face 1",)
    assert face.tuners[-1].place == FreePlace(at=(-20.0, 90.0)) and face.tuners[-1].winds == "treble"
    side = sound(add_tuner(face, SIDE, (33.0, 120.0)))
    assert new_ids(face, side) == ("treble side 2",)
    assert along_edge(side, "treble side 2") == ("treble", pytest.approx(120.0))
    assert new_ids(side, add_pin(side, (0.0, 100.0))) == ("pin 1",)
    holed = sound(add_hole(side, (0.0, 100.0), 4.0))
    assert holed.holes[-1].depth is None
    with pytest.raises(GeometryError, match="Hole 1: diameter must be above 0"):
        add_hole(side, (0.0, 100.0), 0.0)


@pytest.mark.parametrize("of", ["done", "times"])
def test_what_is_set_anew_has_not_the_name_of_what_was_drilled_and_removed(of):
    """A hole in the wrong place is drilled and taken out of the plan: the one that takes its place is still to be drilled."""
    head = add_pin(add_hole(plain(), (0.0, 100.0), 4.0), (0.0, 120.0))
    tasks = [Task(operation="bore hole 1.1", features=("hole 1",)), Task(operation="pin hole pin 1.1", features=("pin 1",))]
    book = (Book(done=tuple(Done(piece="practice", task=task) for task in tasks)) if of == "done" else
            Book(times=tuple(Time(piece="real", task=task, minutes=3.0) for task in tasks)))
    gone = remove_features(replace(head, book=book), ("hole 1", "pin 1"))
    made = sound(add_hole(add_pin(gone, (0.0, 120.0)), (10.0, 100.0), 4.0))
    assert new_ids(gone, made) == ("pin 2", "hole 2")
    assert new_ids(made, duplicate(made, ("hole 2",))) == ("hole 3",)


def test_removing_keeps_what_was_noted():
    head = plain(notes=(Note(on="pin", text="bound too tight"), Note(text="cut in oak")))
    made = sound(remove_features(head, ("pin", "line 0", "line 1", "line 2", "heart")))
    assert made.notes[0] == Note(on=None, text="pin: bound too tight")
    assert [row.id for row in made.rows] == ["flank"]
    assert "heart" not in feature_ids(made)
    with pytest.raises(GeometryError, match="no feature named pin"):
        remove_features(made, ("pin",))
    for what, why in (("outline", "outline stays"), ("nut", "Nut and blank stay"), ("blank", "Nut and blank stay")):
        with pytest.raises(GeometryError, match=why):
            remove_features(head, ("pin", what))


def test_duplicates():
    made = sound(duplicate(plain(ears=(Ear(id="ear", side="treble", width=5.0, start=0.0, end=90.0),)),
                           ("treble slot", "treble face 1", "treble side 1", "flank 2", "pin", "peep", "ear")))
    assert new_ids(plain(), made) == ("ear", "ear 2", "treble slot 2", "treble face 2", "treble side 2", "flank 3",
                                      "pin 2", "peep 2")
    assert plan_point(made, "treble face 2") == (35.0, 65.0)
    assert along_edge(made, "treble side 2") == ("treble", pytest.approx(100.0 + 24.5))
    assert made.tuner("flank 3").place.index == 3
    assert made.tuner("treble face 2").string is None
    end = duplicate(plain(), ("treble side 1",))
    for _ in range(4):
        end = duplicate(end, (end.tuners[-1].id,))
    assert all(0 <= along_edge(end, t.id)[1] <= 180.0 for t in end.tuners if along_edge(end, t.id))


def test_nudging_moves_each_as_it_can():
    made = sound(move_features(plain(), ("treble face 1", "treble side 1", "treble slot", "line 0", "line 1", "pin"), (2.0, 3.0)))
    assert plan_point(made, "treble face 1") == (32.0, 63.0)
    assert along_edge(made, "treble side 1") == ("treble", pytest.approx(103.0))
    assert plan_point(made, "line 0") == pytest.approx((-26.0, 43.0))
    assert plan_point(made, "pin") == (2.0, 28.0)
    assert move_features(plain(), ("outline", "pin"), (0.0, 1.0)).outline.nodes[2].at == (40.0, 181.0)
    eared = plain(ears=(Ear(id="ear", side="treble", width=5.0, start=0.0, end=90.0),))
    assert move_features(eared, ("ear",), (2.0, 3.0)).ears[0].start == 3.0


@given(st.floats(-8, 8), st.floats(-8, 8))
def test_moving_there_and_back(dx, dy):
    ids = ("treble face 1", "treble slot", "heart", "line 1", "pin", "peep")
    back = move_features(move_features(plain(), ids, (dx, dy)), ids, (-dx, -dy))
    for id in ids:
        assert plan_point(back, id) == pytest.approx(plan_point(plain(), id), abs=1e-9)


def test_copying_a_side_makes_its_mirror_image():
    made = sound(copy_side(twelve(), "treble", "bass"))
    assert sorted(feature_ids(made)) == sorted(feature_ids(twelve()))
    for id in side_features(twelve(), "treble"):
        twin = twin_feature(made, id)
        assert twin is not None and twin.startswith("bass")
    strings = [tuner.string for tuner in made.tuners]
    assert sorted(strings, key=int) == [str(k) for k in range(1, 13)]


def test_lopsided_hardware_is_copied_as_its_counterpart():
    head = sound(copy_side(add_tuner(plain(), LOPSIDED, (25.0, 120.0)), "treble", "bass"))
    copy = head.tuner(new_ids(plain(), head)[0] if "bass face 1" not in feature_ids(head) else "bass face 1")
    mirrored = [tuner for tuner in head.tuners if tuner.pattern == f"{LOPSIDED} mirrored"]
    assert len(mirrored) == 1 and copy is not None
    own, other = head.pattern(LOPSIDED), head.pattern(f"{LOPSIDED} mirrored")
    assert {bore.at for bore in other.bores} == {(bore.at[0], -bore.at[1]) for bore in own.bores}
    starts = {}
    for hole in holes(head):
        for d in hole.drillings:
            if d.role == "screw" and d.of in ("treble face 2", mirrored[0].id):
                starts[d.of] = d.start
    assert starts["treble face 2"][0] == pytest.approx(-starts[mirrored[0].id][0])
    assert starts["treble face 2"][1] == pytest.approx(starts[mirrored[0].id][1])


def test_mirroring_for_the_other_hand_twice_is_the_same():
    eared = plain(ears=(Ear(id="treble ear", side="treble", width=5.0, start=0.0, end=90.0),),
                  notes=(Note(on="treble slot", text="mind the grain"),))
    for head in (demo(), twelve(), plain(), curved(), eared):
        assert mirror_layout(mirror_layout(head)) == head
        sound(mirror_layout(head))
    assert mirror_layout(eared).notes[0].on == "bass slot"
    assert mirror_layout(eared).blank.bass == eared.blank.treble


def test_mirroring_mirrors_every_hole_and_keeps_its_string():
    for head in (demo(), twelve(), plain()):
        other = mirror_layout(head)
        before, after = ([d for hole in holes(one) for d in hole.drillings] for one in (head, other))
        assert len(before) == len(after)
        for a in before:
            flipped = (-a.start[0], a.start[1], a.start[2])
            assert any(math.dist(flipped, b.start) < 1e-6 and a.diameter == b.diameter
                       and b.direction == pytest.approx((-a.direction[0], *a.direction[1:]), abs=1e-9) for b in after)
        assert [t.string for t in other.tuners] == [t.string for t in head.tuners]
        assert [s.id for s in other.strings] == [s.id for s in reversed(head.strings)]


@given(st.floats(-4, 4), st.floats(-8, 8), st.sampled_from(["treble face 2", "bass side 1", "treble slot"]))
def test_symmetric_editing_of_features(dx, dy, id):
    moved = move_features(twelve(), (id,), (dx, dy))
    both = sound(echo_features(twelve(), moved, (id,)))
    twin = twin_feature(twelve(), id)
    assert twin_feature(both, id) == twin
    assert plan_point(both, id) == plan_point(moved, id)
    if "face" in id or "side" in id:
        a, b = frames(both)[id], frames(both)[twin]
        assert (-a.origin[0], a.origin[1]) == pytest.approx(b.origin[:2], abs=1e-6)


def test_what_stands_on_the_centreline_stays_on_it():
    moved = move_features(twelve(), ("nut pin",), (3.0, 2.0))
    assert plan_point(echo_features(twelve(), moved, ("nut pin",)), "nut pin") == (0.0, 28.0)
    slot = move_slot_end(twelve(), "treble slot", "tip", (15.0, 150.0))
    assert echo_features(twelve(), slot, ("treble slot",)).slots[0].shape.tip_end == (-15.0, 150.0)


def test_copies_of_some_members_of_a_row():
    made = sound(mirror_copies(plain(), ("line 0", "line 2")))
    added = [made.tuner(id) for id in new_ids(plain(), made)]
    assert [t.place.index for t in added] == [0, 2] and added[0].place.row == "line 2"
    assert plan_point(made, added[0].id) == pytest.approx((28.0, 40.0))


def test_a_side_with_nothing_on_it():
    bare = msgspec.structs.replace(plain(), tuners=(), rows=(), slots=(), pins=(), holes=())
    with pytest.raises(GeometryError, match="nothing on the bass side"):
        copy_side(bare, "bass", "treble")
    with pytest.raises(GeometryError, match="other side"):
        copy_side(plain(), "bass", "bass")
