"""Planned against actual, and the estimate of the next job."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from app.panels.book.book_rows import hour_cells, sum_facts
from app.panels.order.order_rows import minutes_words
from app.sheets.work import plan_work
from app.window.demo import demo
from geometry.book import CHANGING, corrected, factors_of, lines, set_minutes, tasks, tick_off, ticked, total
from geometry.book.planned import CHANGE_FIELDS, NO_WORK, WORK_FIELDS
from geometry.layout import Book, Rates, Task
from geometry.sequence import KINDS, Changes, Operation, hours, minutes
from geometry.sequence.operation import Setup
from geometry.sequence.rates import rate_of

SAW = Task(operation="saw", title="Saw", rate="saw_100", planned=60.0)
ROUT = Task(operation="rout", title="Rout", rate="rout_100", planned=30.0)


@pytest.fixture(scope="module")
def work():
    return plan_work(demo())


def test_the_plan_of_the_book_is_the_estimate_of_the_running_order(work):
    planned = tasks(work.steps, work.counts.changes)
    assert len(planned) == len(work.steps) + 1
    assert planned[-1].operation == CHANGING
    assert {name for task in planned for name in task.features} <= {part.id for part in (*demo().tuners, *demo().slots, *demo().pins)}
    assert sum(task.planned for task in planned) == pytest.approx(60 * work.counts.hours.total)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("machine", ["drill press", "hand drill", "bench", "router"])
def test_the_named_rate_is_the_one_behind_the_estimate(kind, machine):
    """Doubling that rate alone doubles the estimate of the operation."""
    op = Operation("x", kind, "x", "", Setup(machine), amount=3.0)
    twice = replace(Rates(), **{rate_of(op): 2 * getattr(Rates(), rate_of(op))})
    assert minutes(op, twice) == pytest.approx(2 * minutes(op, Rates()))


def test_lines_keep_what_is_planned_no_more():
    book = set_minutes(set_minutes(Book(), "practice", SAW, 70.0), "real", SAW, 50.0)
    book = set_minutes(book, "practice", ROUT, 40.0)
    rows = lines(book, [SAW])
    assert [(r.task.operation, r.practice, r.real, r.current) for r in rows] == [
        ("saw", 70.0, 50.0, True), ("rout", 40.0, None, False)]
    assert (rows[0].difference, rows[1].difference) == (-20.0, None)
    found = total(rows, "practice")
    assert (found.planned, found.spent, found.planned_of_timed, found.left, found.timed, found.of) == (60, 110, 60, 0, 1, 1)


def test_lines_keep_what_is_done_on_the_bench_and_planned_no_more():
    book = tick_off(Book(piece="real"), ROUT, 4)
    assert [(r.task.operation, r.practice, r.real, r.current) for r in lines(book, [SAW])] == [
        ("saw", None, None, True), ("rout", None, None, False)]
    assert [r.task.operation for r in lines(replace(book, piece="practice"), [SAW])] == ["saw"]


def test_what_is_ticked_off_without_minutes_is_not_left_to_do():
    book = tick_off(Book(piece="real"), SAW, 1)
    rows = lines(book, [SAW, ROUT])
    assert total(rows, "real").left == SAW.planned + ROUT.planned and total(rows, "real", ticked(book)).left == ROUT.planned
    facts = dict(sum_facts(rows, book, ticked(book)))
    assert facts["Left, by the plan"] == minutes_words(ROUT.planned) != facts["Planned"]


def test_what_is_drilled_otherwise_than_drawn_is_left_to_do_timed_or_not():
    book = tick_off(Book(piece="real"), SAW, 1)
    for one in (book, set_minutes(book, "real", SAW, 20.0)):
        facts = dict(sum_facts(lines(one, [SAW, ROUT]), one, (), {SAW.operation}))
        assert facts["Left, by the plan"] == facts["Planned"]


@given(st.permutations(list(range(6))), st.lists(st.floats(0, 500), min_size=6, max_size=6))
def test_totals_do_not_depend_on_the_order_of_entries(order, spent):
    planned = [Task(operation=f"op {i}", rate="hole", planned=float(i + 1)) for i in range(6)]
    one = two = Book()
    for i in range(6):
        one = set_minutes(one, "real", planned[i], spent[i])
        two = set_minutes(two, "real", planned[order[i]], spent[order[i]])
    assert total(lines(one, planned), "real") == total(lines(two, planned), "real")
    assert corrected(one).overall == pytest.approx(corrected(two).overall)


def test_nothing_timed_leaves_the_estimate():
    found = corrected(Book())
    assert (found.overall, found.learned) == (1.0, ())
    assert found.rates(Rates()) == Rates()


def test_the_rule_by_hand():
    """P = 90, A = 180 + 30: f = (210 + 120) / (90 + 120) = 11/7. Saw: (180 + 60 f) / 120 = 1.5 + f / 2."""
    book = set_minutes(set_minutes(Book(), "real", SAW, 180.0), "practice", ROUT, 30.0)
    found = corrected(book)
    assert found.overall == pytest.approx(11 / 7)
    factors = found.factors()
    assert factors["saw_100"] == pytest.approx(1.5 + 11 / 14)
    assert factors["rout_100"] == pytest.approx((30 + 60 * 11 / 7) / 90)
    assert factors["hole"] == pytest.approx(11 / 7)
    assert found.rates(Rates()).saw_100 == pytest.approx(3.0 * factors["saw_100"], abs=1e-3)
    assert found.rates(Rates()).table_change == pytest.approx(6.0 * 11 / 7, abs=1e-3)
    assert found.rates(Rates()).factor == 1.0


@given(st.floats(0.2, 5.0))
def test_much_work_timed_outweighs_the_default(ratio):
    long = Task(operation="long", rate="hole", planned=20_000.0)
    assert corrected(set_minutes(Book(), "real", long, 20_000 * ratio)).factors()["hole"] == pytest.approx(ratio, rel=0.02, abs=0.02)


@given(st.floats(0, 100_000))
def test_factors_stay_within_their_limits_and_grow_with_the_time_spent(spent):
    low = corrected(set_minutes(Book(), "real", SAW, spent))
    high = corrected(set_minutes(Book(), "real", SAW, min(100_000.0, spent + 10)))
    for rate in (*WORK_FIELDS, CHANGING):
        assert 0.1 <= low.factors()[rate] <= high.factors()[rate] <= 10


def test_corrected_rates_give_the_estimate_that_the_factors_promise(work):
    book = set_minutes(Book(), "practice", SAW, 200.0)
    found = corrected(book)
    planned = tasks(work.steps, work.counts.changes)
    by_factor = sum(line.planned for line in lines(book, planned, found.factors()) if line.current)
    by_rates = 60 * hours(work.steps, work.counts.changes, found.rates(Rates())).total
    assert by_factor == pytest.approx(by_rates, abs=0.05)


def test_rates_set_by_hand_stay_until_they_are_timed_and_taking_over_twice_changes_nothing():
    own = replace(Rates(), hole=2.5, saw_100=9.0, factor=2.0)
    found = corrected(set_minutes(Book(), "real", SAW, 60.0))
    made = found.rates(own)
    assert (made.hole, made.saw_100, made.factor, made.clean_up) == (5.0, 3.0, 1.0, 90.0)
    assert found.rates(made) == made


def test_nothing_spent_corrects_how_long_glue_dries():
    own = replace(Rates(), glue_dry=300.0, factor=2.0)
    assert corrected(Book()).rates(own).glue_dry == 300.0
    assert "glue_dry" not in factors_of(own, Changes())


def test_the_plan_at_the_makers_own_rates(work):
    own = replace(Rates(), hole=2.0, table_change=9.0, factor=1.5)
    changes = work.counts.changes
    rows = lines(Book(), tasks(work.steps, changes), factors_of(own, changes))
    assert sum(row.planned for row in rows) == pytest.approx(60 * hours(work.steps, changes, own).total)


def test_every_field_of_the_rates_is_known():
    assert {*WORK_FIELDS, *CHANGE_FIELDS, *NO_WORK} == set(Rates.__struct_fields__)
    assert Changes().minutes(Rates()) == 0


def test_what_is_done_and_gone_from_the_drawing_keeps_its_tick_to_be_struck_out():
    book = tick_off(tick_off(Book(piece="real"), SAW, 1), ROUT, 2)
    rows = lines(book, [SAW])
    assert [row[0] for row in hour_cells(rows, {SAW.operation: 1}, book, {SAW.operation})[:2]] == ["✓ 1", "✓ old"]
    assert [row[0] for row in hour_cells(rows, {}, book, {SAW.operation}, {ROUT.operation})[:2]] == ["✓", ""], "before there is a plan"
