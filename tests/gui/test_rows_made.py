"""Rows that are made in some turns of the event loop: whenever they are painted, they have the height that they need."""

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit


class Painted(QObject):
    """Notes fields and boxes that are painted, as a share of the least height that they ask for."""

    def __init__(self) -> None:
        super().__init__()
        self.shares: list[float] = []

    def eventFilter(self, seen: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint and isinstance(seen, QComboBox | QLineEdit):
            self.shares.append(seen.height() / seen.minimumSizeHint().height())
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
