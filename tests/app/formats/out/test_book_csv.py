"""The job book as CSV: every amount to the last digit, no cell that a spreadsheet would run."""

import csv
import io
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from app.formats.book_csv import HEAD, book_bytes, book_table
from app.formats.csv_out import csv_text
from geometry.book import add_remark, put_price, put_reading, set_minutes, tick_off
from geometry.layout import Book, Bored, Made, Price, Reading, Remark, Shaped, StraightSlot, Task

SAW = Task(operation="saw bass slot", title="Saw out bass slot", rate="saw_100", features=("bass slot",), planned=9.0)
words = st.text(st.characters(codec="utf-8", exclude_characters="\x00"), min_size=1, max_size=60)


def rows_of(text):
    rows = list(csv.reader(io.StringIO(text, newline="")))
    assert tuple(rows[0]) == HEAD
    assert all(len(row) == len(HEAD) for row in rows)
    return [dict(zip(HEAD, row, strict=True)) for row in rows[1:]]


def test_all_that_is_written_down_is_in_the_table(tmp_path):
    book = set_minutes(Book(currency="EUR"), "practice", SAW, 12.5)
    book = put_price(book, None, Price(piece="real", part="tuner", count=12, each=Decimal("14.90")))
    book = add_remark(book, Remark(piece="practice", text="slower, then", on="bass slot"))
    book = put_reading(book, Reading(piece="real", drilling="a.1.1", what="x", how="centreline", value=20.3, planned=20.0))
    book = tick_off(book, SAW, 37)
    time, done, money, note, reading = rows_of(csv_text(HEAD, book_table(book, [SAW])))
    assert (time["item"], time["planned"], time["value"], time["unit"]) == ("Saw out bass slot", "9", "12.5", "min")
    assert (done["section"], done["piece"], done["item"]) == ("done", "practice", "Saw out bass slot")
    assert (money["count"], money["value"], money["total"], money["unit"]) == ("12", "14.90", "178.80", "EUR")
    assert (note["item"], note["about"]) == ("slower, then", "bass slot")
    assert (reading["about"], reading["planned"], reading["value"]) == ("x centreline", "20", "20.3")
    assert book_bytes(book, [SAW]).startswith("\ufeffsection".encode())


def test_what_is_done_has_the_place_of_what_was_made():
    book, hole = Book(), Bored(at=(12.0, 40.5, 0.0), end=(12.0, 40.5, 8.0), diameter=6.0)
    for number, (what, made) in enumerate({"bore a.1": Made(hole=hole), "saw b": Made(cut=Shaped(shape=StraightSlot(nut_end=(0, 30), tip_end=(0, 60), width=12))), "mark": Made()}.items(), 1):
        book = tick_off(book, Task(operation=what), number, made)
    assert [row["place"] for row in rows_of(csv_text(HEAD, book_table(book, [])))] == [
        "from the face at x 12.00 mm, y 40.50 mm, 6.00 mm wide, 8.00 mm deep", "x -6.00 mm to 6.00 mm, y 24.00 mm to 66.00 mm, through", ""]


@given(st.lists(st.tuples(words, st.decimals(min_value=-10**6, max_value=10**6, places=4), st.integers(0, 999)), max_size=8))
def test_every_price_comes_back_exactly(some):
    book = Book(prices=tuple(Price(piece="real", part=part, count=count, each=each) for part, each, count in some))
    found = rows_of(csv_text(HEAD, book_table(book, [])))
    assert [Decimal(row["value"]) for row in found] == [each for _, each, _ in some]
    assert [Decimal(row["total"]) for row in found] == [each * count for _, each, count in some]
    for row, (part, _, _) in zip(found, some, strict=True):
        assert row["item"].replace("'", "") == part.replace("'", "")


@given(words, words)
def test_no_cell_of_words_starts_a_formula(part, note):
    book = Book(currency="=1+1", prices=(Price(piece="real", part=part),), remarks=(Remark(piece="real", text=note),))
    for row in rows_of(csv_text(HEAD, book_table(book, []))):
        assert not any(row[name].startswith(("=", "+", "-", "@", "\t", "\r", "\n")) for name in ("item", "about", "unit"))
