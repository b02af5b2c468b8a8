"""What is read at the bench can be read there, and no words lie across a line."""

from pathlib import Path

import pytest
import shapely
from msgspec.structs import replace

from app.formats.headstock import read
from app.formats.mark_shapes import drawing_box, mark_box
from app.languages.catalogue import speak
from app.sheets import pages, plan_work
from app.sheets.furniture import PRINTER_MARGIN, window_of
from app.sheets.pages import papers
from app.sheets.write import full_template
from geometry import saying
from geometry.drawing import Disc, Label, Stroke, blank_box
from geometry.drawing.heights import LEAST, READ
from geometry.edits import rename
from geometry.layout import SingleHole
from geometry.lengths import speaking
from tests.app.sheets.printed import LAYOUTS, made
from tests.app.sheets.specimens import demo, large

SAMPLES = [file for file in sorted(Path("samples").glob("*.headstock.json")) if "snags" not in file.name]
"""Without the one in which a hole is drilled into a slot."""
AT_THE_BENCH = ("Running order", "Cards", "Cut list and parts")


def heights(page):
    """(words, capital height on paper, style) of everything said on a page."""
    return [(mark.text, mark.height * abs(complex(placed.matrix.a, placed.matrix.b)), mark.style) for placed in page.content
            for mark in placed.drawing if isinstance(mark, Label)]


@pytest.mark.parametrize("paper", ["A4", "Letter", "Tabloid"])
@pytest.mark.parametrize("name", LAYOUTS)
def test_no_letters_are_smaller_than_can_be_read(name, paper):
    """Sentences and numbers to work to are larger than captions."""
    for page in made(name, paper):
        found = heights(page)
        assert min(height for _, height, _ in found) >= LEAST - 1e-6, (page.title, min(found, key=lambda one: one[1]))
        if any(title in page.title for title in AT_THE_BENCH):
            sentences = [(text, height) for text, height, style in found if len(text) > 45 and style == "note" and "All cautions" not in text
                         and not text.startswith("Sections across")]
            assert all(height >= READ for _, height in sentences), min(sentences, key=lambda one: one[1])


@pytest.mark.parametrize("unit", ["mm", "in64"])
@pytest.mark.parametrize("file", SAMPLES, ids=lambda file: file.name.split(".")[0])
def test_no_words_lie_across_a_line_or_a_hole(file, unit):
    """Lines of template and wrap paper, leaders among them: the bass has pins beside the words of its tuners."""
    layout = read(file)
    with speaking(unit):
        template, wrap, *_ = papers(layout, plan_work(layout))
        drawings = full_template(layout, template), wrap.drawing
    for drawing in drawings:
        lines = [(mark, shapely.LineString(mark.path.flatten(0.05))) for mark in drawing if isinstance(mark, Stroke)]
        lines += [(mark, shapely.Point(mark.centre).buffer(mark.radius)) for mark in drawing if isinstance(mark, Disc)]
        words = [(mark, shapely.box(*drawing_box((mark,)))) for mark in drawing if isinstance(mark, Label) and mark.owner and mark.owner != "blank"]
        assert words
        for label, covered in words:
            assert [mark.style for mark, line in lines if line.intersects(covered)] == [], label.text


def ink(box):
    """Of words what is black in most of them: without the room for accents over and tails under them."""
    return shapely.box(*box).buffer(-0.65, join_style="mitre")


def wrap_paper(layout):
    return papers(layout, plan_work(layout))[1].drawing


def test_the_cover_tells_the_slot_from_the_outline_without_colour():
    cover = pages(demo(), "A4", ())[0]
    marks = [mark for placed in cover.content for mark in placed.drawing]
    names = {mark.text: mark.at for mark in marks if isinstance(mark, Label)}
    samples = {}
    for style, name in (("outline", "finished outline"), ("slot", "finished slot")):
        x, y = names[name]
        samples[style], = [mark.path for mark in marks if isinstance(mark, Stroke) and mark.style == style and x - 13.0 < mark.path.start[0] < x
                           and abs(mark.path.start[1] - y) < 3.0]
    assert not samples["outline"].closed and samples["slot"].closed
    assert samples["slot"].box[3] - samples["slot"].box[1] > 2.0


def test_long_names_cost_no_page_and_run_into_nothing():
    """Each name of forty letters goes on in a second line, and on the edges as far as the next mark."""
    layout = demo()
    for number, tuner in enumerate(layout.tuners):
        layout = rename(layout, "tuners", tuner.id, f"the quite long name of a tuner, number {number}".replace(",", ""))
    titles = [page.title for page in pages(layout, "A4", ())]
    assert titles.count("Template") == titles.count("Wrap paper") == 1
    drawing = wrap_paper(layout)
    x0, y0, x1, y1 = blank_box(layout.blank)
    words = [(mark.text, drawing_box((mark,))) for mark in drawing if isinstance(mark, Label) and mark.owner in {one.id for one in layout.tuners}]
    assert len(words) > 20
    for i, (text, box) in enumerate(words):
        assert x0 < box[0] and box[2] < x1 and y0 < box[1] and box[3] < y1, text
        assert not any(ink(box).intersects(ink(other)) for _, other in words[i + 1:]), text


def test_holes_in_a_heap_are_named_only_where_the_words_can_be_read():
    """Of 64 holes 5.5 mm apart those at the rim have words; no word lies on another or on a hole."""
    layout = replace(demo(), holes=tuple(SingleHole(id=f"hole {i}", at=(-20.0 + i % 8 * 5.5, 8.0 + i // 8 * 6.0), diameter=2.0) for i in range(64)))
    drawing = wrap_paper(layout)
    words = [ink(drawing_box((mark,))) for mark in drawing if isinstance(mark, Label) and mark.owner.startswith("hole ")]
    holes = [shapely.Point(mark.centre).buffer(mark.radius) for mark in drawing if isinstance(mark, Disc) and mark.owner.startswith("hole ")]
    assert len(holes) == 64 and 10 < len(words) < 64
    assert not any(one.intersects(other) for i, one in enumerate(words) for other in (*words[i + 1:], *holes))


def test_many_equal_holes_share_as_many_cards_as_they_need():
    """On the shorter paper. A card is not parted, so that one with a row for each of 64 holes would run over the edge of the page."""
    layout = replace(demo(), holes=tuple(SingleHole(id=f"hole {i}", at=(-20.0 + i % 8 * 5.5, 8.0 + i // 8 * 6.0), diameter=2.0) for i in range(64)))
    found = [page for page in pages(layout, "Letter", ()) if page.title == "Cards"]
    low = window_of(found[0].width, found[0].height)[1]
    named = [mark.text for page in found for placed in page.content[1:] for mark in placed.drawing
             if isinstance(mark, Label) and mark_box(mark, placed.matrix)[1] >= low]
    assert sorted(text.partition(": ")[2] for text in named if ": hole " in text) == sorted(one.id for one in layout.holes)
    assert [text for text in named if text.endswith("holes, 2 wide")] == ["24 holes, 2 wide", "24 holes, 2 wide", "16 holes, 2 wide"]


def test_what_names_the_ends_of_a_slot_stays_on_a_letter_page_in_german():
    """At a fifth of its size the slot of the large head fills the page nearly, and Spitze is longer than tip."""
    speak("de")
    try:
        printed = pages(large(), "Letter", ())
    finally:
        saying.use(None)
    ends = [(page, mark_box(mark, placed.matrix)) for page in printed for placed in page.content for mark in placed.drawing
            if isinstance(mark, Label) and mark.text == "Spitze"]
    assert ends and all(box[2] <= page.width - PRINTER_MARGIN for page, box in ends)
