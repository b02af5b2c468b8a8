"""What is typed, nudged or removed on one side happens on the other."""

from itertools import combinations

import pytest
from msgspec.structs import replace

from geometry.edits import (
    add_hole,
    add_node,
    add_pin,
    duplicate,
    free_from_row,
    make_row,
    move_features,
    move_handle,
    move_node,
    new_ids,
    plan_point,
    remove_features,
    remove_node,
    remove_nodes,
    rename,
    set_edge,
    set_edge_length,
    set_field,
    set_pattern,
    set_slot_length,
    set_smooth,
    take_other_hand,
    to_drawn,
)
from geometry.edits.holes import set_retainer, set_there
from geometry.edits.loops import edge_of
from geometry.edits.mirrored import echo_edit
from geometry.errors import GeometryError
from geometry.layout import RowPlace, SingleHole, Slot, StraightSlot, validate
from geometry.solids import holes
from tests.geometry.edits.heads import CURVED, LOPSIDED, SIDE, demo, plain, sound
from tests.symmetric import is_symmetric


def flipped(p):
    return (-p[0], p[1])


def test_a_typed_node_is_followed_by_its_twin():
    head = demo()
    assert is_symmetric(head.outline)
    for edit in (lambda h: move_node(h, "outline", 1, (43.0, 40.0)), lambda h: move_handle(h, "outline", 1, 0, (46.0, 60.0)),
                 lambda h: set_edge(h, "outline", 1, "straight"), lambda h: set_smooth(h, "outline", 2, False),
                 lambda h: remove_node(h, "outline", 2)):
        node = 2 if edit(head) != head and len(edit(head).outline.nodes) < 9 else 1
        made = echo_edit(head, edit(head), ("outline",), node)
        assert made.outline != head.outline
        assert is_symmetric(made.outline), edit


def test_nudged_and_typed_features_are_followed():
    head = demo()
    moved = echo_edit(head, move_features(head, ["treble slot"], (1.0, -2.0)), ["treble slot"])
    a, b = (next(s.shape for s in moved.slots if s.id == id) for id in ("treble slot", "bass slot"))
    assert b.nut_end == pytest.approx(flipped(a.nut_end)) and b.tip_end == pytest.approx(flipped(a.tip_end))
    wide = echo_edit(head, set_field(head, ("slots", "treble slot", "shape", "width"), 12.0), ["treble slot"])
    assert [slot.shape.width for slot in wide.slots] == [12.0, 12.0]
    slid = echo_edit(head, set_field(head, ("tuners", "bass side 1", "place", "along"), 80.0), ["bass side 1"])
    assert slid.tuner("treble side 1").place.along == 80.0


def test_other_hardware_of_a_tuner_is_followed_by_its_mirror_image():
    """A screw to one side comes to the other side of the twin; hardware for the other mount takes the twin along to its own place."""
    head = demo()
    made = echo_edit(head, set_pattern(head, "treble face 2", LOPSIDED), ("treble face 2",))
    assert made.tuner("bass face 2").pattern == f"{LOPSIDED} mirrored"
    screws = {hole.of: drilling.start for hole in holes(made) for drilling in hole.drillings
              if drilling.role == "screw" and hole.of.endswith("face 2")}
    assert screws["bass face 2"][:2] == pytest.approx(flipped(screws["treble face 2"]))
    turned = echo_edit(made, take_other_hand(made, ["treble face 2"]), ("treble face 2",))
    assert [turned.tuner(f"{side} face 2").pattern for side in ("treble", "bass")] == [f"{LOPSIDED} mirrored", LOPSIDED]
    aside = echo_edit(head, set_pattern(head, "treble face 2", SIDE), ("treble face 2",))
    places = [aside.tuner(f"{side} face 2").place for side in ("treble", "bass")]
    assert [place.side for place in places] == ["treble", "bass"] and places[0].along == places[1].along
    one = set_pattern(set_pattern(head, "treble face 2", SIDE), "bass face 2", LOPSIDED)
    assert echo_edit(head, one, ("treble face 2", "bass face 2")) == one, "both in hand go their own ways"


