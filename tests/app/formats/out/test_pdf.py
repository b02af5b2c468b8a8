"""PDF measured by PDFium and looked into by pypdf: neither shares code with the writer."""

import io
import math
import re
import time

import pypdf
import pytest

from app.formats.errors import FormatError
from app.formats.letters import printable
from app.formats.mark_shapes import mapped
from app.formats.paper import PAPERS, Page, Placed, paper_size
from app.formats.paper_look import INKS, hidden_dashes
from app.formats.pdf_out import pdf_bytes
from geometry.curves import MIRROR, Matrix, Path, circle, shift, stretch, turn
from geometry.drawing import STYLES, Area, Cross, Disc, Label, Stroke
from geometry.drawing.shapes import straight
from tests.app.formats.out.pdf_reading import drawn, letters, lines, open_pdf
from tests.app.formats.out.specimens import DRAWING


def page(*content, paper="A4", lying=False):
    width, height = paper_size(paper, lying)
    return Page(paper, width, height, "t", tuple(content))


@pytest.mark.parametrize(("paper", "points"), [
    ("A4", (595.2756, 841.8898)), ("A3", (841.8898, 1190.5512)),  # ISO 216 in exact points
    ("Letter", (612.0, 792.0)), ("Tabloid", (792.0, 1224.0)),  # ASME Y14.1 A and B
])
def test_page_boxes_are_exact(paper, points):
    for lying in (False, True):
        box = pypdf.PdfReader(io.BytesIO(pdf_bytes([page(paper=paper, lying=lying)], "t"))).pages[0].mediabox
        size = (float(box.width), float(box.height))
        assert size == pytest.approx(points[::-1] if lying else points, abs=3e-4)  # 0.0001 mm


def test_every_new_title_gets_a_bookmark():
    made = [Page("A4", 210.0, 297.0, title, ()) for title in ("Cover", "Cards", "Cards", "Job book")]
    reader = pypdf.PdfReader(io.BytesIO(pdf_bytes(made, "t")))
    found = [(entry.title, reader.get_destination_page_number(entry)) for entry in reader.outline]
    assert found == [("Cover", 0), ("Cards", 1), ("Job book", 3)]


def test_viewers_are_asked_not_to_scale():
    root = pypdf.PdfReader(io.BytesIO(pdf_bytes([page()], "t"))).trailer["/Root"]
    assert root["/ViewerPreferences"]["/PrintScaling"] == "/None"
    assert root["/ViewerPreferences"]["/PickTrayByPDFSize"] is not None
    assert bool(root["/ViewerPreferences"]["/PickTrayByPDFSize"].value) is True


@pytest.mark.parametrize("start", [(10.0, 20.0), (33.333, 7.77)])
def test_100_mm_is_100_mm(start):
    """100 mm = 283.4646 units of 1/72 inch."""
    x, y = start
    marks = (Stroke(straight((x, y), (x + 100.0, y)), "check bar"), Stroke(straight((x, y), (x, y + 100.0)), "check bar"))
    (a, b), (c, d) = lines(open_pdf(pdf_bytes([page(Placed(marks))], "t"))[0])
    assert math.dist(a, b) == pytest.approx(100.0, abs=0.001)
    assert math.dist(c, d) == pytest.approx(100.0, abs=0.001)
    assert a == pytest.approx(start, abs=0.001)


def test_a_circle_stays_round_to_a_ten_thousandth():
    """Sixteen cubics a turn; the published drift of 22.5 degree pieces is under 1e-7 of the radius."""
    (ring,) = drawn(open_pdf(pdf_bytes([page(Placed((Disc((100.0, 150.0), 80.0, "hole"),)))], "t"))[0])
    curves = [p[:2] for p in ring.points]
    assert sum(p[2] == "curve" for p in ring.points) == 3 * 16
    for i in range(0, 48, 3):
        p, q, r, s = curves[i:i + 4]
        for t in (0.2, 0.5, 0.8):
            u = 1 - t
            at = [u ** 3 * p[k] + 3 * u * u * t * q[k] + 3 * u * t * t * r[k] + t ** 3 * s[k] for k in (0, 1)]
            assert math.dist(at, (100.0, 150.0)) == pytest.approx(80.0, abs=1e-4)


