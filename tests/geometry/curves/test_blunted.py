"""Walls like saws: filled notches change no offset, held to the polygon library without them and to an independent clipper."""

import math
import random

import pyclipper
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon

from geometry.curves.blunted import _turns, blunted
from geometry.curves.polygons import grown
from geometry.routing.fit import WITHIN, narrowest, pieces
from geometry.tolerance import QUAD_SEGS
from tests.geometry.checks.heads import drawn

SCALE = 10_000


def two_rows(teeth: int, deep: float = 1.0, between: float = 12.0):
    """Corners of a slot whose two long walls are rows of teeth, tip against tip `between` mm apart."""
    return ([(between + deep * (i % 2), 60 + 80 * i / teeth) for i in range(teeth)]
            + [(-deep * (i % 2), 140 - 80 * i / teeth) for i in range(teeth)])


def ribbon(teeth: int):
    """A band of half a millimetre that goes to and fro."""
    way = [(10 + 5 * (i % 2), 60 + 80 * i / teeth) for i in range(teeth)]
    return way + [(x - 4, y) for x, y in reversed(way)]


def keyholes(chance: random.Random, count: int) -> Polygon:
    """A room with pockets along one wall, each with a mouth that is narrower than the pocket."""
    corners, y = [(0.0, 0.0)], 0.0
    for _ in range(count):
        wide, deep = chance.uniform(0.1, 2.0), chance.uniform(0.05, 4.0)
        y += chance.uniform(0.05, 0.4)
        half, mouth = wide / 2, wide * chance.uniform(0.05, 0.5)
        middle = y + half
        corners += [(10, middle - mouth), (10.5, middle - mouth), (10.5, middle - half), (10.5 + deep, middle - half),
                    (10.5 + deep, middle + half), (10.5, middle + half), (10.5, middle + mouth), (10, middle + mouth)]
        y += wide
    return Polygon([*corners, (10.0, y + 1.0), (0.0, y + 1.0)])


def star(chance: random.Random, count: int) -> Polygon:
    """Corners at random distances about a middle."""
    least = chance.uniform(0.3, 0.98)
    return Polygon([(20 * far * math.cos(turn), 40 * far * math.sin(turn))
                    for turn, far in ((2 * math.pi * i / count, chance.uniform(least, 1.0)) for i in range(count))])


@settings(max_examples=40)
@given(st.integers(0, 10**6), st.sampled_from([star, keyholes]), st.floats(-2.5, 1.8), st.booleans())
def test_an_offset_is_the_same_without_the_bottoms_of_notches(seed, shape, size, out):
    area, by = shape(random.Random(seed), 230 if shape is star else 40), math.exp(size) * (1 if out else -1)
    teeth = blunted(area, by)
    for more in (1.0, 1.4):
        plain = shapely.buffer(area, more * by, quad_segs=QUAD_SEGS)
        made = shapely.buffer(teeth, more * by, quad_segs=QUAD_SEGS)
        # Chords of an arc stray by 0.0001 of its radius.
        assert shapely.area(shapely.symmetric_difference(plain, made)) <= 3e-4 * abs(more * by) * (plain.length + 1e-3)
        if by < 0 and not made.is_empty:
            corners = shapely.points(shapely.get_coordinates(made))
            assert shapely.covers(area, corners).all()
            assert shapely.distance(area.exterior, corners).min() >= -more * by * (1 - 4e-4), "it is told roomier than it is"


@settings(max_examples=20)
@given(st.integers(0, 10**6), st.floats(0.3, 9.0))
def test_the_clipper_agrees_on_how_many_places_a_cutter_finds_between_teeth(seed, diameter):
    area = star(random.Random(seed), 240)
    offset = pyclipper.PyclipperOffset(arc_tolerance=0.0005 * SCALE)
    offset.AddPath([(round(x * SCALE), round(y * SCALE)) for x, y in area.exterior.coords[:-1]],
                   pyclipper.JT_ROUND, pyclipper.ET_CLOSEDPOLYGON)

    def places(by, speck):
        return sum(pyclipper.Area(piece) > speck * SCALE * SCALE for piece in offset.Execute(-by / 2 * SCALE))
    # Rooms below 0.0001 mm² count for nothing: a little more or less of that, or of the diameter, may be told either way.
    either = {places(diameter + more, speck) for more in (-WITHIN, 0, WITHIN) for speck in (0.5e-4, 2e-4)}
    assert pieces(area, diameter) in either or len(either) > 1


@pytest.mark.parametrize(("corners", "wide"), [(two_rows(300), 12.0), (two_rows(300, deep=0.05), 12.0), (two_rows(150, between=3.0), 3.0)])
def test_the_tips_of_a_saw_set_the_largest_bit(corners, wide):
    assert narrowest(drawn("slot", *corners)) == pytest.approx(wide, abs=WITHIN)


def test_two_thousand_teeth_are_no_more_work_than_a_plain_wall():
    for radius in (0.5, 1.0, 3.0, 5.5):
        area = Polygon(two_rows(2000))
        assert _turns(area, out=False) > 900
        assert _turns(blunted(area, -radius), out=False) < 60 / radius
        assert shapely.get_num_coordinates(blunted(area, -radius)) <= 4010


def test_where_no_disc_has_room_nothing_is_left_to_offset():
    assert blunted(Polygon(ribbon(300)), -2.0).is_empty
    assert grown(Polygon(ribbon(300)), -2.0).is_empty


def test_a_plain_wall_is_left_as_it_is():
    for area in (Point(0, 0).buffer(20, quad_segs=200), Polygon([(0, 0), (9, 0), (9, 9), (0, 9)]), Polygon()):
        assert blunted(area, -2.0) is area and blunted(area, 2.0) is area
    several = shapely.MultiPolygon([Polygon(two_rows(300)), Point(90, 90).buffer(5)])
    assert len(blunted(several, 2.0).geoms) == 2 and blunted(several, 2.0).geoms[1].equals(several.geoms[1])
    holed = Polygon(two_rows(300), [[(5, 90), (6, 90), (6, 91), (5, 91)]])
    assert blunted(holed, -2.0) is holed
