"""`python -m tests.benchmarks.started bare|program SINCE [LAYOUT]`: open a window, tell when it was painted and ready, end.

SINCE is the time of the call, in seconds since the epoch; what is printed is in ms since then.
"""

import os
import sys
import time


def main(what: str, since: float, layout: str = "") -> int:
    """Open the window and wait for it."""
    if what == "program":
        import gc

        import app.commands.main
        import app.window  # before the toolkit, as the program does
        gc.disable()  # as app.window.run does before the toolkit is loaded
    from PySide6.QtCore import QEvent, QObject, QTimer

    def tell(word: str) -> None:
        print(word, (time.time() - since) * 1000, flush=True)

    class Watch(QObject):
        """Looks for the first paint of a window, and of its canvas."""

        def __init__(self) -> None:
            super().__init__()
            self.painted = self.ready = False

        def eventFilter(self, thing: QObject, event: QEvent) -> bool:
            if event.type() == QEvent.Type.Paint and thing.isWidgetType():
                if not self.painted:
                    self.painted = True
                    QTimer.singleShot(0, self, self.was_painted)
                if what == "program" and not self.ready and type(thing.parent()).__name__ == "CanvasView":
                    self.ready = True
                    QTimer.singleShot(0, self, self.was_ready)
            return False

        def was_painted(self) -> None:
            tell("painted")
            if what == "bare":
                leave()

        def was_ready(self) -> None:
            if drag():
                tell("ready")
            leave()

    def leave() -> None:
        sys.stdout.flush()
        os._exit(0)

    if what == "bare":
        from PySide6.QtWidgets import QApplication, QMainWindow
        application = QApplication(["bare"])
        application.setStyle("Fusion")
        watch = Watch()
        application.installEventFilter(watch)
        window = QMainWindow()
        window.resize(1360, 880)
        window.show()
        return application.exec()

    def drag() -> bool:
        """Move a tuner by the mouse; whether the layout followed. It is the proof that the window was ready."""
        from PySide6.QtCore import QPointF, Qt
        from PySide6.QtTest import QTest
        from PySide6.QtWidgets import QApplication

        from app.window.main import MainWindow
        from geometry.solids import frames
        moment = time.time()
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

    from PySide6.QtWidgets import QApplication
    application = QApplication(["program"])
    watch = Watch()
    application.installEventFilter(watch)
    from app.commands.arguments import parse
    return app.commands.main.run(parse([layout]))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], float(sys.argv[2]), *sys.argv[3:]))