@pytest.mark.parametrize("scale", [1.0, 0.5])
def test_up_to_9_mm_on_the_paper_eight_cubics_are_as_true_and_every_circle_is_a_closed_line(scale):
    marks = tuple(Disc((100.0, 150.0), radius / scale, "hole") for radius in (9.0, 9.01))
    small, large = drawn(open_pdf(pdf_bytes([page(Placed(marks, stretch(scale)))], "t"))[0])
    assert [len(one.points) for one in (small, large)] == [1 + 3 * 8, 1 + 3 * 16]
    assert all(one.closed and not one.filled for one in (small, large))


@pytest.mark.parametrize("first", [Matrix(), MIRROR])
def test_a_circle_is_turned_and_mirrored_as_the_path_of_its_arcs_is(first):
    matrix = shift(100.0, 150.0).after(turn(0.5)).after(stretch(0.5)).after(first)
    marks = (Disc((20.0, 10.0), 30.0, "hole"), Stroke(Path(tuple(circle((20.0, 10.0), 30.0)), True), "hole"))
    disc, path = (one.points for one in drawn(open_pdf(pdf_bytes([page(Placed(marks, matrix))], "t"))[0]))
    assert [p[:2] for p in disc[:49]] == [pytest.approx(p[:2], abs=1e-4) for p in path[:49]]
    assert disc[0][:2] == pytest.approx(matrix((50.0, 10.0)), abs=1e-4)


def test_a_mark_that_is_mapped_lies_where_its_drawing_would_be_placed():
    """A disc and words say themselves how large and how turned they are."""
    matrix = shift(100.0, 150.0).after(turn(0.5)).after(stretch(0.5))
    whole = Path(tuple(circle((20.0, 10.0), 30.0)), True)
    marks = (Area(whole, "wood", openings=(Path(tuple(circle((20.0, 10.0), 5.0)), True),)), Cross((40.0, 50.0), 4.0, angle=0.3), Stroke(whole, "hole"))
    placed, moved = (drawn(open_pdf(pdf_bytes([page(one)], "t"))[0]) for one in (Placed(marks, matrix), Placed(tuple(mapped(mark, matrix) for mark in marks))))
    assert len(placed) == len(moved) == 3
    for one, other in zip(placed, moved, strict=True):
        assert [p[:2] for p in one.points] == [pytest.approx(p[:2], abs=1e-3) for p in other.points]
    assert mapped(Disc((20.0, 10.0), 30.0, "hole"), matrix) == Disc(matrix((20.0, 10.0)), pytest.approx(15.0), "hole")
    assert mapped(Label("Hxx", (20.0, 10.0), 3.0, "note", angle=0.3), matrix) == Label("Hxx", matrix((20.0, 10.0)), pytest.approx(1.5), "note", angle=pytest.approx(0.8))


def test_a_cross_meets_in_its_point():
    (one, two) = lines(open_pdf(pdf_bytes([page(Placed((Cross((40.0, 50.0), 4.0),), shift(3.0, 2.0)))], "t"))[0])
    for a, b in (one, two):
        assert ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) == pytest.approx((43.0, 52.0), abs=0.001)
        assert math.dist(a, b) == pytest.approx(8.0, abs=0.001)


def test_marks_outside_the_clip_are_left_out():
    far = Stroke(straight((0.0, 0.0), (5.0, 0.0)), "axis")
    near = Stroke(straight((50.0, 50.0), (60.0, 50.0)), "axis")
    found = lines(open_pdf(pdf_bytes([page(Placed((far, near), clip=(40.0, 40.0, 90.0, 90.0)))], "t"))[0])
    assert len(found) == 1


