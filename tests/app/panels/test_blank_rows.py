"""The rows of the blank: veneers counted in, what the wood is planed to, and where a scarf joint comes out."""

import math

import pytest
from msgspec.structs import replace

from app.panels.blank_rows import blank_rows
from app.window.demo import demo
from geometry.edits import set_field
from geometry.errors import GeometryError


def glued(**blank: object):
    layout = demo()
    return replace(layout, blank=replace(layout.blank, thickness=16.0, **blank))


def rows(layout) -> dict[str, object]:
    return {row.label: row for row in blank_rows(layout, "mm")}


def test_a_head_of_one_piece_has_no_more_rows_than_it_needs():
    assert not {"Planed to before the veneers", "Its line on the back", "Length of the joint"} & set(rows(glued()))


def test_a_veneer_is_taken_from_the_wood_not_added_to_what_is_drilled():
    layout = rows(glued())["Face veneer, counted in"].change(1.5)
    assert layout.blank.thickness == 16.0
    assert rows(layout)["Planed to before the veneers"].value == pytest.approx(14.5)


def test_what_the_wood_is_planed_to_makes_the_whole_thicker_or_thinner():
    layout = rows(glued(face_veneer=1.5, back_veneer=0.6))["Planed to before the veneers"].change(12.0)
    assert layout.blank.thickness == pytest.approx(14.1)
    assert (layout.blank.face_veneer, layout.blank.back_veneer) == (1.5, 0.6)


def test_the_joint_tells_where_it_comes_out_on_the_back():
    """The demo leans by 13 degrees: 16 / tan 13 = 69.3, 16 / sin 13 = 71.1."""
    shown = rows(glued(scarf=90.0))
    assert shown["Its line on the back"].value == "20.7 mm from the nut line"
    assert shown["Length of the joint"].value == "71.1 mm"
    assert rows(glued(scarf=60.0))["Its line on the back"].value == "9.3 mm behind the nut line"
    assert "Its line on the back" not in rows(glued(scarf=0.0))


def test_the_thickness_of_the_neck_sets_where_the_joint_comes_out():
    layout = rows(glued(scarf=90.0))["Wood of the neck over it"].change(18.0)
    assert layout.blank.scarf == pytest.approx(18.0 / math.sin(math.radians(13.0)), abs=1e-3)


@pytest.mark.parametrize(("path", "value", "words"), [
    (("blank", "face_veneer"), 15.4, "less than 1 mm of wood"), (("blank", "thickness"), 2.0, "less than 1 mm of wood"),
    (("nut", "pitch"), 0.0, "0 degrees"), (("nut", "pitch"), 0.9, "0.9 degrees")])
def test_what_cannot_be_glued_up_is_refused_in_a_sentence(path, value, words):
    with pytest.raises(GeometryError, match=words):
        set_field(glued(face_veneer=1.5, back_veneer=0.6, scarf=60.0), path, value)


def test_what_hard_wood_asks_of_slim_bits_is_told_in_the_units_of_the_maker():
    told = [next(row.help for row in blank_rows(demo(), unit) if row.key == "blank.hard_wood") for unit in ("mm", "in", "in64")]
    assert [text.removeprefix("Router bits slimmer than ").partition(" then")[0] for text in told] == ["8 mm", '0.315"', '0.315"']
