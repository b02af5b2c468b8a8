"""The outline of a layout set in and out: the nut line stays, and few nodes are left to go on with."""

import math

import pytest
from msgspec.structs import replace

from geometry.beginning import begin
from geometry.beginning.instruments import usual
from geometry.edits.nut_end import ends_off_nut
from geometry.edits.offsetting import offset_in_place
from geometry.layout import Nut
from geometry.layout.edges import edges
from tests.geometry.checks.heads import head, loop


@pytest.mark.parametrize("slant", [0.0, 8.0, -8.0])
@pytest.mark.parametrize("by", [3.0, -3.0])
def test_the_end_along_the_nut_line_stays_there(slant, by):
    nut = Nut(slant=slant)
    ends = [nut.at(-22.0), nut.at(22.0)]
    before = replace(head(outline=loop(*ends, (34.0, 60.0), (34.0, 180.0), (-34.0, 180.0), (-34.0, 60.0))), nut=nut)
    after = offset_in_place(before, "outline", by)
    assert not ends_off_nut(after)
    for edge in edges(after.outline):
        assert nut.before(edge.path.start) == pytest.approx(0.0, abs=1e-9)
    # Each side went square to itself: along the nut line by as much over the sine of the angle between the two.
    (bass, treble), side = (edge.path.start for edge in edges(after.outline)), (34.0 - ends[1][0], 60.0 - ends[1][1])
    between = math.atan2(side[1], side[0]) + math.radians(slant)
    assert math.dist(treble, ends[1]) == pytest.approx(abs(by) / math.sin(between))
    assert treble[0] - bass[0] > 44 if by > 0 else treble[0] - bass[0] < 44


@pytest.mark.parametrize("by", [8.0, 2.0, -2.0, -6.0])
@pytest.mark.parametrize("instrument", ["guitar", "bass", "mandolin"])
def test_a_head_of_seven_nodes_keeps_few(instrument, by):
    before = begin(usual(instrument))
    assert len(offset_in_place(before, "outline", by).outline.nodes) <= 2 * len(before.outline.nodes) + 1
