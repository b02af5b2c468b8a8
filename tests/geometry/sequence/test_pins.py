"""Proposed pins: legal by an independent measure, as far apart as the wood allows, the same every time."""

import math

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.beginning import Numbers, begin
from geometry.checks import check as snags_of
from geometry.checks.snags import SPOILS
from geometry.layout import (
    Blank,
    Bore,
    Ear,
    FreePlace,
    Headstock,
    Loop,
    Node,
    Nut,
    Pattern,
    Pin,
    SingleHole,
    Slot,
    StraightSlot,
    Template,
    loop_path,
    slot_path,
)
from geometry.sequence import NoPins, operations, propose_pins
from geometry.sequence.pin_places import later_holes, places
from geometry.sequence.precedence import precedence
from geometry.solids import holes
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from tests.geometry.drawing.specimens import FACE, plain_head
from tests.geometry.sequence.specimens import demo, stocked

REPLACE = msgspec.structs.replace
FIT = 1e-6
BARE = stocked(slots=(), tuners=(), pins=(), holes=())
LARGE = Template(board="blank")
"""A template board as large as the blank."""
POCKET = Slot(id="pocket", shape=StraightSlot(nut_end=(-20.0, 80.0), tip_end=(-20.0, 100.0), width=13.0))
"""A slot out of the pins' way: without any, a pin in the waste has nothing to hold a template for."""


def bore_axes(layout: Headstock) -> list[tuple]:
    """Cylinders of every drilling except pins, side bores from their mark on."""
    rows = []
    for d in (d for hole in holes(layout) for d in hole.drillings if d.role != "locating"):
        begun = d.start if d.upright or d.mark is None else d.mark
        rows.append((begun, d.direction, d.depth if d.upright or d.mark is None else d.stop, d.radius))
    return rows


def clearance(layout: Headstock, pin: Pin) -> float:
    """Least distance from a pin to bores, slots and the outline, on exact curves and in space, mm."""
    r, thick = pin.diameter / 2, layout.blank.thickness
    found = [loop_path(layout.outline).nearest(pin.at).distance - r]
    found += [slot_path(slot).nearest(pin.at).distance - r for slot in layout.slots]
    rows = [row for row in bore_axes(layout) if math.dist(row[0][:2], pin.at) > 0.05]
    if rows:
        others = Cylinders.made(rows)
        own = Cylinders.made([((*pin.at, 0.0), (0.0, 0.0, 1.0), thick, r)] * len(rows))
        found.append(float(gaps(own, others).distance.min()))
    return min(found)


def test_a_pin_beside_a_wide_hole_keeps_the_whole_of_its_margin() -> None:
    """A blind hole of 28.76, 1 mm beside the centreline: the pin of 6 stands 14.38 + 3 + 3 = 20.38 from its middle at
    least, so no lower than 30.149 + sqrt(20.38^2 - 1) = 50.504 and not at 50.5."""
    wide = SingleHole(id="wide", at=(-1.0, 30.149), diameter=28.76, depth=10.0)
    layout = REPLACE(BARE, outline=plain_head().outline, holes=(wide,))
    found = propose_pins(layout, flip=True)
    assert not isinstance(found, NoPins)
    assert found[0].at == (0.0, 51.0)
    assert all(clearance(layout, pin) >= layout.margins.pin_any - FIT for pin in found)


def own_bore(layout: Headstock, pin: Pin) -> bool:
    return any(math.dist(d.start[:2], pin.at) < 0.05 for hole in holes(layout) for d in hole.drillings
               if d.role != "locating" and d.upright)


def check(layout: Headstock, pins: tuple[Pin, Pin], flip: bool) -> None:
    blank, keep = layout.blank, layout.margins.pin_any
    for pin in pins:
        r = pin.diameter / 2
        assert clearance(layout, pin) >= keep - FIT
        x, y = pin.at
        assert min(x + blank.bass, blank.treble - x, blank.tip - y) >= keep + r - FIT or own_bore(layout, pin)
        assert y - r >= keep - FIT or own_bore(layout, pin)
    one, two = pins
    assert one.at[1] <= two.at[1]
    if flip:
        on_axis = max(abs(one.at[0]), abs(two.at[0])) <= 0.01
        mirrored = math.dist(one.at, (-two.at[0], two.at[1])) <= 0.01 and one.diameter == two.diameter
        assert on_axis or mirrored


