"""Ramps and flats where they are cut: in sections, step by step, and in space; every number by hand."""

import math

import msgspec
import numpy as np
import pytest

from geometry.drawing.line_section import line_section
from geometry.drawing.marks import Area, Stroke
from geometry.drawing.ramp_section import flat_sections, ramp_sections
from geometry.drawing.section_cut import SectionLine
from geometry.drawing.sections import section_along_bore
from geometry.drawing.solid import solid
from geometry.drawing.step_views import step_views
from geometry.drawing.turning import FACE, View, turned
from geometry.layout import Ramp, Slot, StraightSlot
from geometry.layout.tuners import Flat
from geometry.sequence import best_order, operations, precedence
from tests.geometry.sequence.specimens import THROUGH, stocked

SHAPE = StraightSlot(nut_end=(17.0, 40.0), tip_end=(17.0, 150.0), width=13.0)
"""Its nut end is at y = 33.5, so a ramp 12 long begins at 21.5."""
RAMPED = Slot(id="slot", shape=SHAPE, ramp=Ramp(length=12.0, depth=5.0))


def head(flat: Flat | None = None):
    plain = stocked(slots=(RAMPED,))
    return msgspec.structs.replace(plain, tuners=tuple(
        msgspec.structs.replace(t, flat=flat) if t.id == "flank" else t for t in plain.tuners))


def slots(drawing):
    return [m.outer for m in drawing if isinstance(m, Area) and m.style == "slot"]


def test_along_the_slot_a_ramp_is_a_wedge():
    """From (11.5, 0) down to the slot: 5 deep at 23.5, 6.5 * 5 / 12 more where the slot has its full width, at 30."""
    wedge, slot = slots(line_section(head(), (17.0, 10.0), (17.0, 170.0)))
    assert wedge.box == pytest.approx((11.5, -5.0 - 6.5 * 5 / 12, 30.0, 0.0))
    assert abs(wedge.area) == pytest.approx(18.5 * 18.5 * 5 / 12 / 2)
    assert slot.box == pytest.approx((23.5, -16.0, 146.5, 0.0), abs=1e-4)


def test_across_it_a_ramp_is_a_box_as_deep_as_it_is_there():
    """At y = 27.5 it is 6 mm on its way: 2.5 deep, 13 wide about x = 17."""
    (box,) = slots(line_section(head(), (-20.0, 27.5), (39.0, 27.5)))
    assert box.box == pytest.approx((30.5, -2.5, 43.5, 0.0))
    assert line_section(head(), (-20.0, 21.0), (39.0, 21.0)) and not slots(line_section(head(), (-20.0, 21.0), (39.0, 21.0)))


def test_a_ramp_ends_at_the_floor_of_a_blind_slot():
    """4 deep after 9.6 of 18.5: a slope, then level."""
    blind = msgspec.structs.replace(RAMPED, depth=4.0)
    (shape,) = ramp_sections(blind, SectionLine((17.0, 0.0), (0.0, 1.0)), 16.0)
    assert shape.box == pytest.approx((21.5, -4.0, 40.0, 0.0))
    assert abs(shape.area) == pytest.approx(9.6 * 4 / 2 + 8.9 * 4)
    assert ramp_sections(msgspec.structs.replace(RAMPED, ramp=None), SectionLine((17.0, 0.0), (0.0, 1.0)), 16.0) == []


def test_the_section_of_a_tuner_shows_the_ramp_that_it_meets():
    """The side tuner's axis at y = 27.5 runs over the ramp: from the square edge at 45 it lies 21.5 to 34.5 in."""
    moved = head()
    flank = moved.tuners[1]
    moved = msgspec.structs.replace(moved, tuners=(moved.tuners[0], msgspec.structs.replace(
        flank, place=msgspec.structs.replace(flank.place, along=27.5))))
    assert [shape.box for shape in slots(section_along_bore(moved, "flank"))] == [pytest.approx((21.5, -2.5, 34.5, 0.0))]


