"""Bars keep their room: what is fitted to an area must not change with whether there is something to scroll."""

import pytest
from PySide6.QtCore import QEvent, QObject, QSize
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from app.look.scroll import Scroll


class Square(QWidget):
    """A picture that takes the whole width and is as high."""

    def __init__(self, parent):
        super().__init__(parent)
        policy = self.sizePolicy()
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self):
        return True

    def heightForWidth(self, width):
        return width

    def sizeHint(self):
        return QSize(100, 100)


class Widths(QObject):
    """Every width that a widget was given."""

    def __init__(self, watched):
        super().__init__(watched)
        self.seen = []
        watched.installEventFilter(self)

    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Resize:
            self.seen.append(event.size().width())
        return False


def page(parent):
    made = QWidget(parent)
    column = QVBoxLayout(made)
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(Square(made))
    return made


@pytest.mark.parametrize("height", range(196, 222, 2))
def test_the_width_of_a_page_does_not_hang_on_its_height(qtbot, height):
    area = Scroll("a page")
    qtbot.addWidget(area)
    area.setWidget(page(area))
    area.resize(220, height)
    area.show()
    QApplication.processEvents()
    beside = area.verticalScrollBar().width()
    widths = Widths(area.widget())
    for step in (1, -1, 0):
        area.resize(220, height + step)
        QApplication.processEvents()
    assert area.verticalScrollBar().isVisible() and beside > 0
    assert set(widths.seen) <= {area.viewport().width()}
    # What does not fit is scrolled; what fits leaves nothing to scroll, and the bar is not seen.
    fits = area.viewport().width() <= area.viewport().height()
    assert (area.verticalScrollBar().maximum() == 0) == fits


def test_a_bar_with_nothing_to_scroll_is_not_painted(qtbot):
    area = Scroll("a page")
    qtbot.addWidget(area)
    area.setWidget(page(area))
    pictures = []
    for height in (150, 400):
        area.resize(220, height)
        area.show()
        QApplication.processEvents()
        pictures.append(area.verticalScrollBar().grab().toImage())
    seen = [len({picture.pixel(x, y) for x in range(picture.width()) for y in range(picture.height())}) for picture in pictures]
    assert seen[0] > 1 and seen[1] == 1
