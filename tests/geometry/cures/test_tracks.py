"""In which ways something could give, one by one: which way round, how far at most, and what a millimetre of it costs."""

import math

import pytest
from msgspec.structs import replace

from geometry.checks import Snag
from geometry.checks.moves import Change, Shift, Slide, Stretch, Swap, Wind
from geometry.checks.snags import FACE, TEMPLATE, TIGHT
from geometry.cures.tracks import FARTHEST_CHANGE, FARTHEST_PIN, FARTHEST_SHIFT, FARTHEST_SLIDE, Track, tracks
from geometry.layout import EdgeRun, Headstock, Pin, Row, RowPlace, SingleHole, StraightRun
from tests.geometry.checks import heads
from tests.geometry.checks.heads import SIDE, drawn, face, head, side, slot


def ways(layout: Headstock, kind: str, *between: str, push: tuple[float, float] | None = None) -> list[Track]:
    return tracks(layout, Snag(kind, TIGHT, between, (0.0, 60.0, 0.0), 1.0, 2.0, "", "", push=push))


def moves(layout: Headstock, kind: str, *between: str, **more: tuple[float, float]) -> list:
    """By a millimetre each."""
    return [way.make(1.0) for way in ways(layout, kind, *between, **more)]


@pytest.mark.parametrize(("kind", "deeper"), [
    ("too-deep", -1.0), ("post-not-through", 1.0), ("slot-not-reached", 1.0), ("post-too-long", 1.0), ("point-to-wall", -1.0),
    ("drill-point", -1.0), ("side-bore-to-slot", -1.0), ("hole-to-hole", None)])
def test_a_bore_gives_in_its_depth_where_that_is_what_is_wrong(kind, deeper):
    """All bores of the pattern: that costs more than one tuner that moves, but where the depth itself is wrong."""
    layout = head(tuners=(side("a", 90.0),), patterns=(SIDE,))
    found = [(way.make(1.0), way) for way in ways(layout, kind, "a")]
    depths = [(move.after - move.before, way.dear, way.farthest) for move, way in found if isinstance(move, Change) and move.path[0] == "patterns"]
    assert depths == ([] if deeper is None else [(deeper, 2.5 if kind.startswith("side-bore") else 1.0, FARTHEST_CHANGE)])


@pytest.mark.parametrize("kind", ["too-deep", "drill-point", "point-to-wall"])
def test_a_screw_that_goes_too_deep_gives_and_elsewhere_the_post_bore_alone(kind):
    pattern = replace(SIDE, bores=(*SIDE.bores, heads.bore("screw", 2.0, "seat", (0.0, 8.0), depth=9.0)))
    found = moves(head(tuners=(side("a", 90.0),), patterns=(pattern,)), kind, "a")
    given = {move.path[3] for move in found if isinstance(move, Change) and move.path[0] == "patterns"}
    assert given == ({0} if kind == "point-to-wall" else {0, 1})


@pytest.mark.parametrize(("kind", "between", "dear"), [("hole-to-hole", ("a",), 2.6), ("cover", ("a",), 1.0), ("hole-to-hole", ("a", FACE), 1.0)])
def test_a_side_tuner_slides_and_leaves_the_middle_only_where_height_is_wrong(kind, between, dear):
    """16 mm of wood: no farther than the 8 to either side of its middle."""
    found = {str(way.make(2.0)): way for way in ways(head(tuners=(side("a", 90.0),), patterns=(SIDE,)), kind, *between)}
    depth = ("tuners", "a", "place", "depth")
    assert [(way.dear, way.farthest) for way in (found.pop(str(Change(depth, 8.0, z))) for z in (10.0, 6.0))] == [(dear, 8.0)] * 2
    assert [(way.dear, way.farthest) for way in (found.pop(str(Slide("a", by))) for by in (2.0, -2.0))] == [(1.0, FARTHEST_SLIDE)] * 2
    assert found == {}


def test_a_hole_goes_along_the_push_and_aside_of_it_and_along_both_axes_once_each():
    """Told in tenths, away from nothing: 0.708 is 0.8."""
    layout = head(holes=(SingleHole(id="h", at=(0.0, 60.0), diameter=6.0, depth=9.0),))
    plain = [Shift("h", by) for by in ((1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0))]
    assert moves(layout, "k", "h") == [*plain, Change(("holes", "h", "depth"), 9.0, 8.0)]
    aslant = [Shift("h", by) for by in ((1.0, 0.0), (0.8, 0.8), (0.8, -0.8))]
    assert moves(layout, "k", "h", push=(3.0, 0.0)) == [*aslant, *plain[1:], Change(("holes", "h", "depth"), 9.0, 8.0)]
    other = moves(replace(layout, pins=(Pin(id="p", at=(9.0, 60.0), diameter=3.0),)), "k", "h", "p", push=(0.0, 2.0))
    firsts = {of: next(move.by for move in other if isinstance(move, Shift) and move.of == of) for of in ("h", "p")}
    assert firsts == {"h": (0.0, 1.0), "p": (0.0, -1.0)}, "the second the other way"
    third = moves(layout, "k", "x", "y", "h", push=(3.0, 4.0))
    assert third[:4] == plain and len(third) == 5, "a third is not pushed"


def test_a_pin_may_go_farther_and_costs_less_than_what_holds_strings():
    layout = head(pins=(Pin(id="p", at=(0.0, 60.0), diameter=3.0),), tuners=(face("f", -20.0, 60.0),), patterns=(heads.FACE,), slots=(slot(),))
    cost = {id: {(way.dear, way.farthest) for way in ways(layout, "k", id) if isinstance(way.make(1.0), Shift)} for id in ("p", "f", "slot")}
    assert cost == {"p": {(0.8, FARTHEST_PIN)}, "f": {(1.1, FARTHEST_SHIFT)}, "slot": {(2.0, FARTHEST_SHIFT)}}