def test_the_pins_of_a_plain_board_are_worked_out_by_hand() -> None:
    # Head 80 x 180 in a blank of 90 x 190: the waste beside and above it is too narrow for a pin of 6 and its
    # margins of 3, so the centreline serves: from 10 + 3 at the nut to 180 - 6 at the tip.
    pins = propose_pins(BARE)
    assert pins == (Pin(id="nut pin", at=(0.0, 13.0), diameter=6.0), Pin(id="tip pin", at=(0.0, 173.5), diameter=6.0))


def test_waste_in_opposite_corners_beats_the_centreline_unless_the_template_turns_over() -> None:
    layout = REPLACE(BARE, blank=Blank(bass=60.0, treble=60.0, tip=200.0, behind=10.0, thickness=16.0),
                     slots=(POCKET,), template=LARGE)
    # Corners of the waste, 6 from the edges of the blank and from the nut line.
    low, high = propose_pins(layout)
    assert {abs(low.at[0]), abs(high.at[0])} == {54.0} and low.at[0] == -high.at[0]
    assert (low.at[1], high.at[1]) == (6.0, 194.0)
    # Turned over: the centreline, from the web at the nut to the waste beyond the tip.
    assert [pin.at for pin in propose_pins(layout, flip=True)] == [(0.0, 13.0), (0.0, 194.0)]


@pytest.mark.parametrize("changes", [{"template": Template()}, {"slots": ()}])
def test_pins_that_the_template_would_not_reach_are_not_proposed(changes: dict) -> None:
    layout = REPLACE(BARE, blank=Blank(bass=60.0, treble=60.0, tip=200.0, behind=10.0, thickness=16.0),
                     slots=(POCKET,), template=LARGE)
    # A board of the head's shape ends at the outline, and the outline itself is cut with one.
    assert [pin.at for pin in propose_pins(REPLACE(layout, **changes))] == [(0.0, 13.0), (0.0, 173.5)]


def test_a_mirrored_pair_serves_where_it_stands_farther_apart_than_the_centreline_allows() -> None:
    short = Loop(nodes=tuple(Node(at=at) for at in ((-20.0, 0.0), (20.0, 0.0), (20.0, 40.0), (-20.0, 40.0))))
    nick = Slot(id="nick", shape=StraightSlot(nut_end=(-10.0, 20.0), tip_end=(-10.0, 22.0), width=6.0))
    layout = REPLACE(BARE, outline=short, blank=Blank(bass=60.0, treble=60.0, tip=45.0, behind=10.0, thickness=16.0),
                     slots=(nick,), template=LARGE)
    low, high = propose_pins(layout, flip=True)
    assert low.at == (-54.0, high.at[1]) and high.at[0] == 54.0
    check(layout, (low, high), True)


def test_a_later_bore_serves_with_its_own_diameter() -> None:
    # Two post bores of 6.5 at opposite ends of a head without room for pins elsewhere.
    front = stocked().tuners[0]
    tuners = tuple(REPLACE(front, id=id, place=FreePlace(at=at, turn=0.0)) for id, at in
                   (("one", (-20.0, 15.0)), ("two", (20.0, 165.0))))
    wall = Slot(id="slot", shape=StraightSlot(nut_end=(0.0, 25.0), tip_end=(0.0, 168.0), width=13.0))
    low, high = propose_pins(stocked(tuners=tuners, slots=(wall,), holes=(), pins=()))
    assert (low.at, low.diameter) == ((-20.0, 15.0), 6.5)
    assert (high.at, high.diameter) == ((20.0, 165.0), 6.5)


@pytest.mark.parametrize(("deep", "face", "serves"), [(8.0, 0.0, True), (11.0, 0.0, True), (13.0, 0.0, False), (8.0, 5.0, False)])
def test_a_later_bore_serves_with_what_its_deepest_counterbores_leave(deep: float, face: float, serves: bool) -> None:
    """Of 16 mm: 9 mm wide `deep` from the back and 12 mm wide 7 of that; from the face `face`. Less than 4 mm hold no pin."""
    bores = [Bore(role="post", diameter=6.5, surface="face"), Bore(role="counterbore", diameter=9.0, surface="back", depth=deep),
             Bore(role="counterbore", diameter=12.0, surface="back", depth=7.0)]
    bores += [Bore(role="counterbore", diameter=9.5, surface="face", depth=face)] if face else []
    stepped, front = REPLACE(FACE, bores=tuple(bores)), stocked().tuners[0]
    tuners = tuple(REPLACE(front, id=id, place=FreePlace(at=at, turn=0.0)) for id, at in (("one", (-20.0, 20.0)), ("two", (20.0, 160.0))))
    layout = stocked(tuners=tuners, patterns=(stepped,), slots=(), holes=(), pins=())
    assert len(later_holes(layout)) == (2 if serves else 0)


