"""One scale: every size is the plain one times a factor, within what is sensible."""

import pytest
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

from app.look import sizes
from app.look.flow import Flow
from app.look.style import sheet
from app.look.theme import DAY
from tests.waiting import on_screen


def test_a_size_grows_as_the_letters_do():
    assert (sizes.use(26.0).px(22), sizes.sizes().letters(11), sizes.sizes().soft(340)) == (44, 22, 510)


def test_letters_are_never_smaller_than_plain_nor_without_end():
    assert sizes.use(4.0).body == sizes.BODY and sizes.use(400.0).body == sizes.LARGEST


def test_letters_of_the_desktop_are_taken_in_pixels():
    # 12 pt are 16 pixels at 96 to the inch: a point is 1/72 inch (definition).
    font = QFont("sans")
    font.setPointSizeF(12)
    assert sizes.body_of(font, 96) == pytest.approx(16)
    font.setPixelSize(20)
    assert sizes.body_of(font, 96) == 20


def test_the_style_sheet_follows_the_scale():
    plain = sheet(DAY)
    sizes.use(26.0)
    assert "font-size: 13px" in plain and "font-size: 26px" in sheet(DAY) and "font-size: 13px" not in sheet(DAY)


def test_widgets_with_sizes_of_their_own_follow(qtbot):
    root = QWidget()
    qtbot.addWidget(root)
    label, button = QLabel("a", root), QPushButton("b", root)
    sizes.keep(label, fixed_width=90)
    sizes.keep(button, fixed=(20, 30))
    sizes.use(19.5)
    sizes.follow(root)
    assert label.width() == 135 and (button.width(), button.height()) == (30, 45)


def test_a_row_goes_on_below_where_there_is_no_room(qtbot):
    root = QWidget()
    qtbot.addWidget(root)
    row = Flow(root, (5, 5, 5, 5), 6)
    for _ in range(4):
        box = QWidget(root)
        box.setFixedSize(100, 20)
        row.addWidget(box)
    assert row.sizeHint().width() == 4 * 100 + 3 * 6 + 10
    assert row.heightForWidth(500) == 30 and row.heightForWidth(230) == 56 and row.heightForWidth(120) == 5 + 4 * 20 + 3 * 6 + 5
    assert row.minimumSize().width() == 110
    root.resize(230, 60)
    root.show()
    on_screen(root)
    places = [row.itemAt(i).geometry().topLeft().toTuple() for i in range(4)]
    assert places == [(5, 5), (111, 5), (5, 31), (111, 31)]


def test_a_gap_takes_what_its_row_leaves_over(qtbot):
    root = QWidget()
    qtbot.addWidget(root)
    row = Flow(root, gap=0)
    for i in range(2):
        box = QWidget(root)
        box.setFixedSize(50, 20)
        row.addWidget(box)
        if i == 0:
            row.add_gap()
    root.resize(300, 20)
    root.show()
    on_screen(root)
    assert row.itemAt(2).geometry().right() == 299
