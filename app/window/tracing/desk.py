"""What can be done with the picture behind the drawing: its menu, and the button of the Outline stage that shows it."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMenu, QToolButton

from geometry.edits.picture import lay_picture, picture_of, set_picture
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

STEP = 0.2
FAINTEST = 0.2
NEEDS_PICTURE = ("trace outline", "move picture", "picture shown", "picture locked", "picture stronger",
                 "picture fainter", "picture away")


class PictureDesk(QObject):
    """Carries out the actions of the menu Picture; every change is one step of the history."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._w = window

    @property
    def commands(self) -> dict[str, Callable[[], object]]:
        """What each action of the menu does, by its key."""
        return {"trace": self._lay, "trace outline": self._trace, "move picture": self._move,
                "picture shown": self._shown, "picture locked": self._locked, "picture stronger": self._stronger,
                "picture fainter": self._fainter, "picture away": self._away}

    def build(self) -> None:
        """Put the button into the strip of the Outline stage; the actions must have been made."""
        actions = self._w.actions_
        self.button = QToolButton(self._w, text=say("Picture"), popupMode=QToolButton.ToolButtonPopupMode.InstantPopup,
                                  toolTip=say("A photo or scan behind the drawing, to trace or to draw over."),
                                  focusPolicy=Qt.FocusPolicy.StrongFocus)
        menu = QMenu(self.button)
        menu.addAction(actions["trace"])
        menu.addSeparator()
        menu.addActions([actions[key] for key in NEEDS_PICTURE])
        self.button.setMenu(menu)
        self._w.tools.add_strip("outline", self.button)

    def follow(self) -> None:
        """Offer what can be done with the picture that the layout has now."""
        picture, actions = self._w.document.layout.picture, self._w.actions_
        for key in NEEDS_PICTURE:
            actions[key].setEnabled(picture is not None)
        actions["picture shown"].setChecked(picture is not None and not picture.hidden)
        actions["picture locked"].setChecked(picture is not None and picture.locked)
        if picture is not None:
            actions["move picture"].setEnabled(not picture.locked and not picture.hidden)
            actions["picture stronger"].setEnabled(picture.opacity < 1)
            actions["picture fainter"].setEnabled(picture.opacity > FAINTEST)
        if self._w.tools.tool == "picture" and not actions["move picture"].isEnabled():
            self._w.set_tool("hold")

    # ---- what is done ---------------------------------------------------
    def _lay(self) -> None:
        from app.window.tracing.lay import lay_picture as ask_and_lay
        ask_and_lay(self._w)

    def _trace(self) -> None:
        from app.window.tracing.trace_dialog import trace_outline
        trace_outline(self._w)

    def _move(self) -> None:
        self._w.set_stage("outline")
        self._w.set_tool("picture")
        self._w.say(say("Drag the picture; with Shift it turns about the middle of the nut."))

    def _shown(self) -> None:
        hide = not picture_of(self._w.document.layout).hidden
        self._set(say("Hide the picture") if hide else say("Show the picture"), hidden=hide)

    def _locked(self) -> None:
        lock = not picture_of(self._w.document.layout).locked
        self._set(say("Lock the picture") if lock else say("Unlock the picture"), locked=lock)

    def _stronger(self) -> None:
        now = picture_of(self._w.document.layout).opacity
        self._set(say("Show the picture stronger"), opacity=min(1.0, round(now + STEP, 2)))

    def _fainter(self) -> None:
        now = picture_of(self._w.document.layout).opacity
        self._set(say("Show the picture fainter"), opacity=max(FAINTEST, round(now - STEP, 2)))

    def _away(self) -> None:
        picture_of(self._w.document.layout)
        self._w.document.apply(say("Take the picture away"), lay_picture(self._w.document.layout, None))

    def _set(self, name: str, **fields: object) -> None:
        self._w.document.apply(name, set_picture(self._w.document.layout, **fields))
