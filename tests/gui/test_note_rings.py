"""Notes on the drawing: its sign on a plate at the place, no card, a ring round it once the note is chosen in the list."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.canvas.snag_marks import RING, SIGN, SnagItem
from app.look.theme import THEMES
from geometry.layout.shop import Template
from tests.gui.bench import Bench
from tests.waiting import until


def inked(item: SnagItem) -> set[int]:
    """How far below its middle, in pixels, the item's own colour stands."""
    size = 40
    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(QColor("#7f7f7f"))
    painter = QPainter(image)
    painter.translate(QPointF(size / 2, size / 2))
    item.paint(painter, None)
    painter.end()
    ink = QColor(item._colours[0])
    return {y for y in range(size // 2) if sum(abs(a - b) for a, b in zip(
        image.pixelColor(size // 2, size // 2 + y).getRgb()[:3], ink.getRgb()[:3], strict=True)) < 60}


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
def test_a_note_is_its_sign_until_it_is_chosen(bench, theme):
    item = SnagItem(bench.window.font())
    reach = {}
    for grade, chosen in (("note", False), ("note", True), ("tight", False)):
        item.show_snag(grade, "", (0.0, 0.0), theme.of_grade(grade), theme.panel, QRectF(), chosen)
        reach[grade, chosen] = max(inked(item))
    assert reach["note", False] <= SIGN < RING - 1 <= reach["note", True]
    assert abs(reach["tight", False] - RING) <= 1


def test_every_note_of_the_demo_has_its_sign_and_no_card(bench):
    snags = bench.window.document.result.snags
    notes = [snag for snag in snags if snag.grade == "note"]
    items = bench.window.canvas._snags._items
    assert notes and len(items) == len(snags)
    for snag, item in zip(snags, items, strict=True):
        assert (item.x(), item.y()) == snag.where[:2]
        assert item._box.isEmpty() and item._colours[0] == bench.window.theme.note
    bench.window.go_to_snag(notes[0])
    until(lambda: items[snags.index(notes[0])].chosen)
    assert [item.chosen for item in items].count(True) == 1


def test_a_note_about_the_template_as_a_whole_points_nowhere(qtbot, tmp_path, bench):
    bare = Bench(qtbot, tmp_path, replace(bench.layout, pins=(), template=Template()))
    placeless = {snag.kind for snag in bare.window.document.result.snags if not snag.has_place}
    assert placeless == {"few-pins", "no-bit"}
    assert len(bare.window.canvas._snags._items) == len(bare.window.document.result.snags) - 2
