"""What is said at the pointer while the hand works, and values typed one after another."""

import math

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtTest import QTest

from app.canvas.tag import Tag
from geometry.edits import move_tuner, plan_point
from geometry.layout import loop_path
from tests.gui.bench import Bench


def test_dimensions_and_snaps_stand_at_the_pointer_while_dragging(bench):
    tag = bench.window.canvas.tag
    start = bench.origin("treble face 2")
    bench.press(start)
    assert not tag.said, "only taken hold of: nothing flashes"
    bench.move_along(start, (start[0], start[1] + 5))
    said = tag.said
    assert any("from the nut line" in line for line in said.lines)
    assert said.snapped
    assert (tag.pos().x(), tag.pos().y()) == pytest.approx((start[0], start[1] + 5), abs=0.5)
    labels = [item.text() for item in bench.window.canvas._guides._labels["guides"]]
    shown = bench.window.document.shown
    pitch = math.dist(plan_point(shown, "treble face 2"), plan_point(shown, "treble face 1"))
    assert f"{pitch:.1f} mm" in labels, labels
    bench.key(Qt.Key.Key_Escape)
    assert not tag.said
    bench.release(start)


def test_tab_leads_from_value_to_value_and_enter_takes_them(bench):
    bench.window.set_tool("hole")
    bench.move((-20.0, 100.0))
    tag = bench.window.canvas.tag
    bench.text("18")
    assert tag.said.entries == (("to the bass", "18", True), ("from the nut line", "", False))
    bench.key(Qt.Key.Key_Tab)
    assert bench.view.hasFocus()
    bench.text('4 1/2" + 1 mm')
    assert tag.said.entries[1] == ("from the nut line", '4 1/2" + 1 mm', True)
    bench.key(Qt.Key.Key_Return)
    assert bench.layout.holes[-1].at == pytest.approx((-18.0, 115.3))
    bench.window.keyboard.escape()
    bench.key(Qt.Key.Key_Tab)
    assert not bench.view.hasFocus(), "with nothing to type Tab goes to the next widget"


def test_a_line_drawn_says_where_it_meets_an_edge_square(bench):
    bench.window.set_stage("slots")
    bench.window.set_tool("draw slot")
    tag = bench.window.canvas.tag
    bench.click((10.0, 75.0))
    bench.move(loop_path(bench.layout.outline).nearest((10.0, 75.0)).point)
    assert tag.said.snapped == "square to the outline"
    bench.key(Qt.Key.Key_Escape)
    bench.window.set_stage("outline")
    bench.window.set_tool("draw outline")
    bench.click((90.0, 100.0))
    bench.move((95.0, 120.0))
    bench.text("30")
    bench.key(Qt.Key.Key_Tab)
    bench.text("70")
    bench.key(Qt.Key.Key_Return)
    turn, last = math.radians(70), (90 + 30 * math.cos(math.radians(70)), 100 + 30 * math.sin(math.radians(70)))
    bench.move((last[0] - 13 * math.sin(turn), last[1] + 13 * math.cos(turn)))
    assert tag.said.snapped == "square to the edge before"
    bench.window.keyboard.escape()


def test_the_card_stays_in_the_view(qtbot, tmp_path):
    bench = Bench(qtbot, tmp_path)
    bench.window.actions_["lamp"].trigger()
    bench.window.set_tool("hole")
    port = bench.view.viewport().rect()
    for corner in (port.topLeft() + QPoint(3, 3), port.topRight() - QPoint(3, -3), port.bottomRight() - QPoint(3, 3)):
        QTest.mouseMove(bench.view.viewport(), corner)
        bench.pump()
        tag = bench.window.canvas.tag
        box = tag.boundingRect().translated(bench.view.mapFromScene(tag.pos()).toPointF()).toRect()
        assert port.adjusted(-3, -3, 3, 3).contains(box), (corner, box)


def within(bench: Bench) -> bool:
    """Whether all of the card lies in the view."""
    tag, port = bench.window.canvas.tag, bench.view.viewport().rect()
    box = tag.boundingRect().translated(bench.view.mapFromScene(tag.pos()).toPointF()).toRect()
    return port.adjusted(-3, -3, 3, 3).contains(box)


def test_the_card_stays_in_the_view_while_the_hand_drags_beyond_it(bench):
    port, left = bench.view.viewport(), Qt.MouseButton.LeftButton
    start = bench.pixel(bench.origin("treble face 2"))
    QTest.mousePress(port, left, pos=start)
    for at in (QPoint(-60, 300), QPoint(300, -60), QPoint(port.width() + 60, 300), QPoint(300, port.height() + 60)):
        QTest.mouseMove(port, at)
        bench.pump()
        assert bench.window.canvas.tag.said and within(bench), at
    bench.key(Qt.Key.Key_Escape)
    QTest.mouseRelease(port, left, pos=start)


