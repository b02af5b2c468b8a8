"""The wood after each step."""

import msgspec
import pytest

from geometry.checks.snags import count
from geometry.layout import Ear, Pin, SingleHole
from geometry.sequence import Operation, WoodState, best_order, operations, precedence, wood_after
from geometry.sequence.counts import counts
from geometry.sequence.operation import Cut
from geometry.sequence.rates import Rates
from geometry.sequence.state import state_of
from geometry.solids.drilling import to_drill
from tests.geometry.accuracy.specimens import sample
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo, stocked, with_waste

PLANS = {"slot": with_waste(TURNED), "outline": THROUGH}
LAYOUT = stocked(ears=(Ear(id="ear", side="treble", width=5.0, start=20.0, end=150.0),))
OPS = operations(LAYOUT, PLANS)
ORDER = best_order(OPS, precedence(LAYOUT, OPS))


def after(step: str) -> WoodState:
    """The wood right after a step of the best order."""
    return wood_after(LAYOUT, ORDER, ORDER.steps.index(step) + 1, OPS)


def test_before_the_first_step_there_is_a_bare_blank() -> None:
    bare = wood_after(LAYOUT, ORDER, 0, OPS)
    assert bare.square_edges == ("bass", "treble") and bare.outline == "square"
    assert bare.papers == bare.pins == bare.ears == bare.drillings == ()
    assert len(bare.to_drill) == 7
    assert bare.words() == ("Both square edges are there.", "No marks.", "0 of 7 drillings made.")
    assert msgspec.structs.replace(bare, trips=(0, 0)).words() == ("Both square edges are there.", "No marks."), "nothing to count"


def test_marks_come_with_the_paper_and_go_one_after_the_other() -> None:
    assert after("mark").papers == ("face", "back", "bass edge", "treble edge")
    assert after("cut outline").papers == ("face", "back")
    assert after("clean up").papers == ()


def test_there_is_a_back_paper_where_something_is_drilled_from_the_back() -> None:
    """Whatever it belongs to; a pattern that no tuner has asks for none."""
    bare = msgspec.structs.replace(LAYOUT, tuners=(), holes=())
    for holes, papers in (((), ("face",)), ((SingleHole(id="peep", at=(0.0, 90.0), diameter=4.0, depth=6.0, surface="back"),), ("face", "back"))):
        layout = msgspec.structs.replace(bare, holes=holes)
        ops = operations(layout, PLANS)
        marked = state_of(layout, [op for op in ops if op.kind == "mark"], ops)
        assert marked.papers[:-2] == papers


def test_edges_go_with_the_outline_and_seats_come_with_the_router() -> None:
    assert after("rout slot 2").square_edges == ("bass", "treble")
    assert after("cut outline").square_edges == ()
    assert "The square edges are gone." in after("cut outline").words()
    assert after("cut outline").outline == "sawn"
    assert after("rout outline 1").outline == "routed"
    assert "The outline is finished, seats stand." in after("rout outline 1").words()


def test_a_slot_opens_step_by_step() -> None:
    (full,) = after("mark").slots
    assert not full.touched and not full.open
    (drilled,) = after("waste holes slot").slots
    assert len(drilled.waste_holes.centres) > 5 and not drilled.sawn
    (sawn,) = after("saw slot").slots
    assert sawn.sawn and not sawn.open
    (half,) = after("rout slot 1").slots
    assert half.routed == (Cut(0.0, 10.0),) and not half.open
    assert "slot: routed 10 mm of 16 mm." in after("rout slot 1").words()
    # The trip from the back takes 9 to 16, which overlaps the first by one.
    (done,) = after("rout slot 2").slots
    assert done.routed == (Cut(0.0, 16.0),) and done.open
    assert "slot: open, its walls stand." in after("rout slot 2").words()


def test_drillings_are_made_one_by_one() -> None:
    made = [len(wood_after(LAYOUT, ORDER, n, OPS).drillings) for n in range(len(ORDER.steps) + 1)]
    assert made == sorted(made) and made[0] == 0 and made[-1] == 7
    assert wood_after(LAYOUT, ORDER, 999, OPS).to_drill == ()


