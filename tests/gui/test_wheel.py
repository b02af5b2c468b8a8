"""The wheel scrolls what it lies over: it chooses nothing, in the panel, above the drawing and in dialogs."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QComboBox, QSlider, QWidget

from app.look.descendants import below
from app.window.stages import STAGES
from tests.gui.bench import at_rest
from tests.gui.dialogs import DIALOGS
from tests.waiting import on_screen, until


def turn(widget: QWidget, way: int = -120) -> bool:
    """One notch of the wheel over the middle of a widget, towards the maker. False when it leaves that to what it stands on."""
    at = widget.rect().center()
    event = QWheelEvent(QPointF(at), QPointF(widget.mapToGlobal(at)), QPoint(), QPoint(0, way), Qt.MouseButton.NoButton,
                        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False)
    QApplication.sendEvent(widget, event)
    return event.isAccepted()


def valued(root: QWidget) -> list[QWidget]:
    """Every part that is seen and stands at a value which a wheel could turn."""
    return [widget for widget in below(root) if isinstance(widget, (QComboBox, QSlider, QAbstractSpinBox)) and widget.isVisible()]


def value(widget: QWidget) -> object:
    return widget.currentIndex() if isinstance(widget, QComboBox) else widget.value()


def assert_the_wheel_turns_none(root: QWidget) -> None:
    for widget in valued(root):
        before = value(widget)
        widget.setFocus()
        assert not turn(widget) and not turn(widget, 120), widget.accessibleName()
        assert value(widget) == before, widget.accessibleName()


@pytest.mark.parametrize("stage", ["tuners", "strings"])
def test_scrolling_past_a_box_leaves_what_is_chosen(bench, stage):
    bench.window.set_stage(stage)
    until(lambda: [box for box in below(bench.window.side, QComboBox) if box.isVisible() and box.count() > 1], stage)
    before = bench.layout
    assert_the_wheel_turns_none(bench.window.side)
    bench.pump()
    assert bench.layout is before


def test_no_stage_has_a_part_that_the_wheel_turns(bench):
    seen = set()
    for stage in STAGES:
        bench.window.set_stage(stage.key)
        at_rest(bench.window)
        assert_the_wheel_turns_none(bench.window)
        seen |= {widget.accessibleName() for widget in valued(bench.window)}
    assert {"Hardware", "Paper", "Step"} <= seen


def test_no_dialog_has_a_part_that_the_wheel_turns(bench, qtbot):
    seen = set()
    for key in sorted(DIALOGS):
        dialog = DIALOGS[key](bench.window)
        qtbot.addWidget(dialog)
        dialog.open_for(None) if key == "hold" else dialog.show()
        on_screen(dialog)
        assert_the_wheel_turns_none(dialog)
        seen |= {f"{type(widget).__name__} {widget.accessibleName()}" for widget in valued(dialog)}
        dialog.end() if key == "hold" else dialog.close()
    assert {"Choice Paper", "Choice Wanted chance", "Slider Level of grey between head and background"} <= seen