def test_a_pin_in_a_counterbored_bore_names_it_and_waits_for_the_counterbore_for_one_reason() -> None:
    """Two bores of 6.5 mm, 9 mm wide from the back: the pin's step is the bore's too, and the counterbore on its axis comes first."""
    stepped = REPLACE(FACE, bores=(Bore(role="post", diameter=6.5, surface="face"),
                                   Bore(role="counterbore", diameter=9.0, surface="back", depth=8.0)))
    front = stocked().tuners[0]
    tuners = tuple(REPLACE(front, id=id, place=FreePlace(at=at, turn=0.0)) for id, at in (("one", (-20.0, 20.0)), ("two", (20.0, 160.0))))
    layout = stocked(tuners=tuners, patterns=(stepped,), slots=(), holes=(), pins=())
    layout = REPLACE(layout, pins=propose_pins(layout))
    ops = operations(layout)
    pin, = (op for op in ops if op.kind == "pin hole" and "one" in op.features)
    assert pin.title == "Locating pin hole nut pin, post bore one"
    wide, = (op for op in ops if op.kind == "counterbore" and "one" in op.features)
    assert [edge.first for edge in precedence(layout, ops) if {edge.first, edge.then} == {pin.id, wide.id}] == [wide.id]
    apart = REPLACE(layout, pins=(REPLACE(layout.pins[0], diameter=4.0), layout.pins[1]))
    edges = [edge for edge in precedence(apart, operations(apart)) if edge.first == wide.id and edge.then.startswith("pin hole") and "nut pin" in edge.then]
    assert len(edges) == 1 and "nut pin" in edges[0].reason, "a narrower pin has the rule of pins alone"


@pytest.mark.parametrize(("low_y", "diameter", "serves"), [(90.0, 6.5, True), (75.0, 6.5, False), (90.0, 8.0, False)])
def test_two_later_bores_bring_a_turned_template_back_only_as_mirror_images(low_y: float, diameter: float, serves: bool) -> None:
    """Bores 20 mm to either side of a slot that fills the centreline: at one level and of one diameter, or not at all."""
    wide = Pattern(id="wide", mount="face", seat=FACE.seat, post=FACE.post, button=FACE.button,
                   bores=(Bore(role="post", diameter=diameter, surface="face"),))
    front = stocked().tuners[0]
    tuners = (REPLACE(front, id="bass", pattern="wide", place=FreePlace(at=(-20.0, low_y), turn=180.0)),
              REPLACE(front, id="treble", place=FreePlace(at=(20.0, 90.0), turn=0.0)))
    wall = Slot(id="slot", shape=StraightSlot(nut_end=(0.0, 25.0), tip_end=(0.0, 168.0), width=13.0))
    found = propose_pins(stocked(tuners=tuners, patterns=(FACE, wide), slots=(wall,), holes=(), pins=()), flip=True)
    assert isinstance(found, NoPins) != serves
    if serves:
        assert [(pin.at, pin.diameter) for pin in found] == [((-20.0, 90.0), 6.5), ((20.0, 90.0), 6.5)]


def test_pins_keep_to_one_side_of_a_glue_line() -> None:
    blank = Blank(bass=60.0, treble=60.0, tip=200.0, behind=10.0, thickness=16.0)
    ear = Ear(id="ear", side="treble", width=8.0, start=-10.0, end=200.0)
    pins = propose_pins(REPLACE(BARE, blank=blank, ears=(ear,), slots=(POCKET,), template=LARGE))
    # The glue line at x = 52 with 3 + 3 on either side leaves no room up to the edge at 60 less 6.
    assert max(pin.at[0] for pin in pins) <= 46.0
    assert max(pin.at[0] for pin in pins) >= 45.5


@pytest.mark.parametrize("side", ["bass", "treble"])
def test_pins_keep_off_where_an_ear_has_ended(side: str) -> None:
    """An ear of 30 from 60 to 140 on one side of the blank, whose corners were the place for pins: below and above it there is no wood."""
    blank = Blank(bass=70.0, treble=70.0, tip=200.0, behind=10.0, thickness=16.0)
    layout = REPLACE(BARE, blank=blank, slots=(POCKET,), template=LARGE)
    without = propose_pins(layout)
    assert {abs(pin.at[0]) for pin in without} == {64.0}
    eared = REPLACE(layout, ears=(Ear(id="ear", side=side, width=18.0, start=60.0, end=140.0),))
    for pin in propose_pins(eared):
        x = pin.at[0] if side == "treble" else -pin.at[0]
        assert x <= 52.0 - 3.0 - 3.0 or 66.0 <= pin.at[1] <= 134.0
    told = [snag for snag in snags_of(REPLACE(eared, pins=without)).snags if snag.kind == "pin-to-blank"]
    assert [(snag.grade, snag.measured) for snag in told] == [(SPOILS, -3.0)]
    assert not [snag for snag in snags_of(REPLACE(eared, pins=propose_pins(eared))).snags if snag.kind == "pin-to-blank"]


