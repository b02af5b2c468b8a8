"""The section laid by hand: what one upright plane cuts, checked against plan geometry."""

import msgspec
import pytest
import shapely

from app.window.demo import demo
from geometry.curves.polygons import polygon
from geometry.drawing import Area, Label, Stroke
from geometry.drawing.line_section import line_section
from geometry.drawing.section_cut import edge_distance
from geometry.layout import Blank, Pin, loop_path, slot_path
from geometry.solids import holes

ACROSS = ((-60.0, 115.0), (60.0, 115.0))


def spans(marks, style):
    return sorted((m.outer.box[0], m.outer.box[2]) for m in marks if isinstance(m, Area) and m.style == style)


@pytest.mark.parametrize(("outward", "far"), [
    ((1.0, 0.0), 45.0), ((-1.0, 0.0), 35.0), ((0.0, 1.0), 90.0), ((0.0, -1.0), 112.0),
    ((0.6, 0.8), 75.0), ((-0.6, 0.8), 35 / 0.6), ((0.28, 0.96), 93.75), ((-0.28, -0.96), 112 / 0.96)])
def test_the_border_of_a_lopsided_blank_is_where_a_line_on_the_face_leaves_it(outward, far):
    """30 to the bass side, 50 to the treble side, 190 to the tip and 12 behind the nut line, from (5, 100)."""
    blank = Blank(bass=30.0, treble=50.0, tip=190.0, behind=12.0, thickness=16.0)
    assert edge_distance(blank, (5.0, 100.0), outward) == pytest.approx(far)


def test_wood_and_slots_are_as_wide_as_in_plan():
    """Against the polygon library: the line's overlap with the outline and with each slot."""
    layout = demo()
    marks = line_section(layout, *ACROSS)
    line = shapely.LineString(ACROSS)
    wood = shapely.intersection(line, polygon(loop_path(layout.outline)))
    assert sum(b - a for a, b in spans(marks, "wood")) == pytest.approx(wood.length, abs=1e-6)
    slots = sum(shapely.intersection(line, polygon(slot_path(s))).length for s in layout.slots)
    assert sum(b - a for a, b in spans(marks, "slot")) == pytest.approx(slots, abs=1e-6)


def test_a_line_across_a_side_bore_cuts_it_round_and_one_along_it_as_long_as_it_is():
    layout = demo()
    bore = next(d for h in holes(layout) for d in h.drillings if d.of == "treble side 2" and d.role == "post")
    x, y = bore.start[0] - 8.0, bore.start[1]
    across = line_section(layout, (x, y - 30.0), (x, y + 30.0))
    cut = next(m.outer for m in across if isinstance(m, Area) and m.owner == bore.of and m.style == "side bore")
    x0, y0, x1, y1 = cut.box
    assert y1 - y0 == pytest.approx(bore.diameter, rel=1e-3)
    assert x1 - x0 == pytest.approx(bore.diameter / abs(bore.direction[0]), rel=1e-3)
    end, mark = bore.end[:2], bore.mark[:2]
    along = line_section(layout, mark, end)
    cut = next(m.outer for m in along if isinstance(m, Area) and m.owner == bore.of and m.style == "side bore")
    assert cut.box[2] - cut.box[0] == pytest.approx(bore.stop, rel=1e-3)


def test_a_pilot_of_a_side_tuner_begins_at_its_seat():
    """It is drilled through the plate, when the waste between the square edge and the seat is off."""
    layout = demo()
    pilot = next(d for h in holes(layout) for d in h.drillings if d.of == "treble side 2" and d.role == "screw")
    assert pilot.stop > pilot.depth + 3.0
    along = line_section(layout, pilot.mark[:2], pilot.end[:2])
    cut, = (m.outer for m in along if isinstance(m, Area) and m.owner == pilot.of and m.style == "screw pilot")
    assert (cut.box[0], cut.box[2]) == pytest.approx((pilot.stop - pilot.depth, pilot.stop))


def test_a_hole_on_the_way_parts_the_wood_beside_it():
    """Across a face tuner: the wood on either side of its widest bore is told, not what would be there without it."""
    layout = demo()
    hole = next(h for h in holes(layout) for d in h.drillings if d.of == "treble face 2" and d.role == "post")
    x, y = hole.drillings[0].start[:2]
    wide = max(d.diameter for d in hole.drillings)
    ticks = sorted({round(m.path.box[0], 3) for m in line_section(layout, (-60.0, y), (60.0, y))
                    if isinstance(m, Stroke) and m.path.box[0] == m.path.box[2]})
    assert {round(x + 60.0 - wide / 2, 3), round(x + 60.0 + wide / 2, 3)} <= set(ticks)


def test_a_pin_in_a_slot_leaves_the_length_of_the_slot_whole():
    layout = demo()
    slot = layout.slots[0]
    (x0, y0, x1, y1) = slot_path(slot).box
    x, y = (x0 + x1) / 2, (y0 + y1) / 2
    pinned = msgspec.structs.replace(layout, pins=(Pin(id="in the slot", at=(x, y), diameter=4.0),))
    bare = msgspec.structs.replace(layout, pins=())
    assert [m.text for m in line_section(pinned, (-60.0, y), (60.0, y)) if isinstance(m, Label)] == \
        [m.text for m in line_section(bare, (-60.0, y), (60.0, y)) if isinstance(m, Label)]


def test_lengths_are_written_in_the_unit_asked_for():
    layout = demo()
    assert {m.text.split()[-1] for m in line_section(layout, *ACROSS, "in") if isinstance(m, Label)} != \
        {m.text.split()[-1] for m in line_section(layout, *ACROSS) if isinstance(m, Label)}


def test_a_line_that_is_short_or_beside_the_blank_shows_nothing():
    layout = demo()
    assert line_section(layout, (0.0, 50.0), (0.5, 50.0)) == ()
    assert line_section(layout, (200.0, 0.0), (200.0, 90.0)) == ()
