"""Boxes along lines: all of a line lies in them, each is narrow, and they are few where a line has many short pieces."""

import math
import random
from itertools import pairwise

import pytest

from app.look.paths import PIECE, SMALL, STRAY, boxes_of
from geometry.curves import Arc, Cubic, Line, Path
from geometry.drawing import Area, Cross, Disc, Label, Stroke


def through(*points):
    return Path(tuple(Line(*pair) for pair in pairwise(points)))


def ring(count, radius=60.0):
    return through(*((radius * math.cos(2 * math.pi * k / count), radius * math.sin(2 * math.pi * k / count)) for k in range(count)),
                   (radius, 0.0))


def stray(seed):
    chance, turn, points = random.Random(seed), 0.0, [(0.0, 0.0)]
    for _ in range(80):
        turn, far = turn + chance.gauss(0, 0.5), chance.choice((0.5, 2.0, 30.0))
        points.append((points[-1][0] + far * math.cos(turn), points[-1][1] + far * math.sin(turn)))
    return through(*points)


CURVED = Path((Cubic((0.0, 0.0), (60.0, -50.0), (90.0, 80.0), (120.0, 10.0)), Arc.bulging((120.0, 10.0), (140.0, 90.0), 0.6)))


@pytest.mark.parametrize("path", [ring(4), ring(40), ring(700), *map(stray, range(4)), CURVED])
@pytest.mark.parametrize("marked", [Stroke, Area])
def test_all_of_a_line_lies_in_narrow_boxes(path, marked):
    boxes = boxes_of((marked(path, "outline"),))
    assert len(boxes) > 1 and all(min(right - left, high - low) <= PIECE + 1e-9 for left, right, low, high in boxes)
    off = 1e-9 if path is not CURVED else STRAY
    for piece in path:
        for share in (0.0, 0.31, 0.5, 0.9, 1.0):
            x, y = piece.point(share)
            assert any(left - off <= x <= right + off and low - off <= y <= high + off for left, right, low, high in boxes)


def test_short_pieces_share_a_box():
    assert len(boxes_of((Stroke(ring(700), "outline"),))) < 100


def test_what_is_small_is_one_box():
    (left, right, low, high), = boxes_of((Stroke(ring(40, SMALL / 2), "outline"),))
    assert (left, right) == (-SMALL / 2, SMALL / 2) and high - low <= SMALL
    assert boxes_of((Disc((10.0, 20.0), 4.0, "post bore"), Cross((13.0, 20.0), 3.0))) == ((6.0, 16.0, 16.0, 24.0),)


def test_round_and_cross_things_beside_a_long_line_are_covered_each_as_a_whole():
    line = Stroke(through((0.0, 0.0), (0.0, 2 * SMALL)), "string")
    assert set(boxes_of((line, Disc((10.0, 20.0), 4.0, "post bore"), Cross((10.0, 20.0), 1.0)))) == {
        (0.0, 0.0, 0.0, 2 * SMALL), (6.0, 14.0, 16.0, 24.0), (9.0, 11.0, 19.0, 21.0)}


def test_words_are_no_lines():
    assert boxes_of((Label("here", (0.0, 0.0), 3.0),)) == boxes_of(()) == ()
