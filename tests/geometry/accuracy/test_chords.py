"""Points, rays and rectangles beside walls, against the polygon library and against exact walls."""

import math

import numpy as np
import pytest
import shapely

from geometry.accuracy.chords import Chords, Strip, aside_of, hits, inside, stretch, strip_gap
from geometry.curves import Arc, Cubic, Line, Path
from geometry.drawing.shapes import chain
from geometry.layout.slots import straight_path
from geometry.solids.walls import Wall

OBLONG = Wall(straight_path((17.0, 40.0), (14.0, 150.0), 13.0))
SPIKE = Wall(Path((Line((0.0, 0.0), (40.0, 0.0)), Line((40.0, 0.0), (20.0, 4.0)), Line((20.0, 4.0), (20.0, 60.0)),
                   Arc.bulging((20.0, 60.0), (0.0, 60.0), 1.0),
                   Cubic((0.0, 60.0), (-9.0, 40.0), (9.0, 20.0), (0.0, 0.0))), closed=True))
"""With a corner of 11 degrees, a hollow corner, an arc and a curve that swings both ways."""


@pytest.mark.parametrize("wall", [OBLONG, SPIKE])
def test_signed_distances_are_those_of_the_polygon(wall: Wall) -> None:
    random = np.random.default_rng(2)
    x, y = random.uniform(-25, 60, 4000), random.uniform(-15, 170, 4000)
    found = inside(Chords.of(wall), x, y)
    spots = shapely.points(x, y)
    far = shapely.distance(wall.line, spots)
    assert found == pytest.approx(np.where(shapely.contains(wall.area, spots), far, -far), abs=1e-9)


@pytest.mark.parametrize("wall", [OBLONG, SPIKE])
def test_the_chords_kept_give_the_same_as_all(wall: Wall) -> None:
    random = np.random.default_rng(3)
    every = Chords.of(wall)
    for _ in range(20):
        at, strays = random.uniform((-10, 0), (50, 160)), random.uniform(0.1, 3.0)
        turn, far = random.uniform(0, 2 * math.pi, 300), random.uniform(0, strays, 300)
        x, y = at[0] + far * np.cos(turn), at[1] + far * np.sin(turn)
        few = every.beside(tuple(at), strays)
        assert len(few) < len(every)
        assert np.abs(inside(few, x, y) - inside(every, x, y)).max() < 1e-12


@pytest.mark.parametrize("wall", [OBLONG, SPIKE])
def test_rays_cross_where_the_exact_wall_says(wall: Wall) -> None:
    random = np.random.default_rng(4)
    for _ in range(60):
        start, turn = (45.0, float(random.uniform(0, 130))), random.uniform(2.4, 3.9)
        way = (math.cos(turn), math.sin(turn))
        exact = wall.stretches(start, way)
        enters, leaves = stretch(Chords.of(wall), *(np.array([c]) for c in (*start, *way)))
        if not exact:
            assert math.isinf(enters[0])
        elif exact[0][1] - exact[0][0] > 0.3:  # a ray that grazes a curve meets its chords elsewhere
            assert (enters[0], leaves[0]) == pytest.approx(exact[0], abs=0.05)


def test_a_ray_through_a_joint_of_chords_crosses_once() -> None:
    square = Chords.of(Wall(Path((Line((0.0, 0.0), (10.0, 0.0)), Line((10.0, 0.0), (10.0, 5.0)),
                                  Line((10.0, 5.0), (10.0, 10.0)), Line((10.0, 10.0), (0.0, 10.0)),
                                  Line((0.0, 10.0), (0.0, 0.0))), closed=True)))
    found = hits(square, np.array([20.0]), np.array([5.0]), np.array([-1.0]), np.array([0.0]))[:, 0]
    assert sorted(found[np.isfinite(found)]) == pytest.approx([10.0, 20.0])


def test_the_chords_ahead_are_all_that_rays_can_meet() -> None:
    random = np.random.default_rng(5)
    every = Chords.of(OBLONG)
    few = every.ahead((40.0, 60.0), (-1.0, 0.0), 2.0, 0.05)
    assert len(few) < len(every) / 4
    x, y = 40.0 + random.uniform(-1.2, 1.2, 500), 60.0 + random.uniform(-1.2, 1.2, 500)
    lean = random.uniform(-0.05, 0.05, 500)
    for a, b in zip(stretch(few, x, y, -np.ones(500), lean), stretch(every, x, y, -np.ones(500), lean), strict=True):
        assert (a == b).all()
    assert len(every.ahead((40.0, 60.0), (-1.0, 0.0), 2.0, 0.05, sight=18.0)) < len(few)


