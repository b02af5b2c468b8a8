"""Veneers and a scarf joint in the drawings: layers in sections, glue lines on face, edges, back, template and body."""

import math

import numpy as np
import pytest
from msgspec.structs import replace

from app.window.demo import demo
from geometry.checks import check
from geometry.curves.polygons import polygon
from geometry.drawing import Area, Stroke, opened_out
from geometry.drawing.back import back_drawing
from geometry.drawing.line_section import line_section
from geometry.drawing.section_cut import SectionLine
from geometry.drawing.sections import section_along_bore
from geometry.drawing.solid import solid
from geometry.drawing.step_views import step_views
from geometry.drawing.template import template_drawing
from geometry.drawing.turning import BACK, FACE, View, turned
from geometry.drawing.wood_section import wood_section
from geometry.drawing.wood_state import wood_drawing
from geometry.drawing.wrap import wrap_drawing
from geometry.layout import Ear, Headstock, Loop, Node, Nut, Slot, StraightSlot, loop_path, validate
from geometry.sequence import operations
from geometry.sequence.state import state_of

ARC = 0.01
"""How far (mm) the round end of a pocket may be from where the section cuts its arc."""


def glued(**blank: object) -> Headstock:
    """The demo, 16 mm thick, with a joint that leaves the core's face at y = 100 and falls by 0.25."""
    layout = demo()
    return replace(layout, blank=replace(layout.blank, thickness=16.0, **blank), nut=Nut(pitch=math.degrees(math.atan(0.25))))


def layers(drawing) -> list[tuple[float, ...]]:
    return [mark.outer.box for mark in drawing if isinstance(mark, Area) and mark.style == "glued on"]


def lines(drawing) -> list[tuple[float, ...]]:
    """Ends of glue lines, rounded."""
    return [tuple(round(c, 6) for p in (mark.path.start, mark.path.end) for c in p)
            for mark in drawing if isinstance(mark, Stroke) and mark.style == "glue line"]


@pytest.mark.parametrize("blank", [
    dict(face_veneer=1e-300, back_veneer=1e-300, scarf=1e-300), dict(face_veneer=15.0, scarf=5000.0), dict(back_veneer=15.0, scarf=5000.0),
    dict(face_veneer=1e-9, scarf=1e-9), dict(scarf=0.0)])
@pytest.mark.parametrize("nut", [Nut(pitch=1.0, slant=30.0), Nut(pitch=40.0, slant=-30.0), Nut(pitch=40.0)])
def test_what_hardly_is_there_or_far_away_is_drawn_all_the_same(blank, nut):
    layout = validate(replace(glued(**blank), nut=nut))
    for drawing in (opened_out(layout), wrap_drawing(layout), template_drawing(layout, None), back_drawing(layout),
                    line_section(layout, (0.0, -20.0), (0.0, 190.0)), line_section(layout, (-60.0, 80.0), (60.0, 80.0))):
        assert drawing
    assert turned(solid(layout), BACK) and check(layout).holes


def test_a_head_of_one_piece_has_neither():
    layout = glued()
    assert layers(line_section(layout, (-60.0, 80.0), (60.0, 80.0))) == [] == lines(opened_out(layout))
    assert solid(layout).seams == ()


def test_veneers_are_layers_in_every_section():
    layout = glued(face_veneer=1.5, back_veneer=0.6)
    wanted = [(-1.5, 0.0), (-16.0, -15.4)]
    for drawing in (line_section(layout, (-60.0, 80.0), (60.0, 80.0)), section_along_bore(layout, "bass side 1"),
                    section_along_bore(layout, "treble face 1")):
        assert [(low, high) for _, low, _, high in layers(drawing)] == [pytest.approx(span) for span in wanted]


def test_across_the_head_the_neck_lies_over_the_joint_as_deep_as_it_has_fallen_there():
    """At y = 80, 20 from where it comes out, it is 5 below the core's face, and that is 1.5 below the veneer's."""
    layout = glued(face_veneer=1.5, scarf=100.0)
    over = layers(line_section(layout, (-60.0, 80.0), (60.0, 80.0)))[0]
    assert over == pytest.approx((10.0, -6.5, 110.0, -1.5))