def test_drawings_may_be_turned_over_and_made_smaller():
    matrix = shift(100.0, 0.0).after(Matrix(a=0.5, d=0.5)).after(MIRROR)
    ((a, b),) = lines(open_pdf(pdf_bytes([page(Placed((Stroke(straight((20.0, 0.0), (60.0, 0.0)), "axis"),), matrix))],
                                         "t"))[0])
    assert (a[0], b[0]) == pytest.approx((90.0, 70.0), abs=0.001)


def test_words_stand_where_they_are_anchored():
    marks = tuple(Label("Hxx", (100.0, y), 3.0, "note", anchor=anchor)
                  for y, anchor in ((50.0, "left"), (70.0, "middle"), (90.0, "right")))
    found = {round(y): x for _, x, y in letters(open_pdf(pdf_bytes([page(Placed(marks))], "t"))[0])}
    assert found[50] > found[70] > found[90]
    assert found[50] == pytest.approx(100.0, abs=0.6)


def test_the_letters_are_embedded_so_that_every_printer_sets_the_same():
    """Every face that the file names: one that is named alone is refused by print shops."""
    made, = pypdf.PdfReader(io.BytesIO(pdf_bytes([page(Placed(DRAWING, shift(60.0, 60.0)))], "t"))).pages
    fonts = [font.get_object() for font in made["/Resources"]["/Font"].values()]
    assert fonts and all("/FontFile2" in font["/FontDescriptor"] for font in fonts)


def test_letters_that_the_font_lacks_are_replaced_in_sight():
    assert printable("Erd\u0151s \u00d8 6.4\u00b0") == "Erdos \u00d8 6.4\u00b0"
    assert printable("\u0436\u9577") == "??"
    assert printable("a\n\tb") == "a b"


def test_exports_of_two_days_are_the_same_bytes(monkeypatch):
    pages = [page(Placed(DRAWING, shift(60.0, 60.0)))]
    first, now = pdf_bytes(pages, "t"), time.time
    monkeypatch.setattr(time, "time", lambda: now() + 100_000)
    assert pdf_bytes(pages, "t") == first


def test_every_style_has_its_ink():
    assert set(INKS) == set(STYLES)


@pytest.mark.parametrize("radius", [0.8, 3.25, 20.0])
def test_dashes_close_round_a_circle(radius):
    count = 2 * math.pi * radius / sum(hidden_dashes(radius))
    assert count == pytest.approx(round(count)) and round(count) >= 6


def test_an_unknown_paper_is_refused_with_the_choices():
    with pytest.raises(FormatError, match="A4, A3, Letter, Tabloid"):
        paper_size("A5")
    assert paper_size("a3") == PAPERS["A3"]


def test_curves_of_the_outline_go_through_their_ends():
    ring = circle((50.0, 60.0), 10.0)
    (found,) = drawn(open_pdf(pdf_bytes([page(Placed((Stroke(ring, "outline"),)))], "t"))[0])
    assert found.points[0][:2] == pytest.approx((60.0, 60.0), abs=0.001)
    assert found.width == pytest.approx(INKS["outline"].width, abs=1e-4)


def test_no_line_and_no_word_is_grey():
    """A printer breaks thin grey into dots; grey is for areas."""
    every = tuple(Stroke(straight((0.0, 2.0 * i), (50.0, 2.0 * i)), style) for i, style in enumerate(STYLES))
    words = tuple(Label("words", (60.0, 2.0 * i), 1.8, style) for i, style in enumerate(STYLES))
    made, = pypdf.PdfReader(io.BytesIO(pdf_bytes([page(Placed((*every, *words), shift(20.0, 20.0)))], "t"))).pages
    stream = made.get_contents().get_data().decode("latin-1")
    assert stream.count(" Tj") == len(STYLES) and set(re.findall(r"([\d.]+) [gG]\b", stream)) <= {"0"}
