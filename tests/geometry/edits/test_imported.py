"""What a drawing brings into a layout is never more than a file may hold: else it could be saved, and never be read again."""

import math

import pytest
from msgspec.structs import replace

from app.formats import headstock
from geometry.curves import Arc, Line, Matrix, Path, circle
from geometry.edits import add_hole, add_truss_rod_pocket, set_field
from geometry.edits.imported import layout_from, with_shape
from geometry.edits.imported_openings import there_told, with_more
from geometry.edits.rack import choose_route
from geometry.errors import GeometryError
from geometry.layout import Note, Ramp, loop_path, slot_path
from geometry.terms import HOLE_THERE, POCKET
from tests.property.layouts import DEMO

OUTLINE = (loop_path(DEMO.outline), "outline")
AS_IT_IS = Matrix(1.0, 0.0, 0.0, 1.0, 0.0, 0.0)


def far(role):
    return circle((6000.0, 50.0), 4.0), role


@pytest.mark.parametrize(("loops", "place", "words"), [
    ([OUTLINE], Matrix(1.0, 0.0, 0.0, 40.0, 0.0, 0.0), "far more than a headstock"),
    ([OUTLINE], Matrix(1.0, 0.0, 0.0, 1.0, 0.0, 4900.0), "The outline: .* at most 5000"),
    ([OUTLINE, far("slot")], AS_IT_IS, "at most 5000"),
    ([OUTLINE, far("hole")], AS_IT_IS, "at most 5000"),
])
def test_what_is_too_far_away_is_refused(loops, place, words):
    with pytest.raises(GeometryError, match=words):
        with_shape(DEMO, loops, place, openings=True)
    with pytest.raises(GeometryError, match=words):
        layout_from(loops, place, "Head")


def test_what_is_taken_can_be_read_again():
    for made in (with_shape(DEMO, [OUTLINE], AS_IT_IS, openings=False), with_shape(DEMO, [OUTLINE], AS_IT_IS, openings=True),
                 layout_from([OUTLINE], AS_IT_IS, "Head")):
        assert headstock.decode(headstock.encode(made)) == made
    assert with_shape(DEMO, [OUTLINE], AS_IT_IS, openings=False).slots == DEMO.slots


def there(layout):
    return [one for one in (*layout.slots, *layout.holes) if one.there]


@pytest.fixture(scope="module")
def pocketed():
    made = add_hole(add_truss_rod_pocket(DEMO), (0.0, 180.0), 6.0)
    return replace(made, holes=(*made.holes[:-1], replace(made.holes[-1], there=True, depth=8.0)))


def test_what_is_there_already_stays_where_the_drawing_brings_nothing_of_its_kind(pocketed):
    loops = [OUTLINE, (circle((0.0, 100.0), 4.0), "slot"), (circle((0.0, 140.0), 4.0), "hole")]
    made = with_shape(pocketed, loops, AS_IT_IS, openings=True)
    assert there(made) == there(pocketed) and [one.id for one in there(made)] == ["truss rod pocket", pocketed.holes[-1].id]
    assert len(made.slots) == 2 and len(made.holes) == 2 and made.tuners == pocketed.tuners
    assert there_told(loops, AS_IT_IS, pocketed) == [
        f"truss rod pocket, {pocketed.holes[-1].id} are there already and stay as they are: the drawing has nothing in their place."]
    assert there_told(loops, AS_IT_IS) == [], "nothing stays of what was open when a new layout is made"


def test_pockets_of_the_drawing_take_the_place_of_those_that_were_there(pocketed):
    other = circle((0.0, 5.0), 7.0)
    made = with_shape(pocketed, [OUTLINE, (other, POCKET)], AS_IT_IS, openings=True)
    (pocket,) = made.slots
    assert (pocket.id, pocket.there, pocket.depth) == ("pocket 1", True, None) and slot_path(pocket).box == other.box
    assert [hole.there for hole in made.holes] == [True], "a plugged hole is no pocket: the drawing had none"
    told = there_told([OUTLINE, (other, POCKET)], AS_IT_IS, pocketed)
    assert told[0].startswith(pocketed.holes[-1].id) and "counts as through" in told[1]


def test_what_is_drawn_as_it_was_keeps_its_name_depth_and_ramp(pocketed):
    """Moved by a hair less than a gap that is closed unasked, it is the same; by more it is another pocket, and a slot drawn anew."""
    ramped = replace(pocketed, slots=(replace(pocketed.slots[0], ramp=Ramp(length=12.0, depth=6.0)), *pocketed.slots[1:]))
    roles = [(slot_path(slot), POCKET if slot.there else "slot") for slot in reversed(ramped.slots)]
    roles += [(circle(hole.at, hole.diameter / 2), HOLE_THERE if hole.there else "hole") for hole in ramped.holes]
    same = with_shape(ramped, [OUTLINE, *roles], AS_IT_IS, openings=True)
    assert same.slots == ramped.slots and same.holes == ramped.holes
    assert there_told(roles, AS_IT_IS, ramped) == [], "its depth is known"
    near, far = (with_shape(ramped, [OUTLINE, *roles], Matrix(1.0, 0.0, 0.0, 1.0, by, 0.0), openings=True) for by in (0.009, 0.02))
    assert set(near.slots) == set(ramped.slots)
    first, second = (slot.id for slot in ramped.slots[:2])
    assert {slot.id for slot in far.slots} == {"pocket 1", first, second}
    assert next(slot.ramp for slot in far.slots if slot.id == first) == Ramp(length=12.0, depth=6.0)


