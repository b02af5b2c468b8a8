"""Alt and a letter press a button of a dialog: each gets one that is free, out of its own words, in whatever language they are."""

from __future__ import annotations

import re

from PySide6.QtWidgets import QAbstractButton, QWidget

from app.look.descendants import below

MARKED = re.compile(r"&([^&\s])")
"""A letter that is marked already. Two signs beside each other are one to be read."""


def give_letters(dialog: QWidget) -> None:
    """Mark a letter in the words of each button that has none marked: the first of a word rather than one amid it.

    A button of which all letters are taken goes without.
    """
    buttons = [button for button in below(dialog, QAbstractButton) if button.text()]
    taken = {found[1].lower() for button in buttons if (found := _marked(button.text()))}
    for button in buttons:
        text = button.text()
        if _marked(text):
            continue
        at = next((i for i in _places(text) if text[i].lower() not in taken), None)
        if at is not None:
            taken.add(text[at].lower())
            button.setText(f"{text[:at]}&{text[at:]}")


def _marked(text: str) -> re.Match[str] | None:
    return MARKED.search(text.replace("&&", "  "))


def _places(text: str) -> list[int]:
    """Where letters of a text stand, those that begin a word first."""
    letters = [i for i, sign in enumerate(text) if sign.isalpha()]
    return sorted(letters, key=lambda i: i > 0 and text[i - 1].isalnum())