@pytest.mark.parametrize(("low", "high", "area"), [
    # The joint takes a triangle of 56 by 14 from y = 44 to y = 100; behind it all of the core is the neck's.
    (44.0, 100.0, 56.0 * 14.0 / 2), (44.0, 150.0, 56.0 * 14.0 / 2), (0.0, 150.0, 56.0 * 14.0 / 2 + 44.0 * 14.0), (10.0, 30.0, 20.0 * 14.0),
    (60.0, 80.0, 20.0 * (10.0 + 5.0) / 2)])
def test_along_the_head_the_neck_over_the_joint_is_a_wedge(low, high, area):
    layout = glued(face_veneer=1.0, back_veneer=1.0, scarf=100.0)
    for ends in (((0.0, low), (0.0, high)), ((0.0, high), (0.0, low))):
        drawing = [mark for mark in line_section(layout, *ends) if isinstance(mark, Area) and mark.style == "glued on"]
        wedge, face, back = drawing
        assert polygon(wedge.outer).is_valid
        assert abs(polygon(wedge.outer).area) == pytest.approx(area)


def test_past_the_joint_there_is_nothing_of_the_neck():
    assert layers(line_section(glued(scarf=100.0), (-60.0, 120.0), (60.0, 120.0))) == []
    assert layers(line_section(glued(scarf=0.0), (-60.0, 20.0), (60.0, 20.0))) == []


def test_on_the_blank_both_edges_show_veneers_and_joint_and_the_face_its_line():
    layout = glued(face_veneer=1.5, back_veneer=0.6, scarf=100.0)
    found = lines(opened_out(layout))
    # Veneers end at the nut line: behind it lies the neck.
    assert (-50.0 - 1.5, 0.0, -50.0 - 1.5, 200.0) in found and (50.0 + 15.4, 0.0, 50.0 + 15.4, 200.0) in found
    # 13.9 of core at 0.25: 55.6 nearer to the nut.
    assert (50.0 + 15.4, 44.4, 50.0 + 1.5, 100.0) in found and (-50.0 - 15.4, 44.4, -50.0 - 1.5, 100.0) in found
    assert (-50.0, 100.0, 50.0, 100.0) in found and len(found) == 7


def test_veneers_end_at_a_slanted_nut_line():
    """Leaning by 10 degrees, its bass end nearer the tip, it lies 50 tan 10 = 8.816 before and behind the base line at the edges; a blank
    that ends before that ends the veneer too."""
    layout = glued(face_veneer=1.5)
    slanted = replace(layout, nut=replace(layout.nut, slant=10.0))
    assert lines(opened_out(slanted)) == [(-51.5, 8.816349, -51.5, 200.0), (51.5, -8.816349, 51.5, 200.0)]
    short = replace(slanted, blank=replace(slanted.blank, behind=5.0))
    assert lines(opened_out(short))[1] == (51.5, -5.0, 51.5, 200.0)


def test_behind_the_nut_line_a_section_shows_the_core_alone():
    """Along the centreline the wood is 13.9 thick from -20 to 0, and 16 from there to the tip at 200."""
    layout = glued(face_veneer=1.5, back_veneer=0.6)
    drawing = line_section(layout, (0.0, -30.0), (0.0, 210.0))
    waste = [mark.outer.box for mark in drawing if isinstance(mark, Area) and mark.style == "waste"]
    assert waste == [pytest.approx((10.0, -15.4, 30.0, -1.5)), pytest.approx((30.0, -16.0, 230.0, 0.0))]
    assert [(left, right) for left, _, right, _ in layers(drawing)] == [pytest.approx((30.0, 230.0))] * 2
    assert layers(line_section(layout, (-60.0, -10.0), (60.0, -10.0))) == []
    back = line_section(layout, (0.0, 210.0), (0.0, -30.0))
    assert [(left, right) for left, _, right, _ in layers(back)] == [pytest.approx((10.0, 210.0))] * 2


