"""Marks on a picture, and the press into a head that is to be traced: by keys, and with buttons in an unexpected order."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent, QPixmap
from PySide6.QtTest import QTest

from app.window.tracing.board import Handle, PictureBoard
from tests.waiting import on_screen

KEY = Qt.Key


@pytest.fixture
def board(qtbot):
    picture = QPixmap(400, 300)
    picture.fill(Qt.GlobalColor.white)
    made = PictureBoard(picture)
    qtbot.addWidget(made)
    made.show()
    on_screen(made)
    return made


def test_enter_presses_where_the_arrow_keys_led(board):
    pressed = []
    board.pressed.connect(pressed.append)
    QTest.keyClick(board, KEY.Key_Right)
    QTest.keyClick(board, KEY.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(board, KEY.Key_Left, Qt.KeyboardModifier.AltModifier)
    QTest.keyClick(board, KEY.Key_Return)
    assert pressed == [(209.0, 50.0)]
    assert board.accessibleDescription() == "The pen: 209 points from the left, 50 from the top. Enter presses."


def test_the_pen_stays_on_the_picture(board):
    for _ in range(9):
        QTest.keyClick(board, KEY.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert board._pen == (0.0, 150.0)


def test_marks_are_taken_and_moved_one_after_the_other_and_told(board):
    board.show_handles([Handle("a", "First end", (10, 20), "size"), Handle("b", "Second end", (90, 20), "size")])
    moved = []
    board.moved.connect(lambda key, at: moved.append((key, at)))
    QTest.keyClick(board, KEY.Key_PageDown)
    QTest.keyClick(board, KEY.Key_Down)
    assert moved[-1][0] == "b" and moved[-1][1] == pytest.approx((90, 21))
    assert board.accessibleDescription() == "Second end: 90 points from the left, 21 from the top."


def test_plus_and_minus_come_closer_and_step_back(board):
    before = board._transform().m11()
    QTest.keyClick(board, KEY.Key_Plus)
    assert board._transform().m11() == pytest.approx(1.25 * before)
    QTest.keyClick(board, KEY.Key_Minus)
    assert board._transform().m11() == pytest.approx(before)


def two_marks(board) -> list:
    """Two marks, and what is told of them."""
    board.show_handles([Handle("a", "A", (100.0, 100.0), "size"), Handle("b", "B", (300.0, 200.0), "size")])
    told = []
    board.moved.connect(lambda key, at: told.append((key, at)))
    board.let_go.connect(lambda key, strays: told.append(("let go", key)))
    return told


def at(board, x: float, y: float):
    return board.pixel((x, y)).toPoint()


@pytest.mark.parametrize("other", [Qt.MouseButton.RightButton, Qt.MouseButton.MiddleButton])
def test_another_button_in_the_middle_of_a_drag_does_not_end_it(board, other):
    told = two_marks(board)
    QTest.mousePress(board, Qt.MouseButton.LeftButton, pos=at(board, 100, 100))
    QTest.mousePress(board, other, pos=at(board, 100, 100))
    QTest.mouseRelease(board, other, pos=at(board, 100, 100))
    assert told == []
    QTest.mouseMove(board, at(board, 120, 100))
    assert told[-1][0] == "a" and told[-1][1] == pytest.approx((120, 100), abs=1.5)
    QTest.mouseRelease(board, Qt.MouseButton.LeftButton, pos=at(board, 120, 100))
    assert told[-1] == ("let go", "a")


def test_the_picture_is_shoved_until_the_button_is_let_go_that_began_it(board):
    told, before = two_marks(board), board.pixel((0.0, 0.0))
    QTest.mousePress(board, Qt.MouseButton.MiddleButton, pos=at(board, 200, 150))
    start = at(board, 200, 150)
    QTest.mousePress(board, Qt.MouseButton.LeftButton, pos=at(board, 100, 100))
    QTest.mouseRelease(board, Qt.MouseButton.LeftButton, pos=at(board, 100, 100))
    QTest.mouseMove(board, start + QPoint(30, 20))
    QTest.mouseRelease(board, Qt.MouseButton.MiddleButton, pos=start + QPoint(30, 20))
    assert board.pixel((0.0, 0.0)) - before == QPointF(30, 20) and told == []


def test_esc_in_a_drag_puts_the_mark_back_and_closes_nothing(board):
    told = two_marks(board)
    QTest.mousePress(board, Qt.MouseButton.LeftButton, pos=at(board, 100, 100))
    QTest.mouseMove(board, at(board, 150, 120))
    esc = QKeyEvent(QKeyEvent.Type.KeyPress, KEY.Key_Escape, Qt.KeyboardModifier.NoModifier)
    board.keyPressEvent(esc)
    assert esc.isAccepted() and told[-1] == ("a", (100.0, 100.0))
    QTest.mouseMove(board, at(board, 180, 120))
    QTest.mouseRelease(board, Qt.MouseButton.LeftButton, pos=at(board, 180, 120))
    assert told[-1] == ("a", (100.0, 100.0))


def test_marks_that_are_taken_away_in_the_middle_of_a_drag_are_not_in_hand(board):
    two_marks(board)
    QTest.mousePress(board, Qt.MouseButton.LeftButton, pos=at(board, 100, 100))
    board.show_handles([Handle("1", "1", (50.0, 50.0), "sheet")])
    QTest.mouseMove(board, at(board, 150, 120))
    board.grab()
    QTest.mouseRelease(board, Qt.MouseButton.LeftButton, pos=at(board, 150, 120))
    assert board._handles["1"].at == (50.0, 50.0)


def test_the_tip_tells_of_what_can_be_done(board):
    assert "mark" not in board.toolTip() and "pen" in board.toolTip()
    two_marks(board)
    assert "mark" in board.toolTip() and "pen" not in board.toolTip()
