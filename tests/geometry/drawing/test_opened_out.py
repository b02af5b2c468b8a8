"""The opened-out view: where marks lie on the face and on the folded edges, and what is drawn again."""

import math
import sys
from pathlib import Path

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.formats.headstock import read
from geometry.drawing import STYLES, Area, Cross, Disc, Label, Stroke, feature_marks, opened_out, opened_out_groups
from geometry.drawing.opened_out import OpenedOut
from geometry.drawing.tuner_plan import tuner_marks
from geometry.edits import free_from_row, move_features
from geometry.layout import Ear, EdgePlace, Loop, Node, Slot, StraightSlot, String, feature_ids
from geometry.solids import holes
from tests.geometry.drawing.specimens import leaning_head, plain_head
from tests.spent import spent

drawn_by = sys.modules["geometry.drawing.opened_out"]  # the function of that name hides its module
DEMO = Path("samples/twelve-string-mixed.headstock.json")


def discs(marks, style):
    return [mark for mark in marks if isinstance(mark, Disc) and mark.style == style]


def test_face_bores_are_true_circles_at_their_own_coordinates():
    marks = feature_marks(plain_head(), "front")
    assert [(d.centre, d.radius) for d in discs(marks, "counterbore")] == [((-28.0, 60.0), 4.4)]
    assert [(d.centre, d.radius) for d in discs(marks, "post bore")] == [((-28.0, 60.0), 3.25)]
    # The button points at the bass edge (u = -x), so v, left of it, is -y: the screw lies 9 mm nutwards.
    (screw,) = discs(marks, "screw pilot")
    assert screw.centre == pytest.approx((-28.0, 51.0)) and screw.radius == 0.8
    assert screw.hidden and not any(d.hidden for d in discs(marks, "post bore"))


def test_plate_button_and_post_lie_as_the_pattern_says():
    """Through the face at (-28, 60), the button to the bass side; through the treble edge x = 40 at y = 100, the tip ahead."""
    head = plain_head()
    _, side = head.patterns
    head = msgspec.structs.replace(head, patterns=(head.patterns[0], msgspec.structs.replace(
        side, seat=msgspec.structs.replace(side.seat, before=13.0, behind=11.0))))
    front, flank = ({(mark.style, type(mark).__name__): mark for mark in feature_marks(head, of)} for of in ("front", "flank"))
    assert front["seat", "Area"].outer.box == pytest.approx((-36.0, 48.0, -19.0, 72.0))
    assert front["button", "Area"].outer.box == pytest.approx((-58.0, 53.0, -48.0, 67.0))
    assert (front["post", "Disc"].centre, front["post", "Disc"].radius) == ((-28.0, 60.0), 3.1)
    assert flank["button", "Area"].outer.box == pytest.approx((45.0, 93.0, 51.0, 107.0))
    assert flank["seat", "Stroke"].path.box == pytest.approx((40.0, 89.0, 40.0, 113.0))
    assert flank["post", "Area"].outer.box == pytest.approx((11.0, 96.9, 40.0, 103.1))
    # The string hole is 28 into the post of 29.
    assert flank["post", "Stroke"].path.box == pytest.approx((12.0, 96.9, 12.0, 103.1))


def test_every_axis_square_to_the_face_has_one_cross():
    crosses = [mark for mark in feature_marks(plain_head(), "front") if isinstance(mark, Cross)]
    assert sorted(c.centre[1] for c in crosses) == pytest.approx([51.0, 60.0])


def test_a_side_bore_runs_from_the_square_edge_to_its_end_and_is_marked_on_the_folded_edge():
    """Edge upright at x = 40, blank to 45: the mark is at x = 45, z = 8, drawn at 45 + 8; the bore ends at 40 - 30."""
    marks = feature_marks(plain_head(), "flank")
    boxes = [mark.outer.box for mark in marks if isinstance(mark, Area) and mark.style == "side bore"]
    assert sorted(boxes) == [pytest.approx((10.0, 96.8, 40.0, 103.2)), pytest.approx((40.0, 96.8, 45.0, 103.2))]
    (entry,) = discs(marks, "side bore")
    assert entry.centre == pytest.approx((53.0, 100.0)) and entry.radius == 3.2
    (screw,) = discs(marks, "screw pilot")
    assert screw.centre == pytest.approx((53.0, 109.0))


