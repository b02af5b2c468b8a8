"""Marks on a picture, and the press into a head that is to be traced, without a mouse."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QPixmap
from PySide6.QtTest import QTest

from app.look.theme import DAY
from app.window.tracing.board import Handle, PictureBoard
from tests.waiting import on_screen

KEY = Qt.Key


@pytest.fixture
def board(qtbot):
    picture = QPixmap(400, 300)
    picture.fill(Qt.GlobalColor.white)
    made = PictureBoard(picture, DAY)
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
