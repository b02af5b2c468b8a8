"""Numbers and sentences for makers."""

import pytest

from geometry.checks.words import both, degrees, gap_text, listed, mm, toward, up


@pytest.mark.parametrize(("value", "text"), [
    (3.0, "3.0"), (1.44, "1.4"), (0.25, "0.25"), (12.96, "13.0"), (0.0, "0.00")])
def test_lengths(value, text):
    assert mm(value) == text


@pytest.mark.parametrize(("measured", "needed", "texts"), [
    (1.4, 3.0, ("1.4", "3.0")), (2.97, 3.0, ("2.97", "3.00")), (2.9996, 3.0, ("2.9996", "3.0000")),
    (0.5, 3.0, ("0.50", "3.00"))])
def test_two_lengths_that_differ_look_different(measured, needed, texts):
    assert both(measured, needed) == texts


@pytest.mark.parametrize(("value", "rounded"), [(1.9, 1.9), (1.91, 2.0), (0.001, 0.1), (0.0, 0.0), (0.3 + 1e-9, 0.3)])
def test_doing_as_told_is_enough(value, rounded):
    assert up(value) == pytest.approx(rounded)


@pytest.mark.parametrize(("shift", "text"), [
    ((0.0, 1.9), "1.9 mm to the tip"), ((-0.4, 1.9), "1.9 mm to the tip and 0.4 mm to the bass side"),
    ((2.0, -0.01), "2.0 mm to the treble side"), ((0.0, -3.0), "3.0 mm to the nut"), ((0.0, 0.0), "0.0 mm")])
def test_directions(shift, text):
    assert toward(shift) == text


def test_gaps_and_cuts():
    assert gap_text("side bore of a", "counterbore of b", 1.4, 3.0) == (
        "Side bore of a passes 1.4 mm from the counterbore of b; 3.0 mm wanted.")
    assert gap_text("screw of a", "bore of b", -0.5, 2.0) == (
        "Screw of a cuts 0.50 mm into the bore of b; 2.0 mm of wood wanted between them.")
    assert gap_text("screw of a", "bore of b", 0.0, 2.0) == "Screw of a touches the bore of b; 2.0 mm wanted."


def test_lists_and_angles():
    assert [listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])] == ["a", "a and b", "a, b and c"]
    assert [degrees(-0.001), degrees(6.42)] == ["0.0", "6.4"]
