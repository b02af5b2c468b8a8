"""Lengths in sentences: in the unit that is spoken, and never such that doing as told is refused again."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.beginning import Numbers, Refused, begin
from geometry.checks.said import length, read
from geometry.edits import largest_fillet, set_radius
from geometry.edits.fillet import fillet
from geometry.errors import GeometryError
from geometry.lengths import (
    area,
    at_least,
    at_most,
    deep,
    down,
    exact,
    from_line,
    marking,
    mm,
    place,
    speaking,
    told,
    told_down,
    up,
)
from geometry.units import parse_length
from tests.geometry.edits.heads import plain

UNITS = ("mm", "in", "in64")


@given(st.floats(0.01, 500), st.sampled_from(UNITS))
def test_bounds_can_be_typed_as_they_are_told(size: float, unit: str) -> None:
    with speaking(unit):
        low, high = at_most(size), at_least(size)
    assert size - 0.03 < parse_length(low, unit) <= size + 1e-6
    assert size - 1e-6 <= parse_length(high, unit) < size + 0.03


def test_bounds_by_hand() -> None:
    assert (at_least(10.001), at_most(10.009), at_least(10.0), at_most(10.0)) == ("10.01 mm", "10 mm", "10 mm", "10 mm")
    with speaking("in64"):
        assert (at_least(12.7), at_most(12.69), mm(12.7)) == ('0.5"', '0.499"', '1/2"')


@pytest.mark.parametrize(("unit", "said"), [
    ("mm", ["6.35 mm", "12.3 mm", "6.35", "12.3", "1.235 mm", "3.45 mm", "3.46 mm", "645.2 mm²", "12.7 across to the bass, 50.8 along"]),
    ("in", ['0.25"', '0.486"', '0.25"', '0.487"', '0.0486"', '0.136"', '0.136"', "1.0000 sq in", '0.5" across to the bass, 2" along']),
    ("in64", ['1/4"', '31/64"', '1/4"', '0.487"', '0.0486"', '0.136"', '0.136"', "1.0000 sq in", '1/2" across to the bass, 2" along'])])
def test_each_way_of_telling_by_hand(unit: str, said: list[str]) -> None:
    """A quarter of an inch is 6.35 mm; 12.39 mm 0.4878 in, 3.456 mm 0.1361 in, a square inch 645.16 mm²."""
    with speaking(unit):
        assert [mm(6.35), mm(12.3456), told(6.35), told_down(12.39), exact(1.23456), deep(3.456), deep(3.456, through=True), area(645.16),
                place((-12.7, 50.8))] == said


def test_a_place_is_told_from_the_centreline_and_the_nut_line() -> None:
    assert [place((x, 10.24)) for x in (0.04, 3.0)] == ["the centreline, 10.2 along", "3 across to the treble, 10.2 along"]
    assert [from_line(y, "4 mm", "nut line") for y in (-4.0, 0.0, 4.0)] == ["4 mm behind the nut line", *["4 mm from the nut line"] * 2]


def test_sizes_that_are_set_go_by_half_a_mm_or_a_sixteenth() -> None:
    assert [up(12.1), up(12.5), up(12.51), down(12.4), down(12.5), down(12.49)] == [12.5, 12.5, 13.0, 12.0, 12.5, 12.0]
    with speaking("in64"):
        assert [up(12.6), up(12.7), down(12.7), down(12.8)] == [12.7] * 4 and up(12.8) == down(14.3) == 12.7 + 25.4 / 16


def test_a_mark_holds_the_length_in_whatever_unit_it_is_written() -> None:
    with speaking("in"), marking(length):
        said = mm(25.4)
    assert read(said) == "25.4 mm" and read(said, "in") == '1"'


@pytest.mark.parametrize("unit", UNITS)
def test_the_least_radius_that_is_told_is_taken(unit: str) -> None:
    head = plain()
    with speaking(unit), pytest.raises(GeometryError) as refused:
        set_radius(head, "outline", 0, 0.5)
    said = str(refused.value)
    told = said.split("must be ")[1].removesuffix(" or more.")
    assert (" mm" in said) == (unit == "mm")
    set_radius(head, "outline", 0, parse_length(told, unit))


@pytest.mark.parametrize("unit", UNITS)
def test_the_largest_rounding_that_is_told_is_taken(unit: str) -> None:
    head = plain()
    index = next(k for k in range(len(head.outline.nodes)) if _rounds(head, k))
    with speaking(unit), pytest.raises(GeometryError) as refused:
        fillet(head, "outline", index, 900.0)
    told = str(refused.value).split("fits is ")[1].removesuffix(".")
    fillet(head, "outline", index, parse_length(told, unit))


def test_a_first_layout_is_refused_in_inches() -> None:
    with speaking("in"), pytest.raises(Refused) as refused:
        begin(Numbers(thickness=6.35))
    assert 'A blank 0.25" thick is too thin' in str(refused.value) and " mm" not in str(refused.value)
    assert math.isfinite(refused.value.value)


def _rounds(head, index: int) -> bool:
    try:
        return largest_fillet(head, "outline", index) > 0.1
    except GeometryError:
        return False
