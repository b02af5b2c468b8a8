"""The wheel scrolls the panel, whatever lies under it: it chooses nothing."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QComboBox

from app.look.descendants import below
from tests.waiting import until


def turn(box: QComboBox) -> bool:
    """One notch of the wheel towards the maker over the middle of a box. False when it leaves that to the panel."""
    at = box.rect().center()
    event = QWheelEvent(QPointF(at), QPointF(box.mapToGlobal(at)), QPoint(), QPoint(0, -120), Qt.MouseButton.NoButton,
                        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False)
    QApplication.sendEvent(box, event)
    return event.isAccepted()


@pytest.mark.parametrize("stage", ["tuners", "strings"])
def test_scrolling_past_a_box_leaves_what_is_chosen(bench, stage):
    bench.window.set_stage(stage)

    def boxes() -> list[QComboBox]:
        return [box for box in below(bench.window.side, QComboBox) if box.isVisible() and box.count() > 1]
    until(boxes, stage)
    before = bench.layout
    for box in boxes():
        chosen = box.currentIndex()
        box.setFocus()
        assert not turn(box)
        assert box.currentIndex() == chosen, box.accessibleName()
    bench.pump()
    assert bench.layout is before
