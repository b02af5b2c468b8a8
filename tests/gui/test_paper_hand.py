"""Buttons, wheel and Space on the paper in any order: what is in hand is let go, the paper rests, the pointer tells the truth."""

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.canvas.layer import MarkLayer
from app.canvas.rulers import APART
from app.look.sizes import px
from app.look.theme import theme
from geometry.units import format_length
from tests.gui.bench import NONE, Bench
from tests.waiting import until

TUNER = "treble face 2"
LEFT, MIDDLE, RIGHT = Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton, Qt.MouseButton.RightButton
HOLD, CROSS = (Qt.CursorShape.ArrowCursor, Qt.CursorShape.PointingHandCursor), Qt.CursorShape.CrossCursor
"""Shapes of the holding tool, over nothing and over something, and that of others."""
OPEN, CLOSED = Qt.CursorShape.OpenHandCursor, Qt.CursorShape.ClosedHandCursor
HERE = QPoint(300, 300)


def shape(bench: Bench) -> Qt.CursorShape:
    return bench.view.viewport().cursor().shape()


def looks_at(bench: Bench) -> tuple[int, int]:
    return bench.view.horizontalScrollBar().value(), bench.view.verticalScrollBar().value()


def wheel(bench: Bench, delta: QPoint, keys=NONE, at: QPoint = HERE) -> None:
    port = bench.view.viewport()
    QApplication.sendEvent(port, QWheelEvent(QPointF(at), port.mapToGlobal(QPointF(at)), QPoint(), delta, Qt.MouseButton.NoButton,
                                             keys, Qt.ScrollPhase.NoScrollPhase, False))
    bench.pump()


def sent(bench: Bench, kind: QEvent.Type, at: QPoint, button: Qt.MouseButton, down: Qt.MouseButton) -> None:
    port = bench.view.viewport()
    QApplication.sendEvent(port, QMouseEvent(kind, QPointF(at), port.mapToGlobal(QPointF(at)), button, down, NONE))
    bench.pump()


def test_what_is_in_hand_is_let_go_while_the_middle_button_moves_the_paper(bench):
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x, y + 5), 3)
    QTest.mousePress(bench.view.viewport(), MIDDLE, NONE, bench.pixel((x, y + 5)))
    assert shape(bench) == CLOSED
    bench.release((x, y + 5))
    assert not bench.window.hand.busy and not bench.view.pressing
    assert bench.origin(TUNER)[1] == pytest.approx(y + 5, abs=1.0)
    before = looks_at(bench)
    QTest.mouseMove(bench.view.viewport(), HERE)
    bench.pump()
    assert looks_at(bench) != before, "the middle button still moves the paper"
    QTest.mouseRelease(bench.view.viewport(), MIDDLE, NONE, HERE)
    assert shape(bench) in HOLD


def test_only_the_button_that_began_it_ends_moving_the_paper(bench):
    port = bench.view.viewport()
    QTest.mousePress(port, MIDDLE, NONE, HERE)
    QTest.mouseClick(port, RIGHT, NONE, HERE)
    QTest.mouseClick(port, LEFT, NONE, HERE)
    assert shape(bench) == CLOSED and not bench.window.hand.busy
    QTest.mouseRelease(port, MIDDLE, NONE, HERE)
    assert shape(bench) in HOLD


def test_a_second_quick_press_of_the_middle_button_moves_the_paper_too(bench):
    sent(bench, QEvent.Type.MouseButtonDblClick, HERE, MIDDLE, MIDDLE)
    before = looks_at(bench)
    sent(bench, QEvent.Type.MouseMove, HERE + QPoint(7, 9), Qt.MouseButton.NoButton, MIDDLE)
    assert looks_at(bench) == (before[0] - 7, before[1] - 9)
    sent(bench, QEvent.Type.MouseButtonRelease, HERE, MIDDLE, Qt.MouseButton.NoButton)
    assert shape(bench) in HOLD


def test_a_drag_may_begin_with_the_second_of_two_quick_presses(bench):
    x, y = bench.origin(TUNER)
    bench.click((x, y))
    at = bench.pixel((x, y))
    sent(bench, QEvent.Type.MouseButtonDblClick, at, LEFT, LEFT)
    for k in (2, 4, 5):
        sent(bench, QEvent.Type.MouseMove, bench.pixel((x, y + k)), Qt.MouseButton.NoButton, LEFT)
    assert bench.window.hand.busy
    bench.release((x, y + 5))
    assert not bench.window.hand.busy
    assert bench.origin(TUNER)[1] == pytest.approx(y + 5, abs=1.0)


