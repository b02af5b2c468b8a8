"""Files dropped on the window."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QMimeData, QObject, QTimer

from app.formats.headstock import SUFFIX

if TYPE_CHECKING:
    from app.window.main import MainWindow

DRAWINGS = (".dxf", ".svg")
PICTURES = (".jpg", ".jpeg", ".png", ".tif", ".tiff", ".bmp", ".webp", ".gif")


class Drops(QObject):
    """Takes one file at a time; what is opened is asked about as if it had been chosen from the menu."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._file: Path | None = None
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._take)
        window.setAcceptDrops(True)
        # The view would take the drag for its scene, which wants none.
        window.canvas.view.setAcceptDrops(False)
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.DragEnter, QEvent.Type.DragMove, QEvent.Type.Drop):
            file = dropped(event.mimeData())
            if file is None:
                event.ignore()
                return True
            event.acceptProposedAction()
            if event.type() == QEvent.Type.Drop:
                # The program that the file comes from waits for the drop to end: questions are asked after it.
                self._file = file
                self._later.start(0)
            return True
        return super().eventFilter(watched, event)

    def _take(self) -> None:
        file, self._file = self._file, None
        if file is not None:
            take(self._window, file)


def dropped(data: QMimeData) -> Path | None:
    """The first local file of a drag, or None."""
    return next((Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()), None)


def take(window: MainWindow, file: Path) -> None:
    """Open or import a file by the ending of its name; another ending is said in the foot of the window."""
    name = file.name.lower()
    if name.endswith(DRAWINGS):
        from app.window.importing import import_drawing
        import_drawing(window, file)
    elif name.endswith(PICTURES):
        from app.window.tracing.lay import lay_picture
        lay_picture(window, file)
    elif name.endswith((SUFFIX, ".json")):
        if window.files.open(file):
            window.canvas.fit(window.document.shown)
    else:
        window.say(window.tr("{} is no layout, no drawing (DXF, SVG) and no picture.").format(file.name))
