"""Values typed while a gesture runs."""

import math

import pytest

from app.tools import words
from app.tools.typed import named, number, placed, point, polar
from geometry.errors import GeometryError
from geometry.layout import Nut


@pytest.mark.parametrize(("text", "unit", "place"), [
    ("12.5, 40", "mm", (12.5, 40.0)), ("12,5; 40", "mm", (12.5, 40.0)), ("12.5,40", "mm", (12.5, 40.0)),
    ("-3; 1 1/2\"", "mm", (-3.0, 38.1)), ("1/2; 2", "in", (12.7, 50.8)), ("12,5, 40,25", "mm", (12.5, 40.25)),
])
def test_places(text, unit, place):
    assert point(text, unit) == pytest.approx(place)


def test_what_is_no_place():
    assert point("40", "mm") is None
    assert point("12,5", "mm") is None and number("12,5", "mm") == 12.5, "a decimal comma parts no place"
    assert point("length 40, angle 3", "mm") is None
    assert number("length 40", "mm") is None and number("40 mm", "in") == 40.0


def test_words_with_numbers():
    assert named("length 40 angle 30", "mm") == {"length": 40.0, "angle": pytest.approx(math.pi / 6)}
    assert named("Radius: 1/2\"", "mm") == {"radius": 12.7}
    for text in ("wavelength 3", "40", "length", "length forty"):
        with pytest.raises(GeometryError):
            named(text, "mm")


def test_what_is_said_twice_is_refused():
    assert named("bass 3 behind 4", "mm") == {"across": -3.0, "along": -4.0}
    assert placed("treble 12", "mm", None, (1.0, 2.0)) == (12.0, 2.0)
    for text in ("treble 12 bass 3", "along 40 behind 3", "length 4 length 5"):
        with pytest.raises(GeometryError, match="one measure"):
            named(text, "mm")


def test_places_from_a_start():
    assert placed("40", "mm", (1.0, 2.0), (1.0, 10.0)) == pytest.approx((1.0, 42.0))
    assert placed("angle 0", "mm", (1.0, 2.0), (1.0, 10.0)) == pytest.approx((9.0, 2.0))
    assert placed("length 10 angle 90", "mm", (1.0, 2.0), (0.0, 0.0)) == pytest.approx((1.0, 12.0))
    assert placed("3; 4", "mm", (1.0, 2.0), (0.0, 0.0)) == (3.0, 4.0)
    with pytest.raises(GeometryError, match="two lengths"):
        placed("40", "mm", None, (0.0, 0.0))
    with pytest.raises(GeometryError, match="a length, an angle"):
        placed("radius 4", "mm", (1.0, 2.0), (0.0, 0.0))


def test_degrees_make_an_angle():
    assert polar("40 30°", "mm") == {"length": 40.0, "angle": pytest.approx(math.pi / 6)}
    assert polar("-90 deg", "mm") == {"angle": pytest.approx(-math.pi / 2)}
    assert polar('1 1/2" 45°', "mm") == {"length": pytest.approx(38.1), "angle": pytest.approx(math.pi / 4)}
    assert polar("40", "mm") == {"length": 40.0}
    assert polar("12,5 30,5 Grad", "mm") == polar("12.5 30.5°", "mm") == {"length": 12.5, "angle": pytest.approx(math.radians(30.5))}
    assert named("Radius 1/2 Zoll", "mm") == {"radius": 12.7}
    assert named("length 40 angle 30 deg", "mm") == {"length": 40.0, "angle": pytest.approx(math.pi / 6)}
    assert named("angle -15 degrees", "mm") == {"angle": pytest.approx(-math.pi / 12)}
    assert placed("10 90°", "mm", (1.0, 2.0), (0.0, 0.0)) == pytest.approx((1.0, 12.0))


def test_readouts():
    assert words.place((12.34, 94.0), "mm", Nut()) == "12.3 mm to the treble, 94 mm from the nut line"
    assert words.place((-12.7, -25.4), "in", Nut()) == '0.5" to the bass, 1" behind the nut line'
    assert words.place((0.0, 0.0), "mm", Nut()) == "on the centreline, on the nut line"
    assert words.place((0.03, -0.02), "mm", Nut()) == "0.03 mm to the treble, 0.02 mm behind the nut line"
    assert words.place((-0.0127, 0.0254), "in64", Nut()) == '0.0005" to the bass, 0.001" from the nut line'
    assert words.place((0.0, -2.0), "mm", Nut(slant=5.0)) == "on the centreline, 2 mm behind the base line"
    assert words.step((0.0, 0.0), (3.0, 4.0), "mm") == "length 5 mm, angle 53.1°"
