"""The Order stage by mouse and keys: flip through the build, drag a step, see what that spoils, go back."""

import re
from itertools import pairwise

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.panels.order.order_card import box_of
from app.panels.order.order_list import EDGE
from app.panels.order.order_rows import SetUpRow
from app.sheets.work import plan_work
from app.window.rooms.order_room import OrderRoom
from geometry.book import made_by, task_of, tick_off
from geometry.drawing import Disc
from geometry.layout import Loop, Node
from tests.waiting import press

LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier


@pytest.fixture
def order(bench, qtbot) -> OrderRoom:
    bench.window.set_stage("order")
    room = bench.window.room
    qtbot.waitUntil(lambda: room.work is not None)
    return room


def drag(bench, room: OrderRoom, id: str, above: str, drop: bool = True) -> None:
    """Take hold of a step and carry it above another, scrolling on the way as a hand would."""
    steps = room.panel.list
    room.go_to(id)
    start = steps.row_box(id).center()
    QTest.mousePress(steps.viewport(), LEFT, NONE, start)
    QTest.mouseMove(steps.viewport(), start - QPoint(0, 40))
    for _ in range(400):
        box = steps.row_box(above)
        if EDGE < box.top() < steps.viewport().height() - EDGE - 30:  # where the list does not scroll on by itself
            break
        y = 4 if box.top() <= EDGE else steps.viewport().height() - 4
        QTest.mouseMove(steps.viewport(), QPoint(start.x(), y))
        steps._scroll_on()
    to = QPoint(start.x(), steps.row_box(above).top() + 2)
    QTest.mouseMove(steps.viewport(), to)
    bench.pump()
    if drop:
        QTest.mouseRelease(steps.viewport(), LEFT, NONE, to)
        bench.pump()


def test_the_steps_are_listed_by_set_up_with_counts_and_hours(bench, order):
    assert [row.number for row in order.panel.list.steps] == list(range(1, 56))
    assert "55 steps · 36 holes · 2 pins · 17 set-ups · 3 tilts" in order.panel.counted
    assert "29 changes of machine, bit, table or side: no order needs fewer" in order.panel.counted
    assert "6.6 hours" in order.panel.counted and "0 of 55 done, about 6.6 hours left" in order.panel.counted
    assert not order.panel.back.isEnabled() and order.panel.loud == ""


def test_the_list_stays_under_the_hand_that_sets_the_first_tick(bench, order, qtbot):
    top = order.panel.list.mapTo(bench.window, QPoint(0, 0))
    bench.window.document.record("done", lambda book: tick_off(book, task_of(order.work.steps[0]), 1, made_by(bench.layout, order.work.steps[0])))
    qtbot.waitUntil(lambda: "1 of 55 done" in order.panel.counted)
    bench.pump()
    assert order.panel.list.mapTo(bench.window, QPoint(0, 0)) == top


def test_a_step_stays_under_the_hand_that_ticks_it_though_much_is_told_of_those_above(bench, order, qtbot):
    """The outline cut first: many steps before it say what that costs them. A second press takes the tick back."""
    steps = order.panel.list
    order.go_to("cut outline")
    bar = steps.verticalScrollBar()
    bar.setValue(bar.value() + 150)  # off the lower edge, to which the list would bring it back by itself
    bench.pump()
    assert 0 < steps.row_box("cut outline").top() < steps.viewport().height() - 150
    tick = box_of(QRectF(steps.row_box("cut outline"))).center().toPoint()
    heights = [steps.row_box(row.id).height() for row in steps.steps]
    for done in (1, 0):
        QTest.mouseClick(steps.viewport(), LEFT, NONE, tick)
        qtbot.waitUntil(lambda done=done: f"{done} of 55 done" in order.panel.counted)
        bench.pump()
        grown = sum(steps.row_box(row.id).height() for row in steps.steps) - sum(heights)
        assert (grown > 300) == (done == 1)
        assert box_of(QRectF(steps.row_box("cut outline"))).center().toPoint() == tick


