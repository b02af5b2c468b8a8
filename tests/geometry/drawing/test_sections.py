"""Sections along a bore against numbers worked out by hand."""

import msgspec
import numpy as np
import pytest

from geometry.drawing import Area, Label, Stroke
from geometry.drawing.sections import LETTER, LETTER_WIDTH, section_along_bore
from geometry.layout import Bore, Drill, EdgePlace, Flat, Loop, Node, Rack, Slot, StraightSlot
from tests.geometry.drawing.specimens import leaning_head, plain_head


def words(drawing):
    return [mark.text for mark in drawing if isinstance(mark, Label)]


def boxes(drawing, style):
    return [mark.outer.box for mark in drawing if isinstance(mark, Area) and mark.style == style]


def test_wood_behind_a_slot_is_a_web_where_another_slot_follows():
    """A web is the wood between two slots; behind the only slot there is just wood."""
    head = plain_head()
    other = Slot(id="other", shape=StraightSlot(nut_end=(-17.0, 40.0), tip_end=(-17.0, 150.0), width=13.0))
    assert "web" not in words(section_along_bore(head, "flank"))
    assert "web" in words(section_along_bore(msgspec.structs.replace(head, slots=(*head.slots, other)), "flank"))


def test_a_sliver_of_the_next_slot_has_no_name():
    """The section ends 12 mm past the drill's point, 48.9 from the edge, and the slot at 34.5: of one that begins 13.9 behind it half a
    millimetre is seen, of one 12 behind it two."""
    head = plain_head()
    (own,) = head.slots
    inner = min(own.shape.nut_end[0], own.shape.tip_end[0]) - own.shape.width / 2
    for behind, named in ((13.9, 1), (12.0, 2)):
        x = inner - behind - 3.5
        other = Slot(id="other", shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 150.0), width=7.0))
        said = words(section_along_bore(msgspec.structs.replace(head, slots=(*head.slots, other)), "flank"))
        assert sum(word.startswith("slot ") for word in said) == named and any(word.startswith("web 1") for word in said), said


def test_no_line_to_a_word_runs_through_another_word():
    """A second slot anywhere: also one of which the section shows no more than a sliver."""
    head, led = plain_head(), 0
    for x in np.arange(-40.0, 5.0, 0.5).tolist():
        other = Slot(id="other", shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 150.0), width=7.0))
        drawing = section_along_bore(msgspec.structs.replace(head, slots=(*head.slots, other)), "flank")
        below = [mark for mark in drawing if isinstance(mark, Label) and mark.at[1] < -head.blank.thickness]
        for line in (mark.path for mark in drawing if isinstance(mark, Stroke) and mark.path.start[1] == -head.blank.thickness):
            (at, top), (_, bottom) = line.start, line.end
            led += 1
            for word in below:
                half = len(word.text) * LETTER * LETTER_WIDTH / 2
                assert not (abs(word.at[0] - at) < half and bottom < word.at[1] < top), (x, word.text)
    assert led > 40


@pytest.mark.parametrize("width", [2.0, 4.5])
def test_narrow_slots_beside_each_other_are_told_apart(width):
    """Four of them 4 mm apart: each word in a row where it has room, and no web where one slot runs into the next."""
    head = plain_head()
    slots = tuple(Slot(id=f"{n}", shape=StraightSlot(nut_end=(25.0 - 4.0 * n, 40.0), tip_end=(25.0 - 4.0 * n, 150.0), width=width)) for n in range(4))
    drawing = section_along_bore(msgspec.structs.replace(head, slots=slots), "flank", "in")
    below = [mark for mark in drawing if isinstance(mark, Label) and mark.at[1] < -head.blank.thickness]
    said = [mark.text for mark in below]
    assert sum(text.startswith("slot ") for text in said) == 4 and sum(text.startswith("web ") for text in said) == (3 if width < 4.0 else 0), said
    for i, one in enumerate(below):
        for other in below[i + 1:]:
            apart = abs(one.at[0] - other.at[0]) - (len(one.text) + len(other.text)) * LETTER * LETTER_WIDTH / 2
            assert apart > 0.0 or abs(one.at[1] - other.at[1]) > LETTER, (one.text, other.text)


def test_a_side_bore_meets_waste_rail_slot_and_wood():
    """Square edge 45, outline 40, slot 10.5 to 23.5: waste 5, rail 16.5, slot 13; stop 35, 0.3 D of point."""
    drawing = section_along_bore(plain_head(), "flank")
    assert {"waste 5", "rail 16.5", "slot 13", "wood"} <= set(words(drawing))
    assert "stop 35, 36.9 to the point" in words(drawing)
    assert boxes(drawing, "slot") == [pytest.approx((21.5, -16.0, 34.5, 0.0), abs=1e-6)]
    assert boxes(drawing, "wood")[0][0] == pytest.approx(5.0)
    (bore,) = boxes(drawing, "side bore")
    assert bore == pytest.approx((0.0, -8.0 - 3.2, 35.0 + 0.3 * 6.4, -8.0 + 3.2))
    # The plate, 10 across, on the outline; the string hole 28 into the post of 6.2.
    assert {mark.style: mark.path.box for mark in drawing if isinstance(mark, Stroke) and mark.style in ("seat", "string")} == {
        "seat": pytest.approx((5.0, -8.0 - 5.0, 5.0, -8.0 + 5.0)), "string": pytest.approx((33.0, -8.0 - 3.1, 33.0, -8.0 + 3.1))}


