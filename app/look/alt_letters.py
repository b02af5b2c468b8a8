"""Alt and a letter press a button of a dialog or lead into the field beside a label: each gets one that is free, out of its own words,
in whatever language they are."""

from __future__ import annotations

import re

from PySide6.QtWidgets import QAbstractButton, QLabel, QWidget

from app.look.descendants import below
from app.look.wrapping import Wrapping

MARKED = re.compile(r"&([^&\s])")
"""A letter that is marked already. Two signs beside each other are one to be read."""


class Lead(QLabel):
    """The words of a field: Alt and their letter lead into it."""

    def __init__(self, words: str, field: QWidget) -> None:
        super().__init__(words)
        self.setBuddy(field)


def give_letters(dialog: QWidget) -> None:
    """Mark a letter in the words of each button, then of each label of a field, that has none marked: the first of a word rather
    than one amid it.

    One of which all letters are taken goes without.
    """
    lettered: list[QAbstractButton | QLabel] = [button for button in below(dialog, QAbstractButton) if button.text()]
    lettered += below(dialog, Lead)
    taken = {found[1].lower() for one in lettered if (found := _marked(_words(one)))}
    for one in lettered:
        text = _words(one)
        if _marked(text):
            continue
        at = next((i for i in _places(text) if text[i].lower() not in taken), None)
        if at is not None:
            taken.add(text[at].lower())
            (one.set_words if isinstance(one, Wrapping) else one.setText)(f"{text[:at]}&{text[at:]}")


def _words(one: QAbstractButton | QLabel) -> str:
    """What is written on it, in one row."""
    return one.words if isinstance(one, Wrapping) else one.text()


def _marked(text: str) -> re.Match[str] | None:
    return MARKED.search(text.replace("&&", "  "))


def _places(text: str) -> list[int]:
    """Where letters of a text stand, those that begin a word first."""
    letters = [i for i, sign in enumerate(text) if sign.isalpha()]
    return sorted(letters, key=lambda i: i > 0 and text[i - 1].isalnum())
