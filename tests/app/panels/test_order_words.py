"""Words of the running order: minutes as makers type them, rows, and what a wrong place is said to spoil."""

import re

import pytest

from app.panels.order.order_rows import SetUpRow, StepRow, minutes_words, order_rows
from app.panels.order.rate_rows import NAMES, loud_words, rate_rows
from app.panels.order.step_words import step_words
from geometry.errors import GeometryError
from geometry.layout import Rates
from geometry.sequence import best_order, estimate, judge, moved, operations, precedence, wood_after
from tests.geometry.sequence.specimens import demo

HEAD = demo()
OPS = operations(HEAD)
BY_ID = {op.id: op for op in OPS}
EDGES = precedence(HEAD, OPS)
BEST = best_order(OPS, EDGES).steps
NUMBERS = {id: number for number, id in enumerate(BEST, 1)}


def rate_row(name):
    return next(row for row in rate_rows(HEAD) if row.label == NAMES[name])


@pytest.mark.parametrize(("text", "minutes"), [("4", 4.0), ("4.5 min", 4.5), (" 1,5 h ", 90.0), ("2 hours", 120.0),
                                               ("90 s", 1.5), ("0", 0.0), ("10minutes", 10.0), ("1:30", 90.0)])
def test_minutes_of_a_step_are_read_as_the_job_book_reads_them(text, minutes):
    assert rate_row("hole").change(text).rates.hole == pytest.approx(minutes)


@pytest.mark.parametrize("text", ["soon", "4 weeks", "-3", "nan", "inf", "1 2 min"])
def test_what_is_no_time_is_refused_in_a_sentence(text):
    with pytest.raises(GeometryError, match="is not a time"):
        rate_row("hole").change(text)
    with pytest.raises(GeometryError, match="Type minutes"):
        rate_row("hole").change("  ")


@pytest.mark.parametrize(("text", "factor"), [("1.2", 1.2), ("0,9", 0.9), (" 2 ", 2.0)])
def test_what_everything_is_multiplied_with_is_a_number_and_no_time(text, factor):
    assert rate_row("factor").change(text).rates.factor == factor
    for time in ("1.2 h", "90 s", "", "long", "0", "-1", "nan", "1e9"):
        with pytest.raises(GeometryError):
            rate_row("factor").change(time)


@pytest.mark.parametrize(("minutes", "words"), [(0.75, "0.8 min"), (4.0, "4 min"), (11.6, "12 min"), (59.6, "1 h"), (9.97, "10 min"),
                                                (60.0, "1 h"), (62.4, "1 h 02"), (150.0, "2 h 30")])
def test_minutes_in_words(minutes, words):
    assert minutes_words(minutes) == words


def test_every_rate_has_a_name_and_a_field():
    assert set(NAMES) == set(Rates.__struct_fields__)
    rows = [row for row in rate_rows(HEAD) if row.kind == "text"]
    changed = [row.change("7") for row in rows]
    assert [next(name for name in NAMES if getattr(one.rates, name) != getattr(HEAD.rates, name)) for one in changed] == list(NAMES)


def test_a_rate_out_of_range_is_refused():
    row = next(row for row in rate_rows(HEAD) if row.label == NAMES["factor"])
    with pytest.raises(GeometryError):
        row.change("0")


def test_rows_have_one_badge_a_set_up():
    steps = [BY_ID[id] for id in BEST]
    rows = order_rows(steps, NUMBERS, (), estimate(BEST, OPS), "mm")
    badges = [row for row in rows if isinstance(row, SetUpRow)]
    assert [row.id for row in rows if isinstance(row, StepRow)] == list(BEST)
    assert (badges[1].machine, badges[1].rest) == ("Drill press", "brad 6.4 · 3.1° nut raised · bass edge up")
    assert "5.4 mm of blocks over 100 mm" in badges[1].words


def test_a_wrong_place_is_told_on_both_steps():
    order = moved(BEST, "cut outline", 2)
    wrong = {row.id: row for row in order_rows([BY_ID[id] for id in order], NUMBERS, judge(order, OPS, EDGES),
                                               estimate(order, OPS), "mm") if isinstance(row, StepRow) and row.grade}
    assert wrong["side bore treble side 1.1.1"].grade == "loud"
    number = {id: i for i, id in enumerate(order, 1)}

    def said(id, done=()):
        broken = [e for e in EDGES if number[e.first] > number[e.then]]
        return step_words(BY_ID[id], BY_ID, EDGES, broken, done, number, estimate(order, OPS)[id],
                          wood_after(HEAD, order, number[id], OPS), "mm")
    assert any(re.match(r"Its place makes “Side bore \w+ side 1” \(\d+\), “Side bore \w+ side 2” \(\d+\) and 4 more impossible: "
                        "Once the outline is cut", text) for text in said("cut outline").warnings)
    assert any(text.startswith("Cannot be done here, out of turn with “Saw the outline” (3):") for text in
               said("side bore treble side 1.1.1").warnings)
    assert any(re.match("Done this early, it makes “Side bore .* impossible: ", text) for text in said("cut outline", {"cut outline"}).warnings)
    assert any(text.startswith("Impossible by now, after “Saw the outline” (3):") for text in
               said("side bore treble side 1.1.1", {"cut outline"}).warnings), "no other place mends what is done"
    assert said("mark").warnings == said("mark").unwise == ()


def test_reasons_name_what_they_protect_once():
    words = step_words(BY_ID["rout bass slot 1"], BY_ID, EDGES, (), (), {id: i for i, id in enumerate(BEST, 1)},
                       estimate(BEST, OPS)["rout bass slot 1"], wood_after(HEAD, BEST, 39, OPS), "mm")
    assert len({(r.why, r.protects) for r in words.after}) == len(words.after)
    assert any(r.protects == "the cutter and its line" and "Waste holes bass slot" in r.others for r in words.after)
    assert words.takes.startswith("About")
    row = next(row for row in order_rows([BY_ID[one] for one in BEST], NUMBERS, (), estimate(BEST, OPS), "mm")
               if isinstance(row, StepRow) and row.id == "rout bass slot 1")
    assert words.takes.startswith(f"About {row.minutes}"), "as the list beside it says"


def test_many_that_cannot_be_done_are_counted():
    lines = loud_words(("a", "b", "c", "d"), ()).splitlines()
    assert lines == ["Cannot be done: a", "Cannot be done: b", "And 2 more that cannot be done: each is marked below."]


def test_what_cannot_be_had_is_said_line_by_line():
    assert loud_words((), ()) == ""
    assert loud_words(("X: the rack has no drill.",), ("A", "B")).splitlines() == [
        "Cannot be done: X: the rack has no drill.", "Left out, because they cannot be reached: A, B."]
