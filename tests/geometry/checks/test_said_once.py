"""Wood that lacks is told once: what a slot lacks at the nut line is no rail as well."""

import math

import pytest

from geometry.checks import check
from tests.geometry.checks.heads import head, loop, slot

LIP = loop((-40.0, -10.0), (40.0, -10.0), (40.0, 180.0), (-40.0, 180.0))
"""An outline that goes on below the nut line."""


@pytest.mark.parametrize(("layout", "told"), [
    (head(slots=(slot(nut=12.0),)), {"slot-to-nut": 6.0}),
    (head(slots=(slot(nut=4.0),)), {"slot-to-nut": -2.0}),
    # The rail at the treble edge, x = 40, is told beside it: 40 - (28 + 6) = 6, and 7 where more is wanted at the nut.
    (head(slots=(slot(x=28.0, nut=12.0),)), {"slot-to-nut": 6.0, "rail": 6.0}),
    (head(slots=(slot(x=27.0, nut=12.0),)), {"slot-to-nut": 6.0, "rail": 7.0}),
    (head(slots=(slot(x=27.0, nut=4.0),)), {"slot-to-nut": -2.0, "rail": 7.0}),
    # Out over the corner, too: by the slanting way back that is another place.
    (head(slots=(slot(x=38.0, nut=4.0),)), {"slot-to-nut": -2.0, "slot-outside": -math.hypot(4.0, 2.0)}),
    # The head does not end at the nut line: the rail is the wood to its end, 10 mm farther.
    (head(outline=LIP, slots=(slot(nut=-2.0),)), {"slot-to-nut": -8.0, "rail": 2.0}),
], ids=range(7))
def test_a_slot_at_the_nut(layout, told):
    kinds = ("slot-to-nut", "rail", "slot-outside")
    assert {snag.kind: pytest.approx(snag.measured) for snag in check(layout).snags if snag.kind in kinds} == told
