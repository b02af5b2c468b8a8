"""Sheets in the maker's unit: inches on all that is worked to, millimetres on the check bars."""

import re

import pytest

from app.sheets import pages
from geometry.drawing import Label
from geometry.solids import holes
from geometry.units import format_close, parse_length
from tests.app.sheets.printed import layout, words


@pytest.fixture(scope="module")
def printed():
    return pages(layout("slotted"), "Letter", (), unit="in64")


def said(printed, title):
    return " ".join(words(page) for page in printed if title in page.title)


@pytest.mark.parametrize(("mm", "unit", "text"), [
    (38.1, "in64", '1 1/2"'),          # 1.5 x 25.4
    (38.14, "in64", '1 1/2"'),         # 0.04 beside it
    (38.2, "in64", '1.504"'),          # a 64th is 0.397, so 1 1/2 would be 0.1 wrong
    (0.4, "in64", '1/64"'),            # 0.39688: less than a hundredth of it away
    (0.42, "in64", '0.017"'),
    (38.1, "in", '1.5"'), (38.1, "mm", "38.1 mm"),
])
def test_fractions_only_where_they_are_true(mm, unit, text):
    assert format_close(mm, unit, mark=True) == text


def test_every_mark_on_the_cards_is_where_it_is_in_the_layout(printed):
    """Read back from the words of the cards; a thousandth of an inch rounds by 0.0127 mm, a fraction by 0.05."""
    marks = [parse_length(text, "in") for text in re.findall(r'([0-9 ./]+)" from the nut line', said(printed, "Cards"))]
    wanted = [d.mark[1] for hole in holes(layout("slotted")) for d in hole.drillings if d.role == "post"]
    assert len(wanted) == 6
    for y in wanted:
        assert min(abs(y - mark) for mark in marks) <= 0.0501
    stops = [parse_length(text, "in") for text in re.findall(r'([0-9 ./]+)" to full diameter', said(printed, "Cards"))]
    for d in (d for hole in holes(layout("slotted")) for d in hole.drillings if d.role == "post"):
        assert min(abs(d.stop - stop) for stop in stops) <= 0.0501


def test_the_running_order_tells_marks_and_stops_as_truly_as_the_cards(printed):
    order = said(printed, "Running order")
    posts = [d for hole in holes(layout("slotted")) for d in hole.drillings if d.role == "post"]
    for pattern, wanted in ((r'at its mark ([0-9 ./]+)"', [d.mark[1] for d in posts]), (r'stop at ([0-9 ./]+)"', [d.stop for d in posts])):
        told = [parse_length(text, "in") for text in re.findall(pattern, order)]
        assert len(told) == len(posts)
        assert all(min(abs(one - mm) for one in told) <= 0.0501 for mm in wanted)


def test_the_papers_that_are_glued_on_tell_their_bores_in_inches(printed):
    """A bare 6.4 on the wrap paper of an inch job would be taken for whatever the maker thinks in."""
    wrap, template = said(printed, "Wrap paper"), said(printed, "Template")
    drillings = [d for hole in holes(layout("slotted")) for d in hole.drillings]
    posts = [d for d in drillings if d.role == "post"]
    stops = [parse_length(text, "in") for text in re.findall(r'stop ([0-9 ./]+)"', wrap)]
    assert len(stops) == len(posts)
    for d in posts:
        assert min(abs(d.stop - stop) for stop in stops) <= 0.0501
    pin = next(d for d in drillings if d.role == "locating")
    told = re.findall(rf'{pin.of}: ([0-9 ./]+)"', wrap + template)
    assert len(told) == 2 and all(abs(parse_length(text, "in") - pin.diameter) <= 0.0501 for text in told)
    assert not re.search(r"\d (through|to \d|, tilt)", wrap + template)


def test_nothing_to_work_to_is_left_in_millimetres(printed):
    for title in {page.title for page in printed} - {"Cover"}:
        assert not re.search(r"\d mm\b", said(printed, title).replace("100 mm", "")), title
    assert "Finished sizes in inches" in said(printed, "Cut list and parts")
    assert "inches and degrees" in said(printed, "Hole table")


def test_check_bars_stay_as_they_are(printed):
    assert all([m.text for placed in page.content for m in placed.drawing if isinstance(m, Label)].count('100 mm, 3 15/16"') >= 2 for page in printed)


def test_block_heights_are_for_round_lengths_in_inches(printed):
    order = said(printed, "Running order")
    assert 'L 6"' in order and 'L 10"' in order
