"""Holes and slots of a head in a picture: photographed, dark or light, and drawn in lines with others across them."""

import math

import numpy as np
import pytest
import shapely
from shapely.geometry import Polygon

from app.formats import headstock
from app.window.demo import samples
from app.window.tracing.openings import seen_in
from geometry.curves import Line, Path, circle
from geometry.layout import loop_path
from geometry.tracing.openings import Opening
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.round_shapes import Round, through_circle, through_slot
from tests.geometry.tracing.scans import Scan
from tests.geometry.tracing.test_in_lines import AT, HEAD, PLACE, Paper, found, pencil

WOOD = loop_path(headstock.read(samples() / "three-a-side.headstock.json").outline)
BORES = [circle((x, y), 5.0) for x in (-25.0, 25.0) for y in (40.0, 75.0, 110.0)]
SCREW = circle((0.0, 20.0), 1.5)
SLOTS = [Round(((-8.0, 40.0), (-8.0, 120.0)), 6.0, 0.0, 0.0).path(), Round(((9.0, 60.0), (11.0, 110.0)), 7.5, 0.0, 0.0).path()]
SHIELD = [(-12.0, 130.0), (12.0, 130.0), (9.0, 150.0), (-9.0, 150.0)]


def boxes(seen, role: str):
    return ordered(one.path for one in seen if one.role == role)


def ordered(paths):
    """The boxes of paths from left to right, those above each other from below."""
    return sorted((path.box for path in paths), key=lambda box: (round(box[0] / 5), box[1]))


def assert_near(seen, role: str, true, off: float) -> None:
    got, want = boxes(seen, role), ordered(true)
    assert len(got) == len(want) and np.abs(np.array(got) - np.array(want)).max() <= off


def in_scan(scan: Scan, path: Path) -> tuple[Opening, ...]:
    place = PlaneMap((1 / scan.per_mm, 0, scan.to_mm(np.zeros((1, 2)))[0, 0], 0, -1 / scan.per_mm, scan.to_mm(np.zeros((1, 2)))[0, 1], 0, 0, 1))
    return seen_in(path, np.repeat(scan.grey[:, :, None], 3, axis=2), place, scan.at(0.0, 60.0))


@pytest.mark.parametrize(("wood", "shade"), [(150, 20), (88, 230), (150, 110)], ids=["dark", "light", "little darker than the wood"])
def test_what_is_darker_or_lighter_than_the_wood_is_seen(wood, shade):
    seen = in_scan(Scan(WOOD, 100, wood=wood, openings=[(path, shade) for path in (*BORES, SCREW, *SLOTS)]), WOOD)
    assert_near(seen, "hole", [*BORES, SCREW], 0.12)
    assert_near(seen, "slot", SLOTS, 0.2)
    assert [one.role for one in seen] == ["slot"] * 2 + ["hole"] * 7
    assert sorted({one.size[0] for one in seen if one.role == "hole"}) == pytest.approx([3.0, 10.0], abs=0.11)


def test_what_is_little_darker_is_seen_beside_the_streaks_of_the_wood():
    streaks = [(Path(tuple(Line(p, q) for p, q in zip(corners, [*corners[1:], corners[0]], strict=True)), True), 114)
               for x in range(-30, 31, 4) for corners in [[(x, 12.0), (x + 1.4, 12.0), (x + 2.4, 140.0), (x + 1.0, 140.0)]]]
    seen = in_scan(Scan(WOOD, 100, wood=96, openings=[*streaks, *((path, 60) for path in (*BORES, *SLOTS))]), WOOD)
    assert_near(seen, "hole", BORES, 0.2)
    assert_near(seen, "slot", SLOTS, 0.3)


@pytest.mark.parametrize(("wood", "wall", "far"), [(60, 85, 170), (60, 115, 170), (150, 110, 30), (150, 90, 220)],
                         ids=["a dim wall", "a wall of the shade between", "a wall in pale wood", "a dark wall before a light ground"])
