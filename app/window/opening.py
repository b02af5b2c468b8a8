"""The rest of a window that opens with its drawing alone: loaded, made and filled once the drawing can be seen and worked on."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QTimer

if TYPE_CHECKING:
    from app.window.main import MainWindow

LATEST_MS = 1000
"""From the making of the window to the rest of it, should its drawing not be painted before."""
ASIDE_MS = 40
"""How long it stands aside when a hand moves the drawing."""
LOADED = ("app.tools.hold", "app.panels.snags.snag_list", "app.panels.change_list", "app.panels.snags.chance_page", "app.panels.forms.form",
          "app.panels.side_inside", "app.panels.describe", "app.panels.several", "app.window.stage_pages", "app.window.input.spoken",
          "geometry.edits.mirrored", "geometry.cures", "geometry.solids.distance_depth", "app.tools.grips_shape",
          "app.tools.grips_blank")
"""What the rest of the window is made of and what the hand will soon want, in parts that take some milliseconds each."""


class Opening(QObject):
    """Goes through its steps, one in a turn of the event loop, or at once for whoever asks for the panel: shown when filled."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._steps = self._all()
        window.opens = True
        self._next = QTimer(self, singleShot=True, timeout=self._go)
        self._next.start(LATEST_MS)
        window.side.fill = self._finish
        window.canvas.view.viewport().installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            watched.removeEventFilter(self)
            self._next.start(0)
        return False

    def end(self) -> None:
        """The window goes: leave the rest."""
        self._next.stop()
        self._window.side.fill = None

    def _go(self) -> None:
        if self._window.hand.busy:
            self._next.start(ASIDE_MS)
            return
        side = self._window.side
        side.fill = None  # what the step itself asks for is not asked for too early
        if next(self._steps, self) is not self:
            side.fill = self._finish
            self._next.start(0)

    def _finish(self) -> None:
        """Somebody asks for the panel: go through the steps that are left now."""
        self._next.stop()
        for _ in self._steps:
            pass

    def _all(self) -> Iterator[None]:
        try:
            yield from self._rest()
        finally:
            self._window.opens = False

    def _rest(self) -> Iterator[None]:
        window = self._window
        for name in LOADED:
            import_module(name)
            yield
        if not window.side.made:
            window.side.make()
            yield
        try:
            yield from window.held_page.begin_in_steps()
        except Exception:  # it is told as every fault is; what is there can be worked with
            self._show()
            raise
        self._show()

    def _show(self) -> None:
        self._window.side.inside.show()
        self._window.listen()