def test_a_section_line_pulled_by_a_second_quick_press_is_let_go(bench):
    bench.window.set_tool("section")
    bench.drag((-30.0, 60.0), (30.0, 60.0))
    sent(bench, QEvent.Type.MouseButtonDblClick, bench.pixel((30.0, 60.0)), LEFT, LEFT)
    sent(bench, QEvent.Type.MouseMove, bench.pixel((30.0, 70.0)), Qt.MouseButton.NoButton, LEFT)
    bench.release((30.0, 70.0))
    laid = bench.window.hand._running.shown.line
    assert laid[1] == pytest.approx((30.0, 70.0), abs=0.5)
    bench.move((0.0, 110.0))
    assert bench.window.hand._running.shown.line == laid, "it stays where it was let go"


def test_a_letting_go_that_another_window_saw_is_made_up_for(bench):
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    bench.move_along((x, y), (x, y + 5), 3)
    sent(bench, QEvent.Type.MouseMove, HERE, Qt.MouseButton.NoButton, Qt.MouseButton.NoButton)
    assert not bench.window.hand.busy and not bench.view.pressing
    assert bench.origin(TUNER)[1] == pytest.approx(y + 5, abs=1.0), "where it was seen last"
    QTest.mouseRelease(bench.view.viewport(), LEFT, NONE, HERE)
    sent(bench, QEvent.Type.MouseButtonPress, HERE, MIDDLE, MIDDLE)
    before = looks_at(bench)
    sent(bench, QEvent.Type.MouseMove, HERE + QPoint(7, 9), Qt.MouseButton.NoButton, Qt.MouseButton.NoButton)
    assert looks_at(bench) == before and shape(bench) in HOLD


def test_the_pointer_of_a_tool_comes_back_after_moving_the_paper(bench):
    bench.window.set_tool("hole")
    port = bench.view.viewport()
    QTest.mousePress(port, MIDDLE, NONE, HERE)
    assert shape(bench) == CLOSED
    QTest.mouseRelease(port, MIDDLE, NONE, HERE)
    assert shape(bench) == CROSS


@pytest.mark.parametrize("tool", ["hold", "hole", "slot"])
def test_space_and_a_drag_move_the_paper_with_any_tool(bench, tool):
    window, port = bench.window, bench.view.viewport()
    window.set_tool(tool)
    bench.view.setFocus()
    QTest.mouseMove(port, HERE)
    bench.pump()
    QTest.keyPress(bench.view, Qt.Key.Key_Space)
    assert shape(bench) == OPEN and not window.hand.entries and window.keyboard.pen is None
    layout, before = window.document.layout, looks_at(bench)
    QTest.mousePress(port, LEFT, NONE, HERE)
    QTest.mouseMove(port, HERE + QPoint(20, 30))
    QTest.mouseRelease(port, LEFT, NONE, HERE + QPoint(20, 30))
    assert shape(bench) == OPEN
    QTest.keyRelease(bench.view, Qt.Key.Key_Space)
    assert looks_at(bench) == (before[0] - 20, before[1] - 30)
    assert window.document.layout is layout
    assert shape(bench) in (HOLD if tool == "hold" else (CROSS,))


def test_a_space_goes_on_with_a_value_and_begins_none(bench):
    bench.window.set_tool("hole")
    bench.move((-20.0, 100.0))
    bench.text(" ")
    assert not bench.window.hand.entries
    bench.text('1 1/2"')
    assert bench.window.hand.entries[0][1] == '1 1/2"'
    bench.window.keyboard.escape()


def test_space_that_is_let_go_elsewhere_is_no_longer_down(bench):
    bench.view.setFocus()
    QTest.keyPress(bench.view, Qt.Key.Key_Space)
    bench.window.side.inside.snags.setFocus()
    QTest.keyRelease(bench.window.side.inside.snags, Qt.Key.Key_Space)
    assert shape(bench) in HOLD
    x, y = bench.origin(TUNER)
    bench.press((x, y))
    assert bench.window.hand.busy, "a press takes hold and does not move the paper"
    bench.window.hand.cancel()
    bench.release((x, y))


def test_a_wheel_that_rolls_sideways_moves_the_paper_sideways(bench):
    before = looks_at(bench)
    wheel(bench, QPoint(120, 0))
    assert looks_at(bench) == (before[0] - 60, before[1])


def ticks(bench: Bench) -> list[int]:
    """Pixels along the upper ruler, as it stands in the window, that are in the colour of the tick."""
    bench.pump()
    window, ruler = bench.window, bench.window.canvas._top
    at = ruler.mapTo(window, QPoint(0, 0))
    image = window.screen().grabWindow(window.winId(), at.x(), at.y(), ruler.width(), 4).toImage().convertToFormat(
        QImage.Format.Format_RGB32)
    pixels = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.width(), 4)[..., :3].astype(int)
    ink = np.array(QColor(theme().spoils).getRgb()[2::-1])
    return np.flatnonzero((abs(pixels - ink) < 40).all(axis=(0, 2))).tolist()