def test_an_opening_goes_as_far_as_its_wall_which_is_seen_beside_what_lies_behind(wood, wall, far):
    """A camera sees the walls of whatever is not below it: the width at the face is meant, not that of the gap."""
    openings = []
    for path in (BORES[0], BORES[4], SLOTS[1]):
        face = Polygon(path.flatten(0.005))
        gap = [*face.intersection(shapely.transform(face, lambda xy: xy + (1.6, -1.0))).exterior.coords]
        openings += [(path, wall), (Path(tuple(Line(p, q) for p, q in zip(gap, gap[1:], strict=False)), True), far)]
    seen = in_scan(Scan(WOOD, 100, wood=wood, openings=openings), WOOD)
    assert_near(seen, "hole", [BORES[0], BORES[4]], 0.25)
    assert_near(seen, "slot", SLOTS[1:], 0.25)
    assert [round(one.size[0]) for one in seen] == [15, 10, 10]


def test_a_slot_of_another_shape_is_followed():
    shield = Path(tuple(Line(p, q) for p, q in zip(SHIELD, [*SHIELD[1:], SHIELD[0]], strict=True)), True)
    one, = in_scan(Scan(WOOD, 100, wood=150, openings=[(shield, 20)]), WOOD)
    assert one.role == "slot" and one.path.area == pytest.approx(shield.area, rel=0.01) and len(one.path.corners()) == 4


def test_bare_wood_has_none_though_its_grain_is_strong_and_a_notch_of_its_edge_is_none():
    notch = circle((-33.0, 30.0), 10.0)
    assert in_scan(Scan(WOOD, 100, grain=20.0, wood=150, openings=[(notch, 20)]), WOOD) == ()


def drawn(paper: Paper) -> Paper:
    """Bores with a bushing about each, crosses, lines through all middles, slots with a line along."""
    for bore in BORES:
        (x0, y0, x1, y1), rim = bore.box, circle(((bore.box[0] + bore.box[2]) / 2, (bore.box[1] + bore.box[3]) / 2), 7.0)
        for path in (bore, rim):
            paper.line([*path.flatten(0.01), *path.flatten(0.01)[:2]], 110, 0.4)
        paper.line([(x0 - 3, (y0 + y1) / 2), (x1 + 3, (y0 + y1) / 2)], 110, 0.3)
    for x in (-25, 25, -8):
        paper.line([(x, 20), (x, 140)], 110, 0.3)
    for slot in SLOTS:
        paper.line([*slot.flatten(0.01), *slot.flatten(0.01)[:2]], 110, 0.5)
    return paper.line([(0, -20), (0, 180)], 110, 0.4)


@pytest.mark.parametrize("squares", [0, 190], ids=["plain paper", "squares"])
def test_what_is_drawn_in_lines_is_seen_whatever_runs_across(squares):
    picture = drawn(pencil(on=Paper().squares(squares) if squares else Paper())).seen(darker=0.2)
    seen = seen_in(HEAD, picture, PLACE, AT, found(picture))
    assert_near(seen, "hole", BORES, 0.2)
    assert_near(seen, "slot", SLOTS, 0.3)


def test_squares_alone_and_a_bare_head_have_none():
    for paper in (Paper(), Paper().squares(190)):
        picture = pencil(on=paper).line([(0, -20), (0, 180)], 110, 0.4).seen()
        assert seen_in(HEAD, picture, PLACE, AT, found(picture)) == ()


def test_circles_and_straight_slots_are_found_through_their_points():
    turns = np.linspace(0.0, 4.0, 40)  # two thirds of a circle
    one = through_circle(np.stack([3.0 + 5.0 * np.cos(turns), 7.0 + 5.0 * np.sin(turns)], axis=1))
    assert (*one.ends[0], one.radius, one.farthest) == pytest.approx((3.0, 7.0, 5.0, 0.0), abs=1e-6)
    slot = Round(((-3.0, 10.0), (4.0, 90.0)), 6.5, 0.0, 0.0)
    again = through_slot(slot.path().flatten(0.001))
    ends = sorted(again.ends, key=lambda end: end[1])
    assert np.array(ends) == pytest.approx(np.array(slot.ends), abs=0.01) and again.radius == pytest.approx(6.5, abs=0.005)
    assert slot.path().area == pytest.approx(math.pi * 6.5**2 + 13.0 * math.hypot(7.0, 80.0))
