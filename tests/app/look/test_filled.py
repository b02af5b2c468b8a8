"""A row or column given as one expression: what stands in it, in which order and with which share of the room."""

from PySide6.QtCore import QMargins, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from app.look.filled import filled, keep_room


def test_parts_stand_in_their_order_with_their_shares(qtbot):
    page = QWidget()
    qtbot.addWidget(page)
    one, two, three = QLabel(), QLabel(), QLabel()
    row = QHBoxLayout()
    column = filled(QVBoxLayout(page), one, (two, 3, Qt.AlignmentFlag.AlignLeft), 2, (filled(row, three), 1), margins=(1, 2, 3, 4), gap=5)
    assert page.layout() is column
    stands = [column.itemAt(i) for i in range(column.count())]
    assert [item.widget() for item in stands] == [one, two, None, None]
    assert stands[1].alignment() == Qt.AlignmentFlag.AlignLeft and stands[3].layout() is row and three.parentWidget() is page
    assert [column.stretch(i) for i in range(4)] == [0, 3, 2, 1]
    assert (column.contentsMargins(), column.spacing()) == (QMargins(1, 2, 3, 4), 5)


def test_without_margins_and_gap_they_are_those_of_the_style(qtbot):
    page = QWidget()
    qtbot.addWidget(page)
    plain = QVBoxLayout()
    usual = (plain.contentsMargins(), plain.spacing())
    filled(plain, QLabel(page))
    assert (plain.contentsMargins(), plain.spacing()) == usual


def test_what_is_beside_a_part_that_keeps_its_room_does_not_move_as_that_is_hidden(qtbot):
    row = QWidget()
    qtbot.addWidget(row)
    kept, gives, last = (QPushButton(word, row) for word in ("kept", "gives way", "last"))
    layout = filled(QHBoxLayout(row), keep_room(kept), gives, last, 1)
    row.resize(600, 40)
    row.show()

    def left() -> int:
        layout.activate()
        return last.x()

    before = left()
    kept.hide()
    assert left() == before
    gives.hide()
    assert left() < before
