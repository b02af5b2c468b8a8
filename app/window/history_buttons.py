"""Undo, redo and the list of changes as three small signs at the right end of the menu bar, and the sign of the menus it has no room for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QHBoxLayout, QToolButton, QWidget

from app.look.descendants import below
from app.look.icons import button_icon
from app.look.plain import plain, short
from app.look.sizes import px
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

KEYS = ("undo", "redo", "changes")
FOUND, ACCURACY_TAKEN = say("Minutes found by the job book"), say("Take the readings into the shop accuracy")
MADE_AT_BOOK = (FOUND, ACCURACY_TAKEN)
"""The steps of the layout that are made on the Job book stage, and seen there."""


def unseen(window: Frame, name: str | None) -> bool:
    """Whether a step of that name changes what is not on show: the Job book stage shows nothing of the drawing, and whoever takes
    something back there means what was written into the book."""
    return window.stage == "book" and name is not None and name not in MADE_AT_BOOK


class HistoryButtons(QWidget):
    """They do what the actions of the menu do, and follow them."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window.menuBar())
        self._window = window
        self._actions = {key: window.actions_[key] for key in KEYS}
        self.buttons: dict[str, QToolButton] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 2, 14, 0)
        row.setSpacing(4)
        for key, action in self._actions.items():
            button = QToolButton(self, objectName="tiny", focusPolicy=Qt.FocusPolicy.TabFocus, checkable=action.isCheckable(),
                                 icon=button_icon(key), clicked=action.trigger)
            action.changed.connect(self.follow)
            self.buttons[key] = button
            row.addWidget(button)
        window.hand.shown.connect(self._follow_hand)
        window.hand.typed.connect(self._follow_hand)
        self.follow()
        window.menuBar().setCornerWidget(self, Qt.Corner.TopRightCorner)
        self.more.setIcon(button_icon("more menus"))  # the toolkit's own is dark whatever it stands on
        self.more.setToolTip(say("More menus"))
        self.more.setAccessibleName(say("More menus"))
        self.follow_sizes()

    def name_steps(self) -> None:
        """Tell in the menu which step can be taken back or again; not of what is unseen, for there it is only told where it can be."""
        history = self._window.document.history
        for key, word, name in (("undo", say("&Undo"), history.undo_name), ("redo", say("&Redo"), history.redo_name)):
            self._actions[key].setEnabled(name is not None or key == "undo" and self._window.hand.begun)
            named = name is not None and not unseen(self._window, name)
            self._actions[key].setText(f"{word}: {short(name).replace('&', '&&')}" if named else word)

    def _follow_hand(self) -> None:
        """What was begun can be put back, though there may be no step yet."""
        self._actions["undo"].setEnabled(self._window.hand.begun or self._window.document.history.undo_name is not None)

    def follow(self) -> None:
        """Take over what can be done, and what it is called."""
        for key, action in self._actions.items():
            button = self.buttons[key]
            words = "&".join(part.replace("&", "") for part in action.text().split("&&"))
            keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            button.setEnabled(action.isEnabled())
            button.setChecked(action.isChecked())
            button.setAccessibleName(words)
            button.setToolTip(plain(f"{words} ({keys})"))

    def follow_sizes(self) -> None:
        """Let the signs grow with the letters."""
        for button in self.buttons.values():
            button.setIconSize(QSize(px(16), px(16)))
        more = self.more
        more.setIconSize(QSize(px(16), px(16)))
        more.setFixedWidth(px(20))  # it is given less, and grows into the room kept for it here
        more.raise_()
        self.layout().setContentsMargins(px(12), 2, 14, 0)

    @property
    def more(self) -> QToolButton:
        """The button of the menu bar that opens the menus it has no room for; hidden where it has."""
        return next(one for one in below(self._window.menuBar(), QToolButton) if one.objectName() == "qt_menubar_ext_button")
