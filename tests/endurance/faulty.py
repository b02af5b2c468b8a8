"""`python -m tests.endurance.faulty`: the whole program, in which one thing after the other goes wrong by plan.

Prints one JSON line for each: what went wrong, how many dialogs told of it, and whether the layout was as before.
"""

from __future__ import annotations

import json
import sys
import threading
from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from geometry.edits import mirror_layout

PATIENCE = 1200
"""Beats of 50 ms in which a dialog that is due has to come, however busy the machine is."""


class Planted(Exception):
    """What goes wrong by plan."""


class Paints(QWidget):
    """Cannot be painted."""

    def paintEvent(self, event) -> None:
        raise Planted("in painting")


class Filters(QObject):
    """Cannot look at the events that are posted for it.

    Of others it breaks at none: how many come while it is there is the machine's own, and where the toolkit asks one filter
    from within another it may not survive what they raise.
    """

    def eventFilter(self, watched, event) -> bool:
        if event.type() == QEvent.Type.User:
            raise Planted("in a filter of events")
        return False


class Handles(QObject):
    """Cannot take an event."""

    def event(self, event: QEvent) -> bool:
        raise Planted("in taking an event")


class Plan(QObject):
    """Does one thing after the other, and goes on with the work after each dialog, as a maker does."""

    def __init__(self, windows) -> None:
        super().__init__(windows)
        self._window = windows.current
        self._window.commands.run("turn over")
        self._layout = self._window.document.layout
        self._dialogs = 0
        self._left = [(name, do, turn) for name, do in self._things() for turn in (1, 2)]
        self._look = QTimer(self, interval=5)
        self._look.timeout.connect(self._answer)
        self._look.start()
        self._next = QTimer(self, interval=50)
        self._next.timeout.connect(self._go_on)
        self._next.start()
        self._running, self._waited = None, 0

    def _things(self) -> list[tuple[str, Callable[[], object]]]:
        return [("slot", self._slot), ("memory", self._memory), ("recursion", self._recursion), ("painting", self._paint),
                ("event filter", self._filter), ("event", self._event), ("thread", self._thread), ("background", self._background),
                ("gesture", self._gesture), ("check", self._check), ("undo", self._undo), ("room", self._room)]

    def _answer(self) -> None:
        dialog = QApplication.activeModalWidget()
        if dialog is not None and type(dialog).__name__ == "FaultDialog" and dialog.isVisible():
            self._dialogs += 1
            dialog.accept()

    def _go_on(self) -> None:
        self._waited += 1
        if self._running is not None and (self._waited < 2 or self._running[1] == 1 and not self._dialogs and self._waited < PATIENCE):
            return
        self._waited = 0
        if self._running is not None:
            window = self._window
            print(json.dumps({"what": self._running[0], "turn": self._running[1], "dialogs": self._dialogs,
                              "same": window.document.layout is self._layout and window.document.shown is self._layout,
                              "alive": window.isVisible(), "journal": bool(window.journal.file.exists())}), flush=True)
            self._running = None
        if not self._left:
            self._next.stop()
            self._end()
            return
        name, do, turn = self._left.pop(0)
        self._dialogs, self._running = 0, (name, turn)
        do()

    # ---- what goes wrong -------------------------------------------------
    def _slot(self) -> None:
        raise Planted("in a slot")

    def _memory(self) -> None:
        raise MemoryError

    def _recursion(self) -> None:
        self._recursion()

    def _paint(self) -> None:
        widget = Paints(self._window)
        widget.resize(20, 20)
        widget.show()
        widget.repaint()
        QTimer.singleShot(40, widget, widget.deleteLater)

    def _filter(self) -> None:
        made = Filters(self)
        self._window.installEventFilter(made)
        for _ in range(3):
            QApplication.postEvent(self._window, QEvent(QEvent.Type.User))

    def _event(self) -> None:
        made = Handles(self)
        QApplication.postEvent(made, QEvent(QEvent.Type.User))

    def _thread(self) -> None:
        threading.Thread(target=self._beside).start()

    def _beside(self) -> None:
        raise Planted("in a thread")

    def _background(self) -> None:
        from app.threads.background import Background
        self._work = Background(self._behind, self)
        self._work.failed.connect(self._failed)
        self._work.start()

    def _behind(self) -> None:
        raise Planted("in work beside the window")

    def _failed(self, error: Exception) -> None:
        raise error

    def _gesture(self) -> None:
        window, view = self._window, self._window.canvas.view
        start = window.hand._start
        window.hand._start = lambda pointer: self._broken()
        try:
            at = view.mapFromScene(QPointF(0.0, 60.0))
            QTest.mousePress(view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
            for i in range(4):
                QTest.mouseMove(view.viewport(), at + QPoint(9 * i, 3))
            QTest.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
        finally:
            window.hand._start = start

    def _broken(self):
        from app.tools import Shown
        yield Shown(self._layout)
        yield Shown(mirror_layout(self._layout))
        raise Planted("in a gesture")

    def _check(self) -> None:
        def broken(layout):
            raise Planted("in the checks of a step")
        self._unchecked(broken, "turn over")

    def _undo(self) -> None:
        def broken(layout):
            raise Planted("in the checks of an undo")
        self._unchecked(broken, "undo")

    def _unchecked(self, broken: Callable, command: str) -> None:
        live = self._window.document._live
        live.check = broken
        try:
            self._window.commands.run(command)
        finally:
            del live.check

    def _room(self) -> None:
        room = type(self._window.rooms["order"])
        real = room.refresh

        def broken(self):
            raise Planted("in a room")
        room.refresh = broken
        try:
            self._window.set_stage("order")
        finally:
            room.refresh = real
            self._window.set_stage("tuners")

    def _end(self) -> None:
        """Close the window, which goes wrong too."""
        from app.window import ask
        ask.save_first = lambda *_: "discard"
        self._window.front.end = self._slot
        self._window.close()


def main() -> int:
    """Run the program by plan."""
    from app.window import run
    from app.window.running import faults
    real = faults.Faults.install

    def install(self) -> None:
        real(self)
        QTimer.singleShot(0, self, lambda: setattr(self, "plan", Plan(self._windows)))
    faults.Faults.install = install
    return run()


if __name__ == "__main__":
    sys.exit(main())
