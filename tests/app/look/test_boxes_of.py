"""Boxes along lines: all of a line lies in them, each is narrow, and they are few where a line has many short pieces."""

import math
import random
from itertools import pairwise

import pytest
from PySide6.QtGui import QPainterPath

from app.look.paths import PIECE, SMALL, boxes_of


def ring(count, radius=60.0):
    made = QPainterPath()
    made.moveTo(radius, 0.0)
    for k in range(1, count):
        made.lineTo(radius * math.cos(2 * math.pi * k / count), radius * math.sin(2 * math.pi * k / count))
    made.closeSubpath()
    return made


def stray(seed):
    chance, made, turn, x, y = random.Random(seed), QPainterPath(), 0.0, 0.0, 0.0
    made.moveTo(x, y)
    for _ in range(80):
        turn, far = turn + chance.gauss(0, 0.5), chance.choice((0.5, 2.0, 30.0))
        x, y = x + far * math.cos(turn), y + far * math.sin(turn)
        made.lineTo(x, y)
    return made


@pytest.mark.parametrize("path", [ring(4), ring(40), ring(700), *map(stray, range(4))])
def test_all_of_a_line_lies_in_narrow_boxes(path):
    boxes = boxes_of([path])
    assert len(boxes) > 1 and all(min(right - left, high - low) <= PIECE + 1e-9 for left, right, low, high in boxes)
    for line in path.toSubpathPolygons():
        for one, two in pairwise(line):
            for share in (0.0, 0.31, 0.5, 0.9):
                x, y = one.x() + (two.x() - one.x()) * share, one.y() + (two.y() - one.y()) * share
                assert any(left - 1e-9 <= x <= right + 1e-9 and low - 1e-9 <= y <= high + 1e-9 for left, right, low, high in boxes)


def test_short_pieces_share_a_box():
    assert len(boxes_of([ring(700)])) < 100


def test_what_is_small_is_one_box():
    (left, right, low, high), = boxes_of([ring(40, SMALL / 2)])
    assert (left, right) == (-SMALL / 2, SMALL / 2) and high - low <= SMALL
