"""Router numbers that were published, beside the program's.

Addresses with a seller's name are left out on purpose.
"""

import pytest

from geometry.layout import GuideBush, Router, RouterBit
from geometry.routing.follower import follower_of
from geometry.routing.speeds import highest_speed, rim_speed, speed_setting, speed_table, speed_words

INCH = 25.4
FPM = INCH * 12 / 60000
"""m/s in a foot a minute"""


def cutter(inches, marked=None):
    return RouterBit(id="bit", cutter=inches * INCH, cutting_length=20, shank=12.7, stick_out=50, marked_speed=marked)


@pytest.mark.parametrize(("bush", "bit", "offset", "source"), [
    (0.75 * INCH, 0.5 * INCH, 0.125 * INCH, "routerforums.com, Guide bushes"),
    (15, 9, 3, "www.ukworkshop.co.uk/threads/calculating-guide-bush-sizes.8513/"),
    (30, 10, 10, "steadyprintshop.com/?p=155397"),
])
def test_half_the_difference_of_bush_and_bit(bush, bit, offset, source):
    tool = RouterBit(id="bit", cutter=bit, cutting_length=20, shank=bit, stick_out=50)
    made = follower_of(tool, GuideBush(id="bush", outer=bush, inner=bush - 1, length=5))
    assert made.offset == pytest.approx(offset), source


@pytest.mark.parametrize(("inches", "turns", "feet"), [(3, 24000, 18850), (3, 10000, 7854)])
def test_rim_speeds(inches, turns, feet):
    """mugong.pages.dev/router-bit-speed-calculator.html"""
    assert rim_speed(inches * INCH, turns) / FPM == pytest.approx(feet, abs=0.5)


@pytest.mark.parametrize(("inches", "turns", "metres"), [(1, 24000, 31.9), (2, 18000, 47.9), (2.5, 16000, 53.2), (3.5, 12000, 55.9)])
def test_highest_speeds_by_diameter(inches, turns, metres):
    """woodworking.about.com/od/safetyfirst/a/RouterBitSpeeds.htm; metres a second recomputed."""
    assert highest_speed(cutter(inches)) == turns
    assert rim_speed(inches * INCH, turns) == pytest.approx(metres, abs=0.05)


def test_two_printed_rim_speeds_are_wrong():
    """1 inch at 16,000 was printed as 143 mph, 1/4 inch at 24,000 as 89 mph (name withheld): 47.6 and 17.8 are right."""
    mph = 0.44704
    assert rim_speed(INCH, 16000) / mph == pytest.approx(47.6, abs=0.05)
    assert rim_speed(INCH / 4, 24000) / mph == pytest.approx(17.8, abs=0.05)


def test_beyond_the_chart_the_rim_stays_under_12000_feet_a_minute():
    """mugong.pages.dev/router-bit-speed-calculator.html"""
    assert rim_speed(4 * INCH, highest_speed(cutter(4))) / FPM == pytest.approx(12000)


def test_what_is_printed_on_the_cutter_governs():
    """EN 847-2 asks for the highest speed to be marked (from memory)."""
    assert highest_speed(cutter(0.5, marked=18000)) == 18000
    assert speed_setting(cutter(0.5, marked=18000), Router()) == 16000
    assert "printed on the cutter" in speed_words(cutter(0.5, marked=18000), Router())


def test_a_router_that_is_too_fast_for_a_cutter_is_said():
    assert speed_setting(cutter(3.4), Router(speeds=(20000.0,))) is None
    assert "do not run it in this router" in speed_words(cutter(3.4), Router(speeds=(20000.0,)))
    assert speed_words(cutter(1), Router(speeds=())).startswith("bit: at most 24,000 turns a minute")


def test_the_rim_speed_that_is_told_is_that_of_the_cutter_at_its_setting():
    """A cutter of 50 mm on a shank of 12 at 12,000 turns a minute: pi * 0.05 * 200 = 31.4 m/s."""
    wide = RouterBit(id="wide", cutter=50.0, cutting_length=20.0, shank=12.0, stick_out=40.0)
    assert "set 12,000 turns a minute, rim speed 31 m/s" in speed_words(wide, Router(speeds=(8000.0, 12000.0)))


def test_the_table_of_settings():
    rows = speed_table(cutter(2), Router(speeds=(24000.0, 12000.0)))
    assert [(turns, fine) for turns, _, fine in rows] == [(12000, True), (24000, False)]
    assert rows[0][1] == pytest.approx(31.92, abs=0.01)