@pytest.mark.parametrize(("kind", "width"), [("string-hole", 14.0), ("post-to-wall", 14.0), ("post-to-slot-end", 14.0), ("bit-too-wide", 14.0),
                                             ("wood-left", 14.0), ("slot-to-slot", 10.0)])
def test_a_slot_goes_aside_is_longer_or_shorter_and_wider_where_it_lacks_room(kind, width):
    found = [(move, way) for way in ways(head(slots=(slot(depth=9.0),)), kind, "slot") if not isinstance(move := way.make(2.0), Shift)]
    assert [(move, way.dear, way.farthest) for move, way in found] == [
        *((Stretch("slot", end, by), 1.5, 2 * FARTHEST_SHIFT) for end in ("nut", "tip") for by in (-2.0, 2.0)),
        (Change(("slots", "slot", "shape", "width"), 12.0, width), 3.0, FARTHEST_CHANGE),
        *((Change(("slots", "slot", "depth"), 9.0, depth), 1.5, FARTHEST_CHANGE) for depth in (7.0, 11.0))]


def test_what_a_bit_does_to_a_slot_hangs_on_its_width_and_depth_alone():
    assert moves(head(slots=(slot(depth=9.0),)), "bit-too-wide", "slot", TEMPLATE) == [
        Change(("slots", "slot", "shape", "width"), 12.0, 13.0), *(Change(("slots", "slot", "depth"), 9.0, depth) for depth in (8.0, 10.0))]
    through = drawn("d", (8.0, 60.0), (20.0, 60.0), (20.0, 150.0), (8.0, 150.0))
    assert {type(move) for move in moves(head(slots=(through,)), "k", "d")} == {Shift}


@pytest.mark.parametrize(("mount", "run", "whole"), [
    ("side", EdgeRun(side="treble", first=40.0), [("first", 40.0)]), ("face", EdgeRun(side="treble", first=40.0, inset=12.0), [("first", 40.0), ("inset", 12.0)]),
    ("face", StraightRun(start=(-20.0, 40.0), heading=90.0), [(("start", 0), -20.0), (("start", 1), 40.0)])], ids=["side", "along an edge", "straight"])
def test_a_row_is_spaced_otherwise_or_goes_as_a_whole(mount, run, whole):
    of = SIDE if mount == "side" else heads.FACE
    layout = head(rows=(Row(id="row", run=run, spacing=30.0),), patterns=(of,), tuners=tuple(
        replace(face(id, 0.0, 0.0, of), place=RowPlace(row="row", index=k)) for k, id in enumerate("ab")))
    found = {way.make(1.0): way for way in ways(layout, "k", "a", "b") if isinstance(way.make(1.0), Change) and way.make(1.0).path[0] == "rows"}
    paths = [(("rows", "row", "run", *(name if isinstance(name, tuple) else (name,))), value) for name, value in whole]
    wanted = [Change(("rows", "row", "spacing"), 30.0, spacing) for spacing in (31.0, 29.0)]
    wanted += [Change(path, value, value + sign) for path, value in paths for sign in (1, -1)]
    assert set(found) == set(wanted)
    assert [found[move].dear for move in wanted] == [0.9, 0.9] + [0.95] * (len(wanted) - 2)
    one = [move for move in moves(layout, "k", "a") if isinstance(move, Change) and move.path[2:] == ("spacing",)]
    assert one == [], "of one alone the spacing is nothing that it depends on"
    held = replace(layout, tuners=(layout.tuners[0], replace(layout.tuners[1], held=True)))
    apart = replace(layout, rows=(*layout.rows, replace(layout.rows[0], id="other")),
                    tuners=(layout.tuners[0], replace(layout.tuners[1], place=RowPlace(row="other", index=0))))
    spaced = [[move for move in moves(some, "k", "a", "b") if isinstance(move, Change) and move.path[-1] == "spacing"] for some in (held, apart)]
    assert spaced == [[], []] and not any(isinstance(move, Change) and move.path[0] == "rows" for move in moves(held, "k", "a", "b"))


def test_strings_are_led_otherwise_where_they_come_too_near():
    tuners = (side("a", 60.0, string="1"), side("b", 120.0, string="2"), side("c", 150.0, string="3", held=True), side("d", 170.0))
    layout = head(tuners=tuners, patterns=(SIDE,))

    def led(kind, *between):
        return [(move, way.dear, way.farthest) for way in ways(layout, kind, *between) if isinstance(move := way.make(1.0), Wind | Swap)]
    both = [(move, 0.5, math.inf) for move in (Wind("a"), Wind("b"), Swap("a", "b"))]
    assert led("string-to-string", "a", "b") == led("string-to-post", "a", "b") == both
    assert led("string-to-post", "a", "c") == led("string-to-post", "a", "d") == both[:1], "what is held keeps its string"
    assert led("hole-to-hole", "a", "b") == []


@pytest.mark.parametrize(("kind", "sides"), [("blank-too-small", 1.0), ("no-mark", 1.0), ("pin-to-blank", 5.0), ("hole-to-outline", None)])
def test_a_blank_may_be_larger_and_no_wood_is_glued_on_for_a_pin(kind, sides):
    found = {move.path[1]: (move.after - move.before, way.dear) for way in ways(head(), kind, "nut pin")
             if isinstance(move := way.make(1.0), Change) and move.path[0] == "blank"}
    assert found == ({} if sides is None else {"bass": (1.0, sides), "treble": (1.0, sides), "tip": (1.0, 1.0), "behind": (1.0, 1.0)})
