"""Wood that lacks is told once: what a slot lacks at the nut line is no rail as well, and what bores lack is not lacking between their posts as well."""

import math

import pytest

from geometry.checks import check
from tests.geometry.checks.heads import bore, head, loop, pattern, side, slot

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


HOLLOW = loop((-140.0, 0.0), (40.0, 0.0, -math.tan(math.asin(90.0 / 120.0) / 2)), (40.0, 180.0), (-140.0, 180.0))
"""Its treble edge is an arc of 120 mm about a place outside the head: what goes in square to it draws apart."""
ROUND = loop((-140.0, 0.0), (40.0, 0.0, math.tan(math.asin(90.0 / 120.0) / 2)), (40.0, 180.0), (-140.0, 180.0))
"""The same arc the other way: what goes in square to it draws together."""


@pytest.mark.parametrize(("outline", "apart", "long", "kinds"), [
    (None, 6.5, 40.0, ["side-bore-to-side-bore"]),
    (None, 5.0, 40.0, ["side-bore-to-side-bore"]),
    (HOLLOW, 6.5, 40.0, ["side-bore-to-side-bore"]),
    # At 20 mm, where the bores end, they are 14 * 100 / 120 - 6 = 5.7 mm apart, at 62 mm the posts 14 * 58 / 120 - 6 = 0.8.
    (ROUND, 14.0, 62.0, ["post-to-post"]),
    # Bores that lack some wood, and posts that then run into each other: 10 * 100 / 120 - 6 = 2.3, 10 * 58 / 120 - 6 < 0.
    (ROUND, 10.0, 62.0, ["post-to-post", "side-bore-to-side-bore"]),
])
def test_posts_beside_each_other(outline, apart, long, kinds):
    of = pattern("of", "side", bore(surface="seat", depth=20.0), post=(6.0, long, 30.0))
    layout = head(tuners=(side("a", 100.0, of), side("b", 100.0 + apart, of)), patterns=(of,), **({} if outline is None else {"outline": outline}))
    assert sorted(snag.kind for snag in check(layout).snags if snag.kind in ("post-to-post", "side-bore-to-side-bore")) == kinds
