"""Files dropped on the window."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QMimeData, QObject, QTimer

from app.formats.headstock import SUFFIX
from geometry.saying import count, say

if TYPE_CHECKING:
    from app.window.main import MainWindow

DRAWINGS = (".dxf", ".svg")
PICTURES = (".jpg", ".jpeg", ".png", ".tif", ".tiff", ".bmp", ".webp", ".gif")


class Drops(QObject):
    """Takes files; what is opened is asked about as if it had been chosen from the menu."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._files: list[Path] = []
        self._later = QTimer(self, singleShot=True, timeout=self._take)
        window.setAcceptDrops(True)
        # The view would take the drag for its scene, which wants none.
        window.canvas.view.setAcceptDrops(False)
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.DragEnter, QEvent.Type.DragMove, QEvent.Type.Drop):
            files = dropped(event.mimeData())
            if not files:
                event.ignore()
                return True
            event.acceptProposedAction()
            if event.type() == QEvent.Type.Drop:
                # The program that the file comes from waits for the drop to end: questions are asked after it.
                self._files = files
                self._later.start(0)
            return True
        return super().eventFilter(watched, event)

    def _take(self) -> None:
        files, self._files = self._files, []
        take_all(self._window, files)


def dropped(data: QMimeData) -> list[Path]:
    """The local files of a drag."""
    return [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]


def take_all(window: MainWindow, files: list[Path]) -> None:
    """Take one file as `take` does; of several, each layout into a window of its own, the first into this one.

    Drawings and pictures belong to the layout on show and ask questions: one of them is taken, and only when no
    layout is among the files; how many were left is said.
    """
    layouts = [file for file in files if is_layout(file)]
    taken = layouts or files[:1]
    if not taken:
        return
    take(window, taken[0])
    for file in taken[1:]:
        window.windows.open(file)
    left = len(files) - len(taken)
    if left:
        window.windows.current.say(count(
            left, "{n} file was left: drop drawings and pictures one at a time.",
            "{n} files were left: drop drawings and pictures one at a time."))


def is_layout(file: Path) -> bool:
    """Whether the name of a file is that of a layout."""
    return file.name.lower().endswith((SUFFIX, ".json"))


def is_drawn(file: Path) -> bool:
    """Whether the name of a file is that of a drawing or a picture, from which a layout is begun."""
    return file.name.lower().endswith((*DRAWINGS, *PICTURES))


def take(window: MainWindow, file: Path) -> None:
    """Open or import a file by the ending of its name; another ending is said in the foot of the window."""
    name = file.name.lower()
    if name.endswith(DRAWINGS):
        from app.window.importing.importing import import_drawing
        import_drawing(window, file)
    elif name.endswith(PICTURES):
        from app.window.tracing.lay import lay_picture
        lay_picture(window, file)
    elif is_layout(file):
        if window.files.open(file):
            window.canvas.fit(window.document.shown)
    else:
        window.say(say("{file} is no layout, no drawing (DXF, SVG) and no picture.", file=file.name))
