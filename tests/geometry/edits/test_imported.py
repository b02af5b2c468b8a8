"""What a drawing brings into a layout is never more than a file may hold: else it could be saved, and never be read again."""

import pytest

from app.formats import headstock
from geometry.curves import Matrix, circle
from geometry.edits.imported import layout_from, with_shape
from geometry.errors import GeometryError
from geometry.layout import loop_path
from tests.property.layouts import DEMO

OUTLINE = (loop_path(DEMO.outline), "outline")
AS_IT_IS = Matrix(1.0, 0.0, 0.0, 1.0, 0.0, 0.0)


def far(role):
    return circle((6000.0, 50.0), 4.0), role


@pytest.mark.parametrize(("loops", "place", "words"), [
    ([OUTLINE], Matrix(1.0, 0.0, 0.0, 40.0, 0.0, 0.0), "far more than a headstock"),
    ([OUTLINE], Matrix(1.0, 0.0, 0.0, 1.0, 0.0, 4900.0), "The outline: .* at most 5000"),
    ([OUTLINE, far("slot")], AS_IT_IS, "at most 5000"),
    ([OUTLINE, far("hole")], AS_IT_IS, "at most 5000"),
])
def test_what_is_too_far_away_is_refused(loops, place, words):
    with pytest.raises(GeometryError, match=words):
        with_shape(DEMO, loops, place, openings=True)
    with pytest.raises(GeometryError, match=words):
        layout_from(loops, place, "Head")


def test_what_is_taken_can_be_read_again():
    for made in (with_shape(DEMO, [OUTLINE], AS_IT_IS, openings=False), with_shape(DEMO, [OUTLINE], AS_IT_IS, openings=True),
                 layout_from([OUTLINE], AS_IT_IS, "Head")):
        assert headstock.decode(headstock.encode(made)) == made
    assert with_shape(DEMO, [OUTLINE], AS_IT_IS, openings=False).slots == DEMO.slots