def test_pins_stay_out_of_the_way_of_a_side_bore_in_the_waste() -> None:
    layout = REPLACE(demo(), blank=REPLACE(demo().blank, bass=70.0, treble=70.0), pins=(), template=LARGE)
    pins = propose_pins(layout)
    check(layout, pins, False)


def test_pins_that_serve_the_outline_alone_stand_in_bores_to_come() -> None:
    """Of two rows of three the nearest and the farthest of either side: no hole is drilled, and plugged, for the template's sake."""
    begun = begin(Numbers())
    layout = REPLACE(begun, pins=())
    low, high = propose_pins(layout)
    assert begun.pins == (low, high)
    assert low.at[0] * high.at[0] < 0 and own_bore(layout, low) and own_bore(layout, high)
    pinned = REPLACE(layout, pins=(low, high))
    assert len([d for op in operations(pinned) for d in op.drillings if d.role != "locating"]) == len([d for op in operations(layout) for d in op.drillings])
    assert "plug" not in next(op for op in operations(pinned) if op.kind == "clean up").words
    lone = REPLACE(layout, tuners=layout.tuners[:1], strings=())
    assert not all(own_bore(lone, pin) for pin in propose_pins(lone)), "one bore is no pair"


def test_a_pin_whose_bore_has_moved_on_is_cured_by_proposing_the_pins_anew() -> None:
    layout = begin(Numbers())
    layout = REPLACE(layout, pins=propose_pins(layout))
    assert not [snag for snag in snags_of(layout).snags if snag.grade == SPOILS]
    row = layout.rows[0]
    moved = REPLACE(layout, rows=(REPLACE(row, run=REPLACE(row.run, first=row.run.first + 2.0)), *layout.rows[1:]))
    (snag,) = [snag for snag in snags_of(moved).snags if snag.grade == SPOILS]
    assert "nut pin" in snag.between and "proposed anew" in snag.cure
    assert not [snag for snag in snags_of(REPLACE(moved, pins=propose_pins(moved))).snags if snag.grade == SPOILS]


def test_no_room_is_said_with_what_would_help() -> None:
    tight = REPLACE(BARE, margins=REPLACE(BARE.margins, pin_any=60.0))
    for flip in (False, True):
        found = propose_pins(tight, flip)
        assert isinstance(found, NoPins)
        assert "60 mm clear of everything" in found.reason and "as large as the blank" in found.reason


def test_pins_too_near_each_other_are_refused() -> None:
    stub = Loop(nodes=tuple(Node(at=at) for at in ((-20.0, 0.0), (20.0, 0.0), (20.0, 40.0), (-20.0, 40.0))))
    layout = REPLACE(BARE, outline=stub, blank=Blank(bass=25.0, treble=25.0, tip=45.0, behind=10.0, thickness=16.0))
    # From 13 to 34 on the centreline: 21 mm.
    assert isinstance(propose_pins(layout), NoPins)


def test_pins_that_are_there_do_not_count() -> None:
    crowded = REPLACE(BARE, pins=(Pin(id="a", at=(0.0, 20.0)), Pin(id="b", at=(0.0, 170.0))))
    assert propose_pins(crowded) == propose_pins(BARE)


@pytest.mark.parametrize(("flip", "board", "apart"), [
    (False, "outline", 170), (True, "outline", 170), (False, "blank", 200), (True, "blank", 170)])
def test_the_demo_gets_legal_pins_the_same_every_time(flip: bool, board: str, apart: float) -> None:
    layout = REPLACE(demo(), template=Template(board=board))
    pins = propose_pins(layout, flip)
    check(layout, pins, flip)
    assert pins == propose_pins(layout, flip)
    assert math.dist(pins[0].at, pins[1].at) > apart


