"""What moves much of the window under the hand: its edge, a list that is scrolled, whatever is dragged."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QWindow

from app.window.background.aside import hand_works


class Motion(QObject):
    """Hears what the system tells a window, and says of each step of a motion that the hand is at work.

    A step is a turn of the wheel, a move with a button down, a key that repeats itself, or another size of a window that
    is on the screen. A press alone is none: what is asked for with it should begin at once.
    """

    def watch(self, window: QWindow) -> None:
        """Hear this window too; twice is as good as once."""
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if (kind == QEvent.Type.MouseMove and event.buttons() != Qt.MouseButton.NoButton
                or kind == QEvent.Type.Wheel
                or kind == QEvent.Type.KeyPress and event.isAutoRepeat()
                or kind == QEvent.Type.Resize and watched.isExposed()):
            hand_works()
        return False