def test_a_pocket_over_the_nut_line_ends_where_the_wood_does():
    """From y = -12 to 28, 10 deep below the veneer's face: behind the nut line it begins at the core's, and so it does before the
    veneer is glued on; what is through ends at the core's back there."""
    pocket = Slot(id="pocket", shape=StraightSlot(nut_end=(0.0, -6.0), tip_end=(0.0, 22.0), width=12.0), depth=10.0, there=True)
    layout = glued(face_veneer=1.5, back_veneer=0.6)
    layout = replace(layout, slots=(*layout.slots, pocket))

    def cuts(drawing, of="pocket"):
        return [mark.outer.box for mark in drawing if isinstance(mark, Area) and mark.owner == of]
    assert cuts(line_section(layout, (0.0, -30.0), (0.0, 50.0))) == [
        pytest.approx((18.0, -10.0, 30.0, -1.5), abs=ARC), pytest.approx((30.0, -10.0, 58.0, 0.0), abs=ARC)]
    through = replace(layout, slots=(*layout.slots[:-1], replace(pocket, depth=None)))
    assert cuts(line_section(through, (0.0, -30.0), (0.0, 50.0)))[0] == pytest.approx((18.0, -15.4, 30.0, -1.5), abs=ARC)
    within = replace(layout, slots=(*layout.slots[:-1], replace(pocket, depth=1.0)))
    assert cuts(line_section(within, (0.0, -30.0), (0.0, 50.0))) == [pytest.approx((30.0, -1.0, 58.0, 0.0), abs=ARC)]
    line, ops = SectionLine((0.0, -30.0), (0.0, 1.0)), operations(layout)
    bare, glued_up = (replace(state_of(layout, (), ops), veneers=veneers) for veneers in ((), ("face", "back")))
    assert {box[3] for box in cuts(wood_section(layout, bare, line))} == {-1.5}
    assert [box[3] for box in cuts(wood_section(layout, glued_up, line))] == [-1.5, 0.0]


def test_the_wrap_paper_shows_the_joint_on_the_face_alone():
    assert lines(wrap_drawing(glued(face_veneer=1.5, back_veneer=0.6, scarf=100.0))) == [(-50.0, 100.0, 50.0, 100.0)]


def test_template_and_back_show_where_the_joint_comes_out():
    layout = glued(face_veneer=1.5, back_veneer=0.6, scarf=100.0)
    assert [(a, b) for _, a, _, b in lines(template_drawing(layout, None))] == [(100.0, 100.0)]
    assert [(a, b) for _, a, _, b in lines(back_drawing(layout))] == [(44.4, 44.4)]
    assert lines(back_drawing(glued(scarf=50.0))) == []  # 14 behind the nut line


def test_at_a_slanted_nut_the_joint_is_parallel_to_it_on_face_edges_and_back():
    """An eighth off level: at the edges, 50 aside, the line on the face lies 6.25 nearer to the tip or to the nut."""
    layout = glued(back_veneer=1.0, scarf=100.0)
    layout = replace(layout, nut=replace(layout.nut, slant=math.degrees(math.atan(0.125))))
    ahead = layout.nut.ahead[1]
    found = lines(opened_out(layout))
    assert (-50.0, 106.25, 50.0, 93.75) in found
    back = 100.0 - 15.0 / 0.25 / ahead
    assert (50.0 + 15.0, round(back - 6.25, 6), 50.0, 93.75) in found and (-50.0 - 15.0, round(back + 6.25, 6), -50.0, 106.25) in found
    ((x0, y0, x1, y1),) = lines(back_drawing(layout))
    assert (y1 - y0) / (x1 - x0) == pytest.approx(0.125) and (y0 * x1 - y1 * x0) / (x1 - x0) == pytest.approx(back), "seen from behind"
    ((x0, y0, x1, y1),) = lines(template_drawing(layout, None))
    assert (y1 - y0) / (x1 - x0) == pytest.approx(-0.125)
    over = layers(line_section(layout, (-40.0, 80.0), (40.0, 80.0)))[0]
    assert over[1] == pytest.approx(-(25.0 * ahead * 0.25)), "deepest at the bass edge"
    for seam in solid(layout).seams[1:]:
        assert np.allclose(seam[:, 2], (100.0 - seam[:, 1] - seam[:, 0] * 0.125) * ahead * 0.25, atol=1e-6)