@pytest.mark.parametrize("mirrored", [False, True])
def test_a_lopsided_blank_gives_each_side_the_waste_that_it_has(mirrored: bool) -> None:
    """60.3 to one side of the centreline and 54.2 to the other: corners of the waste, 6 from its borders, on even halves of a mm."""
    blank = Blank(bass=60.3, treble=54.2, tip=200.4, behind=10.0, thickness=16.0)
    if mirrored:
        blank = REPLACE(blank, bass=54.2, treble=60.3)
    layout = REPLACE(BARE, blank=blank, slots=(REPLACE(POCKET, shape=StraightSlot(nut_end=(0.0, 80.0), tip_end=(0.0, 100.0), width=13.0)),),
                     template=LARGE)
    low, high = propose_pins(layout)
    assert {low.at[0], high.at[0]} == ({-48.0, 54.0} if mirrored else {-54.0, 48.0})
    assert (low.at[1], high.at[1]) == (6.0, 194.0)


@given(bass=st.floats(45.0, 75.0), treble=st.floats(45.0, 75.0), tip=st.floats(182.0, 230.0), x=st.floats(-25.0, 25.0), y=st.floats(30.0, 80.0),
       length=st.floats(20.0, 90.0), diameter=st.floats(3.0, 8.0), flip=st.booleans(), board=st.sampled_from(["outline", "blank"]))
@settings(max_examples=40)
def test_every_proposal_keeps_its_margins(bass: float, treble: float, tip: float, x: float, y: float, length: float, diameter: float,
                                          flip: bool, board: str) -> None:
    slot = Slot(id="slot", shape=StraightSlot(nut_end=(x, y), tip_end=(x, y + length), width=13.0))
    layout = plain_head(slots=(slot,), pins=(), template=Template(board=board),
                        blank=Blank(bass=bass, treble=treble, tip=tip, behind=10.0, thickness=16.0))
    pins = propose_pins(layout, flip, diameter)
    if not isinstance(pins, NoPins):
        check(layout, pins, flip)


@given(x=st.floats(-30.0, 30.0), y=st.floats(20.0, 170.0))
@settings(max_examples=20)
def test_no_legal_pair_on_a_coarse_grid_is_farther_apart(x: float, y: float) -> None:
    layout = plain_head(slots=(POCKET,), tuners=(), pins=(), template=LARGE,
                        blank=Blank(bass=60.0, treble=60.0, tip=205.0, behind=10.0, thickness=16.0),
                        holes=(REPLACE(plain_head().holes[0], at=(x, y)),))
    proposed = propose_pins(layout)
    farthest = math.dist(proposed[0].at, proposed[1].at)
    grid = [(float(a), float(b)) for a in (-54, -53, 53, 54) for b in (6, 7, 120, 198, 199)]
    legal = [p for p in grid if clearance(layout, Pin(id="p", at=p)) >= 3.0]
    assert max(math.dist(p, q) for p in legal for q in legal) <= farthest + 0.75


def test_two_boards_that_share_pins_are_drilled_together():
    """Holes drilled apart never agree; pins in the waste are in one board alone (common practice, no source)."""
    def template(layout):
        return next(op for op in operations(layout) if op.kind == "template").words
    shared = "Drill the holes of the pins that stand inside the outline through both boards at once."
    large = REPLACE(demo(), template=LARGE)
    assert template(large).startswith("Cut two templates") and template(large).endswith(shared)
    in_waste = tuple(REPLACE(pin, at=(side * 43.0, 12.0)) for pin, side in zip(large.pins, (-1, 1), strict=True))
    assert template(REPLACE(large, pins=in_waste)).startswith("Cut two templates")
    assert shared not in template(REPLACE(large, pins=in_waste))
    assert template(demo()).startswith("Cut the template to its paper")


@pytest.mark.parametrize("slant", [0.0, 15.0, -15.0])
def test_a_pin_in_the_wood_keeps_clear_of_a_slanted_nut_line_as_of_a_level_one(slant):
    """The wood at the nut is spared by 10 mm square to its line, and 2 of the pin, wherever there is room so near to it."""
    rise = round(40 * math.tan(math.radians(slant)), 1)
    outline = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, rise), (40.0, -rise), (40.0, 180.0), (-40.0, 180.0))))
    layout = REPLACE(BARE, blank=Blank(bass=50.0, treble=50.0, tip=190.0, behind=20.0, thickness=16.0), ears=(), nut=Nut(slant=slant), outline=outline)
    wood = places(layout, 2.0)[1]
    assert min(layout.nut.before(at) for at in wood.exterior.coords) == pytest.approx(layout.margins.slot_nut + 2.0, abs=1e-6)
