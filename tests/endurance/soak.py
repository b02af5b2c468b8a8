"""A long day at the window: random work with real mouse and key events, and what the program holds on to counted.

First everything that is made when it is first asked for is asked for once: stages,
tools, dialogs, colours, samples, drawings. Then the work begins, and now and then
everything is brought back to one state and counted there: whatever grows from count
to count is a leak. A thing done that never ends is told by where it hangs. `python -m tests.endurance.soak SECONDS THINGS SEED FOLDER COUNTS [tour]` works for so long and does so many things at least; it prints one JSON line a count.
"""

from __future__ import annotations

import faulthandler
import json
import os
import random
import statistics
import sys
import time
import traceback
from collections import Counter
from collections.abc import Callable
from pathlib import Path

import psutil
from PySide6.QtCore import QObject, QPointF, QSettings, Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton
from shiboken6 import isValid

from app.look.descendants import below
from app.threads.background import running
from app.threads.collector import Collector
from app.window import ask
from app.window.actions import MENUS
from app.window.demo import demo
from app.window.main import MainWindow
from app.window.running.faults import Faults
from app.window.running.process import give_back
from app.window.stages import STAGES
from app.window.tool_bar import TOOLS
from app.window.windows import Windows
from geometry.edits import plan_point
from geometry.layout import feature_ids
from tests.endurance.at_rest import destroy, drop, everything, parts, pump, rest
from tests.spent import slowness

SAMPLES = Path(__file__).parents[2] / "samples"
NOT_PRESSED = ("", "close", "quit", "new window", "language", "colours", "letters", "recent", "print", "trace")
"""What ends the soak, opens windows without end, asks the system, or is a menu of its own."""
FRAMED = "treble face 2"
"""The tuner of the demo whose drag is measured at each count."""
HANGS = 900.0
"""Seconds for one thing done, a count or the end: then every thread's place is told and the soak is over."""


