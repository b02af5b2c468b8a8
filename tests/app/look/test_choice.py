"""A narrow box of choices whose list shows every word whole."""

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
