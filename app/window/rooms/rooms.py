"""The rooms of the stages that have one, made when they are first needed."""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

from app.window.chances import ChanceWatch
from app.window.rooms.room import StageRoom
from app.window.warming import Warming

if TYPE_CHECKING:
    from app.window.frame import Frame

ROOMS = {
    "strings": ("app.window.rooms.string_room", "StringRoom"),
    "router": ("app.window.rooms.router_room", "RouterRoom"),
    "order": ("app.window.rooms.order_room", "OrderRoom"),
    "sheets": ("app.window.rooms.sheet_stage", "SheetStage"),
    "book": ("app.window.rooms.book_room", "BookRoom"),
}
"""Stage key to (module, class): imported only when the stage is first shown."""

SOON = ("app.window.running.fault_dialog", "app.window.dialogs.offset_dialog", "app.window.dialogs.round_dialog", "app.help.tip", "app.tools.draw",
        "app.tools.measure", "app.tools.paste", "app.tools.picture", "app.tools.place", "app.tools.section", "app.tools.slot",
        "app.tools.wind")
"""What is likely to be used but not at once: loaded beside the window as the rooms are, and before them."""


class Rooms:
    """Holds the rooms of one window."""

    def __init__(self, window: Frame) -> None:
        self._window = window
        self._made: dict[str, StageRoom] = {}
        self.chances = ChanceWatch(window)
        self._warming = Warming(window, [*SOON, *(module for module, _ in ROOMS.values())])

    def __getitem__(self, stage: str) -> StageRoom | None:
        """The room of a stage, made if need be; None for a stage without one."""
        if stage not in self._made and stage in ROOMS:
            self.let_load()
            module, name = ROOMS[stage]
            room = getattr(import_module(module), name)(self._window)
            self._made[stage] = room
            self._window.take_in(room)
        return self._made.get(stage)

    def let_load(self) -> None:
        """Wait until nothing is loaded beside the window: before anything else is."""
        self._warming.let_finish()

    @property
    def made(self) -> list[StageRoom]:
        """The rooms that have been made so far, and what belongs to no stage."""
        return [*self._made.values(), self.chances, self._warming]
