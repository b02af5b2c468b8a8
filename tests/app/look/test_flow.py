"""Rows that go on below: they keep what they hold, whoever looks through the window's parts."""

import gc

from PySide6.QtWidgets import QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from app.look.flow import Flow
from app.look.walk import stops
from tests.waiting import on_screen


def _page(qtbot) -> tuple[QScrollArea, Flow, list[QPushButton]]:
    """A row in a column on a page that scrolls: the viewport between them is the toolkit's own."""
    area, page = QScrollArea(), QWidget()
    qtbot.addWidget(area)
    area.setWidget(page)
    area.setWidgetResizable(True)
    column, row = QVBoxLayout(page), Flow()
    buttons = [QPushButton(word, page) for word in ("Take it", "Leave it")]
    for button in buttons:
        row.addWidget(button)
    column.addLayout(row)
    column.addStretch(1)
    area.resize(300, 200)
    return area, row, buttons


def test_a_row_keeps_its_buttons_when_tab_walks_through_the_window(qtbot) -> None:
    area, row, (take, leave) = _page(qtbot)
    area.show()
    on_screen(area)
    for _ in range(3):
        assert [button.text() for button in stops(area)] == ["Take it", "Leave it"]
        gc.collect()
    assert row.heightForWidth(300) == take.sizeHint().height()
    area.resize(leave.sizeHint().width() + 40, 300)
    qtbot.waitUntil(lambda: leave.y() > take.y())
    assert leave.x() == take.x(), "one below the other where there is no room for two"


def test_what_a_row_holds_comes_out_of_it_again(qtbot) -> None:
    area, row, (take, leave) = _page(qtbot)
    assert row.count() == 2 and row.itemAt(1).widget() is leave and row.itemAt(2) is None
    third = QPushButton("Third", area)
    row.insert_widget(0, third)
    assert [row.takeAt(0).widget() for _ in range(3)] == [third, take, leave] and row.takeAt(0) is None


def test_a_gap_parts_what_stands_before_it_from_what_follows(qtbot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    row = Flow(page, (18, 0, 0, 0))
    first, second = QPushButton("First", page), QPushButton("Second", page)
    row.addWidget(first)
    row.add_gap(10)
    row.addWidget(second)
    page.resize(300, 40)
    page.show()
    assert first.x() == 18 and second.x() == 18 + first.width() + row.spacing() + 10 + row.spacing()
    first.hide()
    row.activate()
    assert second.x() == 18, "before it stands nothing: what follows begins where every row does"


def test_a_gap_that_nothing_stands_before_shortens_no_name(qtbot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    row = Flow(page)
    hidden, name, last = QPushButton("First", page), QLabel("a rather long name", page), QPushButton("Last", page)
    name.setMinimumWidth(20)
    row.addWidget(hidden)
    row.add_gap(10)
    row.addWidget(name, gives_way=True)
    row.addWidget(last)
    hidden.hide()
    whole = name.sizeHint().width() + row.spacing() + last.sizeHint().width()
    assert row.sizeHint().width() == whole
    page.show()
    for lacking in (0, 5):
        page.resize(whole - lacking, 40)
        row.activate()
        assert name.width() == name.sizeHint().width() - lacking and last.y() < name.height()
