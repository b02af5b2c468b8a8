"""Lengths and angles as makers write them: read to the right number, shown as they were meant, refused in one sentence."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.errors import GeometryError
from geometry.units import MM_PER_INCH, format_angle, format_close, format_down, format_length, parse_angle, parse_length


@pytest.mark.parametrize(("text", "unit", "mm"), [
    ("12.5", "mm", 12.5), ("12,5", "mm", 12.5), (".5", "mm", 0.5), ("5.", "mm", 5.0), ("-3", "mm", -3.0), ("−3", "mm", -3.0),
    ("2 cm", "mm", 20.0), ("12 mm", "in", 12.0), ("1", "in", 25.4), ("0.5", "in64", 12.7), ('1/2"', "mm", 12.7),
    ("1/2", "mm", 0.5), ("1/2", "in", 12.7), ('1 5/8"', "mm", 41.275), ('1-5/8"', "mm", 41.275), ('-1 5/8"', "mm", -41.275),
    ('1 5/8" + 2 mm', "mm", 43.275), ("10 - 1/2 in", "mm", -2.7), ("3/8 in - 1 mm", "mm", 8.525), ("2 inches", "mm", 50.8),
    ("1″", "mm", 25.4), ("0", "in", 0.0),
])
def test_a_length_is_read_as_it_was_meant(text, unit, mm):
    assert parse_length(text, unit) == pytest.approx(mm, abs=1e-12)


@pytest.mark.parametrize("text", ["", "  ", "abc", "1e5", "1.2.3", "--3", "3 mm 4 mm", "1/2/3", "1 1/0", "1/0", "1' 2\"", "nan", "inf",
                                  "9" * 400, "9" * 5000, "1 " + "9" * 5000 + "/3", "9" * 400 + "/1", "9" * 400 + "/" + "9" * 400,
                                  "1000001", "-1000001"])
def test_what_is_no_length_is_refused_in_one_sentence(text):
    with pytest.raises(GeometryError) as refused:
        parse_length(text)
    assert str(refused.value).endswith(".") and len(str(refused.value)) < 140 and "\n" not in str(refused.value)


@given(st.floats(0, 999), st.sampled_from(["mm", "in", "in64"]), st.sampled_from([1, 2]))
def test_a_depth_or_a_clearance_is_never_shown_as_more_than_it_is(mm, unit, decimals):
    shown = parse_length(format_down(mm, unit, decimals, mark=True))
    step = 10 ** -decimals if unit == "mm" else 0.001 * MM_PER_INCH if unit == "in" else 0.05
    assert mm - step - 1e-9 <= shown <= mm + 1e-6


@pytest.mark.parametrize(("mm", "unit", "decimals", "shown"), [
    (23.46, "mm", 1, "23.4 mm"), (23.4, "mm", 1, "23.4 mm"), (2.96, "mm", 2, "2.96 mm"), (0.1 + 0.2, "mm", 1, "0.3 mm"),
    (12.7, "in", 1, '0.5"'), (12.69, "in", 1, '0.499"'), (12.7, "in64", 1, '1/2"'), (12.69, "in64", 1, '0.499"'),
    (12.71, "in64", 1, '1/2"'), (-0.04, "mm", 1, "-0.1 mm"), (-0.2, "mm", 1, "-0.2 mm")])
def test_lengths_rounded_down_in_hand_computed_cases(mm, unit, decimals, shown):
    """12.69 mm is 0.49961 in: a thousandth below it is 0.499 and half an inch would be more."""
    assert format_down(mm, unit, decimals, mark=True) == shown


@given(st.floats(-999, 999), st.sampled_from(["mm", "in", "in64"]))
def test_what_is_shown_is_read_back_as_near_as_it_was_shown(mm, unit):
    fine = {"mm": 0.005, "in": 0.0005 * MM_PER_INCH, "in64": MM_PER_INCH / 128}[unit]
    for mark in (False, True):
        assert parse_length(format_length(mm, unit, mark=mark), unit) == pytest.approx(mm, abs=fine + 1e-9)


@given(st.integers(-20 * 64, 20 * 64))
def test_fractions_of_an_inch_are_shown_in_lowest_terms(sixty_fourths):
    shown = format_length(sixty_fourths * MM_PER_INCH / 64, "in64")
    sign, parts = (-1, shown[1:].split()) if shown.startswith("-") else (1, shown.split())
    assert sign * sum(Fraction(part) for part in parts) == Fraction(sixty_fourths, 64)
    assert all("/" not in part or Fraction(part).denominator == int(part.split("/")[1]) for part in parts)


def test_nothing_is_ever_shown_as_minus_zero():
    assert [format_length(-0.001, unit, mark=True) for unit in ("mm", "in", "in64")] == ["0 mm", '0"', '0"']
    assert format_angle(-1e-6) == "0.0°" and format_angle(math.radians(-0.04), 2) == "-0.04°"


def test_a_fraction_is_told_only_where_it_is_true():
    """9.5 mm is 0.374 inches: 3/8 is 9.525, 0.025 away and within a hundredth of it; 0.8 mm is nearest to 1/32 but 0.006 away."""
    assert format_close(9.5, "in64") == "3/8" and format_close(9.46, "in64") == "0.372"
    assert format_close(0.8, "in64") == "1/32" and format_close(0.82, "in64") == "0.032"
    assert format_close(9.53, "mm", mark=True) == "9.5 mm"


@pytest.mark.parametrize(("text", "degrees"), [("14", 14.0), ("14.5°", 14.5), ("-3,5 deg", -3.5), ("− 2 degrees", -2.0), ("+.5", 0.5),
                                               ("720", 720.0)])
def test_an_angle_is_read_in_degrees(text, degrees):
    assert parse_angle(text) == pytest.approx(math.radians(degrees), abs=1e-15)


@pytest.mark.parametrize("text", ["", "north", "1e3", "14 rad", "nan", "9" * 400, "9" * 5000, "-1000001"])
def test_what_is_no_angle_is_refused_in_one_sentence(text):
    with pytest.raises(GeometryError) as refused:
        parse_angle(text)
    assert str(refused.value).endswith(".") and len(str(refused.value)) < 140
