"""Every pair of features that can meet has its kinds of snag, each with a value worked out by hand and one at the margin.

| what can meet | kinds |
|---|---|
| hole and slot wall | every sort of drilling `-to-slot`; below a blind slot the floor counts |
| hole and hole, axes askew, too | every two sorts of drilling, `<sort>-to-<sort>` |
| hole and outline | every sort of drilling `-to-outline` |
| side bore and side bore in the waste | `ways-meet` |
| side bore and the head beyond its seat | `way-through-head` |
| counterbore and anything | `counterbore-to-…` with every other sort, slot and outline |
| slot and outline (rail) | `rail`, `slot-outside` |
| slot and slot (web) | `web`, `slots-overlap` |
| slot and nut | `slot-to-nut` |
| slot and back | `slot-floor` |
| side bore and face, side bore and back | `cover` |
| drill point and face or back | `too-deep` |
| drill point and another drilling, the next slot, a ramp, the outline | `drill-point` |
| screw and no wood | `misses-wood` |
| screw and anything | `…-to-screw` with every other sort, slot and outline |
| plate and plate | `seats-overlap` |
| plate and outline, plate and slot, plate and a curved edge | `seat-overhang`, `seat-over-slot`, `plate-rocks` |
| flat and rail, flat and hole, flat and a neighbour's plate | `flat-rail`, `hole-to-flat`, `plate-over-flat` |
| button and button, button and wood | `buttons`, `button-to-wood` |
| post end and inner wall, drill point and inner wall | `post-to-wall`, `point-to-wall`, `post-to-slot-end` |
| ramp of a slot and hole, outline, pocket that is there, another slot or its ramp, nut, back or floor | `hole-to-ramp`, `ramp-to-outline`, `ramp-to-pocket`, `ramp-to-slot`, `ramp-to-nut`, `ramp-too-deep` |
| post and post | `post-to-post` |
| string hole inside the slot | `string-hole`, `slot-not-reached`, `slot-too-shallow` |
| end of an ear and the outline, end of an ear and the mark of a side bore | `ear-too-short` |
| glue line through a hole | `glue-line`, `glue-line-crossed` |
| feather edge of a scarf joint and screw, bore, slot | `feather-screw`, `feather-edge` |
| pin and anything | `…-to-locating-pin` with every other sort, slot and outline; `pin-to-blank`, `hole-in-the-way` |
| hole or pocket that is there and a side bore in the waste | `hole-in-the-way` |
| string and post | `string-to-post` |
| string and face | `string-to-face` |
| string and the screw of a retainer | `string-to-screw` |
| bar of a retainer and post, or another bar | `retainer-bar` |
| string and string | `string-to-string` |
| string and the wood at the nut line | `string-off-wood` |
| nut and the wood at the nut line | `nut-step` |
| string and the end of the nut, string and string in it | `string-off-nut`, `strings-in-nut` |
| string and slot wall, ramp, floor, nut end | `string-to-wall`, `string-to-ramp`, `string-to-floor`, `string-to-nut-end` |

The cases themselves stand in cases_*.py; test_kinds.py measures them.
"""

import re

import pytest

from geometry.checks import KINDS, check
from geometry.checks.kinds import outline_kind, pair_kind, slot_kind
from geometry.checks.words import SORTS
from tests.geometry.checks import test_kinds
from tests.geometry.checks.heads import SIDE, bore, head, pattern, side, slot

_NAMED = [kind for kind in re.findall(r"`([a-z-]+)`", __doc__) if not kind.startswith("-")]
_EVERY = sorted({*_NAMED, *(pair_kind(one, two) for one in SORTS for two in SORTS), *map(slot_kind, SORTS),
                 *map(outline_kind, SORTS)})


@pytest.mark.parametrize("kind", _EVERY)
def test_a_pair_has_a_kind_a_value_and_a_margin(kind):
    assert kind in KINDS
    cases = [case for case in test_kinds.CASES if case.kind == kind]
    assert cases
    if kind not in ("glue-line-crossed", "feather-edge", "way-through-head"):
        assert any(case.measured is not None for case in cases)
    assert all(case.touching is not None and case.touching != case.layout for case in cases)


def test_the_advice_follows_the_nearest_way_out():
    long = pattern("long", "side", bore(surface="seat", depth=55.0))
    # Beside a slot's round end at y = 100: to the nut. Right into a slot's wall: less deep. Above a blind floor: deeper.
    end = head(tuners=(side("a", 98.0),), patterns=(SIDE,), slots=(slot("slot", x=20.0, nut=106.0),))
    into = head(tuners=(side("a", 90.0, long),), patterns=(long,), slots=(slot("own"), slot("slot", x=-14.0)))
    over = head(tuners=(side("a", 90.0),), patterns=(SIDE,), slots=(slot("slot", depth=6.0),))
    for layout, said in ((end, "Slide a by 4.0 mm to the nut"), (into, "Drill it 10.0 mm less deep"),
                         (over, "Set the axis of a deeper by 4.0 mm")):
        snag = next(s for s in check(layout).snags if s.kind == "side-bore-to-slot" and "slot" in s.between)
        assert snag.cure.startswith(said), snag.cure
    # Beside the tip at y = 180 the flank sticks out by 1; at the far edge x = -40 the end does.
    tip, far = head(tuners=(side("a", 178.0),), patterns=(SIDE,)), pattern("far", "side", bore(surface="seat", depth=81.0))
    over = head(tuners=(side("a", 90.0, far),), patterns=(far,))
    for layout, said in ((tip, "Slide a by 5.0 mm to the nut"), (over, "Drill it 5.0 mm less deep")):
        snag = next(s for s in check(layout).snags if s.kind == "side-bore-to-outline")
        assert snag.measured == pytest.approx(-1.0) and snag.cure.startswith(said), snag.cure
