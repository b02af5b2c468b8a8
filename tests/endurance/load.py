"""`python -m tests.endurance.load FOLDER SEED [window]`: edits a layout without rest until it is killed.

It uses the program's own document and journal, or with "window" the whole
window. Each change is told on standard output before it is made, as
"monotonic-seconds step", so that whoever kills it knows what was there.
"""

from __future__ import annotations

import random
import sys
import time
from pathlib import Path

from msgspec.structs import replace
from PySide6.QtCore import QObject, QTimer

from app.document import Document
from app.window.demo import demo
from geometry.edits import move_features
from geometry.layout import Headstock

EVERY_MS = 7


def layout_at(seed: int, step: int) -> Headstock:
    """What the layout is at a step: known without the steps before it."""
    chance = random.Random(seed * 1_000_003 + step)
    base = demo()
    moved = chance.choice([t.id for t in base.tuners] + [s.id for s in base.slots])
    by = (chance.uniform(-3, 3), chance.uniform(-3, 3))
    return replace(move_features(base, [moved], by), name=f"{seed} step {step}")


def step_of(layout: Headstock) -> int:
    """The step that a layout says it is."""
    return int(layout.name.split(" step ")[1])


class Load(QObject):
    """Steps, undos, redos and saves by chance."""

    def __init__(self, document: Document, path: Path, seed: int, parent: QObject) -> None:
        super().__init__(parent)
        self._document, self._path, self._seed = document, path, seed
        self._chance = random.Random(seed)
        self._step = 0
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self.act)
        self._timer.start()

    def act(self) -> None:
        """One change."""
        what = self._chance.random()
        history = self._document.history
        if what < 0.08 and history.past:
            tell(step_of(history.past[-1][1]))
            self._document.undo()
        elif what < 0.12 and history.future:
            tell(step_of(history.future[-1][1]))
            self._document.redo()
        elif 0.12 <= what < 0.123:
            tell(step_of(self._document.layout))
            self._document.save(self._path)
        else:
            self._step += 1
            tell(self._step)
            self._document.apply("Move", layout_at(self._seed, self._step))


def tell(step: int) -> None:
    """Say which step comes now."""
    print(f"{time.monotonic():.4f} {step}", flush=True)


def main(folder: Path, seed: int, whole_window: bool) -> int:
    """Run until killed."""
    path = folder / f"{seed}.headstock.json"
    start = layout_at(seed, 0)
    if whole_window:
        from PySide6.QtCore import QSettings
        from PySide6.QtWidgets import QApplication

        from app.threads.collector import Collector
        from app.window.main import MainWindow
        from app.window.windows import Windows
        application = QApplication([])
        settings = QSettings(str(folder / f"{seed}.ini"), QSettings.Format.IniFormat)
        window = MainWindow(start, None, Windows(settings, folder / "journal"))
        window.show()
        Collector(application)
        document = window.document
        application.setProperty("load", Load(document, path, seed, window))
    else:
        from PySide6.QtCore import QCoreApplication

        application = QCoreApplication([])
        document = Document(start, None, application)
        keeper = _Keeper(document, folder / "journal", application)
        application.setProperty("load", Load(document, path, seed, keeper))
    return application.exec()


class _Keeper(QObject):
    """Keeps the journal of a document without a window."""

    def __init__(self, document: Document, folder: Path, parent: QObject) -> None:
        super().__init__(parent)
        from app.document.journal import Journal
        self._document = document
        self._journal = Journal(folder, self)
        document.history_changed.connect(self._keep)
        document.file_changed.connect(self._keep)

    def _keep(self) -> None:
        self._journal.keep(self._document)


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), int(sys.argv[2]), sys.argv[3:] == ["window"]))