@pytest.mark.parametrize(("ids", "run"), [(("bass side 1", "bass side 2", "bass side 3"), "edge"), (("bass face 1", "bass face 3"), "straight"),
                                          (("bass face 1", "bass face 2", "bass face 3"), "edge")])
@pytest.mark.parametrize("freed", [False, True])
def test_a_row_that_is_made_on_one_side_is_made_on_the_other(ids, run, freed):
    """Of tuners that each sit by themselves, and of those that come out of another row, which keeps the others."""
    head = demo()
    if freed:
        for tuner in [one for one in head.tuners if isinstance(one.place, RowPlace)]:
            head = free_from_row(head, tuner.id)
    made = sound(echo_edit(head, make_row(head, ids, run), ids))
    twins = [id.replace("bass", "treble") for id in ids]
    (own,), (other,) = ({made.tuner(id).place.row for id in side} for side in (ids, twins))
    assert own != other and "treble" in other and made.row(own).spacing == made.row(other).spacing
    for one in made.tuners:
        if one.id.startswith("bass"):
            assert plan_point(made, one.id.replace("bass", "treble")) == pytest.approx(flipped(plan_point(made, one.id)), abs=1e-6)
        if one.id.replace("treble", "bass") not in ids:
            assert plan_point(made, one.id) == pytest.approx(plan_point(head, one.id), abs=1e-6)


def test_a_hole_takes_over_its_twins_diameter_only_when_that_was_changed():
    head = add_hole(add_hole(demo(), (-20.0, 184.0), 3.0), (20.0, 184.0), 4.0)
    one, two = (hole.id for hole in head.holes)
    moved = echo_edit(head, move_features(head, [one], (1.0, 0.0)), [one])
    assert plan_point(moved, two) == (19.0, 184.0) and moved.holes[1].diameter == 4.0
    bored = echo_edit(head, set_field(head, ("holes", one, "diameter"), 5.0), [one])
    assert [hole.diameter for hole in bored.holes] == [5.0, 5.0]


def test_a_hole_that_is_there_or_plugged_has_its_twin_so_too():
    two = replace(demo(), holes=tuple(SingleHole(id=id, at=(x, 30.0), diameter=4.0) for id, x in (("one", -5.0), ("other", 5.0))))
    carrying = set_retainer(two, ("one", "other"), True)
    for before, there, plugged in ((two, True, False), (two, True, True), (carrying, True, True), (set_there(two, ["other"], True, True), True, False)):
        made = validate(echo_edit(before, set_there(before, ["one"], there, plugged), ["one"]))
        one, other = made.holes
        assert (other.there, other.plugged, other.retainer) == (one.there, one.plugged, one.retainer) == (there, plugged, None)


def test_what_is_removed_takes_its_twin_along():
    head = demo()
    made = echo_edit(head, remove_features(head, ["treble side 2"]), ["treble side 2"])
    assert {t.id for t in head.tuners} - {t.id for t in made.tuners} == {"treble side 2", "bass side 2"}
    pin = head.pins[0].id
    assert echo_edit(head, remove_features(head, [pin]), [pin]).pins == head.pins[1:], "it is its own twin"


def test_names_and_new_things_are_left_alone():
    head = demo()
    renamed = rename(head, "tuners", "treble side 2", "my best")
    assert echo_edit(head, renamed, ["treble side 2"]) == renamed
    more = duplicate(head, ["treble side 2"])
    assert len(new_ids(head, echo_edit(head, more, ["treble side 2"]))) == 1