class Day:
    """One window and a hand that does things in it by chance."""

    def __init__(self, seed: int, folder: Path) -> None:
        self._chance = random.Random(seed)
        self._folder = folder
        self._file = folder / "head.headstock.json"
        self._settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
        self._windows = Windows(self._settings, folder / "journal")
        Collector(self._windows)
        self._window = MainWindow(demo(), None, self._windows)
        self._window.show()
        self._faults = Faults(self._windows)
        self._faults.install()
        self.done: Counter[str] = Counter()
        self.faults: list[str] = []
        self._answers()
        self._closer = QTimer(self._windows, interval=30)
        self._closer.timeout.connect(self._close_what_waits)
        self._closer.start()

    # ---- what a maker does ------------------------------------------------
    def tour(self) -> None:
        """Everything that is made only once, so that the first count counts it: on a layout of its own each time."""
        for colours in ("lamp", "day"):
            self._window.actions_[colours].trigger()
            for stage in STAGES:
                self._window.set_stage(stage.key)
                for key in TOOLS[stage.key]:
                    self._window.set_tool(key)
                rest()
        for path in sorted(SAMPLES.glob("*.headstock.json")):
            self._window.files.open(path)
            rest()
        for path in _drawings():
            self._import(path)
        for key in _pressed():
            self._fresh()
            self._window.hand.cancel()
            alive()
            self._window.actions_[key].trigger()
            pump()
        self._window_beside()
        self._fresh()

    def work(self) -> None:
        """One thing, by chance."""
        name, do = self._chance.choices(*zip(*(((name, do), weight) for name, weight, do in self._ways())))[0]
        self.done[name] += 1
        try:
            self._in_front()
            do()
            pump()
        except Exception:  # what breaks under a real hand is told by the program; here it comes back to who called
            self.faults.append(f"{name}: {traceback.format_exc()}")

    def _in_front(self) -> None:
        """Have the window take keys. The platform without a screen does not give them back to it when another one is closed, and
        Esc, undo and whatever else is bound to the window would do nothing then."""
        self._window.activateWindow()
        pump()

    def _ways(self) -> list[tuple[str, float, Callable[[], object]]]:
        return [("drag", 30, self._drag), ("draw", 10, self._draw), ("undo", 8, lambda: self._press("undo")),
                ("redo", 4, lambda: self._press("redo")), ("stage", 5, self._stage), ("tool", 4, self._tool),
                ("menu", 10, self._menu), ("key", 6, self._key), ("wheel", 6, self._wheel), ("note", 1, self._note),
                ("save", 1, lambda: self._press("save")), ("open", 1, self._open), ("import", 0.3, self._import),
                ("window", 0.5, self._window_beside), ("colours", 0.5, self._colours), ("fresh", 1, self._fresh)]

    def _point(self) -> QPointF:
        layout, chance = self._window.document.shown, self._chance
        ids = feature_ids(layout)
        if ids and chance.random() < 0.7:
            return QPointF(*plan_point(layout, chance.choice(ids)))
        return QPointF(chance.uniform(-60, 60), chance.uniform(-10, 190))

    def _pixel(self, at: QPointF):
        return self._window.canvas.view.mapFromScene(at)

    def _drag(self, steps: int = 12) -> None:
        port = self._window.canvas.view.viewport()
        keys = self._chance.choice((Qt.KeyboardModifier.NoModifier,) * 4 + (Qt.KeyboardModifier.ShiftModifier,))
        start = self._point()
        by = QPointF(self._chance.uniform(-25, 25), self._chance.uniform(-25, 25))
        QTest.mousePress(port, Qt.MouseButton.LeftButton, keys, self._pixel(start))
        for i in range(1, steps + 1):
            at = self._pixel(start + by * (i / steps))
            QTest.mouseMove(port, at)
            pump()
        if self._chance.random() < 0.15:
            QTest.keyClick(self._window.canvas.view, Qt.Key.Key_Escape)
        QTest.mouseRelease(port, Qt.MouseButton.LeftButton, keys, self._pixel(start + by))

    def _draw(self) -> None:
        stage = self._chance.choice(("outline", "slots", "tuners"))
        self._window.set_stage(stage)
        self._window.set_tool(self._chance.choice(TOOLS[stage]))
        for _ in range(self._chance.randrange(1, 5)):
            self._drag(3)
        if self._chance.random() < 0.5:
            QTest.keyClicks(self._window.canvas.view, self._chance.choice(("12", "5.5", "90")))
        QTest.keyClick(self._window.canvas.view, self._chance.choice((Qt.Key.Key_Return, Qt.Key.Key_Escape)))

    def _stage(self) -> None:
        self._window.set_stage(self._chance.choice(STAGES).key)

    def _tool(self) -> None:
        keys = TOOLS[self._window.stage]
        if keys:
            self._window.set_tool(self._chance.choice(keys))

    def _press(self, key: str) -> None:
        self._window.commands.run(key)

    def _menu(self) -> None:
        key = self._chance.choice(_pressed())
        self.done[f"menu: {key}"] += 1
        action = self._window.actions_[key]
        if action.isEnabled():
            action.trigger()

    def _key(self) -> None:
        keys = (Qt.Key.Key_Tab, Qt.Key.Key_N, Qt.Key.Key_S, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Delete, Qt.Key.Key_M)
        QTest.keyClick(QApplication.focusWidget() or self._window.canvas.view, self._chance.choice(keys))

    def _wheel(self) -> None:
        self._press(self._chance.choice(("zoom in", "zoom out", "fit")))

    def _note(self) -> None:
        self._press("note")

    def _open(self) -> None:
        self._window.files.open(self._chance.choice((self._file, *SAMPLES.glob("*.headstock.json"))))

    def _import(self, path: Path | None = None) -> None:
        from app.window.importing.importing import import_drawing
        import_drawing(self._window, path or self._chance.choice(_drawings()))

    def _window_beside(self) -> None:
        other = self._windows.empty()
        pump()
        other.close()
        destroy()

    def _colours(self) -> None:
        self._window.actions_[self._chance.choice(("day", "lamp"))].trigger()

    def _fresh(self) -> None:
        self._window.document.replace(demo(), None)

    # ---- answers ----------------------------------------------------------
    def _answers(self) -> None:
        """What the maker answers to every question."""
        ask.open_file = lambda *_: None
        ask.save_file = lambda _, title, suggestion, kinds, *more: self._folder / Path(suggestion).name if "headstock" in kinds else None
        ask.folder = lambda *_: None
        ask.save_first = lambda *_: "discard"
        ask.changed_elsewhere = lambda *_: "mine"
        ask.not_saved = lambda *_: "later"
        ask.write_over = lambda *_: True
        ask.say = ask.warn = lambda *_: None
        ask.text = lambda *_: self._chance.choice((None, "a note", "12"))

    def _close_what_waits(self) -> None:
        """Put away whatever waits for an answer."""
        waits = QApplication.activePopupWidget() or QApplication.activeModalWidget()
        if waits is None:
            return
        if type(waits).__name__ == "FaultDialog":
            self.faults.append(waits.report)
        if hasattr(waits, "reject") and self._chance.random() < 0.7:
            waits.reject()
        elif default := next((one for one in below(waits, QPushButton) if one.isDefault()), None):
            default.click()
        else:
            waits.close()

    # ---- counting ---------------------------------------------------------
    def count(self) -> dict[str, float]:
        """Bring everything back to one state and count what there is."""
        for other in self._windows.all:
            if other is not self._window:
                other.close()
        for widget in QApplication.topLevelWidgets():
            if widget is not self._window and widget.isVisible():
                widget.close()
        self._window.hand.cancel()
        self._window.document.replace(demo(), None)
        for stage in STAGES:
            self._window.set_stage(stage.key)
            rest()
            alive()
        self._window.actions_["day"].trigger()
        for key, wanted in (("solid", False), ("changes", False), ("grid", True), ("snap", True), ("chances", False)):
            if self._window.actions_[key].isChecked() != wanted:
                self._window.actions_[key].trigger()
        self._window.set_unit("mm")
        self._window.set_stage("tuners")
        self._window.canvas.fit(self._window.document.shown)
        rest()
        frame = self._frame()
        drop()
        process = psutil.Process()
        things = everything()
        kinds = Counter(type(one).__name__ for one in things if isinstance(one, QObject) and isValid(one))
        below = list(parts(self._window))
        return {
            "RSS": process.memory_info().rss / 1e6, "objects": len(things), "threads": process.num_threads(),
            "files": process.num_fds() if hasattr(process, "num_fds") else 0,
            "toolkit objects": len(below), "actions": sum(isinstance(one, QAction) for one in below),
            "items": len(self._window.canvas.view.scene().items()), "windows": len(QApplication.topLevelWidgets()),
            "children": len(psutil.Process().children()), "wrapped": sum(kinds.values()),
            "frame": frame, "faults": len(self.faults),
            "beside": len(running()),
            "done": sum(self.done[name] for name, _, _ in self._ways())}

    def _frame(self, steps: int = 24) -> float:
        """What a frame of one and the same drag takes, a tuner into its neighbours and put back: the median,
        in ms of the machine that limits are meant for. AssertionError when it is not put back: no count would be of the same layout."""
        self._in_front()
        port, left, none = self._window.canvas.view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
        start, took = QPointF(*plan_point(self._window.document.layout, FRAMED)), []
        QTest.mousePress(port, left, none, self._pixel(start))
        for i in range(1, steps + 1):
            at = self._pixel(start - QPointF(0.0, i))
            began = time.thread_time()
            QTest.mouseMove(port, at)
            pump()
            took.append(time.thread_time() - began)
        QTest.keyClick(self._window.canvas.view, Qt.Key.Key_Escape)
        QTest.mouseRelease(port, left, none, self._pixel(start))
        rest()
        if self._window.document.layout != demo():
            raise AssertionError("The drag that is measured was not put back.")
        return 1000 * statistics.median(took) / slowness()

    def end(self) -> None:
        """Close everything, as the program does at its end."""
        self._closer.stop()
        self._window.close()
        self._windows.end()
        drop()
        self._faults.remove()
        # The platform without a screen keeps what is on the clipboard until Python has ended, and falls over it then.
        QApplication.clipboard().clear()


