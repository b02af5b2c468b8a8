"""How far an offset lies from the line, and whether the line stays."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.look.wrapping import WrappingRadio
from app.window.dialogs.ghost_dialog import GhostDialog
from geometry.drawing import Drawing, Stroke
from geometry.edits.offsetting import offset_copy, offset_in_place
from geometry.layout import Headstock, loop_path, slot_path
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame

BEGIN_WITH = 2.0


class OffsetDialog(GhostDialog):
    """`value` in mm, outwards above zero; `keeps` says that a new slot is made and the line stays."""

    def __init__(self, window: Frame, ref: str) -> None:
        self._ref, self.keeps = ref, False
        title = say("Offset of the outline") if ref == "outline" else say("Offset of {slot}", slot=ref)
        super().__init__(window, title, say("Distance"), -BEGIN_WITH if ref == "outline" else BEGIN_WITH)

    def more(self) -> list[QWidget]:
        """Whether the line itself moves."""
        self.in_place = WrappingRadio(say("Move the line itself"), self)
        self.copy = WrappingRadio(say("Leave the line, add a slot beside it"), self)
        self.in_place.setChecked(True)
        self.copy.toggled.connect(self._chosen)
        return [self.in_place, self.copy]

    def work(self) -> Callable[[], Headstock]:
        """The line set off, or a slot added beside it."""
        return partial(offset_copy if self.keeps else offset_in_place, self.layout_, self._ref, self.value)

    def ghost(self, made: Headstock) -> Drawing:
        """The line where it would come to lie."""
        slot = made.slots[-1] if self.keeps else next((s for s in made.slots if s.id == self._ref), None)
        return (Stroke(loop_path(made.outline) if slot is None else slot_path(slot), "template"),)

    def told(self) -> str:
        """What the sign of the distance means."""
        return say("Above zero it lies outside the line, below zero inside. Corners that open become round.")

    def _chosen(self, copy: bool) -> None:
        self.keeps = copy
        self.try_it()
