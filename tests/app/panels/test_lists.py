"""Lists that are walked through with keys: whatever key leads to another row shows what stands there."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.look.theme import DAY
from app.panels.change_list import ChangeList, ChangeRow
from app.panels.chance_list import ChanceList
from app.panels.snag_list import SnagList
from geometry.accuracy import simulate
from geometry.checks import check
from tests.geometry.edits.heads import demo

KEYS = [Qt.Key.Key_Down, Qt.Key.Key_PageDown, Qt.Key.Key_End, Qt.Key.Key_Up, Qt.Key.Key_PageUp, Qt.Key.Key_Home]


def snags():
    shown = SnagList(DAY)
    shown.show_snags(check(demo()).snags)
    return shown, shown.chosen


def chances():
    shown = ChanceList(DAY)
    shown.show_simulation(simulate(demo(), 300), "mm")
    return shown, shown.chosen


def changes():
    shown = ChangeList(DAY)
    shown.show_rows(tuple(ChangeRow(i, f"step {i}", "past" if i else "present", False) for i in range(40)))
    return shown, shown.wanted


@pytest.mark.parametrize("made", [snags, chances, changes])
def test_every_key_that_goes_to_a_row_shows_it(qtbot, made):
    shown, told = made()
    qtbot.addWidget(shown)
    shown.resize(300, 200)
    shown.show()
    assert shown.model().rowCount() > 1
    shown.setCurrentIndex(shown.model().index(0))
    seen = []
    told.connect(seen.append)
    for key in KEYS:
        before = len(seen)
        QTest.keyClick(shown, key)
        assert len(seen) == before + 1, key
