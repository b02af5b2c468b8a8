"""The page of a tuner: no row is shown where it means nothing."""

from msgspec.structs import replace

from app.panels.describe import describe
from app.window.demo import demo
from geometry.edits import set_field


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
