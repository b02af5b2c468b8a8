"""Pitch, pull and press of strings against published numbers. The source stands beside each value."""

import math

import pytest

from geometry.layout import Nut, String
from geometry.strings.tension import STEEL, bend_force, frequency, tension


def wire(kg_per_m, note, scale_length):
    """A plain string so thick that it weighs so much."""
    return String(id="1", diameter=1000 * math.sqrt(4 * kg_per_m / (math.pi * STEEL)), course=1, note=note, scale_length=scale_length)


@pytest.mark.parametrize(("note", "hertz"), [("E2", 82.41), ("A2", 110.00), ("D3", 146.83), ("G3", 196.00), ("B3", 246.94), ("E4", 329.63),
                                             ("E3", 164.81), ("A3", 220.00), ("D4", 293.66), ("G4", 392.00)])
def test_pitches_of_the_printed_table(note, hertz):
    """auditoryneuroscience.com, fundamental frequencies of notes in western music."""
    assert frequency(note) == pytest.approx(hertz, abs=0.005)


def test_a_pitch_to_thirteen_digits():
    """OEIS A329211: the E above A4 = 440 Hz of equal temperament, an octave down."""
    assert frequency("E4") == pytest.approx(329.6275569128, abs=1e-10)


def test_the_worked_example_of_a_high_e_string():
    """University Physics vol. 1, section 16.3 (OpenStax): 3.09e-4 kg/m pulled by 56.40 N carries waves at 427.23 m/s.

    Over 25.5 in that is 329.8 Hz, E4 within 0.06 %, and the pull goes with the square.
    """
    speed = 427.23
    assert speed == pytest.approx(math.sqrt(56.40 / 3.09e-4), abs=0.005)
    found = tension(wire(3.09e-4, "E4", 647.7), Nut())
    assert found == pytest.approx(56.40 * (frequency("E4") / (speed / 2 / 0.6477)) ** 2, rel=1e-4)
    assert found == pytest.approx(56.40, rel=0.0013)


def test_a_wire_of_known_weight_length_and_pull():
    """0.400 m, 3.00 g, 765 N: 399.2 Hz (questions.llc/questions/347497). Pull goes with the square of the pitch."""
    found = tension(wire(3.00e-3 / 0.400, "G4", 400.0), Nut())
    assert found * (399.2 / frequency("G4")) ** 2 == pytest.approx(765.0, rel=2e-4)


def test_the_pull_of_a_low_e_string_that_carries_waves_as_fast():
    """University Physics vol. 1, section 16.3 (OpenStax): 5.78e-3 kg/m at the same 427.23 m/s takes 1055 N (answer from memory)."""
    low, high = (tension(wire(mass, "E4", 647.7), Nut()) for mass in (5.78e-3, 3.09e-4))
    assert 56.40 * low / high == pytest.approx(1055.0, abs=0.5)


def test_a_wire_tuned_to_middle_c():
    """0.7000 m, 4.100 g, 261.6 Hz: 785.6 N (problem at tutorsglobe.com, worked out)."""
    assert tension(wire(4.100e-3 / 0.7000, "C4", 700.0), Nut()) == pytest.approx(785.6, abs=0.2)


@pytest.mark.parametrize(("between", "share"), [(45, 1.848), (90, 1.414)])
def test_the_force_where_a_rope_is_bent(between, share):
    """Tree Rescue Manual, p. 120: by the angle between the two legs of the rope; a string is told by how far it turns."""
    assert bend_force(1.0, math.pi - math.radians(between)) == pytest.approx(share, abs=5e-4)
