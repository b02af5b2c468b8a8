"""What a printer stretches, taken back: factors by hand, and pages measured by PDFium."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.formats.errors import FormatError
from app.formats.mark_shapes import mark_box
from app.formats.paper import Page, Placed, paper_size
from app.formats.pdf_out import pdf_bytes
from app.printing.correction import Correction, corrected, measured
from app.sheets.furniture import frame_of, furniture
from geometry.drawing import Label
from tests.app.formats.out.pdf_reading import lines, open_pdf
from tests.app.sheets.printed import made, words


def test_the_factor_takes_back_what_was_measured():
    found = measured(99.6, 100.9)
    assert found.across == pytest.approx(100 / 99.6) and found.along == pytest.approx(100 / 100.9)
    assert found.words == "corrected for this printer: across 1.004, along 0.991"
    assert found.warning == ""


def test_a_page_that_carried_a_correction_refines_it():
    before = Correction(1.004, 0.991)
    found = measured(100.1, 99.9, before)
    assert found.across == pytest.approx(1.004 * 100 / 100.1) and found.along == pytest.approx(0.991 * 100 / 99.9)


@pytest.mark.parametrize(("across", "along", "warned"), [(98.05, 100.0, False), (100.0, 101.9, False), (97.9, 100.0, True),
                                                         (102.2, 100.0, True), (100.0, 97.9, True), (100.0, 102.2, True), (95.0, 105.0, True)])
def test_more_than_two_in_a_hundred_is_warned_of(across, along, warned):
    assert bool(measured(across, along).warning) == warned
    assert Correction(1.02, 0.98).warning == "", "not by two itself"


@pytest.mark.parametrize(("across", "along", "named"), [(94.9, 100.0, "lying"), (100.0, 105.1, "upright"), (0.0, 100.0, "lying"),
                                                        (100.0, float("nan"), "upright")])
def test_what_no_printer_does_is_refused(across, along, named):
    with pytest.raises(FormatError, match=f"The {named} bar was measured as .* Print it again at 100 %"):
        measured(across, along)


def test_corrections_do_not_pile_up_without_end():
    with pytest.raises(FormatError, match="without correction"):
        measured(96.0, 100.0, Correction(1.03, 1.0))


@given(across=st.floats(95.0, 105.0), along=st.floats(95.0, 105.0))
def test_what_the_printer_stretches_comes_out_true(across, along):
    """A printer that makes 100 mm to `across` and `along` prints a corrected bar of 100 mm as 100 mm."""
    found = measured(across, along)
    assert 100 * found.across * across / 100 == pytest.approx(100.0)
    assert 100 * found.along * along / 100 == pytest.approx(100.0)


def page_of(paper: str, lying: bool) -> Page:
    width, height = paper_size(paper, lying)
    return Page(paper, width, height, "Test", (Placed(furniture(width, height, "Test", "Test", 1, 1)),), frame_of("")[1])


@pytest.mark.parametrize("lying", [False, True])
def test_bars_are_stretched_by_the_side_of_the_paper(lying):
    """`across` belongs to the short side of the paper, also where the page is turned."""
    page = page_of("A4", lying)
    (done,) = corrected([page], Correction(1.01, 0.98))
    found = lines(open_pdf(pdf_bytes([done], "t"))[0])
    level = {round(math.dist(a, b), 3) for a, b in found if abs(a[1] - b[1]) < 0.01 and math.dist(a, b) > 90}
    upright = {round(math.dist(a, b), 3) for a, b in found if abs(a[0] - b[0]) < 0.01 and math.dist(a, b) > 90}
    assert (level, upright) == (({98.0}, {101.0}) if lying else ({101.0}, {98.0}))


def test_pages_stay_in_the_middle_of_the_paper():
    page = page_of("A4", False)
    (done,) = corrected([page], Correction(1.05, 0.95))
    for placed, before in zip(done.content, page.content, strict=False):
        middle = (page.width / 2, page.height / 2)
        inside = (before.matrix.e, before.matrix.f)
        assert inside == (0.0, 0.0)
        assert placed.matrix(middle) == pytest.approx(middle)


def test_every_page_says_that_it_is_corrected():
    for page in corrected(made("demo"), Correction(1.004, 0.991)):
        assert "Corrected for this printer: across 1.004, along 0.991." in words(page)
        (said,) = page.content[-1].drawing
        level = [mark for mark in page.content[0].drawing if isinstance(mark, Label) and mark_box(mark)[2] > mark_box(said)[0] and not mark.angle]
        assert all(mark.at[1] > said.at[1] + said.height or mark.at[1] + mark.height < said.at[1] for mark in level), page.title
    assert "orrected" not in words(made("demo")[0])


def test_without_a_correction_the_pages_are_the_same():
    assert corrected(made("demo"), None) == list(made("demo"))


def test_windows_are_stretched_with_what_they_show():
    for before, after in zip(made("large"), corrected(made("large"), Correction(1.02, 0.97)), strict=True):
        for one, other in zip(before.content, after.content, strict=False):
            if one.clip is not None:
                x0, y0, x1, y1 = other.clip
                lying = before.width > before.height
                assert (x1 - x0) / (one.clip[2] - one.clip[0]) == pytest.approx(0.97 if lying else 1.02)
                assert (y1 - y0) / (one.clip[3] - one.clip[1]) == pytest.approx(1.02 if lying else 0.97)
