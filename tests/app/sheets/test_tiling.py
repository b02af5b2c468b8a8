"""Tiles cover the whole drawing, overlap, and are as few as they can be."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.formats.errors import FormatError
from app.formats.paper import PAPERS, paper_size
from app.sheets.furniture import FRAME
from app.sheets.tiling import ARM, OVERLAP, joining_marks, tile
from geometry.drawing import Cross, Label, Stroke
from geometry.drawing.shapes import rectangle, straight

boxes = st.tuples(st.floats(-400, 400), st.floats(-400, 400), st.floats(1, 900), st.floats(1, 900)).map(
    lambda b: (b[0], b[1], b[0] + b[2], b[1] + b[3]))


def covered(windows, low, high):
    """Whether the spans cover low..high, each overlapping the next by at least 10 mm."""
    spans = sorted(set(windows))
    joined = all(a[1] - b[0] >= 10.0 - 1e-9 for a, b in zip(spans, spans[1:], strict=False))
    return joined and spans[0][0] <= low + 1e-9 and spans[-1][1] >= high - 1e-9


@given(boxes, st.sampled_from(sorted(PAPERS)))
def test_windows_cover_the_whole_drawing_with_overlap(box, paper):
    tiling = tile(box, paper, FRAME)
    windows = [t.window for t in tiling.tiles]
    assert len(windows) == tiling.rows * tiling.columns
    assert covered([(w[0], w[2]) for w in windows], box[0], box[2])
    assert covered([(w[1], w[3]) for w in windows], box[1], box[3])


@given(boxes, st.sampled_from(sorted(PAPERS)))
def test_windows_fit_inside_the_printer_margins(box, paper):
    tiling = tile(box, paper, FRAME)
    width, height = paper_size(paper, tiling.lying)
    for one in tiling.tiles:
        x0, y0, x1, y1 = one.window
        assert x1 - x0 <= width - FRAME[0] - FRAME[2] + 1e-9 and y1 - y0 <= height - FRAME[1] - FRAME[3] + 1e-9
    assert min(FRAME) >= 10.0


@given(boxes, st.sampled_from(sorted(PAPERS)))
def test_no_way_of_laying_the_paper_takes_fewer(box, paper):
    counts = []
    for lying in (False, True):
        size = paper_size(paper, lying)
        windows = (size[0] - FRAME[0] - FRAME[2], size[1] - FRAME[1] - FRAME[3])
        counts.append(math.prod(
            1 if length <= window else math.ceil((length - OVERLAP) / (window - OVERLAP) - 1e-9)
            for length, window in zip((box[2] - box[0], box[3] - box[1]), windows, strict=True)))
    tiling = tile(box, paper, FRAME)
    assert tiling.rows * tiling.columns == min(counts)


@given(boxes)
def test_joining_marks_lie_whole_on_every_page_that_they_join(box):
    tiling = tile(box, "A4", FRAME)
    crosses = [m.centre for m in joining_marks(tiling) if isinstance(m, Cross)]
    for x, y in crosses:
        on = [t for t in tiling.tiles if t.window[0] + ARM <= x <= t.window[2] - ARM
              and t.window[1] + ARM <= y <= t.window[3] - ARM]
        assert len(on) >= 2
    letters = [m.text for m in joining_marks(tiling) if isinstance(m, Label)]
    assert len(set(letters)) == len(letters) == len(crosses)


def test_every_seam_has_two_marks_on_each_stretch():
    tiling = tile((0.0, 0.0, 300.0, 400.0), "A4", FRAME)
    assert (tiling.rows, tiling.columns) == (2, 2)
    crosses = [m.centre for m in joining_marks(tiling) if isinstance(m, Cross)]
    assert len(crosses) == 8


def test_a_drawing_that_fits_is_centred_on_one_page():
    tiling = tile((0.0, 0.0, 100.0, 100.0), "A4", FRAME)
    (only,) = tiling.tiles
    assert (only.window[0] + only.window[2]) / 2 == pytest.approx(50.0)
    assert joining_marks(tiling) == () and not tiling.lying


def test_a_wide_drawing_turns_the_paper():
    assert tile((0.0, 0.0, 240.0, 100.0), "A4", FRAME).lying


def test_row_one_is_the_nut_end_and_column_one_the_left():
    tiles = tile((0.0, 0.0, 300.0, 400.0), "A4", FRAME).tiles
    assert [(t.row, t.column) for t in tiles] == [(1, 1), (1, 2), (2, 1), (2, 2)]
    assert tiles[0].window[1] < tiles[2].window[1] and tiles[0].window[0] < tiles[1].window[0]


def test_far_too_many_pages_are_refused_in_a_sentence():
    with pytest.raises(FormatError, match=r"4000 mm x 4000 mm and would take \d+ pages of A4"):
        tile((0.0, 0.0, 4000.0, 4000.0), "A4", FRAME, "wrap paper")


def test_a_seam_parts_no_words_and_holes_where_the_pages_leave_a_choice():
    """A drawing of 300 mm on pages of 246: the cut may lie from 60 to 240 mm, and at 240 it would part this name."""
    words = Label("bass side 3", (50.0, 220.0), 2.0, "dimension", angle=math.pi / 2)
    hole = Cross((80.0, 205.0), 6.0, "cross")
    high = 220.0 + 2.0 * 0.78 * len(words.text)
    (cut,) = tile((0.0, 0.0, 180.0, 300.0), "A4", FRAME, drawing=(words, hole)).seams_y
    assert high + OVERLAP / 2 < cut <= 240.0 or cut < 220.0 - OVERLAP / 2
    tall = Label("x" * 40, (50.0, 211.0), 2.0, "dimension", angle=math.pi / 2)
    (cut,) = tile((0.0, 0.0, 180.0, 300.0), "A4", FRAME, drawing=(tall, hole)).seams_y
    assert 190.0 < cut <= 199.0 - OVERLAP / 2, "the highest place that parts neither words nor hole"


def test_a_joining_mark_covers_no_words():
    """The usual place of the first one, an eighth along the seam, is taken by a name."""
    box = (0.0, 0.0, 180.0, 300.0)
    free = tile(box, "A4", FRAME)
    usual = [m.centre for m in joining_marks(free) if isinstance(m, Cross)]
    name = Label("bass", (usual[0][0] - 3.0, usual[0][1] - 1.0), 2.0, "dimension")
    border = Stroke(rectangle(-500.0, -500.0, 500.0, 500.0), "blank")
    found = [m.centre for m in joining_marks(free, (name, border)) if isinstance(m, Cross)]
    assert found[1] == usual[1] and abs(found[0][0] - usual[0][0]) > ARM and found[0][1] == usual[0][1]


def test_of_each_page_only_what_overlaps_the_next_is_printed():
    tiling = tile((0.0, 0.0, 180.0, 300.0), "A4", FRAME, drawing=(Label("x" * 60, (50.0, 200.0), 2.0, "note", angle=math.pi / 2),))
    below, above = (t.window for t in tiling.tiles)
    assert below[3] - above[1] == pytest.approx(OVERLAP) and tiling.seams_y[0] == pytest.approx(above[1] + OVERLAP / 2)


def test_a_seam_keeps_off_a_line_that_runs_along_it():
    nut = Stroke(straight((-50.0, 238.0), (50.0, 238.0)), "nut line")
    (cut,) = tile((0.0, 0.0, 180.0, 300.0), "A4", FRAME, drawing=(nut,)).seams_y
    assert 225.0 < cut <= 238.0 - OVERLAP / 2
