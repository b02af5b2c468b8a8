"""Areas of DXF drawings against closed forms: the writer is this project's own text, the truth a formula."""

import math

import pytest

from geometry.curves import Arc, Cubic
from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import areas, read

SQUARE = [(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 60.0)]
# A right triangle with a half disc on its long leg: no symmetry that could hide a mirrored arc.
FLAG = [(0.0, 0.0, 0.0), (80.0, 0.0, 1.0), (80.0, 60.0, 0.0)]
FLAG_AREA = 80 * 60 / 2 + math.pi * 30**2 / 2
KITE_KNOTS = [0, 0, 0, 0, 1, 1, 1, 1]


def bulge_area(chord: float, bulge: float) -> float:
    """Area between a chord and its arc, from radius and angle."""
    angle = 4 * math.atan(bulge)
    radius = chord / (2 * math.sin(angle / 2))
    return radius**2 / 2 * (angle - math.sin(angle))


CASES = {
    "closed polyline": (dxf.polyline([(x, y, 0) for x, y in SQUARE]), 6000.0),
    "polyline without the flag but with its first point again": (
        dxf.polyline([(x, y, 0) for x, y in [*SQUARE, SQUARE[0]]], closed=False), 6000.0),
    "polyline with the flag and its first point again": (dxf.polyline([(x, y, 0) for x, y in [*SQUARE, SQUARE[0]]]), 6000.0),
    "polyline of the eighties": (dxf.old_polyline(FLAG), FLAG_AREA),
    "half disc on a triangle": (dxf.polyline(FLAG), FLAG_AREA),
    "bulges outward": (dxf.polyline([(x, y, 0.3) for x, y in SQUARE]),
                       6000 + 2 * bulge_area(100, 0.3) + 2 * bulge_area(60, 0.3)),
    "bulges inward": (dxf.polyline([(x, y, -0.2) for x, y in SQUARE]),
                      6000 - 2 * bulge_area(100, 0.2) - 2 * bulge_area(60, 0.2)),
    "more than a half circle": (dxf.polyline([(0, 0, 2.5), (40, 0, 0), (20, 30, 0)]), bulge_area(40, 2.5) + 600),
    "two half circles": (dxf.arc((50, 50), 40, 0, 180) + dxf.arc((50, 50), 40, 180, 360), math.pi * 1600),
    "arc past zero degrees, closed by its chord": (dxf.arc((0, 0), 50, 300, 60) + dxf.line((25, -25 * math.sqrt(3)), (25, 25 * math.sqrt(3))),
                                                   2500 / 2 * (math.tau / 3 - math.sin(math.tau / 3))),
    "circle": (dxf.circle((7, -3), 45), math.pi * 45**2),
    "arc of a full turn": (dxf.arc((0, 0), 45, 0, 360), math.pi * 45**2),
    "ellipse": (dxf.ellipse((0, 0), (48, 20), 0.4), math.pi * math.hypot(48, 20) ** 2 * 0.4),
    "half ellipse with its chord": (dxf.ellipse((0, 0), (50, 0), 0.6, 0, math.pi) + dxf.line((-50, 0), (50, 0)), math.pi * 50 * 30 / 2),
    "ellipse arc past its start": (dxf.ellipse((0, 0), (50, 0), 0.6, 1.5 * math.pi, 0.5 * math.pi) + dxf.line((0, -30), (0, 30)),
                                   math.pi * 50 * 30 / 2),
    "cubic spline": (dxf.spline(3, KITE_KNOTS, [(0, 0), (0, 90), (120, 90), (120, 0)]) + dxf.line((0, 0), (120, 0)),
                     # Green's theorem on the Bezier curve: 3/20 of the cross products of its control points
                     3 / 20 * 120 * 90 + 3 / 20 * 120 * 90 + 3 / 10 * 120 * 90),
    "quadratic spline": (dxf.spline(2, [0, 0, 0, 1, 1, 1], [(0, 0), (60, 120), (120, 0)]) + dxf.line((0, 0), (120, 0)), 2 / 3 * 120 * 60),
    "straight spline": (dxf.spline(1, [0, 0, 1, 2, 3, 4, 4], [(0, 0), (100, 0), (100, 60), (0, 60), (0, 0)]), 6000.0),
    "circle as a rational spline": (
        dxf.spline(2, [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4],
                   [(40, 0), (40, 40), (0, 40), (-40, 40), (-40, 0), (-40, -40), (0, -40), (40, -40), (40, 0)],
                   [1, math.sqrt(0.5)] * 4 + [1], flags=13), math.pi * 1600),
    "loose lines": (dxf.lines(SQUARE), 6000.0),
    "loose lines in any order and direction": (
        dxf.line((100, 60), (0, 60)) + dxf.line((0, 0), (100, 0)) + dxf.line((0, 0), (0, 60)) + dxf.line((100, 60), (100, 0)), 6000.0),
    "mirrored extrusion": (dxf.polyline(FLAG, extrusion_z=-1), FLAG_AREA),
    "mirrored extrusion of an arc": (dxf.arc((-50, 0), 40, 0, 180, extrusion_z=-1) + dxf.line((10, 0), (90, 0)), math.pi * 800),
    "drawn twice": (dxf.lines(SQUARE) + dxf.lines(SQUARE), 6000.0),
    "drawn twice, backwards": (dxf.lines(SQUARE) + dxf.lines(list(reversed(SQUARE))), 6000.0),
    "closed shape drawn twice": (dxf.polyline(FLAG) + dxf.polyline(FLAG), FLAG_AREA),
    "drawn as a polyline and as lines": (dxf.polyline([(x, y, 0) for x, y in SQUARE]) + dxf.lines(SQUARE), 6000.0),
    "one side drawn again in part": (dxf.lines(SQUARE) + dxf.line((20, 0), (70, 0)), 6000.0),
    "one side drawn again beyond its end": (dxf.lines(SQUARE) + dxf.line((20, 0), (170, 0)), 6000.0),
    "corners that overshoot": (dxf.line((-2, 0), (103, 0)) + dxf.line((100, -1), (100, 66)) + dxf.line((104, 60), (-3, 60))
                               + dxf.line((0, 63), (0, -8)), 6000.0),
    "a line across": (dxf.lines(SQUARE) + dxf.line((40, -10), (40, 90)), 6000.0),
    "a line across, ending on the sides": (dxf.lines(SQUARE) + dxf.line((40, 0), (40, 60)), 6000.0),
    "a diagonal": (dxf.lines(SQUARE) + dxf.line((0, 0), (100, 60)), 6000.0),
    "a line that touches": (dxf.lines(SQUARE) + dxf.line((50, 60), (50, 80)), 6000.0),
    "a centreline": (dxf.polyline(FLAG) + dxf.line((-10, 30), (150, 30)), FLAG_AREA),
}


