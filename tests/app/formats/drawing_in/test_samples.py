"""Every shipped drawing opens, says what it should, and can be laid into the headstock's frame."""

import math

import pytest

from app.formats.drawing_in import read_drawing
from app.formats.drawing_in.command import require_outline
from geometry.joining import place
from tests.app.formats.drawing_in.reading import SAMPLES

# file: (unit, source, slots, holes, nut width in mm)
EXPECTED = {
    "head-in-inches.dxf": ("inch", "file", 0, 0, 43.18),
    "head-with-slots-and-holes.dxf": ("mm", "file", 2, 6, 44.0),
    "head-with-gaps.dxf": ("mm", "guess", 0, 0, 43.96),
    "head-from-a-mirrored-half.dxf": ("mm", "file", 2, 0, 43.0),
    "head-with-splines.dxf": ("mm", "file", 0, 0, 44.0),
    "head-in-millimetres.svg": ("mm", "file", 2, 6, 43.0),
    "head-in-pixels.svg": ("px", "guess", 1, 0, 160 / 96 * 25.4),
}


def test_every_drawing_is_listed_here_and_says_that_it_is_invented():
    files = {p for p in SAMPLES.iterdir() if p.suffix in (".dxf", ".svg")}
    assert {p.name for p in files} == set(EXPECTED)
    assert all("Invented drawing" in p.read_text(encoding="utf-8") for p in files)


@pytest.mark.parametrize("name", EXPECTED)
def test_it_opens_and_can_be_placed(name):
    unit, source, slots, holes, nut = EXPECTED[name]
    found = read_drawing(SAMPLES / name)
    require_outline(found)
    assert (found.unit, found.unit_source) == (unit, source)
    roles = [loop.role for loop in found.loops]
    assert (roles.count("outline"), roles.count("slot"), roles.count("hole"), roles.count("other")) == (1, slots, holes, 0)
    assert found.open_chains == ()
    placing = place(found.outline.path)
    assert placing.nut_width == pytest.approx(nut, abs=0.05)
    laid = found.outline.path.mapped(placing.matrix)
    assert laid.box[1] == pytest.approx(0, abs=0.05) and laid.box[0] == pytest.approx(-laid.box[2], abs=0.1)


def test_the_drawing_with_gaps_has_the_area_of_its_corners():
    # Shoelace through the drawn ends, bridges included, plus the half disc of the tip, drawn a hair short of 180 degrees.
    sweep = math.radians(180 - 0.03)
    tip = [(52 + 43 * math.cos(math.pi + a), 40 + 43 * math.sin(math.pi + a)) for a in (0.0, sweep)]
    ring = [(30, 200), (73.96, 200), (74, 200), (90, 182), (95, 40.04), tip[1], tip[0], (14, 182), (14, 181.96), (30, 199.98)]
    straight = abs(sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(ring, [*ring[1:], ring[0]], strict=True))) / 2
    found = read_drawing(SAMPLES / "head-with-gaps.dxf")
    assert found.outline.path.area == pytest.approx(straight + 43**2 / 2 * (sweep - math.sin(sweep)), rel=1e-7)
    assert any("4 gaps were closed" in w for w in found.warnings)
