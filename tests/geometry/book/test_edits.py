"""Entries into the job book: each is a new book, and what makes no sense is refused with a sentence."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats import headstock
from app.window.demo import demo
from geometry.book import (
    add_remark,
    begin_anew,
    drop_timer,
    minutes_of,
    put_price,
    put_reading,
    put_remark,
    read_amount,
    read_minutes,
    remove_price,
    remove_reading,
    remove_remark,
    running,
    set_minutes,
    start,
    stop,
    tick_off,
    ticked,
)
from geometry.errors import GeometryError
from geometry.layout import Book, Price, Reading, Remark, Task

SAW = Task(operation="saw slot", title="Saw out slot", rate="saw_100", features=("slot",), planned=9.0)
ROUT = Task(operation="rout slot 1", title="Rout slot", rate="rout_100", features=("slot",), planned=5.0)


def test_minutes_are_set_replaced_and_struck_out():
    book = set_minutes(Book(), "practice", SAW, 12.5)
    book = set_minutes(book, "real", SAW, 8.0)
    book = set_minutes(book, "practice", SAW, 10.0)
    assert (minutes_of(book, "practice", "saw slot"), minutes_of(book, "real", "saw slot")) == (10.0, 8.0)
    assert set_minutes(set_minutes(book, "practice", SAW, None), "real", SAW, None) == Book()


@pytest.mark.parametrize("wrong", [-1.0, 1e6, float("nan"), float("inf")])
def test_impossible_minutes_are_refused(wrong):
    with pytest.raises(GeometryError, match="between 0 and"):
        set_minutes(Book(), "real", SAW, wrong)


def test_the_timer_adds_to_what_is_there_and_only_one_runs():
    book = start(set_minutes(Book(), "real", SAW, 5.0), "real", SAW, 1000.0)
    assert running(book, 1000.0 + 90) == 1.5
    with pytest.raises(GeometryError, match="Saw out slot.*stop it first"):
        start(book, "real", ROUT, 1001.0)
    book = stop(book, 1000.0 + 90)
    assert book.clock is None
    assert minutes_of(book, "real", "saw slot") == 6.5
    with pytest.raises(GeometryError, match="No timer runs"):
        stop(book, 2000.0)


def test_a_clock_set_back_counts_nothing_and_a_timer_can_be_dropped():
    book = start(Book(), "practice", SAW, 1000.0)
    assert minutes_of(stop(book, 10.0), "practice", "saw slot") is None and stop(book, 10.0).clock is None
    assert minutes_of(stop(book, 100.2), "practice", "saw slot") is None, "a press too many is no work"
    assert drop_timer(book) == Book()


@pytest.mark.parametrize(("text", "value"), [
    ("12.50", "12.50"), ("12,5", "12.5"), (" 1 234,50 ", "1234.50"), ("1\u00a0234.50", "1234.50"), ("0,125", "0.125"), (",5", "0.5"),
    ("7", "7"), ("-3.20", "-3.20"), ("1234,567", "1234.567")])
def test_money_is_read_with_both_marks(text, value):
    assert str(read_amount(text)) == value


@pytest.mark.parametrize("text", ["", ".", "1.234,50", "1,234,567", "1e3", "NaN", "1_000", "12 EUR", "=1+1"])
def test_what_is_no_money_is_refused(text):
    with pytest.raises(GeometryError, match="not an amount"):
        read_amount(text)


def test_a_number_that_may_be_read_two_ways_is_asked_about():
    with pytest.raises(GeometryError, match=r"write 1234 or 1\.2340"):
        read_amount("1,234")


@pytest.mark.parametrize(("text", "value"), [
    ("25", 25.0), ("12,5", 12.5), ("1:30", 90.0), ("1.5 h", 90.0), ("40 min", 40.0), ("2 hours", 120.0), ("0", 0.0), ("", None), ("  ", None)])
def test_times_are_read_as_makers_write_them(text, value):
    assert read_minutes(text) == value


@pytest.mark.parametrize("text", ["soon", "1:75", "-:30", "1:2:3", "nan", "inf h", "-5"])
def test_what_is_no_time_is_refused(text):
    with pytest.raises(GeometryError, match="not a time"):
        read_minutes(text)


def test_prices_and_notes_are_put_replaced_and_removed():
    nut = Price(piece="real", part="nut", each=Decimal("4.20"))
    book = put_price(put_price(Book(), None, nut), None, Price(piece="real", part="wood", each=Decimal(30)))
    book = put_price(book, 0, Price(piece="real", part="bone nut", each=Decimal("6.00")))
    assert [p.part for p in book.prices] == ["bone nut", "wood"]
    assert [p.part for p in remove_price(book, 0).prices] == ["wood"]
    with pytest.raises(GeometryError, match="not an amount"):
        put_price(book, None, Price(piece="real", part="gold", each=Decimal("NaN")))
    book = add_remark(Book(), Remark(piece="practice", text="Clamp a block behind the exit", on="slot"))
    assert remove_remark(book, 0) == Book()
    with pytest.raises(GeometryError, match="needs some words"):
        add_remark(Book(), Remark(piece="practice", text="  "))


def test_a_second_reading_of_the_same_kind_takes_the_place_of_the_first():
    one = Reading(piece="real", drilling="a.1.1", what="diameter", value=10.1, planned=10.0)
    book = put_reading(put_reading(Book(), one), Reading(piece="real", drilling="a.1.1", what="depth", value=20.0))
    book = put_reading(book, Reading(piece="real", drilling="a.1.1", what="diameter", value=10.2, planned=10.0))
    assert [r.value for r in book.readings] == [10.2, 20.0]
    assert [r.what for r in remove_reading(book, one).readings] == ["depth"]


@given(st.decimals(min_value=-10**8, max_value=10**8, places=2))
def test_every_amount_reads_back_from_its_own_words(value):
    assert read_amount(format(value, "f")) == value
    assert read_amount(format(value, "f").replace(".", ",")) == value


@pytest.mark.parametrize("write", [
    lambda size: lambda book: add_remark(book, Remark(piece="real", text="n" * size)),
    lambda size: lambda book: put_remark(add_remark(book, Remark(piece="real", text="n")), 0, Remark(piece="real", text="n" * size)),
    lambda size: lambda book: put_price(book, None, Price(piece="real", part="p" * size)),
    lambda size: lambda book: put_price(book, None, Price(piece="real", part="p", count=25 * size)),
    lambda size: lambda book: put_reading(book, Reading(piece="real", drilling="a", what="y", value=float(size)))])
def test_what_the_book_takes_can_be_opened_again_and_the_rest_is_refused(write):
    """The limits are found from outside: what is not refused goes through the file and comes back."""
    taken = refused = 0
    for size in (1, 199, 200, 201, 3999, 4000, 4001, 5000, 5001):
        try:
            book = write(size)(Book())
        except GeometryError:
            refused += 1
            continue
        taken += 1
        assert headstock.decode(headstock.encode(replace(demo(), book=book))).book == book
    assert taken and refused


def test_a_piece_begun_anew_has_its_notes_and_nothing_else():
    task = Task(operation="saw a", title="Saw a", features=("a",))
    book = Book()
    for piece in ("practice", "real"):
        book = replace(book, piece=piece)
        book = tick_off(set_minutes(book, piece, task, 5.0), task, 3)
        book = put_price(book, None, Price(piece=piece, part="wood"))
        book = put_reading(book, Reading(piece=piece, drilling="a.1", what="depth", value=3.0))
        book = add_remark(book, Remark(piece=piece, text=f"of the {piece} one", on="a"))
    book = start(book, "practice", task, 1.7e9)
    made = begin_anew(book)
    for field in ("done", "times", "prices", "readings"):
        assert [one.piece for one in getattr(made, field)] == ["practice"], field
    assert (made.remarks, made.clock, made.piece, ticked(made)) == (book.remarks, book.clock, "real", frozenset())
    with pytest.raises(GeometryError, match="stop it first"):
        begin_anew(replace(book, piece="practice"))
    assert begin_anew(Book()) == Book()
