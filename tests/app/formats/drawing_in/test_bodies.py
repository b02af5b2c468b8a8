"""Drawings of a whole instrument, and heads in boards and on sheets: the body, the board and the frame are no outline."""

import io
import math

import ezdxf
import pytest
from ezdxf.math import Matrix44

from app.formats.drawing_in.likeliest import is_rectangle
from app.formats.drawing_in.units import refuse_doubtful_unit
from app.formats.drawing_in.whole_neck import with_outline
from app.formats.errors import FormatError
from geometry.curves import Line, Path
from geometry.joining.placing import place
from geometry.terms import POCKET
from tests.app.formats.drawing_in.reading import read

SIDE = [(21.0, 0.0), (34.0, 24.0), (30.0, 152.0), (8.0, 178.0)]
HEAD = [*SIDE, (-24.0, 166.0), (-37.0, 38.0), (-21.0, 0.0)]
"""Corners of a lopsided head, nut 42, with an edge of its own on each side."""
NECK = [*HEAD, (-28.0, -430.0), (28.0, -430.0)]
BODY = [(60.0, -402.0), (140.0, -480.0), (115.0, -600.0), (190.0, -770.0), (150.0, -860.0)]
BODY = [*BODY, *((-x, y) for x, y in reversed(BODY))]
BORES = [(-20.0 + i, 48.0 + 18.0 * i) for i in range(6)]


def drawn(*closed, lines=(), circles=(), units: int = 4, scale: float = 1.0) -> str:
    """A DXF of closed corners, open lines and circles, with the bores of the head."""
    drawing = ezdxf.new("R2010", units=units)
    space = drawing.modelspace()
    for corners in closed:
        space.add_lwpolyline(corners, close=True)
    for corners in lines:
        space.add_lwpolyline(corners)
    for at, radius in (*circles, *((at, 4.5) for at in BORES)):
        space.add_circle(at, radius)
    for entity in list(space):
        entity.transform(Matrix44.scale(scale))
    out = io.StringIO()
    drawing.write(out)
    return out.getvalue()


def held(found, holes: int = 6):
    """The head of it, which is that of HEAD with its nut on y = 0."""
    head = found.head or found
    laid = place(head.outline.path, nut=head.nut, up=head.up)
    assert head.outline.path.mapped(laid.matrix).box == pytest.approx((-37, 0, 34, 178), abs=0.01)
    assert laid.nut_width == pytest.approx(42, abs=0.01)
    assert [loop.role for loop in head.loops].count("hole") == holes
    return head


SOUND_HOLE = ((0.0, -540.0), 50.0)
BRIDGE = [(-80.0, -690.0), (80.0, -690.0), (80.0, -720.0), (-80.0, -720.0)]
BOARD = [(-21.0, 0.0), (21.0, 0.0), (28.0, -470.0), (-28.0, -470.0)]


@pytest.mark.parametrize("shapes", [(NECK,), (NECK, BOARD), (HEAD, BOARD)])
def test_the_body_beside_a_neck_or_a_head_is_left_out_and_told(shapes):
    head = held(read(drawn(BODY, BRIDGE, *shapes, circles=[SOUND_HOLE])))
    assert any("A shape of 380.0 x 458.0 mm" in text and "wider than any headstock" in text for text in head.warnings)


def test_what_is_left_out_is_told_of_the_outline_that_the_maker_chooses():
    found = read(drawn(BODY, HEAD))
    body = with_outline(found, 0)
    assert body.outline.path.box[3] == pytest.approx(-402) and not any("wider than any headstock" in text for text in body.warnings)
    again = with_outline(body, next(i for i, loop in enumerate(body.loops) if loop.path == found.outline.path))
    assert again.loops == found.loops and again.warnings == found.warnings


def test_a_neck_whose_sides_end_on_the_body_is_closed_there():
    line = [(27.7, -402.0), *HEAD, (-27.7, -402.0)]
    held(read(drawn(BODY, BRIDGE, lines=[line], circles=[SOUND_HOLE])))


