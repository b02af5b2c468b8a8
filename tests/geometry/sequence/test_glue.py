"""The scarf joint, ears and veneers are glued up before anything is marked, and the glue is given its time."""

import pytest
from msgspec.structs import replace

from geometry.layout import Blank, Ear, Rates, SingleHole, Slot, StraightSlot
from geometry.sequence import best_order, counts, operations, precedence
from geometry.sequence.state import wood_after
from tests.geometry.sequence.specimens import stocked

EAR = Ear(id="ear", side="treble", width=10.0, start=20.0, end=150.0)


def glued(**blank: object):
    layout = stocked(ears=(EAR,))
    return replace(layout, blank=replace(layout.blank, **(dict(face_veneer=1.5, back_veneer=0.6, scarf=70.0) | blank)))


def ids(layout) -> list[str]:
    return [op.id for op in operations(layout)]


def words(layout, step: str) -> str:
    return next(op.words for op in operations(layout) if op.id == step)


def edge(layout, first: str, then: str) -> list[tuple[str, str]]:
    ops = operations(layout)
    return [(e.grade, e.suffers) for e in precedence(layout, ops) if (e.first, e.then) == (first, then)]


def test_a_head_of_one_piece_is_glued_to_nothing():
    assert not [id for id in ids(stocked()) if id.startswith("glue")]
    assert counts(ids(stocked()), operations(stocked())).waits == 0


def test_the_joint_comes_before_all_then_ears_then_veneers():
    layout = glued()
    assert ids(layout)[:5] == ["glue scarf", "glue ear ear", "glue face veneer", "glue back veneer", "template"]
    steps = best_order(operations(layout), precedence(layout, operations(layout)), Rates()).steps
    at = {step: i for i, step in enumerate(steps)}
    assert at["glue scarf"] < at["glue ear ear"] < min(at["glue face veneer"], at["glue back veneer"])
    assert max(at["glue face veneer"], at["glue back veneer"]) < at["mark"]


@pytest.mark.parametrize(("first", "then", "grade"), [
    ("glue scarf", "glue ear ear", "impossible"), ("glue scarf", "glue face veneer", "impossible"), ("glue scarf", "mark", "impossible"),
    ("glue scarf", "cut outline", "impossible"), ("glue ear ear", "glue face veneer", "unsafe"), ("glue face veneer", "mark", "impossible"),
    ("glue back veneer", "mark", "impossible"), ("glue face veneer", "bore front.1.2", "unsafe"), ("glue back veneer", "rout slot 1", "unsafe"),
    ("glue face veneer", "cut outline", "unsafe"), ("glue face veneer", "saw slot", "unsafe"),
])
def test_what_is_glued_on_later_spoils_what_is_done(first, then, grade):
    assert edge(glued(), first, then) == [(grade, "then")]


def test_nothing_keeps_the_template_from_being_made_while_glue_dries():
    assert edge(glued(), "glue scarf", "template") == [] == edge(glued(), "glue face veneer", "template")


def test_a_veneer_step_says_what_the_head_is_planed_to_and_how_thick_it_is_then():
    """16 mm in all less 1.5 and 0.6: 13.9 before, 15.4 with the face's, 16 with both."""
    layout = glued()
    assert "Plane the head to 13.9 mm, its face flat" in words(layout, "glue face veneer")
    assert "15.4 mm thick then" in words(layout, "glue face veneer")
    assert "Plane the head to 15.4 mm, its back flat" in words(layout, "glue back veneer")
    assert "16 mm thick then" in words(layout, "glue back veneer")


def test_a_joint_behind_the_nut_line_tells_no_line_in_the_head():
    assert "comes out" not in words(glued(scarf=0.0), "glue scarf") and "comes out 70 mm" in words(glued(), "glue scarf")


def test_at_a_slanted_nut_the_joint_is_sawn_parallel_to_it():
    slanted = replace(glued(), nut=replace(glued().nut, slant=8.0))
    assert "parallel to the slanted nut line" in words(slanted, "glue scarf") and "parallel" not in words(glued(), "glue scarf")
    assert "from the base line on the face" in words(slanted, "glue scarf")


def test_a_veneer_over_what_is_there_already_has_to_be_opened():
    pocket = Slot(id="rod pocket", shape=StraightSlot(nut_end=(0.0, 4.0), tip_end=(0.0, 20.0), width=8.0), depth=9.0, there=True)
    plugged = SingleHole(id="old hole", at=(0.0, 150.0), diameter=4.0, depth=5.0, surface="back", there=True)
    layout = replace(glued(), slots=(*glued().slots, pocket), holes=(plugged,))
    assert "open it over rod pocket with a knife" in words(layout, "glue face veneer")
    assert "open it over old hole with a knife" in words(layout, "glue back veneer")
    through = replace(layout, holes=(replace(plugged, depth=layout.blank.thickness),))
    assert "open it over rod pocket and old hole with a knife" in words(through, "glue face veneer")
    assert "knife" not in words(glued(), "glue face veneer")


def test_glue_dries_once_for_the_joint_once_for_the_ear_once_for_both_veneers():
    layout = glued()
    ops, order = operations(layout), best_order(operations(layout), precedence(layout, operations(layout)), Rates())
    found = counts(order.steps, ops, Rates(glue_dry=600.0))
    assert (found.waits, found.drying) == (3, 30.0)
    assert found.hours.total == counts(order.steps, ops, Rates(glue_dry=0.0)).hours.total


def test_glueing_takes_its_minutes():
    layout = glued()
    ops = operations(layout)
    none = Rates(glue_scarf=0.0, glue_ear=0.0, glue_veneer=0.0)
    all_of_it = Rates(glue_scarf=7.0, glue_ear=3.0, glue_veneer=2.0)
    more = counts([op.id for op in ops], ops, all_of_it).hours.work - counts([op.id for op in ops], ops, none).hours.work
    assert more == pytest.approx((7.0 + 3.0 + 2 * 2.0) / 60)


def test_the_piece_is_known_with_the_veneers_that_are_on_it():
    state = wood_after(glued(), ["glue scarf", "glue ear ear", "glue face veneer"], 3)
    assert state.veneers == ("face",) and "Glued on: ear and face veneer." in state.words()


def test_the_core_is_what_lies_between_the_veneers():
    blank = Blank(bass=40, treble=40, tip=180, thickness=16.0, face_veneer=1.5, back_veneer=0.6)
    assert blank.core == pytest.approx(13.9)
    assert [surface for surface, _, _ in blank.veneers] == ["face", "back"]
    assert [span for _, *span in blank.veneers] == [pytest.approx([0.0, 1.5]), pytest.approx([15.4, 16.0])]


def test_old_holes_are_plugged_from_the_side_that_they_are_open_to_once_nothing_of_a_screw_is_left_in_them():
    old = SingleHole(id="post", at=(0.0, 150.0), diameter=8.8, there=True, plugged=True)
    screw = SingleHole(id="screw", at=(0.0, 160.0), diameter=1.8, depth=10.0, surface="back", there=True, plugged=True)
    told = words(replace(stocked(), holes=(old, screw)), "plug")
    assert "8.8 mm through: post; 1.8 mm x 10 mm deep from the back: screw." in told
    assert "to the last bit of a screw that broke off in one" in told
