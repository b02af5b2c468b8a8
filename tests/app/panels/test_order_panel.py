"""The panel of the running order where it has little height."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.look.sizes import px
from app.panels.order.order_panel import STEPS, OrderPanel
from app.panels.order.order_rows import StepRow
from tests.waiting import until

WARNING = "6 steps are spoiled where they stand. "


@pytest.fixture
def panel(qtbot):
    panel = OrderPanel("mm")
    qtbot.addWidget(panel)
    panel.show_order([StepRow(name, i + 1, name, "3 min") for i, name in enumerate(("mark", "drill", "rout"))], "mark", own=False)
    panel.show_head("55 steps\nabout 6.6 hours", "29 changes", "")
    panel.say("Drag a step to move it.")
    panel.resize(420, 320)
    panel.show()
    until(panel.isVisible)
    return panel


def seen(panel) -> bool:
    return not panel._says.visibleRegion().isEmpty()


def test_steps_keep_their_room_and_a_new_warning_below_them_comes_into_sight(panel):
    assert panel.list.height() >= px(STEPS) and not seen(panel)
    panel.say(WARNING, warn=True)
    assert seen(panel)
    panel._scroll.verticalScrollBar().setValue(0)
    panel.say(WARNING, warn=True)
    assert not seen(panel), "whoever went back to the top has read it"
    panel.say(20 * WARNING, warn=True)
    assert panel._says.visibleRegion().boundingRect().height() == panel._says.height() > 100, "all of a long one"


def test_no_warning_moves_the_list_under_the_hand_that_drags(panel):
    left, ground = Qt.MouseButton.LeftButton, panel.list.viewport()
    start = panel.list.row_box("drill").center()
    QTest.mousePress(ground, left, Qt.KeyboardModifier.NoModifier, start)
    QTest.mouseMove(ground, start + QPoint(0, 30))
    panel.say(WARNING, warn=True)
    assert panel.list.dragging and not seen(panel)
    QTest.mouseRelease(ground, left, Qt.KeyboardModifier.NoModifier, start + QPoint(0, 30))
    panel.say("5 steps are spoiled where they stand.", warn=True)
    assert not panel.list.dragging and seen(panel)
