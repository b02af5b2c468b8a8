"""Pull and press of strings against worked examples."""

import math

import pytest

from geometry.beginning.instruments import INSTRUMENTS
from geometry.edits.strings import string_set
from geometry.layout import Nut, String
from geometry.strings.sets import SETS
from geometry.strings.tension import bend_force, frequency, tension, unit_mass
from tests.geometry.checks.heads import head

INCH = 25.4


def plain(diameter, note="E4", **rest):
    return String(id="1", diameter=diameter, course=1, note=note, **rest)


@pytest.mark.parametrize(("note", "hertz"), [
    # Tables of equal temperament about A4 = 440 (ISO 16:1975).
    ("E2", 82.406889), ("A2", 110.0), ("D3", 146.832384), ("G3", 195.997718), ("B3", 246.941651), ("E4", 329.627557),
    ("A4", 440.0), ("Bb3", 233.081881), ("F#3", 184.997211)])
def test_notes(note, hertz):
    assert frequency(note) == pytest.approx(hertz, rel=1e-7)


@pytest.mark.parametrize("note", ["", "low", "H2", "E", "E22"])
def test_a_remark_is_no_note(note):
    assert frequency(note) is None and tension(plain(0.3, note), Nut()) is None


@pytest.mark.parametrize(("inches", "note", "newtons"), [
    # mu (2 L f)^2 for steel of 7850 kg/m3 over 25.5 in, worked out apart from the program.
    (0.010, "E4", 72.524), (0.009, "E4", 58.744), (0.012, "E4", 104.435), (0.013, "B3", 68.788), (0.008, "G4", 65.641)])
def test_plain_steel(inches, note, newtons):
    assert tension(plain(inches * INCH, note), Nut(scale_length=25.5 * INCH)) == pytest.approx(newtons, abs=6e-4)
    assert tension(plain(inches * INCH, note, scale_length=51 * INCH), Nut()) == pytest.approx(4 * newtons, abs=3e-3)


def test_unit_mass():
    assert unit_mass(plain(0.254)) * 1000 == pytest.approx(0.397765, abs=1e-6)
    # Core 1 mm in a ring to 2 mm: steel pi/4 mm2, bronze (pi/4)^2 * 3 mm2.
    wound = plain(2.0, core=1.0)
    assert unit_mass(wound) == pytest.approx(1e-6 * (math.pi / 4 * 7850 + (math.pi / 4) ** 2 * 3 * 8800))
    assert unit_mass(plain(1.0, core=1.5)) == pytest.approx(unit_mass(plain(1.0)))


@pytest.mark.parametrize(("degrees", "share"), [(5, 0.08724), (10, 0.17431), (15, 0.26105), (20, 0.34730)])
def test_press_on_the_nut(degrees, share):
    # Force of a bent rope without friction, 2 T sin(d / 2).
    assert bend_force(1.0, math.radians(degrees)) == pytest.approx(share, abs=5e-6)
    assert bend_force(72.524, -math.radians(15)) == pytest.approx(18.93, abs=0.005)


def test_sets_pull_within_reason():
    for one in SETS:
        layout = head(strings=tuple(String(id=str(i), diameter=1.0, course=i + 1) for i in range(len(one))),
                      nut=Nut(scale_length=INSTRUMENTS[one.instrument].scale))
        for string in string_set(layout, one).strings:
            assert (pull := tension(string, layout.nut)) is None and string.note.isalpha() or 40 < pull < 260


def test_strings_of_nylon_are_as_thick_as_they_are_usually_strung():
    """From memory of common sets, in thousandths: the wound fourth of a guitar is thinner than its plain third; of a ukulele's strings
    the second is the thickest."""
    by = {one.instrument: one.gauges for one in SETS}
    assert by["classical"].index(29) + 1 == by["classical"].index(40)
    assert all(max(by[f"{size} ukulele"]) == by[f"{size} ukulele"][1] for size in ("soprano", "concert", "tenor"))


def test_of_a_course_in_octaves_the_thin_string_lies_on_the_bass_side():
    """Of twelve strings, from memory of common practice: a stroke down meets the octave first."""
    twelve = next(one for one in SETS if len(one) == 12)
    assert twelve.notes[:8] == ("E3", "E2", "A3", "A2", "D4", "D3", "G4", "G3")
    for one in SETS:
        if one.paired:
            for thin, thick, octave, note in zip(one.diameters[::2], one.diameters[1::2], one.notes[::2], one.notes[1::2], strict=True):
                assert (octave == note and thin == thick) or (thin < thick and frequency(octave) == pytest.approx(2 * frequency(note)))