def test_a_counterbore_from_the_side_is_cut_from_the_square_edge_to_its_stop():
    """Seat 5 mm inside the square edge, 4 mm deep: stop 9 and 1.5 mm of centre point."""
    head = plain_head()
    _, of = head.patterns
    wide = Bore(role="counterbore", diameter=11.0, surface="seat", depth=4.0, drill="forstner")
    drill = Drill(id="f", kind="forstner", diameter=11.0, length=90.0, spur=1.5)
    drawing = section_along_bore(msgspec.structs.replace(
        head, patterns=(head.patterns[0], msgspec.structs.replace(of, bores=(wide, *of.bores))), rack=Rack(drills=(drill,))), "flank")
    assert boxes(drawing, "counterbore") == [pytest.approx((0.0, -8.0 - 5.5, 9.0 + 1.5, -8.0 + 5.5))]
    assert len(boxes(drawing, "side bore")) == 1
    styles = [mark.style for mark in drawing if isinstance(mark, Area)]
    assert styles.index("counterbore") < styles.index("side bore")
    # A screw from the side lies beside the plane of the section.
    assert "edge pilot" not in styles and "screw pilot" not in styles


def test_the_rail_under_a_plate_begins_at_the_bottom_of_its_flat():
    """Of the rail of 16.5 mm a flat takes 1.25: 15.2 are told, never more than are left, and the waste stays 5."""
    head = plain_head()
    front, flank = head.tuners
    cut = msgspec.structs.replace(flank, flat=Flat(shape="flat", size=30.0, depth=1.25))
    drawing = section_along_bore(msgspec.structs.replace(head, tuners=(front, cut)), "flank")
    assert {"waste 5", "rail 15.2", "slot 13", "wood"} <= set(words(drawing))


def test_a_twist_drill_of_the_rack_ends_in_its_cone():
    rack = Rack(drills=(Drill(id="t", kind="twist", diameter=6.4, length=100.0, point_angle=118.0),))
    drawing = section_along_bore(plain_head(rack=rack), "flank")
    (bore,) = [m.outer for m in drawing if isinstance(m, Area) and m.style == "side bore"]
    assert len(bore.segments) == 5  # a spur would make it seven
    assert bore.box[2] == pytest.approx(35.0 + 0.30043 * 6.4, abs=1e-4)  # point length 0.30 D at 118 degrees


def test_a_face_tuner_shows_its_stack_from_the_face_down():
    """Blank edge -45, outline -40, axis at -28: waste 5, axis at 17; 8.8 to 8 deep, then 6.5 to the back."""
    drawing = section_along_bore(plain_head(), "front")
    assert boxes(drawing, "counterbore") == [pytest.approx((12.6, -8.0, 21.4, 0.0))]
    assert boxes(drawing, "post bore") == [pytest.approx((13.75, -16.0, 20.25, -8.0))]
    assert {"counterbore 8.8 x 8 deep", "post bore 6.5 through"} <= set(words(drawing))
    assert "waste 5" in words(drawing)


def test_a_screw_beside_the_plane_is_shown_beside_the_bore_and_never_in_it():
    """Before the bore it would look like a hole in the hole. 8 mm to the edge of the axis at 17 it shows, 1.6 wide and 9 deep."""
    def screws(head):
        return [m.path.box for m in section_along_bore(head, "front") if isinstance(m, Stroke) and m.style == "screw pilot"]
    head = plain_head()
    assert screws(head) == [], "beside the plane, and in line with the axis"
    front = head.pattern(head.tuner("front").pattern)
    aside = msgspec.structs.replace(front, bores=tuple(msgspec.structs.replace(bore, at=(8.0, bore.at[1])) if bore.role == "screw" else bore
                                                       for bore in front.bores))
    moved = msgspec.structs.replace(head, patterns=tuple(aside if one is front else one for one in head.patterns))
    assert screws(moved) == [pytest.approx((8.2, -16.0, 9.8, -7.0))]


def test_a_blind_slot_shows_its_floor():
    shape = StraightSlot(nut_end=(17.0, 40.0), tip_end=(17.0, 150.0), width=13.0)
    drawing = section_along_bore(plain_head(slots=(Slot(id="slot", shape=shape, depth=6.0),)), "flank")
    assert boxes(drawing, "slot") == [pytest.approx((21.5, -6.0, 34.5, 0.0), abs=1e-6)]