@pytest.mark.parametrize("name", CASES)
def test_the_outline_has_the_area_of_the_formula(name):
    entities, area = CASES[name]
    found = read(dxf.drawing(entities))
    assert found.outline is not None, found.warnings
    assert found.outline.path.area == pytest.approx(area, rel=1e-6)
    assert [loop.role for loop in found.loops] == ["outline"], areas(found)


HALF = dxf.polyline([(0, 0, 0), (40, 0, 0.4), (50, 90, 0), (0, 120, 0)], closed=False)
HALF_AREA = (40 * 90 + 50 * 120) / 2 + bulge_area(math.hypot(10, 90), 0.4)
BLOCKS = {
    "a half and its mirror image": (dxf.insert("A") + dxf.insert("A", scale=(-1, 1, 1)), 2 * HALF_AREA),
    "mirrored by a turn and the other axis": (dxf.insert("A") + dxf.insert("A", scale=(1, -1, 1), turn=180), 2 * HALF_AREA),
    "mirrored by its extrusion": (dxf.insert("A") + dxf.insert("A", extrusion_z=-1), 2 * HALF_AREA),
    "a zero scale across the drawing": (dxf.insert("A", scale=(1, 1, 0)) + dxf.insert("A", scale=(-1, 1, 0)), 2 * HALF_AREA),
    "stretched": (dxf.insert("A", scale=(2, 0.5, 1)) + dxf.insert("A", scale=(-2, 0.5, 1)), 2 * HALF_AREA),
    "turned and moved": (dxf.insert("A", (300, -20), turn=33) + dxf.insert("A", (300, -20), scale=(-1, 1, 1), turn=33), 2 * HALF_AREA),
    "blocks in blocks, the inner stretched and turned": (dxf.insert("B", scale=(1.5, 1, 1), turn=20), 1.5 * 0.8 * 2 * HALF_AREA),
    "a base point": (dxf.insert("C", (17, 4)) + dxf.insert("C", (17, 4), scale=(-1, 1, 1)), 2 * HALF_AREA),
}
BLOCK_TEXT = (dxf.block("A", HALF)
              + dxf.block("B", dxf.insert("A", scale=(1, 0.8, 1), turn=-30) + dxf.insert("A", scale=(-1, 0.8, 1), turn=-30))
              + dxf.block("C", HALF, base=(0, 60)))


