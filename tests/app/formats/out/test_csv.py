"""CSV that a spreadsheet takes as data."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.formats.csv_out import FORMULA_STARTS, csv_bytes, csv_text


def read(text):
    return list(csv.reader(io.StringIO(text, newline="")))


def test_numbers_are_plain_and_short():
    assert csv_text(("a", "b", "c", "d"), [(1.0, -0.00001, -12.34567, 3)]) == "a,b,c,d\r\n1,0,-12.3457,3\r\n"


def test_nothing_known_is_an_empty_cell():
    assert read(csv_text(("a", "b"), [(None, "x")]))[1] == ["", "x"]


@pytest.mark.parametrize("start", FORMULA_STARTS)
def test_words_never_start_a_formula(start):
    assert read(csv_text(("a",), [(f"{start}SUM(A1)",)]))[1][0].startswith("'")


@given(st.lists(st.tuples(st.text(st.characters(codec="utf-8")), st.floats(-1e6, 1e6)), max_size=8))
def test_every_table_is_read_back(rows):
    found = read(csv_text(("word", "number"), rows))
    assert len(found) == len(rows) + 1
    for (word, number), (cell, digits) in zip(rows, found[1:], strict=True):
        assert cell.replace("'", "") == word.replace("'", "")
        assert float(digits) == pytest.approx(number, abs=5.1e-5)


def test_the_file_is_marked_as_utf_8():
    assert csv_bytes(("Ø",), []) == b"\xef\xbb\xbf\xc3\x98\r\n"
