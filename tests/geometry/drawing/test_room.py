"""Words find room between lines: the first place that is free, else the one that crosses least, else none."""

import math

import pytest
import shapely

from geometry.drawing import Area, Cross, Disc, Label, Stroke
from geometry.drawing import room as room_of_words
from geometry.drawing.room import Room, beside
from geometry.drawing.shapes import rectangle, straight

LINE = Stroke(straight((-50.0, 0.0), (50.0, 0.0)), "centreline")


def word(x, y):
    return [Label("word", (x, y), 2.0)]


def test_the_first_free_place_is_taken_and_is_taken_from_then_on():
    room = Room([LINE])
    choices = [word(0.0, -1.0), word(0.0, 1.0), word(0.0, -4.0)]
    assert [room.put(choices) for _ in range(2)] == [choices[1], choices[2]]


def test_a_line_is_crossed_where_nothing_else_is_left_but_neither_words_nor_holes():
    hole = Disc((3.0, 2.0), 2.0, "hole")
    assert Room([LINE, hole]).put([word(0.0, 1.0), word(20.0, -1.0)]) == word(20.0, -1.0)
    assert Room([hole]).put([word(0.0, 1.0)]) == []


def test_what_lies_below_the_face_is_crossed_as_a_line_is():
    """A bore from the side under the only place for words: they are better read across its dashes than left out."""
    bore = Area(rectangle(-10.0, -3.0, 10.0, 3.0), "side bore")
    assert Room([bore]).put([word(0.0, 0.0), word(30.0, 0.0)]) == word(30.0, 0.0)
    assert Room([bore]).put([word(0.0, 0.0)]) == word(0.0, 0.0)
    assert Room([Area(rectangle(-10.0, -3.0, 10.0, 3.0), "ramp")]).put([word(0.0, 0.0)]) == []


def test_places_beside_a_hole_keep_off_it():
    for choice in beside(["name", "8 to 5"], (10.0, 20.0), 4.0, 2.0, 3.2, "dimension", "t"):
        assert Room([Disc((10.0, 20.0), 4.0, "hole")]).put([choice]) == choice


def test_only_what_is_near_is_measured(monkeypatch):
    """Of a thousand holes in a row each word is measured against its neighbours alone."""
    room = Room(Disc((10.0 * i, 0.0), 1.0, "hole") for i in range(1000))
    measured = []
    distance = shapely.geometry.base.BaseGeometry.distance
    monkeypatch.setattr(shapely.geometry.base.BaseGeometry, "distance", lambda self, other: measured.append(1) or distance(self, other))
    for i in range(100):
        assert room.put([word(10.0 * i, 0.0), word(10.0 * i, 1.5)]) == word(10.0 * i, 1.5)
    assert 0 < len(measured) < 1000


def test_what_no_words_come_near_is_told_by_its_box_alone(monkeypatch):
    """Its exact shape is not made; an arc reaches no farther than its box, a turned word to where its letters end."""
    made = []
    shapes = room_of_words._shapes
    monkeypatch.setattr(room_of_words, "_shapes", lambda mark: made.append(mark) or shapes(mark))
    far = [Disc((10.0 * i, 100.0), 4.0, "hole") for i in range(50)]
    room = Room([LINE, *far])
    assert room.put([word(0.0, 20.0)]) == word(0.0, 20.0) and not made
    near = word(9.0, 94.0)
    assert room.put([near, word(0.0, 40.0)]) == word(0.0, 40.0) and made == [far[1], near[0]]


def test_the_box_of_a_mark_holds_its_shapes():
    marks = [LINE, Disc((3.0, 2.0), 2.0, "hole"), Cross((1.0, 2.0), 1.5, "cross"), word(1.0, 2.0)[0],
             *(Label("word", (1.0, 2.0), 2.0, "note", angle=angle, anchor=anchor)
               for angle in (0.0, math.pi / 2) for anchor in ("left", "middle", "right"))]
    for mark in marks:
        x0, y0, x1, y1 = shapely.total_bounds(room_of_words._shapes(mark))
        assert room_of_words._box(mark) == pytest.approx((x0, y0, x1, y1), abs=1e-9)