def test_a_slot_drawn_anew_keeps_what_was_noted_and_chosen_of_it():
    """Who mends the drawing and reads it again has moved a slot by 3 mm, made it longer and left the other out."""
    first, second = DEMO.slots
    noted = replace(DEMO, notes=(Note(on=first.id, text="grain"), Note(on=second.id, text="knot")))
    for slot in (first, second):
        noted = choose_route(noted, slot.id, ((noted.rack.bits[0].id, None),))
    wall = slot_path(replace(first, shape=replace(first.shape, tip_end=(first.shape.tip_end[0], first.shape.tip_end[1] + 9.0))))
    made = with_shape(noted, [OUTLINE, (wall.mapped(Matrix(e=3.0)), "slot")], AS_IT_IS, openings=True)
    assert [slot.id for slot in made.slots] == [first.id] and slot_path(made.slots[0]).box == pytest.approx(wall.mapped(Matrix(e=3.0)).box)
    assert made.notes == (Note(on=first.id, text="grain"), Note(text=f"{second.id}: knot"))
    assert [route.of for route in made.routes] == [first.id]


@pytest.mark.parametrize(("by", "size", "kept"), [(2.0, 8.0, True), (2.0, 9.5, True), (4.5, 8.0, False), (0.0, 20.0, False)])
def test_a_hole_drawn_anew_keeps_its_name_and_depth(by, size, kept):
    name = "hole 1"
    made = set_field(add_hole(DEMO, (0.0, 120.0), 8.0), ("holes", name, "depth"), 5.0)
    made = with_shape(made, [OUTLINE, (circle((by, 120.0), size / 2), "hole")], AS_IT_IS, openings=True)
    (hole,) = made.holes
    assert (hole.at, hole.diameter) == (pytest.approx((by, 120.0)), pytest.approx(size))
    assert (hole.depth == 5.0) is kept and (not kept or hole.id == name)


def test_what_is_drawn_twice_has_two_names(pocketed):
    loops = [OUTLINE, *[(slot_path(pocketed.slots[0]), "slot")] * 2]
    made = with_shape(pocketed, loops, AS_IT_IS, openings=True)
    assert [slot.id for slot in made.slots] == [pocketed.slots[0].id, "truss rod pocket", "slot 1"]


def test_a_slot_where_a_pocket_was_is_routed(pocketed):
    """Its maker said so: it is no more the pocket, with the pocket's depth."""
    loops = [OUTLINE, (slot_path(pocketed.slots[-1]), "slot"), (circle((0.0, 60.0), 3.0), POCKET)]
    slot = with_shape(pocketed, loops, AS_IT_IS, openings=True).slots[0]
    assert (slot.id, slot.there, slot.depth) == ("slot 1", False, None)


def test_what_is_seen_where_the_wood_has_it_already_is_that_very_one(pocketed):
    near = circle(tuple(c + 0.2 for c in pocketed.holes[-1].at), 3.1)
    made = with_more(pocketed, [(near, "hole"), (slot_path(pocketed.slots[-1]), "slot"), (circle((0.0, 140.0), 4.0), "hole")])
    assert there(made) == there(pocketed) and made.slots == pocketed.slots
    assert [hole for hole in made.holes if not hole.there and hole not in pocketed.holes] == [made.holes[-1]] and made.holes[-1].at == (0.0, 140.0)


def test_a_slot_that_is_seen_a_little_off_is_that_very_one_with_its_name_and_depth(pocketed):
    old = replace(pocketed.slots[0], depth=9.0)
    layout = replace(pocketed, slots=(old, *pocketed.slots[1:]))
    seen = slot_path(old).mapped(Matrix(1.0, 0.0, 0.0, 1.0, 0.3, 0.0))
    made = with_more(layout, [(seen, "slot")])
    assert [slot.id for slot in made.slots] == [slot.id for slot in layout.slots] and made.slots[1:] == layout.slots[1:]
    assert made.slots[0].depth == 9.0 and slot_path(made.slots[0]).box[0] == pytest.approx(seen.box[0])


def test_what_meets_without_a_corner_in_the_drawing_stays_so_under_the_hand():
    """As of a traced outline: a handle that is dragged turns the one on the other side with it."""
    round_end = Path((Line((20, 0), (20, 60)), Arc((0, 60), 20, 0, math.pi, (20, 60), (-20, 60)),
                      Line((-20, 60), (-20, 0)), Line((-20, 0), (20, 0))), True)
    drop = Path((Line((8, 20), (8, 40)), Arc((0, 40), 8, 0, math.pi, (8, 40), (-8, 40)),
                 Line((-8, 40), (0, 10)), Line((0, 10), (8, 20))), True)
    made = layout_from([(round_end, "outline"), (drop, "slot")], AS_IT_IS, "x")
    assert [node.smooth for node in made.outline.nodes] == [False, True, True, False]
    assert [node.at for node in made.slots[0].shape.loop.nodes if node.smooth] == [(8.0, 40.0)]
