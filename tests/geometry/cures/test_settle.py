"""How the search for a cure begins and what it says when no move could be made, on snags that no check finds: any move cures them."""

import math
import re
import sys

import pytest
from msgspec.structs import replace

from geometry.checks import CheckResult, Snag, check
from geometry.checks.moves import Change, Move, Shift, Slide, Stretch, Swap
from geometry.checks.snags import TIGHT
from geometry.cures import apply_cure, carried_out, settle, touched, with_cures
from geometry.cures.tracks import tracks
from geometry.errors import GeometryError
from geometry.layout import Ear, Headstock, Margins, Pin, SingleHole, Slot, StraightSlot
from geometry.layout.book import Book, Done, Shaped, Task
from geometry.solids.spots import set_down
from tests.geometry.checks.heads import FACE, PINS, SIDE, drawn, face, head, post_head, side, slot

ASIDE = Snag("aside", TIGHT, ("pin",), (0.0, 60.0, 0.0), 4.0, 9.0, "Too far aside.", "Do something.")


@pytest.mark.parametrize(("unit", "needed", "least"), [("mm", 9.0, 5.0), ("mm", 5.1, 1.1), ("degrees", 9.0, 0.1)])
def test_a_move_begins_with_what_lacks_in_mm_and_small_where_that_is_an_angle(unit, needed, least):
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))
    move = settle(layout, check(layout), replace(ASIDE, unit=unit, needed=needed)).move
    assert isinstance(move, Shift) and max(map(abs, move.by)) == pytest.approx(least)


def test_a_move_grows_until_it_does_it_and_is_then_no_longer_than_it_takes():
    """A stand-in for the checks, which has the pin clear from 13.37 mm aside on: told in tenths that is 13.4."""
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))

    class Checker:
        def check(self, moved: Headstock) -> CheckResult:
            far = math.dist(moved.pins[0].at, layout.pins[0].at)
            return replace(result, snags=() if far >= 13.37 else (replace(ASIDE, measured=4.0 + far / 10),))
    result = replace(check(layout), snags=(ASIDE,))
    assert max(map(abs, settle(layout, result, ASIDE, Checker()).move.by)) == pytest.approx(13.4)


def test_with_its_twin_moved_too_a_move_has_to_do_on_both_sides():
    """By hand: an old hole leaves 1 beside `a`, and 3 are wanted: 2 to the bass side do it. There an old hole stands 3 beside its twin."""
    holes = [("a", (20.0, 60.0), 8.0, False), ("twin", (-20.0, 60.0), 8.0, False), ("old", (28.0, 60.0), 6.0, True), ("other", (-10.0, 60.0), 6.0, True)]
    layout = head(holes=tuple(SingleHole(id=id, at=at, diameter=wide, there=there) for id, at, wide, there in holes))
    result = check(layout)
    snag = next(one for one in result.snags if set(one.between) == {"a", "old"})
    alone, both = settle(layout, result, snag), settle(layout, result, snag, mirrored=True)
    assert alone.move == Shift("a", (-2.0, 0.0)) and both.move is not None
    assert alone.cure == "Move a by 2.0 mm to the bass side." and both.cure.endswith(", and the other side alike.")
    after = apply_cure(layout, both, mirrored=True)
    here, there = after.holes[:2]
    assert there.at == (-here.at[0], here.at[1]) and here.at != layout.holes[0].at
    assert not any({"a", "twin"} & set(one.between) for one in check(after).snags if one.grade != "note")
    assert any({"twin", "other"} <= set(one.between) for one in check(apply_cure(layout, alone, mirrored=True)).snags), "the other one would not do"


def test_with_mirrored_on_a_pin_on_the_centreline_goes_along_it_and_no_more_is_told():
    """An old hole of 3 stands 3.6 aslant of a pin of 5."""
    layout = head(pins=(Pin(id="p", at=(0.0, 60.0), diameter=5.0), PINS[1]), holes=(SingleHole(id="old", at=(3.0, 62.0), diameter=3.0, there=True),))
    result = check(layout)
    snag = settle(layout, result, next(one for one in result.snags if set(one.between) == {"p", "old"}), mirrored=True)
    (x, y), (by_x, by_y) = apply_cure(layout, snag, mirrored=True).pins[0].at, snag.move.by
    assert (x, y) == (by_x, 60.0 + by_y) and x == 0.0 > by_y and snag.cure.endswith("mm to the nut.")


