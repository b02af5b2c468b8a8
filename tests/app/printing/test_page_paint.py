"""The toolkit paints what the PDF says: the same page, rendered by PDFium and by us, laid over each other."""

import numpy as np
import pytest
from PySide6.QtGui import QColor, QImage, QPainter

from app.formats.letters import text_width
from app.formats.paper import Page, Placed
from app.formats.pdf_out import pdf_bytes
from app.printing.page_paint import paint_shapes, shapes_of
from geometry.curves import Matrix
from geometry.drawing import Area, Disc, Label, Stroke
from geometry.drawing.shapes import rectangle, straight
from tests.app.formats.out.pdf_reading import open_pdf
from tests.app.sheets.printed import made

DOTS = 6.0
"""Pixels to the mm."""


def painted(page: Page) -> np.ndarray:
    """Darkness 0 to 1 of our picture."""
    image = QImage(round(page.width * DOTS), round(page.height * DOTS), QImage.Format.Format_Grayscale8)
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint_shapes(painter, shapes_of(page), page, DOTS)
    painter.end()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return 1.0 - rows[:, :image.width()] / 255.0


def rendered(page: Page) -> np.ndarray:
    """Darkness 0 to 1 of PDFium's picture of the PDF."""
    picture = open_pdf(pdf_bytes([page], "t"))[0].render(scale=DOTS * 25.4 / 72).to_pil().convert("L")
    return 1.0 - np.asarray(picture, float) / 255.0


def smeared(dark: np.ndarray, cells: int = 12) -> np.ndarray:
    """Mean darkness of cells of 2 mm, which no antialiasing changes much."""
    rows, columns = dark.shape[0] // cells, dark.shape[1] // cells
    return dark[:rows * cells, :columns * cells].reshape(rows, cells, columns, cells).mean(axis=(1, 3))


@pytest.mark.parametrize("title", ["Cover", "Running order", "Template", "Wrap paper", "Cards", "Hole table", "Job book"])
def test_preview_and_pdf_are_one_picture(title, qapp):
    page = next(page for page in made("demo") if page.title == title)
    ours, theirs = smeared(painted(page)), smeared(rendered(page))
    assert theirs.max() > 0.2
    apart = np.abs(ours - theirs)  # absolute: what is darker here must not hide what is lighter there
    # PDFium draws hairlines a whole dot wide: a table, with a rule under each row, is a little darker there.
    assert apart.max() < 0.12 and apart.mean() < 0.015, (apart.max(), apart.mean())


def sheet(*marks, clip=None, matrix=None) -> Page:
    return Page("A4", 40.0, 30.0, "t", (Placed(tuple(marks), matrix or Matrix(), clip),))


def test_a_line_is_where_it_should_be_and_as_wide(qapp):
    dark = painted(sheet(Stroke(straight((5.0, 10.0), (25.0, 10.0)), "nut line")))  # 0.5 mm wide
    rows = np.flatnonzero(dark[:, round(15 * DOTS)] > 0.5)
    assert (rows.min() + rows.max() + 1) / 2 / DOTS == pytest.approx(30.0 - 10.0, abs=0.1)
    assert dark[:, round(15 * DOTS)].sum() / DOTS == pytest.approx(0.5, abs=0.02)
    columns = np.flatnonzero(dark[round(20 * DOTS)] > 0.5)
    assert columns.min() / DOTS == pytest.approx(5.0, abs=0.1) and (columns.max() + 1) / DOTS == pytest.approx(25.0, abs=0.1)


def test_thin_dashes_keep_their_length(qapp):
    """"axis" is 0.1 mm wide, 8 mm a turn with gaps of 1 mm: three quarters of it ink, at any zoom."""
    dark = painted(sheet(Stroke(straight((2.0, 10.0), (34.0, 10.0)), "axis")))
    inked = dark.sum() / DOTS / DOTS / 0.1
    assert inked == pytest.approx(32.0 * 6 / 8, rel=0.08)


def test_a_window_cuts_off(qapp):
    dark = painted(sheet(Area(rectangle(0.0, 0.0, 40.0, 30.0), "left standing"), clip=(10.0, 5.0, 20.0, 25.0)))
    ink = np.argwhere(dark > 0.3)
    assert ink[:, 1].min() / DOTS == pytest.approx(10.0, abs=0.2) and (ink[:, 1].max() + 1) / DOTS == pytest.approx(20.0, abs=0.2)
    assert ink[:, 0].min() / DOTS == pytest.approx(5.0, abs=0.2) and (ink[:, 0].max() + 1) / DOTS == pytest.approx(25.0, abs=0.2)


def test_openings_stay_white(qapp):
    dark = painted(sheet(Area(rectangle(5.0, 5.0, 25.0, 25.0), "left standing", openings=(rectangle(10.0, 10.0, 20.0, 20.0),))))
    assert dark[round(15 * DOTS), round(15 * DOTS)] == 0.0 and dark[round(7 * DOTS), round(7 * DOTS)] > 0.6


def test_hidden_circles_are_dashed(qapp):
    full, dashed = (painted(sheet(Disc((20.0, 15.0), 8.0, "hole", hidden=hidden))).sum() for hidden in (False, True))
    assert 0.4 < dashed / full < 0.75


@pytest.mark.parametrize(("anchor", "left"), [("left", 5.0), ("middle", None), ("right", None)])
def test_words_are_as_wide_as_they_are_measured(anchor, left, qapp):
    text, height = "Hillman 77", 3.0
    wide = text_width(text, height)
    at = {"left": 5.0, "middle": 5.0 + wide / 2, "right": 5.0 + wide}[anchor]
    ink = np.argwhere(painted(sheet(Label(text, (at, 10.0), height, anchor=anchor))) > 0.4)
    assert ink[:, 1].min() / DOTS == pytest.approx(5.0, abs=0.6) and (ink[:, 1].max() + 1) / DOTS == pytest.approx(5.0 + wide, abs=0.6)
    top, bottom = ink[:, 0].min() / DOTS, (ink[:, 0].max() + 1) / DOTS
    assert bottom == pytest.approx(20.0, abs=0.25) and bottom - top == pytest.approx(height, rel=0.12)


def test_turned_words_run_up_the_page(qapp):
    ink = np.argwhere(painted(sheet(Label("HHHHH", (10.0, 5.0), 3.0, angle=np.pi / 2))) > 0.4)
    assert np.ptp(ink[:, 0]) > 2 * np.ptp(ink[:, 1])
    assert (ink[:, 1].max() + 1) / DOTS == pytest.approx(10.0, abs=0.3)  # tops to the left


def test_a_scaled_drawing_scales_lines_of_words_too(qapp):
    small, large = (painted(sheet(Label("HH", (0.0, 0.0), 2.0), matrix=Matrix(a=k, d=k, e=5.0, f=5.0))) for k in (1.0, 2.0))
    tall = [np.ptp(np.argwhere(dark > 0.4)[:, 0]) for dark in (small, large)]
    assert tall[1] / tall[0] == pytest.approx(2.0, abs=0.2)
