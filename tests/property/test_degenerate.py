"""Layouts without sense give snags, never an exception."""

import math

import pytest
from hypothesis import Phase, example, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import KINDS, check
from geometry.layout import Blank, DrawnSlot, Headstock, Loop, Margins, Node, Pin, SingleHole, Slot, StraightSlot
from tests.geometry.checks.heads import FACE, OBLONG, SIDE, face, head, loop, side
from tests.property.layouts import DEMO, edited

_QUICK = (Phase.explicit, Phase.generate)
"""No shrinking: a drawn edit sequence is as readable as its shrunk kin, and shrinking takes minutes."""


def _sound(layout):
    result = check(layout)
    for snag in result.snags:
        assert snag.kind in KINDS
        assert all(math.isfinite(c) for c in snag.where)
        assert snag.measured is None or not math.isnan(snag.measured)
        assert "nan" not in snag.text.split() and snag.text.strip() and snag.cure.strip()
    return {snag.kind for snag in result.snags}


@settings(phases=_QUICK, max_examples=35)
@given(st.data())
def test_random_edits(data):
    layout = DEMO
    for _ in range(data.draw(st.integers(1, 8))):
        layout = data.draw(edited(layout))
    _sound(layout)


_coordinate = st.integers(-60, 60).map(float) | st.floats(-60, 60)


@settings(phases=_QUICK, max_examples=50)
@given(st.lists(st.tuples(_coordinate, _coordinate, st.just(0.0) | st.floats(-2, 2)), min_size=2, max_size=7),
       st.lists(st.tuples(_coordinate, _coordinate), min_size=2, max_size=6))
@example([(57.0, -5.0, -0.12688303183170957), (-12.0, -43.0, -1.0279472961300316), (-36.0, -47.0, 0.0),
          (43.064301338196344, -27.719774919537016, 0.0), (-53.179971183838944, 16.0, 0.0)],
         [(-46.0, 54.0), (-48.0, 55.97198268962717), (15.810566098474808, 18.874378996098798), (0.55, -1.2), (-46.0, 54.0),
          (-46.0, 54.0)])  # a far arm of which nothing was left in the bore's way
def test_any_outline_and_any_drawn_slot(corners, opening):
    if len({c[:2] for c in corners}) < 2 or len(set(opening)) < 2:
        return
    _sound(head(outline=loop(*corners), slots=(Slot(id="s", shape=DrawnSlot(loop=loop(*opening))),),
                tuners=(side("a", 30.0), face("b", 5.0, 20.0), face("c", 7.0, 21.0, turn=None)), patterns=(SIDE, FACE)))


_NOTHING = Headstock(name="", blank=Blank(bass=1, treble=1, tip=1, thickness=1), outline=loop((0, 0), (1, 0), (1, 1)))


@pytest.mark.parametrize(("layout", "kinds"), [
    (_NOTHING, {"blank-too-small"}),
    (head(tuners=(), slots=()), set()),
    (head(slots=(Slot(id="s", shape=StraightSlot(nut_end=(300.0, 40.0), tip_end=(300.0, 40.0), width=12.0)),)),
     {"slot-outside"}),
    (head(holes=(SingleHole(id="h", at=(0.0, 90.0), diameter=500.0),)), {"hole-to-outline"}),
    (head(tuners=(side("a", 90.0),), patterns=(SIDE,)), {"no-slot"}),
    (head(tuners=(side("a", -50.0), side("b", 900.0)), patterns=(SIDE,)), {"no-slot", "seat-overhang"}),
    (head(tuners=(side("a", 90.0, depth=400.0),), patterns=(SIDE,)), {"cover"}),
    (head(pins=(Pin(id="p", at=(400.0, 400.0)),) * 1), {"pin-to-blank"}),
    (head(tuners=(face("a", 10.0, 90.0), face("b", 10.0, 90.0)), patterns=(FACE,)), {"bore-to-bore"}),
    (head(outline=Loop(nodes=(Node(at=(0, 0)), Node(at=(0, 10)))), tuners=(face("a", 0.0, 5.0, turn=None),),
          patterns=(FACE,)), {"bore-to-outline"}),
], ids=["tiny", "empty", "far slot", "huge hole", "no slot", "beyond the edge", "below the wood", "far pin", "one place",
        "no width"])
def test_named_layouts(layout, kinds):
    assert kinds <= _sound(layout)


def test_huge_and_zero_margins():
    for value in (0.0, 5000.0):
        every = {field: value for field in Margins.__struct_fields__ if field != "skate_angle"}
        _sound(replace(DEMO, margins=Margins(**every)))


def test_a_layout_with_many_tuners_is_checked():
    tuners = tuple(face(f"t{i}", 3.0 * (i % 20) - 30, 8.0 * (i // 20) + 10) for i in range(200))
    assert len(check(head(outline=OBLONG, tuners=tuners, patterns=(FACE,))).snags) > 200
