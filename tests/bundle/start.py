"""Where the one-file program begins: the program itself, or the process of its own that reads a drawing."""

import os
import sys

from app.formats.drawing_in.worker import ALONE

SEE = "PEGWRIGHT_SEE"
"""In the environment: a file that the window is painted into soon after it has opened, whereupon it closes. By this
whoever has made a bundle sees that its window comes up."""


def see(file: str) -> None:
    """Paint the first window into `file` three seconds after the program has begun to wait, and end it."""
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication

    wait = QApplication.exec

    def paint() -> None:
        windows = [window for window in QApplication.topLevelWidgets() if window.isVisible() and window.isWindow()]
        max(windows, key=lambda window: window.width() * window.height()).grab().save(file, "PNG")
        QApplication.exit(0)

    def wait_and_paint(*_: object) -> int:
        QTimer.singleShot(3000, paint)
        return wait()

    QApplication.exec = wait_and_paint


if sys.argv[1:2] == [ALONE]:
    from app.formats.drawing_in.worker import main

    sys.exit(main(sys.argv[2:]))
if os.environ.get(SEE):
    see(os.environ[SEE])
from app.__main__ import main as program  # noqa: E402 - what is above decides what is loaded first

sys.exit(program())
