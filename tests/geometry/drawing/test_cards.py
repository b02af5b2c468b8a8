"""The small pictures of the drilling cards, on heads whose numbers are worked out by hand."""

import math

import pytest

from geometry.drawing import STYLES, Area, Cross, Label, Stroke
from geometry.drawing.cards import block_picture, mark_picture, scale_words
from tests.geometry.drawing.specimens import leaning_head, plain_head

ROOM = (40.0, 31.0)
# Edges leaning out by 1 in 9, seat at 45 mm along them, square edge at 50:
LEAN = math.atan(1 / 9)
SEAT = (30.0 + 45.0 * math.sin(LEAN), 45.0 * math.cos(LEAN))
ACROSS = 50.0 - SEAT[0]
MISS = -ACROSS * math.tan(LEAN)
"""The normal leans to the nut, so the axis meets the square edge nearer to the nut than the seat."""


def crosses(picture):
    return [mark for mark in picture.drawing if isinstance(mark, Cross)]


def test_the_mark_and_the_place_that_squaring_across_would_give():
    picture = mark_picture(leaning_head(), "flank", ROOM)
    here, there = crosses(picture)
    assert here.centre == pytest.approx((50.0, SEAT[1] + MISS), abs=1e-9)
    assert there.centre == pytest.approx((50.0, SEAT[1]), abs=1e-9)
    assert there.angle == pytest.approx(math.pi / 4) and here.angle == 0.0
    assert [m.text for m in picture.drawing if isinstance(m, Label)] == ["mark here", "not there"]


def test_the_bass_side_is_its_mirror_image():
    treble, bass = (mark_picture(leaning_head(), id, ROOM) for id in ("flank", "other"))
    assert bass.scale == treble.scale
    for one, other in zip(crosses(treble), crosses(bass), strict=True):
        assert other.centre == pytest.approx((-one.centre[0], one.centre[1]), abs=1e-9)
    assert bass.box == pytest.approx((-treble.box[2], treble.box[1], -treble.box[0], treble.box[3]), abs=1e-9)


def test_a_level_bore_has_one_mark_only():
    picture = mark_picture(plain_head(), "flank", ROOM)
    assert [cross.centre for cross in crosses(picture)] == [pytest.approx((45.0, 100.0))]
    # The blank ends at 45; it goes on past the picture to all other sides.
    (waste,) = (m.outer.box for m in picture.drawing if isinstance(m, Area) and m.style == "waste")
    assert waste == pytest.approx((picture.box[0], picture.box[1] - 1.0, 45.0, picture.box[3] + 1.0))
    assert not any("not" in m.text for m in picture.drawing if isinstance(m, Label))


def test_words_of_the_two_marks_stand_clear_of_each_other():
    """Marks 0.2 mm apart: the words are pushed apart, the marks are not."""
    labels = [m for m in mark_picture(leaning_head(), "flank", (38.0, 31.0), 1.4).drawing if isinstance(m, Label)]
    scale = mark_picture(leaning_head(), "flank", (38.0, 31.0), 1.4).scale
    assert abs(labels[0].at[1] - labels[1].at[1]) * scale >= 2.0 * 1.4
    assert all(label.height * scale == pytest.approx(1.4) for label in labels)


@pytest.mark.parametrize("room", [(30.0, 30.0), (40.0, 31.0), (100.0, 31.0)])
def test_the_picture_fills_its_room_in_a_usual_scale(room):
    picture = mark_picture(leaning_head(), "flank", room)
    x0, y0, x1, y1 = picture.box
    assert picture.scale in (5.0, 2.0, 1.0, 0.5, 0.2)
    assert (x1 - x0) * picture.scale <= room[0] + 1e-9 and (y1 - y0) * picture.scale == pytest.approx(room[1])
    for cross in crosses(picture):
        assert x0 < cross.centre[0] < x1 and y0 < cross.centre[1] < y1


def test_a_face_tuner_has_no_such_picture():
    assert mark_picture(plain_head(), "front", ROOM) is None


def test_every_mark_has_a_known_style():
    for drawing in (mark_picture(leaning_head(), "flank", ROOM).drawing, block_picture()):
        assert {mark.style for mark in drawing} <= set(STYLES)


def test_the_sketch_of_the_blocks_is_a_right_triangle():
    """L along the board, H upright: H = L sin(tilt), and the board rests on the corner of the block."""
    tilt, length = math.radians(12.0), 60.0
    marks = block_picture()
    block = next(m for m in marks if isinstance(m, Area) and m.style == "router base").outer.box
    assert block[3] - block[1] == pytest.approx(length * math.sin(tilt))
    assert math.hypot(block[0], block[3]) == pytest.approx(length)
    measured = [m.path.length for m in marks if isinstance(m, Stroke) and m.style == "dimension"]
    assert any(one == pytest.approx(length) for one in measured)
    assert any(one == pytest.approx(length * math.sin(tilt)) for one in measured)


def test_scales_in_words():
    assert [scale_words(s) for s in (1.0, 0.5, 2.0)] == ["full size", "half size", "twice full size"]
    assert scale_words(0.1) == "0.1 of full size"
