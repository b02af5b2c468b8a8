"""What is read at the bench can be read there, and no words lie across a line."""

from pathlib import Path

import pytest
import shapely

from app.formats.headstock import read
from app.formats.mark_shapes import drawing_box
from app.sheets import pages
from app.sheets.write import full_template, full_wrap
from geometry.drawing import Disc, Label, Stroke
from geometry.drawing.heights import LEAST, READ
from geometry.lengths import speaking
from tests.app.sheets.printed import LAYOUTS, made
from tests.app.sheets.specimens import demo

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
        if page.title in AT_THE_BENCH:
            sentences = [(text, height) for text, height, style in found if len(text) > 45 and style == "note" and "All cautions" not in text
                         and not text.startswith("Sections across")]
            assert all(height >= READ for _, height in sentences), min(sentences, key=lambda one: one[1])


@pytest.mark.parametrize("unit", ["mm", "in64"])
@pytest.mark.parametrize("file", SAMPLES, ids=lambda file: file.name.split(".")[0])
def test_no_words_lie_across_a_line_or_a_hole(file, unit):
    """Lines of template and wrap paper, leaders among them: the bass has pins beside the words of its tuners."""
    layout = read(file)
    with speaking(unit):
        drawings = full_template(layout), full_wrap(layout, _work(layout))
    for drawing in drawings:
        lines = [(mark, shapely.LineString(mark.path.flatten(0.05))) for mark in drawing if isinstance(mark, Stroke)]
        lines += [(mark, shapely.Point(mark.centre).buffer(mark.radius)) for mark in drawing if isinstance(mark, Disc)]
        words = [(mark, shapely.box(*drawing_box((mark,)))) for mark in drawing if isinstance(mark, Label) and mark.owner and mark.owner != "blank"]
        assert words
        for label, covered in words:
            assert [mark.style for mark, line in lines if line.intersects(covered)] == [], label.text


def _work(layout):
    from app.sheets import plan_work
    return plan_work(layout)


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