def test_a_sentence_that_fits_on_neither_side_of_the_pointer_stays_in_the_view(bench):
    bench.window.resize(700, 700)
    bench.pump()
    port = bench.view.viewport()
    long = Tag((" ".join(["a sentence that goes on and on"] * 3),))
    for x in range(0, port.width(), 20):
        bench.window.canvas.tag.show_at(bench.view.mapToScene(QPoint(x, 200)).toTuple(), long)
        assert within(bench), x
    bench.window.canvas.tag.show_at(None, Tag())


def test_the_card_gives_way_where_it_would_cover_the_sign_of_a_snag(bench):
    canvas, at = bench.window.canvas, (0.0, 90.0)
    tag, taken = canvas.tag, []
    canvas.tag._seen = lambda: taken
    said = Tag(("12 mm", "40 mm"), "grid 1 mm")
    tag.show_at(at, said)
    usual = tag.boundingRect()
    assert usual.left() > 0 < usual.top()
    x, y = at[0] * bench.view.pixels_per_mm + usual.left(), -at[1] * bench.view.pixels_per_mm + usual.top()
    taken.append((x + 5, x + 9, y + 5, y + 9))
    tag.show_at(at, said)
    other = tag.boundingRect()
    assert other.left() > usual.left() + 9 or other.top() > usual.top() + 9 or not other.intersects(usual)
    taken[:] = [(-9000.0, 9000.0, -9000.0, 9000.0)]
    tag.show_at(at, said)
    assert tag.boundingRect() == usual, "no place is better: it stands at the pointer"
    tag.show_at(None, Tag())
    taken.clear()
    tag.show_at(at, said)
    assert tag.boundingRect() == usual


@pytest.mark.parametrize("feature", ["treble face 2", "treble side 2", "bass side 1"])
def test_the_card_covers_nothing_of_what_is_dragged_nor_of_its_neighbours(bench, feature):
    canvas, start = bench.window.canvas, bench.origin(feature)
    bench.press(start)
    stood = []
    for i in range(4, 28):  # the first is far enough to be no click at any scale
        bench.move((start[0] + 0.3 * i, start[1] - 1.1 * i))
        assert canvas.tag.said
        corner = bench.view.mapFromScene(canvas.tag.pos())
        box = canvas.tag._box.translated(corner.x(), corner.y())
        k, (x, y) = bench.view.pixels_per_mm, bench.view.mapFromScene(QPointF(0, 0)).toTuple()
        for left, right, low, high in canvas._marks.reach((feature,)):
            assert not box.intersects(QRectF(QPointF(x + left * k, y - high * k), QPointF(x + right * k, y - low * k))), i
        stood.append(box.topLeft() - QPointF(*bench.view.mapFromScene(canvas.tag.pos()).toTuple()))
    assert len(set(map(QPointF.toTuple, stood))) < 12, "it does not hop about"
    bench.key(Qt.Key.Key_Escape)


def test_what_rings_and_cards_cover_is_told_with_each_zoom(bench):
    bench.window.document.apply("Set", move_tuner(bench.layout, "treble face 2", plan_point(bench.layout, "treble face 1")))
    canvas = bench.window.canvas
    snag = next(one for one in bench.window.document.result.snags if one.grade == "spoils the work")
    for factor in (1.0, 2.0):
        bench.view.zoom(factor)
        x, y = (snag.where[0] * bench.view.pixels_per_mm, -snag.where[1] * bench.view.pixels_per_mm)
        assert any(left < x < right and top < y < bottom for left, right, top, bottom in canvas._snags.covered)
        cards = [item for item in canvas._snags._items if not item._box.isEmpty()]
        assert cards and len(canvas._snags.covered) == len(canvas._snags._items) + len(cards)


@pytest.mark.parametrize("tool", ["measure", "section"])
def test_what_takes_no_values_lets_none_be_typed(bench, tool):
    bench.window.set_tool(tool)
    bench.move((-20.0, 100.0))
    bench.press((-20.0, 100.0))
    bench.move((10.0, 110.0))
    bench.text("7")
    assert not bench.window.hand.entries and "Typed" not in bench.window.foot.said
    bench.release((10.0, 110.0))


def test_the_card_keeps_clear_of_the_dimension_that_is_measured(bench):
    window, one = bench.window, bench.origin("treble face 1")
    window.set_tool("measure")
    bench.click(one)
    for dx, dy in ((8.0, -8.0), (8.0, 8.0), (-8.0, 8.0), (-8.0, -8.0)):
        bench.move((one[0] + dx, one[1] + dy))
        words = next(item for item in window.canvas._guides._labels["guides"] if item.isVisible())
        port = bench.view.viewportTransform()
        card, label = (item.deviceTransform(port).mapRect(item.boundingRect()) for item in (window.canvas.tag, words))
        assert not card.adjusted(3, 3, -3, -3).intersects(label), (dx, dy)