def test_rectangles_beside_a_slot_are_as_far_as_the_polygon_library_says() -> None:
    random = np.random.default_rng(6)
    chords = Chords.of(OBLONG)
    points = [tuple(p) for p in chords.a.tolist()]
    for _ in range(80):
        turn = random.uniform(0, 2 * math.pi)
        x, y, long, half = random.uniform((-10, 20, 2, 0.5), (45, 170, 20, 4))
        strip = Strip(*(np.array([c]) for c in (x, y, math.cos(turn), math.sin(turn), long)), half)
        found = strip_gap(strip, [(k, chords, None) for k in range(4)], points, -1.0)[0]
        box = shapely.Polygon([(strip.corners()[k][0][0], strip.corners()[k][1][0]) for k in (0, 1, 3, 2)])
        exact = shapely.distance(box, OBLONG.area)
        if exact > 0:
            assert found == pytest.approx(exact, abs=1e-9)
        else:
            # A crossing without a corner of either inside the other has no depth here.
            corners = [shapely.Point(c) for c in box.exterior.coords[:4]]
            if any(OBLONG.area.contains(c) for c in corners):
                assert found < 0


def test_a_rectangle_knows_which_points_it_holds() -> None:
    strip = Strip(*(np.array([c]) for c in (0.0, 0.0, 1.0, 0.0, 10.0)), 2.0)
    assert strip.outside(5.0, 5.0)[0] == pytest.approx(3.0)
    assert strip.outside(13.0, 6.0)[0] == pytest.approx(5.0)
    assert strip.outside(5.0, 1.5)[0] == pytest.approx(-0.5)
    assert strip.outside(9.9, 0.0)[0] == pytest.approx(-0.1)


def test_the_way_aside_is_that_of_what_lies_beside_the_length() -> None:
    """A rectangle from x = 10 to -10 and from y = -3 to 3; another one from 10 to 6, 1 mm higher, which meets no wall."""
    strip = Strip(np.array([10.0, 10.0]), np.array([0.0, 1.0]), np.array([-1.0, -1.0]), np.zeros(2), np.array([20.0, 4.0]), 3.0)
    low = ((-5.0, -5.0), (4.0, -5.0), (4.0, 2.0), (-5.0, 2.0))
    # Up over y = 2 it goes by 5, down under y = -5 by 8; where one wall rises beside it to 40, down is the nearer way.
    assert aside_of(Chords.of(Wall(chain(low, closed=True))), strip).tolist() == [5.0, 0.0]
    assert aside_of(Chords.of(Wall(chain((*low, (-30.0, 40.0)), closed=True))), strip).tolist() == [8.0, 0.0]


def test_the_chords_beside_are_all_that_tell_how_far_rectangles_go_aside() -> None:
    random = np.random.default_rng(8)
    turn = np.linspace(0.0, 2 * math.pi, 601)
    far = 20.0 + 2.0 * np.sin(11 * turn)
    corners = list(zip((far * np.cos(turn)).tolist(), (far * np.sin(turn)).tolist(), strict=True))
    waves = Wall(Path(tuple(Line(a, b) for a, b in zip(corners[:-1], corners[1:-1] + corners[:1], strict=True)), closed=True))
    every, kept = Chords.of(waves), []
    for _ in range(40):
        start, heading = random.uniform(-15.0, 15.0, 2), random.uniform(0.0, 2 * math.pi)
        way, length, half, strays = (math.cos(heading), math.sin(heading)), random.uniform(5.0, 40.0), 3.0, random.uniform(0.1, 1.0)
        first, last = (start[:, None] + np.array(way)[:, None] * at + strays * np.array([np.cos(lean), np.sin(lean)])
                       for at, lean in ((0.0, random.uniform(0, 7, 300)), (length, random.uniform(0, 7, 300))))
        along = last - first
        size = np.hypot(*along)
        strip = Strip(*first, *(along / size), size, half)
        few = every.flanking(tuple(start), way, length, half, strays)
        kept.append(len(few))
        assert (aside_of(few, strip) == aside_of(every, strip)).all()
    assert np.median(kept) < len(every) / 3
    assert len(every.flanking((0.0, 0.0), (1.0, 0.0), 20.0, 3.0, 1e6)) == len(every)