def _pressed() -> list[str]:
    """The actions that may be pressed."""
    return [entry.key for entries in MENUS.values() for entry in entries if entry.key not in NOT_PRESSED]


def _drawings() -> list[Path]:
    return sorted((SAMPLES / "outlines").glob("*.*g"))


def alive() -> None:
    """Something was done: the watch begins anew. When it runs out, every thread tells where it is, and the process ends."""
    faulthandler.dump_traceback_later(HANGS, exit=True)


def main(seconds: float, things: int, seed: int, folder: Path, counts: int, tour: bool) -> int:
    """Work for so long and until so many things are done, counting now and then."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    faulthandler.enable()
    give_back()  # as a start of the program does
    alive()
    application = QApplication([])
    application.setStyle("Fusion")
    day = Day(seed, folder)
    if tour:
        day.tour()
    began, done = time.monotonic(), 0
    for number in range(1, counts + 1):
        while time.monotonic() < began + seconds * number / counts or done < things * number / counts:
            alive()
            day.work()
            done += 1
        alive()
        print(json.dumps(day.count()), flush=True)
    if day.faults:
        print(day.faults[0], file=sys.stderr)
    print(dict(day.done), file=sys.stderr)
    day.end()
    return 0


if __name__ == "__main__":
    try:
        code = main(float(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]), Path(sys.argv[4]), int(sys.argv[5]), "tour" in sys.argv[6:])
    except BaseException:
        traceback.print_exc()
        code = 1
    sys.exit(code)
