"""The picture of a section in the panel: rings of snags in it, and no half ones at its ends."""

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QFont, QTransform
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.look.painting import Painting
from app.look.section_view import SectionView
from geometry.drawing import Area, Label
from geometry.drawing.shapes import rectangle
from tests.waiting import until

WOOD = (Area(rectangle(0.0, -16.0, 60.0, 0.0), "wood", "outline"),)


def picture(qtbot, *signs):
    view = SectionView()
    qtbot.addWidget(view)
    view.resize(320, 200)
    view.show_drawing(WOOD, tuple((at, "spoils the work") for at in signs))
    return view.grab().toImage()


def test_a_section_that_becomes_wider_gets_its_height(qtbot):
    page = QWidget()
    qtbot.addWidget(page)
    view = SectionView(page)
    view.show_drawing(WOOD)
    QVBoxLayout(page).addWidget(view)
    page.resize(160, 500)
    page.show()
    for width in (160, 430, 240):
        page.resize(width, 500)
        until(lambda: view.height() == view.heightForWidth(view.width()), "it keeps to the height that it asked for before")


def test_words_of_a_section_are_placed_anew_where_it_is_laid_otherwise(qtbot):
    painting, font = Painting((Label("30 mm wide", (0.0, 0.0), 3.0),)), QFont()
    low = painting.lowest(QTransform.fromTranslate(0.0, 20.0), 200.0, font)
    assert painting.lowest(QTransform.fromTranslate(0.0, 50.0), 200.0, font) == low + 30.0
    assert painting.lowest(QTransform.fromTranslate(0.0, 20.0), 20.0, font) < low, "in smaller letters where they have no room"


def test_a_snag_beyond_the_end_of_a_section_shows_no_half_sign(qtbot):
    bare = picture(qtbot)
    assert picture(qtbot, (30.0, -8.0)) != bare
    assert picture(qtbot, (-3.5, -8.0)) == bare and picture(qtbot, (63.5, -8.0)) == bare and picture(qtbot, (30.0, -100.0)) == bare


def test_where_nothing_is_held_no_room_is_left_for_a_section(bench):
    """The page stands as it does after something was held and let go."""
    inside = bench.window.side.inside
    until(lambda: inside._fields.complete and inside._fields.isVisible())
    top = inside._fields.y()
    bench.click(bench.origin("treble face 2"))
    assert bench.window.document.held
    bench.click((-100.0, 60.0))
    assert not bench.window.document.held
    until(lambda: inside._fields.y() == top, "the page stands elsewhere than at the start")


def _inked(qtbot, words):
    """A view 320 x 400 pixels with these words at a piece of wood, and the rows of pixels in which they are."""
    view = SectionView()
    qtbot.addWidget(view)
    view.resize(320, 400)
    view.show_drawing((*WOOD, words))
    high, seen = view.heightForWidth(320), view.grab().toImage()
    view.show_drawing(WOOD)
    bare = view.grab().toImage()
    return high, [y for y in range(400) if any(seen.pixel(x, y) != bare.pixel(x, y) for x in range(320))]


def test_words_of_two_lines_above_a_section_are_not_cut(qtbot):
    """A counterbore and its post bore are told in two lines, of which the first would stand half above the upper edge."""
    _, rows = _inked(qtbot, Label("counterbore\npost bore", (30.0, 1.2), 2.0))
    assert rows and rows[0] > 0


def test_words_low_below_a_section_are_not_cut(qtbot):
    """Lengths that would touch stand a row lower, and a short section is drawn large: without its lower end a comma is a point."""
    high, rows = _inked(qtbot, Label("1,5", (30.0, -28.0), 2.0))
    assert rows and rows[-1] < high


def test_two_lines_of_words_stand_above_the_wood(qtbot):
    words = tuple(Label(text, (0.0, 4.5 + 4.0 * i), 2.0) for i, text in enumerate(("post bore 6.5 through", "counterbore 8.8 x 8 deep")))
    view = SectionView()
    qtbot.addWidget(view)
    view.show_drawing(WOOD + words)
    one = SectionView()
    qtbot.addWidget(one)
    one.show_drawing(WOOD + words[:1])
    wood = view._move(320).map(QPointF(0.0, 0.0)).y()
    assert view._painting.lowest(view._move(320), 320, view.font()) <= wood + 0.5
    assert view.heightForWidth(320) - one.heightForWidth(320) == pytest.approx(wood - one._move(320).map(QPointF(0.0, 0.0)).y(), abs=1)
