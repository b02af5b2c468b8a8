"""Papers that are turned to the side, and the numbers of pages on the cover's map."""

import math
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.formats.headstock import read
from app.formats.mark_shapes import drawing_box, mark_box
from app.formats.pdf_out import pdf_bytes
from app.printing.correction import Correction, corrected
from app.sheets import pages, plan_work
from app.sheets.pages import papers
from app.sheets.parts import turned
from geometry.drawing import Disc, Label, Stroke
from geometry.edits import mirror_layout
from geometry.layout import SingleHole
from geometry.solids import holes
from tests.app.formats.out.pdf_reading import drawn, lines, open_pdf
from tests.app.sheets.printed import words
from tests.app.sheets.test_pdf_sheets import crosses

TRUE = 0.01
"""How far (mm) a place on the paper may be from where the layout has it."""
BASS = read(Path("samples/four-string-bass.headstock.json"))
TWELVE = read(Path("samples/twelve-all-face.headstock.json"))


@pytest.fixture(scope="module")
def bass():
    return pages(BASS, "A4", (), plan_work(BASS))


@pytest.fixture(scope="module")
def letter():
    return pages(TWELVE, "Letter", (), plan_work(TWELVE))


@pytest.fixture(scope="module")
def behind():
    """The same with a hole behind the nut: the wrap paper, 258 mm long, lies on no page of Letter, whichever way."""
    head = replace(TWELVE, holes=(SingleHole(id="hole", at=(30.0, -8.0), diameter=3.0),))
    return pages(head, "Letter", (), plan_work(head))


def boxes(page):
    """(left, low, right, high) of every path of a PDF page, mm."""
    for path in drawn(page):
        xs, ys = [p[0] for p in path.points], [p[1] for p in path.points]
        yield min(xs), min(ys), max(xs), max(ys)


@pytest.mark.parametrize("correction", [Correction(), Correction(100 / 99.2, 100 / 100.7)], ids=["true", "corrected"])
@pytest.mark.parametrize("mirrored", [False, True])
def test_on_a_turned_wrap_paper_every_place_is_where_the_layout_has_it(mirrored, correction):
    """Read by PDFium, from the corner of the blank that is behind the nut on the lower edge: 258 long it lies on one page, nut to the left.
    A printer that makes 100 mm 99.2 across its paper and 100.7 along it makes them true."""
    long = replace(BASS, blank=replace(BASS.blank, tip=258.0 - BASS.blank.behind))
    head = mirror_layout(long) if mirrored else long
    printed = corrected(pages(head, "A4", (), plan_work(head)), correction)
    (number,) = [i for i, page in enumerate(printed) if page.title.startswith("Wrap paper")]
    page = open_pdf(pdf_bytes(printed, "bass"))[number]
    assert printed[number].width > printed[number].height
    x, y = 1 / correction.along, 1 / correction.across  # as it comes out
    blank, thick = head.blank, head.blank.thickness
    size = (blank.tip + blank.behind, blank.bass + blank.treble + 2 * thick)
    (corner,) = [(left * x, low * y) for left, low, right, high in boxes(page)
                 if ((right - left) * x, (high - low) * y) == pytest.approx(size, abs=TRUE)]
    nut, middle = corner[0] + blank.behind, corner[1] + thick + blank.treble
    found = crosses(page, x, y)
    wanted = {d.start[:2] for hole in holes(head) for d in hole.drillings if d.upright and d.surface == "face"}
    assert len(wanted) == 6
    for across, along in wanted:
        assert min(math.dist((nut + along, middle - across), at) for at in found) < TRUE


@pytest.mark.parametrize("title", ["Template", "Back paper"])
def test_on_turned_template_and_back_paper_places_are_told_from_the_nut_line(title, letter):
    """From the middle of the nut line, which reaches 4 mm past the nut: what lies to the treble side lies lower on the template, and
    higher on the back paper, which is seen from behind."""
    (number,) = [i for i, page in enumerate(letter) if page.title == title]
    page = open_pdf(pdf_bytes(letter, "twelve"))[number]
    # The centreline may be cut off short of its ends; the nut line alone is so long and upright.
    (nut,) = {(round(a[0], 3), round((a[1] + b[1]) / 2, 3)) for a, b in lines(page)
              if abs(a[0] - b[0]) < TRUE and abs(a[1] - b[1]) == pytest.approx(TWELVE.nut.width + 8.0, abs=TRUE)}
    found, turn = crosses(page), -1.0 if title == "Template" else 1.0
    wanted = {d.start[:2] for hole in holes(TWELVE) for d in hole.drillings if d.surface == "back" or title == "Template"}
    assert len(wanted) == (24 if title == "Template" else 12)
    for across, along in wanted:
        assert min(math.dist((nut[0] + along, nut[1] + turn * across), at) for at in found) < TRUE


def test_a_paper_is_turned_only_where_it_then_is_of_one_page(bass, letter, behind):
    titles = [page.title for page in bass]
    assert titles.count("Wrap paper") == 1 and all(page.width < page.height for page in bass if page.title != "Wrap paper")
    assert [page.title for page in letter if page.width > page.height] == ["Template", "Wrap paper", "Back paper"]
    assert [page.title for page in behind if "Wrap paper" in page.title] == ["Wrap paper, 1 of 2 from the nut", "Wrap paper, 2 of 2 from the nut"]
    assert "the nut towards you: the bass side is on the left" in words(next(page for page in letter if page.title == "Template"))


def test_turning_keeps_every_mark_and_its_box():
    for part in papers(BASS, plan_work(BASS)):
        other = turned(part)
        assert [type(mark) for mark in other.drawing] == [type(mark) for mark in part.drawing]
        x0, y0, x1, y1 = drawing_box(part.drawing)
        assert drawing_box(other.drawing) == pytest.approx((y0, -x1, y1, -x0), abs=1e-9)
        assert other.box == pytest.approx((part.box[1], -part.box[2], part.box[3], -part.box[0]))


def test_the_number_of_a_page_on_the_map_covers_no_line(behind):
    """The wrap paper of two pages, 12 mm of each over the other: their numbers stand apart, in a page each, clear of what is drawn there."""
    cover = behind[0]
    frames = next(placed for placed in cover.content if sum(mark.style == "tile" for mark in placed.drawing) == 2)
    numbers = [mark for mark in frames.drawing if isinstance(mark, Label)]
    assert [mark.text for mark in numbers] == [str(i) for i, page in enumerate(behind, 1) if "Wrap paper" in page.title]
    small = cover.content[cover.content.index(frames) - 1]
    strokes = [mark.path.mapped(small.matrix) for mark in small.drawing if isinstance(mark, Stroke)]
    discs = [(small.matrix(mark.centre), mark.radius * small.matrix.a) for mark in small.drawing if isinstance(mark, Disc)]
    tiles = [mark.path for mark in frames.drawing if isinstance(mark, Stroke)]
    for number in numbers:
        x0, y0, x1, y1 = mark_box(replace(number, height=number.height * 0.9))
        for path in (*strokes, *tiles):
            for (ax, ay), (bx, by) in zip(points := path.flatten(0.05), points[1:], strict=False):
                for i in range(21):
                    px, py = ax + (bx - ax) * i / 20, ay + (by - ay) * i / 20
                    assert not (x0 < px < x1 and number.at[1] < py < number.at[1] + number.height), (number.text, path)
        middle = ((x0 + x1) / 2, (y0 + y1) / 2)
        assert all(math.dist(middle, centre) > radius for centre, radius in discs)