@pytest.mark.parametrize("kind", ["straight", "arc", "curve"])
def test_an_edge_across_the_centreline_becomes_as_long_as_was_typed(kind):
    """Each end goes half of the way: to move one and have the other follow would lengthen it by twice what was typed."""
    head = set_edge(plain(outline=CURVED), "outline", 0, kind, True)
    longer = 1.25 * edge_of(list(head.outline.nodes), 0).length()
    drawn = set_edge_length(head, "outline", 0, longer, True)
    typed = echo_edit(head, set_edge_length(head, "outline", 0, longer), ("outline",), 0)
    for made in (drawn, typed):
        assert edge_of(list(made.outline.nodes), 0).length() == pytest.approx(longer)
        assert [node.at for node in made.outline.nodes[:2]] == [pytest.approx((x, 0.0)) for x in (-25.0, 25.0)]
        assert is_symmetric(sound(made).outline)


def test_nodes_removed_together_leave_both_sides_alike():
    head, tried = plain(outline=CURVED), 0
    for chosen in combinations(range(len(CURVED.nodes)), 2):
        try:
            made = remove_nodes(head, "outline", chosen, True)
        except GeometryError:
            continue  # nothing would be left inside
        assert is_symmetric(made.outline), chosen
        tried += 1
    assert tried > 10
    for node in range(len(CURVED.nodes)):
        alone = echo_edit(head, remove_node(head, "outline", node), ("outline",), node)
        assert is_symmetric(alone.outline) and alone == remove_nodes(head, "outline", (node,), True), node


def test_what_stands_on_the_centreline_is_not_silently_put_back():
    slot = Slot(id="middle", shape=StraightSlot(nut_end=(0.0, 60.0), tip_end=(0.0, 90.0), width=8.0))
    head = sound(add_pin(plain(outline=CURVED, slots=(slot,)), (0.0, 150.0)))
    pin = head.pins[-1].id
    head = add_node(head, "outline", 4, 0.5)
    middle = next(i for i, node in enumerate(head.outline.nodes) if node.at == pytest.approx((0.0, 180.0)))
    for after, held, node in (
            (set_field(head, ("pins", pin, "at"), (3.0, 150.0)), pin, None), (move_features(head, (pin,), (1.0, 0.0)), pin, None),
            (set_field(head, ("slots", "middle", "shape", "nut_end"), (1.0, 60.0)), "middle", None),
            (move_node(head, "outline", middle, (2.0, 180.0)), "outline", middle)):
        with pytest.raises(GeometryError, match="switch Mirrored off"):
            echo_edit(head, after, (held,), node)
    along = echo_edit(head, set_field(head, ("slots", "middle", "shape", "nut_end"), (1.0, 55.0)), ("middle",))
    assert along.slots[0].shape == StraightSlot(nut_end=(0.0, 55.0), tip_end=(0.0, 90.0), width=8.0)
    assert echo_edit(head, head, (pin,)) == head


def test_a_slot_across_the_centreline_stays_even_and_becomes_as_long_as_was_typed():
    slot = Slot(id="across", shape=StraightSlot(nut_end=(-10.0, 60.0), tip_end=(10.0, 60.0), width=6.0))
    head = sound(plain(outline=CURVED, slots=(slot,)))
    longer = echo_edit(head, set_slot_length(head, "across", 36.0), ("across",)).slots[0].shape
    assert (longer.nut_end, longer.tip_end) == ((-15.0, 60.0), (15.0, 60.0))
    typed = echo_edit(head, set_field(head, ("slots", "across", "shape", "tip_end"), (12.0, 60.0)), ("across",)).slots[0].shape
    assert (typed.nut_end, typed.tip_end) == ((-12.0, 60.0), (12.0, 60.0))


def test_a_drawn_slot_in_the_middle_stays_there():
    slot = Slot(id="middle", shape=StraightSlot(nut_end=(0.0, 60.0), tip_end=(0.0, 80.0), width=8.0))
    head, id = sound(to_drawn(plain(outline=CURVED, slots=(slot,)), "middle")), "middle"
    moved = echo_edit(head, move_features(head, (id,), (3.0, 2.0)), (id,))
    assert plan_point(moved, id) == pytest.approx((0.0, 72.0))
