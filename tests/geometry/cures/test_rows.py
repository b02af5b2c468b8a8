"""Tuners of a row that are too near each other or something else: the row is spaced wider or moved, and stays a row."""

import re

import pytest
from msgspec.structs import replace

from geometry.checks import LiveCheck, check
from geometry.checks.moves import Change
from geometry.cures import apply_cure, settle
from geometry.cures.plates import may_share_a_plate
from geometry.cures.tracks import tracks
from geometry.edits.fields import get_field
from geometry.layout import EdgeRun, Rack, RouterBit, Row, RowPlace, SingleHole, StraightRun, Template, Tuner
from tests.geometry.checks.heads import bore, head, loop, pattern, slot
from tests.geometry.edits.heads import CURVED

SEAT = pattern("plate", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0), seat=(12.0, 12.0, 10.0))


def row_of(count, spacing):
    """A row along the straight treble edge whose plates are 24 long."""
    return head(tuners=tuple(Tuner(id=f"t{i + 1}", pattern="plate", place=RowPlace(row="row", index=i)) for i in range(count)),
                rows=(Row(id="row", spacing=spacing, run=EdgeRun(side="treble", first=75.0)),), patterns=(SEAT,), slots=(slot(),))


def test_plates_of_a_row_are_spaced_wider():
    layout = row_of(3, 24.2)
    before = check(layout)
    one, two = [snag for snag in before.snags if snag.kind == "seats-overlap"]
    assert one.measured == pytest.approx(0.2) and one.needed == 0.5
    cured = settle(layout, before, one)
    assert cured.move == Change(("rows", "row", "spacing"), 24.2, pytest.approx(24.5)) and cured.cure == "Space row wider by 0.3 mm, unless its tuners share a plate."
    after = apply_cure(layout, cured)
    assert not [snag for snag in check(after).snags if snag.kind == "seats-overlap"], "both pairs at once"
    assert all(isinstance(tuner.place, RowPlace) for tuner in after.tuners)


def test_tuners_of_different_rows_have_none_to_space():
    layout = row_of(2, 24.2)
    apart = head(tuners=(layout.tuners[0], Tuner(id="t2", pattern="plate", place=RowPlace(row="other", index=0))), patterns=(SEAT,),
                 rows=(*layout.rows, Row(id="other", spacing=30.0, run=EdgeRun(side="treble", first=99.2))), slots=(slot(),))
    before = check(apart)
    cured = settle(apart, before, next(snag for snag in before.snags if snag.kind == "seats-overlap"))
    assert cured.move == Change(("rows", "row", "run", "first"), 75.0, pytest.approx(74.7)) and cured.cure == "Move the row “row” by 0.3 mm to the nut."


BORE = pattern("post", "face", bore(diameter=10.0), post=(6.0, 20.0, 12.0), seat=(6.0, 6.0, 12.0))


def moved(layout, cured):
    """The layout after a cure: nothing else in it may spoil the work, and every tuner is still in its row."""
    after = apply_cure(layout, cured)
    assert all(isinstance(tuner.place, RowPlace) for tuner in after.tuners)
    return after


@pytest.mark.parametrize(("run", "path", "by", "words"), [
    (EdgeRun(side="treble", first=40.0, inset=7.0), ("inset",), 2.0, "Set the row “row” by 2.0 mm farther in from the edge."),
    (StraightRun(start=(33.0, 40.0), heading=90.0), ("start", 0), -2.0, "Move the row “row” by 2.0 mm to the bass side."),
])
def test_a_row_too_near_to_the_edge_is_set_farther_in_as_a_row(run, path, by, words):
    """By hand: bores of 10 whose axes stand 7 in from the edge leave 2, and 4 are wanted: 2 for each of the three, and for all at once."""
    layout = head(tuners=tuple(Tuner(id=f"t{i + 1}", pattern="post", place=RowPlace(row="row", index=i)) for i in range(3)),
                  rows=(Row(id="row", spacing=30.0, run=run),), patterns=(BORE,))
    before = check(layout)
    near = [snag for snag in before.snags if snag.kind == "bore-to-outline"]
    assert len(near) == 3 and all(snag.measured == pytest.approx(2.0) for snag in near)
    cured = settle(layout, before, near[1])
    value = get_field(layout, ("rows", "row", "run", *path))
    assert cured.move == Change(("rows", "row", "run", *path), value, pytest.approx(value + by)) and cured.cure == words
    assert not [snag for snag in check(moved(layout, cured)).snags if snag.kind == "bore-to-outline"], "all three at once"


def test_a_row_with_a_tuner_that_is_held_stays():
    layout = head(tuners=tuple(Tuner(id=f"t{i + 1}", pattern="post", place=RowPlace(row="row", index=i), held=i == 0) for i in range(3)),
                  rows=(Row(id="row", spacing=30.0, run=EdgeRun(side="treble", first=40.0, inset=7.0)),), patterns=(BORE,))
    before = check(layout)
    cured = settle(layout, before, next(snag for snag in before.snags if snag.kind == "bore-to-outline" and "t2" in snag.between))
    assert cured.move is not None and cured.move.of == "t2" and cured.cure.endswith("out of its row, unless its tuners share a plate.")