@pytest.mark.parametrize("name", BLOCKS)
def test_blocks_are_unfolded_with_scale_turn_and_mirror(name):
    entities, area = BLOCKS[name]
    found = read(dxf.drawing(entities, blocks=BLOCK_TEXT), unit="mm")
    assert found.outline is not None, found.warnings
    assert found.outline.path.area == pytest.approx(area, rel=1e-7)


def test_an_array_of_inserts_turns_but_does_not_scale_its_spacing():
    text = dxf.drawing(dxf.insert("D", (5, 5), scale=(2, 2, 1), turn=90, array=(3, 2, 40, 50)),
                       blocks=dxf.block("D", dxf.circle((0, 0), 4)))
    found = read(text, unit="mm")
    middles = {tuple(round((loop.path.box[i] + loop.path.box[i + 2]) / 2, 6) for i in (0, 1)) for loop in found.loops}
    assert middles == {(5 - 50 * row, 5 + 40 * column) for row in range(2) for column in range(3)}
    assert areas(found) == pytest.approx([math.pi * 64] * 6)


def test_arcs_stay_arcs_under_blocks_that_keep_circles_round():
    text = dxf.drawing(dxf.insert("E", (3, 4), scale=(-2, 2, 2), turn=33), blocks=dxf.block("E", dxf.polyline(FLAG)))
    found = read(text, unit="mm")
    assert sum(isinstance(s, Arc) for s in found.loops[0].path) == 1
    assert found.loops[0].path.area == pytest.approx(4 * FLAG_AREA, rel=1e-12)


def test_cubics_stay_the_very_cubics_that_were_drawn():
    points = [(0, 0), (0, 90), (120, 90), (120, 0)]
    found = read(dxf.drawing(dxf.spline(3, KITE_KNOTS, points) + dxf.line((0, 0), (120, 0))))
    cubics = [s for s in found.loops[0].path if isinstance(s, Cubic)]
    assert len(cubics) == 1
    drawn = [tuple(float(c) for c in p) for p in points]
    assert [cubics[0].p0, cubics[0].c0, cubics[0].c1, cubics[0].p1] in (drawn, drawn[::-1])


def test_every_layout_of_arc_and_line_direction_gives_a_counter_clockwise_outline():
    for first, second in (((0, 180), (180, 360)), ((180, 360), (0, 180))):
        found = read(dxf.drawing(dxf.arc((0, 0), 40, *first) + dxf.arc((0, 0), 40, *second)))
        assert found.loops[0].path.area > 0
