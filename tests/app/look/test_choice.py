"""A narrow box of choices: its list shows every word whole, and of what is chosen both ends are read."""

import pytest
from PySide6.QtGui import QFont, QFontMetricsF
from PySide6.QtWidgets import QComboBox, QStyleOptionComboBox

from app.look.choice import BESIDE, Choice
from app.look.sizes import px


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_the_list_is_as_wide_as_its_words(qtbot):
    box = Choice()
    qtbot.addWidget(box)
    words = ["none", "face 10 bushing one screw", "face 8.8 bushing two screws, drilled from both of its sides"]
    box.addItems(words)
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setFixedWidth(110)
    box.show()
    box.showPopup()
    widest = max(box.fontMetrics().horizontalAdvance(word) for word in words)
    assert box.width() == 110 and box.view().width() > widest
    box.hidePopup()


def test_what_is_chosen_is_told_apart_by_its_end_too(qtbot):
    box = Choice()
    qtbot.addWidget(box)
    box.addItems(["face 10 bushing one screw", "face 10 bushing one screw mirrored", "short"])
    box.setFixedWidth(130)
    pictures = []
    for chosen in range(2):
        box.setCurrentIndex(chosen)
        pictures.append(box.grab().toImage())
    assert pictures[0] != pictures[1]
    box.setCurrentIndex(2)
    short, plain = box.grab().toImage(), QComboBox()
    qtbot.addWidget(plain)
    plain.addItem("short")
    plain.setFixedSize(box.size())
    assert short == plain.grab().toImage(), "what has room is painted as ever"


def test_a_box_as_wide_as_it_asks_for_shortens_nothing(qtbot):
    """Words are a fraction of a pixel wider than the whole pixels that the box asks for them."""
    box = Choice()
    qtbot.addWidget(box)
    box.setFont(QFont(box.font().family(), 13))
    letters, exact, wider = box.fontMetrics(), QFontMetricsF(box.font()), 0
    for words in ("The rack of this layout", *(f"face {size} bushing two screws" for size in range(40))):
        box.clear()
        box.addItem(words)
        box.setFixedWidth(letters.horizontalAdvance(words) + px(BESIDE))
        option = QStyleOptionComboBox()
        box.initStyleOption(option)
        assert option.currentText == words
        wider += exact.horizontalAdvance(words) > letters.horizontalAdvance(words)
    assert wider, "else nothing was tried"
    box.setFixedWidth(box.width() - 3)
    box.initStyleOption(option)
    assert "…" in option.currentText