def test_ears_are_there_once_glued() -> None:
    assert after("glue ear ear").ears == ("ear",)
    assert "Glued on: ear." in after("glue ear ear").words()


@pytest.mark.parametrize(("pin", "until"), [
    (Pin(id="pin", at=(0.0, 25.0)), "clean up"),
    (Pin(id="pin", at=(0.0, 185.5), diameter=4.0), "cut outline"),
    (Pin(id="pin", at=(-28.0, 60.0), diameter=4.0), "bore front.1.2"),
    (Pin(id="pin", at=(17.0, 60.0)), "waste holes slot"),
    (Pin(id="pin", at=(-28.0, 60.0), diameter=6.5), "clean up"),
])
def test_a_pin_hole_lasts_until_its_wood_goes(pin: Pin, until: str) -> None:
    layout = msgspec.structs.replace(LAYOUT, pins=(pin,))
    ops = operations(layout, PLANS)
    before_it, after_it = (wood_after(layout, ("pin hole pin.1", until), n, ops) for n in (1, 2))
    assert before_it.pins == ("pin",)
    assert after_it.pins == ()


def test_the_order_need_not_be_legal() -> None:
    steps = tuple(reversed(ORDER.steps))
    assert wood_after(LAYOUT, steps, 1, OPS).clean
    assert wood_after(LAYOUT, steps, len(steps), OPS).to_drill == ()


def test_without_operations_given_those_of_the_layout_are_taken() -> None:
    layout = demo()
    ops = operations(layout)
    steps = [op.id for op in ops]
    assert wood_after(layout, steps, 9) == wood_after(layout, steps, 9, ops)


def test_an_outline_finished_by_hand_counts_as_finished() -> None:
    layout = stocked(rack=msgspec.structs.replace(stocked().rack, bits=()))
    ops = operations(layout)
    done: list[Operation] = [op for op in ops if op.kind in ("cut outline", "rout outline")]
    assert state_of(layout, done, ops).outline == "routed"


def test_counts_of_the_demo() -> None:
    layout = demo()
    ops = operations(layout)
    found = counts(best_order(ops, precedence(layout, ops)).steps, ops)
    # 36 holes and 42 drilling operations of the tuners (common practice, no source), and two pin holes.
    assert (found.holes, found.pins, found.drillings, found.counterbores) == (36, 2, 44, 6)
    told = count(to_drill(layout))
    assert (found.holes, found.pins, found.drillings) == (told.holes, told.pins, told.drilling + told.pins)
    assert (found.waste_holes, found.tilts, found.set_ups) == (22, 3, 17)


def test_hours_are_rates_times_work_and_changes() -> None:
    layout = stocked()
    ops = operations(layout, PLANS)
    rates = Rates(template=10.0, mark=0.0, hole=1.0, side_bore=5.0, hand_pilot=2.0, waste_hole=0.5, saw_100=0.0, rout_100=0.0,
                  band_saw_100=0.0, rout_outline_100=10.0, clean_up=30.0, machine_change=1.0, bit_change=2.0,
                  table_change=3.0, side_change=4.0)
    steps = best_order(ops, precedence(layout, ops)).steps
    found = counts(steps, ops, rates)
    waste = 0.5 * found.waste_holes
    # Template 10, five upright drillings, one side bore 5, one pilot by hand 2, outline 2 (80 + 180) mm at 10 for 100 mm, 30 to end.
    assert found.hours.work * 60 == pytest.approx(10 + 5 + 5 + 2 + waste + 52 + 30)
    c = found.changes
    assert found.hours.changes * 60 == pytest.approx(c.machine + 2 * c.bit + 3 * c.table + 4 * c.side)
    doubled = counts(steps, ops, msgspec.structs.replace(rates, factor=2.0))
    assert doubled.hours.total == pytest.approx(2 * found.hours.total)


def test_a_pin_hole_that_is_a_bore_is_drilled_once() -> None:
    layout = sample("three-a-side")
    ops = operations(layout)
    order = best_order(ops, precedence(layout, ops))
    assert [wood_after(layout, order, n, ops).trips for n in (0, len(order.steps))] == [(0, 12), (12, 12)], "six bores, two of which hold pins, and six pilots"
