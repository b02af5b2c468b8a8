"""`python -m tests.benchmarks.started bare|program SINCE [LAYOUT]`: open a window, tell when it was painted and ready, end.

SINCE is the time of the call, in seconds since the epoch; what is printed is in ms since then.
"""

import os
import sys
import time
from collections.abc import Callable
from functools import partial


def main(what: str, since: float, layout: str = "") -> int:
    """Open the window and wait for it."""
    if what == "program":
        import gc

        import app.commands.main
        import app.window  # before the toolkit, as the program does
        gc.disable()  # as app.window.run does before the toolkit is loaded
    from PySide6.QtCore import QEvent, QObject, QTimer
    if what == "program":
        from app.window.running.process import keep_own_import
        keep_own_import()  # as app.window.run does at once: whatever is imported until then is slowed down
    from PySide6.QtWidgets import QApplication

    def tell(word: str) -> None:
        print(word, (time.time() - since) * 1000, flush=True)

    class Watch(QObject):
        """Waits until one widget is painted. To look at every event of the program would take a tenth of its start."""

        def __init__(self, widget: QObject, then: Callable[[], None]) -> None:
            super().__init__(widget)
            self._then = then
            widget.installEventFilter(self)

        def eventFilter(self, widget: QObject, event: QEvent) -> bool:
            if event.type() == QEvent.Type.Paint:
                widget.removeEventFilter(self)
                QTimer.singleShot(0, self._then)
            return False

    def leave() -> None:
        sys.stdout.flush()
        os._exit(0)

    if what == "bare":
        from PySide6.QtWidgets import QMainWindow

        def was_painted() -> None:
            tell("painted")
            leave()

        application = QApplication(["bare"])
        application.setStyle("Fusion")
        window = QMainWindow()
        Watch(window, was_painted)
        window.resize(1360, 880)
        window.show()
        return application.exec()

    def was_ready() -> None:
        if drag():
            tell("ready")
        leave()

    def drag() -> bool:
        """Move a tuner by the mouse; whether the layout followed. It is the proof that the window was ready."""
        moment = time.time()  # what follows is the proof, and not the program
        from PySide6.QtCore import QPointF, Qt
        from PySide6.QtTest import QTest

        from app.window.main import MainWindow
        from geometry.solids import frames
        window = next(w for w in QApplication.topLevelWidgets() if isinstance(w, MainWindow))
        view = window.canvas.view
        x, y = frames(window.document.layout)["treble face 2"].origin[:2]
        before = window.document.layout
        place, left = view.viewport(), Qt.MouseButton.LeftButton
        QTest.mousePress(place, left, pos=view.mapFromScene(QPointF(x, y)))
        for by in (2.0, 4.0):
            QTest.mouseMove(place, view.mapFromScene(QPointF(x, y + by)))
        followed = window.document.shown is not before
        nonlocal since
        since += time.time() - moment
        return followed

    from app.window.running.threshold import Threshold

    class Card(Threshold):
        """Tells when it and the canvas of the window that it gives way to are painted."""

        def appear(self) -> None:
            Watch(self, partial(tell, "painted"))
            super().appear()

        def give_way(self) -> None:
            from app.window.main import MainWindow
            window = next(w for w in QApplication.topLevelWidgets() if isinstance(w, MainWindow))
            Watch(window.canvas.view.viewport(), was_ready)
            super().give_way()

    from app.setup import import_cache

    class Kept(import_cache.ImportCache):
        """Keeps what is new at once: nobody waits here for what a window does some seconds after it opened."""

        def stop(self) -> None:
            super().stop()
            if self.grown:
                self.write()

    app.window.running.threshold.Threshold = Card
    import_cache.ImportCache = Kept
    from app.commands.arguments import parse
    return app.commands.main.run(parse([layout]))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], float(sys.argv[2]), *sys.argv[3:]))
