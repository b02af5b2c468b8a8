"""Notes on the drawing: its sign on a plate at the place, no card, a ring round it once the note is chosen in the list."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QPointF, QRect, QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from app.canvas.snag_marks import RING, SIGN, SnagItem
from app.look.theme import THEMES
from app.look.theme import theme as in_use
from geometry.drawing import Label
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
        assert item._box.isEmpty() and item._colours[0] == in_use().note
    bench.window.go_to_snag(notes[0])
    until(lambda: items[snags.index(notes[0])].chosen)
    assert [item.chosen for item in items].count(True) == 1


def test_a_note_about_the_template_as_a_whole_points_nowhere(qtbot, tmp_path, bench):
    bare = Bench(qtbot, tmp_path, replace(bench.layout, pins=(), template=Template()))
    placeless = {snag.kind for snag in bare.window.document.result.snags if not snag.has_place}
    assert placeless == {"few-pins", "no-bit"}
    assert len(bare.window.canvas._snags._items) == len(bare.window.document.result.snags) - 2


def furthest(one: QImage, other: QImage) -> int:
    """How far two pictures of one size are from each other where they differ most, of 255."""
    return max(abs(a - b) for x in range(one.width()) for y in range(one.height())
               for a, b in zip(one.pixelColor(x, y).getRgb()[:3], other.pixelColor(x, y).getRgb()[:3], strict=True))


def test_a_dimension_beside_what_is_dragged_never_covers_the_card_of_a_snag(bench):
    canvas, snag = bench.window.canvas, bench.window.document.result.snags[0]
    canvas._snags.show([(snag, "2.1 of 3.0")])
    bench.pump()
    item, view = canvas._snags._items[0], canvas.view
    middle = view.mapFromScene(item.pos()) + item._box.center().toPoint()
    inside = QRect(0, 0, int(item._box.width()) - 8, int(item._box.height()) - 8)
    inside.moveCenter(middle)

    def seen(aside: int) -> int:
        """What a dimension that many pixels below the card's middle changes there."""
        canvas.show_guides(())
        bench.pump()
        before = view.viewport().grab(inside.translated(0, aside)).toImage()
        at = view.mapToScene(middle + QPoint(0, aside))
        canvas.show_guides((Label("12.34 mm", (at.x(), at.y()), 2.0, "dimension", anchor="middle"),))
        bench.pump()
        return furthest(before, view.viewport().grab(inside.translated(0, aside)).toImage())
    assert seen(0) < 25 < 100 < seen(60), "the card lets a sixteenth of what is below it through"


def test_cards_leave_the_words_of_tilts_free(bench):
    """Told once what was moved has come to rest; while it moves the cards stand as they stood."""
    canvas, (snag, *_) = bench.window.canvas, bench.window.document.result.snags
    assert any(label.text.endswith("raised") for labels in canvas._marks._said.values() for label in labels)
    scale, (left, right, top, bottom) = canvas.view.pixels_per_mm, max(canvas._marks.words, key=lambda box: box[1])
    words = QRectF(left, top, right - left, bottom - top)
    near = replace(snag, grade="tight", where=(left / scale, -(words.center().y() + 20.0) / scale, 0.0))
    stood = {}
    canvas._snags.show([], [])
    for canvas._moving in (True, False):
        canvas.show_snags([(near, "2.1 of 3.0")], ())
        stood[canvas.moving] = canvas._snags._items[0]._box.translated(left, words.center().y() + 20.0)
    assert stood[True].intersects(words) and not stood[False].intersects(words)
