"""Every action can be reached by keys: a letter of its own in its menu, no key twice, and a sentence on what it does."""

from collections import Counter

import pytest
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu

MOST_FREE = ("recent",)
"""Menus whose entries are names of files."""


def menus(bench) -> list[QMenu]:
    tops = [action.menu() for action in bench.window.menuBar().actions()]
    return tops + [action.menu() for menu in tops for action in menu.actions() if action.menu() is not None]


def letter(action: QAction) -> str:
    word = action.text().replace("&&", "")
    return word[word.index("&") + 1].casefold() if "&" in word else ""


def test_every_entry_has_a_letter_of_its_own_or_a_number(bench):
    for menu in menus(bench):
        entries = [action for action in menu.actions() if not action.isSeparator()]
        if menu in [bench.window.actions_[key].menu() for key in MOST_FREE]:
            continue
        letters = Counter(letter(action) for action in entries)
        twice = [(key, [a.text() for a in entries if letter(a) == key]) for key, n in letters.items() if key and n > 1]
        assert not twice, (menu.title(), twice)
        without = [a.text() for a in entries if not letter(a) and not a.shortcuts() and not a.text()[:1].isdigit()]
        assert without == [] or menu is bench.window.actions_["language"].menu(), (menu.title(), without)


def test_the_menus_have_letters_of_their_own(bench):
    letters = [letter(action) for action in bench.window.menuBar().actions()]
    assert len(set(letters)) == len(letters) and "" not in letters


def test_no_key_does_two_things(bench):
    keys = Counter(key.toString() for action in bench.window.actions_.values() for key in action.shortcuts())
    keys.update(["Esc", *(f"Alt+{n}" for n in range(1, 10))])
    assert [key for key, n in keys.items() if n > 1] == []


def test_every_action_says_what_it_does(bench):
    silent = [a.text() for key, a in bench.window.actions_.items() if a.menu() is None and not a.statusTip()]
    assert silent == []


@pytest.mark.parametrize("grow, shrink, of", [("panel wider", "panel narrower", "splitter"), ("lists taller", "lists lower", "side")])
def test_borders_are_moved_by_keys(bench, grow, shrink, of):
    splitter = bench.window.splitter if of == "splitter" else bench.window.side.inside
    before = splitter.sizes()
    bench.window.actions_[grow].trigger()
    assert splitter.sizes()[1] == before[1] + 40
    bench.window.actions_[shrink].trigger()
    assert splitter.sizes() == before


def test_keys_of_the_menus_are_valid(bench):
    for action in bench.window.actions_.values():
        for key in action.shortcuts():
            assert key.count() == 1 and QKeySequence(key.toString()) == key
