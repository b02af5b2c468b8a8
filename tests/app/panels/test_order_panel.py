"""The panel of the running order where it has little height."""

from app.look.sizes import px
from app.panels.order.order_panel import STEPS, OrderPanel
from tests.waiting import until


def test_steps_keep_their_room_and_a_warning_below_them_comes_into_sight(qtbot):
    panel = OrderPanel("mm")
    qtbot.addWidget(panel)
    panel.show_head("55 steps\nabout 6.6 hours", "29 changes", "")
    panel.say("Drag a step to move it.")
    panel.resize(420, 320)
    panel.show()
    until(panel.isVisible)
    assert panel.list.height() >= px(STEPS)

    def seen() -> bool:
        return not panel._says.visibleRegion().isEmpty()
    assert not seen()
    panel.say("6 steps are spoiled where they stand.", warn=True)
    assert seen()
