"""A narrow box of choices: its list shows every word whole, and of what is chosen both ends are read."""

import pytest
from PySide6.QtWidgets import QComboBox, QStyle, QStyleOptionComboBox, QWidget

from app.look.choice import Choice
from app.look.sizes import BODY, use
from app.look.style import sheet
from app.look.theme import theme


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


@pytest.mark.parametrize("percent", [100, 150, 200])
def test_a_box_as_wide_as_it_asks_for_shortens_nothing(qtbot, percent):
    """In the style in use; nor does it keep room free that the words could have."""
    use(BODY * percent / 100)
    page = QWidget(styleSheet=sheet(theme()))
    qtbot.addWidget(page)
    box = Choice(page, sizeAdjustPolicy=QComboBox.SizeAdjustPolicy.AdjustToContents)
    page.show()
    option = QStyleOptionComboBox()
    for words in ("The rack of this layout", "Disk.", *(f"face {size} bushing two screws" for size in range(40))):
        box.clear()
        box.addItem(words)
        box.resize(box.sizeHint())
        box.initStyleOption(option)
        assert option.currentText == words
        room = box.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, box)
        assert room.width() - 2 == box.fontMetrics().boundingRect(words).width(), "all of it is seen, and no more is asked for"
        box.resize(box.width() - 4, box.height())
        box.initStyleOption(option)
        assert "…" in option.currentText


@pytest.fixture(autouse=True)
def _plain_letters():
    yield
    use(BODY)