def test_ruler_and_foot_tell_the_place_under_a_mouse_at_rest_while_the_paper_moves(bench):
    QTest.mouseMove(bench.view.viewport(), HERE)
    bench.pump()
    assert ticks(bench) == [HERE.x()]
    for roll in (lambda: wheel(bench, QPoint(0, 240), Qt.KeyboardModifier.ShiftModifier),
                 lambda: bench.key(Qt.Key.Key_Right, Qt.KeyboardModifier.ControlModifier), lambda: bench.view.zoom(1.3)):
        roll()
        assert ticks(bench) == [HERE.x()]
        across = format_length(abs(bench.view.mapToScene(HERE).x()), "mm", 1, mark=False)
        until(lambda across=across: bench.window.foot._where.text().startswith(f"{across} "))
    QTest.mouseMove(bench.view.viewport(), HERE + QPoint(200, 0))
    assert ticks(bench) == [HERE.x() + 200], "none is left behind"


def test_a_window_that_was_put_away_comes_back_with_its_zoom(bench):
    bench.view.zoom(2.3)
    scale, middle = bench.view.pixels_per_mm, bench.view.middle
    bench.window.showMinimized()
    bench.pump()
    bench.window.showNormal()
    bench.pump()
    assert bench.view.pixels_per_mm == scale and bench.view.middle == middle


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_a_layout_of_any_size_is_shown_whole_and_every_place_of_it_can_be_gone_to(bench, unit):
    blank = replace(bench.layout.blank, tip=4800.0, bass=2400.0, treble=2400.0)
    bench.window.set_unit(unit)
    bench.window.document.apply("a huge blank", replace(bench.layout, blank=blank))
    canvas, view = bench.window.canvas, bench.view
    canvas.fit(bench.layout)
    port = view.viewport().rect()
    corners = [(x, y) for x in (-blank.bass, blank.treble) for y in (-blank.behind, blank.tip)]
    assert all(port.contains(bench.pixel(corner)) for corner in corners)
    step, _ = canvas._top._steps()
    assert step * view.pixels_per_mm >= px(APART), "figures stand apart"
    view.zoom(1000.0)
    for corner in corners:
        canvas.go_to(corner)
        assert view.shows(*corner)
    canvas.fit(bench.layout)
    scale = view.pixels_per_mm
    view.zoom(0.5)
    assert view.pixels_per_mm == scale, "it cannot be lost from sight"


def seen(bench: Bench, layer: MarkLayer, turned: bool) -> list[QRectF]:
    """Pixels of the window that the words of a layer take, of those that are turned or of the others."""
    move = bench.view.viewportTransform()
    return [item.deviceTransform(move).mapRect(item.boundingRect()) for items in layer._labels.values() for item in items
            if item.transform().isRotating() == turned]


def test_words_beside_the_head_are_seen_whole_in_a_narrow_window(bench):
    """Their letters do not shrink with the drawing: a tilt of 6.8 degrees read .8 where its first figure was cut off."""
    view = bench.view
    bench.window.canvas.fit(bench.layout)
    for width in (300, 330, 500):
        view.setFixedWidth(width)
        bench.pump()
        boxes = seen(bench, bench.window.canvas._marks, turned=False)
        assert view.viewport().width() == width and len(boxes) > 4
        assert all(box.left() >= 0 and box.right() <= width for box in boxes)


def test_words_behind_the_nut_are_seen_whole_in_a_low_window(bench):
    view = bench.view
    bench.window.canvas.fit(bench.layout)
    for height in (300, 420):
        view.setFixedHeight(height)
        bench.window.set_stage("tuners")
        bench.pump()
        before = view.pixels_per_mm
        bench.window.set_stage("strings")
        bench.pump()
        boxes = seen(bench, bench.window.canvas._more, turned=True)
        assert boxes and view.viewport().height() == height
        assert all(box.top() >= 0 and box.bottom() <= height for box in boxes)
        assert view.viewportTransform().map(QPointF(0.0, bench.layout.blank.tip)).y() >= 0
        bench.window.set_stage("tuners")
        assert view.pixels_per_mm == before


def test_the_drawing_keeps_still_while_the_edge_of_the_blank_is_dragged_among_marks_that_go(bench):
    """The marks of the router go as the drag begins, and the length beside the edge goes with it."""
    view = bench.view
    view.setFixedWidth(500)
    bench.enter("router")
    bench.window.canvas.fit(bench.layout)
    bench.window.document.hold(("blank",))
    bench.pump()
    blank, scale = bench.layout.blank, view.pixels_per_mm
    start, end = (blank.treble, blank.tip - 3.0), (blank.treble + 15.0, blank.tip - 3.0)
    assert bench.window.room.marks()
    bench.press(start)
    bench.move_along(start, end)
    assert bench.window.document.shown.blank.treble > blank.treble + 10 and not bench.window.room.marks()
    assert view.pixels_per_mm == scale
    bench.release(end)
    bench.planned("router")
    assert bench.window.room.marks() and view.pixels_per_mm == scale