def test_with_mirrored_on_it_is_told_that_a_slot_across_the_centreline_gives_at_both_ends():
    """An old hole of 6 stands 1 beyond the treble end of the slot, and 3 are wanted."""
    across = Slot(id="slot", shape=StraightSlot(nut_end=(-15.0, 90.0), tip_end=(15.0, 90.0), width=12.0))
    layout = head(slots=(across,), holes=(SingleHole(id="old", at=(25.0, 90.0), diameter=6.0, there=True),))
    result = check(layout)
    snag = next(one for one in result.snags if set(one.between) == {"slot", "old"})
    alone, both = settle(layout, result, snag), settle(layout, result, snag, mirrored=True)
    assert alone.cure == "Shorten slot by 2.0 mm at its tip end." and both.cure.endswith(" end, and the other side alike.")
    shape = apply_cure(layout, both, mirrored=True).slots[0].shape
    assert (shape.nut_end, shape.tip_end) == ((-13.0, 90.0), (13.0, 90.0))


def test_with_mirrored_on_no_cure_moves_what_is_to_stay_on_the_other_side():
    """A tuner that is to be left where it is, and a hole that is in the blank already."""
    old = SingleHole(id="old", at=(25.0, 66.0), diameter=4.0, there=True)
    one, two = (SingleHole(id=id, at=(x, 60.0), diameter=6.0) for id, x in (("a", 20.0), ("b", -20.0)))
    with_tuners = head(tuners=(face("a", 20.0, 60.0), face("b", -20.0, 60.0)), patterns=(FACE,), holes=(old,))
    with_holes = head(holes=(old, one, two))
    stays = (replace(with_tuners, tuners=(with_tuners.tuners[0], replace(with_tuners.tuners[1], held=True))),
             replace(with_holes, holes=(old, one, replace(two, there=True))))
    for layouts, moves in (((with_tuners, with_holes), True), (stays, False)):
        for layout in layouts:
            result = check(layout)
            snag = next(one for one in result.snags if set(one.between) == {"a", "old"})
            assert (settle(layout, result, snag, mirrored=True).move is not None) == moves
            assert settle(layout, result, snag).move is not None


def test_what_a_move_touches_goes_by_what_it_changes_and_not_by_what_else_bears_that_name():
    """A slot called bass is no edge of the blank. Of two ears alike both get wider."""
    layout = head(slots=(slot("bass"), slot("treble", -14.0)), ears=tuple(
        Ear(id=f"{side} ear", side=side, start=20.0, end=80.0, width=8.0) for side in ("bass", "treble")))
    assert touched(layout, Change(("blank", "bass"), 50.0, 52.0), mirrored=True) == ()
    wider = Change(("ears", "bass ear", "width"), 8.0, 10.0)
    assert touched(layout, wider, mirrored=True) == ("bass ear", "treble ear")
    assert [ear.width for ear in carried_out(layout, wider, mirrored=True).ears] == [10.0, 10.0]


def test_a_way_is_gone_in_steps_that_overlook_little_and_not_beyond_what_is_a_cure():
    """A stand-in for the checks, which finds the pin no better anywhere and has nothing to measure it by."""
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))
    snag, ways = replace(ASIDE, measured=None, needed=None), {}

    class Checker:
        def check(self, moved: Headstock) -> CheckResult:
            x, y = moved.pins[0].at[0], moved.pins[0].at[1] - 60.0
            ways.setdefault((x > 0.01, x < -0.01, y > 0.01, y < -0.01), []).append(math.hypot(x, y))
            return result
    result = replace(check(layout), snags=(snag,))
    assert settle(layout, result, snag, Checker()).move is None and len(ways) == 4
    farthest, = {way.farthest for way in tracks(layout, snag)}
    for far in ways.values():
        steps = [b - a for a, b in zip([0.0, *far], far, strict=False)]
        assert all(0.09 < step < (1.01 if end < 9.0 else 2.01) for step, end in zip(steps, far, strict=True))
        assert farthest - 2.0 < far[-1] <= farthest and len(far) < farthest + 5