@pytest.mark.parametrize("radius", [0.0, 8.0, 20.0])
def test_a_board_with_round_corners_about_the_head_is_no_outline(radius):
    x0, y0, x1, y1, b = -75.0, -30.0, 75.0, 210.0, math.tan(math.pi / 8)
    drawing = ezdxf.new("R2010", units=4)
    space = drawing.modelspace()
    space.add_lwpolyline([(x0 + radius, y0, 0), (x1 - radius, y0, b), (x1, y0 + radius, 0), (x1, y1 - radius, b),
                          (x1 - radius, y1, 0), (x0 + radius, y1, b), (x0, y1 - radius, 0), (x0, y0 + radius, b)], format="xyb", close=True)
    space.add_lwpolyline(HEAD, close=True)
    for at in (*BORES, (-65.0, -20.0), (65.0, -20.0)):
        space.add_circle(at, 2.5)
    out = io.StringIO()
    drawing.write(out)
    head = held(read(out.getvalue()))
    assert any("A rectangle of 150.0 x 240.0 mm" in text for text in head.warnings)


def test_a_head_with_cut_shoulders_keeps_its_slots_and_is_no_board():
    """160 wide, as one drawn at twice its size is."""
    wide = [(44.0, 0.0), (80.0, 80.0), (80.0, 360.0), (-80.0, 360.0), (-80.0, 80.0), (-44.0, 0.0)]
    slot = [(30.0, 120.0), (62.0, 120.0), (62.0, 200.0), (28.0, 200.0)]
    found = read(drawn(wide, slot))
    assert [loop.role for loop in found.loops[:2]] == ["outline", "slot"]


def test_a_head_left_open_at_the_nut_is_closed_within_the_frame_of_a_sheet():
    frame = [(-110.0, -50.0), (100.0, -50.0), (100.0, 247.0), (-110.0, 247.0)]
    head = held(read(drawn(frame, lines=[HEAD])))
    assert any("open over 42.0 mm" in text for text in head.warnings)


@pytest.mark.parametrize(("units", "scale", "unit"), [(4, 0.1, "cm"), (4, 1 / 25.4, "inch"), (1, 1.0, "mm"), (5, 1.0, "mm"), (6, 1.0, "mm"), (0, 1 / 25.4, "inch")])
@pytest.mark.parametrize("shapes", [(NECK,), (NECK, BODY), ([*HEAD, (-28.0, -800.0), (28.0, -800.0)],)])
def test_a_wrong_unit_of_a_neck_or_an_instrument_is_doubted(shapes, units, scale, unit):
    """Also where it would make an outline as long as a small head, and far too narrow for one."""
    found = read(drawn(*shapes, circles=[SOUND_HOLE] if BODY in shapes else [], units=units, scale=scale))
    assert found.unit == unit and not found.unit_certain
    held(found)
    if units:
        with pytest.raises(FormatError, match="no headstock is that size"):
            refuse_doubtful_unit(found)


def test_a_body_alone_stays_what_it_is():
    found = read(drawn(BODY, circles=[SOUND_HOLE]))
    assert found.unit == "mm" and found.outline.path.box == pytest.approx((-190, -860, 190, -402), abs=0.01)


@pytest.mark.parametrize(("neck", "lines"), [
    ([*NECK], [[(-4.0, 0.0), (-4.0, 30.0), (4.0, 30.0), (4.0, 0.0)]]),  # as far as the nut line
    ([*NECK], [[(-4.0, -400.0), (-4.0, 30.0), (4.0, 30.0), (4.0, -400.0), (-4.0, -400.0)]]),  # and under it
], ids=["to the nut line", "under it"])
def test_the_pocket_of_a_truss_rod_of_a_whole_neck_is_what_of_it_lies_before_the_nut_line(neck, lines):
    head = held(read(drawn(neck, lines=[[(-21.0, 0.0), (21.0, 0.0)], *lines])))
    pocket = next(loop.path for loop in head.loops if loop.role == POCKET)
    assert pocket.box == pytest.approx((-4, 0, 4, 30), abs=0.01)


@pytest.mark.parametrize("fretboard", [(), (BOARD,)], ids=["alone", "with its fretboard"])
def test_a_nut_drawn_on_the_head_is_a_pocket_in_it_and_no_notch(fretboard):
    """The head is one open line that the nut closes."""
    nut = [(-21.0, 0.0), (21.0, 0.0), (21.0, 5.0), (-21.0, 5.0)]
    head = held(read(drawn(*fretboard, nut, lines=[HEAD])))
    assert next(loop.path.area for loop in head.loops if loop.role == POCKET) == pytest.approx(210, abs=0.1)


def test_a_stroke_too_small_for_its_own_edges_is_no_board():
    dot = Path((Line((3.58938064952e-15, 4.6208222544e-15), (5.294974474799999e-16, 5.9362377782500004e-15)),), closed=True)
    assert not is_rectangle(dot)
