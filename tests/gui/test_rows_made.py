"""Rows that are made in some turns of the event loop: whenever they are painted, they have the height that they need, and
what stands above them is not laid anew for each."""

from collections import Counter

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QPushButton


class Painted(QObject):
    """Notes fields and boxes that are painted, as a share of the least height that they ask for."""

    def __init__(self) -> None:
        super().__init__()
        self.shares: list[float] = []
        self.resized: Counter[str] = Counter()

    def eventFilter(self, seen: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint and isinstance(seen, QComboBox | QLineEdit):
            self.shares.append(seen.height() / seen.minimumSizeHint().height())
        if event.type() == QEvent.Type.Resize and isinstance(seen, QPushButton):
            self.resized[seen.text()] += 1
        return False


@pytest.fixture
def painted():
    spy = Painted()
    QApplication.instance().installEventFilter(spy)
    yield spy
    QApplication.instance().removeEventFilter(spy)


def test_no_row_of_the_strings_is_painted_squeezed(bench, qtbot, painted):
    bench.window.set_stage("strings")
    panel = bench.window.room.panel
    qtbot.waitUntil(lambda: panel.strings.complete and panel.table.complete)
    bench.pump()
    assert len(painted.shares) > 10 and min(painted.shares) > 0.8


def test_a_page_is_laid_a_few_times_and_not_once_for_each_of_its_rows(painted, bench):
    bench.pump()
    assert len(bench.window.side.inside._fields.rows) > 50
    assert 0 < max(painted.resized.values()) < 20
