"""The page of a tuner: no row is shown where it means nothing."""

from msgspec.structs import replace

from app.panels.describe import describe
from app.panels.several import several
from app.window.demo import demo
from geometry.edits import set_field
from tests.geometry.edits.heads import plain


def labels(layout, id):
    return [row.label for row in describe(layout, id, "mm").fields]


def test_the_side_of_a_string_is_asked_of_a_post_that_has_one():
    layout = demo()
    face, side = "bass face 1", "bass side 1"
    assert "String runs on the" in labels(layout, face) and "String runs" in labels(layout, side)
    for id in (face, side):
        without = labels(set_field(layout, ("tuners", id, "string"), None), id)
        assert "String" in without and not any(label.startswith("String runs") for label in without)
    nothing = replace(layout, strings=(), tuners=tuple(replace(tuner, string=None) for tuner in layout.tuners))
    assert not any(label.startswith("String") for label in labels(nothing, face))


def test_a_straight_row_is_asked_for_the_way_of_its_buttons_until_they_are_square_to_it():
    layout, square, members = plain(), "Point its buttons square to the row", ("line 0", "line 1", "line 2")
    for page in (describe(layout, "line 1", "mm"), several(layout, members, "mm")):
        asked = {row.label: row for row in page.fields}
        way = asked["Row's buttons point"]
        assert (way.value, way.optional, way.empty) == (None, True, "each to the edge") and way.change(None) == layout
        assert way.change(200.0).row("line").run.turn == 200.0
        made = asked[square].change(None)
        assert made.row("line").run.turn == 180.0
        assert asked["Row heads"].change(88.0).row("line").run.heading == 88.0
        for again in (made, way.change(-180.0), way.change(0.0)):
            assert square not in labels(again, "line 1") and square not in [row.label for row in several(again, members, "mm").fields]
    assert square not in labels(layout, "flank 1") and square not in labels(layout, "treble face 1")
    assert not any(row.label in ("Row heads", square) for row in several(layout, (*members, "treble face 1"), "mm").fields)


def test_names_of_several_things_have_the_width_of_the_panel_and_are_parted_between_them_alone():
    names = several(demo(), ("bass side 2", "treble face 1"), "mm").facts[0]
    assert names.kind == "note" and names.label == "bass\u00a0side\u00a02, treble\u00a0face\u00a01"
