"""Snapping: what it catches, in which order, and what it says."""

import pytest

from app.tools import Options
from app.tools.snap import Snapper, constrained
from app.tools.snap_along import AlongSnapper
from geometry.layout import FreePlace, Tuner
from tests.geometry.edits.heads import FACE, plain, twelve

PIXEL = 0.1


def faces(*points):
    return plain(rows=(), slots=(), holes=(), pins=(), tuners=tuple(
        Tuner(id=f"t {k}", pattern=FACE, place=FreePlace(at=at)) for k, at in enumerate(points)))


@pytest.mark.parametrize(("p", "at", "words"), [
    ((30.3, 60.4), (30.0, 60.0), "axis of t 0"),
    ((-25.2, 100.1), (-25.0, 100.0), "mirrors t 1"),
    ((27.4, 80.3), (27.5, 80.0), "midway between t 0 and t 1"),
    ((20.2, 139.9), (20.0, 140.0), "same step as from t 0 to t 1"),
    ((34.9, 20.2), (35.0, 20.0), "same step as from t 1 to t 0"),
    ((0.3, 120.2), (0.0, 120.0), "centreline"),
    ((12.3, 0.4), (12.0, 0.0), "nut line"),
    ((12.3, 60.4), (12.0, 60.0), "level with t 0"),
    ((0.2, 59.8), (0.0, 60.0), "centreline and level with t 0"),
    ((30.4, 130.3), (30.0, 130.0), "in line with t 0"),
    ((12.4, 33.6), (12.0, 34.0), "grid 1 mm"),
    ((0.2, -0.3), (0.0, 0.0), "nut line on the centreline"),
])
def test_what_is_caught(p, at, words):
    snap = Snapper(faces((30.0, 60.0), (25.0, 100.0)), Options()).point(p, PIXEL)
    assert snap.point == pytest.approx(at)
    assert snap.words == words
    assert words.startswith("grid") or words in ("centreline", "nut line") or snap.marks


def test_switched_off_a_place_is_only_rounded():
    snapper = Snapper(faces((30.0, 60.0)), Options())
    assert snapper.point((30.011, 60.0249), PIXEL, off=True).point == (30.01, 60.02)
    assert Snapper(faces(), Options(snapping=False)).point((0.011, 60.0249), PIXEL).point == (0.01, 60.02)
    assert Snapper(faces(), Options(grid=None)).point((12.344, 60.0249), PIXEL).point == (12.34, 60.02)
    assert Snapper(faces(), Options(grid=6.35, unit="in")).point((12.5, 60.0), PIXEL).words == 'grid 0.25"'


def test_what_moves_along_attracts_nothing():
    snapper = Snapper(faces((30.0, 60.0), (25.0, 100.0)), Options(), ignore={"t 0"})
    assert snapper.point((30.3, 60.4), PIXEL).words == "grid 1 mm"


def test_the_other_axis_is_left_alone():
    snap = Snapper(faces((30.0, 60.0)), Options()).point((30.2, 61.234), PIXEL, axis=0)
    assert snap.point == (30.0, 61.234) and snap.words == "in line with t 0"


@pytest.mark.parametrize("options", [Options(), Options(grid=None), Options(snapping=False)])
def test_what_shift_keeps_is_not_rounded(options):
    """3/16 in, 4.7625 mm, stays what it is when the thing is moved along the other axis."""
    to, axis = constrained((20.0, 4.7625), (26.4, 5.1), True)
    assert Snapper(faces(), options).point(to, PIXEL, axis=axis).point[1] == 4.7625
    to, axis = constrained((4.7625, 20.0), (5.1, 26.4), True)
    assert Snapper(faces(), options).point(to, PIXEL, axis=axis).point[0] == 4.7625


def test_nodes_and_walls():
    snapper = Snapper(plain(), Options(), shape=True)
    assert snapper.point((39.8, 179.7), PIXEL).words == "node 3 of the outline"
    wall = snapper.point((39.8, 91.27), PIXEL, walls=True)
    assert wall.words == "on the outline" and wall.point == pytest.approx((40.0, 91.27))
    assert snapper.point((23.3, 91.27), PIXEL, walls=True).words == "on treble slot"
    own = snapper.point((12.3, 33.7), PIXEL, own=(("node 1 of this line", (5.0, 33.5)),))
    assert own.words == "level with node 1 of this line" and own.point == (12.0, 33.5)


def test_shift_keeps_one_axis():
    assert constrained((1.0, 2.0), (5.0, 3.0), True) == ((5.0, 2.0), 0)
    assert constrained((1.0, 2.0), (2.0, 9.0), True) == ((1.0, 9.0), 1)
    assert constrained((1.0, 2.0), (2.0, 9.0), False) == ((2.0, 9.0), None)


def test_along_an_edge():
    """Side tuners at 62.5, 97.5 and 132.5, face tuners at 45, 80 and 115 along each edge."""
    snapper = AlongSnapper(twelve(), Options(), ignore={"treble side 2"})
    for along, caught, said in ((97.2, 97.5, "midway between treble side 1 and treble side 3"),
                                (62.2, 62.5, "midway between treble face 1 and treble face 2"),
                                (80.3, 80.0, "beside treble face 2"), (70.3, 70.0, "grid 1 mm")):
        stop = snapper.snap("treble", along, PIXEL)
        assert stop.along == pytest.approx(caught, abs=1e-6) and stop.words == said
    assert snapper.snap("treble", 70.333, PIXEL, off=True).along == 70.33
    far = AlongSnapper(plain(), Options())
    assert far.snap("treble", 180.0, PIXEL).along == pytest.approx(180.0)
    assert far.snap("treble", 30.2, PIXEL).words == "opposite flank 0"
    assert far.snap("bass", 119.7, PIXEL).words == "same step as from flank 1 to flank 2"