def test_flats_take_their_depth_off_the_edge():
    """1.2 deep into the edge at x = 40, 24 long about y = 100; a round spot of 10 is 6 high 4 mm off its middle."""
    line = SectionLine((0.0, 104.0), (1.0, 0.0))
    ((of, shape),) = flat_sections(head(Flat(size=24.0, depth=1.2)), line)
    assert of == "flank" and shape.box == pytest.approx((38.8, -16.0, 43.0, 0.0))
    ((_, spot),) = flat_sections(head(Flat(shape="spot", size=10.0, depth=1.2)), line)
    assert spot.box[1::2] == pytest.approx((-11.0, -5.0))
    assert flat_sections(head(Flat(size=24.0, depth=1.2)), SectionLine((0.0, 113.0), (1.0, 0.0))) == []
    assert flat_sections(head(Flat(size=24.0, depth=1.2)), line, set()) == []
    # Aslant over the spot, from x = 38.8 to 43: half-way, 2 mm off its middle along the edge, it is sqrt(25 - 4) high.
    ((_, slanting),) = flat_sections(head(Flat(shape="spot", size=10.0, depth=1.2)), SectionLine((10.9, 62.0), (0.6, 0.8)))
    assert slanting.box == pytest.approx((46.5, -8.0 - 21 ** 0.5, 53.5, -8.0 + 21 ** 0.5))


def test_steps_show_what_the_file_takes():
    layout = head(Flat(size=24.0, depth=1.2))
    ops = operations(layout, {"slot": THROUGH, "outline": THROUGH})
    by_id = {op.id: op for op in ops}
    order = [by_id[id] for id in best_order(ops, precedence(layout, ops)).steps]

    def seen(kind):
        at = next(i for i, op in enumerate(order) if op.kind == kind)
        return step_views(layout, order, at, ops), step_views(layout, order, at - 1, ops)

    def taken(drawing):
        return sum(abs(m.outer.area) for m in drawing if isinstance(m, Area) and m.style == "removed")

    ramp, before = seen("ramp")
    # 13 by 18.5 less the half round that the slot has taken; in the section the triangle before the slot's end.
    assert taken(ramp.plan) == pytest.approx(13 * 18.5 - math.pi * 6.5 ** 2 / 2, abs=0.1)
    assert taken(ramp.section) == pytest.approx(12 * 5 / 2, abs=0.01)
    assert any(m.style == "ramp" for m in ramp.plan) and not any(m.style == "ramp" for m in before.plan)
    flat, before = seen("flat")
    assert taken(flat.plan) == pytest.approx(24 * 1.2, abs=1e-6)
    assert taken(flat.section) == pytest.approx(16 * 1.2, abs=1e-6)
    lines = [m for m in flat.plan if isinstance(m, Stroke) and m.style == "flat"]
    assert [m.path.box for m in lines] == [pytest.approx((38.8, 88.0, 38.8, 112.0))]
    assert not any(m.style == "flat" for m in before.plan)


def test_in_space_the_slope_is_a_plane_and_the_face_is_open_over_it():
    body = solid(head(Flat(size=24.0, depth=1.2)))
    ((owner, floor),) = body.slopes
    assert owner == "slot" and floor[:, 2] == pytest.approx((floor[:, 1] - 21.5) * 5 / 12)
    ((of, rim),) = body.flats
    assert of == "flank" and np.ptp(rim, axis=0) == pytest.approx((0.0, 24.0, 16.0))
    assert rim[:, 0] == pytest.approx(38.8)
    face = next(p for p in turned(body, FACE) if p.style == "solid face")
    assert len(face.openings) == 2
    slope = next(p for p in turned(body, View(0.4, -0.3)) if p.style == "solid slope")
    assert slope.owner == "slot" and 0.0 <= slope.tone <= 1.0
