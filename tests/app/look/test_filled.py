"""A row or column given as one expression: what stands in it, in which order and with which share of the room."""

from PySide6.QtCore import QMargins, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.look.filled import filled


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