def test_foreign_bores_in_the_plane_are_shown_with_their_chord():
    """A tuner at 3 mm beside the plane: its 8.8 counterbore is cut in a chord of 2 * sqrt(4.4^2 - 3^2)."""
    head = plain_head(slots=())
    near = msgspec.structs.replace(head.tuners[0], id="near", place=type(head.tuners[0].place)(at=(20.0, 103.0)))
    drawing = section_along_bore(msgspec.structs.replace(head, tuners=(*head.tuners, near)), "flank")
    (cut,) = [m.outer.box for m in drawing if isinstance(m, Area) and m.style == "counterbore"]
    half = (4.4 ** 2 - 3.0 ** 2) ** 0.5
    assert cut == pytest.approx((25.0 - half, -8.0, 25.0 + half, 0.0))
    assert {m.owner for m in drawing if m.style == "counterbore"} == {"near"}


def test_along_a_tilted_axis_lengths_are_measured_along_the_bore():
    drawing = section_along_bore(leaning_head(), "flank")
    (bore,) = boxes(drawing, "side bore")
    # lambda = (50 - seat x) / n_x with the seat 45 mm up the edge (30, 0)-(40, 90), n = (90, -10) / hypot
    length = (10 ** 2 + 90 ** 2) ** 0.5
    waste = (50 - (30 + 10 * 45 / length)) / (90 / length)
    assert bore[2] == pytest.approx(waste + 30.0 + 1.92)
    assert f"waste {waste:.1f}" in words(drawing)


def test_words_of_one_row_do_not_touch():
    for tuner in ("flank", "front"):
        drawing = section_along_bore(plain_head(), tuner)
        rows: dict[float, list[tuple[float, float]]] = {}
        for mark in drawing:
            if isinstance(mark, Label) and mark.at[1] < -16:
                half = len(mark.text) * mark.height * 0.74 / 2  # wider than the printed letters are
                rows.setdefault(mark.at[1], []).append((mark.at[0] - half, mark.at[0] + half))
        for spans in rows.values():
            spans.sort()
            assert all(a[1] < b[0] for a, b in zip(spans, spans[1:], strict=False))


def test_no_place_gives_no_section_and_an_unknown_id_is_an_error():
    flat = Loop(nodes=(Node(at=(-10.0, 5.0)), Node(at=(10.0, 5.0))))
    assert section_along_bore(plain_head(outline=flat), "flank") == ()
    with pytest.raises(KeyError):
        section_along_bore(plain_head(), "nobody")


def test_a_tuner_without_a_post_bore_has_no_section():
    head = plain_head()
    bores = tuple(b for b in head.patterns[1].bores if b.role != "post")
    bare = msgspec.structs.replace(head.patterns[1], bores=bores)
    assert section_along_bore(msgspec.structs.replace(head, patterns=(head.patterns[0], bare)), "flank") == ()


def test_an_axis_that_leaves_by_the_tip_is_still_drawn():
    roof = Loop(nodes=tuple(Node(at=at) for at in ((-40.0, 0.0), (40.0, 0.0), (40.0, 150.0), (0.0, 151.0))))
    head = plain_head(outline=roof, slots=(), holes=())
    tuner = msgspec.structs.replace(head.tuners[1], place=EdgePlace(side="treble", along=170.0))
    drawing = section_along_bore(msgspec.structs.replace(head, tuners=(tuner,)), "flank")
    assert boxes(drawing, "side bore")


def test_wood_that_is_left_is_told_as_no_more_than_it_is():
    """A rail of 40 - 23.54 = 16.46 and a web of 10.54 + 2.92 = 13.46: to the nearest tenth both would gain."""
    head = plain_head()
    slots = [Slot(id=id, shape=StraightSlot(nut_end=(x, 40.0), tip_end=(x, 150.0), width=13.0)) for id, x in (("one", 17.04), ("two", -9.42))]
    said = words(section_along_bore(msgspec.structs.replace(head, slots=tuple(slots)), "flank"))
    assert {"rail 16.4", "web 13.4"} <= set(said)


def test_a_pocket_in_the_way_of_a_bore_is_called_one():
    """The slot that lies from 10.5 to 23.5 behind a rail of 16.5, there already; another slot behind it is a slot."""
    head = plain_head()
    other = Slot(id="other", shape=StraightSlot(nut_end=(-17.0, 40.0), tip_end=(-17.0, 150.0), width=13.0))
    found = words(section_along_bore(msgspec.structs.replace(head, slots=(msgspec.structs.replace(head.slots[0], there=True), other)), "flank"))
    assert {"rail 16.5", "pocket 13"} <= set(found) and "slot 13" not in found
    assert words(section_along_bore(msgspec.structs.replace(head, slots=(head.slots[0], other)), "flank")).count("slot 13") == 1