def test_of_what_stands_in_the_way_as_often_the_same_is_told_each_time():
    """A stand-in for the checks, in which each move frees the pin and crowds six others: those told are no matter of how a set is kept."""
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))
    crowded = replace(ASIDE, kind="crowded", between=("pin", "post f", "post c", "post e", "post b", "post d", "post a"))

    class Checker:
        def check(self, moved: Headstock) -> CheckResult:
            return replace(result, snags=(crowded, crowded))
    result = replace(check(layout), snags=(ASIDE, crowded))
    assert "In the way: post a and post b." in settle(layout, result, ASIDE, Checker()).cured


def test_of_snags_of_one_kind_between_the_same_two_what_is_left_is_the_worst():
    first, second = replace(ASIDE, measured=6.0), replace(ASIDE, measured=8.0, where=(0.0, 80.0, 0.0))
    before = sys.modules["geometry.cures.settle"].Before((first, second))
    less = replace(first, measured=8.5)
    assert before.judged(first, (less, second)).lacks == pytest.approx(1.0) and not before.judged(first, (less, second)).gone
    assert before.judged(first, (second,)).gone and not before.judged(first, (first,)).gone


def test_of_two_snags_alike_each_is_cured_where_it_is_and_not_by_the_cure_of_the_other():
    layout = head()
    small = replace(layout, blank=replace(layout.blank, bass=34.0, treble=34.0))
    result = check(small)
    sides = {("bass" if snag.where[0] < 0 else "treble"): settle(small, result, snag).move for snag in result.snags if snag.kind == "blank-too-small"}
    assert {side: move.path for side, move in sides.items()} == {"bass": ("blank", "bass"), "treble": ("blank", "treble")}


def test_where_no_move_can_be_made_the_advice_stands_alone(monkeypatch):
    def refused(layout, move, mirrored):
        raise GeometryError("No.")
    monkeypatch.setattr(sys.modules["geometry.cures.settle"], "carried_out", refused)
    layout = head(pins=(Pin(id="pin", at=(0.0, 60.0), diameter=6.0),))
    done = settle(layout, check(layout), ASIDE)
    assert done.move is None and done.cure == "Do something."


@pytest.mark.parametrize(("move", "why"), [
    (Slide("a", 91.0), "The edge ends before a has slid so far."), (Slide("a", -91.0), "The edge ends before a has slid so far."),
    (Stretch("slot", "tip", -85.0), "slot cannot become that short."), (Stretch("drawn", "tip", 1.0), "drawn has no ends: its wall is drawn."),
    (Swap("a", "b"), "No string winds on a.")])
def test_what_cannot_be_done_is_refused_in_a_sentence(move, why):
    """The treble edge is 180 long, and a sits in the middle of it; the slot is 90 from end to end and 12 wide."""
    layout = head(tuners=(side("a", 90.0), side("b", 120.0)), patterns=(SIDE,),
                  slots=(slot(), drawn("drawn", (-26.0, 60.0), (-14.0, 60.0), (-14.0, 140.0), (-26.0, 140.0))))
    assert [carried_out(layout, Slide("a", by)).tuner("a").place.along for by in (-89.9, 89.9)] == pytest.approx([0.1, 179.9])
    with pytest.raises(GeometryError, match=re.escape(why)):
        carried_out(layout, move)


HOLE = SingleHole(id="hole", at=(37.0, 90.0), diameter=6.0, depth=4.0)
"""Its rim on the edge x = 40, which wants 4 mm of wood."""
EAR = Ear(id="ear", side="treble", width=15.0, start=-20.0, end=190.0)


