"""Rows and columns as they are filled."""

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from app.look.filled import filled, keep_room


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