def test_next_morning_the_stage_begins_at_the_first_step_that_is_left(bench, qtbot):
    """Seven steps are done, the third is not, and more than half an hour of the whole is spent with that."""
    plan = plan_work(bench.layout)
    book = bench.layout.book
    for number, op in enumerate(plan.steps[:8], 1):
        book = book if number == 3 else tick_off(book, task_of(op), number, made_by(bench.layout, op))
    bench.window.document.record("done", lambda _: book)
    bench.window.set_stage("order")
    order = bench.window.room
    qtbot.waitUntil(lambda: order.work is not None)
    assert order.at == plan.steps[2].id and order.panel.list.currentIndex().row() > 0
    assert f"7 of 55 done, about {order.work.hours_left:.1f} hours left" in order.panel.counted
    assert order.work.hours_left < order.work.counts.hours.total - 0.5
    order.go_to(plan.steps[1].id)
    bench.window.document.record("done again", lambda book: book)
    assert order.at == plan.steps[1].id
    bench.window.document.replace(bench.layout, None)
    bench.planned("order")
    assert order.at == plan.steps[2].id, "so does a layout that is opened in its place"


def test_words_of_a_set_up_in_further_lines_stand_as_far_from_the_edge_below_as_above(bench, order):
    steps = order.panel.list
    steps.setFixedWidth(190)
    steps.doItemsLayout()  # else some moments after
    bench.pump()
    model, two = steps.model(), False
    for index in (model.index(i, 0) for i in range(4)):
        row = index.data(Qt.ItemDataRole.UserRole)
        if isinstance(row, SetUpRow) and row.rest:
            seen = steps.viewport().grab(steps.visualRect(index)).toImage()
            lines = [y for y in range(12, seen.height() - 4) if any(seen.pixelColor(x, y).lightness() < 170 for x in range(17, seen.width() - 20))]
            assert seen.height() - lines[-1] >= 7, row.rest
            two = True
    assert two


def test_keys_and_slider_turn_the_steps(bench, order):
    picture = order.centre.picture
    picture.setFocus()
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Down):
        QTest.keyClick(picture, key)
    assert order.at == order.work.order.steps[3]
    QTest.keyClick(picture, Qt.Key.Key_Left)
    press(order.centre.next)
    assert order.at == order.work.order.steps[3]
    QTest.keyClick(order.centre.slider, Qt.Key.Key_End)
    assert order.at == "clean up" and not order.centre.next.isEnabled()
    QTest.keyClick(picture, Qt.Key.Key_Home)
    assert order.at == "template" and not order.centre.before.isEnabled()
    QTest.keyClick(order.panel.list, Qt.Key.Key_Down)
    assert order.at == "mark"


def test_a_notch_of_the_wheel_turns_a_step_however_finely_it_is_told(bench, order):
    picture = order.centre.picture
    steps = order.work.order.steps

    def roll(by: int) -> None:
        at = QPointF(picture.rect().center())
        QApplication.sendEvent(picture, QWheelEvent(at, picture.mapToGlobal(at), QPoint(), QPoint(0, by), Qt.MouseButton.NoButton,
                                                    NONE, Qt.ScrollPhase.NoScrollPhase, False))
    for _ in range(15):
        roll(-8)
    assert order.at == steps[1]
    roll(-360)
    assert order.at == steps[4]
    roll(-100)
    for by in (60, 60):  # the other way it begins anew
        roll(by)
    assert order.at == steps[3]


def test_the_picture_shows_what_the_step_takes_and_why_it_stands_there(bench, order):
    steps = order.panel.list
    box = steps.row_box("side bore treble side 1.1.1")
    QTest.mouseClick(steps.viewport(), LEFT, NONE, box.center())
    drawing = order.centre.picture._painting.drawing
    bore = order.work.steps[3].drillings[0]
    (mouth,) = [m for m in drawing if m.style == "removed" and isinstance(m, Disc)]
    assert mouth.radius == bore.radius
    text = order.centre.page.text
    assert "no wood stands behind the wall" in text and "the wall of treble slot" in text
    assert "the square treble edge" in text