@pytest.mark.parametrize(("layout", "kind", "move"), [
    # To its point a brad of 6 is 1.8 long: 0.2 of 16 are left, and 3 wanted.
    (head(holes=(replace(HOLE, at=(0.0, 90.0), depth=14.0),)), "too-deep", Change(("holes", "hole", "depth"), 14.0, 11.2)),
    (head(holes=(HOLE,)), "hole-to-outline", Shift("hole", (-4.0, 0.0))),
    (head(holes=(replace(HOLE, there=True),)), "hole-to-outline", None),
    # The bore of 6 comes in through it: 3 + 2 of radii, and 3 of wood.
    (head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(slot(),), holes=(replace(HOLE, at=(45.0, 90.0), diameter=4.0, depth=None, there=True),)),
     "hole-in-the-way", Slide("a", 8.0)),
    (head(pins=(*PINS, Pin(id="p", at=(0.0, 186.0), diameter=6.0))), "pin-to-blank", Change(("blank", "tip"), 190.0, 192.0)),
    # Across the outline at x = 40, 3 of radius and 3 of wood inside it: no ear 3 mm thin is glued on for a pin.
    (head(pins=(*PINS, Pin(id="p", at=(47.0, 90.0), diameter=6.0))), "pin-to-blank", Shift("p", (-13.0, 0.0))),
    # The head reaches from the nut line to y = 180.
    (head(ears=(replace(EAR, end=150.0),)), "ear-too-short", Change(("ears", "ear", "end"), 150.0, 180.0)),
    (head(ears=(replace(EAR, start=20.0),)), "ear-too-short", Change(("ears", "ear", "start"), 20.0, 0.0))],
    ids=["hole too deep", "hole at the edge", "hole that is there", "in the way", "blank", "pin", "ear at its tip", "ear at the nut"])
def test_what_is_dearest_to_the_maker_stays(layout: Headstock, kind: str, move: Move | None):
    """Of all that could give, the lesser thing does, and by no more than it takes."""
    snag, = [one for one in with_cures(layout, check(layout)).snags if one.kind == kind]
    assert snag.move == move


def test_a_move_that_only_papers_and_template_do_not_have_is_proposed_and_says_so():
    """Once papers are pasted no move leaves them right: that is no reason to propose none, and nothing else is made tight by it."""
    layout = head(holes=(SingleHole(id="a", at=(0.0, 60.0), diameter=8.0), SingleHole(id="b", at=(0.0, 69.0), diameter=8.0)))
    pasted = replace(layout, book=Book(done=(Done(piece="real", task=Task(operation="mark"), spots=set_down(layout, "mark")),)))
    tried = [], []
    (plain, done) = (settle(one, result, next(snag for snag in result.snags if snag.grade != "note"), tried=lambda own=own: own.append(1))
                     for one, result, own in ((layout, check(layout), tried[0]), (pasted, check(pasted), tried[1])))
    assert done.move == plain.move is not None
    assert len(tried[0]) == 1 and len(tried[1]) <= 2 * 7, "each way of either once: what papers do not have a little way off they have no farther off"
    assert done.cure == f"{plain.cure[:-1]}; the papers or the template (job book) then have it elsewhere."


def test_a_slot_that_is_cut_is_made_wider_for_what_it_holds_and_that_it_is_gone_on_with_is_said():
    opening = slot()
    layout = post_head(post=(6.0, 31.5, 31.0), slots=(opening,), margins=Margins())
    cut = replace(layout, book=Book(done=(Done(piece="real", task=Task(operation="rout slot 1", features=("slot",)), cut=Shaped(shape=opening.shape)),)))
    (plain, done) = (settle(head, result, next(one for one in result.snags if one.kind == "string-hole"))
                     for head, result in ((layout, check(layout)), (cut, check(cut))))
    assert isinstance(plain.move, Shift) and "job book" not in plain.cure
    assert done.move.path == ("slots", "slot", "shape", "width") and done.move.after > opening.shape.width
    assert done.cure.endswith(", going on from what is made already (job book).")


def test_what_papers_had_elsewhere_before_a_move_is_not_laid_to_it():
    marks = Snag("marked-otherwise", TIGHT, ("a", "b"), (0.0, 60.0, 0.0), None, None, "", "")
    before = sys.modules["geometry.cures.settle"].Before((ASIDE, marks))
    assert before.judged(ASIDE, (replace(marks, between=("b",)),)).clean, "one of them is where it is pricked again"
    assert not before.judged(ASIDE, (replace(marks, between=("b", "c")),)).clean