def test_before_its_step_a_veneer_is_not_on_the_piece():
    layout = glued(face_veneer=1.5, back_veneer=0.6)
    ops = operations(layout)
    steps = [next(op for op in ops if op.id == id) for id in ("glue face veneer", "glue back veneer", "mark")]
    first, second, _ = (step_views(layout, steps, at, ops) for at in range(3))
    assert [box[1::2] for box in layers(first.section)] == [pytest.approx((-1.5, 0.0))]
    assert len(layers(second.section)) == 2
    wood = next(mark for mark in first.section if mark.style == "waste")
    assert wood.outer.box[1::2] == pytest.approx((-15.4, 0.0))
    assert len(lines(first.plan)) == 2 and len(lines(second.plan)) == 4


def test_where_an_ear_is_missing_there_is_nothing_of_the_joint_and_the_head_shows_it_once_it_is_sawn():
    """The ear takes 20 of the treble side from y = 30 to 150; the joint comes out at y = 100 and falls by 0.25, so that it reaches the back at y = 36."""
    ear = Ear(id="ear", side="treble", width=20.0, start=30.0, end=150.0)
    layout = replace(glued(scarf=100.0), ears=(ear,))
    bass, treble, thick = layout.blank.bass, layout.blank.treble, layout.blank.thickness
    state = replace(state_of(layout, (), operations(layout)), ears=())
    assert set(lines(wood_drawing(layout, state))) == {
        (-bass, 100.0, treble - 20.0, 100.0), (-bass - thick, 36.0, -bass, 100.0)} and thick == 16.0
    head = loop_path(layout.outline)
    for outline in ("sawn", "routed"):
        ((x0, y0, x1, y1),) = lines(wood_drawing(layout, replace(state, outline=outline)))
        assert y0 == y1 == 100.0 and head.box[0] - 3.0 < x0 < -20.0 and 20.0 < x1 < head.box[2] + 3.0


def test_until_the_face_has_its_veneer_the_wood_begins_below_it():
    layout = glued(face_veneer=1.5, back_veneer=0.6, scarf=100.0)
    ops = operations(layout)
    views = step_views(layout, [next(op for op in ops if op.id == "glue scarf")], 0, ops)
    wood = next(mark for mark in views.section if mark.style == "waste")
    assert wood.outer.box[1::2] == pytest.approx((-15.4, -1.5))


def test_the_joint_is_looked_at_along_the_centreline():
    layout = glued(scarf=100.0)
    ops = operations(layout)
    views = step_views(layout, [next(op for op in ops if op.id == "glue scarf")], 0, ops)
    assert any(getattr(mark, "text", "") == "along the centreline" for mark in views.section)
    assert len(layers(views.section)) == 1


def test_the_body_has_seams_on_its_wall_and_shows_them_from_every_side():
    layout = glued(face_veneer=1.5, scarf=100.0)
    body = solid(layout)
    for view in (FACE, BACK, View(0.5, -0.4)):
        painted = [patch for patch in turned(body, view) if patch.owner == "blank" and patch.line and patch.style != "fold"]
        assert [len(patch.points) for patch in painted] == [len(seam) for seam in body.seams]
    around, *slanted = body.seams
    assert np.all(around[:, 2] == 1.5) and len(around) == len(body.outline.points) + 1
    assert len(slanted) >= 3
    for seam in slanted:
        assert np.allclose(seam[:, 2], 1.5 + (100.0 - seam[:, 1]) * 0.25)


def test_a_seam_goes_down_a_straight_edge_from_where_the_joint_comes_out_to_where_it_does_on_the_back():
    layout = glued(scarf=100.0)
    corners = ((-24.0, 0.0), (24.0, 0.0), (36.0, 180.0), (-36.0, 180.0))
    body = solid(replace(layout, outline=Loop(nodes=tuple(Node(at=at) for at in corners)), tuners=(), slots=(), pins=(), holes=()))
    # The joint falls by 16 on 64; the edges stand 24 + y / 15 from the middle.
    walls = [seam for seam in body.seams if np.ptp(seam[:, 2]) > 0]
    wanted = [[[side * (24.0 + y / 15), y, z] for y, z in ((36.0, 16.0), (100.0, 0.0))] for side in (-1, 1)]
    assert sorted(sorted(seam.round(6).tolist(), key=lambda p: p[1]) for seam in walls) == [[pytest.approx(p) for p in one] for one in wanted]