def test_a_tuner_leaves_a_row_that_may_be_on_one_plate_last():
    """By itself t2 would be clear of both holes 4.5 mm away, and all of the row only 8.7 mm away."""
    tuners = tuple(Tuner(id=f"t{i + 1}", pattern="post", place=RowPlace(row="row", index=i)) for i in range(3))
    holes = tuple(SingleHole(id=f"h{y}", at=(20.0, y), diameter=5.0, there=True) for y in (46.0, 64.0))
    row = Row(id="row", spacing=30.0, run=StraightRun(start=(20.0, 40.0), heading=90.0, turn=0.0))
    layout = head(tuners=tuners, rows=(row,), patterns=(BORE,), holes=holes)
    before = check(layout)
    cured = settle(layout, before, next(snag for snag in before.snags if "h64.0" in snag.between))
    assert cured.cure == "Move the row “row” by 8.7 mm to the treble side." and moved(layout, cured)


def test_a_row_whose_buttons_go_different_ways_shares_no_plate():
    layout = replace(row_of(3, 26.0), outline=CURVED)
    assert not may_share_a_plate(layout, layout.tuners[0]) and may_share_a_plate(row_of(3, 26.0), layout.tuners[0])
    bent = replace(row_of(3, 26.0), outline=loop((-40.0, 0.0), (40.0, 0.0), (40.0, 115.0), (20.0, 180.0), (-40.0, 180.0)))
    assert not may_share_a_plate(bent, bent.tuners[0]), "one that leans is enough"
    two = tuple(Tuner(id=f"t{i}", pattern="post", place=RowPlace(row="row", index=i)) for i in range(2))
    across = head(tuners=two, patterns=(BORE,), rows=(Row(id="row", spacing=40.0, run=StraightRun(start=(-20.0, 60.0), heading=0.0)),))
    assert not may_share_a_plate(across, two[0]), "one to the bass edge and one to the treble edge: opposite ways are two ways"
    lone = row_of(1, 26.0)
    assert not may_share_a_plate(lone, lone.tuners[0])


def test_a_hole_gives_way_to_a_row_and_not_a_row_to_a_hole():
    """A lone hole 6.5 beside a bore of the middle tuner: it is moved, though the row could be."""
    layout = head(tuners=tuple(Tuner(id=f"t{i + 1}", pattern="post", place=RowPlace(row="row", index=i)) for i in range(3)),
                  rows=(Row(id="row", spacing=30.0, run=EdgeRun(side="treble", first=40.0, inset=15.0)),), patterns=(BORE,),
                  holes=(SingleHole(id="h", at=(16.0, 70.0), diameter=4.0),))
    before = check(layout)
    cured = settle(layout, before, next(snag for snag in before.snags if "h" in snag.between and "t2" in snag.between))
    assert cured.move.of == "h"


def test_what_two_tuners_share_is_tried_once():
    """Each way is a whole check: of two tuners of one row and one pattern the row, its spacing and the pattern's bores are one."""
    layout = row_of(3, 24.2)
    for kind in ("seats-overlap", "side-bore-to-side-bore"):
        one = next(snag for snag in check(layout).snags if snag.kind == "seats-overlap")
        moves = [way.make(1.0) for way in tracks(layout, replace(one, kind=kind))]
        assert len(moves) == len(set(moves))
        assert {("rows", "row", "run", "first"), ("rows", "row", "spacing")} <= {move.path for move in moves if isinstance(move, Change)}
        assert (("patterns", "plate", "bores", 0, "depth") in {move.path for move in moves if isinstance(move, Change)}) == (
            kind == "side-bore-to-side-bore")


def test_as_many_moves_are_told_as_were_checked_and_none_that_cannot_help(monkeypatch):
    """A bit that is too short stays so wherever the slot lies and however long it is; what cannot be carried out is no move."""
    layout = replace(head(slots=(slot(depth=15.0),), template=Template(bit="short")), rack=Rack(
        bits=(RouterBit(id="short", cutter=10.0, cutting_length=12.0, shank=8.0, stick_out=20.0, bearing="shank", bearing_diameter=10.0),)))
    before, checked = check(layout), []
    monkeypatch.setattr(LiveCheck, "check", lambda self, moved, own=LiveCheck.check: checked.append(moved) or own(self, moved))
    snag, = [snag for snag in before.snags if snag.kind in ("bit-too-short", "bit-unguided")]
    ways = [way.make(1.0) for way in tracks(layout, snag)]
    assert {move.path[-1] for move in ways if isinstance(move, Change)} == {"width", "depth"} and len(ways) == 3
    wide = replace(snag, kind="bit-too-wide")  # wider than the head: refused
    for asked in (snag, wide):
        checked.clear()
        cured = settle(layout, before, asked)
        told = re.search(r"Of (\d+) moves", cured.cure)
        assert cured.move is not None or int(told[1]) == len(checked) > 1
