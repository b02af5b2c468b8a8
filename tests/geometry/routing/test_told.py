"""Lengths in the router's sentences: what is told as enough is enough, and no cut is told deeper, no room wider, than it is."""

import re

import pytest
from msgspec.structs import replace

from geometry.drawing import Label
from geometry.drawing.router_face import tightest_marks
from geometry.drawing.router_picture import pass_picture
from geometry.layout import GuideBush
from geometry.lengths import speaking
from geometry.routing.alone import Alone, alone
from geometry.routing.board import board_notes
from geometry.routing.fit import WITHIN
from geometry.routing.follower import follower_of
from geometry.routing.refusal import Refusal
from geometry.routing.waste import drill_waste
from geometry.sequence import operations
from geometry.sequence.wishes import Wishes
from geometry.units import parse_length
from tests.geometry.routing.specimens import BRAD, WHOLE, bit, drawn, head, job, straight, with_rack
from tests.geometry.routing.test_board import EIGHT
from tests.geometry.routing.test_choice import slot_plan

UNITS = ("mm", "in", "in64")
TOUCH = 1e-6


def told(pattern: str, words: str, unit: str) -> float:
    """The length that stands where the pattern has its group."""
    found = re.search(pattern, words)
    assert found is not None, words
    return parse_length(found[1], unit)


def everywhere(cutter, offset):
    return WHOLE


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("deep", [8.26, 8.0, 9.9, 11.27, 12.7])
def test_a_blind_slot_is_routed_no_deeper_than_it_is_wherever_that_is_told(deep, unit):
    """9.9 mm is 25/64 in (9.922) to the nearest 64th, 8.26 mm is 8.3 to the nearest tenth."""
    layout = with_rack(head(straight(depth=deep)), bit(cutting=7.0, bearing="shank"))
    with speaking(unit):
        plan = slot_plan(layout).best
        last = plan.passes[-1]
        step = [op for op in operations(layout, wishes=Wishes(unit=unit)) if op.kind == "rout"][-1]
        picture = [mark.text for mark in pass_picture(plan, len(plan.passes) - 1) if isinstance(mark, Label)]
        words = last.said(through=False, template=plan.job.template)
    assert last.ends == deep
    card = told(r"to (\S+(?: \d+/\d+)?(?: mm)?\"?) deep", words, unit)
    order = told(r"with bit to (.+) in ", step.words, unit)
    assert deep - 0.03 < card <= deep + TOUCH
    assert order == card, "the running order and the router card tell one depth"
    assert any(re.fullmatch(r"[\d. /]+( mm|\")", text) and parse_length(text, unit) == card for text in picture)


@pytest.mark.parametrize("unit", UNITS)
def test_the_narrowest_place_of_a_drawn_slot_is_told_no_wider_than_it_is(unit):
    """A neck of 10.46 between two rooms is no way for a bit of 10.5."""
    x = 10.46
    slot = drawn((0, 40), (20, 40), (20, 60), (x, 60), (x, 80), (20, 80), (20, 100), (0, 100))
    layout = with_rack(head(slot), bit("fat", cutter=10.5, bearing="shank"))
    with speaking(unit):
        reason = slot_plan(layout).verdicts[0].reason
        label, = [mark.text for mark in tightest_marks(slot) if isinstance(mark, Label)]
    assert told(r"which is (.+) wide where", reason, unit) <= x + WITHIN / 2
    assert told(r"up to (.+) would", reason, unit) == parse_length(label, unit)


@pytest.mark.parametrize("unit", UNITS)
def test_a_template_or_a_cutting_length_that_would_do_does(unit):
    """25.33 of cutting edges, 12.07 at a pass, 3 have to rub: 25.33 - 12.07 + 3 = 16.26 of template, or 12.07 + 6 - 3 = 15.07 of edges."""
    fat = bit(cutter=12.07, cutting=25.33, out=60.0, bearing="shank", high=20.0)
    work = job(depth=15.0, width=20.0)
    with speaking(unit):
        refused = alone(fat, None, work, everywhere)
    assert isinstance(refused, Refusal)
    thick = told(r"A template of (.+) would do", refused.reason, unit)
    long = told(r"cutting length up to (.+)\.$", refused.reason, unit)
    assert 16.26 - TOUCH <= thick < 16.3 and 15.04 < long <= 15.07 + TOUCH
    assert isinstance(alone(fat, None, replace(work, template=thick), everywhere), Alone)
    assert isinstance(alone(replace(fat, cutting_length=long), None, work, everywhere), Alone)


def test_what_is_reached_and_what_is_wanted_are_told_apart():
    """Stands 16.46 out, 6 of it in the template: 10.46 into wood 20.0 thick, of which 10.5 would do."""
    refused = alone(bit(cutting=10.0, out=16.46, bearing="shank"), None, job(depth=20.0, thickness=20.0), everywhere)
    assert isinstance(refused, Refusal)
    assert "reaches 10.46 mm into the wood" in refused.reason and "would have to reach 10.5 mm" in refused.reason


def test_a_web_of_the_template_is_not_told_as_what_is_wanted():
    """Slots 12 wide, 22.98 apart, grown by 2.5 each: 22.98 - 12 - 5 = 5.98 of board, 6 are wanted."""
    slim = GuideBush(id="slim", outer=13, inner=11, length=5)
    layout = head(straight(width=12, x=-11.49, id="a"), straight(width=12, x=11.49, id="b"))
    (thin,) = [note for note in board_notes(layout, follower_of(EIGHT, slim)) if note.kind == "thin web" and "b" in note.of and "a" in note.of]
    assert "Only 5.98 mm of template" in thin.words and "6 mm are wanted" in thin.words


def test_the_widest_drill_that_is_told_for_the_waste_is_taken():
    """10.96 wide less twice 1 mm: 8.96, which the nearest tenth would call 9."""
    slot = straight(width=10.96)
    layout = head(slot)
    refused = drill_waste(slot, layout.blank, with_rack(layout, drills=(BRAD,)).rack)
    assert isinstance(refused, Refusal) and refused.reason.endswith("up to 8.96 mm would do.")
    assert not isinstance(drill_waste(slot, layout.blank, with_rack(layout, drills=(replace(BRAD, diameter=8.96),)).rack), Refusal)


@pytest.mark.parametrize(("unit", "told_as"), [("mm", "16 mm"), ("in", '0.63"'), ("in64", '0.63"')])
def test_a_cut_that_goes_through_is_told_to_the_nearest(unit, told_as):
    """16 mm is 0.6299 in: 0.629 would leave a skin."""
    layout = with_rack(head(straight()), bit(cutting=12.0, bearing="shank"))
    with speaking(unit):
        steps = slot_plan(layout).best.steps
        order = [op.words for op in operations(layout, wishes=Wishes(unit=unit)) if op.kind == "rout"]
    assert f" to {told_as} deep" in steps[-1] and f" to {told_as} in " in order[-1]