def test_a_play_through_goes_on_by_itself_and_stops_at_the_end(bench, order, qtbot):
    order.go_to(order.work.order.steps[-2])
    order.centre._clock.setInterval(5)
    press(order.centre.play)
    qtbot.waitUntil(lambda: not order.centre.play.isChecked())
    assert order.at == order.work.order.steps[-1]


def test_dragging_says_at_once_what_would_be_spoiled_and_esc_puts_back(bench, order):
    before = order.work.order.steps
    drag(bench, order, "cut outline", "side bore bass side 1.1.1", drop=False)
    assert "no square edge left" in order.panel.said
    would = order.panel.list._card.would
    assert would["side bore treble side 1.1.1"][0] == "loud"
    first, last = order.panel.list._span
    assert (first, last) == (before.index("cut outline"), before.index("cut outline"))
    QTest.keyClick(order.panel.list, Qt.Key.Key_Escape)
    assert order.panel.list._held == "" and order.work.order.steps == before
    assert bench.layout.order == () and "spoiled" not in order.panel.said


def test_only_the_button_that_carries_a_step_drops_it(bench, order):
    drag(bench, order, "cut outline", "side bore bass side 1.1.1", drop=False)
    steps = order.panel.list
    QTest.mouseClick(steps.viewport(), Qt.MouseButton.RightButton, NONE, QPoint(40, 40))
    assert steps._held == "cut outline" and bench.layout.order == ()
    steps.give_up()


def test_a_step_in_the_hand_is_put_back_when_the_order_under_it_is_another(bench, order, qtbot):
    """What was carried may be no step of it any more."""
    drag(bench, order, "cut outline", "side bore bass side 1.1.1", drop=False)
    steps, before = order.panel.list, order.work
    bench.window.document.apply("Fewer", replace(bench.layout, tuners=bench.layout.tuners[:-1]))
    qtbot.waitUntil(lambda: order.work is not None and order.work is not before)
    assert steps._held == "" and "made impossible" not in order.panel.said
    QTest.mouseMove(steps.viewport(), QPoint(40, 60))
    QTest.mouseRelease(steps.viewport(), LEFT, NONE, QPoint(40, 60))
    assert bench.layout.order == ()


def test_a_step_is_not_dropped_on_a_stage_that_was_left(bench, order):
    drag(bench, order, "cut outline", "side bore bass side 1.1.1", drop=False)
    bench.window.set_stage("tuners")
    assert order.panel.list._held == ""
    QTest.mouseRelease(order.panel.list.viewport(), LEFT, NONE, QPoint(40, 60))
    assert bench.layout.order == ()


def test_an_illegal_order_is_kept_and_marked_loudly_and_one_undo_takes_it_back(bench, order):
    best = order.work.order.steps
    drag(bench, order, "cut outline", "side bore bass side 1.1.1")
    assert bench.layout.order[2] == "cut outline" and order.work.order.steps[2] == "cut outline"
    loud = {row.id for row in order.panel.list.steps if row.grade == "loud"}
    assert {"side bore bass side 1.1.1", "side bore treble side 3.1.1"} <= loud
    assert "spoiled or unsafe" in order.panel.said
    assert re.search("Its place makes .* impossible: ", order.centre.page.text)
    assert order.panel.back.isEnabled()
    bench.window.commands.run("undo")
    assert bench.layout.order == () and order.work.order.steps == best


