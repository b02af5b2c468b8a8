"""What a stage brings into the window beside tools and rows: a panel, a centre, a strip, marks on the canvas."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from geometry.drawing import Drawing
from geometry.layout import Headstock

if TYPE_CHECKING:
    from app.window.frame import Frame


class StageRoom(QObject):
    """Base of the rooms, each in its own file and named in `rooms.py`.

    A room is made when its stage is first shown, so it costs a start nothing.
    It builds its widgets in `__init__` without a parent, for the toolkit would
    style them anew with every parent they are given; the window places them
    and shows them only while the stage is on show:

    - `panel` takes the place of the rows on the right while nothing is held;
    - `centre` takes the place of the canvas;
    - `strip` stands in the row under the stages, right of the tools;
    - `with_snags` tells whether the list of snags stays below the panel.
    """

    key = ""
    panel: QWidget | None = None
    centre: QWidget | None = None
    strip: QWidget | None = None
    with_snags = True

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.window = window

    def marks(self) -> dict[str, Drawing]:
        """More marks on the canvas, in groups by name: a group that has not changed is not painted again."""
        return {}

    def takes(self, held: tuple[str, ...]) -> bool:
        """Whether the room's own panel tells of what is held, so that it stays on show; it is asked whenever that changes."""
        return not held

    def enter(self) -> None:
        """The stage is about to be shown; `refresh` follows."""

    def leave(self) -> None:
        """Another stage takes over."""

    def refresh(self) -> None:
        """The layout, the unit or an option has changed, or the stage has just been entered.

        Called once a step of the history, not while something is dragged. A
        room that needs more than some milliseconds answers later, through
        an `errand.Errand`, and then calls `window.show_room()`.
        """

    def shown(self) -> None:
        """The layout on show has changed, also while something is dragged. Must be quick."""

    def edit(self, name: str, change: Callable[[Headstock], Headstock]) -> bool:
        """Change the layout of record as it is now, whatever the room shows; False, and why at the foot, when that cannot be done."""
        document = self.window.document
        return self.window.foot.can(lambda: document.apply(name, change(document.layout)))

    def end(self) -> None:
        """The window goes: wait for what runs beside it, and begin nothing more."""
