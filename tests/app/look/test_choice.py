"""A narrow box of choices: its list shows every word whole, and of what is chosen both ends are read."""

import pytest
from PySide6.QtWidgets import QComboBox

from app.look.choice import Choice


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
