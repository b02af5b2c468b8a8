"""Lists that are walked through with keys: whatever key leads to another row shows what stands there."""

import random

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.panels.change_list import ChangeList, ChangeRow
from app.panels.forms.card_list import ROW
from app.panels.snags.chance_list import ChanceList
from app.panels.snags.snag_list import SnagList
from geometry.accuracy import simulate
from geometry.checks import check
from tests.geometry.edits.heads import demo

KEYS = [Qt.Key.Key_Down, Qt.Key.Key_PageDown, Qt.Key.Key_End, Qt.Key.Key_Up, Qt.Key.Key_PageUp, Qt.Key.Key_Home]


def snags():
    shown = SnagList()
    shown.show_snags(check(demo()).snags)
    return shown, shown.chosen


def chances():
    shown = ChanceList()
    shown.show_simulation(simulate(demo(), 300), "mm")
    return shown, shown.chosen


def changes():
    shown = ChangeList()
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


def every_snag(shown):
    return [shown.model().index(row, 0).data(ROW) for row in range(shown.model().rowCount())]


def test_the_snag_in_hand_stays_in_hand_where_another_before_it_is_cured(qtbot):
    shown, _ = snags()
    qtbot.addWidget(shown)
    all_of_them = every_snag(shown)
    shown.setCurrentIndex(shown.model().index(2, 0))
    shown.show_snags(tuple(all_of_them[1:]))
    assert shown.currentIndex().data(ROW) is all_of_them[2]
    assert shown.selectionModel().selectedIndexes() == [shown.currentIndex()]
    shown.show_snags(tuple(all_of_them))
    assert shown.currentIndex().data(ROW) is all_of_them[2]


def test_the_next_snag_is_in_hand_where_the_one_in_hand_is_cured(qtbot):
    shown, _ = snags()
    qtbot.addWidget(shown)
    all_of_them = every_snag(shown)
    shown.setCurrentIndex(shown.model().index(1, 0))
    shown.show_snags((all_of_them[0], *all_of_them[2:]))
    assert shown.currentIndex().data(ROW) is all_of_them[2]


def test_nothing_comes_in_hand_by_itself(qtbot):
    shown, _ = snags()
    qtbot.addWidget(shown)
    shown.show_snags(tuple(every_snag(shown)[1:]))
    assert not shown.currentIndex().isValid()


def test_the_chance_in_hand_stays_in_hand_at_the_next_simulation(qtbot):
    shown, _ = chances()
    qtbot.addWidget(shown)
    row = shown.model().index(1, 0)
    shown.setCurrentIndex(row)
    held = row.data(ROW)
    told = []
    shown.chosen.connect(told.append)
    shown.show_simulation(simulate(demo(), 400), "in")
    now = shown.currentIndex().data(ROW)
    assert (now.kind, now.between) == (held.kind, held.between)
    assert not told, "being shown anew is no choice of the maker"
    shown.show_simulation(None, "in")
    assert not shown.currentIndex().isValid()


def test_what_is_announced_of_a_list_makes_the_new_one_of_the_old(qtbot):
    """Whoever hears of rows that come, go and change has the list as it is, whichever snags are told after which."""
    shown, _ = snags()
    qtbot.addWidget(shown)
    model, every = shown.model(), every_snag(shown)
    heard = list(every)
    model.rowsInserted.connect(lambda _, first, last: heard.__setitem__(
        slice(first, first), [model.index(row, 0).data(ROW) for row in range(first, last + 1)]))
    model.rowsRemoved.connect(lambda _, first, last: heard.__delitem__(slice(first, last + 1)))
    model.dataChanged.connect(lambda first, last, _: heard.__setitem__(first.row(), first.data(ROW)))
    chance = random.Random(4)
    for _ in range(300):
        some = chance.sample(every, chance.randint(0, len(every)))
        shown.show_snags(tuple(some if chance.random() < 0.3 else sorted(some, key=every.index)))
        assert heard == every_snag(shown)


def test_what_stays_at_the_end_of_a_list_is_not_announced(qtbot):
    """A snag that comes before them or goes leaves the notes of a drag alone."""
    shown, _ = snags()
    qtbot.addWidget(shown)
    model, every = shown.model(), tuple(every_snag(shown))
    changed = []
    model.dataChanged.connect(lambda first, last, _: changed.append(first.row()))
    shown.show_snags(every[1:])
    shown.show_snags(every)
    shown.show_snags((every[0], *every[2:]))
    assert changed == []


def test_each_sentence_of_a_chance_begins_a_line_on_its_snag_s_card(qtbot):
    shown, _ = snags()
    qtbot.addWidget(shown)
    card, font = shown.itemDelegate(), shown.font()
    heights = [card._words_in(font, words, 4000).size().height() for words in ("One.", "One.\nTwo.\nThree.", "One. Two. Three.")]
    assert heights[1] > 2.5 * heights[0]
    assert heights[2] == heights[0]
