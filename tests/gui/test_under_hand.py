"""The pointer tells that there is something to take hold of, and a tip what it is."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QCursor
from PySide6.QtWidgets import QToolTip

from tests.waiting import until

ARROW, HAND, CROSS = Qt.CursorShape.ArrowCursor, Qt.CursorShape.PointingHandCursor, Qt.CursorShape.CrossCursor


@pytest.fixture
def under(bench):
    return bench.window.under_hand


def shape(bench):
    return bench.view.viewport().cursor().shape()


def rest(bench, under, at):
    bench.move(at)
    until(lambda: not under._pace.isActive())


def test_the_pointer_is_a_hand_over_what_a_press_would_hold(bench, under):
    rest(bench, under, bench.origin("treble face 2"))
    assert shape(bench) == HAND
    rest(bench, under, (0.0, 120.0))
    assert shape(bench) == ARROW, "bare wood"
    rest(bench, under, (bench.layout.nut.width / 2, 0.0))
    assert shape(bench) == HAND and under._name == "treble end of the nut"


def test_what_it_rests_on_is_told(bench, under, monkeypatch):
    told = []
    monkeypatch.setattr(QToolTip, "showText", lambda at, words, *_: told.append(words))
    monkeypatch.setattr(QCursor, "pos", lambda: bench.view.viewport().mapToGlobal(bench.pixel((0.0, 0.0))))
    monkeypatch.setattr(bench.window, "isActiveWindow", lambda: True)
    rest(bench, under, bench.origin("treble face 2"))
    until(lambda: not under._rest.isActive())
    assert told == ["treble face 2"]


def test_other_tools_and_a_drag_keep_their_own(bench, under):
    bench.window.set_tool("measure")
    bench.move(bench.origin("treble face 2"))
    assert not under._pace.isActive() and shape(bench) == CROSS
    bench.window.set_tool("hold")
    x, y = bench.origin("treble face 2")
    bench.press((x, y))
    bench.move((x, y + 4))
    assert not under._pace.isActive()
    bench.release((x, y + 4))