def test_tilted_bores_meet_the_square_edge_where_the_axis_does():
    """Seat half way up the edge (30,0)-(40,90): x 30 + 5 * 45/l..., checked with the line through the seat along n."""
    head = leaning_head()
    length = math.hypot(10.0, 90.0)
    seat = (30.0 + 10.0 * 45.0 / length, 90.0 * 45.0 / length)
    normal = (90.0 / length, -10.0 / length)
    reach = (50.0 - seat[0]) / normal[0]
    y = seat[1] + reach * normal[1]
    treble = discs(feature_marks(head, "flank"), "side bore")[0]
    bass = discs(feature_marks(head, "other"), "side bore")[0]
    assert treble.centre == pytest.approx((58.0, y), abs=1e-9)
    assert bass.centre == pytest.approx((-58.0, y), abs=1e-9)
    texts = [mark.text for mark in feature_marks(head, "flank") if isinstance(mark, Label)]
    assert texts == ["6.3° nut raised"]  # atan(10/90) = 6.34 degrees


def test_strips_of_tilted_bores_end_on_the_square_edge():
    strips = [m.outer for m in feature_marks(leaning_head(), "flank") if isinstance(m, Area) and m.style == "side bore"]
    waste = min(strips, key=lambda path: abs(path.area))
    on_edge = [segment.start for segment in waste if abs(segment.start[0] - 50.0) < 1e-9]
    assert len(on_edge) == 2
    apart = abs(on_edge[0][1] - on_edge[1][1])
    assert apart == pytest.approx(6.4 / math.cos(math.atan(1 / 9)))


def test_every_mark_has_a_known_style_and_an_owner_that_exists():
    layout = read(DEMO)
    owners = {*feature_ids(layout), "blank", "outline", "nut"}
    for mark in opened_out(layout):
        assert mark.style in STYLES
        assert mark.owner in owners


def test_every_drilling_of_the_demo_is_drawn():
    layout = read(DEMO)
    drawn = [mark for mark in opened_out(layout) if isinstance(mark, Disc) and mark.style != "post"]
    assert len(drawn) == sum(len(hole.drillings) for hole in holes(layout)) == 44  # 42 and two locating pins


def test_groups_are_the_whole_in_the_same_order():
    layout = read(DEMO)
    groups = opened_out_groups(layout)
    assert tuple(mark for group in groups.values() for mark in group) == opened_out(layout)
    assert list(groups)[:2] == ["blank", "outline"]
    for owner, marks in groups.items():
        assert {mark.owner for mark in marks} == {owner}


def test_only_what_changed_is_drawn_again():
    layout = read(DEMO)
    rows = tuple(msgspec.structs.replace(row, spacing=43.5) if row.id == "treble face" else row for row in layout.rows)
    before, after = opened_out_groups(layout), opened_out_groups(msgspec.structs.replace(layout, rows=rows))
    # The first member stays where it is, but it belongs to the row that changed.
    assert {id for id in before if before[id] is not after[id]} == {f"treble face {i}" for i in (1, 2, 3)}
    assert before["treble face 1"] == after["treble face 1"]


def test_a_view_kept_over_a_drag_looks_up_only_the_tuner_that_moves(monkeypatch):
    layout = free_from_row(read(DEMO), "treble face 2")
    shown, asked = OpenedOut(), []
    monkeypatch.setattr(drawn_by, "tuner_marks", lambda layout, tuner: asked.append(tuner.id) or tuner_marks(layout, tuner))
    shown.groups(layout)
    asked.clear()
    for k in range(1, 6):
        moved = move_features(layout, ["treble face 2"], (0.1 * k, 0.3 * k))
        assert shown.groups(moved) == opened_out_groups(moved)
        assert asked[0] == "treble face 2" and asked.count("treble face 2") == 2 and len(asked) == 1 + len(moved.tuners)
        asked.clear()


def test_a_view_kept_over_any_edit_is_that_of_the_layout():
    """All that the marks of a tuner depend on, one after the other and back again."""
    layout, shown = read(DEMO), OpenedOut()
    nodes = layout.outline.nodes
    others = [dict(blank=msgspec.structs.replace(layout.blank, thickness=layout.blank.thickness + 1.0)),
              dict(nut=msgspec.structs.replace(layout.nut, width=layout.nut.width + 2.0)),
              dict(strings=tuple(msgspec.structs.replace(string, diameter=2 * string.diameter) for string in layout.strings)),
              dict(patterns=tuple(msgspec.structs.replace(p, post=msgspec.structs.replace(p.post, diameter=5.0)) for p in layout.patterns)),
              dict(rows=tuple(msgspec.structs.replace(row, spacing=row.spacing - 1.0) for row in layout.rows)),
              dict(outline=msgspec.structs.replace(layout.outline, nodes=nodes[1:] + nodes[:1])),
              dict(tuners=layout.tuners[2:]), dict(slots=()), dict(pins=())]
    for other in others:
        changed = msgspec.structs.replace(layout, **other)
        for one in (layout, changed, layout):
            assert shown.groups(one) == opened_out_groups(one)


