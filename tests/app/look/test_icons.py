"""The program's own signs: crisp at every size, told apart, seen on every ground; and the program's own picture."""

import gc
import io
import itertools

import numpy as np
import pytest
from PIL import Image
from PySide6.QtGui import QIcon, QImage

from app.look.icons import SHAPES, button_icon
from app.look.icons.icon import paint
from app.look.icons.sketch import STROKE, UNITS
from app.look.program_sizes import FOLDER, SIZES, png
from app.look.theme import THEMES
from tests.app.look.contrast import contrast
from tests.program_icon import painted

INK = ("#000000",) * 3
"""All parts in one colour: what is left is the shape."""
LINES = ("#000000", "#00000000", "#000000")
"""The lines alone."""
PIXELS = (16, 18, 20, 24, 27, 30, 32, 36, 40, 48, 64)
"""Sides that are asked for: 16 to 32 points at 1, 1.5 and 2 pixels to a point."""


def alpha(name: str, size: int, colours=INK) -> np.ndarray:
    """How much of each pixel a sign covers, 0 to 1, rows from the top."""
    image = paint(name, size, *colours).toImage().convertToFormat(QImage.Format.Format_ARGB32)
    data = np.frombuffer(image.constBits(), np.uint8).reshape(size, size, 4)
    return data[:, :, 3] / 255


@pytest.mark.parametrize("size", PIXELS)
def test_each_sign_keeps_to_its_square_and_fills_it(qapp, size):
    for name in SHAPES:
        seen = alpha(name, size)
        rows, columns = np.nonzero(seen.max(axis=1) > 0.05)[0], np.nonzero(seen.max(axis=0) > 0.05)[0]
        assert max(rows[-1] - rows[0], columns[-1] - columns[0]) >= 0.6 * size, name
        assert 0.04 < seen.mean() < 0.75, name
        edge = np.concatenate([seen[0], seen[-1], seen[:, 0], seen[:, -1]])
        assert (edge > 0.9).mean() < 0.25, f"{name} runs into its edge at {size}"


@pytest.mark.parametrize("size", [16, 24, 32, 48])
def test_upright_and_level_lines_cover_whole_pixels(qapp, size):
    """Of a rack, a window and a clamp every line is upright or level: a row through them has hardly a soft pixel."""
    width = max(1, round(STROKE * size / UNITS))
    for name in ("rack", "hold", "new window"):
        seen = alpha(name, size)
        soft = ((seen > 0.1) & (seen < 0.9)).mean()
        assert soft < 0.06, (name, soft)
    clamp = alpha("hold", size)
    middle = clamp[round(6 / UNITS * size)]
    runs = [len(list(group)) for full, group in itertools.groupby(middle > 0.95) if full]
    assert runs == [width], "the frame of the clamp is one whole line"


def test_no_two_signs_are_alike_even_when_small(qapp):
    shapes = {name: alpha(name, 18, LINES) for name in SHAPES}
    for one, two in itertools.combinations(SHAPES, 2):
        assert np.abs(shapes[one] - shapes[two]).mean() > 0.04, (one, two)


@pytest.mark.parametrize("theme", THEMES.values(), ids=THEMES)
def test_lines_stand_out_from_what_they_lie_on(theme):
    for ground in (theme.card, theme.panel, theme.bar):
        assert contrast(theme.ink, ground) >= 3 and contrast(theme.bore, ground) >= 3
    assert contrast(theme.accent_ink, theme.accent) >= 3


@pytest.mark.parametrize("ratio", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("points", [16, 18, 20, 24, 32])
def test_an_icon_is_given_as_it_was_painted_at_every_scale(qapp, points, ratio):
    from PySide6.QtCore import QSize
    pixels = round(points * ratio)
    theme = THEMES["day"]
    given = button_icon("measure").pixmap(QSize(points, points), ratio).toImage()
    assert (given.width(), given.height()) == (pixels, pixels)
    given.setDevicePixelRatio(1)
    own = paint("measure", pixels, theme.ink, theme.wood, theme.bore).toImage()
    assert given.convertToFormat(own.format()) == own


def test_the_sizes_of_the_programs_picture_are_those_of_its_masters(qapp):
    for size in SIZES:
        now = np.asarray(Image.open(io.BytesIO(painted(size))).convert("RGBA"), float)
        kept = np.asarray(Image.open(png(size)).convert("RGBA"), float)
        assert np.abs(now - kept).max() <= 8, size


def test_the_containers_hold_every_size():
    with Image.open(FOLDER / "pegwright.ico") as ico:
        assert ico.info["sizes"] == {(size, size) for size in SIZES if size <= 256}
    with Image.open(FOLDER / "pegwright.icns") as icns:
        sides = {width * scale for width, _, scale in icns.info["sizes"]}
    assert {32, 128, 256, 512} <= sides


def test_a_copy_of_an_icon_that_is_changed_outlives_the_collector(qapp):
    """Qt keeps a clone of the engine that Python has no other hold of: without `_clones` this painted freed memory."""
    copies = []
    for name in list(SHAPES)[:6]:
        copy = QIcon(button_icon(name))
        copy.setIsMask(True)
        copies.append(copy)
    gc.collect()
    assert all(not copy.pixmap(20, 20).isNull() for copy in copies)
