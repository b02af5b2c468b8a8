"""What the panel shows of what is held. During a drag it follows the drawing at an eye's pace, not at the hand's."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from app.panels.describe import describe
from app.panels.several import several
from app.window.stage_pages import stage_page
from geometry.drawing.sections import section_along_bore

if TYPE_CHECKING:
    from app.window.main import MainWindow

PACE_MS = 33
"""Numbers that change faster cannot be read; the drawing and its snags do not wait for them."""


class HeldPage(QObject):
    """Fills the panel on the right with the page of what is held, or of the stage."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._due = QTimer(self)
        self._due.setSingleShot(True)
        self._due.setInterval(PACE_MS)
        self._due.timeout.connect(self.show)

    def follow(self) -> None:
        """Show what is held: at once, or within PACE_MS while a gesture runs."""
        if not self._window.hand.busy:
            self.show()
        elif not self._due.isActive():
            self._due.start()

    def show(self) -> None:
        """Show it now."""
        self._due.stop()
        window, section = self._window, ()
        shown, held, room = window.document.shown, window.document.held, window.room
        if window.laying:
            return
        if room is not None and room.panel is not None and room.takes(held):
            window.side.show_room(room.panel)
            return
        if len(held) > 1:
            page = several(shown, held, window.unit)
        elif held:
            page = describe(shown, held[0], window.unit, window.node)
            if any(t.id == held[0] for t in shown.tuners):
                section = section_along_bore(shown, held[0], window.unit)
        else:
            page = stage_page(window.stage, shown, window.unit, window.tools)
        window.side.show_room(None)
        window.side.show_page(page)
        window.side.show_section(self.tr("Section along the bore"), section)