def test_an_unknown_feature_has_no_marks():
    assert feature_marks(plain_head(), "nobody") == ()


def test_an_outline_without_edges_leaves_the_rest_of_the_drawing():
    flat = Loop(nodes=(Node(at=(-10.0, 5.0)), Node(at=(10.0, 5.0))))
    groups = opened_out_groups(plain_head(outline=flat))
    assert groups["front"] == () and groups["flank"] == ()
    assert groups["slot"] and groups["pin"] and groups["blank"]


def test_an_outline_without_length_draws_no_wood():
    point = Loop(nodes=(Node(at=(1.0, 1.0)), Node(at=(1.0, 1.0))))
    assert opened_out_groups(plain_head(outline=point))["outline"] == ()


def test_a_bore_that_misses_the_square_edge_has_no_mark():
    """On the tip edge the axis runs along y and never meets the square sides."""
    roof = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 150.0), (0.0, 150.5))))
    head = plain_head(outline=roof, slots=(), holes=())
    tuners = (msgspec.structs.replace(head.tuners[1], place=EdgePlace(side="treble", along=170.0)),)
    marks = feature_marks(msgspec.structs.replace(head, tuners=tuners), "flank")
    assert marks and not discs(marks, "side bore")


def test_blind_slots_leave_the_wood_closed_and_through_slots_open_it():
    shape = StraightSlot(nut_end=(0.0, 50.0), tip_end=(0.0, 90.0), width=10.0)
    for depth, openings in ((None, 1), (5.0, 0)):
        (wood,) = [m for m in feature_marks(plain_head(slots=(Slot(id="s", shape=shape, depth=depth),)), "outline")
                   if isinstance(m, Area)]
        assert len(wood.openings) == openings


def test_ears_show_their_glue_line_on_their_side():
    ears = (Ear(id="ear", side="bass", width=12.0, start=30.0, end=190.0),)
    marks = feature_marks(plain_head(ears=ears), "ear")
    assert all(isinstance(mark, Stroke) and mark.style == "glue line" for mark in marks)
    assert marks[0].path.box == (-33.0, 30.0, -33.0, 190.0)


@settings(max_examples=40)
@given(along=st.floats(5, 175), depth=st.floats(4, 12))
def test_the_folded_mark_keeps_y_and_turns_depth_into_distance(along, depth):
    head = plain_head()
    moved = msgspec.structs.replace(head.tuners[1], place=EdgePlace(side="treble", along=along, depth=depth))
    (entry,) = discs(feature_marks(msgspec.structs.replace(head, tuners=(moved,)), "flank"), "side bore")
    assert entry.centre == pytest.approx((45.0 + depth, along), abs=1e-9)


def test_a_drag_frame_is_drawn_in_time():
    """3 ms is the room that a frame has for this; the bound is wider so that a busy machine does not fail it."""
    layout = read(DEMO)
    opened_out(layout)
    moved = []
    for i in range(15):
        rows = tuple(msgspec.structs.replace(row, spacing=44 - 0.01 * i) if row.id == "treble face" else row
                     for row in layout.rows)
        moved.append(msgspec.structs.replace(layout, rows=rows))
    assert spent(lambda: [opened_out(one) for one in moved], 0.012 * len(moved)) <= 0.012 * len(moved)


def test_a_string_runs_from_its_place_at_the_nut_to_the_tangent_of_its_post():
    """One string lies on the centreline at the nut; it passes the post of 6.2 on its treble side at 3.1 + 0.5 mm."""
    head = plain_head(strings=(String(id="1", diameter=1.0, course=1),))
    front = msgspec.structs.replace(head.tuners[0], string="1", winds="treble")
    marks = feature_marks(msgspec.structs.replace(head, tuners=(front,)), "front")
    (run,) = [mark.path for mark in marks if mark.style == "string"]
    assert run.start == (0.0, 0.0)
    assert math.dist(run.end, (-28.0, 60.0)) == pytest.approx(3.6)
    spoke = (run.end[0] + 28.0, run.end[1] - 60.0)
    assert spoke[0] * run.end[0] + spoke[1] * run.end[1] == pytest.approx(0.0, abs=1e-9)
    assert spoke[0] > 0  # the treble side of the post


def test_moving_the_nut_draws_the_strings_again():
    layout = read(DEMO)
    wider = msgspec.structs.replace(layout, nut=msgspec.structs.replace(layout.nut, spread=42.0))
    before, after = opened_out_groups(layout), opened_out_groups(wider)
    assert before["treble face 1"] != after["treble face 1"]
    assert before["outline"] is after["outline"]