def test_alt_and_arrows_move_a_step_and_back_to_the_best_lets_go(bench, order):
    steps = order.panel.list
    order.go_to("counterbore bass face 2.1.1")
    QTest.keyClick(steps, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    own = bench.layout.order
    assert own.index("counterbore bass face 2.1.1") == 10 and order.at == "counterbore bass face 2.1.1"
    assert all(row.grade == "" for row in steps.steps)
    QTest.keyClick(steps, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert bench.layout.order == ()  # the best order again: nothing of the maker's own is left
    QTest.keyClick(steps, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert bench.layout.order
    press(order.panel.back)
    assert bench.layout.order == () and not order.panel.back.isEnabled()


def test_a_new_feature_finds_its_place_in_the_own_order(bench, order, qtbot):
    drag(bench, order, "counterbore bass face 2.1.1", "counterbore bass face 1.1.1")
    kept = bench.layout.order
    bench.window.document.hold(("treble face 3",))
    bench.window.commands.run("remove")
    qtbot.waitUntil(lambda: not any("treble face 3" in id for id in order.work.order.steps))
    assert order.work.order.steps == tuple(id for id in kept if "treble face 3" not in id)
    bench.window.commands.run("undo")
    qtbot.waitUntil(lambda: order.work.order.steps == kept)


def test_rates_are_typed_and_kept_in_the_layout(bench, order, qtbot):
    press(order.panel.tabs.button(1))
    fields = {w.accessibleName(): w for w in order.panel._rates.widgets if w.accessibleName()}
    field = fields["Drill a bore from the side"]
    field.selectAll()
    QTest.keyClicks(field, "0.5 h")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert bench.layout.rates.side_bore == 30.0
    qtbot.waitUntil(lambda: "9.2 hours" in order.panel.counted)  # six bores, 26 min more each
    field.selectAll()
    QTest.keyClicks(field, "soon")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert bench.layout.rates.side_bore == 30.0 and "is not a time" in field.toolTip()
    field.selectAll()
    QTest.keyClicks(field, "101 h")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert bench.layout.rates.side_bore == 30.0 and field.toolTip() == "An operation takes between 0 and 6,000 minutes: 6060 cannot be."
    bench.window.commands.run("undo")
    assert bench.layout.rates.side_bore == 4.0


def test_a_layout_without_a_shape_says_so(bench, order, qtbot):
    flat = Loop(nodes=(Node(at=(0.0, 0.0)), Node(at=(10.0, 10.0))))
    bench.window.document.apply("Flatten", replace(bench.layout, outline=flat))
    qtbot.waitUntil(lambda: "There is no order yet" in order.panel.loud)
    assert order.panel.list.steps == []
    bench.window.commands.run("undo")
    qtbot.waitUntil(lambda: len(order.panel.list.steps) == 55)


def test_a_step_that_cannot_be_done_is_said_plainly(bench, order, qtbot):
    """So is one that was drilled with a thinner drill, and would only have to be gone on with."""
    id = "side bore treble side 3.1.1"
    op = next(op for op in order.work.ops if op.id == id)
    made = made_by(bench.layout, op)
    thin = replace(made, hole=replace(made.hole, diameter=made.hole.diameter - 1.0))
    bench.window.document.record("done", lambda book: tick_off(book, task_of(op), order.work.number[id], thin))
    order.go_to(id)
    assert order.centre.page._words.warnings == () and {row.grade for row in order.panel.list.steps} == {"", "unwise"}
    rack = replace(bench.layout.rack, press=replace(bench.layout.rack.press, tilt=2.0))
    bench.window.document.apply("Another drill press", replace(bench.layout, rack=rack))
    qtbot.waitUntil(lambda: "Cannot be done" in order.panel.loud)
    assert "needs a tilt of 6.8°" in order.panel.loud
    assert {row.id for row in order.panel.list.steps if row.grade == "loud"} >= {id}
    assert order.centre.page._words.warnings[0].startswith("Cannot be done: It needs a tilt of 6.8°")


def test_rows_are_laid_anew_as_soon_as_the_list_is_narrower(bench, order):
    shown = order.panel.list
    before = [shown.row_box(row.id).top() for row in shown.steps]
    shown.resize(shown.width() - 140, shown.height())
    boxes = [shown.visualRect(shown.model().index(i, 0)) for i in range(shown.model().rowCount())]
    assert all(above.bottom() + 1 == below.top() for above, below in pairwise(boxes))
    assert shown.row_box(shown.steps[-1].id).top() - shown.row_box(shown.steps[0].id).top() > before[-1] - before[0]


# ---- what is done -------------------------------------------------------------
def tick(bench, room: OrderRoom, id: str) -> None:
    """Press the box of a step."""
    room.panel.list.pick(id)
    at = box_of(QRectF(room.panel.list.row_box(id))).center().toPoint()
    QTest.mouseClick(room.panel.list.viewport(), LEFT, NONE, at)
    bench.pump()


def test_a_press_on_its_box_ticks_a_step_off_and_another_opens_it_again(bench, order):
    steps = list(order.work.order.steps)
    layouts = len(bench.window.document.history.names)
    for id in steps[:3]:
        tick(bench, order, id)
    assert [row.mark for row in order.panel.list.steps[:4]] == ["done", "done", "done", ""]
    assert [one.number for one in bench.layout.book.done] == [1, 2, 3]
    assert ", done" in order.panel.list.model().data(order.panel.list._index(steps[2]), Qt.ItemDataRole.AccessibleTextRole)
    tick(bench, order, steps[1])
    assert [row.mark for row in order.panel.list.steps[:4]] == ["done", "", "done", ""]
    assert len(bench.window.document.history.names) == layouts, "the job book is no step"
    order.panel.list.setFocus()
    QTest.keyClick(order.panel.list, Qt.Key.Key_Space)
    assert order.panel.list.steps[1].mark == "done" and list(order.work.order.steps) == steps


def test_a_step_that_is_done_keeps_its_number_when_it_is_dragged(bench, order):
    steps = list(order.work.order.steps)
    tick(bench, order, steps[2])
    drag(bench, order, steps[2], steps[8])
    assert list(order.work.order.steps) == steps and bench.layout.order == ()
    assert "keeps its number" in bench.window.foot.said


def test_an_order_around_what_was_done_in_another_is_not_called_the_best(bench, order):
    whose, steps = order.panel._whose, list(order.work.order.steps)
    assert whose.text() == "the best order"
    drag(bench, order, steps[2], steps[8])
    tick(bench, order, steps[2])
    assert whose.text() == "your own order"
    bench.window.commands.run("undo")
    assert order.work.order.steps.index(steps[2]) != 2 and not order.panel.back.isEnabled()
    assert whose.text() == "the best with what is done"


def test_the_boxes_are_of_the_piece_on_the_bench(bench, order):
    tick(bench, order, order.work.order.steps[0])
    bench.window.document.record("x", lambda book: replace(book, piece="real"))
    assert order.panel.list.steps[0].mark == ""


def test_the_piece_is_chosen_over_the_steps(bench, order):
    pieces = order.panel.pieces
    tick(bench, order, order.work.order.steps[0])
    assert pieces.button(0).isChecked() and "on the practice piece" in bench.window.foot.said
    press(pieces.button(1))
    assert bench.layout.book.piece == "real" and order.panel.list.steps[0].mark == ""
    tick(bench, order, order.work.order.steps[0])
    assert [one.piece for one in bench.layout.book.done] == ["practice", "real"] and "on the real piece" in bench.window.foot.said
    bench.window.set_stage("book")
    assert bench.window.room.panel.pieces.button(1).isChecked()
    press(bench.window.room.panel.pieces.button(0))
    bench.window.set_stage("order")
    assert pieces.button(0).isChecked()


def test_what_is_said_of_steps_stands_under_the_steps_alone(bench, order):
    panel = order.panel
    assert panel._says.isVisible() and "Drag a step" in panel.said
    press(panel.tabs.button(1))
    assert panel._rates.isVisible() and not panel._says.isVisible()
    bench.window.resize(1100, 500)
    bench.pump()
    panel.say("A warning about a step.", warn=True)
    bench.pump()
    bar = panel._scroll.verticalScrollBar()
    assert bar.value() == 0 < bar.maximum(), "what nobody sees scrolls nothing"
