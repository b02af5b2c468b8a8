"""Of several buttons of which one is chosen, Tab stops at that one."""

from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.look.walk import stops
from tests.waiting import on_screen


def test_of_buttons_of_a_group_the_chosen_one_is_a_stop(qtbot):
    window, bar = QWidget(), QWidget()
    qtbot.addWidget(window)
    QVBoxLayout(window).addWidget(bar)
    group, row = QButtonGroup(window), QHBoxLayout(bar)
    for word in ("one", "another", "a third"):
        button = QPushButton(word, checkable=True)
        group.addButton(button)
        row.addWidget(button)
    row.addWidget(QPushButton("of no group"))
    window.show()
    on_screen(window)
    group.buttons()[1].setChecked(True)
    assert [stop.text() for stop in stops(window)] == ["another", "of no group"]
