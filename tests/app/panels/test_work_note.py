"""A note over a part of the window: it comes late, goes gently and moves nothing of what it lies over."""

import pytest
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from app.panels.forms.work_note import EDGE, WorkNote
from tests.waiting import until

LATER = 10**8
"""Milliseconds: no test waits so long."""


@pytest.fixture
def host(qtbot):
    host = QWidget()
    qtbot.addWidget(host)
    column = QVBoxLayout(host)
    column.addWidget(QLabel("what is on show", host))
    host.resize(400, 300)
    host.show()
    until(host.isVisible)
    return host


@pytest.fixture
def note(host):
    return WorkNote(host)


def test_what_is_done_soon_is_never_told_of(note):
    note._appears.setInterval(LATER)
    note.working("It is being worked out.", str)
    assert note.isHidden() and note._appears.isActive()
    note.done("It is done.")
    assert note.isHidden() and not note._appears.isActive() and not note._pace.isActive()


def test_work_begun_anew_again_and_again_is_told_of_no_later_for_that(note):
    note._appears.setInterval(LATER)
    note.working("It is being worked out.", str)
    before = note._appears.remainingTime()
    note.working("It is being worked out anew.", str)
    assert note._appears.remainingTime() <= before
    note._appears.setInterval(0)
    until(note.isVisible)
    assert note.words.text() == "It is being worked out anew."


def test_it_says_how_far_the_work_is_and_stays_a_moment_when_it_is_done(note):
    note._appears.setInterval(0)
    far = iter(range(10**6))
    note.working("It is being worked out.", lambda: f"{next(far)} of many")
    until(lambda: note.isVisible() and int(note.at.text().split()[0]) > 2)
    note._stays.setInterval(LATER)
    note.done("It is done.")
    assert note.isVisible() and note.words.text() == "It is done." and note.at.text() == "" and not note.button.isVisible()
    assert note.height() < 2 * note.words.height() + EDGE, "no line is kept for nothing"
    note.done("It is done.")
    assert note._stays.isActive(), "told twice that it is done it does not stay for good"
    note.working("Another one is being worked out.", str)
    assert note.isVisible() and note.button.isVisible() and note.words.text() == "Another one is being worked out."
    note.none()
    assert note.isHidden() and not note._pace.isActive()


def test_what_was_stopped_is_said_at_once_and_its_button_asks_for_the_work(note, qtbot):
    note.working("It is being worked out.", str)
    note.halted("Stopped.", "Work it out")
    assert note.isVisible() and note.button.text() == "Work it out" and not note._appears.isActive()
    with qtbot.waitSignal(note.wanted):
        note.button.click()
    note.working("It is being worked out.", str)
    with qtbot.waitSignal(note.stopped):
        note.button.click()


def test_it_lies_over_the_lower_edge_and_moves_nothing(host, note):
    label = host.layout().itemAt(0).widget()
    before = label.geometry()
    note.halted("Stopped: " + "many words " * 12, "Work it out")
    assert label.geometry() == before
    for width, height in ((400, 300), (260, 200), (1200, 400)):
        host.resize(width, height)
        until(lambda height=height: note.geometry().bottom() == height - EDGE - 1)
        assert abs(note.geometry().center().x() - host.rect().center().x()) <= 1
        assert note.words.height() >= note.words.heightForWidth(note.words.width())


def test_it_may_lie_over_a_part_of_its_host(host):
    label = host.layout().itemAt(0).widget()
    note = WorkNote(host, label)
    host.layout().addWidget(QLabel("below", host))
    note.halted("Stopped.", "Work it out")
    until(lambda: note.geometry().bottom() == label.geometry().bottom() - EDGE)


def test_over_a_narrow_part_it_goes_beyond_that_and_stays_in_its_host(host):
    narrow = QWidget(host)
    narrow.setGeometry(300, 0, 100, 300)
    note = WorkNote(host, narrow)
    note.halted("Stopped.", "Work it out")
    assert host.rect().contains(note.geometry()) and note.width() > narrow.width()
    assert note.button.width() >= note.button.sizeHint().width()


def test_it_asks_where_the_keyboard_goes_before_it_leaves(host, note, qtbot):
    note.halted("Stopped.", "Work it out")
    host.activateWindow()
    note.button.setFocus()
    until(note.button.hasFocus)
    with qtbot.waitSignal(note.put_away):
        note.none()
    assert note.isHidden()
