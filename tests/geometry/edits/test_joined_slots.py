"""Slots that overlap become one, along the border of them all and not of chords of it."""

import pytest
import shapely
from msgspec.structs import replace

from geometry.checks import check
from geometry.curves import Line
from geometry.curves.polygons import polygon
from geometry.edits import join_slots
from geometry.edits.mirrored import echo_edit
from geometry.errors import GeometryError
from geometry.layout import Ramp, Slot, StraightSlot, slot_path
from geometry.solids.ramps import ramp_cut
from tests.geometry.checks.heads import drawn, head


def straight(id, one, two, width=12.0, **more):
    return Slot(id=id, shape=StraightSlot(nut_end=one, tip_end=two, width=width), **more)


UP = straight("up", (0.0, 60.0), (0.0, 140.0))


@pytest.mark.parametrize("other, pieces", [
    (straight("other", (-20.0, 130.0), (20.0, 130.0)), 12),
    (straight("other", (0.0, 120.0), (0.0, 160.0)), 4),
    (straight("other", (0.0, 60.0), (0.0, 60.0), 20.0), 5),
    (straight("other", (-10.0, 60.0), (12.0, 140.0), 8.0), None),
])
def test_the_wall_is_the_border_of_both(other, pieces):
    layout = head(slots=(UP, straight("far", (25.0, 60.0), (25.0, 70.0), 6.0), other))
    made = join_slots(layout, ("up", "other"))
    assert [slot.id for slot in made.slots] == ["up", "far"]
    path = slot_path(made.slots[0])
    both = shapely.union(polygon(slot_path(UP), 1e-4), polygon(slot_path(other), 1e-4))
    assert abs(path.area) == pytest.approx(both.area, abs=0.02)
    assert shapely.hausdorff_distance(polygon(path, 1e-4).exterior, both.exterior) < 0.01
    assert not all(isinstance(piece, Line) for piece in path.segments) and (pieces is None or len(path.segments) <= pieces)
    assert not [one for one in check(made).snags if one.kind in ("slots-overlap", "slot-crosses")]


def test_the_ramp_at_the_nut_stays_as_it_is_or_goes():
    """In line, and with a slot to one side farther on, the slot begins where it did; one beside its end would take the ramp along, one
    that leans has its ramp aslant."""
    low, high = Ramp(length=8.0, depth=2.0), Ramp(length=5.0, depth=1.0)
    other, up = straight("other", (0.0, 120.0), (0.0, 160.0), 14.0, ramp=high), replace(UP, ramp=low)
    made, = join_slots(head(slots=(other, up)), ("other", "up")).slots
    assert ramp_cut(made).path().box[:3] == pytest.approx(ramp_cut(up).path().box[:3]) and made.ramp.width == 12.0
    aside = straight("other", (0.0, 130.0), (20.0, 130.0))
    assert ramp_cut(join_slots(head(slots=(up, aside)), ("up", "other")).slots[0]).start == pytest.approx(ramp_cut(up).start)
    beside = straight("other", (0.0, 66.0), (20.0, 66.0))
    assert join_slots(head(slots=(up, beside)), ("up", "other")).slots[0].ramp is None
    leaning = straight("up", (0.0, 60.0), (8.0, 140.0), ramp=low)
    assert join_slots(head(slots=(leaning, aside)), ("up", "other")).slots[0].ramp is None


@pytest.mark.parametrize("others, words", [
    ([straight("b", (20.0, 60.0), (20.0, 140.0))], "do not all overlap"),
    ([], "two slots or more"),
    ([drawn("b", (0.0, 60.0), (20.0, 80.0), (20.0, 60.0), (0.0, 80.0))], "The wall of b crosses itself"),
    ([straight("b", (0.0, 100.0), (10.0, 100.0), depth=8.0)], "not of one depth"),
    ([straight("b", (0.0, 100.0), (10.0, 100.0), there=True)], "there already"),
    ([straight("b", (0.0, 70.0), (25.0, 70.0), 6.0), straight("c", (25.0, 70.0), (25.0, 120.0), 6.0), straight("d", (25.0, 120.0), (0.0, 120.0), 6.0)],
     "shut in wood"),
    ([straight("b", (11.995, 140.0), (11.995, 219.995), 11.99)], "meet too closely"),
])
def test_what_makes_no_slot_is_refused_in_a_sentence(others, words):
    with pytest.raises(GeometryError, match=words):
        join_slots(head(slots=(UP, *others)), ["up", *(one.id for one in others)])


def test_with_mirrored_on_the_slots_of_the_other_side_are_joined_too_and_none_goes_for_nothing():
    """Two on either side; and one on the centreline that is joined to one of two beside it, which has no mirror image."""
    one, two = straight("a", (-15.0, 60.0), (-15.0, 100.0), 8.0), straight("b", (-15.0, 90.0), (-20.0, 140.0), 8.0)
    other, last = straight("c", (15.0, 60.0), (15.0, 100.0), 8.0), straight("d", (15.0, 90.0), (20.0, 140.0), 8.0)
    layout = head(slots=(one, two, other, last))
    made = echo_edit(layout, join_slots(layout, ("a", "b")), ("a", "b"))
    (a, c), alone = made.slots, join_slots(layout, ("c", "d")).slots[2]
    assert (a.id, c.id) == ("a", "c")
    assert abs(slot_path(c).area) == pytest.approx(abs(slot_path(alone).area)) and slot_path(c).box == pytest.approx(slot_path(alone).box)
    beside = [straight(id, (0.0, 100.0), (x, 100.0), 8.0) for id, x in (("left", -20.0), ("right", 20.0))]
    middle = head(slots=(UP, *beside))
    joined = join_slots(middle, ("up", "left"))
    assert echo_edit(middle, joined, ("up", "left")) == joined


@pytest.mark.parametrize("ids", [("up", "right"), ("right", "up"), ("left", "right"), ("right", "left", "up"), ("left", "low", "right")])
def test_with_mirrored_on_slots_joined_across_the_centreline_are_one_and_nothing_follows(ids):
    """One or more are their own mirror images, or one another's: the other side has no others that could be joined alike."""
    layout = head(slots=(UP, straight("left", (-5.0, 60.0), (-5.0, 90.0)), straight("right", (5.0, 60.0), (5.0, 90.0)),
                         straight("low", (-5.0, 85.0), (-9.0, 120.0), 8.0)))
    joined = join_slots(layout, ids)
    assert echo_edit(layout, joined, ids) == joined and ids[0] in [slot.id for slot in joined.slots]
