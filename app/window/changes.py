"""Wires the list of changes to the document: it follows every step, and a press on one goes there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


class Changes(QObject):
    """Fills the list while it is on show; hidden it costs nothing."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window = window
        window.document.history_changed.connect(self.follow)
        window.document.file_changed.connect(self.follow)
        window.side.change_wanted.connect(self.go)
        window.side.changes_shown.connect(self._shown)

    def show(self) -> None:
        """Bring the list to the front, with the keyboard in it; or put it away again."""
        on = self._window.actions_["changes"].isChecked() or self._window.side.isHidden()  # it was at the front, but not seen
        if on:
            self._window.show_panel(True)
        self._window.side.inside.show_changes(on)
        if on:
            self._window.side.inside.changes.setFocus()
        else:
            self._window.canvas.view.setFocus()

    def go(self, number: int) -> None:
        """Undo or redo up to that step of the list; what the hand was doing is put back first."""
        window, document = self._window, self._window.document
        window.hand.cancel()
        history, before = document.history, document.history.at
        if not document.go(number):
            return
        name = history.names[number - 1] if number else ""
        if not name:
            words = say("Back to the beginning")
        else:
            words = say("Back to: {name}", name=name) if number < before else say("Forward to: {name}", name=name)
        from app.window.drilled_words import drawn_otherwise
        window.say(words + drawn_otherwise(history, before))

    def follow(self) -> None:
        """List the steps as they are now."""
        if not self._window.side.shows_changes:
            return
        document = self._window.document
        history, saved = document.history, set(document.saved_steps)
        first = (say("The beginning") if not history.dropped else
                 say("Earlier changes are kept no longer"))
        from app.panels.change_list import ChangeRow  # here: it is loaded by now

        rows = [ChangeRow(number, words, "present" if number == history.at else "undone" if number > history.at else "past",
                          number in saved)
                for number, words in enumerate([first, *history.names])]
        self._window.side.inside.changes.show_rows(tuple(rows))

    def _shown(self, on: bool) -> None:
        self._window.actions_["changes"].setChecked(on)
        self.follow()
