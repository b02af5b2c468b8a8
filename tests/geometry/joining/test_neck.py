"""The head of a whole neck: where its nut line is proposed, and what is left when it is cut there."""

import math

import pytest

from geometry import vectors as v
from geometry.curves import MIRROR, Cubic, Line, Path, shift, turn
from geometry.errors import GeometryError
from geometry.joining.neck import beyond, head_of, neck_of, nut_at
from geometry.joining.placing import place

SIDE = [(28.0, -420.0), (21.5, 0.0), (30.0, 20.0), (43.0, 45.0), (38.0, 150.0), (20.0, 180.0)]
"""The treble side from heel to tip, nut line at y 0: 43 wide there, 56 at the heel."""
HEEL = [(-24.0, -450.0), (0.0, -465.0), (24.0, -450.0)]


def loop(corners) -> Path:
    return Path(tuple(Line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)), closed=True)


def both(side=SIDE, heel=HEEL) -> Path:
    return loop([*side, *((-x, y) for x, y in reversed(side)), *heel])


@pytest.mark.parametrize("degrees", [0, 90, 180, 270, 33])
@pytest.mark.parametrize("reversed_", [False, True])
def test_the_nut_line_lies_where_the_sides_turn_however_the_neck_lies(degrees, reversed_):
    lies = turn(math.radians(degrees)).after(shift(50, 70))
    outline = both().mapped(lies)
    outline = outline.reversed() if reversed_ else outline
    neck = neck_of(outline)
    assert neck.nut == pytest.approx(lies((0, 0)), abs=1e-6)
    assert neck.length == pytest.approx(180) and not neck.drawn and neck.slope == pytest.approx(0, abs=1e-9)
    head = head_of(outline, neck, neck.length)
    edge = head.segments[-1]
    laid = place(head, nut=(edge.start, edge.end))
    # Its flat tip of 40 mm would do for a nut as well.
    assert laid.nut_width == pytest.approx(43, abs=1e-4)
    assert head.mapped(laid.matrix).box == pytest.approx((-43, 0, 43, 180), abs=1e-4)


def test_a_side_that_runs_straight_on_into_the_head_does_not_hide_the_nut_line():
    """All posts on one side: the bass side goes on at the taper of the neck, the treble side turns at the nut."""
    taper = 6.5 / 420
    outline = loop([(28, -420), (21.5, 0), (35, 30), (48, 60), (30, 210), (0, 215), (-21.5 + 180 * taper, 180), (-28, -420)])
    neck = neck_of(outline)
    assert neck.nut == pytest.approx((0, 0), abs=1e-6) and neck.length == pytest.approx(215)


def test_a_line_across_the_neck_tells_the_place_and_the_slant():
    """Drawn 4 mm behind where the sides turn, from edge to edge and beyond; 5 degrees; the first fret is none."""
    rise = math.tan(math.radians(5))
    nut, fret = Line((-25, -4 - 25 * rise), (25, -4 + 25 * rise)), Line((22, -38), (-22, -38))
    neck = neck_of(both(), [fret, nut, Line((0, -30), (0, 30)), Line((-40, -1), (-10, -1))])
    assert neck.drawn and neck.nut == pytest.approx((0, -4), abs=1e-6) and neck.length == pytest.approx(184)
    assert math.degrees(neck.slope) == pytest.approx(5)
    head = head_of(both(), neck, neck.length)
    edge = head.segments[-1]
    laid = place(head, slanted=True, nut=(edge.start, edge.end))
    assert laid.slant == pytest.approx(-5, abs=1e-6)
    assert all(p[1] == pytest.approx(-4 + p[0] * rise, abs=1e-4) for p in (edge.start, edge.end))


def test_a_square_shoulder_at_the_nut_does_not_widen_it():
    """One step of 7 mm on the treble side: the centreline stays that of the neck."""
    outline = loop([(28, -420), (21.5, 0), (28.5, 0), (40, 60), (38, 150), (-38, 150), (-43, 45), (-21.5, 0), (-28, -420)])
    neck = neck_of(outline)
    edge = head_of(outline, neck, neck.length).segments[-1]
    assert (edge.start, edge.end) == (pytest.approx((-21.5, 0), abs=1e-4), pytest.approx((21.5, 0), abs=1e-4))


def test_the_maker_may_want_it_elsewhere_but_on_the_neck():
    neck = neck_of(both())
    head = head_of(both(), neck, 200)
    assert head.box == pytest.approx((-43, -20, 43, 180), abs=1e-4)
    assert nut_at(neck, 200) == pytest.approx((0, -20), abs=1e-9)
    for length in (900, -5, 0, math.nan):
        with pytest.raises(GeometryError, match="does not cross the neck"):
            head_of(both(), neck, length)
    with pytest.raises(GeometryError, match="5 mm from the tip leaves no headstock: that is 30 mm long at the least"):
        head_of(both(), neck, 5)


def test_what_lies_behind_the_nut_line_is_known():
    neck = neck_of(both())
    behind, ahead, over = (loop([(-5, y), (5, y), (5, y + 20), (-5, y + 20)]) for y in (-20, 5, -10))
    assert beyond(behind, neck, 180) and not beyond(ahead, neck, 180) and not beyond(over, neck, 180)


