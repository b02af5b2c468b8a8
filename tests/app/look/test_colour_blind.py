"""Meanings stay apart for eyes that lack a kind of cone: by their colours, or by shape where the colours come together.

The matrices are those of Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of color vision
deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, for full severity, on linear RGB
(from memory; each row sums to 1, so that grey stays grey). Differences are CIE 1976 dE*ab; 2.3 is about the smallest
that is seen side by side (Mahy, van Eycken and Oosterlinck 1994, from memory), 12 is asked for here.
"""

from itertools import combinations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

from app.look.signs import sign_path
from app.look.styles import LOOKS, pen_and_brush
from app.look.theme import DAY, LAMP

EYES = {
    "protanopia": ((0.152286, 1.052583, -0.204868), (0.114503, 0.786281, 0.099216), (-0.003882, -0.048116, 1.051998)),
    "deuteranopia": ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413), (-0.011820, 0.042940, 0.968881)),
    "tritanopia": ((1.255528, -0.076749, -0.178779), (-0.078411, 0.930809, 0.147602), (0.004733, 0.691367, 0.303900)),
}
APART = 12.0
BOTH = pytest.mark.parametrize("theme", [DAY, LAMP], ids=lambda t: t.name)
GRADES = {"spoils": "spoils the work", "tight": "tight", "note": "note"}


def linear(colour: str) -> list[float]:
    values = [int(colour[i:i + 2], 16) / 255 for i in (1, 3, 5)]
    return [v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in values]


def seen(colour: str, eyes: str) -> list[float]:
    rgb = linear(colour)
    return [min(1.0, max(0.0, sum(a * b for a, b in zip(row, rgb, strict=True)))) for row in EYES[eyes]]


def lab(rgb: list[float]) -> tuple[float, float, float]:
    """CIE L*a*b* of linear sRGB, white D65 (IEC 61966-2-1)."""
    x, y, z = (sum(a * b for a, b in zip(row, rgb, strict=True)) for row in (
        (0.4124564, 0.3575761, 0.1804375), (0.2126729, 0.7151522, 0.0721750), (0.0193339, 0.1191920, 0.9503041)))

    def f(t: float) -> float:
        return t ** (1 / 3) if t > (6 / 29) ** 3 else t / (3 * (6 / 29) ** 2) + 4 / 29
    fx, fy, fz = f(x / 0.95047), f(y), f(z / 1.08883)
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def difference(one: str, two: str, eyes: str) -> float:
    return sum((a - b) ** 2 for a, b in zip(lab(seen(one, eyes)), lab(seen(two, eyes)), strict=True)) ** 0.5


def blots(grade: str) -> QImage:
    image = QImage(60, 60, QImage.Format.Format_Grayscale8)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.translate(30, 30)
    painter.fillPath(sign_path(grade, 24), Qt.GlobalColor.black)
    painter.end()
    return image


def shapes_differ(one: str, two: str) -> float:
    """Share of the ink of two signs that lies in one of them alone."""
    a, b = blots(one), blots(two)
    ink = [(a.pixelColor(x, y).value() < 128, b.pixelColor(x, y).value() < 128) for x in range(60) for y in range(60)]
    return sum(p != q for p, q in ink) / sum(p or q for p, q in ink)


@pytest.mark.parametrize("eyes", sorted(EYES))
def test_grey_stays_grey(eyes):
    assert seen("#808080", eyes) == pytest.approx(linear("#808080"), abs=1e-5)


def test_red_and_green_come_together_without_the_middle_cones():
    # What the whole is about: a red and a green that other eyes never mistake.
    assert difference("#B0302F", "#6C6A00", "deuteranopia") < APART < difference("#B0302F", "#2F62B0", "deuteranopia")


@BOTH
@pytest.mark.parametrize("eyes", sorted(EYES))
@pytest.mark.parametrize("one, two", list(combinations(GRADES, 2)))
def test_grades_are_told_apart(theme, eyes, one, two):
    apart = difference(getattr(theme, one), getattr(theme, two), eyes) >= APART
    assert apart or shapes_differ(GRADES[one], GRADES[two]) > 0.25


@pytest.mark.parametrize("one, two", list(combinations(GRADES.values(), 2)))
def test_signs_differ_by_shape_whatever_the_colours_are(one, two):
    assert shapes_differ(one, two) > 0.25


@BOTH
@pytest.mark.parametrize("eyes", sorted(EYES))
def test_lines_that_look_alike_mean_alike(theme, eyes):
    """Two styles with the same dashes, width and filling are either of one colour, or of colours that stay apart."""
    alike = []
    for one, two in combinations((name for name, look in LOOKS.items() if look.line), 2):
        a, b = LOOKS[one], LOOKS[two]
        same = (a.dash, a.width, bool(a.fill), a.hatch, a.opacity) == (b.dash, b.width, bool(b.fill), b.hatch, b.opacity)
        if same and getattr(theme, a.line) != getattr(theme, b.line) and difference(getattr(theme, a.line), getattr(theme, b.line), eyes) < APART:
            alike.append((one, two))
    assert set(alike) <= KNOWN_BY_PLACE


KNOWN_BY_PLACE = {("string", "dimension"), ("string", "note"), ("string", "tile")}
"""A string runs from the nut to a post; dimensions and words are beside the head, with ticks and letters."""


@BOTH
@pytest.mark.parametrize("style", ["outline", "post bore", "slot", "screw pilot"])
def test_what_is_spoiled_is_drawn_broader_than_what_is_tight(theme, style):
    widths = [pen_and_brush(style, theme, state)[0].widthF() for state in ("", "tight", "spoils")]
    assert widths[0] == widths[1] < widths[2] - 0.5
