"""The pages of the demo as images, in squares of about 4 mm: a page that loses a drawing or moves a block is noticed.

`python -m tests.golden.test_page_images` renews the pictures of pages that look otherwise; look at them before they are committed.
"""

from pathlib import Path

import numpy as np
import pypdfium2
import pytest
from PIL import Image

from app.formats.pdf_out import pdf_bytes
from app.sheets import pages
from app.window.demo import demo

FOLDER = Path(__file__).parent / "pages"
SQUARE = 6
"""Points of the rendering (at 36 dpi) along a side of a square."""
WORST, MEAN = 24.0, 1.5
"""Grey levels of 255 by which one square, and all of them on average, may differ: letters may be drawn a little otherwise."""


def rendered() -> list[np.ndarray]:
    """Every page as (rows, columns) mean grey levels of its squares."""
    document = pypdfium2.PdfDocument(pdf_bytes(pages(demo(), "A4"), "demo"))
    made = []
    for page in document:
        grey = np.asarray(page.render(scale=0.5).to_pil().convert("L"), dtype=float)
        rows, columns = grey.shape[0] // SQUARE, grey.shape[1] // SQUARE
        cut = grey[:rows * SQUARE, :columns * SQUARE].reshape(rows, SQUARE, columns, SQUARE)
        made.append(cut.mean(axis=(1, 3)))
        page.close()
    document.close()
    return made


def kept() -> list[np.ndarray]:
    """The pages as they were last looked at."""
    return [np.asarray(Image.open(path), dtype=float) for path in sorted(FOLDER.glob("*.png"))]


@pytest.fixture(scope="module")
def now() -> list[np.ndarray]:
    return rendered()


def alike(one: np.ndarray, two: np.ndarray) -> bool:
    """Whether two pages look the same but for a breath of ink."""
    if one.shape != two.shape:
        return False
    apart = np.abs(one - two)
    return bool(apart.max() <= WORST and apart.mean() <= MEAN)


def test_every_page_looks_as_it_did(now):
    before = kept()
    assert len(now) == len(before)
    assert [number for number, (one, two) in enumerate(zip(now, before, strict=True), 1) if not alike(one, two)] == []


def test_a_page_moved_by_8_mm_or_without_a_drawing_is_noticed(now):
    template = now[6]
    assert not alike(template, np.roll(template, 2, axis=0))
    blank = template.copy()
    blank[20:50, 15:35] = 255.0
    assert not alike(template, blank)
    assert not any(alike(one, two) for one, two in zip(now, now[1:], strict=False))


if __name__ == "__main__":
    FOLDER.mkdir(exist_ok=True)
    pages_now, before = rendered(), kept()
    for old in sorted(FOLDER.glob("*.png"))[len(pages_now):]:
        old.unlink()
    for number, page in enumerate(pages_now, 1):
        if number > len(before) or not alike(page, before[number - 1]):
            Image.fromarray(page.round().astype(np.uint8)).save(FOLDER / f"{number:02d}.png")