@pytest.mark.parametrize("outline", [
    loop([(28, 0), (21, 460), (-21, 460), (-28, 0)]),  # a fretboard
    loop([(22, 0), (40, 40), (40, 190), (-40, 190), (-40, 40), (-22, 0)]),
    loop([(22, 0), (35, 40), (37, 190), (-37, 190), (-35, 40), (-22, 0)]),  # heads that are as narrow as necks for most of their length
    loop([(22, 0), (35, 60), (34, 210), (-34, 210), (-35, 60), (-22, 0)]),
    loop([(6, 0), (6, 400), (-6, 400), (-6, 0)]),
])
def test_what_has_no_head_behind_two_long_sides_is_no_neck(outline):
    assert neck_of(outline) is None


@pytest.mark.parametrize("bow", [-1.5, -0.4, 0.4, 1.5])
@pytest.mark.parametrize("degrees", [0, 90, 33])
@pytest.mark.parametrize("smooth", [False, True])
def test_sides_that_are_slightly_bowed_tell_the_nut_line_too(bow, degrees, smooth):
    """Each one cubic from heel to nut line; a corner there, or a flare that begins along it and in the same curve of many."""
    side = Cubic((28.0, -420.0), (26.0 + bow * 4 / 3, -280.0), (23.5 + bow * 4 / 3, -140.0), (21.5, 0.0))
    away = v.unit(v.sub(side.p1, side.c1))
    flare = Cubic((21.5, 0.0), v.along((21.5, 0.0), away, 12.0) if smooth else (30.0, 10.0), (43.0, 25.0), (43.0, 45.0))
    right = [side, flare, Line((43.0, 45.0), (38.0, 150.0)), Line((38.0, 150.0), (20.0, 180.0))]
    left = [s.mapped(MIRROR).reversed() for s in reversed(right)]
    lies = turn(math.radians(degrees))
    outline = Path((*right, Line((20.0, 180.0), (-20.0, 180.0)), *left, Line((-28.0, -420.0), (28.0, -420.0))), closed=True).mapped(lies)
    neck = neck_of(outline)
    # A flare that begins along the side is off it by OFF_LINE after some mm.
    assert neck.length == pytest.approx(180, abs=6.0 if smooth else 0.3)
    assert neck.nut == pytest.approx(lies((0.0, 180.0 - neck.length)), abs=0.05)
    assert neck.to_tip == pytest.approx(turn(math.radians(degrees))((0.0, 1.0)), abs=1e-4)


def test_a_stub_of_a_neck_is_one_where_a_line_across_tells_the_nut():
    """As a neck is drawn that is broken off 60 mm behind its head, whose own sides run longer beside each other."""
    side = [(23.0, -60.0), (21.5, 0.0), (38.0, 38.0), (42.0, 165.0), (20.0, 184.0)]
    outline = loop([*side, *((-x, y) for x, y in reversed(side))])
    neck = neck_of(outline, [Line((-21.5, 0.0), (21.5, 0.0))])
    assert neck.drawn and neck.length == pytest.approx(184) and neck.nut == pytest.approx((0, 0), abs=1e-6)
    assert neck_of(outline) is None
    assert neck_of(outline, [Line((-38.0, 38.0), (38.0, 38.0)), Line((-22.3, -30.0), (22.3, -30.0))]) is None


@pytest.mark.parametrize(("zigzag", "known"), [([(-6.0, 0.0), (-2.0, 6.0), (2.0, -6.0), (6.0, 0.0)], True), ([], False)])
def test_a_short_stub_is_one_where_it_is_broken_off_and_none_where_a_straight_edge_may_be_the_nut(zigzag, known):
    """A line 12 mm in front of a straight end may be what is laid behind a nut on straight sides."""
    outline = both([(21.7, -12.0), *SIDE[1:]], [(x, y - 12.0) for x, y in zigzag])
    neck = neck_of(outline, [Line((-21.5, 0.0), (21.5, 0.0))])
    assert (neck is not None) == known and (neck is None or neck.nut == pytest.approx((0, 0), abs=1e-6))
    assert neck_of(outline) is None


def test_a_bow_drawn_in_many_short_lines_tells_the_nut_line():
    """Half a wave of a sine 1.5 mm high over 430 mm, which is no parabola."""
    side = [(21.5 + 6.5 * -y / 430 + 1.5 * math.sin(math.pi * -y / 430), float(y)) for y in range(-430, 1)]
    right = [*side, (30.0, 12.0), (43.0, 45.0), (38.0, 150.0), (20.0, 180.0)]
    neck = neck_of(loop([*right, *((-x, y) for x, y in reversed(right))]))
    assert neck.length == pytest.approx(180, abs=1.0)


@pytest.mark.parametrize("corners", [100, 200, 400])
def test_a_long_leaf_has_no_neck(corners):
    """Its flanks run beside each other, and bow more than the side of a neck does."""
    angles = [2 * math.pi * i / corners for i in range(corners)]
    assert neck_of(loop([(67.2 * math.cos(a) + 105.2 * math.sin(a), 110.5 * math.cos(a) + 644.4 * math.sin(a)) for a in angles])) is None
