"""An ear for a blank that is too narrow, and one that is part of a blank as wide as it has to be."""

import pytest
from msgspec.structs import replace

from geometry.beginning import Numbers, begin
from geometry.checks import check
from geometry.edits.hardware import add_ear
from geometry.layout import Headstock, loop_path


def narrow(bass: float, treble: float) -> Headstock:
    """A head of three a side on a blank of those widths, mm from the centreline."""
    layout = begin(Numbers())
    return replace(layout, blank=replace(layout.blank, bass=bass, treble=treble))


@pytest.mark.parametrize("side", ["bass", "treble"])
def test_on_a_blank_that_is_too_narrow_the_ear_is_glued_on_outside_the_wood(side):
    layout = narrow(30.0, 30.0)
    half = loop_path(layout.outline).box[2]
    eared = add_ear(layout, side)
    (ear,) = eared.ears
    assert eared.blank.glue_x(ear) == pytest.approx(30.0 if side == "treble" else -30.0), "the wood is as wide as it was"
    assert half + layout.margins.blank_edge <= getattr(eared.blank, side) < half + layout.margins.blank_edge + 1.0
    lacking = [snag for snag in check(eared).snags if snag.kind == "blank-too-small"]
    assert len(lacking) == 1 and side not in lacking[0].text, "the other side lacks its own"
    assert add_ear(eared, side).blank == eared.blank


def test_a_blank_that_is_wide_enough_keeps_its_width():
    layout = narrow(50.0, 50.0)
    eared = add_ear(layout, "bass")
    assert eared.blank == layout.blank and eared.ears[0].width == 15.0
