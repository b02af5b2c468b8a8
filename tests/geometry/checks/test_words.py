"""Numbers and sentences for makers."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.checks import check
from geometry.checks.said import length, read
from geometry.checks.words import both, gap_text, into, listed, mm, size, tenths, up
from geometry.layout import SingleHole
from geometry.units import parse_length
from tests.geometry.checks.heads import OBLONG, head


@pytest.mark.parametrize(("value", "text"), [
    (3.0, "3.0"), (1.44, "1.4"), (0.25, "0.25"), (12.96, "13.0"), (0.0, "0.00")])
def test_lengths(value, text):
    assert read(mm(value)) == text


@pytest.mark.parametrize(("measured", "needed", "texts"), [
    (1.4, 3.0, ("1.4", "3.0")), (2.97, 3.0, ("2.97", "3.00")), (2.9996, 3.0, ("2.9996", "3.0000")),
    (0.5, 3.0, ("0.50", "3.00")), (2.76, 3.0, ("2.7", "3.0")), (5.06, 5.0, ("5.06", "5.00")), (0.7, 3.0, ("0.70", "3.00")),
    (-0.04, 3.0, ("-0.04", "3.00"))])
def test_two_lengths_that_differ_look_different(measured, needed, texts):
    assert tuple(map(read, both(measured, needed))) == texts


@pytest.mark.parametrize(("value", "rounded"), [(1.9, 1.9), (1.91, 2.0), (0.001, 0.1), (0.0, 0.0), (0.3 + 1e-9, 0.3)])
def test_doing_as_told_is_enough(value, rounded):
    assert up(value) == pytest.approx(rounded)


@pytest.mark.parametrize(("said", "unit", "text"), [
    (f"{length(2.4)} mm off", "mm", "2.4 mm off"),
    (f"{length(2.4)} mm off", "in", '0.094" off'),
    (f"{length(2.4)} mm off", "in64", '3/32" off'),
    (f"{length(0.25, 2)} mm off", "in64", '0.0098" off'),
    (f"{length(-3.175)} of {length(25.4)} mm.", "in64", '-1/8" of 1".'),
    (f"{length(12.7)} mm² of wood", "in", "0.0197 sq in of wood"),
    (f"the {size(12.7)} mm cutter", "mm", "the 12.7 mm cutter"),
    (f"the {size(10.0)} mm cutter", "mm", "the 10 mm cutter"),
    (f"the {size(12.7)} mm cutter", "in64", 'the 1/2" cutter'),
    ("post 6 mm of pin 2 mm", "in", "post 6 mm of pin 2 mm"),
])
def test_a_sentence_is_read_in_the_makers_unit(said, unit, text):
    assert read(said, unit) == text


@pytest.mark.parametrize("value", [0.1, 0.3, 1.0, 2.0, 25.4, 7.94])
@pytest.mark.parametrize("unit", ["in", "in64"])
def test_working_to_a_number_in_inches_is_enough(value, unit):
    told = parse_length(read(f"{tenths(value)} mm", unit))
    assert up(value) - 1e-9 <= told <= up(value) + 0.0254


@given(st.floats(-30.0, -0.02), st.sampled_from(["mm", "in", "in64"]))
def test_an_overlap_is_told_alike_at_its_ring_and_in_its_sentence(measured, unit):
    assert read(both(measured, 3.0)[0], unit) == "-" + read(into(measured), unit)


@pytest.mark.parametrize(("measured", "text"), [(-4.94, "5.0"), (-4.9, "4.9"), (-1.85, "1.9"), (-0.501, "0.51"), (-0.5, "0.50")])
def test_an_overlap_is_never_told_as_less_than_it_is(measured, text):
    assert read(into(measured)) == text


def test_gaps_and_cuts():
    assert read(gap_text("side bore of a", "counterbore of b", 1.4, 3.0)) == (
        "Side bore of a passes 1.4 mm from the counterbore of b; 3.0 mm wanted.")
    assert read(gap_text("screw of a", "bore of b", -0.5, 2.0)) == (
        "Screw of a cuts 0.50 mm into the bore of b; 2.0 mm of wood wanted between them.")
    assert read(gap_text("screw of a", "bore of b", 0.0, 2.0)) == "Screw of a touches the bore of b; 2.0 mm wanted."


def test_lists():
    assert [listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])] == ["a", "a and b", "a, b and c"]


@given(st.floats(-20, 40), st.sampled_from([1, 2, 3, 4]), st.sampled_from(["mm", "in", "in64"]))
def test_a_clearance_is_never_told_as_more_than_it_is(measured, decimals, unit):
    told = parse_length(read(length(measured, decimals, down=True) + " mm", unit))
    assert measured - 0.11 < told <= measured + 3e-5


def test_a_place_just_below_nought_is_told_without_a_sign():
    assert read(mm(-0.0004)) == "0.00" and read(mm(-0.004)) == "0.00" and read(mm(-0.006)) == "-0.01"


def test_what_lies_off_the_head_is_to_be_moved_onto_it():
    """Far out no single move that is tried brings it back, and neither a larger outline nor other hardware is what its maker wants."""
    far = head(outline=OBLONG, holes=(SingleHole(id="lost", at=(200.0, 60.0), diameter=6.0),))
    snag, = [snag for snag in check(far).snags if snag.kind == "hole-to-outline"]
    assert snag.cure == "Move lost onto the head, or take it away."
